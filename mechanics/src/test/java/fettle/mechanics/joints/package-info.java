/** Tests of joints. */
@NullMarked
package fettle.mechanics.joints;

import org.jspecify.annotations.NullMarked;
