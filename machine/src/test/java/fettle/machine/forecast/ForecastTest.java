package fettle.machine.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.SampleBooks;
import fettle.machine.state.Book;
import fettle.machine.state.Conflict;
import fettle.machine.state.State;
import fettle.machine.topics.Finding;
import fettle.machine.topics.RigidityStudy;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The demo's states side by side: each change alone, all, none, and between any two sets. */
class ForecastTest {

  private static final Book DEMO = SampleBooks.sound(SampleBooks.DEMO);

  private static State state(String... keys) {
    return state(List.of(keys));
  }

  private static State state(List<String> keys) {
    Set<String> all = new LinkedHashSet<>();
    keys.forEach(k -> all.addAll(DEMO.withNeeds(k)));
    return State.of(DEMO, "", List.copyOf(all));
  }

  private static Row row(Forecast forecast, String id) {
    return forecast.rows().stream()
        .filter(r -> r.figure().id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no figure " + id));
  }

  @TestFactory
  Stream<DynamicTest> eachChangeAloneMovesSomethingAndKeepsTheRest() {
    return DEMO.changes().keySet().stream()
        .map(
            key ->
                DynamicTest.dynamicTest(
                    key,
                    () -> {
                      Forecast forecast = Forecast.of(DEMO, state(), state(key));
                      assertThat(forecast.moved()).isNotEmpty();
                      assertThat(forecast.rows().size()).isGreaterThan(forecast.moved().size());
                      consistent(forecast);
                    }));
  }

  @Test
  void allAndNone() {
    State all = State.of(DEMO, "all", List.copyOf(DEMO.changes().keySet()));
    Forecast forecast = Forecast.of(DEMO, state(), all);
    consistent(forecast);
    assertThat(forecast.moved()).hasSizeGreaterThan(30);
    for (State same : List.of(state(), all)) {
      Forecast still = Forecast.of(DEMO, same, same);
      assertThat(still.moved()).isEmpty();
      assertThat(still.news()).isEmpty();
      assertThat(still.gone()).isEmpty();
    }
  }

  /** Back again undoes every difference, and the way over a third state is the way straight. */
  @TestFactory
  Stream<DynamicTest> betweenAnyTwoSets() {
    Random random = new Random(7396);
    List<String> keys = List.copyOf(DEMO.changes().keySet());
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      State a = state(keys.stream().filter(k -> random.nextBoolean()).toList());
      State b = state(keys.stream().filter(k -> random.nextBoolean()).toList());
      State c = state(keys.stream().filter(k -> random.nextBoolean()).toList());
      String name = a.changes() + " to " + b.changes();
      tests.add(DynamicTest.dynamicTest(name, () -> thereAndBack(a, b, c)));
    }
    return tests.stream();
  }

  private static void thereAndBack(State a, State b, State c) {
    Forecast there = Forecast.of(DEMO, a, b);
    Forecast back = Forecast.of(DEMO, b, a);
    consistent(there);
    Map<String, Row> backRows = rows(back);
    Map<String, Row> first = rows(Forecast.of(DEMO, a, c));
    Map<String, Row> second = rows(Forecast.of(DEMO, c, b));
    assertThat(backRows.keySet()).isEqualTo(rows(there).keySet());
    assertThat(back.gone())
        .containsExactlyInAnyOrderElementsOf(
            there.news().stream()
                .filter(f -> !f.figure().equals(RigidityStudy.DIFFERENCE))
                .toList());
    rows(there)
        .forEach(
            (id, row) -> {
              Row undone = Objects.requireNonNull(backRows.get(id));
              assertThat(undone.difference()).as(id).isEqualTo(-row.difference());
              assertThat(undone.verdict()).as(id).isEqualTo(opposite(row.verdict()));
              Row one = first.get(id);
              Row two = second.get(id);
              if (numbers(row) && one != null && two != null && numbers(one) && numbers(two)) {
                double size = Math.abs(row.after().orElseThrow().working().orElseThrow().value());
                assertThat(one.difference() + two.difference())
                    .as(id)
                    .isCloseTo(row.difference(), within(1e-9 * (1 + size)));
              }
            });
  }

  private static boolean numbers(Row row) {
    return row.before().isPresent()
        && row.after().isPresent()
        && row.before().get().working().isPresent()
        && row.after().get().working().isPresent();
  }

  private static Map<String, Row> rows(Forecast forecast) {
    Map<String, Row> rows = new LinkedHashMap<>();
    forecast.rows().forEach(r -> rows.put(r.figure().id(), r));
    return rows;
  }

  private static Verdict opposite(Verdict verdict) {
    return switch (verdict) {
      case BETTER -> Verdict.WORSE;
      case WORSE -> Verdict.BETTER;
      case NEW -> Verdict.GONE;
      case GONE -> Verdict.NEW;
      default -> verdict;
    };
  }

