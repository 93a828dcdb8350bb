package fettle.bench;

import fettle.mechanics.motion.Clearance;
import fettle.mechanics.motion.Convex;
import fettle.mechanics.motion.Domain;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Pair;
import fettle.mechanics.motion.Step;
import fettle.mechanics.motion.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A machine of the kind a lathe is, with convex solids bolted at random to its bed, its four slides
 * and its three turning seats; a solid that would touch another somewhere is placed again.
 */
final class MovingMachine {

  private static final long SEED = 2;
  private static final double REACH = 45;
  private static final Vector X = new Vector(1, 0, 0);
  private static final Vector Y = new Vector(0, 1, 0);
  private static final Vector Z = new Vector(0, 0, 1);

  private static final Domain DOMAIN =
      new Domain(
          List.of(
              "saddle", "cross slide", "top slide", "tailstock", "swivel", "crank", "clamp lever"),
          new double[] {0, 0, 0, 0, -0.6, 0, 0},
          new double[] {300, 96, 58, 200, 0.6, 2 * Math.PI, 1.6});

  private static final List<Mechanism.Link> SEATS =
      List.of(
          new Mechanism.Link("bed", "", List.of()),
          slide("saddle", "bed", new Vector(0, 30, 60), Z, 0),
          slide("cross slide", "saddle", new Vector(-40, 30, 60), X, 1),
          turn("swivel", "cross slide", new Vector(0, 30, 0), Y, 4),
          slide("top slide", "swivel", new Vector(0, 30, 0), Z, 2),
          turn("crank", "saddle", new Vector(90, -40, 30), X, 5),
          slide("tailstock", "bed", new Vector(0, 40, 520), Z, 3),
          turn("clamp lever", "tailstock", new Vector(70, 40, 40), X, 6));

  private final Random random = new Random(SEED);

  private MovingMachine() {}

  /** Returns the machine, the same every time. */
  static Mechanism of(int solids) {
    return new MovingMachine().machine(solids);
  }

  private Mechanism machine(int solids) {
    List<Mechanism.Link> links = new ArrayList<>(SEATS);
    List<Mechanism.Body> bodies = new ArrayList<>();
    for (int i = 0; i < solids; i++) {
      String seat = SEATS.get(i % SEATS.size()).name();
      String part = "part " + i;
      links.add(new Mechanism.Link(part, seat, List.of()));
      bodies.add(clear(links, bodies, part));
    }
    return new Mechanism(DOMAIN, links, bodies);
  }

  private Mechanism.Body clear(
      List<Mechanism.Link> links, List<Mechanism.Body> bodies, String part) {
    for (int i = 0; i < 500; i++) {
      Mechanism.Body body = new Mechanism.Body(part, "solid", solid());
      List<Mechanism.Body> with = new ArrayList<>(bodies);
      with.add(body);
      List<Pair> pairs =
          new Mechanism(DOMAIN, links, with)
              .pairs().searched().stream().filter(p -> p.name().contains(body.title())).toList();
      if (Clearance.table(pairs, DOMAIN, 0.2, Clearance.BUDGET).stream().noneMatch(Gap::touches)) {
        return body;
      }
    }
    throw new IllegalStateException("no room is left for " + part);
  }

  private Convex solid() {
    double size = 2 + 6 * random.nextDouble();
    return switch (random.nextInt(3)) {
      case 0 -> {
        Vector half = new Vector(size, 2 + 6 * random.nextDouble(), 2 + 6 * random.nextDouble());
        Vector centre = place();
        yield new Convex.Box(centre.minus(half), centre.plus(half));
      }
      case 1 -> new Convex.Cylinder(place(), direction(), size, 2 + 8 * random.nextDouble());
      default -> {
        Vector from = place();
        yield Convex.capsule(from, from.plus(20 * random.nextDouble(), direction()), size / 2);
      }
    };
  }

  private Vector place() {
    return new Vector(coordinate(), coordinate(), coordinate());
  }

  private double coordinate() {
    return REACH * (2 * random.nextDouble() - 1);
  }

  private Vector direction() {
    return new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
  }

  private static Mechanism.Link slide(String name, String on, Vector at, Vector along, int axis) {
    return new Mechanism.Link(
        name, on, List.of(new Step.Shift(at), new Step.Slide(along, axis, 1)));
  }

  private static Mechanism.Link turn(String name, String on, Vector at, Vector about, int axis) {
    return new Mechanism.Link(name, on, List.of(new Step.Shift(at), new Step.Turn(about, axis, 1)));
  }
}
