package fettle.mechanics.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Formulas from stock to blank. */
public final class Stock {

  /** Hole circles of the three plates most dividing heads come with (common practice). */
  public static final List<Integer> USUAL_CIRCLES =
      List.of(15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49);

  private Stock() {}

  private static void positive(String name, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " must lie above 0 " + unit + ", found " + value + " " + unit);
    }
  }

  /**
   * Returns how many bars a list of pieces needs, the longest piece first, each into the first bar
   * it fits.
   *
   * @param pieces lengths of the pieces, any order [mm]
   * @param bar length of a bar [mm]
   * @param kerf width of the cut after each piece [mm]
   * @return what is left of each bar, one entry a bar [mm]
   * @throws IllegalArgumentException if a piece is longer than a bar
   */
  public static double[] offcuts(double[] pieces, double bar, double kerf) {
    positive("bar", bar, "mm");
    if (!(kerf >= 0) || kerf > 50) {
      throw new IllegalArgumentException("kerf must lie between 0 and 50 mm, found " + kerf);
    }
    if (pieces.length == 0 || pieces.length > 2000) {
      throw new IllegalArgumentException("pieces must be 1 to 2000 lengths");
    }
    double[] sorted = pieces.clone();
    Arrays.sort(sorted);
    List<Double> left = new ArrayList<>();
    for (int i = sorted.length - 1; i >= 0; i--) {
      double piece = sorted[i];
      positive("pieces", piece, "mm");
      if (piece > bar) {
        throw new IllegalArgumentException(
            "a piece of " + piece + " mm does not come out of a bar of " + bar + " mm");
      }
      int fit = -1;
      for (int k = 0; k < left.size() && fit < 0; k++) {
        fit = left.get(k) >= piece ? k : -1;
      }
      if (fit < 0) {
        left.add(bar);
        fit = left.size() - 1;
      }
      left.set(fit, Math.max(0, left.get(fit) - piece - kerf));
    }
    return left.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * Returns the smallest listed size that is at least so large.
   *
   * @param least least size [mm]
   * @param sizes listed sizes, any order [mm]
   * @return the size to take [mm]
   * @throws IllegalArgumentException if none is large enough
   */
  public static double next(double least, double[] sizes) {
    return Arrays.stream(sizes)
        .filter(s -> s >= least - 1e-9)
        .min()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no listed size reaches " + least + " mm; buy larger stock or list it"));
  }

  /**
   * Returns the greatest listed speed that is not above a wanted one, or the lowest if all are.
   *
   * @param wanted wanted speed [rad/s]
   * @param speeds speeds the machine has, any order [rad/s]
   * @return the speed to take [rad/s]
   */
  public static double speedBelow(double wanted, double[] speeds) {
    double best = 0;
    double lowest = Double.POSITIVE_INFINITY;
    for (double s : speeds) {
      positive("speeds", s, "rad/s");
      lowest = Math.min(lowest, s);
      best = s <= wanted * (1 + 1e-12) ? Math.max(best, s) : best;
    }
    return best > 0 ? best : lowest;
  }

  /**
   * One mark of a dividing head.
   *
   * @param turns whole turns of the crank
   * @param holes holes further on the circle
   * @param circle holes of the circle used
   */
  public record Indexing(int turns, int holes, int circle) {}

  /**
   * Returns the crank movement for one division on the smallest circle that fits exactly.
   *
   * @param divisions divisions of the work
   * @param ratio turns of the crank to one of the work
   * @param circles hole circles there are
   * @throws IllegalArgumentException if no circle divides exactly
   */
  public static Indexing indexing(int divisions, int ratio, int[] circles) {
    if (divisions < 2 || divisions > 100_000 || ratio < 1 || ratio > 1000) {
      throw new IllegalArgumentException(
          "divisions must be 2 to 100000 and the ratio 1 to 1000, found "
              + divisions
              + ", "
              + ratio);
    }
    int best = 0;
    for (int circle : circles) {
      if (circle < 1) {
        throw new IllegalArgumentException("a hole circle has at least 1 hole, found " + circle);
      }
      boolean exact = (long) ratio * circle % divisions == 0;
      best = exact && (best == 0 || circle < best) ? circle : best;
    }
    if (best == 0) {
      throw new IllegalArgumentException(
          divisions
              + " divisions fall between the holes of every circle; make a plate of "
              + divisions / gcd(divisions, ratio)
              + " holes, or index by degrees");
    }
    long holes = (long) ratio * best / divisions;
    return new Indexing((int) (holes / best), (int) (holes % best), best);
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /**
   * Returns the flat length of a strip bent into legs, all by the same angle.
   *
   * @param legs outside lengths of the legs [mm]
   * @param thickness thickness [mm]
   * @param radius inside radius [mm]
   * @param neutral place of the neutral line as a share of the thickness, K [-]
   * @param angle angle bent through at each bend [rad]
   * @return flat length [mm]
   */
  public static double flatLength(
      double[] legs, double thickness, double radius, double neutral, double angle) {
    positive("T", thickness, "mm");
    if (!(radius >= 0) || !(neutral > 0) || !(neutral <= 1) || !(angle > 0) || !(angle < Math.PI)) {
      throw new IllegalArgumentException(
          "R must be 0 mm or more, K above 0 up to 1, and the angle bent through between 0 and 180"
              + " deg");
    }
    double setback = (radius + thickness) * Math.tan(angle / 2);
    double sum = 0;
    for (int i = 0; i < legs.length; i++) {
      double ends = legs.length == 1 ? 0 : i == 0 || i == legs.length - 1 ? setback : 2 * setback;
      if (!(legs[i] > ends)) {
        throw new IllegalArgumentException(
            "a leg of " + legs[i] + " mm is shorter than its bends take, " + ends + " mm");
      }
      sum += legs[i];
    }
    int bends = legs.length - 1;
    return sum + bends * (angle * (radius + neutral * thickness) - 2 * setback);
  }
}
