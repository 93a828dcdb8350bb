package fettle.desk.cli;

import fettle.machine.text.Problem;
import java.util.List;

/** Ends a command with a message to the owner. */
final class Failure extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final ExitStatus status;
  private final transient List<Problem> problems;

  private Failure(ExitStatus status, String message, List<Problem> problems) {
    super(message, null, false, false);
    this.status = status;
    this.problems = List.copyOf(problems);
  }

  static Failure input(String message) {
    return new Failure(ExitStatus.WRONG_INPUT, message, List.of());
  }

  static Failure input(List<Problem> problems) {
    return new Failure(ExitStatus.WRONG_INPUT, "", problems);
  }

  static Failure notComputed(String message) {
    return new Failure(ExitStatus.NOT_COMPUTED, message, List.of());
  }

  ExitStatus status() {
    return status;
  }

  List<Problem> problems() {
    return problems;
  }

  String words() {
    return String.valueOf(getMessage());
  }
}
