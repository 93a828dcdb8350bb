package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fettle.machine.trials.Adjusting;
import fettle.machine.trials.Agreement;
import fettle.machine.trials.Chart;
import fettle.machine.trials.Judged;
import fettle.machine.trials.Learned;
import fettle.machine.trials.Measured;
import fettle.machine.trials.Met;
import fettle.machine.trials.Proof;
import fettle.machine.trials.Told;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The JSON of proofs; its schema is {@code docs/prove.schema.json}. */
final class ProveJson {

  private ProveJson() {}

  static String text(Told told, Optional<Agreement> agreement, Optional<Adjusting> adjusting) {
    Collection<Proof> proofs = told.proofs().values();
    return Json.object(
        json -> {
          json.writeStringField("format", "fettle prove 1");
          json.writeBooleanField("notGood", proofs.stream().anyMatch(Proof::notGood));
          json.writeArrayFieldStart("trials");
          for (Proof proof : proofs) {
            proof(json, proof);
          }
          json.writeEndArray();
          json.writeObjectFieldStart("waiting");
          for (Map.Entry<String, String> one : told.waiting().entrySet()) {
            json.writeStringField(one.getKey(), one.getValue());
          }
          json.writeEndObject();
          if (agreement.isPresent()) {
            agreement(json, agreement.get());
          }
          if (adjusting.isPresent()) {
            adjusting(json, adjusting.get());
          }
        });
  }

  private static void proof(JsonGenerator json, Proof proof) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", proof.trial().name());
    json.writeStringField("kind", proof.trial().kind().word());
    json.writeStringField("what", proof.trial().values().needText("what"));
    json.writeStringField("proves", proof.trial().values().text("proves").orElse(""));
    json.writeStringField("instrument", proof.trial().values().needText("instrument"));
    json.writeStringField("date", proof.trial().values().text("date").orElse(""));
    json.writeNumberField("readings", proof.trial().readings().lines().size());
    json.writeArrayFieldStart("figures");
    for (Proof.Line line : proof.lines()) {
      line(json, line);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("corrections");
    for (Proof.Correction c : proof.table()) {
      json.writeStartObject();
      Json.number(json, "dialMm", c.place());
      Json.number(json, "addMicron", c.correction() * 1000);
      json.writeEndObject();
    }
    json.writeEndArray();
    if (proof.chart().isPresent()) {
      chart(json, proof.chart().get());
    }
    if (proof.learned().isPresent()) {
      learned(json, proof.learned().get());
    }
    words(json, "gaps", proof.gaps());
    words(json, "outliers", proof.outliers());
    words(json, "notes", proof.notes());
    words(json, "cautions", proof.cautions());
    json.writeEndObject();
  }

  private static void agreement(JsonGenerator json, Agreement a) throws IOException {
    json.writeObjectFieldStart("forecastMet");
    json.writeNumberField("figures", a.figures());
    Json.number(json, "chiSquare", a.chiSquare());
    Json.number(json, "probability", a.probability());
    json.writeStringField("largest", a.largest());
    json.writeStringField("words", a.words());
    json.writeEndObject();
  }

