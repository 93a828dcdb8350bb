package fettle.mechanics.solids;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** Area, middle and second moments of the spots of a patch. */
final class Area {

  private final double area;
  private final double[] middle;
  private final double[][] inertia;

  private Area(double area, double[] middle, double[][] inertia) {
    this.area = area;
    this.middle = middle;
    this.inertia = inertia;
  }

  static Area of(List<Patch.Spot> spots) {
    double area = 0;
    double[] m = new double[3];
    for (Patch.Spot s : spots) {
      area += s.area();
      m[0] += s.area() * s.x();
      m[1] += s.area() * s.y();
      m[2] += s.area() * s.z();
    }
    if (!(area > 0)) {
      throw new IllegalArgumentException("patch: it covers no area of the grid");
    }
    for (int a = 0; a < 3; a++) {
      m[a] /= area;
    }
    double[][] j = new double[3][3];
    for (Patch.Spot s : spots) {
      double[] r = {s.x() - m[0], s.y() - m[1], s.z() - m[2]};
      double square = r[0] * r[0] + r[1] * r[1] + r[2] * r[2];
      for (int a = 0; a < 3; a++) {
        for (int b = 0; b < 3; b++) {
          j[a][b] += s.area() * ((a == b ? square : 0) - r[a] * r[b]);
        }
      }
    }
    return new Area(area, m, j);
  }

  double area() {
    return area;
  }

  double[] middle() {
    return middle;
  }

  /** Returns {@code J^-1 M}, the slope of the traction that has the moment of a wrench. */
  double[] spin(double[] wrench) {
    if (wrench[3] == 0 && wrench[4] == 0 && wrench[5] == 0) {
      return new double[3];
    }
    DMatrixRMaj j = new DMatrixRMaj(inertia);
    if (!CommonOps_DDRM.invert(j)) {
      throw new IllegalArgumentException("patch: it cannot take a moment");
    }
    double[] s = new double[3];
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        s[a] += j.get(a, b) * wrench[3 + b];
      }
    }
    return s;
  }
}
