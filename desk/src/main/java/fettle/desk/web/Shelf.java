package fettle.desk.web;

import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The folder of a book. It is looked at anew for every page, so that what a text editor wrote shows
 * at once; what was computed is kept for as long as the texts stay the same. Readers that ask while
 * somebody looks share the next look.
 */
final class Shelf {

  private static final String NAME =
      "machine\\.yaml|shop\\.yaml|(changes|parts)/[a-z0-9][a-z0-9-]{0,59}\\.yaml"
          + "|trials/[a-z0-9][a-z0-9-]{0,59}\\.(yaml|csv)";

  private final Path folder;
  private final History history;
  private final Object saving = new Object();
  private final Looks<Look> looks = new Looks<>(this::look);
  private @Nullable Look last;

  Shelf(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
    this.history = new History(store());
  }

  private Path store() {
    return folder.resolve(".history");
  }

  History history() {
    return history;
  }

  /** Returns the folder for what took long to reckon and can be reckoned again. */
  Path reckoned() {
    return folder.resolve(".reckoned");
  }

  /** Returns the folder of packs that were issued. */
  Path issued() {
    return folder.resolve(".issued");
  }

  /**
   * What was seen at the last look.
   *
   * @param opened the book
   * @param stamps the files' stamps, if they vouch for the texts
   */
  private record Look(Opened opened, Optional<Stamps> stamps) {}

  /** Returns the book as it is on the disk now. */
  Opened open() {
    return looks.next().opened();
  }

  /** One look at a time. */
  private Look look() {
    Look seen = look(last);
    last = seen;
    return seen;
  }

  private Look look(@Nullable Look before) {
    Instant now = Instant.now();
    Optional<Stamps> stamps = Stamps.of(folder).filter(s -> s.settledAt(now));
    if (before != null && stamps.isPresent() && before.stamps().equals(stamps)) {
      return new Look(before.opened(), stamps);
    }
    Parsed<BookFiles> read = BookFiles.read(folder);
    BookFiles files = read.orThrow(() -> Refused.unsound(read.problems()));
    Opened opened =
        before != null && before.opened().files().equals(files)
            ? before.opened()
            : Opened.of(files);
    return new Look(opened, stamps);
  }

  /**
   * Writes texts into the book, all seen from one state of it: if the files named are no longer as
   * they were then, nothing is written.
   *
   * @param seen the book as the owner saw it
   * @param texts new text of each file; an empty one removes a change
   * @param why one line for the history
   * @param backTo version that this brings back; empty if it is a new one
   */
  void save(Opened seen, Map<String, String> texts, String why, String backTo) {
    synchronized (saving) {
      SavingTurn turn = SavingTurn.take(store());
      try {
        Opened now = open();
        texts.keySet().forEach(file -> refuseOvertaken(file, now, seen));
        List.of("", "changes", "parts", "trials")
            .forEach(sub -> WholeFile.sweep(folder.resolve(sub)));
        history.keep(now.files(), "found in the folder", "");
        writeAll(now, texts, why, backTo);
      } finally {
        turn.close();
      }
    }
  }

  private static void refuseOvertaken(String file, Opened now, Opened seen) {
    if (!file.matches(NAME)) {
      throw Refused.wrong("'" + file + "' is no file of a book.", "Go back to the book.");
    }
    if (!now.mark(file).equals(seen.mark(file))) {
      throw Refused.overtaken(
          file + " was changed by another program in the meantime; nothing was written.",
          "Look at the book as it is now and make your edit again.");
    }
  }

  /** Writes all of the texts and their version, or, if the disk refuses one, none of them. */
  private void writeAll(Opened now, Map<String, String> texts, String why, String backTo) {
    Map<String, String> written = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> file : texts.entrySet()) {
        write(file.getKey(), file.getValue());
        written.put(file.getKey(), file.getValue());
      }
      history.keep(open().files(), why, backTo);
    } catch (Refused refused) {
      putBack(now, written, refused);
      throw refused;
    }
  }

  /** Puts back what stood there before, except where somebody else has written since. */
  private void putBack(Opened before, Map<String, String> written, Refused refused) {
    try {
      for (Map.Entry<String, String> file : written.entrySet()) {
        String name = file.getKey();
        if (open().text(name).orElse("").equals(file.getValue())) {
          write(name, before.text(name).orElse(""));
        }
      }
    } catch (Refused again) {
      throw Refused.partly(
          "Not all could be written, and what was written could not be put back ("
              + String.join(", ", written.keySet())
              + "): "
              + refused.words());
    }
  }

  /** Brings back the texts of a version. */
  void restore(Opened seen, String version, String why) {
    Map<String, String> then = history.texts(version);
    Map<String, String> texts = new LinkedHashMap<>();
    Set<String> names = new LinkedHashSet<>(then.keySet());
    names.addAll(seen.files().texts().keySet());
    for (String name : names) {
      String text = then.getOrDefault(name, "");
      if (!text.equals(seen.files().texts().get(name))) {
        texts.put(name, text);
      }
    }
    save(seen, texts, why, version);
  }

  /** Brings back what stood before the last saved version. */
  void undo(Opened seen) {
    synchronized (saving) {
      history.keep(seen.files(), "found in the folder", "");
      List<History.Version> versions = history.versions();
      String before =
          history
              .before(versions)
              .orElseThrow(
                  () -> Refused.missing("There is nothing to undo.", "Look at the history."));
      restore(seen, before, "undone: " + versions.get(0).what());
    }
  }

  private void write(String name, String text) {
    Path file = folder.resolve(name);
    try {
      if (Files.isSymbolicLink(file) || Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
        throw Refused.wrong(name + " is a link or a folder.", "Put an ordinary file there.");
      }
      List<String> way = List.of(name.split("/"));
      Path parent = way.size() > 1 ? folder.resolve(way.get(0)) : folder;
      if (way.size() > 1 && Files.isSymbolicLink(parent)) {
        String words = "The folder " + way.get(0) + " is a link.";
        throw Refused.wrong(words, "Put an ordinary folder there.");
      }
      if (text.isEmpty()) {
        Files.deleteIfExists(file);
      } else {
        Files.createDirectories(parent);
        WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw Refused.unwritten(name + " could not be written", e);
    }
  }
}
