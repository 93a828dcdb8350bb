package fettle.parts.recipe;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Makes a recipe of a tree of keys; finds all problems in one pass. */
public final class RecipeReader {

  /**
   * A recipe, or the reasons why there is none.
   *
   * @param recipe the recipe; null if a problem prevents it
   * @param problems what is wrong
   */
  public record Reading(@Nullable Recipe recipe, List<RecipeProblem> problems) {
    /** Keeps its own copy. */
    public Reading {
      problems = List.copyOf(problems);
    }
  }

  private final List<RecipeProblem> problems = new ArrayList<>();

  private RecipeReader() {}

  /** Reads a part. */
  public static Reading read(RecipeTree.Group part) {
    RecipeReader reader = new RecipeReader();
    Recipe recipe = null;
    try {
      recipe = reader.part(reader.in("part", "", part));
    } catch (IllegalArgumentException e) {
      reader.problem("", e);
    }
    return new Reading(reader.problems.isEmpty() ? recipe : null, reader.problems);
  }

  private void problem(String path, IllegalArgumentException e) {
    String message = e.getMessage();
    problems.add(new RecipeProblem(path, message == null ? "cannot be read" : message));
  }

  /** The keys of one operation; problems are noted, and something harmless is given instead. */
  private final class Keys {
    final String operation;
    final String path;
    final Map<String, RecipeTree> entries;

    Keys(String operation, String path, Map<String, RecipeTree> entries) {
      this.operation = operation;
      this.path = path;
      this.entries = entries;
    }

    String at(String key) {
      return path.isEmpty() ? key : path + "/" + key;
    }

    boolean has(String key) {
      return entries.containsKey(key);
    }

    private RecipeKeys.Key known(String key) {
      return RecipeKeys.key(operation, key)
          .orElseThrow(() -> new IllegalStateException(operation + " has no key " + key));
    }

    private void wrong(String key, String expected) {
      problems.add(
          new RecipeProblem(at(key), "expected " + expected + ": " + known(key).meaning()));
    }

    double number(String key) {
      RecipeKeys.Key k = known(key);
      RecipeTree t = entries.get(key);
      if (t instanceof RecipeTree.Figure n) {
        return n.value();
      } else if (t instanceof RecipeTree.Sized s) {
        return s.size().nominal();
      }
      String standard = k.standard();
      if (t == null && standard != null && !standard.isEmpty()) {
        return k.unit().toCoherent(Double.parseDouble(standard));
      } else if (t == null && !k.required()) {
        return 0;
      }
      wrong(key, k.unit().symbol().isEmpty() ? "a number" : "a number in " + k.unit().symbol());
      return 1;
    }

    double orThrough(String key) {
      return has(key) ? number(key) : HoleForm.THROUGH;
    }

    int count(String key) {
      double value = number(key);
      if (value != Math.rint(value) || Math.abs(value) > 1e6) {
        wrong(key, "a whole number");
        return 1;
      }
      return (int) value;
    }

    Size size(String key) {
      RecipeTree t = entries.get(key);
      if (t instanceof RecipeTree.Sized s) {
        return s.size();
      } else if (t instanceof RecipeTree.Figure n && n.value() >= 0 && n.value() < 1e5) {
        return Size.of(n.value());
      } else if (t == null && !known(key).required()) {
        return Size.of(0);
      }
      wrong(key, "a size in mm, with a zone such as H7 if it is a fit");
      return Size.of(1);
    }

    String text(String key) {
      RecipeTree t = entries.get(key);
      if (t instanceof RecipeTree.Text s) {
        return s.text();
      } else if (t instanceof RecipeTree.Figure n) {
        return Numbers.significant(n.value(), 12);
      }
      String standard = known(key).standard();
      if (t == null && (standard != null || !known(key).required())) {
        return standard == null ? "" : standard;
      }
      wrong(key, "a text");
      return "";
    }

    String word(String key) {
      String word = text(key);
      List<String> choices = known(key).choices();
      if (!word.isEmpty() && !choices.contains(word)) {
        wrong(key, "one of " + String.join(", ", choices) + " instead of '" + word + "'");
        return choices.get(0);
      }
      return word;
    }

    <E extends Enum<E>> E one(Class<E> type, String key) {
      String word = word(key);
      if (word.isEmpty()) {
        wrong(key, "one of " + String.join(", ", known(key).choices()));
        word = known(key).choices().get(0);
      }
      return Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
    }

