/**
 * Readings in, verdict out: statistics of repeated readings, fits, uncertainty after the GUM, the
 * trials of a lathe (dial, spindle, alignment, straightness, stiffness, run-in), verdicts that
 * respect the measuring uncertainty, adjustments, acceptance limits, forecasts held against
 * measurements, and control charts. Nothing here drops a reading: gaps and outliers are reported
 * beside the result.
 */
@NullMarked
package fettle.mechanics.metrology;

import org.jspecify.annotations.NullMarked;
