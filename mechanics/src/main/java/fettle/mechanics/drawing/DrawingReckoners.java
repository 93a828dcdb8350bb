package fettle.mechanics.drawing;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Single calculations of the drawing office. */
public final class DrawingReckoners {

  private static final String GROUP = "drawing";
  private static final String[] SHEETS = {"A0", "A1", "A2", "A3", "A4"};
  private static final double[][] TRIMMED = {
    {1189, 841}, {841, 594}, {594, 420}, {420, 297}, {297, 210}
  };
  private static final double[] SCALES = {
    50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001, 0.0005, 0.0002,
    0.0001
  };

  private DrawingReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return List.of(sheet(), lines(), lettering(), printed(), scale(), threadLines(), tree());
  }

  private static double positive(Given g, String name) {
    double v = g.number(name);
    if (!(v > 0) || v > 1e9) {
      throw new IllegalArgumentException(name + " must lie above 0 and below 1e9, found " + v);
    }
    return v;
  }

  private static int size(String name) {
    for (int i = 0; i < SHEETS.length; i++) {
      if (SHEETS[i].equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("sheet '" + name + "': expected A0, A1, A2, A3 or A4");
  }

  private static Reckoner sheet() {
    return Reckoner.of(GROUP, "drawing-sheet", "Drawing space and grid of a sheet")
        .choice("sheet", "size of the trimmed sheet", SHEETS)
        .result("width", Unit.MM, "width of the drawing space, A4 upright, others lying")
        .result("height", Unit.MM, "height of the drawing space")
        .result("fields_long", Unit.ONE, "grid fields along the long side")
        .result("fields_short", Unit.ONE, "grid fields along the short side")
        .result("block", Unit.MM, "width of the title block")
        .source(Sources.SHEETS)
        .rule(
            g -> {
              int i = size(g.choice("sheet"));
              double a = TRIMMED[i][0];
              double b = TRIMMED[i][1];
              boolean upright = i == 4;
              return Answer.start()
                  .with("width", (upright ? b : a) - 30)
                  .with("height", (upright ? a : b) - 20)
                  .with("fields_long", 2.0 * Math.round(a / 100))
                  .with("fields_short", 2.0 * Math.round(b / 100))
                  .with("block", 180.0);
            });
  }

  private static Reckoner lines() {
    return Reckoner.of(GROUP, "drawing-lines", "Line widths of a group and elements of its lines")
        .number("group", Unit.MM, "wide line that names the group", "0.5")
        .result("wide", Unit.MM, "wide lines")
        .result("narrow", Unit.MM, "narrow lines")
        .result("letters", Unit.MM, "lettering and graphical symbols")
        .result("dash", Unit.MM, "dash of a narrow dashed line, 12 d")
        .result("long_dash", Unit.MM, "long dash of a narrow chain line, 24 d")
        .result("gap", Unit.MM, "gap, 3 d")
        .result("dot", Unit.MM, "dot, 0.5 d")
        .source(Sources.LINES)
        .rule(
            g -> {
              double[] series = {0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0};
              double wide = g.number("group");
              for (int i = 2; i < series.length; i++) {
                if (Math.abs(series[i] - wide) < 1e-9) {
                  double d = series[i - 2];
                  return Answer.start()
                      .with("wide", wide)
                      .with("narrow", d)
                      .with("letters", series[i - 1])
                      .with("dash", 12 * d)
                      .with("long_dash", 24 * d)
                      .with("gap", 3 * d)
                      .with("dot", d / 2);
                }
              }
              throw new IllegalArgumentException(
                  "group must be one of 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2 mm, found " + wide + " mm");
            });
  }

  private static Reckoner lettering() {
    return Reckoner.of(GROUP, "drawing-lettering", "Lettering type B")
        .number("h", Unit.MM, "nominal height of capitals", "3.5")
        .result("d", Unit.MM, "width of the stroke, h/10")
        .result("a", Unit.MM, "gap between characters, 0.2 h")
        .result("e", Unit.MM, "gap between words, 0.6 h")
        .result("b1", Unit.MM, "line pitch with accents, 1.9 h")
        .result("b2", Unit.MM, "line pitch without accents, 1.5 h")
        .result("b3", Unit.MM, "line pitch of capitals, 1.3 h")
        .source(Sources.LETTERS)
        .rule(
            g -> {
              double h = positive(g, "h");
              return Answer.start()
                  .with("d", h / 10)
                  .with("a", h / 5)
                  .with("e", 0.6 * h)
                  .with("b1", 1.9 * h)
                  .with("b2", 1.5 * h)
                  .with("b3", 1.3 * h);
            });
  }

  private static Reckoner printed() {
    return Reckoner.of(GROUP, "drawing-printed-height", "Height of lettering on other paper")
        .number("h", Unit.MM, "height as drawn", "3.5")
        .choice("from", "size of the sheet as drawn", SHEETS)
        .choice("to", "size of the paper printed on", SHEETS)
        .result("h_print", Unit.MM, "height as printed")
        .source(Sources.SHEETS)
        .rule(
            g -> {
              int steps = size(g.choice("to")) - size(g.choice("from"));
              double h = positive(g, "h") * Math.pow(2, -steps / 2.0);
              Answer a = Answer.start().with("h_print", h);
              return h < 2.5 - 1e-9
                  ? a.caution("Lettering under 2.5 mm is too small to read in a workshop.")
                  : a;
            });
  }

  private static Reckoner scale() {
    return Reckoner.of(GROUP, "drawing-scale", "Largest recommended scale that fits")
        .number("extent", Unit.MM, "extent of the part")
        .number("available", Unit.MM, "room on the sheet")
        .result("scale", Unit.ONE, "scale, sheet to part")
        .source(Sources.SCALES)
        .rule(
            g -> {
              double extent = positive(g, "extent");
              double room = positive(g, "available");
              for (double s : SCALES) {
                if (extent * s <= room) {
                  long up = Math.round(Math.max(1, s));
                  return Answer.start().with("scale", up + ":" + Math.round(up / s));
                }
              }
              return Answer.none("the part does not fit even at 1:10000");
            });
  }

  private static Reckoner threadLines() {
    return Reckoner.of(GROUP, "drawing-thread-lines", "Least distance of crest and root line")
        .number("wide", Unit.MM, "width of wide lines", "0.5")
        .number("height", Unit.MM, "height of the thread at the scale of the sheet", "0.61")
        .result("distance", Unit.MM, "distance drawn: height, twice the wide line or 0.7")
        .source(Sources.THREADS)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "distance",
                        Math.max(positive(g, "height"), Math.max(2 * positive(g, "wide"), 0.7))));
  }

  private static Reckoner tree() {
    return Reckoner.of(GROUP, "dimension-tree", "Missing and redundant dimensions on an axis")
        .text("planes", "planes, a letter each, e.g. ABCDE")
        .text("dims", "dimensions, two letters each, e.g. AB AC AD")
        .result("missing", Unit.ONE, "dimensions missing")
        .result("redundant", Unit.ONE, "dimensions too many")
        .source(Sources.TREE)
        .rule(
            g -> {
              DimensionTree tree = new DimensionTree();
              Map<Character, Integer> nodes = new HashMap<>();
              for (char c : g.text("planes").replaceAll("[^A-Za-z0-9]", "").toCharArray()) {
                nodes.computeIfAbsent(c, k -> tree.node());
              }
              for (String pair : g.text("dims").trim().split("[^A-Za-z0-9]+")) {
                Integer a = pair.isEmpty() ? null : nodes.get(pair.charAt(0));
                Integer b = pair.length() == 2 ? nodes.get(pair.charAt(1)) : null;
                if (a == null || b == null) {
                  throw new IllegalArgumentException(
                      "dimension '" + pair + "': expected two letters out of " + g.text("planes"));
                }
                tree.join(a, b);
              }
              return Answer.start()
                  .with("missing", (double) tree.missing())
                  .with("redundant", (double) tree.redundant());
            });
  }
}
