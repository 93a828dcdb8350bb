package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.List;

/** Single calculations for measuring teeth: span, pins, chord, and what they tell. */
final class MeasureReckoners {

  private MeasureReckoners() {}

  static List<Reckoner> all() {
    return List.of(span(), pins(), betweenPins(), chord(), cutter(), spanIdentity());
  }

  private static Reckoner span() {
    return GeometryReckoners.oneGear(
            Reckoner.of(TrainReckoners.GROUP, "span", "Span over several teeth"))
        .optional("k", Unit.ONE, "teeth spanned; the best number if left out")
        .number("E_sn", Unit.MM, "thickness allowance", "0")
        .optional("W", Unit.MM, "measured span, to find the profile shift")
        .optional("d_a", Unit.MM, "tip diameter; standard if left out")
        .result("k", Unit.TEETH, "teeth spanned")
        .result("W", Unit.MM, "span")
        .result("contact", Unit.MM, "diameter on which the jaws touch")
        .result("x", Unit.ONE, "profile shift the measured span tells of")
        .source(Sources.GEOMETRY)
        .rule(MeasureReckoners::spanAnswer);
  }

  private static Answer spanAnswer(Given g) {
    Gear gear = GeometryReckoners.gear(g);
    int spanned = g.has("k") ? g.count("k") : gear.spanTeeth();
    double span = gear.span(spanned, g.number("E_sn"));
    double contact = gear.spanContact(span);
    Answer answer = Answer.start().with("k", spanned).with("W", span).with("contact", contact);
    if (g.has("W")) {
      answer = answer.with("x", gear.shiftFromSpan(g.number("W"), spanned));
    }
    double tip = g.number("d_a", gear.tip(0));
    return contact > gear.form() && contact < tip
        ? answer
        : answer.caution(
            "The jaws would touch outside the true involute; span one tooth more or less.");
  }

  private static Reckoner pins() {
    return GeometryReckoners.oneGear(
            Reckoner.of(TrainReckoners.GROUP, "over-pins", "Size over two pins or balls"))
        .optional("D_M", Unit.MM, "pin diameter; 1.728 m if left out")
        .number("E_sn", Unit.MM, "thickness allowance", "0")
        .optional("M", Unit.MM, "measured size, to find the profile shift")
        .result("M", Unit.MM, "size over pins")
        .result("D_M", Unit.MM, "pin diameter")
        .result("d_K", Unit.MM, "diameter of the pin centres")
        .result("contact", Unit.MM, "diameter on which the pins touch")
        .result("x", Unit.ONE, "profile shift the measured size tells of")
        .source(Sources.GEOMETRY)
        .rule(MeasureReckoners::pinAnswer);
  }

  private static Answer pinAnswer(Given g) {
    Gear gear = GeometryReckoners.gear(g);
    double pin = g.number("D_M", 1.728 * gear.module());
    double allowance = g.number("E_sn");
    double contact = gear.pinContact(pin, allowance);
    double centre = gear.pinCentre(pin, allowance);
    Answer answer =
        Answer.start()
            .with("M", gear.overPins(pin, allowance))
            .with("D_M", pin)
            .with("d_K", centre)
            .with("contact", contact);
    if (g.has("M")) {
      answer = answer.with("x", gear.shiftFromPins(g.number("M"), pin));
    }
    if (contact < gear.form() || contact > gear.tip(0)) {
      answer = answer.caution("The pin touches outside the true involute; take another pin.");
    }
    return centre + pin > gear.tip(0)
        ? answer
        : answer.caution("The pin does not stand proud of the tips; take a larger one.");
  }

