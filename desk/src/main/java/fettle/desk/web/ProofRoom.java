package fettle.desk.web;

import fettle.desk.page.Amount;
import fettle.desk.page.Bar;
import fettle.desk.page.Measure;
import fettle.desk.page.MemberPage;
import fettle.desk.page.ProofPage;
import fettle.desk.page.RoomPage;
import fettle.desk.page.TrialPage;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import fettle.machine.trials.Adjusting;
import fettle.machine.trials.Agreement;
import fettle.machine.trials.Judged;
import fettle.machine.trials.Learned;
import fettle.machine.trials.Limit;
import fettle.machine.trials.Measured;
import fettle.machine.trials.Met;
import fettle.machine.trials.Proof;
import fettle.machine.trials.Told;
import fettle.machine.trials.Trial;
import fettle.machine.trials.Trials;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The proof room: what the trials of a book say. */
final class ProofRoom {

  private ProofRoom() {}

  /** Returns what the trials say, reckoned once for a book. */
  static Told told(Visit visit) {
    Opened opened = visit.opened();
    return opened.once("trials told", () -> told(opened));
  }

  private static Told told(Opened opened) {
    Parsed<Map<String, Trial>> trials = Trials.read(opened.files(), opened.book());
    return trials.value() == null
        ? new Told(Map.of(), Map.of(), trials.problems())
        : Told.of(trials.value().values(), opened.book());
  }

  static ProofPage list(Visit visit) {
    Told told = told(visit);
    List<RoomPage.Line> problems =
        new ArrayList<>(
            told.problems().stream()
                .map(p -> new RoomPage.Line(p.at().text(), p.text(), ""))
                .toList());
    Optional<Adjusting> adjusting = Optional.empty();
    try {
      adjusting =
          Trials.state(visit.book(), Optional.empty())
              .machine()
              .flatMap(m -> Adjusting.of(m, told.proofs().values()));
    } catch (IllegalArgumentException e) {
      problems.add(new RoomPage.Line("machine.yaml", String.valueOf(e.getMessage()), ""));
    }
    return new ProofPage(
        visit.shell("proof", "proof"),
        told.proofs().values().stream().map(ProofRoom::line).toList(),
        told.waiting().entrySet().stream().map(ProofRoom::waiting).toList(),
        Agreement.of(told.proofs().values()).map(ProofRoom::met).orElse(""),
        adjusting.map(Adjusting::steps).orElse(List.of()).stream()
            .map(s -> new ProofPage.Step(s.adjuster(), s.words()))
            .toList(),
        adjusting.map(Adjusting::rows).orElse(List.of()).stream().map(ProofRoom::left).toList(),
        adjusting.map(Adjusting::notes).orElse(List.of()),
        problems);
  }

  private static String met(Agreement a) {
    return a.figures()
        + " figures were foretold and measured: "
        + a.words()
        + " (chi-square "
        + Numbers.fixed(a.chiSquare(), 1)
        + ", probability "
        + Numbers.fixed(a.probability(), 3)
        + ").";
  }

  private static ProofPage.Left left(Adjusting.Row row) {
    Unit unit = row.figure().unit();
    Limit limit = row.limit();
    return new ProofPage.Left(
        row.figure().name() + ", " + row.trial(),
        amount(row.figure().value(), unit, 3),
        amount(row.after(), unit, 3),
        amount(limit.low(), unit, 3) + " to " + amount(limit.high(), unit, 3),
        Numbers.fixed(100 * row.before(), 0) + " %",
        Numbers.fixed(100 * row.kept(), 0) + " %",
        Bar.of(
            unit.fromCoherent(row.figure().value()),
            unit.fromCoherent(row.figure().expanded()),
            unit.fromCoherent(row.after()),
            unit.fromCoherent(row.figure().expanded())));
  }

