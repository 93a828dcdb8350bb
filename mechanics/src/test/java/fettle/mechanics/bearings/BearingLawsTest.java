package fettle.mechanics.bearings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.bearings.DynamicRating.Column;
import fettle.mechanics.bearings.DynamicRating.Inside;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tables agree with the expressions behind them; limits and monotony hold. */
class BearingLawsTest {

  @Test
  void dynamicFactorsFollowTheirExpression() {
    for (Column c : Column.values()) {
      double end = c == Column.ROLLER ? 0.30 : c == Column.THRUST_BALL_90 ? 0.34 : 0.40;
      for (double g :
          new double[] {.01, .02, .03, .05, .08, .10, .14, .18, .22, .28, .30, .34, .40}) {
        if (g <= end) {
          double table = DynamicRating.factor(c, g);
          assertThat(DynamicRating.factorExpression(c, g) / table).isBetween(0.9975, 1.0025);
        }
      }
    }
  }

  @Test
  void staticFactorIsTheLoadThatPressesTheRaceTo4200() {
    for (double g : new double[] {.02, .05, .08, .12, .2, .3, .4}) {
      double pitch = 50;
      double ball = g * pitch;
      BallBearing b = new BallBearing(3, ball, pitch, 0, 0.52, 0.53, 207_000, 0.3);
      double low = 0;
      double high = 1e7;
      for (int i = 0; i < 100; i++) {
        double q = 0.5 * (low + high);
        if (b.pressure(q) < 4200) {
          low = q;
        } else {
          high = q;
        }
      }
      double factor = low / 5 / (ball * ball);
      assertThat(factor / StaticRating.radialFactor(g)).isBetween(0.99, 1.01);
    }
  }

  @Test
  void equivalentLoadIsContinuousAtItsLimit() {
    for (double x = 0.2; x < 5; x += 0.3) {
      EquivalentLoad f = EquivalentLoad.deepGroove(x);
      assertThat(f.aboveX() + f.limit() * f.aboveY()).isCloseTo(1, within(0.02));
      for (double deg : new double[] {15, 20, 25, 30, 35, 40, 45}) {
        EquivalentLoad pair = EquivalentLoad.angularPair(Math.toRadians(deg), x);
        double below = 1 + pair.belowY() * pair.limit();
        assertThat((pair.aboveX() + pair.aboveY() * pair.limit()) / below)
            .isCloseTo(1, within(0.02));
      }
    }
  }

  @Test
  void angleBetweenColumnsLiesBetweenThem() {
    double p20 = EquivalentLoad.angularSingle(Math.toRadians(20), 1).load(100, 500);
    double p23 = EquivalentLoad.angularSingle(Math.toRadians(23), 1).load(100, 500);
    double p25 = EquivalentLoad.angularSingle(Math.toRadians(25), 1).load(100, 500);
    assertThat(p23).isBetween(p25, p20);
  }

  @Test
  void lifeFallsWithTheExponentOfLoad() {
    assertThat(RatingLife.basic(1000, 100, 3) / RatingLife.basic(1000, 200, 3))
        .isCloseTo(8, within(1e-12));
    assertThat(
            RatingLife.basic(1000, 100, RatingLife.ROLLER)
                / RatingLife.basic(1000, 200, RatingLife.ROLLER))
        .isCloseTo(10.0794, within(1e-4));
  }

