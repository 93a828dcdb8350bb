package fettle.mechanics.joints;

import fettle.mechanics.base.Source;

/** Where the figures of this room come from. */
final class Sources {

  static final Source VDI =
      Source.page(
          "VDI 2230-1:2003", "assembly preload and tightening torque, tables of fine threads");
  static final Source SHIGLEY_K =
      Source.memory("Shigley's Mechanical Engineering Design", "section 8-8, F = T/(K d)");
  static final Source SHIGLEY_STIFFNESS =
      Source.memory(
          "Shigley's Mechanical Engineering Design",
          "section 8-5, frusta of 30 degrees half angle");
  static final Source SHIGLEY_JOINT =
      Source.memory(
          "Shigley's Mechanical Engineering Design", "section 8-7, loaded tension joints");
  static final Source HEADS =
      Source.memory("ISO 4017, ISO 273 medium, ISO 898-1", "bearing face, hole, proof values");
  static final Source ENGAGEMENT = Source.practice("thread engagement in soft materials");
  static final Source BEARING =
      Source.memory("VDI 2230-1", "limiting pressure under the head, rounded down");
  static final Source KEYS =
      Source.page("DIN 6885-1, ISO 773", "sections to 44 mm; larger shafts from memory");
  static final Source KEY_LOAD =
      Source.memory("parallel key side pressure", "limits of machine-element textbooks");
  static final Source PINS = Source.derived("double shear and bearing of a pin across a shaft");
  static final Source TORSION = Source.derived("torsion of a round shaft");
  static final Source SET_SCREWS =
      Source.practice("set-screw hold as friction of the tightened point; published loads scatter");
  static final Source KNURL = Source.practice("blank diameter that takes whole knurl pitches");

  private Sources() {}
}
