package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Seat;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Unit;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a lathe is used while its gaps are searched: which members are held where, and how its
 * handles turn. What is not held may stand anywhere on its travel.
 *
 * @param held position or range of each member that is held [mm or rad]
 * @param handles how handles turn
 */
public record Use(Map<String, Interval> held, Handles handles) {

  /** How the handle of a feed turns. */
  public enum Handles {
    /** At every angle wherever its slide stands: always on the safe side. */
    ANY_ANGLE,
    /**
     * With its slide, as its train says, beginning at the angle it is drawn at. True only while
     * nobody sets the handle over on its shaft.
     */
    GEARED
  }

  /** Nothing is held and handles stand at any angle. */
  public static final Use WHOLE = new Use(Map.of(), Handles.ANY_ANGLE);

  /** Keeps its own copy. */
  public Use {
    held = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(held));
  }

  /**
   * Reads positions written as {@code saddle=120 mm, cross slide=0 to 20 mm, lever=30 deg}.
   *
   * @throws IllegalArgumentException if a member does not move or a position lies off its travel
   */
  public static Use parse(Machine machine, String text, Handles handles) {
    Map<String, Interval> held = new LinkedHashMap<>();
    for (String part : text.split(",", -1)) {
      if (part.isBlank()) {
        continue;
      }
      int sign = part.indexOf('=');
      if (sign < 0) {
        throw new IllegalArgumentException(
            "'" + part.strip() + "' has no '='; write a member and where it stands, saddle=120 mm");
      }
      String name = part.substring(0, sign).strip();
      Member member = machine.members().get(name);
      if (member == null || !(travel(member) > 0)) {
        throw new IllegalArgumentException(
            "'" + name + "' is no member that slides or turns; there are " + moving(machine));
      }
      held.put(name, position(member, part.substring(sign + 1).strip()));
    }
    return new Use(held, handles);
  }

  private static Interval position(Member member, String text) {
    boolean slides = member.seat() instanceof Seat.Sliding;
    try {
      Quantity at =
          slides
              ? Quantity.parse(text, Dimension.LENGTH, Unit.MM)
              : Quantity.parse(text, Dimension.ANGLE, Unit.DEG);
      double slack = 1e-9 * Math.max(1, travel(member));
      Interval range = Interval.about(at.value(), at.doubt());
      if (range.low() < -slack || range.high() > travel(member) + slack) {
        throw new IllegalArgumentException(
            member.name() + " goes from 0 to " + shown(member) + ", found " + text);
      }
      return new Interval(
          Math.max(0, range.low()), Math.min(travel(member), Math.max(0, range.high())));
    } catch (Quantity.NotOne e) {
      throw new IllegalArgumentException(
          "'" + text + "' is no position of the " + member.name() + "; expected " + e.expected(),
          e);
    }
  }

  private static String shown(Member member) {
    double most = travel(member);
    return member.seat() instanceof Seat.Sliding
        ? fettle.mechanics.base.Numbers.significant(most, 6) + " mm"
        : fettle.mechanics.base.Numbers.significant(Math.toDegrees(most), 6) + " deg";
  }

  private static String moving(Machine machine) {
    return String.join(
        ", ",
        machine.members().values().stream().filter(m -> travel(m) > 0).map(Member::name).toList());
  }

  /**
   * Returns how far a member moves.
   *
   * @return travel; 0 if it is fixed [mm or rad]
   */
  static double travel(Member member) {
    if (member.seat() instanceof Seat.Sliding sliding) {
      return Math.max(0, sliding.travel().value());
    } else if (member.seat() instanceof Seat.Turning turning) {
      return Math.max(0, Math.min(2 * Math.PI, turning.range().value()));
    }
    return 0;
  }
}
