package fettle.desk.fuzz;

import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;
import java.nio.charset.StandardCharsets;

/** A quantity: the first byte says of what kind, the others are its text. */
final class QuantityTarget {

  private QuantityTarget() {}

  /** Reads a quantity; what is read has a finite value and a doubt. */
  public static void fuzzerTestOneInput(byte[] input) {
    if (input.length == 0) {
      return;
    }
    Dimension[] all = Dimension.values();
    Dimension dimension = all[Byte.toUnsignedInt(input[0]) % all.length];
    String text = new String(input, 1, input.length - 1, StandardCharsets.UTF_8);
    try {
      Quantity read =
          Quantity.parse(text, dimension, Unit.parse(dimension.coherent()).orElse(Unit.ONE));
      if (!Double.isFinite(read.value()) || !(read.doubt() >= 0)) {
        throw new IllegalStateException("'" + text + "' is read as " + read);
      }
    } catch (Quantity.NotOne e) {
      // refused, as it may
    }
  }
}
