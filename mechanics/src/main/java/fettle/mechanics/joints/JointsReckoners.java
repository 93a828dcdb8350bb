package fettle.mechanics.joints;

import fettle.mechanics.base.Reckoner;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on bolts, keys, pins, set-screws and shafts in torsion. */
public final class JointsReckoners {

  private JointsReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>(BoltReckoners.all());
    all.addAll(KeyReckoners.all());
    return List.copyOf(all);
  }
}
