package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.Arrays;
import java.util.List;

/** Single calculations on screw cutting: leads, links, limits, thread dial, banjo, lists. */
final class ThreadReckoners {

  private ThreadReckoners() {}

  static List<Reckoner> all() {
    return List.of(leadCut(), leadLink(), leadLimit(), threadDial(), banjo(), sense(), pitchList());
  }

  private static Reckoner leadCut() {
    Reckoner.Draft draft =
        Reckoner.of(TrainReckoners.GROUP, "lead-cut", "Lead a train of change gears cuts")
            .input(
                "drivers",
                fettle.mechanics.base.Input.Kind.EXACTS,
                Unit.ONE,
                "teeth of the drivers A, C, E counted from the spindle, idlers left out",
                null,
                true)
            .input(
                "driven",
                fettle.mechanics.base.Input.Kind.EXACTS,
                Unit.ONE,
                "teeth of the driven gears B, D, F",
                null,
                true);
    TrainReckoners.exact(
        draft, "P_L", Unit.MM, "axial pitch of the lead screw ('16 tpi' for an inch screw)", "1");
    draft.count("starts", "starts of the lead screw", "1");
    TrainReckoners.exact(
        draft, "i_fixed", Unit.ONE, "ratio of tumbler and stud; take it from a known line", "1");
    TrainReckoners.optionalExact(
        draft, "P_h", Unit.MM, "lead wanted ('19 tpi', 'pi' for module 1)");
    draft.number("l", Unit.MM, "length over which the error is told", "25");
    return draft
        .result("lead", Unit.MM, "lead cut")
        .result("exact", Unit.MM, "lead cut, exact")
        .result("tpi", Unit.ONE, "threads per inch")
        .result("i", Unit.ONE, "ratio of the change gears")
        .result("error", Unit.PPM, "lead cut against the lead wanted")
        .result("over_25", Unit.MICRON, "error over 25 mm")
        .result("over_l", Unit.MICRON, "error over the length")
        .source(Sources.LEAD)
        .rule(ThreadReckoners::leadCut);
  }

  private static Answer leadCut(Given g) {
    Ratio train = ThreadTrain.ratio(list(g, "drivers"), list(g, "driven"));
    Ratio screw = g.exact("P_L");
    Ratio fixed = g.exact("i_fixed");
    Teeth.positive("P_L", screw);
    Teeth.positive("i_fixed", fixed);
    Teeth.starts(g.count("starts"));
    Ratio lead = train.times(screw).times(g.count("starts")).times(fixed);
    String formula =
        "("
            + fixed.formula()
            + ")*("
            + join(g.counts("drivers"))
            + ")/("
            + join(g.counts("driven"))
            + ")*"
            + g.count("starts")
            + "*("
            + screw.formula()
            + ")";
    Answer answer =
        Answer.start()
            .with("lead", Working.check("P_h", lead.toDouble(), Unit.MM, formula))
            .with("exact", lead)
            .with("tpi", Ratio.INCH.over(lead).folded())
            .with("i", train);
    if (g.has("P_h")) {
      Ratio wanted = g.exact("P_h");
      Teeth.positive("P_h", wanted);
      double error = Deviation.relative(lead, wanted);
      answer =
          answer
              .with("error", error)
              .showing(
                  Working.of(
                      "error", Unit.PPM, "(" + lead.formula() + ")/(" + wanted.formula() + ")-1"))
              .with("over_25", error * 25)
              .with("over_l", error * Teeth.positive("l", "mm", g.number("l")));
    }
    return answer;
  }

  private static String join(int[] teeth) {
    return String.join("*", Arrays.stream(teeth).mapToObj(Integer::toString).toList());
  }

  static List<Integer> list(Given g, String name) {
    return Arrays.stream(g.counts(name)).boxed().toList();
  }

