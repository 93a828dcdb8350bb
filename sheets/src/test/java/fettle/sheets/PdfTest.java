package fettle.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.sheets.marks.Mark;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import fettle.sheets.pdf.PdfSheets;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** PDF of sheets: true size, every text found again, the same bytes each time. */
class PdfTest {

  private static List<Sheet> sheets() {
    Heads heads = Heads.of("Hobby workshop", "2026-01-15");
    List<Sheet> all = new ArrayList<>();
    SampleParts.all().values().forEach(p -> all.add(Sheets.of(p, heads).sheet()));
    return all;
  }

  @Test
  void sameSheetsGiveTheSameBytes() {
    List<Sheet> sheets = sheets();
    assertThat(PdfSheets.of(sheets)).isEqualTo(PdfSheets.of(sheets));
  }

  @Test
  void everyTextIsFoundAndEveryPageHasItsTrueSize() throws IOException {
    List<Sheet> sheets = sheets();
    try (PDDocument document = Loader.loadPDF(PdfSheets.of(sheets))) {
      assertThat(document.getNumberOfPages()).isEqualTo(sheets.size());
      for (int i = 0; i < sheets.size(); i++) {
        Sheet sheet = sheets.get(i);
        PDRectangle box = document.getPage(i).getMediaBox();
        assertThat((double) box.getWidth() * 25.4 / 72)
            .isCloseTo(sheet.format().width(), within(1e-3));
        assertThat((double) box.getHeight() * 25.4 / 72)
            .isCloseTo(sheet.format().height(), within(1e-3));
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(i + 1);
        stripper.setEndPage(i + 1);
        String found = stripper.getText(document).replaceAll("\\s+", "");
        for (Mark m : sheet.marks()) {
          if (m instanceof Mark.Text t && t.reading() == Mark.Reading.FROM_BELOW) {
            assertThat(found).contains(t.text().replaceAll("\\s+", ""));
          }
        }
      }
    }
  }
}
