/** Tests of the clearance room: cases with a known answer, and machines at random. */
@NullMarked
package fettle.mechanics.motion;

import org.jspecify.annotations.NullMarked;
