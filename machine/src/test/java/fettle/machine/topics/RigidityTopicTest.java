package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Working;
import fettle.mechanics.loop.LoopModel;
import fettle.mechanics.solids.Body;
import java.util.List;
import org.junit.jupiter.api.Test;

class RigidityTopicTest {

  /** The lathe with all members rigid by themselves: joints and bars only. */
  private static Working figure(Machine machine, String id) {
    Flexes flexes = new Flexes(List.of(machine), Flexes.Extent.CHANGED, member -> {});
    return DemoLathe.figure(new RigidityTopic(flexes), machine, id);
  }

  private static Machine altered(String was, String is) {
    return DemoLathe.with(text -> replaced(text, was, is));
  }

  private static double loop(Machine machine, int axis) {
    Flexes flexes = new Flexes(List.of(machine), Flexes.Extent.CHANGED, member -> {});
    return CuttingLoop.of(Stance.of(machine).orElseThrow(), flexes)
        .model()
        .compliance()
        .entry(axis, axis);
  }

  private static double centre(Machine machine, int axis) {
    return Tailstock.of(machine).orElseThrow().model().compliance().entry(axis, axis);
  }

  private static String replaced(String text, String was, String is) {
    assertThat(text).contains(was);
    return text.replace(was, is);
  }

  @Test
  void theShaftGivesWhatTheSpindlesTopicSays() {
    Headstock head = Headstock.of(DemoLathe.with()).orElseThrow();
    double other = head.gives(0).get(0).value() + head.gives(0).get(1).value();
    assertThat(SpindleFlex.shaft(head).entry(0, 0)).isCloseTo(other, within(1e-6 * other));
  }

  @Test
  void aLongerTailstockBaseIsStiffer() {
    Machine shorter = altered("way length: 88 mm", "way length: 60 mm");
    Machine longer = altered("way length: 88 mm", "way length: 100 mm");
    for (int axis = 0; axis < 2; axis++) {
      assertThat(centre(longer, axis)).isLessThan(0.95 * centre(shorter, axis));
    }
  }

  @Test
  void aLongerHeadIsStiffer() {
    String head = "x: 104 mm, y: 130 mm, z: 191 mm";
    Machine longer = altered(head, "x: 104 mm, y: 130 mm, z: 221 mm");
    assertThat(loop(longer, 1)).isLessThan(loop(DemoLathe.with(), 1));
  }

  @Test
  void aLongerSaddleIsStiffer() {
    String saddle = "way length: 118 mm, at: {z: 60 mm}";
    Machine shorter = altered(saddle, "way length: 100 mm, at: {z: 60 mm}");
    Machine longer = altered(saddle, "way length: 150 mm, at: {z: 60 mm}");
    for (int axis = 0; axis < 3; axis++) {
      assertThat(loop(longer, axis)).isLessThan(loop(shorter, axis));
    }
  }

  @Test
  void sharesAddUpAndALongBedTwistsMore() {
    Machine machine = DemoLathe.with();
    Flexes flexes = new Flexes(List.of(machine), Flexes.Extent.CHANGED, member -> {});
    double sum =
        DemoLathe.study(new RigidityTopic(flexes), machine).figures().stream()
            .filter(f -> f.subject().equals("flex across"))
            .mapToDouble(f -> f.working().orElseThrow().value())
            .sum();
    assertThat(sum).isCloseTo(1, within(1e-3));
    String twist = "bed/stiffness against twist, end to end";
    assertThat(figure(DemoLathe.with("long-bed"), twist).value())
        .isLessThan(0.9 * figure(machine, twist).value());
  }

  @Test
  void theBallHeadstockMovesTheFlex() {
    Machine after = DemoLathe.with("ball-headstock");
    String id = "flex across/front bearing";
    assertThat(figure(after, id).value())
        .isNotCloseTo(figure(DemoLathe.with(), id).value(), within(1e-3));
  }

