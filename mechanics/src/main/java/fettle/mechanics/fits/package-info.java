/**
 * How two parts go together: the limits and fits of ISO 286, seats of rolling bearings against the
 * bearing's own limits, general tolerances, press fits and chains of tolerances. Tables stand as
 * CSV beside this package; where a formula of the standard exists it is here too, and a test lists
 * every place where table and formula differ. The table always wins.
 */
@NullMarked
package fettle.mechanics.fits;

import org.jspecify.annotations.NullMarked;
