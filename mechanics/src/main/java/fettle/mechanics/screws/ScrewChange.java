package fettle.mechanics.screws;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.threads.Limits;
import fettle.mechanics.threads.ThreadDesignation;
import fettle.mechanics.threads.ThreadLimits;
import fettle.mechanics.threads.ThreadProfile;
import java.util.function.ToDoubleFunction;

/** One feed screw beside another: what the hand, the dial and the nut will notice. */
final class ScrewChange {

  private ScrewChange() {}

  static Reckoner reckoner() {
    return Reckoner.of("screws", "screw-change", "One feed screw replaced by another")
        .text("old", "thread that is there, such as M10x1")
        .text("new", "thread that is to come, such as Tr 10x2 LH")
        .number("F", Unit.N, "load along the axis", "500")
        .number("mu", Unit.ONE, "coefficient of friction in the thread", "0.15")
        .number("Ln", Unit.MM, "length of the nut", "20")
        .number("E", Unit.MPA, "modulus of elasticity of the screw", "210000")
        .number("x", Unit.MM, "length of screw that is stretched", "100")
        .result("travel", Unit.MM, "travel per turn: old, new")
        .result("travel_ratio", Unit.ONE, "travel per turn, new over old")
        .result("T_raise", Unit.NM, "moment against the load, thread alone: old, new")
        .result("T_lower", Unit.NM, "moment with the load, thread alone: old, new")
        .result("eta", Unit.ONE, "efficiency: old, new")
        .result("mu_lock", Unit.ONE, "least friction that holds: old, new")
        .result("A3", Unit.MM2, "core area: old, new")
        .result("k_screw", Unit.N_PER_MICRON, "stiffness of that length: old, new")
        .result("p", Unit.MPA, "pressure in the nut: old, new")
        .result("sliding", Unit.ONE, "flank way for each mm of travel: old, new")
        .result("play", Unit.MM, "greatest play in the usual class: old, new")
        .source(Sources.MOMENTS)
        .rule(ScrewChange::answer);
  }

  private static Answer answer(Given g) {
    ThreadDesignation before = ThreadDesignation.parse(g.text("old"));
    ThreadDesignation after = ThreadDesignation.parse(g.text("new"));
    double force = g.number("F");
    double mu = g.number("mu");
    Answer answer =
        Answer.start()
            .with("travel", both(before, after, t -> t.lead().toDouble()))
            .with("travel_ratio", after.lead().over(before.lead()).toDouble())
            .with("T_raise", both(before, after, t -> screw(t).raisingMoment(force, mu)))
            .with("T_lower", both(before, after, t -> screw(t).loweringMoment(force, mu)))
            .with("eta", both(before, after, t -> efficiency(t, mu)))
            .with("mu_lock", both(before, after, t -> screw(t).lockingFriction()))
            .with("A3", both(before, after, t -> t.profile().coreArea()))
            .with("k_screw", both(before, after, t -> stiffness(t, g.number("E"), g.number("x"))))
            .with("p", both(before, after, t -> nut(t, g.number("Ln")).pressure(force)))
            .with("sliding", both(before, after, t -> screw(t).slidingRatio()))
            .with("play", both(before, after, ScrewChange::greatestPlay));
    return cautions(answer, before, after, mu);
  }

  private static Answer cautions(
      Answer start, ThreadDesignation before, ThreadDesignation after, double mu) {
    Answer said = start;
    if (!before.lead().sameAs(after.lead())) {
      said = said.caution("the lead changes: the old dial is wrong and must be replaced");
    }
    if (before.hand() != after.hand()) {
      said = said.caution("the hand changes: the handle will work the other way round");
    }
    return mu < ScrewReckoners.SAFE_LOCKING * screw(after).lockingFriction()
        ? said.caution("the new screw may creep back under load: fit a lock")
        : said;
  }

  private static double[] both(
      ThreadDesignation before,
      ThreadDesignation after,
      ToDoubleFunction<ThreadDesignation> value) {
    return new double[] {value.applyAsDouble(before), value.applyAsDouble(after)};
  }

  private static PowerScrew screw(ThreadDesignation t) {
    return new PowerScrew(t.profile().d2(), t.lead().toDouble(), t.form().halfAngle());
  }

  private static double efficiency(ThreadDesignation t, double mu) {
    PowerScrew s = screw(t);
    return s.efficiency(1, s.raisingMoment(1, mu));
  }

  private static double stiffness(ThreadDesignation t, double elasticity, double x) {
    ThreadProfile p = t.profile();
    double mean = (p.d2() + p.d3()) / 2;
    return AxialStiffness.heldAtOneEnd(elasticity, Math.PI / 4 * mean * mean, x);
  }

  private static Nut nut(ThreadDesignation t, double length) {
    ThreadProfile p = t.profile();
    return new Nut(p.d2(), p.p(), p.engagement(), length);
  }

  private static double greatestPlay(ThreadDesignation t) {
    String screwClass = ThreadLimits.screwClass(t.form(), "");
    String nutClass = ThreadLimits.nutClass(t.form(), "");
    Limits.Screw s = ThreadLimits.screw(t, screwClass, ThreadLimits.Widening.NONE);
    Interval nut = ThreadLimits.nut(t, nutClass, ThreadLimits.Widening.NONE).d2();
    return Play.axial(nut.high(), s.d2().low(), t.form().halfAngle());
  }
}
