package fettle.parts.exchange;

import fettle.mechanics.base.Numbers;
import fettle.parts.solid.Mesh;
import fettle.parts.solid.Vec;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.GregorianCalendar;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a mesh as 3MF (ISO/IEC 25422): millimetres, one object, the same bytes for the same mesh.
 * A mesh has no true cylinders; it serves for printed patterns and guards.
 */
public final class ThreeMfFile {

  private static final String TYPES =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
          + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
          + "<Default Extension=\"rels\""
          + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
          + "<Default Extension=\"model\""
          + " ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/></Types>\n";
  private static final String RELATIONS =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
          + "<Relationships"
          + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
          + "<Relationship Target=\"/3D/3dmodel.model\" Id=\"rel0\""
          + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
          + "</Relationships>\n";

  private ThreeMfFile() {}

  /** Returns the bytes of the file; refuses a mesh that is not closed. */
  public static byte[] of(Mesh mesh, String title) {
    if (!mesh.isClosed()) {
      throw new IllegalArgumentException(title + ": the mesh is not closed and cannot be printed");
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      entry(zip, "[Content_Types].xml", TYPES);
      entry(zip, "_rels/.rels", RELATIONS);
      entry(zip, "3D/3dmodel.model", model(mesh, title));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** Stores an entry without a date of its own and without compression, so bytes never differ. */
  private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    CRC32 sum = new CRC32();
    sum.update(bytes);
    ZipEntry entry = new ZipEntry(name);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(bytes.length);
    entry.setCrc(sum.getValue());
    entry.setTime(new GregorianCalendar(2000, 0, 1, 0, 0).getTimeInMillis());
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }

  private static String model(Mesh mesh, String title) {
    StringBuilder s = new StringBuilder();
    s.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"millimeter\"")
        .append(" xml:lang=\"en\"")
        .append(" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n")
        .append("<metadata name=\"Title\">")
        .append(escaped(title))
        .append("</metadata>\n<resources><object id=\"1\" type=\"model\"><mesh><vertices>\n");
    for (Vec p : mesh.points()) {
      s.append("<vertex x=\"")
          .append(Numbers.fixed(p.x(), 6))
          .append("\" y=\"")
          .append(Numbers.fixed(p.y(), 6))
          .append("\" z=\"")
          .append(Numbers.fixed(p.z(), 6))
          .append("\"/>\n");
    }
    s.append("</vertices><triangles>\n");
    for (Mesh.Triangle t : mesh.triangles()) {
      s.append("<triangle v1=\"")
          .append(t.a())
          .append("\" v2=\"")
          .append(t.b())
          .append("\" v3=\"")
          .append(t.c())
          .append("\"/>\n");
    }
    return s.append("</triangles></mesh></object></resources>")
        .append("<build><item objectid=\"1\"/></build></model>\n")
        .toString();
  }

  private static String escaped(String text) {
    return text.replaceAll("[\\p{Cntrl}]", " ")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;");
  }
}
