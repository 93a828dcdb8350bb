package fettle.planning.route;

import fettle.mechanics.base.Numbers;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The route of a part from a block or a plate: sawn, the finished faces squared one against the
 * other, the largest first as the face that all else is set from, then one set-up for each face
 * that carries something.
 */
final class PrismaticRoute {

  private static final double SAWN = 2;
  private static final double FACE_CUTTER = 40;
  private static final double FACE_FEED = 0.3;
  private static final double MILL_FEED = 0.1;
  private static final double DRILL_FEED = 0.1;
  private static final double DEPTH = 1;
  private static final double SMALL_CUTTER = 10;
  private static final double LARGEST_DRILL = 13;
  private static final double LARGEST_REAMER = 16;
  private static final int MOST_PASSES = 2000;

  private final Prismatic part;
  private final Workshop shop;
  private final double speed;
  private final Lines lines = new Lines();
  private final List<String> lacks = new ArrayList<>();

  private PrismaticRoute(Prismatic part, Workshop shop) {
    this.part = part;
    this.shop = shop;
    speed = TurnedRoute.cuttingSpeed(part.heading().material());
  }

  static Route of(Prismatic part, Workshop shop) {
    return new PrismaticRoute(part, shop).route();
  }

  private Route route() {
    limits();
    int setUp = 1;
    lines.hand(setUp, "saw to " + size(SAWN), "vice", "hacksaw or bandsaw", 10);
    if (!part.isBlock()) {
      lines.hand(setUp, "mark out, saw and file or mill the outline", "vice", "saw, file", 30);
    }
    for (Face face : faces()) {
      setUp++;
      face(setUp, face);
    }
    Map<Face, List<Prismatic.Operation>> byFace = new EnumMap<>(Face.class);
    part.operations().stream()
        .filter(o -> !(o instanceof Prismatic.EdgeBreak))
        .forEach(o -> byFace.computeIfAbsent(o.face(), f -> new ArrayList<>()).add(o));
    List<Face> order = new ArrayList<>(byFace.keySet());
    order.sort(Comparator.comparingInt((Face f) -> -byFace.getOrDefault(f, List.of()).size()));
    for (Face face : order) {
      setUp++;
      String holding = "vice, " + word(face) + " face up, set from the largest face";
      lines.hand(setUp, "set up and find the edges", holding, "edge finder, indicator", 8);
      for (Prismatic.Operation operation : byFace.getOrDefault(face, List.of())) {
        operation(setUp, holding, operation);
      }
    }
    for (Prismatic.Operation operation : part.operations()) {
      if (operation instanceof Prismatic.EdgeBreak e) {
        lines.hand(setUp + 1, "edge " + e.name(), "bench", "chamfer cutter or file", 4);
      }
    }
    lines.hand(
        setUp + 1, "deburr, check all sizes against the sheet", "bench", "file, scraper", 10);
    double longest = Math.max(part.extent(0), Math.max(part.extent(1), part.extent(2)));
    String stock = part.heading().stock();
    return new Route(
        part.heading().name(),
        stock.isEmpty() ? "block of at least " + size(SAWN) : stock,
        longest + 2 * SAWN,
        lines.all(),
        lacks);
  }

  private String size(double allowance) {
    return number(part.extent(0) + allowance)
        + " x "
        + number(part.extent(1) + allowance)
        + " x "
        + number(part.extent(2) + allowance)
        + " mm";
  }

  private static String number(double value) {
    return Numbers.significant(value, 6);
  }

  private static String word(Face face) {
    return face.name().toLowerCase(Locale.ROOT);
  }

  private void limits() {
    if (shop.mills().isEmpty()) {
      lacks.add(
          "shop.yaml names no milling machine: mill in the lathe with a vertical slide and small"
              + " cuts, or have it made.");
      return;
    }
    boolean fits = shop.mills().stream().anyMatch(m -> m.takes(part.extent(0), part.extent(1)));
    if (!fits) {
      lacks.add(
          "The part of "
              + number(part.extent(0))
              + " x "
              + number(part.extent(1))
              + " mm is larger than the table travels: move it on and set it up again from the same"
              + " edges, or have it made.");
    }
  }

  /** Returns the finished faces, the largest first. */
  private List<Face> faces() {
    List<Face> faces = new ArrayList<>(part.finished());
    faces.sort(
        Comparator.comparingDouble((Face f) -> -part.extent(f.u()) * part.extent(f.v()))
            .thenComparing(Comparator.naturalOrder()));
    return faces;
  }

  private void face(int setUp, Face face) {
    double along = Math.max(part.extent(face.u()), part.extent(face.v()));
    double across = Math.min(part.extent(face.u()), part.extent(face.v()));
    int rows = (int) Math.ceil(across / (0.8 * FACE_CUTTER));
    lines.cut(
        setUp,
        "mill the " + word(face) + " face",
        "vice",
        Lines.Cut.of(
            "face cutter 40", FACE_CUTTER, speed, FACE_FEED, 2 * rows, along + FACE_CUTTER),
        setUp == 2 ? 8 : 5);
  }

