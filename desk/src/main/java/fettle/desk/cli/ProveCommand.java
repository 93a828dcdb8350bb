package fettle.desk.cli;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Nearest;
import fettle.machine.text.Parsed;
import fettle.machine.trials.Adjusting;
import fettle.machine.trials.Agreement;
import fettle.machine.trials.Proof;
import fettle.machine.trials.Told;
import fettle.machine.trials.Trial;
import fettle.machine.trials.Trials;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code fettle prove}: what the trials of a book say. */
final class ProveCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "prove",
            "Evaluates the trials of a book: figures with their uncertainty, good, not good or cannot",
            "tell, what to adjust, and how they meet the forecast. Exit status 1 if a figure is not",
            "good.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(Options.many("TRIAL", "Trials by their file names; all if none is named."));
    spec.addOption(Options.flag("--json", "Write JSON, as docs/prove.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    BookFiles files = Books.files(given.word(0));
    Book book = Books.book(files);
    Told told = Told.of(chosen(trials(files, book), given.words(1)), book);
    if (!told.problems().isEmpty()) {
      throw Failure.input(told.problems());
    }
    List<Proof> proofs = List.copyOf(told.proofs().values());
    Optional<Adjusting> adjusting = adjusting(book, proofs);
    if (given.on("--json")) {
      terminal.out().println(ProveJson.text(told, Agreement.of(proofs), adjusting));
    } else {
      TextProof text = new TextProof(terminal);
      text.print(proofs);
      text.waiting(told.waiting());
      Agreement.of(proofs).ifPresent(text::print);
      adjusting.ifPresent(text::print);
    }
    return proofs.stream().anyMatch(Proof::notGood) ? ExitStatus.STOP : ExitStatus.DONE;
  }

  private static Optional<Adjusting> adjusting(Book book, List<Proof> proofs) {
    try {
      return Trials.state(book, Optional.empty()).machine().flatMap(m -> Adjusting.of(m, proofs));
    } catch (IllegalArgumentException e) {
      throw Failure.input("machine.yaml: " + e.getMessage());
    }
  }

  private static Map<String, Trial> trials(BookFiles files, Book book) {
    Parsed<Map<String, Trial>> trials = Trials.read(files, book);
    return trials.orThrow(() -> Failure.input(trials.problems()));
  }

  private static List<Trial> chosen(Map<String, Trial> trials, List<String> words) {
    if (trials.isEmpty()) {
      throw Failure.input(
          "this book has no trials; describe one in trials/NAME.yaml and put its readings in"
              + " trials/NAME.csv");
    }
    if (words.isEmpty()) {
      return List.copyOf(trials.values());
    }
    List<Trial> chosen = new ArrayList<>();
    for (String word : words.stream().distinct().toList()) {
      Trial trial = trials.get(word);
      if (trial == null) {
        String hint = Nearest.hint(word, trials.keySet());
        throw Failure.input(
            "there is no trial '"
                + word
                + "' in this book; it has: "
                + String.join(", ", trials.keySet())
                + (hint.isEmpty() ? "" : ". " + hint));
      }
      chosen.add(trial);
    }
    return chosen;
  }
}
