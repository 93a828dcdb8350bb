package fettle.parts.recipe;

import fettle.mechanics.base.Source;
import java.util.Locale;

/** What a geometrical tolerance holds (ISO 1101). */
public enum Characteristic {
  STRAIGHTNESS(Kind.FORM),
  FLATNESS(Kind.FORM),
  ROUNDNESS(Kind.FORM),
  CYLINDRICITY(Kind.FORM),
  PARALLELISM(Kind.ORIENTATION),
  PERPENDICULARITY(Kind.ORIENTATION),
  ANGULARITY(Kind.ORIENTATION),
  POSITION(Kind.LOCATION),
  COAXIALITY(Kind.LOCATION),
  SYMMETRY(Kind.LOCATION),
  RUN_OUT(Kind.RUN_OUT),
  TOTAL_RUN_OUT(Kind.RUN_OUT);

  static final Source MEANING =
      Source.memory("ISO 1101:2017", "symbols of geometrical characteristics, table 1");

  /** Families of characteristics; all but form are held against datums. */
  public enum Kind {
    FORM,
    ORIENTATION,
    LOCATION,
    RUN_OUT
  }

  private final Kind kind;

  Characteristic(Kind kind) {
    this.kind = kind;
  }

  /** Returns the family it belongs to. */
  public Kind kind() {
    return kind;
  }

  /** Returns the word a recipe writes, e.g. {@code run-out}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the characteristic for a word of a recipe. */
  public static Characteristic of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
