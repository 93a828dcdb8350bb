package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fettle.machine.text.Nearest;
import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Result;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code fettle reckon}: one single calculation. */
final class ReckonCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "reckon",
            "One single calculation: fettle reckon rack-travel z1=13 z2=40 z3=15 m='16 DP'",
            "A value without a unit is in the unit the list names.");
    spec.addPositional(
        Options.many(
            "TOPIC NAME=VALUE",
            "The topic, then its inputs; a topic alone shows what it asks for."));
    spec.addOption(Options.flag("--list", "List every topic."));
    spec.addOption(Options.flag("--json", "Write JSON; docs/reckon.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    boolean json = given.on("--json");
    List<String> words = given.words(0);
    if (given.on("--list") || words.isEmpty()) {
      list(json, terminal);
      return ExitStatus.DONE;
    }
    Reckoner reckoner = find(words.get(0));
    if (words.size() == 1
        && reckoner.inputs().stream().anyMatch(i -> i.required() && i.standard() == null)) {
      describe(reckoner, json, terminal);
      return ExitStatus.DONE;
    }
    Map<String, String> inputs = inputs(words.subList(1, words.size()));
    Answer answer;
    try {
      answer = reckoner.answer(inputs);
    } catch (IllegalArgumentException e) {
      throw Failure.input(String.valueOf(e.getMessage()));
    }
    if (answer.none() != null) {
      throw Failure.notComputed(answer.none());
    }
    if (json) {
      terminal.out().println(json(reckoner, inputs, answer));
    } else {
      print(reckoner, answer, terminal);
    }
    return ExitStatus.DONE;
  }

  private static Reckoner find(String topic) {
    return Reckoners.of(topic)
        .orElseThrow(
            () ->
                Failure.input(
                    "there is no topic '"
                        + topic
                        + "'. "
                        + Nearest.hint(
                            topic, Reckoners.all().stream().map(Reckoner::topic).toList())
                        + " 'fettle reckon --list' shows all."));
  }

  private static Map<String, String> inputs(List<String> words) {
    Map<String, String> inputs = new LinkedHashMap<>();
    for (String word : words) {
      int at = word.indexOf('=');
      if (at < 1) {
        throw Failure.input("found '" + word + "', expected name=value");
      }
      if (inputs.put(word.substring(0, at), word.substring(at + 1)) != null) {
        throw Failure.input("'" + word.substring(0, at) + "' is given twice");
      }
    }
    return inputs;
  }

  private static void list(boolean json, Terminal terminal) {
    if (json) {
      terminal
          .out()
          .println(
              Json.object(
                  g -> {
                    g.writeStringField("format", "fettle reckon list 1");
                    g.writeArrayFieldStart("topics");
                    for (Reckoner reckoner : Reckoners.all()) {
                      g.writeStartObject();
                      description(g, reckoner);
                      g.writeEndObject();
                    }
                    g.writeEndArray();
                  }));
      return;
    }
    String group = "";
    for (Reckoner reckoner : Reckoners.all()) {
      if (!reckoner.group().equals(group)) {
        group = reckoner.group();
        terminal.out().println(terminal.ink(Terminal.Ink.GRAPHITE, group));
      }
      terminal.out().printf("  %-34s %s%n", reckoner.topic(), reckoner.title());
    }
    terminal.out().println("'fettle reckon TOPIC' shows what a topic asks for.");
  }

  private static void describe(Reckoner reckoner, boolean json, Terminal terminal) {
    if (json) {
      terminal.out().println(Json.object(g -> description(g, reckoner)));
      return;
    }
    terminal.out().println(terminal.ink(Terminal.Ink.GRAPHITE, reckoner.title()));
    terminal.out().println("asks for");
    for (Input input : reckoner.inputs()) {
      String standard =
          input.standard() == null
              ? (input.required() ? "" : " (may be left out)")
              : " (else " + input.standard() + ")";
      terminal
          .out()
          .printf("  %-20s %s%s%s%n", input.name(), unit(input.unit()), input.meaning(), standard);
    }
    terminal.out().println("answers");
    reckoner
        .results()
        .forEach(
            r -> terminal.out().printf("  %-20s %s%s%n", r.name(), unit(r.unit()), r.meaning()));
    terminal.out().println("source: " + reckoner.source().text());
  }

  private static String unit(Unit unit) {
    return unit.symbol().isEmpty() ? "" : "[" + unit.symbol() + "] ";
  }

  private static void description(JsonGenerator g, Reckoner reckoner) throws IOException {
    g.writeStringField("topic", reckoner.topic());
    g.writeStringField("group", reckoner.group());
    g.writeStringField("title", reckoner.title());
    g.writeArrayFieldStart("inputs");
    for (Input input : reckoner.inputs()) {
      g.writeStartObject();
      g.writeStringField("name", input.name());
      g.writeStringField("kind", input.kind().name().toLowerCase(java.util.Locale.ROOT));
      g.writeStringField("unit", input.unit().symbol());
      g.writeStringField("meaning", input.meaning());
      g.writeBooleanField("required", input.required() && input.standard() == null);
      if (input.standard() != null) {
        g.writeStringField("standard", input.standard());
      }
      if (!input.choices().isEmpty()) {
        g.writeArrayFieldStart("choices");
        for (String choice : input.choices()) {
          g.writeString(choice);
        }
        g.writeEndArray();
      }
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeArrayFieldStart("results");
    for (Result result : reckoner.results()) {
      g.writeStartObject();
      g.writeStringField("name", result.name());
      g.writeStringField("unit", result.unit().symbol());
      g.writeStringField("meaning", result.meaning());
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeStringField("source", reckoner.source().text());
  }

  private static String json(Reckoner reckoner, Map<String, String> inputs, Answer answer) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle reckon 1");
          g.writeStringField("topic", reckoner.topic());
          g.writeObjectFieldStart("inputs");
          for (Map.Entry<String, String> input : inputs.entrySet()) {
            g.writeStringField(input.getKey(), input.getValue());
          }
          g.writeEndObject();
          g.writeObjectFieldStart("results");
          for (Map.Entry<String, Answer.Value> entry : answer.values().entrySet()) {
            g.writeFieldName(entry.getKey());
            g.writeStartObject();
            Result result = java.util.Objects.requireNonNull(reckoner.result(entry.getKey()));
            value(g, entry.getValue(), result.unit());
            g.writeStringField("unit", result.unit().symbol());
            g.writeEndObject();
          }
          g.writeEndObject();
          g.writeArrayFieldStart("workings");
          for (Working working : answer.workings()) {
            g.writeStartObject();
            g.writeStringField("symbol", working.symbol());
            g.writeStringField("formula", working.formula());
            g.writeStringField("numbers", working.numbers());
            Json.number(g, "value", working.shown());
            g.writeStringField("unit", working.unit().symbol());
            g.writeEndObject();
          }
          g.writeEndArray();
          g.writeArrayFieldStart("cautions");
          for (String caution : answer.cautions()) {
            g.writeString(caution);
          }
          g.writeEndArray();
          g.writeStringField("source", reckoner.source().text());
        });
  }

  private static void value(JsonGenerator g, Answer.Value value, Unit unit) throws IOException {
    if (value instanceof Answer.Value.Real real) {
      Json.number(g, "value", unit.fromCoherent(real.coherent()));
    } else if (value instanceof Answer.Value.Exact exact) {
      Json.number(g, "value", unit.fromCoherent(exact.ratio().toDouble()));
      g.writeStringField("exact", exact.ratio().text());
    } else if (value instanceof Answer.Value.Several several) {
      g.writeArrayFieldStart("value");
      for (double v : several.coherent()) {
        Json.number(g, unit.fromCoherent(v));
      }
      g.writeEndArray();
    } else if (value instanceof Answer.Value.Words words) {
      g.writeStringField("value", words.text());
    } else if (value instanceof Answer.Value.Lines lines) {
      g.writeArrayFieldStart("value");
      for (String line : lines.lines()) {
        g.writeString(line);
      }
      g.writeEndArray();
    }
  }

  private static void print(Reckoner reckoner, Answer answer, Terminal terminal) {
    terminal.out().println(terminal.ink(Terminal.Ink.GRAPHITE, reckoner.title()));
    answer
        .values()
        .forEach(
            (name, value) -> {
              Result result = java.util.Objects.requireNonNull(reckoner.result(name));
              terminal
                  .out()
                  .printf(
                      "  %-20s %s   %s%n",
                      name,
                      shown(value, result.unit()),
                      terminal.ink(Terminal.Ink.FAINT, result.meaning()));
            });
    answer.workings().forEach(w -> terminal.out().println("  " + w.text()));
    answer.cautions().forEach(c -> terminal.out().println("  ! " + c));
    terminal.out().println("source: " + reckoner.source().text());
  }

  private static String shown(Answer.Value value, Unit unit) {
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    if (value instanceof Answer.Value.Real real) {
      return Numbers.significant(unit.fromCoherent(real.coherent()), 8) + symbol;
    } else if (value instanceof Answer.Value.Exact exact) {
      return Numbers.significant(unit.fromCoherent(exact.ratio().toDouble()), 8)
          + symbol
          + " (exactly "
          + exact.ratio().text()
          + ")";
    } else if (value instanceof Answer.Value.Several several) {
      return String.join(
              ", ",
              several.coherent().stream()
                  .map(v -> Numbers.significant(unit.fromCoherent(v), 8))
                  .toList())
          + symbol;
    } else if (value instanceof Answer.Value.Words words) {
      return words.text();
    }
    return String.join("; ", ((Answer.Value.Lines) value).lines());
  }
}
