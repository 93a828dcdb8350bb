package fettle.parts.recipe;

/**
 * Something wrong in the text of a recipe.
 *
 * @param path keys and positions from the part down, joined by {@code /}, positions from 0
 * @param what a sentence: found, expected, remedy
 */
public record RecipeProblem(String path, String what) {}
