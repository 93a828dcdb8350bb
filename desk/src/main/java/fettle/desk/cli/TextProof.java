package fettle.desk.cli;

import fettle.machine.trials.Adjusting;
import fettle.machine.trials.Agreement;
import fettle.machine.trials.Chart;
import fettle.machine.trials.Judged;
import fettle.machine.trials.Learned;
import fettle.machine.trials.Limit;
import fettle.machine.trials.Measured;
import fettle.machine.trials.Met;
import fettle.machine.trials.Proof;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Verdict;
import java.util.List;
import java.util.Map;

/** Proofs as text. */
final class TextProof {

  private final Terminal terminal;

  TextProof(Terminal terminal) {
    this.terminal = terminal;
  }

  void print(List<Proof> proofs) {
    for (Proof proof : proofs) {
      say(
          terminal.ink(Terminal.Ink.GRAPHITE, proof.trial().name())
              + ": "
              + proof.trial().values().needText("what"));
      say(
          "  "
              + proof.trial().readings().lines().size()
              + " readings, "
              + proof.trial().values().needText("instrument")
              + proof.trial().values().text("date").map(d -> ", " + d).orElse(""));
      proof.lines().forEach(this::line);
      table(proof);
      proof.chart().ifPresent(this::chart);
      proof.learned().ifPresent(this::learned);
      proof.gaps().forEach(g -> say("  gap: " + g));
      proof.outliers().forEach(o -> say("  stands out (kept): " + o));
      proof.notes().forEach(n -> say("  note: " + n));
      proof.cautions().forEach(c -> say("  caution: " + c));
      say("");
    }
  }

  /** Prints what is not known yet. */
  void waiting(Map<String, String> waiting) {
    waiting.forEach(
        (name, words) ->
            say(
                terminal.ink(Terminal.Ink.GRAPHITE, name)
                    + ": not to be told yet; "
                    + words
                    + "\n"));
  }

  void print(Agreement agreement) {
    say(
        "forecast met: "
            + agreement.figures()
            + " figures together, chi-square "
            + Numbers.fixed(agreement.chiSquare(), 2)
            + ", probability "
            + Numbers.fixed(agreement.probability(), 3)
            + ": "
            + agreement.words());
  }

  void print(Adjusting adjusting) {
    say("to adjust, from all trials of the alignment together:");
    int number = 1;
    for (Adjusting.Step step : adjusting.steps()) {
      say("  " + number++ + ". " + step.adjuster() + ": " + step.words());
    }
    if (adjusting.steps().isEmpty()) {
      say("  nothing: no move that can be set makes it better");
    }
    say("  what is left:");
    for (Adjusting.Row row : adjusting.rows()) {
      Unit unit = row.figure().unit();
      say(
          "    "
              + row.figure().name()
              + ": "
              + Numbers.fixed(unit.fromCoherent(row.figure().value()), 1)
              + " -> "
              + shown(row.after(), unit, 3)
              + " ("
              + limit(row.limit(), unit)
              + "; kept with "
              + Numbers.fixed(100 * row.before(), 0)
              + " -> "
              + Numbers.fixed(100 * row.kept(), 0)
              + " %)");
    }
    adjusting.notes().forEach(n -> say("  note: " + n));
  }

  private void line(Proof.Line line) {
    Measured m = line.figure();
    String verdict =
        line.judged()
            .map(j -> "  " + j.verdict().outcome().words().toUpperCase(java.util.Locale.ROOT))
            .orElse("");
    boolean bad =
        line.judged().filter(j -> j.verdict().outcome() == Verdict.Outcome.NOT_GOOD).isPresent();
    say(
        "  "
            + m.name()
            + ": "
            + value(m)
            + (bad ? terminal.ink(Terminal.Ink.RED, verdict) : verdict));
    say("      k = " + Numbers.fixed(m.coverage(), 2) + "; " + causes(m));
    line.judged().ifPresent(j -> judged(m, j));
    line.met().ifPresent(f -> met(m, f));
    boolean adjust =
        !m.adjust().isEmpty()
            && line.judged().map(j -> j.verdict().outcome() != Verdict.Outcome.GOOD).orElse(true);
    if (adjust) {
      say("      to adjust: " + m.adjust());
    }
  }

