package fettle.planning.gearbox;

import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.TextEdit;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Writes a settled box as a change of the book: the box in the train in place of the change gears,
 * its parts with their recipes, the work. The text is plain and the owner's from then on.
 */
public final class BoxChange {

  private final SettledBox box;
  private final ScrewCutting cutting;

  private BoxChange(SettledBox box, ScrewCutting cutting) {
    this.box = box;
    this.cutting = cutting;
  }

  /**
   * Returns the files of a box: the change first, then the recipes of its parts.
   *
   * @param box the box
   * @param cutting what it replaces
   * @param machine the lathe it is written for
   * @param key key of the change; the recipes begin with it
   * @param known how it is known that no box is better, in a sentence
   */
  public static Map<String, String> files(
      SettledBox box, ScrewCutting cutting, Machine machine, String key, String known) {
    BoxChange change = new BoxChange(box, cutting);
    BoxParts parts = new BoxParts(box, key);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("changes/" + key + ".yaml", change.text(machine, parts, known));
    files.putAll(parts.recipes());
    return files;
  }

  /** What the link gears must bring so that the cone, driving, gives its leads. */
  public static Ratio metricLink(SettledBox box, ScrewCutting cutting) {
    return box.lead(0, 0)
        .over(box.design().multipliers().get(0))
        .over(cutting.fixed())
        .times(Ratio.of(box.tumbler(), box.cone().get(0)))
        .folded();
  }

  /** What they must bring so that the cone, driven, gives its threads per inch. */
  public static Ratio inchLink(SettledBox box, ScrewCutting cutting) {
    return Ratio.INCH
        .over(box.design().constant().times(box.design().cone().get(0)))
        .over(cutting.fixed())
        .times(Ratio.of(box.cone().get(0), box.tumbler()))
        .folded();
  }

  private String text(Machine machine, BoxParts parts, String known) {
    BoxWish wish = box.wish();
    StringBuilder text = new StringBuilder();
    line(text, "title: " + TextEdit.quoted("Gearbox of " + box.design().wheels() + " wheels"));
    line(text, "reason: " + TextEdit.quoted("Found by search: " + wish.text() + ". " + known));
    line(text, "stage: idea");
    differs(text, machine);
    line(text, "assembly: [" + String.join(", ", parts.assembly()) + "]");
    line(text, "parts:");
    parts.lines().forEach(l -> line(text, "  " + l));
    steps(text, parts);
    line(text, "caution:");
    line(text, "  - Isolate the lathe before the box is opened or link gears are changed.");
    line(text, "  - Never shift a lever with the spindle under power.");
    line(text, "  - The gear cover stays closed whenever the spindle turns.");
    return text.toString();
  }

  private static void line(StringBuilder text, String line) {
    text.append(line).append('\n');
  }

  private void differs(StringBuilder text, Machine machine) {
    Set<String> gone = new LinkedHashSet<>();
    String after = "";
    Train train = machine.trains().get(cutting.train());
    List<Element> elements = train == null ? List.of() : train.elements();
    for (Element element : elements) {
      if (element instanceof Element.ChangeGears || element instanceof Element.Box) {
        gone.add(element.name());
      } else if (!element.linear() && gone.isEmpty()) {
        after = element.name();
      }
    }
    line(text, "differs:");
    line(text, "  trains:");
    line(text, "    " + cutting.train() + ":");
    line(text, "      elements:");
    gone.forEach(name -> line(text, "        " + name + ": null"));
    line(text, "        " + (gone.contains("gearbox") ? "box" : "gearbox") + ":");
    line(text, "          kind: box");
    if (!after.isEmpty()) {
      line(text, "          after: " + after);
    }
    Set<String> settings = settings();
    line(text, "          settings: [" + String.join(", ", settings) + "]");
    line(text, "          set: " + settings.iterator().next());
  }

  /** Ratios of box and link together for every thread asked for, in the order asked. */
  private Set<String> settings() {
    Set<String> settings = new LinkedHashSet<>();
    BoxWish wish = box.wish();
    wish.leads().forEach(l -> settings.add(l.over(cutting.fixed()).folded().text()));
    wish.perInch()
        .forEach(t -> settings.add(Ratio.INCH.over(t).over(cutting.fixed()).folded().text()));
    return settings;
  }

  private void steps(StringBuilder text, BoxParts parts) {
    line(text, "steps:");
    step(text, "turn shafts", "Turn the shafts and rings, mill the keyways.", parts.shafts());
    step(text, "cut gears", "Turn the blanks, cut and deburr the teeth.", parts.gears());
    step(
        text,
        "bore box",
        "Bore the box for its three shafts in one setting; make arm, key and plate.",
        parts.plain());
    line(
        text,
        "  change over: {do: "
            + TextEdit.quoted(
                "Take the banjo's gears off, fit the box, link gears "
                    + metricLink(box, cutting).text()
                    + " for millimetres"
                    + (box.wish().perInch().isEmpty()
                        ? "."
                        : ", " + inchLink(box, cutting).text() + " for threads per inch."))
            + ", lathe: down, after: [turn shafts, cut gears, bore box], loses: [screw cutting]}");
  }

  private static void step(StringBuilder text, String name, String todo, List<String> makes) {
    line(
        text,
        "  "
            + name
            + ": {do: "
            + TextEdit.quoted(todo)
            + ", lathe: used, makes: ["
            + String.join(", ", makes)
            + "]}");
  }

  /** Returns every setting of the levers with what it gives, for the plate on the box. */
  public static List<String> plate(SettledBox box) {
    BoxWish wish = box.wish();
    List<String> lines = new ArrayList<>();
    for (int notch = 0; notch < box.cone().size(); notch++) {
      List<String> gives = new ArrayList<>();
      for (int pair = 0; pair < box.pairs().size(); pair++) {
        String lead = number(box.lead(notch, pair)) + " mm";
        gives.add(SettledBox.letter(pair) + " " + mark(wish.leads(), box.lead(notch, pair), lead));
      }
      for (int pair = 0; pair < box.pairs().size() && !wish.perInch().isEmpty(); pair++) {
        String tpi = number(box.perInch(notch, pair)) + " tpi";
        gives.add(
            SettledBox.letter(pair) + " " + mark(wish.perInch(), box.perInch(notch, pair), tpi));
      }
      lines.add((notch + 1) + " (" + box.cone().get(notch) + "): " + String.join(", ", gives));
    }
    return lines;
  }

  private static String mark(List<Ratio> wanted, Ratio value, String text) {
    return wanted.stream().anyMatch(value::sameAs) ? text : "(" + text + ")";
  }

  private static String number(Ratio value) {
    return Numbers.significant(value.toDouble(), 5);
  }

  /** Returns the places of the arm in words. */
  static String notches(SettledBox box) {
    return box.notches().stream()
        .map(
            n ->
                n.number()
                    + " at "
                    + Numbers.fixed(n.along(), 1)
                    + " mm and "
                    + Numbers.fixed(Math.toDegrees(n.swing()), 1)
                    + " degrees")
        .collect(Collectors.joining("; "));
  }
}
