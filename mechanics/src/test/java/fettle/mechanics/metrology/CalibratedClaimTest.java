package fettle.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The claim of every trial, "the truth lies within ± U with 95 %", counted over seeded repeats: not
 * in fewer cases (the claim would be too bold) and not in more (it would be too timid).
 */
class CalibratedClaimTest {

  private final Map<String, Integer> hits = new TreeMap<>();

  private void count(String claim, double value, double truth, double expanded) {
    hits.merge(claim, Math.abs(value - truth) <= expanded ? 1 : 0, Integer::sum);
  }

  private void dial(long seed, double factor) {
    DialTest test = DialTest.of(SeededTrials.dial(seed), 1, 0.2);
    LinearFit fit = test.fit();
    double k = factor * Quantiles.student(0.975, fit.freedom());
    count("travel", test.travelPerTurn(), SeededTrials.TRAVEL, k * fit.uncertainty("T"));
    count("backlash", test.backlash(), SeededTrials.BACKLASH, k * fit.uncertainty("B"));
    Harmonic once = test.harmonic(1);
    count("once per turn", once.amplitude(), SeededTrials.ONCE, k * once.uncertainty());
    count("its phase", once.phase(), 0.7, k * once.uncertainty() / once.amplitude());
  }

  private void spindle(long seed, double factor) {
    List<RunOut.Turn> t = SeededTrials.spindleBar(seed);
    double squares = 0;
    double freedom = 0;
    for (RunOut.Turn turn : t) {
      squares += turn.scatter() * turn.scatter() * turn.freedom();
      freedom += turn.freedom();
    }
    double u = Math.sqrt(squares / freedom * 2 / 12) / Math.sqrt(2);
    double[] seats = {0, Math.PI};
    RunOutVector far =
        RunOut.seatings(seats, List.of(t.get(1).vector(), t.get(3).vector())).spindle();
    RunOutVector truth = SeededTrials.TAPER.plus(SeededTrials.TILT.times(220));
    double k = factor * Quantiles.student(0.975, freedom);
    count("taper eccentricity", far.size(), truth.size(), k * u);
    count("taper angle", far.angle(), truth.angle(), k * u / far.size());
    hits.merge(
        "upper bound",
        truth.size() <= Quantiles.sizeBound(far.size(), factor * u, 0.95) ? 1 : 0,
        Integer::sum);
  }

  private void push(long seed, double factor) {
    PushTest test = SeededTrials.push(seed);
    double k = factor * Quantiles.student(0.975, test.fit().freedom());
    count("stiffness", test.stiffness(), SeededTrials.STIFFNESS, k * test.stiffnessUncertainty());
    count("lost motion", test.fit().value("G"), SeededTrials.LOST, k * test.fit().uncertainty("G"));
    count(
        "hysteresis",
        test.fit().value("H"),
        SeededTrials.HYSTERESIS,
        k * test.fit().uncertainty("H"));
  }

  private void warmUp(long seed, double factor) {
    WarmUp law = SeededTrials.warmUp(seed);
    double k = factor * Quantiles.student(0.975, 18);
    count("final rise", law.finalRise(), SeededTrials.FINAL_RISE, k * law.fit().uncertainty(0));
  }

  /** Two collars measured five times each: Type A for both, Welch-Satterthwaite. */
  private void collars(long seed, double factor) {
    RandomGenerator random = SeededTrials.random(seed);
    double[] head = new double[5];
    double[] free = new double[5];
    for (int i = 0; i < 5; i++) {
      head[i] = 25.012 + 0.001 * random.nextGaussian();
      free[i] = 24.995 + 0.003 * random.nextGaussian();
    }
    Sample one = Sample.of(head);
    Sample other = Sample.of(free);
    UncertaintyBudget budget =
        UncertaintyBudget.of(
            Contribution.readings("head", one.uncertaintyOfMean(0), 1.0 / 300, 4),
            Contribution.readings("free", other.uncertaintyOfMean(0), -1.0 / 300, 4));
    count(
        "two-collar angle",
        (one.mean() - other.mean()) / 300,
        (25.012 - 24.995) / 300,
        factor * budget.expanded(0.95));
  }

