package fettle.mechanics.bearings;

import fettle.mechanics.base.Source;

/** Where the formulas and tables of this room come from. */
public final class Sources {

  public static final Source BOUNDARY =
      Source.memory("ISO 15:2017, ISO 104:2015, ISO 355:2019", "dimension series");
  public static final Source DESIGNATION = Source.memory("DIN 623-1:2020", "bore and series code");
  public static final Source DYNAMIC = Source.memory("ISO 281:2007", "clauses 5 to 8");
  public static final Source DYNAMIC_FACTORS = Source.memory("ISO 281:2007", "Tables 2, 4, 7, 10");
  public static final Source DYNAMIC_DERIVED = Source.memory("ISO/TR 1281-1:2008", "clauses 4, 5");
  public static final Source STATIC = Source.memory("ISO 76:2006", "clauses 5 to 8");
  public static final Source STATIC_FACTORS = Source.memory("ISO 76:2006", "Table 1");
  public static final Source STATIC_LOAD = Source.memory("ISO 76:2006", "Tables 2 and 3");
  public static final Source EQUIVALENT = Source.memory("ISO 281:2007", "Tables 3, 5, 8");
  public static final Source LIFE = Source.memory("ISO 281:2007", "clauses 5 to 9");
  public static final Source INDUCED =
      Source.memory("rolling bearing handbooks", "paired single bearings without preload");
  public static final Source MEAN_LOAD =
      Source.derived("linear damage sum over the revolutions at each load");
  public static final Source WEIBULL =
      Source.memory("machine design textbooks", "three-parameter life distribution");
  public static final Source ESTIMATE =
      Source.practice("usual internal geometry of ball bearings, filled eccentrically");
  public static final Source HERTZ =
      Source.memory("Harris, Rolling Bearing Analysis", "Hertz contact, complete integrals");
  public static final Source PALMGREN_LINE =
      Source.memory("Palmgren, Ball and Roller Bearing Engineering", "line contact");
  public static final Source MODEL =
      Source.memory(
          "Jones, A general theory for elastically constrained ball and roller bearings, 1960",
          "without inertia of the balls; as in Harris, Rolling Bearing Analysis");
  public static final Source SJOVALL =
      Source.memory("Harris, Rolling Bearing Analysis", "radial load distribution integral");
  public static final Source FRICTION =
      Source.memory("Palmgren, Ball and Roller Bearing Engineering", "M0 and M1; as in Harris");
  public static final Source SPEED_GUIDE = Source.practice("grease speed guide n dm");
  public static final Source FITS =
      Source.memory("Harris, Rolling Bearing Analysis", "interference fits, thick rings");
  public static final Source CLEARANCE =
      Source.page("ISO 5753-1:2009", "deep groove ball bearings");
  public static final Source SEATS = Source.memory("ISO 286-2:2010", "Tables of limit deviations");
  public static final Source RING_ACCURACY = Source.memory("ISO 492:2014", "Tables 1 to 5");
  public static final Source GROWTH =
      Source.derived("thermal growth of spacers and raceways, projected on the contact angle");
  public static final Source SHORT_BEARING =
      Source.memory("Ocvirk and DuBois, NACA Report 1157, 1953", "short journal bearing");
  public static final Source BUSH_LIMITS = Source.practice("grease and oil bushes in bench lathes");
  public static final Source SERIES_SPRINGS = Source.derived("springs in series: give adds");

  private Sources() {}
}
