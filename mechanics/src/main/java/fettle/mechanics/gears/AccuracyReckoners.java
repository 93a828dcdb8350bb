package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on backlash, tolerances, and engaging eccentrics and detents. */
final class AccuracyReckoners {

  private AccuracyReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        backlash(), backlashChange(), recommended(), plastic(), tolerance(), eccentric(), detent());
  }

  private static Reckoner backlash() {
    return Reckoner.of(
            TrainReckoners.GROUP, "backlash", "Backlash of a pair on a measured centre distance")
        .number("m", Unit.MM, "module")
        .count("z1", "teeth of the first gear")
        .count("z2", "teeth of the second gear")
        .number("x1", Unit.ONE, "profile shift of the first gear", "0")
        .number("x2", Unit.ONE, "profile shift of the second gear", "0")
        .number("a_w", Unit.MM, "actual centre distance")
        .number("alpha", Unit.DEG, "pressure angle", "20")
        .number("E_sn1", Unit.MM, "thickness allowance of the first gear", "0")
        .number("E_sn2", Unit.MM, "thickness allowance of the second gear", "0")
        .number("f_a", Unit.MM, "deviation of the centre distance, plus or minus", "0")
        .number("F_r1", Unit.MM, "run-out of the first gear", "0")
        .number("F_r2", Unit.MM, "run-out of the second gear", "0")
        .result("j_bn", Unit.MM, "along the base tangent: what a feeler reads")
        .result("j_wt", Unit.MM, "at the working circle: what an indicator reads")
        .result("j_t", Unit.MM, "at the reference circle")
        .result("j_min", Unit.MM, "least at the working circle, with f_a and run-out")
        .result("j_max", Unit.MM, "largest at the working circle, with f_a")
        .result("alpha_w", Unit.DEG, "working pressure angle")
        .source(Sources.BACKLASH)
        .rule(AccuracyReckoners::backlashAnswer);
  }

  private static Answer backlashAnswer(Given g) {
    double alpha = g.number("alpha");
    GearPair pair =
        new GearPair(
            Gear.of(g.number("m"), g.count("z1"), g.number("x1"), alpha),
            Gear.of(g.number("m"), g.count("z2"), g.number("x2"), alpha),
            g.number("a_w"));
    double play = pair.backlash(g.number("E_sn1") + g.number("E_sn2"));
    double working = pair.workingAngle();
    Term jbn = Term.exact("j_bn", play, Unit.MM);
    Term aw = Term.exact("alpha_w", working, Unit.DEG);
    Working jwt = Working.of("j_wt", Unit.MM, "j_bn/cos(alpha_w)", jbn, aw);
    Teeth.notNegative("f_a", "mm", g.number("f_a"));
    Teeth.notNegative("F_r1", "mm", g.number("F_r1"));
    Teeth.notNegative("F_r2", "mm", g.number("F_r2"));
    Working least =
        Working.of(
            "j_min",
            Unit.MM,
            "j_wt-2*f_a*tan(alpha_w)-(F_r1+F_r2)*tan(alpha)",
            Term.of(jwt),
            g.term("f_a"),
            aw,
            g.term("F_r1"),
            g.term("F_r2"),
            g.term("alpha"));
    Answer answer =
        Answer.start()
            .with("j_bn", play)
            .with("j_wt", jwt)
            .with("j_t", Working.of("j_t", Unit.MM, "j_bn/cos(alpha)", jbn, g.term("alpha")))
            .with("j_min", least)
            .with(
                "j_max",
                Working.of(
                    "j_max", Unit.MM, "j_wt+2*f_a*tan(alpha_w)", Term.of(jwt), g.term("f_a"), aw))
            .with("alpha_w", working);
    return least.value() < -1e-9
        ? answer.caution(
            "The pair binds, all round or once a turn: more centre distance or thinner teeth.")
        : answer;
  }

  private static Reckoner backlashChange() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "backlash-change",
            "Change of backlash from a small change of the centre distance")
        .number("da", Unit.MM, "change of the centre distance; of a hole's place, of a depth")
        .number("alpha_w", Unit.DEG, "working pressure angle", "20")
        .result("dj", Unit.MM, "change of backlash at the pitch line")
        .source(Sources.BACKLASH)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "dj",
                        Working.of(
                            "dj", Unit.MM, "2*da*tan(alpha_w)", g.term("da"), g.term("alpha_w"))));
  }

  private static Reckoner recommended() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "recommended-backlash",
            "Least backlash recommended, ferrous gears in a ferrous housing, below 15 m/s")
        .number("a", Unit.MM, "centre distance")
        .number("m", Unit.MM, "module")
        .number("alpha", Unit.DEG, "pressure angle", "20")
        .number("T_sn", Unit.MM, "tolerance of the thickness; 0.06 for a home-cut gear", "0.06")
        .result("j_bn_min", Unit.MM, "least base tangent backlash")
        .result("rounded", Unit.MM, "the same rounded up to 0.01, as the table prints it")
        .result("E_sns", Unit.MM, "upper thickness allowance of each gear")
        .result("E_sni", Unit.MM, "lower thickness allowance of each gear")
        .source(Sources.RECOMMENDED_BACKLASH)
        .rule(
            g -> {
              Teeth.positive("a", "mm", g.number("a"));
              Teeth.positive("m", "mm", g.number("m"));
              Teeth.notNegative("T_sn", "mm", g.number("T_sn"));
              BasicRack.of(g.number("alpha"));
              Working j =
                  Working.of(
                      "j_bn_min", Unit.MM, "2/3*(0.06+0.0005*a+0.03*m)", g.term("a"), g.term("m"));
              Working upper =
                  Working.of(
                      "E_sns", Unit.MM, "-j_bn_min/(2*cos(alpha))", Term.of(j), g.term("alpha"));
              return Answer.start()
                  .with("j_bn_min", j)
                  .with("rounded", Math.ceil(j.value() * 100 - 1e-9) / 100)
                  .with("E_sns", upper)
                  .with(
                      "E_sni",
                      Working.of("E_sni", Unit.MM, "E_sns-T_sn", Term.of(upper), g.term("T_sn")));
            });
  }

  private static Reckoner plastic() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "plastic-backlash",
            "Backlash a plastic gear needs more, for warmth and swelling")
        .number("a", Unit.MM, "centre distance")
        .number("d", Unit.MM, "reference diameter of the plastic gear")
        .number("dT", Unit.K, "warming above assembly", "20")
        .number("expansion", Unit.PPM_PER_K, "of the plastic: acetal 110, nylon 90", "110")
        .number("frame", Unit.PPM_PER_K, "of the housing: iron 10", "10")
        .number("swelling", Unit.PERCENT, "of the diameter: nylon 0.5 to 2 in a damp year", "0")
        .number("alpha", Unit.DEG, "working pressure angle", "20")
        .result("j", Unit.MM, "backlash to add at the pitch line")
        .source(Source.practice("expansion of plastics and swelling of nylon in humid air"))
        .rule(
            g -> {
              Teeth.positive("a", "mm", g.number("a"));
              Teeth.positive("d", "mm", g.number("d"));
              BasicRack.of(g.number("alpha"));
              return Answer.start()
                  .with(
                      "j",
                      Working.of(
                          "j",
                          Unit.MM,
                          "(a*(expansion-frame)*dT+swelling*d/2)*2*tan(alpha)",
                          g.term("a"),
                          g.term("expansion"),
                          g.term("frame"),
                          g.term("dT"),
                          g.term("swelling"),
                          g.term("d"),
                          g.term("alpha")))
                  .caution("Nylon swells: check the backlash again after a week.");
            });
  }

  private static Reckoner tolerance() {
    return Reckoner.of(
            TrainReckoners.GROUP, "flank-tolerance", "Flank tolerances of ISO 1328-1:2013")
        .number("d", Unit.MM, "reference diameter")
        .number("m", Unit.MM, "module")
        .count("class", "flank tolerance class A, 1 to 11")
        .optional("b", Unit.MM, "face width, for the helix tolerances")
        .result("F_p", Unit.MICRON, "cumulative pitch, not rounded")
        .result("F_p_rounded", Unit.MICRON, "cumulative pitch, rounded")
        .result("f_p", Unit.MICRON, "single pitch, not rounded")
        .result("f_p_rounded", Unit.MICRON, "single pitch, rounded")
        .result("F_r", Unit.MICRON, "run-out (informative), not rounded")
        .result("f_Ha", Unit.MICRON, "profile slope, not rounded")
        .result("f_fa", Unit.MICRON, "profile form, not rounded")
        .result("F_a", Unit.MICRON, "total profile, not rounded")
        .result("f_Hb", Unit.MICRON, "helix slope, not rounded")
        .result("f_fb", Unit.MICRON, "helix form, not rounded")
        .result("F_b", Unit.MICRON, "total helix, not rounded")
        .result("e", Unit.MICRON, "eccentricity the run-out stands for: half of it")
        .source(Sources.ISO_1328)
        .rule(AccuracyReckoners::toleranceAnswer);
  }

  private static Answer toleranceAnswer(Given g) {
    double d = g.number("d");
    double m = g.number("m");
    int grade = g.count("class");
    double pitch = FlankTolerances.cumulativePitch(d, m, grade);
    double single = FlankTolerances.singlePitch(d, m, grade);
    Answer answer =
        Answer.start()
            .with(
                "F_p",
                Working.check(
                    "F_p",
                    pitch,
                    Unit.MICRON,
                    "(0.002*d+0.55*sqrt(d)+0.7*m+12)*2^((class-5)/2)/1000",
                    g.term("d"),
                    g.term("m"),
                    g.term("class")))
            .with("F_p_rounded", FlankTolerances.rounded(pitch))
            .with(
                "f_p",
                Working.check(
                    "f_p",
                    single,
                    Unit.MICRON,
                    "(0.001*d+0.4*m+5)*2^((class-5)/2)/1000",
                    g.term("d"),
                    g.term("m"),
                    g.term("class")))
            .with("f_p_rounded", FlankTolerances.rounded(single))
            .with("F_r", FlankTolerances.runout(d, m, grade))
            .with("e", FlankTolerances.runout(d, m, grade) / 2)
            .with("f_Ha", FlankTolerances.profileSlope(d, m, grade))
            .with("f_fa", FlankTolerances.profileForm(d, m, grade))
            .with("F_a", FlankTolerances.profile(d, m, grade));
    if (g.has("b")) {
      double b = g.number("b");
      answer =
          answer
              .with("f_Hb", FlankTolerances.helixSlope(d, b, grade))
              .with("f_fb", FlankTolerances.helixForm(d, b, grade))
              .with("F_b", FlankTolerances.helix(d, b, grade));
    }
    return answer.caution(
        "The 1995 edition and older national standards have other formulas and numbers; never mix"
            + " them.");
  }

  private static Reckoner eccentric() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "engaging-eccentric",
            "Lift of an eccentric that engages a tumbler or drop worm")
        .number("e", Unit.MM, "eccentricity")
        .number("r", Unit.MM, "radius on which it presses")
        .number("phi", Unit.DEG, "angle turned from the low point")
        .number("mu", Unit.ONE, "friction, 0.1 greased", "0.1")
        .result("lift", Unit.MM, "lift")
        .result(
            "margin", Unit.ONE, "friction less the steepest slope e/r; positive holds by itself")
        .source(Source.derived("crank circle; slope of an eccentric at most e/r"))
        .rule(
            g -> {
              Teeth.notNegative("e", "mm", g.number("e"));
              Teeth.positive("r", "mm", g.number("r"));
              return Answer.start()
                  .with(
                      "lift",
                      Working.of("lift", Unit.MM, "e*(1-cos(phi))", g.term("e"), g.term("phi")))
                  .with(
                      "margin",
                      Working.of(
                          "margin", Unit.ONE, "mu-e/r", g.term("mu"), g.term("e"), g.term("r")));
            });
  }

  private static Reckoner detent() {
    return Reckoner.of(
            TrainReckoners.GROUP, "detent-force", "Holding force of a ball in a 90-degree cone")
        .number("F_s", Unit.N, "spring force on the ball")
        .number("mu", Unit.ONE, "friction", "0.1")
        .result("F", Unit.N, "lateral force it holds")
        .source(Source.derived("ball on a 45-degree flank with friction"))
        .rule(
            g -> {
              Teeth.notNegative("F_s", "N", g.number("F_s"));
              double mu = g.number("mu");
              if (!(mu >= 0 && mu < 1)) {
                throw new IllegalArgumentException("mu [-] must be 0 to below 1, found " + mu);
              }
              return Answer.start()
                  .with(
                      "F",
                      Working.of("F", Unit.N, "F_s*(1+mu)/(1-mu)", g.term("F_s"), g.term("mu")));
            });
  }
}
