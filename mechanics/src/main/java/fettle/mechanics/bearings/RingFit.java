package fettle.mechanics.bearings;

/**
 * What a press fit and a temperature difference do to the play of a bearing. Rings, shaft and
 * housing are long thick cylinders of one material.
 *
 * @see Sources#FITS
 */
public final class RingFit {

  private RingFit() {}

  /**
   * Returns the interference left after the peaks are smoothed: {@code d/(d+3) I} ground, {@code
   * d/(d+2) I} turned, d in mm.
   *
   * @param measured measured interference I [mm]
   * @param diameter seat d [mm]
   * @param smoothing 3 for a ground seat, 2 for a turned one [mm]
   * @return effective interference [mm]
   */
  public static double effective(double measured, double diameter, double smoothing) {
    Need.notNegative("I", measured);
    return measured * Need.positive("d", diameter) / (diameter + smoothing);
  }

  /**
   * Returns how much the inner raceway grows: {@code I (d/di)(1-(d0/d)^2)/(1-(d0/di)^2)}.
   *
   * @param interference effective interference on the shaft [mm]
   * @param bore bearing bore d [mm]
   * @param raceway raceway diameter di [mm]
   * @param shaftBore bore of the shaft d0, 0 if solid [mm]
   * @return growth of the raceway diameter [mm]
   */
  public static double innerGrowth(
      double interference, double bore, double raceway, double shaftBore) {
    Need.notNegative("I", interference);
    Need.positive("d", bore);
    Need.notNegative("shaft bore", shaftBore);
    if (!(raceway > bore && bore > shaftBore)) {
      throw new IllegalArgumentException(
          "diameters: found shaft bore "
              + shaftBore
              + ", bearing bore "
              + bore
              + ", raceway "
              + raceway
              + " mm; expected each larger than the one before");
    }
    double a = shaftBore / bore;
    double b = shaftBore / raceway;
    return interference * (bore / raceway) * (1 - a * a) / (1 - b * b);
  }

  /**
   * Returns how much the outer raceway shrinks: {@code I (Do/D)(1-(D/Dh)^2)/(1-(Do/Dh)^2)}.
   *
   * @param interference effective interference in the housing [mm]
   * @param outside bearing outside diameter D [mm]
   * @param raceway raceway diameter Do [mm]
   * @param housing outside diameter of the housing Dh; infinity for a large block [mm]
   * @return shrinkage of the raceway diameter [mm]
   */
  public static double outerShrinkage(
      double interference, double outside, double raceway, double housing) {
    Need.notNegative("I", interference);
    Need.positive("raceway", raceway);
    if (!(housing > outside && outside > raceway)) {
      throw new IllegalArgumentException(
          "diameters: found raceway "
              + raceway
              + ", bearing outside "
              + outside
              + ", housing "
              + housing
              + " mm; expected each larger than the one before");
    }
    double a = outside / housing;
    double b = raceway / housing;
    return interference * (raceway / outside) * (1 - a * a) / (1 - b * b);
  }

  /**
   * Returns the play that a warmer inner ring takes: {@code alpha dT (di+Do)/2}.
   *
   * @param expansion alpha [1/K]
   * @param difference inner ring above outer ring [K]
   * @param inner inner raceway diameter [mm]
   * @param outer outer raceway diameter [mm]
   * @return loss of play [mm]
   */
  public static double warmLoss(double expansion, double difference, double inner, double outer) {
    return expansion * difference * (inner + outer) / 2;
  }

  /**
   * Returns the axial approach a radial squeeze is worth in an angular contact bearing: {@code u/(2
   * tan(alpha))}.
   *
   * @param squeeze u, on diameter [mm]
   * @param angle contact angle [rad]
   * @return axial approach [mm]
   */
  public static double axialWorth(double squeeze, double angle) {
    return squeeze / (2 * Math.tan(Need.within("alpha", angle, 1e-3, Math.PI / 2)));
  }
}
