package fettle.machine.lathe;

import fettle.machine.dictionary.Values;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A body of the lathe.
 *
 * @param name its name in the book
 * @param seat how it sits on another member
 * @param envelope the room it takes, by name
 * @param values everything the book says of it
 */
public record Member(String name, Seat seat, Map<String, Solid> envelope, Values values) {

  static Member of(String name, Values block) {
    Map<String, Solid> envelope = new LinkedHashMap<>();
    block.map("envelope").forEach((solid, b) -> envelope.put(solid, Solid.of(b)));
    return new Member(
        name,
        Seat.of(block.block("seat").orElseThrow()),
        Collections.unmodifiableMap(envelope),
        block);
  }
}
