package fettle.desk.cli;

/** How a command ended. */
public enum ExitStatus {
  /** Done. */
  DONE(0),
  /** A finding says stop. */
  STOP(1),
  /** The input is wrong. */
  WRONG_INPUT(2),
  /** It could not be computed. */
  NOT_COMPUTED(3);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  /** Returns the number given to the shell. */
  public int code() {
    return code;
  }
}
