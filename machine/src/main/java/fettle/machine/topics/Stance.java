package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the lathe stands in its usual cut: where the tool meets the work, and where the slides are
 * for it.
 *
 * @param machine the lathe
 * @param head its spindle in its bearings
 * @param slides the slides from the tool down to the bed
 * @param travel how far each has slid from its start
 * @param face where the work leaves the jaws: x, y, z [mm]
 * @param cut where the tool meets the work
 */
record Stance(
    Machine machine,
    Headstock head,
    List<Member> slides,
    Map<String, Double> travel,
    Point face,
    Point cut) {

  private static final double REACH = 0.5;

  /** Returns the usual cut, if the book tells of a spindle and of slides on a bed. */
  static Optional<Stance> of(Machine machine) {
    return of(machine, CutTopic.overhang(machine));
  }

  /**
   * Returns a cut so far from the jaws.
   *
   * @param machine the lathe
   * @param distance from the jaws to the tool [mm]
   */
  static Optional<Stance> of(Machine machine, double distance) {
    Optional<Headstock> head = Headstock.of(machine);
    List<Member> slides = slides(machine);
    if (head.isEmpty() || slides.isEmpty()) {
      return Optional.empty();
    }
    Values block = CutTopic.block(machine);
    Point axis = zero(machine, head.get().member(), Map.of());
    Point face = new Point(axis.x(), axis.y(), face(machine, head.get()));
    Point cut = face.plus(new Point(block.need("diameter").value() / 2, 0, distance));
    return Optional.of(
        new Stance(machine, head.get(), slides, travel(machine, slides, cut), face, cut));
  }

  private static double face(Machine machine, Headstock head) {
    return head.chucks().stream()
        .mapToDouble(c -> zero(machine, c, Map.of()).z() + head.chuckLength())
        .max()
        .orElseGet(
            () ->
                zero(machine, head.member(), Map.of()).z()
                    + Boxes.around(head.member()).map(b -> b[1][2]).orElse(0.0));
  }

  /** The longest pile of slides, one of which goes across. */
  private static List<Member> slides(Machine machine) {
    List<Member> longest = List.of();
    for (Member top : machine.members().values()) {
      List<Member> pile = new ArrayList<>();
      Member at = top;
      boolean across = false;
      while (at.seat() instanceof Seat.Sliding s) {
        pile.add(at);
        across |= s.axis() == Axis.X;
        at = machine.member(s.on().orElseThrow());
      }
      if (at.seat() instanceof Seat.Fixed && across && pile.size() > longest.size()) {
        longest = List.copyOf(pile);
      }
    }
    return longest;
  }

  private static Map<String, Double> travel(Machine machine, List<Member> slides, Point cut) {
    Map<String, Double> travel = new LinkedHashMap<>();
    for (Member m : slides) {
      travel.put(m.name(), ((Seat.Sliding) m.seat()).travel().value() / 2);
    }
    Member carrier = slides.get(0);
    double[][] post = Boxes.highest(carrier).orElse(new double[2][3]);
    double out = block(machine).need("tool overhang").value();
    double[] wanted = {cut.x() + out + (post[1][0] - post[0][0]) / 2, 0, cut.z()};
    for (Member m : reversed(slides)) {
      Seat.Sliding seat = (Seat.Sliding) m.seat();
      Point zero = zero(machine, carrier, travel);
      double[] is = {
        zero.x() + (post[0][0] + post[1][0]) / 2, 0, zero.z() + (post[0][2] + post[1][2]) / 2
      };
      int axis = seat.axis().number();
      double next = travel.getOrDefault(m.name(), 0.0) + wanted[axis] - is[axis];
      if (seat.axis() != Axis.Y) {
        travel.put(m.name(), Math.min(seat.travel().value(), Math.max(0, next)));
      }
    }
    return Collections.unmodifiableMap(travel);
  }

  private static List<Member> reversed(List<Member> slides) {
    List<Member> upwards = new ArrayList<>(slides);
    Collections.reverse(upwards);
    return upwards;
  }

  /** Returns what is held and pushed; the usual if the book does not say. */
  static Values block(Machine machine) {
    return machine
        .values()
        .block("rigidity")
        .orElseGet(
            () ->
                new fettle.machine.dictionary.Reading(
                        fettle.machine.dictionary.Dictionary.standard())
                    .read(
                        "rigidity",
                        new fettle.machine.text.Node.Mapping(
                            Map.of(), fettle.machine.text.Place.file(""))));
  }

  /** Tells whether the slides bring the tool to the cut. */
  boolean reached() {
    Member carrier = slides.get(0);
    double[][] post = Boxes.highest(carrier).orElse(new double[2][3]);
    return Math.abs(zero(carrier).z() + (post[0][2] + post[1][2]) / 2 - cut.z()) < REACH;
  }

  /** Returns where a member's zero lies in the lathe. */
  Point zero(Member member) {
    return zero(machine, member, travel);
  }

  private static Point zero(Machine machine, Member member, Map<String, Double> travel) {
    Point p = member.seat().at();
    Member at = member;
    if (member.seat() instanceof Seat.Sliding s) {
      p = p.along(s.axis(), travel.getOrDefault(member.name(), 0.0));
    }
    while (at.seat().on().isPresent()) {
      at = machine.member(at.seat().on().get());
      p = p.plus(at.seat().at());
      if (at.seat() instanceof Seat.Sliding s) {
        p = p.along(s.axis(), travel.getOrDefault(at.name(), 0.0));
      }
    }
    return p;
  }
}
