package fettle.machine.trials;

import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Quantiles;
import fettle.mechanics.metrology.Verdict;

/**
 * A figure held against its limit after ISO 14253-1.
 *
 * @param limit the limit
 * @param verdict good, not good or cannot tell
 * @param more readings to add that would settle it; 0 if it is settled, infinite if only a better
 *     instrument would [-]
 * @param way what would settle it, in words; empty if it is settled
 */
public record Judged(Limit limit, Verdict verdict, double more, String way) {

  private static final double CONFIDENCE = 0.95;
  private static final double FAR_TOO_MANY = 1000;

  static Judged of(Measured figure, Limit limit) {
    double nu = figure.budget().freedom();
    double whole = Double.isInfinite(nu) ? nu : Math.max(1, Math.floor(nu + 1e-9));
    double widened = Quantiles.student(CONFIDENCE, whole) / Verdict.GUARD;
    double u = figure.standard() * widened;
    Verdict verdict =
        Double.isInfinite(limit.low())
            ? Verdict.upper(figure.value(), u, limit.high(), Verdict.GUARD)
            : Double.isInfinite(limit.high())
                ? Verdict.lower(figure.value(), u, limit.low(), Verdict.GUARD)
                : Verdict.between(figure.value(), u, limit.low(), limit.high(), CONFIDENCE);
    if (verdict.outcome() != Verdict.Outcome.CANNOT_TELL) {
      return new Judged(limit, verdict, 0, "");
    }
    double random = share(figure, Contribution.Kind.READINGS) * widened;
    double fixed = share(figure, Contribution.Kind.JUDGEMENT) * widened;
    double needed = verdict.readingsNeeded(figure.taken(), random, fixed);
    double more = needed <= FAR_TOO_MANY ? Math.max(1, needed - figure.taken()) : needed;
    return new Judged(limit, verdict, more, way(figure, more));
  }

  private static String way(Measured figure, double more) {
    if (more <= FAR_TOO_MANY) {
      return Math.round(more) + " more " + figure.repeat() + " would settle it";
    }
    String largest =
        figure.budget().ranked().stream()
            .filter(c -> c.kind() == Contribution.Kind.JUDGEMENT)
            .map(Contribution::name)
            .findFirst()
            .orElse("the scatter");
    return Double.isInfinite(more)
        ? "no number of " + figure.repeat() + " settles it; what must become surer is: " + largest
        : "it lies too near the limit: more than "
            + Math.round(FAR_TOO_MANY)
            + " "
            + figure.repeat()
            + " would be needed";
  }

  private static double share(Measured figure, Contribution.Kind kind) {
    return Math.sqrt(
        figure.budget().contributions().stream()
            .filter(c -> c.kind() == kind)
            .mapToDouble(c -> c.share() * c.share())
            .sum());
  }
}
