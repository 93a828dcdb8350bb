package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.threads.Hand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one turn does: travel per turn of a feed, lead of a screw-cutting train, and the hand. */
final class TravelTopic implements Topic {

  static final Source CHAIN =
      Source.derived("kinematic chain: teeth, pitches and leads of the elements multiplied");
  private static final Source SENSE =
      Source.derived("each outside mesh reverses the sense; seen from the handle");

  @Override
  public String name() {
    return "travel";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    List<Figure> figures = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (Train train : machine.trains().values()) {
      if (train.linear()) {
        travel(train, figures);
        figures.add(Figure.said(name(), train.name(), "hand of motion", hand(train), SENSE));
        least(machine, train, findings);
      }
    }
    return new Study(figures, findings);
  }

  private void travel(Train train, List<Figure> figures) {
    boolean cutting = train.use().equals("screw cutting");
    train
        .factors()
        .forEach(
            (step, factor) -> {
              ChainFormula chain = ChainFormula.of(train, step);
              Working working = Working.of("T", Unit.MM, chain.text(), chain.terms());
              String name = cutting ? "lead cut as set up" : "travel per turn";
              Figure figure =
                  Figure.of(
                      name(),
                      train.name(),
                      step.isEmpty() ? name : name + ", " + step,
                      working,
                      Better.NEITHER,
                      CHAIN);
              figures.add(train.exact() ? figure.exactly(exactly(factor)) : figure);
            });
  }

  /** Says the exact value where the decimals do not. */
  static String exactly(Ratio factor) {
    boolean decimal = factor.isRational() && isDecimal(factor);
    return decimal ? "exact" : "exactly " + factor.folded().text() + " mm";
  }

  private static boolean isDecimal(Ratio factor) {
    java.math.BigInteger rest = factor.denominator();
    for (int prime : new int[] {2, 5}) {
      java.math.BigInteger p = java.math.BigInteger.valueOf(prime);
      while (rest.mod(p).signum() == 0) {
        rest = rest.divide(p);
      }
    }
    return rest.equals(java.math.BigInteger.ONE) && factor.denominator().bitLength() < 12;
  }

  private static String hand(Train train) {
    boolean reversed = train.reversals() % 2 == 1;
    Element last = train.elements().get(train.elements().size() - 1);
    if (last instanceof Element.Screw screw) {
      boolean left = screw.thread().hand() == Hand.LEFT;
      if (train.use().equals("screw cutting")) {
        return left == reversed ? "right-hand threads as set up" : "left-hand threads as set up";
      }
      return left != reversed
          ? "clockwise moves the " + train.to() + " away from the handle"
          : "clockwise moves the " + train.to() + " towards the handle";
    }
    return reversed
        ? "clockwise moves the " + train.to() + " to the right, if the rack lies above its pinion"
        : "clockwise moves the " + train.to() + " to the left, if the rack lies above its pinion";
  }

  private void least(Machine machine, Train train, List<Finding> findings) {
    Optional<Values> limits = machine.values().block("limits");
    if (limits.isEmpty()
        || !(train.elements().get(train.elements().size() - 1) instanceof Element.Rack)) {
      return;
    }
    double least = limits.get().need("travel per turn from").value();
    double travel = train.factor().toDouble();
    if (travel < least) {
      findings.add(
          new Finding(
              Finding.Rank.NOTE,
              name() + "/" + train.name() + "/travel per turn",
              "One turn of the "
                  + train.from()
                  + " moves the "
                  + train.to()
                  + " very little; long moves are tedious.",
              "at least "
                  + limits.get().need("travel per turn from").exact().decimal(2)
                  + " mm a turn",
              Source.practice("the owner's limit")));
    }
  }
}
