/** Laws of the room materials. */
@NullMarked
package fettle.mechanics.materials;

import org.jspecify.annotations.NullMarked;
