package fettle.mechanics.clamps;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.Arrays;
import java.util.List;

/** Single calculations on eccentric levers. */
final class CamReckoners {

  private static final String ARMS =
      "handle_force*handle_length/(e*cos(psi) + mu_face*(R + e*sin(psi)) +"
          + " mu_pin*pin_r*sqrt(1 + mu_face^2))";
  private static final String OPEN =
      "the lever can fly open: keep fingers and face clear, use less eccentricity, a greater angle"
          + " or a positive lock (W-CAM-OPEN)";

  private CamReckoners() {}

  static List<Reckoner> all() {
    return List.of(camLever(), limit(), curve(), stroke(), range(), drawEccentric());
  }

  private static Reckoner.Draft cam(Reckoner.Draft draft) {
    return draft
        .number("e", Unit.MM, "eccentricity, pin to centre of the cam")
        .number("R", Unit.MM, "radius of the cam")
        .number("pin_r", Unit.MM, "radius of the pin")
        .number("mu_face", Unit.ONE, "friction between cam and face", "0.12")
        .number("mu_pin", Unit.ONE, "friction on the pin", "0.12");
  }

  private static CamLever cam(Given g) {
    return new CamLever(
        g.number("R"), g.number("e"), g.number("pin_r"), g.number("mu_face"), g.number("mu_pin"));
  }

  private static double psi(Given g) {
    return Bound.angle("psi", g.number("psi"), -90, 180);
  }

  private static double handle(Given g) {
    return Bound.positive("handle_length", g.number("handle_length"), "mm");
  }

  private static Reckoner camLever() {
    return cam(Reckoner.of("clamps", "cam-lever", "Eccentric lever on a flat face: force and hold"))
        .number("psi", Unit.DEG, "angle of the line pin to centre; 90 is dead centre")
        .number("handle_force", Unit.N, "force of the hand", "100")
        .number("handle_length", Unit.MM, "length of the handle", "100")
        .optional("N", Unit.N, "force on the face, if the hand force for it is wanted")
        .result("N", Unit.N, "force on the face")
        .result("handle_force", Unit.N, "force of the hand")
        .result("ratio", Unit.ONE, "force on the face over force of the hand")
        .result("lift", Unit.MM, "lift from psi = 0")
        .result("height", Unit.MM, "height of the pin above the face")
        .result("holds", Unit.ONE, "1 if it stays shut by friction, 0 if not")
        .result("margin", Unit.ONE, "friction over what turns it back; below 1 it opens")
        .result("opening_torque", Unit.NM, "moment to open it; negative: it opens itself")
        .result("opening_force", Unit.N, "hand force to open it")
        .source(Sources.CAM)
        .rule(CamReckoners::lever);
  }

  private static Answer lever(Given g) {
    CamLever cam = cam(g);
    double psi = psi(g);
    double length = handle(g);
    double hand =
        g.has("N")
            ? cam.closingMoment(Bound.notNegative("N", g.number("N"), "N"), psi) / length
            : Bound.notNegative("handle_force", g.number("handle_force"), "N");
    Working force =
        Working.check(
            "N",
            cam.force(hand * length, psi),
            Unit.N,
            ARMS,
            Term.exact("handle_force", hand, Unit.N),
            g.term("handle_length"),
            g.term("e"),
            g.term("psi"),
            g.term("mu_face"),
            g.term("R"),
            g.term("mu_pin"),
            g.term("pin_r"));
    double opening = cam.openingMoment(force.value(), psi);
    Answer answer =
        Answer.start()
            .with("N", force)
            .with("handle_force", hand)
            .with("ratio", cam.force(length, psi))
            .with("lift", cam.lift(psi))
            .with("height", cam.radius() + cam.lift(psi))
            .with("holds", cam.staysShut(psi) ? 1 : 0)
            .with("opening_torque", opening)
            .with("opening_force", opening / length);
    if (cam.backArm(psi) > 1e-9) {
      answer = answer.with("margin", cam.frictionArm(psi) / cam.backArm(psi));
    }
    return warned(answer, cam, psi);
  }

