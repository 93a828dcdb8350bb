package fettle.mechanics.motion;

import fettle.mechanics.base.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Room a hand wants at a control, so that the work is done without barked knuckles. */
public enum ComfortGap {
  /** Knuckle behind the rim of a handwheel. */
  RIM(25, 40),
  /** Round the peg of a crank. */
  PEG(50, 50),
  /** Knob of a lever to any fixed part, over its arc. */
  KNOB(35, 50),
  /** Between two knobs used in turn. */
  KNOBS(60, 60),
  /** Beside a screwdriver or key while it swings through 60 degrees. */
  KEY(10, 10);

  /** Where the gaps come from: no standard, only what is usual. */
  public static final Source SOURCE = Source.practice("room for hands at the controls");

  private final double least;
  private final double wanted;

  ComfortGap(double least, double wanted) {
    this.least = least;
    this.wanted = wanted;
  }

  /**
   * Returns the least gap.
   *
   * @return gap [mm]
   */
  public double least() {
    return least;
  }

  /**
   * Returns the gap that is comfortable.
   *
   * @return gap [mm]
   */
  public double wanted() {
    return wanted;
  }

  /** Returns the control in a word. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the controls in words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(ComfortGap::word).toList();
  }

  /**
   * Finds a control by its word.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static ComfortGap of(String word) {
    for (ComfortGap gap : values()) {
      if (gap.word().equals(word)) {
        return gap;
      }
    }
    throw new IllegalArgumentException(
        "'" + word + "' is no control of the list; it has " + String.join(", ", words()));
  }
}
