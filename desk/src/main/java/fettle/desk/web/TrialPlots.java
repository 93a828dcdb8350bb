package fettle.desk.web;

import fettle.desk.page.Plot;
import fettle.machine.trials.Chart;
import fettle.machine.trials.Kind;
import fettle.machine.trials.Proof;
import fettle.machine.trials.Readings;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;

/** Draws what a trial's readings look like. */
final class TrialPlots {

  private static final int HEIGHT = 360;
  private static final double MICRON = 1000;

  private TrialPlots() {}

  static List<Plot> of(Proof proof) {
    List<Plot> plots = new ArrayList<>();
    proof.chart().ifPresent(c -> plots.add(years(c)));
    switch (proof.trial().kind()) {
      case REVERSAL, LEAD_SCREW -> plots.add(travel(proof, 2, 1, "target in mm"));
      case DIAL -> plots.add(dial(proof));
      case TEST_BAR -> plots.addAll(AlignmentPlots.runOut(proof));
      case PUSH -> plots.add(loop(proof, "force in N"));
      case PRELOAD -> plots.add(loop(proof, "pull in N"));
      case RUN_IN -> plots.add(warming(proof));
      default -> {}
    }
    if (proof.trial().kind() == Kind.TEST_BAR || proof.trial().kind() == Kind.TAILSTOCK) {
      plots.addAll(AlignmentPlots.axis(proof));
    }
    return plots;
  }

  /** Deviation of every reading over the travel, the mean of both ways as lines. */
  private static Plot travel(Proof proof, int target, int way, String across) {
    List<Readings.Line> lines = proof.trial().readings().lines();
    TreeMap<Integer, double[]> offsets = new TreeMap<>();
    for (Readings.Line l : lines) {
      double[] sum = offsets.computeIfAbsent(l.whole(0), r -> new double[2]);
      sum[0] += l.reading() - l.at(target);
      sum[1]++;
    }
    List<double[]> points = new ArrayList<>();
    for (Readings.Line l : lines) {
      double[] sum = offsets.getOrDefault(l.whole(0), new double[] {0, 1});
      points.add(
          new double[] {
            l.at(target), MICRON * (l.reading() - l.at(target) - sum[0] / sum[1]), l.at(way)
          });
    }
    return bothWays(points, across, "error in µm");
  }

  private static Plot bothWays(List<double[]> points, String across, String up) {
    Drawing d = new Drawing(HEIGHT, span(points, 0), span(points, 1)).scales(across, up);
    for (int way : new int[] {1, -1}) {
      TreeMap<Double, List<Double>> cells = new TreeMap<>();
      points.stream()
          .filter(p -> p[2] == way)
          .forEach(p -> cells.computeIfAbsent(p[0], k -> new ArrayList<>()).add(p[1]));
      if (!cells.isEmpty()) {
        double[] xs = array(cells.keySet());
        double[] ys = cells.values().stream().mapToDouble(TrialPlots::mean).toArray();
        double[] half = cells.values().stream().mapToDouble(c -> 2 * deviation(c)).toArray();
        d.sleeve(xs, ys, half, way > 0 ? "sure" : "sure back");
        d.curve(xs, ys, way > 0 ? "there" : "back");
      }
    }
    points.forEach(p -> d.mark(p[0], p[1], p[2] > 0 ? "there" : "back"));
    return d.plot(
        "Error over the travel",
        "Dots are readings, rings are readings on the way back; lines are means, bands twice the"
            + " scatter of each place. Each run is taken from its own mean.");
  }

  /** The dial's error: what the correction table takes off, over the travel. */
  private static Plot dial(Proof proof) {
    double[] xs = proof.table().stream().mapToDouble(Proof.Correction::place).toArray();
    double[] ys = proof.table().stream().mapToDouble(c -> MICRON * c.correction()).toArray();
    if (xs.length < 2) {
      double[] turns =
          proof.trial().readings().lines().stream().mapToDouble(l -> l.at(2)).toArray();
      double[] way =
          proof.trial().readings().lines().stream().mapToDouble(l -> l.reading()).toArray();
      Drawing d = new Drawing(HEIGHT, span(turns), span(way)).scales("turns", "position in mm");
      for (int i = 0; i < turns.length; i++) {
        d.mark(turns[i], way[i], "there");
      }
      return d.plot("Position over turns", "Every reading against the turns of the dial.");
    }
    double u =
        proof.lines().stream()
            .filter(l -> l.figure().unit().equals(Unit.PPM))
            .mapToDouble(l -> l.figure().expanded())
            .findFirst()
            .orElse(0);
    double[] half = Arrays.stream(xs).map(x -> MICRON * u * Math.abs(x - xs[0])).toArray();
    double[] band = new double[2 * ys.length];
    for (int i = 0; i < ys.length; i++) {
      band[2 * i] = ys[i] - half[i];
      band[2 * i + 1] = ys[i] + half[i];
    }
    Drawing d = new Drawing(HEIGHT, span(xs), span(band)).scales("dial in mm", "add, in µm");
    d.sleeve(xs, ys, half, "sure");
    d.curve(xs, ys, "there");
    for (int i = 0; i < xs.length; i++) {
      d.mark(xs[i], ys[i], "there");
    }
    return d.plot(
        "What to add to the dial",
        "The correction over the travel; the band is how sure the travel per turn is.");
  }

