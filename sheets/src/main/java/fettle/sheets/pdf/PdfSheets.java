package fettle.sheets.pdf;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Point;
import fettle.sheets.page.Sheet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Writes sheets as one PDF, a page each, at true size; the same sheets give the same bytes. */
public final class PdfSheets {

  static final Source UNIT = Source.page("ISO 32000-1:2008", "user space: 1/72 inch");

  private static final double POINTS = 72 / 25.4;

  private final PdfLettering letters;
  private final StringBuilder out = new StringBuilder(1 << 16);

  private PdfSheets(PdfLettering letters) {
    this.letters = letters;
  }

  /** Returns the sheets as PDF. */
  public static byte[] of(List<Sheet> sheets) {
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("a PDF needs at least one sheet");
    }
    return of(sheets.get(0).title(), sheets, List.of());
  }

  /**
   * Returns sheets as PDF with an outline to find them by.
   *
   * @param title title of the whole
   * @param sheets the pages; at least one
   * @param outline bookmarks in the order of the pages; empty for none
   */
  public static byte[] of(String title, List<Sheet> sheets, List<Bookmark> outline) {
    try (PDDocument document = new PDDocument()) {
      PdfLettering letters = new PdfLettering(sheets);
      for (Sheet sheet : sheets) {
        page(document, sheet, letters);
      }
      document.getDocumentInformation().setTitle(title);
      document.getDocumentCatalog().setLanguage("en");
      outline(document, outline);
      PDViewerPreferences print = new PDViewerPreferences(new COSDictionary());
      print.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
      document.getDocumentCatalog().setViewerPreferences(print);
      document.setDocumentId(1L);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes, CompressParameters.NO_COMPRESSION);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void outline(PDDocument document, List<Bookmark> bookmarks) {
    if (bookmarks.isEmpty()) {
      return;
    }
    PDDocumentOutline outline = new PDDocumentOutline();
    PDOutlineNode chapter = outline;
    for (Bookmark bookmark : bookmarks) {
      PDPageFitDestination place = new PDPageFitDestination();
      place.setPage(document.getPage(bookmark.page()));
      PDOutlineItem item = new PDOutlineItem();
      item.setTitle(bookmark.title());
      item.setDestination(place);
      boolean within = bookmark.rank() == Bookmark.Rank.WITHIN;
      (within ? chapter : outline).addLast(item);
      chapter = within ? chapter : item;
    }
    document.getDocumentCatalog().setDocumentOutline(outline);
    document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
  }

  private static void page(PDDocument document, Sheet sheet, PdfLettering letters)
      throws IOException {
    PDPage page =
        new PDPage(
            new PDRectangle(
                (float) (sheet.format().width() * POINTS),
                (float) (sheet.format().height() * POINTS)));
    PDResources resources = new PDResources();
    COSDictionary fonts = new COSDictionary();
    fonts.setItem(COSName.getPDFName("L"), letters.font());
    resources.getCOSObject().setItem(COSName.FONT, fonts);
    page.setResources(resources);
    String content = new PdfSheets(letters).content(sheet);
    page.setContents(
        new PDStream(
            document,
            new ByteArrayInputStream(content.getBytes(StandardCharsets.US_ASCII)),
            COSName.FLATE_DECODE));
    document.addPage(page);
  }

  private String content(Sheet sheet) {
    out.append(number(POINTS)).append(" 0 0 ").append(number(POINTS)).append(" 0 0 cm\n1 j\n");
    for (Mark m : sheet.marks()) {
      if (m instanceof Mark.Stroke s) {
        pen(s.pen().width(), s.pen().dashes(s.length()));
        path(s.points());
        out.append("S\n");
      } else if (m instanceof Mark.Arc a) {
        pen(a.pen().width(), a.pen().dashes(Math.abs(a.sweep()) * a.radius()));
        arc(a);
      } else if (m instanceof Mark.Fill f) {
        path(f.points());
        out.append("f\n");
      } else if (m instanceof Mark.Text t) {
        text(t);
      }
    }
    return out.toString();
  }

  private void pen(double width, double[] dashes) {
    out.append(number(width)).append(" w ").append(dashes.length == 0 ? "1" : "0").append(" J [");
    for (double d : dashes) {
      out.append(number(d)).append(' ');
    }
    out.append("] 0 d\n");
  }

  private void path(List<Point> points) {
    for (int i = 0; i < points.size(); i++) {
      xy(points.get(i));
      out.append(i == 0 ? "m\n" : "l\n");
    }
  }

  /** An arc in pieces of at most a quarter of a right angle, each a cubic curve. */
  private void arc(Mark.Arc a) {
    int n = Math.max(1, (int) Math.ceil(Math.abs(a.sweep()) / (Math.PI / 8)));
    double step = a.sweep() / n;
    double reach = 4.0 / 3 * Math.tan(step / 4) * a.radius();
    xy(a.at(0));
    out.append("m\n");
    for (int i = 0; i < n; i++) {
      double from = a.start() + i * step;
      double to = from + step;
      Point p = a.at((double) i / n);
      Point q = a.at((i + 1.0) / n);
      xy(p.moved(-reach * Math.sin(from), reach * Math.cos(from)));
      xy(q.moved(reach * Math.sin(to), -reach * Math.cos(to)));
      xy(q);
      out.append("c\n");
    }
    out.append("S\n");
  }

  private void text(Mark.Text t) {
    String turn = t.reading() == Mark.Reading.FROM_BELOW ? "1 0 0 1 " : "0 1 -1 0 ";
    out.append("[] 0 d BT /L ").append(number(t.height())).append(" Tf ").append(turn);
    xy(new Point(t.x(), t.y()));
    out.append("Tm <").append(letters.codes(t.text())).append("> Tj ET\n");
  }

  private void xy(Point p) {
    out.append(number(p.x())).append(' ').append(number(p.y())).append(' ');
  }

  private static String number(double v) {
    BigDecimal d = BigDecimal.valueOf(v).setScale(4, RoundingMode.HALF_EVEN);
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }
}
