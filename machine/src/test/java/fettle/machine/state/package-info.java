/** Tests of books, changes and states. */
@NullMarked
package fettle.machine.state;

import org.jspecify.annotations.NullMarked;
