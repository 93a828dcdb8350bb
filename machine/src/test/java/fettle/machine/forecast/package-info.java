/** Tests of states laid side by side. */
@NullMarked
package fettle.machine.forecast;

import org.jspecify.annotations.NullMarked;
