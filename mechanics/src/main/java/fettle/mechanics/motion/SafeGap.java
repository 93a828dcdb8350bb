package fettle.mechanics.motion;

import fettle.mechanics.base.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Least gap between parts that move together, so that a part of the body is not crushed. */
public enum SafeGap {
  BODY(500),
  HEAD(300),
  LEG(180),
  FOOT(120),
  TOES(50),
  ARM(120),
  HAND(100),
  FINGER(25);

  /** Where the gaps come from. */
  public static final Source SOURCE = Source.page("ISO 13854:2017", "Table 1");

  private final double gap;

  SafeGap(double gap) {
    this.gap = gap;
  }

  /**
   * Returns the least gap.
   *
   * @return gap [mm]
   */
  public double gap() {
    return gap;
  }

  /** Returns the part in words. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the parts in words; wrist and fist count as hand. */
  public static List<String> words() {
    return Arrays.stream(values()).map(SafeGap::word).toList();
  }

  /**
   * Finds a part of the body by its word.
   *
   * @throws IllegalArgumentException if it is none of the table
   */
  public static SafeGap of(String word) {
    String plain = word.trim().toLowerCase(Locale.ROOT);
    if (plain.equals("wrist") || plain.equals("fist")) {
      return HAND;
    }
    for (SafeGap part : values()) {
      if (part.word().equals(plain)) {
        return part;
      }
    }
    throw new IllegalArgumentException(
        "'" + word + "' is no part of the table; it has " + String.join(", ", words()));
  }
}
