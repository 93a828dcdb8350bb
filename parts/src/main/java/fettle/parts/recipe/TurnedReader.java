package fettle.parts.recipe;

import java.util.Locale;

/** Reads turned parts. */
final class TurnedReader {

  private TurnedReader() {}

  /** Reads a turned part. */
  static Turned turned(Heading heading, Keys k) {
    return new Turned(
        heading,
        k.groups("outside", TurnedReader::step),
        new Bore(k.groups("bore-left", TurnedReader::step), HoleReader.bottom(k, "bottom-left")),
        new Bore(k.groups("bore-right", TurnedReader::step), HoleReader.bottom(k, "bottom-right")),
        k.groups("operations", TurnedReader::turning));
  }

  private static Step step(Keys k) {
    Step.Form form = Step.Form.valueOf(k.operation.toUpperCase(Locale.ROOT));
    Size diameter = k.size("diameter");
    double end = form == Step.Form.CYLINDER ? diameter.nominal() : k.number("end");
    Knurl knurl =
        k.has("knurl")
            ? new Knurl(Knurl.Form.valueOf(k.word("knurl")), k.number("knurl-pitch"))
            : null;
    return new Step(
        k.text("name"),
        form,
        diameter,
        end,
        k.size("length"),
        form == Step.Form.ARC ? k.number("radius") : 0,
        edge(k, "start"),
        edge(k, "end"),
        k.finish(),
        k.thread("thread"),
        k.number("thread-length"),
        k.one(End.class, "thread-from"),
        knurl,
        null);
  }

  private static Edge edge(Keys k, String side) {
    if (k.has(side + "-chamfer")) {
      return Edge.chamfer(k.number(side + "-chamfer"));
    } else if (k.has(side + "-radius")) {
      return Edge.round(k.number(side + "-radius"));
    } else if (k.has(side + "-undercut")) {
      return new Edge.Undercut(k.number(side + "-undercut"), k.number(side + "-undercut-depth"));
    }
    return Edge.SHARP;
  }

  private static Turned.Operation turning(Keys k) {
    String name = k.text("name");
    return switch (k.operation) {
      case "groove" ->
          new Turned.Groove(
              name,
              k.one(Turned.Side.class, "where"),
              k.one(End.class, "from"),
              k.number("at"),
              k.size("width"),
              k.size("bottom"),
              k.number("flank"));
      case "cross-hole" ->
          new Turned.CrossHole(
              name,
              k.one(End.class, "from"),
              k.number("at"),
              k.number("angle"),
              HoleReader.hole(k));
      case "axial-holes" ->
          new Turned.AxialHoles(
              name,
              k.one(End.class, "from"),
              k.number("sunk"),
              k.number("circle"),
              k.count("count"),
              k.number("start"),
              HoleReader.hole(k));
      case "keyway" ->
          new Turned.Keyway(
              name,
              k.one(End.class, "from"),
              k.number("at"),
              k.size("length"),
              k.size("width"),
              k.number("bottom"),
              k.number("angle"),
              k.one(Turned.KeywayEnds.class, "ends"));
      case "bore-keyway" ->
          new Turned.BoreKeyway(name, k.size("width"), k.number("bottom"), k.number("angle"));
      case "flats" ->
          new Turned.Flats(
              name,
              k.one(End.class, "from"),
              k.number("at"),
              k.size("length"),
              k.number("across") / 2,
              k.count("count"),
              k.number("start"));
      case "end-slot" ->
          new Turned.EndSlot(
              name, k.one(End.class, "end"), k.size("width"), k.number("depth"), k.number("angle"));
      case "socket" ->
          new Turned.Socket(
              name, k.one(End.class, "end"), k.size("across"), k.count("sides"), k.number("depth"));
      case "centre-hole" ->
          new Turned.CentreHole(
              name,
              k.one(End.class, "end"),
              k.word("type"),
              k.number("pilot"),
              k.one(Turned.Stay.class, "stay"));
      default ->
          new Turned.Graduations(
              name,
              k.one(End.class, "from"),
              k.number("at"),
              k.count("divisions"),
              k.count("middle"),
              k.count("major"),
              k.number("line"),
              k.number("label"),
              k.one(Turned.Sense.class, "sense"));
    };
  }
}
