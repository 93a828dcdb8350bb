package fettle.machine.made;

import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;

/**
 * A value that a recipe takes from the lathe.
 *
 * @param value the number [coherent]
 * @param dimension what kind of quantity it is
 * @param zone tolerance zone that comes with it; empty for none
 */
record Reckoned(double value, Dimension dimension, String zone) {

  static Reckoned of(Quantity quantity) {
    return new Reckoned(quantity.value(), quantity.unit().dimension(), "");
  }

  static Reckoned plain(double value) {
    return new Reckoned(value, Dimension.NUMBER, "");
  }

  /** Joins two values by one of {@code + - * /}. */
  Reckoned join(String sign, Reckoned other) {
    boolean alike = dimension == other.dimension;
    boolean plain = other.dimension == Dimension.NUMBER;
    return switch (sign) {
      case "+", "-" -> {
        require(alike, "both sides of '" + sign + "' must be of one kind");
        yield with(value + (sign.equals("+") ? other.value : -other.value), dimension);
      }
      case "*" -> {
        require(plain || dimension == Dimension.NUMBER, "one side of '*' must be a plain number");
        yield with(value * other.value, plain ? dimension : other.dimension);
      }
      default -> {
        require((plain || alike) && other.value != 0, "'/' needs a plain number that is not 0");
        yield with(value / other.value, plain ? dimension : Dimension.NUMBER);
      }
    };
  }

  private static Reckoned with(double value, Dimension dimension) {
    return new Reckoned(value, dimension, "");
  }

  private static void require(boolean met, String message) {
    if (!met) {
      throw new IllegalArgumentException(message);
    }
  }
}
