package fettle.mechanics.loop;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.solids.Limits;
import java.util.List;

/** What the loop's springs do to the turned part and to the quiet of the cut. */
final class TurningReckoners {

  private TurningReckoners() {}

  static List<Reckoner> all() {
    return List.of(betweenCentres(), chucked(), copying(), height(), dynamic(), frequency());
  }

  private static Reckoner betweenCentres() {
    return Reckoner.of("structures", "turned-between-centres", "Diameter error along the work")
        .number("L", Unit.MM, "distance between centres")
        .number("d", Unit.MM, "diameter of the work")
        .number("E", Unit.MPA, "Young's modulus of the work", "210000")
        .number("kA", Unit.N_PER_MM, "radial stiffness at the headstock centre")
        .number("kB", Unit.N_PER_MM, "radial stiffness at the tailstock centre")
        .number("kT", Unit.N_PER_MM, "radial stiffness of the tool side")
        .number("Fp", Unit.N, "radial force", "100")
        .input(
            "x",
            fettle.mechanics.base.Input.Kind.NUMBERS,
            Unit.MM,
            "places from the headstock centre; eleven even places if left out",
            null,
            false)
        .result("diameter", Unit.MICRON, "excess of diameter at these places")
        .result("taper", Unit.MICRON, "tailstock end minus headstock end")
        .result("barrel", Unit.MICRON, "middle minus mean of the ends")
        .result("spread", Unit.MICRON, "greatest minus least over the length")
        .source(Sources.PROFILE)
        .rule(TurningReckoners::betweenCentres);
  }

  private static Answer betweenCentres(Given g) {
    Limits.positive(g, "L", "d", "E", "kA", "kB", "kT");
    Limits.notNegative(g, "Fp");
    double length = g.number("L");
    double[] x = places(g, length);
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = excess(g, Limits.within("x", x[i], 0, length, Unit.MM));
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= 200; i++) {
      double v = excess(g, length * i / 200);
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    double head = excess(g, 0);
    double tail = excess(g, length);
    double middle = excess(g, length / 2);
    return Answer.start()
        .with("diameter", y)
        .with("taper", tail - head)
        .with("barrel", middle - (head + tail) / 2)
        .with("spread", high - low)
        .caution(
            "A constant set-back is dialled out; what stays on the part is the spread. Stiffness of"
                + " the tool side is taken as the same everywhere.");
  }

  private static double[] places(Given g, double length) {
    if (g.has("x")) {
      return g.numbers("x");
    }
    double[] x = new double[11];
    for (int i = 0; i < 11; i++) {
      x[i] = length * i / 10;
    }
    return x;
  }

  private static double excess(Given g, double x) {
    return TurnedProfile.betweenCentres(
        g.number("Fp"),
        x,
        g.number("L"),
        g.number("E") * Math.PI / 64 * Math.pow(g.number("d"), 4),
        g.number("kA"),
        g.number("kB"),
        g.number("kT"));
  }

  private static Reckoner chucked() {
    return Reckoner.of("structures", "turned-in-chuck", "Diameter error of work out of a chuck")
        .number("x", Unit.MM, "distance of the tool from the chuck")
        .number("d", Unit.MM, "diameter of the work")
        .number("E", Unit.MPA, "Young's modulus of the work", "210000")
        .number("kA", Unit.N_PER_MM, "radial stiffness of chuck and spindle")
        .number("Kt", Unit.NMM_PER_RAD, "tilt stiffness of chuck and spindle")
        .number("kT", Unit.N_PER_MM, "radial stiffness of the tool side")
        .number("Fp", Unit.N, "radial force", "100")
        .result("delta", Unit.MICRON, "radial set-back")
        .result("diameter", Unit.MICRON, "excess of diameter")
        .result("bell", Unit.MICRON, "excess of diameter over that at the chuck")
        .source(Sources.PROFILE)
        .rule(
            g -> {
              Limits.positive(g, "d", "E", "kA", "Kt", "kT");
              Limits.notNegative(g, "x", "Fp");
              Working delta =
                  Working.of(
                      "delta",
                      Unit.MICRON,
                      "Fp*(1/kA+x^2/Kt+x^3*64/(3*E*pi*d^4)+1/kT)",
                      g.term("Fp"),
                      g.term("kA"),
                      g.term("x"),
                      g.term("Kt"),
                      g.term("E"),
                      g.term("d"),
                      g.term("kT"));
              double rigid = g.number("Fp") * (1 / g.number("kA") + 1 / g.number("kT"));
              return Answer.start()
                  .with("delta", delta)
                  .with("diameter", 2 * delta.value())
                  .with("bell", 2 * (delta.value() - rigid))
                  .caution(
                      "Long work out of a chuck can whip and climb: support it with the tailstock"
                          + " or a steady beyond 3 to 4 diameters.");
            });
  }

