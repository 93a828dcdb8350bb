package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.lathe.Machine;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the demo's handles and levers run into, found by their geometry. */
class ClearanceTopicTest {

  private static final String WHEELS = "The saddle handwheel meets the cross handwheel";
  private static final String LEVER = "The quill handwheel meets the tailstock lever";

  private static List<String> sentences(Machine machine) {
    return DemoLathe.study(new ClearanceTopic(), machine).findings().stream()
        .map(Finding::sentence)
        .toList();
  }

  private static boolean says(Machine machine, String start) {
    return sentences(machine).stream().anyMatch(s -> s.startsWith(start));
  }

  @Test
  void twoHandwheelsMeetOnlyWhenBothChangesAreMade() {
    assertThat(says(DemoLathe.with(), WHEELS)).isFalse();
    assertThat(says(DemoLathe.with("saddle-dial"), WHEELS)).isFalse();
    assertThat(says(DemoLathe.with("cross-screw"), WHEELS)).isFalse();
    assertThat(says(DemoLathe.with("saddle-dial", "cross-screw"), WHEELS)).isTrue();
  }

  @Test
  void leverMeetsTheQuillHandwheel() {
    assertThat(says(DemoLathe.with(), LEVER)).isFalse();
    assertThat(says(DemoLathe.with("tailstock-lever"), LEVER)).isTrue();
  }

  /** The old cross handwheel leaves the larger saddle handwheel less than a finger. */
  @Test
  void fingerIsCaughtBetweenTheHandwheels() {
    List<Finding> findings = DemoLathe.study(new ClearanceTopic(), DemoLathe.with()).findings();
    assertThat(findings)
        .anyMatch(
            f -> f.sentence().contains("a finger can be caught") && f.limit().equals("25 mm"));
  }

  @Test
  void boundsOfTheWholeTableCloseAndNothingIsLeftUnsaid() {
    Machine machine = DemoLathe.with("saddle-dial", "cross-screw", "tailstock-lever");
    Clearances found = Clearances.of(machine, 0.05, 20_000);
    assertThat(found.rows()).allMatch(r -> r.gap().certified());
    int members =
        (int) machine.members().values().stream().filter(m -> !m.envelope().isEmpty()).count();
    assertThat(found.rows().size() + found.skipped().size()).isEqualTo(members * (members - 1) / 2);
  }

  /** 82 mm above and 29 mm beside each other, less the radii: two rims that overlap in width. */
  @Test
  void gapOfTheHandwheelsAsBoughtIsTheirCentresLessTheirReach() {
    Clearances found = Clearances.of(DemoLathe.with(), 0.01, 20_000);
    Clearances.Row row =
        found.rows().stream()
            .filter(r -> r.name().equals("saddle handwheel x cross handwheel"))
            .findFirst()
            .orElseThrow();
    double centres = Math.hypot(82, 29);
    assertThat(row.gap().lower()).isLessThanOrEqualTo(centres - 35 - 30 + 1e-6);
    assertThat(row.gap().upper()).isBetween(centres - 35 - 30 - 1e-6, centres - 35 - 30 + 0.02);
  }
}
