package fettle.mechanics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The farthest point of a cylinder, also where the direction hardly leaves its axis. */
class SupportTest {

  @Test
  void farthestPointLiesOnTheCylinderAndIsFarthest() {
    Random random = new Random(4);
    for (int i = 0; i < 100_000; i++) {
      Vector axis = gaussian(random).unit();
      Convex.Cylinder cylinder = new Convex.Cylinder(gaussian(random).times(10), axis, 12, 9);
      Vector n = axis.plus(Math.pow(10, 2 - 18 * random.nextDouble()), gaussian(random)).unit();
      Vector p = cylinder.support(n);
      Vector from = p.minus(cylinder.centre());
      double reach = 9 * Math.abs(n.dot(axis)) + 12 * axis.cross(n).norm();
      assertThat(Math.abs(from.dot(axis))).isCloseTo(9, within(1e-12));
      assertThat(from.cross(axis).norm()).isLessThanOrEqualTo(12 + 1e-12);
      assertThat(from.dot(n)).isCloseTo(reach, within(1e-12));
    }
  }

  private static Vector gaussian(Random random) {
    return new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }
}
