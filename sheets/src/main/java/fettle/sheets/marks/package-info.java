/**
 * What lies on paper: strokes of standard widths, arcs, filled shapes and lettering, in millimetres
 * from the lower left corner of the sheet.
 */
@NullMarked
package fettle.sheets.marks;

import org.jspecify.annotations.NullMarked;
