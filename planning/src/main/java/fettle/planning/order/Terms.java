package fettle.planning.order;

import fettle.machine.dictionary.Values;
import java.util.Map;
import java.util.Optional;

/**
 * What the shop's owner says about time and worth, and what is tried in place of what the book
 * says.
 *
 * @param hoursAWeek time in the shop in a week [h]
 * @param downtime points that an hour with the lathe stripped costs
 * @param lostWork points that an hour of lost work costs
 * @param days days to arrival of purchases, in place of the book's
 * @param made whether what is done is taken as done
 */
public record Terms(
    double hoursAWeek, double downtime, double lostWork, Map<String, Double> days, Made made) {

  private static final double HOUR = 3600;

  /** Whether steps and changes that are done are left out. */
  public enum Made {
    LEFT_OUT,
    AS_IF_NOTHING_WERE
  }

  /** Keeps its own copy. */
  public Terms {
    days = Map.copyOf(days);
    if (!(hoursAWeek >= 0.5) || !(hoursAWeek <= 100)) {
      throw new IllegalArgumentException(
          "hours a week must lie between 0.5 and 100 h, found " + hoursAWeek + " h");
    }
  }

  /** Returns what the book says. */
  public static Terms of(Optional<Values> shop) {
    return new Terms(
        shop.flatMap(s -> s.quantity("hours a week")).map(q -> q.value() / HOUR).orElse(8.0),
        shop.flatMap(s -> s.quantity("downtime")).map(q -> q.value()).orElse(1.0),
        shop.flatMap(s -> s.quantity("lost work")).map(q -> q.value()).orElse(1.0),
        Map.of(),
        Made.LEFT_OUT);
  }

  /**
   * Returns the tick at which something ordered at the start arrives.
   *
   * @param days days to arrival [d]
   */
  public int tick(double days) {
    return (int) Math.ceil(days / 7 * hoursAWeek * Worklist.HOUR - 1e-9);
  }

  /**
   * Returns days from the start until a tick of shop time.
   *
   * @param tick shop time in hundredths of an hour
   * @return time by the calendar [d]
   */
  public double days(int tick) {
    return tick / (double) Worklist.HOUR / hoursAWeek * 7;
  }

  /**
   * Returns the cost of a tick of waiting for something that is worth so much.
   *
   * @param points worth in a week [points]
   */
  long perTick(double points) {
    return Math.round(points / hoursAWeek / Worklist.HOUR * Worklist.POINT);
  }

  /**
   * Returns the cost of a tick that costs so much an hour.
   *
   * @param points cost of an hour [points]
   */
  static long hourly(double points) {
    return Math.round(points / Worklist.HOUR * Worklist.POINT);
  }
}
