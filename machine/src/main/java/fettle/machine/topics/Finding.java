package fettle.machine.topics;

import fettle.mechanics.base.Source;

/**
 * A sentence that wants attention.
 *
 * @param rank how much it matters
 * @param figure id of the figure it speaks of; empty if of none
 * @param sentence what is the matter, and what would help
 * @param limit the limit that is passed, with its unit; empty if it is a matter of yes or no
 * @param source where the limit comes from
 */
public record Finding(Rank rank, String figure, String sentence, String limit, Source source) {

  /** How much a finding matters. */
  public enum Rank {
    STOP,
    CAUTION,
    NOTE;

    /** Returns the rank as it is shown. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
