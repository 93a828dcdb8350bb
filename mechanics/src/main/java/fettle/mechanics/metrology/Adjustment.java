package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * Which screw, shim or foot to move and by how much, from all errors of one alignment together: the
 * moves a minimise {@code sum(((e - g + J a)/l)^2)} within their bounds.
 */
public final class Adjustment {

  /** Most adjusters solved together. */
  public static final int MOST_ADJUSTERS = 8;

  /** Most combinations of discrete moves tried. */
  public static final int MOST_COMBINATIONS = 200_000;

  private final RealMatrix influence;
  private final double[] weighted;
  private final int adjusters;

  private Adjustment(RealMatrix influence, double[] weighted) {
    this.influence = influence;
    this.weighted = weighted;
    this.adjusters = influence.getColumnDimension();
  }

  /**
   * Sets the task.
   *
   * @param errors measured errors less their targets, one for each row [any]
   * @param limits limit of each error [same]
   * @param influence a row for each error: its change for one unit of each adjuster [any]
   */
  public static Adjustment of(double[] errors, double[] limits, double[][] influence) {
    int m = errors.length;
    Require.sameLength("limits", limits.length, m);
    Require.sameLength("influence", influence.length, m);
    Require.atLeast("errors", m, 1);
    int n = influence[0].length;
    Require.columns("influence", influence, n, "one number for each adjuster");
    Require.atMost("adjusters", n, MOST_ADJUSTERS);
    RealMatrix j = MatrixUtils.createRealMatrix(m, n);
    double[] e = new double[m];
    for (int i = 0; i < m; i++) {
      double limit = Require.positive("limit " + (i + 1), limits[i]);
      e[i] = errors[i] / limit;
      for (int k = 0; k < n; k++) {
        j.setEntry(i, k, influence[i][k] / limit);
      }
    }
    return new Adjustment(j, e);
  }

  /**
   * Returns the sum of squares that is left after moves, each error over its limit.
   *
   * @param moves moves of the adjusters [any]
   * @return sum of squares [-]
   */
  public double objective(double[] moves) {
    double sum = 0;
    for (double r : residuals(moves)) {
      sum += r * r;
    }
    return sum;
  }

  /**
   * Returns the errors left after moves, each over its limit.
   *
   * @param moves moves of the adjusters [any]
   * @return errors over limits [-]
   */
  public double[] residuals(double[] moves) {
    double[] r = influence.operate(moves);
    for (int i = 0; i < r.length; i++) {
      r[i] += weighted[i];
    }
    return r;
  }

  /**
   * Returns the largest error left over its limit.
   *
   * @param moves moves of the adjusters [any]
   * @return largest amount [-]
   */
  public double worst(double[] moves) {
    return Arrays.stream(residuals(moves)).map(Math::abs).max().orElseThrow();
  }

  /**
   * Returns the best moves without bounds; of several equally good ones the smallest.
   *
   * @return moves [any]
   */
  public double[] free() {
    double inf = Double.POSITIVE_INFINITY;
    double[] low = new double[adjusters];
    double[] high = new double[adjusters];
    Arrays.fill(low, -inf);
    Arrays.fill(high, inf);
    return bounded(low, high);
  }

  /**
   * Returns the best moves within bounds, by trying every set of adjusters that stand at a bound.
   *
   * @param low least moves, may be -infinite [any]
   * @param high largest moves, may be infinite [any]
   * @return moves [any]
   */
  public double[] bounded(double[] low, double[] high) {
    Require.sameLength("low", low.length, adjusters);
    Require.sameLength("high", high.length, adjusters);
    for (int k = 0; k < adjusters; k++) {
      if (!(low[k] <= high[k])) {
        throw new IllegalArgumentException(
            "bounds: adjuster " + (k + 1) + " has low " + low[k] + " above high " + high[k]);
      }
    }
    double[] best = null;
    double least = Double.POSITIVE_INFINITY;
    int[] state = new int[adjusters];
    int combinations = (int) Math.round(Math.pow(3, adjusters));
    for (int code = 0; code < combinations; code++) {
      int rest = code;
      boolean possible = true;
      for (int k = 0; k < adjusters; k++) {
        state[k] = rest % 3;
        rest /= 3;
        double bound = state[k] == 1 ? low[k] : high[k];
        possible &= state[k] == 0 ? low[k] < high[k] : Double.isFinite(bound);
      }
      double[] moves = possible ? face(state, low, high) : null;
      if (moves != null) {
        double value = objective(moves);
        if (value < least - 1e-14 * (1 + value)) {
          least = value;
          best = moves;
        }
      }
    }
    if (best == null) {
      throw new IllegalArgumentException(
          "bounds: no move can be computed within them; check their sizes and units");
    }
    return best;
  }

