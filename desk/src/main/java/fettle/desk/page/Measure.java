package fettle.desk.page;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The units somebody prefers to read. */
public enum Measure {
  METRIC,
  INCH;

  private static final double MM_PER_INCH = 25.4;
  private static final Pattern MILLIMETRES =
      Pattern.compile("(?<![\\w./-])(-?\\d+(?:\\.\\d+)?) mm(?![\\w²³/])");

  /** Returns the measure the owner of a book prefers. */
  public static Measure of(String word) {
    return word.equals("inch") ? INCH : METRIC;
  }

  /**
   * Returns a sentence with its lengths in the units preferred beside those it is written in; what
   * it says stays, for a name in it may hold a length, too.
   *
   * @param sentence a sentence whose lengths are in mm
   */
  public String told(String sentence) {
    return this == METRIC ? sentence : MILLIMETRES.matcher(sentence).replaceAll(Measure::both);
  }

  private static String both(MatchResult length) {
    double inches = Double.parseDouble(length.group(1)) / MM_PER_INCH;
    return length.group() + " (" + Numbers.significant(inches, 3) + " in)";
  }

  /**
   * Returns the unit in which a quantity is shown.
   *
   * @param unit unit the figure is stated in
   */
  public Unit shown(Unit unit) {
    if (this == METRIC || unit.reciprocal()) {
      return unit;
    }
    return switch (unit.dimension()) {
      case LENGTH -> Unit.INCH;
      case AREA -> Unit.IN2;
      case VOLUME -> Unit.IN3;
      case FORCE -> Unit.LBF;
      case MASS -> Unit.LB;
      case INERTIA -> Unit.LB_IN2;
      case MOMENT -> Unit.LBF_IN;
      case STRESS -> unit.equals(Unit.J_PER_MM3) ? Unit.HP_MIN_PER_IN3 : Unit.PSI;
      case STIFFNESS -> Unit.LBF_PER_IN;
      case POWER -> Unit.HP;
      case SPEED ->
          unit.equals(Unit.M_PER_MIN) || unit.equals(Unit.M_PER_S)
              ? Unit.FT_PER_MIN
              : Unit.IN_PER_MIN;
      case VOLUME_RATE -> Unit.IN3_PER_MIN;
      case PRESSURE_VELOCITY -> Unit.PSI_FT_PER_MIN;
      default -> unit;
    };
  }
}
