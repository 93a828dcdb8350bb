package fettle.planning.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.ScrewThread;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Routes of turned, milled and bent parts, reckoned by hand. */
class RouteTest {

  private static final double RPM = Math.PI / 30;
  private static final List<Double> LADDER =
      Arrays.stream(new double[] {130, 210, 330, 500, 790, 1250, 2000})
          .mapToObj(n -> n * RPM)
          .toList();
  private static final Lathe LATHE =
      new Lathe(96, 420, 17, LADDER, List.of(), Lathe.Tailstock.THERE);

  private static Turned shaft(double diameter, double length) {
    return new Turned(
        Heading.of("shaft", "Shaft", "C45", 7.85e-9),
        List.of(
            Step.cylinder("left", diameter - 10, length / 3),
            Step.cylinder("middle", diameter, length / 3),
            Step.cylinder("right", diameter - 10, length / 3)),
        Bore.NONE,
        Bore.NONE,
        List.of());
  }

  @Test
  void theSpeedIsTheNextLowerOneAndTheTimeFollows() {
    Route route = TurnedRoute.of(shaft(30, 60), LATHE);
    Route.Line rough =
        route.lines().stream()
            .filter(l -> l.what().startsWith("rough middle"))
            .findFirst()
            .orElseThrow();
    // 25 m/min on 30 mm is 265 rpm; the lathe has 210. 22 mm of path at 0.15 mm a turn, one pass.
    assertThat(rough.speed() / RPM).isEqualTo(210, within(1e-9));
    assertThat(rough.passes()).isEqualTo(1);
    assertThat(rough.cutting()).isEqualTo(22 / (0.15 * 210) * 60, within(1e-6));
    assertThat(route.cut()).isEqualTo(60 + 2 + 3 + 48, within(1e-9));
    assertThat(route.lacks()).isEmpty();
    assertThat(route.shortest()).isLessThan(route.time());
    assertThat(route.longest()).isGreaterThan(route.time());
  }

  @Test
  void whatDoesNotSwingOrFitIsSaid() {
    assertThat(TurnedRoute.of(shaft(120, 30), LATHE).lacks()).anyMatch(l -> l.contains("swing"));
    assertThat(TurnedRoute.of(shaft(30, 600), LATHE).lacks()).anyMatch(l -> l.contains("longer"));
    Lathe bare = new Lathe(96, 420, 17, LADDER, List.of(), Lathe.Tailstock.STRIPPED);
    assertThat(TurnedRoute.of(shaft(20, 200), bare).lacks()).anyMatch(l -> l.contains("tailstock"));
  }

  @Test
  void everySettingIsInOrder() {
    List<Integer> settings =
        TurnedRoute.of(shaft(30, 60), LATHE).lines().stream().map(Route.Line::setUp).toList();
    assertThat(settings).isSorted().contains(1, 2, 3);
  }

  private static Heading heading() {
    return Heading.of("block", "Block", "C45", 7.85e-9);
  }

  private static Prismatic block(Prismatic.Operation... operations) {
    return Prismatic.block(heading(), 80, 40, 20, operations);
  }

  private static Workshop shop(double x, double y) {
    return new Workshop(LATHE, List.of(new Workshop.Mill(x, y)));
  }

  @Test
  void aBlockIsSquaredFromItsLargestFaceAndThenDrilled() {
    Route route =
        shop(220, 120)
            .route(
                block(
                    new Prismatic.Holes(
                        "screws",
                        Face.TOP,
                        HoleForm.tapped(
                            ScrewThread.parse("M5"), HoleForm.THROUGH, HoleForm.THROUGH),
                        new Pattern.Grid(10, 10, 2, 2, 60, 20))));
    List<String> what = route.lines().stream().map(Route.Line::what).toList();
    assertThat(what.get(1)).isEqualTo("mill the bottom face");
    assertThat(what.indexOf("tap M5, screws, 4 off"))
        .isEqualTo(what.indexOf("centre and drill 4.2 for screws, 4 off") + 1);
    Route.Line drill =
        route.lines().stream().filter(l -> l.what().startsWith("centre")).findFirst().orElseThrow();
    // 20 m/min on 4.2 mm is 1516 rpm; 20 mm deep four times at 0.1 mm a turn.
    assertThat(drill.speed() / RPM).isEqualTo(0.8 * 25000 / (Math.PI * 4.2), within(1e-6));
    assertThat(drill.cutting()).isEqualTo(4 * 20 / (0.1 * drill.speed() / RPM) * 60, within(1e-6));
    assertThat(route.lines().stream().map(Route.Line::setUp).toList()).isSorted();
    assertThat(route.cut()).isEqualTo(84, within(1e-9));
    assertThat(route.lacks()).isEmpty();
  }

