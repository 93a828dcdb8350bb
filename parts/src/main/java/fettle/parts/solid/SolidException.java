package fettle.parts.solid;

/** A solid that cannot be made from its recipe; the sentence says where and why. */
public final class SolidException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Says what is wrong. */
  public SolidException(String message) {
    super(message);
  }
}
