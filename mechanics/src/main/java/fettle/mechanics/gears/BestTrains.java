package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The best trains for one lead, kept in order of merit. */
final class BestTrains {

  private static final double NEAR = ChangeGearSearch.NEAR;

  private final Ratio lead;
  private final Ratio screwLead;
  private final Ratio exactRatio;
  private final double ratio;
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

  /** Returns the trains kept, the best first. */
  List<ChangeGearSearch.Train> trains() {
    List<ChangeGearSearch.Train> trains = new ArrayList<>();
    for (Entry e : kept) {
      Ratio cut = screwLead.times(Ratio.of(e.driver, e.driven));
      List<Integer> wheels = new ArrayList<>();
      for (int i = 0; i < 2 * e.size; i++) {
        wheels.add(e.wheels[i]);
      }
      int idler = e.size == 1 ? e.wheels[2] : 0;
      trains.add(new ChangeGearSearch.Train(wheels, idler, cut, Deviation.ppm(cut, lead)));
    }
    return List.copyOf(trains);
  }
}
