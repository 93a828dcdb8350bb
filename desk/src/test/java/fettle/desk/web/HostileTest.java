package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody with bad intentions sends, and that nothing of it gets through. */
@SuppressWarnings("NullAway.Init")
final class HostileTest {

  private static final String SCRIPT = "<script>alert(1)</script>";
  private static final String ATTRIBUTE = "\"><img src=x onerror=alert(1)>'`{{7*7}}";
  private static OpenDesk desk;

  @BeforeAll
  static void open() {
    desk = OpenDesk.demo();
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "evil.example",
        "127.0.0.1",
        "127.0.0.1.evil.example:PORT",
        "evil.example:PORT",
        "0.0.0.0:PORT",
        "localhost:1",
        "[::1]",
        "",
        "127.0.0.1:PORT@evil.example"
      })
  void aForeignHostIsRefused(String host) throws IOException {
    String head = "Host: " + host.replace("PORT", String.valueOf(desk.port())) + "\r\n";
    assertThat(raw("GET /lathe HTTP/1.1\r\n" + head + "Connection: close\r\n\r\n"))
        .matches("(?s)HTTP/1.1 (403|400) .*")
        .doesNotContain("Dunlin");
  }

  @Test
  void ourOwnNamesAreLetIn() throws IOException {
    for (String host : List.of("127.0.0.1", "localhost", "LOCALHOST", "[::1]")) {
      String head = "Host: " + host + ":" + desk.port() + "\r\nConnection: close\r\n\r\n";
      assertThat(raw("GET /lathe HTTP/1.1\r\n" + head)).startsWith("HTTP/1.1 200");
    }
  }

  @Test
  void anotherSiteMayNeitherReadNorWrite() {
    for (String origin :
        List.of("http://evil.example", "null", "https://127.0.0.1:" + desk.port())) {
      assertThat(with("Origin", origin, "/lathe.json").statusCode()).isEqualTo(403);
    }
    assertThat(with("Sec-Fetch-Site", "cross-site", "/lathe").statusCode()).isEqualTo(403);
    assertThat(with("Sec-Fetch-Site", "same-site", "/lathe").statusCode()).isEqualTo(403);
  }

  @Test
  void aFormWithoutTheTokenWritesNothing() {
    String before = desk.text("machine.yaml");
    for (String token : List.of("", "wrong", SCRIPT)) {
      Map<String, String> form =
          Map.of(
              "token", token,
              "file", "machine.yaml",
              "path", "members.saddle.mass",
              "v", "9 kg",
              "do", "write");
      assertThat(desk.post("/value", form).statusCode()).isEqualTo(403);
      assertThat(desk.post("/undo", form).statusCode()).isEqualTo(403);
      assertThat(desk.post("/history", form).statusCode()).isEqualTo(403);
      assertThat(desk.post("/what-if", form).statusCode()).isEqualTo(403);
      assertThat(desk.post("/measure", form).statusCode()).isEqualTo(403);
    }
    assertThat(desk.text("machine.yaml")).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../../etc/passwd",
        "/%2e%2e/%2e%2e/etc/passwd",
        "/assets/../../etc/passwd",
        "/assets/..%2f..%2fetc%2fpasswd",
        "/assets/%2e%2e%5c%2e%2e%5cetc",
        "/assets/desk.css%00.html",
        "/assets//etc/passwd",
        "/.history/HEAD",
        "/machine.yaml",
        "/META-INF/MANIFEST.MF",
        "/assets/desk.css/..",
        "/reckon/..%2f..",
        "//evil.example/%2f..",
        "/lathe/../../x"
      })
  void noPathLeadsOutOfTheBook(String path) throws IOException {
    String answer =
        raw(
            "GET "
                + path
                + " HTTP/1.1\r\nHost: 127.0.0.1:"
                + desk.port()
                + "\r\nConnection: close\r\n\r\n");
    assertThat(answer)
        .matches("(?s)HTTP/1.1 4\\d\\d .*")
        .doesNotContain("root:")
        .doesNotContain("ref: refs")
        .doesNotContain("centre height");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../outside.yaml",
        "/etc/passwd",
        "changes/../../outside.yaml",
        "changes/UPPER.yaml",
        "changes/a/b.yaml",
        ".history/HEAD",
        "machine.yaml\u0000",
        "changes/.yaml",
        "shop.yaml/x"
      })
  void aFormCannotNameAnotherFile(String file) {
    String page = desk.get("/value?file=machine.yaml&path=members.saddle.mass").body();
    HttpResponse<String> answer =
        desk.post(
            "/value",
            Map.of(
                "token",
                OpenDesk.hidden(page, "token"),
                "mark",
                OpenDesk.hidden(page, "mark"),
                "file",
                file,
                "path",
                "members.saddle.mass",
                "v",
                "9 kg",
                "do",
                "write"));
    assertThat(answer.statusCode()).isEqualTo(404);
  }

  @Test
  void tooMuchIsRefused() {
    String page = desk.get("/value?file=machine.yaml&path=members.saddle.mass").body();
    String token = OpenDesk.hidden(page, "token");
    String large = "x".repeat(500_000);
    assertThat(desk.post("/value", Map.of("token", token, "v", large)).statusCode()).isEqualTo(413);
    String longer = "y".repeat(30_000);
    assertThat(desk.post("/value", Map.of("token", token, "file", longer)).statusCode())
        .isEqualTo(400);
    assertThat(desk.get("/lathe?state=" + "a+".repeat(7_000)).statusCode()).isBetween(400, 431);
    assertThat(desk.get("/lathe?state=" + "a".repeat(60_000)).statusCode()).isBetween(400, 431);
    assertThat(desk.get("/lathe").statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"%", "token=%zz", "%00=%00", "token", "=&=&=", "token=a&token=b", "\u00ff\u00fe"})
  void aMalformedFormIsRefused(String body) {
    for (String type :
        List.of(
            "application/x-www-form-urlencoded",
            "multipart/form-data; boundary=x",
            "application/json",
            "text/plain",
            "application/x-www-form-urlencoded; charset=nonsense")) {
      HttpResponse<String> answer =
          desk.send(
              HttpRequest.newBuilder(URI.create(desk.address("/value")))
                  .header("Content-Type", type)
                  .POST(HttpRequest.BodyPublishers.ofString(body)));
      assertThat(answer.statusCode()).isBetween(400, 415);
      assertThat(answer.body()).doesNotContain("Exception");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "TRACE", "OPTIONS", "PATCH", "CONNECT", "FOO"})
  void otherMethodsAreRefused(String method) throws IOException {
    String head =
        " /lathe HTTP/1.1\r\nHost: 127.0.0.1:" + desk.port() + "\r\nConnection: close\r\n\r\n";
    assertThat(raw(method + head))
        .matches("(?s)HTTP/1.1 (4|5)\\d\\d .*")
        .doesNotContain("Dunlin 85,");
  }

  @Test
  void whatIsAskedComesBackAsText() {
    for (String bad : List.of(SCRIPT, ATTRIBUTE, "javascript:alert(1)")) {
      String coded = OpenDesk.coded(bad);
      for (String page :
          List.of(
              "/lathe?state=" + coded,
              "/lathe?with=" + coded,
              "/changes?tick=" + coded,
              "/member?name=" + coded,
              "/change?key=" + coded,
              "/figure?id=" + coded,
              "/value?file=" + coded + "&path=" + coded,
              "/value?file=machine.yaml&path=name&v=" + coded,
              "/value?file=machine.yaml&path=name&said=" + coded,
              "/what-if?in=" + coded,
              "/clearance?one=" + coded + "&other=" + coded + "&handles=" + coded,
              "/clearance?at=" + coded + "&across=" + coded + "&up=" + coded,
              "/clearance.json?at=" + coded,
              "/history?version=" + coded,
              "/reckon/" + coded.replace("+", "%20"),
              "/reckon/rack-travel?in.z1=" + coded + "&in.z3=15&in.m=1",
              "/" + coded.replace("+", "%20"))) {
        harmless(desk.get(page).body(), page);
      }
    }
  }

  @Test
  void theRedirectStaysHere() {
    String page = desk.get("/history").body();
    for (String back :
        List.of(
            "//evil.example",
            "https://evil.example",
            "/\\evil.example",
            "javascript:alert(1)",
            "/\r\nX-Evil: 1",
            "",
            "lathe")) {
      HttpResponse<String> answer =
          desk.post(
              "/measure",
              Map.of("token", OpenDesk.hidden(page, "token"), "unit", "inch", "back", back));
      assertThat(answer.headers().firstValue("Location")).contains("/lathe");
    }
  }

  /** Writes a script into every text of the book and looks at every page. */
  @Test
  void textFromTheBookNeverBecomesMarkup() {
    try (OpenDesk poisoned = OpenDesk.demo()) {
      for (String bad : List.of(SCRIPT, ATTRIBUTE)) {
        poison(poisoned, bad);
        for (String page : pages(poisoned)) {
          HttpResponse<String> answer = poisoned.get(page);
          assertThat(answer.statusCode()).as(page).isEqualTo(200);
          harmless(answer.body(), page);
        }
      }
    }
  }

  private static void poison(OpenDesk poisoned, String bad) {
    Opened opened = new Shelf(poisoned.file("")).open();
    Map<String, String> texts = new java.util.LinkedHashMap<>(opened.files().texts());
    int count = 0;
    List<Spot> spots = new java.util.ArrayList<>(opened.spots().all());
    java.util.Collections.reverse(spots);
    for (Spot spot : spots) {
      boolean free =
          spot.row().map(r -> r.type().equals("text") || r.type().equals("list:text")).orElse(false)
              && !List.of(
                      "needs",
                      "after",
                      "section",
                      "set",
                      "settings",
                      "uses",
                      "makes",
                      "loses",
                      "replaces")
                  .contains(spot.key().replaceFirst("\\[.*", ""));
      if (free) {
        String old = texts.getOrDefault(spot.file(), "");
        texts.put(
            spot.file(),
            fettle.machine.text.TextEdit.replace(old, spot.scalar().at(), bad).orElse(old));
        count++;
      }
    }
    assertThat(count).isGreaterThan(50);
    texts.forEach(poisoned::write);
    assertThat(new Shelf(poisoned.file("")).open().problems()).isEmpty();
  }

  private static List<String> pages(OpenDesk desk) {
    List<String> pages =
        new java.util.ArrayList<>(
            List.of(
                "/lathe",
                "/lathe?state=everything",
                "/lathe.json",
                "/changes",
                "/changes?tick=quiet-drive&tick=ball-headstock",
                "/parts",
                "/order",
                "/proof",
                "/history",
                "/member?name=bed",
                "/member?name=motor",
                "/clearance?state=everything&all=1",
                "/clearance.json",
                "/value?file=machine.yaml&path=name",
                "/value?file=machine.yaml&path=about",
                "/what-if?in=dials.cross%20dial"));
    new Shelf(desk.file(""))
        .open()
        .book()
        .changes()
        .keySet()
        .forEach(k -> pages.add("/change?key=" + k));
    return pages;
  }

  private static void harmless(String body, String page) {
    assertThat(body)
        .as(page)
        .doesNotContain("<script>alert")
        .doesNotContain("<img")
        .doesNotContain("href=\"javascript:")
        .doesNotContain("src=\"javascript:");
  }

  @Test
  void everyAnswerCarriesTheStrictPolicy() {
    for (String page : List.of("/lathe", "/nothing", "/assets/desk.js", "/lathe.json", "/")) {
      HttpResponse<String> answer = desk.get(page);
      assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
          .contains("default-src 'none'")
          .contains("script-src 'self';")
          .contains("style-src 'self';")
          .doesNotContain("unsafe");
      assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }
    String page = desk.get("/lathe").body();
    assertThat(page).doesNotContain("style=\"").doesNotContain("<style").doesNotContain("onclick");
    assertThat(page).doesNotContain("https://").doesNotContain("http://");
  }

  @Test
  void everyAnswerNamesItsKindAndIsNotKept() {
    Map<String, String> kinds =
        Map.of(
            "/lathe", "text/html",
            "/nothing", "text/html",
            "/value", "text/html",
            "/lathe.json", "application/json",
            "/assets/desk.css", "text/css",
            "/assets/desk.js", "text/javascript");
    kinds.forEach(
        (page, kind) -> {
          var headers = desk.get(page).headers();
          assertThat(headers.firstValue("Content-Type").orElse("").toLowerCase(Locale.ROOT))
              .as(page)
              .startsWith(kind)
              .contains("charset=utf-8");
          if (!page.startsWith("/assets/")) {
            assertThat(headers.firstValue("Cache-Control")).as(page).contains("no-store");
          }
          assertThat(headers.map().keySet()).noneMatch(h -> h.startsWith("access-control"));
        });
  }

  @Test
  void readingNeverWrites() {
    String page = desk.get("/value?file=machine.yaml&path=members.saddle.mass").body();
    String before = desk.text("machine.yaml");
    String form =
        OpenDesk.coded(
            Map.of(
                "token", OpenDesk.hidden(page, "token"),
                "mark", OpenDesk.hidden(page, "mark"),
                "file", "machine.yaml",
                "path", "members.saddle.mass",
                "v", "9 kg",
                "do", "write"));
    for (String address : List.of("/value", "/undo", "/history", "/what-if", "/new-trial")) {
      desk.get(address + "?" + form);
      assertThat(desk.text("machine.yaml")).as(address).isEqualTo(before);
    }
  }

  @Test
  void theTokenStandsInNoAddress() {
    String token =
        OpenDesk.hidden(
            desk.get("/value?file=machine.yaml&path=members.saddle.mass").body(), "token");
    assertThat(token).hasSizeGreaterThan(20);
    for (String page : pages(desk)) {
      assertThat(desk.get(page).body())
          .as(page)
          .doesNotContainPattern("(href|src|action)=\"[^\"]*" + token);
    }
  }

  @Test
  void oneRequestCannotBeTwo() throws IOException {
    String host = "Host: 127.0.0.1:" + desk.port() + "\r\n";
    String within = "GET /history HTTP/1.1\r\n" + host + "\r\n";
    String post = "POST /value HTTP/1.1\r\n" + host + "Connection: close\r\n";
    for (String lengths :
        List.of(
            "Content-Length: 3\r\nContent-Length: 90\r\n",
            "Content-Length: 3\r\nTransfer-Encoding: chunked\r\n",
            "Transfer-Encoding: chunked, identity\r\n",
            "Content-Length: -1\r\n",
            "Content-Length: 1e1\r\n")) {
      String answer = raw(post + lengths + "\r\n0\r\n\r\n" + within);
      assertThat(answer).as(lengths).matches("(?s)HTTP/1.1 4\\d\\d .*");
      assertThat(answer.split("HTTP/1.1 ", -1)).as(lengths).hasSize(2);
    }
  }

  @Test
  void slowRequestsHoldNobodyUp() throws IOException {
    List<Socket> slow = new java.util.ArrayList<>();
    try {
      for (int i = 0; i < 300; i++) {
        Socket socket = new Socket(java.net.InetAddress.getLoopbackAddress(), desk.port());
        slow.add(socket);
        socket
            .getOutputStream()
            .write("GET /lathe HTTP/1.1\r\nHost:".getBytes(StandardCharsets.UTF_8));
      }
      assertThat(desk.get("/lathe").statusCode()).isEqualTo(200);
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
  }

  @Test
  void onlyTheLoopbackAddressListens() throws IOException {
    for (var nets = java.net.NetworkInterface.getNetworkInterfaces(); nets.hasMoreElements(); ) {
      for (var at = nets.nextElement().getInetAddresses(); at.hasMoreElements(); ) {
        java.net.InetAddress address = at.nextElement();
        if (!address.isLoopbackAddress()) {
          org.assertj.core.api.Assertions.assertThatThrownBy(
                  () -> {
                    try (Socket socket = new Socket()) {
                      socket.connect(new java.net.InetSocketAddress(address, desk.port()), 2_000);
                    }
                  })
              .isInstanceOf(IOException.class);
        }
      }
    }
  }

  @Test
  void aLinkInTheBookIsNotFollowed() throws IOException {
    try (OpenDesk own = OpenDesk.demo()) {
      Path secret = Files.createTempFile("secret", ".yaml");
      Files.writeString(secret, "title: secret words\nreason: x\ndiffers: {}\n");
      Files.createSymbolicLink(own.file("changes/linked.yaml"), secret);
      assertThat(own.get("/changes").body()).doesNotContain("secret words");
      assertThat(own.get("/changes").statusCode()).isEqualTo(422);
    }
  }

  private static HttpResponse<String> with(String header, String value, String path) {
    return desk.send(HttpRequest.newBuilder(URI.create(desk.address(path))).header(header, value));
  }

  private static String raw(String request) throws IOException {
    try (Socket socket = new Socket(java.net.InetAddress.getLoopbackAddress(), desk.port())) {
      socket.setSoTimeout(60_000);
      OutputStream out = socket.getOutputStream();
      out.write(request.getBytes(StandardCharsets.UTF_8));
      out.flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
