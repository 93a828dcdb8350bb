/** Tests of the questions asked of a lathe. */
@NullMarked
package fettle.machine.topics;

import org.jspecify.annotations.NullMarked;
