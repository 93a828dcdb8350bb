package fettle.machine.trials;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Reading;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Nearest;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.Place;
import fettle.machine.text.Problem;
import fettle.machine.text.Quantity;
import fettle.machine.text.YamlReader;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The trials of a book. */
public final class Trials {

  private static final String FOLDER = "trials/";

  private Trials() {}

  /** Reads all trials of a book, or says everything that is wrong with them. */
  public static Parsed<Map<String, Trial>> read(BookFiles files, Book book) {
    List<Problem> problems = new ArrayList<>();
    Map<String, Trial> trials = new LinkedHashMap<>();
    for (Map.Entry<String, String> file : files.texts().entrySet()) {
      String path = file.getKey();
      if (path.startsWith(FOLDER) && path.endsWith(".yaml")) {
        String name = path.substring(FOLDER.length(), path.length() - ".yaml".length());
        String readings = files.texts().get(FOLDER + name + ".csv");
        Trial trial = new One(book, path, name, problems).read(file.getValue(), readings);
        if (trial != null) {
          trials.put(name, trial);
        }
      } else if (path.startsWith(FOLDER)) {
        String yaml = path.substring(0, path.length() - ".csv".length()) + ".yaml";
        if (!files.texts().containsKey(yaml)) {
          String remedy = "Describe the trial in " + yaml + ".";
          problems.add(
              new Problem(
                  Place.file(path), "", "readings without a trial", "a file " + yaml, remedy));
        }
      }
    }
    return problems.isEmpty() ? Parsed.good(trials) : Parsed.bad(problems);
  }

  /** Reads one trial. */
  private record One(Book book, String path, String name, List<Problem> problems) {

    @Nullable Trial read(String text, @Nullable String readings) {
      int before = problems.size();
      if (!name.matches("[a-z0-9][a-z0-9-]{0,59}")) {
        String expected = "small letters, digits and hyphens, such as cross-slide.yaml";
        add(Place.file(path), "", "the file name", expected, "Rename the file.");
      }
      Parsed<Node> tree = YamlReader.read(path, text);
      problems.addAll(tree.problems());
      Node node = tree.value();
      if (node == null) {
        return null;
      }
      Reading reading = new Reading(Dictionary.standard());
      Values values = reading.read("trial", node);
      problems.addAll(reading.problems());
      if (problems.size() > before) {
        return null;
      }
      Kind kind = Kind.of(values.needText("kind"));
      Optional<Values> instrument = instrument(values, kind);
      names(values);
      Evaluations.needs(kind).forEach(key -> needed(values, key, kind));
      figure(values);
      Readings table = table(kind, readings);
      if (problems.size() > before || instrument.isEmpty() || table == null) {
        return null;
      }
      Trial trial = new Trial(name, kind, values, instrument.get(), table);
      Limits.problems(trial, problems);
      return problems.size() > before ? null : trial;
    }

    private void needed(Values values, String key, Kind kind) {
      if (!values.has(key)) {
        String meaning =
            Dictionary.standard().shape("trial").values().stream()
                .filter(r -> r.key().equals(key))
                .map(r -> r.meaning())
                .findFirst()
                .orElse(key);
        String remedy = "A trial of the kind '" + kind.word() + "' needs it.";
        add(values.at(), key, "no " + key, meaning, remedy);
      }
    }

    /** A figure of the owner's own choice needs a unit we know, and a doubt in it. */
    private void figure(Values values) {
      String symbol = values.text("unit").orElse("");
      Optional<Unit> unit = Unit.parse(symbol);
      if (values.has("unit") && unit.isEmpty()) {
        add(values.place("unit"), "unit", "'" + symbol + "'", "a unit such as µm, N or rpm", "");
      } else if (unit.isPresent() && values.has("reading doubt")) {
        String text = values.needText("reading doubt");
        try {
          if (Quantity.parse(text, unit.get().dimension(), unit.get()).value() < 0) {
            throw new IllegalArgumentException();
          }
        } catch (Quantity.NotOne | IllegalArgumentException e) {
          String expected = "a doubt of 0 or more in " + symbol;
          add(values.place("reading doubt"), "reading doubt", "'" + text + "'", expected, "");
        }
      }
    }

    private @Nullable Readings table(Kind kind, @Nullable String text) {
      String file = FOLDER + name + ".csv";
      if (text == null) {
        String columns =
            String.join(", ", kind.columns().stream().map(Column::expectation).toList());
        add(Place.file(file), "", "no such file", "the readings, with the columns " + columns, "");
        return null;
      }
      Parsed<Readings> readings = Readings.read(file, text, kind);
      problems.addAll(readings.problems());
      return readings.value();
    }

    private Optional<Values> instrument(Values values, Kind kind) {
      String wanted = values.needText("instrument");
      Map<String, Values> known = book.shop().map(s -> s.map("instruments")).orElse(Map.of());
      Values found = known.get(wanted);
      if (found == null) {
        unknown(values, "instrument", wanted, "an instrument of shop.yaml", known.keySet());
        return Optional.empty();
      }
      if (!kind.doubt().isEmpty() && !found.has(kind.doubt())) {
        String found2 = "the instrument '" + wanted + "' without a " + kind.doubt();
        String remedy = "Add '" + kind.doubt() + ": …' to it in shop.yaml.";
        add(values.place("instrument"), "instrument", found2, "one whose doubt is stated", remedy);
        return Optional.empty();
      }
      return Optional.of(found);
    }

    private void names(Values values) {
      Optional<String> change = values.text("proves");
      change
          .filter(c -> !book.changes().containsKey(c))
          .ifPresent(
              c -> unknown(values, "proves", c, "a change of this book", book.changes().keySet()));
      Optional<Machine> machine = state(book, change).machine();
      if (machine.isPresent()) {
        Machine m = machine.get();
        one(values, "dial", m.dials().keySet());
        one(values, "train", m.trains().keySet());
        one(values, "member", m.members().keySet());
      }
    }

    private void one(Values values, String key, Collection<String> known) {
      values
          .text(key)
          .filter(n -> !known.contains(n))
          .ifPresent(n -> unknown(values, key, n, "a " + key + " of the lathe as tested", known));
    }

    private void unknown(
        Values values, String key, String found, String expected, Collection<String> known) {
      String remedy = Nearest.hint(found, known);
      add(values.place(key), key, "'" + found + "'", expected, remedy);
    }

    private void add(Place at, String key, String found, String expected, String remedy) {
      problems.add(new Problem(at, key, found, expected, remedy));
    }
  }

  /**
   * Returns the lathe as a trial tested it, without what the trial itself taught: a measurement is
   * held against what was foretold without it.
   */
  public static State state(Book book, Trial trial) {
    State tested = state(book, trial.values().text("proves"));
    String own = Learned.PREFIX + trial.name();
    return tested.changes().contains(own)
        ? State.of(
            book, "as tested", tested.changes().stream().filter(c -> !c.equals(own)).toList())
        : tested;
  }

  /** Returns the lathe as it was tested: as it stands, with the change that is proved. */
  public static State state(Book book, Optional<String> change) {
    List<String> keys = new ArrayList<>(book.keys(s -> s.done()));
    change
        .filter(c -> book.changes().containsKey(c))
        .ifPresent(c -> keys.addAll(book.withNeeds(c)));
    return State.of(book, "as tested", keys.stream().distinct().toList());
  }
}
