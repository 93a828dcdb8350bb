package fettle.mechanics.loop;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.solids.Limits;
import java.util.List;

/** How stiff joints are: faces, slideways, gibs, bolted plates. */
final class JointReckoners {

  private static final String SCATTER =
      "Joint tables scatter by a factor of 1.6 (one sigma) and disagree with each other by up to 5"
          + " times; a push test on the machine settles it.";

  private JointReckoners() {}

  static List<Reckoner> all() {
    return List.of(face(), slideway(), gib(), dovetail(), frustum(), stack(), bolt(), vdiCone());
  }

  private static Reckoner face() {
    return Reckoner.of("structures", "joint-stiffness", "Spring per area of a flat machined joint")
        .choice("finish", "finish of the faces; given C and m go first", JointFinish.words())
        .optional("C", Unit.ONE, "approach in µm at 1 kgf/cm2")
        .optional("m", Unit.ONE, "exponent of the pressure")
        .optional("R", Unit.ONE, "tangential constant, same units")
        .optional("S", Unit.ONE, "tangential exponent; m if left out")
        .number("p", Unit.MPA, "mean pressure in the joint")
        .optional("A", Unit.MM2, "area of the joint")
        .result("lambda", Unit.MICRON, "approach of the faces")
        .result("k_n", Unit.N_PER_MM3, "normal stiffness per area")
        .result("k_t", Unit.N_PER_MM3, "tangential stiffness per area, clamped, before slip")
        .result("ratio", Unit.ONE, "k_t over k_n")
        .result("K_n", Unit.N_PER_MM, "normal stiffness of the area A")
        .result("K_t", Unit.N_PER_MM, "tangential stiffness of the area A")
        .source(Sources.ITO_NORMAL)
        .rule(JointReckoners::face);
  }

  private static Answer face(Given g) {
    Limits.positive(g, "C", "m", "R", "S", "p", "A");
    JointFinish finish = JointFinish.of(g.choice("finish"));
    double m = g.number("m", finish.exponent());
    double s = g.number("S", m);
    Limits.within("m", m, 0.01, 1, Unit.ONE);
    Limits.within("S", s, 0.01, 1, Unit.ONE);
    double c = g.number("C", finish.constant());
    Term cc = Term.exact("C", c);
    Term mm = Term.exact("m", m);
    Term r = Term.exact("R", g.number("R", 1.3 * c));
    Term ss = Term.exact("S", s);
    Term p = g.term("p");
    Working normal =
        Working.of("k_n", Unit.N_PER_MM3, "98.0665*(p/0.0980665)^(1-m)/(C*m)", p, mm, cc);
    Working tangential = Working.of("k_t", Unit.N_PER_MM3, "98.0665*(p/0.0980665)^S/R", p, ss, r);
    Answer a =
        Answer.start()
            .with("lambda", Working.of("lambda", Unit.MICRON, "C*(p/0.0980665)^m/1000", cc, p, mm))
            .with("k_n", normal)
            .with("k_t", tangential)
            .with(
                "ratio",
                Working.of("ratio", Unit.ONE, "k_t/k_n", Term.of(tangential), Term.of(normal)));
    if (g.has("A")) {
      a =
          a.with("K_n", normal.value() * g.number("A"))
              .with("K_t", tangential.value() * g.number("A"));
    }
    a = a.caution(SCATTER);
    return g.number("p") > 2.45
        ? a.caution("The pressure lies above 2.45 MPa, beyond the tests of this table.")
        : a;
  }

  private static Reckoner slideway() {
    return Reckoner.of("structures", "slideway-stiffness", "Spring per area of real slideways")
        .number("w", Unit.MM, "width of the slide")
        .number("p", Unit.MPA, "mean pressure", "0.1")
        .optional("C0", Unit.ONE, "approach in µm per kgf/cm2, instead of the table")
        .result("C0", Unit.ONE, "approach in µm per kgf/cm2")
        .result("k_n", Unit.N_PER_MM3, "normal stiffness per area")
        .result("k_low", Unit.N_PER_MM3, "low end of the table's band")
        .result("k_high", Unit.N_PER_MM3, "high end of the table's band")
        .source(Sources.LEVINA)
        .rule(JointReckoners::slideway);
  }

  private static Answer slideway(Given g) {
    Limits.positive(g, "w", "p", "C0");
    double[] band = Slideway.constants(g.number("w"));
    double constant = g.number("C0", (band[0] + band[1]) / 2);
    Answer a =
        Answer.start()
            .with("C0", constant)
            .with(
                "k_n", Working.of("k_n", Unit.N_PER_MM3, "98.0665/C0", Term.exact("C0", constant)))
            .with("k_low", Slideway.PRESSURE_UNIT / band[1])
            .with("k_high", Slideway.PRESSURE_UNIT / band[0])
            .caution(SCATTER);
    return g.number("p") > 0.3
        ? a.caution("Above 0.3 to 0.4 MPa the approach grows 40 to 50 % slower than this law says.")
        : a;
  }

