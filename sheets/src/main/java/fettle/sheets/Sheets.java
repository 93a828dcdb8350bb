package fettle.sheets;

import fettle.parts.recipe.Recipe;
import fettle.sheets.draw.Draughtsman;
import fettle.sheets.judge.Judge;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import fettle.sheets.pdf.PdfSheets;
import fettle.sheets.svg.SvgSheet;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing, ready to be written.
 *
 * @param sheet the sheet
 * @param faults what is wrong with it, in words; empty if nothing is
 */
public record Sheets(Sheet sheet, List<String> faults) {

  /** Keeps its own copy. */
  public Sheets {
    faults = List.copyOf(faults);
  }

  /**
   * Draws the sheet of a part and looks it over.
   *
   * @throws IllegalArgumentException if a text does not fit its field or the part finds no room
   */
  public static Sheets of(Recipe recipe, Heads heads) {
    Draughtsman.Drawn drawn = Draughtsman.part(recipe, heads);
    List<String> faults = new ArrayList<>(drawn.faults());
    faults.addAll(Judge.faults(drawn.sheet()));
    return new Sheets(drawn.sheet(), faults);
  }

  /** Returns the sheet as SVG. */
  public String svg() {
    return SvgSheet.of(sheet);
  }

  /** Returns the sheet as PDF. */
  public byte[] pdf() {
    return PdfSheets.of(List.of(sheet));
  }
}
