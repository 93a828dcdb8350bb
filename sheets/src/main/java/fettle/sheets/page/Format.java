package fettle.sheets.page;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Box;

/** Trimmed sheets of the A series (ISO 5457): A4 upright, all others lying. */
public enum Format {
  A4(210, 297),
  A3(420, 297),
  A2(594, 420),
  A1(841, 594);

  static final Source SIZES =
      Source.page("ISO 5457:1999", "sizes; borders 20 left and 10 elsewhere");

  public static final double FILING = 20;
  public static final double BORDER = 10;

  private final double width;
  private final double height;

  Format(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /**
   * Returns the width of the trimmed sheet.
   *
   * @return width [mm]
   */
  public double width() {
    return width;
  }

  /**
   * Returns the height of the trimmed sheet.
   *
   * @return height [mm]
   */
  public double height() {
    return height;
  }

  /** Returns the drawing space. */
  public Box space() {
    return new Box(FILING, BORDER, width - BORDER, height - BORDER);
  }
}
