package fettle.parts.recipe;

import org.jspecify.annotations.Nullable;

/**
 * A hole: drilled, reamed, bored or tapped, with its mouth.
 *
 * @param diameter diameter; for a tapped hole the major diameter of the thread
 * @param depth depth of the full cylinder; {@link #THROUGH} if it goes through [mm]
 * @param bottom shape of the bottom
 * @param thread thread, if tapped
 * @param threadDepth depth of full thread; {@link #THROUGH} if it goes through [mm]
 * @param mouth what is done to its mouth
 * @param mouthDiameter diameter of counterbore or countersink [mm]
 * @param mouthDepth depth of a counterbore [mm]
 * @param mouthAngle included angle of a countersink [rad]
 * @param finish texture of the wall
 */
public record HoleForm(
    Size diameter,
    double depth,
    Bottom bottom,
    @Nullable ScrewThread thread,
    double threadDepth,
    Mouth mouth,
    double mouthDiameter,
    double mouthDepth,
    double mouthAngle,
    Finish finish) {

  public static final double THROUGH = Double.POSITIVE_INFINITY;

  /** Shape of the bottom of a blind hole. */
  public enum Bottom {
    /** Flat. */
    FLAT,
    /** As the drill leaves it, drawn with 120 degrees. */
    DRILL_POINT
  }

  /** What is done to the mouth of a hole. */
  public enum Mouth {
    PLAIN,
    COUNTERBORE,
    COUNTERSINK
  }

  /** Refuses what is no hole. */
  public HoleForm {
    boolean wide = mouth == Mouth.PLAIN || mouthDiameter > diameter.nominal();
    boolean counterbored = mouth != Mouth.COUNTERBORE || mouthDepth > 0;
    boolean countersunk = mouth != Mouth.COUNTERSINK || (mouthAngle > 0 && mouthAngle < Math.PI);
    if (!(diameter.nominal() > 0)
        || !(depth > 0)
        || !(threadDepth >= 0)
        || !wide
        || !counterbored
        || !countersunk) {
      throw new IllegalArgumentException(
          "a hole needs a diameter and a depth above 0, and a mouth wider than the hole; found"
              + " diameter "
              + diameter.nominal()
              + ", depth "
              + depth
              + ", mouth "
              + mouthDiameter
              + " mm");
    }
  }

  /** Returns a drilled through hole. */
  public static HoleForm through(Size diameter) {
    return blind(diameter, THROUGH);
  }

  /**
   * Returns a blind hole with a drill point.
   *
   * @param diameter diameter
   * @param depth depth of the full cylinder [mm]
   */
  public static HoleForm blind(Size diameter, double depth) {
    return new HoleForm(
        diameter,
        depth,
        Bottom.DRILL_POINT,
        null,
        0,
        Mouth.PLAIN,
        0,
        0,
        0,
        diameter.tolerance().isFit() ? Finish.cut(0.0016) : Finish.DRILLED);
  }

  /**
   * Returns a blind hole with a flat bottom.
   *
   * @param diameter diameter
   * @param depth depth [mm]
   */
  public static HoleForm flat(Size diameter, double depth) {
    return blind(diameter, depth).bottom(Bottom.FLAT);
  }

  /**
   * Returns a tapped hole.
   *
   * @param thread thread
   * @param threadDepth depth of full thread, or {@link #THROUGH} [mm]
   * @param depth depth of the core hole, or {@link #THROUGH} [mm]
   */
  public static HoleForm tapped(ScrewThread thread, double threadDepth, double depth) {
    return new HoleForm(
        Size.of(thread.major()),
        depth,
        Bottom.DRILL_POINT,
        thread,
        threadDepth,
        Mouth.PLAIN,
        0,
        0,
        0,
        Finish.GENERAL);
  }

  /**
   * Returns this hole with a counterbore.
   *
   * @param wide diameter of the counterbore [mm]
   * @param deep depth of the counterbore [mm]
   */
  public HoleForm counterbore(double wide, double deep) {
    return new HoleForm(
        diameter, depth, bottom, thread, threadDepth, Mouth.COUNTERBORE, wide, deep, 0, finish);
  }

  /**
   * Returns this hole with a countersink.
   *
   * @param wide diameter at the surface [mm]
   * @param angle included angle [rad]
   */
  public HoleForm countersink(double wide, double angle) {
    return new HoleForm(
        diameter, depth, bottom, thread, threadDepth, Mouth.COUNTERSINK, wide, 0, angle, finish);
  }

  /** Returns this hole with another bottom. */
  public HoleForm bottom(Bottom other) {
    return new HoleForm(
        diameter,
        depth,
        other,
        thread,
        threadDepth,
        mouth,
        mouthDiameter,
        mouthDepth,
        mouthAngle,
        finish);
  }

  /** Returns this hole with another finish. */
  public HoleForm finish(Finish other) {
    return new HoleForm(
        diameter,
        depth,
        bottom,
        thread,
        threadDepth,
        mouth,
        mouthDiameter,
        mouthDepth,
        mouthAngle,
        other);
  }

  /** Tells whether it goes through. */
  public boolean isThrough() {
    return Double.isInfinite(depth);
  }

  /**
   * Returns the diameter that is removed from the part: the core diameter of a tapped hole.
   *
   * @return diameter in the solid [mm]
   */
  public double cutDiameter() {
    return thread == null ? diameter.nominal() : thread.rootInside();
  }
}
