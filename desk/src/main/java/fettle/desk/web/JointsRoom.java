package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.desk.picture.ClampPicture;
import fettle.desk.picture.FitPicture;
import fettle.desk.picture.ScrewPicture;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Nearest;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.bearings.BoundaryDimensions;
import fettle.mechanics.clamps.DrawEccentric;
import fettle.mechanics.fits.BearingClass;
import fettle.mechanics.fits.Designation;
import fettle.mechanics.fits.Fit;
import fettle.mechanics.fits.ToleranceClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The pages of screws, clamps and fits. */
final class JointsRoom {

  private static final double TURN = 360;
  private static final String FIRST_FIT = "20 H7/k6";

  private JointsRoom() {}

  static EnginePage screw(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    Train train = TrainRoom.train(visit, machine);
    Element.Screw screw =
        train.elements().stream()
            .filter(e -> e instanceof Element.Screw)
            .map(e -> (Element.Screw) e)
            .findFirst()
            .orElseThrow(
                () ->
                    Refused.missing(
                        "The " + train.name() + " has no screw in the state looked at.",
                        "Choose another train from the lathe's page."));
    List<EnginePage.Section> sections = new ArrayList<>();
    sections.add(Closer.orReason("", "picture", () -> drawn(visit, screw)));
    sections.add(
        Closer.section(
            "Play, stiffness, torque",
            "figures",
            Closer.cells(
                visit, chosen, f -> f.subject().equals(train.name()) && !f.topic().equals("gears")),
            Closer.findings(visit, chosen, f -> f.figure().contains("/" + train.name() + "/"))));
    List<fettle.desk.page.Shell.Link> more =
        new ArrayList<>(ValuesRoom.whatIf(machine, Set.of(train.name()), chosen));
    more.addAll(Closer.links(machine, chosen));
    sections.add(Closer.section("Look closer", "more", new EnginePage.Links(more)));
    String lead =
        screw.thread().text()
            + ": one turn moves it "
            + Numbers.significant(screw.thread().lead().toDouble(), 6)
            + " mm.";
    return Closer.page(
        visit,
        chosen,
        "The screw of the " + train.name(),
        "/screw",
        Map.of("name", train.name()),
        lead,
        sections);
  }

  private static EnginePage.Section drawn(Visit visit, Element.Screw screw) {
    Values v = screw.values();
    double nut = SpindleRoom.or(v, "nut length", 2 * screw.thread().profile().d());
    double play = SpindleRoom.or(v, "play", 0);
    boolean left = screw.thread().text().contains("LH");
    double lead = screw.thread().lead().toDouble() * (left ? -1 : 1);
    double factor = ScrewPicture.factor(screw.thread().profile(), play);
    long degrees = Closer.turned(visit);
    String shown =
        play > 0
            ? "Play of "
                + Numbers.significant(play, 3)
                + " mm between the flanks, drawn "
                + Numbers.significant(factor, 3)
                + " times as large."
            : "The book states no play between the flanks.";
    return new EnginePage.Section(
        "",
        "picture",
        "",
        List.of(
            new EnginePage.Picture(
                ScrewPicture.of(screw.thread().profile(), lead, nut, play, degrees / TURN),
                "Screw in steel, nut in bronze, to scale. " + shown,
                new EnginePage.Turn("screw", degrees, Numbers.significant(Math.abs(lead), 9)))));
  }

  static EnginePage clamp(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    Map<String, Values> clamps = machine.values().map("clamps");
    String name = visit.asked("name");
    Values clamp = clamps.get(name);
    if (clamp == null) {
      throw Refused.missing(
          "This lathe has no such clamp in the state looked at.",
          Nearest.hint(name, clamps.keySet()) + " Choose one from the lathe's page.");
    }
    List<EnginePage.Section> sections = new ArrayList<>();
    if (clamp.shape().equals("clamp/eccentric")) {
      sections.add(Closer.orReason("Lever and eccentric", "picture", () -> eccentric(clamp)));
    } else {
      sections.add(
          Closer.section(
              "",
              "picture",
              Closer.words(
                  "A nut on "
                      + clamp.text("thread").orElse("a bolt")
                      + ", tightened with a handle of "
                      + Numbers.significant(clamp.need("lever length").value(), 4)
                      + " mm. An eccentric would have its force drawn here over the angle.")));
    }
    sections.add(
        Closer.section(
            "Does it hold?",
            "figures",
            Closer.cells(
                visit, chosen, f -> f.topic().equals("clamps") && f.subject().equals(name)),
            Closer.findings(visit, chosen, f -> f.figure().startsWith("clamps/" + name + "/"))));
    sections.add(
        Closer.section("Look closer", "more", new EnginePage.Links(Closer.links(machine, chosen))));
    return Closer.page(
        visit,
        chosen,
        name,
        "/clamp",
        Map.of("name", name),
        clamp.text("what").orElse(""),
        sections);
  }

