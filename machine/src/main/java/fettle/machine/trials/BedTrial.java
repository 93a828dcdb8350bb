package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Sample;
import fettle.mechanics.metrology.Straightness;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A level along and across the bed, turned end for end at every place. */
final class BedTrial {

  static final String ALONG = "height of the middle of the bed";
  static final String TWIST = "twist of the bed in a metre";

  private static final Source TURNED =
      Source.derived("level turned end for end: tilt = (a - b)/2, free of the level's zero");
  private static final double METRE = 1000;

  /**
   * Tilts of one way of the level.
   *
   * @param places places along the bed, rising [mm]
   * @param tilts mean tilt at each place [mm/mm]
   * @param runs fewest runs at a place
   * @param scatter standard deviation of one tilt [mm/mm]
   * @param freedom degrees of freedom of the scatter
   */
  private record Tilts(
      List<Double> places, List<Double> tilts, int runs, double scatter, int freedom) {
    double place(int i) {
      return places.get(i);
    }

    double tilt(int i) {
      return tilts.get(i);
    }

    static double[] array(List<Double> values) {
      return values.stream().mapToDouble(v -> v).toArray();
    }
  }

  private BedTrial() {}

  static void evaluate(Draft draft) {
    along(draft);
    across(draft);
    if (draft.figures().isEmpty()) {
      throw new IllegalArgumentException("the level was read neither along nor across the bed");
    }
    draft.notes.add(
        "Read the level always from the same end of the bubble, and let it come to rest: a minute"
            + " at each place.");
  }

  /** Returns the tilts along (0) or across (1); empty places if there are none. */
  private static Tilts tilts(Draft draft, int way) {
    SortedMap<Double, SortedMap<Integer, double[]>> cells = new TreeMap<>();
    for (Readings.Line l : draft.trial().readings().lines()) {
      if (l.whole(0) == way) {
        cells.computeIfAbsent(l.at(2), z -> new TreeMap<>())
                .computeIfAbsent(l.whole(1), r -> new double[] {Double.NaN, Double.NaN})[
                l.whole(3)] =
            l.reading();
      }
    }
    List<Double> places = new ArrayList<>();
    List<Double> means = new ArrayList<>();
    int runs = Integer.MAX_VALUE;
    double squares = 0;
    int freedom = 0;
    for (var cell : cells.entrySet()) {
      List<Double> found = new ArrayList<>();
      cell.getValue()
          .forEach(
              (run, ends) -> {
                double tilt = (ends[0] - ends[1]) / 2;
                if (Double.isNaN(tilt)) {
                  draft.gaps.add(
                      "run "
                          + run
                          + " at "
                          + Numbers.significant(cell.getKey(), 6)
                          + " mm: the level was not turned; it is left out");
                } else {
                  found.add(tilt);
                }
              });
      if (!found.isEmpty()) {
        Sample sample = Sample.of(found.stream().mapToDouble(v -> v).toArray());
        places.add(cell.getKey());
        means.add(sample.mean());
        runs = Math.min(runs, sample.count());
        squares += sample.sumOfSquares();
        freedom += sample.count() - 1;
      }
    }
    if (!places.isEmpty() && freedom == 0) {
      throw new IllegalArgumentException("every place was read once, expected two runs or more");
    }
    return new Tilts(
        List.copyOf(places),
        List.copyOf(means),
        runs,
        freedom == 0 ? 0 : Math.sqrt(squares / freedom),
        freedom);
  }

  private static void along(Draft draft) {
    Tilts t = tilts(draft, 0);
    int n = t.tilts.size();
    if (n == 0) {
      return;
    }
    if (n < 3) {
      throw new IllegalArgumentException("along: found " + n + " places, expected 3 or more");
    }
    double base = (t.place(n - 1) - t.place(0)) / (n - 1);
    for (int i = 1; i < n; i++) {
      if (Math.abs(t.place(i) - t.place(i - 1) - base) > 0.02 * base) {
        throw new IllegalArgumentException(
            "z: the places along the bed stand at uneven steps, expected the level's own base");
      }
    }
    double[] heights = Straightness.ofLevel(Tilts.array(t.tilts), base).fromEnds();
    int k = 0;
    for (int i = 0; i < heights.length; i++) {
      k = Math.abs(heights[i]) > Math.abs(heights[k]) ? i : k;
    }
    double mean = Straightness.heightUncertainty(k, n, base, t.scatter / Math.sqrt(t.runs));
    double doubt = Straightness.heightUncertainty(k, n, base, draft.trial().instrumentDoubt());
    draft.add(
        ALONG,
        heights[k],
        Unit.MICRON,
        new Draft.Repeats(t.runs, "runs", true),
        base * n,
        heights[k] > 0 ? "" : "jack the middle of the bed up, or scrape its ends; first re-level",
        TURNED,
        Contribution.readings("scatter of the runs", mean, 1, t.freedom),
        new Contribution(
            "doubt of the level", doubt, 1, Double.POSITIVE_INFINITY, Contribution.Kind.JUDGEMENT));
  }

  /** The slope of the tilt over the bed, as the height it makes in a metre across and along. */
  private static void across(Draft draft) {
    Tilts t = tilts(draft, 1);
    int n = t.tilts.size();
    if (n == 0) {
      return;
    }
    if (n < 2) {
      throw new IllegalArgumentException("across: found one place, expected two or more");
    }
    double middle = Sample.of(Tilts.array(t.places)).mean();
    double above = 0;
    double below = 0;
    for (int i = 0; i < n; i++) {
      above += (t.place(i) - middle) * t.tilt(i);
      below += (t.place(i) - middle) * (t.place(i) - middle);
    }
    double span = t.place(n - 1) - t.place(0);
    double slope = above / below;
    double factor = span * METRE / Math.sqrt(below);
    double width = draft.trial().given("foot width");
    double raise = Math.abs(slope) * span * width;
    draft.add(
        TWIST,
        slope * span * METRE,
        Unit.MICRON,
        new Draft.Repeats(t.runs, "runs", true),
        METRE,
        (width == 0
                ? "state the foot width, and the shim is said here"
                : "raise the "
                    + (slope > 0 ? "rear" : "front")
                    + " foot at the tailstock end by at least "
                    + Evaluations.mm(raise)
                    + ", more if the bench gives way")
            + "; read again after an hour and on the next day",
        TURNED,
        Contribution.readings(
            "scatter of the runs", t.scatter / Math.sqrt(t.runs), factor, t.freedom),
        new Contribution(
            "doubt of the level",
            draft.trial().instrumentDoubt(),
            factor,
            Double.POSITIVE_INFINITY,
            Contribution.Kind.JUDGEMENT));
    draft.notes.add(
        "The twist is the change of the cross tilt from end to end of the "
            + Numbers.fixed(span, 0)
            + " mm that were read, + if the front rises towards the tailstock.");
  }
}
