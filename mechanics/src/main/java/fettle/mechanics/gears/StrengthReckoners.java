package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Single calculations on the strength of teeth, and on what breaks first. */
final class StrengthReckoners {

  private StrengthReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        lewisLoad(), lewisStress(), formFactor(), permissible(), handwheelTrain(), shearPin());
  }

  private static Reckoner.Draft finish(Reckoner.Draft draft) {
    return draft
        .choice("finish", "how the teeth were made", "milled", "cast", "hobbed", "hand-cranked")
        .number("v", Unit.M_PER_S, "pitch line speed; found from rpm if left at 0", "0")
        .number("n", Unit.RPM, "speed of the gear", "0");
  }

  private static double speedFactor(Given g, double diameter) {
    double speed = g.number("v") > 0 ? g.number("v") : Math.abs(g.number("n")) * diameter / 2;
    return ToothStrength.speedFactor(
        switch (g.choice("finish")) {
          case "milled" -> ToothStrength.Finish.CUT_OR_MILLED;
          case "cast" -> ToothStrength.Finish.CAST;
          case "hobbed" -> ToothStrength.Finish.HOBBED;
          default -> ToothStrength.Finish.HAND_CRANKED;
        },
        speed);
  }

  private static Reckoner lewisLoad() {
    return finish(
            Reckoner.of(
                    TrainReckoners.GROUP,
                    "lewis-load",
                    "Tangential load a tooth may carry, by Lewis")
                .number("m", Unit.MM, "module ('8 DP')")
                .number("b", Unit.MM, "face width")
                .count("z", "teeth")
                .optional("Y", Unit.ONE, "Lewis factor; from the table if left out")
                .number("sigma", Unit.MPA, "allowable bending stress"))
        .result("F_t", Unit.N, "tangential load")
        .result("K_v", Unit.ONE, "factor of speed")
        .result("Y", Unit.ONE, "Lewis factor")
        .source(Sources.LEWIS)
        .rule(
            g -> {
              double factor = lewisFactor(g);
              Teeth.positive("sigma", "MPa", g.number("sigma"));
              Teeth.positive("b", "mm", g.number("b"));
              double speed =
                  speedFactor(g, Teeth.positive("m", "mm", g.number("m")) * g.count("z"));
              Term kv = Term.exact("K_v", speed);
              Term y = Term.exact("Y", factor);
              return Answer.start()
                  .with(
                      "F_t",
                      Working.of(
                          "F_t",
                          Unit.N,
                          "sigma*b*m*Y/K_v",
                          g.term("sigma"),
                          g.term("b"),
                          g.term("m"),
                          y,
                          kv))
                  .with("K_v", speed)
                  .with("Y", factor);
            });
  }

  private static double lewisFactor(Given g) {
    Teeth.check("z", g.count("z"));
    return g.has("Y")
        ? Teeth.positive("Y", "-", g.number("Y"))
        : ToothStrength.lewisFactor(g.count("z"));
  }

  private static Reckoner lewisStress() {
    return finish(
            Reckoner.of(TrainReckoners.GROUP, "lewis-stress", "Bending stress of a tooth, by Lewis")
                .number("m", Unit.MM, "module")
                .number("b", Unit.MM, "face width")
                .count("z", "teeth")
                .optional("Y", Unit.ONE, "Lewis factor; from the table if left out")
                .optional("F_t", Unit.N, "tangential force")
                .optional("T_q", Unit.NM, "torque on the gear, instead of the force"))
        .choice(
            "material",
            "material of the gear",
            Arrays.stream(GearMaterial.values()).map(GearMaterial::label).toArray(String[]::new))
        .result("sigma", Unit.MPA, "bending stress")
        .result("F_t", Unit.N, "tangential force")
        .result("K_v", Unit.ONE, "factor of speed")
        .result("allowable", Unit.MPA, "allowable stress of the material, first estimate")
        .result("use", Unit.ONE, "stress over allowable stress")
        .source(Sources.LEWIS)
        .rule(StrengthReckoners::lewisAnswer);
  }

  private static Answer lewisAnswer(Given g) {
    if (g.has("F_t") == g.has("T_q")) {
      throw new IllegalArgumentException("give either the tangential force F_t or the torque T_q");
    }
    double diameter = Teeth.positive("m", "mm", g.number("m")) * g.count("z");
    double force = g.has("F_t") ? g.number("F_t") : g.number("T_q") / (diameter / 2);
    double factor = lewisFactor(g);
    double speed = speedFactor(g, diameter);
    GearMaterial material = material(g.choice("material"));
    Working stress =
        Working.check(
            "sigma",
            ToothStrength.lewisStress(force, speed, g.number("b"), g.number("m"), factor),
            Unit.MPA,
            "F_t*K_v/(b*m*Y)",
            Term.exact("F_t", force, Unit.N),
            Term.exact("K_v", speed),
            g.term("b"),
            g.term("m"),
            Term.exact("Y", factor));
    Answer answer =
        Answer.start()
            .with("sigma", stress)
            .with("F_t", force)
            .with("K_v", speed)
            .with("allowable", material.allowable())
            .with("use", stress.value() / material.allowable());
    if (stress.value() > material.allowable()) {
      answer =
          answer.caution(
              "The tooth is loaded beyond the first estimate for "
                  + material.label()
                  + " ("
                  + material.basis()
                  + ").");
    }
    return material.plastic()
        ? answer.caution(
            "A plastic wheel is the fuse of the train: if steel replaces it, fit a shear pin or a"
                + " slip clutch. Halve the stress at 60 degrees C or for wet nylon.")
        : answer;
  }

  private static GearMaterial material(String label) {
    return Arrays.stream(GearMaterial.values())
        .filter(m -> m.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private static Reckoner formFactor() {
    return GeometryReckoners.oneGear(
            Reckoner.of(
                TrainReckoners.GROUP,
                "form-factor",
                "Form and stress factors, ISO 6336-3 method B"))
        .optional("d_a", Unit.MM, "tip diameter; standard if left out")
        .optional("eps", Unit.ONE, "contact ratio, for the load at single contact")
        .optional("F_t", Unit.N, "tangential force, for the stress")
        .number("b", Unit.MM, "face width, for the stress", "10")
        .result("Y_Fa", Unit.ONE, "form factor, load at the tip")
        .result("Y_Sa", Unit.ONE, "stress correction, load at the tip")
        .result("Y_F", Unit.ONE, "form factor, load at the outer point of single contact")
        .result("Y_S", Unit.ONE, "stress correction there")
        .result("Y_eps", Unit.ONE, "contact ratio factor for tip loading")
        .result("s_Fn", Unit.MM, "root chord at the 30-degree tangent")
        .result("rho_F", Unit.MM, "radius of the fillet there")
        .result("h_Fa", Unit.MM, "moment arm, load at the tip")
        .result("q_s", Unit.ONE, "notch parameter, valid from 1 to 8")
        .result("sigma_F0", Unit.MPA, "nominal root stress")
        .source(Sources.ISO_6336_3)
        .rule(StrengthReckoners::formFactorAnswer);
  }

  private static Answer formFactorAnswer(Given g) {
    Gear gear = GeometryReckoners.gear(g);
    double tip = g.number("d_a", gear.tip(0));
    ToothStrength.Factors top = ToothStrength.atTip(gear, tip);
    Answer answer =
        Answer.start()
            .with("Y_Fa", top.form())
            .with("Y_Sa", top.correction())
            .with("s_Fn", top.rootChord() * gear.module())
            .with("rho_F", top.fillet() * gear.module())
            .with("h_Fa", top.arm() * gear.module())
            .with("q_s", top.notch());
    double product = top.form() * top.correction();
    if (g.has("eps")) {
      ToothStrength.Factors single = ToothStrength.atSingleContact(gear, tip, g.number("eps"));
      product = single.form() * single.correction();
      answer =
          answer
              .with("Y_F", single.form())
              .with("Y_S", single.correction())
              .with("Y_eps", Working.of("Y_eps", Unit.ONE, "0.25+0.75/eps", g.term("eps")));
    }
    if (g.has("F_t")) {
      Teeth.positive("b", "mm", g.number("b"));
      answer =
          answer.with(
              "sigma_F0",
              Working.of(
                  "sigma_F0",
                  Unit.MPA,
                  "F_t/(b*m)*Y",
                  g.term("F_t"),
                  g.term("b"),
                  g.term("m"),
                  Term.exact("Y", product)));
    }
    return top.notch() >= 1 && top.notch() < 8
        ? answer
        : answer.caution("The stress correction is outside its range, q_s 1 to 8.");
  }

  private static Reckoner permissible() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "root-stress-limit",
            "Permissible root stress of steel and iron, ISO 6336-5 MQ, first estimate")
        .choice("material", "material", "steel", "cast-steel", "nodular-iron", "grey-iron")
        .number("HB", Unit.ONE, "Brinell hardness")
        .number("S_F", Unit.ONE, "safety", "1.6")
        .choice("load", "whether it reverses every turn, as on an idler", "one-way", "reversing")
        .result("sigma_Flim", Unit.MPA, "nominal bending limit")
        .result("sigma_FP", Unit.MPA, "permissible root stress")
        .source(Sources.ISO_6336_5)
        .rule(
            g -> {
              GearMaterial.Quality quality =
                  switch (g.choice("material")) {
                    case "steel" -> GearMaterial.Quality.NORMALISED_STEEL;
                    case "cast-steel" -> GearMaterial.Quality.CAST_STEEL;
                    case "nodular-iron" -> GearMaterial.Quality.NODULAR_IRON;
                    default -> GearMaterial.Quality.GREY_CAST_IRON;
                  };
              double limit = quality.bendingLimit(g.number("HB"));
              Teeth.positive("S_F", "-", g.number("S_F"));
              double share = g.choice("load").equals("reversing") ? 0.7 : 1;
              return Answer.start()
                  .with("sigma_Flim", limit)
                  .with(
                      "sigma_FP",
                      Working.of(
                          "sigma_FP",
                          Unit.MPA,
                          "2*sigma_Flim*share/S_F",
                          Term.exact("sigma_Flim", limit, Unit.MPA),
                          Term.exact("share", share),
                          g.term("S_F")));
            });
  }

  private static Reckoner handwheelTrain() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "handwheel-strength",
            "Stresses of a handwheel train, and what breaks first")
        .number("F_hand", Unit.N, "force at the handle: 60 steady, 150 jerk, 250 abuse", "60")
        .number("R", Unit.MM, "radius of the handle")
        .count("z1", "teeth of the handwheel pinion")
        .count("z2", "teeth of the gear")
        .count("z3", "teeth of the rack pinion")
        .number("m", Unit.MM, "module of the pair", "1")
        .number("b", Unit.MM, "face width of the pair", "10")
        .number("m_rack", Unit.MM, "module of the rack")
        .number("b_rack", Unit.MM, "face width of the rack pinion", "15")
        .optional("Y", Unit.ONE, "Lewis factor of the rack pinion; from the table if left out")
        .choice(
            "material",
            "material of the gears",
            Arrays.stream(GearMaterial.values()).map(GearMaterial::label).toArray(String[]::new))
        .result("sigma_rack", Unit.MPA, "Lewis stress of the rack pinion")
        .result("sigma_pinion", Unit.MPA, "Lewis stress of the handwheel pinion")
        .result("sigma_gear", Unit.MPA, "Lewis stress of the gear")
        .result("F_rack", Unit.N, "force at the rack")
        .result("F_pair", Unit.N, "force at the pair's pitch line")
        .result("first", Unit.ONE, "what breaks first")
        .result("order", Unit.ONE, "parts in the order in which they give way")
        .source(Sources.LEWIS)
        .rule(StrengthReckoners::handwheelAnswer);
  }

  private static Answer handwheelAnswer(Given g) {
    for (String z : List.of("z1", "z2", "z3")) {
      Teeth.check(z, g.count(z));
    }
    for (String size : List.of("R", "m", "b", "m_rack", "b_rack")) {
      Teeth.positive(size, "mm", g.number(size));
    }
    Teeth.notNegative("F_hand", "N", g.number("F_hand"));
    GearMaterial material = material(g.choice("material"));
    Working pair =
        Working.of(
            "F_pair",
            Unit.N,
            "F_hand*R/(m*z1/2)",
            g.term("F_hand"),
            g.term("R"),
            g.term("m"),
            g.term("z1"));
    Working rack =
        Working.of(
            "F_rack",
            Unit.N,
            "F_pair*(m*z2)/(m_rack*z3)",
            Term.of(pair),
            g.term("m"),
            g.term("z2"),
            g.term("m_rack"),
            g.term("z3"));
    double rackFactor =
        g.has("Y")
            ? Teeth.positive("Y", "-", g.number("Y"))
            : ToothStrength.lewisFactor(Math.max(12, g.count("z3")));
    Working sigmaRack = stress("sigma_rack", rack, g.term("b_rack"), g.term("m_rack"), rackFactor);
    Working sigmaPinion =
        stress(
            "sigma_pinion",
            pair,
            g.term("b"),
            g.term("m"),
            ToothStrength.lewisFactor(Math.max(12, g.count("z1"))));
    Working sigmaGear =
        stress(
            "sigma_gear",
            pair,
            g.term("b"),
            g.term("m"),
            ToothStrength.lewisFactor(Math.max(12, g.count("z2"))));
    record Part(String name, double stress) {}
    List<Part> parts =
        new ArrayList<>(
            List.of(
                new Part("rack pinion", sigmaRack.value()),
                new Part("handwheel pinion", sigmaPinion.value()),
                new Part("gear", sigmaGear.value())));
    parts.sort((a, b) -> Double.compare(b.stress(), a.stress()));
    Answer answer =
        Answer.start()
            .with("sigma_rack", sigmaRack)
            .with("sigma_pinion", sigmaPinion)
            .with("sigma_gear", sigmaGear)
            .with("F_rack", rack)
            .with("F_pair", pair)
            .with("first", parts.get(0).name())
            .with(
                "order",
                parts.stream()
                    .map(
                        p ->
                            String.format(
                                Locale.ROOT,
                                "%s: %s MPa, %s of the %s MPa of %s",
                                p.name(),
                                Numbers.fixed(p.stress(), 1),
                                Numbers.fixed(p.stress() / material.allowable(), 2),
                                Numbers.fixed(material.allowable(), 0),
                                material.label()))
                    .toList());
    if (g.count("z3") < 12 || g.count("z1") < 12) {
      answer =
          answer.caution("Below 12 teeth the Lewis table ends; the factor of 12 teeth was used.");
    }
    return answer.caution(
        "Check the pins, keys and rack screws too: they often give way before the teeth do.");
  }

  private static Working stress(String name, Working force, Term width, Term module, double y) {
    String formula = force.symbol() + "/(" + width.symbol() + "*" + module.symbol() + "*Y)";
    return Working.of(name, Unit.MPA, formula, Term.of(force), width, module, Term.exact("Y", y));
  }

  private static Reckoner shearPin() {
    return Reckoner.of(
            TrainReckoners.GROUP, "train-shear-pin", "Double-shear pin that protects a train")
        .number("T_q", Unit.NM, "torque at which it shall shear: 1.5 times the largest working one")
        .number("d_shaft", Unit.MM, "shaft diameter")
        .number("tau", Unit.MPA, "shear strength of the pin")
        .result("d", Unit.MM, "pin diameter")
        .source(Sources.SHEAR_PIN)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "d",
                        Working.check(
                            "d",
                            ToothStrength.shearPin(
                                g.number("T_q"), g.number("d_shaft"), g.number("tau")),
                            Unit.MM,
                            "sqrt(4*T_q/(pi*d_shaft*tau))",
                            g.term("T_q"),
                            g.term("d_shaft"),
                            g.term("tau")))
                    .caution(
                        "Try the pin at a standstill: it must let go below every other limit in"
                            + " the train."));
  }
}
