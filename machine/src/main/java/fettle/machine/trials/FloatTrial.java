package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.RunOut;
import fettle.mechanics.metrology.RunOutVector;
import fettle.mechanics.metrology.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Axial slip and camming of a turning spindle, and its play by push and pull. */
final class FloatTrial {

  static final String SLIP = "axial slip";
  static final String CAMMING = "camming of the nose face";
  static final String PLAY = "axial play";

  private static final Source TURNING =
      Source.memory("ISO 230-1:1996", "5.621 and 5.632, largest less smallest mean over the turns");
  private static final Source PULLING =
      Source.derived("pull less push, half the pointer's retrace taken off");

  private FloatTrial() {}

  static void evaluate(Draft draft) {
    turning(draft, 0, SLIP, "adjust the axial bearing; a thrust face that runs out is cured first");
    turning(draft, 1, CAMMING, "face the nose in its own bearings, after the axial slip is cured");
    play(draft);
    if (draft.figures().isEmpty()) {
      throw new IllegalArgumentException("no place was read; see the gaps");
    }
    draft.cautions.add(
        "Turn the spindle by hand with the power off; never start the lathe with an indicator"
            + " against it.");
  }

  private static List<Readings.Line> lines(Draft draft, int place) {
    return draft.trial().readings().lines().stream().filter(l -> l.whole(0) == place).toList();
  }

  private static void turning(Draft draft, int place, String name, String adjust) {
    List<Readings.Line> lines = lines(draft, place);
    if (lines.isEmpty()) {
      return;
    }
    TreeMap<Double, List<Double>> cells = new TreeMap<>();
    lines.forEach(l -> cells.computeIfAbsent(l.at(2), a -> new ArrayList<>()).add(l.reading()));
    int turns = cells.values().stream().mapToInt(List::size).min().orElse(0);
    if (turns < 2 || cells.size() < 4) {
      throw new IllegalArgumentException(
          name
              + ": found "
              + turns
              + " turns at "
              + cells.size()
              + " angles, expected at least 2 turns at 4 angles or more");
    }
    double high = Double.NEGATIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double squares = 0;
    int freedom = 0;
    for (List<Double> cell : cells.values()) {
      Sample sample = Sample.of(cell.stream().mapToDouble(v -> v).toArray());
      high = Math.max(high, sample.mean());
      low = Math.min(low, sample.mean());
      squares += sample.sumOfSquares();
      freedom += cell.size() - 1;
      if (cell.size() < cells.firstEntry().getValue().size()) {
        draft.gaps.add(name + ": fewer turns were read at one angle than at the first");
      }
    }
    double s = Math.max(Math.sqrt(squares / freedom), draft.trial().stepDoubt());
    draft.add(
        name,
        high - low,
        Unit.MICRON,
        new Draft.Repeats(turns, "turns", false),
        0,
        adjust,
        TURNING,
        Contribution.readings("scatter of the turns", s * Math.sqrt(2.0 / turns), 1, freedom),
        draft.instrument(1));
    lean(draft, name, place, lines);
  }

  /** What comes once a turn on a face at a radius is a face that stands askew. */
  private static void lean(Draft draft, String name, int place, List<Readings.Line> lines) {
    double radius = draft.trial().given("radius");
    if (place != 1 || radius == 0) {
      return;
    }
    double[] angles = lines.stream().mapToDouble(l -> l.at(2)).toArray();
    double[] read = lines.stream().mapToDouble(Readings.Line::reading).toArray();
    RunOutVector once = RunOut.turn(angles, read).vector();
    draft.notes.add(
        name
            + ": what comes once a turn is a lean of "
            + Numbers.fixed(once.size() / radius * 1e6, 0)
            + " µm/m between face and axis.");
  }

  private static void play(Draft draft) {
    List<Readings.Line> pushed = lines(draft, 2);
    List<Readings.Line> pulled = lines(draft, 3);
    if (pushed.isEmpty() && pulled.isEmpty()) {
      return;
    }
    SortedMap<Integer, Double> pushes = new TreeMap<>();
    pushed.forEach(l -> pushes.put(l.whole(1), l.reading()));
    List<Double> ways = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (Readings.Line pull : pulled) {
      Double push = pushes.get(pull.whole(1));
      if (push == null) {
        draft.gaps.add("pull " + pull.whole(1) + " has no push beside it; it is left out");
      } else {
        ways.add(pull.reading() - push);
        numbers.add(pull.whole(1));
      }
    }
    double[] d = ways.stream().mapToDouble(v -> v).toArray();
    double retrace = draft.trial().retrace();
    Contribution scatter = draft.scatter("scatter of the pulls", d, 1);
    Odd.of(ways, "pull", numbers, draft);
    draft.add(
        PLAY,
        Sample.of(d).mean() - retrace / 2,
        Unit.MICRON,
        new Draft.Repeats(d.length, "pulls", true),
        0,
        "take up the axial bearing by what is too much, then test the warm spindle again",
        PULLING,
        scatter,
        DialTrial.lag(retrace),
        draft.instrument(1));
  }
}
