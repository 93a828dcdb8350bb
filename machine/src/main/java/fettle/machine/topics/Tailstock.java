package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Solid;
import fettle.mechanics.loop.BarMember;
import fettle.mechanics.loop.Compliance;
import fettle.mechanics.loop.Link;
import fettle.mechanics.loop.LoopModel;
import fettle.mechanics.loop.TwoWays;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The tailstock clamped on the bed, from its centre down to the ways.
 *
 * @param model the springs from the centre to the bed
 */
record Tailstock(LoopModel model) {

  private static final double STEEL = 206_000;

  /** Returns the tailstock, if the book tells of a quill that slides in a body on the bed. */
  static Optional<Tailstock> of(Machine machine) {
    for (Member quill : machine.members().values()) {
      Optional<Member> body = quill.seat().on().map(machine::member);
      Optional<Member> bed = body.flatMap(b -> b.seat().on()).map(machine::member);
      boolean slides =
          quill.seat() instanceof Seat.Sliding
              && body.filter(b -> b.seat() instanceof Seat.Sliding).isPresent();
      Optional<Solid.Cylinder> bar = cylinder(quill);
      if (slides && bed.isPresent() && bed.get().seat() instanceof Seat.Fixed && bar.isPresent()) {
        return WayStrips.foot(body.get(), bed.get())
            .map(w -> new Tailstock(model(machine, quill, body.get(), bar.get(), w)));
      }
    }
    return Optional.empty();
  }

  private static Optional<Solid.Cylinder> cylinder(Member quill) {
    return quill.envelope().values().stream()
        .filter(s -> s instanceof Solid.Cylinder)
        .map(s -> (Solid.Cylinder) s)
        .findFirst();
  }

  private static LoopModel model(
      Machine machine, Member quill, Member body, Solid.Cylinder bar, TwoWays foot) {
    List<Link> links = new ArrayList<>();
    double[] at = foot.middle().stream().mapToDouble(Double::doubleValue).toArray();
    links.add(Link.springs(body.name() + " on the bed", "bed", "foot", at, foot.springs(), 1.6));
    Point axis = quill.seat().at();
    double[][] box = Boxes.foot(body).orElseThrow();
    double[][] post = Boxes.highest(body).orElse(box);
    double[] top = {axis.x(), axis.y(), at[2]};
    Optional<BarMember> upright = Uprights.of(body, post, axis.y() - box[0][1]);
    String holder = "foot";
    if (upright.isPresent()) {
      holder = "body";
      Compliance c = Compliance.of(upright.get()).turned(Uprights.AXES);
      links.add(Link.of(body.name() + " itself", "foot", "body", top, c, 1.3));
    }
    double out = Stance.block(machine).need("quill out").value();
    double[][] back = {{0, 1, 0}, {0, 0, -1}, {-1, 0, 0}};
    Compliance tube =
        Compliance.of(BarMember.round(out, bar.diameter(), 0.5 * bar.diameter(), STEEL, 0.29))
            .turned(back);
    double mouth = Math.min(box[0][2], post[0][2]);
    double[] tip = {axis.x(), axis.y(), mouth - out};
    links.add(Link.of("quill", holder, "centre", tip, tube, 1.15));
    return new LoopModel(links, "centre", "bed", List.of(tip[0], tip[1], tip[2]), Map.of());
  }
}
