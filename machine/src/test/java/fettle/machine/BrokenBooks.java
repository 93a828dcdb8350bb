package fettle.machine;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Row;
import fettle.machine.dictionary.Samples;
import fettle.machine.dictionary.Slots;
import fettle.machine.dictionary.Slots.Slot;
import fettle.machine.text.Node;
import fettle.machine.text.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Makes books with one mistake each, out of a sound one; the same number makes the same book. */
final class BrokenBooks {

  /**
   * A book with a mistake.
   *
   * @param kind what was done to it
   * @param texts its files
   * @param file the file that holds the mistake
   * @param line line of the mistake; 0 if it is not on one certain line
   */
  record Broken(String kind, Map<String, String> texts, String file, int line) {}

  private static final String MACHINE = "machine.yaml";
  private static final String CHANGE = "changes/first-dial.yaml";

  private final Map<String, String> sound;
  private final Map<String, List<Slot>> slots = new TreeMap<>();
  private final List<String> members;

  BrokenBooks(Map<String, String> sound) {
    this.sound = Map.copyOf(sound);
    slots.put(MACHINE, Slots.of("machine", tree(MACHINE)));
    slots.put("shop.yaml", Slots.of("shop", tree("shop.yaml")));
    slots.put(CHANGE, Slots.of("change", tree(CHANGE)));
    Node.Mapping root = (Node.Mapping) tree(MACHINE);
    Node.Entry entry = root.entries().get("members");
    members =
        entry == null ? List.of() : List.copyOf(((Node.Mapping) entry.value()).entries().keySet());
  }

  private Node tree(String file) {
    return SampleBooks.tree(sound.getOrDefault(file, ""));
  }

  /** Returns the book of a number. */
  Broken book(long number) {
    Random random = new Random(number * 0x9E3779B97F4A7C15L + 7396);
    return switch (random.nextInt(20)) {
      case 0, 1 -> keyTypo(random);
      case 2, 3, 4 -> brokenValue(random);
      case 5 -> absurd(random);
      case 6 -> twice(random);
      case 7 -> marked(random);
      case 8 -> deep(random);
      case 9 -> huge(random);
      case 10 -> tabs(random);
      case 11, 12 -> syntax(random);
      case 13 -> wrongShape(random);
      case 14 -> missing(random);
      case 15 -> unknownName(random);
      case 16 -> circle(random);
      case 17 -> patch(random);
      case 18 -> control(random);
      default -> change(random);
    };
  }

  private Slot slot(Random random, String file, java.util.function.Predicate<Slot> wanted) {
    List<Slot> fit = slots.getOrDefault(file, List.of()).stream().filter(wanted).toList();
    return fit.get(random.nextInt(fit.size()));
  }

  private static String anyFile(Random random) {
    int n = random.nextInt(12);
    return n < 9 ? MACHINE : n < 11 ? CHANGE : "shop.yaml";
  }

  private Broken edited(String kind, String file, Place at, int length, String instead) {
    return edited(kind, file, at, length, instead, at.line());
  }

  private Broken edited(String kind, String file, Place at, int length, String instead, int line) {
    String text = sound.getOrDefault(file, "");
    int from = offset(text, at);
    String broken = text.substring(0, from) + instead + text.substring(from + length);
    return with(kind, file, broken, line);
  }

  private Broken with(String kind, String file, String broken, int line) {
    return new Broken(kind, Map.of(file, broken), file, line);
  }

  private static int offset(String text, Place at) {
    int offset = 0;
    for (int line = 1; line < at.line(); line++) {
      offset = text.indexOf('\n', offset) + 1;
    }
    return offset + at.column() - 1;
  }

  private static int length(Slot slot) {
    return ((Node.Scalar) slot.node()).text().length();
  }

  private Broken keyTypo(Random random) {
    String file = anyFile(random);
    Slot slot = slot(random, file, s -> true);
    String key = slot.row().key();
    int at = random.nextInt(key.length());
    String typo =
        switch (random.nextInt(4)) {
          case 0 -> key.substring(0, at) + "q" + key.substring(at);
          case 1 -> key.substring(0, at) + "Q" + key.substring(at + 1);
          case 2 -> key + key.substring(at) + "x";
          default -> key.replace(" ", "_") + "_";
        };
    return edited("key typo", file, slot.keyAt(), key.length(), typo, 0);
  }

  private Broken brokenValue(Random random) {
    String file = anyFile(random);
    Slot slot = slot(random, file, s -> s.plain());
    List<String> broken = new ArrayList<>(new Samples(random).broken(slot.row()));
    if (slot.row().key().equals("kind")) {
      broken.removeIf(b -> b.equals("3"));
    }
    String value = broken.get(random.nextInt(broken.size()));
    return edited("broken value " + value, file, slot.node().at(), length(slot), value);
  }

