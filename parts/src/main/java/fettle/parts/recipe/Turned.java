package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.List;

/**
 * A turned part. Its axis is the x axis, the left end lies at x = 0; angles round the axis are
 * counted from the top (+z), positive towards the front (-y).
 *
 * @param heading title block
 * @param outside outline, steps from left to right
 * @param left bore from the left end
 * @param right bore from the right end
 * @param operations what is made on it besides
 * @param geometry its datums and geometrical tolerances
 */
public record Turned(
    Heading heading,
    List<Step> outside,
    Bore left,
    Bore right,
    List<Operation> operations,
    Geometry geometry)
    implements Recipe {

  /** Something made on a turned part besides its outline and bores. */
  public sealed interface Operation extends Feature {}

  /**
   * A groove turned into a cylinder or into a bore.
   *
   * @param name name
   * @param where outside or inside
   * @param from the end its place is counted from
   * @param at distance of its nearer flank from that end [mm]
   * @param width width at the bottom
   * @param bottom diameter of its bottom
   * @param flank angle of each flank to the plane across the axis; 0 for square [rad]
   */
  public record Groove(
      String name, Side where, End from, double at, Size width, Size bottom, double flank)
      implements Operation {}

  /** Outside or inside. */
  public enum Side {
    OUTSIDE,
    INSIDE
  }

  /**
   * A hole across the axis.
   *
   * @param name name
   * @param from the end its place is counted from
   * @param at distance of its axis from that end [mm]
   * @param angle where it enters [rad]
   * @param hole the hole; its depth is counted from the outline; through means out the other side
   */
  public record CrossHole(String name, End from, double at, double angle, HoleForm hole)
      implements Operation {}

  /**
   * Holes along the axis into an end or a shoulder.
   *
   * @param name name
   * @param from the end they are made from
   * @param sunk how far the face they start on lies inside that end [mm]
   * @param circle bolt circle diameter; 0 for one hole in the axis [mm]
   * @param count how many, equally spaced
   * @param start angle of the first [rad]
   * @param hole the hole
   */
  public record AxialHoles(
      String name, End from, double sunk, double circle, int count, double start, HoleForm hole)
      implements Operation {}

  /**
   * A keyway in the outline.
   *
   * @param name name
   * @param from the end its place is counted from
   * @param at distance of its nearer end from that end; 0 for one that runs out there [mm]
   * @param length overall length
   * @param width width
   * @param bottom distance of its bottom from the axis [mm]
   * @param angle where it lies [rad]
   * @param ends round for an end mill, square for a slot cutter
   */
  public record Keyway(
      String name,
      End from,
      double at,
      Size length,
      Size width,
      double bottom,
      double angle,
      KeywayEnds ends)
      implements Operation {}

  /** Shape of the ends of a keyway. */
  public enum KeywayEnds {
    ROUND,
    SQUARE
  }

  /**
   * A keyway in the bore, right through.
   *
   * @param name name
   * @param width width
   * @param bottom distance of its bottom from the axis [mm]
   * @param angle where it lies [rad]
   */
  public record BoreKeyway(String name, Size width, double bottom, double angle)
      implements Operation {}

  /**
   * Flats along the axis, equally spaced.
   *
   * @param name name
   * @param from the end their place is counted from
   * @param at distance of their nearer end from that end [mm]
   * @param length length along the axis
   * @param distance distance of each flat from the axis: half the size across flats [mm]
   * @param count how many: 1, 2, 4, 6
   * @param start angle of the first [rad]
   */
  public record Flats(
      String name, End from, double at, Size length, double distance, int count, double start)
      implements Operation {}

  /**
   * A slot across an end.
   *
   * @param name name
   * @param end which end
   * @param width width
   * @param depth depth [mm]
   * @param angle direction [rad]
   */
  public record EndSlot(String name, End end, Size width, double depth, double angle)
      implements Operation {}

  /**
   * A socket with flats into an end: four or six sides.
   *
   * @param name name
   * @param end which end
   * @param across size across flats
   * @param sides number of sides
   * @param depth depth [mm]
   */
  public record Socket(String name, End end, Size across, int sides, double depth)
      implements Operation {}

  /**
   * A centre hole by designation (ISO 6411), not part of the solid.
   *
   * @param name name
   * @param end which end
   * @param type letter
   * @param pilot pilot diameter [mm]
   * @param stay whether it is wanted, may stay, or must not remain
   */
  public record CentreHole(String name, End end, String type, double pilot, Stay stay)
      implements Operation {}

  /** What becomes of a centre hole. */
  public enum Stay {
    REQUIRED,
    ALLOWED,
    FORBIDDEN
  }

  /**
   * Graduations engraved round a rim, not part of the solid.
   *
   * @param name name
   * @param from the end the lines start at
   * @param at distance of the start of the lines from that end [mm]
   * @param divisions number of divisions
   * @param middle every so many a longer line
   * @param major every so many the longest line, with a number
   * @param minorLength length of the short lines [mm]
   * @param label what a major division adds to the number [-]
   * @param sense on which side the next higher number lies, seen from outside
   */
  public record Graduations(
      String name,
      End from,
      double at,
      int divisions,
      int middle,
      int major,
      double minorLength,
      double label,
      Sense sense)
      implements Operation {}

  /** On which side the next higher number lies, seen from outside with the operator side down. */
  public enum Sense {
    LEFT,
    RIGHT
  }

  /** Keeps its own copies; refuses a part without outline. */
  public Turned {
    outside = List.copyOf(outside);
    operations = List.copyOf(operations);
    if (outside.isEmpty()) {
      throw new IllegalArgumentException(
          heading.name() + ": a turned part needs at least one step outside");
    }
  }

  /** A part without geometrical tolerances. */
  public Turned(
      Heading heading, List<Step> outside, Bore left, Bore right, List<Operation> operations) {
    this(heading, outside, left, right, operations, Geometry.NONE);
  }

  @Override
  public Turned with(Geometry asked) {
    return new Turned(heading, outside, left, right, operations, asked);
  }

  /**
   * Returns the overall length.
   *
   * @return length [mm]
   */
  public double length() {
    return outside.stream().mapToDouble(s -> s.length().nominal()).sum();
  }

  /**
   * Returns where something lies.
   *
   * @param from the end it is counted from
   * @param at distance from that end [mm]
   * @return distance from the left end [mm]
   */
  public double place(End from, double at) {
    return from == End.LEFT ? at : length() - at;
  }

  /**
   * Returns the diameter of the rim that lines are engraved on.
   *
   * @param lines the lines, which must be some of this part
   * @return diameter [mm]
   */
  public double rim(Graduations lines) {
    double at = place(lines.from(), lines.at() + lines.minorLength() / 2);
    double end = 0;
    for (Step step : outside) {
      end += step.length().nominal();
      if (at <= end) {
        return step.diameter().nominal();
      }
    }
    throw new IllegalArgumentException(lines.name() + " lie beyond the end of " + heading.name());
  }

  /**
   * Returns the largest diameter.
   *
   * @return diameter [mm]
   */
  public double largest() {
    return outside.stream()
        .mapToDouble(s -> Math.max(s.diameter().nominal(), s.endDiameter()))
        .max()
        .orElse(0);
  }

  @Override
  public List<Feature> features() {
    List<Feature> all = new ArrayList<>(outside);
    all.addAll(left.steps());
    all.addAll(right.steps());
    all.addAll(operations);
    return List.copyOf(all);
  }
}
