package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import java.util.List;

/** Draws what the drive gives at each speed, and the largest cut each speed carries. */
public final class DrivePicture {

  private DrivePicture() {}

  /**
   * One step of the drive.
   *
   * @param name its name
   * @param speed rated speed of the spindle [rpm]
   * @param slowest slowest speed of the step [rpm]
   * @param fastest fastest speed of the step [rpm]
   * @param torque torque at the rated speed [N m]
   * @param depth deepest cut, 0 if it is not known [mm]
   * @param rule what limits it
   */
  public record Step(
      String name,
      double speed,
      double slowest,
      double fastest,
      double torque,
      double depth,
      String rule) {}

  /** Draws torque over speed with the line of constant power. */
  public static Drawing torque(List<Step> steps) {
    double low = steps.stream().mapToDouble(Step::slowest).min().orElse(10) * 0.8;
    double high = steps.stream().mapToDouble(Step::fastest).max().orElse(1000) * 1.25;
    double most = steps.stream().mapToDouble(Step::torque).max().orElse(1) * 1.2;
    Chart chart = new Chart(low, high, 0, most, "spindle, turns a minute", "torque, N m");
    chart.logarithmic().axes(6, 5);
    double power = steps.stream().mapToDouble(s -> s.torque() * s.speed()).max().orElse(0);
    chart.curve("brass", speeds(low, high), hyperbola(low, high, power));
    for (Step s : steps) {
      if (s.fastest() > s.slowest() * 1.01) {
        double[] xs = speeds(s.slowest(), s.fastest());
        double[] ys = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
          ys[i] = s.torque() * Math.min(1, s.speed() / xs[i]);
        }
        chart.curve("blue", xs, ys);
      }
      chart.point("solidblue", s.speed(), s.torque(), Numbers.significant(s.torque(), 3) + " N m");
    }
    return chart.done("Torque at the spindle over its speed, with the line of equal power");
  }

  /**
   * Draws the deepest cut over the speed with its limits.
   *
   * @param steps the steps
   * @param quiet depth from which the cut may sing, 0 if it is not known [mm]
   * @param tool speed at which the tool is overrun, 0 if it is not known [rpm]
   */
  public static Drawing cuts(List<Step> steps, double quiet, double tool) {
    double low = steps.stream().mapToDouble(Step::speed).min().orElse(10) * 0.7;
    double high = steps.stream().mapToDouble(Step::speed).max().orElse(1000) * 1.5;
    double most = steps.stream().mapToDouble(Step::depth).max().orElse(1) * 1.25;
    Chart chart = new Chart(low, high, 0, most, "spindle, turns a minute", "deepest cut, mm");
    chart.logarithmic().axes(6, 5);
    if (quiet > 0) {
      chart.level("brass", quiet, "above this it may sing");
    }
    if (tool > 0) {
      chart.upright("red", tool, "too fast for the tool from here");
    }
    double[] xs = steps.stream().mapToDouble(Step::speed).sorted().toArray();
    double[] ys = new double[xs.length];
    for (int i = 0; i < xs.length; i++) {
      double x = xs[i];
      ys[i] = steps.stream().filter(s -> s.speed() == x).mapToDouble(Step::depth).max().orElse(0);
    }
    chart.curve("faint", xs, ys);
    steps.forEach(
        s -> chart.point("solidblue", s.speed(), s.depth(), Numbers.significant(s.depth(), 2)));
    return chart.done("The deepest cut each speed carries, with its limits");
  }

  private static double[] speeds(double low, double high) {
    double[] xs = new double[30];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = low * Math.pow(high / low, (double) i / (xs.length - 1));
    }
    return xs;
  }

  private static double[] hyperbola(double low, double high, double power) {
    double[] xs = speeds(low, high);
    for (int i = 0; i < xs.length; i++) {
      xs[i] = power / xs[i];
    }
    return xs;
  }
}
