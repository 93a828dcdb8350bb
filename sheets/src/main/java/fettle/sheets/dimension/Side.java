package fettle.sheets.dimension;

/** Side of a view on which dimensions stand. */
public enum Side {
  BELOW,
  LEFT,
  RIGHT
}
