/**
 * Planning figures for the electrics of a small lathe: currents, conductors, volt drop, heat in the
 * box, discharge and stopping, from published tables. Planning help and no design: local codes and
 * a licensed electrician have the last word.
 */
@NullMarked
package fettle.mechanics.electrics;

import org.jspecify.annotations.NullMarked;
