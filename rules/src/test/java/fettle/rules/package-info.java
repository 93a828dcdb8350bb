/** The rules of the house, held by tests. */
@NullMarked
package fettle.rules;

import org.jspecify.annotations.NullMarked;
