package fettle.machine.trials;

import fettle.mechanics.metrology.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * What follows from one trial.
 *
 * @param trial the trial
 * @param lines its figures
 * @param table correction table: place and correction, both in mm; may be empty
 * @param chart readings over the years, if the trial keeps such a record
 * @param learned what the trial teaches of the lathe's values, if it is to
 * @param gaps readings that are missing
 * @param outliers readings that stand out; none of them was dropped
 * @param notes what else should be known
 * @param cautions what can hurt somebody
 */
public record Proof(
    Trial trial,
    List<Line> lines,
    List<Correction> table,
    Optional<Chart> chart,
    Optional<Learned> learned,
    List<String> gaps,
    List<String> outliers,
    List<String> notes,
    List<String> cautions) {

  /** Keeps its own copies. */
  public Proof {
    lines = List.copyOf(lines);
    table = List.copyOf(table);
    gaps = List.copyOf(gaps);
    outliers = List.copyOf(outliers);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /**
   * A figure, its verdict and how it meets the forecast.
   *
   * @param figure the figure
   * @param judged its verdict, if a limit is given
   * @param met the forecast's figure, if there is one
   */
  public record Line(Measured figure, Optional<Judged> judged, Optional<Met> met) {}

  /**
   * One entry of a correction table.
   *
   * @param place reading of the dial [mm]
   * @param correction what to add to it [mm]
   */
  public record Correction(double place, double correction) {}

  /** Tells whether some figure is proven outside its limit. */
  public boolean notGood() {
    return lines.stream()
        .flatMap(l -> l.judged().stream())
        .anyMatch(j -> j.verdict().outcome() == Verdict.Outcome.NOT_GOOD);
  }
}