  private static Reckoner copying() {
    return Reckoner.of("structures", "error-copying", "Run-out that a cut leaves behind")
        .number("d0", Unit.MICRON, "run-out or step before the cut")
        .number("k_sys", Unit.N_PER_MM, "stiffness from tool to work, radial")
        .number("k_cut", Unit.N_PER_MM, "radial force per depth of cut")
        .count("n", "number of passes", "1")
        .result("mu", Unit.ONE, "share that one pass leaves")
        .result("d", Unit.MICRON, "what is left after n passes")
        .source(Sources.PROFILE)
        .rule(
            g -> {
              Limits.positive(g, "k_sys");
              Limits.notNegative(g, "k_cut", "d0");
              Limits.within("n", g.count("n"), 0, 1000, Unit.ONE);
              Working mu =
                  Working.of(
                      "mu", Unit.ONE, "k_cut/(k_sys+k_cut)", g.term("k_cut"), g.term("k_sys"));
              return Answer.start()
                  .with("mu", mu)
                  .with("d", g.number("d0") * Math.pow(mu.value(), g.count("n")));
            });
  }

  private static Reckoner height() {
    return Reckoner.of("structures", "tool-height-error", "Radius change from a vertical movement")
        .number("dy", Unit.MICRON, "vertical movement of the tool")
        .number("R", Unit.MM, "radius of the work")
        .number("e", Unit.MM, "height of the tool off centre", "0")
        .result("dR", Unit.MICRON, "change of radius")
        .result("dD", Unit.MICRON, "change of diameter")
        .source(Sources.LEVEL)
        .rule(
            g -> {
              Limits.positive(g, "R");
              double r = g.number("R");
              double e = g.number("e");
              double up = e + g.number("dy");
              if (!(Math.abs(e) < r) || !(Math.abs(up) < r)) {
                throw Limits.outside("e", e, Unit.MM, "within the work's radius");
              }
              Working w =
                  Working.of(
                      "dR",
                      Unit.MICRON,
                      "abs(e*dy/R)+dy^2/(2*R)",
                      g.term("e"),
                      g.term("dy"),
                      g.term("R"));
              return Answer.start().with("dR", w).with("dD", 2 * w.value());
            });
  }

  private static Reckoner dynamic() {
    return Reckoner.of("structures", "dynamic-stiffness", "Least dynamic stiffness, chatter width")
        .number("zeta", Unit.ONE, "damping ratio")
        .optional("k", Unit.N_PER_MM, "static stiffness")
        .optional("Kf", Unit.MPA, "cutting force per chip width and thickness, projected")
        .result("ratio", Unit.ONE, "least dynamic over static stiffness, at resonance")
        .result("k_dyn", Unit.N_PER_MM, "least dynamic stiffness")
        .result("b", Unit.MM, "chip width that is stable at every speed")
        .source(Sources.OSCILLATOR)
        .rule(
            g -> {
              Limits.positive(g, "zeta", "k", "Kf");
              double zeta = g.number("zeta");
              boolean peak = zeta < Math.sqrt(0.5);
              Working ratio =
                  Working.of(
                      "ratio",
                      Unit.ONE,
                      peak ? "2*zeta*sqrt(1-zeta^2)" : "1+0*zeta",
                      g.term("zeta"));
              Answer a = Answer.start().with("ratio", ratio);
              if (g.has("k")) {
                a = a.with("k_dyn", ratio.value() * g.number("k"));
              }
              if (g.has("k") && g.has("Kf")) {
                a =
                    a.with(
                        "b",
                        Working.of(
                            "b",
                            Unit.MM,
                            "2*k*zeta*(1+zeta)/Kf",
                            g.term("k"),
                            g.term("zeta"),
                            g.term("Kf")));
              }
              return a.caution("Use it to compare two states, not as a promise of a quiet cut.");
            });
  }

  private static Reckoner frequency() {
    return Reckoner.of("structures", "natural-frequency", "Mass on a spring")
        .number("k", Unit.N_PER_MM, "stiffness")
        .number("m", Unit.KG, "mass that moves")
        .result("f", Unit.HZ, "frequency")
        .source(Sources.OSCILLATOR)
        .rule(
            g -> {
              Limits.positive(g, "k", "m");
              Term k = g.term("k");
              return Answer.start()
                  .with("f", Working.of("f", Unit.HZ, "sqrt(k/m)/(2*pi)", k, g.term("m")))
                  .caution("A rough figure: the mass that takes part is rarely known to 30 %.");
            });
  }
}
