package fettle.machine.trials;

import fettle.mechanics.metrology.Forecast;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All figures that were foretold, held against the forecast together. They are taken as
 * independent; a figure that another trial foretells too counts once.
 *
 * @param figures how many they are
 * @param chiSquare sum of squares over the combined uncertainties [-]
 * @param probability chance of so large a sum if all is explained [-]
 * @param largest the figure that adds most to it
 * @param words what that means
 */
public record Agreement(
    int figures, double chiSquare, double probability, String largest, String words) {

  private static final double RARE = 0.05;

  /** Returns the agreement of all figures met; empty if there is none with an uncertainty. */
  public static Optional<Agreement> of(Collection<Proof> proofs) {
    List<Double> off = new ArrayList<>();
    List<Double> squares = new ArrayList<>();
    List<String> names = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Proof proof : proofs) {
      boolean travel =
          proof.lines().stream().anyMatch(l -> l.figure().name().equals(DialTrial.TRAVEL));
      for (Proof.Line line : proof.lines()) {
        // The gain of a dial is its travel per turn once more.
        boolean again = travel && line.figure().name().equals(DialTrial.GAIN);
        line.met()
            .filter(met -> !again && seen.add(met.figure()))
            .ifPresent(
                met -> {
                  off.add(line.figure().value() - met.predicted());
                  squares.add(
                      line.figure().standard() * line.figure().standard()
                          + met.doubt() * met.doubt() / 4);
                  names.add(line.figure().name() + " (" + proof.trial().name() + ")");
                });
      }
    }
    if (off.isEmpty() || squares.stream().anyMatch(s -> !(s > 0))) {
      return Optional.empty();
    }
    int n = off.size();
    double[][] covariance = new double[n][n];
    double[] scaled = new double[n];
    for (int i = 0; i < n; i++) {
      covariance[i][i] = 1;
      scaled[i] = off.get(i) / Math.sqrt(squares.get(i));
    }
    Forecast.Agreement told = Forecast.agreement(scaled, covariance);
    int most = 0;
    for (int i = 0; i < n; i++) {
      most = told.shares().get(i) > told.shares().get(most) ? i : most;
    }
    String words =
        told.probability() < RARE
            ? "not explained as a set; most comes from " + names.get(most)
            : told.probability() > 1 - RARE
                ? "explained, with uncertainties that look too generous"
                : "explained as a set";
    return Optional.of(
        new Agreement(n, told.chiSquare(), told.probability(), names.get(most), words));
  }
}