  private static Reckoner gib() {
    return Reckoner.of("structures", "gib-stiffness", "Strip gib held by screws")
        .count("n", "number of gib screws")
        .number("k_s", Unit.N_PER_MM, "stiffness of one screw on its seat", "20000")
        .number("c_beam", Unit.MM_PER_N, "compliance of the strip between the screws", "0")
        .number("k_n", Unit.N_PER_MM3, "spring per area of the strip's contact")
        .optional("A", Unit.MM2, "effective contact area; from d, t and n if left out")
        .optional("d", Unit.MM, "screw diameter")
        .optional("t", Unit.MM, "strip thickness")
        .optional("h", Unit.MM, "height of the contact")
        .result("k", Unit.N_PER_MM, "stiffness of the gib")
        .result("A", Unit.MM2, "effective contact area")
        .source(Sources.PRACTICE)
        .rule(JointReckoners::gib);
  }

  private static Answer gib(Given g) {
    Limits.positive(g, "k_s", "k_n", "A", "d", "t", "h");
    Limits.notNegative(g, "c_beam");
    Limits.within("n", g.count("n"), 1, 1000, Unit.ONE);
    if (!g.has("A") && !(g.has("d") && g.has("t"))) {
      throw new IllegalArgumentException("give A, or d and t (and h)");
    }
    double patch = g.has("A") ? 0 : g.number("d") + 2 * g.number("t");
    double area = g.has("A") ? g.number("A") : g.count("n") * patch * g.number("h", patch);
    Term a = Term.exact("A", area, Unit.MM2);
    return Answer.start()
        .with("A", area)
        .with(
            "k",
            Working.of(
                "k",
                Unit.N_PER_MM,
                "1/(1/(n*k_s)+c_beam+1/(k_n*A))",
                g.term("n"),
                g.term("k_s"),
                g.term("c_beam"),
                g.term("k_n"),
                a))
        .caution(SCATTER);
  }

  private static Reckoner dovetail() {
    return Reckoner.of("structures", "dovetail-flank", "Dovetail flank pressed by a gib")
        .number("a", Unit.DEG, "flank angle from the horizontal", "60")
        .number("N", Unit.N, "force normal to the flank", "1")
        .number("k", Unit.N_PER_MM, "normal stiffness of the flank", "1")
        .result("down", Unit.N, "force that pulls the slide onto its ways")
        .result("spread", Unit.N, "force that spreads the cheeks")
        .result("k_up", Unit.N_PER_MM, "stiffness upwards")
        .result("k_across", Unit.N_PER_MM, "stiffness across")
        .source(Sources.WAYS)
        .rule(
            g -> {
              Limits.positive(g, "k");
              Limits.notNegative(g, "N");
              Limits.within("a", g.number("a"), 0, Math.PI / 2, Unit.DEG);
              Term a = g.term("a");
              return Answer.start()
                  .with("down", Working.of("down", Unit.N, "N*cos(a)", g.term("N"), a))
                  .with("spread", Working.of("spread", Unit.N, "N*sin(a)", g.term("N"), a))
                  .with("k_up", Working.of("k_up", Unit.N_PER_MM, "k*cos(a)^2", g.term("k"), a))
                  .with(
                      "k_across",
                      Working.of("k_across", Unit.N_PER_MM, "k*sin(a)^2", g.term("k"), a));
            });
  }

  private static Reckoner frustum() {
    return Reckoner.of("structures", "bolt-frustum", "Stiffness of a plate under a bolt head")
        .number("E", Unit.MPA, "Young's modulus of the plate", "207000")
        .number("d", Unit.MM, "bolt diameter")
        .optional("D", Unit.MM, "diameter of the bearing face; 1.5 d if left out")
        .number("t", Unit.MM, "thickness of the plate (frustum height)")
        .number("alpha", Unit.DEG, "half angle of the cone", "30")
        .result("k", Unit.N_PER_MICRON, "stiffness of the frustum")
        .result("footprint", Unit.MM, "diameter of the pressed area at the far face")
        .source(Sources.SHIGLEY)
        .rule(JointReckoners::frustum);
  }

  private static Answer frustum(Given g) {
    Limits.positive(g, "E", "d", "D", "t");
    Limits.within("alpha", g.number("alpha"), 1e-6, 1.5, Unit.DEG);
    Term head = Term.exact("D", g.number("D", 1.5 * g.number("d")), Unit.MM);
    if (!(head.value() > g.number("d"))) {
      throw Limits.outside("D", head.value(), Unit.MM, "greater than d");
    }
    Term d = g.term("d");
    Term t = g.term("t");
    Term angle = g.term("alpha");
    double k =
        BoltedJoint.frustum(
            g.number("E"), d.value(), head.value(), t.value(), Math.tan(angle.value()));
    return Answer.start()
        .with(
            "k",
            Working.check(
                "k",
                k,
                Unit.N_PER_MICRON,
                "pi*E*d*tan(alpha)/ln((2*t*tan(alpha)+D-d)*(D+d)/((2*t*tan(alpha)+D+d)*(D-d)))",
                g.term("E"),
                d,
                angle,
                t,
                head))
        .with("footprint", Working.of("footprint", Unit.MM, "D+2*t*tan(alpha)", head, t, angle));
  }

