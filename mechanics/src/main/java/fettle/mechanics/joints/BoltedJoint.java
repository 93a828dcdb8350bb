package fettle.mechanics.joints;

/**
 * A preloaded bolt with its parts, elastic.
 *
 * @param boltStiffness kb [N/mm]
 * @param partStiffness km of the clamped parts [N/mm]
 * @param preload preload Fi [N]
 */
public record BoltedJoint(double boltStiffness, double partStiffness, double preload) {

  /** Refuses stiffness and preload that cannot be. */
  public BoltedJoint {
    if (!(boltStiffness > 0) || !(partStiffness > 0) || !(preload >= 0)) {
      throw new IllegalArgumentException(
          "stiffness of bolt and parts must be above 0 N/mm and the preload 0 N or more; found "
              + boltStiffness
              + ", "
              + partStiffness
              + ", "
              + preload);
    }
  }

  /**
   * Stiffness of a bolt: shank and thread in series, Ad At E/(Ad lt + At ld).
   *
   * @param thread the thread
   * @param modulus Young's modulus [MPa]
   * @param shank length of unthreaded shank in the grip, 0 or more [mm]
   * @param threaded length of thread in the grip, 0 or more [mm]
   * @return kb [N/mm]
   */
  public static double boltStiffness(
      BoltThread thread, double modulus, double shank, double threaded) {
    if (!(shank >= 0) || !(threaded >= 0) || !(shank + threaded > 0) || !(modulus > 0)) {
      throw new IllegalArgumentException(
          "bolt lengths " + shank + " and " + threaded + " mm: 0 or more, and one above 0");
    }
    double full = Math.PI / 4 * thread.diameter() * thread.diameter();
    return modulus / (shank / full + threaded / thread.stressArea());
  }

  /**
   * Share of an outer load that the bolt feels, kb/(kb + km).
   *
   * @return C [-]
   */
  public double boltShare() {
    return boltStiffness / (boltStiffness + partStiffness);
  }

  /**
   * Tension in the bolt under an outer load that pulls the parts apart.
   *
   * @param load outer load, not above the separating load [N]
   * @return bolt tension; after separation the load itself [N]
   */
  public double boltTension(double load) {
    return Math.max(load, preload + boltShare() * load);
  }

  /**
   * Clamping force left between the parts.
   *
   * @param load outer load [N]
   * @return clamping force, 0 after separation [N]
   */
  public double clampLeft(double load) {
    return Math.max(0, preload - (1 - boltShare()) * load);
  }

  /**
   * Outer load at which the parts separate, Fi/(1 - C).
   *
   * @return separating load [N]
   */
  public double separatingLoad() {
    return preload / (1 - boltShare());
  }

  /**
   * Preload lost when the faces settle: fz kb km/(kb + km).
   *
   * @param settling flattening of all faces together [mm]
   * @return loss of preload [N]
   */
  public double settlingLoss(double settling) {
    return settling * boltStiffness * partStiffness / (boltStiffness + partStiffness);
  }
}