  /** What a row says follows from the two figures it holds. */
  private static void consistent(Forecast forecast) {
    assertThat(rows(forecast)).hasSize(forecast.rows().size());
    for (Row row : forecast.rows()) {
      assertThat(row.doubt()).as(row.figure().id()).isGreaterThanOrEqualTo(0).isFinite();
      if (numbers(row)) {
        Working old = row.before().orElseThrow().working().orElseThrow();
        Working now = row.after().orElseThrow().working().orElseThrow();
        assertThat(row.difference()).isEqualTo(now.value() - old.value());
        assertThat(row.doubt())
            .as(row.figure().id())
            .isLessThanOrEqualTo(old.doubt() + now.doubt() + 1e-12);
        boolean judged = row.verdict() == Verdict.BETTER || row.verdict() == Verdict.WORSE;
        assertThat(judged && Math.abs(row.difference()) <= row.doubt()).isFalse();
      }
    }
    List<Finding> all = new ArrayList<>(forecast.news());
    all.addAll(forecast.staying());
    assertThat(all).doesNotHaveDuplicates();
    assertThat(forecast.gone()).doesNotContainAnyElementsOf(all);
  }

  @Test
  void theSaddleDialBringsANewTravelAndADial() {
    Forecast forecast = Forecast.of(DEMO, state(), state("saddle-dial"));
    Row travel = row(forecast, "travel/saddle drive/travel per turn");
    assertThat(travel.difference())
        .isCloseTo(23.8125 * Math.PI * (1 / 3.0 - 13 / 40.0), within(1e-9));
    assertThat(row(forecast, "dials/saddle dial/line spacing").verdict()).isEqualTo(Verdict.NEW);
    assertThat(row(forecast, "dials/cross dial/line spacing").verdict()).isEqualTo(Verdict.SAME);
  }

  /** The doubt of the rack's play stands on both sides and cancels; that of the gears does not. */
  @Test
  void whatBothStatesShareCancels() {
    Row play =
        row(
            Forecast.of(DEMO, state(), state("saddle-dial")),
            "play/saddle drive/play at the slide");
    assertThat(play.doubt())
        .isCloseTo(Math.hypot(0.03 * 18.75 / 40, 0.03 * 18.75 / 39), within(1e-9));
  }

  /** The bed's change moves a figure that the dial's change brought: its error over the travel. */
  @Test
  void aSideEffectOnAFigureThatAnotherChangeOwns() {
    Forecast forecast = Forecast.of(DEMO, state("saddle-dial"), state("saddle-dial", "long-bed"));
    Row error = row(forecast, "dials/saddle dial/error over the whole travel");
    double share = 7.9375 * Math.PI / 25 - 1;
    assertThat(error.difference()).isCloseTo(100 * share, within(1e-9));
    assertThat(error.moved()).isTrue();
    Row carried =
        row(
            Forecast.of(DEMO, state("saddle-dial"), state("saddle-dial", "rear-toolpost")),
            "capacity/saddle/mass with all it carries");
    assertThat(carried.difference() * 1000).isCloseTo(0.9 - 0.15, within(1e-9));
  }

  @Test
  void changesThatAlterTheSameThingDifferentlyAreAFinding() {
    State both = state("ball-headstock", "long-bed");
    assertThat(both.conflicts())
        .containsExactly(new Conflict("lathe.between centres", "ball-headstock", "long-bed"));
    Forecast forecast = Forecast.of(DEMO, state(), both);
    assertThat(forecast.news())
        .filteredOn(f -> f.sentence().contains("lathe.between centres"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.rank()).isEqualTo(Finding.Rank.CAUTION);
              assertThat(f.sentence()).contains("'ball-headstock'", "'long-bed'");
            });
    for (String key : DEMO.changes().keySet()) {
      assertThat(State.of(DEMO, "", List.of(key)).conflicts()).isEmpty();
    }
  }

  @Test
  void aSmallMoveWithinItsDoubtIsSaidToBeOne() {
    String elements = "s: {kind: screw, thread: Tr 10x2, play: %s}";
    Map<String, String> texts =
        Map.of(
            "machine.yaml",
            SampleBooks.slide(elements.formatted("0.1 mm ± 0.05 mm")),
            "changes/new-nut.yaml",
            """
            title: Nut
            reason: worn
            differs: {trains: {drive: {elements: {s: {play: 0.09 mm ± 0.05 mm}}}}}
            """,
            "changes/better-nut.yaml",
            """
            title: Nut
            reason: worn
            differs: {trains: {drive: {elements: {s: {play: 0.01 mm ± 0.01 mm}}}}}
            """);
    Book book = SampleBooks.sound(texts);
    State bought = State.of(book, "", List.of());
    String id = "play/drive/play at the slide";
    Forecast within = Forecast.of(book, bought, State.of(book, "", List.of("new-nut")));
    assertThat(row(within, id).verdict()).isEqualTo(Verdict.WITHIN_DOUBT);
    Forecast better = Forecast.of(book, bought, State.of(book, "", List.of("better-nut")));
    assertThat(row(better, id).verdict()).isEqualTo(Verdict.BETTER);
  }
}
