package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on dials. */
final class DialReckoners {

  private DialReckoners() {}

  static List<Reckoner> all() {
    return List.of(dial(), dialError(), vernier());
  }

  private static Reckoner dial() {
    Reckoner.Draft draft =
        Reckoner.of(
                TrainReckoners.GROUP,
                "dial",
                "Divisions of a dial: the finest whose lines are far enough apart")
            .exact("T", Unit.MM, "true travel per turn, e.g. 16.5 or '21/4 pi' or '0.1 in'");
    TrainReckoners.optionalExact(draft, "T_d", Unit.MM, "travel the dial is engraved for");
    draft.number("D", Unit.MM, "diameter that carries the lines");
    TrainReckoners.optionalExact(draft, "v", Unit.MM, "value of one division, if it is settled");
    return draft
        .number("c_min", Unit.MM, "least spacing of the lines", "1")
        .choice("scale", "metric or inch divisions", "metric", "inch")
        .choice(
            "reads",
            "what the dial reads: the travel, or the diameter turned",
            "travel",
            "diameter")
        .result("v", Unit.MM, "value of one division")
        .result("N", Unit.ONE, "number of divisions")
        .result("c", Unit.MM, "spacing of the lines")
        .result("T_d", Unit.MM, "travel engraved")
        .result("error", Unit.PPM, "true travel against the one engraved")
        .result("reading", Unit.MM, "reading uncertainty, plain: half a division")
        .result("interpolated", Unit.MM, "reading uncertainty, interpolated: a fifth")
        .result("D_min", Unit.MM, "least diameter for the spacing wanted")
        .result("choices", Unit.ONE, "all division values that fit")
        .source(Sources.DIAL_PRACTICE)
        .rule(DialReckoners::dial);
  }

  private static Answer dial(Given g) {
    Ratio travel = g.exact("T").times(g.choice("reads").equals("diameter") ? 2 : 1);
    Teeth.positive("T", travel);
    Dial.Scale scale = g.choice("scale").equals("metric") ? Dial.Scale.METRIC : Dial.Scale.INCH;
    List<Dial> fitting =
        g.has("v")
            ? List.of(new Dial(engraved(g, travel, g.exact("v")), g.exact("v"), g.number("D")))
            : candidates(g, travel, scale);
    if (fitting.isEmpty()) {
      return Answer.none(
          "no division of the 1-2-5 series gives lines "
              + g.number("c_min")
              + " mm apart on "
              + g.number("D")
              + " mm; take a larger dial, a coarser division, a vernier, or gear the dial up");
    }
    return dial(g, travel, fitting);
  }

  private static List<Dial> candidates(Given g, Ratio travel, Dial.Scale scale) {
    if (g.has("T_d") || travel.isRational()) {
      return Dial.fitting(
          g.has("T_d") ? g.exact("T_d") : travel, g.number("D"), g.number("c_min"), scale);
    }
    List<Dial> fitting = new ArrayList<>();
    for (Ratio v : Dial.series(scale)) {
      double number = travel.over(v).toDouble();
      if (number >= 1 && number <= Dial.MOST_DIVISIONS) {
        Dial dial = new Dial(Dial.roundedTravel(travel, v), v, g.number("D"));
        if (dial.spacing() >= g.number("c_min")) {
          fitting.add(dial);
        }
      }
    }
    return fitting;
  }

  private static Ratio engraved(Given g, Ratio travel, Ratio v) {
    return g.has("T_d") ? g.exact("T_d") : Dial.roundedTravel(travel, v);
  }

  private static Answer dial(Given g, Ratio travel, List<Dial> fitting) {
    Dial dial = fitting.get(0);
    double v = dial.division().toDouble();
    double error = Deviation.relative(travel, dial.travel());
    Term vTerm = Term.exact("v", v, Unit.MM);
    Working number =
        Working.of(
            "N", Unit.ONE, "T_d/v", Term.exact("T_d", dial.travel().toDouble(), Unit.MM), vTerm);
    Working spacing =
        Working.check("c", dial.spacing(), Unit.MM, "pi*D/N", g.term("D"), Term.of(number));
    Answer answer =
        Answer.start()
            .with("v", v)
            .with("N", number)
            .with("c", spacing)
            .with("T_d", dial.travel().folded())
            .with("error", error)
            .with("reading", Working.of("reading", Unit.MM, "v/2", vTerm))
            .with("interpolated", Working.of("interpolated", Unit.MM, "v/5", vTerm))
            .with("D_min", dial.diameterFor(g.number("c_min")))
            .with("choices", fitting.stream().map(DialReckoners::line).toList());
    if (dial.spacing() < 0.8) {
      answer = answer.caution("Lines closer than 0.8 mm cannot be read (common practice).");
    }
    if (error != 0) {
      answer =
          answer.caution(
              "The dial is cut for a rounded travel; it is the length of the move since the last"
                  + " zero that counts. Never cut a short last division.");
    }
    return answer;
  }

