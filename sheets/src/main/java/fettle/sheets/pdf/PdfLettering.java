package fettle.sheets.pdf;

import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Point;
import fettle.sheets.page.Sheet;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * The stroke alphabet as an embedded font of type 3: what is seen on the sheet is text that can be
 * searched and copied. 1000 units are the nominal height, so the font size is the height.
 */
final class PdfLettering {

  private static final int MOST = 250;

  private final Map<Character, Integer> codes = new HashMap<>();
  private final COSDictionary font = new COSDictionary();

  /** A font with the characters of these sheets. */
  PdfLettering(List<Sheet> sheets) throws IOException {
    TreeSet<Character> used = new TreeSet<>();
    used.add(' ');
    for (Sheet sheet : sheets) {
      for (Mark m : sheet.marks()) {
        if (m instanceof Mark.Text t) {
          t.text().chars().forEach(c -> used.add((char) c));
        }
      }
    }
    if (used.size() > MOST) {
      throw new IllegalArgumentException(
          "the sheets use " + used.size() + " different characters; a pack may use " + MOST);
    }
    build(used);
  }

  private void build(Set<Character> used) throws IOException {
    COSDictionary shapes = new COSDictionary();
    COSArray differences = new COSArray();
    COSArray widths = new COSArray();
    differences.add(COSInteger.get(1));
    StringBuilder unicode = new StringBuilder();
    int code = 1;
    for (char c : used) {
      COSName name = COSName.getPDFName("c" + code);
      int width = (int) Math.round(Lettering.advance(c) * 100);
      codes.put(c, code);
      differences.add(name);
      widths.add(COSInteger.get(width));
      shapes.setItem(name, stream(shape(c, width)));
      unicode.append(String.format(Locale.ROOT, "<%02x> <%04x>\n", code, (int) c));
      code++;
    }
    COSDictionary encoding = new COSDictionary();
    encoding.setItem(COSName.TYPE, COSName.ENCODING);
    encoding.setItem(COSName.DIFFERENCES, differences);
    font.setItem(COSName.TYPE, COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.TYPE3);
    font.setItem(COSName.NAME, COSName.getPDFName("Lettering"));
    font.setItem(COSName.FONT_BBOX, numbers(-100, -400, 1100, 1400));
    font.setItem(COSName.FONT_MATRIX, numbers(0.001f, 0, 0, 0.001f, 0, 0));
    font.setItem(COSName.CHAR_PROCS, shapes);
    font.setItem(COSName.ENCODING, encoding);
    font.setItem(COSName.FIRST_CHAR, COSInteger.get(1));
    font.setItem(COSName.LAST_CHAR, COSInteger.get(code - 1));
    font.setItem(COSName.WIDTHS, widths);
    font.setItem(COSName.RESOURCES, new COSDictionary());
    font.setItem(COSName.TO_UNICODE, stream(toUnicode(code - 1, unicode.toString())));
  }

  private static String shape(char c, int width) {
    StringBuilder out = new StringBuilder();
    out.append(width).append(" 0 d0\n");
    if (c == ' ') {
      return out.toString();
    }
    out.append("100 w 1 J 1 j\n");
    for (List<Point> stroke : Lettering.glyph(c).strokes()) {
      for (int i = 0; i < stroke.size(); i++) {
        Point p = stroke.get(i);
        out.append(Math.round(p.x() * 100)).append(' ').append(Math.round(p.y() * 100));
        out.append(i == 0 ? " m\n" : " l\n");
      }
      out.append("S\n");
    }
    return out.toString();
  }

  private static String toUnicode(int count, String pairs) {
    StringBuilder out = new StringBuilder();
    out.append(
        """
        /CIDInit /ProcSet findresource begin
        12 dict begin
        begincmap
        /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
        /CMapName /Lettering def
        /CMapType 2 def
        1 begincodespacerange
        <00> <ff>
        endcodespacerange
        """);
    String[] lines = pairs.split("\n");
    for (int from = 0; from < count; from += 100) {
      int n = Math.min(100, count - from);
      out.append(n).append(" beginbfchar\n");
      for (int i = from; i < from + n; i++) {
        out.append(lines[i]).append('\n');
      }
      out.append("endbfchar\n");
    }
    return out.append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n")
        .toString();
  }

  private static COSStream stream(String text) throws IOException {
    COSStream s = new COSStream();
    try (OutputStream o = s.createOutputStream()) {
      o.write(text.getBytes(StandardCharsets.US_ASCII));
    }
    return s;
  }

  private static COSArray numbers(float... values) {
    COSArray a = new COSArray();
    for (float v : values) {
      a.add(new COSFloat(v));
    }
    return a;
  }

  /** Returns the font. */
  COSDictionary font() {
    return font;
  }

  /** Returns a text in the codes of the font, as hexadecimal digits. */
  String codes(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      out.append(String.format(Locale.ROOT, "%02x", codes.getOrDefault(text.charAt(i), 1)));
    }
    return out.toString();
  }
}
