/** Laws of trains, gears and searches. */
@NullMarked
package fettle.mechanics.gears;

import org.jspecify.annotations.NullMarked;
