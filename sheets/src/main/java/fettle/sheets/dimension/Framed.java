package fettle.sheets.dimension;

import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * Text in which theoretically exact values stand in square brackets; on the sheet each of them
 * stands in a frame (ISO 129-1).
 */
final class Framed {

  private static final double OVER = 0.75;
  private static final double UNDER = 0.9;

  private Framed() {}

  /** Tells whether a text has an exact value in it. */
  static boolean has(String text) {
    return text.indexOf('[') >= 0;
  }

  /** Returns the marks of a text with frames round its exact values. */
  static List<Mark> marks(Mark.Text t) {
    if (!has(t.text())) {
      return List.of(t);
    }
    List<Mark> out = new ArrayList<>();
    int from = 0;
    while (from < t.text().length()) {
      int open = t.text().indexOf('[', from);
      int close = t.text().indexOf(']', open + 1);
      if (open < 0 || close < 0) {
        piece(t, from, t.text().length(), out);
        break;
      }
      piece(t, from, open, out);
      piece(t, open + 1, close, out);
      out.add(frame(t, before(t, open) + 0.35, before(t, close) + 0.35));
      from = close + 1;
    }
    return out;
  }

  private static double before(Mark.Text t, int end) {
    double sum = 0;
    for (int i = 0; i < end; i++) {
      sum += Lettering.advance(t.text().charAt(i));
    }
    return sum * t.height() / 10;
  }

  private static void piece(Mark.Text t, int from, int to, List<Mark> out) {
    String text = t.text().substring(from, to);
    if (text.isBlank()) {
      return;
    }
    int blanks = text.length() - text.stripLeading().length();
    double along = before(t, from + blanks);
    boolean level = t.reading() == Mark.Reading.FROM_BELOW;
    out.add(
        new Mark.Text(
            t.group(),
            text.strip(),
            level ? t.x() + along : t.x(),
            level ? t.y() : t.y() + along,
            t.height(),
            t.reading()));
  }

  private static Mark frame(Mark.Text t, double low, double high) {
    Box b =
        t.reading() == Mark.Reading.FROM_BELOW
            ? new Box(t.x() + low, t.y() - UNDER, t.x() + high, t.y() + t.height() + OVER)
            : new Box(t.x() - t.height() - OVER, t.y() + low, t.x() + UNDER, t.y() + high);
    return Mark.Stroke.box(t.group() + ":exact", Pen.NARROW, b);
  }
}
