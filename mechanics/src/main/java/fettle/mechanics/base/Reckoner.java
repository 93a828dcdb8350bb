package fettle.mechanics.base;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One single calculation, as the workshop would ask for it: named inputs with units in, named
 * results with units out, with the source of its formula. The same reckoner serves the command
 * line, the pages and the tables of published values.
 *
 * @param topic its name on the command line, words joined by hyphens
 * @param group the handbook chapter it belongs to
 * @param title what it computes, in one line
 * @param inputs what it asks for
 * @param results what it may answer
 * @param source where its formula comes from
 * @param rule the calculation
 */
public record Reckoner(
    String topic,
    String group,
    String title,
    List<Input> inputs,
    List<Result> results,
    Source source,
    Function<Given, Answer> rule) {

  /** Starts the description of a reckoner. */
  public static Draft of(String group, String topic, String title) {
    return new Draft(group, topic, title);
  }

  /** Returns the input of that name, or null. */
  public @Nullable Input input(String name) {
    return inputs.stream().filter(i -> i.name().equals(name)).findFirst().orElse(null);
  }

  /** Returns the result of that name, or null. */
  public @Nullable Result result(String name) {
    return results.stream().filter(r -> r.name().equals(name)).findFirst().orElse(null);
  }

  /** Returns the names of all inputs in one line. */
  public String inputNames() {
    return String.join(", ", inputs.stream().map(Input::name).toList());
  }

  /**
   * Computes; an {@link IllegalArgumentException} tells what is wrong with the inputs. Every result
   * must be listed, and no number may be NaN.
   */
  public Answer answer(Map<String, String> texts) {
    Answer answer = rule.apply(Given.of(this, texts));
    answer
        .values()
        .forEach(
            (name, value) -> {
              if (result(name) == null) {
                throw new IllegalStateException(topic + " answers an unlisted result: " + name);
              }
              if (value instanceof Answer.Value.Real real && Double.isNaN(real.coherent())) {
                throw new IllegalArgumentException(
                    topic
                        + ": these inputs lie outside the formula's field; "
                        + name
                        + " cannot be computed");
              }
            });
    return answer;
  }

  /**
   * Returns the same reckoner that also refuses inputs so extreme that a result would be infinite.
   */
  public Reckoner finite() {
    return new Reckoner(
        topic, group, title, inputs, results, source, given -> finite(rule.apply(given)));
  }

  private Answer finite(Answer answer) {
    answer
        .values()
        .forEach(
            (name, value) -> {
              boolean one =
                  value instanceof Answer.Value.Real real && Double.isInfinite(real.coherent());
              boolean many =
                  value instanceof Answer.Value.Several several
                      && !several.coherent().stream().allMatch(Double::isFinite);
              if (one || many) {
                throw new IllegalArgumentException(
                    topic
                        + ": these inputs are too large or too small; "
                        + name
                        + " cannot be computed");
              }
            });
    return answer;
  }

  /** A reckoner being described. */
  public static final class Draft {
    private final String group;
    private final String topic;
    private final String title;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Result> results = new ArrayList<>();
    private Source source = Source.derived("definition");

    private Draft(String group, String topic, String title) {
      this.group = group;
      this.topic = topic;
      this.title = title;
    }

    /** Asks for a number. */
    public Draft number(String name, Unit unit, String meaning) {
      return input(name, Input.Kind.NUMBER, unit, meaning, null, true);
    }

    /** Asks for a number with a standard value, written in the listed unit. */
    public Draft number(String name, Unit unit, String meaning, String standard) {
      return input(name, Input.Kind.NUMBER, unit, meaning, standard, true);
    }

    /** Asks for a number that may be left out. */
    public Draft optional(String name, Unit unit, String meaning) {
      return input(name, Input.Kind.NUMBER, unit, meaning, null, false);
    }

    /** Asks for an input of any kind; {@code standard} may be null. */
    public Draft input(
        String name,
        Input.Kind kind,
        Unit unit,
        String meaning,
        @Nullable String standard,
        boolean required) {
      inputs.add(new Input(name, kind, unit, meaning, standard, required, List.of()));
      return this;
    }

    /** Asks for a whole number. */
    public Draft count(String name, String meaning) {
      return input(name, Input.Kind.COUNT, Unit.ONE, meaning, null, true);
    }

    /** Asks for a whole number with a standard value. */
    public Draft count(String name, String meaning, String standard) {
      return input(name, Input.Kind.COUNT, Unit.ONE, meaning, standard, true);
    }

    /** Asks for an exact number. */
    public Draft exact(String name, Unit unit, String meaning) {
      return input(name, Input.Kind.EXACT, unit, meaning, null, true);
    }

    /** Asks for a text. */
    public Draft text(String name, String meaning) {
      return input(name, Input.Kind.TEXT, Unit.ONE, meaning, null, true);
    }

    /** Asks for one of several words; the first is the standard one. */
    public Draft choice(String name, String meaning, String... words) {
      inputs.add(
          new Input(name, Input.Kind.CHOICE, Unit.ONE, meaning, words[0], true, List.of(words)));
      return this;
    }

    /** Asks for numbers separated by commas. */
    public Draft numbers(String name, Unit unit, String meaning) {
      return input(name, Input.Kind.NUMBERS, unit, meaning, null, true);
    }

    /** Asks for rows of numbers. */
    public Draft rows(String name, Unit unit, String meaning) {
      return input(name, Input.Kind.ROWS, unit, meaning, null, true);
    }

    /** Announces a result. */
    public Draft result(String name, Unit unit, String meaning) {
      results.add(new Result(name, unit, meaning));
      return this;
    }

    /** Names the source of the formula. */
    public Draft source(Source where) {
      this.source = where;
      return this;
    }

    /** Finishes the description with the calculation itself. */
    public Reckoner rule(Function<Given, Answer> rule) {
      return new Reckoner(
          topic, group, title, List.copyOf(inputs), List.copyOf(results), source, rule);
    }
  }
}
