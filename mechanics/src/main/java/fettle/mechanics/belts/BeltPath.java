package fettle.mechanics.belts;

/**
 * A belt round two pulleys, by exact geometry on pitch circles.
 *
 * @param small smaller pitch diameter d [mm]
 * @param large larger pitch diameter D [mm]
 * @param centres centre distance C [mm]
 * @param way open or crossed
 * @see Sources#GEOMETRY
 */
public record BeltPath(double small, double large, double centres, Way way) {

  /** How the belt runs. */
  public enum Way {
    /** Both pulleys turn the same way. */
    OPEN,
    /** The pulleys turn opposite ways. */
    CROSSED
  }

  /** Puts the pulleys in order and refuses pulleys that touch. */
  public BeltPath {
    Need.positive("d", small);
    Need.positive("D", large);
    Need.positive("C", centres);
    double least = Math.min(small, large);
    large = Math.max(small, large);
    small = least;
    double needed = way == Way.OPEN ? (large - small) / 2 : (large + small) / 2;
    if (!(centres > needed)) {
      throw new IllegalArgumentException(
          "C: found " + centres + " mm, expected more than " + needed + " mm for these pulleys");
    }
  }

  /**
   * Returns the angle between belt and line of centres: {@code asin((D-d)/(2C))}, crossed {@code
   * asin((D+d)/(2C))}.
   *
   * @return angle [rad]
   */
  public double angle() {
    double sum = way == Way.OPEN ? large - small : large + small;
    return Math.asin(sum / (2 * centres));
  }

  /**
   * Returns the belt length on the pitch line.
   *
   * @return L [mm]
   */
  public double length() {
    double a = angle();
    double straight = 2 * centres * Math.cos(a);
    return way == Way.OPEN
        ? straight + Math.PI * (large + small) / 2 + a * (large - small)
        : straight + (Math.PI / 2 + a) * (large + small);
  }

  /**
   * Returns the wrap on the smaller pulley.
   *
   * @return wrap [rad]
   */
  public double wrapSmall() {
    return way == Way.OPEN ? Math.PI - 2 * angle() : Math.PI + 2 * angle();
  }

  /**
   * Returns the wrap on the larger pulley.
   *
   * @return wrap [rad]
   */
  public double wrapLarge() {
    return Math.PI + 2 * angle();
  }

  /**
   * Returns the free length of one side.
   *
   * @return span [mm]
   */
  public double span() {
    return centres * Math.cos(angle());
  }

  /**
   * Finds the centre distance for a belt of given length.
   *
   * @param first one pitch diameter [mm]
   * @param second the other [mm]
   * @param length belt length [mm]
   * @param way open or crossed
   * @throws IllegalArgumentException if the belt is too short
   */
  public static BeltPath ofLength(double first, double second, double length, Way way) {
    Need.positive("d", first);
    Need.positive("D", second);
    Need.positive("L", length);
    double sum = way == Way.OPEN ? Math.abs(first - second) : first + second;
    double low = sum / 2 * (1 + 1e-12) + 1e-9;
    double high = length;
    if (!(high > low) || !(new BeltPath(first, second, low, way).length() < length)) {
      throw new IllegalArgumentException(
          "L: found "
              + length
              + " mm, too short to go round pulleys of "
              + first
              + " and "
              + second
              + " mm");
    }
    for (int i = 0; i < 200 && high - low > 1e-14 * high; i++) {
      double middle = 0.5 * (low + high);
      if (new BeltPath(first, second, middle, way).length() < length) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new BeltPath(first, second, 0.5 * (low + high), way);
  }

  /**
   * Finds the other pulley for a belt of given length on given centres: the pulley of ratio {@code
   * i}.
   *
   * @param ratio D/d, 1 or more [-]
   * @param length L [mm]
   * @param centres C [mm]
   * @param way open or crossed
   */
  public static BeltPath ofRatio(double ratio, double length, double centres, Way way) {
    Need.within("ratio D/d", ratio, 1, 20);
    Need.positive("L", length);
    double low = 1e-6 * Need.positive("C", centres);
    double high = 2 * centres / (way == Way.OPEN ? Math.max(ratio - 1, 1e-3) : ratio + 1);
    high = Math.min(high * (1 - 1e-12), 10 * length);
    if (!(new BeltPath(low, ratio * low, centres, way).length() < length)
        || !(new BeltPath(high, ratio * high, centres, way).length() > length)) {
      throw new IllegalArgumentException(
          "no pulleys of ratio "
              + ratio
              + " take a belt of "
              + length
              + " mm on centres of "
              + centres
              + " mm");
    }
    for (int i = 0; i < 200 && high - low > 1e-14 * high; i++) {
      double middle = 0.5 * (low + high);
      if (new BeltPath(middle, ratio * middle, centres, way).length() < length) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double d = 0.5 * (low + high);
    return new BeltPath(d, ratio * d, centres, way);
  }
}
