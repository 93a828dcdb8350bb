package fettle.mechanics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No proven bound lies above a distance that was met at some position. */
class RandomMachinesTest {

  /** A distance is iterated from one start; two starts agree to a fiftieth of what is asked. */
  private static final double WITNESS = 0.001;

  @Test
  void boundsOfSomeMachinesHold() {
    for (int seed = 0; seed < 40; seed++) {
      machine(seed, 60);
      coupled(seed, 100);
    }
  }

  @Test
  @Tag("slow")
  void boundsOfAThousandMachinesHold() {
    for (int seed = 100; seed < 1100; seed++) {
      machine(seed, 2000);
      coupled(seed, 2000);
    }
  }

  private static void machine(int seed, int samples) {
    RandomMachine random = new RandomMachine(seed);
    Mechanism machine = random.of(1 + seed % 3, 1 + seed % 2, 5);
    for (Pair pair : machine.pairs().searched()) {
      holds(pair, machine.domain(), random, samples);
    }
  }

  private static void coupled(int seed, int samples) {
    RandomMachine random = new RandomMachine(seed);
    Domain domain = new Domain(List.of("q"), new double[] {-40}, new double[] {60});
    holds(random.coupled(0), domain, random, samples);
  }

  private static void holds(Pair pair, Domain domain, RandomMachine random, int samples) {
    Gap gap = Clearance.of(pair, domain, 0.05, 5000);
    assertThat(gap.lower()).isBetween(0.0, gap.upper() + 1e-6);
    Poses there = new Poses(pair, domain, new int[0]);
    there.solve(gap.position(), new Vector(0, 1, 0));
    assertThat(there.lower()).as("proven at the witness").isLessThanOrEqualTo(gap.upper() + 1e-9);
    assertThat(there.upper())
        .as("distance at the witness position of " + pair.name())
        .isCloseTo(gap.upper(), within(WITNESS));
    assertThat(gap.onFirst().minus(gap.onSecond()).norm()).isCloseTo(gap.upper(), within(1e-5));
    for (int i = 0; i < samples; i++) {
      double[] at = random.position(domain);
      assertThat(gap.lower())
          .as(pair.name())
          .isLessThanOrEqualTo(distance(pair, domain, at) + 1e-9);
      nearer(at, gap.position(), Math.pow(0.5, 1 + i % 20));
      assertThat(gap.lower())
          .as(pair.name() + " beside the witness")
          .isLessThanOrEqualTo(distance(pair, domain, at) + 1e-9);
    }
  }

  /** Draws a position towards the witness, where a false bound would show first. */
  private static void nearer(double[] at, double[] witness, double share) {
    for (int i = 0; i < at.length; i++) {
      at[i] = witness[i] + share * (at[i] - witness[i]);
    }
  }

  /** The distance at one position, every axis held. */
  static double distance(Pair pair, Domain domain, double[] at) {
    Poses poses = new Poses(pair, domain, new int[0]);
    poses.solve(at, new Vector(0, 1, 0));
    return poses.upper();
  }
}
