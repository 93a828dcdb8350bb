package fettle.desk.pack;

import fettle.desk.page.Amount;
import fettle.machine.forecast.Row;
import fettle.machine.forecast.Verdict;
import fettle.machine.trials.BenchSheet;
import fettle.machine.trials.Evaluations;
import fettle.machine.trials.Judged;
import fettle.machine.trials.Limit;
import fettle.machine.trials.Measured;
import fettle.machine.trials.Met;
import fettle.machine.trials.Proof;
import fettle.machine.trials.Trial;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.List;

/** How a change is proved: its trials with what they must give, and a sheet to take readings on. */
final class ProofChapter {

  private static final int MOST_ROWS = 400;
  private static final int SUGGESTED = 8;

  private ProofChapter() {}

  static Chapter of(PackSource source) {
    List<Block> blocks = new ArrayList<>();
    if (source.trials().isEmpty()) {
      blocks.add(
          new Block.Prose(
              "The book describes no trial that proves this change. These figures of the forecast"
                  + " can be measured; write them down before the lathe is stripped and again when"
                  + " it is whole."));
      Block.Form form = suggested(source);
      if (!form.rows().isEmpty()) {
        blocks.add(form);
      }
    }
    for (Trial trial : source.trials().values()) {
      trial(source, trial, blocks);
    }
    return Chapter.of("How to prove it", blocks);
  }

  private static Block.Form suggested(PackSource source) {
    List<List<String>> rows =
        source.forecast().rows().stream()
            .filter(r -> r.verdict() != Verdict.SAME && r.verdict() != Verdict.GONE)
            .filter(r -> r.after().flatMap(f -> f.working()).isPresent())
            .limit(SUGGESTED)
            .map(r -> List.of(r.figure().subject() + ": " + r.figure().name(), foretold(source, r)))
            .toList();
    return new Block.Form(List.of("figure", "foretold", "measured            "), rows);
  }

  private static String foretold(PackSource source, Row row) {
    return row.after()
        .flatMap(f -> f.working())
        .map(w -> Amount.of(w.value(), w.doubt(), w.unit(), source.measure()).text())
        .orElse("");
  }

  private static void trial(PackSource source, Trial trial, List<Block> blocks) {
    blocks.add(new Block.Heading(trial.values().needText("what")));
    blocks.add(
        new Block.Prose(
            "Kind of trial: "
                + trial.kind().word()
                + ". Instrument: "
                + trial.values().needText("instrument")
                + "."));
    evaluated(source, trial, blocks);
    if (source.shows(Held.TRIALS)) {
      sheet(source, trial, blocks);
    }
  }

  private static void evaluated(PackSource source, Trial trial, List<Block> blocks) {
    Proof proof;
    try {
      proof = Evaluations.of(trial, source.book());
    } catch (IllegalArgumentException e) {
      blocks.add(new Block.Prose("Not evaluated yet: " + e.getMessage() + "."));
      return;
    }
    boolean measured = source.shows(Held.TRIALS);
    List<Block.Column> columns =
        new ArrayList<>(
            List.of(
                Block.Column.left("figure", 50),
                Block.Column.left("limit", 34),
                Block.Column.right("foretold", 36)));
    if (measured) {
      columns.add(Block.Column.right("measured", 32));
      columns.add(Block.Column.left("verdict", 18));
    }
    List<List<String>> rows = new ArrayList<>();
    for (Proof.Line line : proof.lines()) {
      Measured m = line.figure();
      List<String> row =
          new ArrayList<>(
              List.of(
                  m.name(),
                  line.judged().map(j -> limit(j.limit(), m.unit())).orElse(""),
                  line.met().map(f -> foretold(f, m.unit())).orElse("")));
      if (measured) {
        row.add(Amount.of(m.value(), m.expanded(), m.unit(), source.measure()).text());
        row.add(line.judged().map(ProofChapter::verdict).orElse(""));
      }
      rows.add(row);
    }
    blocks.add(new Block.Grid(columns, rows));
    proof.cautions().forEach(c -> blocks.add(new Block.Caution(c)));
  }

  private static String verdict(Judged judged) {
    return judged.verdict().outcome().words();
  }

  private static String foretold(Met met, Unit unit) {
    return Amount.of(met.predicted(), met.doubt(), unit, fettle.desk.page.Measure.METRIC).text();
  }

  private static String limit(Limit limit, Unit unit) {
    if (Double.isInfinite(limit.low())) {
      return "at most " + shown(limit.high(), unit);
    }
    return Double.isInfinite(limit.high())
        ? "at least " + shown(limit.low(), unit)
        : shown(limit.low(), unit) + " to " + shown(limit.high(), unit);
  }

  private static String shown(double value, Unit unit) {
    String number = Numbers.significant(unit.fromCoherent(value), 6);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }

  /** The places of the readings as the book has them, with room for new ones. */
  private static void sheet(PackSource source, Trial trial, List<Block> blocks) {
    String text = source.files().texts().get("trials/" + trial.name() + ".csv");
    if (text == null) {
      return;
    }
    BenchSheet bench = BenchSheet.of(trial.kind(), text);
    List<List<String>> rows =
        bench.rows().stream().limit(MOST_ROWS).map(BenchSheet.Row::place).toList();
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading("Proof sheet: " + trial.name()));
    blocks.add(
        new Block.Prose("Date, instrument and room temperature: ____________________________"));
    blocks.add(new Block.Form(bench.heads().stream().map(h -> h.replace('_', ' ')).toList(), rows));
    if (bench.rows().size() > MOST_ROWS) {
      blocks.add(
          new Block.Prose((bench.rows().size() - MOST_ROWS) + " more places are not printed."));
    }
  }
}
