package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Sample;
import fettle.mechanics.metrology.WarmUp;
import java.util.Arrays;
import java.util.List;

/** Temperature of the bearings against time at one speed. */
final class RunInTrial {

  private static final Source LAW = Source.derived("rise = last rise x (1 - exp(-t/tau)), fitted");
  private static final double REACHED = 2;

  private RunInTrial() {}

  static String rise(String place) {
    return place + " rise when warm";
  }

  static String time(String place) {
    return place + " time constant";
  }

  static void evaluate(Draft draft) {
    List<String> places = List.of("front", "rear");
    for (int p = 0; p < places.size(); p++) {
      int place = p;
      List<Readings.Line> lines =
          draft.trial().readings().lines().stream().filter(l -> l.whole(0) == place).toList();
      if (!lines.isEmpty()) {
        place(draft, places.get(p), lines);
      }
    }
    draft.cautions.add(
        "Stop at 65 degrees or 35 K above the room, or when it rises faster and faster; do not"
            + " touch a running spindle to feel its warmth. Keep the chuck guard shut.");
  }

  private static void place(Draft draft, String place, List<Readings.Line> lines) {
    if (lines.size() < 5) {
      throw new IllegalArgumentException(
          place + ": found " + lines.size() + " readings, expected 5 or more");
    }
    double[] time = lines.stream().mapToDouble(l -> l.at(1)).toArray();
    double[] rise = lines.stream().mapToDouble(l -> l.reading() - l.at(2)).toArray();
    WarmUp law = WarmUp.of(time, rise);
    double constant = 1 / law.rate();
    double freedom = time.length - 2.0;
    Draft.Repeats readings = new Draft.Repeats(time.length, "readings", false);
    draft.add(
        rise(place),
        law.finalRise(),
        Unit.K,
        readings,
        0,
        "less preload or less grease, a looser belt, or a lower speed for long work",
        LAW,
        Contribution.readings("scatter of the readings", law.fit().uncertainty(0), 1, freedom),
        new Contribution(
            "doubt of the thermometer",
            draft.trial().instrumentDoubt(),
            1,
            Double.POSITIVE_INFINITY,
            Contribution.Kind.JUDGEMENT));
    draft.add(
        time(place),
        constant,
        Unit.MIN,
        readings,
        0,
        "",
        LAW,
        Contribution.readings(
            "scatter of the readings", law.fit().uncertainty(1) * constant * constant, 1, freedom));
    advice(draft, place, lines, time, constant);
    double[] rest = law.fit().residuals().toArray();
    double again = Sample.of(rest).lagOne();
    if (Math.abs(again) > 2 / Math.sqrt(rest.length)) {
      draft.notes.add(
          place
              + ": the readings do not scatter independently about the law (r1 = "
              + Numbers.fixed(again, 2)
              + "); the law fits but roughly, and the uncertainty is too small.");
    }
  }

  private static void advice(
      Draft draft, String place, List<Readings.Line> lines, double[] time, double constant) {
    double longest = Arrays.stream(time).max().orElse(0);
    if (longest < REACHED * constant) {
      draft.notes.add(
          place + ": logged for less than two time constants; the last rise is an outlook only.");
    }
    double[] temperature = lines.stream().mapToDouble(Readings.Line::reading).toArray();
    double room = lines.stream().mapToDouble(l -> l.at(2)).average().orElse(0);
    for (String line : WarmUp.runIn(time, temperature, room)) {
      (line.startsWith("stop") ? draft.cautions : draft.notes).add(place + ": " + line);
    }
  }
}
