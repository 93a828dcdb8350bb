/**
 * Benchmarks of the heavy computations. Each stands beside a baseline, an obvious way to the same
 * answer or a general-purpose library, measured in the same run, and refuses to start if the two
 * answers differ. {@link fettle.bench.Report} runs them and writes the page that tells the results.
 */
@NullMarked
package fettle.bench;

import org.jspecify.annotations.NullMarked;
