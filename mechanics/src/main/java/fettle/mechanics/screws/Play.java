package fettle.mechanics.screws;

/** Play and error along the axis of a screw. */
public final class Play {

  private Play() {}

  /**
   * Axial play of a nut on its screw, both flanks together, {@code (D2 - d2) tan alpha}.
   *
   * @param nut pitch diameter of the nut, D2 [mm]
   * @param screw pitch diameter of the screw, d2 [mm]
   * @param halfAngle alpha [rad]
   * @return play; negative if the thread binds [mm]
   */
  public static double axial(double nut, double screw, double halfAngle) {
    if (!(nut > 0) || !(screw > 0)) {
      throw new IllegalArgumentException("D2 and d2: expected more than 0 mm");
    }
    return (nut - screw) * Math.tan(angle(halfAngle));
  }

  /**
   * Pitch-diameter difference that a pitch error uses up, {@code dP cot alpha}.
   *
   * @param pitchError pitch error over the length of the nut, dP [mm]
   * @param halfAngle alpha, more than 0 [rad]
   * @return diametral equivalent [mm]
   */
  public static double diametralEquivalent(double pitchError, double halfAngle) {
    if (!(angle(halfAngle) > 0.01)) {
      throw new IllegalArgumentException(
          "alpha: a square thread cannot make up for a pitch error by its diameter");
    }
    return Math.abs(pitchError) / Math.tan(halfAngle);
  }

  /**
   * Lost motion of a whole drive: thread play, thrust play, key or pin play times lead, and the
   * springing both ways, {@code s + t + Ph phi/(2 pi) + 2 F/k}.
   *
   * @param play thread play s and thrust play t together [mm]
   * @param keyTurn turn of handle against screw, phi [rad]
   * @param lead lead Ph [mm]
   * @param force force that changes sign, F [N]
   * @param stiffness stiffness of the chain, k [N/mm]
   * @return lost motion [mm]
   */
  public static double lostMotion(
      double play, double keyTurn, double lead, double force, double stiffness) {
    if (!(play >= 0) || !(keyTurn >= 0) || !(lead > 0) || !(force >= 0) || !(stiffness > 0)) {
      throw new IllegalArgumentException(
          "play, key, Ph, F and k: expected no negative value, and Ph and k above 0");
    }
    return play + keyTurn * lead / (2 * Math.PI) + 2 * force / stiffness;
  }

  private static double angle(double halfAngle) {
    if (!(halfAngle >= 0) || !(halfAngle < Math.toRadians(60))) {
      throw new IllegalArgumentException(
          "alpha = " + Math.toDegrees(halfAngle) + " deg: expected half the flank angle, 0 to 60");
    }
    return halfAngle;
  }
}
