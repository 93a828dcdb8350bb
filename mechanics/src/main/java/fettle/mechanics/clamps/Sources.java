package fettle.mechanics.clamps;

import fettle.mechanics.base.Source;

/** Where the figures of this room come from. */
final class Sources {

  static final Source FRICTION =
      Source.derived("balance of dry friction on plane and inclined faces");
  static final Source TIPPING = Source.derived("moments about the tipping edge");
  static final Source CAM =
      Source.derived("moments about the pin of an eccentric on a flat face, both frictions");
  static final Source DRAW = Source.derived("moments about an eccentric shaft in its bores");
  static final Source DRILL =
      Source.memory("drill thrust 0.63 kc f d/2 sin 59°", "cutting-force textbooks");
  static final Source SLOT =
      Source.derived("bearing, shear and bending of the two lips of a T-slot");
  static final Source GIB = Source.derived("normals of a dovetail pushed sideways by its gib");
  static final Source CONE = Source.derived("axial balance of a cone with friction");
  static final Source SPLIT =
      Source.derived("pinched ring: two lines of contact, or uniform pressure");
  static final Source CONTACT =
      Source.memory("Hertz line contact", "machine-element textbooks, roller on flat");
  static final Source SET_OVER = Source.derived("similar triangles of work between centres");
  static final Source PRACTICE = Source.practice("custom of the trade");

  private Sources() {}
}