  private static String causes(Measured m) {
    return String.join(
        ", ",
        m.budget().ranked().stream()
            .limit(3)
            .filter(c -> c.share() != 0)
            .map((Contribution c) -> c.name() + " " + shown(Math.abs(c.share()), m.unit(), 2))
            .toList());
  }

  private void judged(Measured m, Judged j) {
    say(
        "      limit: "
            + limit(j.limit(), m.unit())
            + " ("
            + j.limit().source()
            + "); kept with "
            + Numbers.fixed(100 * j.verdict().probability(), 1)
            + " % probability");
    if (!j.way().isEmpty()) {
      say("      " + j.way());
    }
  }

  private void met(Measured m, Met f) {
    say(
        "      forecast "
            + shown(f.predicted(), m.unit(), 6)
            + " ± "
            + shown(f.doubt(), m.unit(), 2)
            + ": En = "
            + Numbers.fixed(f.normalised(), 2)
            + ", "
            + f.words());
  }

  private void learned(Learned learned) {
    say(
        "  learned: "
            + learned.words()
            + " (distance "
            + Numbers.fixed(learned.distance(), 2)
            + ", at most "
            + Numbers.fixed(learned.gate(), 2)
            + ")");
    if (!learned.text().isEmpty()) {
      learned
          .values()
          .forEach(v -> say("    " + v.path() + ": " + v.before() + " -> " + v.after()));
      say("    to use it from now on, keep this as changes/" + learned.change() + ".yaml:");
      learned.text().lines().forEach(l -> say("      " + l));
    }
  }

  private void chart(Chart chart) {
    say(
        "  over the years: "
            + chart.points().size()
            + " readings, the first "
            + chart.settled()
            + " settled at "
            + shown(chart.centre(), chart.unit(), 4)
            + "; warning beyond ± "
            + shown(chart.warning(), chart.unit(), 3)
            + ", action beyond ± "
            + shown(chart.action(), chart.unit(), 3));
    chart.signals().forEach(s -> say("    " + s));
    if (!chart.service().isEmpty()) {
      say("    " + chart.service());
    }
  }

  private void table(Proof proof) {
    if (proof.table().isEmpty()) {
      return;
    }
    say("  correction table (dial, what to add):");
    for (Proof.Correction c : proof.table()) {
      say(
          "    "
              + Numbers.fixed(c.place(), 2)
              + " mm  "
              + Numbers.fixed(c.correction() * 1000, 1)
              + " µm");
    }
  }

  static String limit(Limit limit, Unit unit) {
    if (Double.isInfinite(limit.low())) {
      return "at most " + shown(limit.high(), unit, 6);
    }
    return Double.isInfinite(limit.high())
        ? "at least " + shown(limit.low(), unit, 6)
        : shown(limit.low(), unit, 6) + " to " + shown(limit.high(), unit, 6);
  }

  /** Rounds the value to the last digit of its uncertainty, which has two. */
  private static String value(Measured m) {
    double u = Math.abs(m.unit().fromCoherent(m.expanded()));
    int places = u > 0 ? (int) Math.max(0, Math.min(9, 1 - Math.floor(Math.log10(u)))) : 6;
    String unit = m.unit().symbol().isEmpty() ? "" : " " + m.unit().symbol();
    return Numbers.fixed(m.unit().fromCoherent(m.value()), places)
        + " ± "
        + Numbers.fixed(u, places)
        + unit;
  }

  private static String shown(double value, Unit unit, int digits) {
    String number = Numbers.significant(unit.fromCoherent(value), digits);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }

  private void say(String text) {
    terminal.out().println(text);
  }
}
