package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.desk.picture.BoxPicture;
import fettle.machine.gearing.ScrewCutting;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.FixedCentre;
import fettle.planning.gearbox.BoxChange;
import fettle.planning.gearbox.BoxFrame;
import fettle.planning.gearbox.BoxWheel;
import fettle.planning.gearbox.SettledBox;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A found box settled into wheels, shafts and levers: picture, thread plate, gear table and the
 * change it makes.
 *
 * @param found the box in proportions, with its proof
 * @param wish what it was asked for
 * @param cutting what it replaces
 * @param box the box settled
 */
record FoundBox(BoxJobs.Found found, BoxJobs.Wish wish, ScrewCutting cutting, SettledBox box) {

  /** Settles a box; empty if a wheel would be too large. */
  static Optional<FoundBox> of(BoxJobs.Found found, BoxJobs.Wish wish, ScrewCutting cutting) {
    try {
      SettledBox box = SettledBox.of(found.design(), wish.asked(), BoxFrame.of(cutting));
      return Optional.of(new FoundBox(found, wish, cutting, box));
    } catch (IllegalArgumentException tooLarge) {
      return Optional.empty();
    }
  }

  private List<Integer> cone() {
    return box.cone();
  }

  private List<FixedCentre.Pair> pairs() {
    return box.pairs().stream()
        .map(p -> new FixedCentre.Pair(p.pinion().teeth(), p.wheel().teeth()))
        .toList();
  }

  private Ratio lead(int wheel, int pair) {
    return box.lead(wheel, pair);
  }

  private Ratio perInch(int wheel, int pair) {
    return box.perInch(wheel, pair);
  }

  private Ratio metricLink() {
    return BoxChange.metricLink(box, cutting);
  }

  private Ratio inchLink() {
    return BoxChange.inchLink(box, cutting);
  }

  private static int number(Visit visit, String name, int most) {
    String asked = visit.asked(name);
    return asked.matches("\\d{1,2}") ? Math.min(most - 1, Integer.parseInt(asked)) : 0;
  }

  List<EnginePage.Section> sections(Visit visit, Chosen chosen, Map<String, String> kept) {
    int wheel = number(visit, "wheel", cone().size());
    int pair = number(visit, "ratio", pairs().size());
    boolean inch = visit.asked("kind").equals("inch") && !wish.perInch().isEmpty();
    List<EnginePage.Section> sections = new ArrayList<>();
    sections.add(picture(chosen, kept, wheel, pair, inch));
    sections.add(plate(chosen, kept, wheel, pair, inch));
    sections.add(gears());
    sections.add(levers());
    sections.add(change(visit, kept));
    return sections;
  }

  private static String address(
      Chosen chosen, Map<String, String> kept, int wheel, int pair, boolean inch) {
    String more =
        "&wheel=" + wheel + "&ratio=" + pair + "&kind=" + (inch ? "inch" : "metric") + "#box";
    return BoxRoom.address(chosen, kept, more);
  }

  private EnginePage.Section picture(
      Chosen chosen, Map<String, String> kept, int wheel, int pair, boolean inch) {
    String link = (inch ? inchLink() : metricLink()).text();
    BoxPicture.Set set = new BoxPicture.Set(wheel, pair, inch, "link " + link);
    String gives = inch ? tpi(wheel, pair) : mm(wheel, pair);
    EnginePage.Links kinds =
        new EnginePage.Links(
            List.of(
                new fettle.desk.page.Shell.Link(
                    address(chosen, kept, wheel, pair, !inch),
                    inch
                        ? "link gears to millimetres: the cone drives"
                        : "link gears to threads per inch: the cone is driven")));
    return Closer.section(
        "The box: notch " + (wheel + 1) + ", lever " + letter(pair) + " gives " + gives,
        "box",
        new EnginePage.Picture(
            BoxPicture.of(
                cutting.module(),
                new BoxPicture.Wheels(cone(), box.idler(), box.tumbler(), pairs()),
                set,
                (w, p) -> address(chosen, kept, w, p, inch)),
            "From the side, to scale but unfolded. Touch a cone wheel to put the tumbler there, or a"
                + " pair to throw the lever; the blue line is the way of the motion.",
            EnginePage.Turn.STILL),
        wish.perInch().isEmpty() ? Closer.words() : kinds,
        Closer.note("Never shift a lever with the spindle under power."));
  }

  private static String letter(int pair) {
    return String.valueOf((char) ('A' + pair));
  }

  private String mm(int wheel, int pair) {
    return Numbers.significant(lead(wheel, pair).toDouble(), 5) + " mm";
  }

  private String tpi(int wheel, int pair) {
    return Numbers.significant(perInch(wheel, pair).toDouble(), 5) + " threads per inch";
  }

  private static boolean wanted(List<String> targets, Ratio value) {
    return BoxJobs.Wish.ratios(targets).stream().anyMatch(value::sameAs);
  }

