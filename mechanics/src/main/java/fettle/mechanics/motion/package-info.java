/**
 * Whether bodies that move against each other touch: convex solids on sliding and turning seats,
 * their exact distance, the least distance over all positions with a proven lower bound and a
 * position that shows it, the travel that a contact costs, and the gaps that keep fingers and hands
 * whole.
 */
@NullMarked
package fettle.mechanics.motion;

import org.jspecify.annotations.NullMarked;
