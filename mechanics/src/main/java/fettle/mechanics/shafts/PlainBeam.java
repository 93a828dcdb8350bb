package fettle.mechanics.shafts;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;

/**
 * A straight beam by itself, to test the elements on and to answer textbook questions.
 *
 * @see Sources#MODES
 */
public final class PlainBeam {

  /** How the ends of a beam are held. */
  public enum Ends {
    /** Both ends on supports. */
    SIMPLE,
    /** One clamped, one free. */
    CLAMPED_FREE,
    /** Both clamped. */
    CLAMPED,
    /** One clamped, one on a support. */
    CLAMPED_PINNED,
    /** Not held. */
    FREE
  }

  private PlainBeam() {}

  /**
   * Returns the natural frequencies of a beam made of elements.
   *
   * @param elements the elements from one end
   * @param ends how it is held
   * @param rotary 1 to count rotary inertia, 0 for a thin beam [-]
   * @return frequencies, lowest first [Hz]
   */
  public static double[] frequencies(
      java.util.List<BeamElement> elements, Ends ends, double rotary) {
    int n = 2 * (elements.size() + 1);
    DMatrixRMaj k = new DMatrixRMaj(n, n);
    DMatrixRMaj m = new DMatrixRMaj(n, n);
    for (int e = 0; e < elements.size(); e++) {
      double[] ke = elements.get(e).stiffness();
      double[] me = elements.get(e).mass();
      double[] re = elements.get(e).rotary();
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          k.add(2 * e + i, 2 * e + j, ke[4 * i + j]);
          m.add(2 * e + i, 2 * e + j, me[4 * i + j] + rotary * re[4 * i + j]);
        }
      }
    }
    int[] held =
        switch (ends) {
          case SIMPLE -> new int[] {0, n - 2};
          case CLAMPED_FREE -> new int[] {0, 1};
          case CLAMPED -> new int[] {0, 1, n - 2, n - 1};
          case CLAMPED_PINNED -> new int[] {0, 1, n - 2};
          case FREE -> new int[0];
        };
    int[] free =
        java.util.stream.IntStream.range(0, n)
            .filter(i -> Arrays.stream(held).noneMatch(h -> h == i))
            .toArray();
    double[] w = Modes.frequencies(part(k, free), part(m, free));
    return Arrays.stream(w).map(v -> v / (2 * Math.PI)).filter(f -> f > 1e-3).toArray();
  }

  private static DMatrixRMaj part(DMatrixRMaj whole, int[] keep) {
    DMatrixRMaj part = new DMatrixRMaj(keep.length, keep.length);
    for (int i = 0; i < keep.length; i++) {
      for (int j = 0; j < keep.length; j++) {
        part.set(i, j, whole.get(keep[i], keep[j]));
      }
    }
    return part;
  }

  /**
   * Returns the number {@code beta L} of a thin beam: the root of its frequency equation.
   *
   * @param ends how it is held
   * @param mode 1 for the lowest, up to 20
   * @return beta L [-]
   */
  public static double eigenvalue(Ends ends, int mode) {
    if (mode < 1 || mode > 20) {
      throw new IllegalArgumentException("mode: found " + mode + ", expected 1 to 20");
    }
    if (ends == Ends.SIMPLE) {
      return mode * Math.PI;
    }
    double middle =
        switch (ends) {
          case CLAMPED_FREE -> (mode - 0.5) * Math.PI;
          case CLAMPED_PINNED -> (mode + 0.25) * Math.PI;
          default -> (mode + 0.5) * Math.PI;
        };
    double low = middle - 0.5;
    double high = middle + 0.5;
    double atLow = equation(ends, low);
    for (int i = 0; i < 100; i++) {
      double x = 0.5 * (low + high);
      if (equation(ends, x) * atLow > 0) {
        low = x;
      } else {
        high = x;
      }
    }
    return 0.5 * (low + high);
  }

  private static double equation(Ends ends, double x) {
    return switch (ends) {
      case CLAMPED_FREE -> Math.cos(x) + 1 / Math.cosh(x);
      case CLAMPED_PINNED -> Math.tan(x) - Math.tanh(x);
      default -> Math.cos(x) - 1 / Math.cosh(x);
    };
  }

  /**
   * Returns the frequencies of an exact simply supported beam with shear and rotary inertia, lower
   * branch.
   *
   * @param element the beam as one element
   * @param mode 1 for the lowest
   * @return frequency [Hz]
   */
  public static double simpleExact(BeamElement element, int mode) {
    Section s = element.section();
    ShaftMaterial m = element.material();
    double shear = s.shear() * m.shearModulus();
    double l2 = Math.pow(mode * Math.PI / element.length(), 2);
    double rho = m.density();
    double a = rho * rho * s.secondMoment() / shear;
    double b = rho * s.area() + rho * s.secondMoment() * (1 + m.modulus() / shear) * l2;
    double c = m.modulus() * s.secondMoment() * l2 * l2;
    double square = a == 0 ? c / b : 2 * c / (b + Math.sqrt(Math.max(0, b * b - 4 * a * c)));
    return Math.sqrt(square) / (2 * Math.PI);
  }
}
