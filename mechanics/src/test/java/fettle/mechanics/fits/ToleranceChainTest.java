package fettle.mechanics.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.base.Interval;
import fettle.mechanics.fits.ToleranceChain.Draws;
import fettle.mechanics.fits.ToleranceChain.Link;
import fettle.mechanics.fits.ToleranceChain.Spread;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ToleranceChainTest {

  private static final Interval ANY =
      new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  private static final ToleranceChain BLOCK =
      new ToleranceChain(
          List.of(
              new Link("bore height", 1, 40, 0.020, Spread.UNIFORM),
              new Link("shim", 1, 2, 0.010, Spread.UNIFORM),
              new Link("nut height", -1, 42, 0.030, Spread.UNIFORM),
              new Link("spigot", 1, 0, 0.0085, Spread.UNIFORM)));

  @Test
  void drawsAgreeWithTheSumOfVariances() {
    Draws draws = BLOCK.draws(ANY, 200_000, 7);
    assertThat(draws.sigma()).isCloseTo(BLOCK.sigma(), within(0.01 * BLOCK.sigma()));
    assertThat(draws.nearlyAll())
        .isLessThanOrEqualTo(BLOCK.worstCase())
        .isCloseTo(0.056, within(0.001));
    assertThat(draws.ninetyFive()).isLessThan(draws.nearlyAll());
    assertThat(draws.outside()).isZero();
    assertThat(BLOCK.mean()).isCloseTo(0, within(1e-12));
  }

  @Test
  void oneSeedGivesOneResult() {
    assertThat(BLOCK.draws(ANY, 10_000, 3)).isEqualTo(BLOCK.draws(ANY, 10_000, 3));
    assertThat(BLOCK.draws(ANY, 10_000, 3)).isNotEqualTo(BLOCK.draws(ANY, 10_000, 4));
  }

  @Test
  void normalLinkHoldsItsThreeSigma() {
    ToleranceChain one = new ToleranceChain(List.of(new Link("x", 2, 5, 0.3, Spread.NORMAL)));
    Draws draws = one.draws(new Interval(9.4, 10.6), 400_000, 1);
    assertThat(one.sigma()).isCloseTo(0.2, within(1e-12));
    assertThat(draws.outside()).isCloseTo(0.0027, within(0.0004));
    assertThat(draws.ninetyFive()).isCloseTo(0.392, within(0.004));
  }

  @Test
  void clearanceActsInARandomDirection() {
    ToleranceChain one = new ToleranceChain(List.of(new Link("x", 1, 0, 1, Spread.CLEARANCE)));
    assertThat(one.draws(ANY, 200_000, 1).sigma()).isCloseTo(Math.sqrt(0.5), within(0.004));
  }

  @Test
  void sharesAddUpAndOrderIsKept() {
    double[] shares = BLOCK.shares();
    assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
    assertThat(shares[2]).isGreaterThan(shares[0]);
    assertThat(BLOCK.rootSumOfSquares()).isLessThan(BLOCK.worstCase());
    assertThat(BLOCK.rootSumOfSquares()).isCloseTo(0.0384, within(0.0001));
  }

  @Test
  void hostileChainsAreRefused() {
    assertThatThrownBy(() -> new ToleranceChain(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Link("x", 1, 0, -0.1, Spread.UNIFORM))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> BLOCK.draws(ANY, 10, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
