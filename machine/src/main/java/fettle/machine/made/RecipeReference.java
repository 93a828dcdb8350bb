package fettle.machine.made;

import fettle.parts.recipe.RecipeKeys;
import java.util.Locale;

/** Writes the keys of a recipe as a reference that people read. */
public final class RecipeReference {

  private static final String HEAD =
      """
      # The keys of a recipe

      Made from the program's own table of keys; do not edit it by hand.

      A part of a change that says `recipe: NAME` is described in the book's file `parts/NAME.yaml` (block *part*).
      Its material, stock and name come from the change unless the recipe says otherwise. A quantity carries its unit.

      A *size* may carry a tolerance: `12 mm h6`, `12 mm ± 0.05 mm`, `12 mm 0/-0.1` (deviations in mm), `12 mm auxiliary`,
      `12 mm exact`.

      A value that begins with `=` is taken from the lathe, as it stands once the change is made, so that a change of the
      lathe redraws its parts. Its terms are joined by `+ - * /` with blanks round them, `*` and `/` first:

      | term | is |
      |---|---|
      | `2 mm`, `1/2` | a quantity or a number |
      | `members.saddle.length` | a value of `machine.yaml`, by its path |
      | `bore of bearing spindle.front` | bore of a bearing of the lathe, with its shaft fit; a designation such as `7001B` may stand instead of the path |
      | `outside of bearing …`, `width of bearing …` | its outside diameter with its housing fit; its width |
      | `figure travel/saddle drive/travel per turn` | a figure of the forecast, by its name |

      `fit h6` after the terms gives the size another tolerance zone. Threads, words and counts may be taken likewise:
      `thread: = trains.cross feed.elements.screw.thread`. A gear that names its `pair` has the teeth of that pair.

      Datums and geometrical tolerances stand under `geometry` (ISO 5459, ISO 1101), each on a feature by its name or on a
      face: `left end`, `right end`, `left face of STEP`, `right face of STEP` and `floor of BORE STEP` of a turned part;
      `left`, `right`, `front`, `back`, `bottom`, `top` of a block:

      ```yaml
      geometry:
        - datum: {letter: A, on: front seat}
        - tolerance: {what: run-out, on: register, value: 5 µm, to: A}
        - tolerance: {what: position, on: cap screws, value: 0.2 mm, to: A B}
      ```

      Orientation, location and symmetry hold the axis or middle plane of a feature that has one, and its frame stands
      on the dimension line; form and run-out hold the surface, and the frame stands apart from the dimension. The place of
      a feature that a position tolerance holds is theoretically exact and stands in a frame. Refused with the word to
      write instead: a letter that names no datum, form held against a datum, anything else without one, a feature that
      cannot be held so. A zone no closer than the size, or held already by another, is a caution.
      """;

  private RecipeReference() {}

  /** Returns the reference as Markdown. */
  public static String text() {
    StringBuilder text = new StringBuilder(HEAD);
    for (String operation : RecipeKeys.operations()) {
      text.append("\n## ").append(operation).append("\n\n");
      text.append("| key | holds | unit | if left out | meaning |\n|---|---|---|---|---|\n");
      for (RecipeKeys.Key key : RecipeKeys.of(operation)) {
        row(text, key);
      }
    }
    return text.toString();
  }

  private static void row(StringBuilder text, RecipeKeys.Key key) {
    String standard = key.standard();
    String left = key.required() && !key.key().equals("name") ? "*must be written*" : "";
    String holds = key.kind().name().toLowerCase(Locale.ROOT);
    if (!key.choices().isEmpty()) {
      holds += ": " + String.join(", ", key.choices());
    }
    text.append("| `").append(key.key()).append("` | ").append(holds);
    text.append(" | ").append(key.unit().symbol());
    text.append(" | ").append(standard == null ? left : standard);
    text.append(" | ").append(key.meaning()).append(" |\n");
  }
}
