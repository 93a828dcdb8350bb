package fettle.mechanics.bearings;

/**
 * Rating life of rolling bearings with reliability and lubrication.
 *
 * @see Sources#LIFE
 */
public final class RatingLife {

  /** Exponent of ball bearings [-]. */
  public static final double BALL = 3;

  /** Exponent of roller bearings [-]. */
  public static final double ROLLER = 10.0 / 3;

  private static final double MOST = 50;
  private static final Curve RELIABILITY =
      Curve.of(
          new double[] {90, 95, 96, 97, 98, 99, 99.9},
          new double[] {1, .64, .55, .47, .37, .25, .093});

  private RatingLife() {}

  /**
   * Returns the basic rating life {@code L10 = (C/P)^p} in revolutions.
   *
   * @param rating C [N]
   * @param load P [N]
   * @param exponent p [-]
   * @return L10 [revolutions]
   */
  public static double basic(double rating, double load, double exponent) {
    Need.positive("C", rating);
    Need.positive("P", load);
    Need.within("p", exponent, 1, 10);
    return 1e6 * Math.pow(rating / load, exponent);
  }

  /**
   * Returns the life in time: {@code L10h = L10/n}.
   *
   * @param revolutions L10 [revolutions]
   * @param speed n [rad/s]
   * @return life [s]
   */
  public static double time(double revolutions, double speed) {
    return revolutions * 2 * Math.PI / Need.positive("n", speed);
  }

  /**
   * Returns the rating a life asks for: {@code C = P L10^(1/p)}.
   *
   * @param load P [N]
   * @param revolutions wanted L10 [revolutions]
   * @param exponent p [-]
   * @return C [N]
   */
  public static double required(double load, double revolutions, double exponent) {
    return Need.positive("P", load)
        * Math.pow(Need.positive("L10", revolutions) / 1e6, 1 / exponent);
  }

  /**
   * Returns the factor for reliability a1 (values of 2007); between the rows by straight lines.
   *
   * @param percent reliability, 90 to 99.9 [%]
   * @return a1 [-]
   */
  public static double reliability(double percent) {
    return RELIABILITY.at(Need.within("reliability in %", percent, 90, 99.9));
  }

  /**
   * Returns the reference viscosity: {@code nu1 = 45000 n^-0.83 Dpw^-0.5} below 1000 1/min, {@code
   * 4500 n^-0.5 Dpw^-0.5} from there.
   *
   * @param speed n [rad/s]
   * @param pitch Dpw [mm]
   * @return nu1 [mm2/s]
   */
  public static double referenceViscosity(double speed, double pitch) {
    double n = Need.positive("n", speed) * 30 / Math.PI;
    Need.positive("Dpw", pitch);
    double base = n < 1000 - 1e-9 ? 45000 * Math.pow(n, -0.83) : 4500 / Math.sqrt(n);
    return base / Math.sqrt(pitch);
  }

  /** What the life modification factor is for. */
  public enum Kind {
    /** Radial ball bearing. */
    RADIAL_BALL(2.5671, .83, 1.0 / 3, 9.3, 1, 2.2649, 1.9987),
    /** Radial roller bearing. */
    RADIAL_ROLLER(1.5859, 1, .4, 9.185, 1, 1.3993, 1.2348),
    /** Thrust ball bearing. */
    THRUST_BALL(2.5671, .83, 1.0 / 3, 9.3, 3, 2.2649, 1.9987),
    /** Thrust roller bearing. */
    THRUST_ROLLER(1.5859, 1, .4, 9.185, 2.5, 1.3993, 1.2348);

    private final double start;
    private final double bracket;
    private final double power;
    private final double outer;
    private final double divisor;
    private final double low;
    private final double high;

    Kind(
        double start,
        double bracket,
        double power,
        double outer,
        double divisor,
        double low,
        double high) {
      this.start = start;
      this.bracket = bracket;
      this.power = power;
      this.outer = outer;
      this.divisor = divisor;
      this.low = low;
      this.high = high;
    }
  }

