package fettle.parts.recipe;

/**
 * Surface texture asked for.
 *
 * @param making how the surface is made; {@code ANY} leaves it open
 * @param roughness mean roughness Ra, 0 if none is asked for [mm]
 */
public record Finish(Making making, double roughness) {

  /** How a surface is made. */
  public enum Making {
    /** Any process. */
    ANY,
    /** As the stock is: drawn, rolled, cast. */
    STOCK,
    /** Drilled. */
    DRILLED,
    /** Turned, milled, bored or reamed. */
    CUT,
    /** Ground. */
    GROUND,
    /** Lapped, honed or scraped. */
    LAPPED
  }

  public static final Finish GENERAL = new Finish(Making.ANY, 0);
  public static final Finish STOCK = new Finish(Making.STOCK, 0);
  public static final Finish DRILLED = new Finish(Making.DRILLED, 0.0063);

  /** Refuses a negative roughness. */
  public Finish {
    if (!(roughness >= 0) || roughness > 1) {
      throw new IllegalArgumentException(
          "roughness Ra must lie between 0 and 1 mm, found " + roughness + " mm");
    }
  }

  /**
   * Returns a cut surface of that roughness.
   *
   * @param roughness mean roughness Ra [mm]
   */
  public static Finish cut(double roughness) {
    return new Finish(Making.CUT, roughness);
  }
}
