package fettle.mechanics.shafts;

import fettle.mechanics.base.Source;

/** Where the formulas of this room come from. */
public final class Sources {

  public static final Source BEAM =
      Source.memory(
          "Przemieniecki, Theory of Matrix Structural Analysis, 1968",
          "beam with shear deflection");
  public static final Source MASS =
      Source.memory(
          "Nelson, A finite rotating shaft element using Timoshenko beam theory, 1980",
          "consistent mass, rotary inertia, gyroscopic matrix");
  public static final Source COWPER =
      Source.memory(
          "Cowper, The shear coefficient in Timoshenko's beam theory, 1966", "hollow circle");
  public static final Source NOSE =
      Source.derived("overhanging beam on two springs, bending and shear");
  public static final Source SPAN = Source.derived("least nose give: derivative by the span is 0");
  public static final Source MODES =
      Source.memory("Blevins, Formulas for Natural Frequency and Mode Shape", "Table 8-1");
  public static final Source ROTOR = Source.memory("Stodola, Green", "overhung disc on a shaft");
  public static final Source RIGID_LINE =
      Source.derived("rigid line through two eccentric supports");
  public static final Source WORK = Source.derived("elastic line of a round bar");
  public static final Source GROWTH =
      Source.memory("linear thermal expansion", "steel 11.5, grey iron 10.5, aluminium 23 ppm/K");
  public static final Source PRACTICE = Source.practice("bench lathe spindles");

  private Sources() {}
}
