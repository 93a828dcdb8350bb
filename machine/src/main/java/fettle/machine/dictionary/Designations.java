package fettle.machine.dictionary;

import fettle.mechanics.threads.ThreadDesignation;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The designations of standards that a book may hold: threads, fits, bearings, materials. */
public final class Designations {

  private static final int LONGEST = 40;

  private static final Map<String, String> EXPECTED =
      Map.of(
          "thread", "a thread such as 'M10x1', 'Tr 14x3 LH' or '7/16-10 Acme LH'",
          "fit", "a tolerance class such as 'k6' or 'H7'",
          "bearing", "a bearing such as '6204', '7204B' or '51104'",
          "material", "a material such as 'EN-GJL-200', 'C45' or 'CuSn12'");

  private static final Map<String, Pattern> SPELLING =
      Map.of(
          "fit", Pattern.compile("[A-Za-z]{1,2}(?:0|01|1[0-8]|[1-9])"),
          "bearing", Pattern.compile("\\d{3,5}[A-Z0-9/. -]{0,12}"),
          "material", Pattern.compile("[A-Za-z0-9][A-Za-z0-9+/. -]{0,38}"));

  private Designations() {}

  /** Returns what is expected of a kind of designation; empty if the type is none. */
  public static Optional<String> expectation(String type) {
    return Optional.ofNullable(EXPECTED.get(type));
  }

  /**
   * Returns the pattern that a designation must match in a schema; empty if the type is none. The
   * reader looks at a thread more closely.
   */
  static Optional<String> spelling(String type) {
    Pattern pattern = SPELLING.get(type);
    return type.equals("thread")
        ? Optional.of("^(?=.{2,40}$)(?:[A-WYZ]|\\d).*\\d.*$")
        : Optional.ofNullable(pattern).map(p -> "^(?=.{1,40}$)(?:" + p.pattern() + ")$");
  }

  /** Returns a remedy if the text is no designation of this kind. */
  public static Optional<String> problem(String type, String text) {
    if (text.length() > LONGEST) {
      return Optional.of("It is too long.");
    }
    Pattern spelling = SPELLING.get(type);
    if (spelling != null) {
      return spelling.matcher(text).matches() ? Optional.empty() : Optional.of("");
    }
    return type.equals("thread") ? thread(text) : Optional.empty();
  }

  private static Optional<String> thread(String text) {
    try {
      ThreadDesignation.parse(text);
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }
}