  private static Answer warned(Answer so, CamLever cam, double psi) {
    Answer answer = cam.staysShut(psi) ? so : so.caution(OPEN);
    double degrees = Math.toDegrees(psi);
    if (degrees > 90 + 1e-9) {
      answer =
          answer.caution(
              "past dead centre the grip falls by e (1 - sin psi) times the stiffness: it needs a"
                  + " stop");
    } else if (degrees < 30 - 1e-9 || degrees > 85 + 1e-9) {
      answer =
          answer.caution(
              "clamp between 30 and 80 degrees: below it opens easily, above 85 no reserve is left"
                  + " (W-CAM-RANGE, common practice)");
    }
    if (cam.eccentricity() + cam.pinRadius() > cam.radius()) {
      answer = answer.caution("the pin breaks through the rim of the cam: e + pin_r is above R");
    }
    return answer;
  }

  private static Reckoner limit() {
    return Reckoner.of(
            "clamps", "cam-limit", "Greatest eccentricity that stays shut at every angle")
        .number("R", Unit.MM, "radius of the cam")
        .number("pin_r", Unit.MM, "radius of the pin", "0")
        .number("mu_face", Unit.ONE, "least friction between cam and face", "0.12")
        .number("mu_pin", Unit.ONE, "least friction on the pin", "0.12")
        .result("e_max", Unit.MM, "greatest eccentricity")
        .result("D_over_e", Unit.ONE, "cam diameter over that eccentricity")
        .result("D_over_e_classic", Unit.ONE, "the rule without pin friction, 2/mu")
        .source(Sources.CAM)
        .rule(
            g -> {
              double radius = Bound.positive("R", g.number("R"), "mm");
              double pin = Bound.notNegative("pin_r", g.number("pin_r"), "mm");
              double face = Bound.gripping("mu_face", g.number("mu_face"));
              double atPin = Bound.friction("mu_pin", g.number("mu_pin"));
              Working greatest =
                  Working.check(
                      "e_max",
                      CamLever.greatestEccentricity(radius, pin, face, atPin),
                      Unit.MM,
                      "mu_face*R + mu_pin*pin_r*sqrt(1 + mu_face^2)",
                      g.term("mu_face"),
                      g.term("R"),
                      g.term("mu_pin"),
                      g.term("pin_r"));
              return Answer.start()
                  .with("e_max", greatest)
                  .with("D_over_e", 2 * radius / greatest.value())
                  .with("D_over_e_classic", 2 / face);
            });
  }

  private static Reckoner curve() {
    return cam(Reckoner.of("clamps", "cam-curve", "Eccentric lever over its angle"))
        .input("psi", Input.Kind.NUMBERS, Unit.DEG, "angles", "0,15,30,45,60,75,85,90", true)
        .number("handle_length", Unit.MM, "length of the handle", "100")
        .number("gap", Unit.MM, "free lift before it touches, from psi = 0", "0")
        .number("k", Unit.N_PER_MICRON, "stiffness of what is clamped", "10")
        .result("lift", Unit.MM, "lift at each angle")
        .result("ratio", Unit.ONE, "face force per hand force at each angle")
        .result("margin", Unit.ONE, "friction less back-turning arm, over R; negative opens")
        .result("grip", Unit.N, "force on the face from lift and stiffness")
        .result("handle_force", Unit.N, "hand force for that grip")
        .source(Sources.CAM)
        .rule(
            g -> {
              CamLever cam = cam(g);
              double length = handle(g);
              double gap = Bound.notNegative("gap", g.number("gap"), "mm");
              double k = Bound.positive("k", g.number("k"), "N/mm");
              double[] angles = g.numbers("psi");
              Bound.within("number of angles", angles.length, 1, 1000, "");
              for (double angle : angles) {
                Bound.angle("psi", angle, -90, 180);
              }
              double[] grips =
                  Arrays.stream(angles).map(a -> Math.max(0, k * (cam.lift(a) - gap))).toArray();
              double[] hands = new double[angles.length];
              for (int i = 0; i < hands.length; i++) {
                hands[i] = cam.closingMoment(grips[i], angles[i]) / length;
              }
              return Answer.start()
                  .with("lift", Arrays.stream(angles).map(cam::lift).toArray())
                  .with("ratio", Arrays.stream(angles).map(a -> cam.force(length, a)).toArray())
                  .with(
                      "margin",
                      Arrays.stream(angles)
                          .map(a -> (cam.frictionArm(a) - cam.backArm(a)) / cam.radius())
                          .toArray())
                  .with("grip", grips)
                  .with("handle_force", hands);
            });
  }

