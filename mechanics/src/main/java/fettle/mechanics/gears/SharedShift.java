package fettle.mechanics.gears;

import fettle.mechanics.base.Numbers;

/**
 * Two gears on a given centre distance, the profile shift it asks for divided between them.
 *
 * <p>On the reference centre distance both shifts are nothing. Elsewhere the sum follows from the
 * centres (ISO 21771), and of all divisions in steps of 0.01 that one is taken that leaves the
 * greatest least reserve: against undercut, against pointed tips, against interference at the
 * roots.
 */
public final class SharedShift {

  private static final double STEP = 0.01;
  private static final int STEPS = 100;
  private static final double TIP_WANTED = 0.25;
  private static final double MOST_SUM = 1.5;
  private static final double SAME = 1e-9;

  private SharedShift() {}

  /**
   * Returns the pair; whether it can be made, its concerns tell.
   *
   * @param module module of both gears [mm]
   * @param rack basic rack of both gears
   * @param driver teeth of the first gear
   * @param driven teeth of the second gear
   * @param axes centre distance [mm]
   */
  public static GearPair on(double module, BasicRack rack, int driver, int driven, double axes) {
    double reference = module * (driver + driven) / 2;
    if (Math.abs(axes - reference) <= SAME * reference) {
      return pair(module, rack, driver, driven, 0, axes);
    }
    double sum = GearPair.shiftSum(driver, driven, reference, rack.angle(), rack.angle(), axes);
    if (!(Math.abs(sum) <= MOST_SUM)) {
      throw new IllegalArgumentException(
          "centre distance [mm] of "
              + Numbers.fixed(axes, 3)
              + " asks "
              + driver
              + "/"
              + driven
              + " teeth for profile shifts of "
              + Numbers.fixed(sum, 2)
              + " together; 0.8 is the limit");
    }
    GearPair best = pair(module, rack, driver, driven, sum / 2, axes);
    double most = reserve(best);
    for (int i = -STEPS; i <= STEPS; i++) {
      GearPair other = pair(module, rack, driver, driven, sum / 2 + i * STEP, axes);
      double reserve = reserve(other);
      if (reserve > most + SAME) {
        most = reserve;
        best = other;
      }
    }
    return best;
  }

  private static GearPair pair(
      double module, BasicRack rack, int driver, int driven, double shift, double axes) {
    Gear first = new Gear(module, driver, shift, rack);
    double reference = module * (driver + driven) / 2;
    if (Math.abs(axes - reference) <= SAME * reference) {
      return new GearPair(first, new Gear(module, driven, 0 - shift, rack), axes);
    }
    return GearPair.onCentres(first, driven, axes);
  }

  /**
   * Returns the least reserve of a pair.
   *
   * @return the least of the distances from the limits, each as a part of the module [-]
   */
  private static double reserve(GearPair pair) {
    double module = pair.pinion().module();
    double own =
        Math.min(reserve(pair.pinion(), pair.pinionTip()), reserve(pair.wheel(), pair.wheelTip()));
    double roots = Math.max(pair.pinionInterference(), pair.wheelInterference());
    return Math.min(own, -roots / module);
  }

  private static double reserve(Gear gear, double tip) {
    if (!(tip > gear.base())) {
      return Double.NEGATIVE_INFINITY;
    }
    return Math.min(
        gear.shift() - gear.shiftWithoutUndercut(),
        gear.thicknessAt(tip) / gear.module() - TIP_WANTED);
  }
}
