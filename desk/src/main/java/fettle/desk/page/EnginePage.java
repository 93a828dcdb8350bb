package fettle.desk.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * A page of one engine: the same lathe, looked at closely.
 *
 * @param frame what frames it
 * @param lead one sentence: what is good, what is bad
 * @param states the states to choose from
 * @param path where the page lies
 * @param kept what stays asked for when the state changes
 * @param sections what it shows, in the order of the job
 */
public record EnginePage(
    Shell frame,
    String lead,
    List<LathePage.Choice> states,
    String path,
    Map<String, String> kept,
    List<Section> sections) {

  /** Returns this page for another state. */
  public String toState(String word) {
    StringBuilder to = new StringBuilder(path).append("?state=").append(coded(word));
    kept.forEach((name, value) -> to.append('&').append(name).append('=').append(coded(value)));
    return to.toString();
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  /**
   * A section.
   *
   * @param title its heading; empty for none
   * @param id where links lead
   * @param style a style of its own, such as {@code door}
   * @param blocks what it shows
   */
  public record Section(String title, String id, String style, List<Block> blocks) {}

  /** One block of a section. */
  public sealed interface Block {}

  /** Paragraphs. */
  public record Words(String style, List<String> lines) implements Block {}

  /** A picture with its caption; one that turns has a slider and a button. */
  public record Picture(Drawing drawing, String caption, Turn turn) implements Block {}

  /**
   * How a picture is set going.
   *
   * @param input what is turned; empty if nothing turns
   * @param degrees how far it is turned now
   * @param travel millimetres for each turn, as a number; empty if nothing travels
   */
  public record Turn(String input, long degrees, String travel) {
    /** Nothing turns. */
    public static final Turn STILL = new Turn("", 0, "");
  }

  /** The side elevation with its caption. */
  public record Elevation(ElevationPage picture, String caption) implements Block {}

  /** The lathe in three dimensions; its data lie at an address. */
  public record Scene(String address, String caption) implements Block {}

  /** Figures in cells. */
  public record Cells(List<Cell> cells) implements Block {}

  /** A table; the first column names its rows. */
  public record Table(String caption, List<String> heads, List<Row> rows) implements Block {}

  /** One row. */
  public record Row(String style, List<Entry> entries) {}

  /** One entry; it leads somewhere if it has an address. */
  public record Entry(String words, String href) {
    /** Returns an entry that leads nowhere. */
    public static Entry of(String words) {
      return new Entry(words, "");
    }
  }

  /** Shares of a whole as bars. */
  public record Bars(List<Share> shares) implements Block {}

  /** One share, 0 to 100. */
  public record Share(String words, double percent, String figure) {}

  /** Links. */
  public record Links(List<Shell.Link> links) implements Block {}

  /** Something to choose or to send. */
  public record Form(
      String action,
      boolean sends,
      Map<String, String> kept,
      List<Field> fields,
      List<Button> buttons)
      implements Block {}

  /** One field: with choices a list, else a text. */
  public record Field(String name, String label, String value, List<String> choices) {}

  /** A button; its value is sent under {@code do}. */
  public record Button(String value, String words, boolean main) {}

  /** A text as it will stand in a file. */
  public record Text(String text) implements Block {}

  /** Findings. */
  public record Findings(List<LathePage.Opening> findings) implements Block {}

  /** Work that goes on: asked for again every other second until it is done. */
  public record Work(String href, List<String> lines, double percent) implements Block {}
}
