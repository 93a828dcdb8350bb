package fettle.mechanics.threads;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.base.WorkshopRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Single calculations on the sizes, limits and ends of threads. */
public final class ThreadReckoners {

  private static final String GROUP = "threads";

  private ThreadReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all =
        new ArrayList<>(
            List.of(
                thread(),
                limits(),
                tolerance(),
                stressArea(),
                tapDrill(),
                engagementClass(),
                threadEnd(),
                multiStart()));
    all.addAll(ThreadCuttingReckoners.all());
    return WorkshopRange.kept(all);
  }

  private static Reckoner thread() {
    return GivenThread.asked(
            Reckoner.of(GROUP, "thread", "Basic sizes of a thread from its designation"))
        .result("designation", Unit.ONE, "standard spelling")
        .result("form_name", Unit.ONE, "thread form")
        .result("hand", Unit.ONE, "right or left")
        .result("class", Unit.ONE, "tolerance class that was written, or the usual one")
        .result("d", Unit.MM, "major diameter of the screw")
        .result("P", Unit.MM, "pitch")
        .result("Ph", Unit.MM, "lead")
        .result("starts", Unit.ONE, "number of starts")
        .result("d2", Unit.MM, "pitch diameter of screw and nut")
        .result("D2", Unit.MM, "pitch diameter of the nut, the same")
        .result("d3", Unit.MM, "core diameter of the screw")
        .result("D1", Unit.MM, "minor diameter of the nut")
        .result("D4", Unit.MM, "major diameter of the nut")
        .result("H", Unit.MM, "height of the sharp triangle")
        .result("H1", Unit.MM, "depth of engagement")
        .result("h3", Unit.MM, "depth of the screw thread")
        .result("ac", Unit.MM, "crest clearance")
        .result("root_flat", Unit.MM, "groove width at the root, the width of a full-depth tool")
        .result("crest_flat", Unit.MM, "width of the crest")
        .result("alpha", Unit.DEG, "half the flank angle")
        .result("lambda", Unit.DEG, "lead angle at the pitch diameter")
        .result("As", Unit.MM2, "stress area")
        .result("A3", Unit.MM2, "core area")
        .result("listed", Unit.ONE, "whether the general plan lists this pitch")
        .source(ThreadForm.TRAPEZOIDAL.source())
        .rule(g -> basics(GivenThread.of(g)));
  }

  private static Answer basics(ThreadDesignation t) {
    ThreadProfile p = t.profile();
    Answer answer =
        Answer.start()
            .with("designation", t.text())
            .with("form_name", t.form().words())
            .with("hand", t.hand().name().toLowerCase(Locale.ROOT))
            .with("class", t.fit().isEmpty() ? ThreadLimits.usualClass(t.form()) : t.fit())
            .with("d", t.diameter())
            .with("P", t.pitch())
            .with("Ph", t.lead())
            .with("starts", t.starts())
            .with("d2", pitchDiameter(p))
            .with("D2", p.d2())
            .with("d3", core(p))
            .with("D1", p.nutMinor())
            .with("D4", p.nutMajor())
            .with("H", p.triangleHeight())
            .with("H1", p.engagement())
            .with("h3", p.depth())
            .with("ac", p.clearance())
            .with("root_flat", p.rootFlat())
            .with("crest_flat", p.crestFlat())
            .with("alpha", t.form().halfAngle())
            .with("lambda", leadAngle(p, t))
            .with("As", stress(p))
            .with("A3", p.coreArea())
            .with("listed", t.isListed() ? "yes" : "no");
    return cautions(answer, t);
  }

  private static Answer cautions(Answer answer, ThreadDesignation t) {
    Answer said = answer;
    if (!t.isListed()) {
      List<Ratio> pitches = ThreadSeries.pitches(t.form(), t.diameter());
      String usual =
          pitches.isEmpty()
              ? "; no pitch is listed for this diameter"
              : "; listed are " + String.join(", ", pitches.stream().map(Ratio::text).toList());
      said = said.caution("this pitch is not in the general plan of the form" + usual);
    }
    return t.starts() > 1
        ? said.caution("several starts: sizes follow from the pitch, travel from the lead")
        : said;
  }

  private static Working pitchDiameter(ThreadProfile p) {
    String formula =
        switch (p.form()) {
          case METRIC, UNIFIED -> "d - 3*sqrt(3)/8*P";
          case TRAPEZOIDAL, ACME -> "d - P/2";
          case WHITWORTH -> "d - 0.640327*P";
        };
    return Working.check("d2", p.d2(), Unit.MM, formula, d(p), pitch(p));
  }

  private static Working core(ThreadProfile p) {
    Term ac = Term.exact("ac", p.clearance(), Unit.MM);
    return switch (p.form()) {
      case METRIC -> Working.check("d3", p.d3(), Unit.MM, "d - 17*sqrt(3)/24*P", d(p), pitch(p));
      case UNIFIED -> Working.check("d3", p.d3(), Unit.MM, "d - 11*sqrt(3)/16*P", d(p), pitch(p));
      case TRAPEZOIDAL, ACME ->
          Working.check("d3", p.d3(), Unit.MM, "d - P - 2*ac", d(p), pitch(p), ac);
      case WHITWORTH -> Working.check("d3", p.d3(), Unit.MM, "d - 2*0.640327*P", d(p), pitch(p));
    };
  }

  private static Working stress(ThreadProfile p) {
    if (p.form() == ThreadForm.UNIFIED) {
      return Working.check("As", p.stressArea(), Unit.MM2, "pi/4*(d - 0.9743*P)^2", d(p), pitch(p));
    }
    return Working.check(
        "As",
        p.stressArea(),
        Unit.MM2,
        "pi/4*((d2 + d3)/2)^2",
        Term.exact("d2", p.d2(), Unit.MM),
        Term.exact("d3", p.d3(), Unit.MM));
  }

  private static Working leadAngle(ThreadProfile p, ThreadDesignation t) {
    return Working.check(
        "lambda",
        t.leadAngle(),
        Unit.DEG,
        "atan(Ph/(pi*d2))",
        Term.exact("Ph", t.lead().toDouble(), Unit.MM),
        Term.exact("d2", p.d2(), Unit.MM));
  }

  private static Term d(ThreadProfile p) {
    return Term.exact("d", p.d(), Unit.MM);
  }

  private static Term pitch(ThreadProfile p) {
    return Term.exact("P", p.p(), Unit.MM);
  }

  private static Reckoner limits() {
    return GivenThread.asked(
            Reckoner.of(GROUP, "thread-limits", "Limits of size of screw and nut by class"))
        .input(
            "class",
            fettle.mechanics.base.Input.Kind.TEXT,
            Unit.ONE,
            "class such as 6g, 6H/6g, 7e, 2A, 2G, medium; without it the usual pair",
            null,
            false)
        .choice("starts_widen", "widen the pitch diameter by the starts (ISO 2903)", "no", "yes")
        .result("class_screw", Unit.ONE, "class of the screw")
        .result("class_nut", Unit.ONE, "class of the nut")
        .result("d_min", Unit.MM, "least major diameter of the screw")
        .result("d_max", Unit.MM, "greatest major diameter of the screw")
        .result("d2_min", Unit.MM, "least pitch diameter of the screw")
        .result("d2_max", Unit.MM, "greatest pitch diameter of the screw")
        .result("d3_min", Unit.MM, "least core diameter of the screw")
        .result("d3_max", Unit.MM, "greatest core diameter of the screw")
        .result("D_min", Unit.MM, "least major diameter of the nut")
        .result("D2_min", Unit.MM, "least pitch diameter of the nut")
        .result("D2_max", Unit.MM, "greatest pitch diameter of the nut")
        .result("D1_min", Unit.MM, "least minor diameter of the nut")
        .result("D1_max", Unit.MM, "greatest minor diameter of the nut")
        .result("Td", Unit.MICRON, "tolerance of the screw's major diameter")
        .result("Td2", Unit.MICRON, "tolerance of the screw's pitch diameter")
        .result("TD2", Unit.MICRON, "tolerance of the nut's pitch diameter")
        .result("TD1", Unit.MICRON, "tolerance of the nut's minor diameter")
        .result("wire", Unit.MM, "best wire at the middle of the screw's pitch diameter")
        .result("M_min", Unit.MM, "over-wires reading at d2 min, lead angle counted")
        .result("M_max", Unit.MM, "over-wires reading at d2 max, lead angle counted")
        .result("play_min", Unit.MM, "least axial play of screw in nut")
        .result("play_max", Unit.MM, "greatest axial play of screw in nut")
        .source(Sources.ISO_965)
        .rule(ThreadReckoners::limitsOf);
  }

  private static Answer limitsOf(Given g) {
    ThreadDesignation t = GivenThread.of(g);
    String fit = g.has("class") ? g.text("class") : t.fit();
    ThreadLimits.Widening widening =
        g.choice("starts_widen").equals("yes")
            ? ThreadLimits.Widening.BY_STARTS
            : ThreadLimits.Widening.NONE;
    String screwClass = ThreadLimits.screwClass(t.form(), fit);
    String nutClass = ThreadLimits.nutClass(t.form(), fit);
    Answer answer = Answer.start();
    Limits.Screw screw = null;
    Limits.Nut nut = null;
    if (!screwClass.isEmpty() && !screwClass.equalsIgnoreCase("normal")) {
      screw = ThreadLimits.screw(t, screwClass, widening);
      answer = screw(answer.with("class_screw", screwClass), t, screw);
    }
    boolean screwOnly = t.form() == ThreadForm.WHITWORTH && nutClass.equalsIgnoreCase("close");
    if (!nutClass.isEmpty() && !screwOnly) {
      nut = ThreadLimits.nut(t, nutClass, widening);
      answer = nut(answer.with("class_nut", nutClass), nut);
    }
    if (screw != null && nut != null) {
      double tangent = Math.tan(t.form().halfAngle());
      answer =
          answer
              .with("play_min", (nut.d2().low() - screw.d2().high()) * tangent)
              .with("play_max", (nut.d2().high() - screw.d2().low()) * tangent);
    }
    return limitCautions(answer, t);
  }

  private static Answer screw(Answer answer, ThreadDesignation t, Limits.Screw s) {
    OverWires wires = new OverWires(t.form().halfAngle(), t.profile().p(), t.lead().toDouble());
    double wire = wires.bestWire(s.d2().middle());
    return answer
        .with("d_min", s.d().low())
        .with("d_max", s.d().high())
        .with("d2_min", s.d2().low())
        .with("d2_max", s.d2().high())
        .with("d3_min", s.d3().low())
        .with("d3_max", s.d3().high())
        .with("Td", s.d().width())
        .with("Td2", s.d2().width())
        .with("wire", wire)
        .with("M_min", wires.lie(s.d2().low(), wire).over())
        .with("M_max", wires.lie(s.d2().high(), wire).over());
  }

  private static Answer nut(Answer answer, Limits.Nut n) {
    return answer
        .with("D_min", n.majorMin())
        .with("D2_min", n.d2().low())
        .with("D2_max", n.d2().high())
        .with("D1_min", n.d1().low())
        .with("D1_max", n.d1().high())
        .with("TD2", n.d2().width())
        .with("TD1", n.d1().width());
  }

  private static Answer limitCautions(Answer answer, ThreadDesignation t) {
    Answer said = answer;
    if (!ThreadLimits.listsPitch(t.form(), t.profile().p())) {
      said = said.caution("the standard's tables do not list this pitch; taken by its formulas");
    }
    if (t.form() == ThreadForm.TRAPEZOIDAL || t.form() == ThreadForm.ACME) {
      said =
          said.caution(
              "the class settles the fit only, not the lead; for a measuring slide cut the screw"
                  + " first and fit the nut to it");
    }
    return t.form() == ThreadForm.WHITWORTH
        ? said.caution("Whitworth tolerances are taken by formula from memory; check the standard")
        : said;
  }

  private static Reckoner tolerance() {
    return GivenThread.asked(
            Reckoner.of(GROUP, "thread-tolerance", "Tolerances of a thread by grade or class"))
        .input(
            "grade",
            fettle.mechanics.base.Input.Kind.COUNT,
            Unit.ONE,
            "tolerance grade 3 to 9 of a metric or trapezoidal thread",
            null,
            false)
        .input(
            "class",
            fettle.mechanics.base.Input.Kind.TEXT,
            Unit.ONE,
            "class instead of a grade, such as 6g, 2A, 2G, medium",
            null,
            false)
        .optional("LE", Unit.MM, "length of engagement of a Unified thread")
        .result("Td", Unit.MICRON, "screw, major diameter")
        .result("Td2", Unit.MICRON, "screw, pitch diameter")
        .result("Td3", Unit.MICRON, "screw, core diameter (trapezoidal)")
        .result("TD2", Unit.MICRON, "nut, pitch diameter")
        .result("TD1", Unit.MICRON, "nut, minor diameter")
        .result("es", Unit.MICRON, "upper deviation of the screw, 0 or negative")
        .result("EI", Unit.MICRON, "lower deviation of the nut, 0 or positive")
        .result("allowance", Unit.MICRON, "clearance kept by the screw of an inch thread")
        .source(Sources.ISO_965)
        .rule(ThreadTolerances::answer);
  }

  private static Reckoner stressArea() {
    return GivenThread.asked(
            Reckoner.of(GROUP, "stress-area", "Stress area and core area of a screw thread"))
        .result("As", Unit.MM2, "tensile stress area")
        .result("A3", Unit.MM2, "core area")
        .result("d2", Unit.MM, "pitch diameter")
        .result("d3", Unit.MM, "core diameter")
        .source(Sources.ISO_898)
        .rule(
            g -> {
              ThreadProfile p = GivenThread.of(g).profile();
              return Answer.start()
                  .with("As", stress(p))
                  .with("A3", p.coreArea())
                  .with("d2", pitchDiameter(p))
                  .with("d3", core(p));
            });
  }

  private static Reckoner tapDrill() {
    return GivenThread.asked(
            Reckoner.of(GROUP, "tap-drill", "Drill or bore before threading a nut"))
        .optional("drill", Unit.MM, "drill or bore at hand")
        .result("drill_cutting", Unit.MM, "drill for a cutting tap, d - P")
        .result("drill_forming", Unit.MM, "drill for a forming tap, about d - P/2")
        .result("bore", Unit.MM, "bore for a thread turned on the lathe: the middle of D1")
        .result("D1_min", Unit.MM, "least minor diameter in the usual class")
        .result("D1_max", Unit.MM, "greatest minor diameter in the usual class")
        .result("height", Unit.PERCENT, "share of full thread height with that drill")
        .result("fits", Unit.ONE, "whether the drill lands within D1")
        .source(Sources.TAPPING)
        .rule(ThreadReckoners::tapDrillOf);
  }

  private static Answer tapDrillOf(Given g) {
    ThreadDesignation t = GivenThread.of(g);
    ThreadProfile p = t.profile();
    String nutClass = ThreadLimits.nutClass(t.form(), t.fit());
    if (nutClass.isEmpty()) {
      nutClass = ThreadLimits.nutClass(t.form(), "");
    }
    Interval bore = ThreadLimits.nut(t, nutClass, ThreadLimits.Widening.NONE).d1();
    double drill = g.number("drill", TappingSize.cutting(p.d(), p.p()));
    double share = TappingSize.heightShare(p, drill);
    if (!(drill > 0) || !(drill < p.d())) {
      throw new IllegalArgumentException(
          "drill = " + drill + " mm: expected more than 0 and less than d = " + p.d() + " mm");
    }
    boolean fits = bore.low() - 1e-9 <= drill && drill <= bore.high() + 1e-9;
    Answer answer =
        Answer.start()
            .with("drill_cutting", TappingSize.cutting(p.d(), p.p()))
            .with("drill_forming", TappingSize.forming(p.d(), p.p()))
            .with("bore", bore.middle())
            .with("D1_min", bore.low())
            .with("D1_max", bore.high())
            .with("height", share)
            .with("fits", fits ? "yes" : "no");
    return fits
        ? answer
        : answer.caution(
            drill < bore.low()
                ? "the bore is below D1 min: the tap will jam or the screw's core will rub"
                : "the bore is above D1 max: the thread is less deep than its class allows");
  }

  private static Reckoner engagementClass() {
    return GivenThread.asked(
            Reckoner.of(
                GROUP, "thread-class", "Recommended class by quality and length of engagement"))
        .number("L", Unit.MM, "length of engagement")
        .choice("quality", "quality of fit", "medium", "fine", "coarse")
        .result("group", Unit.ONE, "group of engagement: S, N or L")
        .result("LN_min", Unit.MM, "shortest normal length, about")
        .result("LN_max", Unit.MM, "longest normal length, about")
        .result("class_screw", Unit.ONE, "class of the screw")
        .result("class_nut", Unit.ONE, "class of the nut")
        .source(Sources.ISO_965)
        .rule(
            g -> {
              ThreadDesignation t = GivenThread.of(g);
              ThreadProfile p = t.profile();
              Interval normal = Engagement.normal(p.d(), p.p());
              Engagement.Group group = Engagement.group(p.d(), p.p(), g.number("L"));
              Engagement.Quality quality =
                  Engagement.Quality.valueOf(g.choice("quality").toUpperCase(Locale.ROOT));
              return Answer.start()
                  .with("group", group.symbol())
                  .with("LN_min", normal.low())
                  .with("LN_max", normal.high())
                  .with("class_screw", Engagement.screwClass(t.form(), quality, group))
                  .with("class_nut", Engagement.nutClass(t.form(), quality, group));
            });
  }

  private static Reckoner threadEnd() {
    return Reckoner.of(GROUP, "thread-end", "Run-out, shoulder distance and undercut")
        .number("P", Unit.MM, "pitch")
        .optional("d", Unit.MM, "nominal diameter")
        .choice("kind", "screw or nut", "external", "internal")
        .choice("series", "room it may take", "general", "short", "long")
        .result("x", Unit.MM, "longest run-out")
        .result("a", Unit.MM, "longest distance from the shoulder to the first full thread")
        .result("g1", Unit.MM, "least straight width of the undercut")
        .result("g2", Unit.MM, "greatest width of the undercut")
        .result("reduction", Unit.MM, "how much the groove is smaller than d (screw)")
        .result("enlargement", Unit.MM, "how much the groove is greater than D (nut)")
        .result("dg", Unit.MM, "diameter of the groove, if d is given")
        .result("r", Unit.MM, "corner radius, about")
        .source(Sources.ENDS)
        .rule(ThreadReckoners::endOf);
  }

  private static Answer endOf(Given g) {
    double p = g.number("P");
    ThreadEnd.Series series = ThreadEnd.Series.valueOf(g.choice("series").toUpperCase(Locale.ROOT));
    boolean screw = g.choice("kind").equals("external");
    ThreadEnd end = screw ? ThreadEnd.external(p, series) : ThreadEnd.internal(p, series);
    Answer answer =
        Answer.start()
            .with("x", end.runout())
            .with("g2", end.grooveWidth())
            .with("r", end.radius())
            .with(screw ? "reduction" : "enlargement", end.diameterChange());
    if (screw) {
      answer = answer.with("g1", end.grooveStraight()).with("a", end.shoulder());
    }
    if (g.has("d")) {
      double d = g.number("d");
      if (!(d > end.diameterChange())) {
        throw new IllegalArgumentException("d = " + d + " mm: too small for this pitch");
      }
      answer = answer.with("dg", screw ? d - end.diameterChange() : d + end.diameterChange());
    }
    return ThreadEnd.isListed(p) || !screw
        ? answer
        : answer.caution("the table has no such pitch; taken by proportion, common practice");
  }

  private static Reckoner multiStart() {
    return Reckoner.of(GROUP, "multi-start", "Indexing the starts of a thread")
        .exact("P", Unit.MM, "pitch")
        .exact("Ph", Unit.MM, "lead")
        .input(
            "teeth",
            fettle.mechanics.base.Input.Kind.COUNT,
            Unit.ONE,
            "teeth of the wheel on the spindle that serves as a divider",
            null,
            false)
        .number("error", Unit.DEG, "angle by which one division is wrong", "0")
        .result("starts", Unit.ONE, "number of starts")
        .result("angle", Unit.DEG, "turn of the work from start to start")
        .result("angles", Unit.DEG, "angles of all starts")
        .result("shift", Unit.MM, "shift of the top slide along the axis from start to start")
        .result("teeth_step", Unit.TEETH, "teeth of the dividing wheel from start to start")
        .result("axial_error", Unit.MM, "shift of one start that the wrong angle makes")
        .source(Sources.INDEXING)
        .rule(ThreadReckoners::startsOf);
  }

  private static Answer startsOf(Given g) {
    int starts = Starts.of(g.exact("Ph"), g.exact("P"));
    double lead = g.number("Ph");
    double[] angles = new double[starts];
    for (int i = 0; i < starts; i++) {
      angles[i] = 2 * Math.PI * i / starts;
    }
    Answer answer =
        Answer.start()
            .with("starts", starts)
            .with("angle", 2 * Math.PI / starts)
            .with("angles", angles)
            .with("shift", g.number("P"))
            .with(
                "axial_error",
                Working.check(
                    "axial_error",
                    Starts.axialError(lead, g.number("error")),
                    Unit.MM,
                    "Ph*error/(2*pi)",
                    g.term("Ph"),
                    g.term("error")));
    if (!g.has("teeth")) {
      return answer;
    }
    int teeth = g.count("teeth");
    if (teeth < 1) {
      throw new IllegalArgumentException("teeth = " + teeth + ": expected 1 or more");
    }
    return teeth % starts == 0
        ? answer.with("teeth_step", teeth / starts)
        : answer.caution(
            teeth + " teeth do not divide into " + starts + " starts; take another wheel");
  }
}
