package fettle.mechanics.shafts;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * A spindle cut into beam elements: static deflection with its causes, natural frequencies, whirl.
 *
 * @see Sources#BEAM
 */
public final class SpindleModel {

  private static final double STATIC_SHARE = 1e9;
  private static final double DYNAMIC_SHARE = 0.25;

  private final Spindle spindle;
  private final double[] nodes;
  private final List<BeamElement> elements;

  private SpindleModel(Spindle spindle, double[] nodes) {
    this.spindle = spindle;
    this.nodes = nodes;
    List<BeamElement> list = new ArrayList<>();
    for (int i = 1; i < nodes.length; i++) {
      Spindle.Step step = spindle.stepAt(0.5 * (nodes[i - 1] + nodes[i]));
      list.add(
          new BeamElement(
              nodes[i] - nodes[i - 1],
              Section.round(step.outer(), step.inner(), spindle.material().poisson()),
              spindle.material()));
    }
    this.elements = List.copyOf(list);
  }

  /**
   * What a load does to a spindle.
   *
   * @param deflection across, at the load [mm]
   * @param slope at the load [rad]
   * @param reactions force of each support on the shaft, in their order [N]
   * @param bending share of the give from bending [-]
   * @param shear share of the give from shear [-]
   * @param bearings share of the give from each support [-]
   * @param line places and deflections along the shaft: x1, v1, x2, v2 ... [mm]
   */
  public record Deflected(
      double deflection,
      double slope,
      List<Double> reactions,
      double bending,
      double shear,
      List<Double> bearings,
      List<Double> line) {}

  private DMatrixRMaj stiffness() {
    DMatrixRMaj k = assembled(BeamElement::stiffness);
    for (Spindle.Support s : spindle.supports()) {
      int n = node(s.place());
      k.add(2 * n, 2 * n, s.radial());
      k.add(2 * n + 1, 2 * n + 1, s.tilt());
    }
    return k;
  }

  private interface Matrix {
    double[] of(BeamElement element);
  }

