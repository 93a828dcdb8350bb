package fettle.mechanics.base;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A unit in which a quantity is read or written. Inside, numbers are always in the coherent unit of
 * the {@link Dimension}; a unit serves at the edges only.
 *
 * @param symbol as written, e.g. {@code mm}
 * @param dimension kind of quantity
 * @param factor exact size of one unit in the coherent unit; for a reciprocal unit the coherent
 *     value is {@code factor/number}
 * @param reciprocal true for {@code tpi} and {@code DP}, which count per length
 */
public record Unit(String symbol, Dimension dimension, Ratio factor, boolean reciprocal) {

  private static final Map<String, Unit> ALL = new LinkedHashMap<>();

  public static final Unit ONE = unit("", Dimension.NUMBER, "1");
  public static final Unit PERCENT = unit("%", Dimension.NUMBER, "0.01");
  public static final Unit PPM = unit("ppm", Dimension.NUMBER, "0.000001");
  public static final Unit TEETH = unit("teeth", Dimension.NUMBER, "1");
  public static final Unit TURNS = unit("turns", Dimension.NUMBER, "1");
  public static final Unit LINES = unit("lines", Dimension.NUMBER, "1");

  public static final Unit MM = unit("mm", Dimension.LENGTH, "1");
  public static final Unit MICRON = unit("µm", Dimension.LENGTH, "0.001");
  public static final Unit NANOMETRE = unit("nm", Dimension.LENGTH, "0.000001");
  public static final Unit M = unit("m", Dimension.LENGTH, "1000");
  public static final Unit CM = unit("cm", Dimension.LENGTH, "10");
  public static final Unit KM = unit("km", Dimension.LENGTH, "1000000");
  public static final Unit INCH = exact("in", Dimension.LENGTH, Ratio.INCH, false);
  public static final Unit FOOT = exact("ft", Dimension.LENGTH, Ratio.INCH.times(12), false);
  public static final Unit TPI = exact("tpi", Dimension.LENGTH, Ratio.INCH, true);
  public static final Unit DP = exact("DP", Dimension.LENGTH, Ratio.INCH, true);

  public static final Unit MM2 = unit("mm2", Dimension.AREA, "1");
  public static final Unit CM2 = unit("cm2", Dimension.AREA, "100");
  public static final Unit M2 = unit("m2", Dimension.AREA, "1000000");
  public static final Unit IN2 = exact("in2", Dimension.AREA, Ratio.INCH.times(Ratio.INCH), false);
  public static final Unit MM3 = unit("mm3", Dimension.VOLUME, "1");
  public static final Unit CM3 = unit("cm3", Dimension.VOLUME, "1000");
  public static final Unit IN3 =
      exact("in3", Dimension.VOLUME, Ratio.INCH.times(Ratio.INCH).times(Ratio.INCH), false);
  public static final Unit MM4 = unit("mm4", Dimension.SECOND_MOMENT, "1");

  public static final Unit RAD = unit("rad", Dimension.ANGLE, "1");
  public static final Unit MRAD = unit("mrad", Dimension.ANGLE, "0.001");
  public static final Unit DEG = exact("deg", Dimension.ANGLE, Ratio.PI.over(180), false);
  public static final Unit ARCMIN = exact("arcmin", Dimension.ANGLE, Ratio.PI.over(10800), false);
  public static final Unit TURN = exact("turn", Dimension.ANGLE, Ratio.PI.times(2), false);

  public static final Unit MM_PER_M = unit("mm/m", Dimension.SLOPE, "0.001");
  public static final Unit MICRON_PER_M = unit("µm/m", Dimension.SLOPE, "0.000001");
  public static final Unit SLOPE = unit("mm/mm", Dimension.SLOPE, "1");

