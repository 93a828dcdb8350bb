package fettle.sheets.dimension;

import fettle.mechanics.drawing.DimensionTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Keeps the books of a part's dimensions: places along each axis joined by dimensions, and sizes
 * each printed once.
 */
public final class Scheme {

  private static final class Axis {
    final DimensionTree tree = new DimensionTree();
    final Map<Long, Integer> nodes = new TreeMap<>();

    int node(double at) {
      return nodes.computeIfAbsent(Math.round(at * 1e5), k -> tree.node());
    }
  }

  private final Map<String, Axis> axes = new LinkedHashMap<>();
  private final Map<String, Integer> sizes = new LinkedHashMap<>();

  private Axis axis(String name) {
    return axes.computeIfAbsent(name, k -> new Axis());
  }

  /** Notes a plane or axis that must be placed. */
  public void place(String axis, double at) {
    axis(axis).node(at);
  }

  /**
   * Tells whether no place lies within a stretch of an axis.
   *
   * @param axis the axis
   * @param low start of the stretch [mm]
   * @param high end of the stretch [mm]
   */
  public boolean clear(String axis, double low, double high) {
    return axis(axis).nodes.keySet().stream().noneMatch(n -> n * 1e-5 > low && n * 1e-5 < high);
  }

  /** Joins two places unless they hang together already; tells whether a dimension is due. */
  public boolean join(String axis, double a, double b) {
    Axis x = axis(axis);
    int p = x.node(a);
    int q = x.node(b);
    return !x.tree.joined(p, q) && x.tree.join(p, q);
  }

  /** Notes a size that must be printed. */
  public void required(String size) {
    sizes.merge(size, 0, Integer::sum);
  }

  /** Notes a size that has been printed. */
  public void printed(String size) {
    sizes.merge(size, 1, Integer::sum);
  }

  /** Returns what is missing or too much, in words. */
  public List<String> faults() {
    List<String> out = new ArrayList<>();
    axes.forEach(
        (name, axis) -> {
          if (axis.tree.missing() > 0) {
            out.add(axis.tree.missing() + " dimension(s) missing along " + name);
          }
          if (axis.tree.redundant() > 0) {
            out.add(axis.tree.redundant() + " dimension(s) too many along " + name);
          }
        });
    sizes.forEach(
        (size, count) -> {
          if (count != 1) {
            out.add("'" + size + "' stands on the sheet " + count + " times instead of once");
          }
        });
    return out;
  }
}
