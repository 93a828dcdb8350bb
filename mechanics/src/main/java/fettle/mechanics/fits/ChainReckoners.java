package fettle.mechanics.fits;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.fits.ToleranceChain.Draws;
import fettle.mechanics.fits.ToleranceChain.Link;
import fettle.mechanics.fits.ToleranceChain.Spread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Single calculations on chains of tolerances. */
final class ChainReckoners {

  private ChainReckoners() {}

  static List<Reckoner> all() {
    return List.of(chain(), offsetForce(), generalGeometry());
  }

  private static Reckoner chain() {
    return Reckoner.of(
            "fits", "tolerance-chain", "Worst case, statistics and random draws of a size chain")
        .numbers("half_tolerances", Unit.MM, "half tolerance of each size, plus and minus")
        .input(
            "coefficients",
            Input.Kind.NUMBERS,
            Unit.ONE,
            "factor of each size: 1, -1 or a lever ratio; all 1 if not given",
            null,
            false)
        .input(
            "nominals",
            Input.Kind.NUMBERS,
            Unit.MM,
            "middle of each size; all 0 if not given",
            null,
            false)
        .input(
            "distributions",
            Input.Kind.WORDS,
            Unit.ONE,
            "uniform, normal or clearance: one for all or one each",
            "uniform",
            true)
        .number("drift", Unit.ONE, "factor on the root sum of squares for small shops", "1.5")
        .optional("low", Unit.MM, "lower limit of the gap")
        .optional("high", Unit.MM, "upper limit of the gap")
        .count("draws", "random draws", "200000")
        .count("seed", "start of the random numbers", "1")
        .result("nominal", Unit.MM, "gap with every size at its middle")
        .result("worst_case", Unit.MM, "half-width no combination exceeds")
        .result("rss", Unit.MM, "root sum of squares")
        .result("rss_shop", Unit.MM, "root sum of squares times the drift factor")
        .result("sigma", Unit.MM, "standard deviation with the given distributions")
        .result("p95", Unit.MM, "half-width that holds 95 % of the draws")
        .result("p9973", Unit.MM, "half-width that holds 99.73 % of the draws")
        .result("sigma_drawn", Unit.MM, "standard deviation of the draws")
        .result("outside", Unit.PERCENT, "share of draws outside the limits")
        .result("shares", Unit.PERCENT, "share of each size in the variance")
        .source(Sources.CHAINS)
        .rule(ChainReckoners::chain);
  }

  private static Answer chain(Given g) {
    ToleranceChain chain = new ToleranceChain(links(g));
    Interval limits =
        new Interval(
            g.number("low", Double.NEGATIVE_INFINITY), g.number("high", Double.POSITIVE_INFINITY));
    Draws draws = chain.draws(limits, g.count("draws"), g.count("seed"));
    Bound.within("drift", g.number("drift"), 1, 3, "");
    Answer answer =
        Answer.start()
            .with("nominal", chain.mean())
            .with("worst_case", chain.worstCase())
            .with("rss", chain.rootSumOfSquares())
            .with("rss_shop", g.number("drift") * chain.rootSumOfSquares())
            .with("sigma", chain.sigma())
            .with("p95", draws.ninetyFive())
            .with("p9973", draws.nearlyAll())
            .with("sigma_drawn", draws.sigma())
            .with("shares", chain.shares());
    return g.has("low") || g.has("high") ? answer.with("outside", draws.outside()) : answer;
  }

