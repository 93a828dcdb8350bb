/** Laws of the room screws. */
@NullMarked
package fettle.mechanics.screws;

import org.jspecify.annotations.NullMarked;
