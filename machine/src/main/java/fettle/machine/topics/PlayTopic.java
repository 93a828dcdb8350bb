package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The play of a train, summed to the slide and to the handle, and errors that come once a turn. */
final class PlayTopic implements Topic {

  private static final Source SUM =
      Source.derived(
          "play at each pitch line referred to the slide by the ratio behind it, summed");
  private static final Source ONCE =
      Source.derived(
          "run-out F gives F/cos(alpha) at the pitch line (2e/cos alpha); root sum of squares");
  private static final Source RACK = Source.derived("teeth passed times mean pitch error");

  @Override
  public String name() {
    return "play";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    List<Figure> figures = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (Train train : machine.trains().values()) {
      if (train.linear() && train.factors().size() == 1) {
        play(train).ifPresent(p -> figures(machine, train, p, figures, findings));
        oncePerTurn(train).ifPresent(figures::add);
        rackError(machine, train).ifPresent(figures::add);
      }
    }
    return new Study(figures, findings);
  }

  private void figures(
      Machine machine, Train train, Working play, List<Figure> figures, List<Finding> findings) {
    figures.add(Figure.of(name(), train.name(), "play at the slide", play, Better.LOWER, SUM));
    if (!train.use().equals("feed")) {
      return;
    }
    ChainFormula chain = ChainFormula.of(train, "");
    List<Term> terms = new ArrayList<>(chain.terms());
    terms.add(0, Term.of(play));
    Working angle = Working.of("phi", Unit.DEG, "2*pi*J/(" + chain.text() + ")", terms);
    figures.add(Figure.of(name(), train.name(), "play at the handle", angle, Better.LOWER, SUM));
    machine
        .values()
        .block("limits")
        .map(l -> l.need("play"))
        .filter(limit -> play.value() > limit.value())
        .ifPresent(
            limit ->
                findings.add(
                    new Finding(
                        Finding.Rank.CAUTION,
                        name() + "/" + train.name() + "/play at the slide",
                        "The play of the "
                            + train.name()
                            + " must be taken up at every reversal; climb cuts can pull the slide in.",
                        "at most " + limit.exact().decimal(3) + " mm",
                        Source.practice("the owner's limit"))));
  }

  /** Sums the plays of a train; empty if the book states none. */
  static Optional<Working> play(Train train) {
    List<String> parts = new ArrayList<>();
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < train.elements().size(); i++) {
      Element element = train.elements().get(i);
      String n = String.valueOf(i + 1);
      double behind = behind(train, i);
      Optional<Quantity> j =
          element.values().has("play") ? element.values().quantity("play") : Optional.empty();
      if (element instanceof Element.Rack && j.isPresent()) {
        terms.add(j.get().term("j" + n));
        parts.add("j" + n);
      } else if (element instanceof Element.Screw) {
        j.ifPresent(q -> terms.add(q.term("j" + n)));
        j.ifPresent(q -> parts.add("j" + n));
        element.values().quantity("thrust play").ifPresent(q -> terms.add(q.term("t" + n)));
        element.values().quantity("thrust play").ifPresent(q -> parts.add("t" + n));
      } else if (element instanceof Element.Coupling && j.isPresent()) {
        terms.add(j.get().term("j" + n));
        terms.add(Term.exact("T" + n, behind, Unit.MM));
        parts.add("j" + n + "/(2*pi)*T" + n);
      } else if (j.isPresent() && element.values().has("module")) {
        int driven = element instanceof Element.GearPair pair ? pair.driven() : last(element);
        terms.add(j.get().term("j" + n));
        terms.add(
            Term.exact(
                "m" + n,
                element.values().need("module").value(),
                element.values().need("module").unit()));
        terms.add(Term.exact("zb" + n, driven));
        terms.add(Term.exact("T" + n, behind, Unit.MM));
        parts.add("j" + n + "/(pi*m" + n + "*zb" + n + ")*T" + n);
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(Working.of("J", Unit.MM, String.join(" + ", parts), terms));
  }

  private static int last(Element element) {
    return element instanceof Element.ChangeGears gears
        ? gears.wheels().get(gears.wheels().size() - 1)
        : 1;
  }

  /** Travel for one turn of what the element drives. */
  private static double behind(Train train, int index) {
    double travel = 1;
    for (Element element : train.elements().subList(index + 1, train.elements().size())) {
      travel *= element.factors().values().iterator().next().toDouble();
    }
    return travel;
  }

  private Optional<Figure> oncePerTurn(Train train) {
    return oncePerTurnWorking(train)
        .map(
            w ->
                Figure.of(
                    name(),
                    train.name(),
                    "error that comes back once a turn",
                    w,
                    Better.LOWER,
                    ONCE));
  }

  /** Peak to peak at the slide, from the run-outs the book states. */
  static Optional<Working> oncePerTurnWorking(Train train) {
    List<String> parts = new ArrayList<>();
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < train.elements().size(); i++) {
      Element element = train.elements().get(i);
      if (!(element instanceof Element.Rack || element instanceof Element.GearPair)
          || !element.values().has("run-out")) {
        continue;
      }
      String n = String.valueOf(i + 1);
      terms.add(element.values().need("run-out").term("F" + n));
      terms.add(element.values().need("pressure angle").term("a" + n));
      String atLine = "F" + n + "/cos(a" + n + ")";
      if (element instanceof Element.GearPair pair && element.values().has("module")) {
        terms.add(
            Term.exact(
                "m" + n,
                element.values().need("module").value(),
                element.values().need("module").unit()));
        terms.add(Term.exact("zb" + n, pair.driven()));
        terms.add(Term.exact("T" + n, behind(train, i), Unit.MM));
        parts.add("(" + atLine + "/(pi*m" + n + "*zb" + n + ")*T" + n + ")^2");
      } else if (element instanceof Element.Rack) {
        parts.add("(" + atLine + ")^2");
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(Working.of("E", Unit.MM, "sqrt(" + String.join(" + ", parts) + ")", terms));
  }

  private Optional<Figure> rackError(Machine machine, Train train) {
    Element last = train.elements().get(train.elements().size() - 1);
    if (!(last instanceof Element.Rack rack)
        || !last.values().has("pitch error")
        || !(machine.member(train.to()).seat()
            instanceof fettle.machine.lathe.Seat.Sliding sliding)) {
      return Optional.empty();
    }
    Working working =
        Working.of(
            "E",
            Unit.MM,
            "s/p*f",
            sliding.travel().term("s"),
            Term.exact("p", rack.pitch().toDouble(), Unit.MM),
            last.values().need("pitch error").term("f"));
    return Optional.of(
        Figure.of(
            name(), train.name(), "rack error over the travel", working, Better.NEITHER, RACK));
  }
}
