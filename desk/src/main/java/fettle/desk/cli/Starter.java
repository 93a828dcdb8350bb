package fettle.desk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The invented lathes a book may begin from. */
enum Starter {
  BENCH("bench", "first-dial", "a bench lathe in few lines, the shortest book"),
  MINI_METRIC("mini-metric", "round-travel", "90 mm centre height, plastic change gears, metric"),
  MINI_INCH("mini-inch", "cross-bearing", "3 1/2 in centre height, in inches"),
  FLAT_BELT("flat-belt", "direct-drive", "a nine-inch lathe of the 1950s with a countershaft"),
  TOOLROOM("toolroom", "lever-clamp", "150 mm centre height, geared head, feed box"),
  WATCHMAKER(
      "watchmaker", "half-millimetre-screw", "50 mm centre height, slide rest, no lead screw");

  private final String word;
  private final String change;
  private final String about;

  Starter(String word, String change, String about) {
    this.word = word;
    this.change = change;
    this.about = about;
  }

  /** Returns the starter of that word. */
  static Optional<Starter> of(String word) {
    return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
  }

  /** Returns the words of all starters. */
  static List<String> words() {
    return Arrays.stream(values()).map(Starter::word).toList();
  }

  String word() {
    return word;
  }

  /** Returns the name of its example change. */
  String change() {
    return change;
  }

  /** Returns what it is, in one line. */
  String about() {
    return about;
  }

  /** Returns the files of its book. */
  List<String> files() {
    return List.of("machine.yaml", "shop.yaml", "changes/" + change + ".yaml");
  }

  /** Returns the text of one of its files. */
  String text(String file) {
    String place = "/fettle/desk/starter/" + word + "/" + file;
    try (InputStream in = Starter.class.getResourceAsStream(place)) {
      if (in == null) {
        throw new IllegalStateException("the starter lathe '" + word + "' lacks " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
