package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Solid;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.belts.BeltKind;
import fettle.mechanics.belts.BeltPath;
import fettle.mechanics.belts.BeltPull;
import fettle.mechanics.drives.InductionMotor;
import fettle.mechanics.drives.RunUp;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.shafts.ShaftMaterial;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What motor and belt bring to the spindle: torque, power, tension of the belt, time to start. */
final class DriveTopic implements Topic {

  private static final Source POWER =
      Source.practice("0.95 of the power passes a belt, 0.97 each pair of gears");
  private static final Source WRAP = Source.derived("tangents and arcs on two circles");
  private static final Source EULER =
      Source.memory("Euler's belt equation with centrifugal tension", "textbooks of mechanics");
  private static final Source LEAST =
      Source.memory("ISO 4183:1995, ISO 9982:2021", "least pulley diameters");
  private static final Source LEAST_WRAP = Source.practice("wrap of a friction belt");
  private static final Source START =
      Source.memory("Kloss's formula", "torque of an induction motor over its slip; J dw/dt = T");
  private static final Source RIM =
      Source.practice("chucks of grey iron 30 m/s, of steel 50 m/s, unknown 25 m/s");
  private static final Term BELT = new Term("eta_b", 0.95, Unit.ONE, 0.03);
  private static final double ROTOR = 1.8e-6;
  private static final double PER_PAIR = 0.97;
  private static final double WRAP_LIMIT = Math.toRadians(120);

  @Override
  public String name() {
    return "drive";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    return SpindleDrive.of(machine)
        .map(
            drive ->
                Study.orReason(
                    name(), drive.train().name(), () -> new OneDrive(machine, drive).study()))
        .orElse(new Study(List.of(), List.of()));
  }

  /**
   * Returns the power at the spindle in one step.
   *
   * @param drive motor and train
   * @param step name of the step
   */
  static Working power(SpindleDrive drive, String step) {
    int pairs = 0;
    boolean belt = false;
    for (Element element : drive.train().elements()) {
      belt |= element instanceof Element.Belt;
      pairs += element instanceof Element.GearPair ? 1 : 0;
      pairs += element instanceof Element.BackGear && !step.contains("direct") ? 2 : 0;
    }
    List<Term> terms = new ArrayList<>(List.of(drive.motor().need("power").term("P_m")));
    if (belt) {
      terms.add(BELT);
    }
    double gears = Math.pow(PER_PAIR, pairs);
    terms.add(new Term("eta_g", gears, Unit.ONE, 0.01 * pairs));
    return Working.of("P", Unit.W, belt ? "P_m*eta_b*eta_g" : "P_m*eta_g", terms);
  }

  /** The questions asked of one drive. */
  private final class OneDrive {
    private final Machine machine;
    private final SpindleDrive drive;
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    OneDrive(Machine machine, SpindleDrive drive) {
      this.machine = machine;
      this.drive = drive;
    }

    Study study() {
      for (Map.Entry<String, ?> step : drive.steps()) {
        torque(step.getKey());
      }
      String fastest = drive.steps().get(drive.steps().size() - 1).getKey();
      add("power at the spindle", power(drive, fastest), Better.HIGHER, POWER, "fastest step");
      for (Element element : drive.train().elements()) {
        if (element instanceof Element.Belt belt) {
          belt(belt);
        }
      }
      Optional<Headstock> head = Headstock.of(machine);
      head.ifPresent(this::runUp);
      head.filter(h -> h.largest() > 0).ifPresent(this::rim);
      return new Study(figures, findings);
    }

    private void torque(String step) {
      Working power = power(drive, step);
      Working torque =
          Working.of(
              "T", Unit.NM, "P/n", Term.of(power), Term.of(drive.speed(step, drive.rated())));
      add(SpindleDrive.named("torque at the spindle", step), torque, Better.HIGHER, POWER, "");
    }

    private void belt(Element.Belt belt) {
      Optional<BeltKind> kind =
          belt.values()
              .text("section")
              .flatMap(
                  mark ->
                      java.util.Arrays.stream(BeltKind.values())
                          .filter(k -> k.mark().equals(mark))
                          .findFirst());
      if (kind.isEmpty()
          || kind.get().isToothed()
          || !belt.values().has("centre distance")
          || !(belt.values().has("driver") || belt.values().has("steps"))) {
        return;
      }
      Map<String, Values> steps = new LinkedHashMap<>(belt.values().map("steps"));
      if (steps.isEmpty()) {
        steps.put("", belt.values());
      }
      steps.forEach((step, pulleys) -> step(belt, kind.get(), step, pulleys));
    }

