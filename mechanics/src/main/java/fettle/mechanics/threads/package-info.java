/**
 * Screw threads as shapes: how a thread is named, its diameters and limits by ISO, ASME and British
 * standards, how it is measured over wires, how its ends are formed and how it is cut in passes.
 * What a thread does under load stands in {@code screws}.
 */
@NullMarked
package fettle.mechanics.threads;

import org.jspecify.annotations.NullMarked;
