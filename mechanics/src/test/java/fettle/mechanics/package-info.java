/** Tests of the whole module: published values through the reckoners, and workings. */
@NullMarked
package fettle.mechanics;

import org.jspecify.annotations.NullMarked;
