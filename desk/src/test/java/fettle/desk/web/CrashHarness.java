package fettle.desk.web;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Kills desks at random moments while values are written through them, again and again on one and
 * the same book, and looks after each kill whether the book opens, whether every value that was
 * confirmed is there, and whether the history still takes new versions. Started by hand: {@code
 * kills seed}. Every third time two desks are open on the book.
 */
final class CrashHarness {

  private static final int WAITS = 1500;
  private static final int LONGEST = 1000;
  private static final List<String> PLACES =
      List.of(
          "machine.yaml members.saddle.mass",
          "machine.yaml members.headstock.mass",
          "changes/long-bed.yaml hours",
          "changes/gearbox.yaml hours");

  private final Path book;
  private final Random random;
  private final HttpClient client =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
  private final Map<String, Integer> confirmed = new ConcurrentHashMap<>();
  private final Map<String, Integer> sent = new ConcurrentHashMap<>();
  private final AtomicInteger saves = new AtomicInteger();

  private CrashHarness(Path book, long seed) {
    this.book = book;
    this.random = new Random(seed);
  }

  /** Kills as often as the first argument says; the second is the seed. */
  public static void main(String[] args) throws Exception {
    int kills = Integer.parseInt(args[0]);
    Path book = Files.createTempDirectory("fettle-crash-");
    OpenDesk.copyDemo(book);
    CrashHarness harness = new CrashHarness(book, Long.parseLong(args[1]));
    for (int kill = 1; kill <= kills; kill++) {
      harness.round(kill);
      if (kill % 10 == 0 || kill == kills) {
        System.out.println(
            kill + " kills, " + harness.saves.get() + " confirmed writes, none lost");
      }
    }
  }

  private void round(int kill) throws Exception {
    List<Process> desks = new ArrayList<>();
    List<Thread> writers = new ArrayList<>();
    try {
      for (int d = 0; d < (kill % 3 == 0 ? 2 : 1); d++) {
        Process desk = started();
        desks.add(desk);
        String address = address(desk);
        for (int w = d; w < PLACES.size(); w += kill % 3 == 0 ? 2 : 1) {
          String place = PLACES.get(w);
          Thread writer = new Thread(() -> write(address, place));
          writers.add(writer);
          writer.start();
        }
      }
      int before = saves.get();
      for (int i = 0; i < WAITS && saves.get() == before; i++) {
        Thread.sleep(20);
      }
      Thread.sleep(random.nextInt(LONGEST));
    } finally {
      desks.forEach(Process::destroyForcibly);
    }
    for (Process desk : desks) {
      desk.waitFor();
    }
    for (Thread writer : writers) {
      writer.join();
    }
    look(kill);
  }

  private Process started() throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            "fettle.desk.cli.Main",
            "desk",
            book.toString(),
            "--port",
            "0",
            "--no-browser")
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static String address(Process desk) throws IOException {
    BufferedReader out =
        new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8));
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      if (line.startsWith("http://")) {
        return line.strip();
      }
    }
    throw new IllegalStateException("the desk did not open");
  }

  /** Writes one value after another until the desk is gone. */
  private void write(String address, String place) {
    String file = place.substring(0, place.indexOf(' '));
    String path = place.substring(place.indexOf(' ') + 1);
    String unit = path.endsWith("mass") ? " kg" : " h";
    try {
      while (true) {
        int next = Math.max(sent.getOrDefault(place, 100), 100) + 1;
        String query = "value?file=" + OpenDesk.coded(file) + "&path=" + OpenDesk.coded(path);
        String page = send(HttpRequest.newBuilder(URI.create(address + query))).body();
        sent.put(place, next);
        String form =
            OpenDesk.coded(
                Map.of(
                    "token",
                    OpenDesk.hidden(page, "token"),
                    "mark",
                    OpenDesk.hidden(page, "mark"),
                    "file",
                    file,
                    "path",
                    path,
                    "v",
                    next + unit,
                    "do",
                    "write"));
        HttpResponse<String> answer =
            send(
                HttpRequest.newBuilder(URI.create(address + "value"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(form)));
        if (answer.statusCode() == 303) {
          confirmed.put(place, next);
          saves.incrementAndGet();
        } else if (answer.statusCode() != 409) {
          throw new IllegalStateException(
              place + " answers " + answer.statusCode() + answer.body());
        }
      }
    } catch (IOException e) {
      // the desk was killed
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return client.send(
        request.timeout(Duration.ofSeconds(60)).build(), HttpResponse.BodyHandlers.ofString());
  }

  private void look(int kill) {
    Parsed<BookFiles> read = BookFiles.read(book);
    BookFiles files = read.orThrow(() -> lost(kill, read.problems()));
    Parsed<Book> sound = Book.checked(files);
    sound.orThrow(() -> lost(kill, sound.problems()));
    for (Map.Entry<String, Integer> one : confirmed.entrySet()) {
      String place = one.getKey();
      String file = place.substring(0, place.indexOf(' '));
      String path = place.substring(place.indexOf(' ') + 1);
      Spot spot = Opened.of(files).spots().at(file, path).orElseThrow();
      String text = spot.scalar().text();
      int there = Integer.parseInt(text.substring(0, text.indexOf(' ')));
      if (there < one.getValue() || there > sent.getOrDefault(place, there)) {
        throw new IllegalStateException(
            "kill " + kill + ": " + place + " says " + text + ", confirmed " + confirmed);
      }
    }
    History history = new History(book.resolve(".history"));
    if (saves.get() > 0 && history.versions().isEmpty()) {
      throw new IllegalStateException("kill " + kill + ": the history is empty");
    }
  }

  private static IllegalStateException lost(int kill, List<Problem> problems) {
    return new IllegalStateException("kill " + kill + ": the book does not open: " + problems);
  }
}
