package fettle.planning.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Routes of turned parts, reckoned by hand. */
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
}