  /** Takes into use what a trial teaches; returns where to go next. */
  static String learn(Visit visit, Shelf shelf) {
    String name = visit.asked("name");
    Learned learned =
        Optional.ofNullable(told(visit).proofs().get(name))
            .flatMap(Proof::learned)
            .filter(l -> !l.text().isEmpty())
            .orElseThrow(
                () ->
                    Refused.missing(
                        "This trial has no correction to take into use.", "Look at the trial."));
    String file = "changes/" + learned.change() + ".yaml";
    if (!visit.opened().mark().equals(visit.asked("mark"))) {
      throw Refused.overtaken(
          "The book was changed since this page was made; nothing was written.",
          "Look at the trial as it is now.");
    }
    shelf.save(visit.opened(), Map.of(file, learned.text()), "learned from the trial " + name, "");
    return "/trial?name=" + Visit.coded(name);
  }

  private static TrialPage.Taught taught(Visit visit, Proof proof) {
    return proof
        .learned()
        .map(
            l -> {
              Optional<String> text = visit.opened().text("changes/" + l.change() + ".yaml");
              return new TrialPage.Taught(
                  l.words(),
                  l.values().stream()
                      .map(
                          v -> v.path().replace(".", " · ") + ": " + v.before() + " → " + v.after())
                      .toList(),
                  text.isPresent(),
                  !l.text().isEmpty() && !text.equals(Optional.of(l.text())),
                  "/change?key=" + Visit.coded(l.change()));
            })
        .orElse(new TrialPage.Taught("", List.of(), false, false, ""));
  }

  private static ProofPage.Line line(Proof proof) {
    String name = proof.trial().name();
    List<ProofPage.Said> verdicts =
        proof.lines().stream().filter(l -> l.judged().isPresent()).map(ProofRoom::said).toList();
    return new ProofPage.Line(
        name,
        proof.trial().values().needText("what"),
        facts(proof),
        "/trial?name=" + Visit.coded(name),
        "/readings?name=" + Visit.coded(name),
        verdicts,
        proof.gaps().size());
  }

  private static ProofPage.Waiting waiting(Map.Entry<String, String> one) {
    String href = "/readings?name=" + Visit.coded(one.getKey());
    return new ProofPage.Waiting(one.getKey(), one.getValue(), href);
  }

  private static String facts(Proof proof) {
    return proof.trial().values().text("date").map(d -> d + ", ").orElse("")
        + proof.trial().readings().lines().size()
        + " readings, "
        + proof.trial().values().needText("instrument");
  }

  private static ProofPage.Said said(Proof.Line line) {
    return line.judged()
        .map(j -> new ProofPage.Said(rank(j), j.verdict().outcome().words(), line.figure().name()))
        .orElse(new ProofPage.Said("", "", line.figure().name()));
  }

  private static String rank(Judged judged) {
    return switch (judged.verdict().outcome()) {
      case GOOD -> "good";
      case NOT_GOOD -> "stop";
      case CANNOT_TELL -> "caution";
    };
  }

  static TrialPage trial(Visit visit) {
    String name = visit.asked("name");
    Told told = told(visit);
    Proof proof = told.proofs().get(name);
    String waiting = told.waiting().get(name);
    if (waiting != null) {
      throw Refused.missing(
          "The trial " + name + " says nothing yet: " + waiting + ".", "Take its readings first.");
    }
    if (proof == null) {
      List<Problem> here =
          told.problems().stream()
              .filter(p -> p.at().file().startsWith("trials/" + name + "."))
              .toList();
      throw here.isEmpty()
          ? Refused.missing("There is no such trial.", "Choose one from the proof room.")
          : Refused.unsound(here);
    }
    List<String> kept = new ArrayList<>();
    proof.gaps().forEach(g -> kept.add("gap: " + g));
    proof.outliers().forEach(o -> kept.add("stands out, kept: " + o));
    List<String> notes = new ArrayList<>(proof.notes().stream().distinct().toList());
    proof
        .chart()
        .ifPresent(
            c -> {
              notes.addAll(0, c.signals());
              if (!c.service().isEmpty()) {
                notes.add(c.service());
              }
            });
    return new TrialPage(
        visit.shell(name, "proof"),
        name,
        proof.trial().values().needText("what"),
        facts(proof),
        "/readings?name=" + Visit.coded(name),
        proof.lines().stream().map(l -> figure(l, visit.measure())).toList(),
        TrialPlots.of(proof),
        proof.table().stream().map(ProofRoom::correction).toList(),
        taught(visit, proof),
        kept,
        notes,
        proof.cautions(),
        values(visit, name),
        ValueLines.leftOut(visit, visit.chosen(), file(name), ""));
  }

