/**
 * What a part is, in trade operations: a turned part, a block or plate, a bent sheet; every feature
 * with its name, size, place, fit and finish.
 */
@NullMarked
package fettle.parts.recipe;

import org.jspecify.annotations.NullMarked;
