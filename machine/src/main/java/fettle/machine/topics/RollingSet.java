package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.bearings.BallBearing;
import fettle.mechanics.bearings.BearingLoad;
import fettle.mechanics.bearings.BearingSet;
import fettle.mechanics.bearings.BearingState;
import fettle.mechanics.bearings.BearingType;
import fettle.mechanics.bearings.BoundaryDimensions;
import fettle.mechanics.bearings.Designation;
import fettle.mechanics.bearings.DynamicRating;
import fettle.mechanics.bearings.EquivalentLoad;
import fettle.mechanics.bearings.InternalGeometry;
import fettle.mechanics.bearings.PreloadedPair;
import fettle.mechanics.bearings.SpeedGuide;
import fettle.mechanics.bearings.StaticLoad;
import fettle.mechanics.bearings.StaticRating;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rolling bearing of the book, or equal ones side by side, with what its maker has not stated
 * filled in by the usual inside of such bearings.
 *
 * @param values what the book says of it
 * @param outside its outside sizes
 * @param bearing its inside
 * @param guesses what was taken because the book does not state it
 */
record RollingSet(
    Values values, BoundaryDimensions outside, BallBearing bearing, List<String> guesses) {

  static final Source MODEL =
      Source.memory(
          "Jones, A general theory for elastically constrained ball and roller bearings, 1960",
          "without inertia of the balls; inside of the bearings estimated");
  static final Source LIFE = Source.memory("ISO 281:2007", "clauses 5 to 9");
  static final Source STATIC = Source.memory("ISO 76:2006", "clauses 5 to 8, Tables 2 and 3");
  static final Source SPEED =
      Source.practice("grease speed guide n dm, three quarters with preload");

  private static final double STATED = 0.1;
  private static final double ESTIMATED = 0.25;
  private static final double RATING = 0.2;
  private static final double STEEL_TODAY = 1.3;

  RollingSet {
    guesses = List.copyOf(guesses);
  }

  /** Returns the bearing of a block; empty if it is none, or of a kind that is not reckoned. */
  static Optional<RollingSet> of(Values block) {
    if (!block.shape().equals("bearing/rolling")) {
      return Optional.empty();
    }
    Designation read = Designation.parse(block.needText("type"));
    BoundaryDimensions outside = read.boundary();
    boolean angular = read.type() == BearingType.ANGULAR_CONTACT;
    if (outside == null || !(angular || read.type() == BearingType.DEEP_GROOVE)) {
      return Optional.empty();
    }
    List<String> guesses = new ArrayList<>();
    Optional<Quantity> stated = block.quantity("contact angle");
    double angle = stated.map(Quantity::value).orElse(Math.toRadians(angular ? 30 : 12));
    if (stated.isEmpty()) {
      guesses.add("contact angle " + (angular ? "30" : "12") + " deg taken");
    }
    InternalGeometry usual =
        angular
            ? InternalGeometry.angularContact(outside.bore(), outside.outside())
            : InternalGeometry.deepGroove(outside.bore(), outside.outside());
    double ball = block.quantity("ball diameter").map(Quantity::value).orElse(usual.ball());
    int balls = block.count("balls").orElse(usual.balls());
    if (block.quantity("ball diameter").isEmpty() || block.count("balls").isEmpty()) {
      guesses.add(
          balls + " balls of " + fettle.mechanics.base.Numbers.significant(ball, 3) + " mm taken");
    }
    try {
      RollingSet set =
          new RollingSet(
              block, outside, BallBearing.steel(balls, ball, usual.pitch(), angle), guesses);
      boolean rated = set.rating().value() > 0 && set.staticRating().value() > 0;
      return rated ? Optional.of(set) : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  String words() {
    return guesses.isEmpty() ? "" : String.join(", ", guesses);
  }

  int count() {
    return values.needCount("count");
  }

  boolean isPair() {
    return count() > 1 && !arrangement().equals("single");
  }

  private String arrangement() {
    return values.needText("arrangement");
  }

  /**
   * Returns the pitch diameter.
   *
   * @return dm [mm]
   */
  double pitch() {
    return bearing.pitch();
  }

  /** Returns the preload F0; a light one of 0.01 C with half of it as doubt if none is stated. */
  Term preload() {
    double light = 0.01 * rating().value();
    return values
        .quantity("preload")
        .map(p -> p.term("F0"))
        .map(t -> t.doubt() > 0 ? t : new Term("F0", t.value(), t.unit(), 0.3 * t.value()))
        .orElse(new Term("F0", light, Unit.N, light / 2));
  }

  private double inside() {
    return values.count("balls").isPresent() && values.has("contact angle") ? STATED : ESTIMATED;
  }

  /** Returns the axial give of a pair about its preload. */
  Term axialGive() {
    double k = pair().stiffness();
    return new Term("g_b", 1 / k, Unit.NM_PER_N, inside() / k);
  }

  /** Returns two of these bearings set against each other. */
  PreloadedPair pair() {
    return PreloadedPair.of(bearing, preload().value());
  }

  /** Returns the bearings as they stand side by side. */
  BearingSet set() {
    double spacing = values.quantity("spacing").map(Quantity::value).orElse(outside.width());
    return isPair()
        ? BearingSet.pair(
            bearing,
            switch (arrangement()) {
              case "face-to-face" -> BearingSet.Arrangement.FACE_TO_FACE;
              case "tandem" -> BearingSet.Arrangement.TANDEM;
              default -> BearingSet.Arrangement.BACK_TO_BACK;
            },
            spacing,
            preload().value())
        : BearingSet.single(bearing);
  }

  /** Returns the springs across the axis and against tilting about its preload. */
  Springs springs() {
    double f0 = preload().value();
    BearingSet set = set();
    boolean balanced = isPair() && !arrangement().equals("tandem");
    BearingState state =
        set.underTiltHeld(BearingLoad.of(balanced ? 0 : f0 * Math.max(1, count()), f0 / 100));
    return new Springs(state.stiffness(1, 1), Math.max(0, state.stiffness(4, 4)), inside());
  }

  /**
   * Springs of a support.
   *
   * @param radial across the axis [N/mm]
   * @param tilt against tilting [N mm/rad]
   * @param doubt share of doubt [-]
   */
  record Springs(double radial, double tilt, double doubt) {}

  private DynamicRating.Inside insideForRating() {
    return new DynamicRating.Inside(
        1, bearing.balls(), bearing.ball(), 0, bearing.pitch(), bearing.angle(), STEEL_TODAY);
  }

  /** Returns the dynamic rating C of one bearing. */
  Term rating() {
    double c = DynamicRating.radialBall(insideForRating(), DynamicRating.Column.BALL_SINGLE);
    return values
        .quantity("dynamic rating")
        .map(q -> q.term("C"))
        .orElse(new Term("C", c, Unit.N, RATING * c));
  }

  /** Returns the static rating C0 of one bearing. */
  Term staticRating() {
    double c = StaticRating.radialBall(insideForRating());
    return values
        .quantity("static rating")
        .map(q -> q.term("C0"))
        .orElse(new Term("C0", c, Unit.N, RATING * c));
  }

  /** Returns the factors of the equivalent load; the same whatever the load above 18 degrees. */
  EquivalentLoad factors() {
    double angle = Math.max(bearing.angle(), Math.toRadians(isPair() ? 10 : 5));
    return isPair() ? EquivalentLoad.angularPair(angle, 0) : EquivalentLoad.angularSingle(angle, 0);
  }

  /** Returns the factors of the equivalent static load. */
  StaticLoad staticFactors() {
    double angle = Math.max(bearing.angle(), Math.toRadians(5));
    return isPair() ? StaticLoad.angularPair(angle) : StaticLoad.angularSingle(angle);
  }

  /** Returns the guide value of speed times pitch diameter. */
  SpeedGuide guide() {
    double degrees = Math.toDegrees(bearing.angle());
    if (outside.type() == BearingType.DEEP_GROOVE) {
      return SpeedGuide.DEEP_GROOVE;
    }
    return degrees <= 20
        ? SpeedGuide.ANGULAR_15
        : degrees <= 32 ? SpeedGuide.ANGULAR_25 : SpeedGuide.ANGULAR_40;
  }

  /**
   * Returns the factor by which the preload lowers the guide.
   *
   * @return factor [-]
   */
  double speedFactor() {
    return SpeedGuide.preloadFactor(isPair() || values.has("preload") ? "light" : "none");
  }
}
