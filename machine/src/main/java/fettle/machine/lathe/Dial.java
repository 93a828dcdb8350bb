package fettle.machine.lathe;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Quantity;

/**
 * A graduated dial.
 *
 * @param name its name in the book
 * @param on the member it is fixed to
 * @param train the train whose motion it shows
 * @param diameter diameter at the lines
 * @param lines lines around it
 * @param division what one division is taken to be
 * @param values everything the book says of it
 */
public record Dial(
    String name,
    String on,
    String train,
    Quantity diameter,
    int lines,
    Quantity division,
    Values values) {

  static Dial of(String name, Values v) {
    return new Dial(
        name,
        v.needText("on"),
        v.needText("train"),
        v.need("diameter"),
        v.needCount("lines"),
        v.need("division"),
        v);
  }

  /** Returns 2 if a division is change of diameter, 1 if it is travel. */
  public int perTravel() {
    return values.needText("reads").equals("diameter") ? 2 : 1;
  }
}
