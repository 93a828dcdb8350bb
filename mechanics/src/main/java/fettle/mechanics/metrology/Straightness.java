package fettle.mechanics.metrology;

import fettle.mechanics.base.Interval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Heights along a way and what remains of them about a reference line.
 *
 * @param places places along the way [mm]
 * @param heights heights [mm]
 */
public record Straightness(List<Double> places, List<Double> heights) {

  private static final int MOST_PLACES = 5_000;

  /** Keeps its own copies. */
  public Straightness {
    places = List.copyOf(places);
    heights = List.copyOf(heights);
    Require.sameLength("heights", heights.size(), places.size());
    Require.atLeast("places", places.size(), 3);
    if (places.size() > MOST_PLACES) {
      throw new IllegalArgumentException(
          "places: found " + places.size() + ", expected at most " + MOST_PLACES);
    }
    for (int i = 1; i < places.size(); i++) {
      if (!(places.get(i) > places.get(i - 1))) {
        throw new IllegalArgumentException("places: expected in rising order, each only once");
      }
    }
  }

  /**
   * Sums up the steps of a level moved along the way: {@code h_k = base sum(slope)}.
   *
   * @param slopes slope of each step, positive if the far end is higher [mm/mm]
   * @param base distance of the feet [mm]
   */
  public static Straightness ofLevel(double[] slopes, double base) {
    Require.positive("base", base);
    Require.atLeast("level readings", slopes.length, 2);
    List<Double> places = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    double h = 0;
    places.add(0.0);
    heights.add(0.0);
    for (int i = 0; i < slopes.length; i++) {
      h += slopes[i] * base;
      places.add((i + 1) * base);
      heights.add(h);
    }
    return new Straightness(places, heights);
  }

  /** Takes heights at places. */
  public static Straightness of(double[] places, double[] heights) {
    return new Straightness(
        Arrays.stream(places).boxed().toList(), Arrays.stream(heights).boxed().toList());
  }

  /**
   * Returns the deviations from the line through the end points.
   *
   * @return deviations [mm]
   */
  public double[] fromEnds() {
    int last = places.size() - 1;
    double slope = (heights.get(last) - heights.get(0)) / (places.get(last) - places.get(0));
    return from(heights.get(0) - slope * places.get(0), slope);
  }

  /**
   * Returns the deviations from the least-squares line.
   *
   * @return deviations [mm]
   */
  public double[] fromLine() {
    double[] z = places.stream().mapToDouble(Double::doubleValue).toArray();
    double[] h = heights.stream().mapToDouble(Double::doubleValue).toArray();
    LinearFit fit = CalibrationLine.of(z, h, 0).fit();
    return from(fit.value("y1"), fit.value("y2"));
  }

  /**
   * Returns the width of the narrowest band between two parallel lines that holds all heights,
   * measured across the way. One of the two lines lies along an edge of the convex hull, and the
   * width is a convex function of the slope, so the edges are searched by halving.
   *
   * @return minimum zone [mm]
   */
  public double minimumZone() {
    double[] slopes =
        Stream.concat(edges(1).stream(), edges(-1).stream())
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    int low = 0;
    int high = slopes.length - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (RunOut.range(from(0, slopes[middle])) <= RunOut.range(from(0, slopes[middle + 1]))) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return RunOut.range(from(0, slopes[low]));
  }

  /** Slopes of the edges of the convex hull above the heights (side 1) or below them (side -1). */
  private List<Double> edges(int side) {
    List<Integer> hull = new ArrayList<>();
    for (int k = 0; k < places.size(); k++) {
      while (hull.size() > 1
          && side * slope(hull.get(hull.size() - 2), hull.get(hull.size() - 1))
              <= side * slope(hull.get(hull.size() - 1), k)) {
        hull.remove(hull.size() - 1);
      }
      hull.add(k);
    }
    List<Double> slopes = new ArrayList<>();
    for (int i = 1; i < hull.size(); i++) {
      slopes.add(slope(hull.get(i - 1), hull.get(i)));
    }
    return slopes;
  }

  private double slope(int from, int to) {
    return (heights.get(to) - heights.get(from)) / (places.get(to) - places.get(from));
  }

  /**
   * Returns the largest deviation over any shorter length: range about the line through the ends of
   * the window.
   *
   * @param window length of the window [mm]
   * @return local value [mm]
   */
  public double local(double window) {
    Require.positive("window", window);
    double worst = 0;
    int n = places.size();
    for (int i = 0; i < n; i++) {
      int j = i;
      while (j + 1 < n && places.get(j + 1) - places.get(i) <= window * (1 + 1e-12)) {
        j++;
      }
      if (j - i >= 2) {
        worst =
            Math.max(
                worst,
                RunOut.range(
                    new Straightness(places.subList(i, j + 1), heights.subList(i, j + 1))
                        .fromEnds()));
      }
    }
    return worst;
  }

  /**
   * Returns the standard uncertainty of a height after the end-point line: {@code base u sqrt(k (1
   * - k/K))}.
   *
   * @param k number of the step
   * @param steps number of all steps K
   * @param base distance of the feet [mm]
   * @param u standard uncertainty of a slope [mm/mm]
   * @return standard uncertainty [mm]
   */
  public static double heightUncertainty(int k, int steps, double base, double u) {
    return base * u * Math.sqrt(k * (1 - k / (double) steps));
  }

  /**
   * Returns the largest difference of the errors of two places not farther apart than a window.
   *
   * @param z places in rising order [mm]
   * @param errors errors [mm]
   * @param window largest distance [mm]
   * @return largest difference [mm]
   */
  public static double windowed(double[] z, double[] errors, double window) {
    Require.sameLength("errors", errors.length, z.length);
    Require.positive("window", window);
    double worst = 0;
    for (int i = 0; i < z.length; i++) {
      for (int j = i + 1; j < z.length; j++) {
        if (!(z[j] > z[i])) {
          throw new IllegalArgumentException("z: expected in rising order, each only once");
        }
        if (z[j] - z[i] > window * (1 + 1e-12)) {
          break;
        }
        worst = Math.max(worst, Math.abs(errors[j] - errors[i]));
      }
    }
    return worst;
  }

  /** Returns the lowest and highest deviation from the line through the end points. */
  public Interval band() {
    double[] d = fromEnds();
    return new Interval(Arrays.stream(d).min().orElseThrow(), Arrays.stream(d).max().orElseThrow());
  }

  private double[] from(double origin, double slope) {
    double[] d = new double[places.size()];
    for (int i = 0; i < d.length; i++) {
      d[i] = heights.get(i) - origin - slope * places.get(i);
    }
    return d;
  }
}
