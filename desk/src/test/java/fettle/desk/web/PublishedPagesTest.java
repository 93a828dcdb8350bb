package fettle.desk.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import fettle.desk.Links;
import fettle.desk.publish.PublicBook;
import fettle.desk.publish.Site;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The published demo book in a real browser, from disk, with the network off. */
@Tag("slow")
@SuppressWarnings("NullAway.Init")
final class PublishedPagesTest {

  private static final Path PICTURES = Path.of("target", "pictures");
  @TempDir private static Path folder;
  private static Browser browser;
  private static List<String> pages = List.of();

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    BookFiles files =
        Objects.requireNonNull(BookFiles.read(Path.of("..", "examples", "dunlin-85")).value());
    Book book = Objects.requireNonNull(Book.read(files).value());
    Site site =
        Site.of(PublicBook.of(files, book), "2026-01-15", name -> Optional.empty(), change -> {});
    assertThat(site.faults()).isEmpty();
    for (Map.Entry<String, byte[]> file : site.files().entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(Objects.requireNonNull(path.getParent()));
      Files.write(path, file.getValue());
    }
    pages = site.files().keySet().stream().filter(n -> n.endsWith(".html")).toList();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static String address(String page) {
    return folder.resolve(page).toUri().toString();
  }

  private static Page offline(int width, ColorScheme scheme) {
    Page page = browser.page(width, 1000, scheme);
    page.context().setOffline(true);
    return page;
  }

  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    assertThat(pages).hasSizeGreaterThan(12).contains("index.html", "change-gearbox.html");
    assertThat(Links.broken(folder)).isEmpty();
  }

  @Test
  void noPageHasABarrierOrIsWiderThanTheScreenAndTheConsoleIsSilent() {
    List<String> barriers = new ArrayList<>();
    Map<Integer, ColorScheme> screens =
        Map.of(360, ColorScheme.LIGHT, 820, ColorScheme.DARK, 1600, ColorScheme.LIGHT);
    screens.forEach(
        (width, scheme) -> {
          Page page = offline(width, scheme);
          for (String name : pages) {
            Response response = page.navigate(address(name));
            assertThat(response == null || response.ok()).as(name).isTrue();
            String where = name + " at " + width + " " + scheme + ": ";
            Browser.faults(page).forEach(f -> barriers.add(where + f));
            page.screenshot(
                new Page.ScreenshotOptions()
                    .setPath(PICTURES.resolve("site-" + name + "-" + width + ".png")));
          }
          page.context().close();
        });
    assertThat(barriers).isEmpty();
    browser.silent();
  }

  @Test
  void theLatheIsDrawnInThreeDimensionsFromDisk() {
    Page page = offline(1200, ColorScheme.LIGHT);
    page.navigate(address("index.html"));
    page.locator("details.solid > summary").click();
    assertThat(page.locator("#solid[data-drawn]")).isVisible();
    page.locator("svg.elevation a[aria-label='headstock']").first().click();
    assertThat(page).hasURL(java.util.regex.Pattern.compile(".*index\\.html#member-\\d+$"));
    page.context().close();
    browser.silent();
  }

  @Test
  void aFigureOpensItsWorkingWithoutScript() {
    com.microsoft.playwright.BrowserContext context = browser.withoutScript();
    context.setOffline(true);
    Page page = context.newPage();
    page.navigate(address("figures.html"));
    page.locator("details.cell:has(.formula) > summary").first().click();
    assertThat(page.locator("details[open] .formula").first()).isVisible();
    context.close();
  }
}
