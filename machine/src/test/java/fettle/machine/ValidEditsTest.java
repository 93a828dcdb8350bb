package fettle.machine;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Row;
import fettle.machine.dictionary.Samples;
import fettle.machine.dictionary.Slots;
import fettle.machine.dictionary.Slots.Slot;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Random edits that a book may well hold are accepted, and every question can be asked of it. */
class ValidEditsTest {

  private static final int BOOKS = 1_500;

  @Test
  void validEditsAreAcceptedAndAnswered() {
    String machine = SampleBooks.text(SampleBooks.STARTER, "machine.yaml");
    List<Slot> slots = Slots.of("machine", SampleBooks.tree(machine));
    List<String> wrong = new ArrayList<>();
    for (int n = 0; n < BOOKS && wrong.size() < 10; n++) {
      Random random = new Random(n * 31L + 5);
      String edited =
          random.nextBoolean() ? changed(machine, slots, random) : added(machine, random);
      Map<String, String> texts = new TreeMap<>(Map.of("machine.yaml", edited));
      Parsed<Book> parsed = Book.checked(new BookFiles(texts));
      Book book = parsed.value();
      if (book == null) {
        wrong.add("book " + n + " is refused: " + parsed.problems());
      } else if (n % 4 == 0) {
        answered(n, book, wrong);
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static void answered(int number, Book book, List<String> wrong) {
    try {
      State state = State.of(book, "", List.of());
      for (Figure figure : Topics.study(state.machine().orElseThrow(), book.shop()).figures()) {
        double value = figure.working().map(Working::value).orElse(0.0);
        if (!Double.isFinite(value)) {
          wrong.add("book " + number + ": " + figure.id() + " is " + value);
        }
      }
    } catch (RuntimeException e) {
      wrong.add(
          "book " + number + " throws " + e + " at " + List.of(e.getStackTrace()).subList(0, 4));
    }
  }

  /** Replaces one value by another that its row takes. */
  private static String changed(String text, List<Slot> slots, Random random) {
    List<Slot> free =
        slots.stream()
            .filter(Slot::plain)
            .filter(s -> !s.row().type().startsWith("ref:"))
            .filter(s -> !s.row().key().equals("kind") && !s.path().startsWith("banjo.slot"))
            .toList();
    Slot slot = free.get(random.nextInt(free.size()));
    String[] lines = text.split("\n", -1);
    int line = slot.node().at().line() - 1;
    int column = slot.node().at().column() - 1;
    int length = ((Node.Scalar) slot.node()).text().length();
    lines[line] =
        lines[line].substring(0, column)
            + new Samples(random).good(slot.row(), "bed")
            + lines[line].substring(column + length);
    return String.join("\n", lines);
  }

  /** Adds a member with keys it need not have, and a whole block. */
  private static String added(String text, Random random) {
    Samples samples = new Samples(random);
    StringBuilder member =
        new StringBuilder("  new part %d: {seat: ".formatted(random.nextInt(99)));
    List<String> seats = List.of("bolted", "sliding", "turning");
    member.append(samples.block("seat/" + seats.get(random.nextInt(3)), "saddle"));
    for (Row row : Dictionary.standard().shape("member").values()) {
      if (!row.required() && random.nextInt(3) == 0) {
        member.append(", ").append(row.key()).append(": ").append(samples.good(row, "bed"));
      }
    }
    member.append("}\n");
    String more = "\ncontrols: {switch: " + samples.block("control", "bed") + "}\n";
    return text.replaceFirst("members:\n", "members:\n" + member.toString().replace("\\", ""))
        + (random.nextBoolean()
            ? more
            : "\nspindle: " + samples.block("spindle", "spindle") + "\n");
  }
}
