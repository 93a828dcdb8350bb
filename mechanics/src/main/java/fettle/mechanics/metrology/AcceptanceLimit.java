package fettle.mechanics.metrology;

import fettle.mechanics.base.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Scanner;

/**
 * One acceptance limit of a lathe, with its source.
 *
 * @param family set of limits, e.g. {@code iso-1708}
 * @param test name of the test
 * @param grade class of the machine
 * @param what what is tested
 * @param side which deviations are allowed
 * @param value limit at the reference length [mm]
 * @param reference length the value belongs to, 0 if it does not depend on a length [mm]
 * @param reach largest distance between centres the row is for, 0 if it does not depend on it [mm]
 * @param further what each further metre between centres adds [mm]
 * @param floor least limit for short lengths [mm]
 * @param source where it comes from
 * @param note what else is known of it
 */
public record AcceptanceLimit(
    String family,
    String test,
    String grade,
    String what,
    Side side,
    double value,
    double reference,
    double reach,
    double further,
    double floor,
    Source source,
    String note) {

  /** Which deviations are allowed. */
  public enum Side {
    /** The amount only. */
    SIZE,
    /** 0 to + value. */
    PLUS,
    /** From - value to + value. */
    BOTH
  }

  private static final String TABLE = "acceptance.csv";
  private static final List<AcceptanceLimit> ALL = read();

  /** Returns all limits known. */
  public static List<AcceptanceLimit> all() {
    return ALL;
  }

  /**
   * Finds a limit.
   *
   * @param family set of limits
   * @param test name of the test
   * @param grade class of the machine
   * @param length test length or distance between centres [mm]
   */
  public static AcceptanceLimit of(String family, String test, String grade, double length) {
    Require.positive("length", length);
    List<AcceptanceLimit> rows =
        ALL.stream().filter(l -> l.family.equals(family) && l.test.equalsIgnoreCase(test)).toList();
    if (rows.isEmpty()) {
      throw new IllegalArgumentException(
          "test: found '" + test + "', expected one of " + tests(family) + " of " + family);
    }
    List<AcceptanceLimit> graded = rows.stream().filter(l -> l.grade.equals(grade)).toList();
    if (graded.isEmpty()) {
      throw new IllegalArgumentException(
          "class: found '"
              + grade
              + "', expected one of "
              + rows.stream().map(AcceptanceLimit::grade).distinct().toList());
    }
    for (AcceptanceLimit limit : graded) {
      if (limit.reach == 0 || length <= limit.reach) {
        return limit;
      }
    }
    AcceptanceLimit last = graded.get(graded.size() - 1);
    if (last.further == 0) {
      throw new IllegalArgumentException(
          "length: found " + length + " mm, expected at most " + last.reach + " mm for this test");
    }
    return last;
  }

  /** Returns the names of the tests of a family. */
  public static List<String> tests(String family) {
    return ALL.stream().filter(l -> l.family.equals(family)).map(l -> l.test).distinct().toList();
  }

  /**
   * Returns the limit for a length: in proportion below the reference length, not below the floor,
   * never above the value; for long beds with what each further metre adds.
   *
   * @param length test length or distance between centres [mm]
   * @return limit [mm]
   */
  public double at(double length) {
    Require.positive("length", length);
    if (reach > 0 && length > reach) {
      return value + further * Math.ceil((length - reach) / 1000 - 1e-9);
    }
    if (reference == 0 || length >= reference) {
      return value;
    }
    return Math.min(value, Math.max(floor, value * length / reference));
  }

  /** Returns in words which deviations are allowed. */
  public String allowed() {
    return switch (side) {
      case SIZE -> "the amount up to the limit";
      case PLUS -> "from 0 to + the limit only";
      case BOTH -> "from - to + the limit";
    };
  }

  /**
   * Judges a measured deviation.
   *
   * @param y measured deviation [mm]
   * @param u its standard uncertainty [mm]
   * @param length test length [mm]
   */
  public Verdict verdict(double y, double u, double length) {
    double limit = at(length);
    return switch (side) {
      case SIZE -> Verdict.upper(Math.abs(y), u, limit, Verdict.GUARD);
      case PLUS -> Verdict.between(y, u, 0, limit, 0.95);
      case BOTH -> Verdict.between(y, u, -limit, limit, 0.95);
    };
  }

  private static List<AcceptanceLimit> read() {
    List<AcceptanceLimit> limits = new ArrayList<>();
    try (Scanner lines =
        new Scanner(
            java.util.Objects.requireNonNull(
                AcceptanceLimit.class.getResourceAsStream(TABLE), TABLE),
            java.nio.charset.StandardCharsets.UTF_8)) {
      boolean header = true;
      while (lines.hasNextLine()) {
        String line = lines.nextLine();
        if (line.startsWith("#") || line.isBlank()) {
          continue;
        }
        if (!header) {
          limits.add(row(line));
        }
        header = false;
      }
    } catch (NoSuchElementException e) {
      throw new IllegalStateException("cannot read " + TABLE, e);
    }
    return List.copyOf(limits);
  }

  private static AcceptanceLimit row(String line) {
    List<String> c = List.of(line.split(",", -1));
    return new AcceptanceLimit(
        c.get(0),
        c.get(1),
        c.get(2),
        c.get(3),
        Side.valueOf(c.get(4).toUpperCase(Locale.ROOT)),
        number(c.get(5)),
        number(c.get(6)),
        number(c.get(7)),
        number(c.get(8)),
        number(c.get(9)),
        switch (c.get(11)) {
          case "page" -> Source.page(c.get(10), "");
          case "practice" -> Source.practice(c.get(10));
          default -> Source.memory(c.get(10), "");
        },
        c.get(12));
  }

  private static double number(String text) {
    return text.isEmpty() ? 0 : Double.parseDouble(text);
  }
}
