package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes the JSON of a command, always in the same order and form. */
final class Json {

  /** Something that writes. */
  interface Body {
    void write(JsonGenerator json) throws IOException;
  }

  private static final JsonFactory FACTORY = new JsonFactory();

  private Json() {}

  /** Returns one JSON object as text. */
  static String object(Body body) {
    StringWriter text = new StringWriter();
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentArraysWith(
        com.fasterxml.jackson.core.util.DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.withLinefeed(
            "\n"));
    printer.indentObjectsWith(
        com.fasterxml.jackson.core.util.DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.withLinefeed(
            "\n"));
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.setPrettyPrinter(printer);
      json.writeStartObject();
      body.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /**
   * Writes a number, or null if JSON has no word for it.
   *
   * @param json where to
   * @param name name of the field
   * @param value the number [any]
   */
  static void number(JsonGenerator json, String name, double value) throws IOException {
    json.writeFieldName(name);
    number(json, value);
  }

  /**
   * Writes a number, or null if JSON has no word for it.
   *
   * @param json where to
   * @param value the number [any]
   */
  static void number(JsonGenerator json, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumber(value);
    } else {
      json.writeNull();
    }
  }
}
