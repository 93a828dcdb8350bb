/** The list of every reckoner, so that nothing has to be searched for at start. */
@NullMarked
package fettle.mechanics;

import org.jspecify.annotations.NullMarked;
