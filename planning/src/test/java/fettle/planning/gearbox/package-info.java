/** Boxes settled into parts: wheels reach, clear each other and can be made. */
@NullMarked
package fettle.planning.gearbox;

import org.jspecify.annotations.NullMarked;
