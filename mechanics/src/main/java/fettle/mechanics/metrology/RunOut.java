package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Run-out of spindles and bars: first harmonics, reversals, error motions. */
public final class RunOut {

  private RunOut() {}

  /**
   * First harmonic of the readings over one turn.
   *
   * @param vector eccentricity as a vector
   * @param mean mean reading, free of the eccentricity [mm]
   * @param scatter residual standard deviation of a reading [mm]
   * @param uncertainty standard uncertainty of each component of the vector [mm]
   * @param freedom degrees of freedom
   */
  public record Turn(
      RunOutVector vector, double mean, double scatter, double uncertainty, int freedom) {}

  /**
   * Finds the first harmonic by least squares on {@code 1, cos, sin}; for equally spaced angles
   * this is {@code c = (2/n) sum m e^(-i angle)}.
   *
   * @param angles spindle angles, at least 4 [rad]
   * @param readings indicator readings [mm]
   */
  public static Turn turn(double[] angles, double[] readings) {
    Require.sameLength("readings", readings.length, angles.length);
    Require.atLeast("readings in a turn", angles.length, 4);
    double[] turns = Arrays.stream(angles).map(a -> a / (2 * Math.PI)).toArray();
    LinearFit fit = HarmonicDesign.of(1).withConstant().fit(turns, readings);
    double u =
        Math.sqrt((Math.pow(fit.uncertainty("a1"), 2) + Math.pow(fit.uncertainty("b1"), 2)) / 2);
    return new Turn(
        new RunOutVector(fit.value("a1"), -fit.value("b1")),
        fit.value("offset"),
        fit.deviation(),
        u,
        fit.freedom());
  }

  /**
   * Returns the size of a vector freed of the part that noise adds: {@code sqrt(max(0, c^2 -
   * 2u^2))}.
   *
   * @param size observed size [mm]
   * @param u standard uncertainty of each component [mm]
   * @return corrected size [mm]
   */
  public static double corrected(double size, double u) {
    return Math.sqrt(Math.max(0, size * size - 2 * u * u));
  }

  /**
   * What a bar re-seated at several angles tells: {@code c_psi = s + b e^(i psi)}.
   *
   * @param spindle vector s of the spindle taper
   * @param bar vector b of the bar
   * @param scatter largest distance of a seating from the model [mm]
   */
  public record Seatings(RunOutVector spindle, RunOutVector bar, double scatter) {}

  /**
   * Separates spindle and bar.
   *
   * @param seats angle at which the bar was seated, two or more different ones [rad]
   * @param vectors run-out vector found at each
   */
  public static Seatings seatings(double[] seats, List<RunOutVector> vectors) {
    Require.sameLength("vectors", vectors.size(), seats.length);
    Require.atLeast("seatings", seats.length, 2);
    int n = seats.length;
    RunOutVector turns = new RunOutVector(0, 0);
    RunOutVector sum = new RunOutVector(0, 0);
    RunOutVector back = new RunOutVector(0, 0);
    for (int i = 0; i < n; i++) {
      turns = turns.plus(RunOutVector.polar(1, seats[i]));
      sum = sum.plus(vectors.get(i));
      back = back.plus(vectors.get(i).turned(-seats[i]));
    }
    double determinant = (double) n * n - Math.pow(turns.size(), 2);
    if (!(determinant > 1e-6 * n * n)) {
      throw new IllegalArgumentException(
          "bar angles: all equal, expected the bar re-seated at another angle, best 180 deg");
    }
    RunOutVector b = back.times(n).minus(product(conjugate(turns), sum)).times(1 / determinant);
    RunOutVector s = sum.minus(product(turns, b)).times(1.0 / n);
    double scatter = 0;
    for (int i = 0; i < n; i++) {
      RunOutVector rest = vectors.get(i).minus(s).minus(b.turned(seats[i]));
      scatter = Math.max(scatter, rest.size());
    }
    return new Seatings(s, b, scatter);
  }

  private static RunOutVector product(RunOutVector a, RunOutVector b) {
    return new RunOutVector(a.x() * b.x() - a.y() * b.y(), a.x() * b.y() + a.y() * b.x());
  }

  private static RunOutVector conjugate(RunOutVector a) {
    return new RunOutVector(a.x(), -a.y());
  }

