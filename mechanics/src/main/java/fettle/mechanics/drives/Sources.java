package fettle.mechanics.drives;

import fettle.mechanics.base.Source;

/** Where the formulas of this room come from. */
public final class Sources {

  public static final Source DIRECT_CURRENT =
      Source.memory("permanent-magnet motor", "textbooks of electrical machines");
  public static final Source SERIES =
      Source.memory("universal motor, linear magnetics", "textbooks of electrical machines");
  public static final Source KLOSS =
      Source.memory("Kloss's formula", "textbooks of electrical machines");
  public static final Source INVERTER = Source.practice("inverter drives of small motors");
  public static final Source CHAIN = Source.derived("product of the ratios");
  public static final Source ENERGY = Source.derived("equal kinetic energy at the reference shaft");
  public static final Source RUN_UP = Source.derived("J dw/dt = T");
  public static final Source RIM = Source.derived("v = pi D n, hoop stress rho v^2");
  public static final Source RIM_LIMIT =
      Source.practice("grey iron chucks 30 m/s, unmarked 25 m/s");
  public static final Source GRIP =
      Source.page("VDI 3106:2004", "gripping force; symbols as in chuck manuals");
  public static final Source HAND = Source.derived("work of one turn");
  public static final Source EFFICIENCY = Source.practice("efficiency of belts and gears");

  private Sources() {}
}
