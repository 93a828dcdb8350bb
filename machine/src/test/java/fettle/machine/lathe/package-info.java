/** Tests of the lathe's records. */
@NullMarked
package fettle.machine.lathe;

import org.jspecify.annotations.NullMarked;
