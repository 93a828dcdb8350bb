/**
 * Targets of coverage-guided fuzzing: each takes bytes from outside by one of the doors of the
 * program and lets through only the refusals that door may answer with. Anything else that is
 * thrown, takes too long or takes too much memory is a fault. Inputs that once were faults, and
 * some to start from, are kept beside the other resources and run with the ordinary tests.
 */
@NullMarked
package fettle.desk.fuzz;

import org.jspecify.annotations.NullMarked;
