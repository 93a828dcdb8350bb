/** Tests of the commands as somebody meets them. */
@NullMarked
package fettle.desk.cli;

import org.jspecify.annotations.NullMarked;
