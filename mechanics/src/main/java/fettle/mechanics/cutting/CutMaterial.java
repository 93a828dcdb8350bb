package fettle.mechanics.cutting;

/**
 * Specific cutting force of materials, and speeds to start from.
 *
 * @see Sources#MATERIALS
 */
public enum CutMaterial {
  S235("S235", 1780, .17, Group.MILD, Known.CHECKED),
  E295("E295", 1990, .26, Group.CARBON, Known.CHECKED),
  E335("E335", 2110, .17, Group.CARBON, Known.CHECKED),
  E360("E360", 2260, .30, Group.CARBON, Known.CHECKED),
  CASE_16MNCR5("16MnCr5", 2100, .26, Group.CARBON, Known.CHECKED),
  CASE_18CRNI8("18CrNi8", 2260, .30, Group.CARBON, Known.CHECKED),
  Q42CRMO4("42CrMo4", 2500, .26, Group.CARBON, Known.CHECKED),
  GE240("GE240", 1600, .17, Group.MILD, Known.CHECKED),
  GE260("GE260", 1780, .17, Group.MILD, Known.CHECKED),
  GJL150("EN-GJL-150", 950, .21, Group.IRON, Known.CHECKED),
  GJL250("EN-GJL-250", 1160, .26, Group.IRON, Known.CHECKED),
  C45("C45", 2220, .14, Group.CARBON, Known.RECALLED),
  C60("C60", 2130, .18, Group.CARBON, Known.RECALLED),
  Q34CRMO4("34CrMo4", 2240, .21, Group.CARBON, Known.RECALLED),
  Q50CRV4("50CrV4", 2220, .26, Group.CARBON, Known.RECALLED),
  X5CRNI("X5CrNi18-10", 2350, .21, Group.STAINLESS, Known.RECALLED),
  CUZN40PB2("CuZn40Pb2", 780, .18, Group.BRASS, Known.RECALLED),
  CUZN37("CuZn37", 1180, .15, Group.BRASS, Known.RECALLED),
  ALMGSI("AlMgSi", 460, .27, Group.ALUMINIUM, Known.RECALLED);

  /** Groups with one starting speed. */
  enum Group {
    MILD(25, 100),
    CARBON(20, 90),
    STAINLESS(12, 70),
    IRON(18, 70),
    BRASS(50, 150),
    ALUMINIUM(70, 250);

    private final double highSpeedSteel;
    private final double carbide;

    Group(double highSpeedSteel, double carbide) {
      this.highSpeedSteel = highSpeedSteel;
      this.carbide = carbide;
    }
  }

  /** How well a value is known. */
  enum Known {
    CHECKED,
    RECALLED
  }

  private final String mark;
  private final double unitForce;
  private final double exponent;
  private final Group group;
  private final Known known;

  CutMaterial(String mark, double unitForce, double exponent, Group group, Known known) {
    this.mark = mark;
    this.unitForce = unitForce;
    this.exponent = exponent;
    this.group = group;
    this.known = known;
  }

  /** Returns the material of a mark. */
  public static CutMaterial of(String mark) {
    for (CutMaterial m : values()) {
      if (m.mark.equals(mark)) {
        return m;
      }
    }
    throw new IllegalArgumentException(
        "material: found '" + mark + "', expected one of " + String.join(", ", marks()));
  }

  /** Returns all marks. */
  public static String[] marks() {
    return java.util.Arrays.stream(values()).map(CutMaterial::mark).toArray(String[]::new);
  }

  /** Returns the short name of the standard. */
  public String mark() {
    return mark;
  }

  /**
   * Returns kc1.1.
   *
   * @return specific cutting force of 1 mm by 1 mm [MPa]
   */
  public double unitForce() {
    return unitForce;
  }

  /**
   * Returns mc.
   *
   * @return exponent [-]
   */
  public double exponent() {
    return exponent;
  }

  /** Tells whether the values agree with a table that was seen. */
  public boolean isChecked() {
    return known == Known.CHECKED;
  }

  /**
   * Returns a cutting speed to start with.
   *
   * @param tool hss or carbide
   * @return vc [mm/s]
   * @see Sources#SPEEDS
   */
  public double startSpeed(String tool) {
    return (tool.equals("carbide") ? group.carbide : group.highSpeedSteel) * 1000 / 60;
  }
}
