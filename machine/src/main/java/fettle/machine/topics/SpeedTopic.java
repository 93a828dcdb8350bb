package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
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
    return SpindleDrive.of(machine).map(this::table).orElse(new Study(List.of(), List.of()));
  }

  private Study table(SpindleDrive drive) {
    List<Map.Entry<String, Ratio>> steps = drive.steps();
    List<Figure> figures = new ArrayList<>();
    Quantity rated = drive.rated();
    for (Map.Entry<String, Ratio> step : steps) {
      String name = SpindleDrive.named("speed", step.getKey());
      add(figures, name, drive.speed(step.getKey(), rated), Better.NEITHER);
    }
    Quantity low = drive.motor().quantity("lowest speed").orElse(rated);
    Quantity high = drive.motor().quantity("highest speed").orElse(rated);
    add(figures, "lowest speed", drive.lowest(), Better.LOWER);
    add(figures, "highest speed", drive.highest(), Better.HIGHER);
    gap(steps, low, high)
        .ifPresent(g -> add(figures, "widest gap between two speeds", g, Better.LOWER));
    List<Finding> findings =
        List.of(
            new Finding(
                Finding.Rank.NOTE,
                name() + "/spindle/highest speed",
                "Before the highest speed is used, compare it with the one marked on chuck and"
                    + " faceplate.",
                "the speed marked on the chuck",
                CHUCK));
    return new Study(figures, findings);
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
