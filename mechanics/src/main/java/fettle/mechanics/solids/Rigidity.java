package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How stiff a part is under its loads, on two meshes, the finer with every cell of the coarser
 * halved, and how much of that a cut costs, both states on the same meshes.
 *
 * @param material what the part is made of
 * @param supports how it is held
 * @param loads what acts on it
 */
public record Rigidity(Elastic material, List<Support> supports, List<Load> loads) {

  private static final double SAFETY = 1.25;

  /**
   * An edge of a sprung or loaded face needs no plane of its own where one of the part is nearer
   * than this share of a step: forces and springs are averaged over the true face [-].
   */
  private static final double NEAR = 0.3;

  /** A face of the part nearer to another than this share of a step counts by what it fills [-]. */
  private static final double SAME = 0.005;

  /** Keeps its own lists. */
  public Rigidity {
    supports = List.copyOf(supports);
    loads = List.copyOf(loads);
    if (loads.isEmpty()) {
      throw new IllegalArgumentException("load: nothing acts on the part");
    }
  }

  /**
   * A load spread over a patch.
   *
   * @param patch where
   * @param wrench Fx, Fy, Fz and, if wanted, Mx, My, Mz [N and N mm]
   */
  public record Load(Patch patch, List<Double> wrench) {}

  /**
   * A value with the error bar of two meshes.
   *
   * @param value extrapolated value [any]
   * @param bar half-width of its discretisation error [same]
   * @param fine value on the finer mesh [same]
   * @param coarse value on the coarser mesh [same]
   */
  public record Estimate(double value, double bar, double fine, double coarse) {

    /**
     * Takes the middle between first and second order of convergence; the bar reaches a quarter
     * beyond both.
     */
    static Estimate of(double fine, double coarse) {
      double step = fine - coarse;
      return new Estimate(fine + 2 * step / 3, SAFETY * 2 / 3 * Math.abs(step), fine, coarse);
    }

    /** Returns the mean of two estimates with half their difference in the bar. */
    Estimate bracket(Estimate other) {
      double half = (value - other.value) / 2;
      return new Estimate(
          (value + other.value) / 2,
          Math.sqrt((bar * bar + other.bar * other.bar) / 2 + half * half),
          (fine + other.fine) / 2,
          (coarse + other.coarse) / 2);
    }
  }

  /**
   * A part before and after a cut.
   *
   * @param before compliance before: twice the energy under the loads [mm/N for a unit force]
   * @param after compliance after
   * @param kept stiffness after over stiffness before [-]
   * @param unknowns unknowns of the finest mesh
   * @param iterations most iterations of a solution
   */
  public record Comparison(
      Estimate before, Estimate after, Estimate kept, int unknowns, int iterations) {}

  /**
   * Compliance of a part: displacement along the loads, twice the energy of unit loads.
   *
   * @param body the part
   * @param step largest step of the finer mesh [mm]
   */
  public Comparison of(Body body, double step) {
    return compare(body, body, step);
  }

  /**
   * Compares a part before and after; both on the same meshes, which hold the planes of both.
   *
   * @param before the part before
   * @param after the part after
   * @param step largest step of the finer mesh [mm]
   */
  public Comparison compare(Body before, Body after, double step) {
    boolean round =
        supports.stream()
            .anyMatch(s -> s instanceof Support.Fixed && s.patch() instanceof Patch.Disc);
    if (!round) {
      return compare(before, after, step, 0.5);
    }
    Comparison outer = compare(before, after, step, 1e-9);
    Comparison inner = compare(before, after, step, 1);
    return new Comparison(
        outer.before.bracket(inner.before),
        outer.after.bracket(inner.after),
        outer.kept.bracket(inner.kept),
        outer.unknowns,
        Math.max(outer.iterations, inner.iterations));
  }

