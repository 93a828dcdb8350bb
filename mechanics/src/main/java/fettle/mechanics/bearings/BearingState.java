package fettle.mechanics.bearings;

import java.util.Arrays;

/** The balls of a bearing or set at one displacement. */
public final class BearingState {

  private final double[] displacement;
  private final double[] force;
  private final double[][] stiffness;
  private final double[] ballLoads;
  private final double[] angles;
  private final double energy;
  private final int steps;

  private BearingState(double[] displacement, BallContacts.State state, int steps) {
    this.displacement = displacement.clone();
    this.force = state.force.clone();
    this.stiffness = Arrays.stream(state.tangent).map(double[]::clone).toArray(double[][]::new);
    this.ballLoads = state.load.clone();
    this.angles = state.angle.clone();
    this.energy = state.energy;
    this.steps = steps;
  }

  static BearingState of(double[] displacement, BallContacts.State state, int steps) {
    return new BearingState(displacement, state, steps);
  }

  /**
   * Returns one of the five displacements: X, Y, Z, tilt about y, tilt about z.
   *
   * @param way 0 to 4
   * @return displacement [mm, rad]
   */
  public double displacement(int way) {
    return displacement[way];
  }

  /**
   * Returns one component of what the balls carry: Fx, Fy, Fz, My, Mz.
   *
   * @param way 0 to 4
   * @return force or moment [N, N mm]
   */
  public double force(int way) {
    return force[way];
  }

  /**
   * Returns an entry of the tangent stiffness matrix, which is symmetric.
   *
   * @param row 0 to 4
   * @param column 0 to 4
   * @return stiffness [N/mm, N/rad, N mm/rad]
   */
  public double stiffness(int row, int column) {
    return stiffness[row][column];
  }

  /**
   * Returns the ball loads, bearing by bearing.
   *
   * @return Q of each ball [N]
   */
  public double[] ballLoads() {
    return ballLoads.clone();
  }

  /**
   * Returns the working contact angles, bearing by bearing.
   *
   * @return angle of each ball [rad]
   */
  public double[] angles() {
    return angles.clone();
  }

  /**
   * Returns the greatest ball load.
   *
   * @return Qmax [N]
   */
  public double greatestLoad() {
    return Arrays.stream(ballLoads).max().orElse(0);
  }

  /** Returns how many balls carry load. */
  public int loadedBalls() {
    return (int) Arrays.stream(ballLoads).filter(q -> q > 0).count();
  }

  /**
   * Returns the strain energy of all contacts.
   *
   * @return energy [N mm]
   */
  public double energy() {
    return energy;
  }

  /** Returns how many steps the solution took. */
  public int steps() {
    return steps;
  }

  /**
   * Tells whether every loaded ball runs on the shoulder its contact angle leans to. If not, an
   * angular contact bearing has been pushed off its shoulder and comes apart.
   */
  public boolean seated() {
    for (int i = 0; i < angles.length; i++) {
      if (ballLoads[i] > 0 && (angles[i] < -1e-9 || angles[i] > Math.PI / 2 + 1e-6)) {
        return false;
      }
    }
    return true;
  }
}
