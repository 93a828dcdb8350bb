package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.screws.PowerScrew;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The friction of a screw with its thrust bearing, as formulas.
 *
 * @param screw pitch diameter, lead and flank angle
 * @param element what the book says of it
 * @param pair its rolling thrust bearings, if it has them
 */
record FeedScrew(PowerScrew screw, Element.Screw element, Optional<RollingSet> pair) {

  private static final Term ROLLING = new Term("mu_b", 0.002, Unit.ONE, 0.001);

  static FeedScrew of(Element.Screw element) {
    return new FeedScrew(
        new PowerScrew(
            element.thread().profile().d2(),
            element.thread().lead().toDouble(),
            element.thread().form().halfAngle()),
        element,
        element.values().block("bearing").flatMap(RollingSet::of));
  }

  /** Returns the sizes and the friction of the thread. */
  List<Term> thread() {
    return List.of(
        Term.exact("d2", screw.d2(), Unit.MM),
        Term.exact("lambda", screw.leadAngle(), Unit.RAD),
        Term.exact("alpha_n", screw.normalHalfAngle(), Unit.RAD),
        element.values().need("friction").term("mu"));
  }

  /**
   * Returns the torque against a force of the slide.
   *
   * @param force the force, called F
   */
  Working up(Term force) {
    List<Term> terms = terms(force);
    double friction = element.values().need("friction").value();
    return Working.check(
        "T_up",
        screw.raisingMoment(force.value(), friction) + thrust(terms).value(),
        Unit.NM,
        "F*(" + upEach(new ArrayList<>()) + ")",
        terms.toArray(new Term[0]));
  }

  /**
   * Returns the torque with a force of the slide; negative if the slide drives the screw.
   *
   * @param force the force, called F
   */
  Working down(Term force) {
    List<Term> terms = terms(force);
    return Working.of(
        "T_down",
        Unit.NM,
        "F*(d2/2*(mu - cos(alpha_n)*tan(lambda))/(cos(alpha_n) + mu*tan(lambda))"
            + bearing(new ArrayList<>())
            + ")",
        terms);
  }

  /** Writes the torque for each newton of the slide; the terms it needs beside F are added. */
  String upEach(List<Term> terms) {
    terms.addAll(thread());
    return "d2/2*(cos(alpha_n)*tan(lambda) + mu)/(cos(alpha_n) - mu*tan(lambda))" + bearing(terms);
  }

  private List<Term> terms(Term force) {
    List<Term> terms = new ArrayList<>(List.of(force));
    upEach(terms);
    return terms;
  }

  private Working thrust(List<Term> terms) {
    List<Term> none = new ArrayList<>();
    String text = bearing(none);
    return Working.of(
        "T_b", Unit.NM, text.isEmpty() ? "0*F" : "F*(" + text.substring(3) + ")", terms);
  }

  private String bearing(List<Term> terms) {
    Optional<Values> face =
        element.values().block("bearing").filter(b -> b.shape().equals("bearing/plain thrust"));
    if (face.isPresent()) {
      terms.add(face.get().need("outer diameter").term("do"));
      terms.add(face.get().need("inner diameter").term("di"));
      terms.add(face.get().need("friction").term("mu_c"));
      return " + mu_c*(do + di)/4";
    }
    if (pair.isPresent()) {
      terms.add(ROLLING);
      terms.add(Term.exact("dm", pair.get().pitch(), Unit.MM));
      terms.add(pair.get().preload());
      return " + mu_b*(1 + 2*F0/F)*dm/2";
    }
    return "";
  }
}
