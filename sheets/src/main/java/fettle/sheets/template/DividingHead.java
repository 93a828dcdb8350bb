package fettle.sheets.template;

import fettle.machine.dictionary.Values;
import fettle.mechanics.stock.Stock;
import java.util.List;
import java.util.Optional;

/**
 * A dividing head and the hole circles of its plates.
 *
 * @param ratio turns of the crank for one turn of the work
 * @param circles holes of each circle
 */
public record DividingHead(int ratio, List<Integer> circles) {

  /** The head most shops have, with its three plates. */
  public static final DividingHead USUAL = new DividingHead(40, Stock.USUAL_CIRCLES);

  /** Keeps its own copy. */
  public DividingHead {
    circles = List.copyOf(circles);
  }

  /** Returns the head of a shop, or the usual one if the shop says nothing of its own. */
  public static DividingHead of(Optional<Values> shop) {
    return shop.flatMap(s -> s.block("dividing head"))
        .map(h -> new DividingHead(h.needCount("ratio"), h.counts("circles")))
        .orElse(USUAL);
  }

  /** Returns the step from line to line; empty if no circle gives it exactly. */
  Optional<Stock.Indexing> step(int divisions) {
    try {
      return Optional.of(
          Stock.indexing(divisions, ratio, circles.stream().mapToInt(i -> i).toArray()));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
