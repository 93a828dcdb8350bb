package fettle.machine.dictionary;

import fettle.mechanics.bearings.Designation;
import fettle.mechanics.fits.ToleranceClass;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.threads.ThreadDesignation;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The designations of standards that a book may hold: threads, fits, bearings, materials. */
public final class Designations {

  private static final int LONGEST = 40;

  private static final Map<String, String> EXPECTED =
      Map.of(
          "thread", "a thread such as 'M10x1', 'Tr 14x3 LH' or '7/16-10 Acme LH'",
          "shaft fit", "a tolerance class of a shaft such as 'k6'",
          "hole fit", "a tolerance class of a hole such as 'H7'",
          "bearing", "a bearing such as '6204', '7204B' or '51104'",
          "material", "a material such as 'EN-GJL-200', 'C45' or 'CuSn12'");

  private static final Map<String, Pattern> SPELLING =
      Map.of(
          "shaft fit", Pattern.compile("[a-z]{1,2}(?:0|01|1[0-8]|[1-9])"),
          "hole fit", Pattern.compile("[A-Z]{1,2}(?:0|01|1[0-8]|[1-9])"),
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
    try {
      switch (type) {
        case "thread" -> ThreadDesignation.parse(text);
        case "bearing" -> Designation.parse(text);
        case "shaft fit" -> refuseHole(ToleranceClass.parse(text));
        case "hole fit" -> refuseShaft(ToleranceClass.parse(text));
        default -> material(text);
      }
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  /**
   * Refuses a material that is a slip of the pen: unknown, and either no designation at all (no
   * digit) or a known one with its letters exchanged. Other grades of a standard are kept; what is
   * not known of them is said where a figure needs it.
   */
  private static void material(String text) {
    if (Materials.find(text).isPresent()) {
      return;
    }
    Pattern spelling = SPELLING.get("material");
    boolean spelled = spelling != null && spelling.matcher(text).matches();
    boolean slip = false;
    for (Material known : Materials.all()) {
      String letters = letters(known.designation().split("[+ ]")[0]);
      slip |= !letters.equals(letters(text)) && sorted(letters).equals(sorted(letters(text)));
    }
    if (!spelled || slip || letters(text).length() == text.length()) {
      Materials.of(text);
    }
  }

  private static String letters(String designation) {
    return designation.replaceAll("[^\\p{L}]", "");
  }

  private static String sorted(String letters) {
    return letters.chars().sorted().mapToObj(Character::toString).collect(Collectors.joining());
  }

  private static void refuseHole(ToleranceClass found) {
    if (found.isHole()) {
      throw new IllegalArgumentException("Capitals are for holes; a shaft has small letters.");
    }
  }

  private static void refuseShaft(ToleranceClass found) {
    if (!found.isHole()) {
      throw new IllegalArgumentException("Small letters are for shafts; a hole has capitals.");
    }
  }
}