  /** Best moves with some adjusters held at a bound; null if a free one leaves its bounds. */
  private double @org.jspecify.annotations.Nullable [] face(
      int[] state, double[] low, double[] high) {
    double[] moves = new double[adjusters];
    List<Integer> free = new ArrayList<>();
    for (int k = 0; k < adjusters; k++) {
      if (state[k] == 0) {
        free.add(k);
      } else {
        moves[k] = state[k] == 1 ? low[k] : high[k];
      }
    }
    if (!free.isEmpty()) {
      RealMatrix part = MatrixUtils.createRealMatrix(weighted.length, free.size());
      for (int c = 0; c < free.size(); c++) {
        part.setColumnVector(c, influence.getColumnVector(free.get(c)));
      }
      double[] solution = solve(part, residuals(moves));
      for (int c = 0; c < free.size(); c++) {
        int k = free.get(c);
        double slack = 1e-9 * (1 + Math.abs(solution[c]));
        if (solution[c] < low[k] - slack || solution[c] > high[k] + slack) {
          return null;
        }
        moves[k] = Math.max(low[k], Math.min(high[k], solution[c]));
      }
    }
    return moves;
  }

  /** Least-squares solution of smallest size. */
  private static double[] solve(RealMatrix part, double[] residuals) {
    int n = part.getColumnDimension();
    RealMatrix scaled = part.copy();
    double[] scale = new double[n];
    for (int k = 0; k < n; k++) {
      double norm = part.getColumnVector(k).getNorm();
      scale[k] = norm > 0 ? norm : 1;
      scaled.setColumnVector(k, part.getColumnVector(k).mapDivide(scale[k]));
    }
    SingularValueDecomposition svd = new SingularValueDecomposition(scaled);
    double[] s = svd.getSingularValues();
    double[] moves = new double[n];
    double[] u = svd.getUT().operate(residuals);
    for (int i = 0; i < s.length; i++) {
      if (s[i] > LeastSquares.CUT * s[0]) {
        for (int k = 0; k < n; k++) {
          moves[k] -= svd.getV().getEntry(k, i) * u[i] / s[i] / scale[k];
        }
      }
    }
    return moves;
  }

  /**
   * Returns the best moves of which some come in steps or from a stock. Neighbours of the best
   * continuous moves are tried, all of them where there are few; the continuous adjusters are
   * solved anew for each.
   *
   * @param allowed allowed moves of each adjuster; an empty list for a continuous one
   * @param low least moves of the continuous ones [any]
   * @param high largest moves of the continuous ones [any]
   * @return moves [any]
   */
  public double[] discrete(List<List<Double>> allowed, double[] low, double[] high) {
    Require.sameLength("allowed", allowed.size(), adjusters);
    double[] lowest = low.clone();
    double[] highest = high.clone();
    for (int k = 0; k < adjusters; k++) {
      if (!allowed.get(k).isEmpty()) {
        lowest[k] = allowed.get(k).stream().mapToDouble(v -> v).min().orElseThrow();
        highest[k] = allowed.get(k).stream().mapToDouble(v -> v).max().orElseThrow();
      }
    }
    double[] smooth = bounded(lowest, highest);
    List<List<Double>> tried = new ArrayList<>();
    long all = 1;
    for (List<Double> values : allowed) {
      all = Math.min(Integer.MAX_VALUE, all * Math.max(1, values.size()));
    }
    boolean continuous = allowed.stream().anyMatch(List::isEmpty);
    long most = continuous ? 2_000 : MOST_COMBINATIONS;
    int keep = 41;
    while (keep > 1 && all > most) {
      keep = Math.max(1, keep - 2);
      all = 1;
      for (List<Double> values : allowed) {
        all = Math.min(Integer.MAX_VALUE, all * Math.max(1, Math.min(keep, values.size())));
      }
    }
    for (int k = 0; k < adjusters; k++) {
      double target = smooth[k];
      tried.add(
          allowed.get(k).stream()
              .sorted((a, b) -> Double.compare(Math.abs(a - target), Math.abs(b - target)))
              .limit(all <= most && keep == 41 ? Integer.MAX_VALUE : keep)
              .toList());
    }
    double[] best = smooth.clone();
    search(tried, 0, lowest, highest, best, new double[] {Double.POSITIVE_INFINITY});
    return best;
  }

  private void search(
      List<List<Double>> tried, int k, double[] low, double[] high, double[] best, double[] least) {
    if (k == adjusters) {
      boolean fixed = tried.stream().noneMatch(List::isEmpty);
      double[] moves = fixed ? low.clone() : bounded(low, high);
      double value = objective(moves);
      if (value < least[0]) {
        least[0] = value;
        System.arraycopy(moves, 0, best, 0, moves.length);
      }
      return;
    }
    if (tried.get(k).isEmpty()) {
      search(tried, k + 1, low, high, best, least);
      return;
    }
    double lowest = low[k];
    double highest = high[k];
    for (double value : tried.get(k)) {
      low[k] = value;
      high[k] = value;
      search(tried, k + 1, low, high, best, least);
    }
    low[k] = lowest;
    high[k] = highest;
  }

