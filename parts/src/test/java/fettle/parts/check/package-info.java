/** Tests of the doubts. */
@NullMarked
package fettle.parts.check;

import org.jspecify.annotations.NullMarked;
