package fettle.mechanics.motion;

import java.util.ArrayList;
import java.util.List;

/**
 * Which positions of two axes can bring solids together, with every other axis anywhere within its
 * limits. Found by quartering: a rectangle is left out as soon as it is proven that nothing touches
 * anywhere in it.
 *
 * @param across number of the axis drawn across
 * @param up number of the axis drawn upwards
 * @param patches rectangles of positions that are not free
 */
public record ContactMap(int across, int up, List<Patch> patches) {

  /** Distances a rectangle may take before it is drawn as not settled. */
  private static final int BUDGET = 400;

  private static final int MOST_HALVINGS = 8;

  /** Nearer than this counts as touching [mm]. */
  private static final double TOUCH = 1e-3;

  /** What is known of a rectangle. */
  public enum Kind {
    /** Somewhere in it the solids touch, or come within a thousandth of a millimetre. */
    MEETS,
    /** It could not be proven that they do not. */
    OPEN
  }

  /**
   * A rectangle of positions.
   *
   * @param left least position of the axis across [mm or rad]
   * @param right greatest position of the axis across [mm or rad]
   * @param low least position of the axis upwards [mm or rad]
   * @param high greatest position of the axis upwards [mm or rad]
   * @param kind what is known of it
   */
  public record Patch(double left, double right, double low, double high, Kind kind) {}

  /** Keeps its own copy. */
  public ContactMap {
    patches = List.copyOf(patches);
  }

  /**
   * Draws the map.
   *
   * @param pairs what may meet
   * @param domain limits of all axes
   * @param across number of the axis across
   * @param up number of the axis upwards
   * @param halvings how often each axis is halved, at the most
   */
  public static ContactMap of(List<Pair> pairs, Domain domain, int across, int up, int halvings) {
    if (across == up || halvings < 0 || halvings > MOST_HALVINGS) {
      throw new IllegalArgumentException(
          "a map needs two different axes and 0 to "
              + MOST_HALVINGS
              + " halvings, found axes "
              + across
              + " and "
              + up
              + ", halvings "
              + halvings);
    }
    List<Patch> patches = quarter(pairs, domain, across, up, halvings);
    return new ContactMap(across, up, patches);
  }

  private static List<Patch> quarter(
      List<Pair> pairs, Domain domain, int across, int up, int halvings) {
    List<Pair> near = new ArrayList<>();
    Kind kind = Kind.OPEN;
    for (Pair pair : pairs) {
      PairSearch search = search(pair, domain);
      if (!(search.lower() > 0)) {
        near.add(pair);
        kind = search.upper() <= TOUCH ? Kind.MEETS : kind;
      }
    }
    if (near.isEmpty()) {
      return List.of();
    }
    double left = domain.low()[across];
    double right = domain.high()[across];
    double low = domain.low()[up];
    double high = domain.high()[up];
    Patch whole = new Patch(left, right, low, high, kind);
    if (halvings == 0) {
      return List.of(whole);
    }
    double x = (left + right) / 2;
    double y = (low + high) / 2;
    List<Patch> patches = new ArrayList<>();
    for (Domain quarter :
        List.of(
            domain.with(across, left, x).with(up, low, y),
            domain.with(across, x, right).with(up, low, y),
            domain.with(across, left, x).with(up, y, high),
            domain.with(across, x, right).with(up, y, high))) {
      patches.addAll(quarter(near, quarter, across, up, halvings - 1));
    }
    boolean full = patches.size() == 4 && patches.stream().allMatch(p -> meets(p, left, right));
    return full ? List.of(new Patch(left, right, low, high, Kind.MEETS)) : patches;
  }

  /** Tells whether a patch is a whole quarter in which the solids meet. */
  private static boolean meets(Patch patch, double left, double right) {
    return patch.kind == Kind.MEETS
        && 2 * (patch.right - patch.left) >= (right - left) * (1 - 1e-9);
  }

  private static PairSearch search(Pair pair, Domain domain) {
    PairSearch search = new PairSearch(pair, domain);
    while (search.lower() <= 0
        && search.upper() > TOUCH
        && search.evaluations() < BUDGET
        && !search.closed(1e-6)) {
      search.step();
    }
    return search;
  }

  /**
   * Tells whether a position lies in a patch.
   *
   * @param x position of the axis across [mm or rad]
   * @param y position of the axis upwards [mm or rad]
   */
  public boolean covers(double x, double y) {
    return patches.stream().anyMatch(p -> x >= p.left && x <= p.right && y >= p.low && y <= p.high);
  }
}
