package fettle.mechanics.fits;

import fettle.mechanics.base.Numbers;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a drawing or the owner's book writes for a size with tolerance or a fit: {@code 30 k6},
 * {@code 25 H7}, {@code H7/g6}, {@code 25 H7/g6}.
 *
 * @param size nominal size [mm]; empty if not written
 * @param hole class of the hole; empty if only a shaft is written
 * @param shaft class of the shaft; empty if only a hole is written
 */
public record Designation(
    OptionalDouble size, Optional<ToleranceClass> hole, Optional<ToleranceClass> shaft) {

  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?:[Øø⌀]\\s*)?(\\d{1,4}(?:[.]\\d{1,6})?)?\\s*([A-Za-z]{1,2}\\s*\\d{1,2})(?:\\s*/\\s*([A-Za-z]{1,2}\\s*\\d{1,2}))?");

  /** Refuses a designation that names nothing, or a class in the wrong place. */
  public Designation {
    if (hole.isEmpty() && shaft.isEmpty()) {
      throw new IllegalArgumentException("a designation needs a tolerance class such as k6 or H7");
    }
    if (hole.filter(c -> !c.isHole()).isPresent()
        || shaft.filter(ToleranceClass::isHole).isPresent()) {
      throw new IllegalArgumentException(
          "a fit is written hole first, in capitals, then the shaft: H7/g6");
    }
    size.ifPresent(Grade::mainStep);
  }

  /**
   * Reads a designation.
   *
   * @throws IllegalArgumentException if it is not one; the message says what was expected
   */
  public static Designation parse(String text) {
    String written = text.trim();
    Matcher m = WRITTEN.matcher(written);
    if (written.length() > 40 || !m.matches()) {
      throw new IllegalArgumentException(
          "'"
              + (written.length() > 40 ? written.substring(0, 40) + "…" : written)
              + "': expected a size with class such as 30 k6, 25 H7, or a fit such as H7/g6");
    }
    OptionalDouble size =
        m.group(1) == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(m.group(1)));
    ToleranceClass first = ToleranceClass.parse(m.group(2));
    if (m.group(3) != null) {
      return new Designation(
          size, Optional.of(first), Optional.of(ToleranceClass.parse(m.group(3))));
    }
    return first.isHole()
        ? new Designation(size, Optional.of(first), Optional.empty())
        : new Designation(size, Optional.empty(), Optional.of(first));
  }

  /** Tells whether both hole and shaft are named. */
  public boolean isFit() {
    return hole.isPresent() && shaft.isPresent();
  }

  /**
   * Returns the limit deviations of the one feature that is named.
   *
   * @throws IllegalArgumentException if a fit is named, or the size is missing
   */
  public Deviations deviations() {
    if (isFit()) {
      throw new IllegalArgumentException(text() + " names a fit, not the tolerance of one part");
    }
    return hole.or(() -> shaft).orElseThrow().deviations(sizeNeeded());
  }

  /**
   * Returns the fit.
   *
   * @throws IllegalArgumentException unless hole, shaft and size are named
   */
  public Fit fit() {
    if (!isFit()) {
      throw new IllegalArgumentException(text() + " names one part; a fit is written H7/g6");
    }
    return new Fit(
        hole.orElseThrow().deviations(sizeNeeded()), shaft.orElseThrow().deviations(sizeNeeded()));
  }

  /**
   * Returns the same classes at a size.
   *
   * @param nominal nominal size [mm]
   */
  public Designation at(double nominal) {
    return new Designation(OptionalDouble.of(nominal), hole, shaft);
  }

  /** Returns the designation in its one customary spelling. */
  public String text() {
    String front = size.isPresent() ? Numbers.significant(size.getAsDouble(), 9) + " " : "";
    String classes =
        hole.map(ToleranceClass::text).orElse("")
            + (isFit() ? "/" : "")
            + shaft.map(ToleranceClass::text).orElse("");
    return front + classes;
  }

  private double sizeNeeded() {
    return size.orElseThrow(
        () ->
            new IllegalArgumentException(text() + " has no size; write it in front: 25 " + text()));
  }
}
