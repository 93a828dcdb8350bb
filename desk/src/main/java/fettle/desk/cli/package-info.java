/** The command line: one class a command, all of them testable without a terminal. */
@NullMarked
package fettle.desk.cli;

import org.jspecify.annotations.NullMarked;
