package fettle.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.proof.PublishedTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Published rows of threads, screws and materials with one input spoilt at a time. */
class HostileThreadsTest {

  private static final List<String> SPOILT =
      List.of(
          "0",
          "-1",
          "1e300",
          "1e-300",
          "-1e-300",
          "1e9",
          "1e-9",
          "",
          "x",
          "1/0",
          "NaN",
          "∞",
          "0.5",
          "3",
          "1000",
          "99999999999999999999");

  @ParameterizedTest
  @ValueSource(strings = {"threads", "screws", "materials"})
  void eitherRefusesInWordsOrAnswersWithNumbers(String room) {
    for (PublishedTable.Row row :
        PublishedTable.read(HostileThreadsTest.class, "/published/" + room + ".csv")) {
      Reckoner reckoner = Reckoners.of(row.topic()).orElseThrow();
      for (Input input : reckoner.inputs()) {
        for (String spoilt : SPOILT) {
          Map<String, String> inputs = new LinkedHashMap<>(row.inputs());
          inputs.put(input.name(), spoilt);
          check(reckoner, inputs);
        }
      }
    }
  }

  private static void check(Reckoner reckoner, Map<String, String> inputs) {
    String what = reckoner.topic() + " " + inputs;
    try {
      reckoner.answer(inputs).values().forEach((name, value) -> finite(what, name, value));
    } catch (IllegalArgumentException e) {
      assertThat(e.getMessage()).as(what).isNotBlank().hasSizeLessThan(600);
    } catch (RuntimeException e) {
      fail(what + " breaks: " + e, e);
    }
  }

  private static void finite(String what, String name, Answer.Value value) {
    if (value instanceof Answer.Value.Real real) {
      assertThat(real.coherent()).as(what + " -> " + name).isFinite();
    } else if (value instanceof Answer.Value.Several several) {
      assertThat(several.coherent())
          .as(what + " -> " + name)
          .allSatisfy(v -> assertThat(v).isFinite());
    }
  }
}