  private static Reckoner betweenPins() {
    return GeometryReckoners.rackForm(
            Reckoner.of(TrainReckoners.GROUP, "between-pins", "Size between two pins in a ring")
                .number("m", Unit.MM, "module")
                .count("z", "teeth of the ring")
                .number("x", Unit.ONE, "profile shift, positive for thicker teeth", "0"))
        .optional("D_M", Unit.MM, "pin diameter; 1.68 m if left out")
        .number("E_sn", Unit.MM, "thickness allowance", "0")
        .result("M", Unit.MM, "size between pins")
        .result("D_M", Unit.MM, "pin diameter")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              Gear gear = GeometryReckoners.gear(g);
              double pin = Teeth.positive("D_M", "mm", g.number("D_M", 1.68 * gear.module()));
              double space = Math.PI * gear.module() - gear.thickness() - g.number("E_sn");
              double involute =
                  space / gear.reference() + Involute.inv(gear.rack().angle()) - pin / gear.base();
              if (!(involute > 0 && involute <= 3)) {
                throw new IllegalArgumentException(
                    "pin diameter [mm] of " + pin + " does not rest on the flanks of this ring");
              }
              double centre = gear.base() / Math.cos(Involute.angle(involute));
              double across =
                  gear.teeth() % 2 == 0 ? centre : centre * Math.cos(Math.PI / (2 * gear.teeth()));
              return Answer.start().with("M", across - pin).with("D_M", pin);
            });
  }

  private static Reckoner chord() {
    return GeometryReckoners.oneGear(
            Reckoner.of(TrainReckoners.GROUP, "chordal", "Chordal thickness and height of a tooth"))
        .optional("h_a", Unit.MM, "actual addendum above the reference circle")
        .optional("d_a", Unit.MM, "actual tip diameter, instead of h_a")
        .result("s_c", Unit.MM, "chordal thickness")
        .result("h_c", Unit.MM, "chordal height below the tips")
        .source(Sources.CHORDAL)
        .rule(
            g -> {
              if (g.has("h_a") && g.has("d_a")) {
                throw new IllegalArgumentException("give h_a or d_a, not both");
              }
              Gear gear = GeometryReckoners.gear(g);
              double tip =
                  g.has("h_a")
                      ? gear.reference() + 2 * g.number("h_a")
                      : g.number("d_a", gear.tip(0));
              return Answer.start()
                  .with("s_c", gear.chord())
                  .with("h_c", gear.chordHeight(tip))
                  .caution("The chordal height is only as true as the tip circle.");
            });
  }

  private static Reckoner cutter() {
    return Reckoner.of(TrainReckoners.GROUP, "form-cutter", "Form cutter for a number of teeth")
        .count("z", "teeth")
        .number("m", Unit.MM, "module", "1")
        .number("x", Unit.ONE, "profile shift coefficient", "0")
        .result("number", Unit.ONE, "number of the cutter, 1 to 8; 0 if none serves")
        .result("infeed", Unit.MM, "depth of cut from the standard blank, shift taken off")
        .source(Sources.CUTTERS)
        .rule(
            g -> {
              Gear gear = Gear.of(g.number("m"), g.count("z"), g.number("x"), Math.toRadians(20));
              Answer answer =
                  Answer.start()
                      .with("number", gear.cutterNumber())
                      .with("infeed", gear.module() * (2.25 - gear.shift()));
              return Math.abs(gear.shift()) > 0.5
                  ? answer.caution(
                      "A form cutter leaves a wrong profile above 0.5 profile shift; generate the"
                          + " teeth instead.")
                  : answer;
            });
  }

  private static Reckoner spanIdentity() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "gear-identity",
            "Module and pressure angle of an unknown gear, from two spans")
        .number("W_1", Unit.MM, "span over k teeth")
        .number("W_2", Unit.MM, "span over k+1 teeth")
        .number("u", Unit.MM, "uncertainty of one span", "0.02")
        .result("p_b", Unit.MM, "base pitch: the difference of the spans")
        .result("nearest", Unit.ONE, "nearest tooth system")
        .result("candidates", Unit.ONE, "tooth systems within the uncertainty, nearest first")
        .source(Sources.GEOMETRY)
        .rule(MeasureReckoners::spanIdentityAnswer);
  }

  private static Answer spanIdentityAnswer(Given g) {
    double pitch = g.number("W_2") - g.number("W_1");
    Teeth.positive("W_2 - W_1", "mm", pitch);
    record ToothSystem(String name, double pitch) {}
    List<ToothSystem> systems =
        RackPitch.standard().stream()
            .filter(c -> !c.name().startsWith("circular"))
            .flatMap(
                c ->
                    java.util.stream.DoubleStream.of(14.5, 20)
                        .mapToObj(
                            a ->
                                new ToothSystem(
                                    c.name() + ", " + (a == 20 ? "20" : "14.5") + " degrees",
                                    c.pitch().toDouble() * Math.cos(Math.toRadians(a)))))
            .sorted(java.util.Comparator.comparingDouble(s -> Math.abs(s.pitch() - pitch)))
            .toList();
    double doubt = g.number("u") * Math.sqrt(2);
    return Answer.start()
        .with("p_b", pitch)
        .with("nearest", systems.get(0).name())
        .with(
            "candidates",
            systems.stream()
                .filter(s -> Math.abs(s.pitch() - pitch) <= doubt)
                .map(ToothSystem::name)
                .toList());
  }
}
