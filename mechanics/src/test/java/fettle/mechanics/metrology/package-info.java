/** Tests of measuring: certified data, laws, brute force, and calibrated claims. */
@NullMarked
package fettle.mechanics.metrology;

import org.jspecify.annotations.NullMarked;
