package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.gears.ChangeGearSearch;
import fettle.mechanics.gears.ThreadPitches;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which threads the lathe can cut with the gears in the drawer, or at the levers of its box. */
final class ThreadTopic implements Topic {

  private static final Source SEARCH =
      Source.derived("every train of two and four wheels that fits the banjo, compared exactly");
  private static final Source LEVERS = Source.derived("every setting of the box, compared exactly");
  private static final Source COVER =
      Source.memory(
          "ISO 23125:2015", "guards of change gears closed before the spindle is started");

  @Override
  public String name() {
    return "threads";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Study all = new Study(List.of(), List.of());
    for (Train train : machine.trains().values()) {
      if (train.use().equals("screw cutting") && train.linear() && train.exact()) {
        all = all.and(train(machine, train, shop));
      }
    }
    return all;
  }

  private Study train(Machine machine, Train train, Optional<Values> shop) {
    Quantity limit =
        machine.values().block("limits").map(l -> l.need("lead error")).orElse(STANDARD_LIMIT);
    for (Element element : train.elements()) {
      if (element instanceof Element.Box box) {
        Ratio fixed = train.factor().over(box.set());
        return figures(train.name(), limit, lead -> best(box, fixed, lead), LEVERS);
      }
    }
    return reach(machine, train, shop, limit);
  }

  private static final Quantity STANDARD_LIMIT = new Quantity(Ratio.of(1, 1000), Unit.PPM, 0);

  private Finding cover(Train train) {
    return new Finding(
        Finding.Rank.NOTE,
        name() + "/" + train.name(),
        "Isolate the lathe before the change gears are touched; their cover is closed before the"
            + " spindle turns.",
        "gears covered",
        COVER);
  }

  private Study reach(Machine machine, Train train, Optional<Values> shop, Quantity limit) {
    try {
      return ScrewCutting.of(machine, train, shop)
          .map(c -> gears(c, limit).and(new Study(List.of(), List.of(cover(train)))))
          .orElse(new Study(List.of(), List.of()));
    } catch (IllegalArgumentException e) {
      return new Study(
          List.of(),
          List.of(
              new Finding(
                  Finding.Rank.CAUTION,
                  name() + "/" + train.name(),
                  "The threads in reach of the "
                      + train.name()
                      + " cannot be searched: "
                      + e.getMessage()
                      + ".",
                  "",
                  SEARCH)));
    }
  }

  private Study gears(ScrewCutting cutting, Quantity limit) {
    List<Ratio> leads = new ArrayList<>(ThreadPitches.ISO_261.leads());
    leads.addAll(ThreadPitches.UTS.leads());
    ChangeGearSearch.Result result =
        ChangeGearSearch.search(
            cutting.query(
                leads, 1, Set.of(ChangeGearSearch.Wheels.TWO, ChangeGearSearch.Wheels.FOUR)));
    return figures(
        cutting.train(),
        limit,
        lead ->
            result.listings().stream()
                .filter(l -> l.lead().sameAs(lead) && !l.best().isEmpty())
                .map(l -> new Cut(l.best().get(0).ppm()))
                .findFirst(),
        SEARCH);
  }

  /** The best way to cut one lead. */
  private record Cut(double ppm) {}

  private interface Cutter {
    Optional<Cut> cut(Ratio lead);
  }

  private static Optional<Cut> best(Element.Box box, Ratio fixed, Ratio lead) {
    Cut best = null;
    for (Ratio setting : box.settings()) {
      Ratio error = fixed.times(setting).over(lead);
      double ppm = error.sameAs(Ratio.ONE) ? 0 : (error.toDouble() - 1) * 1e6;
      if (best == null || Math.abs(ppm) < Math.abs(best.ppm)) {
        best = new Cut(ppm);
      }
    }
    return Optional.ofNullable(best);
  }

  private Study figures(String subject, Quantity limit, Cutter cutter, Source source) {
    Study metric = list(subject, "ISO 261 pitches", ThreadPitches.ISO_261, limit, cutter, source);
    return metric.and(
        list(subject, "UTS threads per inch", ThreadPitches.UTS, limit, cutter, source));
  }

  private Study list(
      String subject,
      String what,
      ThreadPitches list,
      Quantity limit,
      Cutter cutter,
      Source source) {
    int within = 0;
    int exact = 0;
    List<String> missing = new ArrayList<>();
    List<String> labels = list.printed().stream().map(list::name).toList();
    for (int i = 0; i < labels.size(); i++) {
      Optional<Cut> cut = cutter.cut(list.leads().get(i));
      boolean good = cut.isPresent() && Math.abs(cut.get().ppm) <= limit.value() * 1e6;
      if (good) {
        within++;
        exact += cut.get().ppm == 0 ? 1 : 0;
      } else {
        missing.add(labels.get(i).replaceAll(" .*", ""));
      }
    }
    Working within1 = count("n", within);
    Working exact1 = count("n", exact);
    String words =
        missing.isEmpty()
            ? "all of " + labels.size()
            : "of " + labels.size() + "; not " + String.join(" ", missing);
    return new Study(
        List.of(
            Figure.of(name(), subject, what + " within the limit", within1, Better.HIGHER, source)
                .exactly(words),
            Figure.of(name(), subject, what + " cut exactly", exact1, Better.HIGHER, source)),
        List.of());
  }

  private static Working count(String symbol, int number) {
    return Working.of(symbol, Unit.ONE, symbol, Term.exact(symbol, number));
  }
}
