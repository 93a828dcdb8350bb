/** Tests of what pages say. */
@NullMarked
package fettle.desk.page;

import org.jspecify.annotations.NullMarked;
