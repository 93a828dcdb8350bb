package fettle.machine.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name somebody most likely meant. */
public final class Nearest {

  private Nearest() {}

  /** Returns the known name nearest to the one found, if one is near enough to be meant. */
  public static Optional<String> name(String found, Collection<String> known) {
    if (found.length() > 60) {
      return Optional.empty();
    }
    String best = null;
    int least = Math.max(1, found.length() / 3) + 1;
    for (String name : known) {
      if (Math.abs(name.length() - found.length()) >= least) {
        continue;
      }
      int distance = distance(found.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT), least);
      if (distance < least) {
        least = distance;
        best = name;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Returns {@code Did you mean 'name'?}, or nothing. */
  public static String hint(String found, Collection<String> known) {
    return name(found, known).map(n -> "Did you mean '" + n + "'?").orElse("");
  }

  /**
   * Counts insertions, removals and replacements of single letters (Levenshtein 1966); gives up
   * with the bound once the count must reach it.
   */
  private static int distance(String a, String b, int bound) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      int least = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
        least = Math.min(least, row[j]);
      }
      if (least >= bound) {
        return bound;
      }
    }
    return row[b.length()];
  }
}
