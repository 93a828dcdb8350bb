/** Dimensions: how they read, whether they are complete, and where they are put (ISO 129-1). */
@NullMarked
package fettle.sheets.dimension;

import org.jspecify.annotations.NullMarked;
