package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Single calculations on quick-change boxes. */
final class BoxReckoners {

  private BoxReckoners() {}

  static List<Reckoner> all() {
    return List.of(leastCone(), coneBox(), fixedCentre(), settings(), classes(), length());
  }

  private static Reckoner.Draft targets(Reckoner.Draft draft) {
    return draft.input(
        "targets",
        Input.Kind.EXACTS,
        Unit.ONE,
        "numbers the box shall give, all leads in mm or all threads per inch",
        null,
        true);
  }

  private static Reckoner leastCone() {
    return targets(
            Reckoner.of(
                TrainReckoners.GROUP,
                "least-cone",
                "Fewest cone wheels for so many multiplier ratios, proven"))
        .count("multipliers", "ratios of the multiplier stage", "2")
        .result("n", Unit.ONE, "fewest cone wheels")
        .result("W", Unit.ONE, "wheels: n and two for each multiplier")
        .result("sets", Unit.ONE, "sets of multipliers tried")
        .result("proof", Unit.ONE, "how the number is known")
        .source(Sources.SYNTHESIS)
        .rule(
            g -> {
              int r = g.count("multipliers");
              if (r > 4 || g.exacts("targets").size() > 30) {
                throw new IllegalArgumentException(
                    "at most 4 multipliers and 30 targets can be proven here; found "
                        + r
                        + " and "
                        + g.exacts("targets").size());
              }
              GearboxSearch.Level level = GearboxSearch.leastCone(g.exacts("targets"), r);
              if (level.found() == 0) {
                return Answer.none(
                    "the search was ended before a box was found; take fewer targets or"
                        + " multipliers");
              }
              Answer answer =
                  Answer.start()
                      .with("n", level.found())
                      .with("W", level.found() + 2 * r)
                      .with("sets", level.sets())
                      .with("proof", level.reason());
              return level.found() == level.least()
                  ? answer
                  : answer.caution("Not proven: as few as " + level.least() + " may do.");
            });
  }

  private static Reckoner coneBox() {
    Reckoner.Draft draft =
        targets(
            Reckoner.of(
                TrainReckoners.GROUP,
                "cone-box",
                "Cone-and-tumbler box with the fewest wheels, proven or with the gap"));
    return draft
        .input(
            "per_inch",
            Input.Kind.EXACTS,
            Unit.ONE,
            "threads per inch the same wheels shall give with the cone driven",
            null,
            false)
        .count("most_multipliers", "most ratios of the multiplier stage", "6")
        .count("sets", "most sets of multipliers to try", "300000")
        .count("z_min", "fewest teeth", "20")
        .count("z_max", "most teeth", "200")
        .result("W", Unit.ONE, "fewest wheels: n on the cone and two for each multiplier")
        .result("n", Unit.ONE, "cone wheels")
        .result("r", Unit.ONE, "multiplier ratios")
        .result("bound", Unit.ONE, "no box of this kind has fewer wheels than this")
        .result("gap", Unit.PERCENT, "how many of its wheels a better box might save at most")
        .result("cone", Unit.ONE, "cone wheels, in proportion")
        .result("multipliers", Unit.ONE, "multiplier ratios")
        .result("teeth", Unit.TEETH, "teeth of the cone wheels")
        .result("certificate", Unit.ONE, "what was tried and how each bound is known")
        .source(Sources.SYNTHESIS)
        .rule(BoxReckoners::coneBoxAnswer);
  }

  private static Answer coneBoxAnswer(Given g) {
    List<Ratio> second = g.has("per_inch") ? g.exacts("per_inch") : List.of();
    int sets = g.count("sets");
    if (sets > 5_000_000) {
      throw new IllegalArgumentException(
          "sets [-] must be at most 5000000 in a single calculation, found " + sets);
    }
    GearboxSearch.Outcome outcome =
        GearboxSearch.search(
            new GearboxSearch.Query(
                g.exacts("targets"), second, g.count("most_multipliers"), sets));
    GearboxSearch.Design design = outcome.design();
    int wheels = design.wheels();
    List<String> lines = new ArrayList<>();
    for (GearboxSearch.Level level : outcome.levels()) {
      lines.add(
          level.multipliers()
              + " multipliers: at least "
              + level.least()
              + " cone wheels, "
              + (level.least() + 2 * level.multipliers())
              + " in all ("
              + level.reason()
              + "; "
              + level.sets()
              + " sets tried)");
    }
    Answer answer =
        Answer.start()
            .with("W", wheels)
            .with("n", design.cone().size())
            .with("r", design.multipliers().size())
            .with("bound", outcome.lowerBound())
            .with("gap", (double) (wheels - outcome.lowerBound()) / wheels)
            .with("cone", design.cone().stream().map(Ratio::text).toList())
            .with("multipliers", design.multipliers().stream().map(Ratio::text).toList())
            .with("certificate", lines);
    try {
      answer =
          answer.with(
              "teeth",
              ConeTeeth.teeth(design.cone(), g.count("z_min"), g.count("z_max")).stream()
                  .mapToDouble(Integer::doubleValue)
                  .toArray());
    } catch (IllegalArgumentException tooLarge) {
      answer = answer.caution(String.valueOf(tooLarge.getMessage()));
    }
    return outcome instanceof GearboxSearch.Outcome.BestFound found
        ? answer.caution("Best found, not proven: " + found.stopped() + ".")
        : answer;
  }

