/** Laws of cutting: forces, chatter border, limits. */
@NullMarked
package fettle.mechanics.cutting;

import org.jspecify.annotations.NullMarked;
