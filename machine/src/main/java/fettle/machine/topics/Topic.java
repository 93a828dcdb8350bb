package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import java.util.Optional;

/** One question asked of a lathe. */
public interface Topic {

  /** Returns the name of the question, e.g. {@code travel}. */
  String name();

  /**
   * Answers the question.
   *
   * @param machine the lathe
   * @param shop what the workshop has
   */
  Study study(Machine machine, Optional<Values> shop);
}
