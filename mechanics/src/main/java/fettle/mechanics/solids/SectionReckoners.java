package fettle.mechanics.solids;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Torsion constants: rectangle, closed cell, open section. */
final class SectionReckoners {

  private SectionReckoners() {}

  static List<Reckoner> all() {
    return List.of(rectangle(), closed(), open());
  }

  private static Reckoner rectangle() {
    return Reckoner.of("structures", "torsion-rectangle", "Torsion constant of a rectangular bar")
        .optional("a_over_b", Unit.ONE, "ratio of the sides, if the sides are not given")
        .optional("a", Unit.MM, "longer side")
        .optional("b", Unit.MM, "shorter side")
        .optional("T", Unit.NMM, "torque, for the shear stress")
        .result("k1", Unit.ONE, "coefficient, J = k1 a b^3")
        .result("k2", Unit.ONE, "coefficient of the greatest stress, T/(k2 a b^2)")
        .result("J", Unit.MM4, "torsion constant")
        .result("tau", Unit.MPA, "greatest shear stress under T")
        .source(Sources.TORSION)
        .rule(SectionReckoners::rectangle);
  }

  private static Answer rectangle(Given g) {
    Limits.positive(g, "a_over_b", "a", "b");
    if (g.has("a") && g.has("b")) {
      double a = Math.max(g.number("a"), g.number("b"));
      double b = Math.min(g.number("a"), g.number("b"));
      double k2 = Torsion.k2(a / b);
      Answer answer =
          Answer.start()
              .with("k1", Torsion.k1(a / b))
              .with("k2", k2)
              .with("J", Torsion.rectangle(a, b));
      return g.has("T") ? answer.with("tau", g.number("T") / (k2 * a * b * b)) : answer;
    }
    if (!g.has("a_over_b")) {
      throw new IllegalArgumentException("give a and b, or a_over_b");
    }
    double ratio = g.number("a_over_b");
    double longer = Math.max(ratio, 1 / ratio);
    return Answer.start().with("k1", Torsion.k1(longer)).with("k2", Torsion.k2(longer));
  }

  private static Reckoner closed() {
    return Reckoner.of("structures", "torsion-closed", "Torsion constant of a thin closed cell")
        .optional("a", Unit.MM, "one side of the middle line of a box")
        .optional("b", Unit.MM, "other side of the middle line of a box")
        .optional("Am", Unit.MM2, "area inside the middle line, if it is no box")
        .optional("s", Unit.MM, "length of the middle line, if it is no box")
        .number("t", Unit.MM, "wall")
        .optional("T", Unit.NMM, "torque, for the shear stress")
        .result("J", Unit.MM4, "torsion constant of the closed cell")
        .result("J_slit", Unit.MM4, "torsion constant once the cell is slit")
        .result("ratio", Unit.ONE, "closed over slit")
        .result("tau", Unit.MPA, "shear stress under T, closed")
        .source(Sources.BREDT)
        .rule(SectionReckoners::closed);
  }

  private static Answer closed(Given g) {
    Limits.positive(g, "a", "b", "Am", "s", "t");
    boolean box = g.has("a") && g.has("b");
    if (!box && !(g.has("Am") && g.has("s"))) {
      throw new IllegalArgumentException("give the sides a and b of the middle line, or Am and s");
    }
    Working closed =
        box
            ? Working.of("J", Unit.MM4, "2*(a*b)^2*t/(a+b)", g.term("a"), g.term("b"), g.term("t"))
            : Working.of("J", Unit.MM4, "4*Am^2*t/s", g.term("Am"), g.term("s"), g.term("t"));
    Working slit =
        box
            ? Working.of("J_slit", Unit.MM4, "2*(a+b)*t^3/3", g.term("a"), g.term("b"), g.term("t"))
            : Working.of("J_slit", Unit.MM4, "s*t^3/3", g.term("s"), g.term("t"));
    double inside = box ? g.number("a") * g.number("b") : g.number("Am");
    Answer a =
        Answer.start()
            .with("J", closed)
            .with("J_slit", slit)
            .with("ratio", closed.value() / slit.value());
    if (g.has("T")) {
      a = a.with("tau", g.number("T") / (2 * inside * g.number("t")));
    }
    double narrow = box ? Math.min(g.number("a"), g.number("b")) : Math.sqrt(inside);
    return g.number("t") > narrow / 5
        ? a.caution("The wall is thicker than a fifth of the cell: thin-wall theory is rough here.")
        : a;
  }

  private static Reckoner open() {
    return Reckoner.of("structures", "torsion-open", "Torsion constant of an open section")
        .numbers("b", Unit.MM, "lengths of the walls")
        .numbers("t", Unit.MM, "thicknesses of the walls, in the same order")
        .result("J", Unit.MM4, "sum of b t^3/3, thin walls")
        .result("J_rectangles", Unit.MM4, "sum of k1 b t^3, each wall as a rectangle")
        .source(Sources.TORSION)
        .rule(
            g -> {
              double[] b = g.numbers("b");
              double[] t = g.numbers("t");
              if (b.length == 0 || b.length != t.length) {
                throw new IllegalArgumentException("b and t need as many values as each other");
              }
              double thin = 0;
              double exact = 0;
              for (int i = 0; i < b.length; i++) {
                Limits.positive("b", b[i], Unit.MM);
                Limits.positive("t", t[i], Unit.MM);
                thin += b[i] * t[i] * t[i] * t[i] / 3;
                exact += Torsion.rectangle(b[i], t[i]);
              }
              return Answer.start().with("J", thin).with("J_rectangles", exact);
            });
  }
}
