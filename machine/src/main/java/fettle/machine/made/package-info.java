/**
 * The parts that are made for the changes: recipes of the book's folder {@code parts}, read with
 * their places, their sizes reckoned from the lathe where they refer to it.
 */
@NullMarked
package fettle.machine.made;

import org.jspecify.annotations.NullMarked;
