package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.gears.Concern;
import fettle.mechanics.gears.Gear;
import fettle.mechanics.gears.GearConcerns;
import fettle.mechanics.gears.GearPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether gears that were chosen by their teeth also run on the centres that are there. */
final class GearTopic implements Topic {

  private static final Source PAIR =
      Source.page("ISO 21771:2007", "pairs on a given centre distance");
  private static final Source PRACTICE =
      Source.practice("limits of small gears: contact ratio, undercut, tip width, tip clearance");

  @Override
  public String name() {
    return "gears";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Study all = new Study(List.of(), List.of());
    for (Train train : machine.trains().values()) {
      for (Element element : train.elements()) {
        if (element instanceof Element.GearPair pair && measured(pair)) {
          all = all.and(pair(train.name() + ", " + pair.name(), pair));
        }
      }
    }
    return all;
  }

  private static boolean measured(Element.GearPair pair) {
    Values v = pair.values();
    return v.has("module")
        && v.has("centre distance")
        && !v.flag("internal")
        && v.needCount("idlers") == 0;
  }

  private Study pair(String subject, Element.GearPair element) {
    Values v = element.values();
    GearPair pair;
    try {
      pair =
          new GearPair(
              gear(v, element.driver(), "driver shift"),
              gear(v, element.driven(), "driven shift"),
              v.need("centre distance").value());
    } catch (IllegalArgumentException e) {
      return new Study(
          List.of(),
          List.of(
              new Finding(
                  Finding.Rank.STOP,
                  name() + "/" + subject,
                  "The pair " + subject + " cannot run: " + e.getMessage() + ".",
                  "",
                  PAIR)));
    }
    return new Study(figures(subject, element, pair), findings(subject, pair));
  }

  private static Gear gear(Values v, int teeth, String shift) {
    return Gear.of(
        v.need("module").value(), teeth, v.need(shift).value(), v.need("pressure angle").value());
  }

  private List<Figure> figures(String subject, Element.GearPair element, GearPair pair) {
    Values v = element.values();
    List<Term> terms =
        List.of(
            v.need("module").term("m"),
            Term.exact("z1", element.driver()),
            Term.exact("z2", element.driven()),
            v.need("pressure angle").term("alpha"),
            v.need("centre distance").term("a_w"));
    Working working = Working.of("alpha_w", Unit.DEG, "acos(m*(z1 + z2)/2*cos(alpha)/a_w)", terms);
    String angle = "acos(m*(z1 + z2)/2*cos(alpha)/a_w)";
    String involute = "(tan(" + angle + ") - " + angle + " - tan(alpha) + alpha)";
    Working sum = Working.of("x_sum", Unit.ONE, "(z1 + z2)*" + involute + "/(2*tan(alpha))", terms);
    List<Term> shifted = new ArrayList<>(terms);
    shifted.add(v.need("driver shift").term("x1"));
    shifted.add(v.need("driven shift").term("x2"));
    Working play =
        Working.check(
            "j_bn",
            pair.backlash(0),
            Unit.MM,
            "(z1 + z2)*m*cos(alpha)*" + involute + " - 2*(x1 + x2)*m*sin(alpha)",
            shifted.toArray(new Term[0]));
    Working contact =
        Working.check(
            "eps_alpha",
            pair.contactRatio(),
            Unit.ONE,
            "(sqrt(da1^2 - db1^2)/2 + sqrt(da2^2 - db2^2)/2 - a_w*sin(alpha_w))/(pi*m*cos(alpha))",
            Term.exact("da1", pair.pinionTip(), Unit.MM),
            Term.exact("db1", pair.pinion().base(), Unit.MM),
            Term.exact("da2", pair.wheelTip(), Unit.MM),
            Term.exact("db2", pair.wheel().base(), Unit.MM),
            terms.get(4),
            Term.of(working),
            terms.get(0),
            terms.get(3));
    return List.of(
        figure(subject, "working pressure angle", working, Better.NEITHER),
        figure(subject, "sum of profile shifts that runs without play", sum, Better.NEITHER),
        figure(subject, "play on these centres with the shifts stated", play, Better.NEITHER),
        figure(subject, "contact ratio", contact, Better.HIGHER));
  }

  private Figure figure(String subject, String name, Working working, Better better) {
    return Figure.of(name(), subject, name, working, better, PAIR);
  }

  private List<Finding> findings(String subject, GearPair pair) {
    List<Finding> findings = new ArrayList<>();
    for (Concern concern : GearConcerns.of(pair)) {
      boolean refused = concern.level() == Concern.Level.REFUSE;
      findings.add(
          new Finding(
              refused ? Finding.Rank.STOP : Finding.Rank.CAUTION,
              name() + "/" + subject,
              "In the pair " + subject + ", " + concern.text() + ".",
              "",
              PRACTICE));
    }
    return findings;
  }
}
