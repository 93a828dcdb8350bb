/** Tests of the parts of a book. */
@NullMarked
package fettle.machine.made;

import org.jspecify.annotations.NullMarked;
