package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Searches for change gears, as single calculations. */
final class SearchReckoners {

  private static final String COVER =
      "Close and fasten the gear cover before starting the spindle; isolate the supply before"
          + " touching wheels, banjo or tumbler; turn by hand first.";

  private SearchReckoners() {}

  static List<Reckoner> all() {
    return List.of(changeGears(), census(), purchase());
  }

  private static Reckoner.Draft question(Reckoner.Draft draft) {
    draft
        .input(
            "wheels",
            Input.Kind.EXACTS,
            Unit.ONE,
            "teeth of every wheel in the shop, equal wheels as often as they are there",
            null,
            true)
        .input(
            "leads",
            Input.Kind.EXACTS,
            Unit.MM,
            "leads to cut, e.g. '1.25, 19 tpi, pi'; or leave it and name a list",
            null,
            false)
        .choice("list", "list of leads, if none are given", lists());
    TrainReckoners.exact(draft, "P_L", Unit.MM, "lead of the lead screw ('16 tpi')", "1.5");
    TrainReckoners.exact(
        draft, "i_fixed", Unit.ONE, "ratio of tumbler and stud; take it from a known line", "1");
    draft
        .input(
            "sizes",
            Input.Kind.EXACTS,
            Unit.ONE,
            "numbers of wheels a train may have: 2, 4, 6",
            "2, 4",
            true)
        .choice("banjo", "whether trains must fit the banjo", "given", "none");
    return ThreadReckoners.banjoSizes(draft);
  }

  private static String[] lists() {
    return Arrays.stream(ThreadPitches.values()).map(ThreadPitches::label).toArray(String[]::new);
  }

  private static ChangeGearSearch.Query query(Given g, int best, double limit) {
    return new ChangeGearSearch.Query(
        ThreadReckoners.list(g, "wheels"),
        Teeth.positive("m", "mm", g.number("m")),
        g.choice("banjo").equals("none") ? null : ThreadReckoners.banjoOf(g),
        screw(g),
        leads(g),
        best,
        sizes(g),
        limit);
  }

  private static Ratio screw(Given g) {
    Ratio screw = g.exact("P_L").times(g.exact("i_fixed"));
    Teeth.positive("P_L times i_fixed", screw);
    return screw;
  }

  private static List<Ratio> leads(Given g) {
    if (g.has("leads")) {
      return g.exacts("leads");
    }
    return Arrays.stream(ThreadPitches.values())
        .filter(p -> p.label().equals(g.choice("list")))
        .findFirst()
        .orElseThrow()
        .leads();
  }

  private static Set<ChangeGearSearch.Wheels> sizes(Given g) {
    Set<ChangeGearSearch.Wheels> sizes = EnumSet.noneOf(ChangeGearSearch.Wheels.class);
    for (int size : g.counts("sizes")) {
      switch (size) {
        case 2 -> sizes.add(ChangeGearSearch.Wheels.TWO);
        case 4 -> sizes.add(ChangeGearSearch.Wheels.FOUR);
        case 6 -> sizes.add(ChangeGearSearch.Wheels.SIX);
        default ->
            throw new IllegalArgumentException("sizes must be 2, 4 or 6 wheels, found " + size);
      }
    }
    return sizes;
  }

  private static Reckoner changeGears() {
    Reckoner.Draft draft =
        question(
            Reckoner.of(
                TrainReckoners.GROUP,
                "change-gears",
                "Best trains of change gears for leads, from the wheels in the shop"));
    return draft
        .count("best", "how many trains for each lead", "1")
        .number("limit", Unit.PERCENT, "largest error worth showing", "50")
        .number("l", Unit.MM, "length over which the error is told", "25")
        .result("errors", Unit.PPM, "signed error of the best train for each lead")
        .result("error", Unit.PPM, "the same, if one lead was asked for")
        .result("trains", Unit.ONE, "best trains, lead by lead")
        .result("exact", Unit.ONE, "leads with an exact train")
        .result("missing", Unit.ONE, "leads without any train")
        .result("pairings", Unit.ONE, "pairings of drivers and driven wheels considered")
        .result("examined", Unit.ONE, "pairings looked at one by one")
        .result("twice", Unit.ONE, "left out: a wheel would be needed twice")
        .result("unfit", Unit.ONE, "left out: no order fits the banjo")
        .source(Sources.TOOTH_CHOICE)
        .rule(SearchReckoners::changeGearsAnswer);
  }

