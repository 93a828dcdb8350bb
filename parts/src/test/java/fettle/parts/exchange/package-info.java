/** Tests of the exchange files, read back. */
@NullMarked
package fettle.parts.exchange;

import org.jspecify.annotations.NullMarked;
