/**
 * Rolling and plain bearings: boundary dimensions, ratings from the geometry inside, equivalent
 * loads, life, contact of ball and race, deflection of a bearing or a preloaded set under any load,
 * fits, play, friction, heat and limiting speed.
 */
@NullMarked
package fettle.mechanics.bearings;

import org.jspecify.annotations.NullMarked;
