package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.desk.picture.BearingPicture;
import fettle.desk.picture.DrivePicture;
import fettle.desk.picture.SpindlePicture;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Quantity;
import fettle.machine.topics.Figure;
import fettle.machine.topics.SpindlePortrait;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Working;
import fettle.mechanics.bearings.BearingLoad;
import fettle.mechanics.bearings.BearingSet;
import fettle.mechanics.bearings.BearingState;
import fettle.mechanics.shafts.SpindleModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The spindle cut open with its bent line, its bearings with their balls, its speeds and cuts. */
final class SpindleRoom {

  private static final double USUAL = 300;
  private static final double MOST = 20_000;
  private static final String STEP_SPEED = "speed, ";
  private static final String STEP_TORQUE = "torque at the spindle, ";
  private static final String STEP_DEPTH = "deepest cut, ";

  private SpindleRoom() {}

  static EnginePage spindle(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    double force = Closer.force(visit, USUAL, MOST);
    Optional<SpindlePortrait> portrait = SpindlePortrait.of(machine);
    List<EnginePage.Section> sections = new ArrayList<>();
    String lead = "The book does not tell enough of the spindle to reckon with it.";
    if (portrait.isPresent()) {
      SpindlePortrait spindle = portrait.get();
      lead = "What bends under a force across the nose, and by how much.";
      sections.add(Closer.orReason("Cut open, under load", "picture", () -> bent(spindle, force)));
      sections.add(
          Closer.orReason(
              "Where the give comes from", "shares", () -> shares(visit, chosen, spindle)));
      sections.add(
          Closer.orReason(
              "Front bearing", "front", () -> bearing("Front bearing", "front", spindle, force)));
      sections.add(
          Closer.orReason(
              "Rear bearing", "rear", () -> bearing("Rear bearing", "rear", spindle, force)));
    }
    sections.add(
        Closer.section(
            "Every figure of the spindle",
            "figures",
            Closer.cells(visit, chosen, f -> f.topic().equals("spindle")),
            Closer.findings(visit, chosen, f -> f.figure().startsWith("spindle/"))));
    sections.add(
        Closer.section("Look closer", "more", new EnginePage.Links(Closer.links(machine, chosen))));
    return Closer.page(
        visit,
        chosen,
        "The spindle and its bearings",
        "/spindle",
        Map.of("force", Numbers.significant(force, 5)),
        lead,
        sections);
  }

  private static EnginePage.Section bent(SpindlePortrait spindle, double force) {
    SpindlePicture.Drawn drawn = SpindlePicture.of(spindle, force);
    EnginePage.Form ask =
        new EnginePage.Form(
            "/spindle",
            false,
            Map.of(),
            List.of(
                new EnginePage.Field(
                    "force", "force across the nose, N", Numbers.significant(force, 5), List.of())),
            List.of(new EnginePage.Button("bend", "Bend it so", false)));
    String caption =
        "To scale, chuck at the right. The blue line is the bent axis, drawn "
            + Numbers.significant(drawn.factor(), 2)
            + " times as large as it is; the bearings give as their balls or oil films do.";
    return new EnginePage.Section(
        "Cut open, under load",
        "picture",
        "",
        List.of(
            new EnginePage.Words(
                "large-words",
                List.of(
                    Numbers.significant(force, 4)
                        + " N across the nose bend it by "
                        + Numbers.significant(drawn.deflection() * 1000, 3)
                        + " µm.")),
            new EnginePage.Picture(drawn.drawing(), caption, EnginePage.Turn.STILL),
            ask));
  }

