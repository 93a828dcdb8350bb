package fettle.machine.text;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Replaces or adds one value in the owner's text and leaves every other character as it stands, so
 * that comments, order and spacing survive. The new text is read again: nothing but that value may
 * differ, or the edit is refused.
 */
public final class TextEdit {

  private TextEdit() {}

  /**
   * Replaces the value at a place.
   *
   * @param text the whole text
   * @param at where the value starts
   * @param value the new value, without quotes
   * @return the new text; empty if the place holds no single value or the value cannot be written
   */
  public static Optional<String> replace(String text, Place at, String value) {
    Node before = YamlReader.read(at.file(), text).value();
    Optional<ScalarEvent> old = scalar(text, at);
    if (before == null || old.isEmpty()) {
      return Optional.empty();
    }
    Node wanted = replaced(before, at, value);
    for (String written : spellings(old.get(), value)) {
      String edited = spliced(text, old.get(), written);
      Parsed<Node> after = YamlReader.read(at.file(), edited);
      if (after.value() != null
          && after.problems().isEmpty()
          && bare(after.value()).equals(bare(wanted))) {
        return Optional.of(edited);
      }
    }
    return Optional.empty();
  }

  /**
   * Adds a value to a block that does not have it yet: behind what stands there if that can be,
   * else before it.
   *
   * @param text the whole text
   * @param block where the block starts
   * @param key name of the value, not in the block so far
   * @param value the value, without quotes
   * @return the new text; empty if no block starts there or the value cannot be written
   */
  public static Optional<String> add(String text, Place block, String key, String value) {
    Node before = YamlReader.read(block.file(), text).value();
    Optional<Block> found = Block.at(text, block);
    if (before == null || found.isEmpty()) {
      return Optional.empty();
    }
    List<String> spellings = value.isEmpty() ? List.of("\"\"") : List.of(value, quoted(value));
    for (Block.Side side : Block.Side.values()) {
      Node wanted = with(before, block, key, value, side);
      for (String written : spellings) {
        String edited = found.get().with(text, key + ": " + written, side);
        Parsed<Node> after = YamlReader.read(block.file(), edited);
        if (after.value() != null
            && after.problems().isEmpty()
            && bare(after.value()).equals(bare(wanted))) {
          return Optional.of(edited);
        }
      }
    }
    return Optional.empty();
  }

  private static Node with(Node node, Place block, String key, String value, Block.Side side) {
    if (node instanceof Node.Mapping mapping) {
      Map<String, Node.Entry> entries = new LinkedHashMap<>();
      boolean here = mapping.at().equals(block);
      Node.Entry fresh = new Node.Entry(block, new Node.Scalar(value, true, block));
      if (here && side == Block.Side.BEFORE) {
        entries.put(key, fresh);
      }
      mapping
          .entries()
          .forEach(
              (k, entry) ->
                  entries.put(
                      k,
                      new Node.Entry(entry.keyAt(), with(entry.value(), block, key, value, side))));
      if (here && side == Block.Side.BEHIND) {
        entries.put(key, fresh);
      }
      return new Node.Mapping(entries, mapping.at());
    } else if (node instanceof Node.Listing listing) {
      return new Node.Listing(
          listing.items().stream().map(i -> with(i, block, key, value, side)).toList(),
          listing.at());
    }
    return node;
  }

  /** Returns the ways to write a value: as it is if it was so before, in quotes otherwise. */
  private static List<String> spellings(ScalarEvent old, String value) {
    String quoted = quoted(value);
    return old.getScalarStyle() == ScalarStyle.PLAIN && !value.isEmpty()
        ? List.of(value, quoted, quoted + "\n")
        : List.of(quoted, quoted + "\n");
  }

  /** Returns a value in double quotes, as YAML 1.2 and JSON write it. */
  public static String quoted(String value) {
    StringBuilder text = new StringBuilder("\"");
    value
        .codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                text.append('\\').appendCodePoint(c);
              } else if (Character.isISOControl(c) || c == 0x2028 || c == 0x2029 || c == 0xFEFF) {
                text.append(String.format("\\u%04x", c));
              } else {
                text.appendCodePoint(c);
              }
            });
    return text.append('"').toString();
  }

  private static String spliced(String text, ScalarEvent old, String written) {
    int from = offset(text, old.getStartMark().orElseThrow());
    int to = offset(text, old.getEndMark().orElseThrow());
    return text.substring(0, from) + written + text.substring(to);
  }

  static int offset(String text, Mark mark) {
    return text.offsetByCodePoints(0, mark.getIndex());
  }

  private static Optional<ScalarEvent> scalar(String text, Place at) {
    try {
      LoadSettings settings = LoadSettings.builder().setLabel(at.file()).build();
      Iterator<Event> events = new Parse(settings).parseString(text).iterator();
      while (events.hasNext()) {
        Event event = events.next();
        Mark mark = event.getStartMark().orElse(null);
        if (event instanceof ScalarEvent scalar
            && mark != null
            && mark.getLine() + 1 == at.line()
            && mark.getColumn() + 1 == at.column()) {
          return Optional.of(scalar);
        }
      }
      return Optional.empty();
    } catch (YamlEngineException e) {
      return Optional.empty();
    }
  }

  private static Node replaced(Node node, Place at, String value) {
    if (node instanceof Node.Mapping mapping) {
      Map<String, Node.Entry> entries = new LinkedHashMap<>();
      mapping
          .entries()
          .forEach(
              (key, entry) ->
                  entries.put(
                      key, new Node.Entry(entry.keyAt(), replaced(entry.value(), at, value))));
      return new Node.Mapping(entries, mapping.at());
    } else if (node instanceof Node.Listing listing) {
      return new Node.Listing(
          listing.items().stream().map(i -> replaced(i, at, value)).toList(), listing.at());
    }
    return node.at().equals(at) ? new Node.Scalar(value, true, at) : node;
  }

  /** Returns a tree without places and spellings, to compare what it says. */
  private static Object bare(Node node) {
    if (node instanceof Node.Mapping mapping) {
      Map<String, Object> entries = new LinkedHashMap<>();
      mapping.entries().forEach((key, entry) -> entries.put(key, bare(entry.value())));
      return List.copyOf(entries.entrySet());
    } else if (node instanceof Node.Listing listing) {
      return listing.items().stream().map(TextEdit::bare).toList();
    } else if (node instanceof Node.Scalar scalar) {
      return "=" + scalar.text();
    }
    return "nothing";
  }
}
