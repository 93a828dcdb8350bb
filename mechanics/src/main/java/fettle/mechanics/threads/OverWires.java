package fettle.mechanics.threads;

/**
 * Measurement of a screw over wires laid in its grooves, for any flank angle and lead. The flank is
 * a straight line in the axial plane that screws along the axis; the wire leans until the anvils
 * bring it closest to the axis, and then touches each flank in the plane square to itself through
 * its middle, just as a ball of its diameter would.
 *
 * @param halfAngle half the flank angle in the axial plane, alpha [rad]
 * @param p pitch [mm]
 * @param lead axial advance in one turn, Ph [mm]
 */
public record OverWires(double halfAngle, double p, double lead) {

  private static final int STEPS = 200;
  private static final double STEEPEST = Math.toRadians(60);

  /** Refuses what has no flanks. */
  public OverWires {
    if (!(halfAngle > 0.01) || !(halfAngle < STEEPEST)) {
      throw new IllegalArgumentException(
          "alpha = "
              + Math.toDegrees(halfAngle)
              + " deg: expected half the flank angle, from 1 to 60 deg; a square thread cannot be"
              + " measured over wires");
    }
    if (!(p > 0) || !(p < 1000)) {
      throw new IllegalArgumentException("P = " + p + " mm: expected more than 0");
    }
    if (!(lead >= 0) || !(lead <= 20 * p)) {
      throw new IllegalArgumentException(
          "Ph = " + lead + " mm: expected 0 (no lead angle) or the lead, at most 20 pitches");
    }
  }

  /**
   * How a wire lies.
   *
   * @param wire diameter of the wire [mm]
   * @param over measurement over the wires, M [mm]
   * @param contactDiameter diameter at which the wire touches the flanks [mm]
   * @param tilt lean of the wire against a plane square to the axis [rad]
   */
  public record Lie(double wire, double over, double contactDiameter, double tilt) {}

  /**
   * Wire that touches at the pitch diameter if there were no lead, {@code w = P/(2 cos alpha)}.
   *
   * @return w [mm]
   */
  public double bestWireWithoutLead() {
    return p / (2 * Math.cos(halfAngle));
  }

  /**
   * Best wire by the usual formula, {@code w = P cos(lambda)/(2 cos alpha_n)} with {@code tan
   * alpha_n = tan alpha cos lambda}.
   *
   * @param d2 pitch diameter [mm]
   * @return w [mm]
   */
  public double bestWireByFormula(double d2) {
    double lambda = Math.atan(lead / (Math.PI * d2));
    double normal = Math.atan(Math.tan(halfAngle) * Math.cos(lambda));
    return p * Math.cos(lambda) / (2 * Math.cos(normal));
  }

  /**
   * Wire that touches exactly at the pitch diameter, lead angle included.
   *
   * @param d2 pitch diameter [mm]
   * @return w [mm]
   */
  public double bestWire(double d2) {
    return touching(d2, d2 / 2).wire;
  }

  /**
   * Measurement with the lead angle left out, {@code M = d2 + w (1 + 1/sin alpha) - P/2 cot alpha}.
   *
   * @param d2 pitch diameter [mm]
   * @param wire wire diameter [mm]
   * @return M [mm]
   */
  public double withoutLead(double d2, double wire) {
    return d2 + wire * (1 + 1 / Math.sin(halfAngle)) - p / 2 / Math.tan(halfAngle);
  }

  /**
   * Measurement with the usual lead term added, {@code (w/2) tan^2(lambda) cos alpha cot alpha};
   * good to about lambda 5 degrees and one start.
   *
   * @param d2 pitch diameter [mm]
   * @param wire wire diameter [mm]
   * @return M [mm]
   */
  public double withLeadTerm(double d2, double wire) {
    double tangent = lead / (Math.PI * d2);
    return withoutLead(d2, wire)
        + wire / 2 * tangent * tangent * Math.cos(halfAngle) / Math.tan(halfAngle);
  }

  /**
   * Exact lie of a wire in the groove.
   *
   * @param d2 pitch diameter [mm]
   * @param wire wire diameter [mm]
   * @throws IllegalArgumentException if the wire is too thin or too thick to rest on the flanks
   */
  public Lie lie(double d2, double wire) {
    if (!(d2 > 0)) {
      throw new IllegalArgumentException("d2 = " + d2 + " mm: expected more than 0");
    }
    double apex = d2 / 2 - p / 4 / Math.tan(halfAngle);
    double low = Math.max(apex, 0.02 * d2) + 1e-6 * p;
    double high = d2 / 2 + 2 * p;
    if (!(wire >= touching(d2, low).wire) || !(wire <= touching(d2, high).wire)) {
      throw new IllegalArgumentException(
          "wire = "
              + wire
              + " mm does not rest on both flanks; the best wire is "
              + bestWire(d2)
              + " mm");
    }
    for (int i = 0; i < STEPS && high - low > 1e-13 * d2; i++) {
      double middle = (low + high) / 2;
      if (touching(d2, middle).wire < wire) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Lie lie = touching(d2, (low + high) / 2);
    return new Lie(wire, lie.over, lie.contactDiameter, lie.tilt);
  }

  /**
   * Pitch diameter that a measurement stands for, by the exact lie.
   *
   * @param over measurement over the wires, M [mm]
   * @param wire wire diameter [mm]
   * @return d2 [mm]
   */
  public double pitchDiameter(double over, double wire) {
    double guess = over - withoutLead(0, wire);
    if (!(guess > 0)) {
      throw new IllegalArgumentException(
          "M = " + over + " mm: too small for P = " + p + " mm and wires of " + wire + " mm");
    }
    double d2 = guess;
    for (int i = 0; i < 60; i++) {
      double error = lie(d2, wire).over - over;
      d2 -= error;
      if (!(d2 > 0)) {
        throw new IllegalArgumentException("M = " + over + " mm fits no screw of this pitch");
      }
      if (Math.abs(error) < 1e-12 * over) {
        return d2;
      }
    }
    return d2;
  }

  /** Wire, measurement and tilt for contact at radius r. */
  private Lie touching(double d2, double r) {
    double tangent = Math.tan(halfAngle);
    double advance = lead / (2 * Math.PI);
    double half = p / 4 + (r - d2 / 2) * tangent;
    double low = -Math.PI / 2 + 1e-9;
    double high = 0;
    for (int i = 0; i < STEPS && high - low > 1e-16; i++) {
      double theta = (low + high) / 2;
      double z = advance * theta + half;
      double turning = r * Math.tan(theta) * (r + z * tangent) + z * advance;
      if (turning > 0) {
        high = theta;
      } else {
        low = theta;
      }
    }
    double theta = (low + high) / 2;
    double z = advance * theta + half;
    double y = r * Math.sin(theta);
    double centre = (r + z * tangent) / Math.cos(theta);
    double x = r * Math.cos(theta);
    double wire = 2 * Math.sqrt((x - centre) * (x - centre) + y * y + z * z);
    return new Lie(wire, 2 * centre + wire, 2 * r, Math.atan2(-y, z));
  }
}
