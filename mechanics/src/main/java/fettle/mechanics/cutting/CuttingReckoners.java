package fettle.mechanics.cutting;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on cutting. */
public final class CuttingReckoners {

  private static final String ROOM = "cutting";

  private CuttingReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return java.util.stream.Stream.of(
            material(),
            specificForce(),
            force(),
            power(),
            energy(),
            powerLaw(),
            removal(),
            cuttingSpeed(),
            noseAngle(),
            CutLimit.reckoner(),
            chatterLimit(),
            chatterLobe(),
            orientation(),
            finish(),
            pointedFinish(),
            drilling())
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

  /** Asks for a material by mark or by its two numbers. */
  static Reckoner.Draft asked(Reckoner.Draft draft) {
    return draft
        .input(
            "material",
            Input.Kind.TEXT,
            Unit.ONE,
            "such as S235, E295, C45, EN-GJL-250, CuZn40Pb2, AlMgSi; instead of kc11 and mc",
            null,
            false)
        .optional("kc11", Unit.MPA, "specific cutting force kc1.1")
        .optional("mc", Unit.ONE, "its exponent");
  }

  /**
   * Returns kc1.1 as given or of the material.
   *
   * @param g the inputs
   * @return kc1.1 [MPa]
   */
  static double unitForce(Given g) {
    return g.has("kc11") ? g.number("kc11") : CutMaterial.of(g.text("material")).unitForce();
  }

  /**
   * Returns mc as given or of the material.
   *
   * @param g the inputs
   * @return mc [-]
   */
  static double exponent(Given g) {
    return g.has("mc") ? g.number("mc") : CutMaterial.of(g.text("material")).exponent();
  }

  private static Reckoner material() {
    return Reckoner.of(ROOM, "cutting-material", "Specific cutting force and starting speed")
        .text("material", "such as S235, E295, C45, EN-GJL-250, CuZn40Pb2, AlMgSi")
        .result("kc11", Unit.MPA, "specific cutting force kc1.1")
        .result("mc", Unit.ONE, "its exponent")
        .result("vc_hss", Unit.M_PER_MIN, "cutting speed to start with, high-speed steel")
        .result("vc_carbide", Unit.M_PER_MIN, "cutting speed to start with, carbide")
        .source(Sources.MATERIALS)
        .rule(
            g -> {
              CutMaterial m = CutMaterial.of(g.text("material"));
              Answer a =
                  Answer.start()
                      .with("kc11", m.unitForce())
                      .with("mc", m.exponent())
                      .with("vc_hss", m.startSpeed("hss"))
                      .with("vc_carbide", m.startSpeed("carbide"));
              return m.isChecked()
                  ? a
                  : a.caution("These values are from memory: good to a quarter.");
            });
  }

  private static Answer thin(Answer a, double thickness) {
    if (thickness < 0.05) {
      return a.caution(
          "Chip thinner than 0.05 mm: the force rises faster than the law says, and below 0.03 mm"
              + " the edge rubs.");
    }
    return thickness > 1.5 ? a.caution("Chip thicker than 1.5 mm: outside the law.") : a;
  }

  private static Reckoner specificForce() {
    return asked(Reckoner.of(ROOM, "cutting-specific-force", "Specific cutting force kc"))
        .number("f", Unit.MM, "feed a turn")
        .number("kappa", Unit.DEG, "cutting edge angle from the direction of feed", "90")
        .result("kc", Unit.MPA, "specific cutting force")
        .result("h", Unit.MM, "chip thickness")
        .source(Sources.KIENZLE)
        .rule(
            g -> {
              CuttingForce c =
                  new CuttingForce(
                      unitForce(g), exponent(g), g.number("f"), 1, g.number("kappa"), 1);
              return thin(
                  Answer.start().with("kc", c.specific()).with("h", c.thickness()), c.thickness());
            });
  }

