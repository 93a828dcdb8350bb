package fettle.parts.recipe;

/**
 * Faces of a block that spans 0 to length along x, 0 to width along y, 0 to height along z; the
 * front is seen by a viewer who looks along +y with z up. Coordinates on a face are the two
 * remaining coordinates of the block, in the order x, y, z.
 */
public enum Face {
  LEFT(0, -1),
  RIGHT(0, 1),
  FRONT(1, -1),
  BACK(1, 1),
  BOTTOM(2, -1),
  TOP(2, 1);

  private final int axis;
  private final int sign;

  Face(int axis, int sign) {
    this.axis = axis;
    this.sign = sign;
  }

  /** Returns the axis across the face: 0, 1, 2 for x, y, z. */
  public int axis() {
    return axis;
  }

  /** Returns +1 if the face looks along its axis, -1 if against it. */
  public int sign() {
    return sign;
  }

  /** Returns the axis of the first coordinate on the face. */
  public int u() {
    return axis == 0 ? 1 : 0;
  }

  /** Returns the axis of the second coordinate on the face. */
  public int v() {
    return axis == 2 ? 1 : 2;
  }

  /** Returns the face on the other side. */
  public Face opposite() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      case FRONT -> BACK;
      case BACK -> FRONT;
      case BOTTOM -> TOP;
      case TOP -> BOTTOM;
    };
  }
}
