package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Every order of every choice of wheels, one after the other: slow, and plainly right. */
final class StraightEnumeration {

  private record Row(List<Integer> wheels, int idler, Ratio ratio) {
    int sum() {
      return wheels.stream().mapToInt(Integer::intValue).sum() + idler;
    }
  }

  private final ChangeGearSearch.Query query;
  private final Map<List<List<Integer>>, Row> rows = new HashMap<>();

  private StraightEnumeration(ChangeGearSearch.Query query) {
    this.query = query;
  }

  static List<ChangeGearSearch.Listing> search(ChangeGearSearch.Query query) {
    StraightEnumeration all = new StraightEnumeration(query);
    for (ChangeGearSearch.Wheels size : query.wheels()) {
      all.take(new ArrayList<>(), new boolean[query.stock().size()], 2 * size.pairs());
    }
    List<ChangeGearSearch.Listing> listings = new ArrayList<>();
    for (Ratio lead : query.leads()) {
      Ratio needed = lead.over(query.screwLead());
      Comparator<Row> order =
          (a, b) -> Deviation.compareSize(a.ratio.over(needed), b.ratio.over(needed));
      order =
          order
              .thenComparingInt(Row::sum)
              .thenComparingInt(r -> r.wheels.size())
              .thenComparing(Row::wheels, StraightEnumeration::lexicographic);
      List<ChangeGearSearch.Train> best =
          all.rows.values().stream()
              .filter(r -> Math.abs(Deviation.relative(r.ratio, needed)) <= query.limit())
              .sorted(order)
              .limit(query.best())
              .map(
                  r -> {
                    Ratio cut = query.screwLead().times(r.ratio);
                    return new ChangeGearSearch.Train(
                        r.wheels, r.idler, cut, Deviation.ppm(cut, lead));
                  })
              .toList();
      listings.add(new ChangeGearSearch.Listing(lead, best));
    }
    return listings;
  }

  private void take(List<Integer> wheels, boolean[] used, int size) {
    if (wheels.size() == size) {
      check(wheels, used);
      return;
    }
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        used[i] = true;
        wheels.add(query.stock().get(i));
        take(wheels, used, size);
        wheels.remove(wheels.size() - 1);
        used[i] = false;
      }
    }
  }

  private void check(List<Integer> wheels, boolean[] used) {
    int idler = wheels.size() == 2 ? idler(wheels, used) : 0;
    if (idler < 0 || (wheels.size() > 2 && !fits(wheels))) {
      return;
    }
    List<Integer> drivers = new ArrayList<>();
    List<Integer> driven = new ArrayList<>();
    Ratio ratio = Ratio.ONE;
    for (int i = 0; i < wheels.size(); i += 2) {
      drivers.add(wheels.get(i));
      driven.add(wheels.get(i + 1));
      ratio = ratio.times(Ratio.of(wheels.get(i), wheels.get(i + 1)));
    }
    drivers.sort(null);
    driven.sort(null);
    Row row = new Row(List.copyOf(wheels), idler, ratio);
    rows.merge(
        List.of(drivers, driven), row, (a, b) -> lexicographic(a.wheels, b.wheels) <= 0 ? a : b);
  }

  private boolean fits(List<Integer> w) {
    Banjo banjo = query.banjo();
    if (banjo == null) {
      return true;
    }
    return w.size() == 4
        ? banjo.broken(query.module(), w.get(0), w.get(1), w.get(2), w.get(3)).isEmpty()
        : banjo
            .brokenSix(query.module(), w.stream().mapToInt(Integer::intValue).toArray())
            .isEmpty();
  }

  private int idler(List<Integer> wheels, boolean[] used) {
    Banjo banjo = query.banjo();
    if (banjo == null || banjo.fitsDirect(query.module(), wheels.get(0), wheels.get(1))) {
      return 0;
    }
    for (int i = 0; i < used.length; i++) {
      int idler = query.stock().get(i);
      if (!used[i]
          && banjo.brokenSimple(query.module(), wheels.get(0), idler, wheels.get(1)).isEmpty()) {
        return idler;
      }
    }
    return -1;
  }

  private static int lexicographic(List<Integer> a, List<Integer> b) {
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      int order = Integer.compare(a.get(i), b.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(a.size(), b.size());
  }
}
