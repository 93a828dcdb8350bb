package fettle.mechanics.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Exact numbers stay exact, units convert there and back, and inputs are read as written. */
class ExactNumbersTest {

  private static final Reckoner LENGTHS =
      Reckoner.of("test", "lengths", "lengths")
          .input("a", Input.Kind.EXACT, Unit.MM, "a length", null, true)
          .rule(g -> Answer.start().with("a", g.exact("a")));

  private static Given given(String text) {
    return Given.of(LENGTHS, Map.of("a", text));
  }

  @Property(tries = 300)
  void timesAndOverUndoEachOther(@ForAll("ratios") Ratio a, @ForAll("ratios") Ratio b) {
    assertThat(a.times(b)).isEqualTo(b.times(a));
    if (!b.isZero()) {
      assertThat(a.times(b).over(b)).isEqualTo(a);
      assertThat(b.times(b.inverse())).isEqualTo(Ratio.ONE);
    }
  }

  @Property(tries = 300)
  void signsAndSizes(@ForAll("ratios") Ratio a) {
    assertThat(a.negate().negate()).isEqualTo(a);
    assertThat(a.abs().signum()).isEqualTo(Math.abs(a.signum()));
    assertThat(a.negate().toDouble()).isEqualTo(-a.toDouble());
  }

  @Property(tries = 300)
  void theInchIsTheSameWrittenOut(@ForAll("ratios") Ratio a) {
    assertThat(a.folded().inch()).isZero();
    assertThat(a.sameAs(a.folded())).isTrue();
    assertThat(a.folded().toDouble()).isEqualTo(a.toDouble());
    assertThat(a.times(Ratio.INCH).sameAs(a.times(Ratio.of(127, 5)))).isTrue();
  }

  @Property(tries = 300)
  void theDecimalsOfADoubleAreTakenExactly(@ForAll @LongRange(min = -999999, max = 999999) long n) {
    assertThat(Ratio.ofDecimal(n / 1000.0)).isEqualTo(Ratio.of(n, 1000));
    assertThat(Ratio.of(BigDecimal.valueOf(n, 3))).isEqualTo(Ratio.of(n, 1000));
  }

  @Test
  void refusals() {
    assertThatThrownBy(() -> Ratio.of(1, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Ratio.ONE.over(Ratio.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Ratio.ZERO.inverse()).isInstanceOf(IllegalArgumentException.class);
    for (double wrong : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1.0 / 0}) {
      assertThatThrownBy(() -> Ratio.ofDecimal(wrong)).isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> Unit.TPI.toCoherent(Ratio.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 500)
  void everyUnitGoesThereAndBack(
      @ForAll("units") Unit unit, @ForAll @LongRange(min = 1, max = 1_000_000_000) long number) {
    double value = number / 1000.0;
    assertThat(unit.fromCoherent(unit.toCoherent(value))).isCloseTo(value, within(1e-12 * value));
    Ratio exact = unit.toCoherent(Ratio.of(number, 1000));
    assertThat(exact.toDouble())
        .isCloseTo(unit.toCoherent(value), within(1e-12 * Math.abs(exact.toDouble())));
    Ratio back = unit.reciprocal() ? unit.factor().over(exact) : exact.over(unit.factor());
    assertThat(back).isEqualTo(Ratio.of(number, 1000));
  }

  @Test
  void spellingsFindTheirUnit() {
    Unit.all().forEach((symbol, unit) -> assertThat(Unit.parse(symbol)).contains(unit));
    assertThat(Unit.parse("furlong")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          2;              2
          2 mm;           2
          1/2 in;         127/10
          1 3/4 in;       889/20
          1.5e1;          15
          -0.25 mm;       -1/4
          20 DP;          127/100
          8 tpi;          127/40
          pi;             π
          3/2 pi mm;      3/2·π
          2*pi;           2·π
          100 µm;         1/10
          .5;             1/2
          """)
  void inputsAreReadExactly(String text, String exact) {
    assertThat(given(text).exact("a").folded().text().replace("1·π", "π")).isEqualTo(exact);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "mm",
        "NaN",
        "Infinity",
        "1/0",
        "0 tpi",
        "2 kg",
        "1,5",
        "two",
        "0x1f",
        "1e9999",
        "--1",
        "1 2",
        "1e5e5"
      })
  void inputsThatAreNoLengthAreRefused(String text) {
    assertThatThrownBy(() -> given(text).exact("a"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a");
  }

  @Property(tries = 300)
  void inchesAndMillimetresMeet(
      @ForAll @LongRange(min = 1, max = 9999) long n,
      @ForAll @LongRange(min = 1, max = 999) long d) {
    assertThat(given(n + "/" + d + " in").exact("a").sameAs(Ratio.of(n * 127, d * 5))).isTrue();
    assertThat(given(n + "/" + d).exact("a")).isEqualTo(Ratio.of(n, d));
  }

  @Provide
  Arbitrary<Ratio> ratios() {
    return Combinators.combine(
            Arbitraries.longs().between(-100_000, 100_000),
            Arbitraries.longs().between(1, 100_000),
            Arbitraries.integers().between(-3, 3),
            Arbitraries.integers().between(-3, 3))
        .as((n, d, pi, inch) -> new Ratio(Ratio.of(n, d).fraction(), pi, inch));
  }

  @Provide
  Arbitrary<Unit> units() {
    return Arbitraries.of(Unit.all().values().stream().distinct().toList());
  }
}
