package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on the geometry of spur gears and pairs. */
final class GeometryReckoners {

  private GeometryReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        involute(),
        involuteAngle(),
        shiftSum(),
        gear(),
        pair(),
        ringPair(),
        rackPinion(),
        undercut(),
        tipThickness());
  }

  static Reckoner.Draft rackForm(Reckoner.Draft draft) {
    return draft
        .number("alpha", Unit.DEG, "pressure angle", "20")
        .number("haP", Unit.ONE, "addendum of the basic rack, in modules", "1")
        .number("cP", Unit.ONE, "tip clearance of the basic rack, in modules", "0.25")
        .number("rhofP", Unit.ONE, "root radius of the basic rack, in modules", "0.38");
  }

  static BasicRack rack(Given g) {
    return new BasicRack(g.number("alpha"), g.number("haP"), g.number("cP"), g.number("rhofP"));
  }

  static Reckoner.Draft oneGear(Reckoner.Draft draft) {
    return rackForm(
        draft
            .number("m", Unit.MM, "module ('20 DP' for a diametral pitch)")
            .count("z", "teeth")
            .number("x", Unit.ONE, "profile shift coefficient", "0"));
  }

  static Gear gear(Given g) {
    return new Gear(g.number("m"), g.count("z"), g.number("x"), rack(g));
  }

  private static Reckoner involute() {
    return Reckoner.of(TrainReckoners.GROUP, "involute", "Involute function inv(alpha)")
        .number("alpha", Unit.DEG, "pressure angle")
        .result("inv", Unit.ONE, "tan(alpha) - alpha")
        .source(Sources.GEOMETRY)
        .rule(
            g ->
                Answer.start()
                    .with("inv", Involute.inv(g.number("alpha")))
                    .showing(Working.of("inv", Unit.ONE, "tan(alpha)-alpha", g.term("alpha"))));
  }

  private static Reckoner involuteAngle() {
    return Reckoner.of(TrainReckoners.GROUP, "involute-angle", "Angle whose involute is given")
        .number("inv", Unit.ONE, "involute, tan(alpha) - alpha")
        .result("alpha", Unit.DEG, "pressure angle")
        .source(Sources.GEOMETRY)
        .rule(g -> Answer.start().with("alpha", Involute.angle(g.number("inv"))));
  }

  private static Reckoner shiftSum() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "shift-sum",
            "Sum of profile shifts for a centre distance (helical: give the transverse angle)")
        .count("z1", "teeth of the first gear")
        .count("z2", "teeth of the second gear")
        .number("m", Unit.MM, "module", "1")
        .number("alpha", Unit.DEG, "normal pressure angle", "20")
        .optional("alpha_t", Unit.DEG, "transverse pressure angle, if helical")
        .optional("a", Unit.MM, "reference centre distance; m(z1+z2)/2 if left out")
        .number("a_w", Unit.MM, "actual centre distance")
        .result("sum", Unit.ONE, "x1 + x2")
        .result("alpha_w", Unit.DEG, "working pressure angle")
        .source(Sources.SHIFT_SUM)
        .rule(GeometryReckoners::shiftSum);
  }

  private static Answer shiftSum(Given g) {
    Teeth.check("z1", g.count("z1"));
    Teeth.check("z2", g.count("z2"));
    BasicRack.of(g.number("alpha"));
    double transverse = g.number("alpha_t", g.number("alpha"));
    BasicRack.of(transverse);
    double reference = g.number("a", g.number("m") * (g.count("z1") + g.count("z2")) / 2);
    Teeth.positive("a", "mm", reference);
    Teeth.positive("a_w", "mm", g.number("a_w"));
    double working = GearPair.workingAngle(reference, transverse, g.number("a_w"));
    Term a = Term.exact("a", reference, Unit.MM);
    Term at = Term.exact("alpha_t", transverse, Unit.DEG);
    Working angle =
        Working.check(
            "alpha_w", working, Unit.DEG, "acos(a*cos(alpha_t)/a_w)", a, at, g.term("a_w"));
    double sum =
        GearPair.shiftSum(
            g.count("z1"),
            g.count("z2"),
            reference,
            transverse,
            g.number("alpha"),
            g.number("a_w"));
    return Answer.start().with("sum", sum).with("alpha_w", angle);
  }

  private static Reckoner gear() {
    return oneGear(
            Reckoner.of(
                TrainReckoners.GROUP, "gear", "Sizes of an external spur gear, and its blank"))
        .number("k", Unit.ONE, "tip alteration coefficient", "0")
        .number("E_sn", Unit.MM, "thickness allowance, negative for thinner teeth", "0")
        .result("d", Unit.MM, "reference diameter")
        .result("d_b", Unit.MM, "base diameter")
        .result("d_a", Unit.MM, "tip diameter: size of the blank")
        .result("d_f", Unit.MM, "root diameter")
        .result("h", Unit.MM, "depth of cut from the blank")
        .result("p", Unit.MM, "pitch")
        .result("p_b", Unit.MM, "base pitch")
        .result("s", Unit.MM, "tooth thickness on the reference circle")
        .result("s_a", Unit.MM, "tooth thickness at the tip")
        .result("d_Ff", Unit.MM, "diameter where the true involute ends")
        .result("x_min", Unit.ONE, "least profile shift without undercut")
        .result("x_E", Unit.ONE, "generated profile shift, allowance included")
        .result("cutter", Unit.ONE, "number of the form cutter; 0 if none serves")
        .result("concerns", Unit.ONE, "what is doubtful or wrong")
        .source(Sources.GEOMETRY)
        .rule(GeometryReckoners::gearAnswer);
  }

  private static Answer gearAnswer(Given g) {
    Gear gear = gear(g);
    double tip = gear.tip(g.number("k"));
    Term m = g.term("m");
    Term z = g.term("z");
    Term x = g.term("x");
    Term ha = g.term("haP");
    List<Concern> concerns = new java.util.ArrayList<>();
    GearConcerns.gear("gear", gear, tip, concerns);
    Answer answer =
        Answer.start()
            .with("d", Working.check("d", gear.reference(), Unit.MM, "m*z", m, z))
            .with(
                "d_b",
                Working.check("d_b", gear.base(), Unit.MM, "m*z*cos(alpha)", m, z, g.term("alpha")))
            .with(
                "d_a",
                Working.check("d_a", tip, Unit.MM, "m*z+2*m*(haP+x+k)", m, z, ha, x, g.term("k")))
            .with(
                "d_f",
                Working.check(
                    "d_f", gear.root(), Unit.MM, "m*z-2*m*(haP+cP-x)", m, z, ha, g.term("cP"), x))
            .with("h", (tip - gear.root()) / 2)
            .with("p", Working.of("p", Unit.MM, "pi*m", m))
            .with("p_b", Working.of("p_b", Unit.MM, "pi*m*cos(alpha)", m, g.term("alpha")))
            .with(
                "s",
                Working.check(
                    "s",
                    gear.thickness() + g.number("E_sn"),
                    Unit.MM,
                    "m*(pi/2+2*x*tan(alpha))+E_sn",
                    m,
                    x,
                    g.term("alpha"),
                    g.term("E_sn")));
    if (tip > gear.base()) {
      answer = answer.with("s_a", gear.thicknessAt(tip));
    }
    answer =
        answer
            .with("d_Ff", gear.form())
            .with("x_min", gear.shiftWithoutUndercut())
            .with(
                "x_E",
                Working.of(
                    "x_E",
                    Unit.ONE,
                    "x+E_sn/(2*m*tan(alpha))",
                    x,
                    g.term("E_sn"),
                    m,
                    g.term("alpha")))
            .with("cutter", gear.cutterNumber());
    return concerned(answer, concerns);
  }

  static Answer concerned(Answer start, List<Concern> concerns) {
    Answer answer =
        start.with(
            "concerns",
            concerns.stream()
                .map(c -> (c.level() == Concern.Level.REFUSE ? "REFUSE: " : "warn: ") + c.text())
                .toList());
    for (Concern concern : concerns) {
      if (concern.level() == Concern.Level.REFUSE) {
        answer = answer.caution("Do not make it so: " + concern.text() + ".");
      }
    }
    return answer;
  }

  private static Reckoner pair() {
    return rackForm(
            Reckoner.of(
                    TrainReckoners.GROUP,
                    "gear-pair",
                    "Two external spur gears on a centre distance, with profile shift")
                .number("m", Unit.MM, "module ('20 DP' for a diametral pitch)")
                .count("z1", "teeth of the pinion")
                .count("z2", "teeth of the wheel")
                .number("x1", Unit.ONE, "profile shift of the pinion", "0")
                .optional("x2", Unit.ONE, "profile shift of the wheel; found from a_w if left out")
                .optional("a_w", Unit.MM, "actual centre distance; found from x1, x2 if left out"))
        .number("E_sn1", Unit.MM, "thickness allowance of the pinion", "0")
        .number("E_sn2", Unit.MM, "thickness allowance of the wheel", "0")
        .optional("k", Unit.ONE, "tip alteration; keeps the standard clearance if left out")
        .result("a", Unit.MM, "reference centre distance")
        .result("a_w", Unit.MM, "actual centre distance")
        .result("alpha_w", Unit.DEG, "working pressure angle")
        .result("sum", Unit.ONE, "x1 + x2")
        .result("x1", Unit.ONE, "profile shift of the pinion")
        .result("x2", Unit.ONE, "profile shift of the wheel")
        .result("k", Unit.ONE, "tip alteration coefficient")
        .result("d_a1", Unit.MM, "tip diameter of the pinion")
        .result("d_a2", Unit.MM, "tip diameter of the wheel")
        .result("d_f1", Unit.MM, "root diameter of the pinion")
        .result("d_f2", Unit.MM, "root diameter of the wheel")
        .result("d_w1", Unit.MM, "working pitch diameter of the pinion")
        .result("d_w2", Unit.MM, "working pitch diameter of the wheel")
        .result("eps", Unit.ONE, "transverse contact ratio")
        .result("c", Unit.MM, "least tip clearance")
        .result("interference_1", Unit.MM, "pinion: form diameter less start of active profile")
        .result("interference_2", Unit.MM, "wheel: form diameter less start of active profile")
        .result("d_Nf1", Unit.MM, "start of the active profile of the pinion")
        .result("d_Nf2", Unit.MM, "start of the active profile of the wheel")
        .result("j_bn", Unit.MM, "backlash along the base tangent: what a feeler reads")
        .result("j_wt", Unit.MM, "backlash at the working circle: what an indicator reads")
        .result("j_t", Unit.MM, "backlash at the reference circle")
        .result("s_a1", Unit.MM, "tip thickness of the pinion")
        .result("s_a2", Unit.MM, "tip thickness of the wheel")
        .result("concerns", Unit.ONE, "what is doubtful or wrong")
        .source(Sources.GEOMETRY)
        .rule(GeometryReckoners::pairAnswer);
  }

  private static GearPair pairOf(Given g) {
    Gear pinion = new Gear(g.number("m"), g.count("z1"), g.number("x1"), rack(g));
    if (g.has("x2")) {
      Gear wheel = new Gear(g.number("m"), g.count("z2"), g.number("x2"), rack(g));
      return g.has("a_w")
          ? new GearPair(pinion, wheel, g.number("a_w"))
          : GearPair.withoutPlay(pinion, wheel);
    }
    Teeth.check("z2", g.count("z2"));
    double reference = g.number("m") * (g.count("z1") + g.count("z2")) / 2;
    return g.has("a_w")
        ? GearPair.onCentres(pinion, g.count("z2"), Teeth.positive("a_w", "mm", g.number("a_w")))
        : GearPair.onCentres(pinion, g.count("z2"), reference);
  }

  private static Answer pairAnswer(Given g) {
    GearPair pair = pairOf(g);
    double alteration = g.number("k", pair.alteration());
    double tip1 = pair.pinion().tip(alteration);
    double tip2 = pair.wheel().tip(alteration);
    Term m = g.term("m");
    Term aw = Term.exact("a_w", pair.axes(), Unit.MM);
    Working a =
        Working.check("a", pair.reference(), Unit.MM, "m*(z1+z2)/2", m, g.term("z1"), g.term("z2"));
    Working working =
        Working.check(
            "alpha_w",
            pair.workingAngle(),
            Unit.DEG,
            "acos(min(1,a*cos(alpha)/a_w))",
            Term.of(a),
            g.term("alpha"),
            aw);
    double allowance = g.number("E_sn1") + g.number("E_sn2");
    double play = pair.backlash(allowance);
    Term jbn = Term.exact("j_bn", play, Unit.MM);
    Answer answer =
        Answer.start()
            .with("a", a)
            .with("a_w", pair.axes())
            .with("alpha_w", working)
            .with("sum", pair.pinion().shift() + pair.wheel().shift())
            .with("x1", pair.pinion().shift())
            .with("x2", pair.wheel().shift())
            .with("k", alteration)
            .with("d_a1", tip1)
            .with("d_a2", tip2)
            .with("d_f1", pair.pinion().root())
            .with("d_f2", pair.wheel().root())
            .with(
                "d_w1",
                Working.of("d_w1", Unit.MM, "2*a_w*z1/(z1+z2)", aw, g.term("z1"), g.term("z2")))
            .with(
                "d_w2",
                Working.of("d_w2", Unit.MM, "2*a_w*z2/(z1+z2)", aw, g.term("z1"), g.term("z2")))
            .with("eps", pair.contactRatio(tip1, tip2))
            .with("c", pair.tipClearance(tip1, tip2))
            .with("interference_1", pair.pinionInterference())
            .with("interference_2", pair.wheelInterference())
            .with("d_Nf1", pair.pinionActive())
            .with("d_Nf2", pair.wheelActive())
            .with("j_bn", play)
            .with("j_wt", Working.of("j_wt", Unit.MM, "j_bn/cos(alpha_w)", jbn, Term.of(working)))
            .with("j_t", Working.of("j_t", Unit.MM, "j_bn/cos(alpha)", jbn, g.term("alpha")));
    if (tip1 > pair.pinion().base() && tip2 > pair.wheel().base()) {
      answer =
          answer
              .with("s_a1", pair.pinion().thicknessAt(tip1))
              .with("s_a2", pair.wheel().thicknessAt(tip2));
    }
    return concerned(answer, pair.concerns());
  }

  private static Reckoner ringPair() {
    return rackForm(
            Reckoner.of(
                    TrainReckoners.GROUP,
                    "ring-pair",
                    "A pinion in a ring with internal teeth, on a centre distance")
                .number("m", Unit.MM, "module")
                .count("z1", "teeth of the pinion")
                .count("z2", "teeth of the ring")
                .number("x1", Unit.ONE, "profile shift of the pinion", "0")
                .optional("x2", Unit.ONE, "profile shift of the ring, positive for thicker teeth")
                .optional("a_w", Unit.MM, "actual centre distance"))
        .number("E_sn1", Unit.MM, "thickness allowance of the pinion", "0")
        .number("E_sn2", Unit.MM, "thickness allowance of the ring", "0")
        .result("a", Unit.MM, "reference centre distance")
        .result("a_w", Unit.MM, "actual centre distance")
        .result("alpha_w", Unit.DEG, "working pressure angle")
        .result("x2", Unit.ONE, "profile shift of the ring")
        .result("d_a1", Unit.MM, "tip diameter of the pinion")
        .result("d_a2", Unit.MM, "tip diameter of the ring")
        .result("d_f2", Unit.MM, "root diameter of the ring")
        .result("eps", Unit.ONE, "transverse contact ratio")
        .result("c", Unit.MM, "tip clearance in the ring's root")
        .result("j_bn", Unit.MM, "backlash along the base tangent")
        .result("concerns", Unit.ONE, "what is doubtful or wrong")
        .source(Sources.GEOMETRY)
        .rule(GeometryReckoners::ringAnswer);
  }

  private static RingPair ringOf(Given g) {
    Gear pinion = new Gear(g.number("m"), g.count("z1"), g.number("x1"), rack(g));
    int ring = g.count("z2");
    if (g.has("x2")) {
      return g.has("a_w")
          ? new RingPair(pinion, ring, g.number("x2"), g.number("a_w"))
          : RingPair.withoutPlay(pinion, ring, g.number("x2"));
    }
    return g.has("a_w")
        ? RingPair.onCentres(pinion, ring, g.number("a_w"))
        : RingPair.withoutPlay(pinion, ring, -g.number("x1"));
  }

  private static Answer ringAnswer(Given g) {
    RingPair pair = ringOf(g);
    Answer answer =
        Answer.start()
            .with("a", pair.reference())
            .with("a_w", pair.axes())
            .with("alpha_w", pair.workingAngle())
            .with("x2", pair.ringShift())
            .with("d_a1", pair.pinion().tip(0))
            .with("d_a2", pair.ringTip())
            .with("d_f2", pair.ringRoot())
            .with("eps", pair.contactRatio())
            .with("c", pair.tipClearance())
            .with("j_bn", pair.backlash(g.number("E_sn1") + g.number("E_sn2")));
    return concerned(answer, pair.concerns());
  }

  private static Reckoner rackPinion() {
    return oneGear(Reckoner.of(TrainReckoners.GROUP, "rack-contact", "Pinion on a rack"))
        .optional("d_a", Unit.MM, "tip diameter; standard if left out")
        .number("dh", Unit.MM, "pinion lifted, or rack lowered, by", "0")
        .result("eps", Unit.ONE, "contact ratio")
        .result("h", Unit.MM, "pitch line of the rack to the pinion's axis, without play")
        .result("j_t", Unit.MM, "play added by lifting the pinion")
        .result("T", Unit.MM, "travel per turn: shift and lift do not change it")
        .result("x_min", Unit.ONE, "least profile shift without undercut")
        .result("concerns", Unit.ONE, "what is doubtful or wrong")
        .source(Sources.GEOMETRY)
        .rule(GeometryReckoners::rackAnswer);
  }

  private static Answer rackAnswer(Given g) {
    Gear gear = gear(g);
    double tip = g.number("d_a", gear.tip(0));
    gear.angleAt(tip);
    Term da = Term.exact("d_a", tip, Unit.MM);
    Working d = Working.of("d", Unit.MM, "m*z", g.term("m"), g.term("z"));
    Working db =
        Working.of("d_b", Unit.MM, "m*z*cos(alpha)", g.term("m"), g.term("z"), g.term("alpha"));
    Working ratio =
        Working.of(
            "eps",
            Unit.ONE,
            "(sqrt(d_a^2-d_b^2)/2-d/2*sin(alpha)+(haP-x)*m/sin(alpha))/(pi*m*cos(alpha))",
            da,
            Term.of(db),
            Term.of(d),
            g.term("alpha"),
            g.term("haP"),
            g.term("x"),
            g.term("m"));
    List<Concern> concerns = new java.util.ArrayList<>();
    GearConcerns.gear("pinion", gear, tip, concerns);
    if (ratio.value() < 1.2) {
      concerns.add(Concern.warn("contact ratio is below 1.2"));
    }
    return concerned(
        Answer.start()
            .with("eps", ratio)
            .with("h", Working.of("h", Unit.MM, "d/2+x*m", Term.of(d), g.term("x"), g.term("m")))
            .with(
                "j_t", Working.of("j_t", Unit.MM, "2*dh*tan(alpha)", g.term("dh"), g.term("alpha")))
            .with("T", Working.of("T", Unit.MM, "pi*m*z", g.term("m"), g.term("z")))
            .with("x_min", gear.shiftWithoutUndercut()),
        concerns);
  }

  private static Reckoner undercut() {
    return Reckoner.of(TrainReckoners.GROUP, "undercut", "Least profile shift without undercut")
        .count("z", "teeth")
        .number("alpha", Unit.DEG, "pressure angle", "20")
        .number("haP", Unit.ONE, "addendum of the basic rack, in modules", "1")
        .result("x_min", Unit.ONE, "least profile shift")
        .result("z_min", Unit.TEETH, "least teeth without shift")
        .result("practical", Unit.ONE, "practical limit, 14/17 of it")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              Teeth.check("z", g.count("z"));
              BasicRack rack = new BasicRack(g.number("alpha"), g.number("haP"), 0.25, 0.38);
              Gear gear = new Gear(1, g.count("z"), 0, rack);
              double sin = Math.sin(rack.angle());
              return Answer.start()
                  .with(
                      "x_min",
                      Working.check(
                          "x_min",
                          gear.shiftWithoutUndercut(),
                          Unit.ONE,
                          "haP-z*sin(alpha)^2/2",
                          g.term("haP"),
                          g.term("z"),
                          g.term("alpha")))
                  .with("z_min", 2 * rack.addendum() / (sin * sin))
                  .with(
                      "practical",
                      Working.of(
                          "practical",
                          Unit.ONE,
                          "haP*14/17-z*sin(alpha)^2/2",
                          g.term("haP"),
                          g.term("z"),
                          g.term("alpha")));
            });
  }

  private static Reckoner tipThickness() {
    return oneGear(
            Reckoner.of(TrainReckoners.GROUP, "tooth-thickness", "Tooth thickness on any diameter"))
        .optional("d_y", Unit.MM, "diameter; the tip if left out")
        .optional("d_a", Unit.MM, "tip diameter; standard if left out")
        .number("E_sn", Unit.MM, "thickness allowance on the reference circle", "0")
        .result("s", Unit.MM, "thickness on the reference circle")
        .result("s_y", Unit.MM, "thickness on the diameter")
        .result("s_a", Unit.MM, "thickness at the tip")
        .result("s_a_m", Unit.ONE, "thickness at the tip, in modules")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              Gear gear = gear(g);
              double tip = g.number("d_a", gear.tip(0));
              double diameter = g.number("d_y", tip);
              double thinning = g.number("E_sn") / gear.reference();
              double atTip = gear.thicknessAt(tip) + thinning * tip;
              Answer answer =
                  Answer.start()
                      .with("s", gear.thickness() + g.number("E_sn"))
                      .with("s_y", gear.thicknessAt(diameter) + thinning * diameter)
                      .with("s_a", atTip)
                      .with("s_a_m", atTip / gear.module());
              return atTip < 0.2 * gear.module()
                  ? answer.caution(
                      "The tip is thinner than 0.2 module: shorten it or take less shift.")
                  : answer;
            });
  }
}
