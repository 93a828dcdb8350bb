package fettle.mechanics.electrics;

import java.util.Locale;

/** A box of sheet metal that sheds heat through its faces. */
public final class Enclosure {

  private Enclosure() {}

  /** How a box stands among others; each has the formula of its effective area. */
  public enum Mounting {
    SINGLE_ON_WALL("1.4*W*(H + D) + 1.8*H*D"),
    SINGLE_FREE("1.8*H*(W + D) + 1.4*W*D"),
    END_FREE("1.4*D*(W + H) + 1.8*W*H"),
    END_ON_WALL("1.4*H*(W + D) + 1.4*W*D"),
    MIDDLE_FREE("1.8*W*H + 1.4*W*D + H*D"),
    MIDDLE_ON_WALL("1.4*W*(H + D) + H*D"),
    MIDDLE_ON_WALL_COVERED("1.4*W*H + 0.7*W*D + H*D");

    private final String formula;

    Mounting(String formula) {
      this.formula = formula;
    }

    /** Returns the formula of the effective area. */
    public String formula() {
      return formula;
    }

    /** Returns the mounting as a word. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the mounting of that word. */
    public static Mounting of(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
  }
}
