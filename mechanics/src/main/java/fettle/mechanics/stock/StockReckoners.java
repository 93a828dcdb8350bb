package fettle.mechanics.stock;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Single calculations from stock to blank, on dials and on templates. */
public final class StockReckoners {

  private static final String GROUP = "stock";

  private StockReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return List.of(
        barMass(),
        blankLength(),
        stockSize(),
        cuttingList(),
        turningTime(),
        passes(),
        sheetLength(),
        neutral(),
        dialRim(),
        dialDivisions(),
        dialSense(),
        bevelDial(),
        vernier(),
        templateScale(),
        dividingHead(),
        knurl(),
        threadDepth());
  }

  private static double above(Given g, String name) {
    double value = g.number(name);
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must lie above 0, found '" + g.text(name) + "'");
    }
    return value;
  }

  private static double notBelow(Given g, String name) {
    double value = g.number(name);
    if (!(value >= 0)) {
      throw new IllegalArgumentException(name + " must be 0 or more, found '" + g.text(name) + "'");
    }
    return value;
  }

  private static Reckoner barMass() {
    return Reckoner.of(GROUP, "stock-mass", "Mass of a length of bar")
        .choice("shape", "shape of the bar", "hexagon", "round", "square", "flat", "tube")
        .optional("af", Unit.MM, "width across flats of hexagon or square")
        .optional("d", Unit.MM, "diameter of round bar, outside diameter of tube")
        .optional("bore", Unit.MM, "inside diameter of tube")
        .optional("a", Unit.MM, "width of flat bar")
        .optional("b", Unit.MM, "thickness of flat bar")
        .number("L", Unit.MM, "length")
        .number("rho", Unit.G_PER_CM3, "density", "7.85")
        .result("A", Unit.MM2, "area of the section")
        .result("V", Unit.MM3, "volume")
        .result("m", Unit.G, "mass")
        .source(Sources.AREA)
        .rule(StockReckoners::barMass);
  }

  private static Answer barMass(Given g) {
    above(g, "L");
    above(g, "rho");
    Working area =
        switch (g.choice("shape")) {
          case "hexagon" -> area(g, "sqrt(3)/2*af^2", "af");
          case "square" -> area(g, "af^2", "af");
          case "round" -> area(g, "pi/4*d^2", "d");
          case "flat" -> area(g, "a*b", "a", "b");
          default -> area(g, "pi/4*(d^2 - bore^2)", "d", "bore");
        };
    if (!(area.value() > 0)) {
      throw new IllegalArgumentException("bore must be smaller than d");
    }
    Working volume = Working.of("V", Unit.MM3, "A*L", Term.of(area), g.term("L"));
    return Answer.start()
        .with("A", area)
        .with("V", volume)
        .with("m", Working.of("m", Unit.G, "rho*V", g.term("rho"), Term.of(volume)));
  }

  private static Working area(Given g, String formula, String... names) {
    List<Term> terms = new ArrayList<>();
    for (String name : names) {
      if (!g.has(name)) {
        throw new IllegalArgumentException(
            "a bar of shape " + g.choice("shape") + " needs " + String.join(" and ", names));
      }
      above(g, name);
      terms.add(g.term(name));
    }
    return Working.of("A", Unit.MM2, formula, terms);
  }

  private static Reckoner blankLength() {
    return Reckoner.of(GROUP, "blank-length", "Length of bar for turned parts")
        .number("L", Unit.MM, "finished length")
        .number("face", Unit.MM, "facing allowance, each end", "1")
        .number("part", Unit.MM, "width of the parting cut", "3")
        .number("stub", Unit.MM, "length held in the chuck", "25")
        .input("n", Input.Kind.COUNT, Unit.ONE, "parts from one bar", "1", true)
        .result("blank", Unit.MM, "length of bar")
        .source(Sources.BLANK)
        .rule(
            g -> {
              above(g, "L");
              notBelow(g, "face");
              notBelow(g, "part");
              notBelow(g, "stub");
              int n = g.count("n");
              if (n < 1 || n > 100_000) {
                throw new IllegalArgumentException("n must be 1 to 100000 parts, found " + n);
              }
              return Answer.start()
                  .with(
                      "blank",
                      Working.of(
                          "blank",
                          Unit.MM,
                          "n*(L + 2*face + part) + stub",
                          Term.exact("n", n),
                          g.term("L"),
                          g.term("face"),
                          g.term("part"),
                          g.term("stub")));
            });
  }

  private static Reckoner stockSize() {
    return Reckoner.of(GROUP, "stock-size", "Bar to take from the owner's list")
        .number("d", Unit.MM, "largest finished size")
        .number("allowance", Unit.MM, "allowance on the size; 0 for bright bar left as drawn", "2")
        .numbers("sizes", Unit.MM, "sizes in stock")
        .result("size", Unit.MM, "size to take")
        .source(Sources.STOCK)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "size",
                        Stock.next(above(g, "d") + notBelow(g, "allowance"), g.numbers("sizes"))));
  }

  private static Reckoner cuttingList() {
    return Reckoner.of(GROUP, "cutting-list", "Pieces out of bars")
        .numbers("pieces", Unit.MM, "lengths of the pieces")
        .number("bar", Unit.MM, "length of a bar", "1000")
        .number("kerf", Unit.MM, "width of the saw cut", "1.2")
        .result("bars", Unit.ONE, "bars needed")
        .result("offcuts", Unit.MM, "what is left of each")
        .source(Sources.CUTTING_LIST)
        .rule(
            g -> {
              double[] left = Stock.offcuts(g.numbers("pieces"), g.number("bar"), g.number("kerf"));
              return Answer.start().with("bars", left.length).with("offcuts", left);
            });
  }

  private static Reckoner turningTime() {
    return Reckoner.of(GROUP, "turning-time", "Time for cuts along a turned part")
        .number("d", Unit.MM, "diameter")
        .number("path", Unit.MM, "length of the tool's path, one cut")
        .input("cuts", Input.Kind.COUNT, Unit.ONE, "number of cuts", "1", true)
        .number("v", Unit.M_PER_MIN, "cutting speed wanted")
        .number("f", Unit.MM, "feed per turn")
        .numbers("speeds", Unit.RPM, "spindle speeds the machine has")
        .result("n", Unit.RPM, "spindle speed taken")
        .result("t", Unit.MIN, "cutting time")
        .source(Sources.TIME)
        .rule(StockReckoners::turningTime);
  }

  private static Answer turningTime(Given g) {
    above(g, "path");
    above(g, "f");
    int cuts = g.count("cuts");
    if (cuts < 1 || cuts > 100_000) {
      throw new IllegalArgumentException("cuts must be 1 to 100000, found " + cuts);
    }
    double wanted = 2 * above(g, "v") / above(g, "d");
    double taken = Stock.speedBelow(wanted, g.numbers("speeds"));
    Working t =
        Working.of(
            "t",
            Unit.MIN,
            "path*cuts/(f*n/(2*pi))",
            g.term("path"),
            Term.exact("cuts", cuts),
            g.term("f"),
            Term.exact("n", taken, Unit.RPM));
    Answer answer = Answer.start().with("n", taken).with("t", t);
    return taken > wanted * (1 + 1e-9)
        ? answer.caution(
            "The lowest speed of the machine is above the cutting speed asked for: take a smaller"
                + " diameter, a harder tool, or the back gear.")
        : answer;
  }

  private static Reckoner passes() {
    return Reckoner.of(GROUP, "route-thread-passes", "Passes to cut a 60 degree thread")
        .number("P", Unit.MM, "pitch")
        .number("a1", Unit.MM, "depth of the first pass, on the radius", "0.2")
        .input("spring", Input.Kind.COUNT, Unit.ONE, "passes without infeed at the end", "2", true)
        .result("h", Unit.MM, "depth of thread")
        .result("passes", Unit.ONE, "passes with infeed")
        .result("total", Unit.ONE, "all passes")
        .result("depths", Unit.MM, "depth reached after each pass")
        .source(Sources.CHIP)
        .rule(StockReckoners::passes);
  }

  private static Answer passes(Given g) {
    above(g, "P");
    double first = above(g, "a1");
    Working h = Working.of("h", Unit.MM, "0.613*P", g.term("P"));
    double exact = h.value() / first * (h.value() / first);
    if (!(exact <= 10_000)) {
      throw new IllegalArgumentException("a1 is too small: more than 10000 passes");
    }
    int n = Math.max(1, (int) Math.ceil(exact - 1e-9));
    double[] depths = new double[n];
    for (int i = 0; i < n; i++) {
      depths[i] = Math.min(h.value(), first * Math.sqrt(i + 1.0));
    }
    int spring = g.count("spring");
    if (spring < 0 || spring > 100) {
      throw new IllegalArgumentException("spring must be 0 to 100 passes, found " + spring);
    }
    return Answer.start()
        .with("h", h)
        .with("passes", n)
        .with("total", n + spring)
        .with("depths", depths);
  }

  private static Reckoner sheetLength() {
    return Reckoner.of(GROUP, "sheet-length", "Flat length of a bent strip")
        .numbers("legs", Unit.MM, "outside lengths of the legs")
        .number("T", Unit.MM, "thickness")
        .number("R", Unit.MM, "inside radius")
        .number("K", Unit.ONE, "neutral line as a share of the thickness", "0.44")
        .number("angle", Unit.DEG, "angle bent through at each bend", "90")
        .result("BA", Unit.MM, "bend allowance, one bend")
        .result("setback", Unit.MM, "outside setback, one bend")
        .result("flat", Unit.MM, "flat length")
        .source(Sources.BEND)
        .rule(
            g -> {
              double[] legs = g.numbers("legs");
              if (legs.length < 1 || legs.length > 1000) {
                throw new IllegalArgumentException("legs must be 1 to 1000 lengths");
              }
              double flat =
                  Stock.flatLength(
                      legs, g.number("T"), g.number("R"), g.number("K"), g.number("angle"));
              Working allowance =
                  Working.of(
                      "BA",
                      Unit.MM,
                      "angle*(R + K*T)",
                      g.term("angle"),
                      g.term("R"),
                      g.term("K"),
                      g.term("T"));
              Working setback =
                  Working.of(
                      "setback",
                      Unit.MM,
                      "(R + T)*tan(angle/2)",
                      g.term("R"),
                      g.term("T"),
                      g.term("angle"));
              double sum = 0;
              for (double leg : legs) {
                sum += leg;
              }
              Answer answer =
                  Answer.start()
                      .with("BA", allowance)
                      .with("setback", setback)
                      .with(
                          "flat",
                          Working.check(
                              "flat",
                              flat,
                              Unit.MM,
                              "sum + bends*(BA - 2*setback)",
                              Term.exact("sum", sum, Unit.MM),
                              Term.exact("bends", legs.length - 1.0),
                              Term.of(allowance),
                              Term.of(setback)));
              return g.number("R") < g.number("T")
                  ? answer.caution(
                      "The inside radius is smaller than the sheet is thick: soft steel may crack.")
                  : answer;
            });
  }

  private static Reckoner neutral() {
    return Reckoner.of(GROUP, "neutral-factor", "K from a bent test strip")
        .number("flat", Unit.MM, "length of the strip before bending")
        .number("leg1", Unit.MM, "first leg, measured outside")
        .number("leg2", Unit.MM, "second leg, measured outside")
        .number("T", Unit.MM, "thickness")
        .number("R", Unit.MM, "inside radius")
        .number("angle", Unit.DEG, "angle bent through", "90")
        .result("K", Unit.ONE, "neutral line as a share of the thickness")
        .source(Sources.BEND)
        .rule(
            g -> {
              above(g, "T");
              notBelow(g, "R");
              double angle = above(g, "angle");
              if (!(angle < Math.PI)) {
                throw new IllegalArgumentException("angle must lie below 180 deg");
              }
              Working k =
                  Working.of(
                      "K",
                      Unit.ONE,
                      "((flat - leg1 - leg2 + 2*(R + T)*tan(angle/2))/angle - R)/T",
                      g.term("flat"),
                      g.term("leg1"),
                      g.term("leg2"),
                      g.term("R"),
                      g.term("T"),
                      g.term("angle"));
              Answer answer = Answer.start().with("K", k);
              return k.value() < 0.3 || k.value() > 0.55
                  ? answer.caution(
                      "K is outside 0.3 to 0.55: measure the strip, the radius and the angle again.")
                  : answer;
            });
  }

  private static Reckoner dialRim() {
    return Reckoner.of(GROUP, "dial-rim", "Developed length and division pitch of a dial")
        .number("D", Unit.MM, "engraved diameter")
        .count("N", "divisions")
        .number("t", Unit.MM, "thickness of paper or foil glued round it", "0")
        .result("L", Unit.MM, "developed length")
        .result("s", Unit.MM, "division pitch")
        .result("angle", Unit.DEG, "angle of one division")
        .source(Sources.RIM)
        .rule(
            g -> {
              above(g, "D");
              notBelow(g, "t");
              int n = g.count("N");
              if (n < 1 || n > 100_000) {
                throw new IllegalArgumentException("N must be 1 to 100000 divisions, found " + n);
              }
              Working l = Working.of("L", Unit.MM, "pi*(D + t)", g.term("D"), g.term("t"));
              Working s = Working.of("s", Unit.MM, "L/N", Term.of(l), g.term("N"));
              Answer answer =
                  Answer.start()
                      .with("L", l)
                      .with("s", s)
                      .with("angle", Working.of("angle", Unit.DEG, "2*pi/N", g.term("N")));
              return s.value() < 0.7
                  ? answer.caution(
                      "The lines stand under 0.7 mm apart and are hard to read; 1 mm is wanted.")
                  : answer;
            });
  }

  private static Reckoner dialDivisions() {
    return Reckoner.of(GROUP, "dial-divisions", "Number of divisions of a screw's dial")
        .input(
            "lead", Input.Kind.EXACT, Unit.MM, "slide travel per turn, or e.g. 10 tpi", null, true)
        .input("division", Input.Kind.EXACT, Unit.MM, "what one division shall read", null, true)
        .choice("reading", "what the dial reads", "travel", "diameter")
        .result("N", Unit.ONE, "divisions, exact")
        .result("whole", Unit.ONE, "yes if they come out even")
        .source(Sources.LEAD)
        .rule(
            g -> {
              Ratio lead = g.exact("lead");
              Ratio division = g.exact("division");
              if (lead.signum() <= 0 || division.signum() <= 0) {
                throw new IllegalArgumentException("lead and division must lie above 0 mm");
              }
              int times = g.choice("reading").equals("diameter") ? 2 : 1;
              Ratio n = lead.times(times).over(division).folded();
              Answer answer = Answer.start().with("N", n).with("whole", n.isWhole() ? "yes" : "no");
              return n.isWhole()
                  ? answer
                  : answer.caution(
                      "The divisions do not come out even: choose another division, or the dial"
                          + " will be wrong at its seam each turn.");
            });
  }

  private static Reckoner dialSense() {
    return Reckoner.of(GROUP, "dial-sense", "Which way the numbers of a dial run")
        .choice(
            "positive", "turn that counts up, seen by the operator", "clockwise", "anticlockwise")
        .choice("index", "what carries the index", "fixed", "moving")
        .choice("output", "how the template is used", "direct", "mirrored")
        .result("side", Unit.ONE, "side of the next higher number, seen from outside")
        .result("face", Unit.ONE, "direction in which numbers rise, seen by the operator")
        .source(Sources.SENSE)
        .rule(
            g -> {
              boolean left =
                  g.choice("positive").equals("clockwise") == g.choice("index").equals("fixed");
              String face = left ? "anticlockwise" : "clockwise";
              boolean side = left == g.choice("output").equals("direct");
              return Answer.start().with("side", side ? "left" : "right").with("face", face);
            });
  }

  private static Reckoner bevelDial() {
    return Reckoner.of(GROUP, "bevel-dial", "Flat template of a bevelled dial")
        .number("D_large", Unit.MM, "large diameter of the bevel")
        .number("D_small", Unit.MM, "small diameter of the bevel", "0")
        .number("half_angle", Unit.DEG, "angle of the bevel to the axis")
        .result("r_outer", Unit.MM, "outer radius of the sector")
        .result("r_inner", Unit.MM, "inner radius of the sector")
        .result("sector", Unit.DEG, "angle of the sector")
        .source(Sources.CONE)
        .rule(
            g -> {
              double angle = above(g, "half_angle");
              if (!(angle <= Math.PI / 2) || !(notBelow(g, "D_small") < above(g, "D_large"))) {
                throw new IllegalArgumentException(
                    "the half angle must lie up to 90 deg, D_small below D_large");
              }
              Term a = g.term("half_angle");
              return Answer.start()
                  .with(
                      "r_outer",
                      Working.of(
                          "r_outer", Unit.MM, "D_large/(2*sin(half_angle))", g.term("D_large"), a))
                  .with(
                      "r_inner",
                      Working.of(
                          "r_inner", Unit.MM, "D_small/(2*sin(half_angle))", g.term("D_small"), a))
                  .with("sector", Working.of("sector", Unit.DEG, "2*pi*sin(half_angle)", a));
            });
  }

  private static Reckoner vernier() {
    return Reckoner.of(GROUP, "vernier-scale", "Vernier beside a scale")
        .number("division", Unit.MM, "main division")
        .count("n", "divisions of the vernier")
        .choice("kind", "laid over n - 1 or over 2n - 1 main divisions", "plain", "extended")
        .result("v", Unit.MM, "division of the vernier")
        .result("least", Unit.MM, "what it reads")
        .source(Sources.VERNIER)
        .rule(
            g -> {
              above(g, "division");
              int n = g.count("n");
              if (n < 2 || n > 1000) {
                throw new IllegalArgumentException("n must be 2 to 1000, found " + n);
              }
              String over = g.choice("kind").equals("plain") ? "(n - 1)" : "(2*n - 1)";
              Term d = g.term("division");
              Term count = g.term("n");
              return Answer.start()
                  .with("v", Working.of("v", Unit.MM, "division*" + over + "/n", d, count))
                  .with("least", Working.of("least", Unit.MM, "division/n", d, count));
            });
  }

  private static Reckoner templateScale() {
    return Reckoner.of(GROUP, "template-scale", "Check of a 1:1 print by its 100 mm bars")
        .number("x", Unit.MM, "length of the level bar as printed")
        .number("y", Unit.MM, "length of the upright bar as printed")
        .result("verdict", Unit.ONE, "accept, correct or rough")
        .result("k", Unit.ONE, "scale to print with")
        .source(Sources.SCALE)
        .rule(
            g -> {
              double x = above(g, "x");
              double y = above(g, "y");
              Working k = Working.of("k", Unit.ONE, "200/(x + y)", g.term("x"), g.term("y"));
              boolean good = Math.abs(x - 100) <= 0.3 + 1e-9 && Math.abs(y - 100) <= 0.3 + 1e-9;
              boolean even = Math.abs(x - y) <= 0.2 + 1e-9;
              Answer answer =
                  Answer.start()
                      .with("verdict", good ? "accept" : even ? "correct" : "rough")
                      .with("k", k);
              return good || even
                  ? answer
                  : answer.caution(
                      "The printer stretches one direction: use the print for rough marking only.");
            });
  }

  private static Reckoner dividingHead() {
    return Reckoner.of(GROUP, "dividing-head", "Crank turns and holes for a division")
        .count("N", "divisions")
        .input("ratio", Input.Kind.COUNT, Unit.ONE, "crank turns to one of the work", "40", true)
        .input(
            "circles",
            Input.Kind.EXACTS,
            Unit.ONE,
            "hole circles there are",
            Stock.USUAL_CIRCLES.stream().map(String::valueOf).collect(Collectors.joining(",")),
            true)
        .result("turns", Unit.ONE, "whole turns of the crank")
        .result("holes", Unit.ONE, "holes further")
        .result("circle", Unit.ONE, "hole circle")
        .result("table", Unit.ONE, "mark, crank position, angle")
        .source(Sources.HEAD)
        .rule(
            g -> {
              Stock.Indexing i =
                  Stock.indexing(g.count("N"), g.count("ratio"), g.counts("circles"));
              return Answer.start()
                  .with("turns", i.turns())
                  .with("holes", i.holes())
                  .with("circle", i.circle())
                  .with("table", table(g.count("N"), g.count("ratio"), i.circle()));
            });
  }

  /** Each mark is computed from zero, so that no error adds up. */
  private static List<String> table(int divisions, int ratio, int circle) {
    List<String> lines = new ArrayList<>();
    for (int k = 0; k < Math.min(divisions, 400); k++) {
      long holes = (long) k * ratio * circle / divisions;
      double seconds = 1_296_000.0 * k / divisions;
      long whole = Math.round(seconds);
      lines.add(
          k
              + ": "
              + holes / circle
              + " turns + "
              + holes % circle
              + "/"
              + circle
              + ", "
              + whole / 3600
              + " deg "
              + whole / 60 % 60
              + "' "
              + whole % 60
              + "\"");
    }
    if (divisions > 400) {
      lines.add("... and so on to " + Numbers.significant(divisions, 6));
    }
    return lines;
  }

  private static Reckoner knurl() {
    return Reckoner.of(GROUP, "knurl-count", "Blank diameter for a knurl")
        .number("pitch", Unit.MM, "pitch of the knurl")
        .number("wanted_d", Unit.MM, "wanted diameter before knurling")
        .result("N", Unit.TEETH, "teeth round the blank")
        .result("d", Unit.MM, "diameter to turn")
        .source(Sources.KNURL)
        .rule(
            g -> {
              double exact = Math.PI * above(g, "wanted_d") / above(g, "pitch");
              if (!(exact >= 2) || exact > 1e6) {
                throw new IllegalArgumentException(
                    "the pitch must go 2 to 1000000 times round the blank");
              }
              double n = Math.rint(exact);
              return Answer.start()
                  .with("N", n)
                  .with(
                      "d",
                      Working.of("d", Unit.MM, "N*pitch/pi", Term.exact("N", n), g.term("pitch")));
            });
  }

  private static Reckoner threadDepth() {
    return Reckoner.of(GROUP, "drawn-thread-depth", "Drawn depth of a blind tapped hole")
        .number("thread_length", Unit.MM, "length of full thread")
        .result("depth", Unit.MM, "depth of the hole as drawn")
        .source(Sources.THREAD_DEPTH)
        .rule(
            g -> {
              above(g, "thread_length");
              return Answer.start()
                  .with(
                      "depth",
                      Working.of("depth", Unit.MM, "1.25*thread_length", g.term("thread_length")));
            });
  }
}
