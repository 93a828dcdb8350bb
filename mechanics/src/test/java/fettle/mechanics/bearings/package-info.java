/** Laws of bearings: balance, symmetry, energy, limits. */
@NullMarked
package fettle.mechanics.bearings;

import org.jspecify.annotations.NullMarked;
