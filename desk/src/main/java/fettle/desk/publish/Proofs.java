package fettle.desk.publish;

import fettle.desk.page.Amount;
import fettle.desk.page.Measure;
import fettle.desk.page.ProofPage;
import fettle.desk.page.SiteListPage;
import fettle.machine.state.Book;
import fettle.machine.trials.Evaluations;
import fettle.machine.trials.Judged;
import fettle.machine.trials.Limit;
import fettle.machine.trials.Measured;
import fettle.machine.trials.Proof;
import fettle.machine.trials.Trial;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import java.util.List;

/** Trials as a published book shows them. */
final class Proofs {

  private Proofs() {}

  static SiteListPage.Trial of(Trial trial, Book book, Measure measure) {
    String what = trial.values().needText("what");
    String facts =
        trial.kind().word()
            + ", "
            + trial.values().needText("instrument")
            + trial.values().text("date").map(d -> ", " + d).orElse("");
    try {
      Proof proof = Evaluations.of(trial, book);
      return new SiteListPage.Trial(
          what,
          facts,
          proof.lines().stream().map(l -> line(l, measure)).toList(),
          proof.cautions());
    } catch (IllegalArgumentException e) {
      return new SiteListPage.Trial(what, facts + "; not evaluated yet", List.of(), List.of());
    }
  }

  private static SiteListPage.Line line(Proof.Line line, Measure measure) {
    Measured m = line.figure();
    return new SiteListPage.Line(
        m.name(),
        Amount.of(m.value(), m.expanded(), m.unit(), measure).text(),
        line.judged().map(j -> limit(j.limit(), m.unit())).orElse(""),
        line.judged()
            .map(j -> new ProofPage.Said(rank(j), j.verdict().outcome().words(), m.name()))
            .orElse(new ProofPage.Said("", "", m.name())),
        line.met()
            .map(f -> Amount.of(f.predicted(), f.doubt(), m.unit(), measure).text())
            .orElse(""));
  }

  private static String rank(Judged judged) {
    return switch (judged.verdict().outcome()) {
      case GOOD -> "good";
      case NOT_GOOD -> "stop";
      case CANNOT_TELL -> "caution";
    };
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
}
