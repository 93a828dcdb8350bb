package fettle.mechanics.bearings;

/**
 * All balls of a bearing or of a set of bearings on one rigid shaft. Each ball stretches the line
 * between its groove centres; the strain energy of the lot is a convex function of the five
 * displacements (axial X, radial Y and Z, tilts about y and z), so equilibrium is the one minimum
 * of energy and a safeguarded Newton descent finds it from anywhere.
 *
 * @see Sources#MODEL
 */
final class BallContacts {

  /** Axial, two radial, two tilts. */
  static final int FREEDOMS = 5;

  private static final int MOST_STEPS = 2000;

  private final int count;
  private final double[] sineFree;
  private final double[] cosineFree;
  private final double[] distance;
  private final double[] stiffness;
  private final double[] axialOffset;
  private final double[] radialOffset;
  private final double[][] axialRow;
  private final double[][] radialRow;
  private final double arm;

  /**
   * Collects the balls of bearings standing on one shaft.
   *
   * @param seats bearings with place, direction and preload
   */
  BallContacts(java.util.List<BearingSet.Seat> seats) {
    int n = seats.stream().mapToInt(s -> s.bearing().balls()).sum();
    count = n;
    sineFree = new double[n];
    cosineFree = new double[n];
    distance = new double[n];
    stiffness = new double[n];
    axialOffset = new double[n];
    radialOffset = new double[n];
    axialRow = new double[n][];
    radialRow = new double[n][];
    int at = 0;
    double longest = 0;
    for (BearingSet.Seat seat : seats) {
      BallBearing b = seat.bearing();
      double kn = b.contactStiffness();
      double radius = b.grooveRadius();
      double o = seat.direction();
      double x = seat.place();
      longest = Math.max(longest, Math.max(radius, Math.abs(x)));
      for (int j = 0; j < b.balls(); j++, at++) {
        double psi = seat.firstBall() + 2 * Math.PI * j / b.balls();
        double s = Math.sin(psi);
        double c = Math.cos(psi);
        sineFree[at] = Math.sin(b.angle());
        cosineFree[at] = Math.cos(b.angle());
        distance[at] = b.grooveDistance();
        stiffness[at] = kn;
        axialOffset[at] = seat.approach();
        radialOffset[at] = seat.squeeze() / 2;
        axialRow[at] = new double[] {o, 0, 0, o * radius * s, -o * radius * c};
        radialRow[at] = new double[] {0, c, s, -x * s, x * c};
      }
    }
    arm = longest;
  }

  /** State of all balls at one displacement. */
  static final class State {
    final double[] load;
    final double[] angle;
    final double[] force = new double[FREEDOMS];
    final double[][] tangent = new double[FREEDOMS][FREEDOMS];
    double energy;
    double sum;
    double rounding;

    State(int balls) {
      load = new double[balls];
      angle = new double[balls];
    }
  }

  /** Returns the balls at a displacement: loads, resultant, tangent stiffness, energy. */
  State state(double[] u) {
    State state = new State(count);
    for (int i = 0; i < count; i++) {
      double wx = axialOffset[i] + dot(axialRow[i], u);
      double wr = radialOffset[i] + dot(radialRow[i], u);
      double a = distance[i];
      double sx = a * sineFree[i] + wx;
      double sr = a * cosineFree[i] + wr;
      double length = Math.hypot(sx, sr);
      double stretch =
          (2 * a * (sineFree[i] * wx + cosineFree[i] * wr) + wx * wx + wr * wr) / (length + a);
      state.angle[i] = Math.atan2(sx, sr);
      if (stretch > 0) {
        add(state, i, stretch, length, sx / length, sr / length);
      }
    }
    return state;
  }

  private void add(State state, int i, double stretch, double length, double nx, double nr) {
    double root = Math.sqrt(stretch);
    double q = stiffness[i] * stretch * root;
    double t = 1.5 * stiffness[i] * root;
    double h = q / length;
    state.load[i] = q;
    state.sum += q;
    state.rounding += 1e-15 * t * distance[i];
    state.energy += 0.4 * q * stretch;
    double xx = t * nx * nx + h * nr * nr;
    double rr = t * nr * nr + h * nx * nx;
    double xr = (t - h) * nx * nr;
    double[] bx = axialRow[i];
    double[] br = radialRow[i];
    for (int j = 0; j < FREEDOMS; j++) {
      state.force[j] += q * (nx * bx[j] + nr * br[j]);
      double left = xx * bx[j] + xr * br[j];
      double right = xr * bx[j] + rr * br[j];
      for (int k = 0; k <= j; k++) {
        state.tangent[j][k] += left * bx[k] + right * br[k];
        state.tangent[k][j] = state.tangent[j][k];
      }
    }
  }

  private static double dot(double[] row, double[] u) {
    return row[0] * u[0] + row[1] * u[1] + row[2] * u[2] + row[3] * u[3] + row[4] * u[4];
  }

