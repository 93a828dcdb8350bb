package fettle.desk.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import fettle.desk.cli.Main;
import fettle.desk.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole job on a lathe of its own, in inches, as somebody does it who has the program since
 * this morning: from an empty folder to a proved change, an issued pack and published pages.
 */
@Tag("slow")
final class WalkTest {

  private static final Path PICTURES = Path.of("..", "docs", "pictures");
  private static final String KEY = "coarser-cross-screw";
  private static final String FILE = "changes/" + KEY + ".yaml";

  /** What the owner types into the change's file with a text editor. */
  private static final String TYPED =
      """
      parts:
        screw: {what: Screw with ten threads to the inch., material: C45, stock: bar 5/8 in, recipe: cross-screw, price: 6 EUR}
      steps:
        turn: {do: Turn the screw., hours: 4 h, lathe: used, makes: [screw]}
        fit: {do: Fit the screw and set the dial., hours: 1 h, lathe: down, after: [turn]}
      caution:
        - Keep fingers out of the slide while the screw is tried.
      """;

  private static final String RECIPE =
      """
      title: Cross screw
      number: HER-CS-01
      turned:
        outside:
          - cylinder: {name: wheel seat, diameter: 1/4 in h6, length: 0.75 in, start-chamfer: 0.02 in, Ra: 0.8 µm}
          - cylinder: {name: bearing seat, diameter: 5/16 in f7, length: 1 in, Ra: 0.8 µm}
          - cylinder: {name: collar, diameter: 9/16 in, length: 0.2 in}
          - cylinder: {name: screw thread, diameter: 1/2 in, length: = trains.cross feed.elements.screw.length, thread: = trains.cross feed.elements.screw.thread, end-chamfer: 0.06 in}
      """;

  @TempDir private Path folder;
  private int pictures;

  private static String told(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream both = new PrintStream(out, true, StandardCharsets.UTF_8);
    int status = Main.run(args, new Terminal(both, both, 100, Terminal.Inks.PLAIN));
    String text = out.toString(StandardCharsets.UTF_8);
    assertThat(status).as(text).isZero();
    return text;
  }

  private void picture(Page page, String name) {
    pictures++;
    assertThat(Browser.barriers(page)).isEmpty();
    page.screenshot(
        new Page.ScreenshotOptions()
            .setPath(PICTURES.resolve("walk-" + pictures + "-" + name + ".png")));
  }

  @Test
  void fromAnEmptyFolderToAPublishedChange() throws IOException {
    Path book = folder.resolve("heron");
    assertThat(told("new", book.toString(), "--like", "mini-inch"))
        .contains("asks for your lathe's sizes one by one");
    try (Browser browser = Browser.open();
        OpenDesk desk = OpenDesk.of(book)) {
      Page page = browser.page(820, 1100, ColorScheme.LIGHT);
      described(page, desk);
      thoughtOf(page, desk);
      writtenDown(page, desk);
      proved(page, desk);
      issued(page, desk);
      browser.silent();
      page.context().close();
      published(browser, book);
    }
  }

  private void described(Page page, OpenDesk desk) {
    page.navigate(desk.address("/"));
    picture(page, "first-look");
    page.locator("text=Describe this lathe, question by question").click();
    page.locator("text=Begin with the first of").click();
    answer(page, "Heron 4");
    assertThat(page.locator("h1")).containsText("centre height");
    picture(page, "question");
    page.locator("text=All questions").click();
    page.locator("div:has(> dt:text('members · saddle · length')) a").click();
    answer(page, "4 1/4 in");
    assertThat(desk.text("machine.yaml")).contains("name: Heron 4").contains("length: 4 1/4 in");
    page.locator("text=All questions").click();
    page.locator("div:has(> dt:text('members · cross slide · mass')) a").click();
    page.locator("button:has-text('Leave it at')").click();
    page.locator("text=All questions").click();
    assertThat(page.locator("main")).containsText("Worth finding out first");
    picture(page, "what-is-not-known");
  }

  private static void answer(Page page, String words) {
    page.locator("input[name=v]").fill(words);
    page.locator("text=That is it").click();
  }

