package fettle.mechanics.loop;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.solids.Limits;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on joints, members and the loop they form. */
public final class LoopReckoners {

  private static final String[] ENTRY = {"x", "y", "z", "rx", "ry", "rz"};

  private LoopReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>(JointReckoners.all());
    all.addAll(WayReckoners.all());
    all.addAll(TurningReckoners.all());
    all.addAll(List.of(offset(), moved(), share(), updated(), linear()));
    return List.copyOf(all);
  }

  private static Reckoner.Draft entries(Reckoner.Draft draft) {
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        Unit unit = i < 3 && j < 3 ? Unit.NM_PER_N : i >= 3 && j >= 3 ? Unit.RAD_PER_NMM : Unit.ONE;
        String words = i < 3 && j < 3 ? "" : i >= 3 && j >= 3 ? "" : " in 1/N";
        draft.result(
            "C_" + ENTRY[i] + "_" + (j < 3 ? "F" : "M") + ENTRY[j].substring(j < 3 ? 0 : 1),
            unit,
            (i < 3 ? "displacement u" : "rotation ")
                + ENTRY[i]
                + " per "
                + (j < 3 ? "force F" : "moment M")
                + ENTRY[j].substring(j < 3 ? 0 : 1)
                + words);
      }
    }
    return draft;
  }

  private static Answer answer(Compliance c) {
    Answer a = Answer.start();
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        a =
            a.with(
                "C_" + ENTRY[i] + "_" + (j < 3 ? "F" : "M") + ENTRY[j].substring(j < 3 ? 0 : 1),
                c.entry(i, j));
      }
    }
    return a;
  }

  private static Reckoner offset() {
    return entries(
            Reckoner.of(
                    "structures",
                    "offset-compliance",
                    "Clamped bar along x, compliance at a point off its tip")
                .number("L", Unit.MM, "length of the bar")
                .optional("d", Unit.MM, "diameter of a round bar")
                .optional("b", Unit.MM, "size of the section along y")
                .optional("h", Unit.MM, "size of the section along z; b if left out")
                .number("E", Unit.MPA, "Young's modulus", "110000")
                .number("nu", Unit.ONE, "Poisson's ratio", "0.26")
                .choice("shear", "shear flexibility", "neglected", "included")
                .number("x", Unit.MM, "offset from the tip along the bar", "0")
                .number("y", Unit.MM, "offset across", "0")
                .number("z", Unit.MM, "offset upwards", "0"))
        .source(Sources.CHAIN)
        .rule(LoopReckoners::offset);
  }

  private static Answer offset(Given g) {
    Limits.positive(g, "L", "d", "b", "h", "E");
    double nu = Limits.poisson(g.number("nu"));
    if (!g.has("d") && !g.has("b")) {
      throw new IllegalArgumentException("section: give d, or b and h");
    }
    BarMember bar =
        g.has("d")
            ? BarMember.round(g.number("L"), g.number("d"), 0, g.number("E"), nu)
            : BarMember.rectangular(
                g.number("L"), g.number("b"), g.number("h", g.number("b")), g.number("E"), nu);
    Compliance tip = Compliance.of(g.choice("shear").equals("included") ? bar : bar.withoutShear());
    return answer(tip.movedBy(g.number("x"), g.number("y"), g.number("z")));
  }

  private static Reckoner moved() {
    return entries(
            Reckoner.of("structures", "compliance-moved", "A 6x6 compliance at another point")
                .rows(
                    "C",
                    Unit.ONE,
                    "rows ux uy uz rx ry rz by Fx Fy Fz Mx My Mz, in mm/N, 1/N and rad/(N mm)")
                .number("x", Unit.MM, "offset of the new point along x", "0")
                .number("y", Unit.MM, "offset of the new point along y", "0")
                .number("z", Unit.MM, "offset of the new point along z", "0"))
        .source(Sources.CHAIN)
        .rule(
            g ->
                answer(
                    Compliance.of(g.rows("C"))
                        .movedBy(g.number("x"), g.number("y"), g.number("z"))));
  }

  private static Reckoner share() {
    return Reckoner.of("structures", "share-gain", "What a stiffer element gains for the loop")
        .number("share", Unit.PERCENT, "share of the element in the compliance")
        .number("g", Unit.ONE, "how many times stiffer it becomes")
        .result("gain", Unit.PERCENT, "drop of the loop's compliance")
        .result("most", Unit.PERCENT, "drop if the element became rigid")
        .result("stiffness", Unit.PERCENT, "rise of the loop's stiffness")
        .source(Sources.CHAIN)
        .rule(
            g -> {
              Limits.within("share", g.number("share"), 0, 1, Unit.PERCENT);
              Limits.positive(g, "g");
              Working gain =
                  Working.of("gain", Unit.PERCENT, "share*(1-1/g)", g.term("share"), g.term("g"));
              Answer a = Answer.start().with("gain", gain).with("most", g.number("share"));
              return gain.value() < 1 ? a.with("stiffness", 1 / (1 - gain.value()) - 1) : a;
            });
  }

  private static Reckoner updated() {
    return Reckoner.of(
            "structures", "updated-stiffness", "Assumed springs in series, corrected by readings")
        .numbers("k", Unit.N_PER_MM, "assumed stiffness of each spring")
        .input(
            "factor",
            fettle.mechanics.base.Input.Kind.NUMBERS,
            Unit.ONE,
            "doubt of each (one sigma as a factor), or one for all",
            "1.6",
            true)
        .rows(
            "H",
            Unit.ONE,
            "a row for each reading: how much of each spring's compliance it shows (1 for the"
                + " spring in the path, lever arm squared for tilting)")
        .numbers("y", Unit.MICRON_PER_N, "compliance read")
        .numbers("sd", Unit.MICRON_PER_N, "standard deviation of each reading, or one for all")
        .result("k_new", Unit.N_PER_MM, "corrected stiffness of each spring")
        .result("factor_new", Unit.ONE, "doubt left, one sigma as a factor")
        .result("rho", Unit.ONE, "correlation of the corrected springs, by rows")
        .result("chi2", Unit.ONE, "misfit of the readings; near their number if all is well")
        .source(Sources.LEAST_SQUARES)
        .rule(PushTest::reckoned);
  }

  private static Reckoner linear() {
    return Reckoner.of(
            "structures", "compliance-update", "Assumed compliances, corrected by readings, linear")
        .numbers("c", Unit.MICRON_PER_N, "assumed compliance of each spring")
        .numbers("sd_c", Unit.MICRON_PER_N, "standard deviation of each, or one for all")
        .rows("H", Unit.ONE, "a row for each reading: how much of each compliance it shows")
        .numbers("y", Unit.MICRON_PER_N, "compliance read")
        .numbers("sd", Unit.MICRON_PER_N, "standard deviation of each reading, or one for all")
        .result("c_new", Unit.MICRON_PER_N, "corrected compliances")
        .result("sd_new", Unit.MICRON_PER_N, "their standard deviations")
        .result("rho", Unit.ONE, "their correlations, by rows")
        .result("chi2", Unit.ONE, "misfit of the readings")
        .source(Sources.LEAST_SQUARES)
        .rule(PushTest::reckonedLinear);
  }
}
