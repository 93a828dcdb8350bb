package fettle.desk.cli;

import fettle.desk.publish.PublicBook;
import fettle.desk.publish.Site;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code fettle publish}: a book as pages that any web host serves, or a browser from disk. */
final class PublishCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "publish",
            "The book as a folder of pages that needs no server and no network: the lathe in three",
            "dimensions, changes, drawings, packs, proofs, figures with their workings. A change with",
            "'public: no' is left out and leaves no trace; 'hold back: [prices, ...]' in shop.yaml",
            "holds back more. DIR should hold nothing else; what an earlier publishing wrote there and",
            "this one does not is taken away.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addOption(Options.text("--out", "DIR", "The folder to write to; it must be given."));
    spec.addOption(Options.text("--date", "DATE", "Date of issue, as 2026-01-31; else today."));
    spec.addOption(Options.flag("--json", "Write JSON, as docs/publish.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    String out = given.option("--out", "");
    if (out.isEmpty()) {
      throw Failure.input("--out DIR is missing: the folder the pages are written to");
    }
    Path folder = Books.folder(out);
    BookFiles files = Books.files(given.word(0));
    Book book = Books.book(files);
    PublicBook open = PublicBook.of(files, book);
    if (!open.problems().isEmpty()) {
      throw Failure.input(open.problems());
    }
    List<String> before = before(folder);
    Site site = site(open, Dates.given("--date", given.option("--date", "")), folder, terminal);
    site.files().forEach((name, bytes) -> Pages.write(Pages.within(folder, name), bytes));
    before.stream().filter(n -> !site.files().containsKey(n)).forEach(n -> remove(folder, n));
    if (given.on("--json")) {
      terminal.out().println(json(open, site));
    } else {
      open.left().forEach(l -> terminal.out().println("held back  " + l));
      long size = site.files().values().stream().mapToLong(b -> b.length).sum();
      terminal
          .out()
          .printf(
              Locale.ROOT,
              "%d files, %.1f MB in %s; open %s/index.html.%n",
              site.files().size(),
              size / 1e6,
              out,
              out);
    }
    site.faults().forEach(f -> terminal.err().println(f));
    return site.faults().isEmpty() ? ExitStatus.DONE : ExitStatus.STOP;
  }

  private static Site site(PublicBook open, String date, Path folder, Terminal terminal) {
    int all = open.book().changes().size();
    long start = System.nanoTime();
    int[] count = {0};
    try {
      return Site.of(
          open,
          date,
          name -> standing(Pages.within(folder, name)),
          key -> {
            count[0]++;
            double each = (System.nanoTime() - start) / 1e9 / count[0];
            long left = Math.round(each * (all - count[0]));
            terminal
                .err()
                .println(
                    count[0]
                        + " of "
                        + all
                        + "  "
                        + key
                        + (left >= 1 ? ", about " + left + " s left" : ""));
          });
    } catch (IllegalArgumentException e) {
      throw Failure.notComputed(String.valueOf(e.getMessage()));
    }
  }

  private static Optional<String> standing(Path file) {
    try {
      return Files.isRegularFile(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      throw Failure.input(file + " cannot be read: " + e.getMessage());
    }
  }

  /** Returns what an earlier publishing wrote; a folder of anything else is not written to. */
  private static List<String> before(Path folder) {
    Optional<String> list = standing(folder.resolve(Site.LIST));
    if (list.isPresent()) {
      return list.get().lines().filter(l -> !l.isBlank()).toList();
    }
    try (Stream<Path> there = Files.exists(folder) ? Files.list(folder) : Stream.empty()) {
      if (there.findAny().isPresent()) {
        throw Failure.input(
            folder + " holds other files; publish into an empty folder, or one published before");
      }
    } catch (IOException e) {
      throw Failure.input(folder + " cannot be read: " + e.getMessage());
    }
    return List.of();
  }

  /** Takes away one file that was published before, never anything outside of the folder. */
  private static void remove(Path folder, String name) {
    Path file = Pages.within(folder, name);
    try {
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        Files.delete(file);
        Path parent = file.getParent();
        while (parent != null && !parent.equals(folder.toAbsolutePath().normalize())) {
          try (Stream<Path> inside = Files.list(parent)) {
            if (inside.findAny().isPresent()) {
              return;
            }
          }
          Files.delete(parent);
          parent = parent.getParent();
        }
      }
    } catch (IOException e) {
      throw Failure.notComputed("cannot take away " + file + ": " + e.getMessage());
    }
  }

  private static String json(PublicBook open, Site site) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle publish 1");
          g.writeArrayFieldStart("changes");
          for (String key : open.book().changes().keySet()) {
            g.writeString(key);
          }
          g.writeEndArray();
          g.writeArrayFieldStart("heldBack");
          for (String left : open.left()) {
            g.writeString(left);
          }
          g.writeEndArray();
          g.writeArrayFieldStart("files");
          for (String file : site.files().keySet()) {
            g.writeString(file);
          }
          g.writeEndArray();
          g.writeArrayFieldStart("faults");
          for (String fault : site.faults()) {
            g.writeString(fault);
          }
          g.writeEndArray();
        });
  }
}
