package fettle.parts.solid;

/** From where a part is looked at. */
@SuppressWarnings("ImmutableEnumChecker") // records of doubles
public enum Looking {
  /** From the front, along +y. */
  FRONT(Vec.Y, Vec.X),
  /** From the back. */
  BACK(new Vec(0, -1, 0), new Vec(-1, 0, 0)),
  /** From above. */
  TOP(new Vec(0, 0, -1), Vec.X),
  /** From below. */
  BOTTOM(Vec.Z, Vec.X),
  /** From the left, along +x. */
  LEFT(Vec.X, new Vec(0, -1, 0)),
  /** From the right. */
  RIGHT(new Vec(-1, 0, 0), Vec.Y);

  private final Vec along;
  private final Vec right;

  Looking(Vec along, Vec right) {
    this.along = along;
    this.right = right;
  }

  /** Returns the direction in which the viewer looks. */
  public Vec along() {
    return along;
  }

  /** Returns the direction that points right on the sheet. */
  public Vec right() {
    return right;
  }

  /** Returns the direction that points up on the sheet. */
  public Vec up() {
    return right.cross(along);
  }
}
