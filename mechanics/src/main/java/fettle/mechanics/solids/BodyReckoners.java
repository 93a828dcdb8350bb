package fettle.mechanics.solids;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Closed forms of elastic bodies: constants, ring, plate, hole, contact patch, element locking. */
final class BodyReckoners {

  private BodyReckoners() {}

  static List<Reckoner> all() {
    return List.of(constants(), cylinder(), plate(), hole(), patch(), locking());
  }

  private static Reckoner constants() {
    return Reckoner.of("structures", "elastic-constants", "Shear, bulk and Lamé constants")
        .number("E", Unit.MPA, "Young's modulus")
        .number("nu", Unit.ONE, "Poisson's ratio")
        .result("G", Unit.MPA, "shear modulus")
        .result("lambda", Unit.MPA, "first Lamé constant")
        .result("K", Unit.MPA, "bulk modulus")
        .source(Sources.HOOKE)
        .rule(
            g -> {
              Limits.positive(g, "E");
              Limits.poisson(g.number("nu"));
              Term e = g.term("E");
              Term nu = g.term("nu");
              return Answer.start()
                  .with("G", Working.of("G", Unit.MPA, "E/(2*(1+nu))", e, nu))
                  .with("lambda", Working.of("lambda", Unit.MPA, "E*nu/((1+nu)*(1-2*nu))", e, nu))
                  .with("K", Working.of("K", Unit.MPA, "E/(3*(1-2*nu))", e, nu));
            });
  }

  private static Reckoner cylinder() {
    return Reckoner.of("structures", "thick-cylinder", "Ring or tube under pressure (Lamé)")
        .number("ri", Unit.MM, "radius of the bore")
        .number("ro", Unit.MM, "outer radius")
        .number("p", Unit.MPA, "pressure in the bore", "0")
        .number("po", Unit.MPA, "pressure outside", "0")
        .number("E", Unit.MPA, "Young's modulus", "110000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.26")
        .choice("state", "axial state", "plane-strain", "plane-stress", "closed-ends")
        .result("u_bore", Unit.MICRON, "radial displacement of the bore")
        .result("u_outer", Unit.MICRON, "radial displacement of the outside")
        .result("hoop_bore", Unit.MPA, "hoop stress at the bore")
        .result("hoop_outer", Unit.MPA, "hoop stress at the outside")
        .result("axial", Unit.MPA, "axial stress")
        .source(Sources.LAME)
        .rule(BodyReckoners::cylinder);
  }

  private static Answer cylinder(Given g) {
    Limits.positive(g, "ri", "ro", "E");
    double nu = Limits.poisson(g.number("nu"));
    double ri = g.number("ri");
    double ro = g.number("ro");
    if (!(ro > ri)) {
      throw Limits.outside("ro", ro, Unit.MM, "greater than ri");
    }
    double e = g.number("E");
    double p = g.number("p");
    double po = g.number("po");
    double span = ro * ro - ri * ri;
    double mean = (p * ri * ri - po * ro * ro) / span;
    double b = (p - po) * ri * ri * ro * ro / span;
    double axial =
        switch (g.choice("state")) {
          case "plane-strain" -> 2 * nu * mean;
          case "plane-stress" -> 0;
          default -> mean;
        };
    return Answer.start()
        .with("u_bore", radial(ri, mean, b, axial, e, nu))
        .with("u_outer", radial(ro, mean, b, axial, e, nu))
        .with("hoop_bore", mean + b / (ri * ri))
        .with("hoop_outer", mean + b / (ro * ro))
        .with("axial", axial);
  }

  private static double radial(double r, double mean, double b, double axial, double e, double nu) {
    double hoop = mean + b / (r * r);
    double across = mean - b / (r * r);
    return r / e * (hoop - nu * (across + axial));
  }

  private static Reckoner plate() {
    return Reckoner.of("structures", "circular-plate", "Round plate under even pressure")
        .number("a", Unit.MM, "radius")
        .number("t", Unit.MM, "thickness")
        .number("q", Unit.MPA, "pressure")
        .number("E", Unit.MPA, "Young's modulus", "210000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.3")
        .choice("edge", "how the edge is held", "clamped", "supported")
        .result("D", Unit.NMM, "plate stiffness")
        .result("w", Unit.MM, "deflection of the centre, thin plate")
        .result("w_shear", Unit.MM, "addition by shear, coefficient 5/6")
        .result("w_thick", Unit.MM, "deflection with shear")
        .result("sigma", Unit.MPA, "greatest bending stress")
        .source(Sources.PLATE)
        .rule(BodyReckoners::plate);
  }

  private static Answer plate(Given g) {
    Limits.positive(g, "a", "t", "E", "q");
    Limits.poisson(g.number("nu"));
    boolean clamped = g.choice("edge").equals("clamped");
    Working d =
        Working.of("D", Unit.NMM, "E*t^3/(12*(1-nu^2))", g.term("E"), g.term("t"), g.term("nu"));
    Working w =
        clamped
            ? Working.of("w", Unit.MM, "q*a^4/(64*D)", g.term("q"), g.term("a"), Term.of(d))
            : Working.of(
                "w",
                Unit.MM,
                "(5+nu)/(1+nu)*q*a^4/(64*D)",
                g.term("nu"),
                g.term("q"),
                g.term("a"),
                Term.of(d));
    Working shear =
        Working.of(
            "w_shear",
            Unit.MM,
            "q*a^2*2*(1+nu)/(4*5/6*E*t)",
            g.term("q"),
            g.term("a"),
            g.term("nu"),
            g.term("E"),
            g.term("t"));
    Working sigma =
        Working.of(
            "sigma",
            Unit.MPA,
            clamped ? "3*q*a^2/(4*t^2)" : "3*(3+nu)*q*a^2/(8*t^2)",
            g.term("q"),
            g.term("a"),
            g.term("t"),
            g.term("nu"));
    Answer a =
        Answer.start()
            .with("D", d)
            .with("w", w)
            .with("w_shear", shear)
            .with(
                "w_thick", Working.of("w_thick", Unit.MM, "w+w_shear", Term.of(w), Term.of(shear)))
            .with("sigma", sigma);
    return w.value() > g.number("t") / 2
        ? a.caution("The deflection exceeds half the thickness: the linear theory overstates it.")
        : a;
  }

