package fettle.mechanics.metrology;

/**
 * One cause of uncertainty in a result.
 *
 * @param name what it is
 * @param standard standard uncertainty of the input [unit of the input]
 * @param sensitivity change of the result for one unit of the input [result/input]
 * @param freedom degrees of freedom; infinite for limits taken as certain [-]
 * @param kind how it was evaluated
 */
public record Contribution(
    String name, double standard, double sensitivity, double freedom, Kind kind) {

  /** How a contribution was evaluated. */
  public enum Kind {
    /** From repeated readings: more of them make it smaller. */
    READINGS,
    /** From certificates, limits or judgement. */
    JUDGEMENT
  }

  /** Refuses impossible numbers. */
  public Contribution {
    Require.notNegative("standard uncertainty of " + name, standard);
    if (!Double.isFinite(sensitivity)) {
      throw new IllegalArgumentException(
          "sensitivity of " + name + ": found " + sensitivity + ", expected a number");
    }
    if (!(freedom > 0)) {
      throw new IllegalArgumentException(
          "degrees of freedom of " + name + ": found " + freedom + ", expected above 0");
    }
  }

  /** Shape of the distribution a half-width belongs to. */
  public enum Shape {
    /** Standard uncertainty as it stands. */
    STANDARD(1),
    /** All values in the band equally likely. */
    RECTANGULAR(Math.sqrt(3)),
    /** Middle values likelier. */
    TRIANGULAR(Math.sqrt(6)),
    /** Ends likelier, as for a cycling temperature. */
    ARCSINE(Math.sqrt(2)),
    /** The half-width is one step of the reading. */
    RESOLUTION(Math.sqrt(12)),
    /** Expanded uncertainty with factor 2, as on a certificate. */
    CERTIFICATE(2);

    private final double divisor;

    Shape(double divisor) {
      this.divisor = divisor;
    }

    /**
     * Returns the standard uncertainty.
     *
     * @param halfWidth half-width, step or expanded uncertainty [any]
     * @return standard uncertainty [same]
     */
    public double standard(double halfWidth) {
      return halfWidth / divisor;
    }
  }

  /**
   * Returns a contribution from judgement.
   *
   * @param name what it is
   * @param halfWidth half-width in the sense of the shape [unit of the input]
   * @param shape the distribution
   * @param sensitivity sensitivity [result/input]
   */
  public static Contribution of(String name, double halfWidth, Shape shape, double sensitivity) {
    return new Contribution(
        name, shape.standard(halfWidth), sensitivity, Double.POSITIVE_INFINITY, Kind.JUDGEMENT);
  }

  /**
   * Returns a contribution from repeated readings.
   *
   * @param name what it is
   * @param standard standard uncertainty of their mean [unit of the input]
   * @param sensitivity sensitivity [result/input]
   * @param freedom degrees of freedom [-]
   */
  public static Contribution readings(
      String name, double standard, double sensitivity, double freedom) {
    return new Contribution(name, standard, sensitivity, freedom, Kind.READINGS);
  }

  /**
   * Returns the degrees of freedom that a doubt about a standard uncertainty stands for: {@code 1/2
   * (du/u)^-2}.
   *
   * @param doubt relative doubt of the standard uncertainty [-]
   * @return degrees of freedom [-]
   */
  public static double freedomOfDoubt(double doubt) {
    Require.notNegative("doubt", doubt);
    return doubt == 0 ? Double.POSITIVE_INFINITY : 0.5 / (doubt * doubt);
  }

  /**
   * Returns the share of the result's uncertainty.
   *
   * @return sensitivity times standard uncertainty [result]
   */
  public double share() {
    return sensitivity * standard;
  }
}
