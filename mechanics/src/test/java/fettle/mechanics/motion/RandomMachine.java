package fettle.mechanics.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Machines at random, from a seed. */
final class RandomMachine {

  private static final List<Vector> AXES =
      List.of(new Vector(1, 0, 0), new Vector(0, 1, 0), new Vector(0, 0, 1));

  private final Random random;

  RandomMachine(long seed) {
    random = new Random(seed);
  }

  /** Returns a machine with slides and turning seats on a bed, and a number of solids. */
  Mechanism of(int slides, int turns, int solids) {
    List<String> names = new ArrayList<>();
    double[] low = new double[slides + turns];
    double[] high = new double[slides + turns];
    List<Mechanism.Link> links = new ArrayList<>();
    links.add(new Mechanism.Link("bed", "", List.of()));
    for (int i = 0; i < slides + turns; i++) {
      boolean slide = i < slides;
      names.add((slide ? "slide " : "turn ") + i);
      low[i] = slide ? 0 : -random.nextDouble() * 2;
      high[i] = slide ? 20 + 80 * random.nextDouble() : random.nextDouble() * 2;
      Step move =
          slide
              ? new Step.Slide(AXES.get(random.nextInt(3)), i, 1)
              : new Step.Turn(direction(), i, 1);
      String on = links.get(random.nextInt(links.size())).name();
      links.add(new Mechanism.Link(names.get(i), on, List.of(new Step.Shift(place(120)), move)));
    }
    List<Mechanism.Body> bodies = new ArrayList<>();
    for (int i = 0; i < solids; i++) {
      String link = links.get(i % links.size()).name();
      bodies.add(new Mechanism.Body(link, "solid " + i, solid()));
    }
    return new Mechanism(new Domain(names, low, high), links, bodies);
  }

  /** Returns a pair whose crank is turned by the travel of its slide. */
  Pair coupled(int axis) {
    Vector along = AXES.get(random.nextInt(3));
    Chain crank =
        new Chain(
            List.of(
                new Step.Slide(along, axis, 1),
                new Step.Shift(place(20)),
                new Step.Turn(direction(), axis, 0.05 + 0.3 * random.nextDouble())),
            solid());
    return new Pair(
        "crank", "stand", crank, new Chain(List.of(new Step.Shift(place(90))), solid()));
  }

  double[] position(Domain domain) {
    double[] at = new double[domain.size()];
    for (int i = 0; i < at.length; i++) {
      at[i] = domain.low()[i] + random.nextDouble() * (domain.high()[i] - domain.low()[i]);
    }
    return at;
  }

  private Convex solid() {
    double size = 4 + 12 * random.nextDouble();
    return switch (random.nextInt(3)) {
      case 0 -> {
        Vector c = place(15);
        Vector h = new Vector(size, 4 + 12 * random.nextDouble(), 4 + 12 * random.nextDouble());
        yield new Convex.Box(c.minus(h), c.plus(h));
      }
      case 1 -> new Convex.Cylinder(place(15), direction(), size, 4 + 14 * random.nextDouble());
      default -> Convex.capsule(place(20), place(20), size / 2);
    };
  }

  private Vector place(double reach) {
    return new Vector(
        reach * (2 * random.nextDouble() - 1),
        reach * (2 * random.nextDouble() - 1),
        reach * (2 * random.nextDouble() - 1));
  }

  private Vector direction() {
    return random.nextBoolean()
        ? AXES.get(random.nextInt(3))
        : new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
  }
}
