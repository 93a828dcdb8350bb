package fettle.mechanics.bearings;

import java.util.ArrayList;
import java.util.List;

/**
 * Ball bearings standing side by side on one rigid shaft in one rigid housing: a single bearing, a
 * preloaded pair, two against one. The shaft axis is x; y and z are radial. The origin is where the
 * place of a seat is 0; loads and displacements are taken there.
 *
 * @param seats the bearings
 * @see Sources#MODEL
 */
public record BearingSet(List<Seat> seats) {

  /**
   * One bearing of the set.
   *
   * @param bearing its inside
   * @param place x of its ring centre [mm]
   * @param direction +1 if pushing the inner ring towards +x loads it, -1 if towards -x [-]
   * @param approach axial approach of its rings by preload, before any load [mm]
   * @param squeeze radial squeeze of its diameters by fit, before any load [mm]
   * @param firstBall angle of the first ball from y [rad]
   */
  public record Seat(
      BallBearing bearing,
      double place,
      int direction,
      double approach,
      double squeeze,
      double firstBall) {

    /** Refuses a direction that is neither +1 nor -1. */
    public Seat {
      if (direction != 1 && direction != -1) {
        throw new IllegalArgumentException("direction: found " + direction + ", expected +1 or -1");
      }
      if (!Double.isFinite(place + approach + squeeze + firstBall)) {
        throw new IllegalArgumentException("a seat needs finite place, approach and squeeze");
      }
    }
  }

  /** How two equal bearings face each other. */
  public enum Arrangement {
    /** Load lines spread towards the axis: wide, stiff against tilt. */
    BACK_TO_BACK,
    /** Load lines meet towards the axis: lets the shaft tilt. */
    FACE_TO_FACE,
    /** Both carry thrust one way. */
    TANDEM
  }

  /** Refuses an empty set and keeps its own copy. */
  public BearingSet {
    seats = List.copyOf(seats);
    if (seats.isEmpty() || seats.size() > 8) {
      throw new IllegalArgumentException(
          "found " + seats.size() + " bearings in the set, expected 1 to 8");
    }
  }

  /**
   * Returns one bearing alone, first ball in the direction of y.
   *
   * @param bearing its inside
   */
  public static BearingSet single(BallBearing bearing) {
    return new BearingSet(List.of(new Seat(bearing, 0, 1, 0, 0, 0)));
  }

  /**
   * Returns two equal bearings about their middle.
   *
   * @param bearing inside of both
   * @param arrangement how they face each other
   * @param spacing distance of the ring centres [mm]
   * @param preload axial force between them with no load outside; each bearing of a tandem carries
   *     it [N]
   */
  public static BearingSet pair(
      BallBearing bearing, Arrangement arrangement, double spacing, double preload) {
    Need.notNegative("spacing", spacing);
    double approach = AxialCurve.of(bearing).approach(preload);
    int left = arrangement == Arrangement.FACE_TO_FACE ? -1 : 1;
    int right = arrangement == Arrangement.BACK_TO_BACK ? -1 : 1;
    List<Seat> seats = new ArrayList<>();
    seats.add(new Seat(bearing, -spacing / 2, left, approach, 0, 0));
    seats.add(new Seat(bearing, spacing / 2, right, approach, 0, 0));
    return new BearingSet(seats);
  }

  /**
   * Finds the displacement at which the balls carry a load, all five ways free.
   *
   * @param load force and moment on the shaft
   */
  public BearingState under(BearingLoad load) {
    return under(load, false);
  }

  /**
   * Finds the displacement at which the balls carry a load while the shaft is kept from tilting.
   *
   * @param load force on the shaft; its moments are ignored
   */
  public BearingState underTiltHeld(BearingLoad load) {
    return under(load, true);
  }

  private BearingState under(BearingLoad load, boolean held) {
    BallContacts contacts = new BallContacts(seats);
    double[] force = {
      load.axial(),
      load.radialY(),
      load.radialZ(),
      held ? 0 : load.momentY(),
      held ? 0 : load.momentZ()
    };
    boolean[] free = {true, true, true, !held, !held};
    BallContacts.Found found = contacts.balance(force, free);
    double[] u = found.displacement().stream().mapToDouble(Double::doubleValue).toArray();
    return BearingState.of(u, contacts.state(u), found.steps());
  }

  /**
   * Returns the balls at a given displacement.
   *
   * @param displacement X, Y, Z, tilt about y, tilt about z [mm, rad]
   */
  public BearingState at(double... displacement) {
    if (displacement.length != BallContacts.FREEDOMS) {
      throw new IllegalArgumentException("a displacement needs five numbers");
    }
    return BearingState.of(displacement, new BallContacts(seats).state(displacement), 0);
  }
}
