/** Sheets as SVG, one user unit a millimetre, byte for byte the same for the same sheet. */
@NullMarked
package fettle.sheets.svg;

import org.jspecify.annotations.NullMarked;
