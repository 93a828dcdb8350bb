/** Tests of the kernel against closed forms. */
@NullMarked
package fettle.parts.solid;

import org.jspecify.annotations.NullMarked;
