package fettle.mechanics.fits;

import fettle.mechanics.base.Source;

/** Where the figures of this room come from. */
final class Sources {

  static final Source GRADES =
      Source.page("ISO 286-1:2010", "Table 1, checked against a table of h1 to h9 and js8 to js18");
  static final Source DEVIATIONS =
      Source.page(
          "ISO 286-1:2010",
          "Tables 2 to 5, checked against textbook tables a to zc and A to ZC; cd, ef, fg above 10 mm"
              + " and IT01, IT0 from memory");
  static final Source FORMULAS =
      Source.page("ISO 286-1:1988", "annex A, formulae and rounding of the deviations");
  static final Source FITS = Source.page("ISO 286-1:2010", "clause 5, definitions of clearance");
  static final Source BEARINGS =
      Source.memory("ISO 492:2014", "tables of normal class, class 6, class 5, class 4");
  static final Source SEATS =
      Source.practice(
          "the ring under a rotating load takes the tight fit; classes as in bearing handbooks");
  static final Source GENERAL =
      Source.page("ISO 2768-1:1989", "Tables 1 to 3; cells of class c below 6 mm from memory");
  static final Source PRESS =
      Source.memory("Lamé thick rings; DIN 7190-1:2017", "elastic design, smoothing 0.8 Rz");
  static final Source CHAINS =
      Source.derived("worst case, root sum of squares and random draws of a linear chain");
  static final Source BEAM = Source.derived("slender beam with one end held: F = 3 E I v/a^3");
  static final Source EXPANSION = Source.derived("linear thermal expansion");

  private Sources() {}
}
