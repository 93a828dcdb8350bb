package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Point;
import fettle.mechanics.loop.LoopModel;
import fettle.mechanics.materials.Materials;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How stiff the lathe is along its travel, and what the stated force across leaves on the diameter
 * there: work held in the jaws alone, and between centres.
 *
 * @param chucked stations of work in the jaws, from the jaws outwards
 * @param centred stations of work between centres, from the head; empty if the book tells no
 *     tailstock
 */
public record TravelMap(List<Station> chucked, List<Station> centred) {

  private static final int STATIONS = 8;

  /** How many times the usual overhang is looked at. */
  private static final double FARTHEST = 2;

  /** Radial stiffness of a dead centre in its taper [N/mm]. */
  private static final double CENTRE = 25_000;

  /** Keeps its own copies. */
  public TravelMap {
    chucked = List.copyOf(chucked);
    centred = List.copyOf(centred);
  }

  /**
   * One place of the tool.
   *
   * @param distance from the jaws, or from the centre in the head [mm]
   * @param across stiffness across [N/mm]
   * @param upright stiffness upright; 0 where it is not told [N/mm]
   * @param diameter diameter left too large by the stated force [mm]
   */
  public record Station(double distance, double across, double upright, double diameter) {}

  /** Returns the map of a lathe; empty if the book does not tell its loop. */
  public static Optional<TravelMap> of(Machine machine) {
    return Stance.of(machine)
        .map(usual -> new TravelMap(chucked(machine), centred(machine, usual)));
  }

  private static List<Station> chucked(Machine machine) {
    double usual = CutTopic.overhang(machine);
    double force = Stance.block(machine).need("force").value();
    List<Station> stations = new ArrayList<>();
    for (int i = 1; i <= STATIONS; i++) {
      Stance stance = Stance.of(machine, usual * FARTHEST * i / STATIONS).orElseThrow();
      if (stance.reached()) {
        LoopModel loop = CuttingLoop.of(stance, Flexes.none()).model();
        double give = loop.compliance().entry(0, 0);
        stations.add(
            new Station(
                stance.cut().z() - stance.face().z(),
                1 / give,
                1 / loop.compliance().entry(1, 1),
                2 * force * give));
      }
    }
    return stations;
  }

  private static List<Station> centred(Machine machine, Stance usual) {
    Values lathe = machine.values().block("lathe").orElseThrow();
    Optional<Tailstock> tail = Tailstock.of(machine);
    if (tail.isEmpty() || !lathe.has("between centres")) {
      return List.of();
    }
    double length = lathe.need("between centres").value();
    double nose = usual.face().z() - usual.head().chuckLength();
    double force = Stance.block(machine).need("force").value();
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i <= STATIONS; i++) {
      double x = length * (0.04 + 0.92 * i / STATIONS);
      Stance stance = Stance.of(machine, nose + x - usual.face().z()).orElseThrow();
      if (stance.reached()) {
        double give = give(stance, tail.get(), nose, length, x);
        stations.add(new Station(x, 1 / give, 0, 2 * force * give));
      }
    }
    return stations;
  }

  /** The work rests on both centres and takes the force between them, statically determinate. */
  private static double give(Stance stance, Tailstock tail, double nose, double length, double x) {
    LoopModel loop = CuttingLoop.centred(stance, tail, nose + length);
    Point cut = stance.cut();
    double s = x / length;
    double moved =
        loop.give(
            List.of(
                pull("tool", cut, cut.z(), 1),
                pull("nose", cut, nose, s - 1),
                pull("centre", cut, nose + length, -s)));
    Values block = CutTopic.block(stance.machine());
    double diameter = block.need("diameter").value();
    double e = Materials.of(block.needText("material")).elasticity();
    double bending = e * Math.PI / 64 * Math.pow(diameter, 4);
    double bent = x * x * (length - x) * (length - x) / (3 * bending * length);
    return moved + ((1 - s) * (1 - s) + s * s) / CENTRE + bent;
  }

  private static LoopModel.Pull pull(String body, Point cut, double z, double force) {
    double x = body.equals("tool") ? cut.x() : 0;
    return new LoopModel.Pull(body, List.of(x, cut.y(), z), List.of(force, 0.0, 0.0));
  }
}
