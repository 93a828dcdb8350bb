/** Tests of reading and merging text. */
@NullMarked
package fettle.machine.text;

import org.jspecify.annotations.NullMarked;
