package fettle.mechanics.motion;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * Finds the least distance of two solids over all positions, between proven bounds. Free slides are
 * left out exactly ({@link Poses}); the other axes are split into cells, and a cell is bounded by
 * the gap along one direction that holds over the whole cell ({@link Shadow}). The cell that
 * promises least is split next, along the axis whose standing still would raise its bound most.
 */
final class PairSearch {

  /** A box of positions of the split axes. */
  @SuppressWarnings("ArrayRecordComponent")
  private record Cell(double[] middle, double[] half, double lower, Vector normal) {}

  /** Free slides that {@link Poses} can tell apart; any beyond them is split. */
  private static final int MOST_FREE = 31;

  private final Pair pair;

  /** The pair without turns that change nothing. */
  private final Pair plain;

  private final Domain domain;
  private final int[] split;
  private final int[] slot;
  private final Poses poses;
  private final PriorityQueue<Cell> cells =
      new PriorityQueue<>((p, q) -> Double.compare(p.lower, q.lower));
  private double upper = Double.POSITIVE_INFINITY;

  /** Least bound of the cells too small to split. */
  private double settled = Double.POSITIVE_INFINITY;

  private double[] position;
  private Vector onFirst = Vector.ZERO;
  private Vector onSecond = Vector.ZERO;
  private int evaluations;

  PairSearch(Pair pair, Domain domain) {
    this.pair = pair;
    this.plain = new Pair(pair.first(), pair.second(), pair.a().plain(), pair.b().plain());
    this.domain = domain;
    boolean[] turns = new boolean[domain.size()];
    boolean[] slides = new boolean[domain.size()];
    for (Chain chain : java.util.List.of(plain.a(), plain.b())) {
      for (Step step : chain.steps()) {
        if (step instanceof Step.Turn t) {
          turns[t.axis()] = true;
        } else if (step instanceof Step.Slide s) {
          slides[s.axis()] = true;
        }
      }
    }
    slot = new int[domain.size()];
    Arrays.fill(slot, -1);
    int[] all = java.util.stream.IntStream.range(0, domain.size()).toArray();
    int[] free = Arrays.stream(all).filter(i -> slides[i] && !turns[i]).limit(MOST_FREE).toArray();
    int lastFree = free.length < MOST_FREE ? domain.size() : free[MOST_FREE - 1];
    split = Arrays.stream(all).filter(i -> turns[i] || (slides[i] && i > lastFree)).toArray();
    for (int i = 0; i < free.length; i++) {
      slot[free[i]] = i;
    }
    poses = new Poses(plain, domain, free);
    position = domain.middle();
    open();
  }

  private void open() {
    double[] half = new double[domain.size()];
    for (int i : split) {
      half[i] = (domain.high()[i] - domain.low()[i]) / 2;
    }
    add(domain.middle(), half, 0, new Vector(1, 0, 0));
  }

  /**
   * Returns the least lower bound of what is left.
   *
   * @return the distance is nowhere less [mm]
   */
  double lower() {
    Cell least = cells.peek();
    double open = least == null ? upper : least.lower;
    return upper <= 0 ? 0 : Math.min(Math.min(open, settled), upper);
  }

  double upper() {
    return upper;
  }

  int evaluations() {
    return evaluations;
  }

  /** Tells whether the bounds are as near as asked, or can come no nearer. */
  boolean closed(double tolerance) {
    return upper <= 0 || cells.isEmpty() || upper - lower() <= tolerance;
  }

  /** Splits the cell that promises least. */
  void step() {
    Cell cell = cells.poll();
    if (cell == null) {
      return;
    }
    int axis = longest(cell);
    if (axis < 0 || cell.half[axis] < 1e-10) {
      settled = Math.min(settled, cell.lower);
      return;
    }
    double[] half = cell.half.clone();
    half[axis] /= 2;
    for (int side = -1; side <= 1; side += 2) {
      double[] middle = cell.middle.clone();
      middle[axis] += side * half[axis];
      add(middle, half, cell.lower, cell.normal);
      if (upper <= 0) {
        return;
      }
    }
  }

  private void add(double[] middle, double[] half, double floor, Vector start) {
    evaluations++;
    poses.solve(middle, start);
    if (poses.upper() < upper) {
      upper = poses.upper();
      position = poses.witness();
      onFirst = poses.onFirst();
      onSecond = poses.onSecond();
    }
    if (upper <= 0) {
      cells.clear();
      return;
    }
    double lower = floor;
    if (split.length == 0) {
      lower = Math.max(lower, poses.lower());
    } else if (poses.upper() > 0) {
      lower = Math.max(lower, gap(middle, half, poses.normal()));
    }
    if (lower < upper || split.length == 0) {
      cells.add(new Cell(middle, half, lower, poses.normal()));
    }
  }

  /** The gap along a direction, over the whole cell. */
  private double gap(double[] middle, double[] half, Vector n) {
    Vector back = n.times(-1);
    double reach =
        new Shadow(plain.a(), domain, slot, middle, half).reach(back)
            + new Shadow(plain.b(), domain, slot, middle, half).reach(n);
    return -reach - Poses.ROUNDING;
  }

  private int longest(Cell cell) {
    if (split.length <= 1) {
      return split.length == 0 ? -1 : split[0];
    }
    int best = split[0];
    double most = Double.NEGATIVE_INFINITY;
    for (int axis : split) {
      double[] still = cell.half.clone();
      still[axis] = 0;
      double gain = gap(cell.middle, still, cell.normal) + 1e-6 * cell.half[axis];
      if (cell.half[axis] > 0 && gain > most) {
        most = gain;
        best = axis;
      }
    }
    return best;
  }

  /** Returns what was found. */
  Gap gap(double tolerance) {
    return new Gap(
        pair, Math.max(0, lower()), upper, position, onFirst, onSecond, evaluations, tolerance);
  }
}
