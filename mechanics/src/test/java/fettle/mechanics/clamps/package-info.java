/** Tests of clamps. */
@NullMarked
package fettle.mechanics.clamps;

import org.jspecify.annotations.NullMarked;
