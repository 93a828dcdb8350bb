package fettle.mechanics.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialsTest {

  @Test
  void everyMaterialCanBeReckonedWith() {
    for (Material m : Materials.all()) {
      assertThat(m.elasticity()).as(m.designation()).isBetween(300.0, 215_000.0);
      assertThat(m.density()).as(m.designation()).isBetween(0.9e-9, 9e-9);
      assertThat(m.poisson()).as(m.designation()).isBetween(0.2, 0.49);
      assertThat(m.shearModulus()).as(m.designation()).isLessThan(m.elasticity() / 2);
      assertThat(m.expansion()).as(m.designation()).isBetween(9e-6, 2.1e-4);
      assertThat(m.conductivity()).as(m.designation()).isBetween(0.2, 230.0);
      for (Quantity q : m.properties().values()) {
        assertThat(q.source().document()).as(m.designation()).isNotBlank();
      }
    }
  }

  @Test
  void yieldLiesBelowStrength() {
    for (Material m : Materials.all()) {
      boolean metal = m.family() != Material.Family.PLASTIC;
      if (metal && m.knows(Property.RE) && m.knows(Property.RM)) {
        assertThat(m.yieldStrength()).as(m.designation()).isLessThan(m.strength());
      }
    }
  }

  @Test
  void listedShearModulusAgreesWithTheOthersWithinTwoPercent() {
    for (Material m : Materials.all()) {
      if (m.properties().containsKey(Property.G)) {
        double follows = m.elasticity() / (2 * (1 + m.poisson()));
        assertThat(m.shearModulus()).isCloseTo(follows, within(0.02 * follows));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "c45, C45+N 16-100 mm",
    "GG25, EN-GJL-250",
    "en gjl 200, EN-GJL-200",
    "AlMgSi1, EN AW-6082 T6",
    "CuSn12, CC483K",
    "CuSn8, CW453K",
    "CuSn7ZnPb, CC493K",
    "pa 6, PA6",
    "S235, S235JR",
    "brass, CW614N"
  })
  void findsByOtherNames(String asked, String designation) {
    assertThat(Materials.of(asked).designation()).isEqualTo(designation);
  }

  @ParameterizedTest
  @CsvSource({"C46, C45", "GJL-260, EN-GJL-250", "CW614, CW614N", "42CrM04, 42CrMo4", "POMC1, POM"})
  void suggestsTheNearest(String asked, String expected) {
    assertThatThrownBy(() -> Materials.of(asked))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nearest")
        .hasMessageContaining(expected);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "!!", "unobtainium", "ßßßß"})
  void refusesWhatItDoesNotList(String asked) {
    assertThatThrownBy(() -> Materials.of(asked))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nearest");
  }

  @Test
  void refusesAVeryLongNameShortly() {
    assertThatThrownBy(() -> Materials.of("x".repeat(100_000)))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .hasSizeLessThan(300);
  }

  @Test
  void castIronHasNoYield() {
    assertThatThrownBy(() -> Materials.of("EN-GJL-200").yieldStrength())
        .hasMessageContaining("no listed yield");
  }
}