  private static Reckoner fixedCentre() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "fixed-centre-sum",
            "Least tooth sum on which every ratio has an exact pair")
        .input("ratios", Input.Kind.EXACTS, Unit.ONE, "ratios, driver over driven", null, true)
        .count("z_min", "fewest teeth of any gear", "17")
        .count("slack", "teeth by which a sum may differ, taken up by profile shift", "0")
        .count("most", "largest sum to try", "2000")
        .result("S", Unit.TEETH, "least tooth sum")
        .result("pairs", Unit.ONE, "the pairs")
        .result("tried", Unit.ONE, "sums tried")
        .source(Sources.SYNTHESIS)
        .rule(
            g -> {
              FixedCentre.Outcome outcome =
                  FixedCentre.leastSum(
                      g.exacts("ratios"), g.count("z_min"), g.count("slack"), g.count("most"));
              if (outcome instanceof FixedCentre.Outcome.None none) {
                return Answer.none(
                    "no tooth sum up to "
                        + none.tried()
                        + " serves all ratios; allow a tooth more or less, or other ratios");
              }
              FixedCentre.Outcome.Least least = (FixedCentre.Outcome.Least) outcome;
              return Answer.start()
                  .with("S", least.sum())
                  .with(
                      "pairs",
                      least.pairs().stream().map(p -> p.driver() + "/" + p.driven()).toList())
                  .with("tried", least.sum() - 2 * g.count("z_min") + 1);
            });
  }

  private static Reckoner settings() {
    return Reckoner.of(TrainReckoners.GROUP, "box-settings", "Number of settings of a box")
        .input(
            "stages",
            Input.Kind.EXACTS,
            Unit.ONE,
            "choices of each stage in series: cone wheels, speeds of each clutch",
            null,
            true)
        .result("settings", Unit.ONE, "number of settings")
        .source(Source.derived("independent choices multiply"))
        .rule(
            g -> {
              int[] stages = g.counts("stages");
              if (IntStream.of(stages).anyMatch(s -> s < 1)) {
                throw new IllegalArgumentException("stages [-] must each be 1 or more");
              }
              double settings = IntStream.of(stages).asDoubleStream().reduce(1, (a, b) -> a * b);
              return Answer.start().with("settings", settings);
            });
  }

  private static Reckoner classes() {
    return targets(
            Reckoner.of(
                TrainReckoners.GROUP,
                "doubling-classes",
                "Least cone if all multipliers are powers of two"))
        .result("classes", Unit.ONE, "targets that differ by more than factors of two")
        .source(Sources.SYNTHESIS)
        .rule(
            g ->
                Answer.start()
                    .with("classes", GearboxSearch.classesModuloTwo(g.exacts("targets"))));
  }

  private static Reckoner length() {
    return Reckoner.of(TrainReckoners.GROUP, "cone-length", "Length of a cone of gears")
        .count("n", "wheels on the cone")
        .number("b", Unit.MM, "face width; 6 to 10 modules in steel, 10 to 12 in iron or plastic")
        .number("g", Unit.MM, "gap between wheels, 1 mm least", "1")
        .result("L", Unit.MM, "length of the cone")
        .source(Source.practice("face widths and gaps of small gearboxes"))
        .rule(
            g -> {
              int n = g.count("n");
              if (n < 1 || n > 1000) {
                throw new IllegalArgumentException("n [-] must be 1 to 1000, found " + n);
              }
              Teeth.positive("b", "mm", g.number("b"));
              Teeth.notNegative("g", "mm", g.number("g"));
              return Answer.start()
                  .with(
                      "L",
                      Working.of(
                          "L", Unit.MM, "n*b+(n-1)*g", g.term("n"), g.term("b"), g.term("g")));
            });
  }
}
