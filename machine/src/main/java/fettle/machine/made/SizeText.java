package fettle.machine.made;

import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Tolerance;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a size with its tolerance: {@code 12 mm}, {@code 12 mm h6}, {@code 12 mm ± 0.05 mm}, {@code
 * 12 mm 0/-0.1}, {@code 12 mm auxiliary}, {@code 12 mm exact}.
 *
 * @param size what stands before the tolerance
 * @param tolerance the tolerance; general if none is written
 */
record SizeText(String size, Tolerance tolerance) {

  private static final Pattern ZONE =
      Pattern.compile("(.*?\\S)\\s+(?:fit\\s+)?([A-Za-z]{1,2}[0-9]{1,2})");
  private static final Pattern LIMITS =
      Pattern.compile("(.*\\S)\\s+([-+][0-9.]+|0)\\s*/\\s*([-+][0-9.]+|0)");
  private static final Pattern WORD = Pattern.compile("(.*\\S)\\s+(auxiliary|exact)");

  static SizeText of(String text) {
    String clean = text.strip();
    Matcher word = WORD.matcher(clean);
    if (word.matches()) {
      boolean exact = word.group(2).equals("exact");
      return new SizeText(word.group(1), exact ? Tolerance.EXACT : Tolerance.AUXILIARY);
    }
    Matcher limits = LIMITS.matcher(clean);
    if (limits.matches()) {
      double upper = Double.parseDouble(limits.group(2));
      double lower = Double.parseDouble(limits.group(3));
      return new SizeText(limits.group(1), Tolerance.limits(lower, upper));
    }
    Matcher zone = ZONE.matcher(clean);
    return zone.matches()
        ? new SizeText(zone.group(1), Tolerance.zone(zone.group(2)))
        : new SizeText(clean, Tolerance.GENERAL);
  }

  /** Reads the size as a length. */
  Size literal() throws Quantity.NotOne {
    Quantity q = Quantity.parse(size, Dimension.LENGTH, Unit.MM);
    boolean doubtful = q.doubt() > 0 && tolerance.kind() == Tolerance.Kind.GENERAL;
    return new Size(q.value(), doubtful ? Tolerance.limits(-q.doubt(), q.doubt()) : tolerance);
  }

  /** Returns a reckoned value with this tolerance, or with the one it brings. */
  Size of(Reckoned value) {
    boolean brings = tolerance.kind() == Tolerance.Kind.GENERAL && !value.zone().isEmpty();
    return new Size(value.value(), brings ? Tolerance.zone(value.zone()) : tolerance);
  }
}
