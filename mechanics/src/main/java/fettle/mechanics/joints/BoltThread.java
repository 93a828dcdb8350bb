package fettle.mechanics.joints;

/**
 * An ISO metric thread as a bolt: nominal diameter and pitch, profile of ISO 68-1.
 *
 * @param diameter nominal diameter d [mm]
 * @param pitch pitch P [mm]
 */
public record BoltThread(double diameter, double pitch) {

  /** Refuses what is no thread. */
  public BoltThread {
    if (!(diameter >= 0.9) || !(diameter <= 400)) {
      throw new IllegalArgumentException("d = " + diameter + " mm: must lie from 0.9 to 400 mm");
    }
    if (!(pitch > 0) || !(pitch <= 0.6 * diameter)) {
      throw new IllegalArgumentException(
          "P = " + pitch + " mm: must be above 0 and at most 0.6 d = " + 0.6 * diameter + " mm");
    }
  }

  /**
   * Pitch diameter d2 = d - 0.649519 P.
   *
   * @return d2 [mm]
   */
  public double pitchDiameter() {
    return diameter - 3 * Math.sqrt(3) / 8 * pitch;
  }

  /**
   * Root diameter d3 = d - 1.226869 P.
   *
   * @return d3 [mm]
   */
  public double rootDiameter() {
    return diameter - 17 * Math.sqrt(3) / 24 * pitch;
  }

  /**
   * Diameter of the stress section, (d2 + d3)/2.
   *
   * @return d0 [mm]
   */
  public double stressDiameter() {
    return (pitchDiameter() + rootDiameter()) / 2;
  }

  /**
   * Stress area, pi/4 d0².
   *
   * @return As [mm2]
   */
  public double stressArea() {
    double d0 = stressDiameter();
    return Math.PI / 4 * d0 * d0;
  }

  /**
   * Preload at which tension and tightening torsion together use a share of the yield strength: A0
   * nu Rp/sqrt(1 + 3 (1.5 d2/d0 (P/(pi d2) + 1.155 mu))²).
   *
   * @param yield Rp0.2 [MPa]
   * @param share share of it that may be used, 0.9 as a rule [-]
   * @param friction friction in the thread [-]
   * @return assembly preload [N]
   */
  public double assemblyPreload(double yield, double share, double friction) {
    double d2 = pitchDiameter();
    double torsion = 1.5 * d2 / stressDiameter() * (pitch / (Math.PI * d2) + 1.155 * friction);
    return stressArea() * share * yield / Math.sqrt(1 + 3 * torsion * torsion);
  }

  /**
   * Torque on the nut or head: F (0.16 P + 0.58 d2 mu_G + (dw + dh)/4 mu_K).
   *
   * @param preload preload F [N]
   * @param threadFriction mu_G [-]
   * @param headFriction mu_K [-]
   * @param faceDiameter outside diameter dw of the bearing face [mm]
   * @param holeDiameter diameter dh of the hole [mm]
   * @return tightening torque [N mm]
   */
  public double tighteningTorque(
      double preload,
      double threadFriction,
      double headFriction,
      double faceDiameter,
      double holeDiameter) {
    return preload * torquePerForce(threadFriction, headFriction, faceDiameter, holeDiameter);
  }

  private double torquePerForce(
      double threadFriction, double headFriction, double faceDiameter, double holeDiameter) {
    return 0.16 * pitch
        + 0.58 * pitchDiameter() * threadFriction
        + (faceDiameter + holeDiameter) / 4 * headFriction;
  }

  /**
   * Preload from a torque, the inverse of {@link #tighteningTorque}.
   *
   * @param torque tightening torque [N mm]
   * @param threadFriction mu_G [-]
   * @param headFriction mu_K [-]
   * @param faceDiameter outside diameter dw of the bearing face [mm]
   * @param holeDiameter diameter dh of the hole [mm]
   * @return preload [N]
   */
  public double preload(
      double torque,
      double threadFriction,
      double headFriction,
      double faceDiameter,
      double holeDiameter) {
    return torque / torquePerForce(threadFriction, headFriction, faceDiameter, holeDiameter);
  }
}