  public static final Unit S = unit("s", Dimension.TIME, "1");
  public static final Unit MIN = unit("min", Dimension.TIME, "60");
  public static final Unit H = unit("h", Dimension.TIME, "3600");
  public static final Unit DAY = unit("d", Dimension.TIME, "86400");
  public static final Unit MM_PER_S = unit("mm/s", Dimension.SPEED, "1");
  public static final Unit M_PER_S = unit("m/s", Dimension.SPEED, "1000");
  public static final Unit M_PER_MIN = exact("m/min", Dimension.SPEED, Ratio.of(1000, 60), false);
  public static final Unit MM_PER_MIN = exact("mm/min", Dimension.SPEED, Ratio.of(1, 60), false);
  public static final Unit RAD_PER_S = unit("rad/s", Dimension.ROTATION, "1");
  public static final Unit RPM = exact("rpm", Dimension.ROTATION, Ratio.PI.over(30), false);
  public static final Unit HZ = unit("Hz", Dimension.FREQUENCY, "1");
  public static final Unit MM_PER_S2 = unit("mm/s2", Dimension.ACCELERATION, "1");
  public static final Unit M_PER_S2 = unit("m/s2", Dimension.ACCELERATION, "1000");

  public static final Unit T = unit("t", Dimension.MASS, "1");
  public static final Unit KG = unit("kg", Dimension.MASS, "0.001");
  public static final Unit G = unit("g", Dimension.MASS, "0.000001");
  public static final Unit LB = unit("lb", Dimension.MASS, "0.00045359237");
  public static final Unit KG_M2 = unit("kg m2", Dimension.INERTIA, "1000");
  public static final Unit KG_MM2 = unit("kg mm2", Dimension.INERTIA, "0.001");
  public static final Unit LB_IN2 =
      exact(
          "lb in2",
          Dimension.INERTIA,
          Ratio.of(new BigDecimal("0.00045359237")).times(Ratio.INCH).times(Ratio.INCH),
          false);
  public static final Unit KG_PER_M3 = unit("kg/m3", Dimension.DENSITY, "0.000000000001");
  public static final Unit G_PER_CM3 = unit("g/cm3", Dimension.DENSITY, "0.000000001");

