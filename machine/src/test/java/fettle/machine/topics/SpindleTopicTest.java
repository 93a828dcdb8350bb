package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import org.junit.jupiter.api.Test;

class SpindleTopicTest {

  private static final SpindleTopic TOPIC = new SpindleTopic();
  private static final String STIFFNESS = "spindle/stiffness at the nose";
  private final Machine old = DemoLathe.with();
  private final Machine balls = DemoLathe.with("ball-headstock");

  private static double value(Machine machine, String id) {
    return DemoLathe.figure(TOPIC, machine, id).value();
  }

  @Test
  void sharesOfTheGiveMakeTheWhole() {
    for (Machine machine : new Machine[] {old, balls}) {
      double sum =
          value(machine, "spindle/share of the give from the spindle's bending and shear")
              + value(machine, "spindle/share of the give from the front bearing")
              + value(machine, "spindle/share of the give from the rear bearing");
      assertThat(sum).isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void aThickerSpindleAndAShorterNoseAreStiffer() {
    Machine thick = DemoLathe.with(t -> t.replace("body diameter: 33 mm", "body diameter: 40 mm"));
    Machine near = DemoLathe.with(t -> t.replace("  overhang: 62 mm", "  overhang: 50 mm"));
    assertThat(value(thick, STIFFNESS)).isGreaterThan(value(old, STIFFNESS));
    assertThat(value(near, STIFFNESS)).isGreaterThan(value(old, STIFFNESS));
  }

  @Test
  void aHeavierChuckLowersTheFirstFrequency() {
    Machine heavy = DemoLathe.with(t -> t.replace("mass: 2.6 kg", "mass: 5.2 kg"));
    String frequency = "spindle/first frequency in bending";
    assertThat(value(heavy, frequency)).isLessThan(value(old, frequency));
  }

  @Test
  void ballBearingsTakeThePlayAwayAndStiffenTheNose() {
    assertThat(value(old, "spindle/play at the nose at rest"))
        .isCloseTo(0.035 * (1 + 62.0 / 148) + 0.03 * 62 / 148, within(1e-12));
    assertThat(value(balls, "spindle/play at the nose at rest")).isZero();
    assertThat(value(balls, STIFFNESS)).isGreaterThan(value(old, STIFFNESS));
  }

  @Test
  void theBestSpanIsTheOneOfLeastGive() {
    double best = value(balls, "spindle/best distance of the bearings");
    Headstock head = Headstock.of(balls).orElseThrow();
    double ei = 206_000 * Math.PI / 64 * (Math.pow(head.body(), 4) - Math.pow(head.bore(), 4));
    double least = give(head, ei, best);
    assertThat(give(head, ei, 0.9 * best)).isGreaterThan(least);
    assertThat(give(head, ei, 1.1 * best)).isGreaterThan(least);
  }

  private static double give(Headstock head, double ei, double span) {
    double a = head.overhang();
    return a * a * (a + span) / (3 * ei)
        + Math.pow(1 + a / span, 2) * head.front().give().value()
        + Math.pow(a / span, 2) * head.rear().give().value();
  }

  @Test
  void aBoreWiderThanTheSpindleIsSaidAndNotReckoned() {
    Machine wide = DemoLathe.with(t -> t.replace("  bore: 17 mm", "  bore: 40 mm"));
    Study study = DemoLathe.study(TOPIC, wide);
    assertThat(study.figures()).isEmpty();
    assertThat(study.findings())
        .singleElement()
        .satisfies(f -> assertThat(f.sentence()).contains("bore"));
  }

  @Test
  void bearingsThatAreNotReckonedAreNamed() {
    Machine tapered =
        DemoLathe.with(
            t ->
                t.replaceFirst(
                    "  front: \\{kind: bush.*\n", "  front: {kind: rolling, type: 30207}\n"));
    assertThat(DemoLathe.study(TOPIC, tapered).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.rank()).isEqualTo(Finding.Rank.NOTE));
  }

  @Test
  void twiceTheRatingLivesEightTimesAsLong() {
    String life = "front bearing/life at the full feed force";
    double usual = value(stated(20), life);
    assertThat(value(stated(40), life)).isCloseTo(8 * usual, within(1e-6 * usual));
  }

  private static Machine stated(int kilonewton) {
    return DemoLathe.with(
        t ->
            t.replaceFirst(
                "  front: \\{kind: bush.*\n",
                "  front: {kind: rolling, type: 7007B, contact angle: 40 deg, count: 2,"
                    + " arrangement: back-to-back, preload: 150 N, dynamic rating: "
                    + kilonewton
                    + " kN}\n"));
  }
}
