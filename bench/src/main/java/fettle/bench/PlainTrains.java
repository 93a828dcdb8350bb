package fettle.bench;

import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.Banjo;
import fettle.mechanics.gears.ChangeGearSearch;
import fettle.mechanics.gears.Deviation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The obvious search: every choice of drivers beside every choice of driven wheels from what is
 * left, in the first order that fits the banjo, held against every thread.
 */
final class PlainTrains {

  private static final double NEAR = 1e-14;

  private final ChangeGearSearch.Query query;
  private final Banjo banjo;
  private final int[] values;
  private final int[] left;
  private final List<List<Row>> best = new ArrayList<>();
  private final double[] needed;

  /** A train kept for a thread. */
  @SuppressWarnings("ArrayRecordComponent") // never compared as a record
  private record Row(double error, Ratio off, int sum, int[] wheels, int idler) {}

  private static final Comparator<Row> ORDER =
      ((Comparator<Row>) PlainTrains::byError)
          .thenComparingInt(Row::sum)
          .thenComparingInt(r -> r.wheels.length)
          .thenComparing(Row::wheels, Arrays::compare);

  private static int byError(Row a, Row b) {
    return Math.abs(a.error - b.error) > NEAR
        ? Double.compare(a.error, b.error)
        : Deviation.compareSize(a.off, b.off);
  }

  private PlainTrains(ChangeGearSearch.Query query, Banjo banjo) {
    this.query = query;
    this.banjo = banjo;
    values = query.stock().stream().mapToInt(Integer::intValue).distinct().toArray();
    left = new int[values.length];
    query.stock().forEach(z -> left[Arrays.binarySearch(values, z)]++);
    needed = new double[query.leads().size()];
    for (int t = 0; t < needed.length; t++) {
      needed[t] = query.leads().get(t).over(query.screwLead()).folded().toDouble();
      best.add(new ArrayList<>());
    }
  }

  /** Finds the best trains for every lead. */
  static List<ChangeGearSearch.Listing> search(ChangeGearSearch.Query query, Banjo banjo) {
    PlainTrains all = new PlainTrains(query, banjo);
    for (int pairs = 1; pairs <= 3; pairs++) {
      all.drivers(new int[pairs], 0, 0);
    }
    return all.listings();
  }

  private void drivers(int[] chosen, int size, int from) {
    if (size == chosen.length) {
      driven(chosen, new int[size], 0, 0);
      return;
    }
    for (int v = from; v < values.length; v++) {
      if (left[v] > 0) {
        left[v]--;
        chosen[size] = values[v];
        drivers(chosen, size + 1, v);
        left[v]++;
      }
    }
  }

  private void driven(int[] drivers, int[] chosen, int size, int from) {
    if (size == chosen.length) {
      check(drivers, chosen);
      return;
    }
    for (int v = from; v < values.length; v++) {
      if (left[v] > 0) {
        left[v]--;
        chosen[size] = values[v];
        driven(drivers, chosen, size + 1, v);
        left[v]++;
      }
    }
  }

  private void check(int[] drivers, int[] driven) {
    int[] wheels = new int[2 * drivers.length];
    if (ordered(drivers, driven, new boolean[3], new boolean[3], wheels, 0)) {
      int idler = wheels.length == 2 ? idler(wheels) : 0;
      long up = Arrays.stream(drivers).asLongStream().reduce(1, (a, b) -> a * b);
      long down = Arrays.stream(driven).asLongStream().reduce(1, (a, b) -> a * b);
      for (int t = 0; t < needed.length; t++) {
        offer(t, wheels, idler, up, down);
      }
    }
  }

  /** Puts driver, driven, driver ... in the first order that fits. */
  private boolean ordered(
      int[] drivers, int[] driven, boolean[] a, boolean[] b, int[] wheels, int at) {
    if (at == wheels.length) {
      return fits(wheels);
    }
    int[] source = at % 2 == 0 ? drivers : driven;
    boolean[] used = at % 2 == 0 ? a : b;
    for (int i = 0; i < source.length; i++) {
      if (!used[i]) {
        used[i] = true;
        wheels[at] = source[i];
        if (ordered(drivers, driven, a, b, wheels, at + 1)) {
          return true;
        }
        used[i] = false;
      }
    }
    return false;
  }

  private boolean fits(int[] w) {
    double m = query.module();
    return switch (w.length) {
      case 2 -> idler(w) >= 0;
      case 4 -> banjo.fits(m, w[0], w[1], w[2], w[3]);
      default -> banjo.fitsSix(m, w);
    };
  }

  /** Returns the smallest idler that fits, 0 if none is needed, -1 if none fits. */
  private int idler(int[] w) {
    if (banjo.fitsDirect(query.module(), w[0], w[1])) {
      return 0;
    }
    for (int v = 0; v < values.length; v++) {
      if (left[v] > 0 && banjo.brokenSimple(query.module(), w[0], values[v], w[1]).isEmpty()) {
        return values[v];
      }
    }
    return -1;
  }

  private void offer(int t, int[] wheels, int idler, long up, long down) {
    double error = Math.abs((double) up / down / needed[t] - 1);
    List<Row> kept = best.get(t);
    boolean full = kept.size() == query.best();
    if (error > query.limit() || (full && error > kept.get(kept.size() - 1).error + NEAR)) {
      return;
    }
    Ratio off = Ratio.of(up, down).over(query.leads().get(t)).times(query.screwLead());
    Row row = new Row(error, off, Arrays.stream(wheels).sum() + idler, wheels.clone(), idler);
    int at = 0;
    while (at < kept.size() && ORDER.compare(kept.get(at), row) <= 0) {
      at++;
    }
    kept.add(at, row);
    if (kept.size() > query.best()) {
      kept.remove(query.best());
    }
  }

  private List<ChangeGearSearch.Listing> listings() {
    List<ChangeGearSearch.Listing> all = new ArrayList<>();
    for (int t = 0; t < needed.length; t++) {
      Ratio lead = query.leads().get(t);
      List<ChangeGearSearch.Train> trains = new ArrayList<>();
      for (Row row : best.get(t)) {
        Ratio cut = row.off.times(lead);
        List<Integer> wheels = Arrays.stream(row.wheels).boxed().toList();
        trains.add(new ChangeGearSearch.Train(wheels, row.idler, cut, Deviation.ppm(cut, lead)));
      }
      all.add(new ChangeGearSearch.Listing(lead, trains));
    }
    return all;
  }
}
