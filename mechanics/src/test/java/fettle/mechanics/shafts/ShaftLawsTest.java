package fettle.mechanics.shafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The beam elements against closed forms, and the laws every shaft obeys. */
class ShaftLawsTest {

  private static Spindle spindle(double span, double front, double rear) {
    return new Spindle(
        List.of(
            new Spindle.Step(35, 30, 20),
            new Spindle.Step(span, 38, 20),
            new Spindle.Step(50, 45, 20)),
        ShaftMaterial.STEEL,
        List.of(
            new Spindle.Support("front", 35 + span, front, 0),
            new Spindle.Support("rear", 35, rear, 0)),
        List.of());
  }

  @Test
  void elementsAndClosedFormGiveTheSameNose() {
    for (double span : new double[] {80, 120, 200, 300}) {
      Spindle s = spindle(span, 120e3, 60e3);
      SpindleModel.Deflected d = SpindleModel.under(s, s.length(), 100);
      NoseStiffness n =
          NoseStiffness.of(
              50,
              span,
              Section.round(45, 20, 0.3),
              Section.round(38, 20, 0.3),
              ShaftMaterial.STEEL,
              new NoseStiffness.Bearings(120e3, 60e3));
      assertThat(d.deflection() / 100).isCloseTo(n.give(), within(1e-9 * n.give()));
      assertThat(d.bearings().get(0)).isCloseTo(n.front() / n.give(), within(1e-9));
      assertThat(d.shear()).isCloseTo((n.noseShear() + n.spanShear()) / n.give(), within(1e-9));
      assertThat(d.bending() + d.shear() + d.bearings().get(0) + d.bearings().get(1))
          .isCloseTo(1, within(1e-12));
      assertThat(d.reactions().get(0) + d.reactions().get(1)).isCloseTo(-100, within(1e-7));
    }
  }

  @Test
  void workedSpansAreReproduced() {
    double[][] known = {
      {80, 29.0}, {100, 33.7}, {120, 36.9}, {160, 39.9}, {200, 40.4}, {300, 37.5}
    };
    for (double[] row : known) {
      Spindle s = spindle(row[0], 120e3, 60e3);
      assertThat(0.1 / SpindleModel.under(s, s.length(), 100).deflection())
          .isCloseTo(row[1], within(0.06));
    }
    Spindle s = spindle(120, 120e3, 60e3);
    List<Spindle.Step> longer =
        List.of(s.steps().get(0), s.steps().get(1), new Spindle.Step(130, 45, 20));
    Spindle extended = new Spindle(longer, s.material(), s.supports(), List.of());
    assertThat(0.1 / SpindleModel.under(extended, 285, 100).deflection())
        .isCloseTo(8.7, within(0.06));
    assertThat(SpindleModel.under(s, 285, 100).deflection())
        .isLessThan(SpindleModel.under(extended, 285, 100).deflection());
    assertThat(SpindleModel.frequencies(s)[0]).isCloseTo(1647, within(5.0));
  }

  @Test
  void deflectionHereByLoadThereIsDeflectionThereByLoadHere() {
    Spindle s = spindle(120, 120e3, 60e3);
    double there = at(SpindleModel.under(s, 205, 100), 155);
    double here = SpindleModel.under(s, 155, 100).line().size();
    assertThat(here).isPositive();
    SpindleModel.Deflected other = SpindleModel.under(s, 155, 100);
    assertThat(at(other, 205)).isCloseTo(there, within(1e-12));
  }

  private static double at(SpindleModel.Deflected d, double x) {
    for (int i = 0; i < d.line().size(); i += 2) {
      if (Math.abs(d.line().get(i) - x) < 1e-9) {
        return d.line().get(i + 1);
      }
    }
    throw new AssertionError("no node at " + x);
  }

  @Test
  void bestSpanIsTheLeastOfTheCurve() {
    double ei = HeldWork.bending(206_000, 38, 20);
    NoseStiffness.Bearings springs = new NoseStiffness.Bearings(120e3, 60e3);
    double best = NoseStiffness.bestSpan(50, ei, springs);
    double least = give(50, best, ei, springs);
    for (double f : new double[] {0.7, 0.9, 0.99, 1.01, 1.1, 1.3}) {
      assertThat(give(50, best * f, ei, springs)).isGreaterThan(least);
    }
    assertThat(give(50, best * 1.3, ei, springs) / least).isLessThan(1.05);
  }

  private static double give(double a, double l, double ei, NoseStiffness.Bearings k) {
    return a * a * (a + l) / (3 * ei)
        + (1 + a / l) * (1 + a / l) / k.front()
        + a * a / (l * l) / k.rear();
  }

