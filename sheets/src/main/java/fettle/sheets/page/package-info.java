/** The sheet of paper: size, frame, grid and centring marks (ISO 5457), title block (ISO 7200). */
@NullMarked
package fettle.sheets.page;

import org.jspecify.annotations.NullMarked;
