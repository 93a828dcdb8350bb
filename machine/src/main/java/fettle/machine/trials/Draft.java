package fettle.machine.trials;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Sample;
import fettle.mechanics.metrology.UncertaintyBudget;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gathers what one evaluation finds. */
final class Draft {

  private final Trial trial;
  private final List<Measured> figures = new ArrayList<>();
  final List<Proof.Correction> table = new ArrayList<>();
  final List<String> gaps = new ArrayList<>();
  final List<String> outliers = new ArrayList<>();
  final List<String> notes = new ArrayList<>();
  final List<String> cautions = new ArrayList<>();

  /** Readings over the years, if the trial keeps such a record. */
  Optional<Chart> chart = Optional.empty();

  /** Id of the forecast's figure for a figure's name. */
  final Map<String, String> expected = new LinkedHashMap<>();

  /** Draws for the uncertainty of extreme values. */
  final int draws;

  Draft(Trial trial, int draws) {
    this.trial = trial;
    this.draws = draws;
    gaps.addAll(trial.readings().gaps());
  }

  Trial trial() {
    return trial;
  }

  List<Measured> figures() {
    return figures;
  }

  void add(
      String name,
      double value,
      Unit unit,
      Repeats repeats,
      double length,
      String adjust,
      Source source,
      Contribution... causes) {
    figures.add(
        new Measured(
            name,
            value,
            UncertaintyBudget.of(causes),
            unit,
            repeats.signed(),
            length,
            repeats.taken(),
            repeats.word(),
            adjust,
            source));
  }

  /**
   * What a figure rests on.
   *
   * @param taken how often it was taken
   * @param word what would be taken again, in the plural
   * @param signed true if the figure may be negative
   */
  record Repeats(int taken, String word, boolean signed) {}

  /**
   * Returns the mean's contribution of a repeated value, not below what the step of the reading
   * allows.
   *
   * @param name what scatters
   * @param values the repeated values [mm]
   * @param factor sensitivity [result/mm]
   */
  Contribution scatter(String name, double[] values, double factor) {
    if (values.length < 2) {
      throw new IllegalArgumentException(
          name + ": taken once, expected at least twice; without repeats nothing is known of it");
    }
    double s = Sample.of(values).standardDeviation();
    double least = trial.stepDoubt() * Math.sqrt(2);
    double u = Math.max(s, least) / Math.sqrt(values.length);
    return Contribution.readings(name, u, factor, values.length - 1.0);
  }

  /**
   * Returns the contribution of the instrument to a difference of two readings.
   *
   * @param factor sensitivity [result/mm]
   */
  Contribution instrument(double factor) {
    return new Contribution(
        "doubt of the " + trial.values().needText("instrument"),
        trial.instrumentDoubt(),
        factor,
        Double.POSITIVE_INFINITY,
        Contribution.Kind.JUDGEMENT);
  }
}
