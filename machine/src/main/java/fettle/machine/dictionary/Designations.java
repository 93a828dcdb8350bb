package fettle.machine.dictionary;

import fettle.mechanics.bearings.Designation;
import fettle.mechanics.fits.ToleranceClass;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.threads.ThreadDesignation;
import java.util.Map;
import java.util.Optional;

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

  private Designations() {}

  /** Returns what is expected of a kind of designation; empty if the type is none. */
  public static Optional<String> expectation(String type) {
    return Optional.ofNullable(EXPECTED.get(type));
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
        default -> Materials.of(text);
      }
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
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
