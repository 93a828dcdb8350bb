/** Holds a finished sheet to what must be legible on it. */
@NullMarked
package fettle.sheets.judge;

import org.jspecify.annotations.NullMarked;
