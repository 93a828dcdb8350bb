package fettle.parts.recipe;

/** An end of a turned part, as drawn with its axis level. */
public enum End {
  LEFT,
  RIGHT
}