  private static EnginePage.Section shares(Visit visit, Chosen chosen, SpindlePortrait spindle) {
    List<EnginePage.Share> shares = new ArrayList<>();
    String prefix = "share of the give from ";
    for (Figure f : Closer.figures(visit, chosen, f -> f.topic().equals("spindle"))) {
      Optional<Working> w = f.working();
      if (f.name().startsWith(prefix) && w.isPresent()) {
        double percent = w.get().shown();
        shares.add(
            new EnginePage.Share(
                f.name().substring(prefix.length()),
                Math.rint(percent * 10) / 10,
                Numbers.significant(percent, 3) + " %"));
      }
    }
    List<EnginePage.Block> blocks = new ArrayList<>();
    blocks.add(new EnginePage.Bars(shares));
    double best = value(visit, chosen, "spindle/spindle/best distance of the bearings").orElse(0.0);
    if (best > 0) {
      blocks.add(
          new EnginePage.Picture(
              SpindlePicture.spanCurve(spindle, best),
              "The whole curve, with the shear the formula for the best distance leaves out.",
              EnginePage.Turn.STILL));
    }
    return new EnginePage.Section("Where the give comes from", "shares", "", blocks);
  }

  private static Optional<Double> value(Visit visit, Chosen chosen, String id) {
    return Closer.figures(visit, chosen, f -> f.id().equals(id)).stream()
        .flatMap(f -> f.working().stream())
        .map(Working::shown)
        .findFirst();
  }

  private static EnginePage.Section bearing(
      String title, String id, SpindlePortrait spindle, double force) {
    boolean front = id.equals("front");
    SpindlePortrait.Bearing bearing = front ? spindle.front() : spindle.rear();
    SpindleModel.Deflected bent =
        SpindleModel.under(spindle.shaft(), spindle.span() + spindle.overhang(), force);
    double load = Math.abs(bent.reactions().get(front ? 1 : 0));
    String carries = "It carries " + Numbers.significant(load, 3) + " N across.";
    Optional<BearingSet> set = bearing.set();
    if (set.isEmpty()) {
      double pressure = load / (bearing.bore() * bearing.width());
      return Closer.section(
          title,
          id,
          Closer.words(
              "A bush of "
                  + Numbers.significant(bearing.bore(), 4)
                  + " mm, "
                  + Numbers.significant(bearing.width(), 4)
                  + " mm long. "
                  + carries
                  + " That is "
                  + Numbers.significant(pressure, 2)
                  + " MPa on its projected area."));
    }
    try {
      BearingState state = set.get().underTiltHeld(BearingLoad.of(0, load));
      return Closer.section(
          title,
          id,
          Closer.words(
              bearing.words()
                  + ", preload "
                  + Numbers.significant(bearing.preload(), 3)
                  + " N. "
                  + carries),
          new EnginePage.Picture(
              BearingPicture.of(set.get(), state, title + ": balls with the load each carries"),
              BearingPicture.words(state)
                  + " Bars outward show the load; the force acts downwards.",
              EnginePage.Turn.STILL));
    } catch (IllegalArgumentException e) {
      return Closer.section(title, id, Closer.words("It cannot be drawn: " + e.getMessage()));
    }
  }

  static EnginePage cuts(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    List<DrivePicture.Step> steps = steps(visit, chosen, machine);
    List<EnginePage.Section> sections = new ArrayList<>();
    if (steps.isEmpty()) {
      sections.add(
          Closer.section(
              "",
              "why",
              Closer.words(
                  "The book has no drive of the spindle: it takes 'drive' and its train.")));
    } else {
      sections.add(
          Closer.section(
              "Speed, torque, power",
              "torque",
              new EnginePage.Picture(
                  DrivePicture.torque(steps),
                  "Points: the steps at the motor's rated speed. Blue lines: what an inverter adds."
                      + " Brass: equal power.",
                  EnginePage.Turn.STILL)));
    }
    if (steps.stream().anyMatch(s -> s.depth() > 0)) {
      sections.add(largest(visit, chosen, machine, steps));
    }
    sections.add(
        Closer.section(
            "Every figure of drive and cuts",
            "figures",
            Closer.cells(
                visit, chosen, f -> List.of("speeds", "drive", "cutting").contains(f.topic())),
            Closer.findings(
                visit,
                chosen,
                f -> f.figure().startsWith("drive/") || f.figure().startsWith("cutting/"))));
    sections.add(
        Closer.section("Look closer", "more", new EnginePage.Links(Closer.links(machine, chosen))));
    return Closer.page(
        visit, chosen, "Speeds, power and the largest cuts", "/cuts", Map.of(), "", sections);
  }

