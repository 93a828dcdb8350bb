package fettle.mechanics.screws;

import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.threads.GivenThread;
import fettle.mechanics.threads.ThreadDesignation;
import org.jspecify.annotations.Nullable;

/** How a reckoner asks for a feed screw: by its thread, or by d2, lead and flank angle. */
final class GivenScrew {

  private final Given g;
  private final @Nullable ThreadDesignation thread;

  private GivenScrew(Given g, @Nullable ThreadDesignation thread) {
    this.g = g;
    this.thread = thread;
  }

  static Reckoner.Draft asked(Reckoner.Draft draft) {
    return GivenThread.asked(draft)
        .optional("d2", Unit.MM, "pitch diameter; basic size of the thread if left out")
        .optional("alpha", Unit.DEG, "half the flank angle: 30 M, 15 Tr, 14.5 Acme, 0 square");
  }

  static GivenScrew of(Given g) {
    return new GivenScrew(g, GivenThread.isGiven(g) ? GivenThread.of(g) : null);
  }

  @Nullable ThreadDesignation thread() {
    return thread;
  }

  PowerScrew screw() {
    return new PowerScrew(d2(), lead(), halfAngle());
  }

  double d2() {
    return thread == null ? g.number("d2") : g.number("d2", thread.profile().d2());
  }

  double lead() {
    if (thread != null) {
      return thread.lead().toDouble();
    }
    return g.has("Ph") || !g.has("P") ? g.number("Ph") : g.number("P");
  }

  double pitch() {
    if (thread != null) {
      return thread.profile().p();
    }
    return g.has("P") || !g.has("Ph") ? g.number("P") : g.number("Ph");
  }

  double halfAngle() {
    return thread == null ? g.number("alpha") : g.number("alpha", thread.form().halfAngle());
  }

  /** Core diameter by the input d3 of the reckoner, or by the thread. */
  double core() {
    return thread == null ? g.number("d3") : g.number("d3", thread.profile().d3());
  }

  double engagement() {
    return thread == null ? g.number("H1") : g.number("H1", thread.profile().engagement());
  }

  Term d2Term() {
    return Term.exact("d2", d2(), Unit.MM);
  }

  Term leadTerm() {
    return Term.exact("Ph", lead(), Unit.MM);
  }

  Term pitchTerm() {
    return Term.exact("P", pitch(), Unit.MM);
  }

  Term alphaTerm() {
    return Term.exact("alpha", halfAngle(), Unit.DEG);
  }
}
