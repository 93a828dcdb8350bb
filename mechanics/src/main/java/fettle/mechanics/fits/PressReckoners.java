package fettle.mechanics.fits;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on press fits. */
final class PressReckoners {

  private static final String SAFETY =
      "pressing and shrinking: guard against a part that flies or cracks, wear eye protection, use"
          + " tongs and gloves with heated parts; hot oil and open flame are a fire risk";
  private static final String PRESSURE =
      "delta/(d*(((Do^2 + d^2)/(Do^2 - d^2) + nu_o)/E_o + ((d^2 + di^2)/(d^2 - di^2) - nu_i)/E_i))";

  private PressReckoners() {}

  static List<Reckoner> all() {
    return List.of(pressFit(), pressFitRange(), pressSlip(), pressForTorque(), assembly());
  }

  private static Reckoner.Draft rings(Reckoner.Draft draft) {
    return draft
        .number("hub_od", Unit.MM, "outside diameter of the hub")
        .number("shaft_id", Unit.MM, "bore of the shaft or bush", "0")
        .number("E_hub", Unit.MPA, "Young's modulus of the hub", "210000")
        .number("nu_hub", Unit.ONE, "Poisson's ratio of the hub", "0.3")
        .number("E_shaft", Unit.MPA, "Young's modulus of the shaft or bush", "210000")
        .number("nu_shaft", Unit.ONE, "Poisson's ratio of the shaft or bush", "0.3")
        .number("Rz_hub", Unit.MICRON, "roughness Rz of the bore", "0")
        .number("Rz_shaft", Unit.MICRON, "roughness Rz of the shaft", "0");
  }

  private static PressFit joint(Given g) {
    return new PressFit(
        g.number("d"),
        g.number("hub_od"),
        g.number("shaft_id"),
        new Elasticity(g.number("E_hub"), g.number("nu_hub")),
        new Elasticity(g.number("E_shaft"), g.number("nu_shaft")));
  }

  private static double effective(Given g, double interference) {
    return PressFit.effective(
        interference,
        Bound.within("Rz_hub", g.number("Rz_hub"), 0, 1, "mm"),
        Bound.within("Rz_shaft", g.number("Rz_shaft"), 0, 1, "mm"));
  }

  private static Reckoner pressFit() {
    return rings(
            Reckoner.of("fits", "press-fit", "Pressure, stresses and grip of a press fit")
                .number("d", Unit.MM, "diameter of the joint"))
        .optional("interference", Unit.MM, "interference on diameter, over the roughness")
        .optional("pressure", Unit.MPA, "pressure in the joint, if known instead")
        .optional("length", Unit.MM, "length of the joint")
        .number("mu", Unit.ONE, "friction: 0.12 dry steel, 0.08 oiled, 0.1 bronze or iron", "0.12")
        .choice("hub_kind", "how the hub fails", "ductile", "cast-iron")
        .optional("hub_strength", Unit.MPA, "yield strength of a ductile hub, Rm of cast iron")
        .optional("running_clearance", Unit.MM, "clearance a bush is meant to run with")
        .result("effective", Unit.MICRON, "interference after smoothing")
        .result("pressure", Unit.MPA, "pressure in the joint")
        .result("hub_hoop", Unit.MPA, "tangential tension at the hub bore")
        .result("hub_stress", Unit.MPA, "equivalent stress at the hub bore (von Mises)")
        .result("shaft_hoop", Unit.MPA, "tangential stress of the shaft, at its bore if hollow")
        .result("bore_closure", Unit.MICRON, "loss of bore diameter of shaft or bush")
        .result("hub_growth", Unit.MICRON, "growth of the hub's outside diameter")
        .result("slip_torque", Unit.NM, "torque at which it slips")
        .result("slip_force", Unit.N, "axial force at which it slips, force to press it home")
        .source(Sources.PRESS)
        .rule(PressReckoners::press);
  }

  private static Answer press(Given g) {
    PressFit joint = joint(g);
    double effective = effectiveOf(g, joint);
    Working pressure =
        Working.check(
            "p",
            joint.pressure(effective),
            Unit.MPA,
            PRESSURE,
            Term.exact("delta", effective, Unit.MICRON),
            Term.exact("d", joint.diameter(), Unit.MM),
            Term.exact("Do", joint.hubOutside(), Unit.MM),
            Term.exact("di", joint.shaftBore(), Unit.MM),
            Term.exact("nu_o", joint.hub().poisson()),
            Term.exact("nu_i", joint.shaft().poisson()),
            Term.exact("E_o", joint.hub().modulus(), Unit.MPA),
            Term.exact("E_i", joint.shaft().modulus(), Unit.MPA));
    double p = pressure.value();
    Answer answer =
        Answer.start()
            .with("effective", effective)
            .with("pressure", pressure)
            .with("hub_hoop", joint.hubHoop(p))
            .with("hub_stress", joint.hubEquivalent(p))
            .with("shaft_hoop", joint.shaftHoop(p))
            .with("bore_closure", joint.boreClosure(p))
            .with("hub_growth", joint.hubGrowth(p));
    if (g.has("length")) {
      double length = Bound.positive("length", g.number("length"), "mm");
      double mu = Bound.friction("mu", g.number("mu"));
      answer =
          answer
              .with("slip_torque", joint.slipTorque(p, length, mu))
              .with("slip_force", joint.slipForce(p, length, mu));
    }
    return warned(g, joint, p, effective, answer).caution(SAFETY);
  }