  private Broken absurd(Random random) {
    String file = random.nextInt(4) > 0 ? MACHINE : "shop.yaml";
    Slot slot =
        slot(
            random,
            file,
            s -> s.plain() && s.row().unit().symbol().length() > 0 && s.row().high().isPresent());
    String unit = " " + slot.row().unit().symbol();
    List<String> values =
        List.of(
            "1e60",
            "-1e60",
            "999999999999999",
            "-1e12",
            "1e99",
            "NaN",
            "Infinity",
            "-Infinity",
            "1e-99 ± 1e60",
            "0x7f",
            "1e400",
            "1e2147483647",
            "-999999");
    String value = values.get(random.nextInt(values.size())) + unit;
    return edited("absurd " + value, file, slot.node().at(), length(slot), '"' + value + '"');
  }

  private Broken twice(Random random) {
    String file = anyFile(random);
    Slot slot = slot(random, file, s -> true);
    String text = sound.getOrDefault(file, "");
    int from = offset(text, slot.keyAt());
    int start = text.lastIndexOf('\n', from) + 1;
    String before = text.substring(start, from);
    String key = slot.row().key();
    String more = before.isBlank() ? key + ": 1\n" + before : key + ": 1, ";
    return edited(
        "twice",
        file,
        slot.keyAt(),
        0,
        more,
        before.isBlank() ? slot.keyAt().line() + 1 : slot.keyAt().line());
  }

  private Broken marked(Random random) {
    String file = anyFile(random);
    Slot slot = slot(random, file, s -> true);
    List<String> marks =
        List.of(
            "&a ",
            "!mine ",
            "!!str ",
            "!!binary ",
            "&a !mine ",
            "!<tag:x> ",
            "*a ",
            "!!java.net.URL ");
    boolean key = random.nextInt(4) == 0;
    Place at = key ? slot.keyAt() : slot.node().at();
    String mark = marks.get(random.nextInt(marks.size()));
    boolean block = !key && at.line() != slot.keyAt().line();
    if (block) {
      return edited(
          "mark before a block",
          file,
          slot.keyAt(),
          slot.row().key().length() + 1,
          slot.row().key() + ": " + mark.strip() + "",
          0);
    }
    return edited("mark " + mark, file, at, 0, mark, at.line());
  }

  private Broken deep(Random random) {
    Slot slot = slot(random, MACHINE, Slot::plain);
    int depth = 30 + random.nextInt(3000);
    String open = random.nextBoolean() ? "[" : "{a: ";
    String closing = random.nextBoolean() ? "" : (open.equals("[") ? "]" : "}").repeat(depth);
    return edited("deep", MACHINE, slot.node().at(), length(slot), open.repeat(depth) + closing);
  }

  private Broken huge(Random random) {
    Slot slot = slot(random, MACHINE, Slot::plain);
    int size = 20_001 + random.nextInt(20_000);
    String value =
        switch (random.nextInt(3)) {
          case 0 -> "x".repeat(size);
          case 1 -> "'" + "9".repeat(size) + " mm'";
          default -> "\"" + "a b ".repeat(size / 4 + 1) + "\"";
        };
    return edited("huge", MACHINE, slot.node().at(), length(slot), value);
  }

  private Broken tabs(Random random) {
    String text = sound.getOrDefault(MACHINE, "");
    String[] lines = text.split("\n", -1);
    List<Integer> indented = new ArrayList<>();
    for (int i = 1; i < lines.length; i++) {
      boolean opens = lines[i - 1].endsWith(":");
      if (opens && lines[i].startsWith("  ")) {
        indented.add(i);
      }
    }
    int at = indented.get(random.nextInt(indented.size()));
    lines[at] = "\t" + lines[at].strip();
    return with("tab", MACHINE, String.join("\n", lines), 0);
  }

  private Broken syntax(Random random) {
    String file = anyFile(random);
    Slot slot = slot(random, file, Slot::plain);
    List<String> before = List.of("@", "`", "\"", "'", "[", "{", "%", "}", "] ", "- - ", "? ");
    String mark = before.get(random.nextInt(before.size()));
    return switch (random.nextInt(3)) {
      case 0 -> edited("syntax " + mark, file, slot.node().at(), 0, mark, 0);
      case 1 -> edited("syntax after key " + mark, file, slot.keyAt(), 0, mark + mark, 0);
      default -> cut(random, file);
    };
  }

