package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import org.junit.jupiter.api.Test;

class ChainTopicTest {

  private static final ChainTopic TOPIC = new ChainTopic();
  private static final String CHAIN = "screw axis to nut axis/";
  private final Machine fitted = DemoLathe.with("cross-screw");

  private double value(String name) {
    return DemoLathe.figure(TOPIC, fitted, CHAIN + name).value();
  }

  @Test
  void sizesAndTolerancesAddUp() {
    assertThat(value("middle")).isCloseTo(18 + 6 + 0 - 8 - 16, within(1e-12));
    assertThat(value("how far out at worst"))
        .isCloseTo(0.015 + 0.02 + 0.008 + 0.02 + 0.015, within(1e-12));
    double squares = 2 * 0.015 * 0.015 + 2 * 0.02 * 0.02 + 0.008 * 0.008;
    assertThat(value("how far out as a rule")).isCloseTo(Math.sqrt(squares), within(1e-12));
  }

  @Test
  void randomDrawsLieBetweenTheSpreadAndTheWorstCase() {
    double sigma = Math.sqrt((2 * 0.015 * 0.015 + 2 * 0.02 * 0.02) / 3 + 0.008 * 0.008 / 2);
    double drawn = value("how far out in 95 of 100");
    // A sum of five even spreads is nearly normal: 1.96 sigma, a little less for its short tails.
    assertThat(drawn).isBetween(1.85 * sigma, 1.98 * sigma);
    assertThat(drawn).isLessThan(value("how far out at worst"));
    assertThat(value("how far out in 95 of 100")).isEqualTo(drawn);
  }

  @Test
  void whatCanPassItsLimitIsSaidAndWhatCannotIsNot() {
    assertThat(DemoLathe.study(TOPIC, fitted).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.rank()).isEqualTo(Finding.Rank.NOTE));
    assertThat(DemoLathe.study(TOPIC, DemoLathe.with()).figures()).isEmpty();
    Machine wide = chain("least: -0.2 mm, most: 0.2 mm, links: {a: {size: 0 mm ± 0.19 mm}}");
    assertThat(DemoLathe.study(TOPIC, wide).findings()).isEmpty();
    Machine tight = chain("most: 0.02 mm, links: {a: {size: 0 mm ± 0.19 mm}}");
    assertThat(DemoLathe.study(TOPIC, tight).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.rank()).isEqualTo(Finding.Rank.CAUTION));
    Machine exact = chain("links: {a: {size: 3 mm}, b: {size: 2 mm, counts: -1}}");
    assertThat(DemoLathe.figure(TOPIC, exact, "gap/middle").value()).isCloseTo(1, within(1e-12));
  }

  private static Machine chain(String inside) {
    return DemoLathe.with(t -> t + "\nchains:\n  gap: {" + inside + "}\n");
  }
}
