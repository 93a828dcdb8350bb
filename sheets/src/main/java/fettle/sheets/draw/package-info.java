/** The draughtsman: chooses views, dimensions and notes for a recipe and lays out the sheet. */
@NullMarked
package fettle.sheets.draw;

import org.jspecify.annotations.NullMarked;