  @Test
  void everyOperationOfABlockHasItsTool() {
    Size wide = Size.of(12);
    Route route =
        shop(220, 120)
            .route(
                block(
                    new Prismatic.Pocket("hollow", Face.TOP, 40, 20, Size.of(30), wide, 4, 8),
                    new Prismatic.Slot(
                        "slot",
                        Face.TOP,
                        new Pattern.At(10, 20),
                        new Pattern.At(20, 20),
                        Size.of(6),
                        HoleForm.THROUGH),
                    new Prismatic.Channel(
                        "groove", Face.BOTTOM, Prismatic.Along.U, 20, wide, Size.of(3)),
                    new Prismatic.TSlot(
                        "tee", Face.TOP, Prismatic.Along.V, 65, Size.of(8), 6, 14, 5),
                    new Prismatic.Dovetail(
                        "tail",
                        Face.BOTTOM,
                        Prismatic.Along.U,
                        20,
                        Size.of(24),
                        6,
                        Math.toRadians(60),
                        Prismatic.DovetailKind.SLOT),
                    new Prismatic.Holes(
                        "seat",
                        Face.FRONT,
                        HoleForm.through(Size.of(10, "H7")),
                        new Pattern.At(40, 10))));
    List<String> what = route.lines().stream().map(Route.Line::what).toList();
    assertThat(what)
        .contains("mill pocket hollow", "mill slot slot", "mill groove groove", "head of tee")
        .contains("flanks of tail, measured over rollers", "ream 10, seat");
    assertThat(route.lines())
        .allMatch(l -> l.preparing() >= 0 && Double.isFinite(l.cutting()) && l.cutting() >= 0);
  }

  @Test
  void whatNoMillTakesIsSaid() {
    assertThat(shop(60, 30).route(block()).lacks()).anyMatch(l -> l.contains("table travels"));
    assertThat(new Workshop(LATHE, List.of()).route(block()).lacks())
        .anyMatch(l -> l.contains("no milling machine"));
  }

  @Test
  void aSheetIsDrilledFlatAndBentFromTheOutsideIn() {
    double right = Math.PI / 2;
    Folded part =
        new Folded(
            heading(),
            2,
            2,
            0.4,
            Size.of(60),
            List.of(
                new Folded.Leg("one", Size.of(20), right, List.of()),
                new Folded.Leg(
                    "two",
                    Size.of(50),
                    right,
                    List.of(new Folded.LegHoles("hole", Size.of(5), new Pattern.At(25, 30)))),
                new Folded.Leg("three", Size.of(50), right, List.of()),
                new Folded.Leg("four", Size.of(20), 0, List.of())));
    List<String> what = shop(220, 120).route(part).lines().stream().map(Route.Line::what).toList();
    List<String> bends = what.stream().filter(w -> w.startsWith("bend")).toList();
    assertThat(bends).hasSize(3);
    assertThat(bends.get(0)).contains("one");
    assertThat(bends.get(1)).contains("three");
    assertThat(bends.get(2)).contains("two");
    int drilled = what.indexOf("drill or punch 5 for hole");
    assertThat(drilled).isPositive().isLessThan(what.indexOf(bends.get(0)));
    // 20 + 50 + 50 + 20 outside, less three bends: 2 x 4 mm set back, arc of 2 + 0.4 x 2 mm.
    double flat = 140 + 3 * (right * 2.8 - 8);
    assertThat(shop(220, 120).route(part).cut()).isEqualTo(flat + 2, within(1e-6));
  }
}