  private static Answer changeGearsAnswer(Given g) {
    ChangeGearSearch.Result result =
        ChangeGearSearch.search(query(g, g.count("best"), g.number("limit")));
    double length = Teeth.positive("l", "mm", g.number("l"));
    List<String> lines = new ArrayList<>();
    List<Double> errors = new ArrayList<>();
    int exact = 0;
    int missing = 0;
    for (ChangeGearSearch.Listing listing : result.listings()) {
      exact += listing.exact() == null ? 0 : 1;
      if (listing.best().isEmpty()) {
        missing++;
        lines.add(Numbers.significant(listing.lead().toDouble(), 6) + " mm: no train");
        continue;
      }
      errors.add(listing.best().get(0).ppm() * 1e-6);
      for (ChangeGearSearch.Train train : listing.best()) {
        lines.add(line(listing.lead(), train, length));
      }
    }
    if (errors.isEmpty()) {
      return Answer.none(
          "no train of these wheels comes within the limit and fits the banjo; add wheels, allow"
              + " more wheels in a train, or check the sizes of the banjo");
    }
    Answer answer =
        Answer.start()
            .with("errors", errors.stream().mapToDouble(Double::doubleValue).toArray())
            .with("trains", lines)
            .with("exact", exact)
            .with("missing", missing)
            .with("pairings", result.pairings())
            .with("examined", result.counts().examined())
            .with("twice", result.counts().twice())
            .with("unfit", result.counts().unfit());
    if (errors.size() == 1 && missing == 0) {
      answer = answer.with("error", errors.get(0));
    }
    boolean coarse =
        result.listings().stream().anyMatch(l -> l.lead().over(screw(g)).toDouble() > 3);
    if (coarse) {
      answer =
          answer.caution(
              "A coarse lead drives the carriage fast: turn the spindle by hand or drive from the"
                  + " lead screw.");
    }
    return answer.caution(COVER);
  }

  private static String line(Ratio lead, ChangeGearSearch.Train train, double length) {
    return String.format(
        java.util.Locale.ROOT,
        "%s mm: %s gives %s mm, %s ppm, %s um in %s mm",
        Numbers.significant(lead.toDouble(), 6),
        train.text(),
        train.lead().isRational() ? train.lead().folded().text() : train.lead().text(),
        train.exact() ? "0 (exact)" : String.format(java.util.Locale.ROOT, "%+.4f", train.ppm()),
        Numbers.significant(train.ppm() * 1e-3 * length, 4),
        Numbers.significant(length, 4));
  }

  private static Reckoner census() {
    Reckoner.Draft draft =
        Reckoner.of(
                TrainReckoners.GROUP,
                "change-gear-census",
                "How many four-wheel trains a stock offers, and how many fit the banjo")
            .input(
                "wheels",
                Input.Kind.EXACTS,
                Unit.ONE,
                "teeth of every wheel in the shop",
                null,
                true);
    return ThreadReckoners.banjoSizes(draft)
        .result("fitting", Unit.ONE, "ordered trains that fit")
        .result("all", Unit.ONE, "ordered trains without the geometry test")
        .result("broken", Unit.ONE, "trains left out, by the first rule they break")
        .source(Sources.BANJO)
        .rule(
            g -> {
              ChangeGearSearch.Census census =
                  ChangeGearSearch.census(
                      checked(ThreadReckoners.list(g, "wheels")),
                      Teeth.positive("m", "mm", g.number("m")),
                      ThreadReckoners.banjoOf(g));
              return Answer.start()
                  .with("fitting", census.fitting())
                  .with("all", census.all())
                  .with(
                      "broken",
                      census.broken().entrySet().stream()
                          .map(e -> e.getKey().words() + ": " + e.getValue())
                          .toList());
            });
  }

  private static List<Integer> checked(List<Integer> wheels) {
    wheels.forEach(z -> Teeth.check("change gear", z));
    return wheels;
  }

  private static Reckoner purchase() {
    Reckoner.Draft draft =
        question(
            Reckoner.of(
                TrainReckoners.GROUP,
                "wheel-to-buy",
                "Which one wheel more helps a list of threads most"));
    return draft
        .count("fewest", "smallest wheel to try", "15")
        .count("most", "largest wheel to try", "130")
        .number("limit", Unit.PPM, "error within which a thread counts as cut", "500")
        .result("wheel", Unit.TEETH, "the wheel to buy")
        .result("gain", Unit.ONE, "threads that come within the limit")
        .result("before", Unit.ONE, "threads within the limit now")
        .result("after", Unit.ONE, "threads within the limit with it")
        .result("exact", Unit.ONE, "exact threads with it")
        .result("next", Unit.ONE, "the ten best wheels")
        .source(Sources.TOOTH_CHOICE)
        .rule(
            g -> {
              if (g.count("most") - g.count("fewest") > 200) {
                throw new IllegalArgumentException("at most 201 wheels can be tried at once");
              }
              Teeth.positive("limit", "ppm", g.number("limit"));
              List<ChangeGearSearch.Purchase> all =
                  ChangeGearSearch.purchases(
                      query(g, 1, 0.5),
                      g.count("fewest"),
                      g.count("most"),
                      g.number("limit") * 1e6);
              ChangeGearSearch.Purchase best = all.get(0);
              return Answer.start()
                  .with("wheel", best.teeth())
                  .with("gain", best.within() - best.before())
                  .with("before", best.before())
                  .with("after", best.within())
                  .with("exact", best.exact())
                  .with(
                      "next",
                      all.stream()
                          .limit(10)
                          .map(
                              p ->
                                  String.format(
                                      java.util.Locale.ROOT,
                                      "%d teeth: %d threads within the limit, %d exact, mean %.0f"
                                          + " ppm",
                                      p.teeth(),
                                      p.within(),
                                      p.exact(),
                                      p.mean()))
                          .toList());
            });
  }
}
