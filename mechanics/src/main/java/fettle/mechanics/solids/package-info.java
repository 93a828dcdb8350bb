/**
 * Elastic bodies. Closed forms for bars, sections, plates, rings and contact patches; and finite
 * elements for solids made of boxes, cylinders and inclined faces on a box grid whose planes lie in
 * every plane face, with the error bar that two meshes give. Bodies know nothing of part recipes.
 */
@NullMarked
package fettle.mechanics.solids;

import org.jspecify.annotations.NullMarked;
