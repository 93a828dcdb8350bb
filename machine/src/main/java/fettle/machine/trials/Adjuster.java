package fettle.machine.trials;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/**
 * A screw, shim or foot the lathe is aligned with.
 *
 * @param name its name in the book
 * @param values what the book says of it
 */
record Adjuster(String name, Values values) {

  /** Order in which an alignment is done: each later reading contains the earlier errors. */
  private static final List<String> ORDER =
      List.of(
          "bed rear foot up",
          "headstock front up",
          "headstock rear up",
          "headstock sideways",
          "tailstock up",
          "tailstock sideways");

  private static final int MOST_STEPS = 400;

  String does() {
    return values.needText("does");
  }

  int order() {
    return ORDER.indexOf(does());
  }

  boolean lifts() {
    return !does().endsWith("sideways") && !does().startsWith("bed");
  }

  double given(String key) {
    return values.quantity(key).map(Quantity::value).orElse(0.0);
  }

  private double lever() {
    double lever = given("lever");
    if (!(lever > 0) && !does().startsWith("tailstock")) {
      throw new IllegalArgumentException(
          "adjusters." + name + ": no lever, which says what a millimetre of it does");
    }
    return lever;
  }

  /** Returns the shims at hand, thickest last [mm]. */
  double[] shims() {
    return values.texts("shims").stream().mapToDouble(this::shim).sorted().toArray();
  }

  private double shim(String text) {
    try {
      double shim = Quantity.parse(text, Dimension.LENGTH, Unit.MM).value();
      if (shim > 0) {
        return shim;
      }
    } catch (Quantity.NotOne e) {
      // Said below, with the place.
    }
    throw new IllegalArgumentException(
        "adjusters." + name + ".shims: found '" + text + "', expected a thickness such as 20 µm");
  }

  /** Returns the moves that can be set: sums of shims, or steps of a screw. */
  List<Double> allowed() {
    double[] shims = shims();
    double reach = given("reach");
    TreeSet<Long> moves = new TreeSet<>();
    if (shims.length > 0) {
      if (shims.length > 10) {
        throw new IllegalArgumentException(
            "adjusters." + name + ".shims: found " + shims.length + ", expected at most 10");
      }
      for (int code = 0; code < 1 << shims.length; code++) {
        double sum = 0;
        for (int i = 0; i < shims.length; i++) {
          sum += (code >> i & 1) == 1 ? shims[i] : 0;
        }
        if (sum <= reach) {
          moves.add(Math.round(sum * 1e6));
        }
      }
    } else {
      double step = Math.max(given("step"), reach / MOST_STEPS);
      long most = Math.round(Math.floor(reach / step + 1e-9));
      for (long k = lifts() ? 0 : -most; k <= most; k++) {
        moves.add(Math.round(k * step * 1e6));
      }
    }
    return Collections.unmodifiableList(new ArrayList<>(moves.stream().map(m -> m / 1e6).toList()));
  }

  /**
   * Returns what a millimetre of this does to a figure.
   *
   * @return change of the figure for one unit of the move [figure/mm]
   */
  double effect(Measured figure) {
    double length = figure.length();
    return switch (does()) {
      case "headstock sideways" -> sideways(figure.name(), length) / lever();
      case "headstock front up" -> height(figure.name(), length) / lever();
      case "headstock rear up" -> -height(figure.name(), length) / lever();
      case "tailstock sideways" -> figure.name().equals(TailstockTrial.SIDEWAYS) ? 1 : 0;
      case "tailstock up" -> figure.name().equals(TailstockTrial.HEIGHT) ? 1 : 0;
      default -> twist(figure.name(), length);
    };
  }

  /** What a lean of the axis of one towards the tool adds to a figure. */
  private static double sideways(String figure, double length) {
    return switch (figure) {
      case BarTrial.HORIZONTAL -> length;
      case CollarTrial.TAPER -> 2 * length;
      case FacingTrial.HOLLOW -> length / 2;
      default -> 0;
    };
  }

  private static double height(String figure, double length) {
    return figure.equals(BarTrial.VERTICAL) ? length : 0;
  }

  /** A rear foot that is raised takes off a twist with the front high. */
  private double twist(String figure, double length) {
    double tilt = -given("response") / lever();
    double span = given("span");
    double along = span > 0 ? length / span : 0;
    return switch (figure) {
      case BedTrial.TWIST -> tilt * length;
      case BarTrial.HORIZONTAL -> tilt * given("height") * along;
      case CollarTrial.TAPER -> 2 * tilt * given("height") * along;
      default -> 0;
    };
  }
}