    private void step(Element.Belt belt, BeltKind kind, String step, Values pulleys) {
      Term d1 = pulleys.need("driver").term("d1");
      Term d2 = pulleys.need("driven").term("d2");
      Term centres = belt.values().need("centre distance").term("C");
      BeltPath path;
      try {
        path = new BeltPath(d1.value(), d2.value(), centres.value(), BeltPath.Way.OPEN);
      } catch (IllegalArgumentException e) {
        find(
            Finding.Rank.STOP,
            SpindleDrive.named("wrap on the smaller pulley", step),
            "The pulleys of the " + belt.name() + " touch on these centres.",
            "",
            WRAP);
        return;
      }
      Working wrap =
          Working.check(
              "beta",
              path.wrapSmall(),
              Unit.DEG,
              "pi - 2*asin(abs(d2 - d1)/(2*C))",
              d1,
              d2,
              centres);
      add(SpindleDrive.named("wrap on the smaller pulley", step), wrap, Better.HIGHER, WRAP, "");
      double smaller = Math.min(d1.value(), d2.value());
      if (wrap.value() < WRAP_LIMIT) {
        find(
            Finding.Rank.CAUTION,
            SpindleDrive.named("wrap on the smaller pulley", step),
            "The " + belt.name() + " slips early: too little of the small pulley is touched.",
            "at least 120 deg",
            LEAST_WRAP);
      }
      if (smaller < kind.least()) {
        find(
            Finding.Rank.NOTE,
            SpindleDrive.named("wrap on the smaller pulley", step),
            "The smallest pulley of the "
                + SpindleDrive.named(belt.name(), step)
                + " bends its belt more than the section stands for long.",
            "at least " + kind.least() + " mm for section " + kind.mark(),
            LEAST);
      }
      tension(belt, kind, step, d1, wrap);
    }

    private void tension(Element.Belt belt, BeltKind kind, String step, Term d1, Working wrap) {
      Term groove = Term.exact("phi", kind.groove(d1.value()), Unit.DEG);
      Term friction = belt.values().need("friction").term("mu");
      Term mass = mass(belt, kind);
      Working speed = Working.of("v", Unit.M_PER_S, "n_m*d1/2", drive.rated().term("n_m"), d1);
      Working ratio =
          Working.check(
              "r",
              BeltPull.ratio(friction.value(), wrap.value(), groove.value()),
              Unit.ONE,
              "exp(mu*beta/sin(phi/2))",
              friction,
              Term.of(wrap),
              groove);
      Term power = drive.motor().need("power").term("P_m");
      Working rest =
          Working.check(
              "T0",
              BeltPull.carrying(power.value(), speed.value(), ratio.value(), mass.value()).rest(),
              Unit.N,
              "P_m/v*(r + 1)/(2*(r - 1)) + m*v^2",
              power,
              Term.of(speed),
              Term.of(ratio),
              mass);
      add(
          SpindleDrive.named("tension of the belt at rest, at least", step),
          rest,
          Better.LOWER,
          EULER,
          "carries the rated power without slipping");
      Working load =
          Working.check(
              "F_s",
              BeltPull.shaftLoad(rest.value(), rest.value(), wrap.value()),
              Unit.N,
              "2*T0*sin(beta/2)",
              Term.of(rest),
              Term.of(wrap));
      add(
          SpindleDrive.named("load of the belt on its shafts", step),
          load,
          Better.LOWER,
          EULER,
          "");
    }

    private static Term mass(Element.Belt belt, BeltKind kind) {
      int ribs = belt.values().needCount("ribs");
      double usual = kind.isVee() ? 1e-7 * ribs : 4e-9 * kind.pitch() * ribs;
      return belt.values()
          .quantity("mass per length")
          .map(q -> q.term("m"))
          .orElse(new Term("m", usual, Unit.KG_PER_M, 0.4 * usual));
    }

