package fettle.desk.web;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** Writes one value after another through a desk and keeps account of what it confirmed. */
final class Load {

  private static final HttpClient CLIENT =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
  private static final int FIRST = 100;

  private final String address;
  private final Account account;

  Load(String address, Account account) {
    this.address = address;
    this.account = account;
  }

  /** What was sent and what was confirmed, place by place, over the lives of many desks. */
  static final class Account {
    private final Map<String, Integer> confirmed = new ConcurrentHashMap<>();
    private final Map<String, Integer> sent = new ConcurrentHashMap<>();
    private final AtomicInteger saves = new AtomicInteger();

    /** Returns how many writes were confirmed. */
    int saves() {
      return saves.get();
    }

    /**
     * Opens the book and looks whether it is sound, holds all that was confirmed and nothing that
     * was never sent.
     */
    void look(Path book, String after) {
      Parsed<BookFiles> read = BookFiles.read(book);
      BookFiles files = read.orThrow(() -> lost(after, read.problems()));
      Parsed<Book> sound = Book.checked(files);
      sound.orThrow(() -> lost(after, sound.problems()));
      for (Map.Entry<String, Integer> one : sent.entrySet()) {
        String place = one.getKey();
        Spot spot = Opened.of(files).spots().at(file(place), path(place)).orElseThrow();
        String text = spot.scalar().text();
        int least = confirmed.getOrDefault(place, 0);
        boolean ours = text.matches("\\d+ (kg|h)");
        int there = ours ? Integer.parseInt(text.substring(0, text.indexOf(' '))) : 0;
        if (there < least || there > one.getValue()) {
          throw new IllegalStateException(
              after + ": " + place + " says " + text + ", confirmed " + confirmed);
        }
      }
      if (saves() > 0 && new History(book.resolve(".history")).versions().isEmpty()) {
        throw new IllegalStateException(after + ": the history is empty");
      }
    }

    private static IllegalStateException lost(String after, List<Problem> problems) {
      return new IllegalStateException(after + ": the book does not open: " + problems);
    }
  }

  /** Writes until the desk is gone; ends with an exception if it answers with a fault. */
  void untilGone(String place) {
    try {
      while (true) {
        HttpResponse<String> answer = write(place);
        if (answer.statusCode() != 303 && answer.statusCode() != 409) {
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

  /** Writes the next value of a place, given as its file and its path; returns the answer. */
  HttpResponse<String> write(String place) throws IOException, InterruptedException {
    int next = Math.max(account.sent.getOrDefault(place, FIRST), FIRST) + 1;
    String query = OpenDesk.valueAt(file(place), path(place)).substring(1);
    String page = send(HttpRequest.newBuilder(URI.create(address + query))).body();
    account.sent.put(place, next);
    Map<String, String> form =
        Map.of(
            "token",
            OpenDesk.hidden(page, "token"),
            "mark",
            OpenDesk.hidden(page, "mark"),
            "file",
            file(place),
            "path",
            path(place),
            "v",
            next + (place.endsWith("mass") ? " kg" : " h"),
            "do",
            "write");
    HttpResponse<String> answer =
        send(
            HttpRequest.newBuilder(URI.create(address + "value"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(OpenDesk.coded(form))));
    if (answer.statusCode() == 303) {
      account.confirmed.put(place, next);
      account.saves.incrementAndGet();
    }
    return answer;
  }

  /** Asks for a page. */
  HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return send(HttpRequest.newBuilder(URI.create(address + path.substring(1))));
  }

  private static HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return CLIENT.send(
        request.timeout(Duration.ofSeconds(60)).build(), HttpResponse.BodyHandlers.ofString());
  }

  private static String file(String place) {
    return place.substring(0, place.indexOf(' '));
  }

  private static String path(String place) {
    return place.substring(place.indexOf(' ') + 1);
  }
}
