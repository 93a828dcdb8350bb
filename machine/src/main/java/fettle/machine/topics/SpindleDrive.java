package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Motor and train that turn the spindle.
 *
 * @param train the train
 * @param motor what the book says of the motor
 * @param steps its steps, slowest first
 */
record SpindleDrive(Train train, Values motor, List<Map.Entry<String, Ratio>> steps) {

  /** Keeps its own copy. */
  SpindleDrive {
    steps = List.copyOf(steps);
  }

  /** Returns the drive, if the book has one. */
  static Optional<SpindleDrive> of(Machine machine) {
    Optional<Values> drive = machine.values().block("drive");
    if (drive.isEmpty()) {
      return Optional.empty();
    }
    Train train = machine.trains().get(drive.get().needText("train"));
    if (train == null || train.linear()) {
      return Optional.empty();
    }
    List<Map.Entry<String, Ratio>> steps =
        train.factors().entrySet().stream()
            .sorted(Comparator.comparing((Map.Entry<String, Ratio> e) -> e.getValue().toDouble()))
            .toList();
    return Optional.of(new SpindleDrive(train, drive.get().block("motor").orElseThrow(), steps));
  }

  /**
   * Returns the speed of the spindle.
   *
   * @param step name of the step
   * @param speed speed of the motor
   */
  Working speed(String step, Quantity speed) {
    ChainFormula chain = ChainFormula.of(train, step);
    List<Term> terms = new ArrayList<>(List.of(speed.term("n_m")));
    terms.addAll(chain.terms());
    return Working.of("n", Unit.RPM, "n_m*" + chain.text(), terms);
  }

  Quantity rated() {
    return motor.need("speed");
  }

  Working lowest() {
    return speed(steps.get(0).getKey(), motor.quantity("lowest speed").orElse(rated()));
  }

  Working highest() {
    return speed(
        steps.get(steps.size() - 1).getKey(), motor.quantity("highest speed").orElse(rated()));
  }

  /**
   * Returns the geometric mean of lowest and highest speed.
   *
   * @return speed [rad/s]
   */
  double usual() {
    double high = highest().value();
    return Math.sqrt(Math.max(lowest().value(), high / 50) * high);
  }

  /** Returns the name of a figure of one step. */
  static String named(String what, String step) {
    return step.isEmpty() ? what : what + ", " + step;
  }
}
