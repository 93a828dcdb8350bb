package fettle.mechanics.motion;

/** One step on the way from a member's zero to that of what sits on it. */
public sealed interface Step {

  /**
   * A fixed distance.
   *
   * @param by how far and which way
   */
  record Shift(Vector by) implements Step {}

  /**
   * A fixed turn, as of a slide set over.
   *
   * @param axis axis of the turn, of length 1
   * @param angle angle, right-handed [rad]
   */
  record Tilt(Vector axis, double angle) implements Step {}

  /**
   * A slide.
   *
   * @param along direction of its travel, of length 1
   * @param axis number of the machine axis that moves it
   * @param factor travel for each unit of the axis [mm per unit]
   */
  record Slide(Vector along, int axis, double factor) implements Step {}

  /**
   * A bearing.
   *
   * @param about its axis, of length 1, through the zero
   * @param axis number of the machine axis that turns it
   * @param factor angle for each unit of the axis; other than 1 if a train turns it [rad per unit]
   */
  record Turn(Vector about, int axis, double factor) implements Step {}
}
