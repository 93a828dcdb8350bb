package fettle.mechanics.base;

/** Kinds of quantity, each with its coherent unit in the system mm, N, s, rad, K, A. */
public enum Dimension {
  NUMBER("1"),
  LENGTH("mm"),
  AREA("mm2"),
  VOLUME("mm3"),
  SECOND_MOMENT("mm4"),
  ANGLE("rad"),
  TIME("s"),
  SPEED("mm/s"),
  ROTATION("rad/s"),
  FREQUENCY("Hz"),
  MASS("t"),
  INERTIA("t mm2"),
  DENSITY("t/mm3"),
  FORCE("N"),
  MOMENT("N mm"),
  STRESS("MPa"),
  SPECIFIC_FORCE("N/mm"),
  STIFFNESS("N/mm"),
  TILT_STIFFNESS("N mm/rad"),
  JOINT_STIFFNESS("N/mm3"),
  COMPLIANCE("mm/N"),
  TILT_COMPLIANCE("rad/(N mm)"),
  POWER("N mm/s"),
  ENERGY("N mm"),
  TEMPERATURE("K"),
  EXPANSION("1/K"),
  VISCOSITY("mm2/s"),
  CURVATURE("1/mm"),
  CURRENT("A"),
  VOLTAGE("V"),
  RESISTANCE("ohm"),
  CAPACITANCE("F"),
  SLOPE("1"),
  MONEY("money"),
  WEAR("mm2/N"),
  HEAT_TRANSFER("N/(mm s K)"),
  ACCELERATION("mm/s2"),
  CONDUCTOR("ohm/mm"),
  LINE_MASS("t/mm"),
  VOLUME_RATE("mm3/s"),
  PRESSURE_VELOCITY("MPa mm/s"),
  DYNAMIC_VISCOSITY("MPa s"),
  MOTOR_CONSTANT("V s/rad"),
  SERIES_CONSTANT("V s/(A rad)"),
  CONTACT_STIFFNESS("N/mm1.5"),
  CONDUCTIVITY("N/(s K)"),
  HEAT_CAPACITY("mm2/(s2 K)");

  private final String coherent;

  Dimension(String coherent) {
    this.coherent = coherent;
  }

  /** Returns the symbol of the coherent unit. */
  public String coherent() {
    return coherent;
  }
}
