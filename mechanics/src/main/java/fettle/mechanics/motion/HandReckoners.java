package fettle.mechanics.motion;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** What is left of a gap, and what hands want of it. */
final class HandReckoners {

  private static final String GROUP = "clearance";

  private HandReckoners() {}

  static List<Reckoner> all() {
    return List.of(gapLeft(), handComfort());
  }

  private static Reckoner gapLeft() {
    return Reckoner.of(
            GROUP, "gap-left", "What is left of a gap when parts and play take their share")
        .number("gap", Unit.MM, "least gap of the drawing")
        .number("tolerance", Unit.MM, "tolerances of the parts along the way, summed", "0")
        .number("play", Unit.MM, "backlash and play", "0")
        .number("deflection", Unit.MM, "bending under load", "0")
        .number("thermal", Unit.MM, "growth with warmth", "0")
        .number("excess", Unit.MM, "by how much parts may stand out of their drawn envelopes", "0")
        .result("left", Unit.MM, "gap that is left; not positive if the parts can touch")
        .source(Sources.ALLOWANCE)
        .rule(
            g -> {
              double gap = g.number("gap");
              double t = Bound.notNegative("tolerance", g.number("tolerance"), "mm");
              double p = Bound.notNegative("play", g.number("play"), "mm");
              double d = Bound.notNegative("deflection", g.number("deflection"), "mm");
              double w = Bound.notNegative("thermal", g.number("thermal"), "mm");
              double e = Bound.notNegative("excess", g.number("excess"), "mm");
              Working left =
                  Working.of(
                      "left",
                      Unit.MM,
                      "gap - t - p - d - w - e",
                      Term.exact("gap", gap, Unit.MM),
                      Term.exact("e", e, Unit.MM),
                      Term.exact("t", t, Unit.MM),
                      Term.exact("p", p, Unit.MM),
                      Term.exact("d", d, Unit.MM),
                      Term.exact("w", w, Unit.MM));
              Answer answer = Answer.start().with("left", left);
              return left.value() > 0
                  ? answer
                  : answer.caution("nothing is left: the parts can touch in the worst case");
            });
  }

  private static Reckoner handComfort() {
    return Reckoner.of(GROUP, "hand-comfort", "Room a hand wants at a control")
        .choice("control", "what the hand uses", ComfortGap.words().toArray(new String[0]))
        .optional("gap", Unit.MM, "the gap there is, to be judged")
        .result("least", Unit.MM, "least gap")
        .result("wanted", Unit.MM, "comfortable gap")
        .result("verdict", Unit.ONE, "roomy, tight or barks knuckles; if a gap was given")
        .source(ComfortGap.SOURCE)
        .rule(
            g -> {
              ComfortGap control = ComfortGap.of(g.choice("control"));
              Answer answer =
                  Answer.start().with("least", control.least()).with("wanted", control.wanted());
              double gap = g.number("gap", Double.POSITIVE_INFINITY);
              if (gap == Double.POSITIVE_INFINITY) {
                return answer;
              }
              String verdict =
                  gap >= control.wanted()
                      ? "roomy"
                      : gap >= control.least() ? "tight" : "barks knuckles";
              return answer
                  .with("verdict", verdict)
                  .caution(
                      "Comfort only: what keeps a hand from being crushed is under safe-gap and"
                          + " safety-distance.");
            });
  }
}
