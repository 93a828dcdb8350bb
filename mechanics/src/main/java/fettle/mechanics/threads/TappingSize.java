package fettle.mechanics.threads;

/** Bores before threading. */
public final class TappingSize {

  private TappingSize() {}

  /**
   * Drill for a cutting tap, {@code d - P}.
   *
   * @param d major diameter [mm]
   * @param p pitch [mm]
   * @return drill [mm]
   */
  public static double cutting(double d, double p) {
    check(d, p);
    return d - p;
  }

  /**
   * Drill for a forming tap, about {@code d - 0.5 P}.
   *
   * @param d major diameter [mm]
   * @param p pitch [mm]
   * @return drill [mm]
   */
  public static double forming(double d, double p) {
    check(d, p);
    return d - 0.5 * p;
  }

  /**
   * Height of thread that a bore leaves, as a share of the full height; for 60 degrees {@code (d -
   * bore)/(1.082532 P)}.
   *
   * @param thread the thread
   * @param bore diameter of the bore [mm]
   * @return share of the full height [-]
   */
  public static double heightShare(ThreadProfile thread, double bore) {
    return (thread.d() - bore) / (thread.d() - thread.nutMinor());
  }

  private static void check(double d, double p) {
    if (!(p > 0) || !(d > p)) {
      throw new IllegalArgumentException(
          "d = " + d + " mm, P = " + p + " mm: expected a pitch above 0 and below the diameter");
    }
  }
}
