package fettle.mechanics.base;

import java.util.List;

/** Keeps reckoners to numbers that can occur in a workshop, so that no result overflows. */
public final class WorkshopRange {

  private static final double LARGEST = 1e30;
  private static final double SMALLEST = 1e-30;

  private WorkshopRange() {}

  /** Returns the reckoners with every number that goes in and comes out looked at. */
  public static List<Reckoner> kept(List<Reckoner> reckoners) {
    return reckoners.stream().map(WorkshopRange::kept).toList();
  }

  private static Reckoner kept(Reckoner r) {
    return new Reckoner(
        r.topic(),
        r.group(),
        r.title(),
        r.inputs(),
        r.results(),
        r.source(),
        given -> {
          r.inputs().forEach(input -> look(given, input));
          Answer answer = r.rule().apply(given);
          answer.values().forEach((name, value) -> look(r.topic(), name, value));
          return answer;
        });
  }

  private static void look(Given given, Input input) {
    boolean one = input.kind() == Input.Kind.NUMBER || input.kind() == Input.Kind.EXACT;
    if (!given.has(input.name())) {
      return;
    }
    if (one) {
      look(input, given.number(input.name()));
    } else if (input.kind() == Input.Kind.NUMBERS) {
      for (double value : given.numbers(input.name())) {
        look(input, value);
      }
    }
  }

  private static void look(Input input, double value) {
    double size = Math.abs(value);
    if (value != 0 && !(size >= SMALLEST && size <= LARGEST)) {
      throw new IllegalArgumentException(
          input.name()
              + " = "
              + input.unit().fromCoherent(value)
              + " "
              + input.unit().symbol()
              + ": expected a size that occurs in a workshop ("
              + input.meaning()
              + ")");
    }
  }

  private static void look(String topic, String name, Answer.Value value) {
    boolean finite =
        value instanceof Answer.Value.Real real
            ? Double.isFinite(real.coherent())
            : !(value instanceof Answer.Value.Several several)
                || several.coherent().stream().allMatch(Double::isFinite);
    if (!finite) {
      throw new IllegalArgumentException(
          topic + ": with these inputs " + name + " has no finite value; check their sizes");
    }
  }
}
