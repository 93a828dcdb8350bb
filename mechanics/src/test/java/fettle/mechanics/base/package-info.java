/** Laws of exact numbers, units and inputs. */
@NullMarked
package fettle.mechanics.base;

import org.jspecify.annotations.NullMarked;