  private static String file(String name) {
    return "trials/" + name + ".yaml";
  }

  private static List<MemberPage.ValueLine> values(Visit visit, String name) {
    return visit.opened().spots().in(file(name)).stream()
        .map(s -> ValueLines.line(s, "", visit.chosen()))
        .toList();
  }

  private static TrialPage.Correction correction(Proof.Correction c) {
    return new TrialPage.Correction(
        Numbers.fixed(c.place(), 2) + " mm", Numbers.fixed(c.correction() * 1000, 1) + " µm");
  }

  private static TrialPage.Line figure(Proof.Line line, Measure measure) {
    Measured m = line.figure();
    boolean good =
        line.judged().filter(j -> j.verdict().outcome() == Verdict.Outcome.GOOD).isPresent();
    return new TrialPage.Line(
        m.name(),
        Amount.of(m.value(), m.expanded(), m.unit(), shown(m.unit(), measure)),
        said(line),
        line.judged().map(j -> limit(j, m.unit())).orElse(""),
        line.judged().map(Judged::way).orElse(""),
        good ? "" : m.adjust(),
        line.met().map(f -> forecast(f, m.unit())).orElse(""),
        line.judged().map(j -> bar(m, j.limit())).orElse(Bar.NONE),
        m.budget().ranked().stream()
            .filter(c -> c.share() != 0)
            .map(c -> c.name() + " " + amount(Math.abs(c.share()), m.unit(), 2))
            .toList(),
        m.source().text());
  }

  /** Errors stay in the micrometres they were read in. */
  private static Measure shown(Unit unit, Measure measure) {
    return unit.equals(Unit.MICRON) ? Measure.METRIC : measure;
  }

  private static String limit(Judged judged, Unit unit) {
    Limit limit = judged.limit();
    String range =
        Double.isInfinite(limit.low())
            ? "at most " + amount(limit.high(), unit, 5)
            : Double.isInfinite(limit.high())
                ? "at least " + amount(limit.low(), unit, 5)
                : amount(limit.low(), unit, 5) + " to " + amount(limit.high(), unit, 5);
    return range
        + ", "
        + limit.source()
        + "; kept with "
        + Numbers.fixed(100 * judged.verdict().probability(), 1)
        + " % probability";
  }

  private static String forecast(Met met, Unit unit) {
    return "forecast "
        + amount(met.predicted(), unit, 5)
        + " ± "
        + amount(met.doubt(), unit, 2)
        + ", En "
        + Numbers.fixed(met.normalised(), 2)
        + ": "
        + met.words();
  }

  /** The limit as a broad stroke of graphite, the figure in blue over it. */
  private static Bar bar(Measured m, Limit limit) {
    Unit unit = m.unit();
    double low = Double.isInfinite(limit.low()) ? Math.min(0, m.value()) : limit.low();
    double high = Double.isInfinite(limit.high()) ? 2 * limit.low() : limit.high();
    return Bar.of(
        unit.fromCoherent((low + high) / 2),
        unit.fromCoherent((high - low) / 2),
        unit.fromCoherent(m.value()),
        unit.fromCoherent(m.expanded()));
  }

  private static String amount(double value, Unit unit, int digits) {
    String number = Numbers.significant(unit.fromCoherent(value), digits);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }
}
