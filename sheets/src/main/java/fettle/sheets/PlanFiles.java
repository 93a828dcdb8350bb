package fettle.sheets;

import fettle.parts.exchange.StepFile;
import fettle.parts.exchange.ThreeMfFile;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.Recipe;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Mesh;
import fettle.sheets.judge.Judge;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import fettle.sheets.pdf.PdfSheets;
import fettle.sheets.svg.SvgSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The files that publish one part.
 *
 * @param sheet its sheet
 * @param bytes bytes of each file by its ending
 * @param faults what is wrong with the sheet, in words; empty if nothing is
 */
public record PlanFiles(Sheet sheet, Map<String, byte[]> bytes, List<String> faults) {

  /** Endings of the files of a part. */
  public static final List<String> ENDINGS = List.of("svg", "pdf", "step", "3mf");

  /** Endings of the files of a sheet that shows no single part. */
  public static final List<String> ON_PAPER = List.of("svg", "pdf");

  private static final double DEVIATION = 0.01;

  /** Keeps its own copies. */
  public PlanFiles {
    bytes = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(bytes));
    faults = List.copyOf(faults);
  }

  /**
   * Writes a sheet that shows no single part.
   *
   * @param sheet the sheet
   * @param faults what is wrong besides what its looks tell
   */
  static PlanFiles of(Sheet sheet, List<String> faults) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("svg", SvgSheet.of(sheet).getBytes(StandardCharsets.UTF_8));
    files.put("pdf", PdfSheets.of(List.of(sheet)));
    List<String> all = new ArrayList<>(Judge.faults(sheet));
    all.addAll(faults);
    return new PlanFiles(sheet, files, all);
  }

  /**
   * Draws a part and writes its solid in the exchange formats.
   *
   * @throws IllegalArgumentException if it finds no room, or a text is too long for its field
   */
  public static PlanFiles of(Recipe recipe, Heads heads) {
    Sheets drawn = Sheets.of(recipe, heads);
    Heading h = recipe.heading();
    Brep solid = Brep.of(Bodies.of(recipe));
    StepFile.Label label =
        new StepFile.Label(h.number(), h.title(), heads.revision(), heads.date() + "T00:00:00");
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("svg", drawn.svg().getBytes(StandardCharsets.UTF_8));
    files.put("pdf", drawn.pdf());
    files.put(
        "step",
        StepFile.of(solid, label, StepFile.Protocol.AP242).getBytes(StandardCharsets.UTF_8));
    files.put("3mf", ThreeMfFile.of(Mesh.of(solid, DEVIATION), h.title()));
    return new PlanFiles(drawn.sheet(), files, drawn.faults());
  }
}
