/**
 * The lathe as records: members on seats, trains of elements, dials, spindle, drive. Built from a
 * book's text; nothing here changes once made.
 */
@NullMarked
package fettle.machine.lathe;

import org.jspecify.annotations.NullMarked;