  @Test
  void frequenciesAgreeWithTheExactShortBeam() {
    Section section = Section.rectangle(200, 100, 5.0 / 6);
    ShaftMaterial steel = new ShaftMaterial(200_000, 0.3, 7.8e-9);
    for (int mode = 1; mode <= 4; mode++) {
      double exact = PlainBeam.simpleExact(new BeamElement(1000, section, steel), mode);
      double coarse =
          PlainBeam.frequencies(cut(20, section, steel), PlainBeam.Ends.SIMPLE, 1)[mode - 1];
      double fine =
          PlainBeam.frequencies(cut(40, section, steel), PlainBeam.Ends.SIMPLE, 1)[mode - 1];
      assertThat(Math.abs(fine / exact - 1)).isLessThan(Math.abs(coarse / exact - 1) / 3);
      assertThat(fine / exact).isCloseTo(1, within(2e-4 * mode * mode));
    }
    double free = PlainBeam.frequencies(cut(20, section, steel), PlainBeam.Ends.FREE, 1)[0];
    assertThat(free).isGreaterThan(PlainBeam.simpleExact(new BeamElement(1000, section, steel), 1));
  }

  private static List<BeamElement> cut(int count, Section section, ShaftMaterial material) {
    List<BeamElement> list = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      list.add(new BeamElement(1000.0 / count, section, material));
    }
    return list;
  }

  @Test
  void massesOfTheElementAddUp() {
    BeamElement e = new BeamElement(40, Section.round(38, 20, 0.3), ShaftMaterial.STEEL);
    double[] m = e.mass();
    double[] r = e.rotary();
    double mass = 7.85e-9 * e.section().area() * 40;
    assertThat(m[0] + m[2] + m[8] + m[10]).isCloseTo(mass, within(1e-15));
    assertThat(r[0] + r[2] + r[8] + r[10]).isCloseTo(0, within(1e-18));
    double[] tilt = {-20, 1, 20, 1};
    double turning = 0;
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        turning += tilt[i] * r[4 * i + j] * tilt[j];
      }
    }
    assertThat(turning).isCloseTo(7.85e-9 * e.section().secondMoment() * 40, within(1e-12));
  }

  @Test
  void standingShaftWhirlsAsItVibrates() {
    Spindle s =
        new Spindle(
            spindle(120, 120e3, 60e3).steps(),
            ShaftMaterial.STEEL,
            spindle(120, 120e3, 60e3).supports(),
            List.of(new Spindle.RigidMass(205, 2.6e-3, 2.02562, 4, 25)));
    double still = SpindleModel.frequencies(s)[0];
    double[] rest = positive(SpindleModel.whirl(s, 0));
    assertThat(rest[0]).isCloseTo(still, within(1e-3 * still));
    double[] turning = SpindleModel.whirl(s, 300);
    assertThat(positive(turning)[0]).isGreaterThan(rest[0]);
    double backward = -java.util.Arrays.stream(turning).filter(v -> v < 0).max().orElseThrow();
    assertThat(backward).isLessThan(rest[0]);
  }

  private static double[] positive(double[] w) {
    return java.util.Arrays.stream(w).filter(v -> v > 0).sorted().toArray();
  }

  @Test
  void heldWorkMeetsItsLimits() {
    double ei = HeldWork.bending(206_000, 20, 0);
    double stiff = HeldWork.chuckAndTailstock(200, 300, 200, ei, Double.POSITIVE_INFINITY);
    double b = 100;
    assertThat(stiff)
        .isCloseTo(200 * 8e6 * b * b * (3 * 300 + b) / (12 * ei * 2.7e7), within(1e-12));
    assertThat(HeldWork.chuckAndTailstock(200, 300, 300, ei, 1e-9))
        .isCloseTo(HeldWork.chucked(200, 300, ei, Double.POSITIVE_INFINITY), within(1e-6));
    assertThat(HeldWork.betweenCentres(200, 300, 200, ei, 40e3, 20e3))
        .isCloseTo(0.0600, within(0.0003));
    double l = HeldWork.longestOverhang(200, ei, 0.0211);
    assertThat(HeldWork.chucked(200, l, ei, Double.POSITIVE_INFINITY))
        .isCloseTo(0.0211, within(1e-12));
  }

  @Test
  void shaftThatIsNotHeldIsRefused() {
    Spindle s =
        new Spindle(
            List.of(new Spindle.Step(100, 20, 0)), ShaftMaterial.STEEL, List.of(), List.of());
    assertThatThrownBy(() -> SpindleModel.under(s, 100, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not held");
    assertThatThrownBy(() -> new Spindle.Step(10, 20, 20))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void shearCoefficientOfSolidAndThinRound() {
    assertThat(Section.shearCoefficient(0, 0.3)).isCloseTo(0.886, within(0.0005));
    assertThat(Section.shearCoefficient(0.5, 0.3)).isCloseTo(0.620, within(0.08));
  }
}
