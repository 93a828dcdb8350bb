package fettle.machine.forecast;

import fettle.machine.topics.Better;
import fettle.machine.topics.Figure;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Working;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A figure before and after.
 *
 * @param before the figure in the first state
 * @param after the figure in the second state
 * @param difference after minus before, coherent unit; 0 if one is missing or said in words
 * @param doubt half-width of the difference at about 95 %; what both share cancels
 * @param verdict what became of it
 */
public record Row(
    Optional<Figure> before,
    Optional<Figure> after,
    double difference,
    double doubt,
    Verdict verdict) {

  /** Lays a figure of one state beside that of another; one of the two may be missing. */
  static Row of(Optional<Figure> before, Optional<Figure> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return new Row(before, after, 0, 0, before.isEmpty() ? Verdict.NEW : Verdict.GONE);
    }
    Optional<Working> old = before.get().working();
    Optional<Working> now = after.get().working();
    if (old.isEmpty() || now.isEmpty()) {
      boolean same = before.get().words().equals(after.get().words());
      return new Row(before, after, 0, 0, same ? Verdict.SAME : Verdict.DIFFERENT);
    }
    double difference = now.get().value() - old.get().value();
    double doubt = doubt(old.get(), now.get());
    return new Row(
        before, after, difference, doubt, verdict(old.get(), difference, doubt, after.get()));
  }

  /** Returns the figure, of the second state if it has it. */
  public Figure figure() {
    return after.or(() -> before).orElseThrow();
  }

  /** Tells whether the figure is not what it was. */
  public boolean moved() {
    return verdict != Verdict.SAME;
  }

  private static Verdict verdict(Working old, double difference, double doubt, Figure after) {
    double size = Math.max(Math.abs(old.value()), Math.abs(old.value() + difference));
    if (Math.abs(difference) <= 1e-12 * size) {
      return Verdict.SAME;
    }
    if (Math.abs(difference) <= doubt) {
      return Verdict.WITHIN_DOUBT;
    }
    if (after.better() == Better.NEITHER) {
      return Verdict.DIFFERENT;
    }
    return difference > 0 == (after.better() == Better.HIGHER) ? Verdict.BETTER : Verdict.WORSE;
  }

  /** A term with the same name, value and doubt on both sides is the same thing and cancels. */
  private static double doubt(Working old, Working now) {
    Map<Term, Double> left = new LinkedHashMap<>(now.shares());
    old.shares().forEach((term, share) -> left.merge(term, -share, Double::sum));
    double sum = 0;
    for (double share : left.values()) {
      sum += share * share;
    }
    return Math.sqrt(sum);
  }
}