    @Nullable ScrewThread thread(String key) {
      if (!has(key) && known(key).standard() == null) {
        if (known(key).required()) {
          wrong(key, "a thread such as M8 or Tr 14x3 LH");
        }
        return null;
      }
      try {
        return ScrewThread.parse(text(key));
      } catch (IllegalArgumentException e) {
        problem(at(key), e);
        return null;
      }
    }

    Finish finish() {
      double roughness = has("Ra") ? number("Ra") : 0;
      Finish.Making making =
          has("Ra") && !has("made") ? Finish.Making.CUT : one(Finish.Making.class, "made");
      return new Finish(making, roughness);
    }

    List<String> texts(String key) {
      List<String> all = new ArrayList<>();
      if (entries.get(key) instanceof RecipeTree.Items items) {
        for (RecipeTree t : items.items()) {
          if (t instanceof RecipeTree.Text s) {
            all.add(s.text());
          } else {
            wrong(key, "texts");
          }
        }
      } else if (entries.get(key) instanceof RecipeTree.Text s) {
        all.add(s.text());
      } else if (has(key)) {
        wrong(key, "texts");
      }
      return all;
    }

    /** Reads what stands under a key item by item; a bad item is noted and left out. */
    <T> List<T> groups(String key, Function<Keys, T> make) {
      List<T> all = new ArrayList<>();
      RecipeTree t = entries.get(key);
      if (t == null) {
        if (known(key).required()) {
          wrong(key, "a list");
        }
        return all;
      }
      if (!(t instanceof RecipeTree.Items items)) {
        wrong(key, "a list");
        return all;
      }
      for (int i = 0; i < items.items().size(); i++) {
        Keys inner = item(key, i, items.items().get(i));
        if (inner != null) {
          try {
            all.add(make.apply(inner));
          } catch (IllegalArgumentException e) {
            problem(inner.path, e);
          }
        }
      }
      return all;
    }

    private @Nullable Keys item(String key, int i, RecipeTree tree) {
      List<String> allowed = known(key).choices();
      String where = at(key) + "/" + i;
      if (!(tree instanceof RecipeTree.Group group)) {
        problems.add(new RecipeProblem(where, "expected " + String.join(", ", allowed)));
        return null;
      }
      if (allowed.size() == 1 && !group.entries().containsKey(allowed.get(0))) {
        return in(allowed.get(0), where, group);
      }
      if (group.entries().size() == 1) {
        Map.Entry<String, RecipeTree> only = group.entries().entrySet().iterator().next();
        if (allowed.contains(only.getKey()) && only.getValue() instanceof RecipeTree.Group inner) {
          return in(only.getKey(), where + "/" + only.getKey(), inner);
        }
      }
      problems.add(
          new RecipeProblem(
              where, "expected one of " + String.join(", ", allowed) + " with its keys below it"));
      return null;
    }
  }

  private Keys in(String operation, String path, RecipeTree.Group group) {
    Keys keys = new Keys(operation, path, group.entries());
    List<String> known = RecipeKeys.of(operation).stream().map(RecipeKeys.Key::key).toList();
    for (String key : group.entries().keySet().stream().sorted().toList()) {
      if (!known.contains(key)) {
        problems.add(
            new RecipeProblem(
                keys.at(key),
                operation + " knows no such key; it knows " + String.join(", ", known)));
      }
    }
    return keys;
  }

  private Recipe part(Keys k) {
    String name = k.text("name");
    Heading heading =
        new Heading(
            name,
            k.text("title"),
            k.has("number") ? k.text("number") : name,
            k.text("material"),
            k.number("density"),
            k.text("tolerance"),
            Finish.cut(k.number("Ra")),
            k.text("stock"),
            k.texts("notes"));
    List<String> families =
        List.of("turned", "block", "plate", "sheet", "gear", "screw", "nut", "handwheel", "dial");
    List<String> given = families.stream().filter(k::has).toList();
    if (given.size() != 1) {
      throw new IllegalArgumentException(
          "a part has exactly one of " + String.join(", ", families) + "; found " + given);
    }
    String family = given.get(0);
    if (!(k.entries.get(family) instanceof RecipeTree.Group group)) {
      throw new IllegalArgumentException(family + ": expected keys below it");
    }
    Keys f = in(family, family, group);
    return switch (family) {
      case "turned" -> turned(heading, f);
      case "block" -> block(heading, f);
      case "plate" -> plate(heading, f);
      case "sheet" -> sheet(heading, f);
      case "gear" -> gear(heading, f);
      case "screw" -> screw(heading, f);
      case "nut" -> nut(heading, f);
      case "handwheel" -> handwheel(heading, f);
      default ->
          Makers.dial(
              heading,
              f.number("diameter"),
              f.number("width"),
              f.size("bore"),
              f.count("divisions"),
              f.number("division"),
              f.one(Turned.Sense.class, "sense"));
    };
  }

