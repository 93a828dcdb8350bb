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

/** How heavy a handle is to turn while the slide is pushed with the feed force. */
final class HandTopic implements Topic {

  private static final Source RACK =
      Source.practice("work at the rim equals work at the slide; 0.9 of it passes each mesh");
  private static final Source SCREW =
      Source.memory(
          "Budynas & Nisbett, Shigley's Mechanical Engineering Design",
          "power screws, eq. 8-5 and 8-6");
  private static final double PER_MESH = 0.9;

  @Override
  public String name() {
    return "hand";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    List<Figure> figures = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Optional<Values> limits = machine.values().block("limits");
    for (Train train : machine.trains().values()) {
      Optional<Quantity> handle = machine.member(train.from()).values().quantity("handle diameter");
      boolean asked = train.use().equals("feed") && train.linear() && train.factors().size() == 1;
      if (limits.isPresent() && handle.isPresent() && asked) {
        Working force = force(train, limits.get().need("feed force"), handle.get());
        boolean screw = train.elements().get(train.elements().size() - 1) instanceof Element.Screw;
        Figure figure =
            Figure.of(
                name(),
                train.name(),
                "force at the handle",
                force,
                Better.LOWER,
                screw ? SCREW : RACK);
        figures.add(figure);
        heavy(train, figure, force, limits.get().need("hand force"), findings);
      }
    }
    return new Study(figures, findings);
  }

  private static Working force(Train train, Quantity push, Quantity handle) {
    List<Term> terms = new ArrayList<>(List.of(push.term("F"), handle.term("D")));
    Element last = train.elements().get(train.elements().size() - 1);
    List<Element> before = train.elements().subList(0, train.elements().size() - 1);
    int meshes = before.stream().mapToInt(Element::reversals).sum();
    if (last instanceof Element.Screw screw) {
      ChainFormula chain = ChainFormula.of(before, "");
      terms.addAll(chain.terms());
      terms.add(Term.exact("eta", Math.pow(PER_MESH, meshes)));
      String torque = FeedScrew.of(screw).upEach(terms);
      return Working.of("F_h", Unit.N, "F*(" + torque + ")*" + chain.text() + "/(eta*D/2)", terms);
    }
    ChainFormula chain = ChainFormula.of(train, "");
    terms.addAll(chain.terms());
    terms.add(Term.exact("eta", Math.pow(PER_MESH, meshes + 1)));
    return Working.of("F_h", Unit.N, "F*" + chain.text() + "/(pi*D*eta)", terms);
  }

  private void heavy(
      Train train, Figure figure, Working force, Quantity limit, List<Finding> findings) {
    if (force.value() > limit.value()) {
      findings.add(
          new Finding(
              Finding.Rank.CAUTION,
              figure.id(),
              "The "
                  + train.from()
                  + " is heavy to turn while cutting; a larger handle or a smaller lead helps.",
              "at most " + limit.exact().decimal(0) + " N for long work",
              Source.practice("the owner's limit")));
    }
  }
}
