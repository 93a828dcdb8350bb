package fettle.parts.recipe;

import java.util.Optional;

/**
 * The plane along which a block or plate is drawn cut: it holds the axis of a hole and stands
 * upright in the view in which the hole is round.
 *
 * @param carrier face in whose view the plane is drawn as a line
 * @param seen face whose view shows the section
 * @param normal axis across the plane: 0, 1 for x, y
 * @param at place of the plane along that axis [mm]
 */
public record Cut(Face carrier, Face seen, int normal, double at) {

  /**
   * Returns the plane a part asks for; empty if it asks for none, if there is no such hole, or if
   * work is done on both faces that could show the section.
   */
  public static Optional<Cut> of(Prismatic p) {
    return hole(p).flatMap(h -> through(p, h));
  }

  /** Returns the hole along whose axis the part is to be cut. */
  public static Optional<Prismatic.Holes> hole(Prismatic p) {
    return p.operations().stream()
        .filter(o -> o instanceof Prismatic.Holes && o.name().equals(p.section()))
        .map(o -> (Prismatic.Holes) o)
        .findFirst();
  }

  private static Optional<Cut> through(Prismatic p, Prismatic.Holes h) {
    Face carrier = h.face();
    int normal = carrier.axis() == 0 ? 1 : 0;
    double at = h.pattern().places().get(0).u();
    Face seen = normal == 1 ? Face.FRONT : Face.LEFT;
    return free(p, seen)
        ? Optional.of(new Cut(carrier, seen, normal, at))
        : free(p, seen.opposite())
            ? Optional.of(new Cut(carrier, seen.opposite(), normal, at))
            : Optional.empty();
  }

  private static boolean free(Prismatic p, Face face) {
    return p.operations().stream()
        .noneMatch(o -> o.face() == face && !(o instanceof Prismatic.EdgeBreak));
  }
}