  @Test
  void featuresBecomeMetal() {
    Machine after = DemoLathe.with("rear-toolpost");
    Body slide = MemberBody.of(after.member("cross slide")).orElseThrow();
    assertThat(slide.contains(-60, 19, 25)).isFalse();
    assertThat(slide.contains(-60, 19, 31)).isTrue();
    assertThat(slide.contains(-60, 12, 31)).isFalse();
    assertThat(slide.contains(-60, 8, 31)).isTrue();
    assertThat(slide.contains(-60, 1, 16)).isTrue();
    assertThat(slide.contains(-60, 6, 16)).isFalse();
    assertThat(slide.contains(-20, 19, 25)).isTrue();
  }

  @Test
  void slotsCostTheSlideAndLittleAtTheTool() {
    List<Study> both =
        RigidityStudy.of(
            DemoLathe.with(),
            DemoLathe.with("rear-toolpost"),
            RigidityStudy.Depth.CHANGED,
            member -> {});
    String k = "rigidity/tool to work/stiffness across";
    assertThat(value(both.get(1), k))
        .isLessThan(value(both.get(0), k))
        .isGreaterThan(0.95 * value(both.get(0), k));
    assertThat(both.get(1).findings())
        .anyMatch(
            f -> f.sentence().contains("under the rear tool post") && !f.sentence().contains("-"));
    assertThat(both.get(1).findings()).anyMatch(f -> f.rank() == Finding.Rank.CAUTION);
  }

  /** The bar of the first answer stands for the bed within its stated doubt, twice. */
  @Test
  void theBedAsABarAgreesWithItsElements() {
    Machine machine = DemoLathe.with();
    Stance stance = Stance.of(machine).orElseThrow();
    Flexes all = new Flexes(List.of(machine), Flexes.Extent.ALL, member -> {});
    double bar = bed(CuttingLoop.of(stance, Flexes.none()).model());
    double elements = bed(CuttingLoop.of(stance, all).model());
    assertThat(elements / bar).isBetween(1 / BedBar.DOUBT, BedBar.DOUBT);
  }

  private static double bed(LoopModel model) {
    return model.shares(1, 0, 0).stream()
        .filter(s -> s.name().equals("bed"))
        .mapToDouble(LoopModel.Share::compliance)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void farFromTheJawsTheWorkGivesMoreAndBetweenCentresLess() {
    TravelMap map = TravelMap.of(DemoLathe.with()).orElseThrow();
    assertThat(map.chucked()).hasSizeGreaterThan(4);
    for (int i = 1; i < map.chucked().size(); i++) {
      assertThat(map.chucked().get(i).diameter())
          .isGreaterThan(map.chucked().get(i - 1).diameter());
    }
    double usual = 1 / loop(DemoLathe.with(), 0);
    assertThat(map.chucked())
        .anySatisfy(s -> assertThat(s.across()).isCloseTo(usual, within(1e-6 * usual)));
    assertThat(map.centred()).isNotEmpty().allMatch(s -> s.across() > usual);
  }

  /** All of the give is the motion of tool and work, and the bed under the head stands still. */
  @Test
  void thePortraitMovesAsTheLoopGives() {
    Machine machine = DemoLathe.with();
    RigidityPortrait portrait = RigidityPortrait.of(machine, 50, 0, 0).orElseThrow();
    assertThat(portrait.give()).isCloseTo(50 * loop(machine, 0), within(1e-9));
    assertThat(portrait.pieces())
        .anySatisfy(
            p -> {
              assertThat(p.name()).isEqualTo("bed");
              assertThat(p.motion()).allMatch(v -> v == 0);
            });
  }

  @Test
  void aChangeThatLeavesTheLoopAloneIsNotSpokenOf() {
    assertThat(RigidityStudy.atOnce(DemoLathe.with(), DemoLathe.with("saddle-dial"))).isEmpty();
    assertThat(RigidityStudy.atOnce(DemoLathe.with(), DemoLathe.with("ball-headstock")))
        .hasSize(1)
        .allMatch(f -> f.sentence().contains("stiffer") && f.sentence().contains("front bearing"));
  }

  private static double value(Study study, String id) {
    return study.figures().stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .flatMap(Figure::working)
        .orElseThrow()
        .value();
  }
}
