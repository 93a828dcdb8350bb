package fettle.bench;

import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.Banjo;
import fettle.mechanics.gears.ChangeGearSearch;
import fettle.mechanics.gears.ThreadPitches;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The question of the train benchmarks: sixty threads, ten best each, from so many wheels. */
final class TrainStock {

  private static final int THREADS = 60;
  private static final List<Integer> TWENTY =
      List.of(20, 21, 24, 25, 28, 30, 32, 35, 36, 38, 40, 40, 45, 48, 50, 55, 57, 60, 63, 65);
  private static final List<Integer> TWENTY_MORE =
      List.of(22, 26, 27, 30, 33, 34, 42, 44, 46, 50, 52, 54, 56, 60, 62, 66, 70, 72, 75, 80);
  private static final List<Integer> SIXTY =
      List.of(23, 29, 31, 37, 39, 41, 43, 47, 49, 51, 53, 58, 59, 61, 64, 67, 68, 69, 71, 73);

  private TrainStock() {}

  /** Returns sixty different threads: the standard lists and the next round pitches. */
  static List<Ratio> threads() {
    Set<Ratio> all = new LinkedHashSet<>();
    for (ThreadPitches list : ThreadPitches.values()) {
      list.leads().forEach(lead -> all.add(lead.folded()));
    }
    for (int pitch = 7; all.size() < THREADS; pitch++) {
      all.add(Ratio.of(pitch));
    }
    return List.copyOf(all).subList(0, THREADS);
  }

  /** Returns the question for 20, 40 or 60 wheels, equal wheels among them. */
  static ChangeGearSearch.Query query(int wheels) {
    List<Integer> stock = new ArrayList<>(TWENTY);
    if (wheels > 20) {
      stock.addAll(TWENTY_MORE);
    }
    if (wheels > 40) {
      stock.addAll(SIXTY);
    }
    return new ChangeGearSearch.Query(
        stock.subList(0, wheels),
        1,
        new Banjo(100, 1, 25, 130, 0.5, 14, 14, 8),
        Ratio.INCH.over(16),
        threads(),
        10,
        Set.of(ChangeGearSearch.Wheels.values()),
        0.01);
  }
}
