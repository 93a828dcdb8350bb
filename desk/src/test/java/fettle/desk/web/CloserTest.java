package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The pages that look closely at one thing: they answer, follow the state, refuse nonsense. */
@SuppressWarnings("NullAway.Init")
class CloserTest {

  private static OpenDesk desk;

  @BeforeAll
  static void open() {
    desk = OpenDesk.demo();
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  @Test
  void everyLinkOfLookCloserAnswersInEveryState() {
    for (String state : List.of("as-bought", "as-it-stands", "as-planned", "everything")) {
      String page = desk.get("/lathe?state=" + state).body();
      String part = page.substring(page.indexOf("id=\"closer\""), page.indexOf("Every figure"));
      List<String> links =
          java.util.regex.Pattern.compile("href=\"([^\"]+)\"")
              .matcher(part)
              .results()
              .map(m -> m.group(1).replace("&amp;", "&"))
              .toList();
      assertThat(links).hasSizeGreaterThan(10);
      for (String link : links) {
        assertThat(desk.get(link).statusCode()).as(link).isEqualTo(200);
      }
    }
  }

  @Test
  void pagesFollowTheState() {
    assertThat(desk.get("/train?name=saddle%20drive&state=as-bought").body())
        .contains("24.313")
        .doesNotContain("24.9364");
    assertThat(desk.get("/train?name=saddle%20drive").body()).contains("24.9364");
    assertThat(desk.get("/spindle?state=as-bought").body()).contains("A bush of 34 mm");
    assertThat(desk.get("/spindle?state=as-planned").body()).contains("7007B");
    assertThat(desk.get("/clamp?name=tailstock%20clamp").body()).contains("A nut on M10");
    assertThat(desk.get("/clamp?name=tailstock%20clamp&state=as-planned").body())
        .contains("stays shut");
    assertThat(desk.get("/threads?state=everything").body()).contains("no change gears");
  }

  @Test
  void nonsenseIsRefusedWithAWayOn() {
    for (String path :
        List.of(
            "/train?name=nothing",
            "/screw?name=spindle%20drive",
            "/clamp?name=%3Cscript%3E",
            "/threads?lead=%3Cb%3E",
            "/threads?lead=-1%20mm",
            "/threads?lead=0%20mm",
            "/rigidity?force=%3Cscript%3E",
            "/rigidity?force=0",
            "/spindle?force=NaN",
            "/spindle?force=0",
            "/spindle?force=99999",
            "/gearbox?leads=0",
            "/gearbox?leads=abc",
            "/gearbox?perinch=1e9",
            "/gearbox?leads=" + "1%20".repeat(3) + "0.00001")) {
      var answer = desk.get(path);
      assertThat(answer.statusCode()).as(path).isBetween(400, 499);
      assertThat(answer.body()).as(path).contains("<h1>").doesNotContain("<script>", "<b>%");
    }
    assertThat(desk.get("/fits?fit=%3Cscript%3Ealert(1)%3C/script%3E").body())
        .contains("is no fit")
        .doesNotContain("<script>alert");
    assertThat(desk.get("/train?name=saddle%20drive&turned=-5&step=x").statusCode()).isEqualTo(200);
    assertThat(desk.get("/gearbox?wheel=99&ratio=99&kind=x").statusCode()).isEqualTo(200);
  }

  @Test
  void theTravelOfTheRackIsTheTravelOfTheFigure() {
    String page = desk.get("/train?name=saddle%20drive").body();
    assertThat(page).contains("data-travel=\"24.93");
    assertThat(page).containsPattern("data-turns=\"-0\\.333333333\"");
  }

  @Test
  void aFoundBoxIsKeptAndWrittenAsAChange() throws IOException {
    try (OpenDesk own = OpenDesk.demo()) {
      String leads = "0.5 1 2";
      String address = "/gearbox?leads=0.5%201%202&perinch=10%2020";
      String page = own.get(address).body();
      Map<String, String> form = new LinkedHashMap<>();
      form.put("token", OpenDesk.hidden(page, "token"));
      form.put("mark", OpenDesk.hidden(page, "mark"));
      form.put("leads", leads);
      form.put("perinch", "10 20");
      form.put("do", "start");
      assertThat(own.post("/gearbox", form).statusCode()).isEqualTo(303);
      Path kept = own.file(".reckoned");
      for (int i = 0; i < 200 && !own.get(address).body().contains("proven"); i++) {
        pause();
      }
      page = own.get(address).body();
      assertThat(page).contains("proven", "Thread plate", "kind: box");
      try (var files = Files.list(kept)) {
        assertThat(files).hasSize(1);
      }
      form.put("do", "keep");
      form.put("mark", OpenDesk.hidden(page, "mark"));
      assertThat(own.post("/gearbox", form).statusCode()).isEqualTo(303);
      try (var files = Files.list(own.file("changes"))) {
        String written =
            files
                .filter(f -> f.getFileName().toString().startsWith("gearbox-of-"))
                .map(CloserTest::read)
                .findFirst()
                .orElse("");
        assertThat(written).contains("kind: box", "settings: [20/127, 40/127, 80/127, 4/5, 2/5]");
      }
      assertThat(own.get("/lathe?state=everything").statusCode()).isEqualTo(200);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aSpoiltStoreCountsForNothing() throws IOException {
    try (OpenDesk own = OpenDesk.demo()) {
      Path folder = own.file(".reckoned");
      Files.createDirectories(folder);
      BoxJobs.Wish wish = new BoxJobs.Wish(List.of("1", "2"), List.of("10"));
      Path file = folder.resolve("gearbox-" + wish.mark() + ".txt");
      BoxJobs jobs = new BoxJobs(folder);
      for (String text :
          List.of(
              "",
              "cone x\n",
              "cone 1/0 2\nmultipliers 1\nconstant 1\nbound 3\nsets 1\n",
              "cone 7\nmultipliers 1\nconstant 1\nbound 3\nsets 1\n")) {
        Files.writeString(file, text);
        assertThat(jobs.kept(wish)).as(text).isEmpty();
      }
      Files.writeString(file, "cone 1 2\nmultipliers 1\nconstant 5\nbound 4\nsets 1\nproof x\n");
      assertThat(jobs.kept(wish)).isPresent();
    }
  }

  @Test
  void theClearancePageShowsAPairWhereItIsWorst() {
    String pair = "&one=saddle%20handwheel&other=cross%20handwheel";
    String page = desk.get("/clearance?state=as-it-stands" + pair).body();
    assertThat(page)
        .contains("They collide in the position shown", "Only while the cross slide is at")
        .contains("class=\"pointed\"", "class=\"hatch\"", "Forbidden positions")
        .contains("cross-screw with saddle-dial", "Work of 380 mm fits");
    String bought = desk.get("/clearance?state=as-bought" + pair).body();
    assertThat(bought).contains("Least gap 21.9", "A finger can be caught", "ISO 13854");
    String scene = desk.get("/clearance.json?state=as-it-stands" + pair).body();
    assertThat(scene).contains("\"words\":\"touch\"", "\"start\":").doesNotContain("NaN");
  }

  @Test
  void theClearancePageFollowsWhatIsHeldAndSaysWhatCannotBe() {
    String held = desk.get("/clearance?at=cross%20slide%3D60%20mm").body();
    assertThat(held).contains("value=\"cross slide=60 mm\"");
    assertThat(desk.get("/clearance?at=saddle%3D900%20mm").body())
        .contains("goes from 0 to 300 mm", "Nothing is held until this is mended");
    for (String path :
        List.of(
            "/clearance?one=%3Cscript%3E&other=x",
            "/clearance?at=%3Cscript%3Ealert(1)%3C/script%3E",
            "/clearance?across=x&up=%22%3E%3Cscript%3E",
            "/clearance?handles=with%20their%20slides&all=1",
            "/clearance?state=everything&one=chuck&other=quill&across=quill&up=quill")) {
      var answer = desk.get(path);
      assertThat(answer.statusCode()).as(path).isEqualTo(200);
      assertThat(answer.body()).as(path).doesNotContain("<script>");
    }
  }
}
