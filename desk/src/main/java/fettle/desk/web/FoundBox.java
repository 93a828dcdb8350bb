package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.desk.picture.BoxPicture;
import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.TextEdit;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.ConeTeeth;
import fettle.mechanics.gears.FixedCentre;
import fettle.mechanics.gears.GearboxSearch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A found box with its teeth settled: picture, thread plate, gear table and the change it makes.
 *
 * @param found the box in proportions, with its proof
 * @param wish what it was asked for
 * @param cutting what it replaces
 * @param cone teeth of the cone
 * @param pairs pairs of the multiplier
 */
record FoundBox(
    BoxJobs.Found found,
    BoxJobs.Wish wish,
    ScrewCutting cutting,
    List<Integer> cone,
    List<FixedCentre.Pair> pairs) {

  private static final int FEWEST = 20;
  private static final int MOST = 200;
  private static final int MOST_SUM = 400;
  private static final int TUMBLER = 40;

  FoundBox {
    cone = List.copyOf(cone);
    pairs = List.copyOf(pairs);
  }

  /** Settles the teeth; empty if a wheel would be too large. */
  static Optional<FoundBox> of(BoxJobs.Found found, BoxJobs.Wish wish, ScrewCutting cutting) {
    try {
      List<Integer> cone = ConeTeeth.teeth(found.design().cone(), FEWEST, MOST);
      for (int slack = 0; slack <= 1; slack++) {
        FixedCentre.Outcome pairs =
            FixedCentre.leastSum(found.design().multipliers(), FEWEST, slack, MOST_SUM);
        if (pairs instanceof FixedCentre.Outcome.Least least) {
          return Optional.of(new FoundBox(found, wish, cutting, cone, least.pairs()));
        }
      }
      return Optional.empty();
    } catch (IllegalArgumentException tooLarge) {
      return Optional.empty();
    }
  }

  private GearboxSearch.Design design() {
    return found.design();
  }

  private Ratio lead(int wheel, int pair) {
    return design().cone().get(wheel).times(design().multipliers().get(pair));
  }

  private Ratio perInch(int wheel, int pair) {
    return design()
        .constant()
        .times(design().cone().get(wheel))
        .over(design().multipliers().get(pair));
  }

  /** What the link gears must bring so that the cone, driving, gives its leads. */
  private Ratio metricLink() {
    return design()
        .cone()
        .get(0)
        .over(cutting.fixed())
        .times(Ratio.of(TUMBLER, cone.get(0)))
        .folded();
  }

  /** What they must bring so that the cone, driven, gives its threads per inch. */
  private Ratio inchLink() {
    return Ratio.INCH
        .over(design().constant().times(design().cone().get(0)))
        .over(cutting.fixed())
        .times(Ratio.of(cone.get(0), TUMBLER))
        .folded();
  }

  private static int number(Visit visit, String name, int most) {
    String asked = visit.asked(name);
    return asked.matches("\\d{1,2}") ? Math.min(most - 1, Integer.parseInt(asked)) : 0;
  }

  List<EnginePage.Section> sections(Visit visit, Chosen chosen, Map<String, String> kept) {
    int wheel = number(visit, "wheel", cone.size());
    int pair = number(visit, "ratio", pairs.size());
    boolean inch = visit.asked("kind").equals("inch") && !wish.perInch().isEmpty();
    List<EnginePage.Section> sections = new ArrayList<>();
    sections.add(picture(chosen, kept, wheel, pair, inch));
    sections.add(plate(chosen, kept, wheel, pair, inch));
    sections.add(gears());
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
                cone,
                TUMBLER,
                pairs,
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
    for (int p = 0; p < pairs.size(); p++) {
      heads.add(letter(p) + ", mm");
    }
    for (int p = 0; p < pairs.size() && !wish.perInch().isEmpty(); p++) {
      heads.add(letter(p) + ", per inch");
    }
    List<EnginePage.Row> rows = new ArrayList<>();
    for (int w = 0; w < cone.size(); w++) {
      List<EnginePage.Entry> entries = new ArrayList<>();
      entries.add(EnginePage.Entry.of((w + 1) + " (" + cone.get(w) + " teeth)"));
      for (int p = 0; p < pairs.size(); p++) {
        entries.add(
            entry(
                wanted(wish.leads(), lead(w, p)), lead(w, p), address(chosen, kept, w, p, false)));
      }
      for (int p = 0; p < pairs.size() && !wish.perInch().isEmpty(); p++) {
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
    for (int w = 0; w < cone.size(); w++) {
      rows.add(gear("cone, notch " + (w + 1), cone.get(w)));
    }
    rows.add(gear("tumbler", TUMBLER));
    for (int p = 0; p < pairs.size(); p++) {
      rows.add(gear("multiplier " + letter(p) + ", driver", pairs.get(p).driver()));
      rows.add(gear("multiplier " + letter(p) + ", driven", pairs.get(p).driven()));
    }
    int sum = pairs.get(0).driver() + pairs.get(0).driven();
    boolean even = pairs.stream().allMatch(p -> p.driver() + p.driven() == sum);
    double width = 10 * cutting.module();
    double length = cone.size() * (width + 2) - 2;
    return Closer.section(
        "The wheels",
        "gears",
        new EnginePage.Table(
            "Module "
                + Numbers.significant(cutting.module(), 5)
                + " mm, faces of 10 modules (common practice); links "
                + metricLink().text()
                + " for millimetres"
                + (wish.perInch().isEmpty() ? "" : ", " + inchLink().text() + " for inch threads"),
            List.of("wheel", "teeth", "pitch circle", "blank"),
            rows),
        Closer.words(
            "Shafts of the multiplier "
                + Numbers.significant(cutting.module() * sum / 2, 5)
                + " mm apart"
                + (even ? "" : "; a pair of one tooth more or less takes it up by profile shift")
                + ". The cone is "
                + Numbers.significant(length, 4)
                + " mm long."));
  }

  private EnginePage.Row gear(String name, int teeth) {
    double m = cutting.module();
    return new EnginePage.Row(
        "",
        List.of(
            EnginePage.Entry.of(name),
            EnginePage.Entry.of(String.valueOf(teeth)),
            EnginePage.Entry.of(Numbers.fixed(m * teeth, 2) + " mm"),
            EnginePage.Entry.of("Ø " + Numbers.fixed(m * (teeth + 2), 2) + " mm")));
  }

  String title() {
    return "Gearbox of " + design().wheels() + " wheels";
  }

  private EnginePage.Section change(Visit visit, Map<String, String> kept) {
    String text = change(BoxRoom.machineOf(visit));
    return Closer.section(
        "As a change in the book",
        "change",
        Closer.words("This text is written as a new change; nothing else in the book is touched."),
        new EnginePage.Text(text),
        new EnginePage.Form(
            "/gearbox",
            true,
            kept,
            List.of(),
            List.of(new EnginePage.Button("keep", "Keep it as a new change", true))));
  }

  /** Writes the change: the box in place of the change gears of the lathe's train. */
  String change(Machine machine) {
    Map<String, String> blocks = new LinkedHashMap<>();
    String after = "";
    Train train = machine.trains().get(cutting.train());
    if (train != null) {
      for (Element element : train.elements()) {
        if (element instanceof Element.ChangeGears || element instanceof Element.Box) {
          blocks.put(element.name(), "null");
        } else if (!element.linear() && blocks.isEmpty()) {
          after = element.name();
        }
      }
    }
    String name = blocks.containsKey("gearbox") ? "box" : "gearbox";
    StringBuilder text = new StringBuilder();
    text.append("title: ").append(TextEdit.quoted(title())).append('\n');
    text.append("reason: ")
        .append(
            TextEdit.quoted(
                "Found by search: leads "
                    + String.join(", ", wish.leads())
                    + " mm"
                    + (wish.perInch().isEmpty()
                        ? ""
                        : " and " + String.join(", ", wish.perInch()) + " threads per inch")
                    + (found.proven()
                        ? ", with the fewest wheels."
                        : "; no box has fewer than " + found.bound() + " wheels.")))
        .append('\n');
    text.append("stage: idea\ndiffers:\n  trains:\n    ")
        .append(cutting.train())
        .append(":\n      elements:\n");
    blocks.forEach(
        (element, value) ->
            text.append("        ").append(element).append(": ").append(value).append('\n'));
    text.append("        ").append(name).append(":\n          kind: box\n");
    if (!after.isEmpty()) {
      text.append("          after: ").append(after).append('\n');
    }
    Set<String> settings = settings();
    text.append("          settings: [").append(String.join(", ", settings)).append("]\n");
    text.append("          set: ").append(settings.iterator().next()).append('\n');
    text.append("parts:\n");
    part(text, "cone", cone.stream().map(String::valueOf).toList());
    part(text, "multiplier", pairs.stream().map(p -> p.driver() + "/" + p.driven()).toList());
    text.append("caution:\n  - Never shift a lever with the spindle under power.\n")
        .append("  - The gear cover stays closed whenever the spindle turns.\n");
    return text.toString();
  }

  private void part(StringBuilder text, String name, List<String> teeth) {
    text.append("  ")
        .append(name)
        .append(" wheels: {what: ")
        .append(
            TextEdit.quoted(
                "Teeth "
                    + String.join(", ", teeth)
                    + "; module "
                    + Numbers.significant(cutting.module(), 5)
                    + " mm."))
        .append(", material: C45}\n");
  }

  /** Ratios of box and link together for every thread asked for, in the order asked. */
  private Set<String> settings() {
    Set<String> settings = new LinkedHashSet<>();
    BoxJobs.Wish.ratios(wish.leads())
        .forEach(l -> settings.add(l.over(cutting.fixed()).folded().text()));
    BoxJobs.Wish.ratios(wish.perInch())
        .forEach(t -> settings.add(Ratio.INCH.over(t).over(cutting.fixed()).folded().text()));
    return settings;
  }
}
