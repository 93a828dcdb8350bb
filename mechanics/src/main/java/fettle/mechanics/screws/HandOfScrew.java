package fettle.mechanics.screws;

import fettle.mechanics.threads.Hand;

/** Which way a feed screw must wind. */
public final class HandOfScrew {

  /** The part that carries the nut. */
  public enum NutOn {
    /** The screw turns in a fixed bracket and the nut rides with the slide. */
    SLIDE,
    /** The screw rides with the slide and the nut stays in the base. */
    BASE
  }

  /** Which way the slide goes when the handle turns clockwise, seen from the handle. */
  public enum Clockwise {
    /** Away from the handle, as machinists expect. */
    AWAY,
    /** Towards the handle. */
    TOWARDS
  }

  private HandOfScrew() {}

  /** Returns the hand that gives the wanted sense. */
  public static Hand needed(NutOn nut, Clockwise sense) {
    boolean left = (nut == NutOn.SLIDE) == (sense == Clockwise.AWAY);
    return left ? Hand.LEFT : Hand.RIGHT;
  }
}
