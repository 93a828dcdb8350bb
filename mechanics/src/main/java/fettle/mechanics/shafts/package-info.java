/**
 * Spindles and the work they hold: stepped hollow beams on springy bearings, stiffness at the nose
 * and what spends it, best span, natural frequencies, whirl, run-out, warm growth, and bars in the
 * chuck or between centres.
 */
@NullMarked
package fettle.mechanics.shafts;

import org.jspecify.annotations.NullMarked;
