package fettle.mechanics.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.base.Interval;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published values that need curved or inclined faces. */
class CurvedReferenceTest {

  private static Grid grid(Body body, double[] step, double[]... patches) {
    double[][] forced = new double[3][];
    for (int a = 0; a < 3; a++) {
      int axis = a;
      double[][] b = body.bounds();
      forced[a] =
          java.util.stream.DoubleStream.concat(
                  java.util.stream.DoubleStream.concat(
                      java.util.Arrays.stream(body.planes(a)),
                      java.util.stream.DoubleStream.of(b[0][a], b[1][a])),
                  java.util.Arrays.stream(patches)
                      .flatMapToDouble(
                          p -> java.util.stream.DoubleStream.of(p[2 * axis], p[2 * axis + 1])))
              .filter(v -> v >= b[0][axis] - 1e-9 && v <= b[1][axis] + 1e-9)
              .toArray();
    }
    return Grid.through(forced, step, 1);
  }

  /** ST043: Lamé, bore 16 in 30 mm, plane strain, 10 MPa: 2.91096 µm within 1 %. */
  @Test
  void thickCylinder() {
    Body ring =
        Body.of(
                Shape.Common.of(
                    new Shape.Cylinder(2, 0, 0, 30, 0, 2), new Shape.Box(0, 31, 0, 31, -1, 3)))
            .cut(new Shape.Cylinder(2, 0, 0, 16, -1, 3));
    ElasticModel m =
        ElasticModel.of(
            ring,
            new Elastic(110_000, 0.26),
            grid(ring, new double[] {1, 1, 2}),
            List.of(
                new Support.Greased(Patch.Rectangle.of(0, 0, 0, 30, 0, 2)),
                new Support.Greased(Patch.Rectangle.of(0, 30, 0, 0, 0, 2)),
                new Support.Greased(Patch.Rectangle.of(0, 30, 0, 30, 0, 0)),
                new Support.Greased(Patch.Rectangle.of(0, 30, 0, 30, 2, 2))));
    double[][] f =
        m.pressure(
            new Patch.Bore(2, 0, 0, 16, new Interval(0, 2), new Interval(0, Math.PI / 2)), 10);
    double u = m.work(f, m.displacement(f)) / (10 * Math.PI / 2 * 16 * 2);
    assertThat(u).isCloseTo(2.91096e-3, within(0.01 * 2.91096e-3));
  }

  /** ST008: MacNeal and Harder's curved cantilever, own geometry: 0.0885 within 1 %. */
  @Test
  void curvedCantilever() {
    Body arc =
        Body.of(
                Shape.Common.of(
                    new Shape.Cylinder(2, 0, 0, 4.32, 0, .1), new Shape.Box(0, 5, 0, 5, -1, 3)))
            .cut(new Shape.Cylinder(2, 0, 0, 4.12, -1, 3));
    double[] root = {4.12, 4.32, 0, 0, 0, .1};
    double[] tip = {0, 0, 4.12, 4.32, 0, .1};
    ElasticModel m =
        ElasticModel.of(
            arc,
            new Elastic(1e7, .25),
            grid(arc, new double[] {0.025, 0.025, 0.1}, root, tip),
            List.of(new Support.Fixed(Patch.Rectangle.of(root))));
    assertThat(m.compliance(Patch.Rectangle.of(tip), 0, 1, 0))
        .isCloseTo(0.0885, within(0.01 * 0.0885));
  }

  /** ST022: Cook's panel, thin: 23.96 within 1 %. */
  @Test
  void taperedPanel() {
    Body panel =
        Body.of(
            Shape.Common.of(
                new Shape.Box(0, 48, 0, 60, 0, 1),
                new Shape.HalfSpace(44, -48, 0, 0),
                new Shape.HalfSpace(-16, 48, 0, 48 * 44)));
    double[] root = {0, 0, 0, 44, 0, 1};
    double[] tip = {48, 48, 44, 60, 0, 1};
    Grid grid = grid(panel, new double[] {1, 1, 1}, root, tip);
    ElasticModel m =
        ElasticModel.of(
            panel,
            new Elastic(1, 1 / 3.0),
            grid,
            List.of(new Support.Fixed(Patch.Rectangle.of(root))));
    double[][] u = m.displacement(m.load(Patch.Rectangle.of(tip), 0, 1, 0));
    double v = m.at(u, grid.planeAt(0, 48), grid.planeAt(1, 52), 0)[1];
    assertThat(v).isCloseTo(23.96, within(0.01 * 23.96));
  }
}
