package fettle.machine.trials;

import fettle.machine.lathe.Dial;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.DialReading;
import fettle.mechanics.metrology.DialTest;
import fettle.mechanics.metrology.Harmonic;
import fettle.mechanics.metrology.PositioningReading;
import fettle.mechanics.metrology.PositioningTest;
import fettle.mechanics.metrology.PositioningUncertainty;
import fettle.mechanics.metrology.Quantiles;
import fettle.mechanics.metrology.RunOut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A dial against an indicator or scale, both ways, several runs. */
final class DialTrial {

  static final String TRAVEL = "travel per turn";
  static final String GAIN = "gain";
  static final String REVERSAL = "reversal";
  static final String SYSTEMATIC = "systematic deviation E";
  static final String REPEATABILITY = "repeatability R";
  static final String ACCURACY = "accuracy A";

  static final Source POSITIONING = Source.memory("ISO 230-2:2014", "clause 3");
  private static final Source FIT =
      Source.derived("least squares: an offset for each run, travel, reversal, periodic errors");
  private static final long SEED = 85_420L;
  private static final int TABLE_PLACES = 12;
  private static final double FOUND = 2.5;

  private DialTrial() {}

  static List<Double> periods(Trial trial) {
    List<Double> periods = new ArrayList<>();
    if (trial.values().held().get("periods") instanceof List<?> list) {
      list.forEach(q -> periods.add(((Quantity) q).value()));
    }
    return periods;
  }

  /**
   * Returns the name of the periodic error of a period.
   *
   * @param period period [turns]
   */
  static String periodic(double period) {
    return "error that comes back every "
        + (period == 1 ? "turn" : Numbers.significant(period, 4) + " turns");
  }

  static void evaluate(Draft draft, Optional<Machine> machine) {
    Trial trial = draft.trial();
    List<DialReading> readings = new ArrayList<>();
    for (Readings.Line l : trial.readings().lines()) {
      readings.add(new DialReading(l.whole(0), l.whole(1), l.at(2), l.reading()));
    }
    double[] periods = periods(trial).stream().mapToDouble(Double::doubleValue).toArray();
    DialTest test = DialTest.of(readings, periods);
    if (test.fit().freedom() < 1) {
      throw new IllegalArgumentException("too few readings for so many periods; take more");
    }
    draft.gaps.addAll(test.gaps());
    draft.outliers.addAll(test.outliers());
    if (test.fit().isWeak()) {
      draft.notes.add(
          "Some of these errors can hardly be told apart at these places; read at odd parts of a"
              + " turn as well.");
    }
    travel(draft, test, machine);
    reversal(draft, test);
    for (int k = 1; k <= periods.length; k++) {
      periodic(draft, test, k);
    }
  }

  private static int runs(DialTest test) {
    return (int) test.readings().stream().map(DialReading::run).distinct().count();
  }

  /** Returns turns between the first and the last place [turns]. */
  private static double range(DialTest test) {
    double low = test.readings().stream().mapToDouble(DialReading::turns).min().orElse(0);
    double high = test.readings().stream().mapToDouble(DialReading::turns).max().orElse(0);
    return high - low;
  }

  private static double floored(Draft draft, DialTest test, String coefficient) {
    double s = test.fit().deviation();
    double least = draft.trial().stepDoubt();
    double u = test.fit().uncertainty(coefficient);
    return s >= least || s == 0 ? Math.max(u, s == 0 ? least : 0) : u * least / s;
  }

  private static void travel(Draft draft, DialTest test, Optional<Machine> machine) {
    Trial trial = draft.trial();
    double travel = test.travelPerTurn();
    Contribution[] causes = causes(draft, test, 1);
    Draft.Repeats runs = new Draft.Repeats(runs(test), "runs both ways", true);
    Optional<Dial> dial = machine.map(m -> m.dials().get(trial.values().needText("dial")));
    if (dial.isEmpty()) {
      draft.add(TRAVEL, travel, Unit.MM, runs, 0, "", FIT, causes);
      return;
    }
    Dial d = dial.get();
    double nominal = d.division().value() * d.lines() / d.perTravel();
    draft.add(TRAVEL, travel, Unit.MM, runs, 0, "", FIT, causes);
    draft.expected.put(TRAVEL, "travel/" + d.train() + "/travel per turn");
    draft.expected.put(GAIN, "dials/" + d.name() + "/error of the dial");
    double move =
        trial.given("longest move") > 0 ? trial.given("longest move") : travel * range(test);
    double gain = travel / nominal - 1;
    Measured measured = draft.figures().get(draft.figures().size() - 1);
    String remedy =
        DialTest.remedy(
            gain,
            measured.expanded() / nominal,
            Math.abs(move),
            d.division().value() / d.perTravel());
    draft.add(GAIN, gain, Unit.PPM, runs, 0, remedy, FIT, causes(draft, test, 1 / nominal));
    double first = test.readings().stream().mapToDouble(DialReading::turns).min().orElse(0);
    for (int i = 0; i <= TABLE_PLACES; i++) {
      double turns = first + range(test) * i / TABLE_PLACES;
      double correction = test.error(turns, nominal) - test.error(first, nominal);
      draft.table.add(new Proof.Correction((turns - first) * nominal, correction));
    }
    positioning(draft, test, nominal);
  }