  private static Reckoner stroke() {
    return cam(Reckoner.of(
            "clamps", "cam-stroke", "Angle at which an eccentric lever reaches a grip"))
        .number("psi_start", Unit.DEG, "angle where it is loose", "0")
        .number("gap", Unit.MM, "clearance to take up", "0.3")
        .number("N", Unit.N, "grip wanted")
        .number("k", Unit.N_PER_MICRON, "stiffness of what is clamped")
        .number("wear", Unit.MM, "wear to allow for", "0.1")
        .number("handle_length", Unit.MM, "length of the handle", "100")
        .result("lift_needed", Unit.MM, "clearance, spring and wear together")
        .result("psi", Unit.DEG, "angle at full grip, unworn")
        .result("psi_worn", Unit.DEG, "angle at full grip after that wear")
        .result("reserve", Unit.MM, "lift left at full grip, unworn")
        .result("holds", Unit.ONE, "1 if it stays shut there by friction, 0 if not")
        .result("handle_force", Unit.N, "hand force there")
        .result("N_dead_centre", Unit.N, "grip if pulled to dead centre")
        .source(Sources.CAM)
        .rule(CamReckoners::reach);
  }

  private static Answer reach(Given g) {
    CamLever cam = cam(g);
    double start = Bound.angle("psi_start", g.number("psi_start"), -90, 85);
    double gap = Bound.notNegative("gap", g.number("gap"), "mm");
    double grip = Bound.notNegative("N", g.number("N"), "N");
    double k = Bound.positive("k", g.number("k"), "N/mm");
    double wear = Bound.notNegative("wear", g.number("wear"), "mm");
    double length = handle(g);
    double before = cam.lift(start);
    double unworn = gap + grip / k;
    double needed = unworn + wear;
    double greatest = cam.eccentricity() - before;
    if (needed > greatest) {
      return Answer.none(
          "the lever lifts only "
              + round(greatest)
              + " mm, but clearance, spring and wear need "
              + round(needed)
              + " mm: take up clearance with the nut, or choose a greater eccentricity and check"
              + " that it still stays shut");
    }
    double psi = Math.asin((before + unworn) / cam.eccentricity());
    Answer answer =
        Answer.start()
            .with("lift_needed", needed)
            .with("psi", psi)
            .with("psi_worn", Math.asin((before + needed) / cam.eccentricity()))
            .with("reserve", greatest - unworn)
            .with("holds", cam.staysShut(psi) ? 1 : 0)
            .with("handle_force", cam.closingMoment(grip, psi) / length)
            .with("N_dead_centre", k * (greatest - gap));
    return warned(answer, cam, psi);
  }

  private static String round(double value) {
    return Numbers.significant(value, 3);
  }

  private static Reckoner range() {
    return Reckoner.of("clamps", "cam-range", "Eccentric lever in the worst of its frictions")
        .number("e", Unit.MM, "eccentricity, pin to centre of the cam")
        .number("R", Unit.MM, "radius of the cam")
        .number("pin_r", Unit.MM, "radius of the pin")
        .number("mu_low", Unit.ONE, "least friction on the face", "0.08")
        .number("mu_high", Unit.ONE, "greatest friction on the face", "0.2")
        .number("mu_pin_low", Unit.ONE, "least friction on the pin", "0.08")
        .number("mu_pin_high", Unit.ONE, "greatest friction on the pin", "0.2")
        .number("psi", Unit.DEG, "angle at full grip; 90 is dead centre")
        .number("handle_force", Unit.N, "force of the hand", "100")
        .number("handle_length", Unit.MM, "length of the handle", "100")
        .optional("N", Unit.N, "grip wanted")
        .result("holds_worst", Unit.ONE, "1 if it stays shut with the least frictions, 0 if not")
        .result("psi_least", Unit.DEG, "least angle that stays shut with the least frictions")
        .result("e_max", Unit.MM, "eccentricity that always stays shut with the least frictions")
        .result("N_low", Unit.N, "grip of that hand with the greatest frictions")
        .result("N_high", Unit.N, "grip of that hand with the least frictions")
        .result("hand_needed", Unit.N, "hand force for the grip with the greatest frictions")
        .result("opening_high", Unit.N, "hand force to open that grip with the greatest frictions")
        .source(Sources.CAM)
        .rule(CamReckoners::worst);
  }

