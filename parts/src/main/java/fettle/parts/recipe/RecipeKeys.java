package fettle.parts.recipe;

import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Every key that may stand in a recipe, operation by operation: what a dictionary is driven by. */
public final class RecipeKeys {

  /** What a key holds. */
  public enum Kind {
    /** A number with a unit. */
    NUMBER,
    /** A whole number. */
    COUNT,
    /** A size with its tolerance: a number, or a number with a zone or limits. */
    SIZE,
    /** Text. */
    TEXT,
    /** One of several words. */
    WORD,
    /** A designation of a thread. */
    THREAD,
    /** A group of further keys, described as an operation of that name. */
    GROUP,
    /** Several such groups in order. */
    GROUPS,
    /** Texts in order. */
    TEXTS
  }

  /**
   * One key.
   *
   * @param operation operation or group it stands in
   * @param key the key
   * @param kind what it holds
   * @param unit unit of a number
   * @param meaning what it is, in the trade's words
   * @param standard what is taken if it is left out; null if there is none
   * @param required whether it must be given
   * @param choices words to choose from, or names of the groups that may stand here
   */
  public record Key(
      String operation,
      String key,
      Kind kind,
      Unit unit,
      String meaning,
      @Nullable String standard,
      boolean required,
      List<String> choices) {}

  private static final List<Key> ALL = new ArrayList<>();

  private RecipeKeys() {}

  /** Returns all keys in order. */
  public static List<Key> all() {
    return List.copyOf(ALL);
  }

  /** Returns the keys of an operation in order; empty if there is no such operation. */
  public static List<Key> of(String operation) {
    return ALL.stream().filter(k -> k.operation().equals(operation)).toList();
  }

  /** Returns one key of an operation. */
  public static Optional<Key> key(String operation, String key) {
    return ALL.stream()
        .filter(k -> k.operation().equals(operation) && k.key().equals(key))
        .findFirst();
  }

  /** Returns the names of all operations and groups in order. */
  public static List<String> operations() {
    return ALL.stream().map(Key::operation).distinct().toList();
  }

  private static void add(
      String op,
      String key,
      Kind kind,
      Unit unit,
      String meaning,
      String standard,
      String... words) {
    boolean must = standard.equals("!");
    boolean may = standard.equals("?");
    ALL.add(
        new Key(op, key, kind, unit, meaning, must || may ? null : standard, must, List.of(words)));
  }

  private static void mm(String op, String key, String meaning, String standard) {
    add(op, key, Kind.NUMBER, Unit.MM, meaning, standard);
  }

  private static void deg(String op, String key, String meaning, String standard) {
    add(op, key, Kind.NUMBER, Unit.DEG, meaning, standard);
  }

  private static void size(String op, String key, String meaning, String standard) {
    add(op, key, Kind.SIZE, Unit.MM, meaning, standard);
  }

  private static void count(String op, String key, String meaning, String standard) {
    add(op, key, Kind.COUNT, Unit.ONE, meaning, standard);
  }

  private static void word(
      String op, String key, String meaning, String standard, String... words) {
    add(op, key, Kind.WORD, Unit.ONE, meaning, standard, words);
  }

  private static void text(String op, String key, String meaning, String standard) {
    add(op, key, Kind.TEXT, Unit.ONE, meaning, standard);
  }

  private static void group(String op, String key, String meaning, String standard, String... of) {
    add(op, key, Kind.GROUP, Unit.ONE, meaning, standard, of);
  }

  private static void groups(String op, String key, String meaning, String standard, String... of) {
    add(op, key, Kind.GROUPS, Unit.ONE, meaning, standard, of);
  }

  private static void from(String op) {
    word(op, "from", "end its place is counted from", "left", "left", "right");
  }

  private static void face(String op) {
    word(
        op,
        "face",
        "face it is made from",
        "top",
        "left",
        "right",
        "front",
        "back",
        "bottom",
        "top");
  }

  private static void run(String op) {
    face(op);
    word(
        op, "along", "direction it runs in: first or second coordinate of the face", "u", "u", "v");
    mm(op, "at", "place of its middle across that direction", "!");
  }

