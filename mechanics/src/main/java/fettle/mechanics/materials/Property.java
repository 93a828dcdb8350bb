package fettle.mechanics.materials;

import fettle.mechanics.base.Unit;

/** Properties of a material that the table holds, with the unit in which it states them. */
public enum Property {
  /** Modulus of elasticity. */
  E("modulus of elasticity"),
  /** Shear modulus. */
  G("shear modulus"),
  /** Poisson's ratio. */
  NU("Poisson's ratio"),
  /** Density. */
  RHO("density"),
  /** Thermal expansion near room temperature. */
  ALPHA("thermal expansion"),
  /** Yield or 0.2 % proof strength. */
  RE("yield or 0.2 % proof strength"),
  /** Tensile strength. */
  RM("tensile strength"),
  /** Brinell hardness. */
  HB("Brinell hardness"),
  /** Thermal conductivity. */
  LAMBDA("thermal conductivity"),
  /** Specific heat capacity. */
  CP("specific heat capacity"),
  /** Specific cutting force at 1 mm chip thickness. */
  KC11("specific cutting force kc1.1"),
  /** Exponent of the specific cutting force. */
  MC("exponent mc of the specific cutting force"),
  /** Greatest temperature in use. */
  TMAX("greatest temperature in use"),
  /** Growth by water taken up. */
  SWELLING("growth by water taken up");

  private final String words;

  Property(String words) {
    this.words = words;
  }

  /** Returns what the property is, in words. */
  public String words() {
    return words;
  }

  /** Returns the unit in which the table states it. */
  public Unit unit() {
    return switch (this) {
      case E, G -> Unit.GPA;
      case RE, RM, KC11 -> Unit.MPA;
      case RHO -> Unit.KG_PER_M3;
      case ALPHA -> Unit.PPM_PER_K;
      case LAMBDA -> Unit.W_PER_MK;
      case CP -> Unit.J_PER_KGK;
      case SWELLING -> Unit.PERCENT;
      case NU, HB, MC, TMAX -> Unit.ONE;
    };
  }

  /** Returns the letters that stand for the property. */
  public String symbol() {
    return switch (this) {
      case NU -> "nu";
      case RHO -> "rho";
      case ALPHA -> "alpha";
      case RE -> "Re";
      case RM -> "Rm";
      case LAMBDA -> "lambda";
      case CP -> "cp";
      case KC11 -> "kc11";
      case MC -> "mc";
      case TMAX -> "T_max";
      case SWELLING -> "swelling";
      case E, G, HB -> name();
    };
  }
}
