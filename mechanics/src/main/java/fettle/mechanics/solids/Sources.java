package fettle.mechanics.solids;

import fettle.mechanics.base.Source;

/** Where the formulas of this room come from. */
final class Sources {

  static final Source BEAM =
      Source.memory("Timoshenko, Strength of Materials", "deflection of beams");
  static final Source COWPER =
      Source.memory("Cowper 1966, J. Appl. Mech. 33, 335-340", "shear coefficients");
  static final Source TORSION =
      Source.memory("Timoshenko & Goodier, Theory of Elasticity", "torsion of rectangular bars");
  static final Source BREDT =
      Source.memory("Timoshenko & Goodier, Theory of Elasticity", "torsion of thin tubes (Bredt)");
  static final Source PLATE =
      Source.memory(
          "Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells", "circular plates");
  static final Source LAME =
      Source.memory("Timoshenko & Goodier, Theory of Elasticity", "thick-walled cylinder (Lamé)");
  static final Source KIRSCH =
      Source.memory("Kirsch 1898; Heywood's fit for finite width", "plate with a round hole");
  static final Source PUNCH =
      Source.memory("Johnson, Contact Mechanics (1985)", "chapter 3; Mindlin; Reissner & Sagoci");
  static final Source COOK =
      Source.memory(
          "Cook, Malkus, Plesha, Concepts and Applications of Finite Element Analysis",
          "parasitic shear of the bilinear element");
  static final Source FOUNDATION =
      Source.memory("Hetenyi, Beams on Elastic Foundation (1946)", "infinite and finite beams");
  static final Source ROACHE =
      Source.memory(
          "Celik et al. 2008, J. Fluids Eng. 130, 078001", "grid convergence index, after Roache");
  static final Source HOOKE = Source.derived("isotropic linear elasticity");
  static final Source TAYLOR =
      Source.memory(
          "Taylor, Beresford, Wilson 1976, Int. J. Numer. Meth. Eng. 10, 1211-1219",
          "incompatible modes");

  private Sources() {}
}
