package fettle.mechanics.bearings;

import fettle.mechanics.base.Reckoner;
import java.util.ArrayList;
import java.util.List;

/** All single calculations of this room. */
public final class BearingReckoners {

  private BearingReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>(RatingReckoners.all());
    all.addAll(ContactReckoners.all());
    all.addAll(SeatReckoners.all());
    return all.stream().map(Reckoner::finite).toList();
  }
}
