package fettle.desk.pack;

import fettle.desk.page.Measure;
import fettle.machine.forecast.Forecast;
import fettle.machine.lathe.Machine;
import fettle.machine.made.MadePart;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import fettle.machine.trials.Trial;
import fettle.sheets.page.Heads;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What a pack is made from.
 *
 * @param files the book's texts
 * @param book the book
 * @param change the change
 * @param parts its parts that have a recipe
 * @param trials trials that prove it, by name
 * @param forecast the lathe without it beside the lathe with it
 * @param heads who draws, and when
 * @param held what is held back
 */
public record PackSource(
    BookFiles files,
    Book book,
    Change change,
    List<MadePart> parts,
    Map<String, Trial> trials,
    Forecast forecast,
    Heads heads,
    Set<Held> held) {

  /** Keeps its own copies. */
  public PackSource {
    parts = List.copyOf(parts);
    trials = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(trials));
    held = Set.copyOf(held);
  }

  /**
   * Returns what the pack of a change is made from.
   *
   * @param files the book's texts
   * @param book the book
   * @param key the change; it must be one of the book's
   * @param parts parts of the book that have a recipe, at least those of the change
   * @param trials the book's trials
   * @param heads who draws, and when
   * @param held what is held back
   * @throws IllegalArgumentException if the lathe with the change cannot be described
   */
  public static PackSource of(
      BookFiles files,
      Book book,
      String key,
      List<MadePart> parts,
      Map<String, Trial> trials,
      Heads heads,
      Set<Held> held) {
    Change change = Objects.requireNonNull(book.changes().get(key), key);
    List<String> with = new ArrayList<>(book.keys(Stage::done));
    with.addAll(book.withNeeds(key));
    List<String> without = new ArrayList<>(with);
    without.removeIf(key::equals);
    State before = State.of(book, "without it", without);
    State after = State.of(book, "with it", with);
    if (before.machine().isEmpty() || after.machine().isEmpty()) {
      throw new IllegalArgumentException("the lathe with this change cannot be described");
    }
    Map<String, Trial> own = new java.util.TreeMap<>(trials);
    own.values().removeIf(t -> !t.values().text("proves").equals(java.util.Optional.of(key)));
    return new PackSource(
        files,
        book,
        change,
        parts.stream().filter(p -> p.change().equals(key)).toList(),
        own,
        Forecast.of(book, before, after),
        heads,
        held);
  }

  Machine before() {
    return forecast.before().machine().orElseThrow();
  }

  Machine after() {
    return forecast.after().machine().orElseThrow();
  }

  Measure measure() {
    return Measure.of(after().values().needText("units"));
  }

  boolean shows(Held thing) {
    return !held.contains(thing);
  }
}
