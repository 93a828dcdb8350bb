/** Tests of elastic bodies: the element, the solver's laws, reference parts. */
@NullMarked
package fettle.mechanics.solids;

import org.jspecify.annotations.NullMarked;
