package fettle.mechanics.loop;

import fettle.mechanics.base.Source;

/** Where the formulas of this room come from. */
final class Sources {

  static final Source ITO_NORMAL =
      Source.page(
          "Ito, Modular Design for Machine Tools (2008)",
          "eq. 5-3, Table 6-2, after Back, from Levina and Ostrovskii; to 2.45 MPa, cast iron");
  static final Source ITO_TANGENTIAL =
      Source.page("Ito, Modular Design for Machine Tools (2008)", "Table 6-10");
  static final Source LEVINA =
      Source.page(
          "Ito, Modular Design for Machine Tools (2008)", "Table 6-7, slideways after Levina");
  static final Source SHIGLEY =
      Source.memory("Shigley (Budynas), Mechanical Engineering Design", "eq. 8-20");
  static final Source VDI = Source.memory("VDI 2230-1:2015", "substitutional cone angle");
  static final Source WAYS = Source.derived("springs per area over the pads of two ways");
  static final Source CHAIN = Source.derived("virtual work: C' = T C T^T, K = S^T C^-1 S");
  static final Source PROFILE = Source.derived("springs of centres and tool and bar theory");
  static final Source LEVEL = Source.derived("small rotation about the bed axis");
  static final Source OSCILLATOR =
      Source.memory("Tlusty, Manufacturing Processes and Equipment (2000)", "chatter, one mode");
  static final Source LEAST_SQUARES =
      Source.memory("Gelb, Applied Optimal Estimation (1974)", "linear update with a prior");
  static final Source SPINDLE = Source.derived("shaft on two springs, force at the overhang");
  static final Source TWIN_WALL =
      Source.derived("twist of two walls and their bending against each other");
  static final Source PRACTICE = Source.practice("bench-lathe gibs and screws");

  private Sources() {}
}
