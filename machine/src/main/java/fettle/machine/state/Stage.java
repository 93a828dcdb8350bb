package fettle.machine.state;

import java.util.Locale;

/** How far a change has come. */
public enum Stage {
  IDEA,
  PLANNED,
  MAKING,
  FITTED,
  PROVED,
  DROPPED;

  /** Returns the stage as a book writes it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Tells whether the lathe already has the change. */
  public boolean done() {
    return this == FITTED || this == PROVED;
  }

  /** Tells whether the change is meant to be made, or is already. */
  public boolean meant() {
    return done() || this == PLANNED || this == MAKING;
  }
}