  /** What a descent ends with. */
  record Found(java.util.List<Double> displacement, int steps) {}

  /**
   * Finds the displacement at which the balls balance a load.
   *
   * @param load Fx, Fy, Fz, My, Mz on the inner rings [N, N mm]
   * @param free which of the five may move; the others stay at 0
   */
  Found balance(double[] load, boolean[] free) {
    double[] scale = {1, 1, 1, 1 / arm, 1 / arm};
    double[] u = new double[FREEDOMS];
    State now = state(u);
    double size = 0;
    for (int i = 0; i < FREEDOMS; i++) {
      size += free[i] ? Math.abs(load[i] * scale[i]) : 0;
    }
    if (size == 0 && now.sum == 0) {
      return found(u, 0);
    }
    double typical = Math.max(size, now.sum) / count;
    double natural = count * Math.cbrt(stiffness[0] * stiffness[0] * typical);
    double damping = natural;
    double[] residual = residual(now, load, free, scale);
    for (int step = 1; step <= MOST_STEPS; step++) {
      double norm = norm(residual);
      if (norm <= 1e-12 * (size + now.sum) + now.rounding) {
        return found(u, step);
      }
      double[] move = move(now, residual, free, scale, damping + 1e-13 * natural);
      double[] tried = new double[FREEDOMS];
      double gain = 0;
      for (int i = 0; i < FREEDOMS; i++) {
        tried[i] = u[i] + scale[i] * move[i];
        gain += 0.5 * move[i] * (residual[i] + damping * move[i]);
      }
      State then = state(tried);
      double[] left = residual(then, load, free, scale);
      double actual = energy(now, load, u) - energy(then, load, tried);
      boolean noise = Math.abs(gain) <= 1e-11 * (Math.abs(energy(now, load, u)) + now.energy);
      double quality = noise ? (norm(left) < norm ? 1 : -1) : actual / gain;
      if (quality > 1e-3) {
        u = tried;
        now = then;
        residual = left;
        damping = quality > 0.7 ? damping * 0.1 : quality < 0.2 ? damping * 4 : damping;
        damping = damping < 1e-10 * natural ? 0 : damping;
      } else if (noise && norm <= 1e-9 * (size + now.sum)) {
        return found(u, step);
      } else {
        damping = Math.max(damping * 6, 1e-8 * natural);
      }
    }
    throw new IllegalArgumentException(
        "the balls find no balance under this load; it is far beyond what the bearing can carry");
  }

  private static Found found(double[] u, int steps) {
    return new Found(java.util.Arrays.stream(u).boxed().toList(), steps);
  }

  private static double energy(State state, double[] load, double[] u) {
    double work = 0;
    for (int i = 0; i < FREEDOMS; i++) {
      work += load[i] * u[i];
    }
    return state.energy - work;
  }

  private static double[] residual(State state, double[] load, boolean[] free, double[] scale) {
    double[] residual = new double[FREEDOMS];
    for (int i = 0; i < FREEDOMS; i++) {
      residual[i] = free[i] ? (load[i] - state.force[i]) * scale[i] : 0;
    }
    return residual;
  }

  private static double norm(double[] v) {
    double sum = 0;
    for (double x : v) {
      sum += x * x;
    }
    return Math.sqrt(sum);
  }

  /** Solves (H + damping I) move = residual by Cholesky; H is never indefinite. */
  private static double[] move(
      State state, double[] residual, boolean[] free, double[] scale, double damping) {
    double[][] m = new double[FREEDOMS][FREEDOMS];
    double trace = 0;
    for (int i = 0; i < FREEDOMS; i++) {
      for (int j = 0; j < FREEDOMS; j++) {
        m[i][j] = free[i] && free[j] ? state.tangent[i][j] * scale[i] * scale[j] : 0;
      }
      trace += m[i][i];
    }
    for (int i = 0; i < FREEDOMS; i++) {
      m[i][i] += free[i] ? damping + 1e-14 * trace : 1;
    }
    double[] x = residual.clone();
    for (int j = 0; j < FREEDOMS; j++) {
      double pivot = m[j][j];
      for (int k = 0; k < j; k++) {
        pivot -= m[j][k] * m[j][k];
      }
      double root = Math.sqrt(Math.max(pivot, 1e-15 * Math.max(m[j][j], damping)));
      m[j][j] = root;
      for (int i = j + 1; i < FREEDOMS; i++) {
        double v = m[i][j];
        for (int k = 0; k < j; k++) {
          v -= m[i][k] * m[j][k];
        }
        m[i][j] = v / root;
      }
    }
    for (int i = 0; i < FREEDOMS; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= m[i][k] * x[k];
      }
      x[i] /= m[i][i];
    }
    for (int i = FREEDOMS - 1; i >= 0; i--) {
      for (int k = i + 1; k < FREEDOMS; k++) {
        x[i] -= m[k][i] * x[k];
      }
      x[i] /= m[i][i];
    }
    return x;
  }

  int count() {
    return count;
  }
}
