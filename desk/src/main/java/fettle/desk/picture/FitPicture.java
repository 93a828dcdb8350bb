package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.fits.Deviations;
import fettle.mechanics.fits.Fit;

/** Draws the zones of a hole and a shaft about their zero line, to one scale. */
public final class FitPicture {

  private FitPicture() {}

  /**
   * Draws a fit.
   *
   * @param words what fits
   * @param fit hole and shaft
   * @param hole name of the upper part
   * @param shaft name of the lower part
   */
  public static Drawing of(String words, Fit fit, String hole, String shaft) {
    double low = Math.min(0, Math.min(fit.hole().lower(), fit.shaft().lower())) * 1000;
    double high = Math.max(0, Math.max(fit.hole().upper(), fit.shaft().upper())) * 1000;
    double span = Math.max(10, high - low);
    double scale = 300 / span;
    double zero = 60 + (high > 0 ? high * scale : 0);
    Pen pen = Pen.of(1000, 0);
    pen.line("ink", 60, zero, 860, zero);
    zone(pen, "zone2", 150, fit.hole(), zero, scale, hole, true);
    zone(pen, "zone", 520, fit.shaft(), zero, scale, shaft, false);
    pen.words("", 868, zero + 7, "start", "zero line");
    return pen.done("Zones of " + words + " to scale, in µm", 0, 0, 1000, 420);
  }

  private static void zone(
      Pen pen,
      String style,
      double x,
      Deviations zone,
      double zero,
      double scale,
      String words,
      Boolean left) {
    double top = zero - zone.upper() * 1000 * scale;
    double foot = zero - zone.lower() * 1000 * scale;
    pen.box(style, x, top, 220, Math.max(1, foot - top));
    pen.words("halo", x + 110, (top + foot) / 2 + 8, "middle", words);
    double side = left ? x - 10 : x + 230;
    String anchor = left ? "end" : "start";
    boolean thin = foot - top < 44;
    pen.words("", side, top + (thin ? -4 : 16), anchor, signed(zone.upper()));
    pen.words("", side, foot + (thin ? 22 : -2), anchor, signed(zone.lower()));
  }

  private static String signed(double mm) {
    double micron = Math.rint(mm * 1e4) / 10;
    String digits = Numbers.significant(Math.abs(micron), 4);
    return micron == 0 ? "0" : (micron < 0 ? "−" : "+") + digits;
  }
}