  /**
   * Returns the life modification factor a_ISO, at most 50. A kappa above 4 counts as 4.
   *
   * @param kind what bearing
   * @param kappa viscosity ratio, 0.1 or more [-]
   * @param contamination {@code eC Cu/P} [-]
   * @return a_ISO [-]
   */
  public static double modification(Kind kind, double kappa, double contamination) {
    if (!(kappa >= 0.1) || Double.isInfinite(kappa)) {
      throw new IllegalArgumentException(
          "kappa: found "
              + kappa
              + ", expected 0.1 or more; the method does not hold below, use a thicker oil");
    }
    Need.notNegative("eC Cu/P", contamination);
    double k = Math.min(kappa, 4);
    double q =
        k < 0.4
            ? kind.low / Math.pow(k, .054381)
            : kind.high / Math.pow(k, k < 1 ? .19087 : .071739);
    double bracket =
        1
            - Math.pow(Math.max(0, kind.start - q), kind.bracket)
                * Math.pow(contamination / kind.divisor, kind.power);
    return bracket <= 0 ? MOST : Math.min(MOST, 0.1 * Math.pow(bracket, -kind.outer));
  }

  /**
   * Returns the fatigue load limit of a ball bearing by the simple rule: {@code Cu = C0/22}, above
   * 100 mm pitch diameter times {@code (100/Dpw)^0.5}.
   *
   * @param staticRating C0 [N]
   * @param pitch Dpw [mm]
   * @return Cu [N]
   */
  public static double fatigueLimitBall(double staticRating, double pitch) {
    return Need.positive("C0", staticRating)
        / 22
        * (Need.positive("Dpw", pitch) <= 100 ? 1 : Math.sqrt(100 / pitch));
  }

  /**
   * Returns the fatigue load limit of a roller bearing by the simple rule: {@code Cu = C0/8.2},
   * above 100 mm times {@code (100/Dpw)^0.3}.
   *
   * @param staticRating C0 [N]
   * @param pitch Dpw [mm]
   * @return Cu [N]
   */
  public static double fatigueLimitRoller(double staticRating, double pitch) {
    return Need.positive("C0", staticRating)
        / 8.2
        * (Need.positive("Dpw", pitch) <= 100 ? 1 : Math.pow(100 / pitch, 0.3));
  }

  /**
   * Returns the mean load of a duty of several loads, weighed by revolutions: {@code (sum(n t P^p)
   * / sum(n t))^(1/p)}.
   *
   * @param loads P of each part [N]
   * @param speeds n of each part [rad/s]
   * @param times t of each part, any one unit [s]
   * @param exponent p [-]
   * @return mean load [N]
   * @see Sources#MEAN_LOAD
   */
  public static double meanLoad(double[] loads, double[] speeds, double[] times, double exponent) {
    if (loads.length == 0 || loads.length != speeds.length || loads.length != times.length) {
      throw new IllegalArgumentException(
          "a duty needs as many loads as speeds and times; found "
              + loads.length
              + ", "
              + speeds.length
              + " and "
              + times.length);
    }
    Need.within("p", exponent, 1, 10);
    double top = 0;
    double bottom = 0;
    for (int i = 0; i < loads.length; i++) {
      double turns = Need.notNegative("n", speeds[i]) * Need.notNegative("t", times[i]);
      top += turns * Math.pow(Need.notNegative("P", loads[i]), exponent);
      bottom += turns;
    }
    return Math.pow(top / Need.positive("revolutions of the whole duty", bottom), 1 / exponent);
  }

  /**
   * Returns the mean speed of a duty: {@code sum(n t)/sum(t)}.
   *
   * @param speeds n of each part [rad/s]
   * @param times t of each part [s]
   * @return mean speed [rad/s]
   */
  public static double meanSpeed(double[] speeds, double[] times) {
    double turns = 0;
    double time = 0;
    for (int i = 0; i < speeds.length; i++) {
      turns += speeds[i] * times[i];
      time += times[i];
    }
    return turns / Need.positive("time of the whole duty", time);
  }

  /**
   * Returns the rating of a textbook rule with a three-parameter life distribution: {@code C10 = F
   * (x/(x0 + (theta-x0) (ln 1/R)^(1/b)))^(1/p)}. Not a rule of ISO 281.
   *
   * @param load design load F [N]
   * @param multiple wanted life over rated life x [-]
   * @param reliability R, above 0 and below 1 [-]
   * @param least x0 [-]
   * @param spread theta - x0 [-]
   * @param shape b [-]
   * @return C10 [N]
   * @see Sources#WEIBULL
   */
  public static double weibullRating(
      double load, double multiple, double reliability, double least, double spread, double shape) {
    Need.positive("F", load);
    Need.positive("x", multiple);
    Need.within("R", reliability, 1e-9, 1 - 1e-12);
    Need.notNegative("x0", least);
    Need.within("b", shape, 0.1, 100);
    double life = least + spread * Math.pow(-Math.log(reliability), 1 / shape);
    return load * Math.cbrt(multiple / life);
  }
}