  /** Cuts a bracket out. */
  private Broken cut(Random random, String file) {
    String text = sound.getOrDefault(file, "").replaceAll("(?m)^#.*\\n", "");
    List<Integer> brackets = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      if ("{}[]".indexOf(text.charAt(i)) >= 0) {
        brackets.add(i);
      }
    }
    int at = brackets.get(random.nextInt(brackets.size()));
    return with("bracket cut", file, text.substring(0, at) + text.substring(at + 1), 0);
  }

  private Broken wrongShape(Random random) {
    String file = anyFile(random);
    Slot slot = slot(random, file, s -> s.node() instanceof Node.Mapping);
    String key = slot.row().key();
    String value = List.of("7", "word", "[1, 2]", "\"\"").get(random.nextInt(4));
    return edited(
        "wrong shape",
        file,
        slot.keyAt(),
        key.length() + 1,
        key + ": " + value + "\n" + key + "x:",
        0);
  }

  private Broken missing(Random random) {
    Slot slot = slot(random, MACHINE, s -> s.plain() && s.row().required());
    Place at = slot.node().at();
    String value = random.nextBoolean() ? "" : random.nextBoolean() ? "~" : "null";
    return edited("missing " + slot.path(), MACHINE, at, length(slot), value);
  }

  private Broken unknownName(Random random) {
    Slot slot = slot(random, MACHINE, s -> s.plain() && s.row().type().startsWith("ref:"));
    String name = ((Node.Scalar) slot.node()).text();
    String unknown = random.nextBoolean() ? "nothing " + random.nextInt(99) : name + "s";
    return edited("unknown name", MACHINE, slot.node().at(), name.length(), unknown);
  }

  private Broken circle(Random random) {
    if (random.nextBoolean()) {
      Slot slot = slot(random, MACHINE, s -> s.path().matches("members\\..*\\.seat\\.on"));
      String own = slot.path().substring(8, slot.path().length() - 8);
      return edited("member on itself", MACHINE, slot.node().at(), length(slot), own, 0);
    }
    Slot slot = slot(random, MACHINE, s -> s.path().matches("trains\\..*\\.to"));
    String path = slot.path().replaceFirst("to$", "from");
    Slot from = slot(random, MACHINE, s -> s.path().equals(path));
    String name = ((Node.Scalar) from.node()).text();
    return edited("train to itself", MACHINE, slot.node().at(), length(slot), name, 0);
  }

  private Broken patch(Random random) {
    List<Row> needed =
        Dictionary.standard().shape("machine").values().stream().filter(Row::required).toList();
    Row row = needed.get(random.nextInt(needed.size()));
    String member = members.get(random.nextInt(members.size()));
    List<String> patches =
        List.of(
            "{" + row.key() + ": null}",
            "{members: {'" + member + "': {seat: null}}}",
            "{members: {'" + member + "': {seat: {kind: null}}}}",
            "{members: {bed: null}}",
            "{members: {saddle: null}}",
            "{trains: {cross feed: {elements: {screw: {thread: null}}}}}",
            "{trains: {cross feed: {elements: {screw: null}}}}",
            "{trains: {cross feed: null}}",
            "{drive: {train: cross feed, motor: null}}",
            "{members: {'" + member + "': {mass: " + random.nextInt(50) + "}}}",
            "{dials: {cross dial: {lines: none}}}",
            "{banjo: {slot from: " + (81 + random.nextInt(500)) + " mm}}",
            "{spindel: {bore: 12 mm}}",
            "[name, x]",
            "{members: }",
            "{name: [1]}");
    String text =
        "title: T\nreason: r\ndiffers: " + patches.get(random.nextInt(patches.size())) + "\n";
    String machine = sound.getOrDefault(MACHINE, "");
    return new Broken("patch " + text, Map.of(MACHINE, machine, CHANGE, text), "", 0);
  }

  private Broken control(Random random) {
    String file = anyFile(random);
    Slot slot = slot(random, file, s -> s.plain() && !s.row().type().equals("text"));
    String c =
        String.valueOf(
            List.of('\u0000', '\u0001', '\u0007', '\u001b', '\ud800', '\udfff', '\ufffe', '\u0008')
                .get(random.nextInt(8)));
    return edited("control character", file, slot.node().at(), 1, c, slot.node().at().line());
  }

  private Broken change(Random random) {
    String text = sound.getOrDefault(CHANGE, "");
    return switch (random.nextInt(4)) {
      case 0 -> with("needs", CHANGE, text + "needs: [nothing" + random.nextInt(99) + "]\n", 0);
      case 1 -> with("needs itself", CHANGE, text + "needs: [first-dial]\n", 0);
      case 2 -> {
        String name =
            "changes/"
                + List.of("A b", "Ä", "-x", "x_y", "", ".", "a".repeat(90)).get(random.nextInt(7));
        yield with("file name", name + ".yaml", text, 0);
      }
      default ->
          with(
              "second document",
              anyFile(random),
              sound.getOrDefault(MACHINE, "") + "\n---\nname: x\n",
              0);
    };
  }
}
