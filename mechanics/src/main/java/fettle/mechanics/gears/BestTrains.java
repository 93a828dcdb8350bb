package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The best trains for one lead, kept in order of merit. */
final class BestTrains {

  private static final double NEAR = ChangeGearSearch.NEAR;
  private static final long EXACT = 1L << 53;
  private static final long MILLION = 1_000_000;
  private static final long MOST_PRODUCT = 1L << 30;

  private final Ratio lead;
  private final Ratio screwLead;
  private final Ratio exactRatio;
  private final double ratio;
  private final long above;
  private final long below;
  private final int most;
  private final List<Entry> kept = new ArrayList<>();
  private double bound;

  @SuppressWarnings("ArrayRecordComponent") // never compared or handed out
  private record Entry(double error, long driver, long driven, int sum, int[] wheels, int size) {}

  BestTrains(Ratio lead, ChangeGearSearch.Query query) {
    this.lead = lead;
    this.screwLead = query.screwLead();
    this.exactRatio = lead.over(screwLead).folded();
    this.ratio = exactRatio.toDouble();
    boolean small =
        exactRatio.isRational()
            && exactRatio.numerator().bitLength() < 32
            && exactRatio.denominator().bitLength() < 32;
    this.above = small ? exactRatio.numerator().longValue() : 0;
    this.below = small ? exactRatio.denominator().longValue() : 0;
    this.most = query.best();
    this.bound = query.limit();
  }

  /**
   * Returns the ratio a train needs for the lead.
   *
   * @return drivers over driven wheels [-]
   */
  double ratio() {
    return ratio;
  }

  /**
   * Returns the error beyond which no train can enter any more; it never grows.
   *
   * @return largest relative error [-]
   */
  double bound() {
    return bound;
  }

  /** Returns the largest sum of teeth with which a train of this error may still enter. */
  int sumLimit(double error, long driver, long driven) {
    if (kept.size() < most) {
      return Integer.MAX_VALUE;
    }
    Entry last = kept.get(most - 1);
    if (error < last.error - NEAR) {
      return Integer.MAX_VALUE;
    }
    int order = compareError(error, driver, driven, last);
    return order < 0 ? Integer.MAX_VALUE : order > 0 ? -1 : last.sum;
  }

  /** Lets a train in if it is one of the best so far. */
  void offer(double error, long driver, long driven, int[] wheels, int size) {
    int sum = 0;
    for (int wheel : wheels) {
      sum += wheel;
    }
    Entry entry = new Entry(error, driver, driven, sum, wheels, size);
    int at = kept.size();
    while (at > 0 && compare(entry, kept.get(at - 1)) < 0) {
      at--;
    }
    if (at >= most) {
      return;
    }
    kept.add(at, entry);
    if (kept.size() > most) {
      kept.remove(most);
    }
    if (kept.size() == most) {
      bound = Math.min(bound, kept.get(most - 1).error + NEAR);
    }
  }

  private int compare(Entry a, Entry b) {
    int byError = compareError(a.error, a.driver, a.driven, b);
    if (byError != 0) {
      return byError;
    }
    int bySum = Integer.compare(a.sum, b.sum);
    if (bySum != 0) {
      return bySum;
    }
    int bySize = Integer.compare(a.size, b.size);
    return bySize != 0 ? bySize : Arrays.compare(a.wheels, b.wheels);
  }

  private int compareError(double error, long driver, long driven, Entry other) {
    if (Math.abs(error - other.error) > NEAR) {
      return Double.compare(error, other.error);
    }
    if (driver * other.driven == other.driver * driven) {
      return 0;
    }
    return Deviation.compareSize(
        Ratio.of(driver, driven).over(exactRatio),
        Ratio.of(other.driver, other.driven).over(exactRatio));
  }

  /** Returns the trains kept, the best first; those of one ratio share its lead and its error. */
  List<ChangeGearSearch.Train> trains() {
    List<ChangeGearSearch.Train> trains = new ArrayList<>();
    @Nullable Entry before = null;
    Ratio cut = screwLead;
    double ppm = 0;
    for (Entry e : kept) {
      if (before == null || e.driver * before.driven != before.driver * e.driven) {
        cut = screwLead.times(Ratio.of(e.driver, e.driven));
        ppm = ppm(e, cut);
      }
      before = e;
      trains.add(new ChangeGearSearch.Train(wheels(e), e.size == 1 ? e.wheels[2] : 0, cut, ppm));
    }
    return List.copyOf(trains);
  }

  /**
   * Returns the deviation of a train: with whole numbers that a double holds, one division rounds
   * as {@link Deviation#ppm} does; else that is asked.
   *
   * @return deviation [ppm]
   */
  private double ppm(Entry e, Ratio cut) {
    if (above > 0 && e.driver <= MOST_PRODUCT && e.driven <= MOST_PRODUCT) {
      long off = e.driver * below - e.driven * above;
      long whole = e.driven * above;
      if (Math.abs(off) <= EXACT / MILLION && whole <= EXACT) {
        return (double) (off * MILLION) / whole;
      }
    }
    return Deviation.ppm(cut, lead);
  }

  private static List<Integer> wheels(Entry e) {
    List<Integer> wheels = new ArrayList<>();
    for (int i = 0; i < 2 * e.size; i++) {
      wheels.add(e.wheels[i]);
    }
    return wheels;
  }
}