  private static Reckoner force() {
    return asked(Reckoner.of(ROOM, "cutting-force", "Forces, power and torque of a turning cut"))
        .number("ap", Unit.MM, "depth of cut")
        .number("f", Unit.MM, "feed a turn")
        .number("kappa", Unit.DEG, "cutting edge angle from the direction of feed", "90")
        .optional("rake", Unit.DEG, "rake angle; no correction if left out")
        .number("rake_ref", Unit.DEG, "rake the values hold for; 6 steel, 2 iron", "6")
        .number("K_speed", Unit.ONE, "1.15 to 1.2 for high-speed steel at 20 to 40 m/min", "1")
        .number("K_tool", Unit.ONE, "factor of the tool", "1")
        .number("K_wear", Unit.ONE, "1.3 worn, 1.5 blunt", "1")
        .number("Ff_over_Fc", Unit.ONE, "feed force over cutting force, assumed", "0.4")
        .number("Fp_over_Fc", Unit.ONE, "passive force over cutting force, assumed", "0.35")
        .optional("vc", Unit.M_PER_MIN, "cutting speed")
        .optional("d", Unit.MM, "diameter")
        .optional("n", Unit.RPM, "speed, with d instead of vc")
        .result("h", Unit.MM, "chip thickness")
        .result("b", Unit.MM, "chip width")
        .result("kc", Unit.MPA, "specific cutting force with corrections")
        .result("K", Unit.ONE, "all corrections")
        .result("Fc", Unit.N, "cutting force")
        .result("Ff", Unit.N, "feed force")
        .result("Fp", Unit.N, "passive force")
        .result("Pc", Unit.KW, "cutting power")
        .result("T", Unit.NM, "torque at the diameter")
        .source(Sources.KIENZLE)
        .rule(CuttingReckoners::forceAnswer);
  }

  private static Answer forceAnswer(Given g) {
    double k =
        Need.positive("K_speed", g.number("K_speed"))
            * Need.positive("K_tool", g.number("K_tool"))
            * Need.positive("K_wear", g.number("K_wear"));
    if (g.has("rake")) {
      k *= CuttingForce.rakeFactor(g.number("rake"), g.number("rake_ref"));
    }
    CuttingForce c =
        new CuttingForce(
            unitForce(g), exponent(g), g.number("f"), g.number("ap"), g.number("kappa"), k);
    double fc = c.main();
    Answer a =
        Answer.start()
            .with("h", c.thickness())
            .with("b", c.width())
            .with("kc", c.specific())
            .with("K", k)
            .with(
                "Fc",
                Working.check(
                    "Fc",
                    fc,
                    Unit.N,
                    "kc11*max(h, 0.03)^(-mc)*b*h*K",
                    Term.exact("kc11", unitForce(g), Unit.MPA),
                    Term.exact("h", c.thickness(), Unit.MM),
                    Term.exact("mc", exponent(g)),
                    Term.exact("b", c.width(), Unit.MM),
                    Term.exact("K", k)))
            .with("Ff", g.number("Ff_over_Fc") * fc)
            .with("Fp", g.number("Fp_over_Fc") * fc);
    if (g.has("vc")) {
      a = a.with("Pc", fc * g.number("vc"));
    } else if (g.has("d") && g.has("n")) {
      a = a.with("Pc", fc * g.number("d") / 2 * g.number("n"));
    }
    if (g.has("d")) {
      a = a.with("T", fc * g.number("d") / 2);
    }
    return thin(a, c.thickness())
        .caution("Feed and passive force: ratio assumed. All forces are good to a quarter.");
  }

