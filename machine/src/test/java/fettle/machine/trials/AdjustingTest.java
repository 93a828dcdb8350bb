package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is adjusted from all trials together is the best that screws and shims can do. */
final class AdjustingTest {

  private static final Book BOOK =
      Book.read(DemoTrialsTest.files()).orThrow(IllegalStateException::new);
  private static final List<Proof> PROOFS = proofs(DemoTrialsTest.files(), BOOK);

  private static List<Proof> proofs(BookFiles files, Book book) {
    List<Proof> proofs = new ArrayList<>();
    Trials.read(files, book)
        .orThrow(IllegalStateException::new)
        .forEach(
            (name, trial) -> {
              if (List.of("bed-level", "spindle-bar", "two-collars", "facing", "tailstock")
                  .contains(name)) {
                proofs.add(Evaluations.of(trial, book));
              }
            });
    return proofs;
  }

  private static Machine lathe(Book book) {
    return Trials.state(book, Optional.empty()).machine().orElseThrow();
  }

  @Test
  void noNeighbouringMoveOfOneAdjusterIsBetter() {
    Machine machine = lathe(BOOK);
    Adjusting plan = Adjusting.of(machine, PROOFS).orElseThrow();
    assertThat(plan.rows()).hasSize(7);
    double best = objective(machine, plan, Map.of());
    Map<String, Double> none = new LinkedHashMap<>();
    plan.steps().forEach(s -> none.put(s.adjuster(), -s.move()));
    assertThat(objective(machine, plan, none)).isGreaterThan(4 * best);
    for (String name : machine.values().map("adjusters").keySet()) {
      Adjuster adjuster = adjuster(machine, name);
      double set =
          plan.steps().stream()
              .filter(s -> s.adjuster().equals(name))
              .mapToDouble(Adjusting.Step::move)
              .sum();
      assertThat(adjuster.allowed()).anyMatch(m -> Math.abs(m - set) < 1e-9);
      for (double other : adjuster.allowed()) {
        assertThat(objective(machine, plan, Map.of(name, other - set)))
            .as(name + " at " + other)
            .isGreaterThanOrEqualTo(best - 1e-9);
      }
    }
  }

  private static Adjuster adjuster(Machine machine, String name) {
    return new Adjuster(
        name, Objects.requireNonNull(machine.values().map("adjusters").get(name), name));
  }

  private static double objective(Machine machine, Adjusting plan, Map<String, Double> more) {
    double sum = 0;
    for (Adjusting.Row row : plan.rows()) {
      double left = row.after() - row.target();
      for (Map.Entry<String, Double> m : more.entrySet()) {
        left += m.getValue() * adjuster(machine, m.getKey()).effect(row.figure());
      }
      double over = 2 * left / (row.limit().high() - row.limit().low());
      sum += over * over;
    }
    return sum;
  }

  /** By hand: 26 um too high over 200 mm, feet 130 mm apart: 17 um; of the shims, 20 um. */
  @Test
  void leversAreThoseOfTheLathe() {
    Machine machine = lathe(BOOK);
    Adjusting plan = Adjusting.of(machine, PROOFS).orElseThrow();
    assertThat(plan.steps().get(1).words()).isEqualTo("shim 0.020 mm (20 µm)");
    Measured height = figure(BarTrial.VERTICAL);
    assertThat(adjuster(machine, "headstock rear shim").effect(height))
        .isCloseTo(-200.0 / 130, within(1e-12));
    Measured taper = figure(CollarTrial.TAPER);
    assertThat(adjuster(machine, "headstock screw").effect(taper))
        .isCloseTo(2 * 100.0 / 140, within(1e-12));
    // A foot lifted by 0.01 mm, half of it followed, over 90 mm: 0.0556 mm in a metre.
    assertThat(adjuster(machine, "bed foot").effect(figure(BedTrial.TWIST)) * 0.01)
        .isCloseTo(-0.0556, within(1e-4));
  }

  private static Measured figure(String name) {
    return PROOFS.stream()
        .flatMap(p -> p.lines().stream())
        .map(Proof.Line::figure)
        .filter(f -> f.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aShimThatIsNoneIsSaid() {
    Map<String, String> texts = new LinkedHashMap<>(DemoTrialsTest.files().texts());
    texts.computeIfPresent(
        "machine.yaml", (k, t) -> t.replace("shims: [10 µm, 20 µm, 50 µm]", "shims: [thin]"));
    Book book = Book.read(new BookFiles(texts)).orThrow(IllegalStateException::new);
    assertThatThrownBy(() -> Adjusting.of(lathe(book), PROOFS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("adjusters.tailstock shim.shims: found 'thin'");
  }
}
