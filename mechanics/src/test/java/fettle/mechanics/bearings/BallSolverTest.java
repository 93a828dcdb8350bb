package fettle.mechanics.bearings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The solver of all balls: it balances, its stiffness is its derivative, energy is work. */
class BallSolverTest {

  private static BallBearing bearing(Random r) {
    double pitch = 8 + 150 * r.nextDouble();
    double ball = pitch * (0.06 + 0.24 * r.nextDouble());
    int most = BallBearing.mostBalls(ball, pitch);
    int balls = 3 + r.nextInt(most - 2);
    double angle =
        Math.toRadians(r.nextInt(5) == 0 ? 60 + 30 * r.nextDouble() : 50 * r.nextDouble());
    return new BallBearing(
        balls,
        ball,
        pitch,
        angle,
        0.508 + 0.04 * r.nextDouble(),
        0.508 + 0.04 * r.nextDouble(),
        207_000,
        0.3);
  }

  private static BearingSet set(Random r) {
    BallBearing b = bearing(r);
    double preload = Math.pow(10, -1 + 4 * r.nextDouble());
    return switch (r.nextInt(4)) {
      case 0 -> BearingSet.single(b);
      case 1 ->
          BearingSet.pair(b, BearingSet.Arrangement.BACK_TO_BACK, 60 * r.nextDouble(), preload);
      case 2 ->
          BearingSet.pair(b, BearingSet.Arrangement.FACE_TO_FACE, 60 * r.nextDouble(), preload);
      default -> twoAgainstOne(b, bearing(r), r);
    };
  }

  private static BearingSet twoAgainstOne(BallBearing a, BallBearing b, Random r) {
    List<BearingSet.Seat> seats = new ArrayList<>();
    seats.add(new BearingSet.Seat(a, -40, 1, 0.01 * r.nextDouble(), 0, 0.3));
    seats.add(new BearingSet.Seat(a, -20, 1, 0.01 * r.nextDouble(), 0.002, 0));
    seats.add(new BearingSet.Seat(b, 30, -1, 0.01 * r.nextDouble(), 0, 0));
    return new BearingSet(seats);
  }

  private static BearingLoad load(Random r, double size) {
    double[] v = new double[5];
    for (int i = 0; i < 5; i++) {
      v[i] = r.nextInt(4) == 0 ? 0 : size * (2 * r.nextDouble() - 1);
    }
    return new BearingLoad(v[0], v[1], v[2], 20 * v[3], 20 * v[4]);
  }

  private static double[] asArray(BearingLoad l) {
    return new double[] {l.axial(), l.radialY(), l.radialZ(), l.momentY(), l.momentZ()};
  }

  private static void balances(BearingSet set, BearingLoad load, boolean held) {
    BearingState s = held ? set.underTiltHeld(load) : set.under(load);
    double[] wanted = asArray(load);
    double size = 1e-3;
    for (double q : s.ballLoads()) {
      size += q;
    }
    double arm = 200;
    for (int i = 0; i < (held ? 3 : 5); i++) {
      assertThat(s.force(i))
          .as("way %d of %s under %s", i, set, load)
          .isCloseTo(wanted[i], within(2e-9 * size * (i < 3 ? 1 : arm)));
    }
    assertThat(s.energy()).isNotNegative();
    for (int i = 0; i < 5; i++) {
      for (int j = 0; j < 5; j++) {
        assertThat(s.stiffness(i, j)).isEqualTo(s.stiffness(j, i));
      }
    }
  }

  private static void balancesMany(int count, long seed) {
    Random r = new Random(seed);
    for (int i = 0; i < count; i++) {
      double size = Math.pow(10, -2 + 6 * r.nextDouble());
      balances(set(r), load(r, size), r.nextInt(3) == 0);
    }
  }

  @Test
  void everyRandomBearingFindsItsBalance() {
    balancesMany(3_000, 20260717);
  }

  @Test
  @Tag("slow")
  void hundredThousandRandomBearingsFindTheirBalance() {
    balancesMany(100_000, 4711);
  }

  @Test
  void stiffnessIsTheDerivativeOfForce() {
    Random r = new Random(3);
    for (int n = 0; n < 200; n++) {
      BearingSet set = set(r);
      double[] u = {
        0.01 * r.nextDouble(),
        0.01 * r.nextDouble(),
        0.01 * r.nextDouble(),
        1e-4 * r.nextDouble(),
        0
      };
      BearingState here = set.at(u);
      for (int j = 0; j < 5; j++) {
        double step = j < 3 ? 1e-7 : 1e-9;
        double[] up = u.clone();
        double[] down = u.clone();
        up[j] += step;
        down[j] -= step;
        BearingState above = set.at(up);
        BearingState below = set.at(down);
        for (int i = 0; i < 5; i++) {
          double slope = (above.force(i) - below.force(i)) / (2 * step);
          double scale = Math.sqrt(here.stiffness(i, i) * here.stiffness(j, j)) + 1;
          assertThat(slope).isCloseTo(here.stiffness(i, j), within(2e-3 * scale));
        }
        double work = (above.energy() - below.energy()) / (2 * step);
        assertThat(work)
            .isCloseTo(here.force(j), within(1e-5 * Math.abs(here.force(j)) + (j < 3 ? 1e-2 : 1)));
      }
    }
  }