  private static Reckoner power() {
    return Reckoner.of(ROOM, "cutting-power", "Motor power of a turning cut")
        .optional("ap", Unit.MM, "depth of cut, with f and kc")
        .optional("f", Unit.MM, "feed a turn")
        .optional("kc", Unit.MPA, "specific cutting force")
        .optional("Fc", Unit.N, "cutting force, instead of ap, f, kc")
        .optional("vc", Unit.M_PER_MIN, "cutting speed")
        .optional("d", Unit.MM, "diameter, with n instead of vc")
        .optional("n", Unit.RPM, "speed")
        .number("eta", Unit.ONE, "efficiency from motor to spindle", "1")
        .result("Fc", Unit.N, "cutting force")
        .result("P_cut", Unit.KW, "power at the cut")
        .result("P", Unit.KW, "power of the motor")
        .result("T", Unit.NM, "torque at the diameter")
        .result("Q", Unit.CM3_PER_MIN, "metal removed")
        .source(Sources.POWER)
        .rule(
            g -> {
              double fc =
                  g.has("Fc")
                      ? Need.positive("Fc", g.number("Fc"))
                      : Need.positive("ap", g.number("ap"))
                          * Need.positive("f", g.number("f"))
                          * Need.positive("kc", g.number("kc"));
              double vc =
                  Need.positive(
                      "vc", g.has("vc") ? g.number("vc") : g.number("d") / 2 * g.number("n"));
              Working cut =
                  Working.of(
                      "P_cut",
                      Unit.KW,
                      "Fc*vc",
                      Term.exact("Fc", fc, Unit.N),
                      Term.exact("vc", vc, Unit.M_PER_MIN));
              Answer a =
                  Answer.start()
                      .with("Fc", fc)
                      .with("P_cut", cut)
                      .with(
                          "P",
                          Working.of(
                              "P", Unit.KW, "P_cut/eta", Term.of(cut), within(g, "eta", 0.01, 1)));
              if (g.has("d")) {
                a = a.with("T", fc * g.number("d") / 2);
              }
              return g.has("ap") && g.has("f")
                  ? a.with("Q", g.number("ap") * g.number("f") * vc)
                  : a;
            });
  }