  private static Plot loop(Proof proof, String across) {
    List<Readings.Line> lines = proof.trial().readings().lines();
    double[] force = lines.stream().mapToDouble(l -> l.at(2)).toArray();
    double[] moved = lines.stream().mapToDouble(l -> MICRON * l.reading()).toArray();
    Drawing d = new Drawing(HEIGHT, span(force), span(moved)).scales(across, "movement in µm");
    d.curve(force, moved, "thin");
    for (int i = 0; i < force.length; i++) {
      d.mark(force[i], moved[i], lines.get(i).whole(1) > 0 ? "there" : "back");
    }
    return d.plot(
        "Movement over force",
        "Dots while the force grows, rings while it falls, joined in the order taken.");
  }

  private static Plot warming(Proof proof) {
    List<Readings.Line> lines = proof.trial().readings().lines();
    double[] time = lines.stream().mapToDouble(l -> l.at(1) / 60).toArray();
    double[] rise = lines.stream().mapToDouble(l -> l.reading() - l.at(2)).toArray();
    Drawing d = new Drawing(HEIGHT, span(time), span(rise)).scales("minutes", "rise in K");
    for (int i = 0; i < time.length; i++) {
      d.mark(time[i], rise[i], lines.get(i).whole(0) == 0 ? "there" : "back");
    }
    return d.plot("Warming up", "Dots are the front bearing, rings the rear one.");
  }

  private static Plot years(Chart chart) {
    Unit unit = chart.unit();
    double[] day = chart.points().stream().mapToDouble(p -> 1970 + p.day() / 365.25).toArray();
    double[] value =
        chart.points().stream().mapToDouble(p -> unit.fromCoherent(p.value())).toArray();
    double[] average =
        chart.points().stream().mapToDouble(p -> unit.fromCoherent(p.average())).toArray();
    double centre = unit.fromCoherent(chart.centre());
    double warn = unit.fromCoherent(chart.warning());
    double act = unit.fromCoherent(chart.action());
    double[] up = span(value);
    up[0] = Math.min(up[0], centre - act);
    up[1] = Math.max(up[1], centre + act);
    Drawing d = new Drawing(HEIGHT, span(day), up);
    d.band(centre - warn, centre + warn, "allowed");
    d.scales("year", unit.symbol().isEmpty() ? "value" : unit.symbol());
    d.straight(day[0], centre, day[day.length - 1], centre, "zero");
    for (int side : new int[] {-1, 1}) {
      d.straight(day[0], centre + side * act, day[day.length - 1], centre + side * act, "stop");
    }
    d.curve(day, value, "thin");
    d.curve(day, average, "there");
    for (int i = 0; i < day.length; i++) {
      d.mark(day[i], value[i], Math.abs(value[i] - centre) > act ? "out" : "there");
    }
    String since = LocalDate.ofEpochDay((long) chart.points().get(0).day()).toString();
    return d.plot(
        "Over the years",
        "Dots are readings since "
            + since
            + ", the blue line their weighted average, the band the warning limits, the red lines"
            + " the action limits about "
            + Numbers.significant(centre, 3)
            + " "
            + unit.symbol()
            + ".");
  }

  static double[] span(List<double[]> points, int at) {
    return span(points.stream().mapToDouble(p -> p[at]).toArray());
  }

  static double[] span(double[] values) {
    double low = Arrays.stream(values).min().orElse(0);
    double high = Arrays.stream(values).max().orElse(1);
    return new double[] {low, high > low ? high : low + 1};
  }

  private static double[] array(Collection<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }

  private static double deviation(List<Double> values) {
    double mean = mean(values);
    double sum = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return values.size() < 2 ? 0 : Math.sqrt(sum / (values.size() - 1));
  }
}
