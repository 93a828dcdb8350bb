/**
 * From stock to blank: mass of bar, length to saw, developed length of bent sheet, knurl and dial
 * divisions, templates, the dividing head.
 */
@NullMarked
package fettle.mechanics.stock;

import org.jspecify.annotations.NullMarked;
