package fettle.mechanics.clamps;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on the force that holds a slide or tailstock. */
final class HoldingReckoners {

  static final String SAFETY =
      "a clamp that slips throws the work or the tool: check it by a pull before cutting, stand out"
          + " of line, and keep hands off moving parts";

  private HoldingReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        clampForce(),
        holdingCapacity(),
        clampTipping(),
        faceClamp(),
        drillThrust(),
        clampPlate(),
        heightChange());
  }

  private static Reckoner.Draft guide(Reckoner.Draft draft) {
    return draft
        .number("safety", Unit.ONE, "safety against slip, 1.5 to 2", "1.5")
        .number("mu", Unit.ONE, "friction: iron on iron oily 0.10 to 0.15, clean to 0.20", "0.15")
        .choice("guide", "what it is clamped on", "flat", "vee", "vee-and-flat")
        .number("vee_angle", Unit.DEG, "included angle of the V", "90")
        .number("lift", Unit.N, "force that lifts it", "0")
        .number("weight", Unit.N, "weight that presses it down", "0");
  }

  private static Guide guide(Given g) {
    return switch (g.choice("guide")) {
      case "vee" -> Guide.VEE;
      case "vee-and-flat" -> Guide.VEE_AND_FLAT;
      default -> Guide.FLAT;
    };
  }

  private static double lifting(Given g) {
    return Bound.notNegative("lift", g.number("lift"), "N")
        - Bound.notNegative("weight", g.number("weight"), "N");
  }

  private static Reckoner clampForce() {
    return guide(
            Reckoner.of(
                    "clamps", "clamp-force", "Clamping force needed against a load on the guide")
                .number("thrust", Unit.N, "load along the guide: cutting, drilling, parting")
                .number("side", Unit.N, "load across it that friction must take too", "0"))
        .optional("clamp", Unit.N, "clamping force at hand, to compare")
        .result("force", Unit.N, "clamping force needed")
        .result("gain", Unit.ONE, "sum of the normals over the clamping force")
        .result("safety_found", Unit.ONE, "safety of the force at hand")
        .source(Sources.FRICTION)
        .rule(HoldingReckoners::needed);
  }

  private static Answer needed(Given g) {
    Guide guide = guide(g);
    Bound.notNegative("thrust", g.number("thrust"), "N");
    Bound.notNegative("side", g.number("side"), "N");
    double safety = Bound.within("safety", g.number("safety"), 1, 10, "");
    double mu = Bound.gripping("mu", g.number("mu"));
    double gain = guide.gain(g.number("vee_angle"));
    double along = Math.hypot(g.number("thrust"), g.number("side"));
    Working force =
        Working.check(
            "N",
            guide.clampForce(along, safety, mu, g.number("vee_angle"), lifting(g)),
            Unit.N,
            "max(0, safety*sqrt(thrust^2 + side^2)/(mu*gain) + lift - weight)",
            g.term("safety"),
            g.term("thrust"),
            g.term("side"),
            g.term("mu"),
            Term.exact("gain", gain),
            g.term("lift"),
            g.term("weight"));
    Answer answer = Answer.start().with("force", force).with("gain", gain).caution(SAFETY);
    if (!g.has("clamp") || along == 0) {
      return answer;
    }
    double clamp = Bound.notNegative("clamp", g.number("clamp"), "N");
    double found = guide.held(clamp, 1, mu, g.number("vee_angle"), lifting(g)) / along;
    answer = answer.with("safety_found", found);
    return found >= 1.5
        ? answer
        : answer.caution(
            "the force at hand slips or nearly so: drill a pilot hole (about half the thrust), add"
                + " a second clamp or a stop (W-CLAMP-SLIP)");
  }

  private static Reckoner holdingCapacity() {
    return guide(
            Reckoner.of("clamps", "holding-capacity", "Load along the guide that a clamp holds")
                .number("clamp", Unit.N, "clamping force"))
        .result("held", Unit.N, "load held with the safety")
        .result("slip", Unit.N, "load at which it slips")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              Guide guide = guide(g);
              double clamp = Bound.notNegative("clamp", g.number("clamp"), "N");
              double safety = Bound.within("safety", g.number("safety"), 1, 10, "");
              double mu = Bound.friction("mu", g.number("mu"));
              double angle = g.number("vee_angle");
              return Answer.start()
                  .with(
                      "held",
                      Working.check(
                          "F",
                          guide.held(clamp, safety, mu, angle, lifting(g)),
                          Unit.N,
                          "max(0, mu*gain*(clamp - lift + weight)/safety)",
                          g.term("mu"),
                          Term.exact("gain", guide.gain(angle)),
                          g.term("clamp"),
                          g.term("lift"),
                          g.term("weight"),
                          g.term("safety")))
                  .with("slip", guide.held(clamp, 1, mu, angle, lifting(g)))
                  .caution(SAFETY);
            });
  }

  private static Reckoner clampTipping() {
    return Reckoner.of("clamps", "clamp-tipping", "Clamping force against tipping over an edge")
        .number("F", Unit.N, "force that tips, such as a parting or cutting force")
        .number("arm", Unit.MM, "distance of its line from the tipping edge")
        .number("clamp_arm", Unit.MM, "distance of the clamp from the tipping edge")
        .number("weight", Unit.N, "weight that resists", "0")
        .number("weight_arm", Unit.MM, "distance of the weight from the tipping edge", "0")
        .number("safety", Unit.ONE, "safety against tipping, 1.5 to 2", "1.5")
        .result("force", Unit.N, "clamping force needed")
        .source(Sources.TIPPING)
        .rule(
            g -> {
              for (String name : List.of("F", "weight")) {
                Bound.notNegative(name, g.number(name), "N");
              }
              Bound.notNegative("arm", g.number("arm"), "mm");
              Bound.notNegative("weight_arm", g.number("weight_arm"), "mm");
              Bound.within("clamp_arm", g.number("clamp_arm"), 1e-3, 1e6, "mm");
              Bound.within("safety", g.number("safety"), 1, 10, "");
              return Answer.start()
                  .with(
                      "force",
                      Working.of(
                          "N",
                          Unit.N,
                          "max(0, (safety*F*arm - weight*weight_arm)/clamp_arm)",
                          g.term("safety"),
                          g.term("F"),
                          g.term("arm"),
                          g.term("weight"),
                          g.term("weight_arm"),
                          g.term("clamp_arm")))
                  .caution(SAFETY);
            });
  }

  private static Reckoner faceClamp() {
    return Reckoner.of(
            "clamps", "face-clamp", "Torque held by a ring face clamped flat: swivels, dials")
        .number("N", Unit.N, "clamping force")
        .number("mu", Unit.ONE, "friction of the faces", "0.15")
        .number("Do", Unit.MM, "outside diameter of the face")
        .number("Di", Unit.MM, "inside diameter of the face", "0")
        .result("torque", Unit.NM, "torque at which it turns, pressure even over the face")
        .result("torque_worn", Unit.NM, "the same when worn in")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              Bound.notNegative("N", g.number("N"), "N");
              Bound.friction("mu", g.number("mu"));
              double outer = Bound.positive("Do", g.number("Do"), "mm");
              Bound.within("Di", g.number("Di"), 0, 0.9999 * outer, "mm");
              Term[] terms = {g.term("mu"), g.term("N"), g.term("Do"), g.term("Di")};
              return Answer.start()
                  .with(
                      "torque",
                      Working.of("T", Unit.NM, "mu*N*(Do^3 - Di^3)/(3*(Do^2 - Di^2))", terms))
                  .with("torque_worn", Working.of("T_worn", Unit.NM, "mu*N*(Do + Di)/4", terms))
                  .caution(SAFETY);
            });
  }

  private static Reckoner drillThrust() {
    return Reckoner.of("clamps", "drill-thrust-estimate", "Thrust of a twist drill, estimate")
        .number("d", Unit.MM, "drill diameter")
        .number("f", Unit.MM, "feed per turn")
        .number("kc", Unit.MPA, "specific cutting force; steel about 2400", "2400")
        .number("point", Unit.DEG, "point angle", "118")
        .choice("drill", "state of the drill", "sharp", "dull", "piloted")
        .result("F", Unit.N, "thrust")
        .source(Sources.DRILL)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              Bound.positive("f", g.number("f"), "mm");
              Bound.positive("kc", g.number("kc"), "MPa");
              Bound.angle("point", g.number("point"), 60, 180);
              double state =
                  switch (g.choice("drill")) {
                    case "dull" -> 1.5;
                    case "piloted" -> 0.5;
                    default -> 1;
                  };
              return Answer.start()
                  .with(
                      "F",
                      Working.of(
                          "F",
                          Unit.N,
                          "state*0.63*kc*f*d/2*sin(point/2)",
                          Term.exact("state", state),
                          g.term("kc"),
                          g.term("f"),
                          g.term("d"),
                          g.term("point")))
                  .caution(
                      "an estimate within about 30 %; the chisel edge makes about half of it, so a"
                          + " pilot hole halves it");
            });
  }

  private static Reckoner clampPlate() {
    return Reckoner.of("clamps", "clamp-plate", "How a clamp plate shares the force of its bolt")
        .number("F", Unit.N, "force of the bolt")
        .number("a", Unit.MM, "distance from bolt to work")
        .number("b", Unit.MM, "distance from bolt to heel")
        .result("work", Unit.N, "force on the work")
        .result("heel", Unit.N, "force on the heel")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              Bound.notNegative("F", g.number("F"), "N");
              Bound.notNegative("a", g.number("a"), "mm");
              Bound.notNegative("b", g.number("b"), "mm");
              Bound.positive("a + b", g.number("a") + g.number("b"), "mm");
              Term[] terms = {g.term("F"), g.term("a"), g.term("b")};
              Answer answer =
                  Answer.start()
                      .with("work", Working.of("work", Unit.N, "F*b/(a + b)", terms))
                      .with("heel", Working.of("heel", Unit.N, "F*a/(a + b)", terms));
              return g.number("a") > g.number("b")
                  ? answer.caution("more force goes to the heel than to the work: move the bolt")
                  : answer;
            });
  }

  private static Reckoner heightChange() {
    return Reckoner.of("clamps", "clamp-shift", "How far a clamp moves what it clamps")
        .number("F", Unit.N, "clamping force")
        .number("k", Unit.N_PER_MICRON, "stiffness of what gives way")
        .result("shift", Unit.MICRON, "movement, e.g. change of centre height")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              Bound.notNegative("F", g.number("F"), "N");
              Bound.positive("k", g.number("k"), "N/mm");
              return Answer.start()
                  .with("shift", Working.of("x", Unit.MICRON, "F/k", g.term("F"), g.term("k")));
            });
  }
}
