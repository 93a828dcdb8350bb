package fettle.planning.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Small lists are brought into the order that others have proved best. */
class OrdersTest {

  private static final Effort BRIEF = new Effort(20, 60);

  @Test
  void twoStripsThatShareOneLathe() {
    for (Order order : both(Instances.two())) {
      assertThat(order.best()).isTrue();
      assertThat(Instances.points(order.cost().total())).isEqualTo(94.0);
      assertThat(Instances.points(order.cost().waiting())).isEqualTo(86.0);
      assertThat(Instances.points(order.cost().downtime())).isEqualTo(8.0);
      assertThat(String.join("", order.plan().sequence())).isIn("efghabcd", "efghbacd");
    }
  }

  @Test
  void everyOrderOfTheTwoStripsIsPricedAsPublished() {
    Worklist list = Instances.two();
    Map<String, Double> priced = new TreeMap<>();
    permute("", "abcdefgh", list, priced);
    assertThat(priced).hasSize(191);
    assertThat(priced.values().stream().min(Double::compare)).contains(94.0);
    assertThat(priced.values().stream().max(Double::compare)).contains(147.5);
    assertThat(priced.get("abcdefgh")).isEqualTo(123.0);
    assertThat(priced.get("abefcdgh")).isEqualTo(138.0);
    assertThat(priced).doesNotContainKey("geabfhcd");
  }

  @Test
  void improvementsThatMakeLaterWorkFaster() {
    for (Order order : both(Instances.improvements())) {
      assertThat(order.best()).isTrue();
      assertThat(Instances.points(order.cost().total())).isEqualTo(137.6, within(1e-9));
      assertThat(String.join("", order.plan().sequence())).isEqualTo("Q1Q2D1D2H1H2");
    }
    Worklist list = Instances.improvements();
    Schedule ratio = Orders.following(list, List.of("D", "Q", "H"));
    assertThat(Instances.points(Costing.of(list, ratio).total())).isEqualTo(141.6, within(1e-9));
    Schedule all = straight(list, List.of("H1", "Q1", "D1", "H2", "Q2", "D2"));
    assertThat(Instances.points(Costing.of(list, all).total())).isEqualTo(229.0, within(1e-9));
    Schedule shortest = Orders.following(list, List.of("H", "Q", "D"));
    assertThat(shortest.finish() / 100.0).isEqualTo(30.56, within(1e-9));
  }

  @Test
  void chainsOfTheTextbook() {
    for (Order order : both(Instances.chains())) {
      assertThat(order.best()).isTrue();
      assertThat(Instances.points(order.cost().total())).isEqualTo(1967.0);
      assertThat(String.join("", order.plan().sequence())).isEqualTo("1256374");
    }
  }

  @Test
  void aPartThatNeedsTheStrippedLatheIsRefused() {
    Worklist list =
        new Worklist(
            List.of(
                new Task("strip", "x", 100, 0, Set.of(), Set.of()),
                new Task("bore", "x", 100, 0, Set.of("turning"), Set.of("strip")),
                new Task("fit", "x", 100, 0, Set.of(), Set.of("bore"))),
            List.of(new Worklist.Strip("x", "strip", "fit", Set.of("turning"))),
            List.of(),
            List.of(),
            List.of(),
            Map.of(),
            Worklist.Stripping.ONE_AT_A_TIME);
    assertThat(list.impossible()).extracting(Impossible::task).containsExactly("bore");
  }

  @Test
  void aDeliveryIsWaitedForByTheConstraintSearchAlone() {
    Worklist list =
        new Worklist(
            List.of(
                new Task("make", "x", 100, 0, Set.of(), Set.of()),
                new Task("fit", "x", 100, 900, Set.of(), Set.of("make")),
                new Task("other", "y", 300, 0, Set.of(), Set.of())),
            List.of(new Worklist.Strip("x", "fit", "fit", Set.of("turning"))),
            List.of(new Worklist.Worth("fit", 100), new Worklist.Worth("other", 1)),
            List.of(),
            List.of(),
            Map.of("turning", 5L),
            Worklist.Stripping.ONE_AT_A_TIME);
    Order order = Orders.best(list, BRIEF, Progress.SILENT);
    assertThat(order.best()).isTrue();
    assertThat(order.plan().start("fit")).isEqualTo(900);
    assertThat(order.plan().end("other")).isEqualTo(300);
    assertThat(order.cost().total()).isEqualTo(100 * 1000 + 300 + 500);
  }

  /** The search over sets and the constraint search know nothing of each other. */
  private static List<Order> both(Worklist list) {
    return List.of(
        Orders.best(list, BRIEF, Progress.SILENT),
        Orders.constrained(list, BRIEF, Progress.SILENT));
  }

  private static void permute(String done, String open, Worklist list, Map<String, Double> priced) {
    if (open.isEmpty()) {
      Schedule plan = straight(list, List.of(done.split("")));
      if (Costing.broken(list, plan).isEmpty()) {
        priced.put(done, Instances.points(Costing.of(list, plan).total()));
      }
    }
    for (int i = 0; i < open.length(); i++) {
      permute(done + open.charAt(i), open.substring(0, i) + open.substring(i + 1), list, priced);
    }
  }

  /** One task after the other without a pause. */
  private static Schedule straight(Worklist list, List<String> keys) {
    Map<String, Integer> starts = new HashMap<>();
    Map<String, Integer> ends = new HashMap<>();
    int now = 0;
    for (String key : keys) {
      Task task = Objects.requireNonNull(list.byKey().get(key));
      int start = now;
      List<Worklist.Quickening> force = new ArrayList<>();
      for (Worklist.Quickening q : list.helping(task)) {
        if (ends.containsKey(q.after()) && ends.get(q.after()) <= start) {
          force.add(q);
        }
      }
      starts.put(key, now);
      now += Worklist.ticks(task, force);
      ends.put(key, now);
    }
    return new Schedule(starts, ends);
  }
}
