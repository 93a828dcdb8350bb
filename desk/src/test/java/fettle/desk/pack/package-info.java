/** Tests of the pack. */
@NullMarked
package fettle.desk.pack;

import org.jspecify.annotations.NullMarked;
