package fettle.machine.made;

import fettle.machine.text.Place;
import fettle.parts.check.Doubt;

/**
 * Something doubtful in a recipe, with its place.
 *
 * @param at where the feature is described
 * @param doubt what is doubtful
 */
public record Remark(Place at, Doubt doubt) {

  /** Returns it in one line. */
  public String text() {
    return at.text()
        + ": "
        + doubt.rank().name().toLowerCase(java.util.Locale.ROOT)
        + ": "
        + (doubt.feature().isEmpty() ? "" : doubt.feature() + ": ")
        + doubt.what();
  }
}
