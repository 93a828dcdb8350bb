package fettle.mechanics.motion;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Levers, cranks and swivelling slides beside what stands still. */
final class LeverReckoners {

  private static final String GROUP = "clearance";

  private LeverReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        leverToWall(),
        levers(),
        crankPastKnob(),
        dogPastRod(),
        toolByCentre(),
        slideByWall(),
        crossed());
  }

  private static Reckoner leverToWall() {
    return Reckoner.of(GROUP, "lever-to-wall", "Knob of a lever beside a wall")
        .number("arm", Unit.MM, "length of the lever to the middle of its knob")
        .number("knob_r", Unit.MM, "radius of the knob")
        .number("wall_x", Unit.MM, "distance of the wall from the pivot")
        .numbers("swing_deg", Unit.DEG, "swing, 0 pointing at the wall, from and to")
        .result("gap", Unit.MM, "least gap over the swing; not positive if they meet")
        .result("angle", Unit.DEG, "lever there")
        .result("contact_angle", Unit.DEG, "angle either side of which the knob meets the wall")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double arm = Bound.positive("arm", g.number("arm"), "mm");
              double knob = Bound.notNegative("knob_r", g.number("knob_r"), "mm");
              double wall = g.number("wall_x");
              double[] swing = MotionReckoners.two("swing_deg", g.numbers("swing_deg"));
              double angle = nearest(swing[0], swing[1]);
              Answer answer =
                  MotionReckoners.open(
                          Working.of(
                              "gap",
                              Unit.MM,
                              "wall_x - arm*cos(angle) - knob_r",
                              Term.exact("wall_x", wall, Unit.MM),
                              Term.exact("arm", arm, Unit.MM),
                              Term.exact("angle", angle, Unit.DEG),
                              Term.exact("knob_r", knob, Unit.MM)))
                      .with("angle", angle);
              double cosine = (wall - knob) / arm;
              return Math.abs(cosine) <= 1
                  ? answer.with("contact_angle", Math.acos(cosine))
                  : answer;
            });
  }

  /** The angle of an interval whose cosine is greatest. */
  private static double nearest(double from, double to) {
    double turn = 2 * Math.PI;
    double whole = Math.ceil(from / turn) * turn;
    if (whole <= to) {
      return whole;
    }
    return Math.cos(from) >= Math.cos(to) ? from : to;
  }

  private static Reckoner levers() {
    return Reckoner.of(
            GROUP, "lever-to-lever", "Knobs of two levers, each free to turn right round")
        .number("arm1", Unit.MM, "length of the first lever")
        .number("arm2", Unit.MM, "length of the second lever")
        .number("knob_r1", Unit.MM, "radius of the first knob")
        .number("knob_r2", Unit.MM, "radius of the second knob")
        .number("centres", Unit.MM, "distance of the pivots")
        .result("gap", Unit.MM, "least gap; not positive if they meet")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double r1 = Bound.notNegative("arm1", g.number("arm1"), "mm");
              double r2 = Bound.notNegative("arm2", g.number("arm2"), "mm");
              double a = Bound.positive("centres", g.number("centres"), "mm");
              double k1 = Bound.notNegative("knob_r1", g.number("knob_r1"), "mm");
              double k2 = Bound.notNegative("knob_r2", g.number("knob_r2"), "mm");
              return MotionReckoners.open(
                  Working.of(
                      "gap",
                      Unit.MM,
                      "max(max(a - r1 - r2, abs(r1 - r2) - a), 0) - k1 - k2",
                      Term.exact("a", a, Unit.MM),
                      Term.exact("r1", r1, Unit.MM),
                      Term.exact("r2", r2, Unit.MM),
                      Term.exact("k1", k1, Unit.MM),
                      Term.exact("k2", k2, Unit.MM)));
            });
  }

  private static Reckoner crankPastKnob() {
    return Reckoner.of(
            GROUP, "crank-past-knob", "Crank that turns as its slide travels, past a round knob")
        .number("crank", Unit.MM, "radius of the peg's circle")
        .number("peg_r", Unit.MM, "radius of the peg's end")
        .numbers("knob", Unit.MM, "middle of the knob: x, y across the travel, z along it")
        .number("knob_r", Unit.MM, "radius of the knob")
        .numbers("travel", Unit.MM, "travel of the slide, from and to")
        .number("lead", Unit.MM, "travel for each turn of the crank", "2")
        .result("gap", Unit.MM, "least gap")
        .result("lower", Unit.MM, "proven: the gap is nowhere less")
        .result("z", Unit.MM, "slide there")
        .result("ring", Unit.MM, "least gap at any angle, whatever the slide does")
        .source(Sources.SEARCH)
        .rule(LeverReckoners::crank);
  }

  private static Answer crank(fettle.mechanics.base.Given g) {
    double crank = Bound.notNegative("crank", g.number("crank"), "mm");
    double peg = Bound.notNegative("peg_r", g.number("peg_r"), "mm");
    double radius = Bound.notNegative("knob_r", g.number("knob_r"), "mm");
    double[] k = g.numbers("knob");
    double[] travel = MotionReckoners.two("travel", g.numbers("travel"));
    double lead = g.number("lead");
    if (k.length != 3) {
      throw new IllegalArgumentException("knob must be three numbers, e.g. 62, 0, 60");
    }
    if (!(Math.abs(lead) > 0 && (travel[1] - travel[0]) / Math.abs(lead) <= 2000)) {
      throw new IllegalArgumentException(
          "lead must not be 0 and give at most 2000 turns over the travel, found " + lead + " mm");
    }
    Vector z = new Vector(0, 0, 1);
    Domain domain = new Domain(List.of("z"), new double[] {travel[0]}, new double[] {travel[1]});
    Chain moved =
        new Chain(
            List.of(new Step.Slide(z, 0, 1), new Step.Turn(z, 0, 2 * Math.PI / lead)),
            Convex.ball(new Vector(crank, 0, 0), peg));
    Chain still = new Chain(List.of(), Convex.ball(new Vector(k[0], k[1], k[2]), radius));
    Gap gap = Clearance.of(new Pair("peg", "knob", moved, still), domain, 1e-4, Clearance.BUDGET);
    double along = Math.max(0, Math.max(travel[0] - k[2], k[2] - travel[1]));
    double ring = Math.hypot(Math.hypot(k[0], k[1]) - crank, along) - peg - radius;
    Answer answer =
        Answer.start()
            .with("gap", gap.upper())
            .with("lower", gap.lower())
            .with("z", gap.position()[0])
            .with("ring", ring);
    return gap.touches() ? answer.caution("the peg meets the knob") : answer;
  }

  private static Reckoner dogPastRod() {
    return Reckoner.of(GROUP, "dog-past-rod", "Turning dog past a rod along the axis")
        .number("reach", Unit.MM, "how far the dog reaches from the axis")
        .number("half_width", Unit.MM, "half its width")
        .number("rod_distance", Unit.MM, "middle of the rod from the axis")
        .number("rod_r", Unit.MM, "radius of the rod")
        .result("gap", Unit.MM, "least gap; not positive if they meet")
        .source(Sources.GEOMETRY)
        .rule(
            g ->
                MotionReckoners.open(
                    Working.of(
                        "gap",
                        Unit.MM,
                        "rod_distance - rod_r - sqrt(reach^2 + half_width^2)",
                        positive(g, "rod_distance"),
                        positive(g, "rod_r"),
                        positive(g, "reach"),
                        positive(g, "half_width"))));
  }

  private static Reckoner toolByCentre() {
    return Reckoner.of(GROUP, "tool-by-centre", "Edge of a tool beside the tailstock's centre")
        .number("x", Unit.MM, "edge from the axis")
        .number("behind", Unit.MM, "edge behind the tip of the centre")
        .number("angle", Unit.DEG, "angle of the centre's point", "60")
        .result("gap", Unit.MM, "distance from the cone; not positive if they meet")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double x = Bound.notNegative("x", g.number("x"), "mm");
              double back = g.number("behind");
              double half = Bound.angle("angle", g.number("angle"), 1, 179) / 2;
              if (back * Math.cos(half) + x * Math.sin(half) <= 0) {
                return MotionReckoners.open(
                    Working.of(
                        "gap",
                        Unit.MM,
                        "sqrt(x^2 + b^2)",
                        g.term("x"),
                        Term.exact("b", back, Unit.MM)));
              }
              return MotionReckoners.open(
                  Working.of(
                      "gap",
                      Unit.MM,
                      "x*cos(a/2) - b*sin(a/2)",
                      g.term("x"),
                      Term.exact("a", 2 * half, Unit.DEG),
                      Term.exact("b", back, Unit.MM)));
            });
  }

  private static Reckoner slideByWall() {
    return Reckoner.of(GROUP, "swivel-by-wall", "Slide that swivels about its middle beside a wall")
        .number("length", Unit.MM, "length of the slide")
        .number("width", Unit.MM, "width of the slide")
        .number("wall_x", Unit.MM, "distance of the wall from the pivot")
        .numbers("swing_deg", Unit.DEG, "swing, 0 lengthwise towards the wall, from and to")
        .result("gap", Unit.MM, "least gap; not positive if they meet")
        .result("angle", Unit.DEG, "slide there")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double half = Bound.positive("length", g.number("length"), "mm") / 2;
              double wide = Bound.positive("width", g.number("width"), "mm") / 2;
              double[] swing = MotionReckoners.two("swing_deg", g.numbers("swing_deg"));
              double corner = Math.atan2(wide, half);
              double angle = swing[0];
              double[] worst = {
                swing[1],
                nearest(swing, corner),
                nearest(swing, -corner),
                nearest(swing, Math.PI - corner),
                nearest(swing, Math.PI + corner)
              };
              for (double at : worst) {
                angle = reach(half, wide, at) > reach(half, wide, angle) ? at : angle;
              }
              return MotionReckoners.open(
                      Working.of(
                          "gap",
                          Unit.MM,
                          "wall_x - abs(l*cos(angle)) - abs(w*sin(angle))",
                          g.term("wall_x"),
                          Term.exact("l", half, Unit.MM),
                          Term.exact("w", wide, Unit.MM),
                          Term.exact("angle", angle, Unit.DEG)))
                  .with("angle", angle);
            });
  }

  private static double nearest(double[] swing, double at) {
    double turn = 2 * Math.PI;
    double first = at + Math.ceil((swing[0] - at) / turn) * turn;
    return first <= swing[1] ? first : swing[0];
  }

  private static double reach(double half, double wide, double angle) {
    return Math.abs(half * Math.cos(angle)) + Math.abs(wide * Math.sin(angle));
  }

  private static Reckoner crossed() {
    return Reckoner.of(GROUP, "crossed-rods", "Two round rods that cross")
        .number("r1", Unit.MM, "radius of the first")
        .number("r2", Unit.MM, "radius of the second")
        .number("axes", Unit.MM, "least distance of the axes")
        .result("gap", Unit.MM, "gap; not positive if they meet")
        .source(Sources.GEOMETRY)
        .rule(
            g ->
                MotionReckoners.open(
                    Working.of(
                        "gap",
                        Unit.MM,
                        "axes - r1 - r2",
                        positive(g, "axes"),
                        positive(g, "r1"),
                        positive(g, "r2"))));
  }

  private static Term positive(fettle.mechanics.base.Given g, String name) {
    return Term.exact(name, Bound.notNegative(name, g.number(name), "mm"), Unit.MM);
  }
}