  // Turned parts.

  private Turned turned(Heading heading, Keys k) {
    return new Turned(
        heading,
        k.groups("outside", this::step),
        new Bore(k.groups("bore-left", this::step), bottom(k, "bottom-left")),
        new Bore(k.groups("bore-right", this::step), bottom(k, "bottom-right")),
        k.groups("operations", this::turning));
  }

  private static HoleForm.Bottom bottom(Keys k, String key) {
    return k.word(key).equals("point") ? HoleForm.Bottom.DRILL_POINT : HoleForm.Bottom.FLAT;
  }

  private Step step(Keys k) {
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

  private HoleForm hole(Keys k) {
    ScrewThread thread = k.thread("thread");
    double depth = k.orThrough("depth");
    HoleForm hole;
    if (thread != null) {
      hole =
          HoleForm.tapped(thread, k.has("thread-depth") ? k.number("thread-depth") : depth, depth);
    } else if (k.has("diameter")) {
      hole = HoleForm.blind(k.size("diameter"), depth);
    } else {
      throw new IllegalArgumentException("a hole needs a diameter or a thread");
    }
    hole = hole.bottom(bottom(k, "bottom"));
    if (k.has("Ra") || k.has("made")) {
      hole = hole.finish(k.finish());
    }
    if (k.has("counterbore")) {
      hole = hole.counterbore(k.number("counterbore"), k.number("counterbore-depth"));
    } else if (k.has("countersink")) {
      hole = hole.countersink(k.number("countersink"), k.number("countersink-angle"));
    }
    return hole;
  }

  private Turned.Operation turning(Keys k) {
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
              name, k.one(End.class, "from"), k.number("at"), k.number("angle"), hole(k));
      case "axial-holes" ->
          new Turned.AxialHoles(
              name,
              k.one(End.class, "from"),
              k.number("sunk"),
              k.number("circle"),
              k.count("count"),
              k.number("start"),
              hole(k));
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

  // Blocks and plates.

  private Prismatic block(Heading heading, Keys k) {
    Size length = k.size("length");
    Size width = k.size("width");
    return new Prismatic(
        heading,
        Outline.rectangle(length.nominal(), width.nominal()),
        length,
        width,
        k.size("height"),
        k.groups("operations", this::milling),
        finished(k));
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

  private Prismatic plate(Heading heading, Keys k) {
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
        k.groups("operations", this::milling),
        finished(k));
  }

  private record Corner(Outline.Point at, double radius) {}

  private Outline outline(Keys k) {
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

  private static Pattern pattern(Keys k) {
    double u = k.number("u");
    double v = k.number("v");
    if (k.has("circle")) {
      return new Pattern.Circle(u, v, k.number("circle"), k.count("count"), k.number("start"));
    }
    int columns = k.count("columns");
    int rows = k.count("rows");
    return columns * rows == 1
        ? new Pattern.At(u, v)
        : new Pattern.Grid(u, v, columns, rows, k.number("step-u"), k.number("step-v"));
  }

  private Prismatic.Operation milling(Keys k) {
    String name = k.text("name");
    Face face = k.one(Face.class, "face");
    return switch (k.operation) {
      case "holes" -> new Prismatic.Holes(name, face, hole(k), pattern(k));
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

  // Sheet, and parts by their data.

  private Folded sheet(Heading heading, Keys k) {
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
                            new Folded.LegHoles(h.text("name"), h.size("diameter"), pattern(h))))));
  }

  private static Turned gear(Heading heading, Keys k) {
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

  private Turned screw(Heading heading, Keys k) {
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

  private Turned nut(Heading heading, Keys k) {
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

  private Turned handwheel(Heading heading, Keys k) {
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
}
