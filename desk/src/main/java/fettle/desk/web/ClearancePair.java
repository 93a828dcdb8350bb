package fettle.desk.web;

import fettle.desk.page.ElevationPage;
import fettle.desk.page.EnginePage;
import fettle.desk.picture.Elevations;
import fettle.machine.topics.Clearances;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.motion.SafeGap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One pair where it is worst: in words, on the elevation, in three dimensions. */
final class ClearancePair {

  private ClearancePair() {}

  static EnginePage.Section section(ClearanceRoom.Asked asked, Clearances.Row row) {
    Map<String, String> styles = new LinkedHashMap<>();
    styles.put(row.first(), "chosen");
    styles.put(row.second(), "chosen");
    ElevationPage picture =
        Elevations.of(
                asked.machine(),
                ClearanceRoom.stand(asked, row.gap().position()),
                styles,
                m -> LatheRoom.member(m, asked.chosen()),
                asked.visit().measure())
            .with(ClearanceRoom.drawn(asked, row));
    return new EnginePage.Section(
        "The " + row.first() + " and the " + row.second(),
        "pair",
        "",
        List.of(
            new EnginePage.Words("", sentences(asked, row)),
            new EnginePage.Scene(
                "/clearance.json?" + asked.query(row),
                "The two in brass, the gap between them in red. Drag to turn it round, pinch or use"
                    + " the wheel to come nearer."),
            new EnginePage.Elevation(
                picture,
                "The slides in that position, seen from where you stand; what turns is drawn as the book has it."),
            positions(asked, row)));
  }

  private static List<String> sentences(ClearanceRoom.Asked asked, Clearances.Row row) {
    List<String> lines = new ArrayList<>();
    String means = ClearanceRoom.means(asked.machine(), row);
    if (row.gap().touches()) {
      lines.add("They collide in the position shown.");
      free(asked, row, lines);
    } else {
      String least = asked.length(row.gap().upper());
      String proven = asked.length(row.gap().lower());
      lines.add(
          "Least gap "
              + least
              + (least.equals(proven) ? ", proven" : "; proven nowhere less than " + proven)
              + (row.gap().certified() ? "." : ", but the two bounds did not close."));
    }
    if (means.equals("catches a finger")) {
      lines.add(
          "A finger can be caught: leave "
              + asked.length(SafeGap.FINGER.gap())
              + " (ISO 13854:2017) or close the gap. Local codes come first.");
    }
    return lines;
  }

  /** Which slide frees them, and how much of its travel that costs. */
  private static void free(ClearanceRoom.Asked asked, Clearances.Row row, List<String> lines) {
    List<Clearances.Stretch> some =
        asked.gaps().stretches(row).stream().filter(s -> !s.whole()).toList();
    for (Clearances.Stretch s : some) {
      lines.add(
          "Only while the "
              + s.axis()
              + " is at "
              + shown(asked, s, s.span().from())
              + " to "
              + shown(asked, s, s.span().to())
              + ", with everything else anywhere; outside it they keep clear"
              + (s.span().certified()
                  ? ", and that is proven."
                  : ", though its ends are not settled."));
    }
    if (some.isEmpty()) {
      lines.add("No single slide or lever frees them: move, shorten or set back one of the two.");
    } else {
      lines.add(
          "A stop that keeps "
              + (some.size() == 1 ? "it out of that stretch" : "one of these out of its stretch")
              + " frees them; or move, shorten or chamfer one of the two.");
    }
  }

  private static String shown(ClearanceRoom.Asked asked, Clearances.Stretch s, double at) {
    return s.slides() ? asked.length(at) : Numbers.fixed(Math.toDegrees(at), 1) + "°";
  }

  private static EnginePage.Table positions(ClearanceRoom.Asked asked, Clearances.Row row) {
    List<EnginePage.Row> rows = new ArrayList<>();
    for (int axis : asked.gaps().axes(row)) {
      double at = row.gap().position()[axis];
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of(asked.gaps().mechanism().domain().names().get(axis)),
                  EnginePage.Entry.of(
                      asked.gaps().slides(axis)
                          ? asked.length(at)
                          : Numbers.fixed(Math.toDegrees(at), 1) + "°"))));
    }
    return new EnginePage.Table("The position shown", List.of("member", "stands at"), rows);
  }
}
