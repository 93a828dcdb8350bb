/** Tests of the trials, and the generator of the demo's readings. */
@NullMarked
package fettle.machine.trials;

import org.jspecify.annotations.NullMarked;
