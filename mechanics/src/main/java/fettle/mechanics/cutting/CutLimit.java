package fettle.mechanics.cutting;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The deepest cut a machine carries, and what stops it.
 *
 * @see Sources#LIMITS
 */
final class CutLimit {

  private CutLimit() {}

  /** Returns the reckoner of the deepest cut. */
  static Reckoner reckoner() {
    return CuttingReckoners.asked(
            Reckoner.of("cutting", "cut-limit", "Deepest cut this machine carries, and what rules"))
        .number("f", Unit.MM, "feed a turn")
        .number("kappa", Unit.DEG, "cutting edge angle from the direction of feed", "90")
        .number("K", Unit.ONE, "all corrections of the cutting force", "1")
        .optional("vc", Unit.M_PER_MIN, "cutting speed")
        .optional("d", Unit.MM, "diameter")
        .optional("n", Unit.RPM, "speed, with d instead of vc")
        .optional("P_spindle", Unit.W, "power at the spindle")
        .optional("T_spindle", Unit.NM, "torque at the spindle, with d")
        .optional("T_belt", Unit.NM, "torque at the spindle at which the belt slips, with d")
        .optional("F_feed", Unit.N, "force the feed drive can push")
        .number("Ff_over_Fc", Unit.ONE, "feed force over cutting force, assumed", "0.4")
        .optional("k", Unit.N_PER_MICRON, "stiffness from tool to work")
        .optional("limit", Unit.MICRON, "allowed give, with k")
        .number("Fp_over_Fc", Unit.ONE, "passive force over cutting force, assumed", "0.35")
        .optional("shank_b", Unit.MM, "width of the tool shank")
        .optional("shank_h", Unit.MM, "height of the tool shank")
        .optional("shank_l", Unit.MM, "overhang of the tool shank")
        .number("shank_stress", Unit.MPA, "allowed bending stress of the shank", "250")
        .optional("F_grip", Unit.N, "cutting force the chuck holds safely")
        .optional("k_mode", Unit.N_PER_MICRON, "stiffness of the chattering mode")
        .number("zeta", Unit.ONE, "its damping, share of critical", "0.035")
        .number("u", Unit.ONE, "orientation of force and mode", "0.5")
        .result("kc", Unit.MPA, "specific cutting force")
        .result("ap", Unit.MM, "deepest cut")
        .result("rules", Unit.ONE, "what rules it")
        .result("next", Unit.ONE, "the next limit and how far away it is")
        .result("ap_power", Unit.MM, "limit by power")
        .result("ap_torque", Unit.MM, "limit by torque")
        .result("ap_belt", Unit.MM, "limit by belt slip")
        .result("ap_feed", Unit.MM, "limit by the feed drive")
        .result("ap_stiffness", Unit.MM, "limit by give")
        .result("ap_shank", Unit.MM, "limit by the tool shank")
        .result("ap_grip", Unit.MM, "limit by the chuck")
        .result("ap_chatter", Unit.MM, "limit by chatter")
        .source(Sources.LIMITS)
        .rule(CutLimit::answer);
  }

  private static Answer answer(Given g) {
    CuttingForce unit =
        new CuttingForce(
            CuttingReckoners.unitForce(g),
            CuttingReckoners.exponent(g),
            g.number("f"),
            1,
            g.number("kappa"),
            g.number("K"));
    double perDepth = unit.main();
    Map<String, Double> limits = limits(g, unit, perDepth);
    if (limits.isEmpty()) {
      throw new IllegalArgumentException(
          "give at least one limit: P_spindle (with vc or d and n), T_spindle (with d), T_belt,"
              + " F_feed, k and limit, shank_b shank_h shank_l, F_grip, k_mode");
    }
    Answer a = Answer.start().with("kc", unit.specific());
    for (Map.Entry<String, Double> limit : limits.entrySet()) {
      a = a.with("ap_" + limit.getKey(), limit.getValue());
    }
    var order = limits.entrySet().stream().sorted(Map.Entry.comparingByValue()).toList();
    double least = order.get(0).getValue();
    a = a.with("ap", least).with("rules", order.get(0).getKey());
    if (order.size() > 1) {
      a =
          a.with(
              "next",
              order.get(1).getKey()
                  + ", at "
                  + fettle.mechanics.base.Numbers.significant(order.get(1).getValue() / least, 3)
                  + " times the depth");
    }
    return unit.isInRange()
        ? a
        : a.caution("Chip thickness outside 0.05 to 1.5 mm: the force law is a guess here.");
  }

  private static Map<String, Double> limits(Given g, CuttingForce unit, double perDepth) {
    Map<String, Double> limits = new LinkedHashMap<>();
    if (g.has("P_spindle")) {
      double vc = g.has("vc") ? g.number("vc") : g.number("d") / 2 * g.number("n");
      limits.put(
          "power",
          Need.positive("P_spindle", g.number("P_spindle")) / (perDepth * Need.positive("vc", vc)));
    }
    torque(g, limits, "T_spindle", "torque", perDepth);
    torque(g, limits, "T_belt", "belt", perDepth);
    if (g.has("F_feed")) {
      limits.put(
          "feed",
          Need.positive("F_feed", g.number("F_feed"))
              / (Need.positive("Ff_over_Fc", g.number("Ff_over_Fc")) * perDepth));
    }
    double share = Need.positive("Fp_over_Fc", g.number("Fp_over_Fc"));
    if (g.has("k") && g.has("limit")) {
      limits.put(
          "stiffness",
          Need.positive("k", g.number("k"))
              * Need.positive("limit", g.number("limit"))
              / (share * perDepth));
    }
    if (g.has("shank_b") && g.has("shank_h") && g.has("shank_l")) {
      double h = Need.positive("shank_h", g.number("shank_h"));
      double force =
          Need.positive("shank_stress", g.number("shank_stress"))
              * Need.positive("shank_b", g.number("shank_b"))
              * h
              * h
              / (6 * Need.positive("shank_l", g.number("shank_l")));
      limits.put("shank", force / perDepth);
    }
    if (g.has("F_grip")) {
      limits.put("grip", Need.positive("F_grip", g.number("F_grip")) / perDepth);
    }
    if (g.has("k_mode")) {
      double resultant = unit.specific() * Math.hypot(1, 0.5);
      double kf = resultant * Need.positive("u", g.number("u"));
      Chatter mode = new Chatter(g.number("k_mode"), g.number("zeta"), 100, kf);
      limits.put("chatter", mode.limitWidth() * Math.sin(g.number("kappa")));
    }
    return limits;
  }

  private static void torque(
      Given g, Map<String, Double> limits, String input, String name, double perDepth) {
    if (g.has(input)) {
      limits.put(
          name,
          2
              * Need.positive(input, g.number(input))
              / (Need.positive("d", g.number("d")) * perDepth));
    }
  }
}
