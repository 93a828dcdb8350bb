package fettle.mechanics.threads;

import fettle.mechanics.base.Interval;

/** Limits of size of a screw or of a nut. */
public sealed interface Limits {

  /** Returns the limits of the pitch diameter. */
  Interval d2();

  /**
   * Limits of a screw thread.
   *
   * @param d major diameter [mm]
   * @param d2 pitch diameter [mm]
   * @param d3 core diameter; its lower end belongs to the rounded root where the standard leaves
   *     the root free [mm]
   */
  record Screw(Interval d, Interval d2, Interval d3) implements Limits {}

  /**
   * Limits of a nut thread.
   *
   * @param majorMin least major diameter D or D4; the greatest is not gauged [mm]
   * @param d2 pitch diameter D2 [mm]
   * @param d1 minor diameter D1, the bore before threading [mm]
   */
  record Nut(double majorMin, Interval d2, Interval d1) implements Limits {}
}
