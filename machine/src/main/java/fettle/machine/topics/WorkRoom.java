package fettle.machine.topics;

import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Solid;
import fettle.mechanics.motion.Clearance;
import fettle.mechanics.motion.Convex;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Pair;
import fettle.mechanics.motion.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The room for work between the face of the chuck and the nose of the quill: its length, and how
 * large it may turn over each member below it, wherever what is not held may stand.
 *
 * @param length from the chuck, or the nose of the spindle, to the quill [mm]
 * @param from what holds the work at the head
 * @param to what ends the room; empty if it is the end of the bed
 * @param swings what the work turns over, the least first
 */
public record WorkRoom(double length, String from, String to, List<Swing> swings) {

  private static final double TOLERANCE = 1e-3;
  private static final double COAXIAL = 0.05;
  private static final String WORK = "axis of the work";

  /**
   * How large work may turn over a member.
   *
   * @param over the member
   * @param gap from the axis of the spindle to the member
   */
  public record Swing(String over, Gap gap) {
    /**
     * Returns the greatest diameter.
     *
     * @return diameter, at the witness position [mm]
     */
    public double diameter() {
      return 2 * gap.upper();
    }

    /**
     * Returns the diameter that is proven to pass.
     *
     * @return diameter [mm]
     */
    public double proven() {
      return 2 * gap.lower();
    }
  }

  /** Keeps its own copy. */
  public WorkRoom {
    swings = List.copyOf(swings);
  }

  /** Measures the room; nothing if the book draws no spindle along the bed. */
  public static Optional<WorkRoom> of(Machine machine, Use use) {
    Optional<Member> spindle =
        machine.members().values().stream()
            .filter(m -> m.seat() instanceof Seat.Turning t && t.axis() == Axis.Z)
            .filter(m -> m.name().equals("spindle"))
            .findFirst();
    return spindle.flatMap(s -> new Search(machine, use, s).room());
  }

  private static final class Search {
    private final Machine machine;
    private final Member spindle;
    private final Mechanism mechanism;
    private final Vector zero;

    Search(Machine machine, Use use, Member spindle) {
      this.machine = machine;
      this.spindle = spindle;
      this.mechanism = Envelopes.of(machine, use);
      this.zero = mechanism.place(spindle.name(), Vector.ZERO, mechanism.domain().low());
    }

    Optional<WorkRoom> room() {
      Mechanism.Body held = null;
      double face = Double.NEGATIVE_INFINITY;
      double end = Double.NEGATIVE_INFINITY;
      Mechanism.Body nose = null;
      double noseAt = Double.NEGATIVE_INFINITY;
      for (Mechanism.Body body : mechanism.bodies()) {
        double[] at = mechanism.domain().low();
        double top = edge(body, at, 1);
        if (standsOn(body.link(), spindle.name())) {
          held = top > face ? body : held;
          face = Math.max(face, top);
        } else if (quill(body)) {
          double farthest = farthest(body);
          nose = farthest > noseAt ? body : nose;
          noseAt = Math.max(noseAt, farthest);
        } else if (machine.member(body.link()).seat().on().isEmpty()) {
          end = Math.max(end, top);
        }
      }
      double to = nose == null ? end : noseAt;
      if (held == null || !(to > face)) {
        return Optional.empty();
      }
      return Optional.of(
          new WorkRoom(to - face, held.link(), nose == null ? "" : nose.link(), swings(face, to)));
    }

    private List<Swing> swings(double face, double to) {
      List<Mechanism.Body> bodies = new ArrayList<>(mechanism.bodies());
      Convex axis =
          new Convex.Hull(
              List.of(new Vector(0, 0, face - zero.z()), new Vector(0, 0, to - zero.z())));
      bodies.add(new Mechanism.Body(spindle.name(), WORK, axis));
      Mechanism with = new Mechanism(mechanism.domain(), mechanism.links(), bodies);
      Map<String, Gap> least = new LinkedHashMap<>();
      for (Pair pair : with.pairs().searched()) {
        String other = pair.second().endsWith("(" + WORK + ")") ? pair.first() : "";
        String member = other.isEmpty() ? "" : other.substring(0, other.lastIndexOf(" ("));
        if (!member.isEmpty() && below(member)) {
          Gap gap = Clearance.of(pair, with.domain(), TOLERANCE, Clearance.BUDGET);
          least.merge(member, gap, (p, q) -> p.upper() <= q.upper() ? p : q);
        }
      }
      List<Swing> swings = new ArrayList<>();
      least.forEach((member, gap) -> swings.add(new Swing(member, gap)));
      swings.sort(Comparator.comparingDouble(Swing::diameter).thenComparing(Swing::over));
      return swings;
    }

    /** Tells whether work can turn over a member: the bed, and what slides on it but the quill. */
    private boolean below(String member) {
      Member found = machine.member(member);
      boolean slides = found.seat() instanceof Seat.Sliding;
      return found.seat().on().isEmpty()
          || (slides
              && mechanism.bodies().stream().noneMatch(b -> member.equals(b.link()) && carries(b)));
    }

    /** Tells whether a body belongs to the quill or to what carries it. */
    private boolean carries(Mechanism.Body body) {
      return mechanism.bodies().stream()
          .filter(this::quill)
          .anyMatch(q -> standsOn(q.link(), body.link()));
    }

    /** Tells whether a solid is a round slide on the axis of the spindle. */
    private boolean quill(Mechanism.Body body) {
      Member member = machine.member(body.link());
      if (!(member.seat() instanceof Seat.Sliding sliding)
          || sliding.axis() != Axis.Z
          || !(member.envelope().get(body.name()) instanceof Solid.Cylinder round)
          || round.axis() != Axis.Z) {
        return false;
      }
      Point end = round.end();
      Vector at =
          mechanism.place(
              body.link(), new Vector(end.x(), end.y(), end.z()), mechanism.domain().low());
      return Math.hypot(at.x() - zero.x(), at.y() - zero.y()) <= COAXIAL;
    }

    /** Farthest place of a quill's nose, its slides where they are out of the way. */
    private double farthest(Mechanism.Body body) {
      double[] at = mechanism.domain().low();
      double[] best = at.clone();
      for (int axis = 0; axis < at.length; axis++) {
        double[] moved = at.clone();
        moved[axis] = mechanism.domain().high()[axis];
        if (edge(body, moved, -1) > edge(body, at, -1)) {
          best[axis] = moved[axis];
        }
      }
      return edge(body, best, -1);
    }

    /** Last (1) or first (-1) place of a solid along the spindle. */
    private double edge(Mechanism.Body body, double[] at, int side) {
      Convex.Ball ball = body.solid().ball();
      Vector middle = mechanism.place(body.link(), ball.centre(), at);
      Vector far = body.solid().support(new Vector(0, 0, side));
      return middle.z() + far.z() - ball.centre().z();
    }

    private boolean standsOn(String member, String carrier) {
      Optional<String> at = Optional.of(member);
      for (int i = 0; at.isPresent() && i <= machine.members().size(); i++) {
        if (at.get().equals(carrier)) {
          return true;
        }
        at = machine.member(at.get()).seat().on();
      }
      return false;
    }
  }
}
