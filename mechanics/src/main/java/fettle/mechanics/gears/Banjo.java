package fettle.mechanics.gears;

import java.util.ArrayList;
import java.util.List;

/**
 * The swinging arm that carries the change gears' studs, with the axes it has to bridge: S, the
 * last driver's axis in the headstock, and L, the lead screw, about which the arm swings. All sizes
 * are measured on the lathe.
 *
 * @param axes distance from S to L [mm]
 * @param margin distance the stud keeps from the line S-L, where depth could not be adjusted [mm]
 * @param slotLow nearest the slot lets a stud come to L [mm]
 * @param slotHigh furthest the slot lets a stud go from L [mm]
 * @param gap air between a tip circle and a shaft [mm]
 * @param headShaft diameter of whatever stands at S [mm]
 * @param screwShaft diameter of the lead screw's sleeve at L [mm]
 * @param stud diameter of a stud on the arm [mm]
 */
public record Banjo(
    double axes,
    double margin,
    double slotLow,
    double slotHigh,
    double gap,
    double headShaft,
    double screwShaft,
    double stud) {

  /** Sizes that equal each other on paper shall not fail by rounding. */
  private static final double SLACK = 1e-9;

  /** Refuses sizes that are no banjo. */
  public Banjo {
    Teeth.positive("distance S-L", "mm", axes);
    Teeth.notNegative("margin", "mm", margin);
    Teeth.notNegative("slot start", "mm", slotLow);
    Teeth.positive("slot end", "mm", slotHigh);
    Teeth.notNegative("gap", "mm", gap);
    Teeth.notNegative("shaft at S", "mm", headShaft);
    Teeth.notNegative("shaft at L", "mm", screwShaft);
    Teeth.notNegative("stud", "mm", stud);
    if (!(slotHigh >= slotLow)) {
      throw new IllegalArgumentException(
          "slot [mm] needs start <= end, found " + slotLow + " to " + slotHigh);
    }
  }

  /** Returns a banjo with studs of 10 mm. */
  public static Banjo of(
      double axes,
      double margin,
      double slotLow,
      double slotHigh,
      double gap,
      double headShaft,
      double screwShaft) {
    return new Banjo(axes, margin, slotLow, slotHigh, gap, headShaft, screwShaft, 10);
  }

  /** Why a train does not fit. */
  public enum Rule {
    REACH("G1 the wheels are too small to bridge S and L"),
    TRIANGLE("G2 one pair is too large for the other"),
    SLOT("G3 a stud lies outside the slot"),
    C_AT_S("G4 wheel C touches what stands at S"),
    B_AT_L("G5 wheel B touches the lead screw's sleeve"),
    A_AT_L("G6 wheel A touches the lead screw's sleeve"),
    D_AT_S("G7 the last wheel touches what stands at S"),
    WHEELS_TOUCH("G8 driver and driven wheel touch each other"),
    STUDS("G9 a wheel touches the stud of its neighbour"),
    DIRECT("G10 two wheels must span the axes exactly");

    private final String words;

    Rule(String words) {
      this.words = words;
    }

    /** Returns the rule in words. */
    public String words() {
      return words;
    }
  }

  /**
   * Returns the rules a four-wheel train A-B, C-D breaks; none if it fits.
   *
   * @param module module of all wheels [mm]
   * @param a driver on S
   * @param b driven on the stud
   * @param c driver on the stud
   * @param d driven on the lead screw
   */
  public List<Rule> broken(double module, int a, int b, int c, int d) {
    double r1 = module * (a + b) / 2;
    double r2 = module * (c + d) / 2;
    List<Rule> broken = new ArrayList<>();
    note(broken, Rule.REACH, r1 + r2 >= axes + margin - SLACK);
    note(broken, Rule.TRIANGLE, Math.abs(r1 - r2) <= axes - margin + SLACK);
    note(broken, Rule.SLOT, r2 >= slotLow - SLACK && r2 <= slotHigh + SLACK);
    note(broken, Rule.C_AT_S, clears(module, c, headShaft, r1));
    note(broken, Rule.B_AT_L, clears(module, b, screwShaft, r2));
    note(broken, Rule.A_AT_L, clears(module, a, screwShaft, axes));
    note(broken, Rule.D_AT_S, clears(module, d, headShaft, axes));
    return broken;
  }

  /**
   * Tells whether a four-wheel train fits, without saying why not.
   *
   * @param module module of all wheels [mm]
   * @param a driver on S
   * @param b driven on the stud
   * @param c driver on the stud
   * @param d driven on the lead screw
   */
  public boolean fits(double module, int a, int b, int c, int d) {
    double r1 = module * (a + b) / 2;
    double r2 = module * (c + d) / 2;
    return reaches(r1, r2)
        && clears(module, c, headShaft, r1)
        && clears(module, b, screwShaft, r2)
        && clears(module, a, screwShaft, axes)
        && clears(module, d, headShaft, axes);
  }

  /**
   * Returns the rules a train of two wheels with one idler between them breaks.
   *
   * @param module module of all wheels [mm]
   * @param a driver on S
   * @param idler wheel on the stud
   * @param d driven on the lead screw
   */
  public List<Rule> brokenSimple(double module, int a, int idler, int d) {
    double r1 = module * (a + idler) / 2;
    double r2 = module * (idler + d) / 2;
    List<Rule> broken = new ArrayList<>();
    note(broken, Rule.REACH, r1 + r2 >= axes + margin - SLACK);
    note(broken, Rule.TRIANGLE, Math.abs(r1 - r2) <= axes - margin + SLACK);
    note(broken, Rule.SLOT, r2 >= slotLow - SLACK && r2 <= slotHigh + SLACK);
    note(broken, Rule.A_AT_L, clears(module, a, screwShaft, axes));
    note(broken, Rule.D_AT_S, clears(module, d, headShaft, axes));
    note(broken, Rule.WHEELS_TOUCH, module * (a + d + 4) / 2 + gap <= axes + SLACK);
    return broken;
  }

  /**
   * Tells whether two wheels with one idler between them fit, by the rules of {@link
   * #brokenSimple}.
   *
   * @param module module of all wheels [mm]
   * @param a driver on S
   * @param idler wheel on the stud
   * @param d driven on the lead screw
   */
  public boolean fitsSimple(double module, int a, int idler, int d) {
    double r1 = module * (a + idler) / 2;
    double r2 = module * (idler + d) / 2;
    return reaches(r1, r2)
        && clears(module, a, screwShaft, axes)
        && clears(module, d, headShaft, axes)
        && module * (a + d + 4) / 2 + gap <= axes + SLACK;
  }

  /**
   * Tells whether two wheels span the axes without an idler.
   *
   * @param module module of both wheels [mm]
   * @param a driver on S
   * @param d driven on the lead screw
   */
  public boolean fitsDirect(double module, int a, int d) {
    return Math.abs(module * (a + d) / 2 - axes) <= 1e-6;
  }

  /**
   * Returns the rules a six-wheel train A-B, C-D, E-F breaks, with both studs in the same straight
   * slot: the second stud at the distance of the last pair from L, the first beyond it by that of
   * the middle pair.
   *
   * @param module module of all wheels [mm]
   * @param wheels A, B, C, D, E, F
   */
  public List<Rule> brokenSix(double module, int... wheels) {
    double r1 = module * (wheels[0] + wheels[1]) / 2;
    double r2 = module * (wheels[2] + wheels[3]) / 2;
    double r3 = module * (wheels[4] + wheels[5]) / 2;
    double far = r2 + r3;
    List<Rule> broken = new ArrayList<>();
    note(broken, Rule.REACH, r1 + far >= axes + margin - SLACK);
    note(broken, Rule.TRIANGLE, Math.abs(r1 - far) <= axes - margin + SLACK);
    note(broken, Rule.SLOT, r3 >= slotLow - SLACK && far <= slotHigh + SLACK);
    double second = secondStudFromHead(r1, far, r3);
    note(
        broken,
        Rule.C_AT_S,
        clears(module, wheels[2], headShaft, r1) && clears(module, wheels[4], headShaft, second));
    note(
        broken,
        Rule.B_AT_L,
        clears(module, wheels[1], screwShaft, far)
            && clears(module, wheels[3], screwShaft, r3)
            && clears(module, wheels[2], screwShaft, far));
    note(broken, Rule.A_AT_L, clears(module, wheels[0], screwShaft, axes));
    note(
        broken,
        Rule.D_AT_S,
        clears(module, wheels[5], headShaft, axes) && clears(module, wheels[3], headShaft, second));
    note(
        broken,
        Rule.STUDS,
        clears(module, wheels[0], stud, second)
            && clears(module, wheels[1], stud, r2)
            && clears(module, wheels[4], stud, r2)
            && clears(module, wheels[5], stud, far));
    return broken;
  }

  /**
   * Tells whether a six-wheel train fits, by the rules of {@link #brokenSix}.
   *
   * @param module module of all wheels [mm]
   * @param w A, B, C, D, E, F
   */
  public boolean fitsSix(double module, int... w) {
    return fitsSix(module, w[0], w[1], w[2], w[3], w[4], w[5]);
  }

  boolean fitsSix(double module, int a, int b, int c, int d, int e, int f) {
    double r1 = module * (a + b) / 2;
    double r2 = module * (c + d) / 2;
    double r3 = module * (e + f) / 2;
    double far = r2 + r3;
    if (!(r1 + far >= axes + margin - SLACK
        && Math.abs(r1 - far) <= axes - margin + SLACK
        && r3 >= slotLow - SLACK
        && far <= slotHigh + SLACK
        && clears(module, c, headShaft, r1)
        && clears(module, b, screwShaft, far)
        && clears(module, d, screwShaft, r3)
        && clears(module, c, screwShaft, far)
        && clears(module, a, screwShaft, axes)
        && clears(module, f, headShaft, axes)
        && clears(module, b, stud, r2)
        && clears(module, e, stud, r2)
        && clears(module, f, stud, far))) {
      return false;
    }
    double second = secondStudFromHead(r1, far, r3);
    return clears(module, e, headShaft, second)
        && clears(module, d, headShaft, second)
        && clears(module, a, stud, second);
  }

  /**
   * Returns the swing of the arm from the line L-S: acos((D² + r2² - r1²)/(2 D r2)).
   *
   * @param r1 distance from S to the stud [mm]
   * @param r2 distance from the stud to L [mm]
   * @return swing angle [rad]; NaN if the circles do not meet
   */
  public double swing(double r1, double r2) {
    return Math.acos((axes * axes + r2 * r2 - r1 * r1) / (2 * axes * r2));
  }

  private double secondStudFromHead(double r1, double far, double near) {
    double cos = (axes * axes + far * far - r1 * r1) / (2 * axes * far);
    double square = axes * axes + near * near - 2 * axes * near * cos;
    return square > 0 ? Math.sqrt(square) : 0;
  }

  /** Whether a stud at these distances from both shafts lies clear of their line, in the slot. */
  private boolean reaches(double r1, double r2) {
    return r1 + r2 >= axes + margin - SLACK
        && Math.abs(r1 - r2) <= axes - margin + SLACK
        && r2 >= slotLow - SLACK
        && r2 <= slotHigh + SLACK;
  }

  private boolean clears(double module, int teeth, double shaft, double distance) {
    return module * (teeth + 2) / 2 + gap + shaft / 2 <= distance + SLACK;
  }

  private static void note(List<Rule> broken, Rule rule, boolean kept) {
    if (!kept) {
      broken.add(rule);
    }
  }
}
