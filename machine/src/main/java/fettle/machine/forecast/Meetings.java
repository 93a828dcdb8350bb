package fettle.machine.forecast;

import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.topics.Clearances;
import fettle.machine.topics.Envelopes;
import fettle.machine.topics.Use;
import fettle.mechanics.motion.Mechanism;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What two changes bring about only together: members that touch with both of them, and with
 * neither of them alone.
 *
 * @param pairs the pairs of changes with what they let touch
 * @param untried how many pairs of changes were left untried because there are too many
 */
public record Meetings(List<Meeting> pairs, int untried) {

  private static final int MOST = 300;
  private static final double TOLERANCE = 0.5;
  private static final int BUDGET = 300;

  /**
   * Two changes and the members that touch.
   *
   * @param one key of the one change
   * @param other key of the other
   * @param first the one member
   * @param second the other
   */
  public record Meeting(String one, String other, String first, String second) {}

  /** Keeps its own copy. */
  public Meetings {
    pairs = List.copyOf(pairs);
  }

  /**
   * Tries every two of some changes. A change that moves no member and alters no envelope cannot
   * meet another, and is not tried.
   */
  public static Meetings of(Book book, List<String> keys) {
    Set<String> bought = shape(book, List.of());
    Map<String, Set<Touch>> alone = new LinkedHashMap<>();
    for (String key : keys) {
      if (!shape(book, List.of(key)).equals(bought)) {
        alone.put(key, touching(book, List.of(key)));
      }
    }
    List<String> tried = List.copyOf(alone.keySet());
    List<Meeting> found = new ArrayList<>();
    int count = 0;
    for (int i = 0; i < tried.size(); i++) {
      for (int j = i + 1; j < tried.size(); j++, count++) {
        if (count < MOST) {
          meet(book, tried.get(i), tried.get(j), alone, found);
        }
      }
    }
    return new Meetings(found, Math.max(0, count - MOST));
  }

  private record Touch(String first, String second) {}

  private static void meet(
      Book book, String one, String other, Map<String, Set<Touch>> alone, List<Meeting> found) {
    Set<Touch> both = touching(book, List.of(one, other));
    both.removeAll(alone.getOrDefault(one, Set.of()));
    both.removeAll(alone.getOrDefault(other, Set.of()));
    both.stream()
        .sorted(java.util.Comparator.comparing(Touch::first).thenComparing(Touch::second))
        .forEach(t -> found.add(new Meeting(one, other, t.first(), t.second())));
  }

  private static Set<Touch> touching(Book book, List<String> keys) {
    Set<Touch> touching = new LinkedHashSet<>();
    machine(book, keys)
        .ifPresent(
            m ->
                Clearances.of(m, Use.WHOLE, TOLERANCE, BUDGET).rows().stream()
                    .filter(r -> r.gap().touches())
                    .forEach(r -> touching.add(new Touch(r.first(), r.second()))));
    return touching;
  }

  /** Every seat and every solid in words, so that two lathes can be compared. */
  private static Set<String> shape(Book book, List<String> keys) {
    Set<String> words = new LinkedHashSet<>();
    machine(book, keys)
        .ifPresent(
            m -> {
              Mechanism mechanism = Envelopes.of(m, Use.WHOLE);
              Stream.concat(mechanism.links().stream(), mechanism.bodies().stream())
                  .forEach(x -> words.add(x.toString()));
              for (int i = 0; i < mechanism.domain().size(); i++) {
                words.add(mechanism.domain().names().get(i) + mechanism.domain().high()[i]);
              }
            });
    return words;
  }

  private static java.util.Optional<Machine> machine(Book book, List<String> keys) {
    List<String> all = keys.stream().flatMap(k -> book.withNeeds(k).stream()).distinct().toList();
    return State.of(book, "", all).machine();
  }
}