  private static Reckoner leadLink() {
    Reckoner.Draft draft =
        Reckoner.of(
                TrainReckoners.GROUP,
                "lead-link",
                "Ratio of change gears a lead needs, in lowest terms (metric-inch link)")
            .exact("P_h", Unit.MM, "lead to cut ('19 tpi', '3 mm', 'pi')")
            .exact("P_L", Unit.MM, "lead of the screw, or screw constant as '6 tpi'");
    return TrainReckoners.exact(
            draft, "i_fixed", Unit.ONE, "ratio of tumbler and stud, if not in the constant", "1")
        .result("i", Unit.ONE, "ratio needed: drivers over driven")
        .result("driver", Unit.TEETH, "numerator in lowest terms: product of the drivers")
        .result("driven", Unit.TEETH, "denominator in lowest terms: product of the driven gears")
        .result("link", Unit.ONE, "whether it needs the prime 127")
        .source(Sources.LEAD)
        .rule(
            g -> {
              Ratio needed = ThreadTrain.needed(g.exact("P_h"), g.exact("P_L"), g.exact("i_fixed"));
              Answer answer = Answer.start().with("i", needed);
              if (!needed.isRational()) {
                return answer.caution(
                    "The lead holds pi: no train is exact; use 22/7, 245/78 or 377/120 for it.");
              }
              boolean prime = divides(needed.numerator()) || divides(needed.denominator());
              return answer
                  .with("driver", new java.math.BigDecimal(needed.numerator()).doubleValue())
                  .with("driven", new java.math.BigDecimal(needed.denominator()).doubleValue())
                  .with("link", prime ? "needs a wheel of 127 teeth (or 254)" : "no 127 needed");
            });
  }

  private static boolean divides(java.math.BigInteger n) {
    return n.mod(java.math.BigInteger.valueOf(127)).signum() == 0;
  }

