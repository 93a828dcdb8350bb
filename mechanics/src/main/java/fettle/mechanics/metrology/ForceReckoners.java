package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.List;

/** Single calculations on stiffness by pushing, run-in, power and speed. */
final class ForceReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;
  private static final String POWER_OFF =
      "Motor isolated, chuck key out; pull square to the part, stand clear of a slipping hook.";

  private ForceReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        pushTest(),
        seriesStiffness(),
        stiffnessRatio(),
        warmUp(),
        runIn(),
        noLoadPower(),
        coastDown(),
        inertia(),
        speed());
  }

  private static Reckoner pushTest() {
    return Reckoner.of(
            GROUP, "push-test", "Stiffness, lost motion and hysteresis from a push-pull loop")
        .input(
            "readings",
            Input.Kind.ROWS,
            Unit.ONE,
            "rows: force in N, dir (1 growing, -1 falling), movement in µm",
            null,
            true)
        .optional(
            "F_least", Unit.N, "force from which the loop is straight; a third of the largest")
        .number("u_F", Unit.N, "standard uncertainty of a force", "0")
        .result("k", Unit.N_PER_MICRON, "stiffness")
        .result("u_k", Unit.N_PER_MICRON, "its standard uncertainty")
        .result("U_k", Unit.N_PER_MICRON, "its expanded uncertainty, 95 %")
        .result("compliance", Unit.MICRON_PER_N, "compliance 1/k")
        .result("G", Unit.MICRON, "lost motion")
        .result("u_G", Unit.MICRON, "its standard uncertainty")
        .result("H", Unit.MICRON, "width of the hysteresis")
        .result("u_H", Unit.MICRON, "its standard uncertainty")
        .result("friction", Unit.N, "friction force, H k/2")
        .result("s", Unit.MICRON, "scatter about the fit")
        .result("nu", Unit.ONE, "degrees of freedom")
        .result("work", Unit.J, "work lost in the loop")
        .result("loss", Unit.ONE, "loss factor, work over 2 pi times the stored energy")
        .result("set", Unit.MICRON, "movement left at the end of the loop")
        .result("bias", Unit.ONE, "factor by which the error of the forces makes k come out high")
        .result("outliers", Unit.ONE, "readings far from the fit; none is dropped")
        .source(Sources.STIFFNESS)
        .rule(ForceReckoners::pushTest);
  }

  private static Answer pushTest(Given g) {
    double[][] rows = g.rows("readings");
    Require.columns("readings", rows, 3, "force, dir, movement");
    double[] force = Require.column(rows, 0);
    double[] movement = Require.column(rows, 2);
    double most = 0;
    for (int i = 0; i < force.length; i++) {
      most = Math.max(most, Math.abs(force[i]));
      movement[i] = Unit.MICRON.toCoherent(movement[i]);
    }
    Require.positive("largest force", most);
    double least = Require.notNegative("F_least", g.number("F_least", most / 3));
    PushTest test = PushTest.of(force, Require.column(rows, 1), movement, least);
    double k = test.stiffness();
    double work = PushTest.loopArea(force, movement);
    double variance = Sample.of(force).sumOfSquares() / force.length;
    double uf = Require.notNegative("u_F", g.number("u_F"));
    double set = movement[movement.length - 1] - movement[0];
    LinearFit fit = test.fit();
    Answer answer =
        Answer.start()
            .with("k", k)
            .with("u_k", test.stiffnessUncertainty())
            .with("U_k", Quantiles.student(0.975, fit.freedom()) * test.stiffnessUncertainty())
            .with("compliance", 1 / k)
            .with("G", fit.value("G"))
            .with("u_G", fit.uncertainty("G"))
            .with("H", fit.value("H"))
            .with("u_H", fit.uncertainty("H"))
            .with("friction", fit.value("H") * k / 2)
            .with("s", fit.deviation())
            .with("nu", fit.freedom())
            .with("work", work)
            .with("loss", work / (2 * Math.PI * most * most / (2 * k)))
            .with("set", set)
            .with("bias", 1 + uf * uf / variance)
            .with("outliers", StatisticsReckoners.named(Sample.of(fit.residuals().toArray())));
    if (Math.abs(set) > 3 * fit.deviation() && force[force.length - 1] == force[0]) {
      answer =
          answer.caution(
              "The part did not come back (set): bolts slip or the first loop was still seating;"
                  + " tighten and repeat.");
    }
    return answer.caution(POWER_OFF);
  }

  private static Reckoner seriesStiffness() {
    return Reckoner.of(GROUP, "series-stiffness", "Stiffness of parts that bear one another")
        .numbers("k", Unit.N_PER_MICRON, "stiffness of each part")
        .result("total", Unit.N_PER_MICRON, "stiffness of all: 1/k is the sum of 1/k_i")
        .result("shares", Unit.PERCENT, "share of each in the movement")
        .source(Sources.STIFFNESS)
        .rule(
            g -> {
              double[] k = g.numbers("k");
              Require.atLeast("k", k.length, 1);
              double sum = 0;
              for (double one : k) {
                sum += 1 / Require.positive("k", one);
              }
              double[] shares = new double[k.length];
              for (int i = 0; i < k.length; i++) {
                shares[i] = 1 / k[i] / sum;
              }
              return Answer.start().with("total", 1 / sum).with("shares", shares);
            });
  }

  private static Reckoner stiffnessRatio() {
    return Reckoner.of(GROUP, "stiffness-ratio", "Stiffness after a change over stiffness before")
        .number("k0", Unit.N_PER_MICRON, "stiffness before")
        .number("u0", Unit.N_PER_MICRON, "its standard uncertainty")
        .number("k1", Unit.N_PER_MICRON, "stiffness after, same set-up")
        .number("u1", Unit.N_PER_MICRON, "its standard uncertainty")
        .number("predicted", Unit.ONE, "ratio foretold", "1")
        .result("ratio", Unit.ONE, "k1/k0")
        .result("u", Unit.ONE, "its standard uncertainty")
        .result("verdict", Unit.ONE, "is the ratio at least the one foretold: yes, no, cannot tell")
        .result("code", Unit.ONE, "1 yes, -1 no, 0 cannot tell")
        .source(Sources.VERDICT)
        .rule(
            g -> {
              double k0 = Require.positive("k0", g.number("k0"));
              double k1 = Require.positive("k1", g.number("k1"));
              double u0 = Require.notNegative("u0", g.number("u0"));
              double u1 = Require.notNegative("u1", g.number("u1"));
              double ratio = k1 / k0;
              double u = ratio * Math.hypot(u0 / k0, u1 / k1);
              Verdict v = Verdict.lower(ratio, u, g.number("predicted"), Verdict.GUARD);
              return Answer.start()
                  .with("ratio", ratio)
                  .with("u", u)
                  .with("verdict", v.code() > 0 ? "yes" : v.code() < 0 ? "no" : "cannot tell")
                  .with("code", v.code());
            });
  }

  private static Reckoner warmUp() {
    return Reckoner.of(GROUP, "warm-up", "Final temperature and time constant from a log")
        .numbers("x", Unit.ONE, "times from the start, in one unit")
        .numbers("y", Unit.ONE, "readings: rises, or temperatures with the start given")
        .number("start", Unit.ONE, "reading at time 0, taken off", "0")
        .optional("predicted", Unit.ONE, "final rise foretold")
        .result("b1", Unit.ONE, "final rise")
        .result("b2", Unit.ONE, "rate, one over the time constant")
        .result("tau", Unit.ONE, "time constant")
        .result("u_b1", Unit.ONE, "standard uncertainty of the final rise")
        .result("u_b2", Unit.ONE, "standard uncertainty of the rate")
        .result("u_tau", Unit.ONE, "standard uncertainty of the time constant")
        .result("U_b1", Unit.ONE, "expanded uncertainty of the final rise, 95 %")
        .result("s", Unit.ONE, "residual standard deviation")
        .result("RSS", Unit.ONE, "sum of squared residuals")
        .result("r1", Unit.ONE, "lag-1 autocorrelation of the residuals")
        .result("ratio", Unit.ONE, "final rise over the one foretold")
        .source(Sources.HEAT)
        .rule(ForceReckoners::warmUp);
  }

  private static Answer warmUp(Given g) {
    double[] x = g.numbers("x");
    double[] y = g.numbers("y");
    for (int i = 0; i < y.length; i++) {
      y[i] -= g.number("start");
    }
    WarmUp law = WarmUp.of(x, y);
    double tau = 1 / law.rate();
    int freedom = x.length - 2;
    double s = law.fit().deviation();
    double r1 = Sample.of(law.fit().residuals().toArray()).lagOne();
    Answer answer =
        Answer.start()
            .with("b1", law.finalRise())
            .with("b2", law.rate())
            .with("tau", tau)
            .with("u_b1", law.fit().uncertainty(0))
            .with("u_b2", law.fit().uncertainty(1))
            .with("u_tau", law.fit().uncertainty(1) * tau * tau)
            .with("U_b1", Quantiles.student(0.975, freedom) * law.fit().uncertainty(0))
            .with("s", s)
            .with("RSS", s * s * freedom)
            .with("r1", r1);
    if (g.has("predicted")) {
      answer =
          answer.with(
              "ratio", law.finalRise() / Require.positive("predicted", g.number("predicted")));
    }
    double longest = java.util.Arrays.stream(x).max().orElseThrow();
    if (longest < 2 * tau) {
      answer =
          answer.caution("The log is shorter than two time constants: log on before you trust it.");
    }
    return Math.abs(r1) > 2 / Math.sqrt(x.length)
        ? answer.caution(
            "The residuals follow one another: one time constant is not the whole law.")
        : answer;
  }

  private static Reckoner runIn() {
    return Reckoner.of(GROUP, "run-in", "What a run-in log calls for")
        .numbers("t", Unit.MIN, "times")
        .numbers("T", Unit.K, "temperatures at the bearing, in degrees C")
        .number("ambient", Unit.K, "temperature of the room, in degrees C")
        .result("verdict", Unit.ONE, "stop, wait or next step, with the reason")
        .result("rise", Unit.K, "highest rise over the room")
        .source(Sources.RUN_IN)
        .rule(
            g -> {
              double[] t = g.numbers("t");
              double[] temperature = g.numbers("T");
              double ambient = g.number("ambient");
              List<String> lines = WarmUp.runIn(t, temperature, ambient);
              double highest = java.util.Arrays.stream(temperature).max().orElseThrow();
              return Answer.start()
                  .with("verdict", lines)
                  .with("rise", highest - ambient)
                  .caution(
                      "Guards on, chuck empty or removed; a bearing that runs away can seize within"
                          + " minutes: stay beside it.");
            });
  }

  private static Reckoner noLoadPower() {
    return Reckoner.of(
            GROUP, "no-load-power", "Friction of the spindle from power at several speeds")
        .numbers("speed", Unit.RPM, "spindle speeds, 4 or more, best 6 up and down")
        .numbers("P", Unit.W, "power at each")
        .result("P0", Unit.W, "part that does not depend on speed")
        .result("M0", Unit.NM, "constant friction torque")
        .result("u_M0", Unit.NM, "its standard uncertainty")
        .result("c", Unit.W, "part that grows with the square of the speed, at the highest speed")
        .result("s", Unit.W, "scatter about the fit")
        .result("nu", Unit.ONE, "degrees of freedom")
        .source(Sources.SPIN)
        .rule(
            g -> {
              double[] w = g.numbers("speed");
              double[] p = g.numbers("P");
              Require.sameLength("P", p.length, w.length);
              double[][] rows = new double[w.length][];
              double top = 0;
              for (int i = 0; i < w.length; i++) {
                top = Math.max(top, Require.notNegative("speed", w[i]));
                rows[i] = new double[] {1, w[i], w[i] * w[i]};
              }
              LinearFit fit = LeastSquares.fit(List.of("P0", "M0", "c"), rows, p);
              return Answer.start()
                  .with("P0", fit.value("P0"))
                  .with("M0", fit.value("M0"))
                  .with("u_M0", fit.uncertainty("M0"))
                  .with("c", fit.value("c") * top * top)
                  .with("s", fit.deviation())
                  .with("nu", fit.freedom())
                  .caution(
                      "Guards closed, chuck empty or removed; never measure inside a live box.");
            });
  }

  private static Reckoner coastDown() {
    return Reckoner.of(GROUP, "coast-down", "Speed of a coasting spindle, J dw/dt = -(M0 + c w)")
        .number("speed", Unit.RPM, "speed at the start")
        .number("J", Unit.KG_M2, "moment of inertia")
        .number("M0", Unit.NM, "constant friction torque")
        .number("c_torque", Unit.NM, "viscous torque at the start speed", "0")
        .number("t", Unit.S, "time")
        .result("speed_t", Unit.RPM, "speed after that time, 0 once it stands")
        .result("stop", Unit.S, "time until it stands")
        .source(Sources.SPIN)
        .rule(
            g -> {
              double w0 = Require.positive("speed", g.number("speed"));
              double j = Require.positive("J", g.number("J"));
              double m0 = Require.positive("M0", g.number("M0"));
              double c = Require.notNegative("c_torque", g.number("c_torque")) / w0;
              double t = Require.notNegative("t", g.number("t"));
              boolean dry = c * w0 < 1e-9 * m0;
              double stop = dry ? j * w0 / m0 : j / c * Math.log1p(c * w0 / m0);
              double w =
                  dry
                      ? w0 - m0 * t / j
                      : w0 * Math.exp(-c * t / j) + m0 / c * Math.expm1(-c * t / j);
              return Answer.start()
                  .with("speed_t", t >= stop ? 0 : Math.max(0, w))
                  .with("stop", stop)
                  .caution("Guard closed while it coasts; do not brake by hand.");
            });
  }

  private static Reckoner inertia() {
    return Reckoner.of(
            GROUP, "added-disc", "Inertia of a spindle from decelerations with and without a disc")
        .number("dJ", Unit.KG_M2, "inertia of the added disc")
        .number("alpha1", Unit.ONE, "deceleration without the disc, rad/s2")
        .number("alpha2", Unit.ONE, "deceleration with the disc at the same speed, rad/s2")
        .result("J", Unit.KG_M2, "inertia of the spindle, dJ alpha2/(alpha1 - alpha2)")
        .source(Sources.SPIN)
        .rule(
            g -> {
              double a1 = Require.positive("alpha1", g.number("alpha1"));
              double a2 = Require.positive("alpha2", g.number("alpha2"));
              Require.positive("alpha1 - alpha2", a1 - a2);
              return Answer.start()
                  .with("J", Require.positive("dJ", g.number("dJ")) * a2 / (a1 - a2))
                  .caution("Fasten the disc as for turning and keep the guard closed.");
            });
  }

  private static Reckoner speed() {
    return Reckoner.of(
            GROUP, "spindle-speed", "Spindle speed by counting turns, and slip of the drive")
        .number("N", Unit.TURNS, "turns counted, best 100 or more")
        .number("t", Unit.S, "time")
        .number("u_t", Unit.S, "standard uncertainty of the time", "0.2")
        .optional("n_calc", Unit.RPM, "speed computed from the ratio")
        .result("n", Unit.RPM, "speed")
        .result("u", Unit.RPM, "its standard uncertainty")
        .result("slip", Unit.PERCENT, "1 - n/n_calc")
        .source(Sources.SPEED)
        .rule(
            g -> {
              double turns = Require.positive("N", g.number("N"));
              double t = Require.positive("t", g.number("t"));
              double n = 2 * Math.PI * turns / t;
              double relative =
                  Math.hypot(
                      Require.notNegative("u_t", g.number("u_t")) / t, 1 / (Math.sqrt(12) * turns));
              Answer answer = Answer.start().with("n", n).with("u", n * relative);
              if (g.has("n_calc")) {
                double slip = 1 - n / Require.positive("n_calc", g.number("n_calc"));
                answer = answer.with("slip", slip);
                if (Math.abs(slip) > 0.05) {
                  answer =
                      answer.caution(
                          "More than 5 % off: wrong pulley step, belt bottoming, or inverter frequency.");
                }
              }
              return answer.caution("Keep hands, hair and sleeves clear of the turning spindle.");
            });
  }
}
