package fettle.planning.order;

/**
 * Why no order of work exists.
 *
 * @param task the task that cannot be done
 * @param reason why
 * @param wayOut what would help
 */
public record Impossible(String task, String reason, String wayOut) {

  static Impossible machining(String task, String strip) {
    return new Impossible(
        task,
        "needs the lathe while '" + strip + "' has it stripped",
        "Make it to measured size before the lathe is stripped; or put the old part back for it; or"
            + " do it on another machine; or have it made.");
  }
}
