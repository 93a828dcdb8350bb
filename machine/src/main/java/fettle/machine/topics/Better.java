package fettle.machine.topics;

/** Which way a figure should move. */
public enum Better {
  HIGHER,
  LOWER,
  /** Neither way is better by itself. */
  NEITHER
}