  private static List<Link> links(Given g) {
    double[] halves = g.numbers("half_tolerances");
    double[] factors = same(g, "coefficients", halves.length, 1);
    double[] nominals = same(g, "nominals", halves.length, 0);
    List<String> words = g.words("distributions");
    if (words.size() != 1 && words.size() != halves.length) {
      throw new IllegalArgumentException(
          "distributions: found " + words.size() + ", expected 1 or " + halves.length);
    }
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < halves.length; i++) {
      Spread spread = spread(words.get(words.size() == 1 ? 0 : i));
      links.add(new Link("size " + (i + 1), factors[i], nominals[i], halves[i], spread));
    }
    return links;
  }

  private static double[] same(Given g, String name, int length, double standard) {
    if (!g.has(name)) {
      double[] all = new double[length];
      Arrays.fill(all, standard);
      return all;
    }
    double[] given = g.numbers(name);
    if (given.length != length) {
      throw new IllegalArgumentException(
          name + ": found " + given.length + " values, expected " + length);
    }
    return given;
  }

  private static Spread spread(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "uniform" -> Spread.UNIFORM;
      case "normal" -> Spread.NORMAL;
      case "clearance" -> Spread.CLEARANCE;
      default ->
          throw new IllegalArgumentException(
              "distributions: found '" + word + "', expected uniform, normal or clearance");
    };
  }

  private static Reckoner offsetForce() {
    return Reckoner.of(
            "fits",
            "offset-force",
            "Side force on a nut whose axis misses the axis of the screw's bearing block")
        .choice("model", "how the screw is held", "cantilever", "both_ends")
        .number("E", Unit.MPA, "Young's modulus of the screw", "210000")
        .number("d3", Unit.MM, "root diameter of the screw")
        .number("a", Unit.MM, "free length from block to nut")
        .number("offset", Unit.MM, "distance of the axes where the block stands")
        .number("angle", Unit.MM_PER_M, "angle between the axes", "0")
        .number("travel", Unit.MM, "travel from the place where the offset was taken", "0")
        .optional("feed_force", Unit.N, "feed force, for comparison")
        .result("offset_total", Unit.MM, "offset with the share of the angle")
        .result("F", Unit.N, "side force on the nut")
        .source(Sources.BEAM)
        .rule(
            g -> {
              Bound.positive("E", g.number("E"), "MPa");
              Bound.positive("d3", g.number("d3"), "mm");
              Bound.positive("a", g.number("a"), "mm");
              Bound.notNegative("offset", g.number("offset"), "mm");
              Bound.notNegative("angle", g.number("angle"), "");
              Bound.notNegative("travel", g.number("travel"), "mm");
              Working offset =
                  Working.of(
                      "v",
                      Unit.MM,
                      "offset + angle*travel",
                      g.term("offset"),
                      g.term("angle"),
                      g.term("travel"));
              String factor = g.choice("model").equals("cantilever") ? "3" : "12";
              Working force =
                  Working.of(
                      "F",
                      Unit.N,
                      factor + "*E*pi*d3^4/64*v/a^3",
                      g.term("E"),
                      g.term("d3"),
                      Term.of(offset),
                      g.term("a"));
              Answer answer = Answer.start().with("offset_total", offset).with("F", force);
              double limit = g.has("feed_force") ? 0.2 * g.number("feed_force") : 50;
              return force.value() > Math.min(limit, 50)
                  ? answer.caution(
                      "above 50 N or a fifth of the feed force the screw binds near the block: bore"
                          + " the block in place from the nut, let the nut float while tightening,"
                          + " shim, then dowel (W-MISALIGN, common practice)")
                  : answer;
            });
  }

  private static Reckoner generalGeometry() {
    return Reckoner.of(
            "fits", "general-note", "Tolerance note of a new sheet under the standards in force")
        .choice("class", "class of ISO 2768-1 for linear sizes", "m", "f", "c", "v")
        .number("profile", Unit.MM, "general profile tolerance of a surface", "0.2")
        .text("datums", "datum letters in order, such as A B C")
        .result("note", Unit.ONE, "note to write")
        .source(Source.page("ISO 22081:2021", "general geometrical and size specifications"))
        .rule(
            g -> {
              Bound.positive("profile", g.number("profile"), "mm");
              String datums = g.text("datums").replace(",", " ").trim();
              if (!datums.matches("[A-Z](\\s+[A-Z]){0,2}")) {
                throw new IllegalArgumentException(
                    "datums: found '" + datums + "', expected one to three letters such as A B C");
              }
              return Answer.start()
                  .with(
                      "note",
                      "linear sizes ISO 2768-"
                          + g.choice("class")
                          + "; general profile ISO 22081 "
                          + Numbers.significant(g.number("profile"), 4)
                          + " to datums "
                          + datums)
                  .caution("do not write 2768-mK: ISO 2768-2 was withdrawn in 2021 (W-2768-2)");
            });
  }
}
