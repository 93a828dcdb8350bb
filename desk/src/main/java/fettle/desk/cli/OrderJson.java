package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fettle.planning.order.Alternative;
import fettle.planning.order.Costing;
import fettle.planning.order.Delivery;
import fettle.planning.order.Order;
import fettle.planning.order.Schedule;
import fettle.planning.order.Work;
import fettle.planning.order.Worklist;
import java.io.IOException;
import java.util.Locale;

/** The JSON of an order of work; its schema is {@code docs/order.schema.json}. */
final class OrderJson {

  private OrderJson() {}

  static String text(OrderAnswer answer) {
    return Json.object(
        json -> {
          json.writeStringField("format", "fettle order 1");
          Json.number(json, "hoursAWeek", answer.work().terms().hoursAWeek());
          json.writeStringField("start", answer.start().map(d -> d.toString()).orElse(""));
          proof(json, answer.order());
          json.writeArrayFieldStart("steps");
          for (String key : answer.order().plan().sequence()) {
            step(json, answer, key);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("deliveries");
          for (Delivery delivery : answer.work().deliveries()) {
            json.writeStartObject();
            json.writeStringField("purchase", delivery.key());
            Json.number(json, "days", delivery.days());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeArrayFieldStart("alternatives");
          for (Alternative way : answer.alternatives()) {
            alternative(json, answer, way);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("notes");
          for (String note : answer.work().notes()) {
            json.writeString(note);
          }
          json.writeEndArray();
        });
  }

  private static void proof(JsonGenerator json, Order order) throws IOException {
    Json.number(json, "points", (double) order.cost().total() / Worklist.POINT);
    Json.number(json, "bound", (double) order.bound() / Worklist.POINT);
    Json.number(json, "gapPercent", 100 * order.gap());
    json.writeBooleanField("proved", order.best());
    json.writeStringField("proof", order.proof());
  }

  private static double hours(int ticks) {
    return (double) ticks / Worklist.HOUR;
  }

  private static void step(JsonGenerator json, OrderAnswer answer, String key) throws IOException {
    Work work = answer.work().work(key);
    Schedule plan = answer.order().plan();
    json.writeStartObject();
    json.writeStringField("change", work.change());
    json.writeStringField("step", work.step());
    json.writeStringField("lathe", work.kind().name().toLowerCase(Locale.ROOT));
    Json.number(json, "startHour", hours(plan.start(key)));
    Json.number(json, "endHour", hours(plan.end(key)));
    json.writeStringField("when", answer.when(plan.start(key)));
    json.writeArrayFieldStart("makes");
    for (String part : work.makes()) {
      json.writeString(part);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("waitsFor");
    for (String thing : work.buys()) {
      json.writeString(thing);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void alternative(JsonGenerator json, OrderAnswer answer, Alternative way)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("name", way.name());
    Json.number(json, "points", (double) way.cost().total() / Worklist.POINT);
    Json.number(json, "strippedHours", hours(way.stripped()));
    Json.number(json, "lostPoints", (double) way.cost().waste() / Worklist.POINT);
    json.writeStringField("firstBenefit", answer.when(way.firstBenefit()));
    json.writeStringField("finished", answer.when(way.plan().finish()));
    json.writeEndObject();
  }

  static int stripped(OrderAnswer answer) {
    return Costing.stripped(answer.work().list(), answer.order().plan());
  }
}
