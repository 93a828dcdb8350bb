/**
 * What every other room stands on: sources, exact ratios, units, intervals, formulas that show
 * their working, and the reckoner, which is the one way a single calculation is offered to people,
 * to pages and to the tables of published values. Inside, numbers are plain doubles in the coherent
 * system mm, N, s, rad, K, A (so MPa, N mm, N/mm, and mass in tonnes).
 */
@NullMarked
package fettle.mechanics.base;

import org.jspecify.annotations.NullMarked;
