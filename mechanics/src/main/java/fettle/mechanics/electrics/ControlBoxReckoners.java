package fettle.mechanics.electrics;

import static fettle.mechanics.electrics.ElectricsReckoners.above;
import static fettle.mechanics.electrics.ElectricsReckoners.planning;
import static fettle.mechanics.electrics.ElectricsReckoners.within;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Single calculations on the control box and on stopping. */
final class ControlBoxReckoners {

  private static final String ROOM = ElectricsReckoners.ROOM;
  private static final double HOTTEST_INSIDE = 40;

  private ControlBoxReckoners() {}

  static List<Reckoner> all() {
    return Stream.of(
            area(),
            heat(),
            losses(),
            bleed(),
            discharge(),
            categories(),
            rundown(),
            approach(),
            code())
        .map(Reckoner::finite)
        .toList();
  }

  private static String[] mountings() {
    return Arrays.stream(Enclosure.Mounting.values())
        .map(Enclosure.Mounting::word)
        .toArray(String[]::new);
  }

  private static Reckoner area() {
    return Reckoner.of(ROOM, "enclosure-area", "Faces of a box that shed heat")
        .number("W", Unit.M, "width")
        .number("H", Unit.M, "height")
        .number("D", Unit.M, "depth")
        .choice("mounting", "how it stands among others", mountings())
        .result("A", Unit.M2, "effective cooling area")
        .source(Sources.ENCLOSURE)
        .rule(g -> planning().with("A", effective(g)));
  }

  private static Working effective(Given g) {
    String formula = Enclosure.Mounting.of(g.choice("mounting")).formula();
    return Working.of("A", Unit.M2, formula, above(g, "W"), above(g, "H"), above(g, "D"));
  }

  private static Reckoner heat() {
    return Reckoner.of(ROOM, "enclosure-heat", "How warm it gets in the control box")
        .number("P", Unit.W, "heat set free inside")
        .optional("A", Unit.M2, "effective cooling area, instead of the sizes")
        .optional("W", Unit.M, "width")
        .optional("H", Unit.M, "height")
        .optional("D", Unit.M, "depth")
        .choice("mounting", "how it stands among others", mountings())
        .number("k", Unit.W_PER_M2K, "heat passed on, 5.5 for painted sheet steel", "5.5")
        .number("room_C", Unit.ONE, "hottest room, °C", "30")
        .result("A", Unit.M2, "effective cooling area")
        .result("dT", Unit.K, "warmer than the room, on average")
        .result("inside_C", Unit.ONE, "air inside, °C, on average")
        .source(Sources.ENCLOSURE)
        .rule(ControlBoxReckoners::heat);
  }

  private static Answer heat(Given g) {
    if (!g.has("A") && !(g.has("W") && g.has("H") && g.has("D"))) {
      throw new IllegalArgumentException("give A, the cooling area, or W, H and D");
    }
    Term area = g.has("A") ? above(g, "A") : Term.of(effective(g));
    Working rise = Working.of("dT", Unit.K, "P/(k*A)", above(g, "P"), above(g, "k"), area);
    double inside = within(g, "room_C", -40, 60).value() + rise.value();
    Answer answer = planning();
    answer = g.has("A") ? answer.with("A", area.value()) : answer.with("A", effective(g));
    answer = answer.with("dT", rise).with("inside_C", inside);
    answer = answer.caution("This is a mean: the top of the box runs warmer.");
    return inside > HOTTEST_INSIDE
        ? answer.caution(
            "Above 40 °C inside most devices must be derated: a larger box, the resistor outside,"
                + " or a fan with a filter.")
        : answer;
  }

  private static Reckoner losses() {
    return Reckoner.of(ROOM, "box-losses", "Heat that the devices set free in the box")
        .number("P_motor", Unit.W, "power of the motor on the inverter", "0")
        .number("share", Unit.ONE, "loss of the inverter as a share of it, 0.03 to 0.05", "0.05")
        .count("coils", "contactors and relays held in", "0")
        .number("P_coil", Unit.W, "power of one coil, 2 to 7 W", "5")
        .number("P_supply", Unit.W, "power that the control supply gives", "0")
        .number("eff", Unit.ONE, "efficiency of the control supply", "0.85")
        .result("P", Unit.W, "heat set free inside")
        .source(Sources.LOSSES)
        .rule(
            g -> {
              int coils = g.count("coils");
              if (coils < 0 || coils > 1000) {
                throw new IllegalArgumentException("coils must be 0 to 1000, found " + coils);
              }
              return planning()
                  .with(
                      "P",
                      Working.of(
                          "P",
                          Unit.W,
                          "P_motor*share + coils*P_coil + (1/eff - 1)*P_supply",
                          within(g, "P_motor", 0, 1e9),
                          within(g, "share", 0, 1),
                          Term.exact("coils", coils),
                          within(g, "P_coil", 0, 1e6),
                          within(g, "P_supply", 0, 1e9),
                          within(g, "eff", 0.05, 1)));
            });
  }

  private static Reckoner bleed() {
    return Reckoner.of(ROOM, "bleed-resistor", "Largest resistor that empties a capacitor in time")
        .number("C_uF", Unit.MICROFARAD, "capacitance")
        .number("U0", Unit.V, "voltage at the start", "325")
        .number("U", Unit.V, "voltage that may be left", "60")
        .number("t", Unit.S, "time for it; 1 s at bare plug pins", "5")
        .result("R", Unit.OHM, "largest resistance")
        .result("P", Unit.W, "heat in it while the voltage is on")
        .source(Sources.DISCHARGE)
        .rule(
            g -> {
              falls(g);
              Working r =
                  Working.of(
                      "R",
                      Unit.OHM,
                      "t/(C_uF*ln(U0/U))",
                      above(g, "t"),
                      above(g, "C_uF"),
                      above(g, "U0"),
                      above(g, "U"));
              return planning()
                  .caution(DISCHARGES)
                  .with("R", r)
                  .with("P", Working.of("P", Unit.W, "1000*U0^2/R", above(g, "U0"), Term.of(r)));
            });
  }

