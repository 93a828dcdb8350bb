/** One class a question: what the lathe's description says of travel, dials, speeds, threads, … */
@NullMarked
package fettle.machine.topics;

import org.jspecify.annotations.NullMarked;
