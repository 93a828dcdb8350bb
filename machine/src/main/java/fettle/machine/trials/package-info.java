/**
 * Trials: readings taken on the lathe, strictly read, and what follows from them: figures with
 * their uncertainty, the verdict against a limit, what to adjust, and how they meet the forecast.
 */
@NullMarked
package fettle.machine.trials;

import org.jspecify.annotations.NullMarked;
