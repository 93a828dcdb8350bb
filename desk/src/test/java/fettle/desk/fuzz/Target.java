package fettle.desk.fuzz;

import java.util.Locale;

/** The doors by which bytes come in from outside. */
enum Target {
  /** A book: the lathe, the shop, a change, a part and a trial. */
  BOOK(BookTarget.class),
  /** A number with its unit, as the owner writes it. */
  QUANTITY(QuantityTarget.class),
  /** The designation of a thread, a bearing, a fit, a material, a chain, a unit or a formula. */
  DESIGNATION(DesignationTarget.class),
  /** The recipe of a part. */
  RECIPE(RecipeTarget.class),
  /** Readings as CSV. */
  READINGS(ReadingsTarget.class),
  /** One single calculation by its name and inputs. */
  RECKON(ReckonTarget.class),
  /** Bytes sent to the desk. */
  REQUEST(RequestTarget.class);

  private final Class<?> entry;

  Target(Class<?> entry) {
    this.entry = entry;
  }

  /** Returns the class whose {@code fuzzerTestOneInput} takes the bytes. */
  Class<?> entry() {
    return entry;
  }

  /** Returns the word it goes by on the command line and in the folder of kept inputs. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Lets one input in; whatever it throws is a fault. */
  void take(byte[] input) throws Exception {
    switch (this) {
      case BOOK -> BookTarget.fuzzerTestOneInput(input);
      case QUANTITY -> QuantityTarget.fuzzerTestOneInput(input);
      case DESIGNATION -> DesignationTarget.fuzzerTestOneInput(input);
      case RECIPE -> RecipeTarget.fuzzerTestOneInput(input);
      case READINGS -> ReadingsTarget.fuzzerTestOneInput(input);
      case RECKON -> ReckonTarget.fuzzerTestOneInput(input);
      case REQUEST -> RequestTarget.fuzzerTestOneInput(input);
    }
  }
}
