package fettle.mechanics.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.joints.ClampedStack.Layer;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BoltedJointTest {

  private static final Layer STEEL = new Layer(12, 206000);
  private static final Layer IRON = new Layer(20, 100000);

  @Test
  void stackIsTheSameFromBothEnds() {
    double down = new ClampedStack(List.of(STEEL, IRON)).stiffness(10, 15);
    double up = new ClampedStack(List.of(IRON, STEEL)).stiffness(10, 15);
    assertThat(down).isCloseTo(up, within(1e-9 * up));
  }

  @Test
  void cuttingALayerInTwoChangesNothing() {
    Layer half = new Layer(6, 206000);
    assertThat(new ClampedStack(List.of(half, half, IRON)).stiffness(10, 15))
        .isCloseTo(new ClampedStack(List.of(STEEL, IRON)).stiffness(10, 15), within(1e-3));
  }

  /** Sibling: closed formula for equal halves and D = 1.5 d. */
  @Property(tries = 100)
  void likeLayersFollowTheClosedFormula(@ForAll @DoubleRange(min = 5, max = 100) double grip) {
    double t = 1 / Math.sqrt(3);
    double closed =
        Math.PI * t * 206000 * 10 / (2 * Math.log(5 * (t * grip + 5) / (t * grip + 25)));
    assertThat(new ClampedStack(List.of(new Layer(grip, 206000))).stiffness(10, 15))
        .isCloseTo(closed, within(1e-6 * closed));
  }

  /**
   * Sibling: a fit to finite elements, k = E d 0.787 exp(0.629 d/l), agrees within a few percent.
   */
  @Test
  void conesAgreeWithTheExponentialFit() {
    for (double grip : new double[] {10, 20, 40}) {
      double fit = 206000 * 10 * 0.78715 * Math.exp(0.62873 * 10 / grip);
      double cones = new ClampedStack(List.of(new Layer(grip, 206000))).stiffness(10, 15);
      assertThat(cones / fit).isBetween(0.85, 1.15);
    }
  }

  @Property(tries = 200)
  void loadIsSharedUntilThePartsSeparate(
      @ForAll @DoubleRange(min = 1e4, max = 1e7) double bolt,
      @ForAll @DoubleRange(min = 1e4, max = 1e7) double parts,
      @ForAll @DoubleRange(min = 0, max = 0.99) double share) {
    BoltedJoint joint = new BoltedJoint(bolt, parts, 20000);
    double load = share * joint.separatingLoad();
    assertThat(joint.boltTension(load) - joint.clampLeft(load))
        .isCloseTo(load, within(1e-6 * 20000));
    assertThat(joint.clampLeft(joint.separatingLoad())).isCloseTo(0, within(1e-6));
    assertThat(joint.boltTension(2 * joint.separatingLoad())).isEqualTo(2 * joint.separatingLoad());
  }

  @Property(tries = 200)
  void preloadIsTheInverseOfTorque(
      @ForAll @DoubleRange(min = 100, max = 1e5) double force,
      @ForAll @DoubleRange(min = 0.05, max = 0.3) double mu) {
    BoltThread thread = new BoltThread(10, 1.5);
    double torque = thread.tighteningTorque(force, mu, mu, 14.63, 11);
    assertThat(thread.preload(torque, mu, mu, 14.63, 11)).isCloseTo(force, within(1e-6));
  }

  @Test
  void profileFollowsItsStandard() {
    BoltThread thread = new BoltThread(8, 1.25);
    assertThat(thread.stressArea()).isCloseTo(36.61, within(0.02));
    assertThat(thread.rootDiameter()).isCloseTo(8 - 1.226869 * 1.25, within(1e-5));
    assertThat(thread.pitchDiameter()).isCloseTo(8 - 0.649519 * 1.25, within(1e-5));
  }

  @Test
  void frictionlessThreadStillTwistsTheBolt() {
    BoltThread thread = new BoltThread(10, 1.5);
    double pure = thread.stressArea() * 0.9 * 640;
    assertThat(thread.assemblyPreload(640, 0.9, 0)).isLessThan(pure);
    assertThat(thread.assemblyPreload(640, 0.9, 0.2))
        .isLessThan(thread.assemblyPreload(640, 0.9, 0.1));
  }

  @Test
  void keysStepAtTheirBorders() {
    assertThat(ParallelKey.of(12).width()).isEqualTo(4);
    assertThat(ParallelKey.of(12.01).width()).isEqualTo(5);
    for (double d = 6.5; d < 110; d += 0.5) {
      ParallelKey key = ParallelKey.of(d);
      assertThat(key.shaftDepth() + key.hubDepth()).isGreaterThanOrEqualTo(key.height());
    }
    assertThatThrownBy(() -> ParallelKey.of(6)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BoltThread(6, 4)).isInstanceOf(IllegalArgumentException.class);
  }
}