  /**
   * Returns the causes of uncertainty of the travel per turn.
   *
   * @param factor sensitivity [result/mm]
   */
  private static Contribution[] causes(Draft draft, DialTest test, double factor) {
    Trial trial = draft.trial();
    double u = floored(draft, test, "T");
    double freedom = test.fit().freedom();
    double between = test.runScatter();
    int runs = runs(test);
    if (runs > 1
        && between * between > u * u * Quantiles.fisher(0.95, runs - 1.0, Math.max(1, freedom))) {
      u = between;
      freedom = runs - 1.0;
      draft.notes.add(
          "The travel per turn differs from run to run more than the readings scatter.");
    }
    List<Contribution> causes = new ArrayList<>();
    causes.add(Contribution.readings("scatter of the readings", u, factor, freedom));
    causes.add(draft.instrument(factor / range(test)));
    causes.add(
        Contribution.of(
            "length standard",
            trial.given("scale doubt") * Math.abs(test.travelPerTurn()),
            Contribution.Shape.CERTIFICATE,
            factor));
    return causes.toArray(new Contribution[0]);
  }

  private static void reversal(Draft draft, DialTest test) {
    if (!test.hasBacklash()) {
      draft.notes.add("All readings approach from one side: nothing is known of the reversal.");
      return;
    }
    double retrace = draft.trial().retrace();
    draft.add(
        REVERSAL,
        test.backlash() - retrace / 2,
        Unit.MICRON,
        new Draft.Repeats(runs(test), "runs both ways", true),
        0,
        "approach from one side, or take up the nut, the thrust or the mesh by what is too much",
        FIT,
        Contribution.readings(
            "scatter of the readings", floored(draft, test, "B"), 1, test.fit().freedom()),
        lag(retrace));
    draft
        .trial()
        .values()
        .text("dial")
        .ifPresent(
            d ->
                draft.notes.add(
                    "Half the instrument's retrace, "
                        + Numbers.fixed(retrace * 500, 1)
                        + " µm, is taken off the reversal seen; a pointer's lag always adds to it."));
  }

  /**
   * Returns the contribution of the pointer's lag, anywhere from none to its largest.
   *
   * @param retrace largest lag [mm]
   */
  static Contribution lag(double retrace) {
    return Contribution.of("lag of the pointer", retrace / 2, Contribution.Shape.RECTANGULAR, 1);
  }

  private static void periodic(Draft draft, DialTest test, int k) {
    Harmonic harmonic = test.harmonic(k);
    double period = test.periods().get(k - 1);
    double u = Math.max(harmonic.uncertainty(), 1e-9);
    double size = RunOut.corrected(harmonic.amplitude(), u);
    String name = periodic(period);
    if (harmonic.amplitude() < FOUND * u) {
      draft.notes.add("The " + name + " does not stand out of the scatter.");
    }
    draft.add(
        name,
        size,
        Unit.MICRON,
        new Draft.Repeats(runs(test), "runs both ways", false),
        0,
        "cure the part that turns once in this period: its seat, thrust face or gear runs out",
        FIT,
        Contribution.readings("scatter of the readings", u, 1, test.fit().freedom()));
  }

  private static void positioning(Draft draft, DialTest test, double nominal) {
    double middle = test.readings().stream().mapToDouble(DialReading::turns).average().orElse(0);
    List<PositioningReading> deviations = new ArrayList<>();
    for (DialReading r : test.readings()) {
      double x = r.position() - test.fit().value("o" + r.run()) - nominal * (r.turns() - middle);
      deviations.add(new PositioningReading(r.turns() * nominal, r.direction(), r.run(), x));
    }
    double travel = Math.abs(nominal) * range(test);
    positioning(
        draft,
        deviations,
        Math.hypot(
            draft.trial().given("scale doubt") / 2, draft.trial().instrumentDoubt() / travel),
        List.of(SYSTEMATIC, REPEATABILITY, ACCURACY));
    draft.notes.add(
        "E, R and A take each run from its own zero, and hold the indicator's lag; the standard asks"
            + " for five runs each way.");
  }

  /**
   * Adds figures after ISO 230-2 where every place was read twice or more from both sides.
   *
   * @param scale relative standard uncertainty of the length standard [-]
   */
  static void positioning(
      Draft draft, List<PositioningReading> deviations, double scale, List<String> wanted) {
    PositioningTest test = PositioningTest.of(deviations);
    if (!test.isBidirectional()) {
      draft.notes.add(
          "Not every place was read twice from both sides: no figures after ISO 230-2.");
      return;
    }
    PositioningUncertainty u = PositioningUncertainty.of(test, scale, draft.draws, SEED);
    for (String name : wanted) {
      String letter = name.substring(name.length() - 1);
      double value =
          switch (letter) {
            case "E" -> test.systematic();
            case "R" -> test.repeatability();
            default -> test.accuracy();
          };
      draft.add(
          name,
          value,
          Unit.MICRON,
          new Draft.Repeats(fewest(test), "runs both ways", false),
          0,
          "",
          POSITIONING,
          Contribution.readings(
              "scatter of the readings",
              u.standard().get(u.names().indexOf(letter)),
              1,
              Double.POSITIVE_INFINITY));
    }
  }

  private static int fewest(PositioningTest test) {
    return test.targets().stream()
        .mapToInt(t -> Math.min(t.up().size(), t.down().size()))
        .min()
        .orElse(1);
  }
}
