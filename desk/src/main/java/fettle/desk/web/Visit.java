package fettle.desk.web;

import fettle.desk.page.Cell;
import fettle.desk.page.ForecastPage;
import fettle.desk.page.LathePage;
import fettle.desk.page.Measure;
import fettle.desk.page.Shell;
import fettle.machine.state.Book;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One request: the book as it is now, the state looked at, the units preferred. */
final class Visit {

  static final String MEASURE = "fettle-measure";

  private static final Map<String, String> ROOMS = rooms();

  private final Context context;
  private final Opened opened;
  private final String token;
  private @Nullable Chosen chosen;

  Visit(Context context, Opened opened, String token) {
    this.context = context;
    this.opened = opened;
    this.token = token;
  }

  private static Map<String, String> rooms() {
    Map<String, String> rooms = new java.util.LinkedHashMap<>();
    for (String room :
        List.of("lathe", "changes", "parts", "order", "proof", "reckoners", "guide")) {
      rooms.put(room, room.equals("lathe") ? "the lathe" : room);
    }
    return java.util.Collections.unmodifiableMap(rooms);
  }

  Opened opened() {
    return opened;
  }

  Book book() {
    return opened.book();
  }

  /** Returns the state looked at. */
  Chosen chosen() {
    Chosen known = chosen;
    if (known == null) {
      known = choice();
      chosen = known;
    }
    return known;
  }

  private Chosen choice() {
    List<String> ticked = several("with");
    if (!ticked.isEmpty()) {
      return Chosen.of(opened, ticked);
    }
    return Chosen.of(opened, asked("state"));
  }

  /** Returns what was sent under a name, or nothing; never too long. */
  String asked(String name) {
    String form = context.method().name().equals("POST") ? context.formParam(name) : null;
    String value = form == null ? context.queryParam(name) : form;
    if (value == null) {
      return "";
    }
    if (value.length() > 20_000) {
      throw Refused.wrong("What was sent under '" + name + "' is too long.", "Shorten it.");
    }
    return value;
  }

  /** Tells whether anything was sent under a name, be it empty. */
  boolean asks(String name) {
    return context.queryParam(name) != null
        || (context.method().name().equals("POST") && context.formParam(name) != null);
  }

  /** Returns everything that was sent under a name. */
  List<String> several(String name) {
    List<String> all =
        Stream.concat(
                context.queryParams(name).stream(),
                context.method().name().equals("POST")
                    ? context.formParams(name).stream()
                    : Stream.empty())
            .toList();
    if (all.size() > 500) {
      throw Refused.wrong("Too much was sent under '" + name + "'.", "Choose fewer.");
    }
    return all;
  }

  /** Tells whether only the inner part of the page is wanted. */
  boolean inner() {
    return "true".equals(context.header("HX-Request"));
  }

  /** Returns what the answer depends on beside the book: address, units, and how much is wanted. */
  String address() {
    return "page|" + inner() + "|" + measure() + "|" + here();
  }

  Measure measure() {
    String cookie = context.cookie(MEASURE);
    if (cookie != null) {
      return Measure.of(cookie);
    }
    return opened.sound()
        ? opened
            .state("", List.of())
            .machine()
            .map(m -> Measure.of(m.values().needText("units")))
            .orElse(Measure.METRIC)
        : Measure.METRIC;
  }

  /** Returns the frame of a page that looks at a state. */
  Shell shell(String title, String room) {
    return shell(title, room, chosen());
  }

  /** Returns the frame of a page that looks at a state. */
  Shell shell(String title, String room, Chosen chosen) {
    String lathe = chosen.state().machine().map(m -> m.name()).orElse("");
    return shell(title, room, lathe, chosen.words(), chosen.word());
  }

  /** Returns the frame of a page that looks at no state. */
  Shell plain(String title, String room) {
    return shell(title, room, "", "", "");
  }

  private Shell shell(String title, String room, String lathe, String state, String word) {
    String query = word.isEmpty() ? "" : "state=" + coded(word);
    List<Shell.Room> rooms =
        ROOMS.entrySet().stream()
            .map(
                r ->
                    new Shell.Room(
                        r.getKey(),
                        r.getValue(),
                        "/" + r.getKey() + (query.isEmpty() ? "" : "?" + query),
                        r.getKey().equals(room)))
            .toList();
    String here = context.method().name().equals("GET") ? here() : "/" + room;
    return new Shell(
        title,
        lathe,
        rooms,
        state,
        word,
        query,
        here,
        measure() == Measure.INCH,
        token,
        opened.mark());
  }

  private String here() {
    String query = context.queryString();
    return context.path() + (query == null || query.isEmpty() ? "" : "?" + query);
  }

  static String query(Chosen chosen) {
    return "state=" + coded(chosen.word());
  }

  /** Writes a text so that it may stand in an address. */
  static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  /** Returns the address where a figure opens. */
  static String figure(String id, Chosen chosen) {
    return "/figure?id=" + coded(id) + "&" + query(chosen);
  }

  /** Returns the address where a value opens. */
  static String value(Spot spot, Chosen chosen) {
    return "/value?file="
        + coded(spot.file())
        + "&path="
        + coded(spot.path())
        + "&"
        + query(chosen);
  }

  Cell cell(Figure figure, Chosen chosen) {
    return Cell.of(figure, measure(), figure(figure.id(), chosen));
  }

  static LathePage.Opening opening(Finding f, Chosen chosen, Measure measure) {
    return new LathePage.Opening(
        ForecastPage.FindingLine.of(f, measure),
        f.figure().isEmpty() ? "" : figure(f.figure(), chosen));
  }
}
