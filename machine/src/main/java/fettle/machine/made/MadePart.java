package fettle.machine.made;

import fettle.machine.dictionary.Values;
import fettle.parts.recipe.Recipe;
import java.util.List;

/**
 * A part that is made for a change, with its recipe.
 *
 * @param change key of the change
 * @param name what the change calls it
 * @param key its recipe's file name without ending
 * @param values what the change says of it
 * @param recipe how it is made, with all sizes reckoned
 * @param content everything the recipe says, in a fixed order: equal texts, equal parts
 * @param remarks what is doubtful in it
 */
public record MadePart(
    String change,
    String name,
    String key,
    Values values,
    Recipe recipe,
    String content,
    List<Remark> remarks) {

  /** Keeps its own copy. */
  public MadePart {
    remarks = List.copyOf(remarks);
  }

  /** Returns how many are made. */
  public int quantity() {
    return values.needCount("quantity");
  }
}
