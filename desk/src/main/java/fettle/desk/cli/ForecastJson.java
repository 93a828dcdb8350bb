package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.state.State;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Working;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The JSON of a forecast; its schema is {@code forecast.schema.json}. */
final class ForecastJson {

  private ForecastJson() {}

  static String text(Forecast forecast, List<Row> rows) {
    return Json.object(
        json -> {
          json.writeStringField("format", "fettle forecast 1");
          json.writeStringField("lathe", forecast.after().machine().map(m -> m.name()).orElse(""));
          state(json, "before", forecast.before());
          state(json, "after", forecast.after());
          json.writeArrayFieldStart("figures");
          for (Row row : rows) {
            row(json, row);
          }
          json.writeEndArray();
          findings(json, "newFindings", forecast.news());
          findings(json, "settledFindings", forecast.gone());
          findings(json, "stayingFindings", forecast.staying());
        });
  }

  private static void state(JsonGenerator json, String name, State state) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("name", state.name());
    json.writeArrayFieldStart("changes");
    for (String change : state.changes()) {
      json.writeString(change);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void row(JsonGenerator json, Row row) throws IOException {
    Figure figure = row.figure();
    json.writeStartObject();
    json.writeStringField("id", figure.id());
    json.writeStringField("topic", figure.topic());
    json.writeStringField("subject", figure.subject());
    json.writeStringField("name", figure.name());
    json.writeStringField("verdict", row.verdict().words());
    value(json, "before", row.before());
    value(json, "after", row.after());
    Optional<Working> working = figure.working();
    boolean both = row.before().isPresent() && row.after().isPresent();
    if (both && working.isPresent() && !working.get().unit().reciprocal()) {
      double factor = working.get().unit().factor().toDouble();
      json.writeObjectFieldStart("difference");
      Json.number(json, "value", row.difference() / factor);
      Json.number(json, "uncertainty", row.doubt() / factor);
      json.writeStringField("unit", working.get().unit().symbol());
      json.writeEndObject();
    }
    json.writeStringField("source", figure.source().text());
    json.writeEndObject();
  }

  private static void value(JsonGenerator json, String name, Optional<Figure> figure)
      throws IOException {
    if (figure.isEmpty()) {
      json.writeNullField(name);
      return;
    }
    json.writeObjectFieldStart(name);
    Optional<Working> working = figure.get().working();
    if (working.isPresent()) {
      working(json, working.get());
    }
    if (!figure.get().words().isEmpty()) {
      json.writeStringField("words", figure.get().words());
    }
    json.writeEndObject();
  }

  private static void working(JsonGenerator json, Working w) throws IOException {
    Json.number(json, "value", w.shown());
    Json.number(json, "uncertainty", uncertainty(w.value(), w.doubt(), w));
    json.writeStringField("unit", w.unit().symbol());
    json.writeObjectFieldStart("working");
    json.writeStringField("symbol", w.symbol());
    json.writeStringField("formula", w.formula());
    json.writeStringField("numbers", w.numbers());
    json.writeArrayFieldStart("terms");
    for (Term term : w.terms()) {
      json.writeStartObject();
      json.writeStringField("symbol", term.symbol());
      Json.number(json, "value", term.unit().fromCoherent(term.value()));
      json.writeStringField("unit", term.unit().symbol());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static double uncertainty(double value, double doubt, Working w) {
    return w.unit().reciprocal()
        ? Math.abs(w.shown() * doubt / value)
        : doubt / w.unit().factor().toDouble();
  }

  private static void findings(JsonGenerator json, String name, List<Finding> findings)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (Finding finding : findings) {
      json.writeStartObject();
      json.writeStringField("rank", finding.rank().word());
      json.writeStringField("figure", finding.figure());
      json.writeStringField("sentence", finding.sentence());
      json.writeStringField("limit", finding.limit());
      json.writeStringField("source", finding.source().text());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
