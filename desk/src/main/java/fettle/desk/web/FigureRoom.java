package fettle.desk.web;

import fettle.desk.page.Amount;
import fettle.desk.page.FigurePage;
import fettle.desk.page.Shell;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.topics.Figure;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Opens a number: its formula, its inputs and where they stand, its source. */
final class FigureRoom {

  private FigureRoom() {}

  static FigurePage figure(Visit visit) {
    Chosen chosen = visit.chosen();
    Forecast forecast = visit.opened().forecast(chosen.state(), chosen.state());
    String id = visit.asked("id");
    Figure figure =
        forecast.rows().stream()
            .map(Row::figure)
            .filter(f -> f.id().equals(id))
            .findFirst()
            .orElseThrow(
                () ->
                    Refused.missing(
                        "There is no such figure of the lathe " + chosen.words() + ".",
                        "Open it from the lathe's page; in another state it may be missing."));
    Optional<Working> working = figure.working();
    return new FigurePage(
        visit.shell(figure.subject() + ": " + figure.name(), "lathe", chosen),
        visit.cell(figure, chosen),
        working.map(w -> w.symbol() + " = " + w.formula()).orElse(""),
        working.map(w -> w.symbol() + " = " + w.numbers()).orElse(""),
        working.map(FigureRoom::result).orElse(figure.words()),
        inputs(visit, chosen, figure),
        figure.source().text(),
        Joints.openings(
            forecast.staying().stream().filter(f -> f.figure().equals(id)).toList(),
            chosen,
            visit.measure()),
        ValuesRoom.whatIf(LatheRoom.machine(visit, chosen), Set.of(figure.subject()), chosen));
  }

  private static String result(Working w) {
    String doubt =
        w.doubt() > 0 && !w.unit().reciprocal()
            ? " ± " + Numbers.significant(w.doubt() / w.unit().factor().toDouble(), 2)
            : "";
    return w.symbol() + " = " + Numbers.significant(w.shown(), 7) + doubt + " " + w.unit().symbol();
  }

  private static List<FigurePage.Input> inputs(Visit visit, Chosen chosen, Figure figure) {
    String key = "roots|" + figure.id() + "|" + String.join("+", chosen.state().changes());
    Found found = visit.opened().once(key, () -> found(new Roots(visit, chosen, figure)));
    List<FigurePage.Input> inputs = new ArrayList<>();
    Map<Term, Double> shares = figure.working().map(Working::shares).orElse(Map.of());
    double doubt = figure.working().map(Working::doubt).orElse(0.0);
    for (Map.Entry<Term, List<Roots.Root>> entry : found.byTerm.entrySet()) {
      Term term = entry.getKey();
      Double share = shares.get(term);
      inputs.add(
          new FigurePage.Input(
              term.symbol(),
              value(visit, term),
              share == null || !(doubt > 0)
                  ? ""
                  : Numbers.significant(100 * share * share / (doubt * doubt), 2) + " %",
              entry.getValue().stream().map(Roots.Root::effect).findFirst().orElse(""),
              entry.getValue().stream().map(r -> link(r, chosen)).toList()));
    }
    for (Roots.Root root : found.designations) {
      inputs.add(
          new FigurePage.Input(
              root.spot().key(),
              root.spot().scalar().text(),
              "",
              root.effect(),
              List.of(link(root, chosen))));
    }
    return inputs;
  }

  private record Found(Map<Term, List<Roots.Root>> byTerm, List<Roots.Root> designations) {}

  private static Found found(Roots roots) {
    Map<Term, List<Roots.Root>> byTerm = roots.byTerm();
    boolean open = byTerm.values().stream().anyMatch(List::isEmpty);
    return new Found(byTerm, open ? roots.designations() : List.of());
  }

  private static Shell.Link link(Roots.Root root, Chosen chosen) {
    return new Shell.Link(
        Visit.value(root.spot(), chosen),
        root.spot().within().replace(".", " · ") + " (" + root.spot().scalar().at().text() + ")");
  }

  private static String value(Visit visit, Term term) {
    Unit unit = term.unit();
    double doubt = unit.reciprocal() ? 0 : term.doubt();
    return Amount.of(term.value(), doubt, unit, visit.measure()).text();
  }
}