    private void runUp(Headstock head) {
      Map.Entry<String, fettle.mechanics.base.Ratio> fastest =
          drive.steps().get(drive.steps().size() - 1);
      double ratio = fastest.getValue().toDouble();
      Quantity rated = drive.rated();
      Quantity top = drive.motor().quantity("highest speed").orElse(rated);
      double power = drive.motor().need("power").value();
      double usual = ROTOR * power;
      Term rotor =
          drive
              .motor()
              .quantity("rotor inertia")
              .map(q -> q.term("J_m"))
              .orElse(new Term("J_m", usual, Unit.KG_M2, 0.4 * usual));
      double round = head.turning().stream().mapToDouble(OneDrive::inertia).sum();
      Working inertia =
          Working.of(
              "J",
              Unit.KG_M2,
              "J_s + J_m/i^2",
              new Term("J_s", round, Unit.KG_M2, 0.2 * round),
              rotor,
              Term.exact("i", ratio));
      add("inertia at the spindle, fastest step", inertia, Better.LOWER, START, "");
      double torque = power / rated.value();
      double seconds = seconds(inertia.value(), ratio, torque, rated.value(), top.value());
      if (!(seconds > 0) || Double.isInfinite(seconds)) {
        find(
            Finding.Rank.CAUTION,
            "time to the highest speed",
            "The motor may not bring the spindle to its highest speed.",
            "",
            START);
        return;
      }
      Working speed = drive.highest();
      double mean = inertia.value() * speed.value() / seconds;
      Working time =
          Working.of(
              "t",
              Unit.S,
              "J*n/T_a",
              Term.of(inertia),
              Term.of(speed),
              new Term("T_a", mean, Unit.NM, 0.3 * mean));
      String words = inverter() ? "inverter, at rated torque" : "straight on the mains";
      add("time to the highest speed", time, Better.LOWER, START, words);
    }

    private boolean inverter() {
      return drive.motor().has("highest speed") || drive.motor().has("lowest speed");
    }

    /** Time with a drag of a tenth of the rated torque; an inverter gives rated torque or power. */
    private double seconds(double inertia, double ratio, double torque, double rated, double top) {
      double drag = 0.1 * torque;
      if (inverter()) {
        return RunUp.time(
            inertia,
            top * ratio,
            w -> (torque * Math.min(1, rated / Math.max(w / ratio, 1e-9)) - drag) / ratio);
      }
      double breakdown = drive.motor().need("breakdown torque").value();
      double synchronous = synchronous(rated);
      double slip = 1 - rated / synchronous;
      double share = 1 / breakdown;
      double most = slip * (breakdown + Math.sqrt(breakdown * breakdown - 1));
      if (!(slip > 0) || !(most > 0) || !(share < 1)) {
        return RunUp.time(inertia, rated * ratio, (torque - drag) / ratio, 0);
      }
      InductionMotor motor = new InductionMotor(breakdown * torque, Math.min(10, most));
      return RunUp.time(
          inertia, rated * ratio, w -> (motor.torque(1 - w / ratio / synchronous) - drag) / ratio);
    }

    /** The next speed of a 50 Hz field above the rated speed. */
    private static double synchronous(double rated) {
      double speed = 3000 * Math.PI / 30;
      int pairs = 1;
      while (pairs < 12 && speed / (pairs + 1) > rated) {
        pairs++;
      }
      return Math.max(speed / pairs, rated);
    }

    private static double inertia(Member member) {
      double volume = 0;
      double moment = 0;
      for (Solid solid : member.envelope().values()) {
        if (solid instanceof Solid.Cylinder c) {
          double r = c.diameter() / 2;
          double v = Math.PI * r * r * c.length();
          volume += v;
          moment += v * r * r / 2;
        }
      }
      if (volume == 0) {
        return 0;
      }
      double steel = ShaftMaterial.STEEL.density() * volume;
      return member.values().quantity("mass").map(Quantity::value).orElse(steel) * moment / volume;
    }

    private void rim(Headstock head) {
      Working speed =
          Working.of(
              "v",
              Unit.M_PER_S,
              "D/2*n",
              Term.exact("D", head.largest(), Unit.MM),
              Term.of(drive.highest()));
      add("rim speed of the chuck at the highest speed", speed, Better.LOWER, RIM, "");
      double limit = limit(head);
      if (speed.value() > limit) {
        find(
            Finding.Rank.CAUTION,
            "rim speed of the chuck at the highest speed",
            "The chuck must not run at the highest speed; what its maker marks on it holds in any"
                + " case.",
            "at most " + Numbers.significant(limit / 1000, 2) + " m/s",
            RIM);
      }
    }

    private static double limit(Headstock head) {
      Optional<Material.Family> family =
          head.chucks().stream()
              .flatMap(m -> m.values().text("material").stream())
              .flatMap(m -> Materials.find(m).stream())
              .map(Material::family)
              .findFirst();
      return family.map(f -> f == Material.Family.STEEL ? 50e3 : 30e3).orElse(25e3);
    }

    private void add(String figure, Working w, Better better, Source source, String words) {
      figures.add(
          Figure.of(name(), drive.train().name(), figure, w, better, source).exactly(words));
    }

    private void find(
        Finding.Rank rank, String figure, String sentence, String limit, Source source) {
      String id = name() + "/" + drive.train().name() + "/" + figure;
      findings.add(new Finding(rank, id, sentence, limit, source));
    }
  }
}
