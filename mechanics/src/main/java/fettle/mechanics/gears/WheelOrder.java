package fettle.mechanics.gears;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The stock and the banjo: whether a pairing of drivers and driven wheels can be had, and the first
 * order, read as A, B, C, D ..., in which it fits.
 */
final class WheelOrder {

  private static final int[] NONE = {};

  /** By so much the quick refusals are milder than the rules of the banjo [mm]. */
  private static final double MILD = 1e-6;

  private final int[] values;
  private final int[] counts;
  private final double module;
  private final @Nullable Banjo banjo;

  private WheelOrder(int[] values, int[] counts, double module, @Nullable Banjo banjo) {
    this.values = values;
    this.counts = counts;
    this.module = module;
    this.banjo = banjo;
  }

  /**
   * Sorts a stock.
   *
   * @param stock teeth of every wheel
   * @param module module of the wheels [mm]
   * @param banjo the banjo; null if any train may be thought of as fitting
   */
  static WheelOrder of(List<Integer> stock, double module, @Nullable Banjo banjo) {
    int[] sorted = new int[stock.size()];
    for (int i = 0; i < sorted.length; i++) {
      sorted[i] = stock.get(i);
    }
    Arrays.sort(sorted);
    int[] values = new int[sorted.length];
    int[] counts = new int[sorted.length];
    int different = 0;
    for (int z : sorted) {
      if (different == 0 || values[different - 1] != z) {
        values[different++] = z;
      }
      counts[different - 1]++;
    }
    return new WheelOrder(
        Arrays.copyOf(values, different), Arrays.copyOf(counts, different), module, banjo);
  }

  /** Returns all products of so many wheels of the stock. */
  GearProducts products(int wheels) {
    return GearProducts.of(values, counts, wheels);
  }

  /** Tells whether no wheel is needed more often than it is there. */
  boolean inStock(GearProducts list, int i, int j) {
    int size = list.size;
    int[] t = list.teeth;
    int a = i * size;
    int b = j * size;
    while (a < (i + 1) * size && b < (j + 1) * size) {
      if (t[a] < t[b]) {
        a++;
      } else if (t[a] > t[b]) {
        b++;
      } else {
        int z = t[a];
        int used = 0;
        while (a < (i + 1) * size && t[a] == z) {
          used++;
          a++;
        }
        while (b < (j + 1) * size && t[b] == z) {
          used++;
          b++;
        }
        if (used > counts[Arrays.binarySearch(values, z)]) {
          return false;
        }
      }
    }
    return true;
  }

  /** Returns the wheels in the first order that fits; of a simple train A, D, idler; or nothing. */
  int[] first(GearProducts list, int i, int j) {
    int[] t = list.teeth;
    return switch (list.size) {
      case 1 -> simple(t[i], t[j]);
      case 2 -> compound(t, 2 * i, 2 * j);
      default -> six(t, 3 * i, 3 * j, list.sum[i] + list.sum[j]);
    };
  }

  /** Returns A, D, idler (0 if none is needed), or nothing. */
  private int[] simple(int a, int d) {
    if (banjo == null || banjo.fitsDirect(module, a, d)) {
      return new int[] {a, d, 0};
    }
    for (int v = 0; v < values.length; v++) {
      int left = counts[v] - (values[v] == a ? 1 : 0) - (values[v] == d ? 1 : 0);
      if (left > 0 && banjo.fitsSimple(module, a, values[v], d)) {
        return new int[] {a, d, values[v]};
      }
    }
    return NONE;
  }

  private int[] compound(int[] t, int i, int j) {
    for (int a = 0; a < 2; a++) {
      for (int b = 0; b < 2; b++) {
        int first = t[i + a];
        int second = t[j + b];
        int third = t[i + 1 - a];
        int fourth = t[j + 1 - b];
        if (banjo == null || banjo.fits(module, first, second, third, fourth)) {
          return new int[] {first, second, third, fourth};
        }
      }
    }
    return NONE;
  }

  private int[] six(int[] t, int d, int n, int total) {
    if (banjo == null) {
      return new int[] {t[d], t[n], t[d + 1], t[n + 1], t[d + 2], t[n + 2]};
    }
    if (module * total / 2 < banjo.axes() + banjo.margin() - MILD) {
      return NONE;
    }
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        double near = module * (t[d + a] + t[n + b]) / 2;
        double far = module * total / 2 - near;
        if (far > banjo.slotHigh() + MILD
            || Math.abs(near - far) > banjo.axes() - banjo.margin() + MILD) {
          continue;
        }
        int[] wheels = inner(t, d, a, n, b);
        if (wheels.length > 0) {
          return wheels;
        }
      }
    }
    return NONE;
  }

  private int[] inner(int[] t, int d, int a, int n, int b) {
    for (int c = 0; c < 3; c++) {
      if (c == a) {
        continue;
      }
      for (int e = 0; e < 3; e++) {
        if (e == b) {
          continue;
        }
        int w0 = t[d + a];
        int w1 = t[n + b];
        int w2 = t[d + c];
        int w3 = t[n + e];
        int w4 = t[d + 3 - a - c];
        int w5 = t[n + 3 - b - e];
        if (banjo == null || banjo.fitsSix(module, w0, w1, w2, w3, w4, w5)) {
          return new int[] {w0, w1, w2, w3, w4, w5};
        }
      }
    }
    return NONE;
  }
}
