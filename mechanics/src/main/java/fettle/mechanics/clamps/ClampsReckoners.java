package fettle.mechanics.clamps;

import fettle.mechanics.base.Reckoner;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on clamps, gibs and what they must hold. */
public final class ClampsReckoners {

  private ClampsReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>(HoldingReckoners.all());
    all.addAll(CamReckoners.all());
    all.addAll(SlotReckoners.all());
    all.addAll(ConeReckoners.all());
    all.addAll(GibReckoners.all());
    return List.copyOf(all);
  }
}
