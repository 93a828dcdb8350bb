package fettle.desk.fuzz;

import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Reckoner;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A single calculation: two bytes choose it, the lines after them are its inputs in order. */
final class ReckonTarget {

  private static final List<Reckoner> ALL = Reckoners.all();

  private ReckonTarget() {}

  /** Computes, or refuses the inputs in words. */
  public static void fuzzerTestOneInput(byte[] input) {
    if (input.length < 2) {
      return;
    }
    int which = Byte.toUnsignedInt(input[0]) << 8 | Byte.toUnsignedInt(input[1]);
    Reckoner reckoner = ALL.get(which % ALL.size());
    String[] lines = new String(input, 2, input.length - 2, StandardCharsets.UTF_8).split("\n", 40);
    Map<String, String> texts = new LinkedHashMap<>();
    for (int i = 0; i < lines.length && i < reckoner.inputs().size(); i++) {
      if (!lines[i].isEmpty()) {
        texts.put(reckoner.inputs().get(i).name(), lines[i]);
      }
    }
    try {
      reckoner.answer(texts);
    } catch (IllegalArgumentException e) {
      // refused, as it may
    }
  }
}
