package fettle.mechanics.threads;

/** Which way a thread winds. */
public enum Hand {
  RIGHT,
  LEFT
}