  private void operation(int setUp, String holding, Prismatic.Operation operation) {
    if (operation instanceof Prismatic.Holes h) {
      holes(setUp, holding, h);
    } else if (operation instanceof Prismatic.Pocket p) {
      double depth = depth(p.depth(), p.face());
      double tool = Math.max(2, Math.min(SMALL_CUTTER, 2 * Math.max(1, p.corner())));
      double rows = Math.ceil(p.sizeV().nominal() / (0.6 * tool));
      mill(
          setUp, holding, "pocket " + p.name(), tool, depth, rows * p.sizeU().nominal(), p.sizeU());
    } else if (operation instanceof Prismatic.Slot s) {
      double length = Math.hypot(s.to().u() - s.from().u(), s.to().v() - s.from().v());
      mill(
          setUp,
          holding,
          "slot " + s.name(),
          Math.min(s.width().nominal(), LARGEST_DRILL),
          depth(s.depth(), s.face()),
          length + s.width().nominal(),
          s.width());
    } else if (operation instanceof Prismatic.Channel c) {
      double tool = Math.min(c.width().nominal(), SMALL_CUTTER);
      double rows = Math.ceil(c.width().nominal() / tool);
      mill(
          setUp,
          holding,
          "groove " + c.name(),
          tool,
          c.depth().nominal(),
          rows * along(c.face(), c.along()),
          c.width());
    } else if (operation instanceof Prismatic.TSlot t) {
      double way = along(t.face(), t.along());
      double throat = t.throatDepth() + t.headHeight();
      mill(setUp, holding, "throat of " + t.name(), t.throat().nominal(), throat, way, t.throat());
      lines.cut(
          setUp,
          "head of " + t.name(),
          holding,
          Lines.Cut.of("T-slot cutter " + number(t.head()), t.head(), speed, 0.05, 2, way),
          6);
    } else if (operation instanceof Prismatic.Dovetail d) {
      double way = along(d.face(), d.along());
      double tool = Math.min(SMALL_CUTTER, d.wide().nominal());
      mill(setUp, holding, "roughing of " + d.name(), tool, d.depth(), 2 * way, d.wide());
      lines.cut(
          setUp,
          "flanks of " + d.name() + ", measured over rollers",
          holding,
          Lines.Cut.of("dovetail cutter", 20, speed, 0.05, 4, 2 * way),
          12);
    } else if (operation instanceof Prismatic.Boss b) {
      double rows = Math.ceil(part.extent(b.face().v()) / (0.6 * SMALL_CUTTER));
      double way = rows * part.extent(b.face().u());
      mill(setUp, holding, "round boss " + b.name(), SMALL_CUTTER, b.height(), way, b.diameter());
    }
  }

  private double along(Face face, Prismatic.Along along) {
    return part.extent(along == Prismatic.Along.U ? face.u() : face.v());
  }

  private double depth(double depth, Face face) {
    return Double.isInfinite(depth) ? part.extent(face.axis()) : depth;
  }

  private void mill(
      int setUp,
      String holding,
      String what,
      double tool,
      double depth,
      double way,
      Size measured) {
    int passes = (int) Math.min(MOST_PASSES, Math.ceil(depth / DEPTH - 1e-9) + 1);
    lines.cut(
        setUp,
        "mill " + what,
        holding,
        Lines.Cut.of("end mill " + number(tool), tool, speed, MILL_FEED, passes, way + tool),
        measured.tolerance().isFit() ? 8 : 5);
  }

  private void holes(int setUp, String holding, Prismatic.Holes h) {
    HoleForm hole = h.hole();
    int count = h.pattern().places().size();
    double deep = depth(hole.depth(), h.face());
    double d = hole.diameter().nominal();
    boolean fit = hole.diameter().tolerance().isFit();
    boolean large = d > LARGEST_DRILL;
    double drill =
        hole.thread() != null
            ? Math.max(0.5, hole.thread().major() - hole.thread().pitch())
            : large ? LARGEST_DRILL : fit ? Math.max(0.5, d - 0.2) : d;
    String name = h.name() + (count > 1 ? ", " + count + " off" : "");
    lines.cut(
        setUp,
        "centre and drill " + number(drill) + " for " + name,
        holding,
        Lines.Cut.of("drill " + number(drill), drill, 0.8 * speed, DRILL_FEED, count, deep),
        2 + 0.5 * count);
    if (hole.thread() != null) {
      lines.hand(
          setUp,
          "tap " + hole.thread().designation() + ", " + name,
          holding,
          "taps, guided square",
          2 + 2.0 * count);
    } else if (fit && d <= LARGEST_REAMER) {
      lines.hand(setUp, "ream " + number(d) + ", " + name, holding, "reamer", 2 + 1.0 * count);
    } else if (large) {
      bore(setUp, holding, name, d, deep, count);
    }
    if (hole.mouth() != HoleForm.Mouth.PLAIN) {
      lines.hand(
          setUp,
          (hole.mouth() == HoleForm.Mouth.COUNTERBORE ? "counterbore " : "countersink ")
              + number(hole.mouthDiameter())
              + ", "
              + name,
          holding,
          "counterbore or countersink",
          1 + 0.7 * count);
    }
  }

  private void bore(int setUp, String holding, String name, double d, double deep, int count) {
    int passes = (int) Math.min(MOST_PASSES, 2 + Math.ceil((d - LARGEST_DRILL) / 2 / (DEPTH / 2)));
    lines.cut(
        setUp,
        "bore " + number(d) + ", " + name,
        holding,
        Lines.Cut.of("boring head", d, speed, 0.05, passes * count, deep + 2),
        12);
    if (d > shop.lathe().swing()) {
      lacks.add("A bore of " + number(d) + " mm is larger than the lathe swings: have it bored.");
    }
  }
}
