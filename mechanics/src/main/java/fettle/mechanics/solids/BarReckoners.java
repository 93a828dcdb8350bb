package fettle.mechanics.solids;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;
import java.util.Map;

/** Bars: how far they bend, stretch, twist, rest on springs and how fast they swing. */
final class BarReckoners {

  private static final Map<String, String> HELD =
      Map.of(
          "centres", "F*x^2*(L-x)^2/(3*E*I*L)",
          "chuck", "F*x^3/(3*E*I)",
          "chuck-and-centre", "F*x^3/(3*E*I) - F*x^4*(3*L-x)^2/(12*E*I*L^3)",
          "both-fixed", "F*x^3*(L-x)^3/(3*E*I*L^3)");

  private BarReckoners() {}

  static List<Reckoner> all() {
    return List.of(cantilever(), workDeflection(), steppedBar(), foundation(), barFrequency());
  }

  private static Reckoner cantilever() {
    return BarSection.inputs(
            Reckoner.of("structures", "cantilever", "Bar clamped at one end, force at the other")
                .number("L", Unit.MM, "free length")
                .number("F", Unit.N, "force at the tip", "1")
                .number("E", Unit.MPA, "Young's modulus", "210000")
                .optional("nu", Unit.ONE, "Poisson's ratio; given, shear is added"))
        .result("delta", Unit.MM, "deflection of the tip, with shear if nu is given")
        .result("delta_b", Unit.MM, "share of bending")
        .result("delta_s", Unit.MM, "share of shear")
        .result("theta", Unit.RAD, "slope at the tip")
        .result("k", Unit.N_PER_MM, "stiffness F/delta")
        .result("u", Unit.MM, "stretch if the same force pulls along the bar")
        .result("I", Unit.MM4, "second moment of area")
        .result("kappa", Unit.ONE, "shear coefficient")
        .source(Sources.COWPER)
        .rule(BarReckoners::cantilever);
  }

  private static Answer cantilever(Given g) {
    Limits.positive(g, "L", "E", "F");
    BarSection s = BarSection.of(g);
    Term i = Term.of(s.secondMoment());
    Working bending =
        Working.of("delta_b", Unit.MM, "F*L^3/(3*E*I)", g.term("F"), g.term("L"), g.term("E"), i);
    Answer a =
        Answer.start()
            .with("I", s.secondMoment())
            .with("delta_b", bending)
            .with(
                "theta",
                Working.of(
                    "theta", Unit.RAD, "F*L^2/(2*E*I)", g.term("F"), g.term("L"), g.term("E"), i));
    Working total = bending;
    boolean area = s.area().value() > 0;
    if (g.has("nu") && area) {
      Limits.poisson(g.number("nu"));
      Working kappa = s.shearCoefficient(g);
      Working shear =
          Working.of(
              "delta_s",
              Unit.MM,
              "F*L*2*(1+nu)/(kappa*E*A)",
              g.term("F"),
              g.term("L"),
              g.term("nu"),
              Term.of(kappa),
              g.term("E"),
              Term.of(s.area()));
      total = Working.of("delta", Unit.MM, "delta_b+delta_s", Term.of(bending), Term.of(shear));
      a = a.with("kappa", kappa).with("delta_s", shear);
    }
    a =
        a.with("delta", Working.of("delta", Unit.MM, "delta", delta(total)))
            .with("k", Working.of("k", Unit.N_PER_MM, "F/delta", g.term("F"), delta(total)));
    return area
        ? a.with(
            "u",
            Working.of(
                "u",
                Unit.MM,
                "F*L/(E*A)",
                g.term("F"),
                g.term("L"),
                g.term("E"),
                Term.of(s.area())))
        : a;
  }

  private static Term delta(Working total) {
    return Term.exact("delta", total.value(), Unit.MM);
  }

  private static Reckoner workDeflection() {
    return BarSection.inputs(
            Reckoner.of("structures", "work-deflection", "Bar in the lathe, bent by the tool")
                .choice(
                    "held",
                    "how the work is held",
                    "centres",
                    "chuck",
                    "chuck-and-centre",
                    "both-fixed")
                .number("L", Unit.MM, "length between the supports, or out of the chuck")
                .optional("x", Unit.MM, "where the tool stands, from the headstock")
                .number("F", Unit.N, "force", "100")
                .number("E", Unit.MPA, "Young's modulus", "210000"))
        .result("delta", Unit.MICRON, "deflection where the force acts")
        .result("k", Unit.N_PER_MM, "stiffness there")
        .result("diameter", Unit.MICRON, "excess of diameter, twice the deflection")
        .source(Sources.BEAM)
        .rule(BarReckoners::workDeflection);
  }