  private static Reckoner leadLimit() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "lead-error-limit",
            "Largest lead error a thread's tolerance class allows")
        .optional("T_d2", Unit.MICRON, "pitch diameter tolerance, from the table")
        .optional("d", Unit.MM, "nominal diameter, if the tolerance is to be computed")
        .optional("P", Unit.MM, "pitch, if the tolerance is to be computed")
        .count("grade", "tolerance grade, 3 to 9", "6")
        .number("f", Unit.ONE, "share of the tolerance the lead error may take", "0.2")
        .number("l_e", Unit.MM, "length of engagement (upper end of group N)")
        .number("beta", Unit.DEG, "half of the flank angle", "30")
        .result("limit", Unit.PPM, "largest lead error")
        .result("T_d2", Unit.MICRON, "pitch diameter tolerance used")
        .result("over_l", Unit.MICRON, "lead error over the engagement")
        .result("factor", Unit.ONE, "pitch diameter per lead error, cot(beta)")
        .source(Sources.LEAD_LIMIT)
        .rule(ThreadReckoners::leadLimit);
  }

  private static Answer leadLimit(Given g) {
    if (g.has("T_d2") == (g.has("d") && g.has("P"))) {
      throw new IllegalArgumentException("give either T_d2, or d and P");
    }
    double tolerance =
        g.has("T_d2")
            ? g.number("T_d2")
            : ThreadTrain.pitchDiameterTolerance(g.number("P"), g.number("d"), g.count("grade"));
    Term t = Term.exact("T_d2", tolerance, Unit.MICRON);
    double limit =
        ThreadTrain.errorLimit(tolerance, g.number("f"), g.number("beta"), g.number("l_e"));
    Working working =
        Working.check(
            "limit",
            limit,
            Unit.PPM,
            "f*T_d2*tan(beta)/l_e",
            g.term("f"),
            t,
            g.term("beta"),
            g.term("l_e"));
    Answer answer =
        Answer.start()
            .with("limit", working)
            .with("T_d2", tolerance)
            .with("over_l", limit * g.number("l_e"))
            .with("factor", Working.of("factor", Unit.ONE, "1/tan(beta)", g.term("beta")));
    return g.has("T_d2")
        ? answer
        : answer.caution(
            "The tolerance is computed by formula; the printed table of ISO 965-1 differs from it"
                + " by rounding in a few places.");
  }

  private static Reckoner threadDial() {
    Reckoner.Draft draft =
        Reckoner.of(
                TrainReckoners.GROUP,
                "thread-dial",
                "When the half-nuts may be closed again, and on which lines")
            .exact("P_L", Unit.MM, "pitch of the lead screw ('16 tpi' for an inch screw)")
            .exact("P_h", Unit.MM, "lead of the thread cut ('14 tpi', '1.25')")
            .count("z_w", "teeth of the dial's wheel", "16")
            .count("lines", "lines on the dial", "8");
    return draft
        .number("error", Unit.PPM, "lead error of the train", "0")
        .result("a_0", Unit.ONE, "least lead-screw threads between engagements")
        .result("usable", Unit.LINES, "number of usable lines")
        .result("which", Unit.ONE, "the usable lines, counted from 0; empty: keep the nut closed")
        .result("shift", Unit.MM, "carriage travel between engagements")
        .result("drift", Unit.MM, "lead error over that travel")
        .source(Sources.THREAD_DIAL)
        .rule(ThreadReckoners::threadDial);
  }

  private static Answer threadDial(Given g) {
    Ratio screw = g.exact("P_L");
    Ratio lead = g.exact("P_h");
    long between = ThreadDial.threadsBetween(screw, lead);
    List<Integer> lines = ThreadDial.usableLines(between, g.count("z_w"), g.count("lines"));
    double shift = between * screw.toDouble();
    double drift = Math.abs(shift * g.number("error"));
    Answer answer =
        Answer.start()
            .with("a_0", between)
            .with("usable", lines.size())
            .with("which", lines.stream().mapToDouble(Integer::doubleValue).toArray())
            .with("shift", shift)
            .with("drift", drift);
    if (between == 1) {
      answer = answer.caution("The nut may be closed anywhere.");
    }
    if (lines.isEmpty() && between > 1) {
      answer =
          answer.caution(
              "No line of this dial serves: keep the nut closed and reverse the spindle. A"
                  + " screwed-on chuck can unscrew when reversed at speed.");
    }
    if (drift >= 0.005) {
      answer =
          answer.caution(
              "The train is not exact: re-engaging would split the thread by the drift shown; keep"
                  + " the nut closed and reverse.");
    }
    return answer;
  }

  private static Reckoner banjo() {
    Reckoner.Draft draft =
        Reckoner.of(TrainReckoners.GROUP, "banjo", "Whether a four-wheel train fits the banjo")
            .count("A", "driver on S")
            .count("B", "driven on the stud")
            .count("C", "driver on the stud")
            .count("D", "driven on the lead screw");
    return banjoSizes(draft)
        .result("r_1", Unit.MM, "distance S to stud")
        .result("r_2", Unit.MM, "distance stud to lead screw")
        .result("phi", Unit.DEG, "swing of the arm from the line L-S")
        .result("fits", Unit.ONE, "1 if every rule is kept")
        .result("broken", Unit.ONE, "rules that are not kept")
        .result("C_to_S", Unit.MM, "tips of C to the axis S")
        .result("B_to_L", Unit.MM, "tips of B to the axis L")
        .source(Sources.BANJO)
        .rule(ThreadReckoners::banjo);
  }

  static Reckoner.Draft banjoSizes(Reckoner.Draft draft) {
    return draft
        .number("m", Unit.MM, "module of the wheels ('24 DP' for inch wheels)", "1")
        .number("D_SL", Unit.MM, "distance of the axes S and L", "80")
        .number("g", Unit.MM, "distance of the stud from the line S-L", "1")
        .number("s_min", Unit.MM, "nearest the slot lets a stud come to L", "30")
        .number("s_max", Unit.MM, "furthest the slot lets a stud go from L", "75")
        .number("e", Unit.MM, "air between tips and shafts", "0.5")
        .number("d_S", Unit.MM, "diameter of what stands at S", "12")
        .number("d_L", Unit.MM, "diameter of the sleeve at L", "12")
        .number("d_T", Unit.MM, "diameter of the studs (six-wheel trains)", "10");
  }

  static Banjo banjoOf(Given g) {
    Teeth.positive("m", "mm", g.number("m"));
    return new Banjo(
        g.number("D_SL"),
        g.number("g"),
        g.number("s_min"),
        g.number("s_max"),
        g.number("e"),
        g.number("d_S"),
        g.number("d_L"),
        g.number("d_T"));
  }

  private static Answer banjo(Given g) {
    for (String wheel : List.of("A", "B", "C", "D")) {
      Teeth.check(wheel, g.count(wheel));
    }
    Banjo banjo = banjoOf(g);
    List<Banjo.Rule> broken =
        banjo.broken(g.number("m"), g.count("A"), g.count("B"), g.count("C"), g.count("D"));
    Term m = g.term("m");
    Working r1 = Working.of("r_1", Unit.MM, "m*(A+B)/2", m, g.term("A"), g.term("B"));
    Working r2 = Working.of("r_2", Unit.MM, "m*(C+D)/2", m, g.term("C"), g.term("D"));
    Answer answer =
        Answer.start()
            .with("r_1", r1)
            .with("r_2", r2)
            .with("fits", broken.isEmpty() ? 1 : 0)
            .with("broken", broken.stream().map(Banjo.Rule::words).toList())
            .with(
                "C_to_S",
                Working.of("C_to_S", Unit.MM, "r_1-m*(C+2)/2", Term.of(r1), m, g.term("C")))
            .with(
                "B_to_L",
                Working.of("B_to_L", Unit.MM, "r_2-m*(B+2)/2", Term.of(r2), m, g.term("B")));
    double swing = banjo.swing(r1.value(), r2.value());
    if (!Double.isNaN(swing)) {
      answer =
          answer.with(
              "phi",
              Working.check(
                  "phi",
                  swing,
                  Unit.DEG,
                  "acos((D_SL^2+r_2^2-r_1^2)/(2*D_SL*r_2))",
                  g.term("D_SL"),
                  Term.of(r2),
                  Term.of(r1)));
    }
    return answer.caution(
        "Isolate the supply before touching the wheels; close the gear cover before starting, and"
            + " check that it still encloses this train.");
  }

  private static Reckoner sense() {
    return Reckoner.of(TrainReckoners.GROUP, "thread-hand", "Hand of the thread a train cuts")
        .count("meshes", "external meshes from spindle to lead screw, tumbler included")
        .choice("screw", "hand of the lead screw", "right", "left")
        .result("hand", Unit.ONE, "hand of the thread cut")
        .source(Sources.CHAIN)
        .rule(
            g -> {
              int meshes = g.count("meshes");
              if (meshes < 0 || meshes > 1000) {
                throw new IllegalArgumentException("meshes [-] must be 0 to 1000, found " + meshes);
              }
              boolean same = meshes % 2 == 0;
              boolean right = g.choice("screw").equals("right");
              return Answer.start()
                  .with("hand", same == right ? "right" : "left")
                  .caution("Turn the spindle by hand and look before using power.");
            });
  }

  private static Reckoner pitchList() {
    return Reckoner.of(TrainReckoners.GROUP, "thread-pitches", "Standard pitches, by list")
        .choice(
            "list",
            "which list",
            Arrays.stream(ThreadPitches.values()).map(ThreadPitches::label).toArray(String[]::new))
        .result("count", Unit.ONE, "number of pitches")
        .result("sum", Unit.ONE, "sum of the numbers as printed")
        .result("numbers", Unit.ONE, "the numbers as printed: millimetres or threads per inch")
        .result("pitches", Unit.MM, "the pitches")
        .result("list_source", Unit.ONE, "where the list comes from")
        .source(Sources.ISO_261)
        .rule(
            g -> {
              ThreadPitches list =
                  Arrays.stream(ThreadPitches.values())
                      .filter(p -> p.label().equals(g.choice("list")))
                      .findFirst()
                      .orElseThrow();
              double[] printed = list.printed().stream().mapToDouble(Ratio::toDouble).toArray();
              Ratio sum = Ratio.ZERO;
              for (Ratio n : list.printed()) {
                sum = new Ratio(sum.fraction().add(n.fraction()), 0, 0);
              }
              return Answer.start()
                  .with("count", printed.length)
                  .with("sum", sum)
                  .with("numbers", printed)
                  .with("pitches", list.leads().stream().mapToDouble(Ratio::toDouble).toArray())
                  .with("list_source", list.source().text());
            });
  }
}
