package fettle.mechanics.materials;

import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Source;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A material by its standard designation, with what the table knows of it.
 *
 * @param designation name in the standard's words
 * @param family group it belongs to
 * @param otherNames names by which it is also known
 * @param properties known properties
 */
public record Material(
    String designation,
    Family family,
    List<String> otherNames,
    Map<Property, Quantity> properties) {

  /** Groups of materials that behave alike. */
  public enum Family {
    STEEL("steel"),
    GREY_IRON("grey cast iron"),
    DUCTILE_IRON("ductile cast iron"),
    BRASS("brass"),
    BRONZE("bronze"),
    ALUMINIUM("aluminium"),
    ZINC("zinc"),
    PLASTIC("plastic");

    private final String words;

    Family(String words) {
      this.words = words;
    }

    /** Returns the group in words. */
    public String words() {
      return words;
    }
  }

  /** Keeps its own copies. */
  public Material {
    otherNames = List.copyOf(otherNames);
    properties =
        properties.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(properties));
  }

  /**
   * Returns a property; the shear modulus is {@code E/(2 (1 + nu))} where none is listed.
   *
   * @throws IllegalArgumentException if it is not known of this material
   */
  public Quantity quantity(Property property) {
    Quantity listed = properties.get(property);
    if (listed != null) {
      return listed;
    }
    if (property == Property.G) {
      return shear();
    }
    throw new IllegalArgumentException(
        "material "
            + designation
            + " has no listed "
            + property.words()
            + "; known are "
            + String.join(", ", properties.keySet().stream().map(Property::symbol).toList()));
  }

  /** Tells whether a property is known. */
  public boolean knows(Property property) {
    return properties.containsKey(property) || (property == Property.G && shearFollows());
  }

  /**
   * Modulus of elasticity.
   *
   * @return E [MPa]
   */
  public double elasticity() {
    return quantity(Property.E).value();
  }

  /**
   * Shear modulus.
   *
   * @return G [MPa]
   */
  public double shearModulus() {
    return quantity(Property.G).value();
  }

  /**
   * Poisson's ratio.
   *
   * @return nu [-]
   */
  public double poisson() {
    return quantity(Property.NU).value();
  }

  /**
   * Density.
   *
   * @return rho [t/mm3]
   */
  public double density() {
    return quantity(Property.RHO).value();
  }

  /**
   * Thermal expansion.
   *
   * @return alpha [1/K]
   */
  public double expansion() {
    return quantity(Property.ALPHA).value();
  }

  /**
   * Yield or proof strength; cast iron has none.
   *
   * @return Re [MPa]
   */
  public double yieldStrength() {
    return quantity(Property.RE).value();
  }

  /**
   * Tensile strength.
   *
   * @return Rm [MPa]
   */
  public double strength() {
    return quantity(Property.RM).value();
  }

  /**
   * Thermal conductivity.
   *
   * @return lambda [N/(s K)]
   */
  public double conductivity() {
    return quantity(Property.LAMBDA).value();
  }

  private boolean shearFollows() {
    return properties.containsKey(Property.E) && properties.containsKey(Property.NU);
  }

  private Quantity shear() {
    Quantity e = quantity(Property.E);
    double nu = poisson();
    double factor = 1 / (2 * (1 + nu));
    return new Quantity(
        e.value() * factor,
        new Interval(e.scatter().low() * factor, e.scatter().high() * factor),
        Source.derived("G = E/(2 (1 + nu))"));
  }
}
