/** Tests of routes. */
@NullMarked
package fettle.planning.route;

import org.jspecify.annotations.NullMarked;
