package fettle.parts.recipe;

import java.util.List;

/**
 * A bore from one end, step by step inwards.
 *
 * @param steps steps from the mouth inwards; empty for none
 * @param bottom shape of its bottom; of no account when it is open
 */
public record Bore(List<Step> steps, HoleForm.Bottom bottom) {

  public static final Bore NONE = new Bore(List.of(), HoleForm.Bottom.FLAT);

  /** Keeps its own copy. */
  public Bore {
    steps = List.copyOf(steps);
  }

  /** Returns a bore with a flat bottom, or one that goes through. */
  public static Bore of(Step... steps) {
    return new Bore(List.of(steps), HoleForm.Bottom.FLAT);
  }

  /**
   * Returns its depth without a drill point.
   *
   * @return depth [mm]
   */
  public double depth() {
    return steps.stream().mapToDouble(s -> s.length().nominal()).sum();
  }
}
