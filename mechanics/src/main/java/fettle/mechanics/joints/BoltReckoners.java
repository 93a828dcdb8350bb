package fettle.mechanics.joints;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on bolts. */
final class BoltReckoners {

  private static final String SCATTER =
      "torque and preload scatter by about 30 % with friction; a bolt that holds a rotating or"
          + " lifted part needs a torque wrench and a check";

  private BoltReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        preloadFromTorque(),
        torqueFromPreload(),
        boltAssembly(),
        boltStiffness(),
        clampedStiffness(),
        boltedJoint(),
        headPressure(),
        threadEngagement());
  }

  private static Reckoner preloadFromTorque() {
    return Reckoner.of("joints", "preload-from-torque", "Preload of a bolt from its torque, simple")
        .number("d", Unit.MM, "nominal diameter of the bolt")
        .number("torque", Unit.NM, "tightening torque")
        .number("K", Unit.ONE, "torque coefficient: 0.20 dry, 0.15 oiled", "0.2")
        .result("F", Unit.KN, "preload")
        .result("F_low", Unit.KN, "preload 30 % lower")
        .result("F_high", Unit.KN, "preload 30 % higher")
        .source(Sources.SHIGLEY_K)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              Bound.notNegative("torque", g.number("torque"), "N mm");
              coefficient(g);
              Working force =
                  Working.of(
                      "F", Unit.KN, "torque/(K*d)", g.term("torque"), g.term("K"), g.term("d"));
              return Answer.start()
                  .with("F", force)
                  .with("F_low", 0.7 * force.value())
                  .with("F_high", 1.3 * force.value())
                  .caution(SCATTER);
            });
  }

  private static void coefficient(Given g) {
    Bound.within("K", g.number("K"), 0.08, 0.35, "");
  }

  private static Reckoner torqueFromPreload() {
    return Reckoner.of("joints", "tightening-torque", "Torque for a preload of a bolt, simple")
        .number("d", Unit.MM, "nominal diameter of the bolt")
        .number("F", Unit.KN, "preload wanted")
        .number("K", Unit.ONE, "torque coefficient: 0.20 dry, 0.15 oiled", "0.2")
        .result("torque", Unit.NM, "tightening torque")
        .source(Sources.SHIGLEY_K)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              Bound.notNegative("F", g.number("F"), "N");
              coefficient(g);
              return Answer.start()
                  .with(
                      "torque",
                      Working.of("T", Unit.NM, "K*F*d", g.term("K"), g.term("F"), g.term("d")))
                  .caution(SCATTER);
            });
  }

  private static Reckoner boltAssembly() {
    return Reckoner.of(
            "joints", "bolt-assembly", "Assembly preload and tightening torque of a bolt, VDI 2230")
        .number("d", Unit.MM, "nominal diameter")
        .optional("P", Unit.MM, "pitch; coarse if not given")
        .choice("class", "property class", BoltStandard.CLASSES.toArray(new String[0]))
        .optional("Rp02", Unit.MPA, "yield strength; that of the class if not given")
        .number("nu_yield", Unit.ONE, "share of the yield strength used", "0.9")
        .number("mu_thread", Unit.ONE, "friction in the thread", "0.12")
        .number("mu_head", Unit.ONE, "friction under the head", "0.12")
        .optional("dw", Unit.MM, "outside diameter of the bearing face; hexagon if not given")
        .optional("dh", Unit.MM, "hole; medium clearance if not given")
        .optional("torque", Unit.NM, "torque applied, if the preload it makes is wanted")
        .result("preload", Unit.KN, "assembly preload")
        .result("torque", Unit.NM, "tightening torque for it")
        .result("As", Unit.MM2, "stress area")
        .result("d2", Unit.MM, "pitch diameter")
        .result("d3", Unit.MM, "root diameter")
        .result("K", Unit.ONE, "torque coefficient T/(F d)")
        .result("preload_at_torque", Unit.KN, "preload the applied torque makes")
        .source(Sources.VDI)
        .rule(BoltReckoners::assembly);
  }

  private static Answer assembly(Given g) {
    double d = Bound.positive("d", g.number("d"), "mm");
    double pitch = g.has("P") ? g.number("P") : BoltStandard.coarsePitch(d);
    BoltThread thread = new BoltThread(d, pitch);
    double yield =
        Bound.positive(
            "Rp02",
            g.has("Rp02") ? g.number("Rp02") : BoltStandard.yieldStrength(g.choice("class"), d),
            "MPa");
    double share = Bound.within("nu_yield", g.number("nu_yield"), 0.05, 1, "");
    double inThread = Bound.friction("mu_thread", g.number("mu_thread"));
    double atHead = Bound.friction("mu_head", g.number("mu_head"));
    double dw = g.has("dw") ? g.number("dw") : BoltStandard.face(d);
    double dh = g.has("dh") ? g.number("dh") : BoltStandard.hole(d);
    Bound.within("dh", dh, 0, dw, "mm");
    Term d2 = Term.exact("d2", thread.pitchDiameter(), Unit.MM);
    Working preload =
        Working.check(
            "F_M",
            thread.assemblyPreload(yield, share, inThread),
            Unit.KN,
            "pi/4*d0^2*nu*Rp/sqrt(1 + 3*(1.5*d2/d0*(P/(pi*d2) + 1.155*mu_G))^2)",
            Term.exact("d0", thread.stressDiameter(), Unit.MM),
            Term.exact("nu", share),
            Term.exact("Rp", yield, Unit.MPA),
            d2,
            Term.exact("P", pitch, Unit.MM),
            Term.exact("mu_G", inThread));
    Working torque =
        Working.check(
            "M_A",
            thread.tighteningTorque(preload.value(), inThread, atHead, dw, dh),
            Unit.NM,
            "F_M*(0.16*P + 0.58*d2*mu_G + (dw + dh)/4*mu_K)",
            Term.of(preload),
            Term.exact("P", pitch, Unit.MM),
            d2,
            Term.exact("mu_G", inThread),
            Term.exact("dw", dw, Unit.MM),
            Term.exact("dh", dh, Unit.MM),
            Term.exact("mu_K", atHead));
    Answer answer =
        Answer.start()
            .with("preload", preload)
            .with("torque", torque)
            .with("As", thread.stressArea())
            .with("d2", thread.pitchDiameter())
            .with("d3", thread.rootDiameter())
            .with("K", torque.value() / (preload.value() * d))
            .caution(SCATTER);
    if (!g.has("torque")) {
      return answer;
    }
    double applied = Bound.notNegative("torque", g.number("torque"), "N mm");
    double made = thread.preload(applied, inThread, atHead, dw, dh);
    answer = answer.with("preload_at_torque", made);
    return made <= preload.value()
        ? answer
        : answer.caution("the applied torque is above the tightening torque: the bolt may yield");
  }

  private static Reckoner boltStiffness() {
    return Reckoner.of("joints", "bolt-grip-stiffness", "Stiffness of a bolt in the grip")
        .number("d", Unit.MM, "nominal diameter")
        .optional("P", Unit.MM, "pitch; coarse if not given")
        .number("E", Unit.MPA, "Young's modulus", "206000")
        .number("shank", Unit.MM, "length of plain shank in the grip", "0")
        .number("threaded", Unit.MM, "length of thread in the grip")
        .result("kb", Unit.N_PER_MICRON, "stiffness of the bolt")
        .source(Sources.SHIGLEY_STIFFNESS)
        .rule(
            g -> {
              double d = Bound.positive("d", g.number("d"), "mm");
              BoltThread thread =
                  new BoltThread(d, g.has("P") ? g.number("P") : BoltStandard.coarsePitch(d));
              Bound.positive("E", g.number("E"), "MPa");
              return Answer.start()
                  .with(
                      "kb",
                      Working.check(
                          "kb",
                          BoltedJoint.boltStiffness(
                              thread, g.number("E"), g.number("shank"), g.number("threaded")),
                          Unit.N_PER_MICRON,
                          "E/(shank/(pi/4*d^2) + threaded/At)",
                          g.term("E"),
                          g.term("shank"),
                          g.term("d"),
                          g.term("threaded"),
                          Term.exact("At", thread.stressArea(), Unit.MM2)));
            });
  }

  private static Reckoner clampedStiffness() {
    return Reckoner.of(
            "joints", "clamped-stiffness", "Stiffness of clamped parts by cones of pressure")
        .number("d", Unit.MM, "diameter the cones are bored with, nominal diameter as a rule")
        .optional("dw", Unit.MM, "diameter the cones start from; 1.5 d if not given")
        .numbers("thicknesses", Unit.MM, "thickness of each layer from the head on")
        .numbers("moduli", Unit.MPA, "Young's modulus of each layer; one value for all")
        .result("km", Unit.N_PER_MICRON, "stiffness of the clamped parts")
        .result("grip", Unit.MM, "thickness of all layers")
        .source(Sources.SHIGLEY_STIFFNESS)
        .rule(
            g -> {
              double d = Bound.positive("d", g.number("d"), "mm");
              ClampedStack stack = stack(g);
              return Answer.start()
                  .with("km", stack.stiffness(d, g.number("dw", 1.5 * d)))
                  .with("grip", stack.grip());
            });
  }

  private static ClampedStack stack(Given g) {
    double[] thicknesses = g.numbers("thicknesses");
    double[] moduli = g.numbers("moduli");
    if (moduli.length != 1 && moduli.length != thicknesses.length) {
      throw new IllegalArgumentException(
          "moduli: found " + moduli.length + " values, expected 1 or " + thicknesses.length);
    }
    List<ClampedStack.Layer> layers = new ArrayList<>();
    for (int i = 0; i < thicknesses.length; i++) {
      layers.add(new ClampedStack.Layer(thicknesses[i], moduli[moduli.length == 1 ? 0 : i]));
    }
    return new ClampedStack(layers);
  }

  private static Reckoner boltedJoint() {
    return Reckoner.of(
            "joints", "bolted-joint", "Load sharing, separation and slip of a preloaded joint")
        .number("kb", Unit.N_PER_MICRON, "stiffness of one bolt")
        .number("km", Unit.N_PER_MICRON, "stiffness of the parts clamped by one bolt")
        .number("preload", Unit.KN, "preload of one bolt")
        .count("bolts", "number of bolts", "1")
        .number("load", Unit.N, "load that pulls the parts apart, on the whole joint", "0")
        .number("shear", Unit.N, "load along the faces, on the whole joint", "0")
        .number("mu", Unit.ONE, "friction between the faces", "0.15")
        .count("faces", "faces that carry the shear", "1")
        .number("settling", Unit.MICRON, "flattening of all faces together", "0")
        .result("C", Unit.ONE, "share of the outer load the bolt feels")
        .result("loss", Unit.N, "preload lost by settling, per bolt")
        .result("bolt_tension", Unit.N, "tension of one bolt under load")
        .result("clamp_left", Unit.N, "clamping force left under load, per bolt")
        .result("separation", Unit.N, "outer load that separates the joint")
        .result("separation_safety", Unit.ONE, "separating load over load")
        .result("slip_load", Unit.N, "shear at which the joint slips under the outer load")
        .result("slip_safety", Unit.ONE, "slip load over shear")
        .source(Sources.SHIGLEY_JOINT)
        .rule(BoltReckoners::joint);
  }

  private static Answer joint(Given g) {
    int bolts = (int) Bound.within("bolts", g.count("bolts"), 1, 1000, "");
    int faces = (int) Bound.within("faces", g.count("faces"), 1, 100, "");
    double load = Bound.notNegative("load", g.number("load"), "N");
    double shear = Bound.notNegative("shear", g.number("shear"), "N");
    double mu = Bound.friction("mu", g.number("mu"));
    double settling = Bound.notNegative("settling", g.number("settling"), "mm");
    BoltedJoint fresh =
        new BoltedJoint(
            Bound.positive("kb", g.number("kb"), "N/mm"),
            Bound.positive("km", g.number("km"), "N/mm"),
            Bound.notNegative("preload", g.number("preload"), "N"));
    double loss = fresh.settlingLoss(settling);
    BoltedJoint joint =
        new BoltedJoint(
            fresh.boltStiffness(), fresh.partStiffness(), Math.max(0, fresh.preload() - loss));
    Working share =
        Working.check("C", joint.boltShare(), Unit.ONE, "kb/(kb + km)", g.term("kb"), g.term("km"));
    double each = load / bolts;
    double separation = bolts * joint.separatingLoad();
    double slip = bolts * faces * mu * joint.clampLeft(each);
    Answer answer =
        Answer.start()
            .with("C", share)
            .with("loss", loss)
            .with("bolt_tension", joint.boltTension(each))
            .with("clamp_left", joint.clampLeft(each))
            .with("separation", separation)
            .with("slip_load", slip);
    if (load > 0) {
      answer = answer.with("separation_safety", separation / load);
    }
    if (shear > 0) {
      answer = answer.with("slip_safety", slip / shear);
    }
    if (load > separation) {
      answer = answer.caution("the parts separate: the bolts carry the whole load and may fail");
    }
    return shear > 0 && slip < 1.5 * shear
        ? answer.caution("slip safety below 1.5: pin the joint or add preload (W-CLAMP-SLIP)")
        : answer;
  }

  private static Reckoner headPressure() {
    return Reckoner.of("joints", "head-pressure", "Pressure under the head of a bolt")
        .number("F", Unit.KN, "force of the bolt")
        .number("dw", Unit.MM, "outside diameter of the bearing face")
        .number("dh", Unit.MM, "hole")
        .choice("material", "what the head bears on", "GJL-250", "6082", "other")
        .result("p", Unit.MPA, "pressure")
        .result("limit", Unit.MPA, "usual limit for the material")
        .source(Sources.BEARING)
        .rule(
            g -> {
              Bound.notNegative("F", g.number("F"), "N");
              double dw = Bound.positive("dw", g.number("dw"), "mm");
              double dh = Bound.notNegative("dh", g.number("dh"), "mm");
              if (!(dh < dw)) {
                throw new IllegalArgumentException("dh = " + dh + " mm: must be below dw = " + dw);
              }
              Working p =
                  Working.of(
                      "p",
                      Unit.MPA,
                      "F/(pi/4*(dw^2 - dh^2))",
                      g.term("F"),
                      g.term("dw"),
                      g.term("dh"));
              Answer answer = Answer.start().with("p", p);
              if (g.choice("material").equals("other")) {
                return answer;
              }
              double limit = g.choice("material").equals("GJL-250") ? 800 : 300;
              answer = answer.with("limit", limit);
              return p.value() <= limit
                  ? answer
                  : answer.caution("the head sinks in: put a hard washer or a flange nut under it");
            });
  }

  private static Reckoner threadEngagement() {
    return Reckoner.of("joints", "thread-engagement", "Usual depth of engagement of a bolt")
        .number("d", Unit.MM, "nominal diameter")
        .choice("material", "what is tapped", "cast-iron", "aluminium", "brass", "steel")
        .input("depth", Input.Kind.NUMBER, Unit.MM, "depth at hand, to compare", null, false)
        .result("length", Unit.MM, "least engagement")
        .result("factor", Unit.ONE, "engagement over diameter")
        .source(Sources.ENGAGEMENT)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              double factor =
                  switch (g.choice("material")) {
                    case "cast-iron" -> 1.5;
                    case "aluminium" -> 2;
                    case "brass" -> 1.25;
                    default -> 1;
                  };
              Working length =
                  Working.of(
                      "length", Unit.MM, "factor*d", Term.exact("factor", factor), g.term("d"));
              Answer answer = Answer.start().with("length", length).with("factor", factor);
              return g.has("depth") && g.number("depth") < length.value()
                  ? answer.caution("too shallow for full preload: the thread may tear out")
                  : answer;
            });
  }
}
