package fettle.planning.route;

import fettle.mechanics.base.Numbers;
import fettle.parts.recipe.Folded;
import fettle.parts.solid.FoldedBody;
import java.util.List;

/**
 * The route of a bent sheet: cut to its developed size, marked out and drilled flat, then bent one
 * bend after the other from the outside in, so that the last bend still finds room.
 */
final class FoldedRoute {

  private static final double SHEAR = 1;

  private FoldedRoute() {}

  static Route of(Folded part) {
    Lines lines = new Lines();
    double flat = FoldedBody.flat(part).length();
    String blank =
        number(flat)
            + " x "
            + number(part.width().nominal())
            + " x "
            + number(part.thickness())
            + " mm";
    lines.hand(1, "cut the blank " + blank, "bench", "shears or saw, file", 10);
    int bends = part.legs().size() - 1;
    int holes =
        part.legs().stream()
            .flatMap(l -> l.holes().stream())
            .mapToInt(h -> h.pattern().places().size())
            .sum();
    lines.hand(1, "mark out bend lines and holes", "bench", "scriber, square", 5 + 0.5 * holes);
    for (Folded.Leg leg : part.legs()) {
      for (Folded.LegHoles h : leg.holes()) {
        int count = h.pattern().places().size();
        lines.hand(
            1,
            "drill or punch "
                + number(h.diameter().nominal())
                + " for "
                + h.name()
                + (count > 1 ? ", " + count + " off" : ""),
            "clamped flat on wood, never held by hand",
            h.diameter().nominal() > 13 ? "step drill or hole punch" : "drill",
            2 + 1.0 * count);
      }
    }
    lines.hand(1, "deburr all edges", "bench", "file", 5);
    int setUp = 1;
    for (int i : fromOutside(bends)) {
      setUp++;
      Folded.Leg leg = part.legs().get(i);
      lines.hand(
          setUp,
          "bend behind "
              + leg.name()
              + " by "
              + number(Math.toDegrees(Math.abs(leg.bend())))
              + " degrees "
              + (leg.bend() > 0 ? "up" : "down")
              + " round "
              + number(part.radius())
              + " mm",
          "bending bars with that radius, or a folder",
          "bending bars, mallet",
          6);
    }
    lines.hand(setUp + 1, "check angles and sizes against the sheet", "bench", "square", 5);
    String stock = part.heading().stock();
    return new Route(
        part.heading().name(),
        stock.isEmpty() ? "sheet " + number(part.thickness()) + " mm" : stock,
        flat + 2 * SHEAR,
        lines.all(),
        List.of());
  }

  /** Returns the bends from both ends inwards, the outermost first. */
  private static List<Integer> fromOutside(int bends) {
    java.util.List<Integer> order = new java.util.ArrayList<>();
    for (int i = 0; i < (bends + 1) / 2; i++) {
      order.add(i);
      if (bends - 1 - i != i) {
        order.add(bends - 1 - i);
      }
    }
    return order;
  }

  private static String number(double value) {
    return Numbers.significant(value, 5);
  }
}
