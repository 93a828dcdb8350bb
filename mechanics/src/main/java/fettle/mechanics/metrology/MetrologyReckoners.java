package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;

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
    return all.stream().map(MetrologyReckoners::finite).toList();
  }

  /** Refuses inputs so far out that a result overflows or a matrix cannot be solved. */
  private static Reckoner finite(Reckoner reckoner) {
    return new Reckoner(
        reckoner.topic(),
        reckoner.group(),
        reckoner.title(),
        reckoner.inputs(),
        reckoner.results(),
        reckoner.source(),
        given -> finite(reckoner, given));
  }

  private static Answer finite(Reckoner reckoner, Given given) {
    Answer answer;
    try {
      answer = reckoner.rule().apply(given);
    } catch (MathRuntimeException e) {
      throw new IllegalArgumentException(
          reckoner.topic()
              + ": these inputs cannot be computed with ("
              + e.getMessage()
              + "); check their units and sizes",
          e);
    }
    answer
        .values()
        .forEach(
            (name, value) -> {
              if (!isFinite(value)) {
                throw new IllegalArgumentException(
                    reckoner.topic()
                        + ": "
                        + name
                        + " overflows with these inputs; check their units and sizes");
              }
            });
    return answer;
  }

  private static boolean isFinite(Answer.Value value) {
    if (value instanceof Answer.Value.Real real) {
      return Double.isFinite(real.coherent());
    }
    return !(value instanceof Answer.Value.Several several)
        || several.coherent().stream().allMatch(Double::isFinite);
  }
}