  private static Answer workDeflection(Given g) {
    Limits.positive(g, "L", "E", "F");
    String held = g.choice("held");
    double length = g.number("L");
    double x = g.number("x", held.equals("chuck") ? length : length / 2);
    Limits.within("x", x, 0, length, Unit.MM);
    BarSection s = BarSection.of(g);
    Working delta =
        Working.of(
            "delta",
            Unit.MICRON,
            HELD.getOrDefault(held, ""),
            g.term("F"),
            Term.exact("x", x, Unit.MM),
            g.term("L"),
            g.term("E"),
            Term.of(s.secondMoment()));
    Answer a =
        Answer.start()
            .showing(s.secondMoment())
            .with("delta", delta)
            .with("diameter", 2 * delta.value());
    if (delta.value() > 0) {
      a = a.with("k", g.number("F") / delta.value());
    }
    return a.caution(
        "Chuck and centres are taken as rigid; the work is stiffer here than in the machine.");
  }

  private static Reckoner steppedBar() {
    return Reckoner.of("structures", "stepped-bar", "Stepped round bar: stretch, bending, twist")
        .numbers("d", Unit.MM, "diameters from the clamped end (headstock end) outwards")
        .numbers("L", Unit.MM, "lengths of the steps in the same order")
        .number("E", Unit.MPA, "Young's modulus", "210000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.3")
        .number("F", Unit.N, "force, along or across", "1")
        .number("T", Unit.NMM, "torque", "1")
        .choice("held", "how it is held for bending", "chuck", "centres")
        .optional("x", Unit.MM, "where the force acts, from the headstock end")
        .result("axial", Unit.MM, "stretch under F along the bar")
        .result("bending", Unit.MM, "deflection where the force acts across the bar")
        .result("twist", Unit.RAD, "twist under T")
        .source(Sources.BEAM)
        .rule(BarReckoners::steppedBar);
  }

  private static Answer steppedBar(Given g) {
    Limits.positive(g, "E", "F");
    double[] d = g.numbers("d");
    double[] l = g.numbers("L");
    if (d.length == 0 || d.length != l.length) {
      throw new IllegalArgumentException(
          "d has " + d.length + " values, L has " + l.length + "; give one length a diameter");
    }
    double e = g.number("E");
    double shear = e / (2 * (1 + Limits.poisson(g.number("nu"))));
    double total = 0;
    double axial = 0;
    double twist = 0;
    for (int i = 0; i < d.length; i++) {
      Limits.positive("d", d[i], Unit.MM);
      total += Limits.positive("L", l[i], Unit.MM);
      axial += g.number("F") * l[i] / (e * Math.PI / 4 * d[i] * d[i]);
      twist += g.number("T") * l[i] / (shear * Math.PI / 32 * Math.pow(d[i], 4));
    }
    boolean chuck = g.choice("held").equals("chuck");
    double x = Limits.within("x", g.number("x", chuck ? total : total / 2), 0, total, Unit.MM);
    double bending = 0;
    double at = 0;
    for (int i = 0; i < d.length; i++) {
      double stiffness = e * Math.PI / 64 * Math.pow(d[i], 4);
      double end = at + l[i];
      double cut = Math.min(Math.max(x, at), end);
      bending += momentSquared(at, cut, x, total, chuck) / stiffness;
      bending += momentSquared(cut, end, x, total, chuck) / stiffness;
      at = end;
    }
    return Answer.start()
        .with("axial", axial)
        .with("bending", g.number("F") * bending)
        .with("twist", twist)
        .caution(
            "Bar theory: a step adds about 0.2 of the smaller diameter to the length of the thin"
                + " part in stretch; a sharp inner corner is weak.");
  }

  private static double momentSquared(
      double from, double to, double x, double total, boolean chuck) {
    double middle = (from + to) / 2;
    double a = moment(from, x, total, chuck);
    double m = moment(middle, x, total, chuck);
    double b = moment(to, x, total, chuck);
    return (to - from) / 6 * (a * a + 4 * m * m + b * b);
  }

  private static double moment(double s, double x, double total, boolean chuck) {
    if (chuck) {
      return Math.max(0, x - s);
    }
    return s <= x ? s * (total - x) / total : x * (total - s) / total;
  }

  private static Reckoner foundation() {
    return BarSection.inputs(
            Reckoner.of(
                    "structures", "beam-on-foundation", "Bar on a springy bed (Winkler), one force")
                .choice(
                    "case", "where the force acts", "infinite", "semi-infinite", "centre", "end")
                .number("F", Unit.N, "force", "1")
                .number("E", Unit.MPA, "Young's modulus", "110000")
                .number("k", Unit.N_PER_MM3, "spring per area of the bed")
                .optional("w", Unit.MM, "width of the bed; the width b of the bar if left out")
                .optional("L", Unit.MM, "length of the bar, for centre and end"))
        .result("beta", Unit.PER_MM, "characteristic: one over the elastic length")
        .result("delta", Unit.MM, "deflection under the force")
        .result("K", Unit.N_PER_MM, "stiffness under the force")
        .result("ratio", Unit.ONE, "deflection over that of a rigid bar (centre and end)")
        .source(Sources.FOUNDATION)
        .rule(BarReckoners::foundation);
  }

