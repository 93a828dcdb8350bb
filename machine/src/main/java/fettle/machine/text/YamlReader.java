package fettle.machine.text;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * Reads a YAML 1.2 text into a tree with places. Anchors, aliases, tags, several documents, deep
 * nesting and huge texts are refused with a message; names that stand twice are all reported.
 */
public final class YamlReader {

  private static final int LONGEST_TEXT = 250_000;
  private static final int LONGEST_SCALAR = 20_000;
  private static final int DEEPEST = 24;
  private static final int MOST_NODES = 20_000;
  private static final int MOST_PROBLEMS = 1_000;

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private int nodes;

  private YamlReader(String file) {
    this.file = file;
  }

  /** Reads a text; the file's name serves for messages only. */
  public static Parsed<Node> read(String file, String text) {
    if (text.length() > LONGEST_TEXT) {
      return Parsed.bad(
          List.of(
              new Problem(
                  Place.file(file),
                  "",
                  "a file of " + text.length() + " characters",
                  "at most " + LONGEST_TEXT,
                  "Move readings into CSV files under trials/.")));
    }
    return new YamlReader(file).read(text);
  }

  private Parsed<Node> read(String text) {
    LoadSettings settings =
        LoadSettings.builder().setLabel(file).setCodePointLimit(LONGEST_TEXT + 1).build();
    try {
      Iterator<Event> events = new Parse(settings).parseString(text).iterator();
      events.next();
      Event first = events.next();
      if (!(first instanceof DocumentStartEvent)) {
        return Parsed.bad(
            List.of(
                new Problem(
                    Place.file(file),
                    "",
                    "an empty file",
                    "a book's text",
                    "Start with 'fettle new'.")));
      }
      Node root = node(events.next(), events, 0, "");
      events.next();
      if (events.next() instanceof DocumentStartEvent again) {
        stop(place(again.getStartMark()), "a second document (---)", "one document a file", "");
      }
      return new Parsed<>(root, problems);
    } catch (Refusal refusal) {
      problems.add(refusal.problem);
      return Parsed.bad(problems);
    } catch (MarkedYamlEngineException e) {
      Place at = place(e.getProblemMark());
      problems.add(
          new Problem(
              at,
              "",
              said(e.getProblem()),
              "YAML",
              "Look at the indentation, colons and quotes near this line."));
      return Parsed.bad(problems);
    } catch (ReaderException e) {
      problems.add(
          new Problem(
              unprintable(text),
              "",
              "the character U+%04X, which no text may hold".formatted(e.getCodePoint()),
              "text that can be read",
              "Remove the character; save the file as plain UTF-8 text."));
      return Parsed.bad(problems);
    } catch (YamlEngineException | IllegalArgumentException e) {
      problems.add(
          new Problem(
              Place.file(file),
              "",
              said(String.valueOf(e.getMessage())),
              "text that can be read",
              "Save the file as plain UTF-8 text."));
      return Parsed.bad(problems);
    }
  }

  /** Returns the place of the first character that YAML does not allow. */
  private Place unprintable(String text) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int c = text.codePointAt(i);
      if (!StreamReader.isPrintable(c)) {
        return new Place(file, line, column);
      }
      line += c == '\n' ? 1 : 0;
      column = c == '\n' ? 1 : column + 1;
    }
    return Place.file(file);
  }

  private static String said(String message) {
    return message.isBlank() ? "something that cannot be read" : message.strip();
  }

  private Node node(Event event, Iterator<Event> events, int depth, String path) {
    Place at = place(event.getStartMark());
    if (depth > DEEPEST) {
      stop(at, "more than " + DEEPEST + " levels of nesting", "a book's text", "");
    }
    if (++nodes > MOST_NODES) {
      stop(at, "more than " + MOST_NODES + " values", "a book's text", "");
    }
    if (event instanceof AliasEvent) {
      stop(
          at,
          "an alias (*name)",
          "the value itself",
          "Write the value out; a book uses no anchors.");
    }
    if (event instanceof NodeEvent anchored && anchored.getAnchor().isPresent()) {
      stop(at, "an anchor (&name)", "the value alone", "Write the value out where it is needed.");
    }
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar, at);
    } else if (event instanceof CollectionStartEvent collection) {
      untagged(collection.getTag(), at);
    }
    if (event instanceof SequenceStartEvent) {
      List<Node> items = new ArrayList<>();
      for (Event e = events.next(); e.getEventId() != Event.ID.SequenceEnd; e = events.next()) {
        items.add(node(e, events, depth + 1, path + "[" + items.size() + "]"));
      }
      return new Node.Listing(items, at);
    } else if (event instanceof MappingStartEvent) {
      return mapping(events, depth, path, at);
    }
    throw new Refusal(new Problem(at, "", event.toString(), "a value", ""));
  }

  private Node mapping(Iterator<Event> events, int depth, String path, Place at) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    for (Event e = events.next(); e.getEventId() != Event.ID.MappingEnd; e = events.next()) {
      Place keyAt = place(e.getStartMark());
      if (!(e instanceof ScalarEvent key)) {
        stop(keyAt, "a key that is not one word or phrase", "a name followed by a colon", "");
        throw new IllegalStateException();
      }
      Node.Scalar name = keyScalar(key, keyAt);
      String inner = path.isEmpty() ? name.text() : path + "." + name.text();
      Node value = node(events.next(), events, depth + 1, inner);
      Node.Entry before = entries.putIfAbsent(name.text(), new Node.Entry(keyAt, value));
      if (before != null && problems.size() < MOST_PROBLEMS) {
        problems.add(
            new Problem(
                keyAt,
                inner,
                "the key a second time (first in line " + before.keyAt().line() + ")",
                "each key once",
                "Remove one of the two."));
      }
    }
    return new Node.Mapping(entries, at);
  }

  private Node.Scalar keyScalar(ScalarEvent key, Place at) {
    untagged(key.getTag(), at);
    if (key.getAnchor().isPresent()) {
      stop(at, "an anchor (&name)", "the key alone", "A book uses no anchors.");
    }
    if (key.getValue().length() > 200) {
      stop(at, "a key of " + key.getValue().length() + " characters", "a short name", "");
    }
    return new Node.Scalar(key.getValue(), true, at);
  }

  private Node scalar(ScalarEvent scalar, Place at) {
    untagged(scalar.getTag(), at);
    String text = scalar.getValue();
    if (text.length() > LONGEST_SCALAR) {
      stop(at, "a value of " + text.length() + " characters", "at most " + LONGEST_SCALAR, "");
    }
    boolean quoted = scalar.getScalarStyle() != ScalarStyle.PLAIN;
    if (!quoted && (text.isEmpty() || text.equals("~") || text.equals("null"))) {
      return new Node.Nothing(!text.isEmpty(), at);
    }
    return new Node.Scalar(text, quoted, at);
  }

  private static void untagged(Optional<String> tag, Place at) {
    if (tag.isPresent()) {
      stop(at, "a tag (" + tag.get() + ")", "a plain value", "Remove the tag.");
    }
  }

  private Place place(Optional<Mark> mark) {
    return mark.map(m -> new Place(file, m.getLine() + 1, m.getColumn() + 1))
        .orElse(Place.file(file));
  }

  private static void stop(Place at, String found, String expected, String remedy) {
    throw new Refusal(new Problem(at, "", found, expected, remedy));
  }

  /** Ends the reading at a text that must not be read on. */
  private static final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Refusal(Problem problem) {
      super(problem.text(), null, false, false);
      this.problem = problem;
    }
  }
}
