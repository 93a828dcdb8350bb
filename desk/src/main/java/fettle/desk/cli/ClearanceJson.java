package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fettle.machine.forecast.Meetings;
import fettle.machine.topics.Clearances;
import fettle.machine.topics.WorkRoom;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Vector;
import java.io.IOException;
import java.util.List;

/** Writes clearances as JSON; {@code docs/clearance.schema.json} describes it. */
final class ClearanceJson {

  private ClearanceJson() {}

  static String of(ClearanceCommand.Found all) {
    Clearances found = all.gaps();
    return Json.object(
        json -> {
          json.writeStringField("format", "fettle clearance 1");
          json.writeArrayFieldStart("pairs");
          for (Clearances.Row row : found.rows()) {
            row(json, found, row, all.stretches().getOrDefault(row, List.of()));
          }
          json.writeEndArray();
          if (all.room().isPresent()) {
            room(json, all.room().get());
          }
          json.writeArrayFieldStart("only_together");
          for (Meetings.Meeting m : all.meetings().pairs()) {
            json.writeStartObject();
            json.writeStringField("change", m.one());
            json.writeStringField("other_change", m.other());
            json.writeStringField("first", m.first());
            json.writeStringField("second", m.second());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeNumberField("pairs_of_changes_not_tried", all.meetings().untried());
          json.writeArrayFieldStart("not_searched");
          for (Mechanism.Skipped s : found.skipped()) {
            json.writeStartObject();
            json.writeStringField("first", s.first());
            json.writeStringField("second", s.second());
            json.writeStringField("reason", s.reason());
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static void row(
      JsonGenerator json, Clearances found, Clearances.Row row, List<Clearances.Stretch> stretches)
      throws IOException {
    Gap gap = row.gap();
    json.writeStartObject();
    json.writeStringField("first", row.first());
    json.writeStringField("second", row.second());
    Json.number(json, "gap_mm", gap.upper());
    Json.number(json, "proven_mm", gap.lower());
    json.writeBooleanField("touches", gap.touches());
    json.writeBooleanField("certified", gap.certified());
    json.writeObjectFieldStart("position");
    List<String> axes = found.mechanism().domain().names();
    for (int i = 0; i < axes.size(); i++) {
      double at = gap.position()[i];
      Json.number(
          json,
          axes.get(i) + (found.slides(i) ? " mm" : " deg"),
          found.slides(i) ? at : Math.toDegrees(at));
    }
    json.writeEndObject();
    point(json, found, row, "on_first_mm", gap.onFirst());
    point(json, found, row, "on_second_mm", gap.onSecond());
    if (!stretches.isEmpty()) {
      json.writeArrayFieldStart("can_meet");
      for (Clearances.Stretch s : stretches) {
        stretch(json, s);
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private static void stretch(JsonGenerator json, Clearances.Stretch s) throws IOException {
    json.writeStartObject();
    json.writeStringField("axis", s.axis());
    json.writeStringField("unit", s.slides() ? "mm" : "deg");
    Json.number(json, "from", shown(s, s.span().from()));
    Json.number(json, "to", shown(s, s.span().to()));
    Json.number(json, "lost_from_low_end", shown(s, s.span().high()));
    Json.number(json, "lost_from_high_end", shown(s, s.span().low()));
    json.writeBooleanField("certified", s.span().certified());
    json.writeEndObject();
  }

  private static double shown(Clearances.Stretch s, double value) {
    return s.slides() ? value : Math.toDegrees(value);
  }

  private static void room(JsonGenerator json, WorkRoom room) throws IOException {
    json.writeObjectFieldStart("room");
    Json.number(json, "length_mm", room.length());
    json.writeStringField("from", room.from());
    json.writeStringField("to", room.to());
    json.writeArrayFieldStart("swings");
    for (WorkRoom.Swing swing : room.swings()) {
      json.writeStartObject();
      json.writeStringField("over", swing.over());
      Json.number(json, "diameter_mm", swing.diameter());
      Json.number(json, "proven_mm", swing.proven());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void point(
      JsonGenerator json, Clearances found, Clearances.Row row, String name, Vector point)
      throws IOException {
    Vector at = found.mechanism().common(row.first(), row.second(), point, row.gap().position());
    json.writeArrayFieldStart(name);
    Json.number(json, at.x());
    Json.number(json, at.y());
    Json.number(json, at.z());
    json.writeEndArray();
  }
}
