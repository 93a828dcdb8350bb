package fettle.mechanics.threads;

import java.util.ArrayList;
import java.util.List;

/**
 * How a single-point thread is cut in passes. The tool has flanks at half the thread angle and a
 * flat nose; at depth x it has opened {@code A = w0 x + x^2 tan alpha}.
 *
 * @param halfAngle half the tool's angle, alpha [rad]
 * @param nose width of the nose w0; 0 for a sharp V [mm]
 * @param depth full depth on the radius [mm]
 */
public record InfeedSchedule(double halfAngle, double nose, double depth) {

  private static final int MOST_PASSES = 1000;

  /** Refuses a groove that cannot be cut. */
  public InfeedSchedule {
    if (!(halfAngle >= 0) || !(halfAngle < Math.toRadians(60))) {
      throw new IllegalArgumentException(
          "alpha = " + Math.toDegrees(halfAngle) + " deg: expected 0 to 60 deg");
    }
    if (!(nose >= 0) || !(nose < 100)) {
      throw new IllegalArgumentException("root_flat = " + nose + " mm: expected 0 or more");
    }
    if (!(depth > 0) || !(depth < 100)) {
      throw new IllegalArgumentException("depth = " + depth + " mm: expected more than 0");
    }
    if (nose == 0 && halfAngle == 0) {
      throw new IllegalArgumentException("a tool with neither width nor angle cuts nothing");
    }
  }

  /** How the depth is shared out. */
  public enum Rule {
    /** Every pass takes the same area. */
    EQUAL_AREA,
    /** Depth grows with the root of the pass number, the first pass lighter. */
    ROOT,
    /** Every pass takes the same depth. */
    EQUAL_DEPTH
  }

  /**
   * Area of the groove at a depth, {@code A = w0 x + x^2 tan alpha}.
   *
   * @param x depth on the radius [mm]
   * @return area [mm2]
   */
  public double area(double x) {
    return nose * x + x * x * Math.tan(halfAngle);
  }

  /**
   * Depth at which the groove has an area.
   *
   * @param area area of the groove [mm2]
   * @return depth on the radius [mm]
   */
  public double depthAt(double area) {
    double t = Math.tan(halfAngle);
    return 2 * area / (nose + Math.sqrt(nose * nose + 4 * area * t));
  }

  /**
   * Passes needed so that none needs more than a cutting force, {@code n = A kc/F}.
   *
   * @param specificForce specific cutting force kc [MPa]
   * @param force force that the lathe bears [N]
   */
  public int passes(double specificForce, double force) {
    if (!(specificForce > 0) || !(force > 0)) {
      throw new IllegalArgumentException(
          "kc and F_allow: expected more than 0, found "
              + specificForce
              + " MPa and "
              + force
              + " N");
    }
    double n = Math.ceil(area(depth) * specificForce / force - 1e-9);
    if (!(n <= MOST_PASSES)) {
      throw new IllegalArgumentException(
          "F_allow = " + force + " N would need more than " + MOST_PASSES + " passes");
    }
    return Math.max(1, (int) n);
  }

  /**
   * Depths reached after each pass, the last one the full depth.
   *
   * @param passes number of passes, 1 to 1000
   * @param rule how the depth is shared out
   * @return depths on the radius, in order [mm]
   */
  public List<Double> depths(int passes, Rule rule) {
    if (passes < 1 || passes > MOST_PASSES) {
      throw new IllegalArgumentException(
          "passes = " + passes + ": expected a whole number from 1 to " + MOST_PASSES);
    }
    List<Double> depths = new ArrayList<>();
    for (int k = 1; k <= passes; k++) {
      double reached =
          switch (rule) {
            case EQUAL_AREA -> depthAt(area(depth) * k / passes);
            case ROOT -> byRoot(k, passes);
            case EQUAL_DEPTH -> depth * k / passes;
          };
      depths.add(k == passes ? depth : reached);
    }
    return List.copyOf(depths);
  }

  /** {@code x_k = h sqrt(phi_k/(n-1))}, phi 0.3 for the first pass, k - 1 for the others. */
  private double byRoot(int k, int passes) {
    return passes == 1 ? depth : depth * Math.sqrt((k == 1 ? 0.3 : k - 1) / (passes - 1));
  }
}
