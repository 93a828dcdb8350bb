package fettle.mechanics.solids;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.List;

/** What meshes say: order of convergence and error bar. */
final class MeshReckoners {

  private MeshReckoners() {}

  static List<Reckoner> all() {
    return List.of(convergence());
  }

  private static Reckoner convergence() {
    return Reckoner.of("structures", "grid-convergence", "Order and error from three meshes")
        .numbers("f", Unit.ONE, "value on the fine, the middle and the coarse mesh")
        .input(
            "r",
            fettle.mechanics.base.Input.Kind.NUMBERS,
            Unit.ONE,
            "refinement ratio, or two: middle/fine, coarse/middle",
            "2",
            true)
        .result("p", Unit.ONE, "observed order")
        .result("f0", Unit.ONE, "extrapolated value")
        .result("GCI", Unit.PERCENT, "grid convergence index of the fine pair, factor 1.25")
        .result("GCI_coarse", Unit.PERCENT, "grid convergence index of the coarse pair")
        .result("asymptotic", Unit.ONE, "ratio that is near 1 in the asymptotic range")
        .result("value", Unit.ONE, "value to quote")
        .result("bar", Unit.ONE, "half-width of its error bar")
        .source(Sources.ROACHE)
        .rule(MeshReckoners::convergence);
  }

  private static Answer convergence(Given g) {
    double[] f = g.numbers("f");
    double[] r = g.numbers("r");
    if (f.length != 3 || r.length < 1 || r.length > 2) {
      throw new IllegalArgumentException(
          "f needs three values, fine to coarse; r needs one ratio or two");
    }
    GridConvergence c = GridConvergence.of(f[0], f[1], f[2], r[0], r[r.length - 1]);
    Answer a =
        Answer.start()
            .with("p", c.order())
            .with("f0", c.limit())
            .with("value", c.centre(f[0]))
            .with("bar", c.bar(f[0], f[1]));
    if (f[0] != 0 && f[1] != 0) {
      a =
          a.with("GCI", c.fineIndex())
              .with("GCI_coarse", c.coarseIndex())
              .with("asymptotic", c.asymptotic());
    }
    return c.believable()
        ? a
        : a.caution(
            "Not converged: the order is outside 0.7 to 2.2 or the values do not approach from"
                + " one side; the bar is three times the last change.");
  }
}
