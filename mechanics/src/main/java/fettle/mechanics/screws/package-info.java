/**
 * What a screw does in a slide: moments both ways and self-locking, the hand on the rim, pressure
 * and wear of the nut, buckling and whirling, stiffness along the axis, lead error, play and how to
 * take it out, and what happens when screw and nut are not in line.
 */
@NullMarked
package fettle.mechanics.screws;

import org.jspecify.annotations.NullMarked;