  private Comparison compare(Body before, Body after, double step, double coverage) {
    Grid coarse = grid(List.of(before, after), 2 * step);
    double[][] c = new double[2][2];
    int unknowns = 0;
    int iterations = 0;
    Grid grid = coarse;
    for (int mesh = 0; mesh < 2; mesh++) {
      for (int state = 0; state < (before.equals(after) ? 1 : 2); state++) {
        ElasticModel model =
            ElasticModel.of(state == 0 ? before : after, material, grid, held(coverage));
        double[][] f = load(model);
        c[mesh][state] = model.work(f, model.displacement(f));
        unknowns = model.unknowns();
        iterations = Math.max(iterations, model.iterations());
      }
      if (before.equals(after)) {
        c[mesh][1] = c[mesh][0];
      }
      grid = coarse.halved();
    }
    return new Comparison(
        Estimate.of(c[1][0], c[0][0]),
        Estimate.of(c[1][1], c[0][1]),
        Estimate.of(c[1][0] / c[1][1], c[0][0] / c[0][1]),
        unknowns,
        iterations);
  }

  private double[][] load(ElasticModel model) {
    double[][] sum = null;
    for (Load l : loads) {
      double[] w = l.wrench().stream().mapToDouble(Double::doubleValue).toArray();
      double[][] f = model.load(l.patch(), w);
      if (sum == null) {
        sum = f;
      } else {
        for (int c = 0; c < 3; c++) {
          for (int i = 0; i < f[c].length; i++) {
            sum[c][i] += f[c][i];
          }
        }
      }
    }
    if (sum == null) {
      throw new IllegalStateException("no load");
    }
    return sum;
  }

  private List<Support> held(double coverage) {
    return supports.stream()
        .map(s -> s instanceof Support.Fixed f ? new Support.Fixed(f.patch(), coverage) : s)
        .toList();
  }

  /**
   * Returns a grid through all plane faces of bodies and patches.
   *
   * @param bodies the bodies that must fit it
   * @param step largest step [mm]
   */
  public Grid grid(List<Body> bodies, double step) {
    double[][] low = bodies.get(0).bounds();
    for (Body b : bodies) {
      double[][] one = b.bounds();
      for (int a = 0; a < 3; a++) {
        low[0][a] = Math.min(low[0][a], one[0][a]);
        low[1][a] = Math.max(low[1][a], one[1][a]);
      }
    }
    double[][] forced = new double[3][];
    for (int axis = 0; axis < 3; axis++) {
      List<Double> lies = new ArrayList<>(List.of(low[0][axis], low[1][axis]));
      List<Double> edges = new ArrayList<>();
      for (Support s : supports) {
        add(s.patch(), axis, s instanceof Support.Fixed ? lies : edges, lies);
      }
      for (Load l : loads) {
        add(l.patch(), axis, edges, lies);
      }
      double least = low[0][axis] - 1e-9;
      double most = low[1][axis] + 1e-9;
      lies.removeIf(p -> !(p >= least && p <= most));
      List<Double> planes = new ArrayList<>(lies);
      for (Body b : bodies) {
        Arrays.stream(b.planes(axis))
            .filter(p -> p > least && p < most && apart(p, planes, SAME * step))
            .forEach(planes::add);
      }
      edges.stream()
          .filter(e -> e > least && e < most && apart(e, planes, NEAR * step))
          .forEach(planes::add);
      forced[axis] = planes.stream().mapToDouble(Double::doubleValue).toArray();
    }
    return Grid.through(forced, new double[] {step, step, step}, 1);
  }

  private static boolean apart(double plane, List<Double> planes, double least) {
    return planes.stream().allMatch(p -> Math.abs(p - plane) > least);
  }

  /** Takes the planes of a patch: where it lies, and where its edges are. */
  private static void add(Patch patch, int axis, List<Double> edges, List<Double> lies) {
    if (patch instanceof Patch.Several several) {
      several.patches().forEach(p -> add(p, axis, edges, lies));
      return;
    }
    boolean flat = patch instanceof Patch.Flat f && f.axis() == axis;
    Arrays.stream(patch.planes(axis)).forEach((flat ? lies : edges)::add);
  }
}
