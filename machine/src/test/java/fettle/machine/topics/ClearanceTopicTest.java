package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Interval;
import java.util.List;
import java.util.Map;
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
    Clearances found = Clearances.of(machine, Use.WHOLE);
    assertThat(found.rows()).allMatch(r -> r.gap().certified());
    int members =
        (int) machine.members().values().stream().filter(m -> !m.envelope().isEmpty()).count();
    assertThat(found.rows().size() + found.skipped().size()).isEqualTo(members * (members - 1) / 2);
  }

  /** 82 mm above and 29 mm beside each other, less the radii: two rims that overlap in width. */
  @Test
  void gapOfTheHandwheelsAsBoughtIsTheirCentresLessTheirReach() {
    Clearances found = Clearances.of(DemoLathe.with(), Use.WHOLE, 0.01, 20_000);
    Clearances.Row row =
        found.rows().stream()
            .filter(r -> r.name().equals("saddle handwheel x cross handwheel"))
            .findFirst()
            .orElseThrow();
    double centres = Math.hypot(82, 29);
    assertThat(row.gap().lower()).isLessThanOrEqualTo(centres - 35 - 30 + 1e-6);
    assertThat(row.gap().upper()).isBetween(centres - 35 - 30 - 1e-6, centres - 35 - 30 + 0.02);
  }

  /**
   * The cross slide's top is 37 mm over the ways, the axis 85 mm; chuck face 52, quill nose in 432.
   */
  @Test
  void roomForWorkIsWhatTheDrawingLeaves() {
    WorkRoom room = WorkRoom.of(DemoLathe.with(), Use.WHOLE).orElseThrow();
    assertThat(room.length()).isCloseTo(432 - 52, within(1e-6));
    assertThat(swing(room, "cross slide")).isCloseTo(2 * (85 - 37), within(1e-3));
    assertThat(swing(room, "bed")).isCloseTo(2 * 85, within(1e-3));
    assertThat(room.swings()).noneMatch(s -> s.over().equals("tailstock"));
  }

  /** With the tailstock held nearer, the room is shorter by as much. */
  @Test
  void roomFollowsWhatIsHeld() {
    Machine machine = DemoLathe.with();
    Use use =
        Use.parse(machine, "tailstock=100 mm, quill=0 mm, cross slide=0 mm", Use.Handles.ANY_ANGLE);
    WorkRoom room = WorkRoom.of(machine, use).orElseThrow();
    assertThat(room.length()).isCloseTo(384 - 52 - 230, within(1e-6));
    assertThat(swing(room, "top slide")).isCloseTo(2 * 36, within(1e-3));
  }

  private static double swing(WorkRoom room, String over) {
    return room.swings().stream()
        .filter(s -> s.over().equals(over))
        .mapToDouble(WorkRoom.Swing::diameter)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void positionsThatCannotBeAreRefusedInTheMachinistsWords() {
    Machine machine = DemoLathe.with();
    for (String wrong : List.of("saddle", "bed=3 mm", "saddle=900 mm", "saddle=3", "saddle=3 kg")) {
      assertThatThrownBy(() -> Use.parse(machine, wrong, Use.Handles.ANY_ANGLE))
          .as(wrong)
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThat(Use.parse(machine, "saddle=10 to 20 mm", Use.Handles.ANY_ANGLE).held())
        .containsEntry("saddle", new Interval(10, 20));
  }

  /** Turning with its slide, a handle reaches no more than at any angle, and no less than drawn. */
  @Test
  void handlesThatTurnWithTheirSlidesReachNoFartherThanAtAnyAngle() {
    Machine machine = DemoLathe.with("saddle-dial");
    Clearances any = Clearances.of(machine, Use.WHOLE);
    Clearances geared = Clearances.of(machine, new Use(Map.of(), Use.Handles.GEARED));
    assertThat(geared.mechanism().domain().names()).doesNotContain("cross handwheel");
    for (Clearances.Row row : geared.rows()) {
      Clearances.Row free = any.row(row.first(), row.second()).orElseThrow();
      assertThat(row.gap().upper())
          .as(row.name())
          .isGreaterThanOrEqualTo(free.gap().lower() - 1e-6);
      assertThat(row.gap().certified()).as(row.name()).isTrue();
    }
  }

  /** The rims reach 55 and 40 mm; 29 mm beside each other they meet while the slide is run in. */
  @Test
  void travelTheHandwheelsCostEachOther() {
    Clearances found = Clearances.of(DemoLathe.with("saddle-dial", "cross-screw"), Use.WHOLE);
    Clearances.Row row = found.row("saddle handwheel", "cross handwheel").orElseThrow();
    Clearances.Stretch cross =
        found.stretches(row).stream()
            .filter(s -> s.axis().equals("cross slide"))
            .findFirst()
            .orElseThrow();
    assertThat(cross.whole()).isFalse();
    double end = cross.span().to();
    Use beyond = new Use(Map.of("cross slide", new Interval(end, 96)), Use.Handles.ANY_ANGLE);
    Machine machine = DemoLathe.with("saddle-dial", "cross-screw");
    Clearances.Row clear =
        Clearances.of(machine, beyond).row("saddle handwheel", "cross handwheel").orElseThrow();
    assertThat(clear.gap().touches()).isFalse();
    Use before = new Use(Map.of("cross slide", new Interval(0, end - 0.01)), Use.Handles.ANY_ANGLE);
    Clearances.Row meets =
        Clearances.of(machine, before).row("saddle handwheel", "cross handwheel").orElseThrow();
    assertThat(meets.gap().touches()).isTrue();
  }
}
