package fettle.mechanics.base;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The inputs of one reckoning, read from text. A number may carry any unit of its kind; without one
 * it is in the unit the reckoner lists.
 */
public final class Given {

  private static final Pattern NUMBER =
      Pattern.compile(
          "\\s*([+-]?)\\s*(?:(\\d+)\\s+(?=\\d+\\s*/\\s*\\d))?(\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE]([+-]?\\d{1,3}))?(?:\\s*/\\s*(\\d+(?:\\.\\d+)?))?\\s*(.*?)\\s*");
  private static final int LONGEST = 100_000;
  private static final double LEAST_SIZE = 1e-40;
  private static final double MOST_SIZE = 1e40;

  private final Reckoner reckoner;
  private final Map<String, String> texts;

  private Given(Reckoner reckoner, Map<String, String> texts) {
    this.reckoner = reckoner;
    this.texts = texts;
  }

  /**
   * Takes the inputs of a reckoner; an {@link IllegalArgumentException} lists every unknown and
   * every missing name.
   */
  public static Given of(Reckoner reckoner, Map<String, String> texts) {
    List<String> problems = new ArrayList<>();
    Map<String, String> taken = new LinkedHashMap<>();
    for (Map.Entry<String, String> entry : texts.entrySet()) {
      if (reckoner.input(entry.getKey()) == null) {
        problems.add(
            reckoner.topic()
                + " has no input '"
                + entry.getKey()
                + "'; it takes "
                + reckoner.inputNames());
      } else {
        taken.put(entry.getKey(), entry.getValue());
      }
    }
    for (Input input : reckoner.inputs()) {
      String standard = input.standard();
      if (!taken.containsKey(input.name())) {
        if (standard != null) {
          taken.put(input.name(), standard);
        } else if (input.required()) {
          problems.add("missing input '" + input.name() + "': " + input.meaning());
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", problems));
    }
    return new Given(reckoner, taken);
  }

  /** Tells whether the input was given or has a standard value. */
  public boolean has(String name) {
    asked(name);
    return texts.containsKey(name);
  }

  /**
   * Returns a number.
   *
   * @param name the input
   * @return its value [coherent]
   */
  public double number(String name) {
    return number(name, text(name), asked(name).unit());
  }

  /**
   * Returns a number or, if it was not given, another one.
   *
   * @param name the input
   * @param otherwise the value taken if it was not given [coherent]
   * @return its value [coherent]
   */
  public double number(String name, double otherwise) {
    return has(name) ? number(name) : otherwise;
  }

  /** Returns a number as a term of a working, in its listed unit. */
  public Term term(String name) {
    return Term.exact(name, number(name), asked(name).unit());
  }

  /** Returns an exact number in the coherent unit. */
  public Ratio exact(String name) {
    return exact(name, text(name), asked(name).unit());
  }

  /** Returns a whole number. */
  public int count(String name) {
    Ratio value = exact(name, text(name), asked(name).unit());
    if (!value.isWhole() || value.numerator().bitLength() > 31) {
      throw wrong(name, text(name), "a whole number");
    }
    return value.numerator().intValueExact();
  }

  /** Returns a text. */
  public String text(String name) {
    asked(name);
    String text = texts.get(name);
    if (text == null) {
      throw new IllegalArgumentException("missing input '" + name + "': " + asked(name).meaning());
    }
    return text.trim();
  }

  /** Returns one of the listed words. */
  public String choice(String name) {
    String word = text(name);
    if (!asked(name).choices().contains(word)) {
      throw wrong(name, word, "one of " + String.join(", ", asked(name).choices()));
    }
    return word;
  }

  /** Returns the words between the commas. */
  public List<String> words(String name) {
    return split(text(name), ",");
  }

  /**
   * Returns the numbers between the commas.
   *
   * @param name the input
   * @return values in the order given [coherent]
   */
  public double[] numbers(String name) {
    return numbers(name, text(name));
  }

  /** Returns the exact numbers between the commas. */
  public List<Ratio> exacts(String name) {
    List<Ratio> values = new ArrayList<>();
    for (String part : split(text(name), ",")) {
      values.add(exact(name, part, asked(name).unit()));
    }
    return List.copyOf(values);
  }

  /** Returns the whole numbers between the commas. */
  public int[] counts(String name) {
    return exacts(name).stream()
        .mapToInt(
            r -> {
              if (!r.isWhole() || r.numerator().bitLength() > 31) {
                throw wrong(name, r.text(), "whole numbers");
              }
              return r.numerator().intValueExact();
            })
        .toArray();
  }

  /**
   * Returns the rows between the semicolons, each with the numbers between its commas.
   *
   * @param name the input
   * @return rows in the order given [coherent]
   */
  public double[][] rows(String name) {
    List<double[]> rows = new ArrayList<>();
    for (String row : split(text(name), ";")) {
      rows.add(numbers(name, row));
    }
    return rows.toArray(new double[0][]);
  }

  private double[] numbers(String name, String text) {
    List<String> parts = split(text, ",");
    double[] values = new double[parts.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = number(name, parts.get(i), asked(name).unit());
    }
    return values;
  }

  private static List<String> split(String text, String separator) {
    String inner = text.trim();
    if (inner.startsWith("[") && inner.endsWith("]")) {
      inner = inner.substring(1, inner.length() - 1);
    }
    List<String> parts = new ArrayList<>();
    for (String part : inner.split(Pattern.quote(separator), -1)) {
      if (!part.isBlank()) {
        parts.add(part.trim());
      }
    }
    if (parts.size() > LONGEST) {
      throw new IllegalArgumentException("more than " + LONGEST + " values in one list");
    }
    return parts;
  }

  private double number(String name, String text, Unit unit) {
    double value = exact(name, text, unit).toDouble();
    if (!Double.isFinite(value)) {
      throw wrong(name, text, "a number that can be computed with");
    }
    return value;
  }

  private Ratio exact(String name, String text, Unit listed) {
    Ratio symbolic = withPi(name, text, listed);
    if (symbolic != null) {
      return symbolic;
    }
    Matcher m = NUMBER.matcher(text);
    if (text.length() > 200 || !m.matches()) {
      throw wrong(name, text, expected(listed));
    }
    Unit unit = unit(name, text, m.group(6), listed);
    Ratio number = decimal(m.group(3));
    if (m.group(4) != null) {
      number = number.times(power(Integer.parseInt(m.group(4))));
    }
    if (m.group(5) != null) {
      Ratio below = decimal(m.group(5));
      if (below.isZero()) {
        throw wrong(name, text, "a fraction with a denominator that is not 0");
      }
      number = number.over(below);
    }
    if (m.group(2) != null) {
      number = plus(decimal(m.group(2)), number);
    }
    if (m.group(1).equals("-")) {
      number = number.negate();
    }
    if (unit.reciprocal() && number.isZero()) {
      throw wrong(name, text, "a number that is not 0");
    }
    Ratio value = unit.toCoherent(number);
    double size = Math.abs(value.toDouble());
    if (!value.isZero() && !(size >= LEAST_SIZE && size <= MOST_SIZE)) {
      throw wrong(name, text, "a number of ordinary size");
    }
    return value;
  }

  /** Reads {@code pi}, {@code 3/2 pi mm} and the like. */
  private @Nullable Ratio withPi(String name, String text, Unit listed) {
    Matcher m = Pattern.compile("(.*?)[*· ]*(?<![A-Za-z])(?:pi|π)\\s*(.*)").matcher(text.trim());
    if (text.length() > 200 || !m.matches()) {
      return null;
    }
    String front = m.group(1).isBlank() ? "1" : m.group(1);
    String unit = m.group(2).isBlank() ? "" : " " + m.group(2);
    return exact(name, front + unit, listed).times(Ratio.PI);
  }

  private static Ratio plus(Ratio whole, Ratio part) {
    return new Ratio(whole.fraction().add(part.fraction()), 0, 0);
  }

  private static Ratio decimal(String digits) {
    return Ratio.of(new java.math.BigDecimal(digits));
  }

  private static Ratio power(int exponent) {
    return Ratio.of(java.math.BigDecimal.ONE.scaleByPowerOfTen(exponent));
  }

  private Unit unit(String name, String text, String symbol, Unit listed) {
    if (symbol.isEmpty()) {
      return listed;
    }
    Unit unit = Unit.parse(symbol).orElse(null);
    if (unit == null || unit.dimension() != listed.dimension()) {
      throw wrong(name, text, expected(listed));
    }
    return unit;
  }

  private static String expected(Unit unit) {
    return unit.symbol().isEmpty()
        ? "a number"
        : "a number in " + unit.symbol() + " or another unit of " + words(unit.dimension());
  }

  private static String words(Dimension dimension) {
    return dimension.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  private Input asked(String name) {
    Input input = reckoner.input(name);
    if (input == null) {
      throw new IllegalStateException(
          reckoner.topic() + " asks for an input it does not list: " + name);
    }
    return input;
  }

  private static IllegalArgumentException wrong(String name, String found, String expected) {
    String shown = found.length() > 60 ? found.substring(0, 60) + "…" : found;
    return new IllegalArgumentException(name + ": found '" + shown + "', expected " + expected);
  }
}
