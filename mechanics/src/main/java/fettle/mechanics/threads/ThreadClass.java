package fettle.mechanics.threads;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance class of a metric or trapezoidal thread, such as 6g, 5g6g or 7H.
 *
 * @param pitchGrade grade of the pitch diameter
 * @param position position letter; capital for a nut
 * @param crestGrade grade of the crest diameter: major of the screw, minor of the nut
 */
record ThreadClass(int pitchGrade, char position, int crestGrade) {

  private static final Pattern FORM = Pattern.compile("([3-9])([a-zA-Z])(?:([3-9])([a-zA-Z]))?");

  static ThreadClass parse(String text) {
    Matcher m = FORM.matcher(text.trim());
    if (!m.matches()) {
      throw new IllegalArgumentException(
          "class: found '"
              + text
              + "', expected a grade and a position such as 6g, 5g6g, 6H or 7e");
    }
    char position = m.group(2).charAt(0);
    if (m.group(4) != null && m.group(4).charAt(0) != position) {
      throw new IllegalArgumentException(
          "class: found '" + text + "', expected the same position letter twice, such as 5g6g");
    }
    int pitch = Integer.parseInt(m.group(1));
    int crest = m.group(3) == null ? pitch : Integer.parseInt(m.group(3));
    return new ThreadClass(pitch, position, crest);
  }

  boolean isNut() {
    return Character.isUpperCase(position);
  }
}
