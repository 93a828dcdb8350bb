package fettle.mechanics.loop;

import fettle.mechanics.base.Unit;
import fettle.mechanics.solids.Limits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Push tests on a machine and what they teach about its elements. The unknowns are the logarithms
 * of the elements' compliances; an element of doubt 1 is taken as known.
 */
public final class Calibration {

  private static final double KNOWN = 1.0001;

  private final LoopModel model;
  private final PushTest state;

  private Calibration(LoopModel model, PushTest state) {
    this.model = model;
    this.state = state;
  }

  /**
   * A push and where it is read: a force between two bodies, an indicator between two bodies.
   *
   * @param name what it is called
   * @param pushed body that is pushed
   * @param pushedFrom body that the push leans on
   * @param force direction of the push at a point: x, y, z, then the point's x, y, z [- and mm]
   * @param read body the indicator touches
   * @param readFrom body the indicator stands on
   * @param pointer direction the indicator reads at a point: x, y, z, then the point [- and mm]
   */
  public record Push(
      String name,
      String pushed,
      String pushedFrom,
      List<Double> force,
      String read,
      String readFrom,
      List<Double> pointer) {

    /**
     * Returns a push at the point of cut, read there.
     *
     * @param model the machine
     * @param name what the push is called
     * @param direction direction of the push, three components [-]
     */
    public static Push atCut(LoopModel model, String name, double... direction) {
      List<Double> line = new ArrayList<>(Link.list(direction));
      line.addAll(model.point());
      return new Push(name, model.tool(), model.work(), line, model.tool(), model.work(), line);
    }
  }

  /** Starts with what the model assumes. */
  public static Calibration of(LoopModel model) {
    double[] mean = new double[model.links().size()];
    double[] sigma = new double[mean.length];
    Arrays.setAll(sigma, i -> Math.log(Math.max(KNOWN, model.links().get(i).doubt())));
    return new Calibration(model, PushTest.before(mean, sigma));
  }

  /**
   * Takes readings in.
   *
   * @param pushes the pushes
   * @param readings deflection per force of each [mm/N]
   * @param deviations standard deviation of each, above 0 [mm/N]
   */
  public Calibration with(List<Push> pushes, double[] readings, double[] deviations) {
    if (pushes.size() != readings.length || readings.length != deviations.length) {
      throw new IllegalArgumentException("give one reading and one deviation for each push");
    }
    for (double d : deviations) {
      Limits.positive("deviation", d, Unit.MM_PER_N);
    }
    return new Calibration(
        model,
        state.with(
            readings,
            deviations,
            theta -> {
              LoopModel now = scaled(theta);
              return pushes.stream().map(p -> expected(now, p)).toList();
            }));
  }

  private LoopModel scaled(double[] theta) {
    return model.scaled(Arrays.stream(theta).map(t -> Math.exp(-t)).toArray());
  }

  private static PushTest.Expected expected(LoopModel model, Push push) {
    Assembly assembly = Assembly.of(model);
    double[] u =
        assembly.solve(
            assembly.pair(push.pushed(), push.pushedFrom(), wrench(model, push.force())));
    double[] v =
        assembly.solve(assembly.pair(push.read(), push.readFrom(), wrench(model, push.pointer())));
    List<Double> slope = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < model.links().size(); i++) {
      double part = assembly.energy(i, u, v);
      slope.add(part);
      sum += part;
    }
    return new PushTest.Expected(sum, slope);
  }

  /** Wrench at the point of cut of a unit force along a line. */
  private static double[] wrench(LoopModel model, List<Double> line) {
    double[] f = {line.get(0), line.get(1), line.get(2)};
    double[] r = new double[3];
    for (int a = 0; a < 3; a++) {
      r[a] = line.get(3 + a) - model.point().get(a);
    }
    return new double[] {
      f[0],
      f[1],
      f[2],
      r[1] * f[2] - r[2] * f[1],
      r[2] * f[0] - r[0] * f[2],
      r[0] * f[1] - r[1] * f[0]
    };
  }

  /** Returns the model with corrected stiffness and the doubts that are left. */
  public LoopModel corrected() {
    double[] sigma = state.deviations();
    LoopModel next = scaled(state.values());
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < sigma.length; i++) {
      Link l = next.links().get(i);
      links.add(model.links().get(i).doubt() < KNOWN ? l : l.doubted(Math.exp(sigma[i])));
    }
    return new LoopModel(links, model.tool(), model.work(), model.point(), model.rides());
  }

  /**
   * Returns what is known.
   *
   * @return misfit of the last readings, near their number if all is well [-]
   */
  public double misfit() {
    return state.misfit();
  }

  /** Returns pairs of elements that the readings taken do not tell apart. */
  public List<String> notSeparated() {
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < model.links().size(); i++) {
      for (int j = 0; j < i; j++) {
        if (Math.abs(state.correlation(i, j)) > 0.8) {
          pairs.add(model.links().get(j).name() + " and " + model.links().get(i).name());
        }
      }
    }
    return List.copyOf(pairs);
  }

  /**
   * Tells which push would teach most about the compliance at the cut in a direction.
   *
   * @param candidates pushes to choose from, at least one
   * @param deviation standard deviation each would be read with [mm/N]
   * @param direction direction of interest: x, y, z [any]
   * @return number of the push and share of the variance it takes away [-]
   */
  public Lesson best(List<Push> candidates, double deviation, double... direction) {
    LoopModel now = scaled(state.values());
    double[] target = slope(expected(now, Push.atCut(now, "target", direction)));
    double before = state.form(target, target);
    int best = 0;
    double most = -1;
    for (int i = 0; i < candidates.size(); i++) {
      double gain =
          state.lesson(target, slope(expected(now, candidates.get(i))), deviation) / before;
      if (gain > most) {
        most = gain;
        best = i;
      }
    }
    return new Lesson(candidates.get(best), most);
  }

  /**
   * The push that teaches most.
   *
   * @param push the push
   * @param gain share of the variance of the compliance it takes away [-]
   */
  public record Lesson(Push push, double gain) {}

  private static double[] slope(PushTest.Expected e) {
    return e.slope().stream().mapToDouble(Double::doubleValue).toArray();
  }
}
