package fettle.planning.order;

import java.util.ArrayList;
import java.util.List;

/**
 * One way to go about it, to hold beside others.
 *
 * @param name what speaks for it
 * @param plan when each task starts and ends
 * @param cost what it costs
 * @param stripped ticks during which the lathe lacks something
 * @param firstBenefit tick at which the first change is proved
 */
public record Alternative(String name, Schedule plan, Cost cost, int stripped, int firstBenefit) {

  private static Alternative of(String name, Worklist list, Schedule plan) {
    int first =
        list.worths().stream().mapToInt(w -> plan.end(w.task())).min().orElse(plan.finish());
    return new Alternative(name, plan, Costing.of(list, plan), Costing.stripped(list, plan), first);
  }

  /** Returns the best order and, beside it, orders that other rules would give. */
  public static List<Alternative> of(Worklist list, Order best) {
    List<Alternative> all = new ArrayList<>();
    all.add(of(best.best() ? "best order" : "best order found", list, best.plan()));
    all.add(of("worth per hour first", list, Orders.following(list, Orders.byRatio(list))));
    all.add(of("as the book lists them", list, Orders.following(list, list.jobs())));
    all.add(of("shortest change first", list, Orders.following(list, Orders.byLength(list))));
    all.add(of("all parts first", list, Orders.partsFirst(list, Orders.byRatio(list))));
    return List.copyOf(all);
  }
}
