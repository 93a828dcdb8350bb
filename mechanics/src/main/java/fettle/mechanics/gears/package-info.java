/** Trains of gears, racks, belts, worms and screws: travel, hand, dials, play, gear geometry. */
@NullMarked
package fettle.mechanics.gears;

import org.jspecify.annotations.NullMarked;
