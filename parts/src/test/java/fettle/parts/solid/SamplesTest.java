package fettle.parts.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.parts.Samples;
import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws that hold for the solids of all families. */
class SamplesTest {

  @Test
  void meshesAreClosedAndComeNearTheVolume() {
    Samples.all()
        .forEach(
            (name, recipe) -> {
              Brep solid = Brep.of(Bodies.of(recipe));
              Moments exact = Moments.of(solid);
              Mesh mesh = Mesh.of(solid, 0.2);
              assertThat(mesh.isClosed()).as(name).isTrue();
              assertThat(Math.abs(mesh.volume() - exact.volume()))
                  .as(name)
                  .isLessThan(0.2 * exact.area());
              assertThat(solid.shells()).as(name).isEqualTo(1);
            });
  }

  @Test
  void shaftOfThePublishedTable() {
    Brep shaft = Brep.of(Bodies.of(Samples.of("shaft")));
    Map<String, Integer> kinds = new TreeMap<>();
    shaft
        .faces()
        .forEach(f -> kinds.merge(f.surface().getClass().getSimpleName(), 1, Integer::sum));
    // DP-ST-06, DP-ST-07
    assertThat(kinds).isEqualTo(Map.of("Cone", 2, "Cylinder", 3, "Plane", 4, "Torus", 1));
    assertThat(Moments.of(shaft).volume()).isCloseTo(21511.0131, within(0.0001));
  }

  private static List<Integer> counts(Recipe recipe) {
    Brep b = Brep.of(Bodies.of(recipe));
    return List.of(b.vertices().size(), b.edges().size(), b.faces().size(), b.loops(), b.genus());
  }

  @Test
  void entitiesOfThePublishedSolids() {
    Heading heading = Heading.of("p", "Part", "C45", 7.85e-9);
    Turned shaft =
        new Turned(
            heading,
            List.of(
                Step.cylinder("a", 10, 20), Step.cylinder("b", 30, 20), Step.cylinder("c", 20, 20)),
            Bore.NONE,
            Bore.NONE,
            List.of());
    // DP-ST-01
    assertThat(counts(shaft)).containsExactly(6, 9, 7, 9, 0);
    Prismatic block =
        Prismatic.block(
            heading,
            100,
            60,
            20,
            new Prismatic.Holes(
                "holes",
                Face.TOP,
                HoleForm.through(Size.of(8)),
                new Pattern.Grid(10, 30, 5, 1, 20, 0)));
    // DP-ST-03
    assertThat(counts(block)).containsExactly(18, 27, 11, 21, 5);
  }

  /** A round keyway end touches its walls where the curve happens to be sampled at some sizes. */
  @ParameterizedTest
  @CsvSource({"30, 4, 12.5", "15, 2, 6", "22.5, 3, 10", "37.5, 5, 16", "30, 8, 11", "12, 4, 3.5"})
  void roundKeywaysCloseAtEverySize(double diameter, double width, double bottom) {
    Turned.Keyway key =
        new Turned.Keyway(
            "keyway",
            End.LEFT,
            4,
            Size.of(12),
            Size.of(width, "P9"),
            bottom,
            0,
            Turned.KeywayEnds.ROUND);
    Turned shaft =
        new Turned(
            Heading.of("shaft", "Shaft", "C45", 7.85e-9),
            List.of(Step.cylinder("body", diameter, 40)),
            Bore.NONE,
            Bore.NONE,
            List.of(key));
    double volume = Moments.of(Brep.of(Bodies.of(shaft))).volume();
    double r = diameter / 2;
    double cut = 0;
    int n = 4000;
    for (int i = 0; i < n; i++) {
      double y = width * ((i + 0.5) / n - 0.5);
      double along = 12 - width + 2 * Math.sqrt(width * width / 4 - y * y);
      cut += along * (Math.sqrt(r * r - y * y) - bottom) * width / n;
    }
    assertThat(volume).isCloseTo(Math.PI * r * r * 40 - cut, within(1e-3));
  }

  @Test
  void theEndFaceOfARoundedRimIsSeenFromTheSide() {
    Turned wheel =
        new Turned(
            Heading.of("wheel", "Wheel", "C45", 7.85e-9),
            List.of(Step.cylinder("rim", 80, 10).edges(Edge.round(2), Edge.round(2))),
            Bore.NONE,
            Bore.NONE,
            List.of());
    Body body = Bodies.of(wheel);
    View front = View.of(body, Brep.of(body), Looking.FRONT);
    assertThat(front.strokes())
        .anyMatch(
            s ->
                s.kind() == View.Kind.VISIBLE
                    && s.shape() instanceof View.Straight l
                    && Math.abs(l.x0()) < 1e-9
                    && Math.abs(l.x1()) < 1e-9
                    && Math.abs(Math.abs(l.y0() - l.y1()) - 76) < 1e-6);
  }