  /**
   * Vector along the spindle: at the nose and for each millimetre.
   *
   * @param nose vector at z = 0
   * @param tilt change of the vector along z [mm/mm in each component]
   */
  public record Axis(RunOutVector nose, RunOutVector tilt) {
    /**
     * Returns the vector at a place.
     *
     * @param z distance from the nose [mm]
     */
    public RunOutVector at(double z) {
      return nose.plus(tilt.times(z));
    }
  }

  /**
   * Lays a straight line through vectors at several planes.
   *
   * @param z distances from the nose, two or more different ones [mm]
   * @param vectors vector at each
   */
  public static Axis axis(double[] z, List<RunOutVector> vectors) {
    Require.sameLength("vectors", vectors.size(), z.length);
    double mean = Sample.of(z).mean();
    double below = Sample.of(z).sumOfSquares();
    if (!(below > 0)) {
      throw new IllegalArgumentException("z: all planes are equal, expected two different ones");
    }
    RunOutVector tilt = new RunOutVector(0, 0);
    RunOutVector middle = new RunOutVector(0, 0);
    for (int i = 0; i < z.length; i++) {
      tilt = tilt.plus(vectors.get(i).times((z[i] - mean) / below));
      middle = middle.plus(vectors.get(i).times(1.0 / z.length));
    }
    return new Axis(middle.minus(tilt.times(mean)), tilt);
  }

  /**
   * Error motion of a turning axis.
   *
   * @param synchronous part that repeats every turn, largest less smallest [mm]
   * @param asynchronous largest spread over the turns at any angle [mm]
   * @param total largest less smallest of all [mm]
   */
  public record ErrorMotion(double synchronous, double asynchronous, double total) {}

  /** Whether the first harmonic is taken out. */
  public enum Once {
    /** Radial: it is the centring of the artefact. */
    REMOVED,
    /** Axial: it is an error motion. */
    KEPT
  }

  /**
   * Splits readings over several turns (ISO 230-7).
   *
   * @param angles spindle angles [rad]
   * @param turns a row for each turn with a reading for each angle [mm]
   * @param once whether the first harmonic is taken out
   */
  public static ErrorMotion errorMotion(double[] angles, double[][] turns, Once once) {
    Require.columns("readings", turns, angles.length, "one for each angle");
    int n = angles.length;
    double[] mean = new double[n];
    double asynchronous = 0;
    double[] all = new double[n * turns.length];
    for (int k = 0; k < n; k++) {
      double[] here = Require.column(turns, k);
      mean[k] = Sample.of(here).mean();
      asynchronous = Math.max(asynchronous, range(here));
    }
    double[] centred = mean.clone();
    if (once == Once.REMOVED) {
      Turn first = turn(angles, mean);
      for (int k = 0; k < n; k++) {
        centred[k] = mean[k] - first.mean() - first.vector().turned(angles[k]).x();
      }
    }
    for (int j = 0; j < turns.length; j++) {
      for (int k = 0; k < n; k++) {
        all[j * n + k] = turns[j][k] - mean[k] + centred[k];
      }
    }
    return new ErrorMotion(range(centred), asynchronous, range(all));
  }

  /**
   * Returns largest less smallest.
   *
   * @param values values [any]
   * @return range [same]
   */
  static double range(double[] values) {
    return Arrays.stream(values).max().orElseThrow() - Arrays.stream(values).min().orElseThrow();
  }

  /** Spindle and artefact, point by point. */
  public record Split(List<Double> spindle, List<Double> artefact) {}

  /**
   * Splits two records by reversal (Donaldson): the artefact turned half round and the indicator
   * moved to the opposite side gives {@code T1 = P + S}, {@code T2 = P - S}.
   *
   * @param first readings of the first set-up [mm]
   * @param second readings of the second, at the same angles of the artefact [mm]
   */
  public static Split reversal(double[] first, double[] second) {
    Require.sameLength("second record", second.length, first.length);
    List<Double> spindle = new ArrayList<>();
    List<Double> artefact = new ArrayList<>();
    for (int i = 0; i < first.length; i++) {
      spindle.add((first[i] - second[i]) / 2);
      artefact.add((first[i] + second[i]) / 2);
    }
    return new Split(List.copyOf(spindle), List.copyOf(artefact));
  }
}
