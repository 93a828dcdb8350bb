package fettle.desk.web;

import fettle.desk.picture.Elevations;
import fettle.desk.picture.Scene;
import fettle.desk.picture.Stand;
import fettle.machine.lathe.Machine;
import java.util.Set;

/** The lathe of a state as data for the picture in three dimensions. */
final class Solids {

  private Solids() {}

  static String json(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    Set<String> planned =
        Chosen.of(visit.opened(), "")
            .state()
            .machine()
            .map(m -> Elevations.differing(m, machine))
            .orElse(Set.of());
    Stand stand = Stand.of(machine, LatheRoom.positions(visit, machine));
    return Scene.json(machine, stand, planned, m -> LatheRoom.member(m, chosen));
  }
}
