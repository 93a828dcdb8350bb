package fettle.desk.web;

import fettle.desk.page.Plot;
import fettle.machine.trials.Kind;
import fettle.machine.trials.Measured;
import fettle.machine.trials.Proof;
import fettle.machine.trials.Readings;
import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Draws how axes lie: run-out as a polar trace, alignment exaggerated. */
final class AlignmentPlots {

  private static final int SQUARE = 420;
  private static final double MICRON = 1000;
  private static final double MIDDLE_X = 320;
  private static final double MIDDLE_Y = 205;
  private static final double BASE = 90;
  private static final double ROOM = 80;

  private AlignmentPlots() {}

  /** The readings of each distance over one turn, all seatings, about a circle. */
  static List<Plot> runOut(Proof proof) {
    TreeMap<Double, List<Readings.Line>> places = new TreeMap<>();
    int plane = proof.trial().readings().lines().get(0).whole(0);
    proof.trial().readings().lines().stream()
        .filter(l -> l.whole(0) == plane)
        .forEach(l -> places.computeIfAbsent(l.at(2), z -> new ArrayList<>()).add(l));
    List<Plot> plots = new ArrayList<>();
    places.forEach((z, lines) -> plots.add(polar(z, lines)));
    return plots;
  }

  private static Plot polar(double z, List<Readings.Line> lines) {
    TreeMap<Double, List<Readings.Line>> seats = new TreeMap<>();
    lines.forEach(l -> seats.computeIfAbsent(l.at(1), s -> new ArrayList<>()).add(l));
    double most = 1;
    for (List<Readings.Line> turn : seats.values()) {
      double mean = mean(turn);
      for (Readings.Line l : turn) {
        most = Math.max(most, MICRON * Math.abs(l.reading() - mean));
      }
    }
    double scale = ROOM / most;
    List<Plot.Line> curves = new ArrayList<>();
    List<Plot.Mark> marks = new ArrayList<>();
    List<Plot.Words> texts = new ArrayList<>();
    curves.add(new Plot.Line(circle(BASE), "zero"));
    curves.add(new Plot.Line(circle(BASE + ROOM), "grid"));
    for (List<Readings.Line> turn : seats.values()) {
      double mean = mean(turn);
      StringBuilder path = new StringBuilder();
      for (int i = 0; i <= turn.size(); i++) {
        Readings.Line l = turn.get(i % turn.size());
        double r = BASE + scale * MICRON * (l.reading() - mean);
        double x = at(MIDDLE_X + r * Math.cos(l.at(3)));
        double y = at(MIDDLE_Y - r * Math.sin(l.at(3)));
        path.append(i == 0 ? "" : " ").append(x).append(',').append(y);
        if (i < turn.size()) {
          marks.add(new Plot.Mark(x, y, "there"));
        }
      }
      curves.add(new Plot.Line(path.toString(), "thin"));
    }
    texts.add(new Plot.Words(MIDDLE_X + BASE + ROOM + 8, MIDDLE_Y + 5, "start", "0° spindle"));
    texts.add(
        new Plot.Words(
            12,
            SQUARE - 10,
            "start",
            "outer ring + "
                + Drawing.shown(Double.parseDouble(Numbers.significant(most, 2)))
                + " µm"));
    String place = Numbers.significant(z, 5) + " mm from the nose";
    return new Plot(
        "Run-out " + place,
        "One turn for every seating of the bar, each about its own mean; what turns with the seat"
            + " is the bar's.",
        SQUARE,
        List.of(),
        curves,
        marks,
        texts);
  }

  private static double mean(List<Readings.Line> turn) {
    return turn.stream().mapToDouble(Readings.Line::reading).average().orElse(0);
  }

  private static String circle(double radius) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i <= 72; i++) {
      double a = 2 * Math.PI * i / 72;
      path.append(i == 0 ? "" : " ")
          .append(at(MIDDLE_X + radius * Math.cos(a)))
          .append(',')
          .append(at(MIDDLE_Y - radius * Math.sin(a)));
    }
    return path.toString();
  }

  private static double at(double v) {
    return Math.rint(v * 10) / 10;
  }

  /** The axis as it lies against the carriage's way, exaggerated, with its doubt. */
  static List<Plot> axis(Proof proof) {
    Map<String, String> views =
        proof.trial().kind() == Kind.TEST_BAR
            ? Map.of(
                "spindle axis to carriage sideways", "seen from above, + towards the tool",
                "spindle axis to carriage in height", "seen from the front, + up")
            : Map.of(
                "tailstock centre sideways", "seen from above, + towards the tool",
                "tailstock centre in height", "seen from the front, + up");
    List<Plot> plots = new ArrayList<>();
    for (Proof.Line line : proof.lines()) {
      String view = views.get(line.figure().name());
      if (view != null) {
        plots.add(axis(proof, line, view));
      }
    }
    return plots;
  }

  private static Plot axis(Proof proof, Proof.Line line, String view) {
    Measured m = line.figure();
    double length =
        m.length() > 0
            ? m.length()
            : proof.trial().values().quantity("between centres").map(q -> q.value()).orElse(300.0);
    double end = MICRON * m.value();
    double half = MICRON * m.expanded();
    double[] up = TrialPlots.span(new double[] {0, end - half, end + half});
    double low = line.judged().map(j -> MICRON * j.limit().low()).orElse(0.0);
    double high = line.judged().map(j -> MICRON * j.limit().high()).orElse(0.0);
    if (Double.isFinite(low) && Double.isFinite(high)) {
      up = TrialPlots.span(new double[] {up[0], up[1], low, high});
    }
    Drawing d = new Drawing(300, new double[] {0, length}, up);
    d.scales("mm from the headstock", "µm");
    if (high > low) {
      d.straight(length, Math.max(low, up[0]), length, Math.min(high, up[1]), "limit");
    }
    double[] xs = {0, length};
    d.sleeve(xs, new double[] {0, end}, new double[] {0, half}, "sure");
    d.straight(0, 0, length, 0, "way");
    d.straight(0, 0, length, end, "there");
    d.mark(length, end, "there");
    return d.plot(
        m.name(),
        "The way of the carriage is the level line; blue is the axis, "
            + view
            + ", heights exaggerated; the broad stroke at the end is what the limit allows.");
  }
}