  private EnginePage.Section plate(
      Chosen chosen, Map<String, String> kept, int wheel, int pair, boolean inch) {
    List<String> heads = new ArrayList<>(List.of("notch"));
    for (int p = 0; p < pairs().size(); p++) {
      heads.add(letter(p) + ", mm");
    }
    for (int p = 0; p < pairs().size() && !wish.perInch().isEmpty(); p++) {
      heads.add(letter(p) + ", per inch");
    }
    List<EnginePage.Row> rows = new ArrayList<>();
    for (int w = 0; w < cone().size(); w++) {
      List<EnginePage.Entry> entries = new ArrayList<>();
      entries.add(EnginePage.Entry.of((w + 1) + " (" + cone().get(w) + " teeth)"));
      for (int p = 0; p < pairs().size(); p++) {
        entries.add(
            entry(
                wanted(wish.leads(), lead(w, p)), lead(w, p), address(chosen, kept, w, p, false)));
      }
      for (int p = 0; p < pairs().size() && !wish.perInch().isEmpty(); p++) {
        entries.add(
            entry(
                wanted(wish.perInch(), perInch(w, p)),
                perInch(w, p),
                address(chosen, kept, w, p, true)));
      }
      rows.add(new EnginePage.Row(w == wheel ? "picked" : "", entries));
    }
    return new EnginePage.Section(
        "Thread plate",
        "plate",
        "door",
        List.of(
            new EnginePage.Table(
                "Threads asked for are links, to set the levers; the others come for nothing. Now"
                    + " notch "
                    + (wheel + 1)
                    + ", lever "
                    + letter(pair)
                    + (inch ? ", inch link" : ", metric link"),
                heads,
                rows)));
  }

  private static EnginePage.Entry entry(boolean wanted, Ratio value, String href) {
    String number = Numbers.significant(value.toDouble(), 5);
    return wanted ? new EnginePage.Entry(number, href) : EnginePage.Entry.of("(" + number + ")");
  }

  private EnginePage.Section gears() {
    List<EnginePage.Row> rows = new ArrayList<>();
    for (BoxWheel wheel : box.wheels()) {
      rows.add(gear(wheel));
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        "All shafts "
            + mm(box.shaft())
            + "; first and second "
            + mm(box.coneCentres())
            + " apart, second and third "
            + mm(box.multiplierCentres())
            + ". The cone is "
            + mm(box.coneLength())
            + " long.");
    box.findings().forEach(f -> notes.add("Note: " + f + "."));
    return Closer.section(
        "The wheels",
        "gears",
        new EnginePage.Table(
            "Module "
                + Numbers.significant(cutting.module(), 5)
                + " mm, 20 degrees, faces "
                + mm(box.width())
                + " for a thrust of "
                + Numbers.significant(box.frame().thrust(), 4)
                + " N (common practice); links "
                + metricLink().text()
                + " for millimetres"
                + (wish.perInch().isEmpty() ? "" : ", " + inchLink().text() + " for inch threads"),
            List.of("wheel", "teeth", "shift", "blank", "bore", "span"),
            rows),
        new EnginePage.Words("", notes));
  }

  private static String mm(double value) {
    return Numbers.significant(value, 6) + " mm";
  }

  private static EnginePage.Row gear(BoxWheel wheel) {
    return new EnginePage.Row(
        "",
        List.of(
            EnginePage.Entry.of(wheel.name()),
            EnginePage.Entry.of(String.valueOf(wheel.gear().teeth())),
            EnginePage.Entry.of(Numbers.fixed(wheel.gear().shift(), 3)),
            EnginePage.Entry.of("Ø " + Numbers.fixed(wheel.tip(), 2) + " mm"),
            EnginePage.Entry.of("Ø " + Numbers.significant(wheel.bore(), 4) + " mm"),
            EnginePage.Entry.of(
                Numbers.fixed(wheel.spanLeast(), 3)
                    + " to "
                    + Numbers.fixed(wheel.spanMost(), 3)
                    + " mm over "
                    + wheel.gear().spanTeeth())));
  }

  /** Where arm and draw key stand. */
  private EnginePage.Section levers() {
    List<EnginePage.Row> rows = new ArrayList<>();
    for (SettledBox.Notch notch : box.notches()) {
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of("notch " + notch.number()),
                  EnginePage.Entry.of(Numbers.fixed(notch.along(), 1) + " mm"),
                  EnginePage.Entry.of(Numbers.fixed(Math.toDegrees(notch.swing()), 1) + "°"))));
    }
    for (int p = 0; p < box.pairs().size(); p++) {
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of("lever " + letter(p)),
                  EnginePage.Entry.of(Numbers.fixed(box.drawn(p), 1) + " mm"),
                  EnginePage.Entry.of("–"))));
    }
    return Closer.section(
        "Lever positions",
        "levers",
        new EnginePage.Table(
            "Middle of the tumbler from the outer face of the first cone wheel; swing of the arm from"
                + " the line of the first two shafts; the draw key from its place at A",
            List.of("lever", "along", "swing"),
            rows));
  }

  String title() {
    return "Gearbox of " + found.design().wheels() + " wheels";
  }

  private EnginePage.Section change(Visit visit, Map<String, String> kept) {
    Map<String, String> files = files(visit);
    String text = files.values().iterator().next();
    return Closer.section(
        "As a change in the book",
        "change",
        Closer.words(
            "This text is written as a new change, with "
                + (files.size() - 1)
                + " recipes for its parts; nothing else in the book is touched."),
        new EnginePage.Text(text),
        new EnginePage.Form(
            "/gearbox",
            true,
            kept,
            List.of(),
            List.of(new EnginePage.Button("keep", "Keep it as a new change", true))));
  }

  /** The files of the change under a key that is free, the change first. */
  Map<String, String> files(Visit visit) {
    String known =
        found.proven()
            ? "No box of this kind has fewer than "
                + found.design().wheels()
                + " wheels on cone and multiplier, proven."
            : "The best found; no box of this kind has fewer than "
                + found.bound()
                + " wheels on cone and multiplier.";
    String key = NewChange.key(visit.book(), title());
    return BoxChange.files(box, cutting, BoxRoom.machineOf(visit), key, known);
  }
}
