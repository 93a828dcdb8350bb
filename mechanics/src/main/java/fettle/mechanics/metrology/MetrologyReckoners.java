package fettle.mechanics.metrology;

import fettle.mechanics.base.Reckoner;
import java.util.ArrayList;
import java.util.List;

/** Every single calculation of measuring and acceptance. */
public final class MetrologyReckoners {

  private MetrologyReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>();
    all.addAll(StatisticsReckoners.all());
    all.addAll(UncertaintyReckoners.all());
    all.addAll(ControlReckoners.all());
    all.addAll(DialReckoners.all());
    all.addAll(SpindleReckoners.all());
    all.addAll(AlignmentReckoners.all());
    all.addAll(ForceReckoners.all());
    all.addAll(VerdictReckoners.all());
    all.addAll(AdjustReckoners.all());
    all.addAll(PlanReckoners.all());
    return List.copyOf(all);
  }
}
