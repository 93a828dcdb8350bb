/** A book, its changes, and the state of the lathe that a set of changes gives. */
@NullMarked
package fettle.machine.state;

import org.jspecify.annotations.NullMarked;
