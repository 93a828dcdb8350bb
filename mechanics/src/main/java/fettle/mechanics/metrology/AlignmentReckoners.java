package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.Arrays;
import java.util.List;

/** Single calculations on the alignment of headstock, tailstock, bed and slides. */
final class AlignmentReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;
  private static final String ORDER =
      "Order is binding: bed level and twist first, then saddle, headstock, tailstock, cross slide,"
          + " lead screw; clamp everything as in use before each reading.";

  private AlignmentReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        headstock(),
        twoCollar(),
        collarDepth(),
        levelTilt(),
        bedTwist(),
        twistEffect(),
        betweenCentres(),
        setOver(),
        quill(),
        heightEffect(),
        facing(),
        levelStraightness(),
        heightStraightness(),
        leadWindow(),
        screwPlay());
  }

  private static Reckoner headstock() {
    return Reckoner.of(
            GROUP, "headstock-alignment", "Spindle axis against saddle travel, by test bar")
        .number("z1", Unit.MM, "near plane")
        .number("z2", Unit.MM, "far plane")
        .optional(
            "m_h1", Unit.MICRON, "mean reading in front, near; mean of spindle and half a turn on")
        .optional("m_h2", Unit.MICRON, "mean reading in front, far")
        .optional("m_v1", Unit.MICRON, "mean reading on top, near")
        .optional("m_v2", Unit.MICRON, "mean reading on top, far")
        .number("sag1", Unit.MICRON, "droop of the bar at the near plane", "0")
        .number("sag2", Unit.MICRON, "droop of the bar at the far plane", "0")
        .number("u", Unit.MICRON, "standard uncertainty of a mean reading", "0")
        .number("wanted_h", Unit.MICRON_PER_M, "wanted angle towards the tool", "0")
        .number("wanted_v", Unit.MICRON_PER_M, "wanted angle upwards", "0")
        .optional("rho", Unit.MM, "lever from the fixed dowel to the slewing screw")
        .optional("p", Unit.MM, "pitch of the slewing screw")
        .optional("L_foot", Unit.MM, "distance of the feet along the bed")
        .number("length", Unit.MM, "length of unsupported work for the taper", "100")
        .result("a_h", Unit.MICRON_PER_M, "angle in the horizontal, + free end towards the tool")
        .result("a_v", Unit.MICRON_PER_M, "angle in the vertical, + free end up")
        .result("u_a", Unit.MICRON_PER_M, "standard uncertainty of an angle")
        .result("taper", Unit.MICRON, "change of diameter over the work, + smaller at the free end")
        .result("slew", Unit.MICRON, "movement at the slewing screw, + towards the tool")
        .result("turns", Unit.TURNS, "turns of the slewing screw")
        .result("shim", Unit.MICRON, "shim under the tailstock-side feet; negative: other side")
        .source(Sources.GEOMETRY)
        .rule(AlignmentReckoners::headstock);
  }

  private static Answer headstock(Given g) {
    double dz = Require.positive("z2 - z1", g.number("z2") - g.number("z1"));
    double u = Require.notNegative("u", g.number("u"));
    Answer answer = Answer.start();
    if (g.has("m_h1") && g.has("m_h2")) {
      Working ah =
          Working.of(
              "a_h",
              Unit.MICRON_PER_M,
              "(m_h2 - m_h1)/(z2 - z1)",
              g.term("m_h1"),
              g.term("m_h2"),
              g.term("z1"),
              g.term("z2"));
      answer = answer.with("a_h", ah).with("taper", 2 * ah.value() * g.number("length"));
      if (g.has("rho")) {
        double slew =
            (g.number("wanted_h") - ah.value()) * Require.positive("rho", g.number("rho"));
        answer = answer.with("slew", slew);
        if (g.has("p")) {
          answer = answer.with("turns", slew / Require.positive("p", g.number("p")));
        }
      }
    }
    if (g.has("m_v1") && g.has("m_v2")) {
      Working av =
          Working.of(
              "a_v",
              Unit.MICRON_PER_M,
              "(m_v2 + sag2 - m_v1 - sag1)/(z2 - z1)",
              g.term("m_v1"),
              g.term("m_v2"),
              g.term("sag1"),
              g.term("sag2"),
              g.term("z1"),
              g.term("z2"));
      answer = answer.with("a_v", av);
      if (g.has("L_foot")) {
        double foot = Require.positive("L_foot", g.number("L_foot"));
        answer = answer.with("shim", (g.number("wanted_v") - av.value()) * foot);
      }
    }
    if (answer.values().isEmpty()) {
      throw new IllegalArgumentException("give m_h1 and m_h2 (front), or m_v1 and m_v2 (top)");
    }
    return answer.with("u_a", Math.sqrt(2) * u / dz).caution(ORDER);
  }

  private static Reckoner twoCollar() {
    return Reckoner.of(
            GROUP, "two-collar", "Spindle axis against saddle travel, by turning two collars")
        .number("d_head", Unit.MM, "diameter of the collar at the headstock")
        .number("d_free", Unit.MM, "diameter of the collar at the free end")
        .number("spacing", Unit.MM, "distance of the collars")
        .number("u_d", Unit.MICRON, "standard uncertainty of a diameter", "0")
        .number("wanted", Unit.MICRON_PER_M, "wanted angle", "0")
        .optional("rho", Unit.MM, "lever from the fixed dowel to the slewing screw")
        .optional("p", Unit.MM, "pitch of the slewing screw")
        .result("a_h", Unit.MICRON_PER_M, "angle, + free end towards the tool")
        .result("u_a", Unit.MICRON_PER_M, "its standard uncertainty")
        .result("taper", Unit.MICRON, "difference of the diameters, head less free")
        .result("slew", Unit.MICRON, "movement at the slewing screw, + towards the tool")
        .result("turns", Unit.TURNS, "turns of the slewing screw")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double spacing = Require.positive("spacing", g.number("spacing"));
              Require.positive("d_head", g.number("d_head"));
              Require.positive("d_free", g.number("d_free"));
              Working a =
                  Working.of(
                      "a_h",
                      Unit.MICRON_PER_M,
                      "(d_head - d_free)/(2*spacing)",
                      g.term("d_head"),
                      g.term("d_free"),
                      g.term("spacing"));
              double u = Require.notNegative("u_d", g.number("u_d"));
              Answer answer =
                  Answer.start()
                      .with("a_h", a)
                      .with("u_a", Math.sqrt(2) * u / (2 * spacing))
                      .with("taper", g.number("d_head") - g.number("d_free"));
              if (g.has("rho")) {
                double slew =
                    (g.number("wanted") - a.value()) * Require.positive("rho", g.number("rho"));
                answer = answer.with("slew", slew);
                if (g.has("p")) {
                  answer = answer.with("turns", slew / Require.positive("p", g.number("p")));
                }
              }
              return answer
                  .caution(
                      "Bed twist, tool wear and bending by the cut give the same taper: untwist the bed"
                          + " first, and cut at two depths.")
                  .caution(ORDER);
            });
  }

  private static Reckoner collarDepth() {
    return Reckoner.of(GROUP, "collar-depth", "Two-collar difference freed of bending by the cut")
        .numbers("depth", Unit.MM, "depths of cut, two or more")
        .numbers("D", Unit.MICRON, "difference of the diameters at each, head less free")
        .optional("spacing", Unit.MM, "distance of the collars")
        .result("D0", Unit.MICRON, "difference at zero depth")
        .result("per_mm", Unit.MICRON, "change for each millimetre of depth, bending")
        .result("a_h", Unit.MICRON_PER_M, "angle of the axis, + free end towards the tool")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double[] depth = g.numbers("depth");
              double[] d = g.numbers("D");
              Require.sameLength("D", d.length, depth.length);
              Require.atLeast("depths", depth.length, 2);
              double mean = Sample.of(depth).mean();
              double below = Sample.of(depth).sumOfSquares();
              Require.positive("spread of the depths", below);
              double slope = 0;
              for (int i = 0; i < d.length; i++) {
                slope += (depth[i] - mean) * d[i] / below;
              }
              double d0 = Sample.of(d).mean() - slope * mean;
              Answer answer = Answer.start().with("D0", d0).with("per_mm", slope);
              return g.has("spacing")
                  ? answer.with("a_h", d0 / 2 / Require.positive("spacing", g.number("spacing")))
                  : answer;
            });
  }

  private static Reckoner levelTilt() {
    return Reckoner.of(GROUP, "level-tilt", "Tilt from a level read both ways round")
        .number("r_A", Unit.ONE, "reading in divisions")
        .number("r_B", Unit.ONE, "reading with the level turned end for end")
        .number("S", Unit.MM_PER_M, "sensitivity for one division", "0.02")
        .result("tilt", Unit.MM_PER_M, "tilt, free of the zero error of the level")
        .result("zero", Unit.ONE, "zero error of the level in divisions")
        .result("u", Unit.MM_PER_M, "standard uncertainty at 0.2 division for each reading")
        .source(Sources.LEVEL)
        .rule(
            g -> {
              double s = Require.positive("S", g.number("S"));
              return Answer.start()
                  .with(
                      "tilt",
                      Working.of(
                          "tilt",
                          Unit.MM_PER_M,
                          "S*(r_A - r_B)/2",
                          g.term("S"),
                          g.term("r_A"),
                          g.term("r_B")))
                  .with("zero", (g.number("r_A") + g.number("r_B")) / 2)
                  .with("u", 0.2 * s / Math.sqrt(2));
            });
  }

  private static Reckoner bedTwist() {
    return Reckoner.of(GROUP, "bed-twist", "Twist of the bed from a level across the saddle")
        .rows("readings", Unit.ONE, "rows: z in mm, level in divisions, level turned end for end")
        .number("S", Unit.MM_PER_M, "sensitivity for one division", "0.02")
        .number("H", Unit.MM, "height of the tool above the ways", "0")
        .optional("W", Unit.MM, "distance of front and rear feet")
        .number("c", Unit.ONE, "share of a shim that twists the bed, from a trial shim", "1")
        .result("z", Unit.MM, "places")
        .result("twist", Unit.MM_PER_M, "twist against the first place, + front high")
        .result("range", Unit.MM_PER_M, "largest less smallest twist")
        .result("taper", Unit.MICRON, "diameter at the head less at the far end, by twist alone")
        .result("shim", Unit.MICRON, "raise the rear foot at the far end; negative: the front one")
        .source(Sources.LEVEL)
        .rule(
            g -> {
              double[][] rows = g.rows("readings");
              Require.columns("readings", rows, 3, "z, reading, reading turned round");
              Require.atLeast("places", rows.length, 2);
              double s = Require.positive("S", g.number("S"));
              double[] twist = new double[rows.length];
              for (int i = 0; i < rows.length; i++) {
                twist[i] = s * ((rows[i][1] - rows[i][2]) - (rows[0][1] - rows[0][2])) / 2;
              }
              double last = twist[twist.length - 1];
              Answer answer =
                  Answer.start()
                      .with("z", Require.column(rows, 0))
                      .with("twist", twist)
                      .with("range", RunOut.range(twist))
                      .with("taper", 2 * last * Require.notNegative("H", g.number("H")));
              if (g.has("W")) {
                double share = Require.positive("c", g.number("c"));
                answer = answer.with("shim", last * Require.positive("W", g.number("W")) / share);
              }
              return answer.caution(
                  "Equalise with the feet loaded; read again after an hour and the next day.");
            });
  }

  private static Reckoner twistEffect() {
    return Reckoner.of(GROUP, "twist-effect", "Taper that a twisted bed turns")
        .number("twist", Unit.MM_PER_M, "twist between the two places, + front high at the far end")
        .number("H", Unit.MM, "height of the tool above the ways")
        .result("D", Unit.MICRON, "diameter at the head less at the far end")
        .result("move", Unit.MICRON, "movement of the tool towards the work")
        .source(Sources.ALIGNMENT)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "D",
                        Working.of("D", Unit.MICRON, "2*twist*H", g.term("twist"), g.term("H")))
                    .with("move", g.number("twist") * Require.notNegative("H", g.number("H"))));
  }

  private static Reckoner betweenCentres() {
    return Reckoner.of(
            GROUP, "between-centres", "Tailstock against headstock, by a bar between centres")
        .number("m_h_head", Unit.MICRON, "reading in front at the headstock end", "0")
        .number("m_h_tail", Unit.MICRON, "reading in front at the tailstock end", "0")
        .number("m_v_head", Unit.MICRON, "reading on top at the headstock end", "0")
        .number("m_v_tail", Unit.MICRON, "reading on top at the tailstock end", "0")
        .number("z1", Unit.MM, "place of the reading at the headstock end")
        .number("z2", Unit.MM, "place of the reading at the tailstock end")
        .number("L", Unit.MM, "distance of the centres")
        .optional("p", Unit.MM, "pitch of the set-over screws")
        .result("e_h", Unit.MICRON, "movement the tailstock needs, + towards the tool")
        .result("e_v", Unit.MICRON, "height of the tailstock, + high")
        .result("turns", Unit.TURNS, "turns of the set-over screws")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              Require.positive("z2 - z1", g.number("z2") - g.number("z1"));
              Require.positive("L", g.number("L"));
              Working e =
                  Working.of(
                      "e_h",
                      Unit.MICRON,
                      "-(m_h_tail - m_h_head)*L/(z2 - z1)",
                      g.term("m_h_tail"),
                      g.term("m_h_head"),
                      g.term("L"),
                      g.term("z1"),
                      g.term("z2"));
              Answer answer =
                  Answer.start()
                      .with("e_h", e)
                      .with(
                          "e_v",
                          Working.of(
                              "e_v",
                              Unit.MICRON,
                              "(m_v_tail - m_v_head)*L/(z2 - z1)",
                              g.term("m_v_tail"),
                              g.term("m_v_head"),
                              g.term("L"),
                              g.term("z1"),
                              g.term("z2")));
              if (g.has("p")) {
                answer = answer.with("turns", e.value() / Require.positive("p", g.number("p")));
              }
              return answer.caution(ORDER);
            });
  }

  private static Reckoner setOver() {
    return Reckoner.of(
            GROUP, "tailstock-set-over", "Set-over that cancels a taper turned between centres")
        .number("d_head", Unit.MM, "diameter at the headstock")
        .number("d_tail", Unit.MM, "diameter at the tailstock")
        .number("collar_spacing", Unit.MM, "distance of the two diameters")
        .number("centre_distance", Unit.MM, "distance of the centres")
        .optional("p", Unit.MM, "pitch of the set-over screws")
        .number("u_d", Unit.MICRON, "standard uncertainty of a diameter", "0")
        .result("e_h", Unit.MM, "set-over, + towards the tool")
        .result("u", Unit.MICRON, "its standard uncertainty")
        .result("turns", Unit.TURNS, "turns of the set-over screws; loosen one side first")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double spacing = Require.positive("collar_spacing", g.number("collar_spacing"));
              double centres = Require.positive("centre_distance", g.number("centre_distance"));
              Require.positive("d_head", g.number("d_head"));
              Require.positive("d_tail", g.number("d_tail"));
              Working e =
                  Working.of(
                      "e_h",
                      Unit.MM,
                      "(d_tail - d_head)/2*centre_distance/collar_spacing",
                      g.term("d_tail"),
                      g.term("d_head"),
                      g.term("centre_distance"),
                      g.term("collar_spacing"));
              double u = Require.notNegative("u_d", g.number("u_d"));
              Answer answer =
                  Answer.start().with("e_h", e).with("u", u / Math.sqrt(2) * centres / spacing);
              return g.has("p")
                  ? answer.with("turns", e.value() / Require.positive("p", g.number("p")))
                  : answer;
            });
  }

  private static Reckoner quill() {
    return Reckoner.of(GROUP, "quill-alignment", "Tailstock quill against saddle travel")
        .number("reading_in", Unit.MICRON, "reading on top (or in front) at the body")
        .number("reading_out", Unit.MICRON, "reading at the outer end, towards the headstock")
        .number("distance", Unit.MM, "distance of the readings")
        .optional("L_base", Unit.MM, "length of the tailstock base")
        .result("a_q", Unit.MICRON_PER_M, "angle, + nose up (or nose towards the tool)")
        .result("shim", Unit.MICRON, "shim under the headstock-side edge of the body")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              Require.positive("distance", g.number("distance"));
              Working a =
                  Working.of(
                      "a_q",
                      Unit.MICRON_PER_M,
                      "(reading_out - reading_in)/distance",
                      g.term("reading_out"),
                      g.term("reading_in"),
                      g.term("distance"));
              Answer answer = Answer.start().with("a_q", a);
              if (g.has("L_base")) {
                answer =
                    answer.with(
                        "shim", -a.value() * Require.positive("L_base", g.number("L_base")));
              }
              return answer.caution(
                  "Read clamped and unclamped, quill in and out: the shift by clamping is a result of"
                      + " its own.");
            });
  }

  private static Reckoner heightEffect() {
    return Reckoner.of(GROUP, "height-effect", "Diameter error of a height error of tool or axis")
        .number("r", Unit.MM, "radius turned")
        .number("y", Unit.MM, "height error")
        .result("dd", Unit.MICRON, "growth of the diameter, 2(sqrt(r^2+y^2) - r)")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double r = Require.notNegative("r", g.number("r"));
              double y = g.number("y");
              double hypot = Math.hypot(r, y);
              return Answer.start().with("dd", hypot + r > 0 ? 2 * y * y / (hypot + r) : 0);
            });
  }

  private static Reckoner facing() {
    return Reckoner.of(
            GROUP, "facing-test", "Hollow or crown of a faced disc, read through the centre")
        .number("r", Unit.MM, "radius read on both sides of the centre")
        .number("reading_near", Unit.MICRON, "reading on the tool side")
        .number("reading_far", Unit.MICRON, "reading past the centre")
        .number("D", Unit.MM, "diameter for which the depth is wanted", "300")
        .number("u", Unit.MICRON, "standard uncertainty of a reading", "0")
        .number("wanted", Unit.MICRON_PER_M, "wanted slope, + concave", "0")
        .optional("W_c", Unit.MM, "length of the cross way on the saddle")
        .result("depth", Unit.MICRON, "depth over D: + concave (allowed), - crowned (reject)")
        .result(
            "kappa", Unit.MICRON_PER_M, "slope of the tool path, + towards the headstock at centre")
        .result("u_depth", Unit.MICRON, "standard uncertainty of the depth")
        .result("shape", Unit.ONE, "concave, crowned or flat")
        .result("scrape", Unit.MICRON, "to take off at one end of the cross way")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double r = Require.positive("r", g.number("r"));
              double d = Require.positive("D", g.number("D"));
              Working kappa =
                  Working.of(
                      "kappa",
                      Unit.MICRON_PER_M,
                      "(reading_far - reading_near)/(2*r)",
                      g.term("reading_far"),
                      g.term("reading_near"),
                      g.term("r"));
              double u = Require.notNegative("u", g.number("u"));
              double k = kappa.value();
              Answer answer =
                  Answer.start()
                      .with("kappa", kappa)
                      .with("depth", k * d / 2)
                      .with("u_depth", Math.sqrt(2) * u / (2 * r) * d / 2)
                      .with("shape", k > 0 ? "concave" : k < 0 ? "crowned" : "flat");
              if (g.has("W_c")) {
                answer =
                    answer.with(
                        "scrape",
                        (g.number("wanted") - k) * Require.positive("W_c", g.number("W_c")));
              }
              return answer.caution(
                  "The near side alone always reads constant: the indicator must pass the centre.");
            });
  }

  private static Answer straightness(Straightness s, Answer start) {
    double[] d = s.fromEnds();
    return start
        .with("heights", s.heights().stream().mapToDouble(Double::doubleValue).toArray())
        .with("deviations", d)
        .with("straightness", RunOut.range(d))
        .with("line", RunOut.range(s.fromLine()))
        .with("zone", s.minimumZone())
        .with("highest", Arrays.stream(d).max().orElseThrow())
        .with("lowest", Arrays.stream(d).min().orElseThrow());
  }

  private static Reckoner.Draft straightness(Reckoner.Draft draft) {
    return draft
        .input("window", Input.Kind.NUMBER, Unit.MM, "length for the local value", null, false)
        .result("heights", Unit.MICRON, "heights")
        .result("deviations", Unit.MICRON, "deviations from the line through the ends, + convex")
        .result("straightness", Unit.MICRON, "largest less smallest from the line through the ends")
        .result("line", Unit.MICRON, "largest less smallest from the least-squares line")
        .result("zone", Unit.MICRON, "narrowest band that holds all heights")
        .result("highest", Unit.MICRON, "highest deviation from the ends")
        .result("lowest", Unit.MICRON, "lowest deviation from the ends")
        .result("local", Unit.MICRON, "largest value over the window");
  }

  private static Reckoner levelStraightness() {
    return straightness(
            Reckoner.of(GROUP, "level-straightness", "Straightness from level readings along a way")
                .numbers("level", Unit.MM_PER_M, "slope of each step, + far end higher")
                .number("base", Unit.MM, "distance of the feet of the level")
                .number("u_level", Unit.MM_PER_M, "standard uncertainty of a slope", "0"))
        .result(
            "u", Unit.MICRON, "largest standard uncertainty of a height after the end-point line")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double[] level = g.numbers("level");
              double base = g.number("base");
              Straightness s = Straightness.ofLevel(level, base);
              int steps = level.length;
              double u =
                  Straightness.heightUncertainty(
                      steps / 2, steps, base, Require.notNegative("u_level", g.number("u_level")));
              Answer answer = straightness(s, Answer.start()).with("u", u);
              return g.has("window") ? answer.with("local", s.local(g.number("window"))) : answer;
            });
  }

  private static Reckoner heightStraightness() {
    return straightness(
            Reckoner.of(
                    GROUP, "straightness", "Straightness from heights or bar readings along a way")
                .numbers("z", Unit.MM, "places in rising order")
                .numbers("h", Unit.MICRON, "heights or readings"))
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              Straightness s = Straightness.of(g.numbers("z"), g.numbers("h"));
              Answer answer = straightness(s, Answer.start());
              return g.has("window") ? answer.with("local", s.local(g.number("window"))) : answer;
            });
  }

  private static Reckoner leadWindow() {
    return Reckoner.of(GROUP, "lead-window", "Lead error of a screw over any short length")
        .numbers("z", Unit.MM, "places in rising order")
        .numbers("err", Unit.MICRON, "error of position at each")
        .number("window", Unit.MM, "length within which the error is sought", "60")
        .result("E", Unit.MICRON, "largest difference of two errors within the window")
        .result("whole", Unit.MICRON, "largest difference over the whole length")
        .result("gain", Unit.PPM, "uniform lead error, slope of the errors")
        .result(
            "rest", Unit.MICRON, "largest difference within the window with the slope taken off")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double[] z = g.numbers("z");
              double[] e = g.numbers("err");
              double window = g.number("window");
              Require.sameLength("err", e.length, z.length);
              Require.atLeast("places", z.length, 3);
              double worst = Straightness.windowed(z, e, window);
              LinearFit fit = CalibrationLine.of(z, e, 0).fit();
              return Answer.start()
                  .with("E", worst)
                  .with("whole", RunOut.range(e))
                  .with("gain", fit.value("y2"))
                  .with("rest", Straightness.windowed(z, fit.residuals().toArray(), window));
            });
  }

  private static Reckoner screwPlay() {
    return Reckoner.of(GROUP, "screw-play", "Backlash split into thrust float and nut clearance")
        .number("B_total", Unit.MICRON, "backlash at the dial, hysteresis taken off")
        .number("thrust", Unit.MICRON, "float of the screw, read at its end")
        .number("gear_backlash", Unit.MICRON, "backlash of gears at their radius r", "0")
        .number("r", Unit.MM, "pitch radius of the gear on the screw", "20")
        .number("T", Unit.MM, "travel per turn", "0")
        .number("wanted", Unit.MICRON, "play that shall remain", "0")
        .result("gears", Unit.MICRON, "part of the gears in travel")
        .result("nut", Unit.MICRON, "clearance of nut and keys")
        .result("shim", Unit.MICRON, "to take out at the thrust washer")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double r = Require.positive("r", g.number("r"));
              double gears = g.number("gear_backlash") * g.number("T") / (2 * Math.PI * r);
              double thrust = Require.notNegative("thrust", g.number("thrust"));
              return Answer.start()
                  .with("gears", gears)
                  .with("nut", g.number("B_total") - thrust - gears)
                  .with("shim", thrust - g.number("wanted"))
                  .caution(
                      "Adjust a nut at the tightest place of the travel only: a worn middle feels loose"
                          + " there.");
            });
  }
}
