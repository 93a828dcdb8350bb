/**
 * How each part is made: stock and cutting length, set-ups, operations with holding, cutter, speed,
 * feed, passes and time, and what the owner's lathe lacks for it. Allowances, speeds and set-up
 * minutes are common practice, to be replaced by the owner's own.
 */
@NullMarked
package fettle.planning.route;

import org.jspecify.annotations.NullMarked;
