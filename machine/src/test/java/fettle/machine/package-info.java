/** Books that the tests of this module read. */
@NullMarked
package fettle.machine;

import org.jspecify.annotations.NullMarked;
