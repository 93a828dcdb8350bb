package fettle.sheets.page;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import java.util.List;

/**
 * A scale of ISO 5455.
 *
 * @param paper first number, on paper
 * @param real second number, of the part
 */
public record Scale(int paper, int real) {

  static final Source SERIES = Source.page("ISO 5455:1979", "5.1, recommended scales");

  /** The recommended scales from large to small, as far as a small machine needs them. */
  public static final List<Scale> ALL =
      List.of(
          new Scale(10, 1),
          new Scale(5, 1),
          new Scale(2, 1),
          new Scale(1, 1),
          new Scale(1, 2),
          new Scale(1, 5),
          new Scale(1, 10),
          new Scale(1, 20),
          new Scale(1, 50));

  /**
   * Returns millimetres on paper per millimetre of the part.
   *
   * @return factor [-]
   */
  public double factor() {
    return (double) paper / real;
  }

  @Override
  public String toString() {
    return Numbers.fixed(paper, 0) + ":" + Numbers.fixed(real, 0);
  }
}
