package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Every train of two, four or six wheels from a stock that fits the banjo, the best for each lead.
 *
 * <p>Nothing is missed, and this is why. A train's error depends on two products only, that of its
 * drivers and that of its driven wheels. All products of as many wheels as the train has pairs are
 * made and sorted once. For a product of drivers the ideal product of driven wheels is known; from
 * it the search walks up and down the sorted list. On either side the error can only grow, so the
 * walk may stop as soon as the error exceeds that of the last train kept. Two trains whose errors
 * are too near for double precision are compared with whole numbers.
 *
 * <p>The walk is made in bands of growing error, each taking up where the one before ended: a
 * pairing is looked at in the band that holds its error, and in no other. When the bands have
 * reached the error of the last train kept, or the limit, every pairing that could enter has been
 * looked at. As the order of merit leaves no two trains equal, the order in which they are looked
 * at changes nothing but the time: near trains first make the bound small before poor ones are met.
 *
 * <p>Trains that use the same drivers and the same driven wheels in another order count as one; the
 * first order that fits, read as A, B, C, D ..., stands for them. Order of merit: size of the
 * error, sum of the teeth, number of wheels, then A, B, C, D ...
 */
public final class ChangeGearSearch {

  /** Errors nearer to each other than this are compared with whole numbers. */
  static final double NEAR = 1e-14;

  /** The first band of errors holds about so many pairings for each train wanted. */
  private static final double BAND = 100;

  /** Each band reaches so many times as far as the one before. */
  private static final double WIDENING = 8;

  /** Long trains come nearest, so the walk among the short ones ends early. */
  private static final List<Wheels> MANY_FIRST = List.of(Wheels.SIX, Wheels.FOUR, Wheels.TWO);

  /** Numbers of wheels a train may have, an idler not counted. */
  public enum Wheels {
    TWO(1),
    FOUR(2),
    SIX(3);

    private final int pairs;

    Wheels(int pairs) {
      this.pairs = pairs;
    }

    /** Returns the number of pairs. */
    public int pairs() {
      return pairs;
    }
  }

  /**
   * What is asked.
   *
   * @param stock teeth of every wheel in the shop, equal wheels as often as they are there
   * @param module module of the wheels [mm]
   * @param banjo the banjo; null if any train may be thought of as fitting
   * @param screwLead lead of the lead screw times everything fixed between it and the spindle
   * @param leads leads to cut
   * @param best how many trains to keep for each lead
   * @param wheels numbers of wheels to try
   * @param limit largest relative error of a train worth keeping [-]
   */
  public record Query(
      List<Integer> stock,
      double module,
      @Nullable Banjo banjo,
      Ratio screwLead,
      List<Ratio> leads,
      int best,
      Set<Wheels> wheels,
      double limit) {
    /** Refuses stocks, leads and numbers that make no search. */
    public Query {
      stock = stock.stream().sorted().toList();
      leads = List.copyOf(leads);
      wheels = Set.copyOf(wheels);
      Teeth.positive("module", "mm", module);
      Teeth.positive("lead of the screw", screwLead);
      leads.forEach(lead -> Teeth.positive("lead", lead));
      for (int teeth : stock) {
        if (teeth < Teeth.FEWEST || teeth > 1000) {
          throw new IllegalArgumentException(
              "change gear [teeth] needs 5 to 1000 teeth, found " + teeth);
        }
      }
      if (stock.size() < 2 || stock.size() > 100) {
        throw new IllegalArgumentException(
            "stock [wheels] must hold 2 to 100 wheels, found " + stock.size());
      }
      if (leads.isEmpty() || leads.size() > 1000) {
        throw new IllegalArgumentException(
            "leads [-] must be 1 to 1000 in number, found " + leads.size());
      }
      if (best < 1 || best > 1000) {
        throw new IllegalArgumentException("best [-] must be 1 to 1000, found " + best);
      }
      if (wheels.isEmpty()) {
        throw new IllegalArgumentException("wheels: at least one of two, four, six is needed");
      }
      if (!(limit > 0)) {
        throw new IllegalArgumentException("limit [-] must be above 0, found " + limit);
      }
    }

    /** Returns the same question for another stock. */
    public Query withStock(List<Integer> other) {
      return new Query(other, module, banjo, screwLead, leads, best, wheels, limit);
    }
  }

  /**
   * One train.
   *
   * @param wheels A, B, C, D ... in order from the spindle, driver and driven in turn
   * @param idler teeth of the idler between the two wheels of a simple train; 0 if none is needed
   * @param lead lead it cuts, exact
   * @param ppm deviation from the lead wanted [ppm]
   */
  public record Train(List<Integer> wheels, int idler, Ratio lead, double ppm) {
    /** Keeps its own copy. */
    public Train {
      wheels = List.copyOf(wheels);
    }

    /** Tells whether the lead is cut exactly. */
    public boolean exact() {
      return ppm == 0;
    }

