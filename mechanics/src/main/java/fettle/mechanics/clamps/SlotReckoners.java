package fettle.mechanics.clamps;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on T-slots, flange nuts, side clamps and contact pressure. */
final class SlotReckoners {

  private SlotReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        teeSlot(), flangeNut(), sideClamp(), slotSection(), lineContact(), flatPressure());
  }

  private static Reckoner teeSlot() {
    return Reckoner.of("clamps", "tee-slot", "Load of the lips of a T-slot under a nut")
        .number("F", Unit.N, "force of the bolt")
        .number("l", Unit.MM, "length of the T-nut")
        .number("b", Unit.MM, "width of one lip that the nut bears on")
        .number("t", Unit.MM, "thickness of the lip")
        .number("e", Unit.MM, "lever from the middle of bearing to the root of the lip")
        .result("bearing", Unit.MPA, "pressure on the lips; 200 MPa at most on cast iron")
        .result("shear", Unit.MPA, "shear of the lip; 25 MPa at most in GJL-200")
        .result("bending", Unit.MPA, "bending at its root; 40 MPa at most in GJL-200")
        .result("F_max", Unit.N, "force at which the first of the limits is reached")
        .source(Sources.SLOT)
        .rule(
            g -> {
              Bound.notNegative("F", g.number("F"), "N");
              for (String name : List.of("l", "b", "t")) {
                Bound.positive(name, g.number(name), "mm");
              }
              Bound.notNegative("e", g.number("e"), "mm");
              Working bearing =
                  Working.of("p", Unit.MPA, "F/(2*b*l)", g.term("F"), g.term("b"), g.term("l"));
              Working shear =
                  Working.of("tau", Unit.MPA, "F/(2*l*t)", g.term("F"), g.term("l"), g.term("t"));
              Working bending =
                  Working.of(
                      "sigma",
                      Unit.MPA,
                      "3*F*e/(l*t^2)",
                      g.term("F"),
                      g.term("e"),
                      g.term("l"),
                      g.term("t"));
              double use =
                  Math.max(
                      bearing.value() / 200, Math.max(shear.value() / 25, bending.value() / 40));
              Answer answer =
                  Answer.start()
                      .with("bearing", bearing)
                      .with("shear", shear)
                      .with("bending", bending);
              if (use > 0) {
                answer = answer.with("F_max", g.number("F") / use);
              }
              return use <= 1
                  ? answer
                  : answer.caution(
                      "above the usual limits for a cast-iron table: the lip may break out; use a"
                          + " longer nut (common practice)");
            });
  }

  private static Reckoner flangeNut() {
    return Reckoner.of("clamps", "flange-nut", "Flange nut on a milled slot without a washer")
        .number("d", Unit.MM, "nominal diameter of the bolt")
        .number("slot", Unit.MM, "width of the slot")
        .optional("flange", Unit.MM, "outside diameter of the flange; 2.2 d if not given")
        .result("flange", Unit.MM, "outside diameter of the flange")
        .result("slot_max", Unit.MM, "widest slot, 0.6 of the flange")
        .result("fits", Unit.ONE, "1 if it bears well, 0 if not")
        .source(Sources.PRACTICE)
        .rule(
            g -> {
              double d = Bound.positive("d", g.number("d"), "mm");
              double slot = Bound.positive("slot", g.number("slot"), "mm");
              if (!(slot >= d)) {
                throw new IllegalArgumentException(
                    "slot = " + slot + " mm: the bolt does not enter");
              }
              double flange = Bound.positive("flange", g.number("flange", 2.2 * d), "mm");
              Answer answer =
                  Answer.start()
                      .with("flange", flange)
                      .with("slot_max", 0.6 * flange)
                      .with("fits", slot < 0.6 * flange ? 1 : 0);
              return slot < 0.6 * flange
                  ? answer
                  : answer.caution("the flange bears too little beside the slot: use a washer");
            });
  }

  private static Reckoner sideClamp() {
    return Reckoner.of("clamps", "side-clamp", "Side force of a wedge clamp in a T-slot")
        .number("F", Unit.N, "force of the screw on the wedge")
        .number("wedge", Unit.DEG, "angle of the wedge")
        .number("mu", Unit.ONE, "friction on all faces", "0.15")
        .number("tilt", Unit.DEG, "tilt of the push below the horizontal", "0")
        .result("S", Unit.N, "side force")
        .result("seating", Unit.N, "force that seats the work; negative: it may lift")
        .result("tilt_least", Unit.DEG, "tilt above which it pulls down")
        .result("self_locking", Unit.ONE, "1 if the wedge stays when the screw is slack, else 0")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              double mu = g.number("mu");
              SideClamp clamp = new SideClamp(g.number("wedge"), mu);
              double tilt = Bound.angle("tilt", g.number("tilt"), 0, 60);
              double screw = Bound.notNegative("F", g.number("F"), "N");
              Working side =
                  Working.check(
                      "S",
                      clamp.sideForce(screw),
                      Unit.N,
                      "F/(tan(wedge + atan(mu)) + mu)",
                      g.term("F"),
                      g.term("wedge"),
                      g.term("mu"));
              Working seat =
                  Working.check(
                      "seating",
                      clamp.seating(side.value(), tilt),
                      Unit.N,
                      "S*(tan(tilt) - mu)",
                      Term.of(side),
                      g.term("tilt"),
                      g.term("mu"));
              Answer answer =
                  Answer.start()
                      .with("S", side)
                      .with("seating", seat)
                      .with("tilt_least", Math.atan(mu))
                      .with("self_locking", g.number("wedge") <= 2 * Math.atan(mu) ? 1 : 0)
                      .caution(HoldingReckoners.SAFETY);
              return seat.value() >= 0
                  ? answer
                  : answer.caution(
                      "the stop rubs more than the tilt pulls down: the work may lift off the"
                          + " base");
            });
  }

  private static Reckoner slotSection() {
    return Reckoner.of(
            "clamps", "slot-section", "What a milled slot takes from a rectangular section")
        .number("b", Unit.MM, "width of the section")
        .number("h", Unit.MM, "height of the section")
        .number("slot_width", Unit.MM, "width of the slot")
        .number("slot_depth", Unit.MM, "depth of the slot from the top")
        .result("I_before", Unit.MM4, "second moment without the slot")
        .result("I_after", Unit.MM4, "second moment with it, about the new middle")
        .result("loss", Unit.PERCENT, "loss of bending stiffness")
        .source(Source.derived("second moment of a rectangle with a slot"))
        .rule(SlotReckoners::section);
  }

  private static Answer section(Given g) {
    double b = Bound.positive("b", g.number("b"), "mm");
    double h = Bound.positive("h", g.number("h"), "mm");
    double width = Bound.within("slot_width", g.number("slot_width"), 0, b, "mm");
    double depth = Bound.within("slot_depth", g.number("slot_depth"), 0, h, "mm");
    double area = b * h - width * depth;
    if (!(area > 1e-9 * b * h)) {
      throw new IllegalArgumentException("the slot leaves nothing of the section");
    }
    double middle = (b * h * h / 2 - width * depth * (h - depth / 2)) / area;
    double away = h / 2 - middle;
    double slot = h - depth / 2 - middle;
    double before = b * h * h * h / 12;
    double after =
        before
            + b * h * away * away
            - width * depth * depth * depth / 12
            - width * depth * slot * slot;
    double loss = 1 - after / before;
    Answer answer =
        Answer.start().with("I_before", before).with("I_after", after).with("loss", loss);
    return loss > 0.1
        ? answer.caution("more than 10 % of the bending stiffness is lost: mill less, or elsewhere")
        : answer;
  }

  private static Reckoner lineContact() {
    return Reckoner.of("clamps", "clamp-contact", "Pressure of a round cam or pin on a flat face")
        .number("F", Unit.N, "force")
        .number("R", Unit.MM, "radius of the round face")
        .number("L", Unit.MM, "length of contact")
        .number("E1", Unit.MPA, "Young's modulus of the round part", "210000")
        .number("nu1", Unit.ONE, "Poisson's ratio of the round part", "0.3")
        .number("E2", Unit.MPA, "Young's modulus of the flat part", "210000")
        .number("nu2", Unit.ONE, "Poisson's ratio of the flat part", "0.3")
        .choice("face", "what the flat is made of", "steel", "cast-iron")
        .result("p0", Unit.MPA, "greatest pressure")
        .result("b", Unit.MM, "half the width of the strip in contact")
        .result("E_star", Unit.MPA, "common modulus")
        .source(Sources.CONTACT)
        .rule(SlotReckoners::contact);
  }

  private static Answer contact(Given g) {
    for (String name : List.of("E1", "E2")) {
      Bound.positive(name, g.number(name), "MPa");
    }
    for (String name : List.of("nu1", "nu2")) {
      Bound.within(name, g.number(name), 0, 0.5, "");
    }
    for (String name : List.of("R", "L")) {
      Bound.positive(name, g.number(name), "mm");
    }
    Bound.notNegative("F", g.number("F"), "N");
    double common =
        LineContact.commonModulus(g.number("E1"), g.number("nu1"), g.number("E2"), g.number("nu2"));
    LineContact line = new LineContact(g.number("F"), g.number("R"), g.number("L"), common);
    Term modulus = Term.exact("E_star", common, Unit.MPA);
    Working pressure =
        Working.check(
            "p0",
            line.greatestPressure(),
            Unit.MPA,
            "sqrt(F*E_star/(pi*L*R))",
            g.term("F"),
            modulus,
            g.term("L"),
            g.term("R"));
    Answer answer =
        Answer.start().with("p0", pressure).with("b", line.halfWidth()).with("E_star", common);
    boolean iron = g.choice("face").equals("cast-iron");
    return iron && pressure.value() > 400
        ? answer.caution(
            "above 400 MPa on cast iron (700 MPa if rarely moved): put a hardened shoe between")
        : answer;
  }

  private static Reckoner flatPressure() {
    return Reckoner.of("clamps", "flat-pressure", "Mean pressure of flat on flat")
        .number("F", Unit.N, "force")
        .number("area", Unit.MM2, "area in contact")
        .result("p", Unit.MPA, "mean pressure")
        .source(Source.derived("force over area"))
        .rule(
            g -> {
              Bound.notNegative("F", g.number("F"), "N");
              Bound.positive("area", g.number("area"), "mm2");
              return Answer.start()
                  .with("p", Working.of("p", Unit.MPA, "F/area", g.term("F"), g.term("area")));
            });
  }
}
