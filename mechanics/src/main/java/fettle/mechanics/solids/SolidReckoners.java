package fettle.mechanics.solids;

import fettle.mechanics.base.Reckoner;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on elastic bodies. */
public final class SolidReckoners {

  private SolidReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>(BarReckoners.all());
    all.addAll(SectionReckoners.all());
    all.addAll(BodyReckoners.all());
    all.addAll(MeshReckoners.all());
    all.addAll(PartReckoners.all());
    return List.copyOf(all);
  }
}
