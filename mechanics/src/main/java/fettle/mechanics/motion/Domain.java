package fettle.mechanics.motion;

import java.util.Arrays;
import java.util.List;

/**
 * The positions a machine can take: an interval for each of its axes.
 *
 * @param names names of the axes
 * @param low least position of each axis [mm or rad]
 * @param high greatest position of each axis [mm or rad]
 */
@SuppressWarnings("ArrayRecordComponent")
public record Domain(List<String> names, double[] low, double[] high) {

  /** Keeps its own copies. */
  public Domain {
    names = List.copyOf(names);
    low = low.clone();
    high = high.clone();
    if (low.length != names.size() || high.length != names.size()) {
      throw new IllegalArgumentException("each axis needs a least and a greatest position");
    }
    for (int i = 0; i < low.length; i++) {
      if (!(low[i] <= high[i] && low[i] >= -1e6 && high[i] <= 1e6)) {
        throw new IllegalArgumentException(
            names.get(i)
                + " must go from a lesser to a greater position within 1 000 000, found "
                + low[i]
                + " to "
                + high[i]);
      }
    }
  }

  /** Returns how many axes there are. */
  public int size() {
    return low.length;
  }

  /**
   * Returns the middle of every axis.
   *
   * @return positions [mm or rad]
   */
  public double[] middle() {
    double[] middle = new double[low.length];
    Arrays.setAll(middle, i -> (low[i] + high[i]) / 2);
    return middle;
  }

  /**
   * Returns this domain with another interval for one axis.
   *
   * @param axis number of the axis
   * @param from least position [mm or rad]
   * @param to greatest position [mm or rad]
   */
  public Domain with(int axis, double from, double to) {
    double[] l = low.clone();
    double[] h = high.clone();
    l[axis] = from;
    h[axis] = to;
    return new Domain(names, l, h);
  }

  /**
   * Returns the number of an axis.
   *
   * @throws IllegalArgumentException if there is no such axis
   */
  public int axis(String name) {
    int at = names.indexOf(name);
    if (at < 0) {
      throw new IllegalArgumentException(
          "there is no axis '" + name + "'; there are " + String.join(", ", names));
    }
    return at;
  }
}
