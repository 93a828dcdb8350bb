package fettle.machine.dictionary;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Writes the dictionary as a JSON Schema of the draft 2020-12, so that an editor can help with a
 * book. The schema knows shapes, words, units and whole numbers; bounds of quantities and names
 * that must exist are left to {@code fettle check}.
 */
public final class Schema {

  private static final String NUMBER =
      "[+-]?(?:\\d{1,12}\\s+(?=\\d+\\s*/\\s*\\d))?(?:\\d{1,15}(?:\\.\\d{1,15})?|\\.\\d{1,15})"
          + "(?:e[+-]?\\d{1,2})?(?:\\s*/\\s*\\d{1,12})?";
  private static final String BESIDE = "\\s*(?:±|\\+/-|to)\\s*" + NUMBER + "\\s*";

  private final Dictionary dictionary;
  private final JsonGenerator json;

  private Schema(Dictionary dictionary, JsonGenerator json) {
    this.dictionary = dictionary;
    this.json = json;
  }

  /**
   * Returns the schema of one kind of file.
   *
   * @param dictionary the table of keys
   * @param root the block that the file is: {@code machine}, {@code change} or {@code shop}
   * @param title what the file is
   */
  public static String of(Dictionary dictionary, String root, String title) {
    StringWriter text = new StringWriter();
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(printer);
      new Schema(dictionary, json).write(root, title);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  private void write(String root, String title) throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
    json.writeStringField("title", title);
    json.writeStringField("$ref", "#/$defs/" + name(root));
    json.writeObjectFieldStart("$defs");
    Set<String> shapes = new LinkedHashSet<>();
    reach(root, shapes);
    for (String shape : shapes) {
      shape(shape);
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  /** Collects a block and all blocks within it. */
  private void reach(String shape, Set<String> shapes) {
    if (shapes.add(shape)) {
      for (Row row : dictionary.shape(shape).values()) {
        String type = row.type().replaceFirst("^(?:map|list):", "");
        if (type.startsWith("shape:")) {
          reach(type.substring(6), shapes);
        } else if (type.startsWith("either:")) {
          String family = type.substring(7);
          dictionary.kinds(family).forEach(kind -> reach(family + "/" + kind, shapes));
        }
      }
    }
  }

  private static String name(String shape) {
    return shape.replace('/', '.').replace(' ', '-');
  }

  private void shape(String shape) throws IOException {
    Map<String, Row> rows = dictionary.shape(shape);
    json.writeObjectFieldStart(name(shape));
    json.writeStringField("type", "object");
    json.writeBooleanField("additionalProperties", false);
    List<String> required = rows.values().stream().filter(Row::required).map(Row::key).toList();
    if (!required.isEmpty()) {
      json.writeArrayFieldStart("required");
      for (String key : required) {
        json.writeString(key);
      }
      json.writeEndArray();
    }
    json.writeObjectFieldStart("properties");
    for (Row row : rows.values()) {
      json.writeObjectFieldStart(row.key());
      json.writeStringField("description", row.meaning());
      if (!row.standard().isEmpty()) {
        json.writeStringField("$comment", "if left out: " + row.standard());
      }
      if (row.required()) {
        value(row, row.type());
      } else {
        json.writeArrayFieldStart("anyOf");
        json.writeStartObject();
        value(row, row.type());
        json.writeEndObject();
        json.writeStartObject();
        json.writeStringField("type", "null");
        json.writeEndObject();
        json.writeEndArray();
      }
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void value(Row row, String type) throws IOException {
    int colon = type.indexOf(':');
    String inner = type.substring(colon + 1);
    switch (colon < 0 ? type : type.substring(0, colon)) {
      case "shape" -> json.writeStringField("$ref", "#/$defs/" + name(inner));
      case "either" -> either(inner);
      case "map" -> {
        json.writeStringField("type", "object");
        json.writeNumberField("maxProperties", Reading.MOST_ENTRIES);
        json.writeObjectFieldStart("propertyNames");
        json.writeStringField("pattern", Reading.NAME);
        json.writeNumberField("maxLength", Reading.LONGEST_NAME);
        json.writeEndObject();
        json.writeObjectFieldStart("additionalProperties");
        value(row, inner);
        json.writeEndObject();
      }
      case "list" -> {
        json.writeStringField("type", "array");
        json.writeNumberField("maxItems", Reading.MOST_ENTRIES);
        json.writeObjectFieldStart("items");
        value(row, inner);
        json.writeEndObject();
      }
      case "word" -> words(row.words());
      case "flag" -> words(List.of("yes", "no"));
      case "count" -> {
        json.writeStringField("type", "integer");
        json.writeNumberField("minimum", row.low().orElse(-1e9).intValue());
        json.writeNumberField("maximum", row.high().orElse(1e9).intValue());
      }
      case "tree" -> json.writeStringField("type", "object");
      case "text", "ref" -> text("\\S");
      default -> quantityOrDesignation(row, type);
    }
  }

  private void either(String family) throws IOException {
    json.writeStringField("type", "object");
    json.writeArrayFieldStart("required");
    json.writeString("kind");
    json.writeEndArray();
    json.writeArrayFieldStart("oneOf");
    for (String kind : dictionary.kinds(family)) {
      json.writeStartObject();
      json.writeObjectFieldStart("properties");
      json.writeObjectFieldStart("kind");
      json.writeStringField("const", kind);
      json.writeEndObject();
      json.writeEndObject();
      json.writeStringField("$ref", "#/$defs/" + name(family + "/" + kind));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void words(List<String> words) throws IOException {
    json.writeArrayFieldStart("enum");
    for (String word : words) {
      json.writeString(word);
    }
    json.writeEndArray();
  }

  /** A word or phrase; one that looks like a number or like true or false is one too. */
  private void text(String pattern) throws IOException {
    json.writeArrayFieldStart("type");
    json.writeString("string");
    json.writeString("number");
    json.writeString("boolean");
    json.writeEndArray();
    json.writeStringField("pattern", pattern);
  }

  private void quantityOrDesignation(Row row, String type) throws IOException {
    Optional<String> spelling = Designations.spelling(type);
    if (spelling.isPresent()) {
      json.writeArrayFieldStart("type");
      json.writeString("string");
      if (Pattern.matches(spelling.get(), "6204")) {
        json.writeString("integer");
      }
      json.writeEndArray();
      json.writeStringField("pattern", spelling.get());
      if (type.equals("bearing")) {
        json.writeNumberField("minimum", 100);
        json.writeNumberField("maximum", 99_999);
      }
      return;
    }
    Dimension dimension = Dimension.valueOf(type.toUpperCase(Locale.ROOT));
    if (dimension == Dimension.NUMBER) {
      json.writeArrayFieldStart("type");
      json.writeString("string");
      json.writeString("number");
      json.writeEndArray();
    } else {
      json.writeStringField("type", "string");
    }
    json.writeStringField("pattern", pattern(dimension));
    json.writeArrayFieldStart("examples");
    json.writeString(row.unit().symbol().isEmpty() ? "2" : "2 " + row.unit().symbol());
    json.writeEndArray();
  }

  /** Returns the pattern of a quantity with any of its units, a doubt or a range. */
  static String pattern(Dimension dimension) {
    List<String> spellings =
        Unit.all().entrySet().stream()
            .filter(e -> e.getValue().dimension() == dimension && !e.getKey().isEmpty())
            .map(Map.Entry::getKey)
            .sorted(Comparator.comparing(String::length).reversed().thenComparing(s -> s))
            .map(Schema::escaped)
            .toList();
    String unit = "(?:" + String.join("|", spellings) + ")";
    return dimension == Dimension.NUMBER
        ? "^\\s*" + NUMBER + "\\s*" + unit + "?(?:" + BESIDE + unit + "?)?\\s*$"
        : "^\\s*" + NUMBER + "\\s*(?:" + unit + "(?:" + BESIDE + unit + "?)?|" + BESIDE + unit
            + ")\\s*$";
  }

  private static String escaped(String symbol) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < symbol.length(); i++) {
      char c = symbol.charAt(i);
      text.append("\\^$.|?*+()[]{}".indexOf(c) >= 0 ? "\\" : "").append(c);
    }
    return text.toString();
  }

  /** Returns the words of a row as they are written in the file reference. */
  static String said(Row row) {
    String type = row.type();
    if (type.startsWith("word:")) {
      return String.join(", ", row.words());
    } else if (type.startsWith("list:word:")) {
      return "list out of " + String.join(", ", row.words());
    }
    return type.replace("either:", "a kind of ")
        .replace("map:", "by name: ")
        .replace("shape:", "")
        .replace("list:", "list of ")
        .replace("ref:", "one of the ")
        .replace("flag", "yes or no")
        .replace("count", "whole number")
        .replace("tree", "keys of machine.yaml")
        .replace('_', ' ');
  }
}
