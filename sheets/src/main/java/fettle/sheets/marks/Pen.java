package fettle.sheets.marks;

import fettle.mechanics.base.Source;

/** Kinds of line (ISO 128-2, line group 0.5: wide 0.5, narrow 0.25, lettering 0.35). */
public enum Pen {
  /** 01.2 continuous wide: visible edges, outlines, thread crests. */
  OUTLINE(0.5),
  /** 01.1 continuous narrow: dimensions, extension lines, leaders, thread roots. */
  NARROW(0.25),
  /** 01.1 continuous narrow: hatching. */
  HATCH(0.25),
  /** 02.1 dashed narrow: hidden edges; 12 d long, 3 d gap. */
  HIDDEN(0.25, 12, 3),
  /** 04.1 long-dashed dotted narrow: axes; 24 d, 3 d, 0.5 d, 3 d. */
  CENTRE(0.25, 24, 3, 0.5, 3),
  /** 05.1 long-dashed double-dotted narrow: adjacent parts. */
  ADJACENT(0.25, 24, 3, 0.5, 3, 0.5, 3),
  /** Wide ends of a cutting plane. */
  CUTTING(0.5),
  /** Graphical symbols: width of the lettering. */
  SYMBOL(0.35),
  /** Frame and centring marks (ISO 5457). */
  FRAME(0.7),
  /** Grid reference and lines of the title block. */
  GRID(0.35),
  /** Lines inside the title block. */
  BLOCK(0.25);

  static final Source WIDTHS = Source.page("ISO 128-2:2022", "mechanical drawings, line group 0.5");
  static final Source ELEMENTS = Source.page("ISO 128-2:2022", "line elements in widths d");

  private final double width;

  @SuppressWarnings("ImmutableEnumChecker") // never handed out
  private final double[] elements;

  Pen(double width, double... elements) {
    this.width = width;
    this.elements = elements;
  }

  /**
   * Returns the width of the line.
   *
   * @return width [mm]
   */
  public double width() {
    return width;
  }

  /**
   * Returns dashes and gaps for a line, stretched so that it begins and ends on a dash; empty for a
   * line drawn through, also where it is shorter than two dashes and a gap.
   *
   * @param length length of the line [mm]
   * @return lengths of dash and gap in turn [mm]
   */
  public double[] dashes(double length) {
    if (elements.length == 0) {
      return new double[0];
    }
    double period = 0;
    for (double e : elements) {
      period += e * width;
    }
    double dash = elements[0] * width;
    long n = Math.max(1, Math.round((length - dash) / period));
    double stretch = length / (n * period + dash);
    if (stretch < 0.35) {
      return new double[0];
    }
    double[] out = new double[elements.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = elements[i] * width * stretch;
    }
    return out;
  }
}