  private static String line(Dial d) {
    return d.division().decimal(4)
        + " mm, "
        + d.divisions()
        + " divisions, lines "
        + fettle.mechanics.base.Numbers.fixed(d.spacing(), 3)
        + " mm apart";
  }

  private static Reckoner dialError() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "dial-error",
            "Error of a dial engraved for a rounded travel per turn")
        .exact("T", Unit.MM, "true travel per turn")
        .exact("T_d", Unit.MM, "travel per turn the dial is engraved for")
        .number("s", Unit.MM, "travel read from the dial", "100")
        .number("e_lim", Unit.MM, "largest error allowed", "0.02")
        .result("e", Unit.MM, "slide position minus reading")
        .result("error", Unit.PPM, "true travel against the one engraved")
        .result("s_max", Unit.MM, "longest move within the limit; left out if the dial is true")
        .source(Sources.DIAL_ERROR)
        .rule(DialReckoners::dialError);
  }

  private static Answer dialError(Given g) {
    Ratio travel = g.exact("T");
    Ratio engraved = g.exact("T_d");
    Teeth.positive("T", travel);
    Teeth.positive("T_d", engraved);
    double relative = Deviation.relative(travel, engraved);
    String quotient = "(" + travel.formula() + ")/(" + engraved.formula() + ")";
    Answer answer =
        Answer.start()
            .with("e", Working.of("e", Unit.MM, "s*(" + quotient + "-1)", g.term("s")))
            .with("error", relative);
    if (relative == 0) {
      return answer;
    }
    double longest = Dial.longestMove(travel.toDouble(), engraved.toDouble(), g.number("e_lim"));
    return Double.isFinite(longest) ? answer.with("s_max", longest) : answer;
  }

  private static Reckoner vernier() {
    Reckoner.Draft draft =
        Reckoner.of(
                TrainReckoners.GROUP,
                "vernier",
                "Direct vernier for a dial: n divisions over n-1 of the dial's")
            .number("D", Unit.MM, "diameter that carries the lines")
            .count("N", "divisions of the dial");
    draft.input("v", Input.Kind.NUMBER, Unit.MM, "value of one division", null, true);
    return draft
        .count("n", "divisions of the vernier", "10")
        .number("noise", Unit.MM, "backlash and once-per-turn error of the slide", "0")
        .result("step", Unit.MM, "what the vernier reads to")
        .result("arc", Unit.MM, "length of the vernier's scale along the rim")
        .result("c", Unit.MM, "spacing of the dial's lines")
        .result("difference", Unit.MM, "difference of the two spacings, c/n")
        .result("reading", Unit.MM, "reading uncertainty, v/(2n)")
        .source(Sources.DIAL_PRACTICE)
        .rule(DialReckoners::vernier);
  }

  private static Answer vernier(Given g) {
    int divisions = g.count("N");
    int n = g.count("n");
    if (divisions < 2 || divisions > Dial.MOST_DIVISIONS || n < 2 || n > divisions) {
      throw new IllegalArgumentException(
          "a vernier needs 2 or more divisions and no more than the dial has; found n = "
              + n
              + ", N = "
              + divisions);
    }
    Teeth.positive("D", "mm", g.number("D"));
    Teeth.positive("v", "mm", g.number("v"));
    Working spacing = Working.of("c", Unit.MM, "pi*D/N", g.term("D"), g.term("N"));
    Working step = Working.of("step", Unit.MM, "v/n", g.term("v"), g.term("n"));
    Answer answer =
        Answer.start()
            .with("step", step)
            .with("c", spacing)
            .with("arc", Working.of("arc", Unit.MM, "(n-1)*c", g.term("n"), Term.of(spacing)))
            .with(
                "difference",
                Working.of("difference", Unit.MM, "c/n", Term.of(spacing), g.term("n")))
            .with("reading", Working.of("reading", Unit.MM, "v/(2*n)", g.term("v"), g.term("n")));
    if (spacing.value() / n < 0.1) {
      answer =
          answer.caution(
              "The lines differ by less than 0.1 mm: the eye cannot tell which coincide.");
    }
    if (g.number("noise") > 3 * step.value()) {
      answer =
          answer.caution(
              "Backlash and once-per-turn error exceed three steps: the vernier displays noise.");
    }
    return answer;
  }
}
