package fettle.sheets.dimension;

import fettle.mechanics.base.Source;
import fettle.parts.recipe.Characteristic;
import fettle.parts.recipe.Geometry;
import fettle.sheets.marks.Lettering;
import java.util.ArrayList;
import java.util.List;

/**
 * A tolerance frame: characteristic, zone, datums, each in its compartment (ISO 1101).
 *
 * @param cells what stands in the compartments
 */
public record ToleranceFrame(List<String> cells) {

  static final Source FORM =
      Source.memory("ISO 1101:2017 and ISO 7083:2021", "frame twice as high as its lettering");

  /** Height of the lettering. */
  static final double H = 3.5;

  /** Height of a frame. */
  static final double HEIGHT = 2 * H;

  private static final double SIDE = 1.6;

  /** Says that a tolerance on a round surface holds its axis. */
  private static final String MEDIAN = " Ⓐ";

  /** Keeps its own copy. */
  public ToleranceFrame {
    cells = List.copyOf(cells);
  }

  /** Returns the frame of a tolerance. */
  public static ToleranceFrame of(Geometry.Zone zone) {
    List<String> cells = new ArrayList<>();
    cells.add(symbol(zone.what()));
    String sign = zone.shape() == Geometry.Shape.ROUND ? "⌀" : "";
    cells.add(sign + Values.number(zone.width()));
    cells.addAll(zone.to());
    return new ToleranceFrame(cells);
  }

  /** Returns the same frame for a leader that ends on a round surface but means its axis. */
  ToleranceFrame median() {
    List<String> all = new ArrayList<>(cells);
    all.set(1, all.get(1) + MEDIAN);
    return new ToleranceFrame(all);
  }

  private static String symbol(Characteristic c) {
    return switch (c) {
      case STRAIGHTNESS -> "⏤";
      case FLATNESS -> "⏥";
      case ROUNDNESS -> "○";
      case CYLINDRICITY -> "⌭";
      case PARALLELISM -> "∥";
      case PERPENDICULARITY -> "⟂";
      case ANGULARITY -> "∠";
      case POSITION -> "⌖";
      case COAXIALITY -> "◎";
      case SYMMETRY -> "⌯";
      case RUN_OUT -> "↗";
      case TOTAL_RUN_OUT -> "⌰";
    };
  }

  /**
   * Returns the width of a compartment.
   *
   * @param i which
   * @return width [mm]
   */
  double width(int i) {
    return Math.max(HEIGHT, Lettering.width(cells.get(i), H) + 2 * SIDE);
  }

  /**
   * Returns the width of the frame.
   *
   * @return width [mm]
   */
  double width() {
    double sum = 0;
    for (int i = 0; i < cells.size(); i++) {
      sum += width(i);
    }
    return sum;
  }
}
