package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * A solid as a list of primitives added and cut, in the order made.
 *
 * @param steps the primitives
 */
public record Body(List<Step> steps) {

  /** Whether material is added or cut. */
  public enum Act {
    ADD,
    CUT
  }

  /**
   * One primitive.
   *
   * @param act added or cut
   * @param solid the primitive
   * @param feature the feature it comes from
   */
  public record Step(Act act, Primitive solid, String feature) {}

  /** Keeps its own copy. */
  public Body {
    steps = List.copyOf(steps);
  }

  /** Tells whether there is material at a point. */
  public boolean contains(Vec p) {
    boolean in = false;
    for (Step step : steps) {
      boolean add = step.act == Act.ADD;
      if (in != add && step.solid.contains(p)) {
        in = add;
      }
    }
    return in;
  }

  /** Returns the box around what is added. */
  public Bounds bounds() {
    Bounds all = Bounds.NOTHING;
    for (Step step : steps) {
      if (step.act == Act.ADD) {
        all = all.with(step.solid.bounds());
      }
    }
    return all;
  }

  /** Returns this body with one more primitive. */
  public Body with(Act act, Primitive solid, String feature) {
    List<Step> more = new ArrayList<>(steps);
    more.add(new Step(act, solid, feature));
    return new Body(more);
  }

  /** Returns the half of this body on the far side of a plane: the side its normal comes from. */
  public Body cutBy(Surface.Plane plane, String name) {
    Bounds b = bounds();
    double size = b.diagonal() + 10;
    Vec middle = b.low().plus(b.high()).times(0.5);
    Vec foot = middle.minus(plane.frame().z().times(plane.value(middle)));
    Frame frame = new Frame(foot, plane.frame().x(), plane.frame().y(), plane.frame().z());
    Profile square = Profile.rectangle(-size, -size, size, size, name);
    return with(Act.CUT, new Primitive.Push(frame, square, size), name);
  }
}
