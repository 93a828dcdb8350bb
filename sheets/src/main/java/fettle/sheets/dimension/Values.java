package fettle.sheets.dimension;

import fettle.mechanics.fits.Deviations;
import fettle.mechanics.fits.ToleranceClass;
import fettle.parts.recipe.Size;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** How values read on a sheet: comma on the line, no unit, no trailing zeros (ISO 129-1). */
public final class Values {

  private Values() {}

  /** Returns a length as it reads. */
  public static String number(double v) {
    BigDecimal d = BigDecimal.valueOf(v).setScale(3, RoundingMode.HALF_EVEN);
    String s = d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
    return s.replace('.', ',');
  }

  /** Returns a theoretically exact value; the brackets become a frame on the sheet. */
  public static String exact(String value) {
    return "[" + value + "]";
  }

  /** Returns an angle in degrees as it reads. */
  public static String degrees(double radians) {
    return number(Math.round(Math.toDegrees(radians) * 1000) / 1000.0) + "°";
  }

  /** Returns a roughness as it reads, in micrometres. */
  public static String roughness(double millimetres) {
    return "Ra " + number(millimetres * 1000);
  }

  /** Returns a size with its tolerance, a sign before the number. */
  public static String size(String sign, Size size) {
    String n = sign + number(size.nominal());
    return switch (size.tolerance().kind()) {
      case GENERAL -> n;
      case AUXILIARY -> "(" + n + ")";
      case EXACT -> exact(n);
      case LIMITS -> n + " " + limits(size.tolerance().lower(), size.tolerance().upper());
      case ZONE -> n + " " + zone(size);
    };
  }

  private static String zone(Size size) {
    ToleranceClass c = ToleranceClass.parse(size.tolerance().zone());
    Deviations d = c.deviations(size.nominal());
    return c.text() + " (" + limits(d.lower(), d.upper()) + ")";
  }

  private static String limits(double lower, double upper) {
    if (Math.abs(lower + upper) < 1e-9) {
      return "±" + number(upper);
    }
    return deviation(upper) + "/" + deviation(lower);
  }

  private static String deviation(double v) {
    String n = number(v);
    return v > 0 && !n.equals("0") ? "+" + n : n;
  }
}