  private static double effectiveOf(Given g, PressFit joint) {
    if (g.has("interference") == g.has("pressure")) {
      throw new IllegalArgumentException("give either interference or pressure");
    }
    return g.has("pressure")
        ? joint.interference(Bound.notNegative("pressure", g.number("pressure"), "MPa"))
        : effective(g, Bound.notNegative("interference", g.number("interference"), "mm"));
  }

  private static Answer warned(Given g, PressFit joint, double p, double effective, Answer so) {
    Answer answer = so;
    if (effective == 0) {
      answer = answer.caution("no interference is left after smoothing: the joint does not grip");
    }
    if (g.has("hub_strength")) {
      double strength = Bound.positive("hub_strength", g.number("hub_strength"), "MPa");
      boolean iron = g.choice("hub_kind").equals("cast-iron");
      if (iron && joint.hubHoop(p) > strength / 3) {
        answer =
            answer.caution(
                "hoop tension in the iron hub is above Rm/3: it may crack; choose a lighter fit"
                    + " (W-PRESS-IRON, common practice)");
      }
      if (!iron && joint.hubEquivalent(p) > strength) {
        answer =
            answer.caution(
                "the hub yields at its bore: these elastic formulas no longer hold, the grip is"
                    + " less than reckoned");
      }
    }
    if (g.has("running_clearance") && joint.boreClosure(p) > g.number("running_clearance") / 2) {
      answer =
          answer.caution(
              "the bush closes by more than half its running clearance: ream it after pressing"
                  + " (W-BORE-CLOSE)");
    }
    return answer;
  }

  private static Reckoner pressFitRange() {
    return rings(
            Reckoner.of(
                    "fits",
                    "press-fit-range",
                    "Loosest and tightest case of a toleranced press fit")
                .number("d", Unit.MM, "nominal diameter of the joint")
                .text("fit", "the fit, such as H7/s6"))
        .number("length", Unit.MM, "length of the joint")
        .number("mu", Unit.ONE, "friction: 0.12 dry steel, 0.08 oiled, 0.1 bronze or iron", "0.12")
        .result("min_interference", Unit.MICRON, "least interference; negative is clearance")
        .result("max_interference", Unit.MICRON, "greatest interference")
        .result("min_pressure", Unit.MPA, "pressure in the loosest case")
        .result("max_pressure", Unit.MPA, "pressure in the tightest case")
        .result("min_torque", Unit.NM, "slip torque in the loosest case")
        .result("max_hub_stress", Unit.MPA, "equivalent stress of the hub in the tightest case")
        .result("max_hub_hoop", Unit.MPA, "hoop tension of the hub in the tightest case")
        .result("max_press_force", Unit.N, "force to press home in the tightest case")
        .result("max_bore_closure", Unit.MICRON, "bore closure in the tightest case")
        .source(Sources.PRESS)
        .rule(
            g -> {
              PressFit joint = joint(g);
              Fit fit = Designation.parse(g.text("fit")).at(joint.diameter()).fit();
              double length = Bound.positive("length", g.number("length"), "mm");
              double mu = Bound.friction("mu", g.number("mu"));
              double low = joint.pressure(effective(g, Math.max(0, -fit.maxClearance())));
              double high = joint.pressure(effective(g, Math.max(0, -fit.minClearance())));
              Answer answer =
                  Answer.start()
                      .with("min_interference", 0 - fit.maxClearance())
                      .with("max_interference", 0 - fit.minClearance())
                      .with("min_pressure", low)
                      .with("max_pressure", high)
                      .with("min_torque", joint.slipTorque(low, length, mu))
                      .with("max_hub_stress", joint.hubEquivalent(high))
                      .with("max_hub_hoop", joint.hubHoop(high))
                      .with("max_press_force", joint.slipForce(high, length, mu))
                      .with("max_bore_closure", joint.boreClosure(high))
                      .caution(SAFETY);
              return low > 0
                  ? answer
                  : answer.caution("the loosest case of this fit does not grip at all");
            });
  }

