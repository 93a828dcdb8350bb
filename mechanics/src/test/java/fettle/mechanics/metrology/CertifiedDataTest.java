package fettle.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Certified nonlinear fits of the NIST Statistical Reference Datasets (values from memory). */
class CertifiedDataTest {

  private static Offset<Double> digits(double certified) {
    return within(1e-7 * Math.abs(certified));
  }

  @Test
  void ensoWithFreePeriods() {
    DataSet enso = DataSet.of("enso.csv");
    double[] certified = {
      1.0510749193e+01,
      3.0762128085e+00,
      5.3280138227e-01,
      4.4311088700e+01,
      -1.6231428586e+00,
      5.2554493756e-01,
      2.6887614440e+01,
      2.1232288488e-01,
      1.4966870418e+00
    };
    NonlinearFit fit =
        NonlinearFit.fit(
            CertifiedDataTest::enso,
            enso.column("x"),
            enso.column("y"),
            new double[] {10, 3, 0.5, 44, -1.5, 0.5, 26, -0.1, 1.5});
    for (int i = 0; i < certified.length; i++) {
      assertThat(fit.parameters().getEntry(i)).isCloseTo(certified[i], digits(certified[i]));
    }
    double squares = fit.deviation() * fit.deviation() * (168 - 9);
    assertThat(squares).isCloseTo(788.53978668, digits(788.53978668));
    assertThat(fit.uncertainty(0)).isCloseTo(0.17488832467, digits(0.17488832467));
  }

  private static double enso(double x, double[] b) {
    return b[0]
        + b[1] * Math.cos(2 * Math.PI * x / 12)
        + b[2] * Math.sin(2 * Math.PI * x / 12)
        + b[4] * Math.cos(2 * Math.PI * x / b[3])
        + b[5] * Math.sin(2 * Math.PI * x / b[3])
        + b[7] * Math.cos(2 * Math.PI * x / b[6])
        + b[8] * Math.sin(2 * Math.PI * x / b[6]);
  }

  @Test
  void boxBodFromTheCertifiedStartAndFromNone() {
    DataSet box = DataSet.of("boxbod.csv");
    NonlinearFit started =
        NonlinearFit.fit(
            (x, b) -> b[0] * (1 - Math.exp(-b[1] * x)),
            box.column("x"),
            box.column("y"),
            new double[] {100, 0.75});
    NonlinearFit searched = WarmUp.of(box.column("x"), box.column("y")).fit();
    for (NonlinearFit fit : java.util.List.of(started, searched)) {
      assertThat(fit.parameters().getEntry(0)).isCloseTo(213.80940889, digits(213.80940889));
      assertThat(fit.parameters().getEntry(1)).isCloseTo(0.54723748542, digits(0.54723748542));
    }
  }

  @Test
  void readingsWithManyEqualLeadingDigitsKeepTheirScatter() {
    double[] y = DataSet.of("numacc1.csv").column("y");
    assertThat(Sample.of(y).mean()).isEqualTo(10_000_002);
    assertThat(Sample.of(y).standardDeviation()).isEqualTo(1);
  }

  @Test
  void drawnDistributionAgreesWithTheGuide() {
    MeasurementModel sum =
        MeasurementModel.of(
            "a+b+c+d", java.util.List.of("a", "b", "c", "d"), new double[] {0, 0, 0, 0});
    java.util.List<MonteCarlo.Input> rectangles =
        java.util.Collections.nCopies(
            4,
            new MonteCarlo.Input(
                0, Math.sqrt(3), Contribution.Shape.RECTANGULAR, Double.POSITIVE_INFINITY));
    MonteCarlo drawn = MonteCarlo.of(sum, rectangles, 200_000, 0.95, MonteCarlo.SEED);
    assertThat(drawn.standard()).isCloseTo(2.0, within(0.01));
    // JCGM 101:2008, 9.2.3 Table 3 prints ±3.88 for four rectangles (from memory)
    assertThat(drawn.interval().high()).isCloseTo(3.88, within(0.03));
    assertThat(drawn.interval().low()).isCloseTo(-3.88, within(0.03));
    MonteCarlo again = MonteCarlo.of(sum, rectangles, 200_000, 0.95, MonteCarlo.SEED);
    assertThat(again).isEqualTo(drawn);
  }
}
