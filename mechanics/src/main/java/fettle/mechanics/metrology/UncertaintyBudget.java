package fettle.mechanics.metrology;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All causes of uncertainty of one result, combined after the GUM.
 *
 * @param contributions the causes
 * @param correlations pairs of causes that move together
 * @param higher variance from terms of second order [result, squared]
 */
public record UncertaintyBudget(
    List<Contribution> contributions, List<Correlation> correlations, double higher) {

  /**
   * Two causes that move together.
   *
   * @param one index of one
   * @param other index of the other
   * @param coefficient correlation, -1 to 1 [-]
   */
  public record Correlation(int one, int other, double coefficient) {
    /** Refuses coefficients beyond ±1. */
    public Correlation {
      if (!(Math.abs(coefficient) <= 1)) {
        throw new IllegalArgumentException(
            "correlation: found " + coefficient + ", expected -1 to 1");
      }
    }
  }

  /** Keeps its own copies and refuses indices that do not exist. */
  public UncertaintyBudget {
    contributions = List.copyOf(contributions);
    correlations = List.copyOf(correlations);
    Require.atLeast("contributions", contributions.size(), 1);
    for (Correlation c : correlations) {
      int n = contributions.size();
      if (c.one < 0 || c.other < 0 || c.one >= n || c.other >= n || c.one == c.other) {
        throw new IllegalArgumentException(
            "correlation: names inputs "
                + (c.one + 1)
                + " and "
                + (c.other + 1)
                + ", expected two different ones from 1 to "
                + n);
      }
    }
    Require.notNegative("variance of second order", higher);
  }

  /** Returns the budget of independent causes. */
  public static UncertaintyBudget of(Contribution... contributions) {
    return new UncertaintyBudget(List.of(contributions), List.of(), 0);
  }

  /**
   * Returns the combined standard uncertainty.
   *
   * @return combined standard uncertainty [result]
   */
  public double combined() {
    double sum = higher;
    for (Contribution c : contributions) {
      sum += c.share() * c.share();
    }
    for (Correlation r : correlations) {
      sum +=
          2 * r.coefficient * contributions.get(r.one).share() * contributions.get(r.other).share();
    }
    return Math.sqrt(Math.max(0, sum));
  }

  /**
   * Returns the effective degrees of freedom by Welch-Satterthwaite.
   *
   * @return degrees of freedom, perhaps infinite [-]
   */
  public double freedom() {
    double below = 0;
    for (Contribution c : contributions) {
      if (Double.isFinite(c.freedom())) {
        below += Math.pow(c.share(), 4) / c.freedom();
      }
    }
    double u = combined();
    double freedom = below > 0 ? Math.pow(u, 4) / below : Double.POSITIVE_INFINITY;
    return Double.isNaN(freedom) ? Double.POSITIVE_INFINITY : freedom;
  }

  /** Tells whether Welch-Satterthwaite may be used: it needs independent causes. */
  public boolean isIndependent() {
    return correlations.stream().allMatch(r -> r.coefficient == 0);
  }

  /**
   * Returns the coverage factor, from Student's t with the degrees of freedom truncated down.
   *
   * @param confidence probability, e.g. 0.95 [-]
   * @return coverage factor [-]
   */
  public double coverage(double confidence) {
    Require.between("confidence", confidence, 0, 1);
    double nu = freedom();
    double whole = Double.isInfinite(nu) ? nu : Math.max(1, Math.floor(nu + 1e-9));
    return Quantiles.student((1 + confidence) / 2, whole);
  }

  /**
   * Returns the expanded uncertainty.
   *
   * @param confidence probability, e.g. 0.95 [-]
   * @return expanded uncertainty [result]
   */
  public double expanded(double confidence) {
    return coverage(confidence) * combined();
  }

  /** Returns the causes, the largest share first. */
  public List<Contribution> ranked() {
    return contributions.stream()
        .sorted(Comparator.comparingDouble((Contribution c) -> -Math.abs(c.share())))
        .toList();
  }

  /** Returns one line for each cause, the largest first, with its part of the variance. */
  public List<String> lines() {
    double total = 0;
    for (Contribution c : contributions) {
      total += c.share() * c.share();
    }
    List<String> lines = new ArrayList<>();
    for (Contribution c : ranked()) {
      double part = total > 0 ? 100 * c.share() * c.share() / total : 0;
      lines.add(
          c.name()
              + ": u = "
              + Numbers.significant(c.standard(), 4)
              + ", sensitivity "
              + Numbers.significant(c.sensitivity(), 4)
              + ", share "
              + Numbers.fixed(part, 1)
              + " %"
              + (Double.isFinite(c.freedom())
                  ? ", degrees of freedom " + Numbers.significant(c.freedom(), 4)
                  : ""));
    }
    return lines;
  }

  /** Says what would halve the uncertainty at the least cost. */
  public String halving() {
    List<Contribution> ranked = ranked();
    Contribution first = ranked.get(0);
    double rest = 0;
    for (Contribution c : ranked.subList(1, ranked.size())) {
      rest += c.share() * c.share();
    }
    double wanted = combined() * combined() / 4;
    if (rest >= wanted) {
      return "no single cause halves it: the causes beside '" + first.name() + "' are too large";
    }
    double factor = Math.sqrt((wanted - rest)) / Math.abs(first.share());
    if (first.kind() == Contribution.Kind.READINGS) {
      return "take "
          + (int) Math.min(9999, Math.ceil(1 / (factor * factor) - 1e-9))
          + " times as many readings of '"
          + first.name()
          + "'";
    }
    return "bring '"
        + first.name()
        + "' down to "
        + Numbers.fixed(100 * factor, 0)
        + " % of its size";
  }
}
