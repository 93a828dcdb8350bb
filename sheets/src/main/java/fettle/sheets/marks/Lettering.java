package fettle.sheets.marks;

import fettle.mechanics.base.Source;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Our own stroke alphabet in the proportions of ISO 3098 type B, upright: capitals h, small letters
 * 0.7 h, tails 0.3 h, stroke h/10, gap between letters 0.2 h, between words 0.6 h. A letter is
 * written as strokes in a grid of h/10; x and y (raised by 3) are digits to base 36; a stroke that
 * starts with {@code ~} has its corners rounded.
 */
public final class Lettering {

  public static final Source PROPORTIONS = Source.page("ISO 3098-1:2015", "lettering type B");

  /** Surface texture symbol, removal of material required (ISO 21920-1). */
  public static final char TEXTURE = '\u2713';

  private static final String ALPHABET =
      """
      A 6 03-3d-63 17-57
      B 5 0d-03 ~0d-5d-58-08 ~08-58-53-03
      C 5 ~5b-5d-0d-03-53-55
      D 5 0d-03 ~0d-5d-53-03
      E 5 5d-0d-03-53 08-48
      F 5 5d-0d-03 08-48
      G 5 ~5b-5d-0d-03-53-58 58-38
      H 5 0d-03 5d-53 08-58
      I 0 0d-03
      J 4 ~4d-43-03-05
      K 5 0d-03 5d-07 29-53
      L 5 0d-03-53
      M 6 03-0d-37-6d-63
      N 5 03-0d-53-5d
      O 6 ~08-0d-6d-63-03-08
      P 5 0d-03 ~0d-5d-57-07
      Q 6 ~08-0d-6d-63-03-08 36-62
      R 5 0d-03 ~0d-5d-58-08 28-53
      S 5 ~5b-5d-0d-08-58-53-03-05
      T 6 0d-6d 3d-33
      U 5 ~0d-03-53-5d
      V 6 0d-33-6d
      W 8 0d-23-4d-63-8d
      X 5 03-5d 0d-53
      Y 6 0d-38-6d 38-33
      Z 5 0d-5d-03-53
      0 5 ~08-0d-5d-53-03-08
      1 5 1b-3d-33
      2 5 ~0b-0d-5d-59-03 03-53
      3 5 ~0b-0d-5d-58-28 ~28-58-53-03-05
      4 5 3d-05-55 38-33
      5 5 5d-0d-08 ~08-19-59-53-03-04
      6 5 ~5b-5d-0d-03-53-59-09-06
      7 5 0d-5d-23
      8 5 ~28-08-0d-5d-58-28 ~28-08-03-53-58-28
      9 5 ~05-03-53-5d-0d-07-57-5a
      a 4 4a-43 ~49-4a-0a-03-43-45
      b 4 0d-03 ~08-0a-4a-43-03-05
      c 4 ~49-4a-0a-03-43-44
      d 4 4d-43 ~48-4a-0a-03-43-45
      e 4 07-47 ~47-4a-0a-03-43-44
      f 3 ~3d-1d-13 0a-3a
      g 4 ~4a-40-00-01 ~48-4a-0a-03-43-45
      h 4 0d-03 ~07-0a-4a-43
      i 0 0a-03 0d-0c
      j 2 ~2a-20-00 2d-2c
      k 4 0d-03 4a-06 17-43
      l 1 ~0d-03-13
      m 6 0a-03 ~07-0a-3a-33 ~37-3a-6a-63
      n 4 0a-03 ~07-0a-4a-43
      o 4 ~07-0a-4a-43-03-07
      p 4 0a-00 ~08-0a-4a-43-03-05
      q 4 4a-40 ~48-4a-0a-03-43-45
      r 3 0a-03 ~07-0a-3a
      s 4 ~49-4a-0a-07-47-43-03-04
      t 3 ~1d-13-33 0a-3a
      u 4 ~0a-03-43-46 4a-43
      v 4 0a-23-4a
      w 6 0a-13-3a-53-6a
      x 4 03-4a 0a-43
      y 4 0a-23 4a-10
      z 4 0a-4a-03-43
      . 0 03-04
      , 1 14-02
      : 0 04-05 08-09
      ; 1 14-02 18-19
      - 4 07-47
      – 5 07-57
      + 4 08-48 2a-26
      = 4 07-47 09-49
      / 4 02-4e
      \\ 4 0e-42
      ( 2 ~2e-0b-05-22
      ) 2 ~0e-2b-25-02
      [ 2 2e-0e-02-22
      ] 2 0e-2e-22-02
      < 4 4b-08-45
      > 4 0b-48-05
      × 4 06-4a 0a-46
      · 0 07-08
      * 4 2b-27 0a-48 4a-08
      ° 3 ~0b-0d-3d-3a-0a-0b
      ⌀ 8 ~08-0c-8c-84-04-08 12-7e
      ± 4 0a-4a 2d-27 05-45
      µ 4 0a-00 ~0a-03-43-46 4a-43
      ↧ 6 0d-6d 3d-33 16-33-56
      ⌴ 7 0b-03-73-7b
      ⌵ 7 0b-34-6b
      □ 7 04-0b-7b-74-04
      ⌲ 7 04-0c-78-04
      ' 0 0d-0b
      " 2 0d-0b 2d-2b
      % 7 03-7d ~0b-0d-2d-2a-0a-0b ~55-56-76-73-53-55
      & 6 ~63-0b-0d-3d-3a-06-03-43-67
      # 5 13-2d 43-5d 0a-6a 06-56
      _ 5 02-52
      ! 0 0d-06 03-04
      ? 4 ~0b-0d-4d-49-29-26 23-24
      | 0 0e-02
      ~ 5 ~07-09-29-26-56-58
      @ 7 ~5a-2a-26-56-5a-55-76-7d-0d-03-73
      ² 3 ~0c-0e-3e-3c-08 08-38
      ³ 3 ~0d-0e-3e-3b-1b ~1b-3b-38-08-09
      ß 4 03-0b ~0b-0d-4d-49-29 ~29-49-43-23
      ✓ 8 08-23-8d 08-58
      ⏤ 10 08-a8
      ⏥ 10 05-2b-ab-85-05
      ○ 8 ~08-0c-8c-84-04-08
      ⌭ 12 ~38-3b-9b-95-35-38 03-5d 73-cd
      ∥ 8 03-4d 43-8d
      ⟂ 8 03-83 43-4d
      ∠ 9 93-03-8b
      ⌖ 10 ~28-2b-8b-85-25-28 08-a8 53-5d
      ◎ 8 ~08-0c-8c-84-04-08 ~28-2a-6a-66-26-28
      ⌯ 10 08-a8 2b-8b 25-85
      ↗ 8 03-8b 5a-8b-78
      ⌰ 14 03-8b 5a-8b-78 63-eb ba-eb-d8 03-63
      Ⓐ 8 ~08-0c-8c-84-04-08 26-4b-66 37-57
      """;

