/** Tests of the desk as a whole. */
@NullMarked
package fettle.desk;

import org.jspecify.annotations.NullMarked;