  private static Answer worst(Given g) {
    double psi = psi(g);
    double length = handle(g);
    double hand = Bound.notNegative("handle_force", g.number("handle_force"), "N");
    CamLever slippery =
        new CamLever(
            g.number("R"),
            g.number("e"),
            g.number("pin_r"),
            g.number("mu_low"),
            g.number("mu_pin_low"));
    CamLever rough =
        new CamLever(
            g.number("R"),
            g.number("e"),
            g.number("pin_r"),
            Bound.within("mu_high", g.number("mu_high"), g.number("mu_low"), 0.6, ""),
            Bound.within("mu_pin_high", g.number("mu_pin_high"), g.number("mu_pin_low"), 0.6, ""));
    Answer answer =
        Answer.start()
            .with("holds_worst", slippery.staysShut(psi) ? 1 : 0)
            .with("psi_least", slippery.leastShutAngle())
            .with(
                "e_max",
                CamLever.greatestEccentricity(
                    slippery.radius(),
                    slippery.pinRadius(),
                    slippery.faceFriction(),
                    slippery.pinFriction()))
            .with("N_low", rough.force(hand * length, psi))
            .with("N_high", slippery.force(hand * length, psi));
    if (g.has("N")) {
      double grip = Bound.notNegative("N", g.number("N"), "N");
      answer =
          answer
              .with("hand_needed", rough.closingMoment(grip, psi) / length)
              .with("opening_high", rough.openingMoment(grip, psi) / length);
    }
    return warned(answer, slippery, psi);
  }

  private static Reckoner drawEccentric() {
    return Reckoner.of(
            "clamps", "draw-eccentric", "Eccentric shaft that draws a bolt, as on a tailstock")
        .number("e", Unit.MM, "eccentricity")
        .number("rc", Unit.MM, "radius of the eccentric journal in the eye")
        .number("rb", Unit.MM, "radius of the shaft in its bores")
        .number("mu", Unit.ONE, "friction in both", "0.12")
        .number("psi", Unit.DEG, "angle before dead centre is 90 less psi")
        .number("N", Unit.N, "pull of the bolt")
        .number("handle_length", Unit.MM, "length of the lever", "200")
        .result("T", Unit.NM, "moment on the shaft")
        .result("handle_force", Unit.N, "hand force")
        .result("holds", Unit.ONE, "1 if it stays shut by friction, 0 if not")
        .result("psi_least", Unit.DEG, "least angle that stays shut")
        .result("lift", Unit.MM, "travel of the bolt from psi = 0")
        .source(Sources.DRAW)
        .rule(
            g -> {
              DrawEccentric shaft =
                  new DrawEccentric(g.number("e"), g.number("rc"), g.number("rb"), g.number("mu"));
              double psi = Bound.angle("psi", g.number("psi"), 0, 180);
              double pull = Bound.notNegative("N", g.number("N"), "N");
              double length = handle(g);
              Working moment =
                  Working.check(
                      "T",
                      shaft.moment(pull, psi),
                      Unit.NM,
                      "N*(e*cos(psi) + mu*(rc + rb))",
                      g.term("N"),
                      g.term("e"),
                      g.term("psi"),
                      g.term("mu"),
                      g.term("rc"),
                      g.term("rb"));
              Answer answer =
                  Answer.start()
                      .with("T", moment)
                      .with(
                          "handle_force",
                          Working.of(
                              "handle_force",
                              Unit.N,
                              "T/handle_length",
                              Term.of(moment),
                              Term.exact("handle_length", length, Unit.MM)))
                      .with("holds", shaft.staysShut(psi) ? 1 : 0)
                      .with("psi_least", shaft.leastShutAngle())
                      .with("lift", g.number("e") * Math.sin(psi));
              if (!shaft.staysShut(psi)) {
                answer =
                    answer.caution(
                        OPEN
                            + "; set the nut of the draw bolt so that it clamps at a greater angle");
              }
              return psi > Math.PI / 2 + 1e-12
                  ? answer.caution("past dead centre the pull falls again: it needs a stop")
                  : answer;
            });
  }
}
