/** Tests of limits, fits, press fits and tolerance chains. */
@NullMarked
package fettle.mechanics.fits;

import org.jspecify.annotations.NullMarked;
