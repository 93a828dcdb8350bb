package fettle.mechanics.threads;

import fettle.mechanics.base.Ratio;

/**
 * A thread as it is named on a drawing, in exact sizes.
 *
 * @param form thread form
 * @param series the series written with it, such as UNEF or BSF; empty if there is none
 * @param diameter nominal major diameter, exact in mm or inches
 * @param pitch pitch, not the lead; exact
 * @param starts number of starts, 1 or more
 * @param hand which way it winds
 * @param fit tolerance class or pair of classes as written, such as 6g or 7H/7e; empty if none
 */
public record ThreadDesignation(
    ThreadForm form,
    String series,
    Ratio diameter,
    Ratio pitch,
    int starts,
    Hand hand,
    String fit) {

  private static final int MOST_STARTS = 12;

  /** Refuses impossible threads. */
  public ThreadDesignation {
    if (starts < 1 || starts > MOST_STARTS) {
      throw new IllegalArgumentException(
          "starts = " + starts + ": expected a whole number from 1 to " + MOST_STARTS);
    }
    ThreadProfile profile = new ThreadProfile(form, diameter.toDouble(), pitch.toDouble());
    if (!(starts * pitch.toDouble() <= 2 * profile.d())) {
      throw new IllegalArgumentException(
          "lead = " + starts * pitch.toDouble() + " mm: expected at most twice the diameter");
    }
  }

  /**
   * Reads a designation such as {@code M10x1.25-6g}, {@code Tr 14x3 LH}, {@code Tr16x8P4}, {@code
   * 7/16-10 Acme LH}, {@code 1/2-28 UNEF-2A} or {@code 1/4 W 20}.
   *
   * @throws IllegalArgumentException what was found and what was expected
   */
  public static ThreadDesignation parse(String text) {
    return new DesignationReader(text).read();
  }

  /** Returns a right-hand thread of one start without a class. */
  public static ThreadDesignation of(ThreadForm form, Ratio diameter, Ratio pitch) {
    return new ThreadDesignation(form, "", diameter, pitch, 1, Hand.RIGHT, "");
  }

  /** Returns the basic sizes. */
  public ThreadProfile profile() {
    return new ThreadProfile(form, diameter.toDouble(), pitch.toDouble());
  }

  /** Returns the exact lead: starts times pitch. */
  public Ratio lead() {
    return pitch.times(starts);
  }

  /**
   * Returns the lead angle at the pitch diameter.
   *
   * @return lambda [rad]
   */
  public double leadAngle() {
    return profile().leadAngle(lead().toDouble());
  }

  /** Tells whether the pitch is one that the form's general plan lists for this diameter. */
  public boolean isListed() {
    return ThreadSeries.lists(form, diameter, pitch);
  }

  /** Returns the designation in its standard spelling. */
  public String text() {
    String body =
        switch (form) {
          case METRIC -> metric();
          case TRAPEZOIDAL -> trapezoidal();
          case ACME, UNIFIED, WHITWORTH -> inch();
        };
    return body
        + (fit.isEmpty() ? "" : "-" + fit)
        + (hand == Hand.LEFT
            ? form == ThreadForm.TRAPEZOIDAL && fit.isEmpty() ? " LH" : "-LH"
            : "");
  }

  private String metric() {
    String size = "M" + decimal(diameter);
    if (starts > 1) {
      return size + "xPh" + decimal(lead()) + "P" + decimal(pitch);
    }
    boolean coarse =
        ThreadSeries.pitch("M", "coarse", diameter).map(p -> p.sameAs(pitch)).orElse(false);
    return coarse ? size : size + "x" + decimal(pitch);
  }

  private String trapezoidal() {
    String size = "Tr " + decimal(diameter) + "x" + decimal(lead());
    return starts > 1 ? size + "P" + decimal(pitch) : size;
  }

  private String inch() {
    String tpi = trimmed(25.4 / pitch.toDouble());
    String name = series.isEmpty() ? form.symbol() : series;
    String many = starts > 1 ? " " + starts + " start" : "";
    return inches() + "-" + tpi + " " + name + many;
  }

  private String inches() {
    Ratio share = diameter.over(Ratio.INCH).folded();
    java.math.BigInteger below = share.denominator();
    boolean binary = below.bitCount() == 1 && below.bitLength() <= 7;
    if (!binary) {
      return trimmed(share.toDouble());
    }
    java.math.BigInteger[] parts = share.numerator().divideAndRemainder(below);
    String whole = parts[0].signum() == 0 ? "" : parts[0].toString();
    String part = parts[1].signum() == 0 ? "" : parts[1] + "/" + below;
    return whole.isEmpty() || part.isEmpty() ? whole + part : whole + " " + part;
  }

  private static String decimal(Ratio value) {
    return trimmed(value.toDouble());
  }

  private static String trimmed(double value) {
    return fettle.mechanics.base.Numbers.significant(value, 6);
  }
}
