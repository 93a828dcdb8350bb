package fettle.parts.recipe;

/** Something made on a part that has a name the owner gave it. */
public interface Feature {
  /** Returns the name, unique within the part. */
  String name();
}
