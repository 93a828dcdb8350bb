package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The guide within the desk: every page is reached by its links, and none leads astray. */
@SuppressWarnings("NullAway.Init")
final class GuideRoomTest {

  private static final Pattern ARTICLE =
      Pattern.compile("<article class=\"guide\">(.*)</article>", Pattern.DOTALL);
  private static final Pattern LINK = Pattern.compile("href=\"([^\"#]+)");
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
  void everyPageIsReachedAndEveryLinkLeadsSomewhere() {
    Set<String> seen = new TreeSet<>(Set.of("/guide"));
    Deque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      String address = open.remove();
      HttpResponse<String> page = desk.get(address);
      assertThat(page.statusCode()).as(address).isEqualTo(200);
      Matcher article = ARTICLE.matcher(page.body());
      assertThat(article.find()).as(address).isTrue();
      String text = article.group(1);
      assertThat(text).as(address).contains("<h1").doesNotContain("<!--", "<img", "<script");
      Matcher link = LINK.matcher(text);
      while (link.find()) {
        assertThat(link.group(1)).as(address).startsWith("/guide");
        if (seen.add(link.group(1))) {
          open.add(link.group(1));
        }
      }
    }
    assertThat(seen).contains("/guide/tutorial", "/guide/glossary", "/guide/more/book");
    assertThat(seen).hasSizeGreaterThan(30);
  }

  @Test
  void theGuideHasItsPlaceAmongTheRoomsAndShowsTables() {
    assertThat(desk.get("/lathe").body()).contains("href=\"/guide?");
    String glossary = desk.get("/guide/glossary").body();
    assertThat(glossary).contains("aria-current=\"page\">guide</a>", "<td>banjo</td>");
    assertThat(desk.get("/guide/tutorial").body()).contains("<pre tabindex=\"0\">");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/guide/nothing",
        "/guide/..%2Fbook",
        "/guide/INDEX",
        "/guide/more/readme",
        "/guide/x.md"
      })
  void whatIsNoPageIsRefused(String address) {
    assertThat(desk.get(address).statusCode()).isBetween(400, 404);
  }
}
