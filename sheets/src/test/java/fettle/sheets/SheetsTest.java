package fettle.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.parts.recipe.Face;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Turned;
import fettle.sheets.judge.Judge;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import fettle.sheets.svg.SvgSheet;
import fettle.sheets.template.DialTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Sheets of the sample parts. */
class SheetsTest {

  private static final Heads HEADS = Heads.of("Hobby workshop", "2026-01-15");

  @TestFactory
  Stream<DynamicTest> sampleSheetsAreFlawlessAndUnchanged() {
    return SampleParts.all().entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(e)));
  }

  private static void check(Map.Entry<String, Recipe> part) {
    Sheets drawn = Sheets.of(part.getValue(), HEADS);
    assertThat(drawn.faults()).isEmpty();
    assertThat(drawn.svg()).isEqualTo(Sheets.of(part.getValue(), HEADS).svg());
    Golden.check(part.getKey() + ".svg", drawn.svg());
  }

  @Test
  void dialTemplateIsFlawlessAndUnchanged() {
    Turned dial = (Turned) SampleParts.dial();
    Turned.Graduations g = (Turned.Graduations) dial.operations().get(0);
    Sheet template = DialTemplate.of(dial.heading(), HEADS, g, 50, 0.1, fettle.sheets.template.DividingHead.USUAL);
    assertThat(Judge.faults(template)).isEmpty();
    Golden.check("dial-template.svg", SvgSheet.of(template));
  }

  @Test
  void judgeFindsWhatIsWrong() {
    Recipe part = SampleParts.all().values().iterator().next();
    Sheet sheet = Sheets.of(part, HEADS).sheet();
    Mark.Text first =
        sheet.marks().stream()
            .filter(m -> m instanceof Mark.Text && m.group().startsWith("main"))
            .map(m -> (Mark.Text) m)
            .findFirst()
            .orElseThrow();
    assertThat(faults(sheet, first.moved(0.5, 0.5))).anyMatch(f -> f.contains("lies over"));
    double y = first.box().y0() + 1;
    Mark stroke = Mark.Stroke.line("x", Pen.NARROW, first.x() - 5, y, first.x() + 5, y + 1);
    assertThat(faults(sheet, stroke)).anyMatch(f -> f.contains("is crossed by"));
    assertThat(faults(sheet, Mark.Stroke.line("x", Pen.NARROW, 5, 100, 50, 100)))
        .anyMatch(f -> f.contains("leaves the drawing space"));
    assertThat(faults(sheet, new Mark.Text("x", "a", 30, 250, 1.8, Mark.Reading.FROM_BELOW)))
        .anyMatch(f -> f.contains("mm high"));
  }

  @Test
  void judgeFindsALineThroughAToleranceFrame() {
    Sheet sheet =
        Sheets.of(SampleParts.all().getOrDefault("toleranced-journal", SampleParts.dial()), HEADS)
            .sheet();
    Mark.Stroke frame =
        sheet.marks().stream()
            .filter(m -> m instanceof Mark.Stroke && m.group().endsWith(":frame"))
            .map(m -> (Mark.Stroke) m)
            .findFirst()
            .orElseThrow();
    Point corner = frame.points().get(0);
    Mark line =
        Mark.Stroke.line(
            "x", Pen.NARROW, corner.x() - 2, corner.y() + 0.5, corner.x() + 9, corner.y() + 0.5);
    assertThat(faults(sheet, line)).anyMatch(f -> f.contains(":frame is crossed by x"));
  }

  private static Recipe plain(Prismatic.Operation... operations) {
    return Prismatic.block(Heading.of("block", "Block", "C45", 7.85e-9), 100, 60, 20, operations);
  }

  @Test
  void aBlockWithPatternAndBoreHasElevenDimensions() {
    Recipe block =
        plain(
            new Prismatic.Holes(
                "pattern",
                Face.TOP,
                HoleForm.through(Size.of(6)),
                new Pattern.Grid(10, 12, 2, 2, 55, 30)),
            new Prismatic.Holes(
                "bore", Face.TOP, HoleForm.through(Size.of(14)), new Pattern.At(82, 25)));
    long count =
        Sheets.of(block, HEADS).sheet().marks().stream()
            .map(Mark::group)
            .filter(g -> g.matches("\\w+:(below|left|right)\\d+:line|\\w+:note(left)?\\d+"))
            .distinct()
            .count();
    // DP-DG-05
    assertThat(count).isEqualTo(11);
  }

  private static List<String> faults(Sheet s, Mark more) {
    List<Mark> marks = new ArrayList<>(s.marks());
    marks.add(more);
    return Judge.faults(new Sheet(s.format(), s.number(), s.title(), s.scale(), marks));
  }
}
