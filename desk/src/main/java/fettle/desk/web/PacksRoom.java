package fettle.desk.web;

import fettle.desk.pack.Held;
import fettle.desk.pack.Issue;
import fettle.desk.pack.PackFiles;
import fettle.desk.pack.PackSource;
import fettle.desk.page.EnginePage;
import fettle.desk.page.Shell;
import fettle.desk.publish.PublicBook;
import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Change;
import fettle.machine.text.Nearest;
import fettle.machine.text.Parsed;
import fettle.machine.trials.Trial;
import fettle.machine.trials.Trials;
import fettle.sheets.page.Heads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Packs: made, downloaded and issued; and what would be published. */
final class PacksRoom {

  private PacksRoom() {}

  static EnginePage page(Visit visit, Path issued) {
    List<EnginePage.Section> sections = new ArrayList<>();
    for (Change change : visit.book().changes().values()) {
      sections.add(section(change, issued.resolve(change.key())));
    }
    sections.add(published(visit));
    return new EnginePage(
        visit.shell("packs", "order"),
        "All that one change needs, as one PDF to print, keep, share or sell. Making one takes some"
            + " seconds.",
        List.of(),
        "/packs",
        Map.of(),
        sections);
  }

  private static EnginePage.Section section(Change change, Path folder) {
    List<EnginePage.Block> blocks = new ArrayList<>();
    List<Issue> issues = issues(folder);
    blocks.add(
        new EnginePage.Words(
            "note",
            List.of(
                change.stage().word()
                    + (issues.isEmpty()
                        ? ", no pack issued yet"
                        : ", revision "
                            + issues.get(issues.size() - 1).index()
                            + " issued "
                            + issues.get(issues.size() - 1).date()))));
    String key = Visit.coded(change.key());
    blocks.add(
        new EnginePage.Links(
            List.of(
                new Shell.Link("/pack?key=" + key, "Download the pack as it would be issued now"),
                new Shell.Link("/change?key=" + key, "What the change does"))));
    blocks.add(
        new EnginePage.Form(
            "/pack",
            true,
            Map.of("key", change.key()),
            List.of(),
            List.of(new EnginePage.Button("issue", "Issue it: keep this revision", false))));
    return new EnginePage.Section(change.title(), change.key(), "", blocks);
  }

  private static List<Issue> issues(Path folder) {
    try {
      return standing(folder, "issues.csv").map(Issue::parse).orElse(List.of());
    } catch (IllegalArgumentException e) {
      return List.of();
    }
  }

  private static EnginePage.Section published(Visit visit) {
    PublicBook open =
        visit
            .opened()
            .once("public book", () -> PublicBook.of(visit.opened().files(), visit.book()));
    List<EnginePage.Row> rows = new ArrayList<>();
    for (Change change : visit.book().changes().values()) {
      boolean shown = open.book().changes().containsKey(change.key());
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  new EnginePage.Entry(change.title(), "/change?key=" + Visit.coded(change.key())),
                  EnginePage.Entry.of(shown ? "published" : "held back"),
                  EnginePage.Entry.of(
                      open.left().stream()
                          .filter(l -> l.startsWith(change.key() + ": "))
                          .map(l -> l.substring(change.key().length() + 2))
                          .findFirst()
                          .orElse("")))));
    }
    List<String> held = open.held().stream().map(Held::word).sorted().toList();
    return new EnginePage.Section(
        "what 'fettle publish' would show",
        "published",
        "",
        List.of(
            new EnginePage.Table(
                "Write 'public: no' into a change to hold it back; it then leaves no trace.",
                List.of("change", "is", "why"),
                rows),
            new EnginePage.Words(
                "",
                List.of(
                    held.isEmpty()
                        ? "Nothing else is held back. 'hold back: [prices, hours]' in shop.yaml"
                            + " holds back prices and hours; "
                            + String.join(", ", Held.words())
                            + " can be held back."
                        : "Held back besides: " + String.join(", ", held) + "."))));
  }

  /** Makes the pack that would be issued now, held against the last one issued. */
  static PackFiles made(Visit visit, Path issued) {
    String key = visit.asked("key");
    if (!visit.book().changes().containsKey(key)) {
      throw Refused.missing(
          "There is no such change in this book.",
          Nearest.hint(key, visit.book().changes().keySet()) + " Choose one from the list.");
    }
    Path folder = issued.resolve(key);
    Parsed<List<MadePart>> parts = MadeParts.of(visit.book(), List.of(key));
    Parsed<Map<String, Trial>> trials = Trials.read(visit.opened().files(), visit.book());
    String today = LocalDate.now(ZoneId.systemDefault()).toString();
    try {
      PackSource source =
          PackSource.of(
              visit.opened().files(),
              visit.book(),
              key,
              parts.orThrow(() -> Refused.unsound(parts.problems())),
              Optional.ofNullable(trials.value()).orElse(Map.of()),
              Heads.of(visit.book(), today),
              Set.of());
      return visit
          .opened()
          .once(
              "pack|" + key + "|" + today + "|" + standing(folder, "issues.csv"),
              () -> PackFiles.of(source, name -> standing(folder, name), name -> {}));
    } catch (IllegalArgumentException e) {
      throw Refused.wrong(
          "The pack cannot be made: " + e.getMessage() + ".", "Mend the change or its parts.");
    }
  }

  /** Keeps an issue beside the book, so that the next one is held against it. */
  static String issue(Visit visit, Path issued) {
    PackFiles made = made(visit, issued);
    String key = made.pack().source().change().key();
    Path folder = issued.resolve(key);
    for (String name : List.of("revisions.csv", "issues.csv", "pack.txt", "pack.pdf")) {
      byte[] bytes = Objects.requireNonNull(made.files().get(name));
      try {
        Files.createDirectories(folder);
        WholeFile.write(folder.resolve(name), bytes);
      } catch (IOException e) {
        throw Refused.disk(
            name + " could not be written: " + DiskWords.reason(e) + ". Issue the pack again.");
      }
    }
    return "/packs#" + Visit.coded(key);
  }

  private static Optional<String> standing(Path folder, String name) {
    Path file = folder.resolve(name);
    try {
      return Files.isRegularFile(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
