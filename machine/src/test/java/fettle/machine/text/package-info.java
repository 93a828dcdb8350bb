/** Tests of reading and editing the owner's text. */
@NullMarked
package fettle.machine.text;

import org.jspecify.annotations.NullMarked;
