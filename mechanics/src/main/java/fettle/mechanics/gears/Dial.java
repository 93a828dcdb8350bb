package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A dial: a travel per turn, engraved in equal divisions on a diameter.
 *
 * @param travel travel per turn the dial is engraved for [mm]
 * @param division value of one division [mm]
 * @param diameter diameter that carries the lines [mm]
 */
public record Dial(Ratio travel, Ratio division, double diameter) {

  /** Most divisions a dial is offered with; beyond that lines cannot be cut. */
  public static final int MOST_DIVISIONS = 100_000;

  /** Refuses a division that does not go into the travel a whole number of times. */
  public Dial {
    Teeth.positive("travel per turn", travel);
    Teeth.positive("division", division);
    Teeth.positive("dial diameter", "mm", diameter);
    Ratio number = travel.over(division);
    if (!number.isWhole() || number.toDouble() > MOST_DIVISIONS) {
      throw new IllegalArgumentException(
          "division "
              + division.text()
              + " mm must go into "
              + travel.text()
              + " mm a whole number of times (at most "
              + MOST_DIVISIONS
              + "), found "
              + number.text());
    }
  }

  /** Returns the number of divisions N = travel/division. */
  public int divisions() {
    return travel.over(division).numerator().intValueExact();
  }

  /**
   * Returns the spacing of the lines along the rim, c = π D/N.
   *
   * @return spacing of the lines [mm]
   */
  public double spacing() {
    return Math.PI * diameter / divisions();
  }

  /**
   * Returns the diameter needed for a line spacing: D = N c/π.
   *
   * @param spacing spacing of the lines [mm]
   * @return diameter [mm]
   */
  public double diameterFor(double spacing) {
    return divisions() * Teeth.positive("line spacing", "mm", spacing) / Math.PI;
  }

  /**
   * Returns division values to offer, smallest first: 1, 2 and 5 times powers of ten of a
   * millimetre (or of an inch, from 0.0005), and the tolerated 0.025 and 0.25 mm where the travel
   * is a multiple of 1.25 mm but of no finer round value.
   */
  public static List<Ratio> series(Scale scale) {
    List<Ratio> values = new ArrayList<>();
    Ratio unit = scale == Scale.METRIC ? Ratio.ONE : Ratio.INCH;
    for (int power = scale == Scale.METRIC ? -3 : -4; power <= 1; power++) {
      for (int lead : new int[] {1, 2, 5}) {
        values.add(unit.times(Ratio.of(BigDecimal.valueOf(lead).scaleByPowerOfTen(power))));
      }
    }
    return List.copyOf(values);
  }

  /** Metric or inch divisions. */
  public enum Scale {
    METRIC,
    INCH
  }

  /**
   * Returns the finest dial whose lines are far enough apart: the smallest value of the series that
   * goes into the travel. An empty list means that none fits.
   *
   * @param travel travel per turn to engrave, free of π
   * @param diameter diameter that carries the lines [mm]
   * @param least least spacing of the lines [mm]
   * @param scale metric or inch
   */
  public static List<Dial> fitting(Ratio travel, double diameter, double least, Scale scale) {
    Teeth.positive("travel per turn", travel);
    Teeth.positive("line spacing", "mm", least);
    List<Dial> fitting = new ArrayList<>();
    List<Ratio> values = new ArrayList<>(series(scale));
    boolean quarter = scale == Scale.METRIC && travel.over(Ratio.of(5, 4)).isWhole();
    if (quarter) {
      values.add(Ratio.of(1, 40));
      values.add(Ratio.of(1, 4));
      values.sort(java.util.Comparator.comparing(Ratio::toDouble));
    }
    for (Ratio value : values) {
      Ratio number = travel.over(value);
      if (number.isWhole() && number.toDouble() <= MOST_DIVISIONS) {
        Dial dial = new Dial(travel, value, diameter);
        if (dial.spacing() >= least) {
          fitting.add(dial);
        }
      }
    }
    return List.copyOf(fitting);
  }

  /**
   * Returns the round travel next to a true one: the nearest whole number of divisions.
   *
   * @param trueTravel true travel per turn
   * @param division value of one division
   */
  public static Ratio roundedTravel(Ratio trueTravel, Ratio division) {
    Teeth.positive("travel per turn", trueTravel);
    Teeth.positive("division", division);
    double number = trueTravel.over(division).toDouble();
    if (!(number >= 0.5) || number > MOST_DIVISIONS) {
      throw new IllegalArgumentException(
          "a turn of "
              + trueTravel.text()
              + " mm holds "
              + number
              + " divisions; 1 to "
              + MOST_DIVISIONS
              + " are possible");
    }
    return division.times(Math.round(number));
  }

  /**
   * Returns the error of a dial engraved for another travel than the true one: e = s (T/Td - 1);
   * positive if the slide went further than shown.
   *
   * @param trueTravel true travel per turn [mm]
   * @param engraved travel per turn engraved [mm]
   * @param indicated travel read from the dial [mm]
   * @return slide position minus reading [mm]
   */
  public static double error(double trueTravel, double engraved, double indicated) {
    Teeth.positive("true travel", "mm", trueTravel);
    Teeth.positive("engraved travel", "mm", engraved);
    return indicated * (trueTravel / engraved - 1);
  }

  /**
   * Returns the longest move whose error stays within a limit; infinite if the dial is true.
   *
   * @param trueTravel true travel per turn [mm]
   * @param engraved travel per turn engraved [mm]
   * @param limit largest error allowed [mm]
   * @return longest move [mm]
   */
  public static double longestMove(double trueTravel, double engraved, double limit) {
    Teeth.positive("error limit", "mm", limit);
    return limit / Math.abs(error(trueTravel, engraved, 1));
  }
}
