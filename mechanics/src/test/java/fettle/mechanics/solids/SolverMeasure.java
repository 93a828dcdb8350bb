package fettle.mechanics.solids;

import java.lang.management.ManagementFactory;
import java.util.List;

/**
 * Measures the solver on a block with holes: unknowns, iterations, time, processor time, bytes. Not
 * a test; start it by hand with the step in mm and the number of repetitions.
 */
final class SolverMeasure {

  private SolverMeasure() {}

  public static void main(String[] arguments) {
    double step = Double.parseDouble(arguments[0]);
    Body block =
        Body.of(new Shape.Box(0, 120, 0, 80, 0, 34))
            .cut(new Shape.Cylinder(2, 30, 40, 15, -1, 35))
            .cut(new Shape.Cylinder(2, 90, 40, 15, -1, 35))
            .cut(new Shape.Cylinder(1, 17, 60, 8, -1, 81));
    Patch.Rectangle tip = Patch.Rectangle.of(120, 120, 0, 80, 0, 34);
    Support root = new Support.Fixed(Patch.Rectangle.of(0, 0, 0, 80, 0, 34));
    Grid grid =
        Grid.through(
            new double[][] {{0, 120}, {0, 80}, {0, 34}}, new double[] {step, step, step}, 1);
    for (int i = Integer.parseInt(arguments[1]); i > 0; i--) {
      double wall = System.nanoTime() / 1e9;
      double processor = processor();
      ElasticModel m = ElasticModel.of(block, new Elastic(110_000, 0.26), grid, List.of(root));
      double setUp = System.nanoTime() / 1e9 - wall;
      double setUpProcessor = processor() - processor;
      double compliance = m.compliance(tip, 0, 0, 1);
      System.out.printf(
          "%d unknowns, levels %s, %d iterations, residual %.1e, set-up %.2f s (processor %.2f s),"
              + " all %.2f s (processor %.2f s), %.0f bytes per unknown, %.6e mm/N%n",
          m.unknowns(),
          m.levels(),
          m.iterations(),
          m.residual(),
          setUp,
          setUpProcessor,
          System.nanoTime() / 1e9 - wall,
          processor() - processor,
          m.bytes() / (double) m.unknowns(),
          compliance);
    }
  }

  private static double processor() {
    return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
            .getProcessCpuTime()
        / 1e9;
  }
}