  /**
   * A letter: its strokes and width in h/10.
   *
   * @param width width without gap, in tenths of the height [-]
   * @param strokes strokes in tenths of the height
   */
  public record Glyph(double width, List<List<Point>> strokes) {
    /** Keeps its own copy. */
    public Glyph {
      strokes = strokes.stream().map(List::copyOf).toList();
    }
  }

  private static final Map<Character, Glyph> GLYPHS = read();

  private Lettering() {}

  /**
   * Returns the width of a text.
   *
   * @param text the text
   * @param height nominal height [mm]
   * @return width from the first stroke to the last [mm]
   */
  public static double width(String text, double height) {
    double sum = 0;
    for (int i = 0; i < text.length(); i++) {
      sum += advance(text.charAt(i));
    }
    return text.isEmpty() ? 0 : (sum - 2) * height / 10;
  }

  /**
   * Returns how far a letter moves the next one.
   *
   * @return advance in tenths of the height [-]
   */
  public static double advance(char c) {
    return c == ' ' ? 4 : glyph(c).width() + 2;
  }

  /** Returns the letter for a character; a box with a cross for one the alphabet lacks. */
  public static Glyph glyph(char c) {
    Glyph g = GLYPHS.get(c);
    if (g != null) {
      return g;
    }
    String parts = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFD);
    Glyph base = GLYPHS.get(parts.charAt(0));
    if (base == null || parts.length() == 1) {
      return new Glyph(
          5, List.of(line(0, 0, 0, 10), line(0, 10, 5, 10), line(5, 10, 5, 0), line(5, 0, 0, 0)));
    }
    List<List<Point>> strokes = new ArrayList<>(base.strokes());
    double m = base.width() / 2;
    double y = Character.isUpperCase(parts.charAt(0)) ? 11.5 : 8.7;
    switch (parts.charAt(1)) {
      case '\u0308' -> {
        strokes.add(line(m - 1.3, y, m - 1.3, y + 0.6));
        strokes.add(line(m + 1.3, y, m + 1.3, y + 0.6));
      }
      case '\u0300' -> strokes.add(line(m - 1, y + 1.3, m + 0.6, y));
      case '\u0302' -> {
        strokes.add(line(m - 1.4, y, m, y + 1.2));
        strokes.add(line(m, y + 1.2, m + 1.4, y));
      }
      case '\u0327' -> strokes.add(line(m, 0, m - 1, -2));
      case '\u030a' -> {
        strokes.add(line(m - 0.8, y, m + 0.8, y));
        strokes.add(line(m + 0.8, y, m, y + 1.4));
        strokes.add(line(m, y + 1.4, m - 0.8, y));
      }
      default -> strokes.add(line(m - 0.6, y, m + 1, y + 1.3));
    }
    return new Glyph(base.width(), strokes);
  }

  /** Returns the strokes of a text on paper. */
  public static List<List<Point>> strokes(Mark.Text t) {
    List<List<Point>> out = new ArrayList<>();
    double along = 0;
    double k = t.height() / 10;
    for (int i = 0; i < t.text().length(); i++) {
      char c = t.text().charAt(i);
      if (c != ' ') {
        for (List<Point> s : glyph(c).strokes()) {
          List<Point> placed = new ArrayList<>();
          for (Point p : s) {
            double u = (along + p.x()) * k;
            double v = p.y() * k;
            placed.add(
                t.reading() == Mark.Reading.FROM_BELOW
                    ? new Point(t.x() + u, t.y() + v)
                    : new Point(t.x() - v, t.y() + u));
          }
          out.add(placed);
        }
      }
      along += advance(c);
    }
    return out;
  }

  private static List<Point> line(double x0, double y0, double x1, double y1) {
    return List.of(new Point(x0, y0), new Point(x1, y1));
  }

  private static Map<Character, Glyph> read() {
    Map<Character, Glyph> all = new HashMap<>();
    for (String row : ALPHABET.lines().toList()) {
      String[] parts = row.trim().split(" ");
      List<List<Point>> strokes = new ArrayList<>();
      for (int i = 2; i < parts.length; i++) {
        strokes.add(stroke(parts[i]));
      }
      all.put(parts[0].charAt(0), new Glyph(Integer.parseInt(parts[1]), strokes));
    }
    all.put('Ø', all.getOrDefault('⌀', new Glyph(0, List.of())));
    all.put('μ', all.getOrDefault('µ', new Glyph(0, List.of())));
    all.put('−', all.getOrDefault('-', new Glyph(0, List.of())));
    return Map.copyOf(all);
  }

  private static List<Point> stroke(String written) {
    boolean round = written.startsWith("~");
    List<Point> corners = new ArrayList<>();
    for (String p : (round ? written.substring(1) : written).split("-")) {
      corners.add(
          new Point(Character.digit(p.charAt(0), 36), Character.digit(p.charAt(1), 36) - 3));
    }
    return round ? rounded(corners) : corners;
  }

  private static List<Point> rounded(List<Point> corners) {
    List<Point> out = new ArrayList<>();
    out.add(corners.get(0));
    for (int i = 1; i < corners.size() - 1; i++) {
      Point a = corners.get(i - 1);
      Point b = corners.get(i);
      Point c = corners.get(i + 1);
      double shareA = i == 1 ? 1 : 0.5;
      double shareC = i == corners.size() - 2 ? 1 : 0.5;
      double r = Math.min(4, Math.min(a.to(b) * shareA, b.to(c) * shareC));
      Point p = towards(b, a, r);
      Point q = towards(b, c, r);
      for (int k = 0; k <= 5; k++) {
        double t = k / 5.0;
        double w = 0.7071;
        double w0 = (1 - t) * (1 - t);
        double w1 = 2 * t * (1 - t) * w;
        double w2 = t * t;
        double sum = w0 + w1 + w2;
        out.add(
            new Point(
                (w0 * p.x() + w1 * b.x() + w2 * q.x()) / sum,
                (w0 * p.y() + w1 * b.y() + w2 * q.y()) / sum));
      }
    }
    out.add(corners.get(corners.size() - 1));
    return out;
  }

  private static Point towards(Point from, Point to, double by) {
    double d = from.to(to);
    return new Point(
        from.x() + (to.x() - from.x()) * by / d, from.y() + (to.y() - from.y()) * by / d);
  }
}
