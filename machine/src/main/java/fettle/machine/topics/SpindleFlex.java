package fettle.machine.topics;

import fettle.mechanics.loop.Compliance;
import fettle.mechanics.loop.Link;
import fettle.mechanics.shafts.Section;
import fettle.mechanics.shafts.ShaftMaterial;
import java.util.ArrayList;
import java.util.List;

/**
 * The spindle as elements of the loop: two bearings that carry a rigid shaft, and what the shaft
 * bends and shears between them and at the nose, statically determinate.
 */
final class SpindleFlex {

  /** Across the axis of a plain thrust collar or a ball bearing there is no better guess. */
  private static final double THRUST = 80_000;

  private static final double HELD = 1e12;
  private static final double FREE = 1;

  private SpindleFlex() {}

  /**
   * Returns bearings and shaft from one body to another.
   *
   * @param head the spindle in its bearings
   * @param nose face of the nose: x, y, z [mm]
   * @param from body that holds the bearings
   * @param to body at the nose
   */
  static List<Link> links(Headstock head, double[] nose, String from, String to) {
    double front = nose[2] - head.overhang();
    double rear = front - head.span();
    List<Link> links = new ArrayList<>();
    links.add(bearing("front bearing", head.front(), new double[] {nose[0], nose[1], front}, from));
    links.add(bearing("rear bearing", head.rear(), new double[] {nose[0], nose[1], rear}, from));
    links.add(Link.of("spindle", "spindle", to, nose, shaft(head), sigma(head.gives(0))));
    return links;
  }

  private static double sigma(List<fettle.mechanics.base.Term> gives) {
    return 1 + gives.get(0).doubt() / gives.get(0).value();
  }

  private static Link bearing(String name, Headstock.Support b, double[] at, String from) {
    double k = 1 / b.give().value();
    boolean front = name.startsWith("front");
    double[] springs = {
      k, k, front ? THRUST : FREE, b.tilt() + FREE, b.tilt() + FREE, front ? HELD : FREE
    };
    double share = b.give().doubt() / b.give().value();
    return Link.springs(name, from, "spindle", at, springs, 1 + share);
  }

  /**
   * Compliance of the shaft at its nose on rigid bearings: bending of span and overhang, and shear.
   */
  static Compliance shaft(Headstock head) {
    double l = head.span();
    double a = head.overhang();
    ShaftMaterial steel = ShaftMaterial.STEEL;
    Section body = Section.round(head.body(), head.bore(), steel.poisson());
    Section nose = Section.round(head.nose(), head.bore(), steel.poisson());
    double b1 = steel.modulus() * body.secondMoment();
    double b2 = steel.modulus() * nose.secondMoment();
    double g = steel.modulus() / (2 * (1 + steel.poisson()));
    double s1 = 1 / (g * body.area() * body.shear());
    double s2 = 1 / (g * nose.area() * nose.shear());
    double ff = a * a * l / (3 * b1) + a * a * a / (3 * b2) + a * s2 + a * a / l * s1;
    double fm = a * l / (3 * b1) + a * a / (2 * b2) + a / l * s1;
    double mm = l / (3 * b1) + a / b2 + s1 / l;
    double[][] c = new double[6][6];
    c[0][0] = ff;
    c[1][1] = ff;
    c[2][2] = a / (steel.modulus() * nose.area());
    c[3][3] = mm;
    c[4][4] = mm;
    c[5][5] = a / (2 * g * nose.secondMoment());
    c[0][4] = fm;
    c[4][0] = fm;
    c[1][3] = -fm;
    c[3][1] = -fm;
    return Compliance.of(c);
  }
}
