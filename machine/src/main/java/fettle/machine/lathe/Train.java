package fettle.machine.lathe;

import fettle.machine.dictionary.Values;
import fettle.mechanics.base.Ratio;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A chain that turns one motion into another.
 *
 * @param name its name in the book
 * @param from the member that is turned
 * @param to the member that is moved or turned
 * @param use what it serves: feed, screw cutting or spindle speeds
 * @param elements what the motion passes through, in order
 * @param values everything the book says of it
 */
public record Train(
    String name, String from, String to, String use, List<Element> elements, Values values) {

  /** Keeps its own copy. */
  public Train {
    elements = List.copyOf(elements);
  }

  /** Tells whether the last element gives travel. */
  public boolean linear() {
    return !elements.isEmpty() && elements.get(elements.size() - 1).linear();
  }

  /** Tells whether nothing in the train can slip. */
  public boolean exact() {
    return elements.stream().allMatch(Element::exact);
  }

  /** Returns how often the sense of turning is reversed. */
  public int reversals() {
    return elements.stream().mapToInt(Element::reversals).sum();
  }

  /**
   * Returns what one turn of the input makes: turns, or travel in millimetres. Several if the train
   * has steps, by the names of the steps.
   */
  public Map<String, Ratio> factors() {
    Map<String, Ratio> all = new LinkedHashMap<>();
    all.put("", Ratio.ONE);
    for (Element element : elements) {
      Map<String, Ratio> next = new LinkedHashMap<>();
      all.forEach(
          (name, ratio) ->
              element
                  .factors()
                  .forEach((step, factor) -> next.put(join(name, step), ratio.times(factor))));
      all = next;
    }
    return all;
  }

  /** Returns the factor of a train without steps. */
  public Ratio factor() {
    return factors().values().iterator().next();
  }

  private static String join(String a, String b) {
    return a.isEmpty() ? b : b.isEmpty() ? a : a + ", " + b;
  }
}
