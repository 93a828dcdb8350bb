package fettle.machine.trials;

import fettle.machine.state.Book;
import fettle.machine.text.Place;
import fettle.machine.text.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What several trials say, each for itself: one that is still being taken or cannot be evaluated
 * keeps none of the others from speaking.
 *
 * @param proofs what was evaluated, by the trials' names
 * @param waiting how far the readings are of trials that cannot be evaluated yet
 * @param problems what is wrong with trials whose readings are all taken
 */
public record Told(Map<String, Proof> proofs, Map<String, String> waiting, List<Problem> problems) {

  /** Keeps its own copies. */
  public Told {
    proofs = Collections.unmodifiableMap(new LinkedHashMap<>(proofs));
    waiting = Collections.unmodifiableMap(new LinkedHashMap<>(waiting));
    problems = List.copyOf(problems);
  }

  /** Evaluates trials. */
  public static Told of(Collection<Trial> trials, Book book) {
    Map<String, Proof> proofs = new LinkedHashMap<>();
    Map<String, String> waiting = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (Trial trial : trials) {
      Readings readings = trial.readings();
      try {
        proofs.put(trial.name(), Evaluations.of(trial, book));
      } catch (IllegalArgumentException e) {
        String why = String.valueOf(e.getMessage());
        if (readings.gaps().isEmpty()) {
          problems.add(unsound(trial, why));
        } else {
          waiting.put(trial.name(), taken(readings) + ": " + why);
        }
      }
    }
    return new Told(proofs, waiting, problems);
  }

  private static String taken(Readings readings) {
    int done = readings.lines().size();
    return done + " of " + (done + readings.gaps().size()) + " readings taken";
  }

  private static Problem unsound(Trial trial, String why) {
    return new Problem(
        Place.file("trials/" + trial.name() + ".csv"),
        "",
        "readings that cannot be evaluated",
        "readings as the kind '" + trial.kind().word() + "' needs them",
        why);
  }
}
