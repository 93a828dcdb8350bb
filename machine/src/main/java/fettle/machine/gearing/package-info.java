/**
 * Teeth for the lathe that is there: thread tables from the gears in the drawer, pairs on old
 * centres.
 */
@NullMarked
package fettle.machine.gearing;

import org.jspecify.annotations.NullMarked;