  private static Reckoner pressSlip() {
    return Reckoner.of("fits", "press-slip", "Grip of a pressed joint from its pressure")
        .number("d", Unit.MM, "diameter of the joint")
        .number("length", Unit.MM, "length of the joint")
        .number("pressure", Unit.MPA, "pressure in the joint")
        .number("mu", Unit.ONE, "friction: 0.12 dry steel, 0.08 oiled, 0.1 bronze or iron", "0.12")
        .result("slip_torque", Unit.NM, "torque at which it slips")
        .result("slip_force", Unit.N, "axial force at which it slips, force to press it home")
        .source(Sources.PRESS)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              Bound.positive("length", g.number("length"), "mm");
              Bound.notNegative("pressure", g.number("pressure"), "MPa");
              Bound.friction("mu", g.number("mu"));
              Term[] terms = {g.term("mu"), g.term("pressure"), g.term("d"), g.term("length")};
              return Answer.start()
                  .with(
                      "slip_torque", Working.of("T", Unit.NM, "mu*pressure*pi*d^2*length/2", terms))
                  .with("slip_force", Working.of("F", Unit.N, "mu*pressure*pi*d*length", terms));
            });
  }

  private static Reckoner pressForTorque() {
    return rings(
            Reckoner.of("fits", "press-interference", "Interference needed to carry a torque")
                .number("d", Unit.MM, "diameter of the joint"))
        .number("torque", Unit.NM, "torque to carry")
        .number("length", Unit.MM, "length of the joint")
        .number("mu", Unit.ONE, "friction: 0.12 dry steel, 0.08 oiled, 0.1 bronze or iron", "0.12")
        .number("safety", Unit.ONE, "safety against slip", "1.5")
        .result("pressure", Unit.MPA, "pressure needed")
        .result("interference", Unit.MICRON, "interference needed, measured over the roughness")
        .source(Sources.PRESS)
        .rule(
            g -> {
              PressFit joint = joint(g);
              Bound.notNegative("torque", g.number("torque"), "N mm");
              Bound.positive("length", g.number("length"), "mm");
              Bound.gripping("mu", g.number("mu"));
              Bound.within("safety", g.number("safety"), 1, 10, "");
              Working pressure =
                  Working.of(
                      "p",
                      Unit.MPA,
                      "2*safety*torque/(mu*pi*d^2*length)",
                      g.term("safety"),
                      g.term("torque"),
                      g.term("mu"),
                      g.term("d"),
                      g.term("length"));
              double rough = 0.8 * (g.number("Rz_hub") + g.number("Rz_shaft"));
              effective(g, 0);
              return Answer.start()
                  .with("pressure", pressure)
                  .with("interference", joint.interference(pressure.value()) + rough)
                  .caution(SAFETY);
            });
  }

  private static Reckoner assembly() {
    return Reckoner.of(
            "fits", "assembly-temperature", "Temperature at which a heated part slips over a shaft")
        .number("d", Unit.MM, "diameter of the joint")
        .number("max_interference", Unit.MM, "greatest interference on diameter")
        .optional("extra_clearance", Unit.MM, "ease while assembling; 0.001 d if not given")
        .number("alpha", Unit.PER_K, "expansion of the heated part", "0.0000115")
        .number("T_room", Unit.K, "temperature of the room in °C", "20")
        .number("shaft_cooling", Unit.K, "how far the shaft is cooled below the room", "0")
        .number("alpha_shaft", Unit.PER_K, "expansion of the cooled shaft", "0.0000115")
        .choice("part", "what is heated", "plain", "bearing", "hardened", "plastic-cage")
        .result("dT", Unit.K, "how far to heat it")
        .result("T", Unit.K, "temperature to heat it to, in °C")
        .source(Sources.PRESS)
        .rule(PressReckoners::heat);
  }

  private static Answer heat(Given g) {
    double d = Bound.positive("d", g.number("d"), "mm");
    Bound.notNegative("max_interference", g.number("max_interference"), "mm");
    double ease = g.number("extra_clearance", 0.001 * d);
    Bound.notNegative("extra_clearance", ease, "mm");
    Bound.within("alpha", g.number("alpha"), 1e-7, 1e-3, "1/K");
    Bound.within("alpha_shaft", g.number("alpha_shaft"), 0, 1e-3, "1/K");
    Bound.within("shaft_cooling", g.number("shaft_cooling"), 0, 290, "K");
    Working rise =
        Working.of(
            "dT",
            Unit.K,
            "((max_interference + s)/d - alpha_shaft*shaft_cooling)/alpha",
            g.term("max_interference"),
            Term.exact("s", ease, Unit.MM),
            g.term("d"),
            g.term("alpha"),
            g.term("alpha_shaft"),
            g.term("shaft_cooling"));
    double temperature = g.number("T_room") + rise.value();
    double limit =
        switch (g.choice("part")) {
          case "bearing" -> 120;
          case "hardened" -> 150;
          case "plastic-cage" -> 100;
          default -> Double.POSITIVE_INFINITY;
        };
    Answer answer = Answer.start().with("dT", rise).with("T", temperature).caution(SAFETY);
    return temperature <= limit
        ? answer
        : answer.caution(
            "hotter than "
                + (int) limit
                + " °C allows for this part: use less ease, cool the shaft, or press it (W-HOT)");
  }
}
