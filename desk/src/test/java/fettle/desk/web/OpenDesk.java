package fettle.desk.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A copy of the demo book, opened on a desk of its own. */
final class OpenDesk implements AutoCloseable {

  private static final Path DEMO = Path.of("..", "examples", "dunlin-85");

  private final Path book;
  private final Desk desk;
  private final HttpClient client = HttpClient.newHttpClient();

  private OpenDesk(Path book) {
    this.book = book;
    this.desk = Desk.start(book, 0);
  }

  static OpenDesk demo() {
    try {
      Path book = Files.createTempDirectory("fettle-desk-");
      copyDemo(book);
      return new OpenDesk(book);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Opens a book where it lies. */
  static OpenDesk of(Path book) {
    return new OpenDesk(book);
  }

  /** Copies the demo book into a folder. */
  static void copyDemo(Path to) throws IOException {
    copy(DEMO, to);
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.walkFileTree(
        from,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes a)
              throws IOException {
            Files.createDirectories(to.resolve(from.relativize(folder).toString()));
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes a) throws IOException {
            Files.copy(file, to.resolve(from.relativize(file).toString()));
            return FileVisitResult.CONTINUE;
          }
        });
  }

  Path file(String name) {
    return book.resolve(name);
  }

  String text(String name) {
    try {
      return Files.readString(file(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void write(String name, String text) {
    try {
      Files.createDirectories(file(name).getParent());
      Files.writeString(file(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String address(String path) {
    return desk.address() + path.substring(1);
  }

  int port() {
    return URI.create(desk.address()).getPort();
  }

  HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(URI.create(address(path))));
  }

  HttpResponse<String> post(String path, Map<String, String> form) {
    return send(
        HttpRequest.newBuilder(URI.create(address(path)))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(coded(form))));
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  static String coded(Map<String, String> form) {
    return form.entrySet().stream()
        .map(e -> coded(e.getKey()) + "=" + coded(e.getValue()))
        .collect(Collectors.joining("&"));
  }

  static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** Returns what a page's hidden field holds. */
  static String hidden(String page, String name) {
    Matcher m =
        Pattern.compile(
                "<form class=\"typing\".*?name=\"" + name + "\" value=\"([^\"]*)\"", Pattern.DOTALL)
            .matcher(page);
    Matcher any = Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
    return m.find() ? m.group(1) : any.find() ? any.group(1) : "";
  }

  static String valueAt(String file, String path) {
    return "/value?file=" + coded(file) + "&path=" + coded(path);
  }

  /** Writes one value through the form of its page. */
  HttpResponse<String> edit(String file, String path, String value) {
    String page = get(valueAt(file, path)).body();
    return post(
        "/value",
        Map.of(
            "token",
            hidden(page, "token"),
            "mark",
            hidden(page, "mark"),
            "file",
            file,
            "path",
            path,
            "v",
            value,
            "do",
            "write"));
  }

  HttpResponse<String> undo() {
    String page = get("/history").body();
    return post(
        "/undo",
        Map.of("token", hidden(page, "token"), "mark", hidden(page, "mark"), "back", "/lathe"));
  }

  @Override
  public void close() {
    desk.close();
  }
}
