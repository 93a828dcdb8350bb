package fettle.desk.cli;

import java.util.Locale;

/** Writes what {@code fettle sheets} did as JSON. */
final class SheetsJson {

  private SheetsJson() {}

  static String text(SheetBatch batch) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle sheets 1");
          g.writeArrayFieldStart("sheets");
          for (SheetBatch.Done d : batch.done()) {
            g.writeStartObject();
            g.writeStringField("sheet", d.revision().sheet());
            g.writeStringField("title", d.title());
            g.writeStringField("revision", d.revision().index());
            g.writeStringField("date", d.revision().date());
            g.writeStringField("digest", d.revision().digest());
            g.writeStringField("outcome", d.outcome().name().toLowerCase(Locale.ROOT));
            g.writeArrayFieldStart("files");
            for (String file : d.files()) {
              g.writeString(file);
            }
            g.writeEndArray();
            g.writeArrayFieldStart("faults");
            for (String fault : d.faults()) {
              g.writeString(fault);
            }
            g.writeEndArray();
            g.writeEndObject();
          }
          g.writeEndArray();
        });
  }
}
