package fettle.mechanics.stock;

import fettle.mechanics.base.Source;

/** Where the statements of this room come from. */
final class Sources {

  static final Source AREA = Source.derived("areas of round, hexagon, square and flat bar");
  static final Source BLANK =
      Source.practice("facing 1 mm an end, parting blade 2 to 3 mm, chucking stub 25 mm");
  static final Source STOCK = Source.practice("next size of the owner's list above the allowance");
  static final Source CUTTING_LIST =
      Source.practice("first fit decreasing; bandsaw kerf 1.2 mm, parting 2 to 3 mm");
  static final Source TIME =
      Source.derived("path over feed per minute, speed rounded down to one the machine has");
  static final Source CHIP =
      Source.derived("passes of equal chip area: depth grows with the root of the pass number");
  static final Source BEND =
      Source.practice("bend allowance with the neutral line at K of the thickness");
  static final Source RIM = Source.derived("circumference of the engraved diameter");
  static final Source LEAD = Source.derived("divisions = slide travel per turn / division");
  static final Source CONE = Source.derived("development of a cone into a ring sector");
  static final Source SENSE =
      Source.derived(
          "the mark that arrives at a fixed index after a clockwise turn lay left of it");
  static final Source SCALE =
      Source.practice("accept a print within 0.3 mm in 100; both bars must agree within 0.2 mm");
  static final Source HEAD =
      Source.derived("one turn of the crank turns the head by 1/ratio; holes make up the rest");
  static final Source KNURL = Source.derived("a whole number of teeth goes round the blank");
  static final Source THREAD_DEPTH =
      Source.memory("ISO 6410-1:1993", "blind hole depth, drawn as 1.25 times the thread length");
  static final Source VERNIER = Source.derived("n divisions laid over n - 1 or 2 n - 1 main ones");

  private Sources() {}
}