  private void thoughtOf(Page page, OpenDesk desk) {
    page.locator("nav.rooms >> text=changes").click();
    page.locator("summary:has-text('think of a new change')").click();
    page.locator("text=what if the cross feed were different?").click();
    field(page, "screw · thread").fill("1/2-10 Acme LH");
    assertThat(page.locator("#follows")).containsText("travel per turn");
    field(page, "lines").fill("100");
    page.locator("input[name=title]").fill("Coarser cross screw");
    assertThat(page.locator("#follows")).containsText("0.1 in");
    picture(page, "what-if");
    page.locator("text=Keep it as a new change").click();
    assertThat(page.locator("h1")).hasText("Coarser cross screw");
    assertThat(desk.text(FILE)).contains("1/2-10 Acme LH").contains("lines: 100");
  }

  private static Locator field(Page page, String label) {
    return page.locator(".field:has(.label:text-matches('(^|· )" + label + "$')) input[type=text]")
        .first();
  }

  private void writtenDown(Page page, OpenDesk desk) throws IOException {
    Files.writeString(desk.file(FILE), TYPED, StandardOpenOption.APPEND);
    desk.write("parts/cross-screw.yaml", RECIPE);
    page.reload();
    assertThat(page.locator("main")).containsText("Screw with ten threads to the inch.");
    picture(page, "change");
    write(page, desk, "stage", "planned");
    assertThat(desk.text(FILE)).contains("stage: planned");
    page.locator("nav.rooms >> text=order").click();
    assertThat(page.locator("main")).containsText("turn");
    picture(page, "order");
  }

  private static void write(Page page, OpenDesk desk, String path, String word) {
    page.navigate(desk.address(OpenDesk.valueAt(FILE, path)));
    page.locator("select[name=v]").selectOption(word);
    page.locator("text=Write it into the book").click();
    assertThat(page.locator(".notice")).containsText("Written into the book");
  }

  private void proved(Page page, OpenDesk desk) {
    write(page, desk, "stage", "fitted");
    page.navigate(desk.address("/change?key=" + KEY));
    page.locator("text=Lay out a trial that proves it").click();
    page.locator("a:has-text('dial: a dial against')").click();
    page.locator("input[name='say.what']").fill("Cross dial against an indicator");
    page.locator("select[name='say.proves']").selectOption(KEY);
    page.locator("select[name='say.train']").selectOption("cross feed");
    page.locator("select[name='say.dial']").selectOption("cross dial");
    page.locator("input[name='at.run']").fill("2");
    page.locator("input[name='at.turns']").fill("0 to 2 by 0.5");
    page.locator("text=Lay it out and take readings").click();
    picture(page, "reading");
    int taken = 0;
    while (page.locator("input[name=v]").count() > 0) {
      String place = page.locator(".bench dl").innerText();
      page.locator("input[name=v]").fill(reading(place, taken));
      page.locator("text=Take it").click();
      taken++;
      assertThat(taken).isLessThan(100);
    }
    assertThat(taken).isEqualTo(20);
    page.locator("text=See what they say").click();
    assertThat(page.locator("main")).containsText("20 readings");
    assertThat(page.locator("main")).containsText("0.10000");
    assertThat(desk.text("trials/cross-dial-against-an-indicator.csv")).contains("position_in");
    picture(page, "trial");
    write(page, desk, "stage", "proved");
  }

  /** An indicator that reads ten turns to the inch, a little play and a little scatter. */
  private static String reading(String place, int taken) {
    double turns = Double.parseDouble(place.replaceAll("(?s).*turns\\s+([0-9.]+).*", "$1"));
    double play = place.contains("back") ? 0.006 : 0;
    double scatter = (taken * 7 % 5 - 2) * 0.0001;
    return String.format(java.util.Locale.ROOT, "%.4f", turns / 10 + play + scatter);
  }

  private void issued(Page page, OpenDesk desk) {
    page.navigate(desk.address("/packs"));
    page.locator("form:has(input[value='" + KEY + "']) button:has-text('Issue it')").click();
    assertThat(page.locator("#" + KEY)).containsText("revision A issued");
    assertThat(desk.file(".issued/" + KEY + "/pack.pdf")).exists();
    picture(page, "packs");
  }

  private void published(Browser browser, Path book) {
    Path site = folder.resolve("site");
    told("publish", book.toString(), "--out", site.toString());
    Page page = browser.page(820, 1100, ColorScheme.LIGHT);
    page.navigate(site.resolve("index.html").toUri().toString());
    picture(page, "published");
    page.locator("a:has-text('Coarser cross screw')").first().click();
    assertThat(page.locator("h1")).containsText("Coarser cross screw");
    assertThat(page.locator("main")).containsText("The plan pack");
    picture(page, "published-change");
    browser.silent();
  }
}