  private static EnginePage.Section largest(
      Visit visit, Chosen chosen, Machine machine, List<DrivePicture.Step> steps) {
    double quiet =
        value(visit, chosen, "cutting/usual work/deepest cut that cannot sing at any speed")
            .orElse(0.0);
    List<EnginePage.Row> rows = new ArrayList<>();
    for (DrivePicture.Step s : steps) {
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of(s.name().isEmpty() ? "the only step" : s.name()),
                  EnginePage.Entry.of(Numbers.significant(s.speed(), 4) + " rpm"),
                  EnginePage.Entry.of(Numbers.significant(s.torque(), 3) + " N m"),
                  EnginePage.Entry.of(Numbers.significant(s.depth(), 3) + " mm"),
                  EnginePage.Entry.of(s.rule()))));
    }
    return Closer.section(
        "The largest cut at each speed",
        "cuts",
        new EnginePage.Picture(
            DrivePicture.cuts(steps, quiet, overrun(machine)),
            "In the usual work of the book; change it under 'cutting' in machine.yaml.",
            EnginePage.Turn.STILL),
        new EnginePage.Table(
            "What limits the cut at each step",
            List.of("step", "speed", "torque", "deepest cut", "limited by"),
            rows),
        Closer.note("Guards closed, work held safely, and never a hand near the turning chuck."));
  }

  /** Speed of the spindle at which the usual work overruns the tool, in turns a minute. */
  private static double overrun(Machine machine) {
    return machine
        .values()
        .block("cutting")
        .filter(b -> b.quantity("speed limit").isPresent())
        .map(b -> 60 * b.need("speed limit").value() / (Math.PI * b.need("diameter").value()))
        .orElse(0.0);
  }

  private static List<DrivePicture.Step> steps(Visit visit, Chosen chosen, Machine machine) {
    List<Figure> figures =
        Closer.figures(
            visit, chosen, f -> List.of("speeds", "drive", "cutting").contains(f.topic()));
    Optional<Values> motor = machine.values().block("drive").flatMap(d -> d.block("motor"));
    double slow = ratio(motor, "lowest speed");
    double fast = ratio(motor, "highest speed");
    List<DrivePicture.Step> steps = new ArrayList<>();
    for (Figure torque : figures) {
      if (torque.name().startsWith("torque at the spindle")) {
        String step =
            torque.name().length() > STEP_TORQUE.length()
                ? torque.name().substring(STEP_TORQUE.length())
                : "";
        double speed = number(figures, step.isEmpty() ? "speed" : STEP_SPEED + step);
        String cut = step.isEmpty() ? "deepest cut" : STEP_DEPTH + step;
        String rule =
            figures.stream()
                .filter(f -> f.name().equals(cut))
                .map(Figure::words)
                .findFirst()
                .orElse("");
        if (speed > 0) {
          steps.add(
              new DrivePicture.Step(
                  step,
                  speed,
                  speed * slow,
                  speed * fast,
                  torque.working().map(Working::shown).orElse(0.0),
                  number(figures, cut),
                  rule));
        }
      }
    }
    return steps;
  }

  private static double ratio(Optional<Values> motor, String key) {
    return motor
        .filter(m -> m.quantity(key).isPresent())
        .map(m -> m.need(key).value() / m.need("speed").value())
        .orElse(1.0);
  }

  private static double number(List<Figure> figures, String name) {
    return figures.stream()
        .filter(f -> f.name().equals(name))
        .flatMap(f -> f.working().stream())
        .map(Working::shown)
        .findFirst()
        .orElse(0.0);
  }

  /** Returns a quantity of the book, or a value for want of it. */
  static double or(Values values, String key, double otherwise) {
    return values.quantity(key).map(Quantity::value).orElse(otherwise);
  }
}
