package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Solid;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.electrics.Conductors;
import fettle.mechanics.electrics.ElectricsReckoners;
import fettle.mechanics.electrics.Enclosure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The control box: current, conductors, protection, volt drop and heat, for planning. */
final class ControlBoxTopic implements Topic {

  private static final Source CURRENT = Source.derived("power, voltage, efficiency, power factor");
  private static final Source CARRIES = Source.page("IEC 60204-1:2016", "Table 6 and Table D.1");
  private static final Source OVERLOAD = Source.memory("IEC 60364-4-43", "433.1");
  private static final Source DROP = Source.page("IEC 60228", "class 5; 5 % from supply to load");
  private static final Source HEAT =
      Source.page("IEC/VDE 0660-500", "effective cooling area; 5.5 W/(m2 K) for painted sheet");
  private static final Source INSIDE = Source.practice("40 °C inside, as device sheets suppose");
  private static final Source DEFER =
      Source.memory("IEC 60204-1:2016", "whole; local codes come first");
  private static final Source LAID =
      Source.practice("devices apart, and the air that their data sheets ask for");
  private static final Term COIL = new Term("P_c", 5_000, Unit.W, 2_000);
  private static final Term PASSED = new Term("k", 5.5e-3, Unit.W_PER_M2K, 0.5e-3);
  private static final double WARMEST = 40;
  private static final double MOST_LOST = 0.05;

  @Override
  public String name() {
    return "control box";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Optional<Values> box = machine.values().block("control box");
    Optional<Values> motor = machine.values().block("drive").flatMap(d -> d.block("motor"));
    if (box.isEmpty()) {
      return new Study(List.of(), List.of());
    }
    return Study.orReason(
        name(), "control box", () -> new OneBox(machine, box.get(), motor).study());
  }

  /** The questions asked of one box. */
  private static final class OneBox {
    private final Machine machine;
    private final Values box;
    private final Optional<Values> motor;
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    OneBox(Machine machine, Values box, Optional<Values> motor) {
      this.machine = machine;
      this.box = box;
      this.motor = motor;
    }

    Study study() {
      caution("", ElectricsReckoners.DEFERENCE, "licensed work", DEFER);
      motor.ifPresent(this::supply);
      heat();
      Wiring wiring = Wiring.of(box);
      wiring.wrong().forEach(w -> caution("", "Wiring: " + w, "", DEFER));
      Panel.of(box, Optional.empty())
          .ifPresent(p -> p.wrong(wiring).forEach(w -> caution("", "Layout: " + w, "", LAID)));
      return new Study(figures, findings);
    }

    private void caution(String figure, String sentence, String limit, Source source) {
      findings.add(new Finding(Finding.Rank.CAUTION, figure, sentence, limit, source));
    }

    private String add(String what, Working working, Better better, Source source) {
      Figure figure = Figure.of("control box", "line", what, working, better, source);
      figures.add(figure);
      return figure.id();
    }

    private void supply(Values of) {
      boolean inverter = box.need("inverter loss").value() > 0;
      boolean three = of.needText("supply").equals("three-phase") && !inverter;
      Working current =
          Working.of(
              "I",
              Unit.A,
              three ? "P/1000/(sqrt(3)*U*eff*cos_phi)" : "P/1000/(U*eff*cos_phi)",
              of.need("power").term("P"),
              box.need("voltage").term("U"),
              box.need("efficiency").term("eff"),
              box.need("power factor").term("cos_phi"));
      String id = add("current at full load", current, Better.LOWER, CURRENT);
      double section = box.need("section").value();
      Conductors.Laying laying = Conductors.Laying.valueOf(box.needText("laying"));
      Working carries =
          Working.of(
              "I_z",
              Unit.A,
              "I_40*k",
              Term.exact("I_40", Conductors.ampacity(section, laying), Unit.A),
              Term.exact("k", Conductors.ambientFactor(40)));
      add("current the conductor carries at 40 °C", carries, Better.HIGHER, CARRIES);
      agreement(id, current.value(), carries.value());
      drop(current, section, three);
    }

    private void agreement(String id, double load, double carried) {
      double rated = box.need("protection").value();
      if (!(load <= rated)) {
        caution(
            id,
            "The protective device is rated below the current of the motor; it will trip.",
            "load <= device <= conductor",
            OVERLOAD);
      }
      if (!(rated <= carried)) {
        caution(
            id,
            "The conductor carries less than the protective device lets through; take a larger"
                + " section, or ask for a smaller device.",
            "load <= device <= conductor",
            OVERLOAD);
      }
    }

    private void drop(Working current, double section, boolean three) {
      Working lost =
          Working.of(
              "dU",
              Unit.V,
              (three ? "sqrt(3)" : "2") + "*I*len*R20*(1 + 0.00393*(70 - 20))",
              Term.of(current),
              box.need("length").term("len"),
              Term.exact("R20", Conductors.resistance(section), Unit.OHM_PER_KM));
      String id = add("voltage lost in the line", lost, Better.LOWER, DROP);
      if (lost.value() > MOST_LOST * box.need("voltage").value()) {
        caution(id, "More than 5 % of the voltage is lost in the line.", "5 %", DROP);
      }
    }

    private void heat() {
      Member member = machine.members().get(box.needText("on"));
      Optional<Solid.Box> body =
          member == null
              ? Optional.empty()
              : member.envelope().values().stream()
                  .filter(Solid.Box.class::isInstance)
                  .map(Solid.Box.class::cast)
                  .findFirst();
      body.ifPresent(this::heat);
    }

    private void heat(Solid.Box body) {
      double x = body.size().x();
      double z = body.size().z();
      Working area =
          Working.of(
              "A",
              Unit.M2,
              Enclosure.Mounting.SINGLE_ON_WALL.formula(),
              Term.exact("W", Math.max(x, z), Unit.MM),
              Term.exact("H", body.size().y(), Unit.MM),
              Term.exact("D", Math.min(x, z), Unit.MM));
      Term power = motor.map(m -> m.need("power").term("P_m")).orElse(Term.exact("P_m", 0, Unit.W));
      Working loss =
          Working.of(
              "P",
              Unit.W,
              "P_m*share + coils*P_c",
              power,
              box.need("inverter loss").term("share"),
              Term.exact("coils", box.needCount("coils")),
              COIL);
      Working rise = Working.of("dT", Unit.K, "P/(k*A)", Term.of(loss), PASSED, Term.of(area));
      add("faces that shed heat", area, Better.HIGHER, HEAT);
      add("heat set free in the box", loss, Better.LOWER, HEAT);
      String id = add("warmer inside than the room", rise, Better.LOWER, HEAT);
      double room = box.need("room").value();
      if (room + rise.value() > WARMEST) {
        caution(
            id,
            "In a room of "
                + fettle.mechanics.base.Numbers.significant(room, 3)
                + " °C it gets "
                + fettle.mechanics.base.Numbers.significant(room + rise.value(), 2)
                + " °C in the box, warmer at its top: take a larger box, put heat outside, or"
                + " derate the devices.",
            "40 °C inside",
            INSIDE);
      }
    }
  }
}