  private static Reckoner energy() {
    return Reckoner.of(ROOM, "cutting-energy", "Specific cutting energy of a measured force")
        .number("Fc", Unit.N, "cutting force")
        .number("ap", Unit.MM, "depth of cut")
        .number("f", Unit.MM, "feed a turn")
        .result("U", Unit.J_PER_MM3, "energy a volume of chip")
        .source(Sources.POWER)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "U",
                        Working.of(
                            "U",
                            Unit.J_PER_MM3,
                            "Fc/(ap*f)",
                            positive(g, "Fc"),
                            positive(g, "ap"),
                            positive(g, "f"))));
  }

  private static Reckoner powerLaw() {
    return Reckoner.of(
            ROOM, "cutting-power-law", "Specific energy by a power of the chip thickness")
        .number("U0", Unit.J_PER_MM3, "specific energy at 1 mm")
        .optional("t", Unit.MM, "uncut chip thickness")
        .optional("f", Unit.MM, "feed a turn, with kappa instead of t")
        .number("kappa", Unit.DEG, "cutting edge angle", "90")
        .number("exponent", Unit.ONE, "exponent", "0.4")
        .optional("w", Unit.MM, "width of cut")
        .optional("ap", Unit.MM, "depth of cut, instead of w")
        .optional("vc", Unit.M_PER_MIN, "cutting speed")
        .result("t", Unit.MM, "uncut chip thickness")
        .result("U", Unit.J_PER_MM3, "specific energy")
        .result("Fc", Unit.N, "cutting force")
        .result("P", Unit.W, "power")
        .source(Sources.KIENZLE)
        .rule(
            g -> {
              double sine = Math.sin(Need.within("kappa", g.number("kappa"), 0.08, 2.1));
              double t = Need.positive("t", g.has("t") ? g.number("t") : g.number("f") * sine);
              double u =
                  Need.positive("U0", g.number("U0"))
                      * Math.pow(t, -Need.within("exponent", g.number("exponent"), 0, 1));
              Answer a = Answer.start().with("t", t).with("U", u);
              if (!g.has("w") && !g.has("ap")) {
                return a;
              }
              double w = g.has("w") ? g.number("w") : g.number("ap") / sine;
              double fc = u * t * Need.positive("w", w);
              a = a.with("Fc", fc);
              return g.has("vc") ? a.with("P", fc * g.number("vc")) : a;
            });
  }

  private static Reckoner removal() {
    return Reckoner.of(ROOM, "turning-removal", "Removal rate, time, power of a turning cut")
        .number("D", Unit.MM, "diameter before")
        .number("D2", Unit.MM, "diameter after")
        .number("n", Unit.RPM, "speed")
        .optional("f", Unit.MM, "feed a turn")
        .optional("vf", Unit.MM_PER_MIN, "feed speed, instead of f")
        .optional("L", Unit.MM, "length, for the time")
        .optional("U", Unit.J_PER_MM3, "specific energy, for the power")
        .result("vc", Unit.M_PER_MIN, "cutting speed at the outside")
        .result("Q", Unit.CM3_PER_MIN, "metal removed")
        .result("t", Unit.MIN, "time")
        .result("P", Unit.W, "power")
        .result("T", Unit.NM, "torque")
        .result("Fc", Unit.N, "cutting force, at the mean diameter")
        .source(Sources.POWER)
        .rule(
            g -> {
              double d = Need.positive("D", g.number("D"));
              double d2 = Need.within("D2", g.number("D2"), 0, d);
              double n = Need.positive("n", g.number("n"));
              double f = g.has("f") ? g.number("f") : g.number("vf") * 2 * Math.PI / n;
              double mean = (d + d2) / 2;
              double q = mean / 2 * n * (d - d2) / 2 * Need.positive("f", f);
              Answer a = Answer.start().with("vc", d / 2 * n).with("Q", q);
              if (g.has("L")) {
                a = a.with("t", Need.positive("L", g.number("L")) / (f * n / (2 * Math.PI)));
              }
              if (!g.has("U")) {
                return a;
              }
              double p = q * Need.positive("U", g.number("U"));
              return a.with("P", p).with("T", p / n).with("Fc", 2 * p / (n * mean));
            });
  }

  private static Reckoner cuttingSpeed() {
    return Reckoner.of(ROOM, "cutting-speed", "Cutting speed, or the speed for one")
        .number("d", Unit.MM, "diameter")
        .optional("n", Unit.RPM, "speed")
        .optional("vc", Unit.M_PER_MIN, "cutting speed wanted, instead of n")
        .result("vc", Unit.M_PER_MIN, "cutting speed")
        .result("n", Unit.RPM, "speed")
        .source(Sources.POWER)
        .rule(
            g -> {
              double d = Need.positive("d", g.number("d"));
              double n = g.has("n") ? g.number("n") : 2 * g.number("vc") / d;
              return Answer.start().with("vc", d / 2 * n).with("n", n);
            });
  }

  private static Reckoner noseAngle() {
    return Reckoner.of(ROOM, "cutting-nose-angle", "Effective edge angle where the nose cuts")
        .number("ap", Unit.MM, "depth of cut, not above r")
        .number("r", Unit.MM, "nose radius")
        .result("kappa_eff", Unit.DEG, "effective cutting edge angle")
        .result("Fp_over_Ff", Unit.ONE, "passive force over feed force")
        .source(Sources.FORCE_SHARES)
        .rule(
            g -> {
              double k = CuttingForce.noseAngle(g.number("ap"), g.number("r"));
              return Answer.start()
                  .with("kappa_eff", k)
                  .with("Fp_over_Ff", 1 / Math.tan(Need.positive("kappa_eff", k)));
            });
  }

  private static Reckoner.Draft mode(Reckoner.Draft draft) {
    return draft
        .number("k", Unit.N_PER_MICRON, "stiffness of the mode")
        .number("zeta", Unit.ONE, "damping, share of critical; bolted lathes 0.02 to 0.05", "0.035")
        .number("fn", Unit.HZ, "natural frequency", "200")
        .optional("Kf", Unit.MPA, "cutting stiffness of a unit width, Ks u")
        .optional("Ks", Unit.MPA, "resultant specific force, with u instead of Kf")
        .number("u", Unit.ONE, "orientation of force and mode", "1");
  }

  private static Chatter mode(Given g) {
    double kf = g.has("Kf") ? g.number("Kf") : g.number("Ks") * g.number("u");
    return new Chatter(g.number("k"), g.number("zeta"), g.number("fn"), kf);
  }

  private static Reckoner chatterLimit() {
    return mode(Reckoner.of(ROOM, "chatter-limit", "Chip width free of chatter at every speed"))
        .number("kappa", Unit.DEG, "cutting edge angle", "90")
        .result("b_lim", Unit.MM, "limit of the chip width; the widest parting blade")
        .result("ap_lim", Unit.MM, "limit of the depth, b_lim sin(kappa)")
        .result("f_c", Unit.HZ, "chatter frequency there")
        .source(Sources.CHATTER)
        .rule(
            g -> {
              Chatter c = mode(g);
              double sine = Math.sin(Need.within("kappa", g.number("kappa"), 0.08, 2.1));
              return Answer.start()
                  .with(
                      "b_lim",
                      Working.check(
                          "b_lim",
                          c.limitWidth(),
                          Unit.MM,
                          "2*k*zeta*(1+zeta)/Kf",
                          g.term("k"),
                          g.term("zeta"),
                          Term.exact("Kf", c.cutting(), Unit.MPA)))
                  .with("ap_lim", c.limitWidth() * sine)
                  .with("f_c", c.limitFrequency())
                  .caution("Good to a factor of two: damping and direction are guesses.");
            });
  }

  private static Reckoner chatterLobe() {
    return mode(Reckoner.of(ROOM, "chatter-lobe", "A point of a stability lobe"))
        .count("j", "whole waves between two passes", "0")
        .optional("f_c", Unit.HZ, "chatter frequency; that of least width if left out")
        .result("n", Unit.RPM, "spindle speed")
        .result("b", Unit.MM, "limit of the chip width there")
        .result("f_c", Unit.HZ, "chatter frequency")
        .result("residual", Unit.ONE, "how well the border condition is met, 0 is exact")
        .source(Sources.CHATTER)
        .rule(
            g -> {
              Chatter c = mode(g);
              double f = g.number("f_c", c.limitFrequency());
              double b = c.width(f);
              double n = c.speed(g.count("j"), f);
              return Answer.start()
                  .with("n", n)
                  .with("b", b)
                  .with("f_c", f)
                  .with("residual", c.residual(b, f, n));
            });
  }

  private static Reckoner orientation() {
    return Reckoner.of(ROOM, "chatter-orientation", "Orientation of cutting force and mode")
        .number("theta", Unit.DEG, "mode, from the direction of chip thickness")
        .number("beta", Unit.DEG, "force, from the direction of chip thickness")
        .result("u", Unit.ONE, "orientation factor")
        .source(Sources.CHATTER)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "u",
                        Working.of(
                            "u",
                            Unit.ONE,
                            "cos(theta)*cos(theta-beta)",
                            g.term("theta"),
                            g.term("beta"))));
  }

  private static Reckoner finish() {
    return Reckoner.of(ROOM, "surface-finish", "Roughness from feed and nose radius")
        .number("f", Unit.MM, "feed a turn")
        .number("r", Unit.MM, "nose radius")
        .result("Rt", Unit.MICRON, "peak to valley, f^2/(8r)")
        .result("Rt_exact", Unit.MICRON, "peak to valley, arc exact")
        .result("Ra", Unit.MICRON, "mean roughness, a quarter of it")
        .result("f_for_half", Unit.MM, "feed that halves the roughness")
        .source(Sources.FINISH)
        .rule(
            g -> {
              Term f = positive(g, "f");
              Term r = positive(g, "r");
              Working rt = Working.of("Rt", Unit.MICRON, "f^2/(8*r)", f, r);
              if (!(g.number("f") < 2 * g.number("r"))) {
                throw new IllegalArgumentException(
                    "f: found a feed of more than twice the nose radius; the nose leaves a thread,"
                        + " use pointed-finish");
              }
              Answer a =
                  Answer.start()
                      .with("Rt", rt)
                      .with(
                          "Rt_exact",
                          Working.of("Rt_exact", Unit.MICRON, "r-sqrt(r^2-f^2/4)", f, r))
                      .with("Ra", rt.value() / 4)
                      .with("f_for_half", g.number("f") / Math.sqrt(2));
              if (g.number("f") > g.number("r")) {
                a = a.caution("Feed above the nose radius: read the exact value.");
              }
              return g.number("f") < 0.03
                  ? a.caution("Feed below 0.03 mm: smear makes it rougher than this.")
                  : a.caution(
                      "Built-up edge and vibration make real finish 1.5 to 3 times as rough.");
            });
  }

  private static Reckoner pointedFinish() {
    return Reckoner.of(ROOM, "pointed-finish", "Roughness of a tool without nose radius")
        .number("f", Unit.MM, "feed a turn")
        .number("Cs", Unit.DEG, "side cutting edge angle (90 deg - kappa)")
        .number("Ce", Unit.DEG, "end cutting edge angle")
        .result("Rt", Unit.MICRON, "peak to valley")
        .result("Ra", Unit.MICRON, "mean roughness, a quarter of it")
        .source(Sources.FINISH)
        .rule(
            g -> {
              Working rt =
                  Working.of(
                      "Rt",
                      Unit.MICRON,
                      "f/(tan(Cs)+1/tan(Ce))",
                      positive(g, "f"),
                      within(g, "Cs", 0, 1.5),
                      within(g, "Ce", 0.001, 1.57));
              return Answer.start().with("Rt", rt).with("Ra", rt.value() / 4);
            });
  }

  private static Reckoner drilling() {
    return asked(Reckoner.of(ROOM, "drilling-thrust", "Thrust and torque of a twist drill"))
        .number("d", Unit.MM, "drill diameter")
        .number("f", Unit.MM, "feed a turn")
        .number("point", Unit.DEG, "point angle", "118")
        .number("thrust_share", Unit.ONE, "thrust over cutting force of both lips, assumed", "0.6")
        .number("pilot", Unit.MM, "diameter of the hole already there", "0")
        .optional("n", Unit.RPM, "speed, for the power")
        .optional("F_clamp", Unit.N, "thrust the tailstock clamp holds")
        .result("h", Unit.MM, "chip thickness")
        .result("Fc", Unit.N, "cutting force of both lips")
        .result("F_thrust", Unit.N, "thrust")
        .result("T", Unit.NM, "torque")
        .result("P", Unit.W, "power")
        .result("clamp_safety", Unit.ONE, "clamp over thrust")
        .source(Sources.DRILL)
        .rule(
            g -> {
              double d = Need.positive("d", g.number("d"));
              double pilot = Need.within("pilot", g.number("pilot"), 0, d * 0.999);
              double half = Need.within("point", g.number("point"), 0.8, 3.1) / 2;
              CuttingForce lip =
                  new CuttingForce(
                      unitForce(g), exponent(g), g.number("f") / 2, (d - pilot) / 2, half, 1);
              double force = 2 * lip.main();
              double thrust = force * Need.within("thrust_share", g.number("thrust_share"), 0, 3);
              double torque = force * (d + pilot) / 4;
              Answer a =
                  Answer.start()
                      .with("h", lip.thickness())
                      .with("Fc", force)
                      .with("F_thrust", thrust)
                      .with("T", torque);
              if (g.has("n")) {
                a = a.with("P", torque * g.number("n"));
              }
              if (g.has("F_clamp")) {
                double safety = g.number("F_clamp") / Need.positive("thrust", thrust);
                a = a.with("clamp_safety", safety);
                if (safety < 1.5) {
                  a = a.caution("The tailstock may slide: clamp harder, or drill in two steps.");
                }
              }
              return thin(a, lip.thickness())
                  .caution(
                      "Thrust share assumed. A drill that grabs pulls itself in: hold the tailstock"
                          + " chuck from turning, hands clear.");
            });
  }
}
