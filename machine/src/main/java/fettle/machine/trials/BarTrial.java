package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.RunOut;
import fettle.mechanics.metrology.RunOutVector;
import fettle.mechanics.metrology.Sample;
import fettle.mechanics.metrology.TestBar;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A bar in the spindle, read at two distances, re-seated at several angles. */
final class BarTrial {

  static final String NEAR = "run-out of the taper near the nose";
  static final String FAR = "run-out of the taper at the far place";
  static final String HORIZONTAL = "spindle axis to carriage sideways";
  static final String VERTICAL = "spindle axis to carriage in height";

  private static final Source SEATINGS =
      Source.derived("bar re-seated at several angles: the taper stays, the bar turns with it");
  private static final Source AXIS =
      Source.derived("mean over a turn is free of the bar's run-out; sag of the bar taken off");

  /** Steel: density [t/mm3], Young's modulus [MPa], gravity [mm/s2]. */
  private static final double DENSITY = 7.85e-9;

  private static final double MODULUS = 206_000;
  private static final double GRAVITY = 9806.65;

  /** Force of an indicator: 0 to 1.5 N, common practice. */
  private static final double MIDDLE_FORCE = 0.75;

  /**
   * The turns read at one distance.
   *
   * @param z distance from the nose [mm]
   * @param bySeat the turn of each seating
   */
  private record Reach(double z, SortedMap<Double, RunOut.Turn> bySeat) {}

  private final Draft draft;
  private final double rigidity;
  private final double overhang;
  private final double weight;

  private BarTrial(Draft draft) {
    this.draft = draft;
    double diameter = draft.trial().given("bar diameter");
    overhang = draft.trial().given("overhang");
    rigidity = MODULUS * TestBar.secondMoment(diameter, 0);
    weight = TestBar.weight(diameter, 0, DENSITY, GRAVITY);
  }

  static void evaluate(Draft draft) {
    new BarTrial(draft).evaluate();
  }

  private void evaluate() {
    List<Reach> front = turns(0);
    List<Reach> top = turns(1);
    if (front.isEmpty() && top.isEmpty()) {
      throw new IllegalArgumentException("no readings in the planes h and v");
    }
    List<Reach> any = front.isEmpty() ? top : front;
    runOut(NEAR, any.get(0).bySeat());
    runOut(FAR, any.get(any.size() - 1).bySeat());
    if (!front.isEmpty()) {
      axis(HORIZONTAL, front, 0);
    }
    if (!top.isEmpty()) {
      axis(VERTICAL, top, weight);
    }
    draft.cautions.add(
        "Turn the spindle by hand with the power off; never start the lathe with a bar or an"
            + " indicator in it.");
  }

  /** Returns the turn of each place and each seat. */
  private List<Reach> turns(int plane) {
    SortedMap<Double, SortedMap<Double, List<Readings.Line>>> lines = new TreeMap<>();
    for (Readings.Line l : draft.trial().readings().lines()) {
      if (l.whole(0) == plane) {
        lines
            .computeIfAbsent(l.at(2), z -> new TreeMap<>())
            .computeIfAbsent(l.at(1), s -> new ArrayList<>())
            .add(l);
      }
    }
    if (lines.size() == 1) {
      throw new IllegalArgumentException(
          "all readings stand at one distance, expected two different ones");
    }
    List<Reach> turns = new ArrayList<>();
    lines.forEach(
        (z, seats) -> {
          SortedMap<Double, RunOut.Turn> bySeat = new TreeMap<>();
          seats.forEach((seat, l) -> bySeat.put(seat, turn(l)));
          turns.add(new Reach(z, bySeat));
        });
    int seats = turns.stream().mapToInt(r -> r.bySeat().size()).max().orElse(0);
    for (Reach reach : turns) {
      if (reach.bySeat().size() != seats) {
        draft.gaps.add(
            "not every seating was read at " + Numbers.significant(reach.z(), 6) + " mm");
      }
    }
    return turns;
  }

  private RunOut.Turn turn(List<Readings.Line> lines) {
    double[] angles = lines.stream().mapToDouble(l -> l.at(3)).toArray();
    double[] readings = lines.stream().mapToDouble(Readings.Line::reading).toArray();
    return RunOut.turn(angles, readings);
  }

