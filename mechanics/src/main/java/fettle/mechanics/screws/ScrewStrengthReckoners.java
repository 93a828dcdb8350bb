package fettle.mechanics.screws;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;
import java.util.Locale;

/** Strength, wear, buckling and whirling of feed screws. */
final class ScrewStrengthReckoners {

  private static final String GROUP = ScrewReckoners.GROUP;

  private ScrewStrengthReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        stress(),
        nutPressure(),
        pressureLimit(),
        nutLife(),
        wearCoefficient(),
        buckling(),
        criticalSpeed(),
        sag(),
        misalignment());
  }

  private static Reckoner stress() {
    return GivenScrew.asked(
            Reckoner.of(GROUP, "screw-stress", "Stress in the core of a feed screw"))
        .number("F", Unit.N, "load along the axis")
        .number("T", Unit.NM, "moment carried", "0")
        .optional("d3", Unit.MM, "core diameter, or the undercut if it is smaller")
        .number("Sy", Unit.MPA, "yield strength", "305")
        .result("sigma", Unit.MPA, "axial stress")
        .result("tau", Unit.MPA, "torsional stress")
        .result("sigma_v", Unit.MPA, "equivalent stress after von Mises")
        .result("safety", Unit.ONE, "yield over equivalent stress; 2 is usual")
        .source(Sources.MOMENTS)
        .rule(ScrewStrengthReckoners::stressOf);
  }

  private static Answer stressOf(Given g) {
    double core = GivenScrew.of(g).core();
    double yield = g.number("Sy");
    if (!(core > 0) || !(yield > 0)) {
      throw new IllegalArgumentException("d3 and Sy: expected more than 0");
    }
    Term d3 = Term.exact("d3", core, Unit.MM);
    Working sigma = Working.of("sigma", Unit.MPA, "4*F/(pi*d3^2)", g.term("F"), d3);
    Working tau = Working.of("tau", Unit.MPA, "16*T/(pi*d3^3)", g.term("T"), d3);
    Working equivalent =
        Working.of("sigma_v", Unit.MPA, "sqrt(sigma^2 + 3*tau^2)", Term.of(sigma), Term.of(tau));
    Answer answer =
        Answer.start().with("sigma", sigma).with("tau", tau).with("sigma_v", equivalent);
    if (!(equivalent.value() > 0)) {
      return answer;
    }
    double safety = yield / equivalent.value();
    answer = answer.with("safety", safety);
    return safety < 2
        ? answer.caution("less than twofold safety against yield (common practice)")
        : answer;
  }

  private static Reckoner nutPressure() {
    return GivenScrew.asked(Reckoner.of(GROUP, "nut-pressure", "Pressure on the flanks of a nut"))
        .number("F", Unit.N, "load along the axis")
        .optional("H1", Unit.MM, "depth of engagement; from the thread if left out")
        .number("Ln", Unit.MM, "length of the nut")
        .choice(
            "pair",
            "materials of screw and nut",
            "steel-bronze",
            "steel-brass",
            "steel-cast_iron",
            "steel-steel",
            "steel-pom")
        .result("p", Unit.MPA, "mean pressure")
        .result("p_keep", Unit.MPA, "pressure below which a slide keeps its setting")
        .result("Ln_keep", Unit.MM, "length of nut that keeps that pressure")
        .result("share_first", Unit.ONE, "share of the load on the first turn, about")
        .source(Sources.NUT_PRESSURE)
        .rule(ScrewStrengthReckoners::pressureOf);
  }

  private static Answer pressureOf(Given g) {
    GivenScrew given = GivenScrew.of(g);
    Nut nut = new Nut(given.d2(), given.pitch(), given.engagement(), g.number("Ln"));
    double force = g.number("F");
    if (!(force >= 0)) {
      throw new IllegalArgumentException("F = " + force + " N: expected 0 or more");
    }
    Pair pair = Pair.of(g.choice("pair"));
    Answer answer =
        Answer.start()
            .with(
                "p",
                Working.check(
                    "p",
                    nut.pressure(force),
                    Unit.MPA,
                    "F*P/(pi*d2*H1*Ln)",
                    g.term("F"),
                    given.pitchTerm(),
                    given.d2Term(),
                    Term.exact("H1", given.engagement(), Unit.MM),
                    g.term("Ln")))
            .with("p_keep", pair.keepingPressure())
            .with("Ln_keep", nut.lengthFor(force, pair.keepingPressure()))
            .with("share_first", 0.38);
    if (nut.pressure(force) > pair.keepingPressure()) {
      answer = answer.caution("the nut will wear: a longer nut, a larger screw or less load");
    }
    return g.number("Ln") > 2.5 * given.d2()
        ? answer.caution("a nut longer than 2.5 d does not share the load over its whole length")
        : answer;
  }

  private static Reckoner pressureLimit() {
    return Reckoner.of(GROUP, "nut-pressure-limit", "Pressure a nut bears without seizing")
        .choice(
            "pair",
            "materials of screw and nut",
            "steel-bronze",
            "steel-brass",
            "steel-cast_iron",
            "steel-steel",
            "steel-pom")
        .number("v", Unit.M_PER_MIN, "sliding speed of the flanks")
        .result("p_low", Unit.MPA, "lower end of the usual range")
        .result("p_high", Unit.MPA, "upper end of the usual range")
        .result("p_keep", Unit.MPA, "pressure below which a slide keeps its setting")
        .source(Sources.NUT_PRESSURE)
        .rule(
            g -> {
              double v = g.number("v");
              if (!(v >= 0) || !(v <= 1000)) {
                throw new IllegalArgumentException(
                    "v: sliding nuts run up to about 60 m/min; expected 0 to 60 m/min");
              }
              Pair pair = Pair.of(g.choice("pair"));
              Interval range = pair.pressure(v);
              Answer answer =
                  Answer.start()
                      .with("p_low", range.low())
                      .with("p_high", range.high())
                      .with("p_keep", pair.keepingPressure());
              return v > 200
                  ? answer.caution("above 12 m/min the range is not known; use less")
                  : answer;
            });
  }

  private static Reckoner nutLife() {
    return GivenScrew.asked(Reckoner.of(GROUP, "nut-life", "Travel until a nut has worn"))
        .optional("k", Unit.M2_PER_N, "wear coefficient; by the pair's range if left out")
        .choice(
            "pair",
            "materials of screw and nut",
            "steel-bronze",
            "steel-brass",
            "steel-cast_iron",
            "steel-steel",
            "steel-pom")
        .number("p", Unit.MPA, "pressure on the flanks")
        .number("h", Unit.MM, "axial wear allowed")
        .optional("ratio", Unit.ONE, "flank way for each mm of travel; by the thread if left out")
        .result("L_travel", Unit.M, "travel of the slide, with k as given or middle of the range")
        .result("L_low", Unit.M, "a third of it: the low end")
        .result("L_high", Unit.M, "three times: the high end")
        .result("s", Unit.M, "way of the flanks")
        .source(Sources.WEAR)
        .rule(ScrewStrengthReckoners::lifeOf);
  }

  private static Answer lifeOf(Given g) {
    Interval range = Pair.of(g.choice("pair")).wear();
    double k = g.number("k", Math.sqrt(range.low() * range.high()));
    double ratio = g.has("ratio") ? g.number("ratio") : slidingRatio(g);
    double travel = Nut.life(g.number("h"), k, g.number("p"), ratio);
    return Answer.start()
        .with(
            "L_travel",
            Working.check(
                "L_travel",
                travel,
                Unit.M,
                "h/(k*p)/ratio",
                g.term("h"),
                Term.exact("k", k, Unit.M2_PER_N),
                g.term("p"),
                Term.exact("ratio", ratio)))
        .with("L_low", travel / 3)
        .with("L_high", travel * 3)
        .with("s", travel * ratio)
        .caution("wear is known to a factor of three at best; measure the old nut and fit k");
  }

  private static double slidingRatio(Given g) {
    GivenScrew given = GivenScrew.of(g);
    return new PowerScrew(given.d2(), given.lead(), 0).slidingRatio();
  }

  private static Reckoner wearCoefficient() {
    return GivenScrew.asked(
            Reckoner.of(GROUP, "wear-coefficient", "Wear coefficient from a nut that has worn"))
        .number("h", Unit.MM, "axial wear found")
        .number("L", Unit.M, "travel of the slide since the nut was new")
        .number("p", Unit.MPA, "pressure on the flanks")
        .optional("ratio", Unit.ONE, "flank way for each mm of travel; by the thread if left out")
        .result("k", Unit.M2_PER_N, "wear coefficient")
        .source(Sources.WEAR)
        .rule(
            g -> {
              double ratio = g.has("ratio") ? g.number("ratio") : slidingRatio(g);
              return Answer.start()
                  .with(
                      "k", Nut.wearCoefficient(g.number("h"), g.number("L"), g.number("p"), ratio));
            });
  }

  private static Reckoner.Draft bar(Reckoner.Draft draft) {
    return draft
        .number("d3", Unit.MM, "core diameter, or the undercut if it is smaller")
        .number("L", Unit.MM, "free length between the supports");
  }

  private static SlenderScrew bar(Given g) {
    return new SlenderScrew(g.number("d3"), g.number("L"));
  }

  private static EndFixity ends(Given g) {
    return EndFixity.valueOf(g.choice("ends").toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static Reckoner buckling() {
    return bar(Reckoner.of(GROUP, "screw-buckling", "Axial force at which a screw buckles"))
        .choice(
            "ends",
            "how the ends are held",
            "pinned-pinned",
            "fixed-free",
            "fixed-pinned",
            "fixed-fixed")
        .optional("K", Unit.ONE, "buckling length over length, instead of the ends")
        .number("E", Unit.MPA, "modulus of elasticity", "210000")
        .number("Sy", Unit.MPA, "yield strength", "305")
        .optional("F", Unit.N, "load along the axis")
        .result("F_crit", Unit.N, "critical force")
        .result("s", Unit.ONE, "slenderness")
        .result("s_change", Unit.ONE, "slenderness at which Euler takes over")
        .result("law", Unit.ONE, "Euler or Johnson")
        .result("F_safe", Unit.N, "force with threefold safety")
        .result("safety", Unit.ONE, "critical force over load; 3 to 4 is usual")
        .source(Sources.BUCKLING)
        .rule(ScrewStrengthReckoners::bucklingOf);
  }

  private static Answer bucklingOf(Given g) {
    SlenderScrew s = bar(g);
    double factor = g.number("K", ends(g).lengthFactor());
    double e = g.number("E");
    double yield = g.number("Sy");
    double critical = s.bucklingForce(factor, e, yield);
    SlenderScrew.Law law = s.law(factor, e, yield);
    Term k = Term.exact("K", factor);
    String formula =
        law == SlenderScrew.Law.EULER
            ? "pi^3*E*d3^4/(64*(K*L)^2)"
            : "pi/4*d3^2*(Sy - (Sy*4*K*L/d3/(2*pi))^2/E)";
    Working force =
        law == SlenderScrew.Law.EULER
            ? Working.check(
                "F_crit", critical, Unit.N, formula, g.term("E"), g.term("d3"), k, g.term("L"))
            : Working.check(
                "F_crit",
                critical,
                Unit.N,
                formula,
                g.term("E"),
                g.term("d3"),
                k,
                g.term("L"),
                g.term("Sy"));
    Answer answer =
        Answer.start()
            .with("F_crit", force)
            .with("s", s.slenderness(factor))
            .with("s_change", SlenderScrew.transition(e, yield))
            .with("law", law == SlenderScrew.Law.EULER ? "Euler" : "Johnson")
            .with("F_safe", critical / 3);
    if (!g.has("F")) {
      return answer;
    }
    double load = g.number("F");
    if (!(load > 0)) {
      throw new IllegalArgumentException("F = " + load + " N: expected more than 0");
    }
    answer = answer.with("safety", critical / load);
    return load > critical / 3
        ? answer.caution(
            "load above a third of the buckling force: a larger screw, or hold it in" + " tension")
        : answer;
  }

  private static Reckoner criticalSpeed() {
    return bar(Reckoner.of(GROUP, "critical-speed", "Speed at which a turning screw whirls"))
        .choice(
            "ends",
            "how the ends are held",
            "pinned-pinned",
            "fixed-free",
            "fixed-pinned",
            "fixed-fixed")
        .number("E", Unit.MPA, "modulus of elasticity", "210000")
        .number("rho", Unit.KG_PER_M3, "density", "7850")
        .optional("n", Unit.RPM, "speed of the screw")
        .result("n_crit", Unit.RPM, "critical speed")
        .result("n_safe", Unit.RPM, "0.8 of it")
        .source(Sources.WHIRLING)
        .rule(
            g -> {
              SlenderScrew s = bar(g);
              EndFixity ends = ends(g);
              double critical = s.criticalSpeed(ends.waveNumber(), g.number("E"), g.number("rho"));
              Answer answer =
                  Answer.start()
                      .with(
                          "n_crit",
                          Working.check(
                              "n_crit",
                              critical,
                              Unit.RPM,
                              "(kappa/L)^2*d3/4*sqrt(E/rho)",
                              Term.exact("kappa", ends.waveNumber()),
                              g.term("L"),
                              g.term("d3"),
                              g.term("E"),
                              g.term("rho")))
                      .with("n_safe", 0.8 * critical);
              return g.has("n") && g.number("n") > 0.8 * critical
                  ? answer.caution(
                      "faster than 0.8 of the critical speed: the screw may whirl and"
                          + " throw itself out; slow down or support it")
                  : answer;
            });
  }

  private static Reckoner sag() {
    return bar(Reckoner.of(GROUP, "screw-sag", "Sag of a long screw under its own weight"))
        .number("E", Unit.MPA, "modulus of elasticity", "210000")
        .number("rho", Unit.KG_PER_M3, "density", "7850")
        .result("sag", Unit.MM, "sag in the middle, ends free to tilt")
        .source(Sources.BEAM)
        .rule(g -> Answer.start().with("sag", bar(g).sag(g.number("E"), g.number("rho"))));
  }

  private static Reckoner misalignment() {
    return Reckoner.of(GROUP, "misalignment-force", "Force across a screw whose nut is not in line")
        .choice("model", "how screw and nut are held", "cantilever", "guided")
        .number("E", Unit.MPA, "modulus of elasticity", "210000")
        .number("d3", Unit.MM, "core diameter")
        .number("a", Unit.MM, "free length from bearing block to nut")
        .number("delta", Unit.MM, "distance between the axes")
        .optional("F_feed", Unit.N, "feed force, to judge by")
        .result("F", Unit.N, "force across the axis")
        .source(Sources.BEAM)
        .rule(ScrewStrengthReckoners::misalignmentOf);
  }

  private static Answer misalignmentOf(Given g) {
    double constraint = g.choice("model").equals("cantilever") ? 3 : 12;
    SlenderScrew s = new SlenderScrew(g.number("d3"), g.number("a"));
    double force = s.misalignmentForce(constraint, g.number("E"), Math.abs(g.number("delta")));
    Answer answer =
        Answer.start()
            .with(
                "F",
                Working.check(
                    "F",
                    force,
                    Unit.N,
                    "n*E*pi*d3^4/64*abs(delta)/a^3",
                    Term.exact("n", constraint),
                    g.term("E"),
                    g.term("d3"),
                    g.term("delta"),
                    g.term("a")));
    double allowed = g.has("F_feed") ? Math.min(50, 0.2 * g.number("F_feed")) : 50;
    return force > allowed
        ? answer.caution(
            "the screw binds where the nut comes near the block: bore the block in place from the"
                + " nut, let the nut float and lock it last, or shim")
        : answer;
  }
}
