package fettle.desk.web;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * How long warm pages take while twenty read at once, beside a file without any reckoning in the
 * same run. Started by hand; it reports and judges nothing.
 */
final class AnswerTimes {

  private static final int READERS = 20;
  private static final int ROUNDS = 40;
  private static final int WARMING = 25;
  private static final List<String> PAGES =
      List.of(
          "/assets/icon.svg",
          "/lathe",
          "/lathe?state=as-planned",
          "/member?name=saddle",
          "/changes?tick=quiet-drive&tick=ball-headstock",
          "/change?key=ball-headstock",
          "/figure?id=travel/saddle%20drive/travel%20per%20turn",
          "/value?file=machine.yaml&path=members.saddle.mass",
          "/history",
          "/parts",
          "/order",
          "/packs",
          "/proof",
          "/interview",
          "/guide",
          "/train?name=saddle%20drive",
          "/threads",
          "/gearbox",
          "/screw?name=cross%20feed",
          "/clamp?name=tailstock%20clamp",
          "/fits",
          "/spindle",
          "/cuts",
          "/clearance",
          "/rigidity",
          "/reckoners",
          "/reckon/rack-travel?in.z1=13&in.z2=40&in.z3=15&in.m=16%20DP");

  private AnswerTimes() {}

  /** Reads every page again and again with twenty readers and prints the times. */
  public static void main(String[] args) throws Exception {
    System.setProperty("http.maxConnections", String.valueOf(READERS));
    ExecutorService readers = Executors.newFixedThreadPool(READERS);
    try (OpenDesk desk = OpenDesk.demo()) {
      times(desk, readers, WARMING);
      Map<String, List<Double>> times = times(desk, readers, ROUNDS);
      System.out.println("| page | answers | median [ms] | 99 % [ms] | longest [ms] |");
      System.out.println("|---|---|---|---|---|");
      List<Double> pages = new ArrayList<>();
      times.forEach(
          (page, all) -> {
            print(page, all);
            if (!page.startsWith("/assets")) {
              pages.addAll(all);
            }
          });
      print("all pages", pages);
    } finally {
      readers.shutdownNow();
    }
  }

  private static void print(String page, List<Double> times) {
    Collections.sort(times);
    System.out.printf(
        "| %s | %d | %.1f | %.1f | %.1f |%n",
        page,
        times.size(),
        times.get(times.size() / 2),
        times.get((int) (times.size() * 0.99)),
        times.get(times.size() - 1));
  }

  /** Reads a page to its end over a line that is kept, as a browser does. */
  private static int answer(URI page) throws IOException {
    HttpURLConnection line = (HttpURLConnection) page.toURL().openConnection();
    try (InputStream text = line.getInputStream()) {
      text.readAllBytes();
    }
    return line.getResponseCode();
  }

  private static Map<String, List<Double>> times(OpenDesk desk, ExecutorService readers, int rounds)
      throws Exception {
    Callable<Map<String, List<Double>>> reader =
        () -> {
          Map<String, List<Double>> own = new LinkedHashMap<>();
          for (int i = 0; i < rounds; i++) {
            for (String page : PAGES) {
              long start = System.nanoTime();
              int status = answer(URI.create(desk.address(page)));
              double time = (System.nanoTime() - start) / 1e6;
              if (status != 200) {
                throw new IllegalStateException(page + " answers " + status);
              }
              own.computeIfAbsent(page, p -> new ArrayList<>()).add(time);
            }
          }
          return own;
        };
    Map<String, List<Double>> all = new LinkedHashMap<>();
    for (Future<Map<String, List<Double>>> one :
        readers.invokeAll(Collections.nCopies(READERS, reader))) {
      one.get().forEach((page, t) -> all.computeIfAbsent(page, p -> new ArrayList<>()).addAll(t));
    }
    return all;
  }
}
