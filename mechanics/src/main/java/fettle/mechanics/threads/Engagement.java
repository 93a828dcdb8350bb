package fettle.mechanics.threads;

import fettle.mechanics.base.Interval;

/** Groups of thread engagement, and the classes recommended for them. */
public final class Engagement {

  /** How much of the screw the nut holds. */
  public enum Group {
    SHORT("S"),
    NORMAL("N"),
    LONG("L");

    private final String symbol;

    Group(String symbol) {
      this.symbol = symbol;
    }

    /** Returns the letter of the group. */
    public String symbol() {
      return symbol;
    }
  }

  /** Quality of fit that is asked for. */
  public enum Quality {
    FINE,
    MEDIUM,
    COARSE
  }

  private static final double[] STEPS = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355};

  private Engagement() {}

  /**
   * Lengths that count as normal, {@code 2.24 P d^0.2} to {@code 6.7 P d^0.2}, d the least diameter
   * of its range; the standard's table rounds them.
   *
   * @param d nominal diameter, 0.99 to 355 [mm]
   * @param p pitch [mm]
   * @return shortest and longest normal length [mm]
   */
  public static Interval normal(double d, double p) {
    double mean = MetricTolerances.mean(d);
    double least = STEPS[0];
    for (double step : STEPS) {
      if (step < mean) {
        least = step;
      }
    }
    double unit = p * Math.pow(least, 0.2);
    return new Interval(2.24 * unit, 6.7 * unit);
  }

  /**
   * Group of a length.
   *
   * @param d nominal diameter [mm]
   * @param p pitch [mm]
   * @param length length of engagement [mm]
   */
  public static Group group(double d, double p, double length) {
    if (!(length > 0)) {
      throw new IllegalArgumentException(
          "L = " + length + " mm: expected a length of engagement above 0");
    }
    Interval normal = normal(d, p);
    return length < normal.low() ? Group.SHORT : length > normal.high() ? Group.LONG : Group.NORMAL;
  }

  /**
   * Returns the recommended class of a metric or trapezoidal screw.
   *
   * @param form metric or trapezoidal
   */
  public static String screwClass(ThreadForm form, Quality quality, Group group) {
    return switch (checked(form)) {
      case TRAPEZOIDAL ->
          switch (quality) {
            case FINE, MEDIUM -> group == Group.LONG ? "8e" : "7e";
            case COARSE -> group == Group.LONG ? "9c" : "8c";
          };
      default ->
          switch (quality) {
            case FINE -> pick(group, "3h4h", "4h", "5h4h");
            case MEDIUM -> pick(group, "5g6g", "6g", "7g6g");
            case COARSE -> pick(group, "8g", "8g", "9g8g");
          };
    };
  }

  /**
   * Returns the recommended class of a metric or trapezoidal nut.
   *
   * @param form metric or trapezoidal
   */
  public static String nutClass(ThreadForm form, Quality quality, Group group) {
    return switch (checked(form)) {
      case TRAPEZOIDAL ->
          switch (quality) {
            case FINE, MEDIUM -> group == Group.LONG ? "8H" : "7H";
            case COARSE -> group == Group.LONG ? "9H" : "8H";
          };
      default ->
          switch (quality) {
            case FINE -> pick(group, "4H", "5H", "6H");
            case MEDIUM -> pick(group, "5H", "6H", "7H");
            case COARSE -> pick(group, "7H", "7H", "8H");
          };
    };
  }

  private static ThreadForm checked(ThreadForm form) {
    if (form != ThreadForm.METRIC && form != ThreadForm.TRAPEZOIDAL) {
      throw new IllegalArgumentException(
          "groups of engagement belong to metric and trapezoidal threads, not to " + form.words());
    }
    return form;
  }

  private static String pick(Group group, String s, String n, String l) {
    return switch (group) {
      case SHORT -> s;
      case NORMAL -> n;
      case LONG -> l;
    };
  }
}
