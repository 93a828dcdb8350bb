package fettle.mechanics.fits;

import java.util.Locale;

/** Standard tolerance grades of ISO 286-1, finest first. */
public enum Grade {
  IT01,
  IT0,
  IT1,
  IT2,
  IT3,
  IT4,
  IT5,
  IT6,
  IT7,
  IT8,
  IT9,
  IT10,
  IT11,
  IT12,
  IT13,
  IT14,
  IT15,
  IT16,
  IT17,
  IT18;

  private static final Table WIDTHS = Table.read("standard-tolerances.csv");

  /**
   * Reads {@code 7} or {@code IT7}.
   *
   * @throws IllegalArgumentException if there is no such grade
   */
  public static Grade parse(String text) {
    String number = text.trim().toUpperCase(Locale.ROOT).replaceFirst("^IT\\s*", "");
    for (Grade grade : values()) {
      if (grade.number().equals(number)) {
        return grade;
      }
    }
    throw new IllegalArgumentException(
        "tolerance grade '" + text.trim() + "': expected 01, 0, 1 to 18, with or without IT");
  }

  /** Returns the number as it stands in a tolerance class. */
  public String number() {
    return name().substring(2);
  }

  /** Returns the next finer grade; refuses for IT01. */
  public Grade finer() {
    if (this == IT01) {
      throw new IllegalArgumentException(
          "there is no grade finer than IT01, which the rule for this hole would need");
    }
    return this == IT0 ? IT01 : at(place() - 1);
  }

  /** Returns the number of the grade, -1 for IT01. */
  int place() {
    return this == IT01 ? -1 : Integer.parseInt(number());
  }

  /** Returns the grade of a number from 0 up. */
  static Grade at(int place) {
    return parse(Integer.toString(place));
  }

  /** Tells whether this grade is that one or finer. */
  public boolean upTo(Grade other) {
    return compareTo(other) <= 0;
  }

  /**
   * Standard tolerance of ISO 286-1 Table 1.
   *
   * @param size nominal size, over 0 to 500 [mm]
   * @return width of the tolerance [mm]
   * @throws IllegalArgumentException for a size outside the table
   */
  public double width(double size) {
    return microns(size) / 1000;
  }

  /**
   * The same as the table prints it.
   *
   * @param size nominal size, over 0 to 500 [mm]
   * @return width of the tolerance [µm]
   */
  double microns(double size) {
    return WIDTHS.at(size, name()).orElseThrow();
  }

  /**
   * Returns the step of sizes that counts as one in the table of grades.
   *
   * @param size nominal size, over 0 to 500 [mm]
   */
  static Table.Step mainStep(double size) {
    return WIDTHS.step(size);
  }
}
