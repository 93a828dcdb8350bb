package fettle.mechanics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Cases whose least gap is known in closed form; the proven bracket contains each. */
class KnownCasesTest {

  private static final Vector X = new Vector(1, 0, 0);
  private static final Vector Z = new Vector(0, 0, 1);

  private static Domain axis(double from, double to) {
    return new Domain(List.of("q"), new double[] {from}, new double[] {to});
  }

  private static Chain still(Convex solid) {
    return new Chain(List.of(), solid);
  }

  private static Chain turning(Convex solid) {
    return new Chain(List.of(new Step.Turn(Z, 0, 1)), solid);
  }

  private static Convex wall(double x) {
    return new Convex.Box(new Vector(x, -400, -400), new Vector(x + 50, 400, 400));
  }

  private static void bracket(Chain a, Chain b, Domain domain, double expected) {
    Gap gap = Clearance.of(new Pair("a", "b", a, b), domain, 0.001, Clearance.BUDGET);
    assertThat(gap.certified()).isTrue();
    assertThat(gap.lower()).isLessThanOrEqualTo(expected + 1e-6);
    assertThat(gap.upper()).isGreaterThanOrEqualTo(expected - 1e-6);
    assertThat(gap.upper()).isCloseTo(expected, within(0.0011));
  }

  @Test
  void leverBesideAWall() {
    Chain lever = turning(Convex.ball(new Vector(80, 0, 0), 12));
    bracket(lever, still(wall(100)), axis(Math.toRadians(-60), Math.toRadians(55)), 8);
    bracket(
        lever,
        still(wall(100)),
        axis(Math.toRadians(30), Math.toRadians(90)),
        100 - 80 * Math.cos(Math.PI / 6) - 12);
  }

  @Test
  void crankPastAHead() {
    bracket(
        turning(Convex.ball(new Vector(45, 0, 0), 8)),
        still(new Convex.Hull(List.of(new Vector(60, 0, 10)))),
        axis(-Math.PI, Math.PI),
        Math.hypot(15, 10) - 8);
  }

  @Test
  void twoLevers() {
    Domain both =
        new Domain(
            List.of("p", "q"), new double[] {-Math.PI, -Math.PI}, new double[] {Math.PI, Math.PI});
    Chain second =
        new Chain(
            List.of(new Step.Shift(new Vector(150, 0, 0)), new Step.Turn(Z, 1, 1)),
            Convex.ball(new Vector(-70, 0, 0), 10));
    bracket(turning(Convex.ball(new Vector(60, 0, 0), 8)), second, both, 2);
  }

  @Test
  void dogPastARod() {
    bracket(
        turning(new Convex.Box(new Vector(0, -10, -5), new Vector(48, 10, 5))),
        still(new Convex.Cylinder(new Vector(60, 0, 0), Z, 5, 100)),
        axis(-Math.PI, Math.PI),
        55 - Math.hypot(48, 10));
  }

  @Test
  void swivellingSlideIsWorstBetweenItsEnds() {
    bracket(
        turning(new Convex.Box(new Vector(-60, -30, -5), new Vector(60, 30, 5))),
        still(wall(70)),
        axis(0, Math.PI / 2),
        70 - Math.hypot(60, 30));
  }

  @Test
  void crankThatTurnsAsItTravels() {
    Chain crank =
        new Chain(
            List.of(new Step.Slide(Z, 0, 1), new Step.Turn(Z, 0, Math.PI)),
            Convex.ball(new Vector(40, 0, 0), 8));
    bracket(crank, still(Convex.ball(new Vector(62, 0, 60), 10)), axis(0, 117), 4);
  }

  @Test
  void crossedRods() {
    bracket(
        still(new Convex.Cylinder(Vector.ZERO, X, 8, 200)),
        still(new Convex.Cylinder(new Vector(0, 25, 0), Z, 6, 200)),
        axis(0, 1),
        11);
  }

  @Test
  void travelEndsWhereTheBlockMeetsTheChuck() {
    Chain block =
        new Chain(
            List.of(new Step.Slide(X, 0, 1)),
            new Convex.Box(new Vector(0, 15, -80), new Vector(60, 45, 20)));
    Convex chuck = new Convex.Cylinder(new Vector(0, 0, -30), Z, 62.5, 30);
    Pair pair = new Pair("block", "chuck", block, still(chuck));
    FreeTravel travel = FreeTravel.of(List.of(pair), axis(0, 120), 0, 0, 1e-5, -1);
    assertThat(travel.to()).isCloseTo(Math.sqrt(62.5 * 62.5 - 225), within(1e-3));
    assertThat(travel.hit()).isEqualTo("block x chuck");
    FreeTravel wide = FreeTravel.of(List.of(pair), axis(0, 120), 0, 5, 1e-5, -1);
    assertThat(wide.to()).isCloseTo(Math.sqrt(67.5 * 67.5 - 225), within(1e-3));
  }

