package fettle.mechanics.fits;

import static fettle.mechanics.fits.Grade.IT4;
import static fettle.mechanics.fits.Grade.IT6;
import static fettle.mechanics.fits.Grade.IT7;
import static fettle.mechanics.fits.Grade.IT8;

import java.util.List;
import java.util.Locale;

/**
 * Places of the tolerance zones of ISO 286-1: the tables of the standard, and for holes the general
 * rule (the hole lies on the other side of the line), the Delta rule (K, M, N to IT8 and P to ZC to
 * IT7 are shifted by the difference of two neighbouring grades) and the named exceptions.
 */
final class FundamentalDeviation {

  static final List<String> LETTERS =
      List.of(
          "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j", "k", "m", "n", "p",
          "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc");
  private static final Table TABLE = Table.read("fundamental-deviations.csv");
  private static final int H = LETTERS.indexOf("h");

  private FundamentalDeviation() {}

  /** Returns the table itself, for the formulas that start from neighbouring letters. */
  static Table table() {
    return TABLE;
  }

  /**
   * Limit deviations of a shaft.
   *
   * @param size nominal size [mm]
   * @param letter letter in lower case
   * @param grade tolerance grade
   */
  static Deviations shaft(double size, String letter, Grade grade) {
    double width = grade.microns(size);
    if (letter.equals("js")) {
      return Deviations.microns(-width / 2, width / 2);
    }
    if (LETTERS.indexOf(letter) <= H) {
      double above = letter.equals("h") ? 0 : -table(size, letter, letter);
      return Deviations.microns(above - width, above);
    }
    double below =
        switch (letter) {
          case "j" -> -table(size, letter + grade.number(), letter + grade.number());
          case "k" -> inside(grade, IT4, IT7) ? table(size, "k", "k") : 0;
          default -> table(size, letter, letter);
        };
    return Deviations.microns(below, below + width);
  }

  /**
   * Limit deviations of a hole.
   *
   * @param size nominal size [mm]
   * @param letter letter in lower case
   * @param grade tolerance grade
   */
  static Deviations hole(double size, String letter, Grade grade) {
    double width = grade.microns(size);
    if (letter.equals("js")) {
      return Deviations.microns(-width / 2, width / 2);
    }
    if (LETTERS.indexOf(letter) <= H) {
      double below = letter.equals("h") ? 0 : table(size, letter, capital(letter));
      return Deviations.microns(below, below + width);
    }
    double above =
        switch (letter) {
          case "j" -> table(size, "J" + grade.number(), "J" + grade.number());
          case "k" -> aboveK(size, grade);
          case "m" -> aboveM(size, grade);
          case "n" -> aboveN(size, grade);
          default -> delta(size, grade, IT7) - table(size, letter, capital(letter));
        };
    return Deviations.microns(above - width, above);
  }

  private static double aboveK(double size, Grade grade) {
    if (grade.upTo(IT8)) {
      return delta(size, grade, IT8) - table(size, "k", "K");
    }
    if (size <= 3) {
      return 0;
    }
    throw none("K" + grade.number(), size, "above IT8 only sizes to 3 mm have one; use N or JS");
  }

  private static double aboveM(double size, Grade grade) {
    boolean named = grade == IT6 && size > 250 && size <= 315;
    return named ? -9 : delta(size, grade, IT8) - table(size, "m", "M");
  }

  private static double aboveN(double size, Grade grade) {
    if (grade.upTo(IT8) || size <= 3) {
      return delta(size, grade, IT8) - table(size, "n", "N");
    }
    return 0;
  }

  /**
   * Shift of a hole so that it makes with a shaft one grade finer the same fit in both systems.
   *
   * @param size nominal size [mm]
   * @param grade tolerance grade
   * @param coarsest coarsest grade of the rule
   * @return IT(n) - IT(n-1) up to the coarsest grade of the rule, 0 above it and to 3 mm [µm]
   */
  static double delta(double size, Grade grade, Grade coarsest) {
    if (size <= 3 || !grade.upTo(coarsest)) {
      return 0;
    }
    return grade.microns(size) - grade.finer().microns(size);
  }

  private static boolean inside(Grade grade, Grade finest, Grade coarsest) {
    return grade.compareTo(finest) >= 0 && grade.upTo(coarsest);
  }

  /**
   * Returns the magnitude printed for a letter; refuses where the standard prints nothing.
   *
   * @param size nominal size [mm]
   * @param column column of the table
   * @param shown the class as the user wrote it
   * @return magnitude [µm]
   */
  static double table(double size, String column, String shown) {
    if (!TABLE.heads().contains(column)) {
      String grades = column.startsWith("J") ? "J6, J7 and J8" : "j5, j6, j7 and, to 3 mm only, j8";
      throw none(shown, size, "of this letter it has only " + grades + "; else use js or JS");
    }
    return TABLE.at(size, column).orElseThrow(() -> none(shown, size, reason(column)));
  }

  private static String reason(String column) {
    return switch (column) {
      case "t" -> "t begins over 24 mm; below that use u";
      case "v" -> "v begins over 14 mm; below that use x";
      case "y" -> "y begins over 18 mm; below that use z";
      case "cd", "ef", "fg" -> "these small steps end at 50 mm; use the neighbouring single letter";
      default -> "use js or JS";
    };
  }

  /**
   * Refuses letters at sizes for which the standard rules them out.
   *
   * @param size nominal size [mm]
   * @param letter letter in lower case
   * @param grade tolerance grade
   * @param shown the class as the user wrote it
   */
  static void refuseTinySizes(double size, String letter, Grade grade, String shown) {
    if (size > 1) {
      return;
    }
    if (letter.equals("a") || letter.equals("b")) {
      throw none(shown, size, "a, b, A and B are not used to 1 mm");
    }
    if (shown.startsWith("N") && !grade.upTo(IT8)) {
      throw none(shown, size, "N coarser than IT8 is not used to 1 mm");
    }
    if (grade.compareTo(Grade.IT14) >= 0) {
      throw none(shown, size, "IT14 to IT18 are not used to 1 mm");
    }
  }

  private static IllegalArgumentException none(String shown, double size, String why) {
    return new IllegalArgumentException(
        "ISO 286-1 gives no deviation " + shown + " at " + size + " mm: " + why);
  }

  private static String capital(String letter) {
    return letter.toUpperCase(Locale.ROOT);
  }
}
