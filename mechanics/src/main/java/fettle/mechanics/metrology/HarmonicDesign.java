package fettle.mechanics.metrology;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The terms of a fit along a travel: a constant, a slope, and a cosine and sine for each period.
 *
 * @param periods periods [as x]
 * @param constant whether there is a constant term
 * @param slope whether there is a slope
 */
record HarmonicDesign(List<Double> periods, Part constant, Part slope) {

  /** Whether a term takes part. */
  enum Part {
    IN,
    OUT
  }

  static HarmonicDesign of(double... periods) {
    List<Double> list = new ArrayList<>();
    for (double period : periods) {
      list.add(Require.positive("period", period));
    }
    Require.atMost("periods", list.size(), 20);
    return new HarmonicDesign(List.copyOf(list), Part.OUT, Part.OUT);
  }

  HarmonicDesign withConstant() {
    return new HarmonicDesign(periods, Part.IN, slope);
  }

  HarmonicDesign withSlope() {
    return new HarmonicDesign(periods, constant, Part.IN);
  }

  /** Returns the names of the terms. */
  List<String> names() {
    List<String> names = new ArrayList<>();
    if (constant == Part.IN) {
      names.add("offset");
    }
    if (slope == Part.IN) {
      names.add("slope");
    }
    for (int i = 1; i <= periods.size(); i++) {
      names.add("a" + i);
      names.add("b" + i);
    }
    return names;
  }

  /**
   * Returns the terms at one place.
   *
   * @param x place [as the periods]
   * @return the terms [-]
   */
  double[] row(double x) {
    double[] row = new double[names().size()];
    int at = 0;
    if (constant == Part.IN) {
      row[at++] = 1;
    }
    if (slope == Part.IN) {
      row[at++] = x;
    }
    for (double period : periods) {
      row[at++] = cosine(x / period);
      row[at++] = sine(x / period);
    }
    return row;
  }

  double[][] rows(double[] x) {
    double[][] rows = new double[x.length][];
    for (int i = 0; i < x.length; i++) {
      rows[i] = row(x[i]);
    }
    return rows;
  }

  LinearFit fit(double[] x, double[] y) {
    return LeastSquares.fit(names(), rows(x), y);
  }

  /** Names the periods that lower the rank: the places cannot see them. */
  List<String> hidden(double[] x) {
    List<String> hidden = new ArrayList<>();
    for (double period : periods) {
      HarmonicDesign alone = of(period).withConstant().withSlope();
      if (LeastSquares.rank(alone.rows(x)) < 4) {
        hidden.add(Numbers.significant(period, 6));
      }
    }
    return hidden;
  }

  /**
   * Returns the cosine of a number of turns, exactly 0 at the quarter turns.
   *
   * @param turns turns [-]
   * @return cosine [-]
   */
  static double cosine(double turns) {
    return snapped(Math.cos(2 * Math.PI * (turns - Math.rint(turns))));
  }

  /**
   * Returns the sine of a number of turns, exactly 0 at the half turns.
   *
   * @param turns turns [-]
   * @return sine [-]
   */
  static double sine(double turns) {
    return snapped(Math.sin(2 * Math.PI * (turns - Math.rint(turns))));
  }

  private static double snapped(double value) {
    return Math.abs(value) < 1e-12 ? 0 : value;
  }
}