  /** The block of before: it can meet the chuck from the axis to where it stops. */
  @Test
  void stretchOfContactEndsOnBothSides() {
    Chain ball = new Chain(List.of(new Step.Slide(X, 0, 1)), Convex.ball(new Vector(0, 12, 0), 8));
    Chain rod = still(new Convex.Cylinder(new Vector(50, 0, 0), Z, 5, 20));
    ContactSpan span =
        ContactSpan.of(List.of(new Pair("ball", "rod", ball, rod)), axis(0, 120), 0, 0, 1e-6)
            .orElseThrow();
    double reach = Math.sqrt(13.0 * 13 - 12 * 12);
    assertThat(span.from()).isCloseTo(50 - reach, within(3e-6));
    assertThat(span.to()).isCloseTo(50 + reach, within(3e-6));
    assertThat(span.certified()).isTrue();
    Chain past = new Chain(List.of(new Step.Slide(X, 0, 1)), Convex.ball(new Vector(0, 14, 0), 8));
    assertThat(
            ContactSpan.of(List.of(new Pair("ball", "rod", past, rod)), axis(0, 120), 0, 0, 1e-6))
        .isEmpty();
  }

  /** Two slides across each other: their ends meet inside a circle on the map. */
  @Test
  void mapOfTwoAxesCoversEveryContactAndLittleElse() {
    Vector y = new Vector(0, 1, 0);
    Chain ball =
        new Chain(
            List.of(new Step.Slide(X, 0, 1), new Step.Slide(y, 1, 1)), Convex.ball(Vector.ZERO, 8));
    Chain rod = still(new Convex.Cylinder(new Vector(50, 40, 0), Z, 12, 20));
    Domain both = new Domain(List.of("p", "q"), new double[] {0, 0}, new double[] {128, 64});
    ContactMap map = ContactMap.of(List.of(new Pair("ball", "rod", ball, rod)), both, 0, 1, 6);
    for (double p = 0.5; p < 128; p += 1.5) {
      for (double q = 0.5; q < 64; q += 1.5) {
        double apart = Math.hypot(p - 50, q - 40) - 20;
        if (apart <= 0) {
          assertThat(map.covers(p, q)).as(p + ", " + q).isTrue();
        } else if (apart > Math.hypot(2, 1)) {
          assertThat(map.covers(p, q)).as(p + ", " + q).isFalse();
        }
      }
    }
    assertThat(map.patches()).allMatch(f -> f.kind() == ContactMap.Kind.MEETS);
  }

  /** More free slides than can be told apart at once: the others are split. */
  @Test
  void manySlidesOnOneAnotherAreAllCounted() {
    int count = 33;
    List<Step> steps = new java.util.ArrayList<>();
    List<String> names = new java.util.ArrayList<>();
    double[] high = new double[count];
    for (int i = 0; i < count; i++) {
      steps.add(new Step.Slide(X, i, 1));
      names.add("q" + i);
      high[i] = 1;
    }
    Gap gap =
        Clearance.of(
            new Pair("a", "b", new Chain(steps, Convex.ball(Vector.ZERO, 5)), still(wall(100))),
            new Domain(names, new double[count], high),
            0.01,
            Clearance.BUDGET);
    assertThat(gap.lower()).isLessThanOrEqualTo(100 - 5 - count + 1e-6);
    assertThat(gap.upper()).isCloseTo(100 - 5 - count, within(0.01));
  }

  @Test
  void leverMeetsTheWallAtItsAngle() {
    Pair pair =
        new Pair("lever", "wall", turning(Convex.ball(new Vector(80, 0, 0), 12)), still(wall(70)));
    FreeTravel travel = FreeTravel.of(List.of(pair), axis(0, Math.PI / 2), 0, 0, 1e-6, -1);
    assertThat(Math.toDegrees(travel.to())).isCloseTo(43.531152, within(1e-3));
  }

  @Test
  void bodiesThatMeetAreFoundTouching() {
    Chain slide =
        new Chain(
            List.of(new Step.Slide(X, 0, 1)),
            new Convex.Box(new Vector(0, 0, 0), new Vector(10, 10, 10)));
    Convex post = new Convex.Cylinder(new Vector(50, 5, 5), Z, 4, 20);
    Gap gap = Clearance.of(new Pair("a", "b", slide, still(post)), axis(0, 100), 0.01, 100);
    assertThat(gap.touches()).isTrue();
    assertThat(RandomMachinesTest.distance(gap.pair(), axis(0, 100), gap.position())).isZero();
  }

  /** A wheel that turns on its own axis is searched as if it stood; one off its axis is not. */
  @Test
  void wheelOnItsAxisNeedsNoSplitting() {
    Convex wheel = new Convex.Cylinder(new Vector(0, 0, 5), Z, 30, 4);
    Gap gap =
        Clearance.of(
            new Pair("wheel", "wall", turning(wheel), still(wall(40))),
            axis(0, 2 * Math.PI),
            0.001,
            Clearance.BUDGET);
    assertThat(gap.evaluations()).isEqualTo(1);
    assertThat(gap.upper()).isCloseTo(10, within(1e-6));
    Convex off = new Convex.Cylinder(new Vector(1, 0, 5), Z, 30, 4);
    bracket(turning(off), still(wall(40)), axis(0, 2 * Math.PI), 9);
  }

  @Test
  void departureOfTheSineIsItsGreatest() {
    for (double a = 0.05; a < 1.05; a += 0.1) {
      double most = 0;
      for (double u = 0; u <= 1; u += 0.001) {
        most = Math.max(most, Math.sin(a * u) / Math.sin(a) - u);
      }
      assertThat(Shadow.departure(a)).isCloseTo(most, within(1e-6)).isGreaterThanOrEqualTo(most);
    }
  }

  @Test
  void machineWithoutPairsIsRefused() {
    assertThatThrownBy(() -> Clearance.least(List.of(), axis(0, 1), 0.05, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no two solids");
  }
}
