/** Templates printed at full size: dials to wrap round a rim, with bars to check the print. */
@NullMarked
package fettle.sheets.template;

import org.jspecify.annotations.NullMarked;
