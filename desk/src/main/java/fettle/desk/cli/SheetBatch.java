package fettle.desk.cli;

import fettle.machine.made.MadePart;
import fettle.sheets.Assembly;
import fettle.sheets.BesideParts;
import fettle.sheets.PlanFiles;
import fettle.sheets.page.Heads;
import fettle.sheets.revision.Revision;
import fettle.sheets.revision.Revisions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Draws many sheets into one folder and keeps the list of their revisions. */
final class SheetBatch {

  /**
   * One sheet of the batch.
   *
   * @param revision the revision that is out
   * @param title what it shows
   * @param outcome what was done
   * @param files names of its files
   * @param faults what is wrong with it
   */
  record Done(
      Revision revision, String title, Outcome outcome, List<String> files, List<String> faults) {
    Done {
      files = List.copyOf(files);
      faults = List.copyOf(faults);
    }
  }

  /** What was done with a sheet. */
  enum Outcome {
    NEW("first issue"),
    REVISED("changed, new revision"),
    REWRITTEN("unchanged, files were missing"),
    UNCHANGED("unchanged");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  private static final String RECORD = "revisions.csv";

  private final Path folder;
  private final Heads heads;
  private final Terminal terminal;
  private final List<Done> done = new ArrayList<>();
  private Revisions revisions;

  SheetBatch(Path folder, Heads heads, Terminal terminal) {
    this.folder = folder;
    this.heads = heads;
    this.terminal = terminal;
    this.revisions = record(folder.resolve(RECORD));
  }

  private static Revisions record(Path file) {
    try {
      return Files.exists(file)
          ? Revisions.parse(Files.readString(file))
          : new Revisions(List.of());
    } catch (IOException e) {
      throw Failure.input(file + " cannot be read: " + e.getMessage());
    } catch (IllegalArgumentException e) {
      throw Failure.input(file + ", " + e.getMessage());
    }
  }

  List<Done> done() {
    return done;
  }

  int faults() {
    return done.stream().mapToInt(d -> d.faults().size()).sum();
  }

  /** Draws parts one after the other and says how far it is. */
  void parts(List<MadePart> parts) {
    long start = System.nanoTime();
    for (int i = 0; i < parts.size(); i++) {
      MadePart part = parts.get(i);
      String sheet = part.change() + "/" + part.key();
      String title = part.recipe().heading().title();
      sheet(sheet, title, part.content(), PlanFiles.ENDINGS, h -> PlanFiles.of(part.recipe(), h));
      double each = (System.nanoTime() - start) / 1e9 / (i + 1);
      progress(i + 1, parts.size(), each * (parts.size() - i - 1));
    }
  }

  /** Draws an assembly sheet. */
  void assembly(Assembly assembly) {
    String sheet = assembly.change().key() + "/assembly";
    sheet(
        sheet, assembly.change().title(), assembly.content(), PlanFiles.ON_PAPER, assembly::files);
    progress(1, 1, 0);
  }

  /** Draws a sheet that shows no single part. */
  void beside(String change, BesideParts one) {
    sheet(change + "/" + one.name(), one.title(), one.content(), PlanFiles.ON_PAPER, one.draw());
    progress(1, 1, 0);
  }

  /** Draws one sheet, unless what is out shows the same already. */
  void sheet(
      String sheet,
      String title,
      String content,
      List<String> endings,
      java.util.function.Function<Heads, PlanFiles> draw) {
    String digest =
        Revisions.digest(content + '\n' + heads.owner() + heads.licence() + heads.angle());
    boolean known = revisions.current(sheet).isPresent();
    Revision due = revisions.due(sheet, digest, heads.date());
    boolean same = revisions.all().contains(due);
    List<String> names = endings.stream().map(e -> sheet + "." + e).toList();
    boolean there = names.stream().allMatch(n -> Files.exists(folder.resolve(n)));
    if (same && there) {
      done.add(new Done(due, title, Outcome.UNCHANGED, names, List.of()));
      return;
    }
    PlanFiles files = drawn(sheet, draw, heads.revised(due.index(), due.date()));
    for (String ending : endings) {
      byte[] bytes = files.bytes().get(ending);
      if (bytes != null) {
        Pages.write(folder.resolve(sheet + "." + ending), bytes);
      }
    }
    revisions = revisions.with(due);
    Pages.write(folder.resolve(RECORD), revisions.text());
    Outcome outcome = same ? Outcome.REWRITTEN : known ? Outcome.REVISED : Outcome.NEW;
    done.add(new Done(due, title, outcome, names, files.faults()));
  }

  private static PlanFiles drawn(
      String sheet, java.util.function.Function<Heads, PlanFiles> draw, Heads heads) {
    try {
      return draw.apply(heads);
    } catch (IllegalArgumentException e) {
      throw Failure.notComputed(sheet + " cannot be drawn: " + e.getMessage());
    }
  }

  private void progress(int now, int all, double left) {
    Done last = done.get(done.size() - 1);
    terminal
        .err()
        .printf(
            Locale.ROOT,
            "%d of %d  %s  revision %s, %s%s%n",
            now,
            all,
            last.revision().sheet(),
            last.revision().index(),
            last.outcome().words(),
            left >= 1 ? ", about " + Math.round(left) + " s left" : "");
    last.faults().forEach(f -> terminal.err().println("  " + f));
  }

  /** Writes the list of revisions. */
  void finish() {
    Pages.write(folder.resolve(RECORD), revisions.text());
  }

  String summary() {
    long drawn = done.stream().filter(d -> d.outcome() != Outcome.UNCHANGED).count();
    return Words.counted(done.size(), "sheet")
        + ", "
        + drawn
        + " drawn, "
        + (done.size() - drawn)
        + " unchanged";
  }
}
