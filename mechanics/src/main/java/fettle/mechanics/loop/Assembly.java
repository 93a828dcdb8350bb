package fettle.mechanics.loop;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The equations of a loop: twists of all bodies, referred to the point of cut. Rotations are
 * counted in units of 1/100 mm, so that numbers stay alike.
 */
final class Assembly {

  static final String GROUND = "ground";
  private static final double ARM = 100;

  private final LoopModel model;
  private final Map<String, Integer> number = new LinkedHashMap<>();
  private final List<double[]> stiffness = new ArrayList<>();
  private final double[][] factor;

  private Assembly(LoopModel model) {
    this.model = model;
    double[] origin = model.point().stream().mapToDouble(Double::doubleValue).toArray();
    String still = still(model);
    refuseLoose(model, still);
    for (Link l : model.links()) {
      for (String body : List.of(l.from(), l.to())) {
        if (!body.equals(still) && !number.containsKey(body)) {
          number.put(body, number.size());
        }
      }
    }
    int n = 6 * number.size();
    double[][] k = new double[n][n];
    for (Link l : model.links()) {
      double[] one = scaled(l.stiffnessAbout(origin));
      stiffness.add(one);
      int a = number.getOrDefault(l.from(), -1);
      int b = number.getOrDefault(l.to(), -1);
      add(k, a, a, one, 1);
      add(k, b, b, one, 1);
      add(k, a, b, one, -1);
      add(k, b, a, one, -1);
    }
    factor = factored(k);
  }

