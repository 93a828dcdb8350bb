/**
 * Belts of all kinds: length and centre distance, wrap, slip, tension, shaft load, standard sizes.
 */
@NullMarked
package fettle.mechanics.belts;

import org.jspecify.annotations.NullMarked;
