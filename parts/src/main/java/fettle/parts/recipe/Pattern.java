package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.List;

/** Where equal features stand on a face, in the two coordinates of the face. */
public sealed interface Pattern {

  /**
   * One place.
   *
   * @param u first coordinate [mm]
   * @param v second coordinate [mm]
   */
  record At(double u, double v) implements Pattern {}

  /**
   * Named places, each its own.
   *
   * @param places the places
   */
  record Places(List<At> places) implements Pattern {
    /** Keeps its own copy. */
    public Places {
      places = List.copyOf(places);
    }
  }

  /**
   * Rows and columns.
   *
   * @param u first coordinate of the first place [mm]
   * @param v second coordinate of the first place [mm]
   * @param columns places along u
   * @param rows places along v
   * @param stepU distance of columns [mm]
   * @param stepV distance of rows [mm]
   */
  record Grid(double u, double v, int columns, int rows, double stepU, double stepV)
      implements Pattern {}

  /**
   * A bolt circle.
   *
   * @param u first coordinate of the centre [mm]
   * @param v second coordinate of the centre [mm]
   * @param diameter diameter of the circle [mm]
   * @param count places on it, equally spaced
   * @param start angle of the first place from the first coordinate's direction, turning towards
   *     the second [rad]
   */
  record Circle(double u, double v, double diameter, int count, double start) implements Pattern {}

  /** Returns the places in the order made. */
  default List<At> places() {
    List<At> all = new ArrayList<>();
    if (this instanceof At at) {
      all.add(at);
    } else if (this instanceof Places several) {
      all.addAll(several.places);
    } else if (this instanceof Grid grid) {
      count(grid.columns, 1);
      count(grid.rows, 1);
      for (int j = 0; j < grid.rows; j++) {
        for (int i = 0; i < grid.columns; i++) {
          all.add(new At(grid.u + i * grid.stepU, grid.v + j * grid.stepV));
        }
      }
    } else if (this instanceof Circle circle) {
      count(circle.count, 1);
      for (int i = 0; i < circle.count; i++) {
        double angle = circle.start + 2 * Math.PI * i / circle.count;
        all.add(
            new At(
                circle.u + circle.diameter / 2 * Math.cos(angle),
                circle.v + circle.diameter / 2 * Math.sin(angle)));
      }
    }
    return List.copyOf(all);
  }

  private static void count(int count, int least) {
    if (count < least || count > 500) {
      throw new IllegalArgumentException(
          "a pattern needs " + least + " to 500 places in a row, found " + count);
    }
  }
}
