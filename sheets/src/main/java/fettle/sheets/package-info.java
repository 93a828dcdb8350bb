/** Drawings of parts to the ISO standards, from their recipes. */
@NullMarked
package fettle.sheets;

import org.jspecify.annotations.NullMarked;
