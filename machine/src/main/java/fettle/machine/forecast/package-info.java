/** Two states of a lathe laid side by side: what changed, by how much, for better or worse. */
@NullMarked
package fettle.machine.forecast;

import org.jspecify.annotations.NullMarked;
