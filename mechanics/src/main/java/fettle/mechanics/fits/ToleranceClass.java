package fettle.mechanics.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance class such as {@code k6} (shaft) or {@code H7} (hole).
 *
 * @param letter one letter or two, all small for a shaft, all capital for a hole
 * @param grade tolerance grade
 */
public record ToleranceClass(String letter, Grade grade) {

  private static final Pattern WRITTEN =
      Pattern.compile("([A-Za-z]{1,2})\\s*(?:IT)?\\s*(01|0|[1-9]|1[0-8])");

  /** Refuses letters that ISO 286 does not have. */
  public ToleranceClass {
    String small = letter.toLowerCase(Locale.ROOT);
    boolean oneCase = letter.equals(small) || letter.equals(small.toUpperCase(Locale.ROOT));
    if (!oneCase || !FundamentalDeviation.LETTERS.contains(small)) {
      throw new IllegalArgumentException(
          "tolerance letter '"
              + letter
              + "': ISO 286 has "
              + String.join(" ", FundamentalDeviation.LETTERS)
              + " for shafts, the same in capitals for holes");
    }
  }

  /**
   * Reads a tolerance class.
   *
   * @throws IllegalArgumentException if it is not one of ISO 286
   */
  public static ToleranceClass parse(String text) {
    Matcher m = WRITTEN.matcher(text.trim());
    if (!m.matches()) {
      throw new IllegalArgumentException(
          "tolerance class '"
              + text.trim()
              + "': expected letter and grade such as k6 for a shaft or H7 for a hole");
    }
    return new ToleranceClass(m.group(1), Grade.parse(m.group(2)));
  }

  /** Tells whether this is a class of holes. */
  public boolean isHole() {
    return Character.isUpperCase(letter.charAt(0));
  }

  /**
   * Limit deviations at a nominal size. A size exactly on the border of two steps belongs to the
   * lower one.
   *
   * @param size nominal size, over 0 to 500 [mm]
   * @throws IllegalArgumentException where the standard gives none
   */
  public Deviations deviations(double size) {
    String small = letter.toLowerCase(Locale.ROOT);
    FundamentalDeviation.refuseTinySizes(size, small, grade, text());
    return isHole()
        ? FundamentalDeviation.hole(size, small, grade)
        : FundamentalDeviation.shaft(size, small, grade);
  }

  /**
   * Returns sentences a user should read with the limits; none in the ordinary case.
   *
   * @param size nominal size [mm]
   */
  public List<String> cautions(double size) {
    List<String> said = new ArrayList<>();
    String small = letter.toLowerCase(Locale.ROOT);
    boolean shifted = isHole() && FundamentalDeviation.LETTERS.indexOf(small) > 12;
    if (shifted && size > 3 && grade.compareTo(Grade.IT3) < 0) {
      said.add(
          text()
              + ": ISO 286-1 tabulates the shift Delta from IT3 on; here IT(n) - IT(n-1) of its"
              + " rule was taken beyond its table");
    }
    if (Grade.mainStep(size).to() == size) {
      said.add(
          size + " mm is the upper end of a step and belongs to the step below it (W-FIT-STEP)");
    }
    return List.copyOf(said);
  }

  /** Returns the class as written on a drawing. */
  public String text() {
    return letter + grade.number();
  }
}
