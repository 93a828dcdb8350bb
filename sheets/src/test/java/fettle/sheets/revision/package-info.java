/** Tests of the list of revisions. */
@NullMarked
package fettle.sheets.revision;

import org.jspecify.annotations.NullMarked;
