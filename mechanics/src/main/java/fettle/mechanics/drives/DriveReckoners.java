package fettle.mechanics.drives;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on motors, speeds, run-up, chucks and feeds. */
public final class DriveReckoners {

  private static final String ROOM = "drives";

  private DriveReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return java.util.stream.Stream.of(
            slip(),
            breakdown(),
            inductionTorque(),
            universal(),
            directCurrent(),
            inverter(),
            torquePower(),
            referredInertia(),
            discInertia(),
            spindleSpeed(),
            speedTable(),
            spindlePower(),
            runUp(),
            stopping(),
            rimSpeed(),
            jawForce(),
            gripSet(),
            gripNeeded(),
            keyGrip(),
            screwThrust(),
            rackForce())
        .map(Reckoner::finite)
        .toList();
  }

  private static Term positive(Given g, String name) {
    Need.positive(name, g.number(name));
    return g.term(name);
  }

  private static Term within(Given g, String name, double low, double high) {
    Need.within(name, g.number(name), low, high);
    return g.term(name);
  }

  private static Reckoner slip() {
    return Reckoner.of(ROOM, "motor-slip", "Running slip of an induction motor")
        .number("s_b", Unit.ONE, "slip at breakdown torque, R2/X2")
        .number("T_over_Tb", Unit.ONE, "torque over breakdown torque")
        .optional("n_s", Unit.RPM, "synchronous speed")
        .result("s", Unit.ONE, "slip")
        .result("n", Unit.RPM, "speed")
        .source(Sources.KLOSS)
        .rule(
            g -> {
              double sb = Need.positive("s_b", g.number("s_b"));
              double s = InductionMotor.runningSlip(g.number("T_over_Tb"), sb);
              Answer a =
                  Answer.start()
                      .with(
                          "s",
                          Working.check(
                              "s",
                              s,
                              Unit.ONE,
                              "s_b*T_over_Tb/(1+sqrt(1-T_over_Tb^2))",
                              g.term("s_b"),
                              g.term("T_over_Tb")));
              return g.has("n_s") ? a.with("n", g.number("n_s") * (1 - s)) : a;
            });
  }

  private static Reckoner breakdown() {
    return Reckoner.of(ROOM, "motor-breakdown", "Breakdown torque of a three-phase motor")
        .number("E2", Unit.V, "rotor voltage a phase, at rest")
        .number("X2", Unit.OHM, "rotor reactance a phase")
        .number("R2", Unit.OHM, "rotor resistance a phase")
        .optional("n_s", Unit.RPM, "synchronous speed")
        .optional("f", Unit.HZ, "frequency, with poles instead of n_s")
        .optional("poles", Unit.ONE, "poles")
        .optional("s", Unit.ONE, "a slip at which the torque is wanted")
        .result("T_b", Unit.NM, "breakdown torque")
        .result("s_b", Unit.ONE, "slip there")
        .result("n_b", Unit.RPM, "speed there")
        .result("n_s", Unit.RPM, "synchronous speed")
        .result("T", Unit.NM, "torque at s")
        .result("T_start", Unit.NM, "torque at rest")
        .source(Sources.KLOSS)
        .rule(
            g -> {
              double ws =
                  Need.positive(
                      "n_s",
                      g.has("n_s")
                          ? g.number("n_s")
                          : 4
                              * Math.PI
                              * g.number("f")
                              / Need.positive("poles", g.number("poles")));
              double e = Need.positive("E2", g.number("E2"));
              double x = Need.positive("X2", g.number("X2"));
              double tb = 1000 * 3 * e * e / (2 * ws * x);
              double sb = Need.positive("R2", g.number("R2")) / x;
              InductionMotor m = new InductionMotor(tb, sb);
              Answer a =
                  Answer.start()
                      .with("T_b", tb)
                      .with("s_b", sb)
                      .with("n_b", ws * (1 - sb))
                      .with("n_s", ws)
                      .with("T_start", m.torque(1));
              return g.has("s") ? a.with("T", m.torque(g.number("s"))) : a;
            });
  }

  private static Reckoner inductionTorque() {
    return Reckoner.of(ROOM, "motor-induction-torque", "Torque of an induction motor at a speed")
        .number("T_b", Unit.NM, "breakdown torque")
        .number("s_b", Unit.ONE, "slip there", "0.2")
        .number("n_s", Unit.RPM, "synchronous speed", "1500")
        .number("n", Unit.RPM, "speed")
        .result("T", Unit.NM, "torque")
        .result("P", Unit.W, "power at the shaft")
        .source(Sources.KLOSS)
        .rule(
            g -> {
              double ws = Need.positive("n_s", g.number("n_s"));
              double n = g.number("n");
              double t = new InductionMotor(g.number("T_b"), g.number("s_b")).torque((ws - n) / ws);
              return Answer.start().with("T", t).with("P", t * n);
            });
  }

  private static Reckoner universal() {
    return Reckoner.of(ROOM, "motor-universal", "Torque of a universal (series) motor")
        .number("V", Unit.V, "voltage")
        .number("R", Unit.OHM, "resistance")
        .number("X", Unit.OHM, "reactance; 0 on direct current", "0")
        .number("k", Unit.V_S_PER_A_RAD, "motor constant")
        .number("n", Unit.RPM, "speed")
        .result("I", Unit.A, "current")
        .result("T", Unit.NM, "torque")
        .result("P", Unit.W, "power at the shaft")
        .source(Sources.SERIES)
        .rule(
            g -> {
              Term r = within(g, "R", 0, 1e9);
              Term k = positive(g, "k");
              Term w = within(g, "n", 0, 1e5);
              Working i =
                  Working.of(
                      "I", Unit.A, "V/sqrt((R+k*n)^2+X^2)", positive(g, "V"), r, k, w, g.term("X"));
              if (!Double.isFinite(i.value())) {
                throw new IllegalArgumentException(
                    "R: found 0 at rest, expected above 0; the current has no limit");
              }
              Working t = Working.of("T", Unit.NM, "k*I^2*1000", k, Term.of(i));
              return Answer.start()
                  .with("I", i)
                  .with("T", t)
                  .with("P", t.value() * g.number("n"))
                  .caution(
                      "A series motor runs away without load: a lost belt means overspeed; fit a"
                          + " speed control or a guard that proves the belt.");
            });
  }

  private static Reckoner directCurrent() {
    return Reckoner.of(ROOM, "motor-direct-current", "Permanent-magnet motor at a load")
        .number("V", Unit.V, "voltage")
        .number("R", Unit.OHM, "resistance")
        .number("k", Unit.V_S_PER_RAD, "motor constant")
        .number("I", Unit.A, "current")
        .result("n", Unit.RPM, "speed")
        .result("T", Unit.NM, "torque")
        .result("P", Unit.W, "power at the shaft")
        .result("T_stall", Unit.NM, "torque at rest")
        .result("n_0", Unit.RPM, "speed without load")
        .source(Sources.DIRECT_CURRENT)
        .rule(
            g -> {
              double k = Need.positive("k", g.number("k"));
              double v = Need.positive("V", g.number("V"));
              double r = Need.positive("R", g.number("R"));
              double i = g.number("I");
              double n = (v - i * r) / k;
              return Answer.start()
                  .with("n", n)
                  .with("T", 1000 * k * i)
                  .with("P", 1000 * k * i * n)
                  .with("T_stall", 1000 * v * k / r)
                  .with("n_0", v / k);
            });
  }

  private static Reckoner inverter() {
    return Reckoner.of(ROOM, "motor-inverter", "Induction motor on an inverter")
        .number("P", Unit.W, "rated power")
        .number("n", Unit.RPM, "rated speed")
        .number("f_base", Unit.HZ, "base frequency", "50")
        .number("f", Unit.HZ, "frequency wanted")
        .number("T_b_ratio", Unit.ONE, "breakdown over rated torque", "2.5")
        .result("T", Unit.NM, "steady torque")
        .result("n_out", Unit.RPM, "speed, about")
        .result("P_out", Unit.W, "steady power")
        .result("T_fan", Unit.NM, "steady torque with the motor's own fan only")
        .source(Sources.INVERTER)
        .rule(
            g -> {
              double rated = Need.positive("P", g.number("P")) / Need.positive("n", g.number("n"));
              double r =
                  Need.positive("f", g.number("f")) / Need.positive("f_base", g.number("f_base"));
              double torque =
                  r <= 1
                      ? rated
                      : Math.min(rated / r, rated * g.number("T_b_ratio") / (1.3 * r * r));
              double fan = r >= 1 ? 1 : r >= 0.3 ? 0.5 + 0.5 * (r - 0.3) / 0.7 : 0.5;
              Answer a =
                  Answer.start()
                      .with("T", torque)
                      .with("n_out", g.number("n") * r)
                      .with("P_out", torque * g.number("n") * r)
                      .with("T_fan", torque * Math.min(1, fan));
              return (r < 0.3
                      ? a.caution(
                          "Below 0.3 of base frequency the shaft fan hardly cools: fit a separate"
                              + " fan or rest the motor.")
                      : a)
                  .caution(
                      "An inverter's capacitors stay charged after switching off: wait as marked."
                          + " Mains wiring is for an electrician.");
            });
  }

  private static Reckoner torquePower() {
    return Reckoner.of(ROOM, "motor-torque", "Torque of a power at a speed")
        .number("P", Unit.W, "power")
        .number("n", Unit.RPM, "speed")
        .result("T", Unit.NM, "torque")
        .source(Sources.CHAIN)
        .rule(
            g ->
                Answer.start()
                    .with("T", Working.of("T", Unit.NM, "P/n", g.term("P"), positive(g, "n"))));
  }

  private static Reckoner referredInertia() {
    return Reckoner.of(ROOM, "drive-referred-inertia", "Inertia and load referred to the motor")
        .number("J0", Unit.KG_M2, "inertia of the motor")
        .number("ratio", Unit.ONE, "speed of the geared load over the motor's", "1")
        .number("J1", Unit.KG_M2, "inertia of the geared load", "0")
        .number("m", Unit.KG, "mass moved in a straight line", "0")
        .number("v", Unit.M_PER_S, "its speed at motor speed n", "0")
        .number("n", Unit.RPM, "motor speed", "1000")
        .number("T1", Unit.NM, "torque of the geared load", "0")
        .number("eta1", Unit.ONE, "efficiency of the gear", "1")
        .number("F", Unit.N, "force on the moved mass (of a lifted one, its weight)", "0")
        .number("eta2", Unit.ONE, "efficiency of its drive", "1")
        .result("J", Unit.KG_M2, "inertia at the motor")
        .result("T", Unit.NM, "torque at the motor")
        .result("P", Unit.KW, "power of the motor")
        .source(Sources.ENERGY)
        .rule(
            g -> {
              Working j =
                  Working.of(
                      "J",
                      Unit.KG_M2,
                      "J0+ratio^2*J1+m*(v/n)^2",
                      g.term("J0"),
                      g.term("ratio"),
                      g.term("J1"),
                      g.term("m"),
                      g.term("v"),
                      positive(g, "n"));
              Working t =
                  Working.of(
                      "T",
                      Unit.NM,
                      "ratio*T1/eta1+F*v/(n*eta2)",
                      g.term("ratio"),
                      g.term("T1"),
                      within(g, "eta1", 0.01, 1),
                      g.term("F"),
                      g.term("v"),
                      g.term("n"),
                      within(g, "eta2", 0.01, 1));
              return Answer.start().with("J", j).with("T", t).with("P", t.value() * g.number("n"));
            });
  }

  private static Reckoner discInertia() {
    return Reckoner.of(ROOM, "drive-disc-inertia", "Mass and inertia of a round disc or ring")
        .number("D", Unit.MM, "outside diameter")
        .number("d", Unit.MM, "bore", "0")
        .number("w", Unit.MM, "width")
        .number("rho", Unit.KG_PER_M3, "density", "7850")
        .result("m", Unit.KG, "mass")
        .result("J", Unit.KG_M2, "inertia about the axis")
        .result("Jd", Unit.KG_M2, "inertia about a diameter")
        .source(Sources.ENERGY)
        .rule(
            g -> {
              double o = Need.positive("D", g.number("D"));
              double i = Need.within("d", g.number("d"), 0, o);
              double w = Need.positive("w", g.number("w"));
              double m = Need.positive("rho", g.number("rho")) * Math.PI / 4 * (o * o - i * i) * w;
              double j = m * (o * o + i * i) / 8;
              return Answer.start().with("m", m).with("J", j).with("Jd", j / 2 + m * w * w / 12);
            });
  }

  private static Reckoner spindleSpeed() {
    return Reckoner.of(ROOM, "drive-spindle-speed", "Spindle speed through belt and gears")
        .number("n_m", Unit.RPM, "motor speed")
        .number("d1", Unit.MM, "driving pulley", "1")
        .number("d2", Unit.MM, "driven pulley", "1")
        .number("creep", Unit.ONE, "creep of the belt, as a share", "0")
        .number("z1", Unit.TEETH, "driving gear", "1")
        .number("z2", Unit.TEETH, "driven gear", "1")
        .number("z3", Unit.TEETH, "second driving gear", "1")
        .number("z4", Unit.TEETH, "second driven gear", "1")
        .result("n_s", Unit.RPM, "spindle speed")
        .source(Sources.CHAIN)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "n_s",
                        Working.of(
                            "n_s",
                            Unit.RPM,
                            "n_m*d1/d2*(1-creep)*z1/z2*z3/z4",
                            positive(g, "n_m"),
                            positive(g, "d1"),
                            positive(g, "d2"),
                            within(g, "creep", 0, 0.2),
                            positive(g, "z1"),
                            positive(g, "z2"),
                            positive(g, "z3"),
                            positive(g, "z4"))));
  }

  private static Reckoner speedTable() {
    return Reckoner.of(ROOM, "drive-speed-table", "All spindle speeds and the gaps between them")
        .numbers("n_m", Unit.RPM, "motor speeds")
        .numbers("drivers", Unit.MM, "driving pulleys")
        .numbers("driven", Unit.MM, "driven pulleys, step by step")
        .input(
            "gears",
            Input.Kind.NUMBERS,
            Unit.ONE,
            "speed ratios of the gears, direct is 1",
            "1",
            true)
        .number("creep", Unit.ONE, "creep of the belt, as a share", "0.01")
        .result("speeds", Unit.RPM, "speeds, rising")
        .result("steps", Unit.ONE, "each speed over the one before")
        .result("phi", Unit.ONE, "step of an even series over the same range")
        .source(Sources.CHAIN)
        .rule(DriveReckoners::speedTableAnswer);
  }

  private static Answer speedTableAnswer(Given g) {
    double[] motor = g.numbers("n_m");
    double[] a = g.numbers("drivers");
    double[] b = g.numbers("driven");
    double[] gears = g.numbers("gears");
    if (a.length != b.length || a.length == 0) {
      throw new IllegalArgumentException("drivers and driven: expected as many of each");
    }
    if ((long) motor.length * a.length * gears.length > 1000) {
      throw new IllegalArgumentException("more than 1000 speeds; give fewer");
    }
    double creep = Need.within("creep", g.number("creep"), 0, 0.2);
    double[] all = new double[motor.length * a.length * gears.length];
    int at = 0;
    for (double n : motor) {
      for (int i = 0; i < a.length; i++) {
        for (double r : gears) {
          all[at++] =
              Need.positive("n_m", n)
                  * Need.positive("driver", a[i])
                  / Need.positive("driven", b[i])
                  * (1 - creep)
                  * Need.positive("gear ratio", r);
        }
      }
    }
    java.util.Arrays.sort(all);
    double[] steps = new double[Math.max(0, all.length - 1)];
    boolean gap = false;
    boolean overlap = false;
    for (int i = 0; i < steps.length; i++) {
      steps[i] = all[i + 1] / all[i];
      gap |= steps[i] > 1.6;
      overlap |= steps[i] < 1.1;
    }
    Answer answer = Answer.start().with("speeds", all).with("steps", steps);
    if (all.length > 1) {
      answer = answer.with("phi", Math.pow(all[all.length - 1] / all[0], 1.0 / (all.length - 1)));
    }
    if (gap) {
      answer = answer.caution("A gap of more than 1.6 between two speeds.");
    }
    return overlap
        ? answer.caution("Two speeds less than 1.1 apart: one of them is idle.")
        : answer;
  }

  private static Reckoner spindlePower() {
    return Reckoner.of(ROOM, "drive-spindle-power", "Power and torque at the spindle")
        .number("P_m", Unit.W, "power at the motor shaft")
        .number("eta_belt", Unit.ONE, "0.95 to 0.97 V and ribbed, 0.98 toothed", "0.96")
        .number("eta_gear", Unit.ONE, "each mesh", "0.97")
        .count("meshes", "gear meshes", "0")
        .number("drag", Unit.W, "power lost in bearings", "0")
        .number("n", Unit.RPM, "spindle speed")
        .result("P_s", Unit.W, "power at the spindle")
        .result("T_s", Unit.NM, "torque at the spindle")
        .source(Sources.EFFICIENCY)
        .rule(
            g -> {
              int meshes = g.count("meshes");
              Need.within("meshes", meshes, 0, 10);
              double p =
                  Need.positive("P_m", g.number("P_m"))
                          * Need.within("eta_belt", g.number("eta_belt"), 0.01, 1)
                          * Math.pow(Need.within("eta_gear", g.number("eta_gear"), 0.01, 1), meshes)
                      - g.number("drag");
              if (!(p > 0)) {
                return Answer.none("the drag eats all the power of the motor");
              }
              return Answer.start()
                  .with("P_s", p)
                  .with("T_s", p / Need.positive("n", g.number("n")));
            });
  }

  private static Reckoner runUp() {
    return Reckoner.of(ROOM, "drive-run-up", "Time to bring the spindle to speed")
        .number("J", Unit.KG_M2, "inertia at the spindle")
        .number("n", Unit.RPM, "speed")
        .optional("T_m", Unit.NM, "motor torque at the spindle, steady")
        .number("T_drag", Unit.NM, "drag at the spindle", "0")
        .optional("P", Unit.W, "or: power held above the speed where T_max would exceed it")
        .optional("T_max", Unit.NM, "with P: greatest torque")
        .result("t", Unit.S, "time")
        .source(Sources.RUN_UP)
        .rule(
            g -> {
              double drag = Need.within("T_drag", g.number("T_drag"), 0, 1e12);
              double j = g.number("J");
              double n = g.number("n");
              if (g.has("T_m")) {
                return warned(RunUp.time(j, n, g.number("T_m"), drag));
              }
              double p = Need.positive("P", g.number("P"));
              double most = Need.positive("T_max", g.number("T_max"));
              double t =
                  RunUp.time(
                      Need.positive("J", j),
                      Need.positive("n", n),
                      w -> Math.min(most, p / w) - drag);
              return Double.isInfinite(t)
                  ? Answer.none("the drive stalls on the way: drag exceeds its torque")
                  : warned(t);
            });
  }

  private static Answer warned(double time) {
    Answer a = Answer.start().with("t", time);
    return time > 5
        ? a.caution("Longer than 5 s: a single-phase motor may trip or burn its start winding.")
        : a;
  }

  private static Reckoner stopping() {
    return Reckoner.of(ROOM, "drive-stopping", "Stopping time, and the least for a screwed chuck")
        .number("J", Unit.KG_M2, "inertia at the spindle")
        .number("n", Unit.RPM, "speed")
        .number("T_brake", Unit.NM, "braking torque at the spindle")
        .number("T_drag", Unit.NM, "drag at the spindle", "0")
        .optional("J_chuck", Unit.KG_M2, "inertia of a screwed-on chuck")
        .optional("T_unscrew", Unit.NM, "torque that unscrews it")
        .result("t", Unit.S, "time to stop")
        .result("t_least", Unit.S, "shortest time that does not unscrew the chuck")
        .source(Sources.RUN_UP)
        .rule(
            g -> {
              double t =
                  RunUp.time(
                      g.number("J"), g.number("n"), g.number("T_brake") + g.number("T_drag"), 0);
              Answer a = Answer.start().with("t", t);
              if (!g.has("J_chuck") || !g.has("T_unscrew")) {
                return a;
              }
              double least =
                  Need.positive("J_chuck", g.number("J_chuck"))
                      * g.number("n")
                      / Need.positive("T_unscrew", g.number("T_unscrew"));
              a = a.with("t_least", least);
              return t < least
                  ? a.caution(
                      "Braking this hard can unscrew the chuck and throw it: brake more gently, and"
                          + " never run a screwed nose in reverse.")
                  : a;
            });
  }

  private static Reckoner rimSpeed() {
    return Reckoner.of(ROOM, "chuck-rim-speed", "Rim speed and hoop stress of a chuck")
        .number("D", Unit.MM, "diameter")
        .number("n", Unit.RPM, "speed")
        .number("rho", Unit.KG_PER_M3, "density of the body", "7200")
        .number("v_limit", Unit.M_PER_S, "limit; grey iron 30, unmarked 25, steel 50", "25")
        .result("v", Unit.M_PER_S, "rim speed")
        .result("sigma", Unit.MPA, "hoop stress of a plain ring")
        .result("n_max", Unit.RPM, "speed at the limit")
        .source(Sources.RIM)
        .rule(
            g -> {
              Working v =
                  Working.of("v", Unit.M_PER_S, "D/2*n", positive(g, "D"), positive(g, "n"));
              double limit = Need.positive("v_limit", g.number("v_limit"));
              Answer a =
                  Answer.start()
                      .with("v", v)
                      .with(
                          "sigma",
                          Working.of("sigma", Unit.MPA, "rho*v^2", positive(g, "rho"), Term.of(v)))
                      .with("n_max", 2 * limit / g.number("D"));
              a =
                  a.caution(
                      "The greatest speed marked on the chuck rules, whatever is computed here; stand"
                          + " out of the plane of the chuck at a first run.");
              return v.value() > limit
                  ? a.caution("Faster than the limit: do not run this chuck at this speed.")
                  : a;
            });
  }

  private static Reckoner jawForce() {
    return Reckoner.of(ROOM, "chuck-jaw-force", "Centrifugal force of the chuck jaws")
        .optional("m", Unit.KG, "mass of one jaw (with its top jaw)")
        .optional("m_j", Unit.KG, "mass of one jaw, another name")
        .number("r", Unit.MM, "radius of its centre of gravity")
        .number("n", Unit.RPM, "speed")
        .count("jaws", "jaws", "3")
        .optional("F_static", Unit.N, "gripping force at rest, all jaws")
        .choice("grip", "jaws grip from outside or from inside", "outside", "inside")
        .result("F_c", Unit.N, "centrifugal force of all jaws")
        .result("F_dyn", Unit.N, "gripping force left at speed")
        .source(Sources.GRIP)
        .rule(
            g -> {
              double m = Need.positive("m", g.has("m") ? g.number("m") : g.number("m_j"));
              int jaws = g.count("jaws");
              Need.within("jaws", jaws, 1, 12);
              Working fc =
                  Working.of(
                      "F_c",
                      Unit.N,
                      "jaws*m*r*n^2",
                      Term.exact("jaws", jaws),
                      Term.exact("m", m, Unit.KG),
                      positive(g, "r"),
                      positive(g, "n"));
              Answer a = Answer.start().with("F_c", fc);
              if (!g.has("F_static")) {
                return a;
              }
              double sign = g.choice("grip").equals("outside") ? -1 : 1;
              double left = g.number("F_static") + sign * fc.value();
              a = a.with("F_dyn", left);
              return left < g.number("F_static") / 3
                  ? a.caution(
                      "Less than a third of the grip is left: the work can be thrown. Run slower.")
                  : a;
            });
  }

  private static Reckoner gripSet() {
    return Reckoner.of(ROOM, "chuck-grip-set", "Gripping force to set at rest")
        .number("F_spz", Unit.N, "gripping force machining needs")
        .number("Sz", Unit.ONE, "safety for machining, 1.5 or more", "1.5")
        .number("Ssp", Unit.ONE, "safety for gripping, 1.5 or more", "1.5")
        .number("Fc_sum", Unit.N, "centrifugal force of all jaws", "0")
        .choice("grip", "jaws grip from outside or from inside", "outside", "inside")
        .result("F_sp0", Unit.N, "gripping force to set")
        .source(Sources.GRIP)
        .rule(
            g -> {
              boolean outside = g.choice("grip").equals("outside");
              Working f =
                  Working.of(
                      "F_sp0",
                      Unit.N,
                      outside ? "Ssp*(Sz*F_spz+Fc_sum)" : "Ssp*max(Sz*F_spz-Fc_sum, 0)",
                      within(g, "Ssp", 1, 10),
                      within(g, "Sz", 1, 10),
                      within(g, "F_spz", 0, 1e9),
                      within(g, "Fc_sum", 0, 1e9));
              Answer a = Answer.start().with("F_sp0", f);
              return g.number("Sz") < 1.5 || g.number("Ssp") < 1.5
                  ? a.caution("Both safeties should be 1.5 or more.")
                  : a;
            });
  }

  private static Reckoner gripNeeded() {
    return Reckoner.of(ROOM, "chuck-grip-needed", "Gripping force the cut needs")
        .number("Fc", Unit.N, "cutting force")
        .number("d_cut", Unit.MM, "diameter at the cut")
        .number("d_grip", Unit.MM, "diameter at the jaws")
        .number("mu", Unit.ONE, "0.15 to 0.2 smooth, 0.3 serrated jaws", "0.15")
        .number("Ff", Unit.N, "feed force", "0")
        .number("overhang", Unit.MM, "cut beyond the jaws", "0")
        .optional("jaw_length", Unit.MM, "length the jaws hold, with overhang")
        .number("S", Unit.ONE, "safety", "2")
        .result("F_turn", Unit.N, "against turning and sliding in the jaws")
        .result("F_lever", Unit.N, "against levering out")
        .result("F", Unit.N, "gripping force of all jaws needed")
        .source(Sources.GRIP)
        .rule(
            g -> {
              double mu = Need.within("mu", g.number("mu"), 0.01, 1);
              double turn =
                  Need.within("Fc", g.number("Fc"), 0, 1e9)
                      * Need.positive("d_cut", g.number("d_cut"))
                      / Need.positive("d_grip", g.number("d_grip"));
              double s = Need.within("S", g.number("S"), 1, 20);
              double slide = s * Math.hypot(turn, g.number("Ff")) / mu;
              double over = Need.within("overhang", g.number("overhang"), 0, 1e5);
              double lever =
                  over == 0
                      ? 0
                      : s
                          * g.number("Fc")
                          * over
                          / Need.positive("jaw_length", g.number("jaw_length"));
              return Answer.start()
                  .with("F_turn", slide)
                  .with("F_lever", lever)
                  .with("F", slide + lever)
                  .caution(
                      "Work that leaves the chuck injures: keep the guard shut, the key out, and stay"
                          + " below this cut if the grip is in doubt.");
            });
  }

  private static Reckoner keyGrip() {
    return Reckoner.of(ROOM, "chuck-key-grip", "Gripping force of a key-set scroll chuck")
        .number("T", Unit.NM, "torque at the key")
        .number("eta", Unit.ONE, "efficiency of key, scroll and slides", "0.2")
        .number("lead_eff", Unit.MM, "jaw travel for a turn of the key")
        .result("F", Unit.N, "gripping force of all jaws, good to a half")
        .source(Sources.HAND)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "F",
                        Working.of(
                            "F",
                            Unit.N,
                            "2*pi*T*eta/lead_eff",
                            positive(g, "T"),
                            within(g, "eta", 0.01, 1),
                            positive(g, "lead_eff")))
                    .caution("Never leave the key in the chuck."));
  }

  private static Reckoner screwThrust() {
    return Reckoner.of(ROOM, "feed-screw-thrust", "Slide force from a hand on a feed screw")
        .number("T", Unit.NM, "torque at the handwheel; two fingers 0.3 to 0.8")
        .number("lead", Unit.MM, "lead")
        .number("eta", Unit.ONE, "efficiency", "0.3")
        .result("F", Unit.N, "force on the slide")
        .source(Sources.HAND)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "F",
                        Working.of(
                            "F",
                            Unit.N,
                            "2*pi*T*eta/lead",
                            positive(g, "T"),
                            within(g, "eta", 0.001, 1),
                            positive(g, "lead"))));
  }

  private static Reckoner rackForce() {
    return Reckoner.of(ROOM, "feed-rack-force", "Slide force from a hand on a geared rack drive")
        .number("T", Unit.NM, "torque at the handwheel")
        .number("m", Unit.MM, "module of the rack")
        .number("z", Unit.TEETH, "teeth of the rack pinion")
        .number("i", Unit.ONE, "turns of the handwheel a turn of the pinion", "1")
        .number("eta", Unit.ONE, "efficiency", "0.9")
        .result("F", Unit.N, "force on the slide")
        .result("travel", Unit.MM, "travel a turn of the handwheel")
        .source(Sources.HAND)
        .rule(
            g -> {
              Term m = positive(g, "m");
              Term z = positive(g, "z");
              Term i = positive(g, "i");
              return Answer.start()
                  .with(
                      "F",
                      Working.of(
                          "F",
                          Unit.N,
                          "2*T*i*eta/(m*z)",
                          positive(g, "T"),
                          i,
                          within(g, "eta", 0.001, 1),
                          m,
                          z))
                  .with("travel", Working.of("travel", Unit.MM, "pi*m*z/i", m, z, i));
            });
  }
}
