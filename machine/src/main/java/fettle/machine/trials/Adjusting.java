package fettle.machine.trials;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Adjustment;
import fettle.mechanics.metrology.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What to adjust, from all trials of the alignment together: least squares of the errors, each over
 * its limit, with the moves that screws and the shims at hand allow.
 *
 * @param steps the moves, in the order in which they are made
 * @param rows the figures before and after
 * @param notes what cannot be told apart, and what to do between the moves
 */
public record Adjusting(List<Step> steps, List<Row> rows, List<String> notes) {

  /** Doubt of what a move does, as part of it: common practice, 10 to 20 %. */
  private static final double DOUBT = 0.15;

  private static final List<String> ALIGNED =
      List.of(
          BedTrial.TWIST,
          BarTrial.VERTICAL,
          BarTrial.HORIZONTAL,
          CollarTrial.TAPER,
          FacingTrial.HOLLOW,
          TailstockTrial.HEIGHT,
          TailstockTrial.SIDEWAYS);

  /** Keeps its own copies. */
  public Adjusting {
    steps = List.copyOf(steps);
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }

  /**
   * One move.
   *
   * @param adjuster its name
   * @param move how far [mm]
   * @param words how far and which way, in turns or shims
   */
  public record Step(String adjuster, double move, String words) {}

  /**
   * One figure before and after the moves.
   *
   * @param trial the trial it comes from
   * @param figure the figure
   * @param limit its limit
   * @param target where it is brought to [coherent]
   * @param after what is left [coherent]
   * @param before probability that it keeps its limit now [-]
   * @param kept probability that it keeps its limit afterwards [-]
   */
  public record Row(
      String trial,
      Measured figure,
      Limit limit,
      double target,
      double after,
      double before,
      double kept) {}

  /** Plans the moves; empty if the lathe states no adjusters or no figure of theirs has a limit. */
  public static Optional<Adjusting> of(Machine machine, Collection<Proof> proofs) {
    Map<String, Values> known = machine.values().map("adjusters");
    List<Adjuster> adjusters =
        known.entrySet().stream()
            .map(e -> new Adjuster(e.getKey(), e.getValue()))
            .sorted(Comparator.comparingInt(Adjuster::order))
            .toList();
    List<Row> rows = new ArrayList<>();
    for (Proof proof : proofs) {
      for (Proof.Line line : proof.lines()) {
        line.judged()
            .map(Judged::limit)
            .filter(l -> ALIGNED.contains(line.figure().name()))
            .filter(l -> Double.isFinite(l.low()) && Double.isFinite(l.high()))
            .ifPresent(l -> rows.add(row(proof.trial().name(), line.figure(), l, 0, 0)));
      }
    }
    rows.sort(Comparator.comparingInt(r -> ALIGNED.indexOf(r.figure.name())));
    List<Adjuster> moving =
        adjusters.stream()
            .filter(a -> rows.stream().anyMatch(r -> a.effect(r.figure) != 0))
            .limit(Adjustment.MOST_ADJUSTERS)
            .toList();
    return rows.isEmpty() || moving.isEmpty() ? Optional.empty() : Optional.of(plan(moving, rows));
  }

  private static Row row(String trial, Measured m, Limit limit, double change, double effect) {
    double after = m.value() + change;
    double u = Math.hypot(m.standard(), DOUBT * effect);
    return new Row(
        trial,
        m,
        limit,
        target(limit),
        after,
        kept(m.value(), m.standard(), limit),
        kept(after, u, limit));
  }

  /** A band from 0 is aimed at a third of it, so that wear runs inside; others at the middle. */
  private static double target(Limit limit) {
    return limit.low() == 0 ? limit.high() / 3 : (limit.low() + limit.high()) / 2;
  }

  private static double kept(double value, double u, Limit limit) {
    return Verdict.between(value, u, limit.low(), limit.high(), 0.95).probability();
  }

  private static Adjusting plan(List<Adjuster> adjusters, List<Row> rows) {
    int n = adjusters.size();
    double[] errors = new double[rows.size()];
    double[] limits = new double[rows.size()];
    double[][] influence = new double[rows.size()][n];
    for (int i = 0; i < errors.length; i++) {
      Row row = rows.get(i);
      errors[i] = row.figure.value() - row.target;
      limits[i] = (row.limit.high() - row.limit.low()) / 2;
      for (int k = 0; k < n; k++) {
        influence[i][k] = adjusters.get(k).effect(row.figure);
      }
    }
    List<List<Double>> allowed = adjusters.stream().map(Adjuster::allowed).toList();
    double[] low = new double[n];
    double[] high = new double[n];
    double[] moves = Adjustment.of(errors, limits, influence).discrete(allowed, low, high);
    List<Row> after = new ArrayList<>();
    for (int i = 0; i < errors.length; i++) {
      double change = 0;
      double squares = 0;
      for (int k = 0; k < n; k++) {
        double part = influence[i][k] * moves[k];
        change += part;
        squares += part * part;
      }
      Row row = rows.get(i);
      after.add(row(row.trial, row.figure, row.limit, change, Math.sqrt(squares)));
    }
    List<Step> steps = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      if (Math.abs(moves[k]) > 1e-9) {
        steps.add(new Step(adjusters.get(k).name(), moves[k], words(adjusters.get(k), moves[k])));
      }
    }
    return new Adjusting(steps, after, notes(adjusters, after));
  }

  private static String words(Adjuster adjuster, double move) {
    double[] shims = adjuster.shims();
    if (shims.length > 0) {
      double[] pieces = Adjustment.stack(shims, move);
      return "shim " + Evaluations.mm(move) + " (" + pieces(pieces) + ")";
    }
    String way =
        adjuster.does().endsWith("sideways")
            ? (move > 0 ? " towards" : " away from") + " the tool"
            : move > 0 ? " up" : " down";
    double pitch = adjuster.given("pitch");
    return "move "
        + Evaluations.mm(Math.abs(move))
        + way
        + (pitch == 0
            ? ""
            : ", " + Numbers.fixed(Math.abs(move) / pitch, 3) + " turns of the screw");
  }

  private static String pieces(double[] pieces) {
    return String.join(
        " + ",
        Arrays.stream(pieces)
            .mapToObj(p -> Numbers.significant(Unit.MICRON.fromCoherent(p), 4) + " µm")
            .toList());
  }

  private static List<String> notes(List<Adjuster> adjusters, List<Row> rows) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Make the moves in this order, the first big ones to four fifths; clamp as in use and read"
            + " again after each, for every later reading holds the earlier errors.");
    if (has(rows, CollarTrial.TAPER)) {
      notes.add(
          "Turned collars cannot tell a leaning axis from a twisted bed or a worn tool: the bed's"
              + " level comes first.");
    }
    if (rows.stream().allMatch(r -> r.kept() >= 0.95)) {
      notes.add("After these moves every limit is kept with 95 % probability or more.");
    } else {
      rows.stream()
          .filter(r -> r.kept() < 0.95)
          .forEach(r -> notes.add("Still open: " + r.figure().name() + " (" + r.trial() + ")."));
    }
    if (adjusters.stream().anyMatch(a -> a.does().startsWith("bed"))) {
      notes.add(
          "How much the bed follows its foot is a guess until the first lift was measured: put what"
              + " it did into 'response'.");
    }
    return notes;
  }

  private static boolean has(List<Row> rows, String name) {
    return rows.stream().anyMatch(r -> r.figure().name().equals(name));
  }
}
