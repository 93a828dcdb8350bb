package fettle.desk.pack;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What an owner may hold back when a book is published. */
public enum Held {
  /** Prices and costs. */
  PRICES,
  /** The owner's own hours. */
  HOURS,
  /** Drawings. */
  SHEETS,
  /** Solids for other programs. */
  SOLIDS,
  /** Packs. */
  PACKS,
  /** Formulas with the numbers put in. */
  WORKINGS,
  /** Trials and their readings. */
  TRIALS;

  /** Returns the word a book writes. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns what a word means; empty if it means nothing. */
  public static Optional<Held> of(String word) {
    return Arrays.stream(values()).filter(h -> h.word().equals(word)).findFirst();
  }

  /** Returns all words. */
  public static Set<String> words() {
    return Arrays.stream(values())
        .map(Held::word)
        .collect(Collectors.toCollection(java.util.TreeSet::new));
  }
}
