package fettle.mechanics.motion;

import java.util.ArrayList;
import java.util.List;

/**
 * The way from a common member to a solid.
 *
 * @param steps from the common member outwards
 * @param solid the solid, in the directions of the last member
 */
public record Chain(List<Step> steps, Convex solid) {

  /** Keeps its own copy. */
  public Chain {
    steps = List.copyOf(steps);
  }

  /**
   * Returns where a point of the last member lies at a position.
   *
   * @param point the point, in the last member's directions
   * @param position position of every axis [mm or rad]
   */
  public Vector place(Vector point, double[] position) {
    Vector at = point;
    for (int i = steps.size() - 1; i >= 0; i--) {
      at = outwards(steps.get(i), at, position);
    }
    return at;
  }

  /**
   * Returns this way without the seats that turn a round solid about its own axis, for such a turn
   * moves no point of the solid out of it.
   */
  public Chain plain() {
    List<Step> kept = new ArrayList<>(steps);
    Vector zero = Vector.ZERO;
    for (int i = kept.size() - 1; i >= 0; i--) {
      Step step = kept.get(i);
      if (step instanceof Step.Shift shift) {
        zero = zero.plus(shift.by());
      } else if (step instanceof Step.Turn turn && solid.roundAbout(zero, turn.about())) {
        kept.remove(i);
      } else {
        break;
      }
    }
    return new Chain(kept, solid);
  }

  private static Vector outwards(Step step, Vector at, double[] position) {
    if (step instanceof Step.Shift shift) {
      return at.plus(shift.by());
    } else if (step instanceof Step.Slide slide) {
      return at.plus(position[slide.axis()] * slide.factor(), slide.along());
    } else if (step instanceof Step.Turn turn) {
      double angle = position[turn.axis()] * turn.factor();
      return at.turned(turn.about(), Math.cos(angle), Math.sin(angle));
    }
    Step.Tilt tilt = (Step.Tilt) step;
    return at.turned(tilt.axis(), Math.cos(tilt.angle()), Math.sin(tilt.angle()));
  }
}
