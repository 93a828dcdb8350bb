package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Datums and geometrical tolerances of a part (ISO 5459, ISO 1101).
 *
 * @param datums datums in the order named
 * @param tolerances tolerances in the order written
 */
public record Geometry(List<Datum> datums, List<Zone> tolerances) {

  /** Nothing asked for. */
  public static final Geometry NONE = new Geometry(List.of(), List.of());

  /** What is said of one feature or face. */
  public sealed interface Asked {
    /** Returns the feature or face. */
    String on();
  }

  /**
   * A datum.
   *
   * @param letter its letter
   * @param on feature or face it is taken from
   */
  public record Datum(String letter, String on) implements Asked {}

  /**
   * A geometrical tolerance.
   *
   * @param what the characteristic it holds
   * @param on feature or face it holds
   * @param width width or diameter of the tolerance zone [mm]
   * @param shape shape of the zone
   * @param to datums in order, each a letter or two joined by a hyphen for a common datum
   */
  public record Zone(Characteristic what, String on, double width, Shape shape, List<String> to)
      implements Asked {
    /** Keeps its own copy; refuses a zone without width. */
    public Zone {
      to = List.copyOf(to);
      if (!(width > 0) || width > 100) {
        throw new IllegalArgumentException(
            what.word()
                + " of '"
                + on
                + "': the zone must be wider than 0 and at most 100 mm, found "
                + width
                + " mm");
      }
    }

    /** Returns the letters it refers to, those of common datums one by one. */
    public List<String> letters() {
      return to.stream().flatMap(t -> Arrays.stream(t.split("-"))).toList();
    }
  }

  /** Shape of a tolerance zone. */
  public enum Shape {
    /** Between two lines, circles or planes. */
    BETWEEN,
    /** Inside a cylinder: the value carries the diameter sign. */
    ROUND
  }

  /** Keeps its own copies. */
  public Geometry {
    datums = List.copyOf(datums);
    tolerances = List.copyOf(tolerances);
  }

  /** Returns everything asked for, datums first. */
  public List<Asked> all() {
    List<Asked> all = new ArrayList<>(datums);
    all.addAll(tolerances);
    return all;
  }

  /** Returns the datum of a letter. */
  public Optional<Datum> datum(String letter) {
    return datums.stream().filter(d -> d.letter().equals(letter)).findFirst();
  }

  /** Returns the tolerances of one feature or face. */
  public List<Zone> on(String name) {
    return tolerances.stream().filter(z -> z.on().equals(name)).toList();
  }

  /** Returns the letter of the datum taken from a feature or face; empty if it is none. */
  public String letterOf(String name) {
    return datums.stream()
        .filter(d -> d.on().equals(name))
        .map(Datum::letter)
        .findFirst()
        .orElse("");
  }
}