  private static EnginePage.Section eccentric(Values clamp) {
    DrawEccentric shaft =
        new DrawEccentric(
            clamp.need("eccentricity").value(),
            clamp.need("eye diameter").value() / 2,
            clamp.need("shaft diameter").value() / 2,
            clamp.need("friction").value());
    double lever = clamp.need("lever length").value();
    double closes = clamp.need("closes at").value();
    double hand = clamp.need("hand force").value();
    String shut =
        shaft.staysShut(closes) ? "Left alone it stays shut." : "Left alone it springs open.";
    return Closer.section(
        "Lever and eccentric",
        "picture",
        new EnginePage.Picture(
            ClampPicture.of(shaft, lever, closes),
            "To scale, the lever cut short, where the clamp is tight. " + shut,
            EnginePage.Turn.STILL),
        new EnginePage.Picture(
            ClampPicture.force(shaft, lever, hand, closes),
            "With "
                + Numbers.significant(hand, 3)
                + " N at the handle. Towards dead centre the pull grows and so does the stress in"
                + " bolt and plate.",
            EnginePage.Turn.STILL));
  }

  static EnginePage fits(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    String asked = visit.asked("fit").isEmpty() ? FIRST_FIT : visit.asked("fit");
    List<EnginePage.Block> own = new ArrayList<>();
    own.add(
        new EnginePage.Form(
            "/fits",
            false,
            Map.of(),
            List.of(new EnginePage.Field("fit", "a fit, such as '35 H6/k5'", asked, List.of())),
            List.of(new EnginePage.Button("draw", "Draw its zones", true))));
    own.addAll(asked(asked));
    List<EnginePage.Section> sections = new ArrayList<>();
    sections.add(new EnginePage.Section("Any fit", "any", "", own));
    seats(machine).forEach(sections::add);
    sections.add(
        Closer.section("Look closer", "more", new EnginePage.Links(Closer.links(machine, chosen))));
    return Closer.page(
        visit,
        chosen,
        "Fits, zones to scale",
        "/fits",
        Map.of("fit", asked),
        "What a shaft and a bore may be, and so how they sit.",
        sections);
  }

  private static List<EnginePage.Block> asked(String text) {
    try {
      Designation fit = Designation.parse(text);
      if (!fit.isFit()) {
        throw new IllegalArgumentException("a fit has two classes, such as H7/k6");
      }
      String[] names = text.strip().split("[ /]+");
      return picture(fit.text(), fit.fit(), names[names.length - 2], names[names.length - 1]);
    } catch (IllegalArgumentException e) {
      return List.of(
          Closer.words(
              "'" + ValuesRoom.line(text) + "' is no fit that can be drawn: " + e.getMessage()));
    }
  }

  private static List<EnginePage.Block> picture(String words, Fit fit, String hole, String shaft) {
    return List.of(
        new EnginePage.Picture(
            FitPicture.of(words, fit, hole, shaft),
            words + ": " + sits(fit) + ". Deviations in µm from the nominal size.",
            EnginePage.Turn.STILL));
  }

  private static String sits(Fit fit) {
    String most = Numbers.significant(Math.abs(fit.maxClearance()) * 1000, 4);
    String least = Numbers.significant(Math.abs(fit.minClearance()) * 1000, 4);
    return switch (fit.kind()) {
      case CLEARANCE -> "always play, " + least + " to " + most + " µm";
      case INTERFERENCE -> "always tight, " + most + " to " + least + " µm";
      default -> "from " + most + " µm of play to " + least + " µm tight";
    };
  }

  /** The seats of the rolling bearings the book names. */
  private static List<EnginePage.Section> seats(Machine machine) {
    List<EnginePage.Section> sections = new ArrayList<>();
    machine
        .values()
        .block("spindle")
        .ifPresent(
            s -> {
              s.block("front").ifPresent(b -> seat("Front bearing of the spindle", b, sections));
              s.block("rear").ifPresent(b -> seat("Rear bearing of the spindle", b, sections));
            });
    for (Train train : machine.trains().values()) {
      for (Element element : train.elements()) {
        element
            .values()
            .block("bearing")
            .filter(b -> element instanceof Element.Screw)
            .ifPresent(b -> seat("Bearing of the " + train.name(), b, sections));
      }
    }
    return sections;
  }

  private static void seat(String title, Values bearing, List<EnginePage.Section> sections) {
    if (!bearing.shape().equals("bearing/rolling")) {
      return;
    }
    List<EnginePage.Block> blocks = new ArrayList<>();
    try {
      BoundaryDimensions size =
          Objects.requireNonNull(
              fettle.mechanics.bearings.Designation.parse(bearing.needText("type")).boundary(),
              "its sizes are not known");
      bearing
          .text("shaft fit")
          .ifPresent(
              f ->
                  blocks.addAll(
                      picture(
                          "bore " + Numbers.significant(size.bore(), 4) + " on shaft " + f,
                          new Fit(
                              BearingClass.NORMAL.bore(size.bore()),
                              ToleranceClass.parse(f).deviations(size.bore())),
                          "bearing bore",
                          f)));
      bearing
          .text("housing fit")
          .ifPresent(
              f ->
                  blocks.addAll(
                      picture(
                          "housing " + f + " about " + Numbers.significant(size.outside(), 4),
                          new Fit(
                              ToleranceClass.parse(f).deviations(size.outside()),
                              BearingClass.NORMAL.outside(size.outside())),
                          f,
                          "bearing ring")));
    } catch (IllegalArgumentException | NullPointerException e) {
      blocks.add(Closer.words("Its seats cannot be drawn: " + e.getMessage()));
    }
    if (!blocks.isEmpty()) {
      String id = title.toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
      sections.add(new EnginePage.Section(title + ", " + bearing.needText("type"), id, "", blocks));
    }
  }
}
