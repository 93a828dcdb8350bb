package fettle.mechanics.gears;

/** Gear materials with first-estimate allowable bending stresses for the Lewis formula. */
public enum GearMaterial {
  MILD_STEEL("mild steel", 138, "Lewis static allowables, design texts, from memory"),
  GREY_IRON("grey iron", 55, "Lewis static allowables, design texts, from memory"),
  BRONZE("bronze", 83, "Lewis static allowables, design texts, from memory"),
  BRASS("brass", 60, "common practice"),
  ACETAL("acetal", 34, "Machinery's Handbook, plastic gearing, from memory; room temperature"),
  NYLON("nylon", 41, "Machinery's Handbook, plastic gearing, from memory; dry, room temperature"),
  ZINC("die-cast zinc", 40, "common practice; creeps, brittle when cold");

  private final String label;
  private final double allowable;
  private final String basis;

  GearMaterial(String label, double allowable, String basis) {
    this.label = label;
    this.allowable = allowable;
    this.basis = basis;
  }

  /** Returns the trade's name. */
  public String label() {
    return label;
  }

  /**
   * Returns the allowable bending stress for the Lewis formula.
   *
   * @return allowable stress [MPa]
   */
  public double allowable() {
    return allowable;
  }

  /** Returns where the figure comes from. */
  public String basis() {
    return basis;
  }

  /** Tells whether the material is a plastic, which acts as the fuse of a train. */
  public boolean plastic() {
    return this == ACETAL || this == NYLON;
  }

  /** Steels and irons of ISO 6336-5, quality MQ. */
  public enum Quality {
    NORMALISED_STEEL(0.455, 69),
    CAST_STEEL(0.313, 62),
    NODULAR_IRON(0.350, 119),
    GREY_CAST_IRON(0.256, 8);

    private final double slope;
    private final double offset;

    Quality(double slope, double offset) {
      this.slope = slope;
      this.offset = offset;
    }

    /**
     * Returns the nominal bending limit σ_Flim = A HB + B.
     *
     * @param hardness Brinell hardness [-]
     * @return bending limit [MPa]
     */
    public double bendingLimit(double hardness) {
      if (!(hardness >= 80 && hardness <= 350)) {
        throw new IllegalArgumentException(
            "hardness [HB] must be 80 to 350 for these lines, found " + hardness);
      }
      return slope * hardness + offset;
    }
  }
}
