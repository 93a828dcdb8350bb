package fettle.mechanics.belts;

import java.util.List;

/**
 * Sizes of the belts a small lathe uses.
 *
 * @see Sources#V_BELTS
 */
public enum BeltKind {
  Z("Z", 8.5, 12, 50, 0),
  A("A", 11, 15, 75, 0),
  B("B", 14, 19, 125, 0),
  SPZ("SPZ", 8.5, 12, 63, 0),
  SPA("SPA", 11, 15, 90, 0),
  SPB("SPB", 14, 19, 140, 0),
  PH("PH", 0, 1.60, 13, 0),
  PJ("PJ", 0, 2.34, 20, 0),
  PK("PK", 0, 3.56, 45, 0),
  PL("PL", 0, 4.70, 75, 0),
  PM("PM", 0, 9.40, 180, 0),
  MXL("MXL", 0, 2.032, 10, 0.508),
  XL("XL", 0, 5.08, 10, 0.508),
  L("L", 0, 9.525, 12, 0.762),
  H("H", 0, 12.7, 14, 1.372),
  XH("XH", 0, 22.225, 22, 2.794),
  M3("3M", 0, 3, 10, 0.762),
  M5("5M", 0, 5, 14, 1.143),
  M8("8M", 0, 8, 22, 1.372),
  M14("14M", 0, 14, 28, 2.794);

  private static final List<Integer> LENGTHS_Z =
      List.of(405, 475, 530, 625, 700, 780, 920, 1080, 1330, 1420, 1540);
  private static final List<Integer> LENGTHS_A =
      List.of(630, 700, 790, 890, 990, 1100, 1250, 1430, 1550, 1640, 1750, 1940, 2050, 2200);
  private static final List<Integer> LENGTHS_SP =
      List.of(630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000);
  private static final List<Integer> LENGTHS_8M =
      List.of(
          480, 560, 640, 720, 800, 880, 960, 1040, 1120, 1200, 1280, 1440, 1600, 1760, 1800, 2000);
  private static final List<Integer> CODES_L =
      List.of(
          124, 150, 187, 210, 225, 240, 255, 270, 285, 300, 322, 345, 367, 390, 420, 450, 480, 510,
          540, 600);

  private final String mark;
  private final double width;
  private final double pitch;
  private final int least;
  private final double twiceLine;

  BeltKind(String mark, double width, double pitch, int least, double twiceLine) {
    this.mark = mark;
    this.width = width;
    this.pitch = pitch;
    this.least = least;
    this.twiceLine = twiceLine;
  }

  /** Returns the kind of a mark. */
  public static BeltKind of(String mark) {
    for (BeltKind kind : values()) {
      if (kind.mark.equals(mark)) {
        return kind;
      }
    }
    throw new IllegalArgumentException("section: found '" + mark + "', expected a listed belt");
  }

  /** Returns the mark of the trade. */
  public String mark() {
    return mark;
  }

  /** Tells whether the belt has teeth. */
  public boolean isToothed() {
    return twiceLine > 0;
  }

  /** Tells whether the belt is a V belt. */
  public boolean isVee() {
    return width > 0;
  }

  /**
   * Returns tooth pitch, rib pitch or groove spacing.
   *
   * @return pitch [mm]
   */
  public double pitch() {
    return pitch;
  }

  /** Returns the least pulley: diameter in mm, of toothed belts the number of teeth. */
  public int least() {
    return least;
  }

  /**
   * Returns how much a toothed pulley is smaller than its pitch circle, 2u.
   *
   * @return pitch diameter less outside diameter [mm]
   */
  public double pitchLine() {
    return twiceLine;
  }

  /**
   * Returns the groove angle of a pulley.
   *
   * @param diameter datum diameter [mm]
   * @return phi [rad]
   */
  public double groove(double diameter) {
    if (!isVee()) {
      return Math.toRadians(40);
    }
    double limit = pitch == 12 ? 80 : pitch == 15 ? 118 : 190;
    return Math.toRadians(diameter <= limit ? 34 : 38);
  }

  /** Returns standard pitch or datum lengths in millimetres; none if the trade sells any. */
  public List<Double> lengths() {
    return switch (this) {
      case Z -> LENGTHS_Z.stream().map(Integer::doubleValue).toList();
      case A -> LENGTHS_A.stream().map(Integer::doubleValue).toList();
      case SPZ, SPA -> LENGTHS_SP.stream().map(Integer::doubleValue).toList();
      case M8 -> LENGTHS_8M.stream().map(Integer::doubleValue).toList();
      case XL -> java.util.stream.IntStream.rangeClosed(6, 26).mapToObj(i -> i * 25.4).toList();
      case L -> CODES_L.stream().map(c -> Math.round(c * 2.54 / 9.525) * 9.525).toList();
      default -> List.of();
    };
  }
}
