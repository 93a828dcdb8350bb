package fettle.mechanics.motion;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.PriorityQueue;

/**
 * Prints how long a machine of 60 solids takes on 4 slides and 3 turning seats, beside random
 * positions and beside a plain bound on every axis, all in one run. Not a test: run its main.
 */
final class ClearanceSpeed {

  private static final long SEED = 34;
  private static final double TOLERANCE = 0.05;
  private static final int PLAIN_BUDGET = 3_000;

  private ClearanceSpeed() {}

  public static void main(String[] arguments) {
    RandomMachine random =
        new RandomMachine(arguments.length > 0 ? Long.parseLong(arguments[0]) : SEED);
    Mechanism machine = random.of(4, 3, 60);
    List<Pair> all = machine.pairs().searched();
    Domain domain = machine.domain();
    List<Gap> first = Clearance.table(all, domain, TOLERANCE, Clearance.BUDGET);
    List<Pair> clear = first.stream().filter(g -> !g.touches()).map(Gap::pair).toList();
    print("%d solids, %d pairs searched, %d of them never touch%n", 60, all.size(), clear.size());
    for (int i = 0; i < 4; i++) {
      Clearance.table(all, domain, TOLERANCE, Clearance.BUDGET);
      Clearance.least(clear, domain, TOLERANCE, 1_000_000);
    }
    long t0 = System.nanoTime();
    Gap least = Clearance.least(clear, domain, TOLERANCE, 1_000_000);
    long t1 = System.nanoTime();
    List<Gap> table = Clearance.table(all, domain, TOLERANCE, Clearance.BUDGET);
    long t2 = System.nanoTime();
    print(
        "least gap (of the pairs that never touch): %.3f to %.3f mm, %s, %d distances, %.1f ms%n",
        least.lower(), least.upper(), least.pair().name(), least.evaluations(), ms(t0, t1));
    int spent = table.stream().mapToInt(Gap::evaluations).sum();
    long open = table.stream().filter(g -> !g.certified()).count();
    print("table of every pair: %d distances, %d open, %.0f ms%n", spent, open, ms(t1, t2));
    table.stream()
        .filter(g -> !g.certified())
        .forEach(
            g -> print("  open: %s, %.3f to %.3f mm%n", g.pair().name(), g.lower(), g.upper()));
    sampled(clear, domain, random);
    plain(all, domain);
  }

  private static void sampled(List<Pair> pairs, Domain domain, RandomMachine random) {
    long t0 = System.nanoTime();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3000; i++) {
      double[] at = random.position(domain);
      for (Pair pair : pairs) {
        Poses poses = new Poses(pair, domain, new int[0]);
        poses.solve(at, new Vector(0, 1, 0));
        least = Math.min(least, poses.upper());
      }
    }
    print(
        "3000 random positions of the same pairs: %.3f mm, nothing proven, %.0f ms%n",
        least, ms(t0, System.nanoTime()));
  }

  private static void plain(List<Pair> pairs, Domain domain) {
    long t0 = System.nanoTime();
    long open = pairs.parallelStream().filter(p -> !plainCloses(p, domain)).count();
    print(
        "plain bound on every axis, %d distances a pair: %d pairs open, %.0f ms%n",
        PLAIN_BUDGET, open, ms(t0, System.nanoTime()));
  }

  @SuppressWarnings("ArrayRecordComponent")
  private record Cell(double[] middle, double[] half, double lower) {}

  private static boolean plainCloses(Pair pair, Domain domain) {
    double[] slope = new double[domain.size()];
    slopes(pair.a(), slope);
    slopes(pair.b(), slope);
    PriorityQueue<Cell> cells = new PriorityQueue<>((p, q) -> Double.compare(p.lower, q.lower));
    double[] half = new double[domain.size()];
    Arrays.setAll(half, i -> slope[i] > 0 ? (domain.high()[i] - domain.low()[i]) / 2 : 0);
    cells.add(new Cell(domain.middle(), half, 0));
    Poses poses = new Poses(pair, domain, new int[0]);
    double upper = Double.POSITIVE_INFINITY;
    for (int spent = 0; spent < PLAIN_BUDGET; ) {
      Cell cell = cells.poll();
      if (cell == null || upper - cell.lower <= TOLERANCE || upper <= 0) {
        return true;
      }
      int axis = 0;
      for (int i = 1; i < slope.length; i++) {
        axis = slope[i] * cell.half[i] > slope[axis] * cell.half[axis] ? i : axis;
      }
      double[] h = cell.half.clone();
      h[axis] /= 2;
      for (int side = -1; side <= 1; side += 2, spent++) {
        double[] m = cell.middle.clone();
        m[axis] += side * h[axis];
        poses.solve(m, new Vector(0, 1, 0));
        upper = Math.min(upper, poses.upper());
        double lower = poses.lower();
        for (int i = 0; i < slope.length; i++) {
          lower -= slope[i] * h[i];
        }
        cells.add(new Cell(m, h, Math.max(cell.lower, lower)));
      }
    }
    return false;
  }

  /** How fast a solid's points can move at the most, for each axis. */
  private static void slopes(Chain chain, double[] slope) {
    Convex.Ball ball = chain.solid().ball();
    double reach = ball.centre().norm() + ball.radius();
    for (int i = chain.steps().size() - 1; i >= 0; i--) {
      Step step = chain.steps().get(i);
      if (step instanceof Step.Shift s) {
        reach += s.by().norm();
      } else if (step instanceof Step.Slide s) {
        slope[s.axis()] += Math.abs(s.factor());
        reach += 100 * Math.abs(s.factor());
      } else if (step instanceof Step.Turn t) {
        slope[t.axis()] += reach * Math.abs(t.factor());
      }
    }
  }

  private static double ms(long from, long to) {
    return (to - from) / 1e6;
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }
}
