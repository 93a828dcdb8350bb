package fettle.mechanics.shafts;

import org.ejml.data.DMatrixRMaj;

/**
 * A disc at the end of a light clamped shaft: whirl with the gyroscopic moment.
 *
 * @see Sources#ROTOR
 */
public final class OverhungDisc {

  private OverhungDisc() {}

  /**
   * Returns the four whirl frequencies, rising: two backward (negative), two forward.
   *
   * @param length L [mm]
   * @param bendingStiffness E I [N mm2]
   * @param mass m [t]
   * @param diametral Jd [t mm2]
   * @param polar Jp [t mm2]
   * @param speed Omega [rad/s]
   * @return frequencies [Hz]
   */
  public static double[] whirl(
      double length,
      double bendingStiffness,
      double mass,
      double diametral,
      double polar,
      double speed) {
    double l = Need.positive("L", length);
    double f = Need.positive("E I", bendingStiffness) / (l * l * l);
    Need.positive("m", mass);
    Need.positive("Jd", diametral);
    Need.within("Jp", polar, 0, 1e12);
    Need.within("Omega in rad/s", speed, 0, 1e6);
    DMatrixRMaj k =
        new DMatrixRMaj(new double[][] {{12 * f, -6 * l * f}, {-6 * l * f, 4 * l * l * f}});
    DMatrixRMaj m = new DMatrixRMaj(new double[][] {{mass, 0}, {0, diametral}});
    DMatrixRMaj g = new DMatrixRMaj(new double[][] {{0, 0}, {0, polar}});
    double[] w = Modes.whirl(k, m, g, speed);
    for (int i = 0; i < w.length; i++) {
      w[i] /= 2 * Math.PI;
    }
    return w;
  }
}