  /** A level stepped along a straight bed: the deviation at the middle from the end points. */
  private void level(long seed, double factor) {
    RandomGenerator random = SeededTrials.random(seed);
    double[] slopes = new double[6];
    double u = 4e-6;
    for (int i = 0; i < 6; i++) {
      slopes[i] = (i < 3 ? 20e-6 : -10e-6) + u * random.nextGaussian();
    }
    double middle = Straightness.ofLevel(slopes, 100).fromEnds()[3];
    double truth = 300 * 20e-6 - 300 * (20e-6 - 10e-6) / 2;
    count(
        "height by level",
        middle,
        truth,
        factor * 1.95996 * Straightness.heightUncertainty(3, 6, 100, u));
  }

  private void all(int repeats, double factor) {
    hits.clear();
    for (int seed = 1; seed <= repeats; seed++) {
      dial(seed, factor);
      spindle(seed, factor);
      push(seed, factor);
      warmUp(seed, factor);
      collars(seed, factor);
      level(seed, factor);
    }
  }

  /** Four standard deviations of a count with p = 0.95. */
  private static double band(int repeats) {
    return 4 * Math.sqrt(0.95 * 0.05 / repeats);
  }

  private void claimsHold(int repeats) {
    all(repeats, 1);
    assertThat(hits).hasSize(13);
    hits.forEach(
        (claim, hit) -> {
          double share = hit / (double) repeats;
          // Welch-Satterthwaite with truncated degrees of freedom is known to be a little timid
          double timid = claim.equals("two-collar angle") ? 0.015 : 0;
          assertThat(share).as(claim + " not too bold").isGreaterThan(0.95 - band(repeats));
          assertThat(share).as(claim + " not too timid").isLessThan(0.95 + band(repeats) + timid);
        });
  }

  @Test
  void claimsHoldInNinetyFivePercentOfSomeHundredRepeats() {
    claimsHold(250);
  }

  @Tag("slow")
  @Test
  void claimsHoldInNinetyFivePercentOfTenThousandRepeats() {
    claimsHold(10_000);
  }

  @Test
  void halvedAndDoubledClaimsAreCaught() {
    int repeats = 100;
    all(repeats, 0.5);
    hits.forEach(
        (claim, hit) -> {
          if (!claim.equals("upper bound")) {
            assertThat(hit / (double) repeats).as(claim).isLessThan(0.95 - band(repeats));
          }
        });
    all(repeats, 2);
    hits.forEach((claim, hit) -> assertThat(hit / (double) repeats).as(claim).isGreaterThan(0.97));
  }

  @Test
  void badPartsPassSeldomAndGoodPartsFailSeldom() {
    RandomGenerator random = SeededTrials.random(1);
    int passed = 0;
    int failed = 0;
    int repeats = 4000;
    for (int i = 0; i < repeats; i++) {
      double y = 20 + 2 * random.nextGaussian();
      Verdict v = Verdict.upper(y, 2, 20, Verdict.GUARD);
      passed += v.outcome() == Verdict.Outcome.GOOD ? 1 : 0;
      failed += v.outcome() == Verdict.Outcome.NOT_GOOD ? 1 : 0;
    }
    double four = 4 * Math.sqrt(0.05 * 0.95 / repeats);
    assertThat(passed / (double) repeats).isBetween(0.05 - four, 0.05 + four);
    assertThat(failed / (double) repeats).isBetween(0.05 - four, 0.05 + four);
  }

  @Test
  void readingsNeededSettleTheVerdict() {
    Verdict v = Verdict.upper(17.2, 2, 20, Verdict.GUARD);
    assertThat(v.outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    double needed = v.readingsNeeded(5, Math.sqrt(3), 1);
    double u = Math.sqrt(3 * 5 / needed + 1);
    assertThat(Verdict.upper(17.2, u, 20, Verdict.GUARD).outcome()).isEqualTo(Verdict.Outcome.GOOD);
    double before = Math.sqrt(3 * 5 / (needed - 1) + 1);
    assertThat(Verdict.upper(17.2, before, 20, Verdict.GUARD).outcome())
        .isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(v.readingsNeeded(5, 1, 2)).isInfinite();
  }
}
