/** Tests of the order of work. */
@NullMarked
package fettle.planning.order;

import org.jspecify.annotations.NullMarked;
