package fettle.mechanics.joints;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts clamped under a bolt: layers from head to nut. The pressure spreads from both ends in cones
 * of 30 degrees half angle that meet at the middle of the stack.
 *
 * @param layers the layers from the head on
 */
public record ClampedStack(List<Layer> layers) {

  private static final double TAN = Math.tan(Math.PI / 6);

  /**
   * One layer.
   *
   * @param thickness thickness [mm]
   * @param modulus Young's modulus [MPa]
   */
  public record Layer(double thickness, double modulus) {

    /** Refuses thickness or modulus that are not above 0. */
    public Layer {
      if (!(thickness > 0) || !(modulus > 0) || !Double.isFinite(thickness * modulus)) {
        throw new IllegalArgumentException(
            "layer " + thickness + " mm, E " + modulus + " MPa: both must be above 0");
      }
    }
  }

  /** Refuses an empty stack. */
  public ClampedStack {
    layers = List.copyOf(layers);
    if (layers.isEmpty() || layers.size() > 100) {
      throw new IllegalArgumentException(
          "a clamped stack needs 1 to 100 layers, found " + layers.size());
    }
  }

  /**
   * Returns the grip.
   *
   * @return thickness of all layers [mm]
   */
  public double grip() {
    return layers.stream().mapToDouble(Layer::thickness).sum();
  }

  /**
   * Stiffness of the whole stack, its cones in series.
   *
   * @param hole diameter the cones are bored with; the nominal diameter in Shigley [mm]
   * @param face diameter the cones start from, bearing face of the head; 1.5 d in Shigley [mm]
   * @return stiffness [N/mm]
   */
  public double stiffness(double hole, double face) {
    if (!(hole > 0) || !(face > hole)) {
      throw new IllegalArgumentException(
          "bearing face " + face + " mm: must be above the hole, " + hole + " mm");
    }
    double compliance = 0;
    for (Cone cone : cones()) {
      double start = face + 2 * TAN * cone.from();
      compliance += 1 / frustum(cone.layer().modulus(), hole, start, cone.layer().thickness());
    }
    return 1 / compliance;
  }

  /**
   * Stiffness of one hollow cone of 30 degrees: pi E d tan30/ln((2 t tan30 + D - d)(D + d)/((2 t
   * tan30 + D + d)(D - d))).
   *
   * @param modulus Young's modulus [MPa]
   * @param hole bore d [mm]
   * @param start smaller outside diameter D [mm]
   * @param thickness length t of the cone [mm]
   * @return stiffness [N/mm]
   */
  public static double frustum(double modulus, double hole, double start, double thickness) {
    double end = 2 * TAN * thickness + start;
    double ratio = (end - hole) * (start + hole) / ((end + hole) * (start - hole));
    return Math.PI * modulus * hole * TAN / Math.log(ratio);
  }

  /** A piece of a layer on one side of the middle, and how far from its end its cone starts. */
  private record Cone(Layer layer, double from) {}

  private List<Cone> cones() {
    double middle = grip() / 2;
    List<Cone> cones = new ArrayList<>();
    double top = 0;
    for (Layer layer : layers) {
      double bottom = top + layer.thickness();
      double upper = Math.min(bottom, middle) - top;
      if (upper > 1e-12 * middle) {
        cones.add(new Cone(new Layer(upper, layer.modulus()), top));
      }
      double lower = bottom - Math.max(top, middle);
      if (lower > 1e-12 * middle) {
        cones.add(new Cone(new Layer(lower, layer.modulus()), Math.max(0, 2 * middle - bottom)));
      }
      top = bottom;
    }
    return cones;
  }
}