  @Test
  void modificationFactorDoesNotJumpBetweenItsRanges() {
    for (RatingLife.Kind kind : RatingLife.Kind.values()) {
      for (double k : new double[] {0.4, 1}) {
        double below = RatingLife.modification(kind, k - 1e-9, 0.1);
        double above = RatingLife.modification(kind, k + 1e-9, 0.1);
        assertThat(above / below).isCloseTo(1, within(0.002));
      }
      assertThat(RatingLife.modification(kind, 4, 100)).isEqualTo(50);
      assertThat(RatingLife.modification(kind, 40, 0.3))
          .isEqualTo(RatingLife.modification(kind, 4, 0.3));
    }
    assertThatThrownBy(() -> RatingLife.modification(RatingLife.Kind.RADIAL_BALL, 0.05, 0.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("kappa");
  }

  @Test
  void sphereOnSphereIsTheKnownFormula() {
    HertzContact h = HertzContact.ofRadii(10, 10, 0, 0, 0);
    double c = HertzContact.give(207_000, 0.3, 207_000, 0.3);
    double equivalent = 1 / c;
    double p = Math.cbrt(6 * 100 * equivalent * equivalent / (Math.pow(Math.PI, 3) * 100));
    assertThat(h.pressure(100, c)).isCloseTo(p, within(1e-9 * p));
    assertThat(h.ratio()).isEqualTo(1);
    assertThat(h.approach(100, c))
        .isCloseTo(Math.pow(100 / h.stiffness(c), 2.0 / 3), within(1e-12));
  }

  @Test
  void simplifiedEllipseAgreesWithinThreePercent() {
    BallBearing b = new BallBearing(9, 12.7, 65, 0, 0.52, 0.52, 207_000, 0.3);
    assertThat(b.innerContact().ratio()).isCloseTo(9.28, within(0.02));
    assertThat(b.innerContact().stiffness(b.give())).isCloseTo(1.019e6, within(3e3));
    assertThat(b.outerContact().stiffness(b.give())).isCloseTo(1.077e6, within(3e3));
    assertThat(b.contactStiffness()).isCloseTo(3.704e5, within(1e3));
    double rx = 1 / (2 / 12.7 * (1 + b.gamma() / (1 - b.gamma())));
    double ry = 1 / (2 / 12.7 - 1 / (0.52 * 12.7));
    assertThat(1.0339 * Math.pow(ry / rx, 0.636) / b.innerContact().ratio()).isBetween(0.97, 1.03);
  }

  @Test
  void landmarksOfTheLoadZone() {
    assertThat(1 / RadialLoadZone.integral(0.5, 1.5)).isCloseTo(4.37, within(0.01));
    assertThat(1 / RadialLoadZone.integral(0.5, 10.0 / 9)).isCloseTo(4.08, within(0.01));
    RadialLoadZone zone = new RadialLoadZone(9, 3.7e5, 1.5, 0.015);
    double shift = zone.shift(1000);
    assertThat(zone.load(shift)).isCloseTo(1000, within(1e-3));
    assertThat(zone.greatest(shift)).isBetween(4.37 * 1000 / 9, 6.0 * 1000 / 9);
  }

  @Test
  void guessedGeometryFindsKnownBallCounts() {
    assertThat(InternalGeometry.filled(7.94, 39.04)).isEqualTo(9);
    assertThat(InternalGeometry.filled(6.746, 28.5)).isEqualTo(8);
    assertThat(InternalGeometry.filled(7.92, 34.55)).isEqualTo(8);
    assertThat(InternalGeometry.filled(3.5, 25.6)).isEqualTo(13);
    Inside in = new Inside(1, 9, 7.94, 0, 39.04, 0, 1.3);
    InternalGeometry back =
        InternalGeometry.ofRatings(
            DynamicRating.radialBall(in, Column.BALL_SINGLE),
            StaticRating.radialBall(in),
            39.04,
            0);
    assertThat(back.balls()).isEqualTo(9);
    assertThat(back.ball()).isCloseTo(7.94, within(1e-6));
  }

  @Test
  void numbersOnBearingsAreRead() {
    assertThat(Designation.parse("608-2RS").bore()).isEqualTo(8);
    assertThat(Designation.parse("62/22").bore()).isEqualTo(22);
    assertThat(Designation.parse("7204 B").type()).isEqualTo(BearingType.ANGULAR_CONTACT);
    assertThat(Designation.parse("7204B").suffixes()).singleElement().asString().contains("ask");
    assertThat(Designation.parse("3200-2RS").type()).isEqualTo(BearingType.ANGULAR_CONTACT_DOUBLE);
    assertThat(Designation.parse("3204").bore()).isEqualTo(20);
    assertThat(Designation.parse("30205").boundary()).isNotNull();
    assertThat(Designation.parse("32005X").bore()).isEqualTo(25);
    assertThat(Designation.parse("51104").type()).isEqualTo(BearingType.THRUST_BALL);
    assertThat(Designation.parse("6808").boundary())
        .isEqualTo(BoundaryDimensions.of("618", 40).orElseThrow());
    assertThat(Designation.parse("NU204").bore()).isEqualTo(20);
    assertThat(Designation.parse("HK1212").bore()).isEqualTo(12);
    for (String wrong :
        List.of("", "bearing", "9999999", "6a", "62/", "99999", "6204".repeat(20))) {
      assertThatThrownBy(() -> Designation.parse(wrong))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("6204");
    }
  }

  @Test
  void fitMeetsItsLimits() {
    assertThat(RingFit.innerGrowth(0.008, 25, 25.000001, 0)).isCloseTo(0.008, within(1e-9));
    assertThat(RingFit.innerGrowth(0.008, 25, 31, 20))
        .isLessThan(RingFit.innerGrowth(0.008, 25, 31, 0));
    assertThat(RingFit.outerShrinkage(0.008, 52, 47, Double.POSITIVE_INFINITY))
        .isCloseTo(0.008 * 47 / 52, within(1e-12));
  }

  @Test
  void filmCarriesMoreTheCloserTheShaftLies() {
    PlainBush bush = new PlainBush(34, 30, 0.04);
    double e = bush.eccentricity(300, 40e-9, 100);
    assertThat(bush.filmLoad(40e-9, 100, e)).isCloseTo(300, within(1e-6));
    assertThat(bush.eccentricity(600, 40e-9, 100)).isGreaterThan(e);
  }

  @Test
  void thrustSharesAddUp() {
    InducedThrust t = InducedThrust.of(100, 300, 50);
    assertThat(t.second() - t.first()).isEqualTo(50);
    assertThat(t.second()).isEqualTo(300);
  }

  @Test
  void impossibleBearingsAreRefused() {
    assertThatThrownBy(() -> BallBearing.steel(30, 8, 33, 0.4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fill");
    assertThatThrownBy(() -> new BallBearing(8, 8, 33, 0.4, 0.5, 0.52, 207_000, 0.3))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> BallBearing.steel(8, Double.NaN, 33, 0.4))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void outsideSizesRiseWithTheBoreAndFromSeriesToSeries() {
    for (String code : BoundaryDimensions.seriesCodes()) {
      List<BoundaryDimensions> rows = BoundaryDimensions.series(code);
      for (int i = 1; i < rows.size(); i++) {
        assertThat(rows.get(i).bore()).as(code).isGreaterThan(rows.get(i - 1).bore());
        assertThat(rows.get(i).outside()).as(code).isGreaterThan(rows.get(i - 1).outside());
        assertThat(rows.get(i).width()).as(code).isGreaterThanOrEqualTo(rows.get(i - 1).width());
      }
    }
    List<String> rising = List.of("618", "619", "60", "62", "63");
    for (int i = 1; i < rising.size(); i++) {
      String heavy = rising.get(i);
      for (BoundaryDimensions light : BoundaryDimensions.series(rising.get(i - 1))) {
        BoundaryDimensions.of(heavy, light.bore())
            .ifPresent(
                b -> {
                  assertThat(b.outside()).as(b.text()).isGreaterThan(light.outside());
                  assertThat(b.width()).as(b.text()).isGreaterThanOrEqualTo(light.width());
                });
      }
    }
  }

  @Test
  void bearingsOfOneDiameterSeriesShareTheirOutsideDiameter() {
    assertThat(BoundaryDimensions.of("62", 55).orElseThrow().text()).isEqualTo("62 55 x 100 x 21");
    assertThat(BoundaryDimensions.of("72", 45).orElseThrow().text()).isEqualTo("72 45 x 85 x 19");
    assertThat(BoundaryDimensions.of("320", 60).orElseThrow().outside())
        .isEqualTo(BoundaryDimensions.of("60", 60).orElseThrow().outside());
    for (BoundaryDimensions tapered : BoundaryDimensions.series("302")) {
      assertThat(BoundaryDimensions.of("62", tapered.bore()).orElseThrow().outside())
          .isEqualTo(tapered.outside());
    }
    for (BoundaryDimensions tapered : BoundaryDimensions.series("303")) {
      assertThat(BoundaryDimensions.of("63", tapered.bore()).orElseThrow().outside())
          .isEqualTo(tapered.outside());
    }
  }
}
