package fettle.desk.web;

import fettle.machine.forecast.Forecast;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import fettle.machine.text.YamlReader;
import fettle.machine.topics.Finding;
import fettle.machine.topics.RigidityStudy;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;

/** A book as it was read at one moment, with what was already computed of it. */
final class Opened {

  private static final int MOST = 200;

  private final BookFiles files;
  private final Parsed<Book> book;
  private final Spots spots;
  private final Map<String, Forecast> forecasts = new ConcurrentHashMap<>();
  private final Map<String, List<Finding>> rigidities = new ConcurrentHashMap<>();
  private final Map<String, State> states = new ConcurrentHashMap<>();
  private final Map<String, Shared<Object>> reckoned = new ConcurrentHashMap<>();

  private Opened(BookFiles files, Parsed<Book> book, Spots spots) {
    this.files = files;
    this.book = book;
    this.spots = spots;
  }

  /** Reads a book from its texts. */
  static Opened of(BookFiles files) {
    Map<String, Node> trees = new LinkedHashMap<>();
    files
        .texts()
        .forEach(
            (name, text) -> {
              Node tree = name.endsWith(".yaml") ? YamlReader.read(name, text).value() : null;
              if (tree != null) {
                trees.put(name, tree);
              }
            });
    return new Opened(files, Book.checked(files), Spots.of(trees));
  }

  BookFiles files() {
    return files;
  }

  Spots spots() {
    return spots;
  }

  /** Returns what is wrong with the book; empty if it is sound. */
  List<Problem> problems() {
    return book.problems();
  }

  /** Tells whether there is a book to reckon with. */
  boolean sound() {
    return book.value() != null;
  }

  /** Returns the book, or refuses with what is wrong. */
  Book book() {
    return book.orThrow(() -> Refused.unsound(book.problems()));
  }

  /** Returns the text of a file. */
  Optional<String> text(String file) {
    return Optional.ofNullable(files.texts().get(file));
  }

  /** Returns a short mark of one file's text, to notice that it was changed elsewhere. */
  String mark(String file) {
    return Marks.of(files.texts().getOrDefault(file, ""));
  }

  /** Returns a short mark of the whole book. */
  String mark() {
    StringBuilder all = new StringBuilder();
    files.texts().forEach((name, text) -> all.append(name).append('\n').append(Marks.of(text)));
    return Marks.of(all.toString());
  }

  /** Returns a state, read once. */
  State state(String name, List<String> changes) {
    if (states.size() > MOST) {
      states.clear();
    }
    String key = name + "|" + String.join("+", changes);
    return states.computeIfAbsent(key, k -> State.of(book(), name, changes));
  }

  /** Returns something that follows from this book, computed once, whoever asks meanwhile. */
  @SuppressWarnings("unchecked")
  <T> T once(String key, Supplier<T> reckoning) {
    if (reckoned.size() > MOST) {
      reckoned.clear();
    }
    Shared<Object> fresh = new Shared<>();
    Shared<Object> known = reckoned.putIfAbsent(key, fresh);
    if (known != null) {
      return (T) known.get();
    }
    fresh.make(reckoning);
    if (fresh.failed()) {
      reckoned.remove(key, fresh);
    }
    return (T) fresh.get();
  }

  /** Returns a forecast, computed once. */
  Forecast forecast(State before, State after) {
    String key = String.join("+", before.changes()) + "|" + String.join("+", after.changes());
    key += "|" + before.name() + "|" + after.name();
    if (forecasts.size() > MOST) {
      forecasts.clear();
    }
    Function<String, Forecast> laid = k -> Forecast.of(book(), sound(before), sound(after));
    return forecasts.computeIfAbsent(key, laid);
  }

  /** Returns what separates two states in rigidity; reckoned once, by finite elements. */
  List<Finding> rigidity(State before, State after) {
    String key = String.join("+", before.changes()) + "|" + String.join("+", after.changes());
    if (rigidities.size() > MOST) {
      rigidities.clear();
    }
    return rigidities.computeIfAbsent(
        key,
        k ->
            RigidityStudy.difference(
                sound(before).machine().orElseThrow(), sound(after).machine().orElseThrow()));
  }

  private static State sound(State state) {
    if (state.machine().isEmpty()) {
      throw Refused.unsound(state.problems());
    }
    return state;
  }

  /** Returns this book with other texts in place of some of its own. */
  Opened with(Map<String, String> texts) {
    Map<String, String> all = new LinkedHashMap<>(files.texts());
    all.putAll(texts);
    return of(new BookFiles(all));
  }
}
