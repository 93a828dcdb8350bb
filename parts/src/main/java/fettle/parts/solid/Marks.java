package fettle.parts.solid;

import fettle.parts.recipe.End;
import fettle.parts.recipe.Feature;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.ScrewThread;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a sheet draws besides edges: axes of everything round, and threads.
 *
 * @param axes axes
 * @param threads threads
 */
public record Marks(List<Axis> axes, List<Threaded> threads) {

  /**
   * An axis of something round.
   *
   * @param feature the feature
   * @param from where the round thing starts
   * @param to where it ends
   * @param radius its largest radius [mm]
   */
  public record Axis(String feature, Vec from, Vec to, double radius) {}

  /**
   * A thread.
   *
   * @param feature the feature
   * @param thread the thread
   * @param inside whether it is an internal thread
   * @param from start of the full thread on its axis
   * @param to end of the full thread on its axis
   */
  public record Threaded(String feature, ScrewThread thread, Inside inside, Vec from, Vec to) {}

  /** Internal or external thread. */
  public enum Inside {
    INTERNAL,
    EXTERNAL
  }

  /** Keeps its own copies. */
  public Marks {
    axes = List.copyOf(axes);
    threads = List.copyOf(threads);
  }

  /** Returns the marks of a part. */
  public static Marks of(Recipe recipe) {
    Body body = Bodies.of(recipe);
    List<Axis> axes = new ArrayList<>();
    List<Threaded> threads = new ArrayList<>();
    Map<String, HoleForm> holes = new HashMap<>();
    for (Feature f : recipe.features()) {
      if (f instanceof Turned.CrossHole h) {
        holes.put(h.name(), h.hole());
      } else if (f instanceof Turned.AxialHoles h) {
        holes.put(h.name(), h.hole());
      } else if (f instanceof Prismatic.Holes h) {
        holes.put(h.name(), h.hole());
      }
    }
    Bounds whole = body.bounds();
    for (Body.Step step : body.steps()) {
      if (step.solid() instanceof Primitive.Turn turn) {
        double[] b = turn.profile().box();
        Frame f = turn.frame();
        double[] range = whole.clip(f.origin(), f.z());
        double low = Math.max(b[0], range[0]);
        double high = Math.min(b[2], range[1]);
        Axis axis = new Axis(step.feature(), f.at(0, 0, low), f.at(0, 0, high), b[3]);
        join(axes, axis);
        HoleForm hole = holes.get(step.feature());
        if (hole != null && hole.thread() != null) {
          double end = Double.isInfinite(hole.threadDepth()) ? high : hole.threadDepth();
          threads.add(
              new Threaded(
                  step.feature(), hole.thread(), Inside.INTERNAL, f.origin(), f.at(0, 0, end)));
        }
      }
    }
    if (recipe instanceof Turned t) {
      turned(t, threads);
    }
    return new Marks(axes, threads);
  }

  /** Adds an axis, or makes one that lies on the same line reach as far. */
  private static void join(List<Axis> axes, Axis axis) {
    for (int i = 0; i < axes.size(); i++) {
      Axis a = axes.get(i);
      if (covers(a, axis)) {
        Vec way = a.to().minus(a.from()).unit();
        axes.set(
            i,
            new Axis(a.feature(), least(a, axis, way), least(a, axis, way.times(-1)), a.radius()));
        return;
      }
    }
    axes.add(axis);
  }

  /** Returns the end of two axes on one line that lies furthest against a direction. */
  private static Vec least(Axis a, Axis b, Vec way) {
    return Stream.of(a.from(), a.to(), b.from(), b.to())
        .min(Comparator.comparingDouble(p -> p.dot(way)))
        .orElse(a.from());
  }

  private static boolean covers(Axis a, Axis b) {
    Vec d = a.to().minus(a.from()).unit();
    return b.from().minus(a.from()).cross(d).length() < 1e-7
        && b.to().minus(a.from()).cross(d).length() < 1e-7;
  }

  private static void turned(Turned t, List<Threaded> into) {
    threads(t.outside(), 0, 1, Inside.EXTERNAL, into);
    threads(t.left().steps(), 0, 1, Inside.INTERNAL, into);
    threads(t.right().steps(), t.length(), -1, Inside.INTERNAL, into);
  }

  private static void threads(
      List<Step> steps, double from, int way, Inside inside, List<Threaded> into) {
    double x = from;
    for (Step s : steps) {
      double end = x + way * s.length().nominal();
      if (s.thread() != null) {
        double full = s.threadLength() > 0 ? s.threadLength() : s.length().nominal();
        boolean fromLow = s.threadFrom() == End.LEFT;
        double a = fromLow ? Math.min(x, end) : Math.max(x, end);
        double b = fromLow ? a + full : a - full;
        into.add(new Threaded(s.name(), s.thread(), inside, new Vec(a, 0, 0), new Vec(b, 0, 0)));
      }
      x = end;
    }
  }
}
