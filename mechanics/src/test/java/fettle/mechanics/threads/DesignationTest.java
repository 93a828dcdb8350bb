package fettle.mechanics.threads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DesignationTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "M10x1.25-6g; METRIC; 10; 1.25; 1; RIGHT; 6g",
        "M10; METRIC; 10; 1.5; 1; RIGHT; ''",
        "M 10 × 1 - LH; METRIC; 10; 1; 1; LEFT; ''",
        "M10x1-5g6g-LH; METRIC; 10; 1; 1; LEFT; 5g6g",
        "M16xPh3P1.5-6H; METRIC; 16; 1.5; 2; RIGHT; 6H",
        "m8-6H/6g; METRIC; 8; 1.25; 1; RIGHT; 6H/6g",
        "M20-7g6g-L; METRIC; 20; 2.5; 1; RIGHT; 7g6g",
        "Tr 14x3 LH; TRAPEZOIDAL; 14; 3; 1; LEFT; ''",
        "Tr14x3LH-7H; TRAPEZOIDAL; 14; 3; 1; LEFT; 7H",
        "Tr16x8P4; TRAPEZOIDAL; 16; 4; 2; RIGHT; ''",
        "Tr16x8(P4)LH; TRAPEZOIDAL; 16; 4; 2; LEFT; ''",
        "TR 40 x 14 P7 - 7e; TRAPEZOIDAL; 40; 7; 2; RIGHT; 7e",
        "7/16-10 Acme LH; ACME; 11.1125; 2.54; 1; LEFT; ''",
        "1 3/4-4-2G; UNIFIED; 0; 0; 0; RIGHT; ''",
        "1 3/4-4 ACME-2G; ACME; 44.45; 6.35; 1; RIGHT; 2G",
        "2.875-0.4P-0.8L-ACME-2G; ACME; 73.025; 10.16; 2; RIGHT; 2G",
        "5-2 Acme 2 start; ACME; 127; 12.7; 2; RIGHT; ''",
        "1/2-28 UNEF-2A; UNIFIED; 12.7; 0.9071428571; 1; RIGHT; 2A",
        "1/4-20; UNIFIED; 6.35; 1.27; 1; RIGHT; ''",
        "10-32 UNF; UNIFIED; 4.826; 0.79375; 1; RIGHT; ''",
        "1-8 UNC; UNIFIED; 25.4; 3.175; 1; RIGHT; ''",
        "#6-32 UNC-2B; UNIFIED; 3.5052; 0.79375; 1; RIGHT; 2B",
        "1/4 W 20; WHITWORTH; 6.35; 1.27; 1; RIGHT; ''",
        "W 1/4; WHITWORTH; 6.35; 1.27; 1; RIGHT; ''",
        "3/8 BSF; WHITWORTH; 9.525; 1.27; 1; RIGHT; ''",
        "1/2 in. - 12 B.S.W.; WHITWORTH; 12.7; 2.1166666667; 1; RIGHT; ''",
        "3/8x32 ME; WHITWORTH; 9.525; 0.79375; 1; RIGHT; ''",
        "2-4 1/2 UNC; UNIFIED; 50.8; 5.6444444444; 1; RIGHT; ''"
      })
  void readsTheTradesSpellings(
      String text, ThreadForm form, double d, double p, int starts, Hand hand, String fit) {
    if (starts == 0) {
      assertThatThrownBy(() -> ThreadDesignation.parse(text)).hasMessageContaining("expected");
      return;
    }
    ThreadDesignation t = ThreadDesignation.parse(text);
    assertThat(t.form()).isEqualTo(form);
    assertThat(t.diameter().toDouble()).isCloseTo(d, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(t.pitch().toDouble()).isCloseTo(p, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(t.starts()).isEqualTo(starts);
    assertThat(t.hand()).isEqualTo(hand);
    assertThat(t.fit()).isEqualTo(fit);
    ThreadDesignation again = ThreadDesignation.parse(t.text());
    assertThat(again.profile().d()).isCloseTo(d, org.assertj.core.data.Offset.offset(1e-4));
    assertThat(again.profile().p()).isCloseTo(p, org.assertj.core.data.Offset.offset(1e-4));
    assertThat(again.starts()).isEqualTo(starts);
    assertThat(again.hand()).isEqualTo(hand);
    assertThat(again.fit()).isEqualTo(fit);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "   ",
        "M",
        "M0",
        "M10x0",
        "M10x9",
        "M13",
        "M10x1.25x2",
        "M10x3P2",
        "Tr16",
        "Tr16x-4",
        "Tr16x7P4",
        "Tr2x4",
        "7/16",
        "1/0-20 UNC",
        "1/4-0 UNC",
        "1/4-20-28 UNC",
        "G 1/2",
        "hexagon",
        "M10x1.25-6g; drop",
        "M1e300",
        "Tr999999x999999",
        "0/4-20 UNC",
        "M10x1.25M10x1.25M10x1.25M10x1.25M10x1.25M10x1.25M10x1.25M10x1.25",
        "١٠"
      })
  void refusesWhatIsNoThread(String text) {
    assertThatThrownBy(() -> ThreadDesignation.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("expected");
  }
}
