package fettle.machine.trials;

import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Evaluates trials. */
public final class Evaluations {

  private static final int DRAWS = 2000;

  private Evaluations() {}

  /** Returns the keys that a kind of trial cannot do without. */
  public static List<String> needs(Kind kind) {
    return switch (kind) {
      case DIAL -> List.of("dial");
      case REVERSAL -> List.of();
      case TEST_BAR -> List.of("overhang", "bar diameter");
      case TWO_COLLARS -> List.of("distance");
      case TAILSTOCK -> List.of("distance", "between centres");
      case PUSH -> List.of("least force");
      case FACING -> List.of("radius");
      case PRELOAD -> List.of("rows");
      case FREE, RECORD -> List.of("figure", "unit", "reading doubt");
      case AXIAL_FLOAT, BED, LEAD_SCREW, SPEEDS, RUN_IN -> List.of();
    };
  }

  /** Returns the figures a trial can give, each with its unit. */
  static Map<String, Unit> names(Trial trial) {
    Map<String, Unit> names = new LinkedHashMap<>();
    switch (trial.kind()) {
      case DIAL -> {
        names.put(DialTrial.TRAVEL, Unit.MM);
        names.put(DialTrial.GAIN, Unit.PPM);
        names.put(DialTrial.REVERSAL, Unit.MICRON);
        DialTrial.periods(trial).forEach(p -> names.put(DialTrial.periodic(p), Unit.MICRON));
        names.put(DialTrial.SYSTEMATIC, Unit.MICRON);
        names.put(DialTrial.REPEATABILITY, Unit.MICRON);
        names.put(DialTrial.ACCURACY, Unit.MICRON);
      }
      case REVERSAL -> {
        names.put(DialTrial.REVERSAL, Unit.MICRON);
        names.put(DialTrial.REPEATABILITY, Unit.MICRON);
      }
      case TEST_BAR -> {
        names.put(BarTrial.NEAR, Unit.MICRON);
        names.put(BarTrial.FAR, Unit.MICRON);
        names.put(BarTrial.HORIZONTAL, Unit.MICRON);
        names.put(BarTrial.VERTICAL, Unit.MICRON);
      }
      case TWO_COLLARS -> names.put(CollarTrial.TAPER, Unit.MICRON);
      case TAILSTOCK -> {
        names.put(TailstockTrial.SIDEWAYS, Unit.MICRON);
        names.put(TailstockTrial.HEIGHT, Unit.MICRON);
      }
      case PUSH -> {
        names.put(PushTrial.STIFFNESS, Unit.N_PER_MICRON);
        names.put(PushTrial.LOST, Unit.MICRON);
        names.put(PushTrial.HYSTERESIS, Unit.MICRON);
      }
      case AXIAL_FLOAT -> {
        names.put(FloatTrial.SLIP, Unit.MICRON);
        names.put(FloatTrial.CAMMING, Unit.MICRON);
        names.put(FloatTrial.PLAY, Unit.MICRON);
      }
      case BED -> {
        names.put(BedTrial.ALONG, Unit.MICRON);
        names.put(BedTrial.TWIST, Unit.MICRON);
      }
      case FACING -> {
        names.put(FacingTrial.HOLLOW, Unit.MICRON);
        names.put(FacingTrial.SQUARE, Unit.MICRON_PER_M);
      }
      case LEAD_SCREW -> {
        names.put(LeadTrial.LEAD, Unit.PPM);
        names.put(LeadTrial.PLAY, Unit.MICRON);
        names.put(LeadTrial.within(60), Unit.MICRON);
        names.put(LeadTrial.within(300), Unit.MICRON);
      }
      case SPEEDS -> SpeedTrial.names(trial).forEach(n -> names.put(n, Unit.RPM));
      case RUN_IN ->
          List.of("front", "rear")
              .forEach(
                  p -> {
                    names.put(RunInTrial.rise(p), Unit.K);
                    names.put(RunInTrial.time(p), Unit.MIN);
                  });
      case PRELOAD -> {
        names.put(PreloadTrial.KNEE, Unit.N);
        names.put(PreloadTrial.PRELOAD, Unit.N);
      }
      case FREE -> names.put(FreeTrial.name(trial), FreeTrial.unit(trial));
      case RECORD -> {
        names.put(FreeTrial.name(trial), FreeTrial.unit(trial));
        names.put(RecordTrial.DRIFT, FreeTrial.unit(trial));
      }
    }
    return names;
  }

  /**
   * Evaluates a trial.
   *
   * @throws IllegalArgumentException if its readings do not allow it; the message says why
   */
  public static Proof of(Trial trial, Book book) {
    if (trial.readings().lines().isEmpty()) {
      throw new IllegalArgumentException("no reading was taken");
    }
    State state = Trials.state(book, trial);
    Optional<Machine> machine = state.machine();
    Draft draft = draft(trial, machine, DRAWS);
    Map<String, Figure> forecast = new LinkedHashMap<>();
    if (!draft.expected.isEmpty()) {
      machine.ifPresent(
          m -> Topics.study(m, book.shop()).figures().forEach(f -> forecast.put(f.id(), f)));
    }
    List<Proof.Line> lines = new ArrayList<>();
    for (Measured figure : draft.figures()) {
      Optional<Judged> judged = Limits.of(trial, figure).map(l -> Judged.of(figure, l));
      Optional<Met> met =
          Optional.ofNullable(forecast.get(draft.expected.getOrDefault(figure.name(), "")))
              .flatMap(f -> f.working().map(w -> Met.of(figure, f, w)));
      lines.add(new Proof.Line(figure, judged, met));
    }
    return new Proof(
        trial,
        lines,
        draft.table,
        draft.chart,
        Learned.of(trial, book, book.tree(state.changes()), lines),
        draft.gaps,
        draft.outliers,
        draft.notes,
        draft.cautions);
  }

  /** Evaluates the readings alone, with so many draws for extreme values. */
  static Draft draft(Trial trial, Optional<Machine> machine, int draws) {
    Draft draft = new Draft(trial, draws);
    switch (trial.kind()) {
      case DIAL -> DialTrial.evaluate(draft, machine);
      case REVERSAL -> ReversalTrial.evaluate(draft);
      case TEST_BAR -> BarTrial.evaluate(draft);
      case TWO_COLLARS -> CollarTrial.evaluate(draft);
      case TAILSTOCK -> TailstockTrial.evaluate(draft);
      case PUSH -> PushTrial.evaluate(draft);
      case AXIAL_FLOAT -> FloatTrial.evaluate(draft);
      case BED -> BedTrial.evaluate(draft);
      case FACING -> FacingTrial.evaluate(draft);
      case LEAD_SCREW -> LeadTrial.evaluate(draft);
      case SPEEDS -> SpeedTrial.evaluate(draft);
      case RUN_IN -> RunInTrial.evaluate(draft);
      case PRELOAD -> PreloadTrial.evaluate(draft);
      case FREE -> FreeTrial.evaluate(draft);
      case RECORD -> RecordTrial.evaluate(draft);
    }
    return draft;
  }

  /**
   * Returns a length as it is said in a remedy.
   *
   * @param length the length [mm]
   */
  static String mm(double length) {
    return Numbers.fixed(length, 3) + " mm";
  }
}