  @Test
  void momentsOfACylinderInClosedForm() {
    Body rod =
        new Body(List.of())
            .with(
                Body.Act.ADD,
                new Primitive.Turn(
                    Frame.along(new Vec(5, 7, 11), Vec.X), Profile.rectangle(0, 0, 40, 10, "rod")),
                "rod");
    Moments m = Moments.of(Brep.of(rod));
    double mass = Math.PI * 100 * 40;
    assertThat(m.volume()).isCloseTo(mass, within(1e-8));
    assertThat(m.area()).isCloseTo(2 * Math.PI * 100 + 2 * Math.PI * 10 * 40, within(1e-8));
    assertThat(m.centre().to(new Vec(25, 7, 11))).isLessThan(1e-9);
    assertThat(m.inertia(0, 1)).isCloseTo(mass * 100 / 2, within(1e-4));
    assertThat(m.inertia(1, 1)).isCloseTo(mass * (300 + 1600) / 12, within(1e-4));
  }

  @Test
  void viewsOfAShaftShowItsOutline() {
    Turned bush = (Turned) Samples.of("bush");
    Body body = Bodies.of(bush);
    View front = View.of(body, Brep.of(body), Looking.FRONT);
    double widest = 0;
    double longest = 0;
    for (View.Stroke s : front.strokes()) {
      if (s.shape() instanceof View.Straight l) {
        widest = Math.max(widest, Math.max(l.y0(), l.y1()));
        longest = Math.max(longest, Math.max(l.x0(), l.x1()));
      }
    }
    assertThat(widest).isCloseTo(20, within(1e-9));
    assertThat(longest).isCloseTo(30, within(1e-9));
    assertThat(front.strokes()).anyMatch(s -> s.kind() == View.Kind.HIDDEN);
    View section = View.section(body, Looking.FRONT, Vec.ZERO);
    // the wall below, and above it on either side of a bolt hole
    assertThat(section.cuts()).hasSize(3);
  }

  @Test
  void everySampleHasViewsFromAllSides() {
    Samples.all()
        .forEach(
            (name, recipe) -> {
              Body body = Bodies.of(recipe);
              Brep solid = Brep.of(body);
              for (Looking side : List.of(Looking.FRONT, Looking.TOP, Looking.RIGHT)) {
                assertThat(View.of(body, solid, side).strokes()).as(name + side).isNotEmpty();
              }
            });
  }

  @Test
  void everySampleCanBeCutThroughItsMiddle() {
    List<String> failed = new ArrayList<>();
    Samples.all()
        .forEach(
            (name, recipe) -> {
              Body body = Bodies.of(recipe);
              Bounds b = body.bounds();
              Vec middle = b.low().plus(b.high()).times(0.5);
              try {
                if (View.section(body, Looking.FRONT, middle).cuts().isEmpty()) {
                  failed.add(name + " is not cut");
                }
              } catch (SolidException e) {
                failed.add(name + ": " + e.getMessage());
              }
            });
    assertThat(failed).isEmpty();
  }

  @Test
  void flatLengthOfABentStrip() {
    Folded panel = (Folded) Samples.of("panel");
    FoldedBody.Flat flat = FoldedBody.flat(panel);
    double first = Math.PI / 2 * (2 + 0.42 * 1.5) - 2 * 3.5;
    double second = Math.PI / 3 * (2 + 0.42 * 1.5) - 2 * 3.5 * Math.tan(Math.PI / 6);
    assertThat(flat.length()).isCloseTo(40 + 60 + 25 + first + second, within(1e-9));
  }

  @Test
  void convexPiecesHoldTheWholeBody() {
    Samples.all()
        .forEach(
            (name, recipe) -> {
              Body body = Bodies.of(recipe);
              List<ConvexPiece> pieces = ConvexPiece.of(body);
              for (Vec v : Brep.of(body).vertices()) {
                for (Vec d : List.of(Vec.X, Vec.Y, Vec.Z, new Vec(1, 2, 3), new Vec(-2, 1, -1))) {
                  double most = Double.NEGATIVE_INFINITY;
                  for (ConvexPiece piece : pieces) {
                    for (Vec c : piece.corners()) {
                      most = Math.max(most, c.dot(d));
                    }
                  }
                  assertThat(v.dot(d)).as(name).isLessThanOrEqualTo(most + 1e-6);
                }
              }
            });
  }

  @Test
  void everySampleHasItsMarks() {
    Marks marks = Marks.of(Samples.of("bearing block"));
    assertThat(marks.axes()).hasSize(1 + 4 + 2);
    assertThat(marks.threads()).hasSize(4).allMatch(t -> t.inside() == Marks.Inside.INTERNAL);
    assertThat(Marks.of(Samples.of("screw")).threads()).hasSize(1);
  }
}