  private void runOut(String name, SortedMap<Double, RunOut.Turn> bySeat) {
    double[] seats = bySeat.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    List<RunOutVector> vectors = bySeat.values().stream().map(RunOut.Turn::vector).toList();
    RunOut.Seatings split = RunOut.seatings(seats, vectors);
    int k = seats.length;
    double squares = 0;
    double freedom = 2.0 * k - 4;
    if (k > 2) {
      for (int i = 0; i < k; i++) {
        RunOutVector rest =
            vectors.get(i).minus(split.spindle()).minus(split.bar().turned(seats[i]));
        squares += rest.size() * rest.size();
      }
      squares /= freedom;
    } else {
      freedom = bySeat.values().stream().mapToDouble(RunOut.Turn::freedom).sum();
      squares =
          bySeat.values().stream().mapToDouble(t -> t.uncertainty() * t.uncertainty()).sum() / k;
      draft.notes.add(
          "Two seatings separate taper and bar, but tell nothing of the seating's own scatter; seat"
              + " the bar at four angles.");
    }
    double u = Math.max(Math.sqrt(squares), draft.trial().stepDoubt() / 2) / Math.sqrt(k);
    double size = RunOut.corrected(split.spindle().size(), u);
    draft.add(
        name,
        2 * size,
        Unit.MICRON,
        new Draft.Repeats(k, "seatings", false),
        0,
        "re-cut the taper in its own bearings; the high side lies at "
            + Numbers.fixed(Math.toDegrees(-split.spindle().angle()), 0)
            + " degrees of the spindle",
        SEATINGS,
        Contribution.readings("scatter of the seatings", u, 2, Math.max(1, freedom)),
        draft.instrument(1));
    draft.notes.add(
        name
            + ": the bar itself runs out by "
            + Numbers.fixed(2000 * split.bar().size(), 1)
            + " µm; that is not the spindle's.");
  }

  private void axis(String name, List<Reach> places, double ownWeight) {
    double near = places.get(0).z();
    double far = places.get(places.size() - 1).z();
    if (far > overhang) {
      throw new IllegalArgumentException(
          "z: the far place lies beyond the overhang of the bar; check both");
    }
    SortedMap<Double, RunOut.Turn> first = places.get(0).bySeat();
    List<Double> differences = new ArrayList<>();
    places
        .get(places.size() - 1)
        .bySeat()
        .forEach(
            (seat, turn) -> {
              RunOut.Turn start = first.get(seat);
              if (start != null) {
                differences.add(turn.mean() - start.mean());
              }
            });
    double[] d = differences.stream().mapToDouble(Double::doubleValue).toArray();
    double sag = ownWeight == 0 ? 0 : own(far) - own(near);
    double touch = touch(far) - touch(near);
    Contribution scatter = draft.scatter("scatter of the seatings", d, 1);
    double value = Sample.of(d).mean() + sag + touch;
    Contribution force =
        Contribution.of("force of the indicator", touch, Contribution.Shape.RECTANGULAR, 1);
    draft.add(
        name,
        value,
        Unit.MICRON,
        new Draft.Repeats(d.length, "seatings", true),
        far - near,
        adjust(name, value / (far - near)),
        AXIS,
        scatter,
        draft.instrument(1),
        force);
  }

  private double own(double z) {
    return TestBar.sag(z, overhang, weight, 0, rigidity);
  }

  private double touch(double z) {
    return z > 0 ? TestBar.sag(z, z, 0, MIDDLE_FORCE, rigidity) : 0;
  }

  private String adjust(String name, double slope) {
    Trial trial = draft.trial();
    double feet = trial.given("foot spacing");
    double lever = trial.given("lever");
    String level = ", after the bed is level and free of twist";
    if (name.equals(VERTICAL)) {
      return feet == 0
          ? "state the foot spacing, and the shim is said here"
          : "shim "
              + Evaluations.mm(Math.abs(slope) * feet)
              + " under the "
              + (slope > 0 ? "rear" : "front")
              + " foot of the headstock"
              + level;
    }
    return lever == 0
        ? "state the lever, and the way of the adjusting screw is said here"
        : "move the headstock by "
            + Evaluations.mm(Math.abs(slope) * lever)
            + " at the adjusting screw, nose "
            + (slope > 0 ? "away from" : "towards")
            + " the tool"
            + turns(trial, Math.abs(slope) * lever)
            + level;
  }

  /**
   * Returns the turns of the adjusting screw in words.
   *
   * @param way way of the screw [mm]
   */
  static String turns(Trial trial, double way) {
    double pitch = trial.given("screw pitch");
    return pitch == 0 ? "" : " (" + Numbers.fixed(way / pitch, 2) + " turns of the screw)";
  }
}
