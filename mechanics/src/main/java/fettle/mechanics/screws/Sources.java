package fettle.mechanics.screws;

import fettle.mechanics.base.Source;

/** Where the figures of this room come from. */
final class Sources {

  static final Source MOMENTS =
      Source.page(
          "Mott, Machine Elements in Mechanical Design, 4th ed.",
          "eq. 17-10 and 17-11, power screws");
  static final Source FRICTION =
      Source.page("Shigley's Mechanical Engineering Design", "Tables 8-5 and 8-6");
  static final Source NUT_PRESSURE =
      Source.memory("Shigley's Mechanical Engineering Design", "Table 8-4, after Ham and Ryan");
  static final Source WEAR = Source.memory("Archard 1953, wear law", "coefficients by order");
  static final Source BUCKLING =
      Source.memory("Shigley's Mechanical Engineering Design", "Euler and J. B. Johnson columns");
  static final Source WHIRLING =
      Source.derived("first bending frequency of a slender round bar on two supports");
  static final Source STIFFNESS = Source.derived("springs in series, Hooke's law of a bar");
  static final Source THREAD_STIFFNESS =
      Source.memory("VDI 2230:2003", "compliance of engaged thread and nut");
  static final Source PLAY = Source.derived("clearance at the pitch diameter seen along the axis");
  static final Source LEAD = Source.derived("lead error adds along the travel");
  static final Source BEAM = Source.memory("Roark's Formulas", "round beam, end displaced");
  static final Source HAND = Source.practice("effort at a handwheel");
  static final Source DIAL = Source.derived("lead divided by the value of a line");

  private Sources() {}
}
