package fettle.parts.recipe;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A part made from a block or a plate.
 *
 * @param heading title block
 * @param outline outline in the x, y plane; a rectangle from 0,0 for a block
 * @param length extent along x
 * @param width extent along y
 * @param height extent along z: the thickness of a plate
 * @param operations what is made on it, in order
 * @param finished faces that are machined; the others stay as the stock is
 * @param geometry its datums and geometrical tolerances
 * @param section the hole along whose axis the part is drawn cut; empty for none
 */
public record Prismatic(
    Heading heading,
    Outline outline,
    Size length,
    Size width,
    Size height,
    List<Operation> operations,
    Set<Face> finished,
    Geometry geometry,
    String section)
    implements Recipe {

  /** Something made on a block. */
  public sealed interface Operation extends Feature {
    /** Returns the face it is made from. */
    Face face();
  }

  /** Along which coordinate of its face something runs. */
  public enum Along {
    U,
    V
  }

  /**
   * Holes.
   *
   * @param name name
   * @param face the face they are made from
   * @param hole the hole
   * @param pattern where they stand
   */
  public record Holes(String name, Face face, HoleForm hole, Pattern pattern)
      implements Operation {}

  /**
   * A pocket with rounded corners, or a window if it goes through.
   *
   * @param name name
   * @param face face
   * @param u first coordinate of its middle [mm]
   * @param v second coordinate of its middle [mm]
   * @param sizeU extent along u
   * @param sizeV extent along v
   * @param corner radius of its corners [mm]
   * @param depth depth, or {@link HoleForm#THROUGH} [mm]
   */
  public record Pocket(
      String name,
      Face face,
      double u,
      double v,
      Size sizeU,
      Size sizeV,
      double corner,
      double depth)
      implements Operation {}

  /**
   * A slot with round ends, or, where it leaves the face, open.
   *
   * @param name name
   * @param face face
   * @param from middle of the first end
   * @param to middle of the second end
   * @param width width
   * @param depth depth, or {@link HoleForm#THROUGH} [mm]
   */
  public record Slot(
      String name, Face face, Pattern.At from, Pattern.At to, Size width, double depth)
      implements Operation {}

  /**
   * A square groove right across the face; at the rim it is a rebate.
   *
   * @param name name
   * @param face face
   * @param along direction in which it runs
   * @param at place of its middle across that direction [mm]
   * @param width width
   * @param depth depth
   */
  public record Channel(String name, Face face, Along along, double at, Size width, Size depth)
      implements Operation {}

  /**
   * A T-slot right across the face.
   *
   * @param name name
   * @param face face
   * @param along direction in which it runs
   * @param at place of its middle [mm]
   * @param throat width of the throat
   * @param throatDepth depth of the throat [mm]
   * @param head width of the head [mm]
   * @param headHeight height of the head [mm]
   */
  public record TSlot(
      String name,
      Face face,
      Along along,
      double at,
      Size throat,
      double throatDepth,
      double head,
      double headHeight)
      implements Operation {}

  /**
   * A dovetail right across the face.
   *
   * @param name name
   * @param face face
   * @param along direction in which it runs
   * @param at place of its middle [mm]
   * @param wide width at the wide end of the flanks: the bottom of a slot, the top of a tongue
   * @param depth depth or height [mm]
   * @param flank angle of the flank to the face [rad]
   * @param kind slot or tongue
   */
  public record Dovetail(
      String name,
      Face face,
      Along along,
      double at,
      Size wide,
      double depth,
      double flank,
      DovetailKind kind)
      implements Operation {}

  /** Whether a dovetail is cut in or left standing. */
  public enum DovetailKind {
    SLOT,
    TONGUE
  }

  /**
   * A broken or rounded edge of the block between two faces.
   *
   * @param name name
   * @param face first face; a chamfer's width and angle are counted on it
   * @param other second face
   * @param edge chamfer or rounding
   */
  public record EdgeBreak(String name, Face face, Face other, Edge edge) implements Operation {}

  /**
   * A round boss on a face.
   *
   * @param name name
   * @param face face
   * @param u first coordinate [mm]
   * @param v second coordinate [mm]
   * @param diameter diameter
   * @param height height above the face [mm]
   */
  public record Boss(String name, Face face, double u, double v, Size diameter, double height)
      implements Operation {}

  /** Keeps its own copies; refuses a block without extent. */
  public Prismatic {
    operations = List.copyOf(operations);
    finished = Set.copyOf(finished);
    if (!(length.nominal() > 0) || !(width.nominal() > 0) || !(height.nominal() > 0)) {
      throw new IllegalArgumentException(
          heading.name() + ": length, width and height of a block must lie above 0 mm");
    }
  }

  /** A part without geometrical tolerances. */
  public Prismatic(
      Heading heading,
      Outline outline,
      Size length,
      Size width,
      Size height,
      List<Operation> operations,
      Set<Face> finished) {
    this(heading, outline, length, width, height, operations, finished, Geometry.NONE, "");
  }

  /** Returns the same part drawn cut along the axis of a hole. */
  public Prismatic cutAlong(String hole) {
    return new Prismatic(
        heading, outline, length, width, height, operations, finished, geometry, hole);
  }

  @Override
  public Prismatic with(Geometry asked) {
    return new Prismatic(
        heading, outline, length, width, height, operations, finished, asked, section);
  }

  /**
   * Returns a block, all faces machined.
   *
   * @param heading title block
   * @param length extent along x [mm]
   * @param width extent along y [mm]
   * @param height extent along z [mm]
   * @param operations what is made on it
   */
  public static Prismatic block(
      Heading heading, double length, double width, double height, Operation... operations) {
    return new Prismatic(
        heading,
        Outline.rectangle(length, width),
        Size.of(length),
        Size.of(width),
        Size.of(height),
        List.of(operations),
        EnumSet.allOf(Face.class));
  }

  /**
   * Returns the extent along an axis.
   *
   * @param axis 0, 1, 2 for x, y, z
   * @return extent [mm]
   */
  public double extent(int axis) {
    return (axis == 0 ? length : axis == 1 ? width : height).nominal();
  }

  /** Tells whether the outline is the whole rectangle. */
  public boolean isBlock() {
    return outline.equals(Outline.rectangle(length.nominal(), width.nominal()));
  }

  @Override
  public List<Feature> features() {
    return List.copyOf(operations);
  }
}
