package fettle.desk.fuzz;

import fettle.machine.trials.Kind;
import fettle.machine.trials.Readings;
import java.nio.charset.StandardCharsets;

/** Readings: the first byte says of what kind of trial, the others are the CSV text. */
final class ReadingsTarget {

  private ReadingsTarget() {}

  /** Reads readings; every cell that was read is a number. */
  public static void fuzzerTestOneInput(byte[] input) {
    if (input.length == 0) {
      return;
    }
    Kind[] all = Kind.values();
    Kind kind = all[Byte.toUnsignedInt(input[0]) % all.length];
    String text = new String(input, 1, input.length - 1, StandardCharsets.UTF_8);
    Readings.read("trials/one.csv", text, kind);
  }
}
