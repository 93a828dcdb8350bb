package fettle.mechanics.belts;

import fettle.mechanics.base.Source;

/** Where the formulas and tables of this room come from. */
public final class Sources {

  public static final Source GEOMETRY = Source.derived("tangents and arcs on two circles");
  public static final Source EULER =
      Source.memory("Euler's belt equation with centrifugal tension", "textbooks of mechanics");
  public static final Source SLIP = Source.practice("creep of friction belts, 0.5 to 2 percent");
  public static final Source STRING = Source.derived("string under tension");
  public static final Source V_BELTS =
      Source.memory("ISO 4183:1995, ISO 4184:1992", "datum diameters, lengths, grooves");
  public static final Source RIBBED =
      Source.page("ISO 9982:2021", "rib pitch; least diameters from memory");
  public static final Source TOOTHED =
      Source.memory("ISO 5296:2012, ISO 13050:2014", "pitch, pitch line, lengths");

  private Sources() {}
}