  /** Cholesky's factor; a pivot that all but vanishes tells of a free motion. */
  private static double[][] factored(double[][] k) {
    int n = k.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = k[i][j];
        for (int m = 0; m < j; m++) {
          sum -= l[i][m] * l[j][m];
        }
        if (i > j) {
          l[i][j] = sum / l[j][j];
        } else if (sum > 1e-11 * k[i][i]) {
          l[i][i] = Math.sqrt(sum);
        } else {
          throw new IllegalArgumentException(
              "the loop is not closed in every direction: some body can move freely; give each"
                  + " sliding joint a drive, a lock or a gib in its direction of travel");
        }
      }
    }
    return l;
  }

  static Assembly of(LoopModel model) {
    return new Assembly(model);
  }

  private static String still(LoopModel model) {
    boolean grounded =
        model.links().stream().anyMatch(l -> l.from().equals(GROUND) || l.to().equals(GROUND));
    return grounded ? GROUND : model.work();
  }

  private static void refuseLoose(LoopModel model, String still) {
    Set<String> reached = new java.util.HashSet<>(Set.of(still));
    ArrayDeque<String> queue = new ArrayDeque<>(List.of(still));
    while (!queue.isEmpty()) {
      String body = queue.remove();
      for (Link l : model.links()) {
        String other = l.from().equals(body) ? l.to() : l.to().equals(body) ? l.from() : body;
        if (reached.add(other)) {
          queue.add(other);
        }
      }
    }
    for (String body : List.of(model.tool(), model.work())) {
      if (!reached.contains(body)) {
        throw new IllegalArgumentException("the loop does not reach " + body);
      }
    }
    for (Link l : model.links()) {
      if (!reached.contains(l.from())) {
        throw new IllegalArgumentException("the loop does not reach " + l.from());
      }
    }
  }

  private static double[] scaled(double[] k) {
    double[] s = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        s[6 * i + j] = k[6 * i + j] / ((i < 3 ? 1 : ARM) * (j < 3 ? 1 : ARM));
      }
    }
    return s;
  }

  private static void add(double[][] k, int a, int b, double[] one, double sign) {
    if (a >= 0 && b >= 0) {
      for (int i = 0; i < 6; i++) {
        for (int j = 0; j < 6; j++) {
          k[6 * a + i][6 * b + j] += sign * (one[6 * i + j] + one[6 * j + i]) / 2;
        }
      }
    }
  }

  /** Returns the load of a wrench on one body and its opposite on another. */
  double[] pair(String body, String against, double[] wrench) {
    double[] f = new double[6 * number.size()];
    for (int i = 0; i < 6; i++) {
      double w = i < 3 ? wrench[i] : wrench[i] / ARM;
      put(f, body, i, w);
      put(f, against, i, -w);
    }
    return f;
  }

  /** Returns the load of forces at their own points. */
  double[] load(List<LoopModel.Pull> pulls) {
    double[] f = new double[6 * number.size()];
    for (LoopModel.Pull p : pulls) {
      double[] r = new double[3];
      double[] q = new double[3];
      for (int i = 0; i < 3; i++) {
        r[i] = p.at().get(i) - model.point().get(i);
        q[i] = p.force().get(i);
      }
      for (int i = 0; i < 3; i++) {
        int j = (i + 1) % 3;
        int k = (i + 2) % 3;
        put(f, p.body(), i, q[i]);
        put(f, p.body(), 3 + i, (r[j] * q[k] - r[k] * q[j]) / ARM);
      }
    }
    return f;
  }

  private void put(double[] f, String body, int i, double value) {
    Integer at = number.get(body);
    if (at != null) {
      f[6 * at + i] += value;
    } else if (!body.equals(still(model))) {
      throw new IllegalArgumentException("the loop has no body " + body);
    }
  }

  double[] solve(double[] load) {
    int n = load.length;
    double[] x = load.clone();
    for (int i = 0; i < n; i++) {
      for (int m = 0; m < i; m++) {
        x[i] -= factor[i][m] * x[m];
      }
      x[i] /= factor[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int m = i + 1; m < n; m++) {
        x[i] -= factor[m][i] * x[m];
      }
      x[i] /= factor[i][i];
    }
    return x;
  }

  /** Returns how a body moves at the point of cut: along x, y, z, and turns about them. */
  double[] motion(String body, double[] u) {
    double[] own = new double[6];
    Integer at = number.get(body);
    if (at != null) {
      for (int i = 0; i < 6; i++) {
        own[i] = u[6 * at + i] / (i < 3 ? 1 : ARM);
      }
    } else if (!body.equals(still(model))) {
      throw new IllegalArgumentException("the loop has no body " + body);
    }
    return own;
  }

  /** Returns the work of an element's force under one displacement on another: {@code v K u}. */
  double energy(int link, double[] u, double[] v) {
    double[] k = stiffness.get(link);
    double[] du = stretch(link, u);
    double[] dv = stretch(link, v);
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        sum += dv[i] * k[6 * i + j] * du[j];
      }
    }
    return sum;
  }

  private double[] stretch(int link, double[] u) {
    Link l = model.links().get(link);
    double[] d = new double[6];
    Integer a = number.get(l.from());
    Integer b = number.get(l.to());
    for (int i = 0; i < 6; i++) {
      d[i] = (b == null ? 0 : u[6 * b + i]) - (a == null ? 0 : u[6 * a + i]);
    }
    return d;
  }

  /** Returns the compliance of one body against another at the point of cut. */
  Compliance between(String body, String against) {
    double[][] rows = new double[6][6];
    double[][] loads = new double[6][];
    for (int i = 0; i < 6; i++) {
      double[] w = new double[6];
      w[i] = 1;
      loads[i] = pair(body, against, w);
    }
    for (int j = 0; j < 6; j++) {
      double[] u = solve(loads[j]);
      for (int i = 0; i < 6; i++) {
        double sum = 0;
        for (int k = 0; k < u.length; k++) {
          sum += loads[i][k] * u[k];
        }
        rows[i][j] = sum;
      }
    }
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (rows[i][j] + rows[j][i]) / 2;
        rows[i][j] = mean;
        rows[j][i] = mean;
      }
    }
    return Compliance.of(rows);
  }
}
