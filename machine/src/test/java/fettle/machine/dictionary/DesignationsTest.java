package fettle.machine.dictionary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DesignationsTest {

  @ParameterizedTest
  @CsvSource({
    "thread,Tr 14x3 LH",
    "thread,7/16-10 Acme LH",
    "shaft fit,k5",
    "hole fit,JS6",
    "bearing,7007B",
    "bearing,6001-2RS",
    "material,C45",
    "material,EN AW-6082",
    "material,CuSn12",
    "material,C40"
  })
  void whatTheTradeWritesIsTaken(String type, String text) {
    assertThat(Designations.problem(type, text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "thread,Tr 14x30",
    "shaft fit,q6",
    "shaft fit,H7",
    "hole fit,h7",
    "hole fit,H25",
    "bearing,9907",
    "bearing,ball",
    "material,unobtainium"
  })
  void nonsenseIsRefusedWithARemedy(String type, String text) {
    assertThat(Designations.problem(type, text)).get().asString().isNotBlank();
  }

  @ParameterizedTest
  @CsvSource({"EN-GLJ-200,EN-GJL-200"})
  void aMisspeltMaterialIsAnsweredWithTheNearest(String text, String nearest) {
    assertThat(Designations.problem("material", text)).get().asString().contains(nearest);
  }
}