  public static final Unit N = unit("N", Dimension.FORCE, "1");
  public static final Unit KN = unit("kN", Dimension.FORCE, "1000");
  public static final Unit LBF = unit("lbf", Dimension.FORCE, "4.4482216152605");
  public static final Unit NMM = unit("N mm", Dimension.MOMENT, "1");
  public static final Unit NM = unit("N m", Dimension.MOMENT, "1000");
  public static final Unit LBF_IN =
      exact(
          "lbf in",
          Dimension.MOMENT,
          Ratio.of(new BigDecimal("4.4482216152605")).times(Ratio.INCH),
          false);
  public static final Unit MPA = unit("MPa", Dimension.STRESS, "1");
  public static final Unit GPA = unit("GPa", Dimension.STRESS, "1000");
  public static final Unit PA = unit("Pa", Dimension.STRESS, "0.000001");
  public static final Unit BAR = unit("bar", Dimension.STRESS, "0.1");
  public static final Unit PSI =
      exact(
          "psi",
          Dimension.STRESS,
          Ratio.of(new BigDecimal("4.4482216152605")).over(Ratio.INCH.times(Ratio.INCH)),
          false);
  public static final Unit KSI = exact("ksi", Dimension.STRESS, PSI.factor.times(1000), false);
  public static final Unit N_PER_MM = unit("N/mm", Dimension.STIFFNESS, "1");
  public static final Unit N_PER_MICRON = unit("N/µm", Dimension.STIFFNESS, "1000");
  public static final Unit LBF_PER_IN =
      exact(
          "lbf/in",
          Dimension.STIFFNESS,
          Ratio.of(new BigDecimal("4.4482216152605")).over(Ratio.INCH),
          false);
  public static final Unit NMM_PER_RAD = unit("N mm/rad", Dimension.TILT_STIFFNESS, "1");
  public static final Unit NM_PER_RAD = unit("N m/rad", Dimension.TILT_STIFFNESS, "1000");
  public static final Unit N_PER_MM3 = unit("N/mm3", Dimension.JOINT_STIFFNESS, "1");
  public static final Unit MM_PER_N = unit("mm/N", Dimension.COMPLIANCE, "1");
  public static final Unit MICRON_PER_N = unit("µm/N", Dimension.COMPLIANCE, "0.001");
  public static final Unit NM_PER_N = unit("nm/N", Dimension.COMPLIANCE, "0.000001");
  public static final Unit RAD_PER_NMM = unit("rad/(N mm)", Dimension.TILT_COMPLIANCE, "1");
  public static final Unit W = unit("W", Dimension.POWER, "1000");
  public static final Unit KW = unit("kW", Dimension.POWER, "1000000");
  public static final Unit HP = unit("hp", Dimension.POWER, "745699.87158227022");
  public static final Unit J = unit("J", Dimension.ENERGY, "1000");
  public static final Unit K = unit("K", Dimension.TEMPERATURE, "1");
  public static final Unit PER_K = unit("1/K", Dimension.EXPANSION, "1");
  public static final Unit PPM_PER_K = unit("ppm/K", Dimension.EXPANSION, "0.000001");
  public static final Unit MM2_PER_S = unit("mm2/s", Dimension.VISCOSITY, "1");
  public static final Unit PER_MM = unit("1/mm", Dimension.CURVATURE, "1");
  public static final Unit A = unit("A", Dimension.CURRENT, "1");
  public static final Unit V = unit("V", Dimension.VOLTAGE, "1");
  public static final Unit OHM = unit("ohm", Dimension.RESISTANCE, "1");
  public static final Unit MICROFARAD = unit("µF", Dimension.CAPACITANCE, "0.000001");
  public static final Unit OHM_PER_KM = unit("ohm/km", Dimension.CONDUCTOR, "0.000001");
  public static final Unit MONEY = unit("money", Dimension.MONEY, "1");
  public static final Unit EUR = unit("EUR", Dimension.MONEY, "1");
  public static final Unit GBP = unit("GBP", Dimension.MONEY, "1");
  public static final Unit USD = unit("USD", Dimension.MONEY, "1");
  public static final Unit M2_PER_N = unit("m2/N", Dimension.WEAR, "1000000");
  public static final Unit W_PER_M2K = unit("W/(m2 K)", Dimension.HEAT_TRANSFER, "0.001");
  public static final Unit KG_PER_M = unit("kg/m", Dimension.LINE_MASS, "0.000001");
  public static final Unit MM3_PER_S = unit("mm3/s", Dimension.VOLUME_RATE, "1");
  public static final Unit CM3_PER_MIN =
      exact("cm3/min", Dimension.VOLUME_RATE, Ratio.of(1000, 60), false);
  public static final Unit IN3_PER_MIN =
      exact(
          "in3/min",
          Dimension.VOLUME_RATE,
          Ratio.INCH.times(Ratio.INCH).times(Ratio.INCH).over(60),
          false);
  public static final Unit IN_PER_MIN =
      exact("in/min", Dimension.SPEED, Ratio.INCH.over(60), false);
  public static final Unit FT_PER_MIN =
      exact("ft/min", Dimension.SPEED, Ratio.INCH.times(12).over(60), false);
  public static final Unit MILLION_REV = unit("million rev", Dimension.NUMBER, "1000000");
  public static final Unit J_PER_MM3 = unit("J/mm3", Dimension.STRESS, "1000");
  public static final Unit HP_MIN_PER_IN3 =
      exact(
          "hp min/in3",
          Dimension.STRESS,
          Ratio.of(new BigDecimal("745699.87158227022"))
              .times(60)
              .over(Ratio.INCH.times(Ratio.INCH).times(Ratio.INCH)),
          false);
  public static final Unit KIP = unit("kip", Dimension.FORCE, "4448.2216152605");
  public static final Unit IN4 =
      exact(
          "in4",
          Dimension.SECOND_MOMENT,
          Ratio.INCH.times(Ratio.INCH).times(Ratio.INCH).times(Ratio.INCH),
          false);
  public static final Unit N_PER_M = unit("N/m", Dimension.STIFFNESS, "0.001");
  public static final Unit PV = unit("MPa m/s", Dimension.PRESSURE_VELOCITY, "1000");
  public static final Unit PSI_FT_PER_MIN =
      exact(
          "psi ft/min",
          Dimension.PRESSURE_VELOCITY,
          PSI.factor.times(Ratio.INCH).times(12).over(60),
          false);
  public static final Unit MILLIPASCAL_S =
      unit("mPa s", Dimension.DYNAMIC_VISCOSITY, "0.000000001");
  public static final Unit PASCAL_S = unit("Pa s", Dimension.DYNAMIC_VISCOSITY, "0.000001");
  public static final Unit V_S_PER_RAD = unit("V s/rad", Dimension.MOTOR_CONSTANT, "1");
  public static final Unit V_S_PER_A_RAD = unit("V s/(A rad)", Dimension.SERIES_CONSTANT, "1");
  public static final Unit N_PER_MM15 = unit("N/mm1.5", Dimension.CONTACT_STIFFNESS, "1");
  public static final Unit W_PER_MK = unit("W/(m K)", Dimension.CONDUCTIVITY, "1");
  public static final Unit J_PER_KGK = unit("J/(kg K)", Dimension.HEAT_CAPACITY, "1000000");

