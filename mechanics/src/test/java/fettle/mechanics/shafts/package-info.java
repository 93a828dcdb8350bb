/** Laws of spindles: exact ends, symmetry, shares, limits, whirl. */
@NullMarked
package fettle.mechanics.shafts;

import org.jspecify.annotations.NullMarked;
