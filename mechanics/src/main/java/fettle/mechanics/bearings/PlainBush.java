package fettle.mechanics.bearings;

/**
 * A plain bush: pressure, speed, and whether its oil can keep shaft and bush apart.
 *
 * @param diameter shaft d [mm]
 * @param length bearing length [mm]
 * @param clearance diametral clearance [mm]
 * @see Sources#SHORT_BEARING
 */
public record PlainBush(double diameter, double length, double clearance) {

  /** Refuses what cannot be built. */
  public PlainBush {
    Need.positive("d", diameter);
    Need.positive("L", length);
    Need.positive("clearance", clearance);
    if (!(clearance < 0.1 * diameter)) {
      throw new IllegalArgumentException(
          "clearance: found " + clearance + " mm, expected less than a tenth of the diameter");
    }
  }

  /**
   * Returns the mean pressure {@code F/(d L)}.
   *
   * @param load F [N]
   * @return p [MPa]
   */
  public double pressure(double load) {
    return Need.notNegative("F", load) / (diameter * length);
  }

  /**
   * Returns the rubbing speed.
   *
   * @param speed n [rad/s]
   * @return v [mm/s]
   */
  public double rubbingSpeed(double speed) {
    return Need.notNegative("n", speed) * diameter / 2;
  }

  /**
   * Returns the friction torque of the oil alone, shaft in the middle: {@code pi eta d^3 L omega /
   * (2 c)} with c the diametral clearance.
   *
   * @param viscosity eta [MPa s]
   * @param speed n [rad/s]
   * @return torque [N mm]
   */
  public double petroffTorque(double viscosity, double speed) {
    return Math.PI
        * Need.notNegative("eta", viscosity)
        * Math.pow(diameter, 3)
        * length
        * Need.notNegative("n", speed)
        / (2 * clearance);
  }

  /**
   * Returns the load the oil film carries at an eccentricity: {@code eta U L^3/(4 c^2) e/(1-e^2)^2
   * sqrt(16 e^2 + pi^2 (1-e^2))} with c the radial clearance.
   *
   * @param viscosity eta [MPa s]
   * @param speed n [rad/s]
   * @param eccentricity e, 0 to below 1 [-]
   * @return load [N]
   */
  public double filmLoad(double viscosity, double speed, double eccentricity) {
    double e2 = eccentricity * eccentricity;
    double c = clearance / 2;
    return viscosity
        * rubbingSpeed(speed)
        * Math.pow(length, 3)
        / (4 * c * c)
        * eccentricity
        / ((1 - e2) * (1 - e2))
        * Math.sqrt(16 * e2 + Math.PI * Math.PI * (1 - e2));
  }

  /**
   * Returns the eccentricity at which the film carries a load; 1 if it never does.
   *
   * @param load F [N]
   * @param viscosity eta [MPa s]
   * @param speed n [rad/s]
   * @return e [-]
   */
  public double eccentricity(double load, double viscosity, double speed) {
    Need.notNegative("F", load);
    Need.notNegative("eta", viscosity);
    double low = 0;
    double high = 1 - 1e-9;
    if (!(filmLoad(viscosity, speed, high) > load)) {
      return 1;
    }
    for (int i = 0; i < 100; i++) {
      double middle = 0.5 * (low + high);
      if (filmLoad(viscosity, speed, middle) < load) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /**
   * Returns the thinnest oil film: {@code c (1-e)}.
   *
   * @param eccentricity e [-]
   * @return film [mm]
   */
  public double film(double eccentricity) {
    return clearance / 2 * (1 - eccentricity);
  }
}
