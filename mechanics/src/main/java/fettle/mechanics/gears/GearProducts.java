package fettle.mechanics.gears;

import java.util.Arrays;

/**
 * All ways to take so many wheels from a stock, grouped by the product of their teeth, products in
 * ascending order; within a group the ways with the fewest teeth in all come first.
 */
final class GearProducts {

  /** Products, ascending, each once. */
  final long[] product;

  /** First way of each group, and the end of the last. */
  final int[] start;

  /** Teeth of each way, ascending, {@code size} numbers a way. */
  final int[] teeth;

  /** Sum of the teeth of each way. */
  final int[] sum;

  /** Wheels taken. */
  final int size;

  private GearProducts(long[] product, int[] start, int[] teeth, int[] sum, int size) {
    this.product = product;
    this.start = start;
    this.teeth = teeth;
    this.sum = sum;
    this.size = size;
  }

  /**
   * Takes {@code size} wheels, 1 to 3, in every way.
   *
   * @param values distinct tooth numbers, ascending
   * @param counts how many of each the stock holds
   * @param size wheels to take
   */
  static GearProducts of(int[] values, int[] counts, int size) {
    int ways = 0;
    int n = values.length;
    int most = Math.toIntExact(power(n, size));
    long[] keys = new long[most];
    int[] flat = new int[most * size];
    for (int i = 0; i < n; i++) {
      if (size == 1) {
        flat[ways] = values[i];
        keys[ways] = key(values[i], values[i], ways++);
        continue;
      }
      for (int j = i; j < n; j++) {
        if (j == i && counts[i] < 2) {
          continue;
        }
        if (size == 2) {
          flat[2 * ways] = values[i];
          flat[2 * ways + 1] = values[j];
          keys[ways] = key((long) values[i] * values[j], values[i] + values[j], ways++);
          continue;
        }
        for (int k = j; k < n; k++) {
          int same = 1 + (k == j ? 1 : 0) + (k == j && j == i ? 1 : 0);
          if (same > counts[k] || (k == j && counts[k] < 2)) {
            continue;
          }
          flat[3 * ways] = values[i];
          flat[3 * ways + 1] = values[j];
          flat[3 * ways + 2] = values[k];
          keys[ways] =
              key(
                  (long) values[i] * values[j] * values[k],
                  values[i] + values[j] + values[k],
                  ways++);
        }
      }
    }
    return grouped(keys, flat, ways, size);
  }

  private static GearProducts grouped(long[] keys, int[] flat, int ways, int size) {
    long[] order = Arrays.copyOf(keys, ways);
    Arrays.sort(order);
    long[] product = new long[ways];
    int[] start = new int[ways + 1];
    int[] teeth = new int[ways * size];
    int[] sum = new int[ways];
    int groups = 0;
    for (int w = 0; w < ways; w++) {
      int way = (int) (order[w] & WAY_MASK);
      long p = 1;
      for (int i = 0; i < size; i++) {
        teeth[w * size + i] = flat[way * size + i];
        p *= flat[way * size + i];
        sum[w] += flat[way * size + i];
      }
      if (groups == 0 || product[groups - 1] != p) {
        start[groups] = w;
        product[groups++] = p;
      }
    }
    start[groups] = ways;
    return new GearProducts(
        Arrays.copyOf(product, groups), Arrays.copyOf(start, groups + 1), teeth, sum, size);
  }

  private static final int WAY_BITS = 20;
  private static final long WAY_MASK = (1L << WAY_BITS) - 1;

  /** Orders by product, then by sum, then by the teeth: 31 bits, 12 bits, 20 bits. */
  private static long key(long product, int sum, int way) {
    return (product << (12 + WAY_BITS)) | ((long) sum << WAY_BITS) | way;
  }

  private static long power(int n, int size) {
    return size == 1 ? n : size == 2 ? (long) n * (n + 1) / 2 : (long) n * (n + 1) * (n + 2) / 6;
  }
}
