/**
 * Pure calculations of the drawing office: sheets, scales, lettering, lines, completeness of
 * dimensions, dials, templates, developments.
 */
@NullMarked
package fettle.mechanics.drawing;

import org.jspecify.annotations.NullMarked;
