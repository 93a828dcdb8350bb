package fettle.machine.topics;

import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Solid;
import fettle.mechanics.motion.Convex;
import fettle.mechanics.motion.Domain;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Step;
import fettle.mechanics.motion.Vector;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The lathe's members as solids on seats. A handwheel is given every angle at every position of its
 * slide, which is on the safe side of what its train allows.
 */
public final class Envelopes {

  private final Machine machine;
  private final Map<String, Mechanism.Link> links = new LinkedHashMap<>();
  private final List<String> axes = new ArrayList<>();
  private final List<Double> high = new ArrayList<>();

  private Envelopes(Machine machine) {
    this.machine = machine;
  }

  /** Returns the lathe as solids on seats; each axis has the name of the member it moves. */
  public static Mechanism of(Machine machine) {
    return new Envelopes(machine).mechanism();
  }

  private Mechanism mechanism() {
    machine.members().values().forEach(this::link);
    List<Mechanism.Body> bodies = new ArrayList<>();
    for (Member member : machine.members().values()) {
      member
          .envelope()
          .forEach(
              (name, solid) -> bodies.add(new Mechanism.Body(member.name(), name, convex(solid))));
    }
    double[] top = high.stream().mapToDouble(Double::doubleValue).toArray();
    return new Mechanism(
        new Domain(axes, new double[top.length], top), List.copyOf(links.values()), bodies);
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
      steps.add(new Step.Slide(direction(sliding.axis()), axes.size(), 1));
      axis(member.name(), sliding.travel().value());
    } else if (member.seat() instanceof Seat.Turning turning) {
      steps.add(new Step.Turn(direction(turning.axis()), axes.size(), 1));
      axis(member.name(), Math.min(2 * Math.PI, turning.range().value()));
    }
    links.put(member.name(), new Mechanism.Link(member.name(), on, steps));
  }

  private void axis(String name, double top) {
    axes.add(name);
    high.add(Math.max(0, top));
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

  private static Vector direction(Axis axis) {
    return switch (axis) {
      case X -> new Vector(1, 0, 0);
      case Y -> new Vector(0, 1, 0);
      case Z -> new Vector(0, 0, 1);
    };
  }
}
