package fettle.parts.check;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.parts.Samples;
import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Finish;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Knurl;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.ScrewThread;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each impossible or doubtful recipe is found, and named by its feature. */
class RecipeCheckTest {

  private static List<String> found(Recipe recipe) {
    return RecipeCheck.of(recipe, Limits.usual()).stream()
        .map(d -> d.rank() + " " + d.feature())
        .toList();
  }

  private static Turned bar(Step... steps) {
    return new Turned(Samples.heading(), List.of(steps), Bore.NONE, Bore.NONE, List.of());
  }

  private static Prismatic block(Prismatic.Operation... operations) {
    return Prismatic.block(Samples.heading(), 60, 40, 20, operations);
  }

  @Test
  void soundSamplesHaveNoStops() {
    Samples.all()
        .forEach(
            (name, recipe) ->
                assertThat(found(recipe)).as(name).noneMatch(d -> d.startsWith("STOP")));
  }

  @Test
  void aHoleOutsideTheStock() {
    assertThat(
            found(
                block(
                    new Prismatic.Holes(
                        "h", Face.TOP, HoleForm.through(Size.of(8)), new Pattern.At(58, 20)))))
        .contains("STOP h");
  }

  @Test
  void aTapDeeperThanItsDrillOrWithoutRoom() {
    ScrewThread m6 = ScrewThread.parse("M6");
    Pattern at = new Pattern.At(20, 20);
    assertThat(found(block(new Prismatic.Holes("t", Face.TOP, HoleForm.tapped(m6, 14, 12), at))))
        .contains("STOP t");
    assertThat(found(block(new Prismatic.Holes("t", Face.TOP, HoleForm.tapped(m6, 10, 12), at))))
        .contains("CAUTION t");
    assertThat(found(block(new Prismatic.Holes("t", Face.TOP, HoleForm.tapped(m6, 10, 13), at))))
        .isEmpty();
  }

  @Test
  void aFitOnAnUnfinishedSurface() {
    Step rough = Step.cylinder("seat", Size.of(20, "k6"), Size.of(30)).finish(Finish.STOCK);
    assertThat(found(bar(rough))).contains("CAUTION seat");
    assertThat(found(bar(rough.finish(Finish.cut(0.0008))))).isEmpty();
  }

  @Test
  void aThreadLongerThanItsSeatAndCornersThatDoNotFit() {
    Step seat = Step.cylinder("seat", 10, 15).thread(ScrewThread.parse("M10"), 20, End.LEFT);
    assertThat(found(bar(seat))).contains("STOP seat");
    Step corners = Step.cylinder("c", 20, 3).edges(Edge.chamfer(2), Edge.chamfer(2));
    assertThat(found(bar(corners))).contains("STOP c");
  }

  @Test
  void thinWallsAndBoresThatBreakThrough() {
    Turned thin =
        new Turned(
            Samples.heading(),
            List.of(Step.cylinder("o", 20, 30)),
            Bore.of(Step.cylinder("b", 18, 30)),
            Bore.NONE,
            List.of());
    assertThat(found(thin)).contains("CAUTION b");
    Turned through =
        new Turned(
            Samples.heading(),
            List.of(Step.cylinder("o", 20, 30), Step.cylinder("n", 12, 30)),
            Bore.of(Step.cylinder("b", 14, 60)),
            Bore.NONE,
            List.of());
    assertThat(found(through)).contains("STOP b");
  }

  @Test
  void aKnurlNamesItsBlank() {
    List<Doubt> doubts =
        RecipeCheck.of(
            bar(Step.cylinder("k", 40, 10).knurl(new Knurl(Knurl.Form.RGE, 0.8))), Limits.usual());
    assertThat(doubts).hasSize(1);
    assertThat(doubts.get(0).what()).contains("39.98").contains("157");
  }

  @Test
  void twoFeaturesOfOneName() {
    assertThat(found(bar(Step.cylinder("a", 20, 10), Step.cylinder("a", 12, 10))))
        .contains("STOP a");
  }
}
