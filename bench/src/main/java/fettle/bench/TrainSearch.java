package fettle.bench;

import fettle.mechanics.gears.Banjo;
import fettle.mechanics.gears.ChangeGearSearch;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All trains of two, four and six wheels, first call in a fresh process. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(10)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class TrainSearch {

  /** So many wheels. */
  @State(Scope.Benchmark)
  public static class Stock {
    /** Wheels in the shop. */
    @Param({"20", "40", "60"})
    public int wheels = 20;

    private ChangeGearSearch.Query query = TrainStock.query(20);

    /** Makes the question. */
    @Setup
    public void make() {
      query = TrainStock.query(wheels);
    }
  }

  /** Twenty wheels, as many as plain enumeration can stand. */
  @State(Scope.Benchmark)
  public static class Few {
    private final ChangeGearSearch.Query query = TrainStock.query(20);
    private final Banjo banjo = Objects.requireNonNull(query.banjo());
  }

  /** The search of the program. */
  @Benchmark
  public ChangeGearSearch.Result search(Stock stock) {
    return ChangeGearSearch.search(stock.query);
  }

  /** Every train, one after the other; it takes seconds, so fewer calls tell enough. */
  @Benchmark
  @Fork(3)
  public List<ChangeGearSearch.Listing> enumeration(Few few) {
    return PlainTrains.search(few.query, few.banjo);
  }

  /** Refuses to measure two searches that do not agree. */
  static void agree() {
    Few few = new Few();
    if (!ChangeGearSearch.search(few.query)
        .listings()
        .equals(PlainTrains.search(few.query, few.banjo))) {
      throw new IllegalStateException("the search and the enumeration give different trains");
    }
  }
}
