package fettle.desk.pack;

import fettle.machine.text.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What can hurt somebody: what the change itself says, and what the work on such a thing asks. */
final class CautionChapter {

  static final String YIELDS =
      "Figures are for planning; they are no promise of safety. Where these pages and a law, a code"
          + " or a maker's manual differ, the stricter holds and these pages yield.";

  /** Words of the description that a rule belongs to; common practice of the trade. */
  private static final Map<String, String> RULES = rules();

  private CautionChapter() {}

  private static Map<String, String> rules() {
    Map<String, String> rules = new LinkedHashMap<>();
    rules.put(
        "",
        "Before a cover or guard is opened or the lathe is stripped: switch off, lock the switch or"
            + " pull the plug, wait until nothing turns, and try once whether it really is dead.");
    rules.put(
        "spindle|headstock",
        "After work on spindle, bearings or head: turn it by hand first, then the lowest speed with"
            + " the guard down and nobody in line with the chuck, then up step by step while the"
            + " temperature is noted.");
    rules.put(
        "pair|gear|train|change gears|lead screw|rack",
        "Gears and screw ends stay covered whenever the power is on. Fingers, sleeves and cords are"
            + " drawn in faster than one can let go.");
    rules.put(
        "motor|belt|pulley|drive",
        "A belt and its pulleys run under a closed cover. Let the motor stand still before the belt"
            + " is touched, also if only the step is changed.");
    rules.put(
        "inverter|control box|controls|start lever",
        "Work on the mains side and the last connection belong to a licensed person. A capacitor can"
            + " hold its charge for minutes after switching off; wait for the time on its label.");
    rules.put(
        "inverter|stop",
        "A drive that brakes or reverses can unscrew a chuck from a screwed nose: lock the chuck, or"
            + " let it run out.");
    rules.put(
        "bed|headstock|tailstock|saddle",
        "Stripped slides and heads are heavier than they look: put wood under them, lift with a"
            + " second person or a hoist, never reach beneath.");
    rules.put(
        "t-slot|rear post|tool post",
        "A tool at the rear lifts: clamp it with both nuts, take light cuts first, and keep the hand"
            + " off the feed when its direction changes.");
    rules.put(
        "clamp|lever",
        "A clamp that slips lets the work spin: try it by a hand pull before the first large drill.");
    return rules;
  }

  static Chapter of(PackSource source) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Caution(YIELDS));
    List<String> own = source.change().values().texts("caution");
    if (!own.isEmpty()) {
      blocks.add(new Block.Heading("Of this change"));
      own.forEach(c -> blocks.add(new Block.Caution(c)));
    }
    blocks.add(new Block.Heading("Of such work (common practice)"));
    Set<String> words = new TreeSet<>();
    names(source.change().differs(), words);
    RULES.forEach(
        (touch, rule) -> {
          if (touch.isEmpty() || touches(words, touch)) {
            blocks.add(new Block.Point(rule));
          }
        });
    return Chapter.of("Cautions", blocks);
  }

  private static boolean touches(Set<String> words, String touch) {
    for (String one : touch.split("\\|", -1)) {
      if (words.stream().anyMatch(w -> w.contains(one))) {
        return true;
      }
    }
    return false;
  }

  private static void names(Node node, Set<String> words) {
    if (node instanceof Node.Mapping mapping) {
      mapping
          .entries()
          .forEach(
              (key, entry) -> {
                words.add(key.toLowerCase(Locale.ROOT));
                names(entry.value(), words);
              });
    }
  }
}
