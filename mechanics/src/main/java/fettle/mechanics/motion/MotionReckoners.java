package fettle.mechanics.motion;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.base.WorkshopRange;
import java.util.ArrayList;
import java.util.List;

/** Clearances of simple cases, sizes of a lathe and gaps for hands as single calculations. */
public final class MotionReckoners {

  private static final String GROUP = "clearance";
  private static final String TOUCH =
      "the bodies touch or run into each other: the gap is not positive";
  private static final String HANDS =
      "These are least values of the standard; local codes and a proper risk assessment come first.";

  private MotionReckoners() {}

  /** Returns all reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>();
    all.addAll(LeverReckoners.all());
    all.addAll(HandReckoners.all());
    all.addAll(
        List.of(
            pegPastHead(),
            blockPastChuck(),
            workOverHead(),
            stopPosition(),
            travelToChuck(),
            swing(),
            betweenCentres(),
            safeGap(),
            safetyDistance(),
            handSpace()));
    return WorkshopRange.kept(all);
  }

  private static Reckoner pegPastHead() {
    return Reckoner.of(GROUP, "peg-past-head", "Peg of a crank past a point out of its plane")
        .number("crank", Unit.MM, "radius of the peg's circle")
        .number("peg_r", Unit.MM, "radius of the peg")
        .numbers(
            "bolt", Unit.MM, "place of the point from the crank's axis: x, y, z along the axis")
        .result("gap", Unit.MM, "least gap over the whole turn; not positive if they meet")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double crank = Bound.notNegative("crank", g.number("crank"), "mm");
              double peg = Bound.notNegative("peg_r", g.number("peg_r"), "mm");
              double[] p = three("bolt", g.numbers("bolt"));
              double out = Math.hypot(p[0], p[1]);
              return open(
                  Working.of(
                      "gap",
                      Unit.MM,
                      "sqrt((R - crank)^2 + z^2) - peg_r",
                      Term.exact("R", out, Unit.MM),
                      Term.exact("crank", crank, Unit.MM),
                      Term.exact("z", p[2], Unit.MM),
                      Term.exact("peg_r", peg, Unit.MM)));
            });
  }

  private static Reckoner blockPastChuck() {
    return Reckoner.of(GROUP, "block-past-chuck", "Block above or below centre height by a chuck")
        .number("r", Unit.MM, "radius of the chuck, jaws out")
        .numbers("chuck_z", Unit.MM, "ends of the chuck along the spindle, from and to")
        .numbers("block_x", Unit.MM, "block across, from and to, seen from its slide")
        .numbers("block_y", Unit.MM, "block in height over the spindle axis, from and to")
        .numbers("block_z", Unit.MM, "block along the spindle, from and to, seen from its slide")
        .numbers("travel_x", Unit.MM, "positions of the cross slide, from and to")
        .numbers("travel_z", Unit.MM, "positions of the saddle, from and to")
        .result("gap", Unit.MM, "least gap over both travels")
        .result("x", Unit.MM, "cross slide there")
        .result("z", Unit.MM, "saddle there")
        .result("lower", Unit.MM, "proven: the gap is nowhere less")
        .source(Sources.SEARCH)
        .rule(
            g -> {
              double r = Bound.notNegative("r", g.number("r"), "mm");
              double[] c = two("chuck_z", g.numbers("chuck_z"));
              double[] x = two("block_x", g.numbers("block_x"));
              double[] y = two("block_y", g.numbers("block_y"));
              double[] z = two("block_z", g.numbers("block_z"));
              double[] tx = two("travel_x", g.numbers("travel_x"));
              double[] tz = two("travel_z", g.numbers("travel_z"));
              Vector axis = new Vector(0, 0, 1);
              Convex chuck =
                  new Convex.Cylinder(
                      new Vector(0, 0, (c[0] + c[1]) / 2), axis, r, (c[1] - c[0]) / 2);
              Convex block =
                  new Convex.Box(new Vector(x[0], y[0], z[0]), new Vector(x[1], y[1], z[1]));
              Domain domain =
                  new Domain(
                      List.of("x", "z"), new double[] {tx[0], tz[0]}, new double[] {tx[1], tz[1]});
              Chain moved =
                  new Chain(
                      List.of(
                          new Step.Slide(axis, 1, 1), new Step.Slide(new Vector(1, 0, 0), 0, 1)),
                      block);
              Gap gap =
                  Clearance.of(
                      new Pair("block", "chuck", moved, new Chain(List.of(), chuck)),
                      domain,
                      1e-6,
                      Clearance.BUDGET);
              Answer answer =
                  Answer.start()
                      .with("gap", gap.upper())
                      .with("x", gap.position()[0])
                      .with("z", gap.position()[1])
                      .with("lower", gap.lower());
              return gap.touches() ? answer.caution(TOUCH) : answer;
            });
  }

  private static Reckoner workOverHead() {
    return Reckoner.of(GROUP, "work-over-head", "Turning work over a head on the cross slide")
        .number("work_r", Unit.MM, "radius of the work")
        .number("head_top_y", Unit.MM, "height of the head's top from the axis, below it negative")
        .number("head_half_width", Unit.MM, "half the width of the head", "0")
        .numbers("slide_x", Unit.MM, "middle of the head from the axis, from and to")
        .result("gap", Unit.MM, "least gap; not positive if they meet")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double r = Bound.notNegative("work_r", g.number("work_r"), "mm");
              double y = g.number("head_top_y");
              if (!(y <= 0)) {
                throw new IllegalArgumentException(
                    "head_top_y must be 0 or below the axis (negative), found " + y + " mm");
              }
              double half = Bound.notNegative("head_half_width", g.number("head_half_width"), "mm");
              double[] x = two("slide_x", g.numbers("slide_x"));
              double near = Math.max(0, Math.max(x[0] - half, -x[1] - half));
              return open(
                  Working.of(
                      "gap",
                      Unit.MM,
                      "sqrt(x^2 + y^2) - work_r",
                      Term.exact("x", near, Unit.MM),
                      Term.exact("y", y, Unit.MM),
                      Term.exact("work_r", r, Unit.MM)));
            });
  }

  private static Reckoner stopPosition() {
    return Reckoner.of(GROUP, "stop-position", "Where an edge must stop before a round knob")
        .number("knob_r", Unit.MM, "radius of the knob")
        .number("edge_y", Unit.MM, "height of the edge over the knob's middle")
        .number("gap", Unit.MM, "gap to keep", "0")
        .result("x", Unit.MM, "distance of the edge from the knob's middle along the travel")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double r = Bound.notNegative("knob_r", g.number("knob_r"), "mm");
              double gap = Bound.notNegative("gap", g.number("gap"), "mm");
              double y = g.number("edge_y");
              if (Math.abs(y) > r + gap) {
                return Answer.none(
                    "the edge passes the knob "
                        + fettle.mechanics.base.Numbers.fixed(Math.abs(y) - r, 3)
                        + " mm away: it need not stop");
              }
              return Answer.start()
                  .with(
                      "x",
                      Working.of(
                          "x",
                          Unit.MM,
                          "sqrt((knob_r + gap)^2 - edge_y^2)",
                          g.term("knob_r"),
                          Term.exact("gap", gap, Unit.MM),
                          g.term("edge_y")));
            });
  }

  private static Reckoner travelToChuck() {
    return Reckoner.of(GROUP, "travel-lost", "Travel a round body costs a slide")
        .number("r", Unit.MM, "radius of the body, e.g. the chuck")
        .number("y", Unit.MM, "least height of the moving edge over the body's axis")
        .number("gap", Unit.MM, "gap to keep", "0")
        .numbers("travel", Unit.MM, "positions of the edge from the axis, from and to")
        .result("stop", Unit.MM, "position where the slide must stop")
        .result("lost", Unit.MM, "travel that is lost")
        .result("left", Unit.MM, "travel that is left")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double r = Bound.notNegative("r", g.number("r"), "mm");
              double gap = Bound.notNegative("gap", g.number("gap"), "mm");
              double y = Math.abs(g.number("y"));
              double[] x = two("travel", g.numbers("travel"));
              if (!(x[0] >= 0)) {
                throw new IllegalArgumentException(
                    "travel must lie on one side of the body's axis, at 0 mm or more, found "
                        + x[0]
                        + " mm");
              }
              double reach = r + gap;
              double meets = y < reach ? Math.sqrt(reach * reach - y * y) : 0;
              double stop = Math.min(x[1], Math.max(x[0], meets));
              return Answer.start()
                  .with("stop", stop)
                  .with("lost", stop - x[0])
                  .with("left", x[1] - stop);
            });
  }

  private static Reckoner swing() {
    return Reckoner.of(GROUP, "swing", "Greatest diameter that turns over what lies below")
        .number("centre_height", Unit.MM, "height of the spindle axis over the bed")
        .number(
            "cross_slide_top_above_bed",
            Unit.MM,
            "height of what lies below (cross slide, saddle wings) over the bed; 0 for the bed",
            "0")
        .result("swing", Unit.MM, "diameter")
        .source(Sources.SWING)
        .rule(
            g -> {
              double h = Bound.positive("centre_height", g.number("centre_height"), "mm");
              double t = g.number("cross_slide_top_above_bed");
              if (!(t < h)) {
                throw new IllegalArgumentException(
                    "cross_slide_top_above_bed must be below the centre height "
                        + h
                        + " mm, found "
                        + t
                        + " mm");
              }
              return Answer.start()
                  .with(
                      "swing",
                      Working.of(
                          "swing",
                          Unit.MM,
                          "2*(H - t)",
                          Term.exact("H", h, Unit.MM),
                          Term.exact("t", t, Unit.MM)));
            });
  }

  private static Reckoner betweenCentres() {
    return Reckoner.of(GROUP, "work-length", "Length of work that fits")
        .number("between_centres", Unit.MM, "distance between centres, quill home")
        .number("chuck_length", Unit.MM, "length of the chuck; 0 between centres", "0")
        .number("quill_out", Unit.MM, "how far the quill is out", "0")
        .number("lost_head", Unit.MM, "what the tool cannot reach at the head", "0")
        .number("lost_tail", Unit.MM, "what the tool cannot reach at the tailstock", "0")
        .result("length", Unit.MM, "longest work")
        .result("turned", Unit.MM, "longest length that can be turned in one setting")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double l = Bound.positive("between_centres", g.number("between_centres"), "mm");
              double c = Bound.notNegative("chuck_length", g.number("chuck_length"), "mm");
              double q = Bound.notNegative("quill_out", g.number("quill_out"), "mm");
              double a = Bound.notNegative("lost_head", g.number("lost_head"), "mm");
              double b = Bound.notNegative("lost_tail", g.number("lost_tail"), "mm");
              if (!(l - c - q - a - b >= 0)) {
                return Answer.none("nothing is left of the distance between centres");
              }
              Working length =
                  Working.of(
                      "length",
                      Unit.MM,
                      "L - c - q",
                      Term.exact("L", l, Unit.MM),
                      Term.exact("c", c, Unit.MM),
                      Term.exact("q", q, Unit.MM));
              return Answer.start().with("length", length).with("turned", l - c - q - a - b);
            });
  }

  private static Reckoner safeGap() {
    return Reckoner.of(GROUP, "safe-gap", "Least gap against crushing a part of the body")
        .input(
            "parts",
            fettle.mechanics.base.Input.Kind.TEXT,
            Unit.ONE,
            "parts of the body: " + String.join(", ", SafeGap.words()),
            "finger",
            true)
        .result("gap", Unit.MM, "least gap of each part")
        .source(SafeGap.SOURCE)
        .rule(
            g -> {
              double[] gaps =
                  g.words("parts").stream()
                      .map(w -> w.replace("\"", ""))
                      .mapToDouble(w -> SafeGap.of(w).gap())
                      .toArray();
              if (gaps.length == 0) {
                throw new IllegalArgumentException("parts must name at least one part of the body");
              }
              return Answer.start().with("gap", gaps).caution(HANDS);
            });
  }

  private static Reckoner safetyDistance() {
    return Reckoner.of(GROUP, "safety-distance", "Distance of a danger behind an opening")
        .choice("shape", "shape of the opening", "slot", "square", "round")
        .number("e", Unit.MM, "least width, side or diameter of the opening")
        .optional("length", Unit.MM, "length of a slot; long if not given")
        .result("distance", Unit.MM, "least distance to the danger, along the reach")
        .source(SafetyDistance.SOURCE)
        .rule(
            g -> {
              double e = g.number("e");
              double distance =
                  switch (g.choice("shape")) {
                    case "slot" -> SafetyDistance.slot(e, g.number("length", 1e6));
                    case "square" -> SafetyDistance.square(e);
                    default -> SafetyDistance.round(e);
                  };
              return Answer.start()
                  .with("distance", distance)
                  .caution("For persons of 14 years and over; children need the smaller table.")
                  .caution(HANDS);
            });
  }

  private static Reckoner handSpace() {
    return Reckoner.of(GROUP, "gap-for-hands", "Judges a gap beside a moving handle")
        .number("gap", Unit.MM, "least gap")
        .choice("part", "what may enter", "finger", "hand")
        .number("closed", Unit.MM, "gap so small that nothing enters", "4")
        .result("verdict", Unit.ONE, "safe, closed or traps")
        .result("least", Unit.MM, "least gap of the standard")
        .source(SafeGap.SOURCE)
        .rule(
            g -> {
              double gap = g.number("gap");
              double least = SafeGap.of(g.choice("part")).gap();
              double closed = Bound.notNegative("closed", g.number("closed"), "mm");
              String verdict =
                  gap >= least ? "safe" : gap >= 0 && gap <= closed ? "closed" : "traps";
              Answer answer = Answer.start().with("verdict", verdict).with("least", least);
              return verdict.equals("safe") ? answer : answer.caution(HANDS);
            });
  }

  static Answer open(Working gap) {
    Answer answer = Answer.start().with("gap", gap);
    return gap.value() > 0 ? answer : answer.caution(TOUCH);
  }

  static double[] two(String name, double[] values) {
    if (values.length != 2 || !(values[0] <= values[1])) {
      throw new IllegalArgumentException(
          name + " must be two numbers, the lesser first, e.g. 0, 100");
    }
    return values;
  }

  private static double[] three(String name, double[] values) {
    if (values.length != 3) {
      throw new IllegalArgumentException(name + " must be three numbers, e.g. 60, 0, 10");
    }
    return values;
  }
}
