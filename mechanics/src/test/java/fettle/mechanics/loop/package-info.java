/** Tests of joints, the loop and its calibration. */
@NullMarked
package fettle.mechanics.loop;

import org.jspecify.annotations.NullMarked;
