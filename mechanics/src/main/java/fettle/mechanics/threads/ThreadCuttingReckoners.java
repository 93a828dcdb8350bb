package fettle.mechanics.threads;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;
import java.util.Locale;

/** Single calculations on cutting threads and measuring them over wires. */
final class ThreadCuttingReckoners {

  private static final String GROUP = "threads";
  private static final double LEAD_ANGLE_THAT_COUNTS = Math.toRadians(2);

  private ThreadCuttingReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        bestWire(),
        overWires(),
        wiresPitchDiameter(),
        grooveArea(),
        passes(),
        toolTip(),
        stop(),
        undercut());
  }

  private static Reckoner.Draft wires(Reckoner.Draft draft) {
    return GivenThread.asked(draft)
        .optional("alpha", Unit.DEG, "half the flank angle; from the thread if it is given")
        .optional("d2", Unit.MM, "pitch diameter; basic size if it is left out")
        .optional("lambda", Unit.DEG, "lead angle; from lead and pitch diameter if left out")
        .input("starts", Input.Kind.COUNT, Unit.ONE, "number of starts", null, false);
  }

  private record Groove(double halfAngle, double p, double lead, double d2) {
    OverWires wires() {
      return new OverWires(halfAngle, p, lead);
    }

    double leadAngle() {
      return Math.atan(lead / (Math.PI * d2));
    }
  }

  /** The groove by designation, or by alpha and P with two of d2, lead and lead angle. */
  private static Groove groove(Given g) {
    boolean named = GivenThread.isGiven(g);
    ThreadDesignation t = named ? GivenThread.of(g) : null;
    if (t == null && !(g.has("P") && g.has("alpha"))) {
      throw new IllegalArgumentException(
          "missing input 'thread': give a designation, or P and alpha (half the flank angle)");
    }
    double p = t == null ? g.number("P") : t.profile().p();
    double alpha = g.number("alpha", t == null ? 0 : t.form().halfAngle());
    int starts = g.has("starts") ? g.count("starts") : t == null ? 1 : t.starts();
    if (starts < 1 || starts > 12) {
      throw new IllegalArgumentException("starts = " + starts + ": expected 1 to 12");
    }
    double lead = g.has("Ph") ? g.number("Ph") : starts * p;
    boolean angled = g.has("lambda");
    double tangent = angled ? Math.tan(g.number("lambda")) : 0;
    if (!(tangent >= 0) || !(tangent < 1.2)) {
      throw new IllegalArgumentException("lambda: expected a lead angle from 0 to 50 deg");
    }
    double d2;
    if (g.has("d2")) {
      d2 = g.number("d2");
      lead = angled ? Math.PI * d2 * tangent : lead;
    } else if (angled && tangent > 0) {
      d2 = lead / (Math.PI * tangent);
    } else if (t != null) {
      d2 = t.profile().d2();
    } else {
      d2 = 1000 * p;
      lead = 0;
    }
    if (!(d2 > p / 2 / Math.tan(Math.max(alpha, 0.01)) * 0.05)) {
      throw new IllegalArgumentException("d2 = " + d2 + " mm: too small for this pitch");
    }
    return new Groove(alpha, p, angled && tangent == 0 ? 0 : lead, d2);
  }

  private static Reckoner bestWire() {
    return wires(Reckoner.of(GROUP, "best-wire", "Best wire for measuring a screw over wires"))
        .result("w", Unit.MM, "wire that touches at the pitch diameter, lead angle counted")
        .result("w_no_lead", Unit.MM, "the same with no lead angle, P/(2 cos alpha)")
        .result("w_formula", Unit.MM, "the same by the usual lead-angle formula")
        .result("w_min", Unit.MM, "thinnest usable wire, without lead: level with the crest")
        .result("w_max", Unit.MM, "thickest usable wire, without lead: touching at the crest")
        .source(Sources.WIRES)
        .rule(
            g -> {
              Groove groove = groove(g);
              OverWires wires = groove.wires();
              Answer answer =
                  Answer.start()
                      .with("w", wires.bestWire(groove.d2))
                      .with(
                          "w_no_lead",
                          Working.check(
                              "w_no_lead",
                              wires.bestWireWithoutLead(),
                              Unit.MM,
                              "P/(2*cos(alpha))",
                              Term.exact("P", groove.p, Unit.MM),
                              Term.exact("alpha", groove.halfAngle, Unit.DEG)))
                      .with("w_formula", wires.bestWireByFormula(groove.d2));
              return usable(g, groove, answer);
            });
  }

  /** Thinnest and thickest wire by the crest: M = d, and contact at d. */
  private static Answer usable(Given g, Groove groove, Answer answer) {
    if (!GivenThread.isGiven(g)) {
      return answer;
    }
    double d = GivenThread.of(g).profile().d();
    double sine = Math.sin(groove.halfAngle);
    double thin = (d - groove.d2 + groove.p / 2 / Math.tan(groove.halfAngle)) / (1 + 1 / sine);
    double flank = (d - groove.d2) / 2 * Math.tan(groove.halfAngle);
    double thick = 2 * (groove.p / 4 + flank) / Math.cos(groove.halfAngle);
    return answer.with("w_min", thin).with("w_max", thick);
  }

  private static Reckoner overWires() {
    return wires(Reckoner.of(GROUP, "over-wires", "Measurement of a screw over wires"))
        .optional("wire", Unit.MM, "wire diameter; the best wire if left out")
        .choice("method", "how the lead angle is counted", "exact", "lead_term", "no_lead")
        .result("M", Unit.MM, "measurement over the wires")
        .result("M_minus_d2", Unit.MM, "what to take off the reading to get the pitch diameter")
        .result("w", Unit.MM, "wire diameter used")
        .result("contact", Unit.MM, "diameter at which the wire touches the flanks")
        .result("tilt", Unit.DEG, "lean of the wire")
        .result("lambda_of_thread", Unit.DEG, "lead angle at the pitch diameter")
        .result("M_no_lead", Unit.MM, "measurement if the lead angle is left out")
        .source(Sources.WIRE_CONTACT)
        .rule(ThreadCuttingReckoners::overWiresOf);
  }

  private static Answer overWiresOf(Given g) {
    Groove groove = groove(g);
    OverWires wires = groove.wires();
    double wire = g.number("wire", wires.bestWire(groove.d2));
    OverWires.Lie lie = wires.lie(groove.d2, wire);
    double plain = wires.withoutLead(groove.d2, wire);
    String method = g.choice("method");
    Answer answer = Answer.start();
    double over;
    switch (method) {
      case "exact" -> over = lie.over();
      case "lead_term" -> over = wires.withLeadTerm(groove.d2, wire);
      default -> over = plain;
    }
    answer =
        method.equals("no_lead")
            ? answer.with(
                "M",
                Working.check(
                    "M",
                    over,
                    Unit.MM,
                    "d2 + w*(1 + 1/sin(alpha)) - P/2/tan(alpha)",
                    Term.exact("d2", groove.d2, Unit.MM),
                    Term.exact("w", wire, Unit.MM),
                    Term.exact("alpha", groove.halfAngle, Unit.DEG),
                    Term.exact("P", groove.p, Unit.MM)))
            : answer.with("M", over);
    answer =
        answer
            .with("M_minus_d2", over - groove.d2)
            .with("w", wire)
            .with("contact", lie.contactDiameter())
            .with("tilt", lie.tilt())
            .with("lambda_of_thread", groove.leadAngle())
            .with("M_no_lead", plain);
    boolean low = method.equals("no_lead") && groove.leadAngle() > LEAD_ANGLE_THAT_COUNTS;
    if (low) {
      answer =
          answer.caution(
              String.format(
                  Locale.ROOT,
                  "the lead angle is left out: the true reading is %.3f mm higher; do not gauge the"
                      + " screw by this figure",
                  lie.over() - plain));
    }
    return seat(g, answer, lie);
  }

  private static Answer seat(Given g, Answer answer, OverWires.Lie lie) {
    if (!GivenThread.isGiven(g)) {
      return answer;
    }
    ThreadProfile p = GivenThread.of(g).profile();
    Answer said = answer;
    if (lie.over() <= p.d()) {
      said = said.caution("the wire lies below the crest; take a thicker wire");
    }
    boolean off = lie.contactDiameter() < p.d3() || lie.contactDiameter() > p.d();
    return off
        ? said.caution("the wire does not touch the flanks between core and crest; take another")
        : said;
  }

  private static Reckoner wiresPitchDiameter() {
    return wires(
            Reckoner.of(
                GROUP, "wires-pitch-diameter", "Pitch diameter from a measurement over wires"))
        .number("M", Unit.MM, "measurement over the wires")
        .optional("wire", Unit.MM, "wire diameter; the best wire for the basic size if left out")
        .result("d2_measured", Unit.MM, "pitch diameter, lead angle counted exactly")
        .result("w", Unit.MM, "wire diameter used")
        .source(Sources.WIRE_CONTACT)
        .rule(
            g -> {
              Groove groove = groove(g);
              OverWires wires = groove.wires();
              double wire = g.number("wire", wires.bestWire(groove.d2));
              return Answer.start()
                  .with("d2_measured", wires.pitchDiameter(g.number("M"), wire))
                  .with("w", wire);
            });
  }

  private static Reckoner.Draft cut(Reckoner.Draft draft) {
    return GivenThread.asked(draft)
        .optional("alpha", Unit.DEG, "half the angle of the tool; from the thread if left out")
        .optional("root_flat", Unit.MM, "width of the tool's nose; from the thread if left out")
        .optional("depth", Unit.MM, "full depth on the radius; from the thread if left out");
  }

  private static InfeedSchedule schedule(Given g) {
    if (!GivenThread.isGiven(g)) {
      if (!g.has("alpha") || !g.has("depth")) {
        throw new IllegalArgumentException(
            "missing input 'thread': give a designation, or alpha, root_flat and depth");
      }
      return new InfeedSchedule(g.number("alpha"), g.number("root_flat", 0), g.number("depth"));
    }
    ThreadDesignation t = GivenThread.of(g);
    return new InfeedSchedule(
        g.number("alpha", t.form().halfAngle()),
        g.number("root_flat", t.profile().rootFlat()),
        g.number("depth", t.profile().depth()));
  }

  private static Reckoner grooveArea() {
    return cut(Reckoner.of(GROUP, "groove-area", "Area of a thread groove at a depth"))
        .result("A", Unit.MM2, "area of the groove")
        .source(Sources.INFEED)
        .rule(
            g -> {
              InfeedSchedule s = schedule(g);
              return Answer.start()
                  .with(
                      "A",
                      Working.check(
                          "A",
                          s.area(s.depth()),
                          Unit.MM2,
                          "root_flat*depth + depth^2*tan(alpha)",
                          Term.exact("root_flat", s.nose(), Unit.MM),
                          Term.exact("depth", s.depth(), Unit.MM),
                          Term.exact("alpha", s.halfAngle(), Unit.DEG)));
            });
  }

  private static Reckoner passes() {
    return cut(Reckoner.of(
            GROUP, "thread-passes", "Passes for turning a thread with a single point"))
        .input(
            "passes",
            Input.Kind.COUNT,
            Unit.ONE,
            "number of passes; from kc and F_allow if left out",
            null,
            false)
        .number("kc", Unit.MPA, "specific cutting force at these chips", "2800")
        .number("F_allow", Unit.N, "cutting force that the lathe bears", "450")
        .choice("rule", "how the depth is shared out", "equal_area", "insert", "equal_depth")
        .choice("feed", "cross slide straight in, or top slide along the flank", "cross", "flank")
        .input(
            "pass_no",
            Input.Kind.COUNT,
            Unit.ONE,
            "one pass to look at; the last if left out",
            null,
            false)
        .count("spring", "spring passes at no feed", "2")
        .result("n", Unit.ONE, "number of passes without the spring passes")
        .result("total_passes", Unit.ONE, "number of passes with the spring passes")
        .result("depths", Unit.MM, "depth on the radius after each pass")
        .result("increments", Unit.MM, "depth on the radius added by each pass")
        .result("slide", Unit.MM, "reading of the slide that feeds, after each pass")
        .result("depth_after", Unit.MM, "depth on the radius after that pass")
        .result("area_total", Unit.MM2, "area of the full groove")
        .result("force", Unit.N, "greatest cutting force of a pass")
        .result("top_slide_angle", Unit.DEG, "setting of the top slide from the cross direction")
        .source(Sources.INFEED)
        .rule(ThreadCuttingReckoners::passesOf);
  }

  private static Answer passesOf(Given g) {
    InfeedSchedule s = schedule(g);
    int n = g.has("passes") ? g.count("passes") : s.passes(g.number("kc"), g.number("F_allow"));
    InfeedSchedule.Rule rule =
        switch (g.choice("rule")) {
          case "equal_area" -> InfeedSchedule.Rule.EQUAL_AREA;
          case "insert" -> InfeedSchedule.Rule.ROOT;
          default -> InfeedSchedule.Rule.EQUAL_DEPTH;
        };
    double[] depths = s.depths(n, rule).stream().mapToDouble(Double::doubleValue).toArray();
    int spring = g.count("spring");
    int pass = g.has("pass_no") ? g.count("pass_no") : n;
    if (spring < 0 || spring > 20 || pass < 1 || pass > n) {
      throw new IllegalArgumentException(
          "spring passes: expected 0 to 20; pass_no: expected 1 to " + n);
    }
    boolean flank = g.choice("feed").equals("flank");
    double set = flank ? Math.max(0, s.halfAngle() - Math.toRadians(0.5)) : 0;
    double[] increments = new double[n];
    double[] slide = new double[n];
    double greatest = 0;
    for (int i = 0; i < n; i++) {
      double before = i == 0 ? 0 : depths[i - 1];
      increments[i] = depths[i] - before;
      slide[i] = depths[i] / Math.cos(set);
      greatest = Math.max(greatest, s.area(depths[i]) - s.area(before));
    }
    Answer answer =
        Answer.start()
            .with("n", n)
            .with("total_passes", n + spring)
            .with("depths", depths)
            .with("increments", increments)
            .with("slide", slide)
            .with("depth_after", depths[pass - 1])
            .with("area_total", s.area(s.depth()))
            .with("force", greatest * g.number("kc"))
            .with("top_slide_angle", set);
    return s.nose() > 1.5
        ? answer.caution(
            "a form tool wider than 1.5 mm chatters: rough with a narrower grooving tool, finish"
                + " the flanks last")
        : answer;
  }

  private static Reckoner toolTip() {
    return GivenThread.asked(
            Reckoner.of(GROUP, "thread-tool", "Nose width and side relief of the threading tool"))
        .number("es", Unit.MICRON, "deviation of the screw's pitch diameter, as a positive", "0")
        .result("nose", Unit.MM, "width of the nose for full depth")
        .result("widening", Unit.MM, "part of it that the deviation asks for")
        .result("relief_leading", Unit.DEG, "least side relief of the leading flank")
        .result(
            "relief_trailing",
            Unit.DEG,
            "least side relief of the trailing flank; negative where it may lean under")
        .result("leading_side", Unit.ONE, "which side of the tool leads")
        .source(ThreadForm.TRAPEZOIDAL.source())
        .rule(
            g -> {
              ThreadDesignation t = GivenThread.of(g);
              double wider = Math.abs(g.number("es")) * Math.tan(t.form().halfAngle());
              double three = Math.toRadians(3);
              return Answer.start()
                  .with("nose", t.profile().rootFlat() + wider)
                  .with("widening", wider)
                  .with("relief_leading", t.leadAngle() + three)
                  .with("relief_trailing", three - t.leadAngle())
                  .with(
                      "leading_side",
                      t.hand() == Hand.RIGHT
                          ? "left (towards the headstock)"
                          : "right (towards the tailstock)");
            });
  }

  private static Reckoner stop() {
    return Reckoner.of(
            GROUP, "threading-stop", "Distance a threading tool runs on after the hand acts")
        .number("n", Unit.RPM, "spindle speed")
        .number("Ph", Unit.MM, "lead being cut")
        .number("t", Unit.S, "time from sight to standstill of the saddle", "0.3")
        .optional("groove", Unit.MM, "width of the undercut")
        .result("s", Unit.MM, "distance run on")
        .result("n_max", Unit.RPM, "greatest speed for the undercut")
        .source(Source.practice("reaction time of a practised hand, about 0.3 s"))
        .rule(ThreadCuttingReckoners::stopOf);
  }

  private static Answer stopOf(Given g) {
    double lead = g.number("Ph");
    double time = g.number("t");
    if (!(lead > 0) || !(time > 0) || !(g.number("n") >= 0)) {
      throw new IllegalArgumentException("n, Ph and t: expected more than 0");
    }
    Answer answer =
        Answer.start()
            .with(
                "s",
                Working.of("s", Unit.MM, "n/(2*pi)*Ph*t", g.term("n"), g.term("Ph"), g.term("t")));
    if (!g.has("groove")) {
      return answer;
    }
    double groove = g.number("groove");
    if (!(groove > 0)) {
      throw new IllegalArgumentException("groove = " + groove + " mm: expected more than 0");
    }
    double most = groove * 2 * Math.PI / (lead * time);
    answer = answer.with("n_max", most);
    return g.number("n") > most
        ? answer.caution(
            "the tool runs past the undercut into the shoulder: slow the spindle, turn it by hand,"
                + " or cut away from the shoulder")
        : answer;
  }

  private static Reckoner undercut() {
    return GivenThread.asked(
            Reckoner.of(GROUP, "trapezoidal-undercut", "Undercut of a trapezoidal or Acme screw"))
        .choice("lathe", "how the tool leaves the work", "withdrawal", "reversing")
        .result("dg", Unit.MM, "greatest diameter of the groove")
        .result("width", Unit.MM, "least width of the groove")
        .result("r", Unit.MM, "least corner radius")
        .result("area", Unit.MM2, "area that is left, the weakest section of the screw")
        .source(Source.practice("groove clear of the core, 1.5 to 2 pitches wide"))
        .rule(
            g -> {
              ThreadDesignation t = GivenThread.of(g);
              String screwClass = ThreadLimits.screwClass(t.form(), t.fit());
              String taken =
                  screwClass.isEmpty() ? ThreadLimits.screwClass(t.form(), "") : screwClass;
              double core = ThreadLimits.screw(t, taken, ThreadLimits.Widening.NONE).d3().low();
              double p = t.profile().p();
              double groove = ThreadEnd.trapezoidalGroove(p, core);
              return Answer.start()
                  .with("dg", groove)
                  .with("width", (g.choice("lathe").equals("withdrawal") ? 1.5 : 2) * p)
                  .with("r", 0.5)
                  .with("area", Math.PI / 4 * groove * groove)
                  .caution("use the groove, not the core, for stress, buckling and twist");
            });
  }
}
