package fettle.mechanics.threads;

import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.Locale;

/** How a reckoner asks for a thread: by its designation, or by form, diameter and pitch. */
public final class GivenThread {

  private GivenThread() {}

  /** Adds the inputs that name a thread. */
  public static Reckoner.Draft asked(Reckoner.Draft draft) {
    return draft
        .input(
            "thread",
            Input.Kind.TEXT,
            Unit.ONE,
            "designation, such as M10x1.25-6g, Tr 14x3 LH, 7/16-10 Acme; or give form, d and P",
            null,
            false)
        .choice(
            "form",
            "thread form, if no designation is given",
            "metric",
            "trapezoidal",
            "acme",
            "unified",
            "whitworth")
        .input("d", Input.Kind.EXACT, Unit.MM, "nominal major diameter", null, false)
        .input("P", Input.Kind.EXACT, Unit.MM, "pitch, not the lead", null, false)
        .input("Ph", Input.Kind.EXACT, Unit.MM, "lead, if it is not the pitch", null, false);
  }

  /** Tells whether a thread was given in either way. */
  public static boolean isGiven(Given g) {
    return g.has("thread") || (g.has("d") && g.has("P"));
  }

  /**
   * Returns the thread that was given.
   *
   * @throws IllegalArgumentException if it is missing, or if designation and numbers disagree
   */
  public static ThreadDesignation of(Given g) {
    if (!g.has("thread")) {
      return fromNumbers(g);
    }
    ThreadDesignation thread = ThreadDesignation.parse(g.text("thread"));
    agree(g, "d", thread.diameter());
    agree(g, "P", thread.pitch());
    agree(g, "Ph", thread.lead());
    return thread;
  }

  private static ThreadDesignation fromNumbers(Given g) {
    if (!g.has("d") || !g.has("P")) {
      throw new IllegalArgumentException(
          "missing input 'thread': give a designation such as M10x1.25, or the form with d and P");
    }
    Ratio pitch = g.exact("P");
    Ratio lead = g.has("Ph") ? g.exact("Ph") : pitch;
    ThreadForm form = ThreadForm.valueOf(g.choice("form").toUpperCase(Locale.ROOT));
    Ratio d = g.exact("d");
    String series =
        form == ThreadForm.UNIFIED && pitch.signum() > 0
            ? ThreadSeries.unifiedSeries(d, pitch).orElse("")
            : "";
    return new ThreadDesignation(form, series, d, pitch, Starts.of(lead, pitch), Hand.RIGHT, "");
  }

  private static void agree(Given g, String name, Ratio named) {
    if (g.has(name)) {
      double number = g.number(name);
      if (!(Math.abs(number - named.toDouble()) <= 1e-6 * named.toDouble())) {
        throw new IllegalArgumentException(
            name
                + " = "
                + number
                + " mm disagrees with the designation, which says "
                + named.toDouble()
                + " mm; give one of them");
      }
    }
  }
}
