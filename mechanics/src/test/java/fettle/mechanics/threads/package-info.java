/** Laws of thread sizes, limits, designations, wires and infeed. */
@NullMarked
package fettle.mechanics.threads;

import org.jspecify.annotations.NullMarked;
