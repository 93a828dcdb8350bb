package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Reads blocks and plates. */
final class PrismaticReader {

  private PrismaticReader() {}

  /** Reads a block. */
  static Prismatic block(Heading heading, Keys k) {
    Size length = k.size("length");
    Size width = k.size("width");
    return new Prismatic(
        heading,
        Outline.rectangle(length.nominal(), width.nominal()),
        length,
        width,
        k.size("height"),
        k.groups("operations", PrismaticReader::milling),
        finished(k),
        Geometry.NONE,
        k.text("section"));
  }

  private static Set<Face> finished(Keys k) {
    Set<Face> faces = EnumSet.allOf(Face.class);
    for (String word : k.texts("unfinished")) {
      boolean gone = faces.removeIf(f -> f.name().toLowerCase(Locale.ROOT).equals(word));
      if (!gone) {
        k.wrong("unfinished", "left, right, front, back, bottom or top instead of '" + word + "'");
      }
    }
    return faces;
  }

  /** Reads a plate. */
  static Prismatic plate(Heading heading, Keys k) {
    Outline outline =
        k.has("lever")
            ? Outline.lever(k.number("lever"), k.number("first"), k.number("second"))
            : outline(k);
    double[] extent = outline.extent();
    return new Prismatic(
        heading,
        outline,
        Size.of(extent[0]),
        Size.of(extent[1]),
        k.size("thickness"),
        k.groups("operations", PrismaticReader::milling),
        finished(k),
        Geometry.NONE,
        k.text("section"));
  }

  private record Corner(Outline.Point at, double radius) {}

  private static Outline outline(Keys k) {
    List<Corner> corners =
        k.groups(
            "outline",
            c -> new Corner(new Outline.Point(c.number("x"), c.number("y")), c.number("radius")));
    if (corners.size() < 2) {
      throw new IllegalArgumentException("a plate needs an outline of corners, or a lever");
    }
    List<Outline.Piece> pieces = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Outline.Point to = corners.get((i + 1) % corners.size()).at();
      double chord = Math.hypot(to.x() - from.at().x(), to.y() - from.at().y());
      double bulge = 0;
      if (from.radius() != 0) {
        if (!(Math.abs(from.radius()) >= chord / 2)) {
          throw new IllegalArgumentException(
              "the arc after corner " + i + " has a radius under half the distance to the next");
        }
        bulge =
            Math.signum(from.radius())
                * Math.tan(Math.asin(Math.min(1, chord / 2 / Math.abs(from.radius()))) / 2);
      }
      pieces.add(new Outline.Piece(to, bulge));
    }
    return new Outline(corners.get(0).at(), pieces);
  }

  private static Prismatic.Operation milling(Keys k) {
    String name = k.text("name");
    Face face = k.one(Face.class, "face");
    return switch (k.operation) {
      case "holes" -> new Prismatic.Holes(name, face, HoleReader.hole(k), HoleReader.pattern(k));
      case "pocket" ->
          new Prismatic.Pocket(
              name,
              face,
              k.number("u"),
              k.number("v"),
              k.size("size-u"),
              k.size("size-v"),
              k.number("corner"),
              k.orThrough("depth"));
      case "slot" ->
          new Prismatic.Slot(
              name,
              face,
              new Pattern.At(k.number("u"), k.number("v")),
              new Pattern.At(k.number("to-u"), k.number("to-v")),
              k.size("width"),
              k.orThrough("depth"));
      case "channel" ->
          new Prismatic.Channel(
              name, face, along(k), k.number("at"), k.size("width"), k.size("depth"));
      case "t-slot" ->
          new Prismatic.TSlot(
              name,
              face,
              along(k),
              k.number("at"),
              k.size("throat"),
              k.number("throat-depth"),
              k.number("head"),
              k.number("head-height"));
      case "dovetail" ->
          new Prismatic.Dovetail(
              name,
              face,
              along(k),
              k.number("at"),
              k.size("wide"),
              k.number("depth"),
              k.number("flank"),
              k.one(Prismatic.DovetailKind.class, "kind"));
      case "edge" ->
          new Prismatic.EdgeBreak(
              name,
              face,
              k.one(Face.class, "other"),
              k.has("radius")
                  ? Edge.round(k.number("radius"))
                  : new Edge.Chamfer(k.number("chamfer"), k.number("angle")));
      default ->
          new Prismatic.Boss(
              name, face, k.number("u"), k.number("v"), k.size("diameter"), k.number("height"));
    };
  }

  private static Prismatic.Along along(Keys k) {
    return k.one(Prismatic.Along.class, "along");
  }
}