  private static Answer foundation(Given g) {
    Limits.positive(g, "F", "E", "k", "w", "L");
    BarSection s = BarSection.of(g);
    if (!g.has("w") && !g.has("b")) {
      throw new IllegalArgumentException("w: give the width of the bed");
    }
    Term width = g.has("w") ? g.term("w") : Term.exact("w", g.number("b"), Unit.MM);
    Working beta =
        Working.of(
            "beta",
            Unit.PER_MM,
            "(k*w/(4*E*I))^0.25",
            g.term("k"),
            width,
            g.term("E"),
            Term.of(s.secondMoment()));
    String where = g.choice("case");
    boolean finite = where.equals("centre") || where.equals("end");
    double bl = finite ? beta.value() * length(g) : Double.POSITIVE_INFINITY;
    double factor =
        switch (where) {
          case "infinite" -> 0.5;
          case "semi-infinite" -> 2;
          case "centre" -> centreFactor(bl);
          default -> endFactor(bl);
        };
    Working delta =
        Working.of(
            "delta",
            Unit.MM,
            "c*F*beta/(k*w)",
            Term.exact("c", factor),
            g.term("F"),
            Term.of(beta),
            g.term("k"),
            width);
    Answer a =
        Answer.start()
            .showing(s.secondMoment())
            .with("beta", beta)
            .with("delta", delta)
            .with("K", g.number("F") / delta.value());
    if (finite) {
      double rigid = g.number("F") / (g.number("k") * width.value() * length(g));
      a = a.with("ratio", delta.value() / (where.equals("end") ? 4 * rigid : rigid));
    }
    return a;
  }

  private static double length(Given g) {
    if (!g.has("L")) {
      throw new IllegalArgumentException("L: give the length of the bar");
    }
    return g.number("L");
  }

  private static double centreFactor(double bl) {
    if (bl > 50) {
      return 0.5;
    }
    return (Math.cosh(bl) + Math.cos(bl) + 2) / (Math.sinh(bl) + Math.sin(bl)) / 2;
  }

  private static double endFactor(double bl) {
    if (bl > 50) {
      return 2;
    }
    if (bl < 0.05) {
      return 4 / bl;
    }
    double sh = Math.sinh(bl);
    double sn = Math.sin(bl);
    return 2 * (sh * Math.cosh(bl) - sn * Math.cos(bl)) / (sh * sh - sn * sn);
  }

  private static Reckoner barFrequency() {
    return BarSection.inputs(
            Reckoner.of("structures", "bar-frequency", "Bending frequency of a bar")
                .choice(
                    "held",
                    "how the bar is held",
                    "cantilever",
                    "pinned",
                    "fixed",
                    "free",
                    "fixed-pinned")
                .count("mode", "number of the bending mode", "1")
                .number("L", Unit.MM, "length")
                .number("E", Unit.MPA, "Young's modulus", "210000")
                .number("rho", Unit.KG_PER_M3, "density", "7850"))
        .result("f", Unit.HZ, "frequency")
        .result("betaL", Unit.ONE, "root of the frequency equation")
        .source(Sources.BEAM)
        .rule(BarReckoners::barFrequency);
  }

  private static Answer barFrequency(Given g) {
    Limits.positive(g, "L", "E", "rho");
    int mode = g.count("mode");
    Limits.within("mode", mode, 1, 100, Unit.ONE);
    BarSection s = BarSection.of(g);
    if (!(s.area().value() > 0)) {
      throw new IllegalArgumentException("A: give the area with I");
    }
    Term root = Term.exact("betaL", root(g.choice("held"), mode));
    return Answer.start()
        .showing(s.secondMoment())
        .with("betaL", root.value())
        .with(
            "f",
            Working.of(
                "f",
                Unit.HZ,
                "betaL^2/(2*pi*L^2)*sqrt(E*I/(rho*A))",
                root,
                g.term("L"),
                g.term("E"),
                Term.of(s.secondMoment()),
                g.term("rho"),
                Term.of(s.area())));
  }

  private static double root(String held, int mode) {
    if (held.equals("pinned")) {
      return mode * Math.PI;
    }
    boolean propped = held.equals("fixed-pinned");
    double sign = held.equals("cantilever") ? 1 : -1;
    double start =
        propped ? (4 * mode + 1) * Math.PI / 4 : (2 * mode + (sign > 0 ? -1 : 1)) * Math.PI / 2;
    double low = start - 0.4;
    double high = start + 0.4;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      double a = frequencyEquation(low, propped, sign);
      if (a * frequencyEquation(middle, propped, sign) <= 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double frequencyEquation(double x, boolean propped, double sign) {
    return propped ? Math.tan(x) - Math.tanh(x) : Math.cos(x) + sign / Math.cosh(x);
  }
}
