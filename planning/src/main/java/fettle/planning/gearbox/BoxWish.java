package fettle.planning.gearbox;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.GearboxSearch;
import fettle.mechanics.gears.ThreadPitches;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a gearbox is to give.
 *
 * @param leads leads and feeds in millimetres, exact
 * @param perInch threads per inch, exact
 */
public record BoxWish(List<Ratio> leads, List<Ratio> perInch) {

  /** Refuses a wish without leads, for which the search has no scale. */
  public BoxWish {
    if (leads.isEmpty()) {
      throw new IllegalArgumentException(
          "a gearbox needs at least one lead in millimetres, such as '1 mm', beside threads per inch");
    }
    leads = List.copyOf(new LinkedHashSet<>(leads));
    perInch = List.copyOf(new LinkedHashSet<>(perInch));
  }

  /**
   * Returns what the workshop wants to cut; the coarse threads of both standards if it is silent.
   */
  public static BoxWish of(Optional<Values> shop) {
    List<Quantity> said = shop.map(s -> s.quantities("threads")).orElse(List.of());
    return said.isEmpty()
        ? new BoxWish(ThreadPitches.ISO_COARSE.printed(), ThreadPitches.UNC.printed())
        : of(said);
  }

  /** Sorts leads by how they are written: with inches and threads per inch in them, or without. */
  public static BoxWish of(List<Quantity> wanted) {
    List<Ratio> leads = new ArrayList<>();
    List<Ratio> perInch = new ArrayList<>();
    for (Quantity lead : wanted) {
      if (lead.exact().inch() == 0) {
        leads.add(lead.exact().folded());
      } else {
        perInch.add(Ratio.INCH.over(lead.exact()).folded());
      }
    }
    return new BoxWish(leads, perInch);
  }

  /**
   * Returns the question put to the search.
   *
   * @param multipliers most ratios of the multiplier stage
   * @param sets most sets of multipliers to try
   */
  public GearboxSearch.Query query(int multipliers, long sets) {
    return new GearboxSearch.Query(leads, perInch, multipliers, sets);
  }

  /** Returns the wish in words. */
  public String text() {
    String inch = perInch.isEmpty() ? "" : " and " + numbers(perInch) + " threads per inch";
    return "leads " + numbers(leads) + " mm" + inch;
  }

  private static String numbers(List<Ratio> values) {
    return values.stream()
        .map(v -> Numbers.significant(v.toDouble(), 6))
        .collect(Collectors.joining(", "));
  }
}