  /**
   * Returns the moves that make the largest error over its limit least (linear programme).
   *
   * @param low least moves, may be -infinite [any]
   * @param high largest moves, may be infinite [any]
   * @return moves [any]
   */
  public double[] smallestWorst(double[] low, double[] high) {
    int m = weighted.length;
    int n = adjusters;
    double[] scale = new double[n];
    for (int k = 0; k < n; k++) {
      double norm = influence.getColumnVector(k).getNorm();
      scale[k] = norm > 0 ? 1 / norm : 1;
    }
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int i = 0; i < m; i++) {
      double[] up = new double[n + 1];
      double[] down = new double[n + 1];
      for (int k = 0; k < n; k++) {
        up[k] = influence.getEntry(i, k) * scale[k];
        down[k] = -up[k];
      }
      up[n] = -1;
      down[n] = -1;
      constraints.add(new LinearConstraint(up, Relationship.LEQ, -weighted[i]));
      constraints.add(new LinearConstraint(down, Relationship.LEQ, weighted[i]));
    }
    for (int k = 0; k < n; k++) {
      double[] one = new double[n + 1];
      one[k] = 1;
      if (Double.isFinite(low[k])) {
        constraints.add(new LinearConstraint(one, Relationship.GEQ, low[k] / scale[k]));
      }
      if (Double.isFinite(high[k])) {
        constraints.add(new LinearConstraint(one, Relationship.LEQ, high[k] / scale[k]));
      }
    }
    double[] cost = new double[n + 1];
    cost[n] = 1;
    double[] point =
        new SimplexSolver()
            .optimize(
                new MaxIter(10_000),
                new LinearObjectiveFunction(cost, 0),
                new LinearConstraintSet(constraints),
                GoalType.MINIMIZE,
                new NonNegativeConstraint(false))
            .getPoint();
    double[] moves = new double[n];
    for (int k = 0; k < n; k++) {
      moves[k] = point[k] * scale[k];
    }
    return moves;
  }

  /**
   * Returns the chance that an error ends within its limits after the moves.
   *
   * @param left error left [any]
   * @param u its standard uncertainty [same]
   * @param limit limit of the amount [same]
   * @return probability [-]
   */
  public static double chance(double left, double u, double limit) {
    return Verdict.between(left, u, -limit, limit, 0.95).probability();
  }

  /**
   * Returns the influence corrected by what a move really did (Broyden).
   *
   * @param influence influence so far, a row for each error [any]
   * @param moves moves made [any]
   * @param changes changes of the errors seen [any]
   * @return corrected influence [any]
   */
  public static double[][] corrected(double[][] influence, double[] moves, double[] changes) {
    Require.sameLength("changes", changes.length, influence.length);
    double size = new ArrayRealVector(moves).dotProduct(new ArrayRealVector(moves));
    Require.positive("size of the moves", size);
    double[][] next = new double[influence.length][];
    for (int i = 0; i < influence.length; i++) {
      Require.sameLength("moves", moves.length, influence[i].length);
      next[i] = influence[i].clone();
      double rest = changes[i];
      for (int k = 0; k < moves.length; k++) {
        rest -= influence[i][k] * moves[k];
      }
      for (int k = 0; k < moves.length; k++) {
        next[i][k] += rest * moves[k] / size;
      }
    }
    return next;
  }

  /**
   * Returns shims {@code t = c + pitch z + roll h} that tip a casting, the smallest 0.
   *
   * @param h places of the feet across [mm]
   * @param z places of the feet along [mm]
   * @param pitch wanted tip along, + the far end up [mm/mm]
   * @param roll wanted tip across, + the front up [mm/mm]
   * @return shim of each foot [mm]
   */
  public static double[] feet(double[] h, double[] z, double pitch, double roll) {
    Require.sameLength("feet_z", z.length, h.length);
    Require.atLeast("feet", h.length, 3);
    double[] t = new double[h.length];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < t.length; i++) {
      t[i] = pitch * z[i] + roll * h[i];
      least = Math.min(least, t[i]);
    }
    for (int i = 0; i < t.length; i++) {
      t[i] -= least;
    }
    return t;
  }

  /**
   * Returns the pieces of a stock whose sum comes nearest to a thickness.
   *
   * @param stock thickness of each piece, at most 20 [mm]
   * @param wanted wanted thickness [mm]
   * @return pieces taken, thickest first [mm]
   */
  public static double[] stack(double[] stock, double wanted) {
    Require.atMost("pieces", stock.length, 20);
    Require.notNegative("wanted", wanted);
    double best = wanted;
    int chosen = 0;
    for (int code = 1; code < 1 << stock.length; code++) {
      double sum = 0;
      for (int i = 0; i < stock.length; i++) {
        sum += (code >> i & 1) == 1 ? Require.positive("stock", stock[i]) : 0;
      }
      double miss = Math.abs(sum - wanted);
      boolean fewer = Integer.bitCount(code) < Integer.bitCount(chosen);
      if (miss < best - 1e-9 || (miss < best + 1e-9 && fewer)) {
        best = miss;
        chosen = code;
      }
    }
    List<Double> pieces = new ArrayList<>();
    for (int i = 0; i < stock.length; i++) {
      if ((chosen >> i & 1) == 1) {
        pieces.add(-stock[i]);
      }
    }
    return pieces.stream().sorted().mapToDouble(v -> -v).toArray();
  }
}
