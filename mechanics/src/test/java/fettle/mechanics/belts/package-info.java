/** Laws of belts: length, wrap, tension. */
@NullMarked
package fettle.mechanics.belts;

import org.jspecify.annotations.NullMarked;