  private static void learned(JsonGenerator json, Learned learned) throws IOException {
    json.writeObjectFieldStart("learned");
    json.writeStringField("change", learned.change());
    Json.number(json, "distance", learned.distance());
    Json.number(json, "gate", learned.gate());
    json.writeStringField("words", learned.words());
    json.writeArrayFieldStart("values");
    for (Learned.Value value : learned.values()) {
      json.writeStartObject();
      json.writeStringField("path", value.path());
      json.writeStringField("before", value.before());
      json.writeStringField("after", value.after());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("text", learned.text());
    json.writeEndObject();
  }

  private static void adjusting(JsonGenerator json, Adjusting adjusting) throws IOException {
    json.writeObjectFieldStart("adjusting");
    json.writeArrayFieldStart("steps");
    for (Adjusting.Step step : adjusting.steps()) {
      json.writeStartObject();
      json.writeStringField("adjuster", step.adjuster());
      Json.number(json, "moveMm", step.move());
      json.writeStringField("words", step.words());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("left");
    for (Adjusting.Row row : adjusting.rows()) {
      Unit unit = row.figure().unit();
      json.writeStartObject();
      json.writeStringField("trial", row.trial());
      json.writeStringField("figure", row.figure().name());
      json.writeStringField("unit", unit.symbol());
      Json.number(json, "before", unit.fromCoherent(row.figure().value()));
      Json.number(json, "after", unit.fromCoherent(row.after()));
      Json.number(json, "target", unit.fromCoherent(row.target()));
      Json.number(json, "atLeast", unit.fromCoherent(row.limit().low()));
      Json.number(json, "atMost", unit.fromCoherent(row.limit().high()));
      Json.number(json, "probabilityBefore", row.before());
      Json.number(json, "probabilityAfter", row.kept());
      json.writeEndObject();
    }
    json.writeEndArray();
    words(json, "notes", adjusting.notes());
    json.writeEndObject();
  }

  private static void chart(JsonGenerator json, Chart chart) throws IOException {
    Unit unit = chart.unit();
    json.writeObjectFieldStart("chart");
    json.writeStringField("unit", unit.symbol());
    json.writeNumberField("settled", chart.settled());
    Json.number(json, "centre", unit.fromCoherent(chart.centre()));
    Json.number(json, "warning", unit.fromCoherent(chart.warning()));
    Json.number(json, "action", unit.fromCoherent(chart.action()));
    json.writeArrayFieldStart("points");
    for (int i = 0; i < chart.points().size(); i++) {
      Chart.Point point = chart.points().get(i);
      json.writeStartObject();
      json.writeStringField("date", LocalDate.ofEpochDay((long) point.day()).toString());
      Json.number(json, "hours", point.hours());
      Json.number(json, "value", unit.fromCoherent(point.value()));
      Json.number(json, "average", unit.fromCoherent(point.average()));
      Json.number(json, "averageLimit", unit.fromCoherent(chart.averageAction().get(i)));
      json.writeEndObject();
    }
    json.writeEndArray();
    words(json, "signals", chart.signals());
    json.writeStringField("service", chart.service());
    json.writeEndObject();
  }

  private static void line(JsonGenerator json, Proof.Line line) throws IOException {
    Measured m = line.figure();
    Unit unit = m.unit();
    json.writeStartObject();
    json.writeStringField("name", m.name());
    Json.number(json, "value", unit.fromCoherent(m.value()));
    Json.number(json, "uncertainty", unit.fromCoherent(m.expanded()));
    json.writeStringField("unit", unit.symbol());
    Json.number(json, "standardUncertainty", unit.fromCoherent(m.standard()));
    Json.number(json, "coverageFactor", m.coverage());
    Json.number(json, "degreesOfFreedom", m.budget().freedom());
    json.writeArrayFieldStart("budget");
    for (Contribution c : m.budget().ranked()) {
      json.writeStartObject();
      json.writeStringField("cause", c.name());
      Json.number(json, "share", unit.fromCoherent(Math.abs(c.share())));
      json.writeStringField("from", c.kind().name().toLowerCase(Locale.ROOT));
      json.writeEndObject();
    }
    json.writeEndArray();
    if (line.judged().isPresent()) {
      judged(json, line.judged().get(), unit);
    }
    if (line.met().isPresent()) {
      met(json, line.met().get(), unit);
    }
    json.writeStringField("adjust", m.adjust());
    json.writeStringField("source", m.source().text());
    json.writeEndObject();
  }

  private static void judged(JsonGenerator json, Judged j, Unit unit) throws IOException {
    json.writeStringField("verdict", j.verdict().outcome().words());
    json.writeObjectFieldStart("limit");
    Json.number(json, "atLeast", unit.fromCoherent(j.limit().low()));
    Json.number(json, "atMost", unit.fromCoherent(j.limit().high()));
    json.writeStringField("source", j.limit().source());
    Json.number(json, "probabilityKept", j.verdict().probability());
    json.writeEndObject();
    Json.number(json, "moreReadings", j.more());
    json.writeStringField("settle", j.way());
  }

  private static void met(JsonGenerator json, Met f, Unit unit) throws IOException {
    json.writeObjectFieldStart("forecast");
    json.writeStringField("figure", f.figure());
    Json.number(json, "value", unit.fromCoherent(f.predicted()));
    Json.number(json, "uncertainty", unit.fromCoherent(f.doubt()));
    Json.number(json, "normalisedError", f.normalised());
    json.writeStringField("words", f.words());
    json.writeEndObject();
  }

  private static void words(JsonGenerator json, String name, List<String> words)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String word : words) {
      json.writeString(word);
    }
    json.writeEndArray();
  }
}
