package fettle.mechanics.threads;

import fettle.mechanics.base.Source;

/** The preferred numbers R40, to which thread tolerances are rounded. */
final class PreferredNumbers {

  static final Source SOURCE = Source.memory("ISO 3:1973", "series R40");

  private static final int[] R40 = {
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280,
    300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850,
    900, 950
  };
  private static final int[] BELOW_HUNDRED = {
    10, 11, 11, 12, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 24, 25, 26, 28, 30, 32, 34, 36, 38,
    40, 42, 45, 48, 50, 53, 56, 60, 63, 67, 71, 75, 80, 85, 90, 95
  };

  private PreferredNumbers() {}

  /**
   * Returns the R40 number nearest on the scale of ratios; below 100 the two-digit numbers printed
   * in ISO 965-1.
   *
   * @param value a positive tolerance [µm]
   * @return the rounded tolerance [µm]
   */
  static int r40(double value) {
    if (!(value > 0) || !(value < 1e6)) {
      throw new IllegalArgumentException(
          "a tolerance of " + value + " µm cannot be rounded to R40");
    }
    int step = nearest(value);
    int decade = Math.floorDiv(step, 40);
    int place = Math.floorMod(step, 40);
    return switch (decade) {
      case 0 -> Math.max(1, (int) Math.round(BELOW_HUNDRED[place] / 10.0));
      case 1 -> BELOW_HUNDRED[place];
      default -> R40[place] * (int) Math.round(Math.pow(10, decade - 2));
    };
  }

  /**
   * Returns the next higher R40 number.
   *
   * @param rounded a number of the series [µm]
   * @return its successor [µm]
   */
  static int next(int rounded) {
    int step = nearest(rounded);
    int after = rounded;
    for (int i = 1; after == rounded && i < 4; i++) {
      after = r40(Math.pow(10, (step + i) / 40.0));
    }
    return after;
  }

  /** Number of the step by distance to 10^(k/40), not by distance of logarithms. */
  private static int nearest(double value) {
    int below = (int) Math.floor(40 * Math.log10(value));
    double low = Math.pow(10, below / 40.0);
    double high = Math.pow(10, (below + 1) / 40.0);
    return value - low <= high - value ? below : below + 1;
  }
}
