package fettle.mechanics.joints;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on keys, pins, set-screws, shafts in torsion and knurls. */
final class KeyReckoners {

  private KeyReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        parallelKey(),
        keyPressure(),
        crossPin(),
        shearPin(),
        setScrew(),
        thumbScrew(),
        torsion(),
        knurl());
  }

  private static Reckoner parallelKey() {
    return Reckoner.of("joints", "parallel-key", "Parallel key for a shaft, DIN 6885-1")
        .number("d", Unit.MM, "shaft diameter, over 6 to 110 mm")
        .result("b", Unit.MM, "width")
        .result("h", Unit.MM, "height")
        .result("t1", Unit.MM, "depth in the shaft")
        .result("t2", Unit.MM, "depth in the hub")
        .result("shaft_width", Unit.ONE, "tolerance of the keyway in the shaft")
        .result("hub_width", Unit.ONE, "tolerance of the keyway in the hub")
        .source(Sources.KEYS)
        .rule(
            g -> {
              ParallelKey key = ParallelKey.of(g.number("d"));
              return Answer.start()
                  .with("b", key.width())
                  .with("h", key.height())
                  .with("t1", key.shaftDepth())
                  .with("t2", key.hubDepth())
                  .with("shaft_width", "N9, or P9 if tight")
                  .with("hub_width", "JS9, or P9 if tight");
            });
  }

  private static Reckoner keyPressure() {
    return Reckoner.of("joints", "key-pressure", "Load of a parallel key")
        .number("torque", Unit.NM, "torque")
        .number("d", Unit.MM, "shaft diameter")
        .number("l", Unit.MM, "length of the key")
        .choice("ends", "shape of its ends", "round", "square")
        .choice("hub", "material of the hub", "steel", "cast-iron", "aluminium")
        .choice("load", "how the torque comes", "steady", "reversing")
        .optional("h", Unit.MM, "height of the key, if not the standard one")
        .optional("t1", Unit.MM, "depth in the shaft, if not the standard one")
        .optional("b", Unit.MM, "width of the key, if not the standard one")
        .result("p", Unit.MPA, "pressure on the side in the hub")
        .result("shear", Unit.MPA, "shear of the key")
        .result("limit", Unit.MPA, "usual limit of the pressure")
        .result("l_eff", Unit.MM, "length that bears")
        .result("torque_limit", Unit.NM, "torque at that limit")
        .source(Sources.KEY_LOAD)
        .rule(KeyReckoners::keyLoad);
  }

  private static Answer keyLoad(Given g) {
    double d = Bound.positive("d", g.number("d"), "mm");
    ParallelKey key = key(g, d);
    double length = Bound.positive("l", g.number("l"), "mm");
    double bearing = g.choice("ends").equals("round") ? length - key.width() : length;
    if (!(bearing > 0)) {
      throw new IllegalArgumentException(
          "l = " + length + " mm: a key with round ends must be longer than its width");
    }
    Bound.notNegative("torque", g.number("torque"), "N mm");
    Term bears = Term.exact("l_eff", bearing, Unit.MM);
    Working p =
        Working.check(
            "p",
            key.sidePressure(g.number("torque"), d, bearing),
            Unit.MPA,
            "2*torque/(d*(h - t1)*l_eff)",
            g.term("torque"),
            g.term("d"),
            Term.exact("h", key.height(), Unit.MM),
            Term.exact("t1", key.shaftDepth(), Unit.MM),
            bears);
    double limit =
        switch (g.choice("hub")) {
              case "cast-iron" -> 45.0;
              case "aluminium" -> 40.0;
              default -> 90.0;
            }
            / (g.choice("load").equals("reversing") ? 2 : 1);
    Answer answer =
        Answer.start()
            .with("p", p)
            .with("shear", key.shear(g.number("torque"), d, bearing))
            .with("limit", limit)
            .with("l_eff", bearing)
            .with("torque_limit", limit * d * (key.height() - key.shaftDepth()) * bearing / 2);
    return p.value() <= limit
        ? answer
        : answer.caution("above the usual limit: longer key, or two, or a larger shaft");
  }

  private static ParallelKey key(Given g, double d) {
    if (g.has("h") && g.has("t1") && g.has("b")) {
      Bound.positive("b", g.number("b"), "mm");
      Bound.positive("t1", g.number("t1"), "mm");
      if (!(g.number("h") > g.number("t1"))) {
        throw new IllegalArgumentException("h must be greater than t1, or no key stands proud");
      }
      return new ParallelKey(g.number("b"), g.number("h"), g.number("t1"), 0);
    }
    if (g.has("h") || g.has("t1") || g.has("b")) {
      throw new IllegalArgumentException("give b, h and t1 together, or none of them");
    }
    return ParallelKey.of(d);
  }

  private static Reckoner crossPin() {
    return Reckoner.of("joints", "cross-pin", "Pin through hub and shaft")
        .number("torque", Unit.NM, "torque")
        .number("d", Unit.MM, "shaft diameter")
        .number("dp", Unit.MM, "pin diameter, 0.25 to 0.3 d as a rule")
        .optional("hub_od", Unit.MM, "outside diameter of the hub")
        .result("shear", Unit.MPA, "shear of the pin")
        .result("bearing_shaft", Unit.MPA, "greatest pressure in the shaft")
        .result("bearing_hub", Unit.MPA, "mean pressure in the hub")
        .source(Sources.PINS)
        .rule(
            g -> {
              Bound.notNegative("torque", g.number("torque"), "N mm");
              double d = Bound.positive("d", g.number("d"), "mm");
              double dp = Bound.positive("dp", g.number("dp"), "mm");
              if (!(dp < d)) {
                throw new IllegalArgumentException("dp = " + dp + " mm: must be below d = " + d);
              }
              Term[] terms = {g.term("torque"), g.term("dp"), g.term("d")};
              Answer answer =
                  Answer.start()
                      .with("shear", Working.of("shear", Unit.MPA, "4*torque/(pi*dp^2*d)", terms))
                      .with(
                          "bearing_shaft",
                          Working.of("p_shaft", Unit.MPA, "6*torque/(dp*d^2)", terms));
              if (g.has("hub_od")) {
                if (!(g.number("hub_od") > d)) {
                  throw new IllegalArgumentException("hub_od must be above d");
                }
                answer =
                    answer.with(
                        "bearing_hub",
                        Working.of(
                            "p_hub",
                            Unit.MPA,
                            "4*torque/(dp*(hub_od^2 - d^2))",
                            g.term("torque"),
                            g.term("dp"),
                            g.term("hub_od"),
                            g.term("d")));
              }
              return dp > 0.35 * d
                  ? answer.caution("a pin above a third of the shaft weakens it: 0.25 to 0.3 d")
                  : answer;
            });
  }

  private static Reckoner shearPin() {
    return Reckoner.of("joints", "shear-pin", "Pin that breaks before the weakest gear")
        .number("torque", Unit.NM, "torque at which the weakest gear breaks, at this shaft")
        .number("d", Unit.MM, "shaft diameter")
        .number("strength", Unit.MPA, "shear strength of the pin")
        .number("share", Unit.ONE, "share of that torque at which the pin breaks", "0.6")
        .result("dp", Unit.MM, "pin diameter, or its neck")
        .result("breaks", Unit.NM, "torque at which it breaks")
        .source(Sources.PINS)
        .rule(
            g -> {
              Bound.positive("torque", g.number("torque"), "N mm");
              double d = Bound.positive("d", g.number("d"), "mm");
              Bound.positive("strength", g.number("strength"), "MPa");
              Bound.within("share", g.number("share"), 0.05, 1, "");
              Working dp =
                  Working.of(
                      "dp",
                      Unit.MM,
                      "sqrt(4*share*torque/(pi*strength*d))",
                      g.term("share"),
                      g.term("torque"),
                      g.term("strength"),
                      g.term("d"));
              Answer answer =
                  Answer.start()
                      .with("dp", dp)
                      .with("breaks", g.number("share") * g.number("torque"))
                      .caution(
                          "try a spare pin to breaking before trusting it; stand clear of the"
                              + " drive, a pin breaks without warning");
              return dp.value() < d
                  ? answer
                  : answer.caution("the pin would be thicker than the shaft: choose another way");
            });
  }

  private static Reckoner setScrew() {
    return Reckoner.of("joints", "set-screw", "Hold of a set-screw on a shaft")
        .number("d", Unit.MM, "nominal diameter of the screw")
        .number("torque", Unit.NM, "tightening torque of the screw")
        .number("K", Unit.ONE, "torque coefficient: 0.20 dry, 0.15 oiled", "0.2")
        .number("mu", Unit.ONE, "friction of the point, 0.3 to 0.5 for a cup in soft steel", "0.3")
        .number("shaft", Unit.MM, "shaft diameter")
        .count("screws", "number of screws", "1")
        .result("N", Unit.N, "force of one screw")
        .result("hold", Unit.N, "axial hold of all screws")
        .result("slip_torque", Unit.NM, "torque at which the hub turns on the shaft")
        .source(Sources.SET_SCREWS)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              Bound.notNegative("torque", g.number("torque"), "N mm");
              Bound.within("K", g.number("K"), 0.08, 0.35, "");
              Bound.friction("mu", g.number("mu"));
              Bound.positive("shaft", g.number("shaft"), "mm");
              Bound.within("screws", g.count("screws"), 1, 12, "");
              Working force =
                  Working.of(
                      "N", Unit.N, "torque/(K*d)", g.term("torque"), g.term("K"), g.term("d"));
              Working hold =
                  Working.of(
                      "hold",
                      Unit.N,
                      "screws*mu*N",
                      g.term("screws"),
                      g.term("mu"),
                      Term.of(force));
              return Answer.start()
                  .with("N", force)
                  .with("hold", hold)
                  .with(
                      "slip_torque",
                      Working.of("T", Unit.NM, "hold*shaft/2", Term.of(hold), g.term("shaft")))
                  .caution(
                      "published holds differ two to three times for the same screw; set it on a"
                          + " flat, and never let it be the only drive of a handwheel that takes"
                          + " shocks");
            });
  }

  private static Reckoner thumbScrew() {
    return Reckoner.of("joints", "thumb-screw", "Force of a knurled thumb screw")
        .number("d", Unit.MM, "nominal diameter of the screw")
        .number("torque", Unit.NM, "hand torque: 0.3 to 0.8 N m on a knob of 15 to 25 mm", "0.5")
        .number("K", Unit.ONE, "torque coefficient: 0.20 dry, 0.15 oiled", "0.2")
        .result("F", Unit.N, "force of the screw")
        .source(Sources.SHIGLEY_K)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              Bound.notNegative("torque", g.number("torque"), "N mm");
              Bound.within("K", g.number("K"), 0.08, 0.35, "");
              return Answer.start()
                  .with(
                      "F",
                      Working.of(
                          "F", Unit.N, "torque/(K*d)", g.term("torque"), g.term("K"), g.term("d")));
            });
  }

  private static Reckoner torsion() {
    return Reckoner.of("joints", "shaft-torsion", "Stress and twist of a round shaft")
        .number("torque", Unit.NM, "torque")
        .number("d", Unit.MM, "shaft diameter")
        .number("bore", Unit.MM, "bore of a hollow shaft", "0")
        .number("L", Unit.MM, "length that twists", "100")
        .number("G", Unit.MPA, "shear modulus", "80000")
        .number("t1", Unit.MM, "depth of a keyway; strength is taken at d - t1", "0")
        .number("factor", Unit.ONE, "stress factor: 1 plain, 2 to 2.5 at a keyway", "1")
        .result("tau", Unit.MPA, "shear stress")
        .result("twist", Unit.DEG, "twist over the length")
        .source(Sources.TORSION)
        .rule(
            g -> {
              Bound.notNegative("torque", g.number("torque"), "N mm");
              double d = Bound.positive("d", g.number("d"), "mm");
              double bore = Bound.notNegative("bore", g.number("bore"), "mm");
              double t1 = Bound.notNegative("t1", g.number("t1"), "mm");
              Bound.notNegative("L", g.number("L"), "mm");
              Bound.positive("G", g.number("G"), "MPa");
              Bound.within("factor", g.number("factor"), 1, 10, "");
              if (!(bore < d - t1)) {
                throw new IllegalArgumentException("bore and keyway leave no shaft: d - t1 > bore");
              }
              return Answer.start()
                  .with(
                      "tau",
                      Working.of(
                          "tau",
                          Unit.MPA,
                          "factor*16*torque*(d - t1)/(pi*((d - t1)^4 - bore^4))",
                          g.term("factor"),
                          g.term("torque"),
                          g.term("d"),
                          g.term("t1"),
                          g.term("bore")))
                  .with(
                      "twist",
                      Working.of(
                          "twist",
                          Unit.DEG,
                          "torque*L/(G*pi*(d^4 - bore^4)/32)",
                          g.term("torque"),
                          g.term("L"),
                          g.term("G"),
                          g.term("d"),
                          g.term("bore")));
            });
  }

  private static Reckoner knurl() {
    return Reckoner.of("joints", "knurl-blank", "Blank diameter that knurls without doubling")
        .number("d", Unit.MM, "diameter wanted")
        .number("pitch", Unit.MM, "pitch of the knurl; 1.0 above 12 mm diameter", "1")
        .result("blank", Unit.MM, "nearest blank diameter")
        .result("teeth", Unit.ONE, "ridges around")
        .source(Sources.KNURL)
        .rule(
            g -> {
              double d = Bound.positive("d", g.number("d"), "mm");
              double pitch = Bound.positive("pitch", g.number("pitch"), "mm");
              double teeth = Math.rint(Math.PI * d / pitch);
              Bound.within("ridges around", teeth, 6, 100000, "");
              return Answer.start()
                  .with(
                      "blank",
                      Working.of(
                          "blank", Unit.MM, "z*pitch/pi", Term.exact("z", teeth), g.term("pitch")))
                  .with("teeth", teeth);
            });
  }
}