  static {
    alias("um", MICRON);
    alias("μm", MICRON);
    alias("micron", MICRON);
    alias("inch", INCH);
    alias("\"", INCH);
    alias("mm²", MM2);
    alias("cm²", CM2);
    alias("m²", M2);
    alias("mm^2", MM2);
    alias("mm³", MM3);
    alias("mm^3", MM3);
    alias("°", DEG);
    alias("1/min", RPM);
    alias("r/min", RPM);
    alias("kg m²", KG_M2);
    alias("kg/m³", KG_PER_M3);
    alias("N·m", NM);
    alias("Nm", NM);
    alias("N·mm", NMM);
    alias("Nmm", NMM);
    alias("N/mm²", MPA);
    alias("N/mm2", MPA);
    alias("N/um", N_PER_MICRON);
    alias("um/N", MICRON_PER_N);
    alias("um/m", MICRON_PER_M);
    alias("uF", MICROFARAD);
    alias("Ω", OHM);
    alias("tooth", TEETH);
    alias("mm²/s", MM2_PER_S);
    alias("cSt", MM2_PER_S);
    alias("hours", H);
    alias("hour", H);
    alias("days", DAY);
    alias("lbf·in", LBF_IN);
    alias("W s/mm3", J_PER_MM3);
    alias("Mrev", MILLION_REV);
    alias("kN/mm", N_PER_MICRON);
  }

  private static Unit unit(String symbol, Dimension dimension, String decimal) {
    return exact(symbol, dimension, Ratio.of(new BigDecimal(decimal)), false);
  }

  private static Unit exact(String symbol, Dimension dimension, Ratio factor, boolean reciprocal) {
    Unit unit = new Unit(symbol, dimension, factor, reciprocal);
    ALL.put(symbol, unit);
    return unit;
  }

  private static void alias(String symbol, Unit unit) {
    ALL.put(symbol, unit);
  }

  /** Returns the unit written so, if there is one. */
  public static Optional<Unit> parse(String symbol) {
    return Optional.ofNullable(ALL.get(symbol));
  }

  /** Returns all units by every spelling, in the order they are listed. */
  public static Map<String, Unit> all() {
    return Map.copyOf(ALL);
  }

  /**
   * Reads a number in this unit.
   *
   * @param number number as written [this unit]
   * @return the same quantity [coherent]
   */
  public double toCoherent(double number) {
    return reciprocal ? factor.toDouble() / number : number * factor.toDouble();
  }

  /** Reads an exact number in this unit; refuses 0 for a reciprocal unit. */
  public Ratio toCoherent(Ratio number) {
    return reciprocal ? factor.over(number) : number.times(factor);
  }

  /**
   * Writes a quantity in this unit.
   *
   * @param coherent the quantity [coherent]
   * @return the number to write [this unit]
   */
  public double fromCoherent(double coherent) {
    double size = factor.toDouble();
    if (reciprocal) {
      return size / coherent;
    }
    return size < 1 ? coherent * factor.inverse().toDouble() : coherent / size;
  }

  /** Tells whether numbers in this unit are the coherent numbers. */
  public boolean isCoherent() {
    return !reciprocal && factor.equals(Ratio.ONE);
  }
}
