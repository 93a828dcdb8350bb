package fettle.machine.lathe;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Quantity;
import java.util.Optional;

/** How a member sits on another. */
public sealed interface Seat {

  /** Returns where the member's zero lies on what it sits on, at the start of its travel. */
  Point at();

  /** Returns the member it sits on, if any. */
  Optional<String> on();

  /**
   * The member everything stands on.
   *
   * @param at place of its zero
   */
  record Fixed(Point at) implements Seat {
    @Override
    public Optional<String> on() {
      return Optional.empty();
    }
  }

  /**
   * Screwed or clamped.
   *
   * @param on the member it sits on, always present
   * @param at place of its zero
   */
  record Bolted(Optional<String> on, Point at) implements Seat {}

  /**
   * Slides along an axis.
   *
   * @param on the member it slides on, always present
   * @param at place of its zero at the start of its travel
   * @param axis direction of travel
   * @param travel how far it slides
   * @param swivel angle of the travel to the axis
   */
  record Sliding(Optional<String> on, Point at, Axis axis, Quantity travel, Quantity swivel)
      implements Seat {}

  /**
   * Turns about an axis.
   *
   * @param on the member it turns in, always present
   * @param at place of its zero
   * @param axis the axis it turns about
   * @param range how far it turns
   */
  record Turning(Optional<String> on, Point at, Axis axis, Quantity range) implements Seat {}

  /** Makes a seat of its block. */
  static Seat of(Values block) {
    Point at = block.block("at").map(Point::of).orElse(Point.ZERO);
    Optional<String> on = block.text("on");
    return switch (block.shape()) {
      case "seat/fixed" -> new Fixed(at);
      case "seat/bolted" -> new Bolted(on, at);
      case "seat/sliding" ->
          new Sliding(
              on,
              at,
              Axis.valueOf(block.needText("axis")),
              block.need("travel"),
              block.need("swivel"));
      default -> new Turning(on, at, Axis.valueOf(block.needText("axis")), block.need("range"));
    };
  }
}
