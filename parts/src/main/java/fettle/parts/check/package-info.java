/** What is impossible or doubtful in a recipe, each with the feature, the limit and its source. */
@NullMarked
package fettle.parts.check;

import org.jspecify.annotations.NullMarked;