  private static final String DISCHARGES =
      "A charged capacitor kills: wait the time on the label and measure before touching.";

  private static void falls(Given g) {
    if (!(above(g, "U0").value() > above(g, "U").value())) {
      throw new IllegalArgumentException("U0 must be larger than U, the voltage that may be left");
    }
  }

  private static Reckoner discharge() {
    return Reckoner.of(ROOM, "discharge-time", "Time until a capacitor is down to a safe voltage")
        .number("C_uF", Unit.MICROFARAD, "capacitance")
        .number("R", Unit.OHM, "resistance across it")
        .number("U0", Unit.V, "voltage at the start", "325")
        .number("U", Unit.V, "voltage that may be left", "60")
        .result("t", Unit.S, "time")
        .source(Sources.DISCHARGE)
        .rule(
            g -> {
              falls(g);
              Working t =
                  Working.of(
                      "t",
                      Unit.S,
                      "R*C_uF*ln(U0/U)",
                      above(g, "R"),
                      above(g, "C_uF"),
                      above(g, "U0"),
                      above(g, "U"));
              Answer answer = planning().caution(DISCHARGES).with("t", t);
              return t.value() > 5
                  ? answer.caution(
                      "More than 5 s: a label with the waiting time must stand on the cover.")
                  : answer;
            });
  }

  private static Reckoner categories() {
    return Reckoner.of(ROOM, "stop-categories", "Kinds of stop, and what an emergency stop may be")
        .result("category", Unit.ONE, "categories that an emergency stop may have")
        .result("meaning", Unit.ONE, "what each is")
        .source(Sources.STOP)
        .rule(
            g ->
                planning()
                    .caution(
                        "An emergency stop adds to guards and never replaces them; it latches, and"
                            + " letting it out must start nothing.")
                    .with("category", new double[] {0, 1})
                    .with(
                        "meaning",
                        List.of(
                            "0: power is taken away at once",
                            "1: stopped under control, then power is taken away",
                            "2: stopped under control, power stays; never for an emergency stop")));
  }

  private static Reckoner rundown() {
    return Reckoner.of(ROOM, "spindle-rundown", "Time and energy to bring a spindle to rest")
        .number("J", Unit.KG_M2, "inertia at the spindle, pulleys, motor, chuck and work included")
        .number("n", Unit.RPM, "speed")
        .number("T", Unit.NM, "torque that brakes; friction alone if it coasts")
        .result("t", Unit.S, "time to rest")
        .result("E", Unit.J, "energy, all of it heat")
        .result("S", Unit.M, "how far a walking person comes meanwhile")
        .source(Sources.SPINNING)
        .rule(
            g -> {
              Working t =
                  Working.of("t", Unit.S, "J*n/T", above(g, "J"), above(g, "n"), above(g, "T"));
              return planning()
                  .caution("Braking a chuck on a screwed nose can unscrew and throw it.")
                  .with("t", t)
                  .with("E", Working.of("E", Unit.J, "J*n^2/2", above(g, "J"), above(g, "n")))
                  .with("S", Working.of("S", Unit.M, "1600*t", Term.of(t)));
            });
  }

  private static Reckoner approach() {
    return Reckoner.of(
            ROOM, "guard-distance", "How far away a guard that opens before rest must be")
        .number("t", Unit.S, "time to rest")
        .result("S", Unit.M, "distance")
        .source(Sources.APPROACH)
        .rule(
            g ->
                planning()
                    .caution(
                        "On a small lathe this distance is out of reach: a guard lock or a brake is"
                            + " the honest answer.")
                    .with("S", Working.of("S", Unit.M, "1600*t", above(g, "t"))));
  }

  private static Reckoner code() {
    return Reckoner.of(ROOM, "ip-code", "What an IP code keeps out")
        .text("code", "two figures, such as IP54")
        .result("solids", Unit.ONE, "what of solid things stays out")
        .result("water", Unit.ONE, "what of water stays out")
        .result("enough", Unit.ONE, "whether it will do beside chips and coolant")
        .source(Sources.CODE)
        .rule(
            g -> {
              String code =
                  g.text("code").toUpperCase(java.util.Locale.ROOT).replaceFirst("^IP\\s*", "");
              if (!code.matches("[0-6][0-9]") || code.charAt(1) > '8') {
                throw new IllegalArgumentException(
                    "code: found '" + g.text("code") + "', expected such as IP54");
              }
              int solid = code.charAt(0) - '0';
              int water = code.charAt(1) - '0';
              return planning()
                  .with("solids", SOLIDS.get(solid))
                  .with("water", WATER.get(water))
                  .with("enough", solid >= 5 && water >= 4 ? "yes" : "no, take IP54 or better");
            });
  }

  private static final List<String> SOLIDS =
      List.of(
          "nothing",
          "things of 50 mm, the back of a hand",
          "things of 12.5 mm, a finger",
          "things of 2.5 mm, a tool",
          "things of 1 mm, a wire",
          "dust, so far that it does no harm",
          "all dust");
  private static final List<String> WATER =
      List.of(
          "nothing",
          "drops from above",
          "drops, the box tilted by 15 degrees",
          "spray",
          "splashes from all sides",
          "jets",
          "strong jets",
          "a short time under water",
          "a long time under water");
}