    /** Returns the train as written in a chart. */
    public String text() {
      if (wheels.size() == 2) {
        return wheels.get(0) + (idler == 0 ? "-" : "-(" + idler + ")-") + wheels.get(1);
      }
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < wheels.size(); i += 2) {
        text.append(i == 0 ? "" : " x ")
            .append(wheels.get(i))
            .append('/')
            .append(wheels.get(i + 1));
      }
      return text.toString();
    }
  }

  /**
   * Trains for one lead.
   *
   * @param lead the lead wanted
   * @param best best trains first; empty if none lies within the limit
   */
  public record Listing(Ratio lead, List<Train> best) {
    /** Returns the best train of two wheels among those kept, or null. */
    public @Nullable Train simple() {
      return best.stream().filter(t -> t.wheels().size() == 2).findFirst().orElse(null);
    }

    /** Returns the best exact train, or null if there is none. */
    public @Nullable Train exact() {
      return best.isEmpty() || !best.get(0).exact() ? null : best.get(0);
    }
  }

  /**
   * What became of the pairings that were near enough to be looked at.
   *
   * @param examined pairings of drivers and driven wheels that were compared with the last one kept
   * @param twice left out because a wheel would be needed more often than it is there
   * @param unfit left out because no order of the wheels fits the banjo
   */
  public record Counts(long examined, long twice, long unfit) {}

  /**
   * The answer.
   *
   * @param listings trains for each lead, in the order asked
   * @param pairings pairings of drivers and driven wheels the stock offers, whether looked at or
   *     ruled out by the walk
   * @param counts what became of those looked at
   */
  public record Result(List<Listing> listings, long pairings, Counts counts) {}

  private final Query query;
  private final WheelOrder order;
  private final List<GearProducts> products = new ArrayList<>();
  private long examined;
  private long twice;
  private long unfit;

  private ChangeGearSearch(Query query) {
    this.query = query;
    this.order = WheelOrder.of(query.stock, query.module, query.banjo);
    for (Wheels wheels : MANY_FIRST) {
      if (query.wheels.contains(wheels)) {
        products.add(order.products(wheels.pairs));
      }
    }
  }

  /** Finds the best trains for every lead. */
  public static Result search(Query query) {
    ChangeGearSearch search = new ChangeGearSearch(query);
    List<Listing> listings = new ArrayList<>();
    for (Ratio lead : query.leads) {
      BestTrains board = new BestTrains(lead, query);
      for (GearProducts list : search.products) {
        search.walk(list, board);
      }
      listings.add(new Listing(lead, board.trains()));
    }
    long pairings = 0;
    for (GearProducts p : search.products) {
      pairings += (long) p.sum.length * p.sum.length;
    }
    return new Result(
        List.copyOf(listings), pairings, new Counts(search.examined, search.twice, search.unfit));
  }

  /** Looks through a list in bands of growing error until no further band can bring a train. */
  private void walk(GearProducts list, BestTrains board) {
    double from = -1;
    double to = BAND * query.best / (1.0 * list.sum.length * list.sum.length);
    pass(list, board, from, to);
    while (board.bound() > to) {
      from = to;
      to *= WIDENING;
      pass(list, board, from, to);
    }
  }

  /**
   * Looks at every pairing whose error lies above {@code from}, up to {@code to} or the bound.
   *
   * @param from error already looked at [-]
   * @param to largest error to look at [-]
   */
  private void pass(GearProducts list, BestTrains board, double from, double to) {
    long[] product = list.product;
    double ratio = board.ratio();
    int ideal = 0;
    for (int d = 0; d < product.length; d++) {
      double wanted = product[d] / ratio;
      while (ideal < product.length && product[ideal] < wanted) {
        ideal++;
      }
      for (int n = ideal; n < product.length; n++) {
        double reach = Math.min(to, board.bound());
        if (product[n] * (1 - reach - NEAR) > wanted) {
          break;
        }
        double error = Math.abs(wanted / product[n] - 1);
        if (error > reach) {
          break;
        }
        if (error > from) {
          pair(list, d, n, error, board);
        }
      }
      for (int n = ideal - 1; n >= 0; n--) {
        double reach = Math.min(to, board.bound());
        if (product[n] * (1 + reach + NEAR) < wanted) {
          break;
        }
        double error = Math.abs(wanted / product[n] - 1);
        if (error > reach) {
          break;
        }
        if (error > from) {
          pair(list, d, n, error, board);
        }
      }
    }
  }

  private void pair(GearProducts list, int d, int n, double error, BestTrains board) {
    long driver = list.product[d];
    long driven = list.product[n];
    int sumLimit = board.sumLimit(error, driver, driven);
    for (int i = list.start[d]; i < list.start[d + 1]; i++) {
      for (int j = list.start[n]; j < list.start[n + 1]; j++) {
        int sum = list.sum[i] + list.sum[j];
        if (sum > sumLimit) {
          break;
        }
        examined++;
        if (!order.inStock(list, i, j)) {
          twice++;
          continue;
        }
        int[] wheels = order.first(list, i, j);
        if (wheels.length == 0) {
          unfit++;
          continue;
        }
        board.offer(error, driver, driven, wheels, list.size);
        sumLimit = board.sumLimit(error, driver, driven);
      }
    }
  }

  /**
   * How many four-wheel trains there are, each order of tooth numbers counted once.
   *
   * @param all trains the stock offers
   * @param fitting trains that fit the banjo
   * @param broken trains left out, by the first rule they break
   */
  public record Census(long all, long fitting, Map<Banjo.Rule, Long> broken) {}

  /** Counts the four-wheel trains of a stock and why those that do not fit are left out. */
  public static Census census(List<Integer> stock, double module, Banjo banjo) {
    TreeMap<Integer, Integer> count = new TreeMap<>();
    stock.forEach(z -> count.merge(z, 1, Integer::sum));
    if (count.size() > 60) {
      throw new IllegalArgumentException(
          "stock [wheels] must hold at most 60 different wheels, found " + count.size());
    }
    List<Integer> values = List.copyOf(count.keySet());
    Map<Banjo.Rule, Long> broken = new EnumMap<>(Banjo.Rule.class);
    long all = 0;
    long fitting = 0;
    int[] wheels = new int[4];
    int n = values.size();
    for (long tuple = 0; tuple < (long) n * n * n * n; tuple++) {
      long rest = tuple;
      for (int i = 3; i >= 0; i--) {
        wheels[i] = values.get((int) (rest % n));
        rest /= n;
      }
      if (available(wheels, count)) {
        all++;
        List<Banjo.Rule> rules = banjo.broken(module, wheels[0], wheels[1], wheels[2], wheels[3]);
        if (rules.isEmpty()) {
          fitting++;
        } else {
          broken.merge(rules.get(0), 1L, Long::sum);
        }
      }
    }
    return new Census(all, fitting, broken);
  }

  private static boolean available(int[] wheels, Map<Integer, Integer> count) {
    for (int wheel : wheels) {
      int used = 0;
      for (int other : wheels) {
        used += other == wheel ? 1 : 0;
      }
      if (used > count.getOrDefault(wheel, 0)) {
        return false;
      }
    }
    return true;
  }

  /**
   * What one more wheel would do.
   *
   * @param teeth teeth of the wheel to buy
   * @param within leads that lie within the limit with it
   * @param before leads that lie within the limit without it
   * @param exact leads that are exact with it
   * @param worst largest error with it, over the leads that have a train [ppm]
   * @param mean mean size of the error with it, missing leads counted as the search limit [ppm]
   */
  public record Purchase(int teeth, int within, int before, int exact, double worst, double mean) {}

  /**
   * Tries every wheel of a range as the one to buy; the best first: most leads within the limit,
   * then most exact leads, then the least mean error, then the fewest teeth.
   *
   * @param query the question; trains of two and four wheels are compared
   * @param fewest smallest wheel to try
   * @param most largest wheel to try
   * @param limit error within which a lead counts as cut [ppm]
   */
  public static List<Purchase> purchases(Query query, int fewest, int most, double limit) {
    if (fewest < Teeth.FEWEST || most > 1000 || fewest > most) {
      throw new IllegalArgumentException(
          "wheels to try [teeth] need 5 <= fewest <= most <= 1000, found " + fewest + ", " + most);
    }
    Query plain =
        new Query(
            query.stock,
            query.module,
            query.banjo,
            query.screwLead,
            query.leads,
            1,
            Set.of(Wheels.TWO, Wheels.FOUR),
            query.limit);
    int before = purchase(plain, 0, 0, limit).within;
    List<Purchase> all = new ArrayList<>();
    for (int z = fewest; z <= most; z++) {
      List<Integer> more = new ArrayList<>(query.stock);
      more.add(z);
      all.add(purchase(plain.withStock(more), z, before, limit));
    }
    all.sort(
        Comparator.comparingInt((Purchase p) -> -p.within)
            .thenComparingInt(p -> -p.exact)
            .thenComparingDouble(Purchase::mean)
            .thenComparingInt(Purchase::teeth));
    return List.copyOf(all);
  }

  private static Purchase purchase(Query query, int teeth, int before, double limit) {
    int within = 0;
    int exact = 0;
    double worst = 0;
    double sum = 0;
    for (Listing listing : search(query).listings) {
      if (listing.best.isEmpty()) {
        sum += query.limit * 1e6;
        continue;
      }
      double size = Math.abs(listing.best.get(0).ppm);
      within += size <= limit ? 1 : 0;
      exact += size == 0 ? 1 : 0;
      worst = Math.max(worst, size);
      sum += size;
    }
    return new Purchase(teeth, within, before, exact, worst, sum / query.leads.size());
  }
}
