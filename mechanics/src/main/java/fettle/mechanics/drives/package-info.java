/**
 * Motors by their curves, speeds through belts and gears, run-up and stopping, chuck speed and
 * grip, hand and rack feeds.
 */
@NullMarked
package fettle.mechanics.drives;

import org.jspecify.annotations.NullMarked;
