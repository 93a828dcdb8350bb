/**
 * A gearbox that a search has found, settled into wheels, shafts, lever positions and the change it
 * makes in the book.
 */
@NullMarked
package fettle.planning.gearbox;

import org.jspecify.annotations.NullMarked;
