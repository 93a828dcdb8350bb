package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.fits.ToleranceChain;
import fettle.mechanics.fits.ToleranceChain.Link;
import fettle.mechanics.fits.ToleranceChain.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Sizes that add up to a gap or an offset: how far it can be out, at worst and as a rule. */
final class ChainTopic implements Topic {

  private static final Source SUM = Source.derived("sum of the sizes with their signs");
  private static final Source WORST = Source.derived("all tolerances at once on the bad side");
  private static final Source SQUARES =
      Source.derived("variances of independent sizes add; the half tolerance as the same multiple");
  private static final Source DRAWN =
      Source.derived("20000 random draws of the chain from a fixed start");
  private static final int DRAWS = 20_000;
  private static final long SEED = 1;
  private static final double OFTEN = 0.05;

  @Override
  public String name() {
    return "chains";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Study all = new Study(List.of(), List.of());
    for (Map.Entry<String, Values> chain : machine.values().map("chains").entrySet()) {
      all =
          all.and(
              Study.orReason(
                  name(),
                  chain.getKey(),
                  () -> new OneChain(chain.getKey(), chain.getValue()).study()));
    }
    return all;
  }

  /** The questions asked of one chain. */
  private final class OneChain {
    private final String subject;
    private final Values values;
    private final List<Term> sizes = new ArrayList<>();
    private final List<Term> signed = new ArrayList<>();
    private final List<Term> halves = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    OneChain(String subject, Values values) {
      this.subject = subject;
      this.values = values;
      values.map("links").forEach(this::link);
    }

    private void link(String name, Values link) {
      Quantity size = link.need("size");
      double factor = link.need("counts").value();
      String n = String.valueOf(links.size() + 1);
      sizes.add(Term.exact("x" + n, size.value(), Unit.MM));
      signed.add(Term.exact("a" + n, factor));
      halves.add(Term.exact("t" + n, size.doubt(), Unit.MM));
      Spread spread = Spread.valueOf(link.needText("spread").toUpperCase(Locale.ROOT));
      links.add(new Link(name, factor, size.value(), size.doubt(), spread));
    }

    Study study() {
      ToleranceChain chain = new ToleranceChain(links);
      add("middle", sum("a%1$s*x%1$s", "", sizes), SUM, largest(chain));
      Working worst = sum("abs(a%1$s)*t%1$s", "", halves);
      add("how far out at worst", worst, WORST, "");
      add("how far out as a rule", sum("(a%1$s*t%1$s)^2", "sqrt", halves), SQUARES, "");
      drawn(chain);
      return new Study(figures, findings);
    }

    /** Adds a formula up over all links. */
    private Working sum(String each, String around, List<Term> more) {
      List<String> parts = new ArrayList<>();
      for (int i = 1; i <= links.size(); i++) {
        parts.add(String.format(Locale.ROOT, each, i));
      }
      List<Term> terms = new ArrayList<>(signed);
      terms.addAll(more);
      String sum = String.join(" + ", parts);
      String formula = around.isEmpty() ? sum : around + "(" + sum + ")";
      return Working.of("g", Unit.MM, formula, terms);
    }

    private String largest(ToleranceChain chain) {
      double[] shares = chain.shares();
      int most = 0;
      for (int i = 1; i < shares.length; i++) {
        most = shares[i] > shares[most] ? i : most;
      }
      return shares[most] > 0
          ? links.get(most).name()
              + " brings "
              + Numbers.significant(100 * shares[most], 2)
              + " % of the spread"
          : "nothing in it varies";
    }

    private void drawn(ToleranceChain chain) {
      double low = limit("least", Double.NEGATIVE_INFINITY);
      double high = limit("most", Double.POSITIVE_INFINITY);
      ToleranceChain.Draws draws = chain.draws(new Interval(low, high), DRAWS, SEED);
      double sigma = chain.sigma();
      if (sigma > 0) {
        Working reach =
            Working.of(
                "w",
                Unit.MM,
                "k*s",
                Term.exact("k", draws.ninetyFive() / sigma),
                Term.exact("s", sigma, Unit.MM));
        add("how far out in 95 of 100", reach, DRAWN, "drawn at random");
      }
      if (!values.has("least") && !values.has("most")) {
        return;
      }
      Working outside =
          Working.of(
              "q",
              Unit.PERCENT,
              "n/N",
              Term.exact("n", Math.rint(draws.outside() * DRAWS)),
              Term.exact("N", DRAWS));
      figures.add(
          Figure.of(name(), subject, "beyond its limits", outside, Better.LOWER, DRAWN)
              .exactly("of " + DRAWS + " drawn"));
      boolean always =
          chain.mean() - chain.worstCase() >= low - 1e-9
              && chain.mean() + chain.worstCase() <= high + 1e-9;
      if (!always) {
        beyond(draws.outside() > OFTEN);
      }
    }

    private double limit(String key, double otherwise) {
      return values.quantity(key).map(Quantity::value).orElse(otherwise);
    }

    private void beyond(boolean often) {
      String said =
          often
              ? "The chain '"
                  + subject
                  + "' will often be beyond its limits: tighten its largest link or fit it by hand."
              : "The chain '"
                  + subject
                  + "' can be beyond its limits if its sizes lie on the bad side; measure when fitting.";
      String limits =
          values.quantity("least").map(q -> "at least " + q.exact().decimal(3) + " mm").orElse("")
              + (values.has("least") && values.has("most") ? ", " : "")
              + values
                  .quantity("most")
                  .map(q -> "at most " + q.exact().decimal(3) + " mm")
                  .orElse("");
      findings.add(
          new Finding(
              often ? Finding.Rank.CAUTION : Finding.Rank.NOTE,
              name() + "/" + subject + "/beyond its limits",
              said,
              limits,
              Source.practice("the owner's limit")));
    }

    private void add(String figure, Working w, Source source, String words) {
      Better better = figure.equals("middle") ? Better.NEITHER : Better.LOWER;
      figures.add(Figure.of(name(), subject, figure, w, better, source).exactly(words));
    }
  }
}
