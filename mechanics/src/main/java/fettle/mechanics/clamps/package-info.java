/**
 * What holds for a while and must let go again: eccentric levers, draw eccentrics, cones and split
 * rings, gibs and dovetails, side clamps in T-slots, set-over screws, and the force a slide or
 * tailstock must be held with. Loads come in as forces.
 */
@NullMarked
package fettle.mechanics.clamps;

import org.jspecify.annotations.NullMarked;
