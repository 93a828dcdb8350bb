package fettle.mechanics.clamps;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on gibs, dovetails and set-over screws. */
final class GibReckoners {

  private GibReckoners() {}

  static List<Reckoner> all() {
    return List.of(drag(), taperGib(), flatGib(), setOver(), setOverScrew());
  }

  private static Reckoner drag() {
    return Reckoner.of("clamps", "gib-drag", "Drag of the gib of a dovetail slide")
        .optional("gib_force", Unit.N, "side force of all gib screws")
        .optional("target_drag", Unit.N, "drag wanted instead; 5 to 15 N on small slides")
        .number("mu", Unit.ONE, "friction of the ways", "0.15")
        .number("flank_angle", Unit.DEG, "angle of the flanks to the base", "60")
        .number("weight", Unit.N, "weight and other load on the base", "0")
        .result("drag", Unit.N, "drag along the slide")
        .result("gib_force", Unit.N, "side force of all gib screws")
        .result("seating", Unit.N, "force that pulls the slide down on its base")
        .source(Sources.GIB)
        .rule(GibReckoners::drag);
  }

  private static Answer drag(Given g) {
    if (g.has("gib_force") == g.has("target_drag")) {
      throw new IllegalArgumentException("give either gib_force or target_drag");
    }
    Dovetail dovetail = new Dovetail(g.number("flank_angle"));
    double mu = Bound.gripping("mu", g.number("mu"));
    double weight = Bound.notNegative("weight", g.number("weight"), "N");
    double force =
        g.has("gib_force")
            ? Bound.notNegative("gib_force", g.number("gib_force"), "N")
            : dovetail.gibForce(
                Bound.within("target_drag", g.number("target_drag"), mu * weight, 1e9, "N")
                    - mu * weight,
                mu);
    Working drag =
        Working.check(
            "drag",
            dovetail.drag(force, mu) + mu * weight,
            Unit.N,
            "2*mu*F*(1 + cos(flank_angle))/sin(flank_angle) + mu*weight",
            g.term("mu"),
            Term.exact("F", force, Unit.N),
            g.term("flank_angle"),
            g.term("weight"));
    Answer answer =
        Answer.start()
            .with("drag", drag)
            .with("gib_force", force)
            .with("seating", dovetail.seating(force));
    return drag.value() > 15
        ? answer.caution("more than the 5 to 15 N a small slide is set to (common practice)")
        : answer;
  }

