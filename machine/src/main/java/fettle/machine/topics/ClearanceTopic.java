package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Seat;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.motion.Chain;
import fettle.mechanics.motion.SafeGap;
import fettle.mechanics.motion.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What touches or comes near, over all positions of slides, handles and levers. */
final class ClearanceTopic implements Topic {

  private static final Source SEARCH =
      Source.derived("least distance of the envelopes over all positions, bounds proven");

  /** A gap that no hand minds. */
  private static final double ENOUGH = 30;

  /** More pairs of solids than this would keep a forecast waiting. */
  private static final int MOST_PAIRS = 30_000;

  /** Nothing enters a gap of this size or less. */
  private static final double CLOSED = 4;

  @Override
  public String name() {
    return "clearance";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    List<Figure> figures = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    int pairs = Envelopes.of(machine, Use.WHOLE).pairs().searched().size();
    if (pairs > MOST_PAIRS) {
      return new Study(List.of(), List.of(tooMany(pairs)));
    }
    Clearances clearances = Clearances.near(machine, ENOUGH);
    Map<String, List<String>> mutual = new TreeMap<>();
    for (Clearances.Row row : clearances.rows()) {
      boolean held = held(machine, row.first()) || held(machine, row.second());
      if (held && row.gap().touches() && !bothSlide(row)) {
        findings.add(meets(clearances, row));
      } else if (row.gap().touches()) {
        mutual.computeIfAbsent(row.second(), k -> new ArrayList<>()).add(row.first());
      } else if (!row.gap().certified() && row.gap().lower() < ENOUGH) {
        findings.add(open(row));
      }
    }
    hands(machine, clearances, figures, findings);
    room(machine, figures);
    mutual.forEach((member, others) -> findings.add(reach(member, others)));
    return new Study(figures, findings);
  }

  private static Finding tooMany(int pairs) {
    return new Finding(
        Finding.Rank.NOTE,
        "",
        "The envelopes make "
            + pairs
            + " pairs of solids, too many for a forecast; `fettle clearance` searches them all.",
        "",
        SEARCH);
  }

  /** Room for work as the envelopes leave it, slides and tailstock wherever they may be. */
  private void room(Machine machine, List<Figure> figures) {
    Optional<WorkRoom> room = WorkRoom.of(machine, Use.WHOLE);
    if (room.isEmpty()) {
      return;
    }
    WorkRoom found = room.get();
    String to = found.to().isEmpty() ? "the end of the bed" : "the " + found.to();
    figures.add(
        figure("lathe", "length of work that fits", "l", found.length())
            .exactly("from the " + found.from() + " to " + to));
    for (WorkRoom.Swing swing : found.swings()) {
      if (!swing.gap().touches() && swing.gap().certified()) {
        figures.add(figure(swing.over(), "swing over it", "D", swing.diameter()));
      }
    }
  }

  private Figure figure(String subject, String name, String symbol, double value) {
    Term term = new Term(symbol, value, Unit.MM, 0);
    Working working = Working.of(symbol, Unit.MM, symbol, term);
    return Figure.of(name(), subject, name, working, Better.HIGHER, SEARCH);
  }

  private static boolean held(Machine machine, String member) {
    return machine.member(member).values().has("handle diameter")
        && machine.member(member).seat() instanceof Seat.Turning;
  }

  /** Tells whether two slides run towards each other, which the hand that moves them sees. */
  private static boolean bothSlide(Clearances.Row row) {
    return slides(row.gap().pair().a()) && slides(row.gap().pair().b());
  }

  private static boolean slides(Chain chain) {
    return chain.steps().stream().anyMatch(Step.Slide.class::isInstance);
  }

  private Finding meets(Clearances clearances, Clearances.Row row) {
    return new Finding(
        Finding.Rank.CAUTION,
        "",
        sentence(row.first())
            + " meets the "
            + row.second()
            + ": "
            + row.gap().pair().first()
            + " touches "
            + row.gap().pair().second()
            + " with "
            + clearances.position(row)
            + ". Move, shorten or set back one of them, or stop the slide before it; keep fingers"
            + " clear until then.",
        "",
        SEARCH);
  }

  private Finding open(Clearances.Row row) {
    return new Finding(
        Finding.Rank.NOTE,
        "",
        "The gap of "
            + row.name()
            + " is proven no nearer than "
            + Numbers.fixed(row.gap().lower(), 1)
            + " to "
            + Numbers.fixed(row.gap().upper(), 1)
            + " mm; `fettle clearance` takes longer and says more.",
        "",
        SEARCH);
  }

  /**
   * What a member can run into. Each pair is told of the member that the book names later, so that
   * a member that is added alters no other finding.
   */
  private Finding reach(String member, List<String> others) {
    return new Finding(
        Finding.Rank.NOTE,
        "",
        "Somewhere on their travels the "
            + member
            + " and these run into each other: "
            + String.join(", ", others.stream().sorted().toList())
            + ". Keep hands out from between them, look before power feed, and set a stop where it"
            + " matters.",
        "at least " + Numbers.fixed(SafeGap.HAND.gap(), 0) + " mm where a hand may be",
        SafeGap.SOURCE);
  }

  /** The gap beside each handle that does not touch, and whether a finger is caught in it. */
  private void hands(
      Machine machine, Clearances clearances, List<Figure> figures, List<Finding> findings) {
    for (Member member : machine.members().values()) {
      if (!held(machine, member.name())) {
        continue;
      }
      List<Clearances.Row> beside =
          clearances.rows().stream()
              .filter(r -> r.first().equals(member.name()) || r.second().equals(member.name()))
              .toList();
      if (!beside.isEmpty()) {
        hand(member.name(), clearances, beside, figures, findings);
      }
    }
  }

  private void hand(
      String handle,
      Clearances clearances,
      List<Clearances.Row> beside,
      List<Figure> figures,
      List<Finding> findings) {
    Clearances.Row row = beside.get(0);
    double lower = beside.stream().mapToDouble(r -> r.gap().lower()).min().orElse(0);
    double gap = row.gap().upper();
    String other = row.first().equals(handle) ? row.second() : row.first();
    Term least = new Term("g", gap, Unit.MM, Math.max(0, gap - lower));
    Figure figure =
        Figure.of(
                name(),
                handle,
                "least gap",
                Working.of("g", Unit.MM, "g", least),
                Better.HIGHER,
                SEARCH)
            .exactly("to the " + other);
    figures.add(figure);
    double finger = SafeGap.FINGER.gap();
    if (gap > CLOSED && gap < finger) {
      findings.add(
          new Finding(
              Finding.Rank.CAUTION,
              figure.id(),
              sentence(handle)
                  + " leaves "
                  + Numbers.fixed(gap, 1)
                  + " mm to the "
                  + other
                  + " with "
                  + clearances.position(row)
                  + ": a finger can be caught. Leave "
                  + Numbers.fixed(finger, 0)
                  + " mm, or close the gap to "
                  + Numbers.fixed(CLOSED, 0)
                  + " mm. Local codes come first.",
              Numbers.fixed(finger, 0) + " mm",
              SafeGap.SOURCE));
    }
  }

  private static String sentence(String member) {
    return "The " + member;
  }
}