  private DMatrixRMaj assembled(Matrix matrix) {
    DMatrixRMaj sum = new DMatrixRMaj(2 * nodes.length, 2 * nodes.length);
    for (int e = 0; e < elements.size(); e++) {
      double[] m = matrix.of(elements.get(e));
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          sum.add(2 * e + i, 2 * e + j, m[4 * i + j]);
        }
      }
    }
    return sum;
  }

  private DMatrixRMaj mass() {
    DMatrixRMaj m = assembled(BeamElement::mass);
    DMatrixRMaj r = assembled(BeamElement::rotary);
    for (int i = 0; i < m.data.length; i++) {
      m.data[i] += r.data[i];
    }
    for (Spindle.RigidMass body : spindle.masses()) {
      int n = 2 * node(body.place());
      m.add(n, n, body.mass());
      m.add(n, n + 1, body.mass() * body.offset());
      m.add(n + 1, n, body.mass() * body.offset());
      m.add(n + 1, n + 1, body.diametral() + body.mass() * body.offset() * body.offset());
    }
    return m;
  }

  private DMatrixRMaj gyroscopic() {
    DMatrixRMaj g = assembled(BeamElement::rotary);
    for (int i = 0; i < g.data.length; i++) {
      g.data[i] *= 2;
    }
    for (Spindle.RigidMass body : spindle.masses()) {
      int n = 2 * node(body.place());
      g.add(n + 1, n + 1, body.polar());
    }
    return g;
  }

  private int node(double place) {
    int best = 0;
    for (int i = 1; i < nodes.length; i++) {
      if (Math.abs(nodes[i] - place) < Math.abs(nodes[best] - place)) {
        best = i;
      }
    }
    return best;
  }

  /**
   * Returns what a force across the shaft does. A force beyond the nose acts on a rigid arm.
   *
   * @param spindle the spindle
   * @param place x of the force [mm]
   * @param force F, not 0 [N]
   */
  public static Deflected under(Spindle spindle, double place, double force) {
    if (!(place >= 0) || Double.isInfinite(place)) {
      throw new IllegalArgumentException(
          "place of the force: found " + place + " mm, expected 0 or more");
    }
    if (!(Math.abs(force) > 0) || Double.isInfinite(force)) {
      throw new IllegalArgumentException(
          "force: found " + force + " N, expected a force that is not 0");
    }
    double on = Math.min(place, spindle.length());
    return new SpindleModel(spindle, spindle.nodes(STATIC_SHARE, on)).under(place - on, on, force);
  }

  private Deflected under(double arm, double on, double force) {
    DMatrixRMaj load = new DMatrixRMaj(2 * nodes.length, 1);
    int n = node(on);
    load.set(2 * n, 0, force);
    load.set(2 * n + 1, 0, force * arm);
    DMatrixRMaj u = solved(stiffness(), load);
    double give = u.get(2 * n, 0) + arm * u.get(2 * n + 1, 0);
    double work = force * give;
    List<Double> reactions = new ArrayList<>();
    List<Double> bearings = new ArrayList<>();
    double springs = 0;
    for (Spindle.Support s : spindle.supports()) {
      int k = node(s.place());
      double v = u.get(2 * k, 0);
      double t = u.get(2 * k + 1, 0);
      reactions.add(-s.radial() * v);
      double share = (s.radial() * v * v + s.tilt() * t * t) / work;
      bearings.add(share);
      springs += share;
    }
    double shear = shearWork(u) / work;
    List<Double> line = new ArrayList<>();
    for (int i = 0; i < nodes.length; i++) {
      line.add(nodes[i]);
      line.add(u.get(2 * i, 0));
    }
    return new Deflected(
        give,
        u.get(2 * n + 1, 0),
        List.copyOf(reactions),
        1 - springs - shear,
        shear,
        List.copyOf(bearings),
        List.copyOf(line));
  }

  private double shearWork(DMatrixRMaj u) {
    double work = 0;
    for (int e = 0; e < elements.size(); e++) {
      BeamElement b = elements.get(e);
      double[] k = b.stiffness();
      double v = 0;
      for (int j = 0; j < 4; j++) {
        v += k[j] * u.get(2 * e + j, 0);
      }
      work +=
          v
              * v
              * b.length()
              / (b.section().shear() * b.material().shearModulus() * b.section().area());
    }
    return work;
  }

  private static DMatrixRMaj solved(DMatrixRMaj k, DMatrixRMaj load) {
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(k.numRows);
    DMatrixRMaj u = new DMatrixRMaj(k.numRows, 1);
    if (!solver.setA(k.copy())) {
      throw new IllegalArgumentException(
          "the shaft is not held: it needs two supports, or one that also holds it against tilting");
    }
    solver.solve(load, u);
    return u;
  }

  /**
   * Returns the natural frequencies in bending, lowest first, rigid motions left out.
   *
   * @param spindle the spindle
   * @return frequencies [Hz]
   */
  public static double[] frequencies(Spindle spindle) {
    SpindleModel model = new SpindleModel(spindle, spindle.nodes(DYNAMIC_SHARE));
    double[] w = Modes.frequencies(model.stiffness(), model.mass());
    return java.util.Arrays.stream(w).map(v -> v / (2 * Math.PI)).filter(f -> f > 1e-3).toArray();
  }

  /**
   * Returns the whirl frequencies of the turning shaft, rising; backward ones negative.
   *
   * @param spindle the spindle
   * @param speed speed of turning [rad/s]
   * @return frequencies [Hz]
   */
  public static double[] whirl(Spindle spindle, double speed) {
    Need.within("n in rad/s", speed, 0, 1e5);
    SpindleModel model = new SpindleModel(spindle, spindle.nodes(0.5));
    double[] w = Modes.whirl(model.stiffness(), model.mass(), model.gyroscopic(), speed);
    return java.util.Arrays.stream(w).map(v -> v / (2 * Math.PI)).toArray();
  }
}
