package fettle.desk.picture;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where every member of a lathe stands while its slides are somewhere on their travel.
 *
 * @param positions how far each sliding or turning member is moved, in mm or degrees
 * @param zeros place of each member's zero
 */
public record Stand(Map<String, Double> positions, Map<String, Point> zeros) {

  private static final double ORDINARY = 0.3;

  /** Keeps its own copies. */
  public Stand {
    positions = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(positions));
    zeros = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(zeros));
  }

  /** Places the members; what is not given stands where it is out of the way. */
  public static Stand of(Machine machine, Map<String, Double> given) {
    Map<String, Double> positions = new LinkedHashMap<>();
    for (Member member : machine.members().values()) {
      double most = most(member);
      if (most > 0) {
        Double wish = given.get(member.name());
        double at = wish == null ? ordinary(machine, member) : wish;
        positions.put(member.name(), Math.max(0, Math.min(most, at)));
      }
    }
    Map<String, Point> zeros = new LinkedHashMap<>();
    machine.members().keySet().forEach(name -> zero(machine, name, positions, zeros));
    return new Stand(positions, zeros);
  }

  /**
   * Returns how far a member moves: millimetres of travel, or degrees.
   *
   * @return travel of a slide [mm], or range of what turns [deg]
   */
  public static double most(Member member) {
    if (member.seat() instanceof Seat.Sliding sliding) {
      return sliding.travel().value();
    } else if (member.seat() instanceof Seat.Turning turning) {
      return Math.toDegrees(turning.range().value());
    }
    return 0;
  }

  /** The slide that reaches farthest along a way stands at its end; the others near their start. */
  private static double ordinary(Machine machine, Member member) {
    if (!(member.seat() instanceof Seat.Sliding own)) {
      return 0;
    }
    boolean shared = false;
    boolean farthest = true;
    for (Member other : machine.members().values()) {
      if (!other.name().equals(member.name())
          && other.seat() instanceof Seat.Sliding beside
          && beside.on().equals(own.on())
          && beside.axis() == own.axis()) {
        shared = true;
        farthest &= end(own) >= end(beside);
      }
    }
    return own.travel().value() * (shared && farthest ? 1 : ORDINARY);
  }

  private static double end(Seat.Sliding seat) {
    Point end = Point.ZERO.along(seat.axis(), seat.travel().value()).plus(seat.at());
    return switch (seat.axis()) {
      case X -> end.x();
      case Y -> end.y();
      case Z -> end.z();
    };
  }

  private static Point zero(
      Machine machine, String name, Map<String, Double> positions, Map<String, Point> zeros) {
    Point known = zeros.get(name);
    if (known != null) {
      return known;
    }
    Member member = machine.member(name);
    Optional<String> on = member.seat().on();
    Point under = on.isEmpty() ? Point.ZERO : zero(machine, on.get(), positions, zeros);
    Point here = under.plus(member.seat().at());
    if (member.seat() instanceof Seat.Sliding sliding) {
      here = here.along(sliding.axis(), positions.getOrDefault(name, 0.0));
    }
    zeros.put(name, here);
    return here;
  }
}
