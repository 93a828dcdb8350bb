package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the lathe moves under a force between tool and work in its usual cut, piece by piece, against
 * the bed under the head.
 *
 * @param pieces what is drawn, each moving as a rigid body
 * @param work the work in the jaws
 * @param cut where the tool cuts, about which motions are told: x, y, z [mm]
 * @param give how far tool and work part, along the force [mm]
 */
public record RigidityPortrait(List<Piece> pieces, Work work, List<Double> cut, double give) {

  /** Keeps its own lists. */
  public RigidityPortrait {
    pieces = List.copyOf(pieces);
    cut = List.copyOf(cut);
  }

  /**
   * A member as a box.
   *
   * @param name the member
   * @param low low corner: x, y, z [mm]
   * @param high high corner: x, y, z [mm]
   * @param motion along x, y, z [mm] and about them [rad]
   */
  public record Piece(String name, List<Double> low, List<Double> high, List<Double> motion) {}

  /**
   * The work, a round bar.
   *
   * @param from where it leaves the jaws along the lathe [mm]
   * @param to where it ends [mm]
   * @param radius its radius [mm]
   * @param held how it moves at the jaws, as a piece
   * @param free how its end moves
   */
  public record Work(double from, double to, double radius, List<Double> held, List<Double> free) {}

  /**
   * Returns the lathe under a force.
   *
   * @param machine the lathe
   * @param force force on the tool: x, y, z [N]
   */
  public static Optional<RigidityPortrait> of(Machine machine, double... force) {
    return Stance.of(machine).map(stance -> of(stance, force));
  }

  private static RigidityPortrait of(Stance stance, double[] force) {
    Map<String, List<Double>> motions =
        CuttingLoop.of(stance, Flexes.none()).model().motions(CuttingLoop.HEAD_END, force);
    List<Piece> pieces = new ArrayList<>();
    for (Member member : stance.machine().members().values()) {
      Optional<String> body = body(stance, member);
      Optional<double[][]> box = Boxes.around(member);
      if (body.isPresent() && box.isPresent() && motions.containsKey(body.get())) {
        Point zero = stance.zero(member);
        pieces.add(
            new Piece(
                member.name(),
                corner(zero, box.get()[0]),
                corner(zero, box.get()[1]),
                motions.get(body.get())));
      }
    }
    List<Double> held = motions.getOrDefault("jaws", List.of(0., 0., 0., 0., 0., 0.));
    List<Double> free = motions.getOrDefault("work", held);
    List<Double> tool = motions.getOrDefault("tool", held);
    double size = 0;
    double apart = 0;
    for (int i = 0; i < 3; i++) {
      apart += force[i] * (tool.get(i) - free.get(i));
      size += force[i] * force[i];
    }
    Point cut = stance.cut();
    Work work = new Work(stance.face().z(), cut.z(), cut.x() - stance.face().x(), held, free);
    return new RigidityPortrait(
        pieces, work, List.of(cut.x(), cut.y(), cut.z()), apart / Math.sqrt(size));
  }

  private static List<Double> corner(Point zero, double[] own) {
    return List.of(zero.x() + own[0], zero.y() + own[1], zero.z() + own[2]);
  }

  /** Name in the loop of the body a member moves with. */
  private static Optional<String> body(Stance stance, Member member) {
    if (stance.slides().contains(member)) {
      return Optional.of(CuttingLoop.top(member));
    }
    Optional<String> on = member.seat().on();
    String spindle = stance.head().member().name();
    if (member.name().equals(spindle)) {
      return Optional.of("spindle");
    }
    if (on.filter(spindle::equals).isPresent()) {
      return Optional.of("nose");
    }
    if (stance.head().member().seat().on().filter(member.name()::equals).isPresent()) {
      return Optional.of("head");
    }
    boolean bed = member.seat() instanceof Seat.Fixed;
    return bed ? Optional.of(CuttingLoop.HEAD_END) : Optional.empty();
  }
}
