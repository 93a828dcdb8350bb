/** Laws of drives: slip, run-up. */
@NullMarked
package fettle.mechanics.drives;

import org.jspecify.annotations.NullMarked;
