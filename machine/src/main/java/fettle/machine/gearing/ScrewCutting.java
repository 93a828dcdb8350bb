package fettle.machine.gearing;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.Banjo;
import fettle.mechanics.gears.ChangeGearSearch;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What cuts threads on a lathe: change gears on a banjo, everything else fixed.
 *
 * @param train name of the train
 * @param stock teeth of the gears in the drawer
 * @param module module of the change gears [mm]
 * @param banjo the arm that carries them
 * @param fixed lead cut with change gears of 1:1
 */
public record ScrewCutting(
    String train, List<Integer> stock, double module, Banjo banjo, Ratio fixed) {

  /** Errors beyond this are no thread at all. */
  private static final double WORST = 0.02;

  /** Returns what a train cuts threads with; empty if it has no change gears, banjo or drawer. */
  public static Optional<ScrewCutting> of(Machine machine, Train train, Optional<Values> shop) {
    Optional<Values> arm = machine.values().block("banjo");
    Optional<Values> drawer = shop.flatMap(s -> s.block("change gears"));
    boolean cuts = train.use().equals("screw cutting") && train.linear() && train.exact();
    if (!cuts || arm.isEmpty() || drawer.isEmpty()) {
      return Optional.empty();
    }
    return train.elements().stream()
        .filter(e -> e instanceof Element.ChangeGears)
        .findFirst()
        .map(
            gears ->
                new ScrewCutting(
                    train.name(),
                    drawer.get().counts("teeth"),
                    drawer.get().need("module").value(),
                    banjo(arm.get()),
                    train.factor().over(gears.factors().values().iterator().next())));
  }

  private static Banjo banjo(Values arm) {
    return Banjo.of(
        arm.need("centre distance").value(),
        arm.need("gap").value(),
        arm.need("slot from").value(),
        arm.need("slot to").value(),
        arm.need("clearance").value(),
        arm.need("driver boss").value(),
        arm.need("screw boss").value());
  }

  /** Returns the question of the best trains for some leads. */
  public ChangeGearSearch.Query query(
      List<Ratio> leads, int best, Set<ChangeGearSearch.Wheels> wheels) {
    return new ChangeGearSearch.Query(stock, module, banjo, fixed, leads, best, wheels, WORST);
  }
}
