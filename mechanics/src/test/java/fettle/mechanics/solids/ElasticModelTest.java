package fettle.mechanics.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ElasticModelTest {

  private static final Elastic IRON = new Elastic(110_000, 0.26);
  private static final Body SLIDE =
      Body.of(new Shape.Box(0, 40, 0, 24, 0, 12)).cut(new Shape.Cylinder(2, 12, 12, 5, -1, 13));
  private static final Patch.Rectangle ROOT = Patch.Rectangle.of(0, 0, 0, 24, 0, 12);
  private static final Patch.Rectangle TIP = Patch.Rectangle.of(40, 40, 0, 24, 0, 12);

  private static Rigidity rigidity(Elastic material, double... force) {
    return new Rigidity(
        material,
        List.of(new Support.Fixed(ROOT)),
        List.of(new Rigidity.Load(TIP, java.util.Arrays.stream(force).boxed().toList())));
  }

  private static ElasticModel model(Body body, Elastic material, double step) {
    Grid grid = rigidity(material, 0, 0, 1).grid(List.of(body), step);
    return ElasticModel.of(body, material, grid, List.of(new Support.Fixed(ROOT)));
  }

  @Test
  void compliancesOfInterfacesAreSymmetricAndReachTheTolerance() {
    ElasticModel m = model(SLIDE, IRON, 2);
    double[][] c = m.compliances(List.of(TIP, Patch.Rectangle.of(20, 30, 4, 20, 12, 12)));
    for (int i = 0; i < 12; i++) {
      assertThat(c[i][i]).isPositive();
      for (int j = 0; j < 12; j++) {
        assertThat(c[i][j]).isCloseTo(c[j][i], within(1e-7 * Math.sqrt(c[i][i] * c[j][j])));
      }
    }
    assertThat(m.residual()).isLessThanOrEqualTo(ElasticModel.TOLERANCE);
  }

  @Test
  void aStifferMaterialAndALargerPartScaleAsTheyMust() {
    double one = model(SLIDE, IRON, 2).compliance(TIP, 0, 0, 1);
    double twice = model(SLIDE, new Elastic(220_000, 0.26), 2).compliance(TIP, 0, 0, 1);
    assertThat(twice).isCloseTo(one / 2, within(1e-6 * one));
    Body large =
        Body.of(new Shape.Box(0, 80, 0, 48, 0, 24)).cut(new Shape.Cylinder(2, 24, 24, 10, -1, 25));
    Patch.Rectangle root = Patch.Rectangle.of(0, 0, 0, 48, 0, 24);
    Patch.Rectangle tip = Patch.Rectangle.of(80, 80, 0, 48, 0, 24);
    Grid grid = Grid.through(new double[][] {{0, 80}, {0, 48}, {0, 24}}, new double[] {4, 4, 4}, 1);
    double bigger =
        ElasticModel.of(large, IRON, grid, List.of(new Support.Fixed(root)))
            .compliance(tip, 0, 0, 1);
    assertThat(bigger).isCloseTo(one / 2, within(1e-6 * one));
  }

  @Test
  void turningThePartTurnsTheAnswer() {
    Body turned =
        Body.of(new Shape.Box(0, 12, 0, 40, 0, 24)).cut(new Shape.Cylinder(0, 12, 12, 5, -1, 13));
    Grid grid = Grid.through(new double[][] {{0, 12}, {0, 40}, {0, 24}}, new double[] {2, 2, 2}, 1);
    double other =
        ElasticModel.of(
                turned,
                IRON,
                grid,
                List.of(new Support.Fixed(Patch.Rectangle.of(0, 12, 0, 0, 0, 24))))
            .compliance(Patch.Rectangle.of(0, 12, 40, 40, 0, 24), 1, 0, 0);
    double one = model(SLIDE, IRON, 2).compliance(TIP, 0, 0, 1);
    assertThat(other).isCloseTo(one, within(1e-6 * one));
  }

  @Test
  void takingMetalAwayNeverStiffens() {
    Random random = new Random(11);
    for (int i = 0; i < 4; i++) {
      double x = 2 + 2 * random.nextInt(16);
      double y = 2 * random.nextInt(8);
      Body cut = SLIDE.cut(new Shape.Box(x, x + 4, y, y + 6, 6, 12));
      Rigidity.Comparison c = rigidity(IRON, 0, 0, 1).compare(SLIDE, cut, 3);
      assertThat(c.kept().fine()).isLessThanOrEqualTo(1 + 1e-6).isPositive();
      assertThat(c.kept().coarse()).isLessThanOrEqualTo(1 + 1e-6);
    }
  }

  @Test
  void aWebOneCellThickBendsWithinOnePercent() {
    Body web = Body.of(new Shape.Box(0, 60, 0, 20, 0, 2));
    Patch.Rectangle root = Patch.Rectangle.of(0, 0, 0, 20, 0, 2);
    Patch.Rectangle tip = Patch.Rectangle.of(60, 60, 0, 20, 0, 2);
    Grid one = Grid.through(new double[][] {{0, 60}, {0, 20}, {0, 2}}, new double[] {4, 4, 2}, 1);
    Grid fine = Grid.through(new double[][] {{0, 60}, {0, 20}, {0, 2}}, new double[] {1, 1, .5}, 1);
    List<Support> held = List.of(new Support.Fixed(root));
    double coarse = ElasticModel.of(web, IRON, one, held).compliance(tip, 0, 0, 1);
    double exact = ElasticModel.of(web, IRON, fine, held).compliance(tip, 0, 0, 1);
    assertThat(coarse / exact).isCloseTo(1, within(0.01));
  }

  @Test
  void whatHangsInTheAirIsRefusedByItsPlace() {
    Body two = SLIDE.add(new Shape.Box(44, 50, 0, 6, 0, 6));
    assertThatThrownBy(() -> model(two, IRON, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("x 47.00, y 3.00, z 3.00");
    Body hinge = SLIDE.add(new Shape.Box(40, 44, 24, 30, 0, 12));
    assertThatThrownBy(() -> model(hinge, IRON, 2)).hasMessageContaining("joined");
  }

  @Test
  void aPartThatCanMoveIsRefused() {
    Grid grid = rigidity(IRON, 0, 0, 1).grid(List.of(SLIDE), 4);
    assertThatThrownBy(() -> ElasticModel.of(SLIDE, IRON, grid, List.of(new Support.Greased(ROOT))))
        .hasMessageContaining("not held against moving along y");
    assertThatThrownBy(
            () ->
                ElasticModel.of(
                    SLIDE,
                    IRON,
                    grid,
                    List.of(new Support.Fixed(Patch.Rectangle.of(99, 99, 0, 24, 0, 12)))))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void springsUnderARigidBlockAddUp() {
    Body block = Body.of(new Shape.Box(0, 20, 0, 20, 0, 20));
    Patch.Rectangle foot = Patch.Rectangle.of(0, 20, 0, 20, 0, 0);
    Grid grid = Grid.through(new double[][] {{0, 20}, {0, 20}, {0, 20}}, new double[] {5, 5, 5}, 1);
    ElasticModel m =
        ElasticModel.of(
            block, new Elastic(1e9, 0.3), grid, List.of(new Support.Springs(foot, 10, 4)));
    double c = m.compliance(Patch.Rectangle.of(0, 20, 0, 20, 20, 20), 0, 0, 1);
    assertThat(c).isCloseTo(1 / (10 * 400.0), within(1e-3 / 4000));
  }

  @Test
  void randomPartsAreSolved() {
    solveRandom(3, 77);
  }

  @Test
  @Tag("slow")
  void twoThousandRandomPartsAreSolved() {
    solveRandom(2000, 78);
  }

  private static void solveRandom(int count, long seed) {
    Random random = new Random(seed);
    int solved = 0;
    for (int i = 0; i < count; i++) {
      Body body = Body.of(new Shape.Box(0, 40, 0, 24, 0, 12));
      for (int cut = random.nextInt(5); cut >= 0; cut--) {
        double x = 4 + 34 * random.nextDouble();
        double y = 26 * random.nextDouble() - 2;
        double z = 14 * random.nextDouble() - 2;
        if (random.nextBoolean()) {
          body =
              body.cut(
                  new Shape.Box(
                      x, x + 0.3 + 8 * random.nextDouble(),
                      y, y + 0.3 + 14 * random.nextDouble(),
                      z, z + 0.3 + 8 * random.nextDouble()));
        } else if (random.nextBoolean()) {
          body = body.cut(new Shape.Cylinder(2, x, y, 0.5 + 5 * random.nextDouble(), -1, 13));
        } else {
          double a = random.nextDouble() - 0.5;
          double b = random.nextDouble() - 0.5;
          body =
              body.cut(
                  Shape.Common.of(
                      new Shape.HalfSpace(a, b, 1, a * x + b * y + 3 * random.nextDouble()),
                      new Shape.Box(x, 41, -1, 25, -1, 13)));
        }
      }
      try {
        ElasticModel m = model(body, IRON, 1.5 + 2 * random.nextDouble());
        double c = m.compliance(TIP, 0, 0, 1);
        assertThat(c).isPositive();
        assertThat(m.residual()).isLessThanOrEqualTo(ElasticModel.TOLERANCE);
        solved++;
      } catch (IllegalArgumentException refused) {
        assertThat(refused.getMessage()).containsAnyOf("joined", "no solid", "not held");
      }
    }
    assertThat(solved).isGreaterThan(count / 2);
  }
}