  private static void finish(String op) {
    add(op, "Ra", Kind.NUMBER, Unit.MICRON, "mean roughness asked for", "?");
    word(
        op,
        "made",
        "how the surface is made",
        "any",
        "any",
        "stock",
        "drilled",
        "cut",
        "ground",
        "lapped");
  }

  private static void hole(String op) {
    size(op, "diameter", "diameter; left out for a tapped hole", "?");
    add(op, "thread", Kind.THREAD, Unit.ONE, "thread of a tapped hole", "?");
    mm(op, "depth", "depth of the full cylinder; left out for a through hole", "?");
    mm(op, "thread-depth", "depth of full thread; left out for the whole hole", "?");
    word(op, "bottom", "shape of the bottom", "point", "point", "flat");
    mm(op, "counterbore", "diameter of a counterbore", "?");
    mm(op, "counterbore-depth", "depth of the counterbore", "?");
    mm(op, "countersink", "diameter of a countersink at the surface", "?");
    deg(op, "countersink-angle", "included angle of the countersink", "90");
    finish(op);
  }

  private static void pattern(String op) {
    mm(op, "u", "first coordinate of the first place or of the circle's centre", "!");
    mm(op, "v", "second coordinate of it", "!");
    count(op, "columns", "places along u", "1");
    count(op, "rows", "places along v", "1");
    mm(op, "step-u", "distance of columns", "0");
    mm(op, "step-v", "distance of rows", "0");
    mm(op, "circle", "bolt circle diameter", "?");
    count(op, "count", "places on the bolt circle", "1");
    deg(op, "start", "angle of the first place on it", "0");
  }

  private static final String[] TURNED = {
    "groove",
    "cross-hole",
    "axial-holes",
    "keyway",
    "bore-keyway",
    "flats",
    "end-slot",
    "socket",
    "centre-hole",
    "graduations"
  };
  private static final String[] PRISMATIC = {
    "holes", "pocket", "slot", "channel", "t-slot", "dovetail", "edge", "boss"
  };
  private static final String ON =
      "feature by its name, or a face: top, left end, right face of FEATURE, floor of FEATURE";
  private static final String[] CHARACTERISTICS =
      Arrays.stream(Characteristic.values()).map(Characteristic::word).toArray(String[]::new);
  private static final String[] STEPS = {"cylinder", "taper", "arc"};

