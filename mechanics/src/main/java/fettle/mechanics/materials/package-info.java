/**
 * Materials of the small shop: one table of properties, each with its value, its scatter and its
 * source, found by the standard's designation.
 */
@NullMarked
package fettle.mechanics.materials;

import org.jspecify.annotations.NullMarked;
