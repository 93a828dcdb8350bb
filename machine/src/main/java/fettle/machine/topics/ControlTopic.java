package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What stops the lathe, and what starts it unasked. */
final class ControlTopic implements Topic {

  private static final Source RESTART =
      Source.memory("IEC 60204-1:2016", "7.5, no unexpected start when the supply returns");
  private static final Source STOP = Source.memory("ISO 13850:2015", "4.1, emergency stop");

  @Override
  public String name() {
    return "controls";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Map<String, Values> controls = machine.values().map("controls");
    List<Finding> findings = new ArrayList<>();
    controls.forEach(
        (control, values) -> {
          if (values.needText("holds in").equals("yes")) {
            findings.add(
                new Finding(
                    Finding.Rank.CAUTION,
                    "",
                    "After a power cut the "
                        + control
                        + " lets the lathe start by itself. A no-volt release"
                        + " prevents it; wiring is work for a licensed electrician, local codes hold.",
                    "no start by itself",
                    RESTART));
          }
        });
    boolean stop = controls.keySet().stream().anyMatch(c -> c.contains("emergency stop"));
    if (!stop && machine.values().has("drive")) {
      findings.add(
          new Finding(
              Finding.Rank.CAUTION,
              "",
              "The lathe has no emergency stop within reach.",
              "a latching stop within reach",
              STOP));
    }
    return new Study(List.of(), findings);
  }
}