  static {
    text("part", "name", "key of the part", "!");
    text("part", "title", "title of the sheet, up to 25 characters", "!");
    text("part", "number", "drawing number; the key if left out", "?");
    text("part", "material", "designation of the material", "!");
    add("part", "density", Kind.NUMBER, Unit.G_PER_CM3, "density of the material", "7.85");
    text("part", "tolerance", "general tolerance", "ISO 2768-m");
    add("part", "Ra", Kind.NUMBER, Unit.MICRON, "roughness of all other surfaces", "3.2");
    text("part", "stock", "what it is made from", "");
    add("part", "notes", Kind.TEXTS, Unit.ONE, "further notes on the sheet", "?");
    groups("part", "geometry", "datums and geometrical tolerances", "?", "datum", "tolerance");
    group("part", "turned", "a turned part", "?", "turned");
    group("part", "block", "a part from a block", "?", "block");
    group("part", "plate", "a part from plate with a shaped outline", "?", "plate");
    group("part", "sheet", "a bent strip of sheet", "?", "sheet");
    group("part", "gear", "a spur gear by its data", "?", "gear");
    group("part", "screw", "a screw spindle by its data", "?", "screw");
    group("part", "nut", "a round nut by its data", "?", "nut");
    group("part", "handwheel", "a handwheel by its data", "?", "handwheel");
    group("part", "dial", "a graduated ring by its data", "?", "dial");

    text("datum", "letter", "capital letter of the datum", "!");
    text("datum", "on", ON, "!");
    word("tolerance", "what", "characteristic held", "!", CHARACTERISTICS);
    text("tolerance", "on", ON, "!");
    mm("tolerance", "value", "width or diameter of the tolerance zone", "!");
    word(
        "tolerance",
        "zone",
        "shape of the zone; left out: round for the position of a hole and for coaxiality",
        "?",
        "between",
        "round");
    text("tolerance", "to", "datums in order, A-B for a common datum of two", "");

    groups("turned", "outside", "steps of the outline from left to right", "!", STEPS);
    groups("turned", "bore-left", "steps of the bore from the left end inwards", "?", STEPS);
    groups("turned", "bore-right", "steps of the bore from the right end inwards", "?", STEPS);
    word("turned", "bottom-left", "bottom of the left bore", "flat", "flat", "point");
    word("turned", "bottom-right", "bottom of the right bore", "flat", "flat", "point");
    groups("turned", "operations", "what is made besides, in order", "?", TURNED);

    for (String step : STEPS) {
      text(step, "name", "name of the step", "!");
      size(step, "diameter", "diameter, where it starts", "!");
      if (!step.equals("cylinder")) {
        mm(step, "end", "diameter where it ends", "!");
      }
      size(step, "length", "length along the axis", "!");
      if (step.equals("arc")) {
        mm(step, "radius", "radius, positive bulges out, negative hollows in", "!");
      }
      for (String side : List.of("start", "end")) {
        mm(step, side + "-chamfer", "chamfer at its " + side + ", 45 degrees", "?");
        mm(step, side + "-radius", "rounding or fillet at its " + side, "?");
        mm(step, side + "-undercut", "width of an undercut at its " + side, "?");
        mm(step, side + "-undercut-depth", "depth of that undercut", "0.3");
      }
      finish(step);
      add(step, "thread", Kind.THREAD, Unit.ONE, "thread on it", "?");
      mm(step, "thread-length", "length of full thread; left out for the whole step", "?");
      word(step, "thread-from", "end the thread starts from", "left", "left", "right");
      word(step, "knurl", "knurl on it", "?", "RAA", "RBL", "RBR", "RGE", "RGV", "RKE", "RKV");
      mm(step, "knurl-pitch", "pitch of the knurl", "0.8");
    }

    named("groove");
    word("groove", "where", "outside or in the bore", "outside", "outside", "inside");
    from("groove");
    mm("groove", "at", "distance of its nearer flank from that end", "!");
    size("groove", "width", "width at the bottom", "!");
    size("groove", "bottom", "diameter of its bottom", "!");
    deg("groove", "flank", "angle of each flank to the plane across the axis", "0");

    named("cross-hole");
    from("cross-hole");
    mm("cross-hole", "at", "distance of its axis from that end", "!");
    deg("cross-hole", "angle", "where it enters, from the top towards the front", "0");
    hole("cross-hole");

    named("axial-holes");
    from("axial-holes");
    mm("axial-holes", "sunk", "how far the face they start on lies inside that end", "0");
    mm("axial-holes", "circle", "bolt circle diameter; 0 for one in the axis", "0");
    count("axial-holes", "count", "how many", "1");
    deg("axial-holes", "start", "angle of the first", "0");
    hole("axial-holes");

    named("keyway");
    from("keyway");
    mm("keyway", "at", "distance of its nearer end from that end; 0 to run out", "!");
    size("keyway", "length", "overall length", "!");
    size("keyway", "width", "width", "!");
    mm("keyway", "bottom", "distance of its bottom from the axis", "!");
    deg("keyway", "angle", "where it lies", "0");
    word("keyway", "ends", "shape of its ends", "round", "round", "square");

    named("bore-keyway");
    size("bore-keyway", "width", "width", "!");
    mm("bore-keyway", "bottom", "distance of its bottom from the axis", "!");
    deg("bore-keyway", "angle", "where it lies", "0");

    named("flats");
    from("flats");
    mm("flats", "at", "distance of their nearer end from that end", "!");
    size("flats", "length", "length along the axis", "!");
    mm("flats", "across", "size across flats; for one flat twice its distance from the axis", "!");
    count("flats", "count", "how many", "2");
    deg("flats", "start", "angle of the first", "0");

    named("end-slot");
    word("end-slot", "end", "which end", "left", "left", "right");
    size("end-slot", "width", "width", "!");
    mm("end-slot", "depth", "depth", "!");
    deg("end-slot", "angle", "direction", "0");

    named("socket");
    word("socket", "end", "which end", "left", "left", "right");
    size("socket", "across", "size across flats", "!");
    count("socket", "sides", "number of sides", "6");
    mm("socket", "depth", "depth", "!");

    named("centre-hole");
    word("centre-hole", "end", "which end", "left", "left", "right");
    word("centre-hole", "type", "type of ISO 6411", "A", "A", "B", "R");
    mm("centre-hole", "pilot", "pilot diameter", "!");
    word(
        "centre-hole",
        "stay",
        "on the finished part",
        "allowed",
        "required",
        "allowed",
        "forbidden");

    named("graduations");
    from("graduations");
    mm("graduations", "at", "distance of the start of the lines from that end", "0");
    count("graduations", "divisions", "number of divisions", "!");
    count("graduations", "middle", "every so many a longer line", "5");
    count("graduations", "major", "every so many the longest line with a number", "10");
    mm("graduations", "line", "length of the short lines", "3");
    add(
        "graduations",
        "label",
        Kind.NUMBER,
        Unit.ONE,
        "what a major division adds to the number",
        "1");
    word("graduations", "sense", "side of the next higher number", "left", "left", "right");

    size("block", "length", "extent along x", "!");
    size("block", "width", "extent along y", "!");
    size("block", "height", "extent along z", "!");
    add("block", "unfinished", Kind.TEXTS, Unit.ONE, "faces that stay as the stock is", "?");
    text("block", "section", "hole along whose axis it is drawn cut, without hidden lines", "");
    groups("block", "operations", "what is made on it, in order", "?", PRISMATIC);
    size("plate", "thickness", "thickness", "!");
    groups(
        "plate", "outline", "corners in order, the first again at the end left out", "?", "corner");
    mm("plate", "lever", "distance of the centres of a lever with two round ends", "?");
    mm("plate", "first", "radius of the lever's first end", "?");
    mm("plate", "second", "radius of the lever's second end", "?");
    add("plate", "unfinished", Kind.TEXTS, Unit.ONE, "faces that stay as the stock is", "?");
    text("plate", "section", "hole along whose axis it is drawn cut, without hidden lines", "");
    groups("plate", "operations", "what is made on it, in order", "?", PRISMATIC);
    mm("corner", "x", "first coordinate", "!");
    mm("corner", "y", "second coordinate", "!");
    mm("corner", "radius", "radius of the arc to the next corner, positive anticlockwise", "?");

    named("holes");
    face("holes");
    hole("holes");
    pattern("holes");
    named("pocket");
    face("pocket");
    mm("pocket", "u", "first coordinate of its middle", "!");
    mm("pocket", "v", "second coordinate of its middle", "!");
    size("pocket", "size-u", "extent along u", "!");
    size("pocket", "size-v", "extent along v", "!");
    mm("pocket", "corner", "radius of its corners", "!");
    mm("pocket", "depth", "depth; left out for a window", "?");
    named("slot");
    face("slot");
    mm("slot", "u", "first coordinate of the first end's middle", "!");
    mm("slot", "v", "second coordinate of it", "!");
    mm("slot", "to-u", "first coordinate of the second end's middle", "!");
    mm("slot", "to-v", "second coordinate of it", "!");
    size("slot", "width", "width", "!");
    mm("slot", "depth", "depth; left out for a through slot", "?");
    named("channel");
    run("channel");
    size("channel", "width", "width", "!");
    size("channel", "depth", "depth", "!");
    named("t-slot");
    run("t-slot");
    size("t-slot", "throat", "width of the throat", "!");
    mm("t-slot", "throat-depth", "depth of the throat", "!");
    mm("t-slot", "head", "width of the head", "!");
    mm("t-slot", "head-height", "height of the head", "!");
    named("dovetail");
    run("dovetail");
    size("dovetail", "wide", "width at the wide end of its flanks", "!");
    mm("dovetail", "depth", "depth or height", "!");
    deg("dovetail", "flank", "angle of the flank to the face", "60");
    word("dovetail", "kind", "cut in or left standing", "slot", "slot", "tongue");
    named("edge");
    face("edge");
    word("edge", "other", "second face", "!", "left", "right", "front", "back", "bottom", "top");
    mm("edge", "chamfer", "chamfer, on the first face", "?");
    deg("edge", "angle", "its angle to the first face", "45");
    mm("edge", "radius", "rounding", "?");
    named("boss");
    face("boss");
    mm("boss", "u", "first coordinate", "!");
    mm("boss", "v", "second coordinate", "!");
    size("boss", "diameter", "diameter", "!");
    mm("boss", "height", "height above the face", "!");

    mm("sheet", "thickness", "thickness of the sheet", "!");
    mm("sheet", "radius", "inside radius of the bends", "!");
    add("sheet", "K", Kind.NUMBER, Unit.ONE, "neutral line as a share of the thickness", "0.44");
    size("sheet", "width", "width along the bend lines", "!");
    groups("sheet", "legs", "legs in order", "!", "leg");
    text("leg", "name", "name of the leg", "!");
    size("leg", "outside", "outside length", "!");
    deg("leg", "bend", "angle the next leg is bent through, positive upwards", "0");
    groups("leg", "holes", "holes in it", "?", "leg-holes");
    named("leg-holes");
    size("leg-holes", "diameter", "diameter", "!");
    pattern("leg-holes");

    text("gear", "pair", "gear pair or rack of the lathe its teeth are taken from", "?");
    word("gear", "wheel", "which wheel of that pair", "driven", "driver", "driven");
    count("gear", "z", "teeth", "!");
    mm("gear", "m", "module", "!");
    deg("gear", "alpha", "pressure angle", "20");
    add("gear", "x", Kind.NUMBER, Unit.ONE, "profile shift factor", "0");
    mm("gear", "tip", "tip diameter, if not m (z + 2 + 2 x)", "?");
    mm("gear", "width", "face width", "!");
    size("gear", "bore", "bore", "!");
    mm("gear", "hub", "hub diameter", "0");
    mm("gear", "hub-length", "hub length", "0");
    text("gear", "mate", "the gear it runs with", "");
    add("gear", "table", Kind.TEXTS, Unit.ONE, "further lines of the gear table", "?");
    size("gear", "key-width", "width of a keyway", "?");
    mm("gear", "key-bottom", "distance of the keyway's bottom from the axis", "?");
    add("screw", "thread", Kind.THREAD, Unit.ONE, "thread", "!");
    mm("screw", "length", "threaded length", "!");
    for (String side : List.of("left", "right")) {
      size("screw", side, "diameter of the " + side + " journal", "?");
      mm("screw", side + "-length", "length of the " + side + " journal", "0");
    }
    add("nut", "thread", Kind.THREAD, Unit.ONE, "thread", "!");
    size("nut", "diameter", "outside diameter of the body", "!");
    mm("nut", "length", "overall length", "!");
    size("nut", "flange", "diameter of a flange", "?");
    mm("nut", "flange-length", "thickness of the flange", "0");
    mm("nut", "circle", "bolt circle in the flange", "?");
    count("nut", "bolts", "number of bolt holes", "3");
    size("nut", "bolt-hole", "diameter of the bolt holes", "?");
    mm("handwheel", "diameter", "outside diameter", "!");
    mm("handwheel", "rim", "width of the rim", "!");
    size("handwheel", "hub", "hub diameter", "!");
    mm("handwheel", "length", "length over rim and hub", "!");
    size("handwheel", "bore", "bore", "!");
    add("handwheel", "grip", Kind.THREAD, Unit.ONE, "thread of the grip", "M6");
    mm("dial", "diameter", "engraved diameter", "!");
    mm("dial", "width", "width of the ring", "!");
    size("dial", "bore", "bore", "!");
    count("dial", "divisions", "number of divisions", "!");
    mm("dial", "division", "what one division reads", "!");
    word("dial", "sense", "side of the next higher number", "left", "left", "right");
  }

  private static void named(String op) {
    text(op, "name", "name of the feature", "!");
  }
}
