/** Sheets of sample parts and of parts drawn by lot, held to the judge. */
@NullMarked
package fettle.sheets;

import org.jspecify.annotations.NullMarked;
