package fettle.planning.route;

import fettle.machine.dictionary.Values;
import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Working;
import fettle.mechanics.gears.ChangeGearSearch;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What there is to make parts with.
 *
 * @param lathe the lathe, in the state looked at
 * @param mills milling machines
 */
public record Workshop(Lathe lathe, List<Mill> mills) {

  private static final double RPM = Math.PI / 30;
  private static final List<Double> USUAL = List.of(100 * RPM, 300 * RPM, 900 * RPM);
  private static final double PPM = 1e6;
  private static final double USUAL_LIMIT = 1000;

  /**
   * A milling machine.
   *
   * @param x travel of its table along [mm]
   * @param y travel of its table across [mm]
   */
  public record Mill(double x, double y) {

    boolean takes(double along, double across) {
      return Math.max(along, across) <= Math.max(x, y) && Math.min(along, across) <= Math.min(x, y);
    }
  }

  /** Keeps its own copy. */
  public Workshop {
    mills = List.copyOf(mills);
  }

  /** Returns what a book says of lathe and shop, for one part: its threads are looked for. */
  public static Workshop of(Machine machine, Optional<Values> shop, Recipe part) {
    Values values = machine.values().block("lathe").orElseThrow();
    double swing =
        values
            .quantity("swing over cross slide")
            .map(q -> q.value())
            .orElse(1.1 * values.need("centre height").value());
    double bore =
        machine
            .values()
            .block("spindle")
            .flatMap(s -> s.quantity("bore"))
            .map(q -> q.value())
            .orElse(0.0);
    Lathe.Tailstock tailstock =
        machine.members().containsKey("tailstock")
            ? Lathe.Tailstock.THERE
            : Lathe.Tailstock.STRIPPED;
    double centres = values.need("between centres").value();
    return new Workshop(
        new Lathe(
            swing, centres, bore, speeds(machine, shop), pitches(machine, shop, part), tailstock),
        mills(shop));
  }

  /** Returns the route of a part. */
  public Route route(Recipe part) {
    if (part instanceof Turned t) {
      return TurnedRoute.of(t, lathe);
    }
    return part instanceof Prismatic p ? PrismaticRoute.of(p, this) : FoldedRoute.of((Folded) part);
  }

  private static List<Mill> mills(Optional<Values> shop) {
    List<Mill> mills = new ArrayList<>();
    shop.ifPresent(
        s ->
            s.map("machines")
                .values()
                .forEach(
                    m ->
                        m.quantity("travel x")
                            .ifPresent(
                                x ->
                                    mills.add(
                                        new Mill(
                                            x.value(),
                                            m.quantity("travel y")
                                                .map(y -> y.value())
                                                .orElse(x.value()))))));
    return mills;
  }

  /** Returns the speeds that the lathe's drive gives; usual ones if none is described. */
  private static List<Double> speeds(Machine machine, Optional<Values> shop) {
    List<Double> speeds =
        Topics.study(machine, shop).figures().stream()
            .filter(f -> f.topic().equals("speeds"))
            .filter(f -> f.name().startsWith("speed") || f.name().endsWith("speed"))
            .flatMap(f -> f.working().stream())
            .map(Working::value)
            .filter(v -> v > 0)
            .toList();
    return speeds.isEmpty() ? USUAL : speeds;
  }

  /** Returns the leads of a part that the change gears cut; empty if the book names no gears. */
  private static List<Double> pitches(Machine machine, Optional<Values> shop, Recipe part) {
    Set<Double> leads = new TreeSet<>();
    if (part instanceof Turned t) {
      for (Step step : t.outside()) {
        if (step.thread() != null) {
          leads.add(step.thread().pitch() * step.thread().starts());
        }
      }
    }
    Optional<ScrewCutting> cutting = Optional.empty();
    for (Train train : machine.trains().values()) {
      cutting = cutting.isPresent() ? cutting : ScrewCutting.of(machine, train, shop);
    }
    double limit =
        machine
            .values()
            .block("limits")
            .map(l -> l.need("lead error").value() * PPM)
            .orElse(USUAL_LIMIT);
    return leads.isEmpty() || cutting.isEmpty() ? List.of() : cut(cutting.get(), leads, limit);
  }

  private static List<Double> cut(ScrewCutting cutting, Set<Double> leads, double limit) {
    List<Ratio> wanted =
        leads.stream().map(l -> Ratio.of(BigDecimal.valueOf(l).stripTrailingZeros())).toList();
    ChangeGearSearch.Result result =
        ChangeGearSearch.search(
            cutting.query(
                wanted, 1, Set.of(ChangeGearSearch.Wheels.TWO, ChangeGearSearch.Wheels.FOUR)));
    List<Double> cut = new ArrayList<>();
    cut.add(cutting.fixed().toDouble());
    for (ChangeGearSearch.Listing listing : result.listings()) {
      if (!listing.best().isEmpty() && Math.abs(listing.best().get(0).ppm()) <= limit) {
        cut.add(listing.lead().toDouble());
      }
    }
    return cut;
  }
}
