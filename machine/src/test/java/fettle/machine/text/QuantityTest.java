package fettle.machine.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Unit;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities are read exactly, in metric and inch, and bare or impossible numbers are refused. */
class QuantityTest {

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          2 mm,              2,          0
          1/2 in,            12.7,       0
          1 3/4 in,          44.45,      0
          -.5 mm,            -0.5,       0
          20 DP,             1.27,       0
          8 tpi,             3.175,      0
          0.25 mm ± 0.05 mm, 0.25,       0.05
          0.25 ± 0.05 mm,    0.25,       0.05
          0.25 mm +/- 2 µm,  0.25,       0.002
          1 in ± 0.1 mm,     25.4,       0.1
          1 in ± 0.001 in,   25.4,       0.0254
          0.2 to 0.3 mm,     0.25,       0.05
          1 in to 26 mm,     25.7,       0.3
          3 mm to 2 mm,      2.5,        0.5
          2e-3 m,            2,          0
          """)
  void lengths(String text, double value, double doubt) throws Quantity.NotOne {
    Quantity quantity = Quantity.parse(text, Dimension.LENGTH, Unit.MM);
    assertThat(quantity.value()).isCloseTo(value, within(1e-12));
    assertThat(quantity.doubt()).isCloseTo(doubt, within(1e-12));
  }

  /** A doubt in threads per inch is the share of the count: 8 ± 1 tpi is 3.175 ± 1/8 of it. */
  @ParameterizedTest
  @CsvSource({"8 tpi ± 1 tpi, 3.175, 0.396875", "20 DP ± 0.2, 1.27, 0.0127"})
  void countsPerInch(String text, double value, double doubt) throws Quantity.NotOne {
    Quantity quantity = Quantity.parse(text, Dimension.LENGTH, Unit.MM);
    assertThat(quantity.value()).isCloseTo(value, within(1e-12));
    assertThat(quantity.doubt()).isCloseTo(doubt, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "10 deg to 20 deg, 0.2617993877991494, 0.08726646259971647",
    "0.1 rad to 10 deg, 0.1372664625997165, 0.0372664625997165",
    "10 deg to 0.1 rad, 0.1372664625997165, 0.0372664625997165",
    "0 rad to 10 deg, 0.08726646259971647, 0.08726646259971647"
  })
  void anglesMayMixRadiansAndDegrees(String text, double value, double doubt)
      throws Quantity.NotOne {
    Quantity quantity = Quantity.parse(text, Dimension.ANGLE, Unit.DEG);
    assertThat(quantity.value()).isCloseTo(value, within(1e-12));
    assertThat(quantity.doubt()).isCloseTo(doubt, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "2",
        "2.5",
        "mm",
        "2 kg",
        "2 furlong",
        "two mm",
        "NaN mm",
        "NaN",
        "Infinity mm",
        "inf",
        "1e999 mm",
        "1e400",
        "0x10 mm",
        "1_000 mm",
        "1,5 mm",
        "1.2.3 mm",
        "2 mm mm",
        "2 mm ±",
        "2 mm ± x",
        "2 mm ± -1 mm",
        "2 mm ± 1 kg",
        "± 1 mm",
        "2 mm to",
        "1/0 in",
        "1 1/0 in",
        "0 tpi",
        "0 DP",
        "2 mm ± 1 tpi",
        "8 tpi ± 0.1 mm",
        "--2 mm",
        "2 mm; 3 mm",
        "2 MM",
        "2 Mm ± 1",
        "٣ mm",
        "2\u0000 mm",
        "1111111111111111111111111111111111111111111111111111111111111111111111111111 mm",
        "2 mm ± 1 mm ± 1 mm",
        "1/2/3 in",
        "e5 mm",
        ". mm",
        "5. mm"
      })
  void refusesWhatIsNoLength(String text) {
    assertThatThrownBy(() -> Quantity.parse(text, Dimension.LENGTH, Unit.MM))
        .isInstanceOfSatisfying(Quantity.NotOne.class, e -> assertThat(e.expected()).isNotBlank());
  }

  @Property(tries = 500)
  void everyUnitIsReadExactly(
      @ForAll("units") Unit unit, @ForAll @IntRange(min = 1, max = 999_999) int thousandths)
      throws Quantity.NotOne {
    Ratio number = Ratio.of(thousandths, 1000);
    String text = number.decimal(3) + " " + unit.symbol();
    Quantity quantity = Quantity.parse(text, unit.dimension(), unit);
    assertThat(quantity.exact()).isEqualTo(unit.toCoherent(number));
    assertThat(unit.fromCoherent(quantity.value()))
        .isCloseTo(thousandths / 1000.0, within(1e-9 * thousandths));
  }

  @Property(tries = 300)
  void inchFractionsStayExact(
      @ForAll @IntRange(min = 0, max = 99) int whole,
      @ForAll @IntRange(min = 1, max = 127) int numerator,
      @ForAll @IntRange(min = 1, max = 128) int denominator)
      throws Quantity.NotOne {
    String text = whole + " " + numerator + "/" + denominator + " in";
    Ratio millimetres = Ratio.of((whole * (long) denominator + numerator) * 127, denominator * 5L);
    Quantity inch = Quantity.parse(text, Dimension.LENGTH, Unit.MM);
    assertThat(inch.exact().sameAs(millimetres)).isTrue();
  }

  @Property(tries = 300)
  void aRangeIsItsMiddleAndHalfItsWidth(
      @ForAll @IntRange(min = 1, max = 9999) int a, @ForAll @IntRange(min = 1, max = 9999) int b)
      throws Quantity.NotOne {
    Quantity range = Quantity.parse(a + " mm to " + b + " in", Dimension.LENGTH, Unit.MM);
    double end = b * 25.4;
    assertThat(range.value()).isCloseTo((a + end) / 2, within(1e-9 * (a + end)));
    assertThat(range.doubt()).isCloseTo(Math.abs(end - a) / 2, within(1e-9 * (a + end)));
  }

  @Property(tries = 300)
  void aUnitOfAnotherKindIsRefused(@ForAll("units") Unit unit, @ForAll("units") Unit other) {
    if (unit.dimension() != other.dimension()) {
      assertThatThrownBy(() -> Quantity.parse("2 " + unit.symbol(), other.dimension(), other))
          .isInstanceOf(Quantity.NotOne.class);
    }
  }

  /** No text may throw anything but the refusal, nor give a value that is no number. */
  @Property(tries = 2000)
  void anyTextIsReadOrRefused(@ForAll("texts") String text) {
    try {
      Quantity quantity = Quantity.parse(text, Dimension.LENGTH, Unit.MM);
      assertThat(quantity.value()).isFinite();
      assertThat(quantity.doubt()).isGreaterThanOrEqualTo(0);
    } catch (Quantity.NotOne e) {
      assertThat(e.expected()).isNotBlank();
    }
  }

  @Provide
  Arbitrary<Unit> units() {
    return Arbitraries.of(
        Unit.all().values().stream().filter(u -> !u.symbol().isEmpty()).distinct().toList());
  }

  @Provide
  Arbitrary<String> texts() {
    List<String> pieces =
        List.of(
            "1",
            "23",
            ".5",
            "0",
            "7/16",
            "/",
            "-",
            "+",
            " ",
            "e9",
            "e-99",
            "mm",
            "in",
            "tpi",
            "DP",
            "±",
            "+/-",
            " to ",
            "%",
            "kg",
            "µm",
            "9999999999999",
            "x",
            "\t");
    return Arbitraries.of(pieces).list().ofMinSize(1).ofMaxSize(9).map(l -> String.join("", l));
  }
}
