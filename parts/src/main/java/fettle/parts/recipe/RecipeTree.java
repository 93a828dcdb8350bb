package fettle.parts.recipe;

import java.util.List;
import java.util.Map;

/**
 * A recipe as a tree of keys, free of any file format: whoever reads a file puts numbers into
 * coherent units by the unit of {@link RecipeKeys.Key} and keeps the places of keys for messages.
 */
public sealed interface RecipeTree {

  /**
   * Keys with their values.
   *
   * @param entries values by key
   */
  record Group(Map<String, RecipeTree> entries) implements RecipeTree {
    /** Keeps its own copy. */
    public Group {
      entries = Map.copyOf(entries);
    }
  }

  /**
   * Values in order. A group within operations, outline or bore has one key, the operation, whose
   * value is the group of its keys.
   *
   * @param items the values
   */
  record Items(List<RecipeTree> items) implements RecipeTree {
    /** Keeps its own copy. */
    public Items {
      items = List.copyOf(items);
    }
  }

  /**
   * A number in the coherent unit.
   *
   * @param value the number [coherent]
   */
  record Figure(double value) implements RecipeTree {}

  /**
   * A size with its tolerance.
   *
   * @param size the size
   */
  record Sized(Size size) implements RecipeTree {}

  /**
   * A word or a text.
   *
   * @param text the text
   */
  record Text(String text) implements RecipeTree {}
}
