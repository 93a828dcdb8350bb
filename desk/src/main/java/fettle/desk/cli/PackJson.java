package fettle.desk.cli;

import fettle.desk.pack.Chapter;
import fettle.desk.pack.Issue;
import fettle.desk.pack.PackFiles;

/** Writes what {@code fettle pack} did as JSON. */
final class PackJson {

  private PackJson() {}

  static String text(PackFiles made) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle pack 1");
          g.writeStringField("change", made.pack().source().change().key());
          g.writeStringField("revision", made.pack().issue().index());
          g.writeStringField("date", made.pack().issue().date());
          g.writeBooleanField("changed", made.fresh());
          g.writeArrayFieldStart("issues");
          for (Issue issue : made.pack().issues()) {
            g.writeStartObject();
            g.writeStringField("revision", issue.index());
            g.writeStringField("date", issue.date());
            g.writeStringField("whatChanged", issue.note());
            g.writeEndObject();
          }
          g.writeEndArray();
          g.writeArrayFieldStart("chapters");
          for (Chapter chapter : made.pack().chapters()) {
            g.writeString(chapter.title());
          }
          g.writeEndArray();
          g.writeArrayFieldStart("files");
          for (String file : made.files().keySet()) {
            g.writeString(file);
          }
          g.writeEndArray();
          g.writeArrayFieldStart("faults");
          for (String fault : made.faults()) {
            g.writeString(fault);
          }
          g.writeEndArray();
        });
  }
}
