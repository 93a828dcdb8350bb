package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.List;

/** The lead a set of change gears cuts, and how far a lead may be out. */
public final class ThreadTrain {

  private ThreadTrain() {}

  /**
   * Returns the ratio of a train: product of drivers over product of driven, idlers left out.
   *
   * @param drivers teeth of the drivers, counted from the spindle
   * @param driven teeth of the driven gears
   */
  public static Ratio ratio(List<Integer> drivers, List<Integer> driven) {
    if (drivers.isEmpty() || drivers.size() != driven.size() || drivers.size() > 12) {
      throw new IllegalArgumentException(
          "a train needs as many drivers as driven gears, 1 to 12 of each; found "
              + drivers.size()
              + " and "
              + driven.size());
    }
    Ratio ratio = Ratio.ONE;
    for (int i = 0; i < drivers.size(); i++) {
      Teeth.check("driver", drivers.get(i));
      Teeth.check("driven", driven.get(i));
      ratio = ratio.times(Ratio.of(drivers.get(i), driven.get(i)));
    }
    return ratio;
  }

  /**
   * Returns the ratio a train needs for a lead: lead over what the screw gives at 1:1.
   *
   * @param lead lead to cut
   * @param screwLead lead of the lead screw
   * @param fixed ratio of everything fixed between spindle and train
   */
  public static Ratio needed(Ratio lead, Ratio screwLead, Ratio fixed) {
    Teeth.positive("lead", lead);
    Teeth.positive("lead of the screw", screwLead);
    Teeth.positive("fixed ratio", fixed);
    return lead.over(screwLead.times(fixed)).folded();
  }

  /**
   * Returns the largest lead error that takes no more than a share of the pitch diameter tolerance
   * over the engagement: f T_d2/(cot β · l_e).
   *
   * @param tolerance pitch diameter tolerance T_d2 [mm]
   * @param share share of it that the lead error may take [-]
   * @param halfAngle half of the flank angle β [rad]
   * @param engagement length of engagement [mm]
   * @return largest relative lead error [-]
   */
  public static double errorLimit(
      double tolerance, double share, double halfAngle, double engagement) {
    Teeth.positive("pitch diameter tolerance", "mm", tolerance);
    Teeth.positive("share", "-", share);
    Teeth.positive("engagement", "mm", engagement);
    if (!(halfAngle > 0 && halfAngle < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "half flank angle [rad] must lie between 0 and 90 degrees, found " + halfAngle);
    }
    return share * tolerance * Math.tan(halfAngle) / engagement;
  }

  /**
   * Returns the pitch diameter tolerance by the formula behind the tables, T_d2 = k 90 P^0.4 d^0.1
   * µm; the printed tables differ from it by rounding in a few places.
   *
   * @param pitch pitch [mm]
   * @param diameter nominal diameter [mm]
   * @param grade tolerance grade, 3 to 9
   * @return pitch diameter tolerance of the bolt [mm]
   */
  public static double pitchDiameterTolerance(double pitch, double diameter, int grade) {
    double[] factors = {0.5, 0.63, 0.8, 1, 1.25, 1.6, 2};
    double[] ends = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180};
    Teeth.positive("pitch", "mm", pitch);
    if (grade < 3 || grade > 9) {
      throw new IllegalArgumentException("grade [-] must be 3 to 9, found " + grade);
    }
    for (int i = 0; i + 1 < ends.length; i++) {
      if (diameter > ends[i] && diameter <= ends[i + 1]) {
        double mean = Math.sqrt(ends[i] * ends[i + 1]);
        return factors[grade - 3] * 90 * Math.pow(pitch, 0.4) * Math.pow(mean, 0.1) / 1000;
      }
    }
    throw new IllegalArgumentException(
        "diameter [mm] must be above 0.99 and at most 180, found " + diameter);
  }
}
