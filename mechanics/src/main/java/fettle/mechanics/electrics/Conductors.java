package fettle.mechanics.electrics;

/** Copper conductors: what they carry, what they drop, and the least that is allowed. */
public final class Conductors {

  private static final double[] SECTIONS = {0.75, 1, 1.5, 2.5, 4, 6, 10};
  private static final double[] STANDARD = {
    0.2, 0.25, 0.34, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240
  };
  private static final double[] RESISTANCES = {26.0, 19.5, 13.3, 7.98, 4.95, 3.30};
  private static final double[][] FACTORS = {
    {30, 1.15}, {35, 1.08}, {40, 1.00}, {45, 0.91}, {50, 0.82}, {55, 0.71}, {60, 0.58}
  };
  private static final double HOTTEST = 70;
  private static final double COLDEST = -40;

  /** How a conductor is laid. */
  public enum Laying {
    /** Single cores in conduit. */
    B1,
    /** A cable in conduit. */
    B2,
    /** A cable on a surface. */
    C,
    /** A cable in free air. */
    E
  }

  private static double[] currents(Laying laying) {
    return switch (laying) {
      case B1 -> new double[] {8.6, 10.3, 13.5, 18.3, 24.0, 31.0, 44.0};
      case B2 -> new double[] {8.5, 10.1, 13.1, 17.4, 23.0, 30.0, 40.0};
      case C -> new double[] {9.8, 11.7, 15.2, 21.0, 28.0, 36.0, 50.0};
      case E -> new double[] {10.4, 12.4, 16.1, 22.0, 30.0, 37.0, 52.0};
    };
  }

  private Conductors() {}

  /**
   * Returns what a conductor carries at 40 °C.
   *
   * @param section a listed section [mm2]
   * @param laying how it is laid
   * @return current [A]
   */
  public static double ampacity(double section, Laying laying) {
    for (int i = 0; i < SECTIONS.length; i++) {
      if (Math.abs(SECTIONS[i] - section) < 1e-9) {
        return currents(laying)[i];
      }
    }
    throw new IllegalArgumentException(
        "the table of currents has the sections 0.75, 1, 1.5, 2.5, 4, 6 and 10 mm2, found "
            + section
            + " mm2");
  }

  /**
   * Returns the factor for air that is not at 40 °C: the listed value, between listed values the
   * root of what is left to 70 °C, which the list follows.
   *
   * @param ambient air round the conductor in degrees Celsius [-]
   * @return factor on the current [-]
   */
  public static double ambientFactor(double ambient) {
    if (!(ambient >= COLDEST) || !(ambient < HOTTEST)) {
      throw new IllegalArgumentException(
          "ambient_C must lie from -40 to below 70 °C, the limit of PVC, found " + ambient + " °C");
    }
    for (double[] row : FACTORS) {
      if (Math.abs(row[0] - ambient) < 1e-9) {
        return row[1];
      }
    }
    return Math.sqrt((HOTTEST - ambient) / 30);
  }

  /**
   * Returns the least listed section that carries a current.
   *
   * @param current current to carry [A]
   * @param laying how it is laid
   * @param factor all factors together [-]
   * @return section [mm2]
   */
  public static double section(double current, Laying laying, double factor) {
    if (!(current > 0) || !(factor > 0) || !(factor <= 2)) {
      throw new IllegalArgumentException(
          "the current must lie above 0 A and the factor between 0 and 2, found "
              + current
              + " A and "
              + factor);
    }
    for (double section : SECTIONS) {
      if (ampacity(section, laying) * factor >= current) {
        return section;
      }
    }
    throw new IllegalArgumentException(
        "no listed section up to 10 mm2 carries "
            + current
            + " A here; this is beyond a small lathe, ask an electrician");
  }

  /**
   * Returns the protective conductor that belongs to a line conductor.
   *
   * @param line section of the line conductor [mm2]
   * @return least section of the protective conductor [mm2]
   */
  public static double protective(double line) {
    if (!(line > 0) || !(line <= 1000)) {
      throw new IllegalArgumentException(
          "S must lie above 0 up to 1000 mm2, found " + line + " mm2");
    }
    return line <= 16 ? line : line <= 35 ? 16 : line / 2;
  }

  /**
   * Returns the next standard section.
   *
   * @param least least section [mm2]
   * @return section to take [mm2]
   */
  public static double next(double least) {
    for (double section : STANDARD) {
      if (section >= least - 1e-12) {
        return section;
      }
    }
    throw new IllegalArgumentException(
        "no standard section up to 240 mm2 reaches " + least + " mm2");
  }

  /**
   * Returns the resistance of a flexible conductor at 20 °C.
   *
   * @param section a listed section [mm2]
   * @return resistance [ohm/mm]
   */
  public static double resistance(double section) {
    for (int i = 0; i < RESISTANCES.length; i++) {
      if (Math.abs(SECTIONS[i] - section) < 1e-9) {
        return RESISTANCES[i] * 1e-6;
      }
    }
    throw new IllegalArgumentException(
        "the table of resistances has the sections 0.75, 1, 1.5, 2.5, 4 and 6 mm2, found "
            + section
            + " mm2; give R20_ohm_km instead");
  }
}
