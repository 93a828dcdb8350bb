package fettle.machine.dictionary;

import fettle.machine.text.Node;
import fettle.machine.text.Place;
import fettle.machine.text.Quantity;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A block of a book, read by the dictionary: every value has the type its row asks for.
 *
 * @param shape the block's name in the dictionary
 * @param at where it starts
 * @param held value of each key that was written or has a standard value
 * @param places where each written value stands
 */
public record Values(String shape, Place at, Map<String, Object> held, Map<String, Place> places) {

  /** Keeps its own copies. */
  public Values {
    held = Collections.unmodifiableMap(new LinkedHashMap<>(held));
    places = Map.copyOf(places);
  }

  /** Tells whether a key has a value. */
  public boolean has(String key) {
    return held.containsKey(key);
  }

  /** Returns the place of a value, or of the block if it was not written. */
  public Place place(String key) {
    return places.getOrDefault(key, at);
  }

  /** Returns a quantity, if there is one. */
  public Optional<Quantity> quantity(String key) {
    return Optional.ofNullable((Quantity) held.get(key));
  }

  /** Returns a quantity that is required or has a standard value. */
  public Quantity need(String key) {
    return quantity(key).orElseThrow(() -> missing(key));
  }

  /** Returns a whole number, if there is one. */
  public Optional<Integer> count(String key) {
    return Optional.ofNullable((Integer) held.get(key));
  }

  /** Returns a whole number that is required or has a standard value. */
  public int needCount(String key) {
    return count(key).orElseThrow(() -> missing(key));
  }

  /** Returns a text, a word or a designation, if there is one. */
  public Optional<String> text(String key) {
    return Optional.ofNullable((String) held.get(key));
  }

  /** Returns a text that is required or has a standard value. */
  public String needText(String key) {
    return text(key).orElseThrow(() -> missing(key));
  }

  /** Tells whether a flag is set. */
  public boolean flag(String key) {
    return Boolean.TRUE.equals(held.get(key));
  }

  /** Returns a block within this one, if there is one. */
  public Optional<Values> block(String key) {
    return Optional.ofNullable((Values) held.get(key));
  }

  /** Returns the blocks of a map, in the order written. */
  @SuppressWarnings("unchecked")
  public Map<String, Values> map(String key) {
    Object map = held.get(key);
    return map == null ? Map.of() : (Map<String, Values>) map;
  }

  /** Returns the texts of a list. */
  @SuppressWarnings("unchecked")
  public List<String> texts(String key) {
    Object list = held.get(key);
    return list == null ? List.of() : (List<String>) list;
  }

  /** Returns the whole numbers of a list. */
  @SuppressWarnings("unchecked")
  public List<Integer> counts(String key) {
    Object list = held.get(key);
    return list == null ? List.of() : (List<Integer>) list;
  }

  /** Returns the quantities of a list. */
  @SuppressWarnings("unchecked")
  public List<Quantity> quantities(String key) {
    Object list = held.get(key);
    return list == null ? List.of() : (List<Quantity>) list;
  }

  /** Returns a piece of text that is kept as it is. */
  public Optional<Node> tree(String key) {
    return Optional.ofNullable((Node) held.get(key));
  }

  private IllegalStateException missing(String key) {
    return new IllegalStateException(shape + " has no " + key);
  }
}
