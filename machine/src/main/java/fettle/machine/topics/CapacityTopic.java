package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Seat;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What fits on the lathe, how far its slides go, and what they weigh. */
final class CapacityTopic implements Topic {

  private static final Source BOOK = Source.derived("as the book states it");
  private static final Source SUM = Source.derived("sum of the masses the book states");

  @Override
  public String name() {
    return "capacity";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    List<Figure> figures = new ArrayList<>();
    Values lathe = machine.values().block("lathe").orElseThrow();
    stated(figures, lathe, "lathe", "centre height", "h");
    stated(figures, lathe, "lathe", "between centres", "L");
    stated(figures, lathe, "lathe", "swing over cross slide", "D");
    stated(figures, lathe, "lathe", "swing over bed", "D");
    for (Member member : machine.members().values()) {
      if (member.seat() instanceof Seat.Sliding sliding) {
        figures.add(figure(member.name(), "travel", sliding.travel().term("s"), Better.HIGHER));
        carried(machine, member.name()).ifPresent(figures::add);
      }
    }
    carried(machine, "").ifPresent(figures::add);
    return new Study(figures, List.of());
  }

  private void stated(
      List<Figure> figures, Values block, String subject, String key, String symbol) {
    Optional<Quantity> quantity = block.quantity(key);
    quantity.ifPresent(q -> figures.add(figure(subject, key, q.term(symbol), Better.HIGHER)));
  }

  private Figure figure(String subject, String name, Term term, Better better) {
    Working working = Working.of(term.symbol(), term.unit(), term.symbol(), term);
    return Figure.of(name(), subject, name, working, better, BOOK);
  }

  /** The mass of a slide with all it carries, or of the whole lathe if no slide is named. */
  private Optional<Figure> carried(Machine machine, String slide) {
    List<Term> terms = new ArrayList<>();
    List<String> symbols = new ArrayList<>();
    Set<String> unweighed = new TreeSet<>();
    for (Member member : machine.members().values()) {
      if (!slide.isEmpty() && !standsOn(machine, member, slide)) {
        continue;
      }
      Optional<Quantity> mass = member.values().quantity("mass");
      if (mass.isEmpty()) {
        unweighed.add(member.name());
      } else {
        String symbol = "m_" + member.name().replaceAll("[^A-Za-z0-9]", "_");
        while (symbols.contains(symbol)) {
          symbol += "_";
        }
        symbols.add(symbol);
        terms.add(mass.get().term(symbol));
      }
    }
    if (terms.isEmpty()) {
      return Optional.empty();
    }
    Working sum = Working.of("m", Unit.KG, String.join(" + ", symbols), terms);
    String missing = unweighed.isEmpty() ? "" : "without " + String.join(", ", unweighed);
    Figure figure =
        slide.isEmpty()
            ? Figure.of(name(), "lathe", "mass", sum, Better.NEITHER, SUM)
            : Figure.of(name(), slide, "mass with all it carries", sum, Better.NEITHER, SUM);
    return Optional.of(figure.exactly(missing));
  }

  private static boolean standsOn(Machine machine, Member member, String slide) {
    Member at = member;
    while (!at.name().equals(slide)) {
      Optional<String> on = at.seat().on();
      if (on.isEmpty()) {
        return false;
      }
      at = machine.member(on.get());
    }
    return true;
  }
}
