package fettle.mechanics.clamps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ClampsLawsTest {

  private static double rad(double degrees) {
    return Math.toRadians(degrees);
  }

  /** Without friction the work of the hand is the work on the face: N dh = M dpsi. */
  @Property(tries = 200)
  void frictionlessCamConservesWork(@ForAll @DoubleRange(min = 0, max = 89) double degrees) {
    CamLever cam = new CamLever(15, 2, 6, 0, 0);
    double psi = rad(degrees);
    double step = 1e-6;
    double slope = (cam.lift(psi + step) - cam.lift(psi - step)) / (2 * step);
    assertThat(cam.force(1000, psi) * slope).isCloseTo(1000, within(0.01));
  }

  /** Sibling: the same balance with force vectors at the point of contact. */
  @Property(tries = 200)
  void momentsBalanceAsVectors(
      @ForAll @DoubleRange(min = -60, max = 120) double degrees,
      @ForAll @DoubleRange(min = 0.02, max = 0.4) double mu) {
    CamLever cam = new CamLever(15, 2, 6, mu, 0.1);
    double psi = rad(degrees);
    double x = 2 * Math.cos(psi);
    double y = -(15 + 2 * Math.sin(psi));
    double pin = 0.1 * 6 * Math.hypot(1, mu);
    double closing = x - y * mu + pin;
    double opening = -(x + y * mu) + pin;
    assertThat(cam.closingMoment(1, psi)).isCloseTo(closing, within(1e-12));
    assertThat(cam.openingMoment(1, psi)).isCloseTo(opening, within(1e-12));
  }

  @Property(tries = 200)
  void greatestEccentricityIsTheBorderOfSelfLocking(
      @ForAll @DoubleRange(min = 0.05, max = 0.3) double mu,
      @ForAll @DoubleRange(min = 0, max = 90) double degrees) {
    double greatest = CamLever.greatestEccentricity(20, 6, mu, mu);
    assertThat(new CamLever(20, 0.999 * greatest, 6, mu, mu).staysShut(rad(degrees))).isTrue();
    assertThat(new CamLever(20, 1.001 * greatest, 6, mu, mu).staysShut(0)).isFalse();
  }

  @Property(tries = 200)
  void leastShutAngleIsTheBorder(@ForAll @DoubleRange(min = 2.6, max = 8) double e) {
    CamLever cam = new CamLever(15, e, 6, 0.12, 0.12);
    double border = cam.leastShutAngle();
    assertThat(cam.staysShut(border + 1e-6)).isTrue();
    assertThat(cam.staysShut(border - 1e-6)).isFalse();
    DrawEccentric shaft = new DrawEccentric(e, 9, 8, 0.12);
    assertThat(shaft.staysShut(shaft.leastShutAngle() + 1e-6)).isTrue();
    assertThat(shaft.staysShut(shaft.leastShutAngle() - 1e-6)).isFalse();
  }

  @Test
  void pastDeadCentreTheForceTurnsTheCamOn() {
    CamLever cam = new CamLever(15, 2, 6, 0.12, 0.12);
    assertThat(cam.backArm(rad(91))).isNegative();
    assertThat(cam.lift(rad(100))).isLessThan(cam.lift(rad(90)));
    CamLever slick = new CamLever(15, 5, 6, 0.02, 0.02);
    assertThatThrownBy(() -> slick.force(1000, rad(150)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("dead centre");
  }

  @Property(tries = 200)
  void coneSticksExactlyWhenItMustBePulled(
      @ForAll @DoubleRange(min = 1, max = 45) double degrees,
      @ForAll @DoubleRange(min = 0.02, max = 0.6) double mu) {
    Cone cone = new Cone(rad(degrees), mu);
    assertThat(cone.pullOff(100) > 0).isEqualTo(cone.sticks());
    assertThat(cone.settledNormal(100)).isGreaterThan(cone.closingNormal(100));
  }

  @Property(tries = 200)
  void holdingIsTheInverseOfClamping(
      @ForAll @DoubleRange(min = 1, max = 10000) double load,
      @ForAll @DoubleRange(min = 0.05, max = 0.4) double mu) {
    for (Guide guide : Guide.values()) {
      double clamp = guide.clampForce(load, 1.5, mu, rad(90), 200);
      assertThat(guide.held(clamp, 1.5, mu, rad(90), 200)).isCloseTo(load, within(1e-6));
    }
    assertThat(Guide.FLAT.clampForce(load, 1.5, mu, rad(90), 0))
        .isGreaterThan(Guide.VEE_AND_FLAT.clampForce(load, 1.5, mu, rad(90), 0))
        .isGreaterThan(Guide.VEE.clampForce(load, 1.5, mu, rad(90), 0));
  }

  /** Sibling: drag from the normals on each face, the base pressed by both flanks. */
  @Property(tries = 100)
  void dovetailDragIsTheSumOverItsFaces(@ForAll @DoubleRange(min = 40, max = 80) double degrees) {
    double flank = 100 / Math.sin(rad(degrees));
    double base = 2 * flank * Math.cos(rad(degrees));
    Dovetail dovetail = new Dovetail(rad(degrees));
    assertThat(dovetail.drag(100, 0.15)).isCloseTo(0.15 * (2 * flank + base), within(1e-9));
    assertThat(dovetail.seating(100)).isCloseTo(base, within(1e-9));
    assertThat(dovetail.gibForce(dovetail.drag(100, 0.15), 0.15)).isCloseTo(100, within(1e-9));
  }

  @Test
  void lineContactCarriesItsForce() {
    double modulus = LineContact.commonModulus(210000, 0.3, 110000, 0.26);
    LineContact line = new LineContact(3000, 15, 12, modulus);
    double carried = Math.PI / 2 * line.greatestPressure() * line.halfWidth() * 12;
    assertThat(carried).isCloseTo(3000, within(1e-6));
    assertThat(line.greatestPressure()).isCloseTo(644, within(10.0));
  }

  @Test
  void sideClampSeatsOnlyAboveTheFrictionAngle() {
    SideClamp clamp = new SideClamp(rad(10), 0.15);
    double limit = Math.atan(0.15);
    assertThat(clamp.seating(1000, limit + 0.01)).isPositive();
    assertThat(clamp.seating(1000, limit - 0.01)).isNegative();
    assertThat(clamp.sideForce(1000)).isLessThan(new SideClamp(rad(10), 0).sideForce(1000));
  }
}
