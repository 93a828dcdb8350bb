package fettle.sheets.svg;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import fettle.sheets.page.Sheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes a sheet as SVG. */
public final class SvgSheet {

  static final Source FORM = Source.page("W3C SVG 1.1", "width, height and viewBox in millimetres");

  private final double height;
  private final StringBuilder out = new StringBuilder(1 << 16);

  private SvgSheet(double height) {
    this.height = height;
  }

  /** Returns the sheet as SVG text. */
  public static String of(Sheet sheet) {
    return new SvgSheet(sheet.format().height()).write(sheet);
  }

  private String write(Sheet sheet) {
    String w = number(sheet.format().width());
    String h = number(sheet.format().height());
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(w);
    out.append("mm\" height=\"").append(h).append("mm\" viewBox=\"0 0 ").append(w).append(' ');
    out.append(h).append("\">\n<title>");
    out.append(escaped(sheet.number() + " " + sheet.title())).append("</title>\n<style>\n");
    out.append("path,circle{fill:none;stroke:#000;stroke-linecap:round;stroke-linejoin:round}\n");
    for (Pen pen : Pen.values()) {
      out.append('.').append(name(pen)).append("{stroke-width:").append(number(pen.width()));
      out.append("}\n");
    }
    out.append(
        """
        .hidden,.centre,.adjacent{stroke-linecap:butt}
        .fill{fill:#000;stroke:none}
        .seek{fill:#000;fill-opacity:0}
        </style>
        """);
    out.append("<rect width=\"").append(w).append("\" height=\"").append(h);
    out.append("\" fill=\"#fff\"/>\n");
    Map<String, List<Mark>> groups = new LinkedHashMap<>();
    for (Mark m : sheet.marks()) {
      groups.computeIfAbsent(m.group(), k -> new ArrayList<>()).add(m);
    }
    groups.forEach(
        (name, marks) -> {
          out.append("<g id=\"").append(escaped(name)).append("\">\n");
          marks.forEach(this::mark);
          out.append("</g>\n");
        });
    return out.append("</svg>\n").toString();
  }

  private void mark(Mark m) {
    if (m instanceof Mark.Stroke s) {
      path(name(s.pen()), path(s.points()), s.pen().dashes(s.length()));
    } else if (m instanceof Mark.Arc a) {
      arc(a);
    } else if (m instanceof Mark.Fill f) {
      path("fill", path(f.points()) + "Z", new double[0]);
    } else if (m instanceof Mark.Text t) {
      text(t);
    }
  }

  private void arc(Mark.Arc a) {
    double[] dashes = a.pen().dashes(Math.abs(a.sweep()) * a.radius());
    if (Math.abs(Math.abs(a.sweep()) - 2 * Math.PI) < 1e-9) {
      out.append("<circle class=\"").append(name(a.pen())).append("\" cx=\"");
      out.append(number(a.x())).append("\" cy=\"").append(number(height - a.y()));
      out.append("\" r=\"").append(number(a.radius())).append('"');
      dashes(dashes);
      out.append("/>\n");
      return;
    }
    StringBuilder d = new StringBuilder("M").append(xy(a.at(0)));
    int n = Math.abs(a.sweep()) > 3 ? 2 : 1;
    for (int i = 1; i <= n; i++) {
      d.append('A').append(number(a.radius())).append(' ').append(number(a.radius()));
      d.append(" 0 0 ").append(a.sweep() > 0 ? '0' : '1').append(' ');
      d.append(xy(a.at((double) i / n)));
    }
    path(name(a.pen()), d.toString(), dashes);
  }

  private void text(Mark.Text t) {
    StringBuilder d = new StringBuilder();
    for (List<Point> s : Lettering.strokes(t)) {
      d.append(path(s));
    }
    out.append("<path stroke-width=\"").append(number(t.height() / 10)).append("\" d=\"");
    out.append(d).append("\"/>\n<text class=\"seek\" x=\"").append(number(t.x()));
    out.append("\" y=\"").append(number(height - t.y())).append("\" font-size=\"");
    out.append(number(t.height() * 1.35)).append("\" textLength=\"").append(number(t.width()));
    out.append("\" lengthAdjust=\"spacingAndGlyphs\"");
    if (t.reading() == Mark.Reading.FROM_RIGHT) {
      out.append(" transform=\"rotate(-90 ").append(number(t.x())).append(' ');
      out.append(number(height - t.y())).append(")\"");
    }
    out.append('>').append(escaped(t.text())).append("</text>\n");
  }

  private void path(String kind, String d, double[] dashes) {
    out.append("<path class=\"").append(kind).append("\" d=\"").append(d).append('"');
    dashes(dashes);
    out.append("/>\n");
  }

  private void dashes(double[] dashes) {
    if (dashes.length > 0) {
      out.append(" stroke-dasharray=\"");
      for (int i = 0; i < dashes.length; i++) {
        out.append(i == 0 ? "" : " ").append(number(dashes[i]));
      }
      out.append('"');
    }
  }

  private String path(List<Point> points) {
    StringBuilder d = new StringBuilder();
    for (int i = 0; i < points.size(); i++) {
      d.append(i == 0 ? 'M' : 'L').append(xy(points.get(i)));
    }
    return d.toString();
  }

  private String xy(Point p) {
    return number(p.x()) + " " + number(height - p.y());
  }

  static String number(double v) {
    BigDecimal d = BigDecimal.valueOf(v).setScale(3, RoundingMode.HALF_EVEN);
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }

  private static String name(Pen pen) {
    return pen.name().toLowerCase(java.util.Locale.ROOT);
  }

  private static String escaped(String s) {
    return s.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