  private static Reckoner hole() {
    return Reckoner.of("structures", "plate-hole", "Stress concentration at a hole in a wide strip")
        .optional("d_over_W", Unit.ONE, "hole diameter over strip width; 0 for a wide plate")
        .optional("d", Unit.MM, "hole diameter")
        .optional("W", Unit.MM, "strip width")
        .result("Kt", Unit.ONE, "factor on the stress of the net section")
        .result("Kt_gross", Unit.ONE, "factor on the stress of the full section")
        .source(Sources.KIRSCH)
        .rule(
            g -> {
              if (!g.has("d_over_W") && !(g.has("d") && g.has("W"))) {
                throw new IllegalArgumentException("give d_over_W, or d and W");
              }
              Limits.positive(g, "W");
              double x = g.has("d_over_W") ? g.number("d_over_W") : g.number("d") / g.number("W");
              Limits.within("d_over_W", x, 0, 0.999999, Unit.ONE);
              Term ratio = Term.exact("x", x);
              Working net = Working.of("Kt", Unit.ONE, "2+(1-x)^3", ratio);
              return Answer.start()
                  .with("Kt", net)
                  .with(
                      "Kt_gross", Working.of("Kt_gross", Unit.ONE, "Kt/(1-x)", Term.of(net), ratio))
                  .caution("A guide only: cast iron breaks without warning, and shock adds to it.");
            });
  }

  private static Reckoner patch() {
    return Reckoner.of("structures", "contact-patch", "Round pad on a large body")
        .number("a", Unit.MM, "radius of the pad")
        .number("E", Unit.MPA, "Young's modulus", "110000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.26")
        .result("k_n", Unit.N_PER_MM, "rigid pad pressed in, frictionless")
        .result("k_t", Unit.N_PER_MM, "rigid pad pushed sideways")
        .result("k_rock", Unit.NMM_PER_RAD, "rigid pad tilted")
        .result("k_spin", Unit.NMM_PER_RAD, "rigid pad turned about its normal")
        .result("k_mean", Unit.N_PER_MM, "even pressure, by the mean displacement")
        .result("k_centre", Unit.N_PER_MM, "even pressure, by the displacement of the centre")
        .result("k_edge", Unit.N_PER_MM, "even pressure, by the displacement of the edge")
        .result("ratio", Unit.ONE, "mean displacement under even pressure over rigid pad")
        .source(Sources.PUNCH)
        .rule(
            g -> {
              Limits.positive(g, "a", "E");
              Limits.poisson(g.number("nu"));
              Term e = g.term("E");
              Term nu = g.term("nu");
              Term a = g.term("a");
              Working normal = Working.of("k_n", Unit.N_PER_MM, "2*E*a/(1-nu^2)", e, a, nu);
              return Answer.start()
                  .with("k_n", normal)
                  .with("k_t", Working.of("k_t", Unit.N_PER_MM, "4*E*a/((1+nu)*(2-nu))", e, a, nu))
                  .with(
                      "k_rock",
                      Working.of("k_rock", Unit.NMM_PER_RAD, "4*E*a^3/(3*(1-nu^2))", e, a, nu))
                  .with(
                      "k_spin",
                      Working.of("k_spin", Unit.NMM_PER_RAD, "8*E*a^3/(3*(1+nu))", e, a, nu))
                  .with(
                      "k_mean",
                      Working.of("k_mean", Unit.N_PER_MM, "3*pi^2*E*a/(16*(1-nu^2))", e, a, nu))
                  .with(
                      "k_centre",
                      Working.of("k_centre", Unit.N_PER_MM, "pi*E*a/(2*(1-nu^2))", e, a, nu))
                  .with(
                      "k_edge",
                      Working.of("k_edge", Unit.N_PER_MM, "pi^2*E*a/(4*(1-nu^2))", e, a, nu))
                  .with("ratio", 32 / (3 * Math.PI * Math.PI));
            });
  }

  private static Reckoner locking() {
    return Reckoner.of(
            "structures", "element-locking", "How much too stiff a plain 4-node cell bends")
        .number("a_over_b", Unit.ONE, "length of the cell over its thickness")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.3")
        .result("factor", Unit.ONE, "moment it takes over the exact moment, plane stress")
        .source(Sources.COOK)
        .rule(
            g -> {
              Limits.positive(g, "a_over_b");
              Limits.poisson(g.number("nu"));
              return Answer.start()
                  .with(
                      "factor",
                      Working.of(
                          "factor",
                          Unit.ONE,
                          "(1/(1-nu)+a_over_b^2/2)/(1+nu)",
                          g.term("nu"),
                          g.term("a_over_b")));
            });
  }
}