  private static Reckoner stack() {
    return Reckoner.of("structures", "bolted-stack", "Plates clamped by a bolt, frusta to mid-grip")
        .numbers("t", Unit.MM, "thicknesses from the head to the nut or thread")
        .numbers("E", Unit.MPA, "Young's moduli in the same order, or one for all")
        .number("d", Unit.MM, "bolt diameter")
        .optional("D", Unit.MM, "bearing diameter of head and nut; 1.5 d if left out")
        .number("alpha", Unit.DEG, "half angle of the cones", "30")
        .optional("k_b", Unit.N_PER_MM, "stiffness of the bolt")
        .result("k_m", Unit.N_PER_MICRON, "stiffness of the plates")
        .result("Phi", Unit.ONE, "share of an outer load that the bolt takes, k_b/(k_b+k_m)")
        .source(Sources.SHIGLEY)
        .rule(JointReckoners::stack);
  }

  private static Answer stack(Given g) {
    Limits.positive(g, "d", "D", "k_b");
    Limits.within("alpha", g.number("alpha"), 1e-6, 1.5, Unit.DEG);
    double[] t = g.numbers("t");
    double[] e = g.numbers("E");
    if (t.length == 0 || (e.length != 1 && e.length != t.length)) {
      throw new IllegalArgumentException("E needs one value, or as many as t");
    }
    double[] moduli = new double[t.length];
    for (int i = 0; i < t.length; i++) {
      Limits.positive("t", t[i], Unit.MM);
      moduli[i] = Limits.positive("E", e[e.length == 1 ? 0 : i], Unit.MPA);
    }
    double head = g.number("D", 1.5 * g.number("d"));
    if (!(head > g.number("d"))) {
      throw Limits.outside("D", head, Unit.MM, "greater than d");
    }
    double k = BoltedJoint.plates(t, moduli, g.number("d"), head, Math.tan(g.number("alpha")));
    Answer a = Answer.start().with("k_m", k);
    return g.has("k_b") ? a.with("Phi", g.number("k_b") / (g.number("k_b") + k)) : a;
  }

  private static Reckoner bolt() {
    return Reckoner.of("structures", "bolt-stiffness", "Stiffness of a bolt, shank and thread")
        .number("E", Unit.MPA, "Young's modulus", "207000")
        .number("Ad", Unit.MM2, "area of the shank")
        .number("ld", Unit.MM, "length of the shank in the grip")
        .number("At", Unit.MM2, "stress area of the thread")
        .number("lt", Unit.MM, "length of the thread in the grip")
        .result("k_b", Unit.N_PER_MICRON, "stiffness")
        .source(Sources.SHIGLEY)
        .rule(
            g -> {
              Limits.positive(g, "E", "Ad", "At");
              Limits.notNegative(g, "ld", "lt");
              Limits.positive("ld+lt", g.number("ld") + g.number("lt"), Unit.MM);
              return Answer.start()
                  .with(
                      "k_b",
                      Working.of(
                          "k_b",
                          Unit.N_PER_MICRON,
                          "E/(ld/Ad+lt/At)",
                          g.term("E"),
                          g.term("ld"),
                          g.term("Ad"),
                          g.term("lt"),
                          g.term("At")));
            });
  }

  private static Reckoner vdiCone() {
    return Reckoner.of("structures", "clamp-cone", "Cone angle of the plates under a bolt")
        .choice("thread", "through bolt with nut, or tapped hole", "through", "tapped")
        .number("l", Unit.MM, "grip")
        .number("dw", Unit.MM, "bearing diameter of the head")
        .number("DA", Unit.MM, "outer diameter of the clamped plates")
        .result("tan_phi", Unit.ONE, "tangent of the half angle")
        .result("phi", Unit.DEG, "half angle")
        .source(Sources.VDI)
        .rule(
            g -> {
              Limits.positive(g, "l", "dw", "DA");
              boolean through = g.choice("thread").equals("through");
              Working tan =
                  Working.of(
                      "tan_phi",
                      Unit.ONE,
                      through
                          ? "0.362+0.032*ln(l/dw/2)+0.153*ln(DA/dw)"
                          : "0.348+0.013*ln(l/dw)+0.193*ln(DA/dw)",
                      g.term("l"),
                      g.term("dw"),
                      g.term("DA"));
              Limits.positive("tan_phi", tan.value(), Unit.ONE);
              return Answer.start()
                  .with("tan_phi", tan)
                  .with("phi", Working.of("phi", Unit.DEG, "atan(tan_phi)", Term.of(tan)));
            });
  }
}
