/** Which revision of each sheet is out, and of what content: the record kept beside the sheets. */
@NullMarked
package fettle.sheets.revision;

import org.jspecify.annotations.NullMarked;