  private static Reckoner taperGib() {
    return Reckoner.of("clamps", "taper-gib", "Gap a taper gib takes up")
        .number("shift", Unit.MM, "how far the gib is pushed in")
        .number("taper", Unit.SLOPE, "taper, 0.01 for 1:100", "0.01")
        .number("mu", Unit.ONE, "least friction", "0.1")
        .result("gap", Unit.MM, "gap taken up")
        .result("angle", Unit.DEG, "angle of the taper")
        .result("self_locking", Unit.ONE, "1 if it does not creep out by itself, 0 if it does")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              Bound.notNegative("shift", g.number("shift"), "mm");
              double taper = Bound.within("taper", g.number("taper"), 1e-5, 1, "");
              double mu = Bound.friction("mu", g.number("mu"));
              boolean locks = Math.atan(taper) <= 2 * Math.atan(mu);
              return Answer.start()
                  .with(
                      "gap",
                      Working.of("gap", Unit.MM, "shift*taper", g.term("shift"), g.term("taper")))
                  .with("angle", Math.atan(taper))
                  .with("self_locking", locks ? 1 : 0)
                  .caution(
                      "the slide drags it along: a taper gib needs end stops both ways"
                          + " (common practice)");
            });
  }

  private static Reckoner flatGib() {
    return Reckoner.of("clamps", "flat-gib", "Screws of a flat gib")
        .number("thickness", Unit.MM, "thickness of the gib")
        .number("length", Unit.MM, "length of the gib")
        .optional("spacing", Unit.MM, "spacing at hand, to compare")
        .result("spacing", Unit.MM, "greatest spacing, 6 times the thickness")
        .result("screws", Unit.ONE, "least number of screws, ends half a spacing in")
        .source(Sources.PRACTICE)
        .rule(
            g -> {
              Bound.positive("thickness", g.number("thickness"), "mm");
              double length = Bound.positive("length", g.number("length"), "mm");
              Working spacing = Working.of("spacing", Unit.MM, "6*thickness", g.term("thickness"));
              double screws = Math.max(2, Math.ceil(length / spacing.value() - 1e-9));
              Answer answer =
                  Answer.start()
                      .with("spacing", spacing)
                      .with("screws", screws)
                      .caution(
                          "a locking screw on the gib shifts the slide sideways by the gap: lock"
                              + " with a separate pad");
              return g.has("spacing") && g.number("spacing") > spacing.value()
                  ? answer.caution("the gib bends between the screws: set them closer")
                  : answer;
            });
  }

  private static Reckoner setOver() {
    return Reckoner.of("clamps", "taper-set-over", "Set-over of a tailstock for a taper")
        .number("L", Unit.MM, "length of the work between the centres")
        .number("D", Unit.MM, "greater diameter of the taper")
        .number("d", Unit.MM, "smaller diameter of the taper")
        .number("l", Unit.MM, "length of the taper")
        .number("P", Unit.MM, "pitch of the set-over screw", "1")
        .result("s", Unit.MM, "set-over, L sin of the half angle")
        .result("s_shop", Unit.MM, "set-over by the shop rule, L (D - d)/(2 l)")
        .result("half_angle", Unit.DEG, "half angle of the taper")
        .result("turns", Unit.TURNS, "turns of the set-over screw")
        .result("angle", Unit.DEG, "turn of the set-over screw")
        .source(Sources.SET_OVER)
        .rule(
            g -> {
              double between = Bound.positive("L", g.number("L"), "mm");
              double large = Bound.positive("D", g.number("D"), "mm");
              double small = Bound.within("d", g.number("d"), 0, large, "mm");
              double length = Bound.within("l", g.number("l"), 1e-9, between, "mm");
              Bound.positive("P", g.number("P"), "mm");
              double half = Math.atan((large - small) / (2 * length));
              Working over =
                  Working.of(
                      "s",
                      Unit.MM,
                      "L*sin(atan((D - d)/(2*l)))",
                      g.term("L"),
                      g.term("D"),
                      g.term("d"),
                      g.term("l"));
              Working turns = Working.of("turns", Unit.TURNS, "s/P", Term.of(over), g.term("P"));
              Answer answer =
                  Answer.start()
                      .with("s", over)
                      .with("s_shop", between * (large - small) / (2 * length))
                      .with("half_angle", half)
                      .with("turns", turns)
                      .with("angle", 2 * Math.PI * turns.value());
              return over.value() > 0.02 * between
                  ? answer.caution(
                      "more than 2 % of the length: the centres bear badly; use ball centres or"
                          + " the top slide (common practice)")
                  : answer;
            });
  }

  private static Reckoner setOverScrew() {
    return Reckoner.of("clamps", "set-over-screw", "Travel and force of a set-over screw")
        .number("P", Unit.MM, "pitch")
        .number("P2", Unit.MM, "second pitch of a differential screw; 0 if there is none", "0")
        .number("turn", Unit.DEG, "how far it is turned", "360")
        .number("d", Unit.MM, "nominal diameter", "6")
        .number("torque", Unit.NM, "torque on the screw", "1")
        .number("K", Unit.ONE, "torque coefficient: 0.20 dry, 0.15 oiled", "0.2")
        .result("per_turn", Unit.MM, "travel per turn")
        .result("travel", Unit.MM, "travel of that turn")
        .result("per_degree", Unit.MICRON, "travel per degree")
        .result("F", Unit.N, "push of the screw, plain screw only")
        .source(Sources.SET_OVER)
        .rule(
            g -> {
              double pitch = Bound.positive("P", g.number("P"), "mm");
              double second = Bound.notNegative("P2", g.number("P2"), "mm");
              Bound.positive("d", g.number("d"), "mm");
              Bound.notNegative("torque", g.number("torque"), "N mm");
              Bound.within("K", g.number("K"), 0.08, 0.35, "");
              if (pitch == second) {
                throw new IllegalArgumentException(
                    "P and P2 are equal: a differential screw then does not move");
              }
              Working turn = Working.of("per_turn", Unit.MM, "P - P2", g.term("P"), g.term("P2"));
              Answer answer =
                  Answer.start()
                      .with("per_turn", turn)
                      .with(
                          "travel",
                          Working.of(
                              "x", Unit.MM, "per_turn*turn/(2*pi)", Term.of(turn), g.term("turn")))
                      .with("per_degree", turn.value() / 360);
              return second > 0
                  ? answer
                  : answer.with(
                      "F",
                      Working.of(
                          "F", Unit.N, "torque/(K*d)", g.term("torque"), g.term("K"), g.term("d")));
            });
  }
}
