package fettle.mechanics;

import fettle.mechanics.base.Reckoner;
import fettle.mechanics.gears.TrainReckoners;
import fettle.mechanics.stock.StockReckoners;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Every single calculation Fettle can make, by topic. */
public final class Reckoners {

  private static final List<Supplier<List<Reckoner>>> ROOMS =
      List.of(TrainReckoners::all, StockReckoners::all);

  private Reckoners() {}

  /** Returns all reckoners in the order of the handbook. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>();
    for (Supplier<List<Reckoner>> room : ROOMS) {
      all.addAll(room.get());
    }
    return List.copyOf(all);
  }

  /** Returns the reckoner of that topic, if there is one. */
  public static Optional<Reckoner> of(String topic) {
    return all().stream().filter(r -> r.topic().equals(topic)).findFirst();
  }
}
