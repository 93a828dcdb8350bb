package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The speeds of the spindle: each step, the lowest, the highest, and the widest gap between two.
 */
final class SpeedTopic implements Topic {

  private static final Source PRODUCT =
      Source.derived("motor speed times the ratios of belt and gears, less the belt's slip");
  private static final Source CHUCK =
      Source.practice("a chuck must not be run above the speed its maker marks on it");

  @Override
  public String name() {
    return "speeds";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Optional<Values> drive = machine.values().block("drive");
    if (drive.isEmpty()) {
      return new Study(List.of(), List.of());
    }
    Train train = machine.trains().get(drive.get().needText("train"));
    Values motor = drive.get().block("motor").orElseThrow();
    if (train == null || train.linear()) {
      return new Study(List.of(), List.of());
    }
    return table(train, motor);
  }

  private Study table(Train train, Values motor) {
    List<Map.Entry<String, Ratio>> steps =
        train.factors().entrySet().stream()
            .sorted(Comparator.comparing((Map.Entry<String, Ratio> e) -> e.getValue().toDouble()))
            .toList();
    List<Figure> figures = new ArrayList<>();
    Quantity rated = motor.need("speed");
    for (Map.Entry<String, Ratio> step : steps) {
      String name = step.getKey().isEmpty() ? "speed" : "speed, " + step.getKey();
      add(figures, name, speed(train, step.getKey(), rated), Better.NEITHER);
    }
    Map.Entry<String, Ratio> slowest = steps.get(0);
    Map.Entry<String, Ratio> fastest = steps.get(steps.size() - 1);
    Quantity low = motor.quantity("lowest speed").orElse(rated);
    Quantity high = motor.quantity("highest speed").orElse(rated);
    add(figures, "lowest speed", speed(train, slowest.getKey(), low), Better.LOWER);
    add(figures, "highest speed", speed(train, fastest.getKey(), high), Better.HIGHER);
    gap(steps, low, high)
        .ifPresent(g -> add(figures, "widest gap between two speeds", g, Better.LOWER));
    List<Finding> findings =
        List.of(
            new Finding(
                Finding.Rank.NOTE,
                name() + "/spindle/highest speed",
                "Before the highest speed is used, compare it with the one marked on chuck and faceplate.",
                "the speed marked on the chuck",
                CHUCK));
    return new Study(figures, findings);
  }

  private static Working speed(Train train, String step, Quantity motor) {
    ChainFormula chain = ChainFormula.of(train, step);
    List<Term> terms = new ArrayList<>(List.of(motor.term("n_m")));
    terms.addAll(chain.terms());
    return Working.of("n", Unit.RPM, "n_m*" + chain.text(), terms);
  }

  /** The largest ratio of a speed to the next lower one that the motor cannot bridge. */
  private static Optional<Working> gap(
      List<Map.Entry<String, Ratio>> steps, Quantity low, Quantity high) {
    Working widest = null;
    for (int i = 0; i + 1 < steps.size(); i++) {
      Working gap =
          Working.of(
              "q",
              Unit.ONE,
              "max(1, ib/ia*n_low/n_high)",
              Term.exact("ia", steps.get(i).getValue().toDouble()),
              Term.exact("ib", steps.get(i + 1).getValue().toDouble()),
              Term.exact("n_low", low.value(), Unit.RPM),
              Term.exact("n_high", high.value(), Unit.RPM));
      if (widest == null || gap.value() > widest.value()) {
        widest = gap;
      }
    }
    return Optional.ofNullable(widest);
  }

  private void add(List<Figure> figures, String name, Working working, Better better) {
    figures.add(Figure.of(name(), "spindle", name, working, better, PRODUCT));
  }
}
