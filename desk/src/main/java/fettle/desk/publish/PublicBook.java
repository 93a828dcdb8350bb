package fettle.desk.publish;

import fettle.desk.pack.Held;
import fettle.machine.dictionary.Values;
import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import fettle.machine.trials.Learned;
import fettle.machine.trials.Trial;
import fettle.machine.trials.Trials;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What of a book may be seen.
 *
 * @param files its texts, those of held-back changes taken out
 * @param book the book without the changes held back
 * @param parts parts of the changes that are left
 * @param trials trials that are left
 * @param held what else is held back
 * @param left what was left out, each with why; for the owner alone
 * @param problems what keeps it from being read
 */
public record PublicBook(
    BookFiles files,
    Book book,
    List<MadePart> parts,
    Map<String, Trial> trials,
    Set<Held> held,
    List<String> left,
    List<Problem> problems) {

  /** Keeps its own copies. */
  public PublicBook {
    parts = List.copyOf(parts);
    trials = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(trials));
    held = Set.copyOf(held);
    left = List.copyOf(left);
    problems = List.copyOf(problems);
  }

  /** Takes out of a book what its owner holds back. */
  public static PublicBook of(BookFiles files, Book book) {
    List<String> left = new ArrayList<>();
    Map<String, Change> changes = changes(book, left);
    Map<String, String> texts = new TreeMap<>(files.texts());
    book.changes().keySet().stream()
        .filter(k -> !changes.containsKey(k))
        .forEach(k -> texts.remove("changes/" + k + ".yaml"));
    Book open = new Book(book.machine(), changes, book.shop(), book.recipes());
    Map<String, Trial> trials = trials(texts, book, open, left);
    changes
        .keySet()
        .removeIf(
            k ->
                k.startsWith(Learned.PREFIX)
                    && !trials.containsKey(k.substring(Learned.PREFIX.length())));
    Set<Held> held = held(book.shop());
    Parsed<List<MadePart>> parts = MadeParts.of(open);
    return new PublicBook(
        new BookFiles(texts),
        new Book(book.machine(), changes, book.shop(), book.recipes()),
        Optional.ofNullable(parts.value()).orElse(List.of()),
        held.contains(Held.TRIALS) ? Map.of() : trials,
        held,
        left,
        parts.problems());
  }

  /** A change that needs one that is held back is held back, too. */
  private static Map<String, Change> changes(Book book, List<String> left) {
    Map<String, Change> open = new LinkedHashMap<>();
    for (Change change : book.changes().values()) {
      Optional<String> closed =
          change.needs().stream().filter(n -> !open.containsKey(n)).findFirst();
      if (!change.values().flag("public")) {
        left.add(change.key() + ": not public");
      } else if (closed.isPresent()) {
        left.add(change.key() + ": it needs " + closed.get() + ", which is held back");
      } else {
        open.put(change.key(), change);
      }
    }
    return open;
  }

  private static Set<Held> held(Optional<Values> shop) {
    return shop.map(s -> s.texts("hold back")).orElse(List.of()).stream()
        .flatMap(w -> Held.of(w).stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** A trial is left out if it proves, or can only be read with, a change that is held back. */
  private static Map<String, Trial> trials(
      Map<String, String> texts, Book book, Book open, List<String> left) {
    Map<String, Trial> trials = new LinkedHashMap<>();
    for (String path : List.copyOf(texts.keySet())) {
      if (!path.startsWith("trials/") || !path.endsWith(".yaml")) {
        continue;
      }
      String csv = path.substring(0, path.length() - ".yaml".length()) + ".csv";
      Map<String, String> one = new TreeMap<>(Map.of(path, texts.getOrDefault(path, "")));
      Optional.ofNullable(texts.get(csv)).ifPresent(t -> one.put(csv, t));
      Parsed<Map<String, Trial>> read = Trials.read(new BookFiles(one), open);
      if (read.value() == null) {
        boolean sound = Trials.read(new BookFiles(one), book).value() != null;
        left.add(
            path
                + (sound
                    ? ": it is of a change that is held back"
                    : ": it cannot be read; see 'fettle prove'"));
        texts.remove(path);
        texts.remove(csv);
      } else {
        trials.putAll(read.value());
      }
    }
    return trials;
  }
}
