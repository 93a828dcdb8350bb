package fettle.mechanics;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every reckoner of fits, joints and clamps answers with finite numbers or refuses in words. */
class HostileInputTest {

  private static final Set<String> GROUPS = Set.of("fits", "joints", "clamps");
  private static final List<String> HOSTILE =
      List.of("0", "-1", "1", "1e-200", "1e200", "-1e30", "1e9", "1/0", "", "NaN", "abc", "5 kg");

  @TestFactory
  Stream<DynamicTest> hostileInputIsRefusedInWords() {
    return Reckoners.all().stream()
        .filter(r -> GROUPS.contains(r.group()))
        .map(r -> DynamicTest.dynamicTest(r.topic(), () -> check(r)));
  }

  private static void check(Reckoner reckoner) {
    assertThat(finite(reckoner, usual(reckoner))).as("usual inputs answer").isTrue();
    for (Input input : reckoner.inputs()) {
      for (String value : HOSTILE) {
        Map<String, String> inputs = usual(reckoner);
        inputs.put(input.name(), value);
        try {
          finite(reckoner, inputs);
        } catch (IllegalArgumentException e) {
          assertThat(e.getMessage()).isNotBlank().doesNotContain("null");
        }
      }
    }
  }

  /** Returns true if all is finite, fails otherwise. */
  private static boolean finite(Reckoner reckoner, Map<String, String> inputs) {
    Answer answer = reckoner.answer(inputs);
    List<Double> numbers = new ArrayList<>();
    for (Answer.Value value : answer.values().values()) {
      if (value instanceof Answer.Value.Real real) {
        numbers.add(real.coherent());
      } else if (value instanceof Answer.Value.Several several) {
        numbers.addAll(several.coherent());
      }
    }
    assertThat(numbers).as("%s %s", reckoner.topic(), inputs).allMatch(Double::isFinite);
    return answer.none() != null || !answer.values().isEmpty();
  }

  private static Map<String, String> usual(Reckoner reckoner) {
    Map<String, String> inputs = new LinkedHashMap<>();
    for (Input input : reckoner.inputs()) {
      if (input.required() && input.standard() == null) {
        inputs.put(input.name(), usual(reckoner.topic(), input));
      }
    }
    switch (reckoner.topic()) {
      case "fit" -> inputs.put("fit", "H7/g6");
      case "press-fit" -> inputs.put("interference", "0.02");
      case "gib-drag" -> inputs.put("gib_force", "100");
      default -> {}
    }
    return inputs;
  }

  private static String usual(String topic, Input input) {
    return switch (input.name()) {
      case "class" -> "k6";
      case "grade" -> "7";
      case "letter" -> "g";
      case "designation" -> "30 k6";
      case "fit" -> "H7/s6";
      case "datums" -> "A B C";
      case "half_tolerances" -> "0.02,0.01";
      case "thicknesses" -> "10,20";
      case "moduli" -> "206000,100000";
      case "size", "d" -> "20";
      case "D" -> "25";
      case "L" -> topic.equals("clamp-contact") ? "12" : "200";
      case "hub_od", "dw" -> "40";
      case "interference", "max_interference", "offset" -> "0.02";
      case "psi" -> "60";
      case "half_angle", "wedge" -> "10";
      case "slot" -> "20";
      case "b", "h", "l", "L1" -> "40";
      case "R", "d3", "a", "dh" -> "15";
      case "pin_r", "rc", "rb" -> "6";
      case "e" -> "2";
      case "dp", "t", "slot_width", "slot_depth", "thickness", "P" -> "4";
      case "dT" -> "30";
      case "f" -> "0.2";
      default -> "100";
    };
  }
}
