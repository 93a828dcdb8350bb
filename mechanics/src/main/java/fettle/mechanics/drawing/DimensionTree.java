package fettle.mechanics.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Completeness of the dimensions along one direction: planes and axes are nodes, dimensions and
 * facts that need none (symmetry, a common face) are edges. Neither too few nor too many exactly if
 * the edges form a spanning tree. Counting alone proves nothing.
 */
public final class DimensionTree {

  private final List<Integer> parent = new ArrayList<>();
  private int components;
  private int redundant;

  /** Adds a node and returns its number. */
  public int node() {
    parent.add(parent.size());
    components++;
    return parent.size() - 1;
  }

  /** Adds an edge; tells whether it joined what was not joined before. */
  public boolean join(int a, int b) {
    int p = root(a);
    int q = root(b);
    if (p == q) {
      redundant++;
      return false;
    }
    parent.set(p, q);
    components--;
    return true;
  }

  /** Tells whether two nodes hang together already. */
  public boolean joined(int a, int b) {
    return root(a) == root(b);
  }

  /** Returns how many dimensions are missing. */
  public int missing() {
    return Math.max(0, components - 1);
  }

  /** Returns how many dimensions are too many. */
  public int redundant() {
    return redundant;
  }

  private int root(int node) {
    int at = node;
    while (parent.get(at) != at) {
      parent.set(at, parent.get(parent.get(at)));
      at = parent.get(at);
    }
    return at;
  }
}
