/** Sheets as PDF, at true size, with the office's own lettering embedded and searchable. */
@NullMarked
package fettle.sheets.pdf;

import org.jspecify.annotations.NullMarked;
