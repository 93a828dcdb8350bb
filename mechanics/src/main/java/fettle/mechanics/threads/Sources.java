package fettle.mechanics.threads;

import fettle.mechanics.base.Source;

/** Where the figures of this room come from. */
final class Sources {

  static final Source ISO_965 =
      Source.page("ISO 965-1:2013", "formulas for tolerances; Tables 1-5");
  static final Source ISO_261 = Source.memory("ISO 261:1998", "general plan");
  static final Source ISO_898 = Source.page("ISO 898-1:2013", "nominal stress area");
  static final Source ISO_2902 = Source.page("ISO 2902:2016", "general plan");
  static final Source ISO_2903 = Source.page("ISO 2903:2016", "tolerances");
  static final Source ASME_B15 =
      Source.page("Machinery's Handbook, 27th ed.", "Acme threads, classes 2G 3G 4G (ASME B1.5)");
  static final Source ASME_B11 =
      Source.page(
          "Machinery's Handbook, 31st ed.", "Unified threads, tolerance formulas (ASME B1.1)");
  static final Source BS_84 = Source.memory("BS 84:2007", "Annex B, bases of tolerances");
  static final Source WIRES =
      Source.page("Machinery's Handbook, 31st ed.", "pp. 2135-2136, measurement over wires");
  static final Source WIRE_CONTACT =
      Source.derived("contact of a wire with both flanks of the helicoid, exact in the lead angle");
  static final Source ENDS =
      Source.page("GB/T 3-1997 (stated equivalent to ISO 3508 and ISO 4755)", "Tables 1-4");
  static final Source TAPPING = Source.practice("tapping and boring sizes of the small shop");
  static final Source INFEED = Source.derived("equal area of chip, pass by pass");
  static final Source INDEXING = Source.derived("equal division of the lead by the starts");

  private Sources() {}
}
