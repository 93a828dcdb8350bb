package fettle.mechanics.solids;

import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;

/** Section of a bar as a reckoner is given it: round, bored, rectangular or by its constants. */
record BarSection(Working area, Working secondMoment, String kappa) {

  /** Adds the inputs that describe a section. */
  static Reckoner.Draft inputs(Reckoner.Draft draft) {
    return draft
        .optional("d", Unit.MM, "diameter of a round bar")
        .optional("di", Unit.MM, "bore of a round bar")
        .optional("b", Unit.MM, "width of a rectangular bar, across the force")
        .optional("h", Unit.MM, "height of a rectangular bar, along the force")
        .optional("I", Unit.MM4, "second moment of area, if the section is another one")
        .optional("A", Unit.MM2, "area, if the section is another one");
  }

  /** Reads the section. */
  static BarSection of(Given g) {
    Limits.positive(g, "d", "b", "h", "I", "A");
    Limits.notNegative(g, "di");
    if (g.has("d")) {
      return round(g);
    }
    if (g.has("b") && g.has("h")) {
      return new BarSection(
          Working.of("A", Unit.MM2, "b*h", g.term("b"), g.term("h")),
          Working.of("I", Unit.MM4, "b*h^3/12", g.term("b"), g.term("h")),
          "10*(1+nu)/(12+11*nu)");
    }
    if (g.has("I")) {
      Term area = g.has("A") ? g.term("A") : Term.exact("A", 0, Unit.MM2);
      return new BarSection(
          Working.of("A", Unit.MM2, "A", area), Working.of("I", Unit.MM4, "I", g.term("I")), "5/6");
    }
    throw new IllegalArgumentException(
        "section: give d (round; di if bored), or b and h (rectangular), or I and A");
  }

  private static BarSection round(Given g) {
    Term bore = g.has("di") ? g.term("di") : Term.exact("di", 0, Unit.MM);
    if (!(bore.value() < g.number("d"))) {
      throw Limits.outside("di", bore.value(), Unit.MM, "smaller than d");
    }
    return new BarSection(
        Working.of("A", Unit.MM2, "pi/4*(d^2-di^2)", g.term("d"), bore),
        Working.of("I", Unit.MM4, "pi/64*(d^4-di^4)", g.term("d"), bore),
        bore.value() == 0
            ? "6*(1+nu)/(7+6*nu)"
            : "6*(1+nu)*(1+(di/d)^2)^2/((7+6*nu)*(1+(di/d)^2)^2+(20+12*nu)*(di/d)^2)");
  }

  /** Returns the shear coefficient of this section. */
  Working shearCoefficient(Given g) {
    java.util.List<Term> terms = new java.util.ArrayList<>();
    terms.add(g.term("nu"));
    if (g.has("d")) {
      terms.add(g.term("d"));
    }
    if (g.has("di")) {
      terms.add(g.term("di"));
    }
    return Working.of("kappa", Unit.ONE, kappa, terms);
  }
}
