package fettle.parts.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.parts.solid.Bodies;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Moments;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Trees of keys become recipes; what is wrong is said at its place. */
class RecipeReaderTest {

  private static RecipeTree.Group group(Object... pairs) {
    Map<String, RecipeTree> entries = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      entries.put((String) pairs[i], tree(pairs[i + 1]));
    }
    return new RecipeTree.Group(entries);
  }

  private static RecipeTree tree(Object value) {
    if (value instanceof RecipeTree t) {
      return t;
    } else if (value instanceof java.lang.Number n) {
      return new RecipeTree.Figure(n.doubleValue());
    } else if (value instanceof Size s) {
      return new RecipeTree.Sized(s);
    }
    return new RecipeTree.Text((String) value);
  }

  private static RecipeTree.Items items(RecipeTree... all) {
    return new RecipeTree.Items(Arrays.asList(all));
  }

  private static RecipeTree.Group part(Object... more) {
    RecipeTree.Group head = group("name", "p", "title", "Part", "material", "C45");
    Map<String, RecipeTree> entries = new LinkedHashMap<>(head.entries());
    entries.putAll(group(more).entries());
    return new RecipeTree.Group(entries);
  }

  @Test
  void aTurnedPart() {
    RecipeTree.Group flange =
        group("name", "flange", "diameter", 40, "length", 6, "start-chamfer", 1);
    RecipeTree.Group body =
        group("name", "body", "diameter", Size.of(28, "k6"), "length", 24, "Ra", 0.0008);
    RecipeTree.Group bore =
        group("name", "bore", "diameter", Size.of(20, "H7"), "length", 30, "Ra", 0.0016);
    RecipeTree.Group bolts = group("name", "bolts", "circle", 34, "count", 3, "diameter", 3.4);
    RecipeReader.Reading reading =
        RecipeReader.read(
            part(
                "turned",
                group(
                    "outside",
                    items(group("cylinder", flange), group("cylinder", body)),
                    "bore-left",
                    items(group("cylinder", bore)),
                    "operations",
                    items(group("axial-holes", bolts)))));
    assertThat(reading.problems()).isEmpty();
    Turned turned = (Turned) Objects.requireNonNull(reading.recipe());
    assertThat(turned.length()).isEqualTo(30);
    assertThat(turned.outside().get(1).diameter().tolerance().zone()).isEqualTo("k6");
    assertThat(turned.outside().get(0).start()).isEqualTo(Edge.chamfer(1));
    assertThat(turned.operations()).hasSize(1);
  }

  @Test
  void aBlockAndItsVolume() {
    RecipeTree.Group holes =
        group(
            "name",
            "h",
            "diameter",
            6,
            "u",
            10,
            "v",
            10,
            "columns",
            2,
            "rows",
            2,
            "step-u",
            40,
            "step-v",
            20);
    RecipeReader.Reading reading =
        RecipeReader.read(
            part(
                "block",
                group(
                    "length",
                    60,
                    "width",
                    40,
                    "height",
                    20,
                    "operations",
                    items(group("holes", holes)))));
    assertThat(reading.problems()).isEmpty();
    Recipe recipe = Objects.requireNonNull(reading.recipe());
    assertThat(Moments.of(Brep.of(Bodies.of(recipe))).volume())
        .isCloseTo(48_000 - 4 * Math.PI * 9 * 20, within(1e-6));
  }

  @Test
  void everyProblemIsSaidAtItsPlaceInOnePass() {
    RecipeReader.Reading reading =
        RecipeReader.read(
            part(
                "colour",
                "red",
                "turned",
                group(
                    "outside",
                    items(
                        group("cylinder", group("name", "a", "length", 6)),
                        group("cone", group("name", "b")),
                        group(
                            "cylinder",
                            group("name", "c", "diameter", 8, "length", 9, "thread", "M99"))))));
    assertThat(reading.recipe()).isNull();
    assertThat(reading.problems().stream().map(RecipeProblem::path))
        .containsExactlyInAnyOrder(
            "colour",
            "turned/outside/0/cylinder/diameter",
            "turned/outside/1",
            "turned/outside/2/cylinder/thread");
  }

  @Test
  void partsByTheirData() {
    for (RecipeTree.Group tree :
        List.of(
            part("gear", group("z", 40, "m", 1, "width", 10, "bore", Size.of(12, "H7"))),
            part(
                "screw",
                group("thread", "Tr 14x3 LH", "length", 120, "left", 10, "left-length", 20)),
            part("nut", group("thread", "Tr 14x3 LH", "diameter", 24, "length", 28)),
            part(
                "handwheel",
                group("diameter", 110, "rim", 14, "hub", 30, "length", 26, "bore", 12)),
            part(
                "dial",
                group("diameter", 80, "width", 16, "bore", 30, "divisions", 120, "division", 0.05)),
            part("plate", group("thickness", 12, "lever", 80, "first", 18, "second", 9)),
            part(
                "sheet",
                group(
                    "thickness",
                    1.5,
                    "radius",
                    2,
                    "width",
                    80,
                    "legs",
                    items(
                        group("name", "a", "outside", 40, "bend", Math.PI / 2),
                        group("name", "b", "outside", 60)))))) {
      RecipeReader.Reading reading = RecipeReader.read(tree);
      assertThat(reading.problems()).isEmpty();
      Recipe recipe = Objects.requireNonNull(reading.recipe());
      assertThat(Moments.of(Brep.of(Bodies.of(recipe))).volume()).isPositive();
    }
  }

  @Test
  void everyKeyIsDescribedAndListedOnce() {
    assertThat(RecipeKeys.all())
        .allMatch(k -> !k.meaning().isBlank())
        .allMatch(k -> k.kind() != RecipeKeys.Kind.WORD || !k.choices().isEmpty());
    assertThat(RecipeKeys.all().stream().map(k -> k.operation() + "/" + k.key()))
        .doesNotHaveDuplicates();
    for (RecipeKeys.Key k : RecipeKeys.all()) {
      if (k.kind() == RecipeKeys.Kind.GROUP || k.kind() == RecipeKeys.Kind.GROUPS) {
        assertThat(k.choices()).allMatch(c -> !RecipeKeys.of(c).isEmpty());
      }
    }
  }

  @Test
  void datumsAndGeometricalTolerances() {
    RecipeTree.Group seat = group("name", "seat", "diameter", 20, "length", 30);
    RecipeTree.Group datum = group("letter", "A", "on", "seat");
    RecipeTree.Group runOut = group("what", "run-out", "on", "left end", "value", 0.01, "to", "A");
    RecipeTree.Group place = group("what", "position", "on", "pin", "value", 0.2, "to", "A-B C");
    RecipeReader.Reading reading =
        RecipeReader.read(
            part(
                "turned",
                group("outside", items(group("cylinder", seat))),
                "geometry",
                items(
                    group("datum", datum), group("tolerance", runOut), group("tolerance", place))));
    assertThat(reading.problems()).isEmpty();
    Geometry geometry = Objects.requireNonNull(reading.recipe()).geometry();
    assertThat(geometry.letterOf("seat")).isEqualTo("A");
    assertThat(geometry.tolerances().get(0).shape()).isEqualTo(Geometry.Shape.BETWEEN);
    assertThat(geometry.tolerances().get(1).shape()).isEqualTo(Geometry.Shape.ROUND);
    assertThat(geometry.tolerances().get(1).letters()).containsExactly("A", "B", "C");
  }

  @Test
  void whatIsWrongWithATolerance() {
    RecipeTree.Group letter = group("letter", "aa", "on", "seat");
    RecipeTree.Group wide = group("what", "flatness", "on", "seat", "value", 0, "to", "");
    RecipeTree.Group to = group("what", "run-out", "on", "seat", "value", 0.1, "to", "A+B");
    RecipeReader.Reading reading =
        RecipeReader.read(
            part(
                "block",
                group("length", 10, "width", 10, "height", 10),
                "geometry",
                items(group("datum", letter), group("tolerance", wide), group("tolerance", to))));
    assertThat(reading.problems())
        .extracting(RecipeProblem::path)
        .containsExactly("geometry/0/datum", "geometry/1/tolerance", "geometry/2/tolerance");
  }
}
