package fettle.parts.recipe;

/** Reads bent sheet, and parts that are described by their engineering data. */
final class DataReader {

  private DataReader() {}

  /** Reads what the key sheet says. */
  static Folded sheet(Heading heading, Keys k) {
    return new Folded(
        heading,
        k.number("thickness"),
        k.number("radius"),
        k.number("K"),
        k.size("width"),
        k.groups(
            "legs",
            leg ->
                new Folded.Leg(
                    leg.text("name"),
                    leg.size("outside"),
                    leg.number("bend"),
                    leg.groups(
                        "holes",
                        h ->
                            new Folded.LegHoles(
                                h.text("name"), h.size("diameter"), HoleReader.pattern(h))))));
  }

  /** Reads what the key gear says. */
  static Turned gear(Heading heading, Keys k) {
    Turned.BoreKeyway key =
        k.has("key-width")
            ? new Turned.BoreKeyway("keyway", k.size("key-width"), k.number("key-bottom"), 0)
            : null;
    return Makers.gear(
        heading,
        new Makers.GearData(
            k.count("z"),
            k.number("m"),
            k.number("alpha"),
            k.number("x"),
            k.number("tip"),
            k.number("width"),
            k.size("bore"),
            k.number("hub"),
            k.number("hub-length"),
            k.text("mate"),
            k.texts("table")),
        key);
  }

  /** Reads what the key screw says. */
  static Turned screw(Heading heading, Keys k) {
    ScrewThread thread = k.thread("thread");
    if (thread == null) {
      throw new IllegalArgumentException("a screw needs its thread");
    }
    return Makers.screw(
        heading,
        thread,
        k.number("length"),
        new Makers.Journal(k.size("left"), k.number("left-length")),
        new Makers.Journal(k.size("right"), k.number("right-length")));
  }

  /** Reads what the key nut says. */
  static Turned nut(Heading heading, Keys k) {
    ScrewThread thread = k.thread("thread");
    if (thread == null) {
      throw new IllegalArgumentException("a nut needs its thread");
    }
    Turned.AxialHoles bolts =
        k.has("circle")
            ? new Turned.AxialHoles(
                "bolts",
                End.LEFT,
                0,
                k.number("circle"),
                k.count("bolts"),
                0,
                HoleForm.through(k.size("bolt-hole")))
            : null;
    return Makers.nut(
        heading,
        thread,
        k.size("diameter"),
        k.number("length"),
        new Makers.Journal(k.size("flange"), k.number("flange-length")),
        bolts);
  }

  /** Reads what the key handwheel says. */
  static Turned handwheel(Heading heading, Keys k) {
    ScrewThread grip = k.thread("grip");
    if (grip == null) {
      throw new IllegalArgumentException("a handwheel needs the thread of its grip");
    }
    return Makers.handwheel(
        heading,
        k.number("diameter"),
        k.number("rim"),
        new Makers.Journal(k.size("hub"), k.number("length")),
        k.size("bore"),
        grip);
  }

  /** Reads what the key dial says. */
  static Turned dial(Heading heading, Keys k) {
    return Makers.dial(
        heading,
        k.number("diameter"),
        k.number("width"),
        k.size("bore"),
        k.count("divisions"),
        k.number("division"),
        k.one(Turned.Sense.class, "sense"));
  }
}
