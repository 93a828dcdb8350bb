package fettle.parts.check;

import fettle.mechanics.base.Source;

/**
 * Something impossible or doubtful in a recipe.
 *
 * @param rank how grave it is
 * @param feature the feature it is about
 * @param what a sentence for the machinist
 * @param value the figure found; NaN if there is none [mm]
 * @param limit the limit it fails; NaN if there is none [mm]
 * @param source where the limit comes from
 */
public record Doubt(
    Rank rank, String feature, String what, double value, double limit, Source source) {

  /** How grave a doubt is. */
  public enum Rank {
    /** The part cannot be made so. */
    STOP,
    /** Look again before cutting. */
    CAUTION,
    /** Worth knowing. */
    NOTE
  }
}
