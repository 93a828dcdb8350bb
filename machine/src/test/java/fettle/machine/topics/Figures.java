package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Figures of a machine by their ids. */
final class Figures {

  private Figures() {}

  static Map<String, Figure> of(Machine machine) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    Topics.study(machine, Optional.empty()).figures().forEach(f -> figures.put(f.id(), f));
    return figures;
  }

  /**
   * Returns the value of a figure as it is shown.
   *
   * @param machine the lathe
   * @param id the figure
   * @return its value [shown]
   */
  static double shown(Machine machine, String id) {
    Figure figure = of(machine).get(id);
    if (figure == null) {
      throw new AssertionError("no figure " + id + " among " + of(machine).keySet());
    }
    return figure.working().orElseThrow().shown();
  }
}
