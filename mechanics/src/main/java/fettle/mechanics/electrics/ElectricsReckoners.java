package fettle.mechanics.electrics;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Single calculations on conductors: currents, sections, protection and volt drop. */
public final class ElectricsReckoners {

  static final String ROOM = "electrics";

  /** The sentence that goes with every electrical figure. */
  public static final String DEFERENCE =
      "Planning figures. Connection, protective measures, testing and putting into service are to"
          + " be done or approved by a person licensed where you live; local codes override.";

  private static final double LEAST = 1e-12;
  private static final double MOST = 1e12;

  private ElectricsReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>();
    Stream.of(
            motorCurrent(),
            ampacity(),
            ambientFactor(),
            conductor(),
            leastSection(),
            protectiveConductor(),
            adiabatic(),
            voltDrop(),
            overload(),
            plug())
        .map(Reckoner::finite)
        .forEach(all::add);
    all.addAll(ControlBoxReckoners.all());
    return List.copyOf(all);
  }

  static Term above(Given g, String name) {
    double value = g.number(name);
    if (!(value > LEAST) || !(value < MOST)) {
      throw new IllegalArgumentException(
          name + ": found '" + g.text(name) + "', expected a number above 0 of workable size");
    }
    return g.term(name);
  }

  static Term within(Given g, String name, double low, double high) {
    double value = g.number(name);
    if (!(value >= low) || !(value <= high)) {
      throw new IllegalArgumentException(
          name
              + ": found '"
              + g.text(name)
              + "', expected "
              + fettle.mechanics.base.Numbers.significant(low, 6)
              + " to "
              + fettle.mechanics.base.Numbers.significant(high, 6));
    }
    return g.term(name);
  }

  static Answer planning() {
    return Answer.start().caution(DEFERENCE);
  }

  private static Reckoner motorCurrent() {
    return Reckoner.of(ROOM, "motor-current", "Current of a motor from its power")
        .choice("supply", "kind of supply", "three-phase", "single-phase")
        .number("P", Unit.W, "power at the shaft")
        .number("U", Unit.V, "voltage; between two lines if three-phase", "230")
        .number("eff", Unit.ONE, "efficiency", "0.72")
        .number("cos_phi", Unit.ONE, "power factor", "0.75")
        .number("inrush", Unit.ONE, "starting current over rated current, 6 to 8", "7")
        .result("I", Unit.A, "rated current")
        .result("I_start", Unit.A, "current at the moment of starting, without an inverter")
        .source(Sources.MOTOR)
        .rule(
            g -> {
              String formula =
                  g.choice("supply").equals("three-phase")
                      ? "P/1000/(sqrt(3)*U*eff*cos_phi)"
                      : "P/1000/(U*eff*cos_phi)";
              Working i =
                  Working.of(
                      "I",
                      Unit.A,
                      formula,
                      above(g, "P"),
                      above(g, "U"),
                      within(g, "eff", 0.01, 1),
                      within(g, "cos_phi", 0.01, 1));
              return planning()
                  .caution("Take the current from the motor's plate when there is one.")
                  .with("I", i)
                  .with(
                      "I_start",
                      Working.of(
                          "I_start", Unit.A, "inrush*I", within(g, "inrush", 1, 20), Term.of(i)));
            });
  }

  private static Reckoner ampacity() {
    return Reckoner.of(ROOM, "ampacity", "What a copper conductor with PVC carries")
        .number("mm2", Unit.MM2, "section")
        .number("ambient_C", Unit.ONE, "air round the conductor, °C", "40")
        .number("grouping", Unit.ONE, "factor for loaded circuits side by side", "1")
        .result("B1", Unit.A, "single cores in conduit")
        .result("B2", Unit.A, "a cable in conduit")
        .result("C", Unit.A, "a cable on a surface")
        .result("E", Unit.A, "a cable in free air")
        .source(Sources.AMPACITY)
        .rule(
            g -> {
              double factor = Conductors.ambientFactor(g.number("ambient_C"));
              Answer answer = planning();
              for (Conductors.Laying laying : Conductors.Laying.values()) {
                double listed = Conductors.ampacity(above(g, "mm2").value(), laying);
                answer =
                    answer.with(
                        laying.name(),
                        Working.of(
                            laying.name(),
                            Unit.A,
                            "I_40*k*grouping",
                            Term.exact("I_40", listed, Unit.A),
                            Term.exact("k", factor),
                            within(g, "grouping", 0.1, 1)));
              }
              return answer;
            });
  }

  private static Reckoner ambientFactor() {
    return Reckoner.of(ROOM, "ambient-factor", "Factor on the current for warm air round PVC")
        .number("ambient_C", Unit.ONE, "air round the conductor, °C")
        .result("k", Unit.ONE, "factor; 1 at 40 °C")
        .source(Sources.AMBIENT)
        .rule(g -> planning().with("k", Conductors.ambientFactor(g.number("ambient_C"))));
  }

  private static Reckoner conductor() {
    return Reckoner.of(ROOM, "conductor-section", "Section of conductor for a current")
        .number("I", Unit.A, "current to carry; the protective device's, if that is larger")
        .choice("method", "how it is laid", "B2", "B1", "C", "E")
        .number("ambient_C", Unit.ONE, "air round the conductor, °C", "40")
        .number("grouping", Unit.ONE, "factor for loaded circuits side by side", "1")
        .result("S", Unit.MM2, "section to take")
        .result("I_z", Unit.A, "what it carries here")
        .result("S_PE", Unit.MM2, "protective conductor that belongs to it")
        .source(Sources.AMPACITY)
        .rule(
            g -> {
              Conductors.Laying laying = Conductors.Laying.valueOf(g.choice("method"));
              double factor =
                  Conductors.ambientFactor(g.number("ambient_C"))
                      * within(g, "grouping", 0.1, 1).value();
              double section = Conductors.section(above(g, "I").value(), laying, factor);
              return planning()
                  .with("S", section)
                  .with("I_z", Conductors.ampacity(section, laying) * factor)
                  .with("S_PE", Conductors.protective(section));
            });
  }

  private static Reckoner leastSection() {
    return Reckoner.of(ROOM, "least-section", "Least section that is allowed whatever the current")
        .choice("circuit", "what it feeds", "power", "control")
        .choice("place", "where it runs", "outside", "inside")
        .choice("kind", "kind of conductor", "single-flexible", "single-solid", "multicore")
        .result("S", Unit.MM2, "least section")
        .source(Sources.LEAST)
        .rule(g -> planning().with("S", least(g)));
  }

  private static double least(Given g) {
    boolean power = g.choice("circuit").equals("power");
    if (g.choice("place").equals("inside")) {
      return power ? 0.75 : 0.2;
    }
    return switch (g.choice("kind")) {
      case "multicore" -> power ? 0.75 : 0.2;
      case "single-solid" -> power ? 1.5 : 1.0;
      default -> 1.0;
    };
  }

  private static Reckoner protectiveConductor() {
    return Reckoner.of(ROOM, "protective-conductor", "Protective conductor of line conductors")
        .numbers("S", Unit.MM2, "sections of the line conductors")
        .optional("I_leak", Unit.A, "current in the protective conductor, as of filters")
        .result("S_PE", Unit.MM2, "least section of each protective conductor, copper")
        .source(Sources.PROTECTIVE)
        .rule(
            g -> {
              double[] sections =
                  Arrays.stream(g.numbers("S")).map(Conductors::protective).toArray();
              if (sections.length == 0) {
                throw new IllegalArgumentException("S: give at least one section");
              }
              Answer answer = planning().with("S_PE", sections);
              boolean leaks = g.has("I_leak") && above(g, "I_leak").value() > 0.01;
              return leaks
                  ? answer.caution(
                      "More than 10 mA flow in the protective conductor: it needs 10 mm2 of copper,"
                          + " a second one, or monitoring; ask which residual-current device"
                          + " suits.")
                  : answer;
            });
  }

  private static Reckoner adiabatic() {
    return Reckoner.of(ROOM, "adiabatic-section", "Section that stands a fault current")
        .number("I", Unit.A, "fault current")
        .number("t", Unit.S, "time until it is cut off")
        .number("k", Unit.ONE, "143 separate PVC copper, 115 a core of a cable", "143")
        .result("S_least", Unit.MM2, "least section")
        .result("S", Unit.MM2, "standard section to take")
        .source(Sources.ADIABATIC)
        .rule(
            g -> {
              Working least =
                  Working.of(
                      "S_least",
                      Unit.MM2,
                      "I*sqrt(t)/k",
                      above(g, "I"),
                      within(g, "t", 1e-4, 5),
                      within(g, "k", 10, 300));
              return planning().with("S_least", least).with("S", Conductors.next(least.value()));
            });
  }

  private static Reckoner voltDrop() {
    return Reckoner.of(ROOM, "volt-drop", "Voltage lost in a line")
        .choice("supply", "kind of supply", "single-phase", "three-phase")
        .number("I", Unit.A, "current")
        .number("len", Unit.M, "length of the line, one way")
        .optional("mm2", Unit.MM2, "section, flexible copper")
        .optional("R20_ohm_km", Unit.OHM_PER_KM, "resistance at 20 °C, instead of the section")
        .number("T", Unit.ONE, "temperature of the conductor, °C", "70")
        .number("U", Unit.V, "voltage of the supply", "230")
        .result("R", Unit.OHM, "resistance, one way, warm")
        .result("dU", Unit.V, "voltage lost")
        .result("share", Unit.PERCENT, "voltage lost as a share of the supply")
        .source(Sources.DROP)
        .rule(ElectricsReckoners::voltDrop);
  }

  private static Answer voltDrop(Given g) {
    if (!g.has("R20_ohm_km") && !g.has("mm2")) {
      throw new IllegalArgumentException("give mm2, the section, or R20_ohm_km");
    }
    Term cold =
        g.has("R20_ohm_km")
            ? new Term("R20", above(g, "R20_ohm_km").value(), Unit.OHM_PER_KM, 0)
            : Term.exact("R20", Conductors.resistance(above(g, "mm2").value()), Unit.OHM_PER_KM);
    Working r =
        Working.of(
            "R",
            Unit.OHM,
            "R20*len*(1 + 0.00393*(T - 20))",
            cold,
            above(g, "len"),
            within(g, "T", -40, 160));
    String formula = g.choice("supply").equals("single-phase") ? "2*I*R" : "sqrt(3)*I*R";
    Working drop = Working.of("dU", Unit.V, formula, above(g, "I"), Term.of(r));
    Working share = Working.of("share", Unit.PERCENT, "dU/U", Term.of(drop), above(g, "U"));
    Answer answer = planning().with("R", r).with("dU", drop).with("share", share);
    return share.value() > 0.05
        ? answer.caution(
            "More than 5 % is lost from the supply to the load: take a larger section.")
        : answer;
  }

  private static Reckoner overload() {
    return Reckoner.of(ROOM, "overload-protection", "Do current, device and conductor agree?")
        .number("I_b", Unit.A, "current of the load")
        .number("I_n", Unit.A, "rated current of the protective device")
        .number("I_z", Unit.A, "what the conductor carries as laid")
        .number("I_2_over_I_n", Unit.ONE, "surest tripping current over rated current", "1.45")
        .result("agrees", Unit.ONE, "whether all hold")
        .result("I_2", Unit.A, "current at which the device surely trips")
        .result("limit", Unit.A, "1.45 times what the conductor carries")
        .source(Sources.OVERLOAD)
        .rule(
            g -> {
              Working trips =
                  Working.of(
                      "I_2",
                      Unit.A,
                      "I_2_over_I_n*I_n",
                      within(g, "I_2_over_I_n", 1, 3),
                      above(g, "I_n"));
              Working limit = Working.of("limit", Unit.A, "1.45*I_z", above(g, "I_z"));
              double b = above(g, "I_b").value();
              double n = g.number("I_n");
              boolean holds =
                  b <= n && n <= g.number("I_z") && trips.value() <= limit.value() * (1 + 1e-12);
              return planning()
                  .with("agrees", holds ? "yes" : "no")
                  .with("I_2", trips)
                  .with("limit", limit);
            });
  }

  private static Reckoner plug() {
    return Reckoner.of(ROOM, "plug-as-disconnector", "May a plug be the machine's main switch?")
        .number("I", Unit.A, "rated current of the machine")
        .number("P", Unit.W, "rated power of the machine")
        .result("allowed", Unit.ONE, "yes or no")
        .source(Sources.PLUG)
        .rule(
            g -> {
              boolean small =
                  above(g, "I").value() <= 16 && Unit.W.fromCoherent(above(g, "P").value()) <= 3000;
              return planning()
                  .caution(
                      "Only if the plug stays in sight and in reach of the person at the lathe.")
                  .with("allowed", small ? "yes" : "no");
            });
  }
}
