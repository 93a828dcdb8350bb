/** What a page or a table shows, as records of finished text; templates see these only. */
@NullMarked
package fettle.desk.page;

import org.jspecify.annotations.NullMarked;
