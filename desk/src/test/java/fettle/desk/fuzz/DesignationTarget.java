package fettle.desk.fuzz;

import fettle.machine.dictionary.Designations;
import fettle.mechanics.base.Formula;
import fettle.mechanics.base.Unit;
import fettle.mechanics.fits.BearingClass;
import fettle.mechanics.fits.Grade;
import fettle.mechanics.fits.ToleranceClass;
import fettle.mechanics.gears.ChainText;
import fettle.parts.recipe.ScrewThread;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;

/** A designation, given to every reader of designations in turn. */
final class DesignationTarget {

  private static final List<String> TYPES =
      List.of("thread", "bearing", "shaft fit", "hole fit", "material");
  private static final List<Consumer<String>> READERS =
      List.of(
          BearingClass::parse,
          Grade::parse,
          ToleranceClass::parse,
          fettle.mechanics.fits.Designation::parse,
          fettle.mechanics.bearings.Designation::parse,
          ScrewThread::parse,
          Formula::parse,
          t -> ChainText.parse(List.of(t.split(";", -1))));

  private DesignationTarget() {}

  /** Reads a designation by every reader; each may refuse it. */
  public static void fuzzerTestOneInput(byte[] input) {
    String text = new String(input, StandardCharsets.UTF_8);
    TYPES.forEach(type -> Designations.problem(type, text));
    Unit.parse(text);
    for (Consumer<String> reader : READERS) {
      try {
        reader.accept(text);
      } catch (IllegalArgumentException e) {
        // refused, as it may
      }
    }
  }
}
