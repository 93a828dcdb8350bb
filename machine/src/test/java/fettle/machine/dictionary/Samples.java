package fettle.machine.dictionary;

import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Values that a row of the dictionary takes, and values that it refuses, as YAML in one line. */
public final class Samples {

  private static final List<String> THREADS =
      List.of("M10x1", "M8", "Tr 14x3 LH", "Tr 16x8P4", "7/16-10 Acme LH", "1/2-10 Acme");
  private static final List<String> BEARINGS = List.of("6204", "7204B", "51104", "6001-2RS");
  private static final List<String> MATERIALS =
      List.of("C45", "EN-GJL-200", "CuSn12", "EN AW-6082");

  private final Random random;

  /** Starts a source of samples. */
  public Samples(Random random) {
    this.random = random;
  }

  /** Returns the dimension of a type that is a quantity, or null if it is none. */
  static @org.jspecify.annotations.Nullable Dimension dimension(String type) {
    for (Dimension dimension : Dimension.values()) {
      if (dimension.name().toLowerCase(Locale.ROOT).equals(type)) {
        return dimension;
      }
    }
    return null;
  }

  /** Returns a value that the row takes; references go to the name given. */
  public String good(Row row, String reference) {
    return good(row, row.type(), reference);
  }

  private String good(Row row, String type, String reference) {
    if (dimension(type) != null) {
      return quantity(row);
    } else if (type.startsWith("word:")) {
      return pick(row.words());
    } else if (type.startsWith("ref:")) {
      return reference;
    } else if (type.startsWith("shape:")) {
      return block(type.substring(6), reference);
    } else if (type.startsWith("either:")) {
      String family = type.substring(7);
      return block(family + "/" + pick(Dictionary.standard().kinds(family)), reference);
    } else if (type.startsWith("map:")) {
      return "{one: " + good(row, type.substring(4), reference) + "}";
    } else if (type.startsWith("list:")) {
      List<String> items = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        items.add(good(row, type.substring(5), reference));
      }
      return "[" + String.join(", ", items) + "]";
    }
    return switch (type) {
      case "count" ->
          String.valueOf(
              (int)
                  (low(row, 1)
                      + Math.floor(random.nextDouble() * (high(row, 900) - low(row, 1) + 1))));
      case "flag" -> pick(List.of("yes", "no"));
      case "thread" -> pick(THREADS);
      case "bearing" -> pick(BEARINGS);
      case "shaft fit" -> pick(List.of("k5", "h6", "js6"));
      case "hole fit" -> pick(List.of("H7", "JS6", "J6"));
      case "material" -> pick(MATERIALS);
      case "tree" -> "{name: x}";
      default -> pick(List.of("some words", "'A text: with a colon'", "\"quoted\"", "x"));
    };
  }

  /** Returns a block with the keys it must have. */
  public String block(String shape, String reference) {
    List<String> entries = new ArrayList<>();
    for (Row row : Dictionary.standard().shape(shape).values()) {
      if (row.required()) {
        entries.add(row.key() + ": " + good(row, reference));
      }
    }
    return "{" + String.join(", ", entries) + "}";
  }

  private String quantity(Row row) {
    double low = Math.max(low(row, -1e6), -1e12);
    double high = Math.min(high(row, 1e6), 1e12);
    double number = low + random.nextDouble() * (high - low);
    if (low > 0 && random.nextBoolean()) {
      number = low * Math.pow(high / low, random.nextDouble());
    }
    double shrunk = low + (number - low) * 0.99 + (high - low) * 0.002;
    List<Unit> units =
        Unit.all().values().stream()
            .distinct()
            .filter(u -> u.dimension() == row.unit().dimension() && !u.reciprocal())
            .filter(u -> !u.symbol().isEmpty() || row.unit().symbol().isEmpty())
            .toList();
    Unit unit = random.nextInt(3) > 0 ? row.unit() : pick(units);
    double coherent = row.unit().toCoherent(shrunk);
    String text = Numbers.significant(unit.fromCoherent(coherent), 8);
    return '"'
        + text
        + (unit.symbol().isEmpty() ? "" : " " + unit.symbol().replace("\"", "in"))
        + '"';
  }

  /** Returns values that the row refuses whatever else the book says, and so does a schema. */
  public List<String> broken(Row row) {
    return broken(row, row.type());
  }

  private static List<String> broken(Row row, String type) {
    Dimension dimension = dimension(type);
    if (dimension == Dimension.NUMBER) {
      return List.of("\"2 kg\"", "NaN", "many", "[1]", "{a: 1}", "\"\"", "\"1e\"");
    } else if (dimension != null) {
      String other = dimension == Dimension.MASS ? "mm" : "kg";
      return List.of(
          "12.5",
          "7",
          "3 " + other,
          "\"NaN " + row.unit().symbol() + "\"",
          "Infinity",
          "\"" + row.unit().symbol() + "\"",
          "[2 mm]",
          "{a: 1}",
          "\"\"",
          "2 furlong",
          "two mm");
    } else if (type.startsWith("word:") || type.equals("flag")) {
      return List.of("perhaps", "[a]", "{a: 1}", "\"\"", "3");
    } else if (type.startsWith("ref:")) {
      return List.of("[a]", "{a: 1}");
    } else if (type.startsWith("shape:") || type.startsWith("either:")) {
      return List.of("7", "word", "[]", "{nothing known: 1}", "\"\"");
    } else if (type.startsWith("map:")) {
      return List.of("7", "word", "[]", "{one: 3}", "{one: [1]}", "{'a.b': {}}", "{? ' ' : {}}");
    } else if (type.startsWith("list:count")) {
      return List.of("7", "{a: 1}", "[x]", "[1.5]", "[[20]]", "[-7]");
    } else if (type.startsWith("list:")) {
      return List.of("7", "{a: 1}", "[[a]]", "[{a: 1}]");
    }
    return switch (type) {
      case "count" -> List.of("1.5", "many", "[1]", "{a: 1}", "-7", "12345678901", "2 mm");
      case "thread" -> List.of("Xx 12", "M", "[M8]", "{a: 1}", "\"\"");
      case "bearing" -> List.of("ball", "12", "[6204]", "{a: 1}", "\"\"");
      case "shaft fit", "hole fit" -> List.of("7k", "k99", "[k6]", "{a: 1}", "\"\"");
      case "material" -> List.of("§§", "[C45]", "{a: 1}", "\"\"", "'" + "C".repeat(60) + "'");
      case "tree" -> List.of("7", "word", "[a]");
      default -> List.of("[a]", "{a: 1}", "\"\"", "\"  \"");
    };
  }

  private static double low(Row row, double otherwise) {
    return row.low().orElse(otherwise);
  }

  private static double high(Row row, double otherwise) {
    return row.high().orElse(otherwise);
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
