package fettle.desk.web;

import fettle.desk.page.Drawing;
import fettle.desk.page.EnginePage;
import fettle.desk.page.Measure;
import fettle.desk.picture.ClearancePicture;
import fettle.machine.topics.Clearances;
import fettle.mechanics.motion.ContactMap;
import fettle.mechanics.motion.Domain;
import fettle.mechanics.motion.Pair;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The map of forbidden positions of one pair over two of its axes. */
final class ClearanceMap {

  private static final int HALVINGS = 6;
  private static final double INCH = 25.4;

  private ClearanceMap() {}

  static EnginePage.Section section(ClearanceRoom.Asked asked, Clearances.Row row) {
    Domain domain = asked.gaps().mechanism().domain();
    List<String> names = new ArrayList<>();
    for (int axis : asked.gaps().axes(row)) {
      if (domain.high()[axis] > domain.low()[axis]) {
        names.add(domain.names().get(axis));
      }
    }
    if (names.size() < 2) {
      return Closer.section(
          "Forbidden positions",
          "map",
          Closer.words(
              names.isEmpty()
                  ? "Nothing that is free to move changes how the two stand to each other."
                  : "Only the "
                      + names.get(0)
                      + " changes how the two stand to each other, so that there is no map of two"
                      + " axes; the sentences above say all."));
    }
    String across = Closer.oneOf(asked.visit(), "across", names);
    List<String> others = names.stream().filter(n -> !n.equals(across)).toList();
    String up = Closer.oneOf(asked.visit(), "up", others);
    Map<String, String> kept = new LinkedHashMap<>();
    kept.put("one", row.first());
    kept.put("other", row.second());
    kept.put("at", asked.visit().asked("at"));
    kept.put("handles", asked.handles());
    List<EnginePage.Block> blocks = new ArrayList<>();
    blocks.add(
        new EnginePage.Picture(
            drawn(asked, row, domain.axis(across), domain.axis(up)),
            caption(names.size() > 2),
            EnginePage.Turn.STILL));
    if (names.size() > 2) {
      blocks.add(
          new EnginePage.Form(
              "/clearance#map",
              false,
              kept,
              List.of(
                  new EnginePage.Field("across", "across", across, names),
                  new EnginePage.Field("up", "upwards", up, names)),
              List.of(new EnginePage.Button("", "Draw the map so", true))));
    }
    return new EnginePage.Section("Forbidden positions", "map", "", blocks);
  }

  private static String caption(Boolean others) {
    return others
        ? "Hatched: the two collide with everything else as shown above. Washed red: they can"
            + " collide with something else elsewhere. White is proven free."
        : "Hatched red: the two collide. White is proven free.";
  }

  private static Drawing drawn(ClearanceRoom.Asked asked, Clearances.Row row, int x, int y) {
    Domain domain = asked.gaps().mechanism().domain();
    List<Pair> pairs = asked.gaps().pairs(row);
    ContactMap anywhere = ContactMap.of(pairs, domain, x, y, HALVINGS);
    ContactMap here = ContactMap.of(pairs, held(domain, row, x, y), x, y, HALVINGS);
    double fx = factor(asked, x);
    double fy = factor(asked, y);
    return ClearancePicture.map(
        scale(asked, row, x),
        scale(asked, row, y),
        rectangles(anywhere, ContactMap.Kind.MEETS, fx, fy),
        rectangles(here, ContactMap.Kind.MEETS, fx, fy),
        rectangles(anywhere, ContactMap.Kind.OPEN, fx, fy),
        "Positions of the "
            + domain.names().get(x)
            + " and the "
            + domain.names().get(y)
            + " in which the "
            + row.first()
            + " and the "
            + row.second()
            + " collide");
  }

  /** Everything but two axes held where the pair is worst. */
  private static Domain held(Domain domain, Clearances.Row row, int x, int y) {
    Domain held = domain;
    double[] at = row.gap().position();
    for (int axis = 0; axis < domain.size(); axis++) {
      if (axis != x && axis != y) {
        double inside = Math.min(domain.high()[axis], Math.max(domain.low()[axis], at[axis]));
        held = held.with(axis, inside, inside);
      }
    }
    return held;
  }

  private static ClearancePicture.Scale scale(
      ClearanceRoom.Asked asked, Clearances.Row row, int i) {
    Domain domain = asked.gaps().mechanism().domain();
    double factor = factor(asked, i);
    return new ClearancePicture.Scale(
        domain.names().get(i) + ", " + unit(asked, i),
        domain.low()[i] * factor,
        domain.high()[i] * factor,
        row.gap().position()[i] * factor);
  }

  /** Shown units for each millimetre or radian. */
  private static double factor(ClearanceRoom.Asked asked, int axis) {
    if (!asked.gaps().slides(axis)) {
      return Math.toDegrees(1);
    }
    return asked.visit().measure() == Measure.INCH ? 1 / INCH : 1;
  }

  private static String unit(ClearanceRoom.Asked asked, int axis) {
    return !asked.gaps().slides(axis)
        ? "degrees"
        : asked.visit().measure() == Measure.INCH ? "in" : "mm";
  }

  private static List<double[]> rectangles(
      ContactMap map, ContactMap.Kind kind, double fx, double fy) {
    return map.patches().stream()
        .filter(p -> p.kind() == kind)
        .map(p -> new double[] {p.left() * fx, p.right() * fx, p.low() * fy, p.high() * fy})
        .toList();
  }
}
