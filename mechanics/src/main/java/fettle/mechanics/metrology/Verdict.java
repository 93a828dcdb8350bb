package fettle.mechanics.metrology;

/**
 * Verdict on a measured value with its uncertainty (ISO 14253-1): the guard band counts against the
 * one who proves.
 *
 * @param outcome good, not good or cannot tell
 * @param probability probability that the true value keeps the limits [-]
 * @param neededUncertainty standard uncertainty at which the verdict would be sure [as the value]
 */
public record Verdict(Outcome outcome, double probability, double neededUncertainty) {

  /** Guard factor, one-sided 95 %. */
  public static final double GUARD = 1.6448536269514722;

  /** What can be said. */
  public enum Outcome {
    /** Proven inside. */
    GOOD("good", 1),
    /** Proven outside. */
    NOT_GOOD("not good", -1),
    /** Neither can be proven. */
    CANNOT_TELL("cannot tell", 0);

    private final String words;
    private final int code;

    Outcome(String words, int code) {
      this.words = words;
      this.code = code;
    }

    /** Returns the outcome in words. */
    public String words() {
      return words;
    }
  }

  /** Returns 1 for good, -1 for not good, 0 for cannot tell. */
  public int code() {
    return outcome.code;
  }

  /**
   * Judges against an upper limit: good if {@code y <= T - g u}, not good if {@code y >= T + g u}.
   *
   * @param y measured value [any]
   * @param u standard uncertainty [same]
   * @param limit upper limit T [same]
   * @param guard guard factor g [-]
   */
  public static Verdict upper(double y, double u, double limit, double guard) {
    check(u, guard);
    Outcome outcome =
        y <= limit - guard * u
            ? Outcome.GOOD
            : y >= limit + guard * u ? Outcome.NOT_GOOD : Outcome.CANNOT_TELL;
    return new Verdict(
        outcome, inside(y, u, Double.NEGATIVE_INFINITY, limit), Math.abs(limit - y) / guard);
  }

  /**
   * Judges against a lower limit.
   *
   * @param y measured value [any]
   * @param u standard uncertainty [same]
   * @param limit lower limit [same]
   * @param guard guard factor g [-]
   */
  public static Verdict lower(double y, double u, double limit, double guard) {
    Verdict mirrored = upper(-y, u, -limit, guard);
    return new Verdict(mirrored.outcome, mirrored.probability, mirrored.neededUncertainty);
  }

  /**
   * Judges against two limits by the probability that both are kept: good from 0.95, not good up to
   * 0.05.
   *
   * @param y measured value [any]
   * @param u standard uncertainty [same]
   * @param low lower limit [same]
   * @param high upper limit [same]
   * @param confidence confidence, e.g. 0.95 [-]
   */
  public static Verdict between(double y, double u, double low, double high, double confidence) {
    Require.between("confidence", confidence, 0.5, 1);
    check(u, 1);
    if (!(low < high)) {
      throw new IllegalArgumentException(
          "limits: lower " + low + " is not below upper " + high + "; check their signs");
    }
    double p = inside(y, u, low, high);
    Outcome outcome =
        p >= confidence
            ? Outcome.GOOD
            : p <= 1 - confidence ? Outcome.NOT_GOOD : Outcome.CANNOT_TELL;
    double nearest = Math.min(Math.abs(y - low), Math.abs(y - high));
    return new Verdict(outcome, p, nearest / Quantiles.normal(confidence));
  }

  private static double inside(double y, double u, double low, double high) {
    if (u == 0) {
      return y >= low && y <= high ? 1 : 0;
    }
    double upper =
        high == Double.POSITIVE_INFINITY ? 1 : Quantiles.normalProbability((high - y) / u);
    double lower = low == Double.NEGATIVE_INFINITY ? 0 : Quantiles.normalProbability((low - y) / u);
    return Math.max(0, upper - lower);
  }

  private static void check(double u, double guard) {
    Require.notNegative("u", u);
    Require.positive("g", guard);
  }

  /**
   * Returns the readings that would settle the matter: {@code n (u_A/sqrt(u*^2 - u_B^2))^2}.
   *
   * @param readings readings so far
   * @param random standard uncertainty from the readings u_A [any]
   * @param fixed standard uncertainty from all else u_B [same]
   * @return number of readings in all; infinite if only a better instrument helps [-]
   */
  public double readingsNeeded(int readings, double random, double fixed) {
    double room = neededUncertainty * neededUncertainty - fixed * fixed;
    if (!(room > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.ceil(readings * random * random / room - 1e-9);
  }
}