  @Test
  void onlyTheFirstBallsPlaceMovesNotTheSum() {
    BallBearing b = BallBearing.steel(12, 7.938, 33.5, Math.toRadians(25));
    double least = Double.MAX_VALUE;
    double greatest = 0;
    for (int i = 0; i < 12; i++) {
      BearingSet set = new BearingSet(List.of(new BearingSet.Seat(b, 0, 1, 0, 0, i * 0.03)));
      double q = set.underTiltHeld(BearingLoad.of(500, 300)).greatestLoad();
      least = Math.min(least, q);
      greatest = Math.max(greatest, q);
    }
    assertThat(greatest / least - 1).isBetween(0.0, 0.03);
  }

  @Test
  void setOfBallsAndClosedMatrixGiveTheSamePair() {
    Random r = new Random(9);
    for (BearingSet.Arrangement way :
        List.of(BearingSet.Arrangement.BACK_TO_BACK, BearingSet.Arrangement.FACE_TO_FACE)) {
      for (int i = 0; i < 50; i++) {
        BallBearing b =
            BallBearing.steel(8 + r.nextInt(6), 5, 30, Math.toRadians(12 + 30 * r.nextDouble()));
        double spacing = 5 + 40 * r.nextDouble();
        double preload = 20 + 300 * r.nextDouble();
        BearingState s = BearingSet.pair(b, way, spacing, preload).at(0, 0, 0, 0, 0);
        TiltStiffness t = TiltStiffness.of(b, way, spacing, preload);
        assertThat(s.force(0)).isCloseTo(0, within(1e-6));
        assertThat(t.axial()).isCloseTo(s.stiffness(0, 0), within(1e-6 * t.axial()));
        assertThat(t.radial()).isCloseTo(s.stiffness(1, 1), within(1e-6 * t.radial()));
        assertThat(t.tilt()).isCloseTo(s.stiffness(4, 4), within(1e-6 * s.stiffness(4, 4)));
      }
    }
  }

  @Test
  void mirroredBackToBackIsFaceToFace() {
    BallBearing b = BallBearing.steel(10, 4.762, 20, Math.toRadians(25));
    double back = TiltStiffness.of(b, BearingSet.Arrangement.BACK_TO_BACK, 8, 100).tilt();
    double face = TiltStiffness.of(b, BearingSet.Arrangement.FACE_TO_FACE, 8, 100).tilt();
    assertThat(back / face).isBetween(35.0, 55.0);
    double d = AxialCurve.of(b).approach(100);
    BearingSet swapped =
        new BearingSet(
            List.of(
                new BearingSet.Seat(b, 4, 1, d, 0, 0), new BearingSet.Seat(b, -4, -1, d, 0, 0)));
    assertThat(swapped.at(0, 0, 0, 0, 0).stiffness(4, 4)).isCloseTo(face, within(1e-6 * face));
  }

  @Test
  void preloadedPairAgreesWithItsBalls() {
    BallBearing b = BallBearing.steel(10, 4.762, 20, Math.toRadians(25));
    PreloadedPair pair = PreloadedPair.of(b, 100);
    BearingSet set = BearingSet.pair(b, BearingSet.Arrangement.BACK_TO_BACK, 8, 100);
    for (double k : new double[] {1, 50, 150, 302, 400, 1000}) {
      assertThat(set.under(BearingLoad.of(k, 0)).displacement(0))
          .isCloseTo(pair.movement(k), within(1e-9));
    }
    assertThat(pair.liftOff()).isBetween(2.8 * 100, 3.2 * 100);
  }

  @Test
  void unloadedBearingStaysWhereItIs() {
    BearingState s =
        BearingSet.single(BallBearing.steel(10, 4.762, 20, 0.4)).under(BearingLoad.of(0, 0));
    assertThat(s.greatestLoad()).isZero();
    assertThat(s.displacement(0)).isZero();
  }

  @Test
  void combinedLoadHoldsTheKnownMoment() {
    BallBearing b = BallBearing.steel(12, 7.938, 33.5, Math.toRadians(25));
    BearingState s = BearingSet.single(b).underTiltHeld(BearingLoad.of(500, 300));
    assertThat(s.displacement(1)).isCloseTo(0.00220, within(0.00001));
    assertThat(s.greatestLoad()).isCloseTo(152, within(0.5));
    assertThat(Math.abs(s.force(4))).isCloseTo(2493, within(2.0));
    BearingState free = BearingSet.single(b).under(BearingLoad.of(500, 300));
    assertThat(Math.abs(free.displacement(4))).isCloseTo(3.3e-3, within(0.1e-3));
  }
}
