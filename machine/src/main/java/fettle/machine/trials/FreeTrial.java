package fettle.machine.trials;

import fettle.machine.text.Quantity;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Sample;
import java.util.ArrayList;
import java.util.List;

/** Any figure, read several times. */
final class FreeTrial {

  private static final Source MEAN = Source.derived("mean of the readings");

  private FreeTrial() {}

  static String name(Trial trial) {
    return trial.values().text("figure").orElse("figure");
  }

  /** Returns the unit of the readings; a number without unit if what is stated is none. */
  static Unit unit(Trial trial) {
    return Unit.parse(trial.values().text("unit").orElse("")).orElse(Unit.ONE);
  }

  /**
   * Returns the standard uncertainty common to all readings.
   *
   * @return half the doubt stated [coherent]
   */
  static double doubt(Trial trial) {
    Unit unit = unit(trial);
    try {
      return Quantity.parse(trial.values().needText("reading doubt"), unit.dimension(), unit)
              .value()
          / 2;
    } catch (Quantity.NotOne e) {
      throw new IllegalArgumentException("reading doubt: expected " + e.expected(), e);
    }
  }

  static void evaluate(Draft draft) {
    Trial trial = draft.trial();
    Unit unit = unit(trial);
    List<Double> values = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (Readings.Line l : trial.readings().lines()) {
      values.add(unit.toCoherent(l.reading()));
      numbers.add(l.whole(0));
    }
    double[] read = values.stream().mapToDouble(v -> v).toArray();
    if (read.length < 2) {
      throw new IllegalArgumentException("read once, expected twice or more");
    }
    Sample sample = Sample.of(read);
    draft.add(
        name(trial),
        sample.mean(),
        unit,
        new Draft.Repeats(read.length, "readings", true),
        0,
        "",
        MEAN,
        Contribution.readings(
            "scatter of the readings",
            sample.standardDeviation() / Math.sqrt(read.length),
            1,
            read.length - 1.0),
        common(trial));
    Odd.of(values, unit, "reading", numbers, draft);
    trial.values().text("foretold by").ifPresent(id -> draft.expected.put(name(trial), id));
  }

  static Contribution common(Trial trial) {
    return new Contribution(
        "doubt common to the readings",
        doubt(trial),
        1,
        Double.POSITIVE_INFINITY,
        Contribution.Kind.JUDGEMENT);
  }
}
