package fettle.machine.text;

import java.util.Iterator;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * A block of keys in a text, and where one more can be written.
 *
 * @param flow true if it stands between braces
 * @param start offset of its first character [characters]
 * @param column how far it is indented [characters]
 * @param end offset behind the last thing in it [characters]
 */
record Block(boolean flow, int start, int column, int end) {

  /** Where the new key goes among those that are there. */
  enum Side {
    /** Behind all others. */
    BEHIND,
    /** Before all others. */
    BEFORE
  }

  /** Finds the block that starts at a place. */
  static Optional<Block> at(String text, Place place) {
    try {
      LoadSettings settings = LoadSettings.builder().setLabel(place.file()).build();
      Iterator<Event> events = new Parse(settings).parseString(text).iterator();
      while (events.hasNext()) {
        if (events.next() instanceof MappingStartEvent start && starts(start, place)) {
          return Optional.of(of(text, start, events));
        }
      }
      return Optional.empty();
    } catch (YamlEngineException e) {
      return Optional.empty();
    }
  }

  private static boolean starts(MappingStartEvent start, Place place) {
    Mark mark = start.getStartMark().orElseThrow();
    return mark.getLine() + 1 == place.line() && mark.getColumn() + 1 == place.column();
  }

  private static Block of(String text, MappingStartEvent start, Iterator<Event> events) {
    Mark from = start.getStartMark().orElseThrow();
    boolean flow = start.getFlowStyle() == FlowStyle.FLOW;
    int end = TextEdit.offset(text, from) + (flow ? 1 : 0);
    int depth = 1;
    while (events.hasNext()) {
      Event event = events.next();
      boolean opens = event instanceof MappingStartEvent || event instanceof SequenceStartEvent;
      boolean closes = event instanceof MappingEndEvent || event instanceof SequenceEndEvent;
      depth += opens ? 1 : closes ? -1 : 0;
      if (depth == 0) {
        break;
      }
      // the end of a block without braces is where the next thing begins, remarks and all
      Mark to = event.getEndMark().orElseThrow();
      if (!closes || !to.equals(event.getStartMark().orElseThrow())) {
        end = Math.max(end, TextEdit.offset(text, to));
      }
    }
    return new Block(flow, TextEdit.offset(text, from), from.getColumn(), end);
  }

  /** Writes one more line of key and value. */
  String with(String text, String line, Side side) {
    return flow ? withinBraces(text, line, side) : onItsOwnLine(text, line, side);
  }

  private String withinBraces(String text, String line, Side side) {
    boolean empty = text.substring(start + 1, end).isBlank();
    return side == Side.BEFORE
        ? text.substring(0, start + 1) + line + (empty ? "" : ", ") + text.substring(start + 1)
        : text.substring(0, end) + (empty ? "" : ", ") + line + text.substring(end);
  }

  private String onItsOwnLine(String text, String line, Side side) {
    String ends = text.contains("\r\n") ? "\r\n" : "\n";
    String indent = " ".repeat(column);
    if (side == Side.BEFORE) {
      return text.substring(0, start) + line + ends + indent + text.substring(start);
    }
    boolean fresh = end > 0 && text.charAt(end - 1) == '\n';
    int next = fresh ? end : text.indexOf('\n', end) + 1;
    return next == 0
        ? text + ends + indent + line + ends
        : text.substring(0, next) + indent + line + ends + text.substring(next);
  }
}
