package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.List;

/**
 * A bent strip of sheet metal: legs one after the other, all of one width. The first leg lies in
 * the x, y plane with its inner or upper side up; bends turn about lines along y.
 *
 * @param heading title block
 * @param thickness thickness of the sheet [mm]
 * @param radius inside radius of all bends [mm]
 * @param neutral place of the neutral line as a share of the thickness, K [-]
 * @param width width along the bend lines
 * @param legs legs in order
 */
public record Folded(
    Heading heading, double thickness, double radius, double neutral, Size width, List<Leg> legs)
    implements Recipe {

  /**
   * One leg.
   *
   * @param name name
   * @param outside length over the outside, from edge or outer corner to edge or outer corner
   * @param bend angle through which the next leg is bent, positive upwards; 0 after the last [rad]
   * @param holes holes in it; places are counted along the leg from its start, and across it
   */
  public record Leg(String name, Size outside, double bend, List<LegHoles> holes)
      implements Feature {
    /** Keeps its own copy. */
    public Leg {
      holes = List.copyOf(holes);
    }
  }

  /**
   * Through holes in a leg.
   *
   * @param name name
   * @param diameter diameter
   * @param pattern places: along the leg from its outer edge or corner, across from its side
   */
  public record LegHoles(String name, Size diameter, Pattern pattern) implements Feature {}

  /** Keeps its own copy; refuses what cannot be bent. */
  public Folded {
    legs = List.copyOf(legs);
    if (legs.isEmpty()
        || !(thickness > 0)
        || !(radius > 0)
        || !(neutral > 0)
        || !(neutral <= 0.6)) {
      throw new IllegalArgumentException(
          heading.name()
              + ": a bent sheet needs a leg, a thickness and an inside radius above 0, and K"
              + " between 0 and 0.6");
    }
    for (int i = 0; i < legs.size(); i++) {
      double bend = legs.get(i).bend();
      if (!(Math.abs(bend) < Math.PI) || (bend == 0) != (i == legs.size() - 1)) {
        throw new IllegalArgumentException(
            heading.name()
                + ", leg "
                + legs.get(i).name()
                + ": every leg but the last is followed by a bend of less than 180 degrees");
      }
    }
  }

  @Override
  public Geometry geometry() {
    return Geometry.NONE;
  }

  /** A bent sheet carries no geometrical tolerances: a bend holds none that would need a frame. */
  @Override
  public Folded with(Geometry asked) {
    if (!asked.all().isEmpty()) {
      throw new IllegalArgumentException(
          heading.name()
              + ": a bent sheet carries no datums and geometrical tolerances; write a note");
    }
    return this;
  }

  @Override
  public List<Feature> features() {
    List<Feature> all = new ArrayList<>();
    for (Leg leg : legs) {
      all.add(leg);
      all.addAll(leg.holes());
    }
    return List.copyOf(all);
  }
}
