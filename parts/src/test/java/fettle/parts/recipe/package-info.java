/** Tests of recipes, their keys and makers. */
@NullMarked
package fettle.parts.recipe;

import org.jspecify.annotations.NullMarked;
