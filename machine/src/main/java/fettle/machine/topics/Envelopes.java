package fettle.machine.topics;

import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Solid;
import fettle.machine.lathe.Train;
import fettle.mechanics.base.Interval;
import fettle.mechanics.motion.Convex;
import fettle.mechanics.motion.Domain;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Step;
import fettle.mechanics.motion.Vector;
import fettle.mechanics.threads.Hand;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lathe's members as solids on seats. A handle is given every angle at every position of its
 * slide, which is on the safe side of what its train allows, unless it is asked to turn with it.
 */
public final class Envelopes {

  /** An angle this small over a whole travel is no turn. */
  private static final double LEAST_LEAD = 1e-3;

  private final Machine machine;
  private final Use use;
  private final Map<String, Mechanism.Link> links = new LinkedHashMap<>();
  private final List<String> axes = new ArrayList<>();
  private final List<Interval> ranges = new ArrayList<>();

  private Envelopes(Machine machine, Use use) {
    this.machine = machine;
    this.use = use;
  }

  /** Returns the lathe as solids on seats; each axis has the name of the member it moves. */
  public static Mechanism of(Machine machine, Use use) {
    return new Envelopes(machine, use).mechanism();
  }

  private Mechanism mechanism() {
    machine.members().values().forEach(this::axis);
    machine.members().values().forEach(this::link);
    List<Mechanism.Body> bodies = new ArrayList<>();
    for (Member member : machine.members().values()) {
      member
          .envelope()
          .forEach(
              (name, solid) -> bodies.add(new Mechanism.Body(member.name(), name, convex(solid))));
    }
    double[] low = ranges.stream().mapToDouble(Interval::low).toArray();
    double[] high = ranges.stream().mapToDouble(Interval::high).toArray();
    return new Mechanism(new Domain(axes, low, high), List.copyOf(links.values()), bodies);
  }

  private void axis(Member member) {
    boolean moves = member.seat() instanceof Seat.Sliding || member.seat() instanceof Seat.Turning;
    if (moves && feed(member).isEmpty()) {
      Interval held = use.held().get(member.name());
      axes.add(member.name());
      ranges.add(held == null ? new Interval(0, Use.travel(member)) : held);
    }
  }

  private void link(Member member) {
    if (links.containsKey(member.name())) {
      return;
    }
    String on = member.seat().on().orElse("");
    if (!on.isEmpty()) {
      link(machine.member(on));
    }
    List<Step> steps = new ArrayList<>();
    steps.add(new Step.Shift(vector(member.seat().at())));
    if (member.seat() instanceof Seat.Sliding sliding) {
      if (sliding.swivel().value() != 0) {
        steps.add(new Step.Tilt(direction(Axis.Y), sliding.swivel().value()));
      }
      steps.add(new Step.Slide(direction(sliding.axis()), axes.indexOf(member.name()), 1));
    } else if (member.seat() instanceof Seat.Turning turning) {
      Optional<Train> feed = feed(member);
      String mover = feed.map(Train::to).orElse(member.name());
      double factor = feed.map(Envelopes::turned).orElse(1.0);
      steps.add(new Step.Turn(direction(turning.axis()), axes.indexOf(mover), factor));
    }
    links.put(member.name(), new Mechanism.Link(member.name(), on, steps));
  }

  /** The feed that a handle turns with, if handles turn with their feeds and nothing holds it. */
  private Optional<Train> feed(Member member) {
    if (use.handles() != Use.Handles.GEARED
        || use.held().containsKey(member.name())
        || !(member.seat() instanceof Seat.Turning)) {
      return Optional.empty();
    }
    return machine.trains().values().stream()
        .filter(t -> t.from().equals(member.name()) && t.linear() && t.factors().size() == 1)
        .filter(t -> Math.abs(t.factor().toDouble()) >= LEAST_LEAD)
        .filter(t -> slides(t.to()))
        .findFirst();
  }

  private boolean slides(String member) {
    Member found = machine.members().get(member);
    return found != null && found.seat() instanceof Seat.Sliding;
  }

  /**
   * Angle of a handle for each millimetre of its slide, right-handed about the axis that points out
   * of the lathe at the handle.
   */
  private static double turned(Train train) {
    boolean reversed = train.reversals() % 2 == 1;
    boolean left =
        train.elements().get(train.elements().size() - 1) instanceof Element.Screw screw
            && screw.thread().hand() == Hand.LEFT;
    double sense = left == reversed ? -1 : 1;
    return sense * 2 * Math.PI / train.factor().toDouble();
  }

  private static Convex convex(Solid solid) {
    if (solid instanceof Solid.Box box) {
      return new Convex.Box(vector(box.corner()), vector(box.corner().plus(box.size())));
    }
    Solid.Cylinder c = (Solid.Cylinder) solid;
    Vector middle = vector(c.end().along(c.axis(), c.length() / 2));
    return new Convex.Cylinder(middle, direction(c.axis()), c.diameter() / 2, c.length() / 2);
  }

  private static Vector vector(Point p) {
    return new Vector(p.x(), p.y(), p.z());
  }

  static Vector direction(Axis axis) {
    return switch (axis) {
      case X -> new Vector(1, 0, 0);
      case Y -> new Vector(0, 1, 0);
      case Z -> new Vector(0, 0, 1);
    };
  }
}
