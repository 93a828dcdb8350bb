package fettle.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** The moves found are at least as good as anything a search finds. */
class AdjustmentTest {

  private static final int ERRORS = 5;

  private static Adjustment task(RandomGenerator random, int adjusters) {
    double[] errors = new double[ERRORS];
    double[] limits = new double[ERRORS];
    double[][] influence = new double[ERRORS][adjusters];
    for (int i = 0; i < ERRORS; i++) {
      errors[i] = 30 * random.nextGaussian();
      limits[i] = 5 + 20 * random.nextDouble();
      for (int k = 0; k < adjusters; k++) {
        influence[i][k] = random.nextGaussian();
      }
    }
    return Adjustment.of(errors, limits, influence);
  }

  private static double[] filled(int n, double value) {
    double[] array = new double[n];
    java.util.Arrays.fill(array, value);
    return array;
  }

  @Test
  void noMoveWithinTheBoundsIsBetter() {
    RandomGenerator random = SeededTrials.random(21);
    for (int i = 0; i < 20; i++) {
      Adjustment task = task(random, 4);
      double[] best = task.bounded(filled(4, 0), filled(4, 25));
      double[] worst = task.smallestWorst(filled(4, 0), filled(4, 25));
      double least = task.objective(best);
      double smallest = task.worst(worst);
      for (int j = 0; j < 2000; j++) {
        double[] moves = new double[4];
        for (int k = 0; k < 4; k++) {
          double near = best[k] + random.nextGaussian();
          moves[k] = Math.max(0, Math.min(25, j % 2 == 0 ? near : 25 * random.nextDouble()));
        }
        assertThat(task.objective(moves)).isGreaterThanOrEqualTo(least - 1e-9);
        assertThat(task.worst(moves)).isGreaterThanOrEqualTo(smallest - 1e-9);
      }
    }
  }

  @Test
  void shimsAtHandAreChosenAsByTryingAll() {
    RandomGenerator random = SeededTrials.random(22);
    List<Double> shims = List.of(0.0, 5.0, 10.0, 15.0, 20.0, 30.0);
    for (int i = 0; i < 20; i++) {
      Adjustment task = task(random, 3);
      double inf = Double.POSITIVE_INFINITY;
      double[] found = task.discrete(List.of(shims, shims, shims), filled(3, -inf), filled(3, inf));
      double least = Double.POSITIVE_INFINITY;
      for (double a : shims) {
        for (double b : shims) {
          for (double c : shims) {
            least = Math.min(least, task.objective(new double[] {a, b, c}));
          }
        }
      }
      assertThat(task.objective(found)).isCloseTo(least, within(1e-9));
      assertThat(shims).contains(found[0], found[1], found[2]);
    }
  }

  @Test
  void continuousAdjustersFollowTheShims() {
    RandomGenerator random = SeededTrials.random(23);
    Adjustment task = task(random, 3);
    double[] low = filled(3, -100);
    double[] high = filled(3, 100);
    List<List<Double>> allowed = new ArrayList<>(List.of(List.of(0.0, 10.0, 20.0), List.of()));
    allowed.add(List.of());
    double[] found = task.discrete(allowed, low, high);
    double least = Double.POSITIVE_INFINITY;
    for (double shim : allowed.get(0)) {
      double[] from = {shim, -100, -100};
      double[] to = {shim, 100, 100};
      least = Math.min(least, task.objective(task.bounded(from, to)));
    }
    assertThat(task.objective(found)).isCloseTo(least, within(1e-9));
  }

  @Test
  void aMoveTeachesTheInfluenceThatItShowed() {
    double[][] next =
        Adjustment.corrected(
            new double[][] {{1, 0}, {0, 1}}, new double[] {2, 1}, new double[] {3, 1});
    assertThat(next[0][0] * 2 + next[0][1]).isCloseTo(3, within(1e-12));
    assertThat(next[1]).containsExactly(0, 1);
  }

  @Test
  void piecesOfShimComeNearest() {
    double[] pieces = Adjustment.stack(new double[] {0.05, 0.1, 0.1, 0.25, 0.5}, 0.38);
    assertThat(java.util.Arrays.stream(pieces).sum()).isCloseTo(0.4, within(1e-12));
    assertThat(Adjustment.stack(new double[] {0.5}, 0.1)).isEmpty();
  }

  @Test
  void feetShimsTipThePlaneAndNeverGoBelowZero() {
    double[] t =
        Adjustment.feet(
            new double[] {-60, 60, -60, 60}, new double[] {0, 0, 130, 130}, -80e-6, 50e-6);
    assertThat((t[2] - t[0]) / 130).isCloseTo(-80e-6, within(1e-15));
    assertThat((t[1] - t[0]) / 120).isCloseTo(50e-6, within(1e-15));
    assertThat(java.util.Arrays.stream(t).min().orElseThrow()).isZero();
  }

  @Test
  void joseph() {
    Forecast.Update update =
        Forecast.update(
            new double[] {8},
            new double[][] {{2.25}},
            new double[][] {{1}},
            new double[] {6.1},
            new double[][] {{0.16}});
    double weight = 2.25 / (2.25 + 0.16);
    assertThat(update.parameters().getEntry(0)).isCloseTo(8 - weight * 1.9, within(1e-12));
    assertThat(update.covariance().getEntry(0, 0)).isCloseTo(2.25 * 0.16 / 2.41, within(1e-12));
    assertThat(update.isAllowed()).isTrue();
  }
}
