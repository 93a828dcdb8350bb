package fettle.desk.picture;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Solid;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** The lathe's members as data for the picture in three dimensions. */
public final class Scene {

  private static final JsonFactory FACTORY = new JsonFactory();

  private Scene() {}

  /**
   * A gap to be drawn.
   *
   * @param from one end of it, seen from the member that stands
   * @param to its other end
   * @param words its size
   * @param members the two it lies between
   */
  public record Mark(Point from, Point to, String words, List<String> members) {

    /** Keeps its own copy. */
    public Mark {
      members = List.copyOf(members);
    }
  }

  /**
   * Returns the members of a lathe as JSON.
   *
   * @param machine the lathe
   * @param stand where its members stand
   * @param planned members that are drawn as planned
   * @param href where a member leads
   */
  public static String json(
      Machine machine, Stand stand, Set<String> planned, UnaryOperator<String> href) {
    return json(machine, stand, stand, planned, href, Optional.empty());
  }

  /** Writes the members where they stand, where they come from, and a gap between two of them. */
  public static String json(
      Machine machine,
      Stand from,
      Stand stand,
      Set<String> planned,
      UnaryOperator<String> href,
      Optional<Mark> mark) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      json.writeArrayFieldStart("members");
      for (Member member : machine.members().values()) {
        String leads = href.apply(member.name());
        member(json, member, from, stand, leads, planned.contains(member.name()));
      }
      json.writeEndArray();
      if (mark.isPresent()) {
        mark(json, mark.get());
      }
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void mark(JsonGenerator json, Mark mark) throws IOException {
    json.writeObjectFieldStart("gap");
    point(json, "from", mark.from());
    point(json, "to", mark.to());
    json.writeStringField("words", mark.words());
    json.writeArrayFieldStart("members");
    for (String member : mark.members()) {
      json.writeString(member);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void member(
      JsonGenerator json, Member member, Stand from, Stand stand, String href, Boolean planned)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("name", member.name());
    json.writeStringField("href", href);
    json.writeStringField("on", member.seat().on().orElse(""));
    json.writeBooleanField("planned", planned);
    point(json, "at", member.seat().at());
    json.writeStringField("motion", motion(member.seat()));
    json.writeStringField("axis", axis(member.seat()).name());
    json.writeNumberField(
        "position", Objects.requireNonNullElse(stand.positions().get(member.name()), 0.0));
    json.writeNumberField(
        "start", Objects.requireNonNullElse(from.positions().get(member.name()), 0.0));
    if (member.seat() instanceof Seat.Sliding sliding) {
      json.writeNumberField("swivel", Math.toDegrees(sliding.swivel().value()));
    }
    json.writeArrayFieldStart("solids");
    for (Solid solid : member.envelope().values()) {
      solid(json, solid);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String motion(Seat seat) {
    return seat instanceof Seat.Sliding ? "slides" : seat instanceof Seat.Turning ? "turns" : "";
  }

  private static Axis axis(Seat seat) {
    return seat instanceof Seat.Sliding s
        ? s.axis()
        : seat instanceof Seat.Turning t ? t.axis() : Axis.Z;
  }

  private static void solid(JsonGenerator json, Solid solid) throws IOException {
    json.writeStartObject();
    if (solid instanceof Solid.Box box) {
      point(json, "corner", box.corner());
      point(json, "size", box.size());
    } else if (solid instanceof Solid.Cylinder c) {
      point(json, "end", c.end());
      json.writeStringField("axis", c.axis().name());
      json.writeNumberField("diameter", c.diameter());
      json.writeNumberField("length", c.length());
    }
    json.writeEndObject();
  }

  private static void point(JsonGenerator json, String name, Point p) throws IOException {
    json.writeArrayFieldStart(name);
    json.writeNumber(p.x());
    json.writeNumber(p.y());
    json.writeNumber(p.z());
    json.writeEndArray();
  }
}
