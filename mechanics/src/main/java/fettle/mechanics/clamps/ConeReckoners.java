package fettle.mechanics.clamps;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on taper and split clamps of dials and hubs. */
final class ConeReckoners {

  private ConeReckoners() {}

  static List<Reckoner> all() {
    return List.of(cone(), split());
  }

  private static Reckoner cone() {
    return Reckoner.of("clamps", "cone-clamp", "Taper clamp: torque, and whether it lets go")
        .number("axial", Unit.N, "axial force of nut or spring", "200")
        .number("half_angle", Unit.DEG, "half the included angle")
        .number("mu", Unit.ONE, "friction of the faces", "0.15")
        .number("mean_dia", Unit.MM, "mean diameter of the cone", "30")
        .choice("purpose", "what it is for", "any", "reset", "stay")
        .result("N", Unit.N, "normal force while closing")
        .result("torque", Unit.NM, "torque it carries")
        .result("torque_settled", Unit.NM, "torque after vibration has let it settle")
        .result("pull_off", Unit.N, "force to pull it off; negative: it comes off by itself")
        .result("pull_off_settled", Unit.N, "force to pull it off after it has settled")
        .result("self_holding", Unit.ONE, "1 if it sticks when the axial force is gone, else 0")
        .result("limit_angle", Unit.DEG, "half angle between sticking and letting go")
        .result("verdict", Unit.ONE, "what it does")
        .source(Sources.CONE)
        .rule(ConeReckoners::cone);
  }

  private static Answer cone(Given g) {
    double mu = Bound.friction("mu", g.number("mu"));
    Cone cone = new Cone(g.number("half_angle"), mu);
    double axial = Bound.notNegative("axial", g.number("axial"), "N");
    double mean = Bound.positive("mean_dia", g.number("mean_dia"), "mm");
    Working normal =
        Working.check(
            "N",
            cone.closingNormal(axial),
            Unit.N,
            "axial/(sin(half_angle) + mu*cos(half_angle))",
            g.term("axial"),
            g.term("half_angle"),
            g.term("mu"));
    Working torque =
        Working.check(
            "T",
            cone.torque(normal.value(), mean),
            Unit.NM,
            "mu*N*mean_dia/2",
            g.term("mu"),
            Term.of(normal),
            g.term("mean_dia"));
    double settled = cone.settledNormal(axial);
    Answer answer =
        Answer.start()
            .with("N", normal)
            .with("torque", torque)
            .with("torque_settled", cone.torque(settled, mean))
            .with("pull_off", cone.pullOff(normal.value()))
            .with("pull_off_settled", cone.pullOff(settled))
            .with("self_holding", cone.sticks() ? 1 : 0)
            .with("limit_angle", Math.atan(mu))
            .with(
                "verdict",
                cone.sticks()
                    ? "sticks: tan of the half angle is below the friction"
                    : "lets go: tan of the half angle is above the friction");
    if (g.choice("purpose").equals("reset") && cone.sticks()) {
      return answer.caution(
          "a dial that is to be zeroed by hand jams here, and oil hardly changes that: take 12 to"
              + " 20 degrees half angle with a spring or nut (W-TAPER-STICK, common practice)");
    }
    if (g.choice("purpose").equals("stay") && !cone.sticks()) {
      return answer.caution(
          "it will not stay by itself: take 3 to 6 degrees half angle and a jacking thread or"
              + " knock-out holes (W-TAPER-SLIP, common practice)");
    }
    return answer;
  }

  private static Reckoner split() {
    return Reckoner.of("clamps", "split-clamp", "Torque of a split hub pinched on a shaft")
        .count("bolts", "number of pinch bolts", "1")
        .number("bolt_force", Unit.N, "force of one bolt")
        .number("shaft_dia", Unit.MM, "shaft diameter")
        .number("mu", Unit.ONE, "friction on the shaft", "0.15")
        .choice("model", "how the ring bears", "uniform_pressure", "two_lines")
        .result("torque", Unit.NM, "torque at which it slips")
        .result("axial", Unit.N, "axial force at which it slips")
        .result("torque_low", Unit.NM, "torque if a stiff ring bears on two lines only")
        .source(Sources.SPLIT)
        .rule(
            g -> {
              Bound.within("bolts", g.count("bolts"), 1, 50, "");
              Bound.notNegative("bolt_force", g.number("bolt_force"), "N");
              Bound.positive("shaft_dia", g.number("shaft_dia"), "mm");
              Bound.friction("mu", g.number("mu"));
              boolean snug = g.choice("model").equals("uniform_pressure");
              Term[] terms = {
                g.term("mu"), g.term("bolts"), g.term("bolt_force"), g.term("shaft_dia")
              };
              String lines = "mu*bolts*bolt_force*shaft_dia";
              Working torque = Working.of("T", Unit.NM, (snug ? "pi/2*" : "") + lines, terms);
              return Answer.start()
                  .with("torque", torque)
                  .with("axial", 2 * torque.value() / g.number("shaft_dia"))
                  .with("torque_low", Working.of("T_low", Unit.NM, lines, terms))
                  .caution(
                      "bore at H7/g6 or better and saw the slot to leave a thin web, or the bolt"
                          + " spends its force on bending the hub; set the bolt close to the bore");
            });
  }
}
