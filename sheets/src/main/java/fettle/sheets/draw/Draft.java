package fettle.sheets.draw;

import fettle.sheets.dimension.Scheme;
import java.util.List;

/**
 * A part drawn at one scale, not yet laid on a sheet.
 *
 * @param placed views with where they belong
 * @param tables tables that go with them
 * @param scheme the books of its dimensions
 * @param faults what found no room, in words
 */
record Draft(List<Placed> placed, List<Table> tables, Scheme scheme, List<String> faults) {

  /** Where a view stands as seen from the first one. */
  enum Where {
    MAIN,
    RIGHT,
    LEFT,
    BELOW,
    ABOVE,
    FAR_RIGHT
  }

  /**
   * A view and where it stands.
   *
   * @param plan the view
   * @param where where it stands
   */
  record Placed(Plan plan, Where where) {}
}
