package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;

/** A real headless browser that keeps what its console says and what it asks for elsewhere. */
final class Browser implements AutoCloseable {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final String AXE = axe();
  private static final double PATIENCE = 90_000;
  private static final String SMALL =
      """
      [...document.querySelectorAll("button, .button, select, input:not([type=hidden]), summary, .rooms a, a.open, a.edit, .links a")]
        .filter(e => e.checkVisibility() && !e.classList.contains("hidden"))
        .map(e => [e.closest("label") ?? e, e])
        .filter(([t]) => t.getBoundingClientRect().height < 47.5)
        .map(([t, e]) => e.outerHTML.slice(0, 80)).slice(0, 3).join(" | ")
      """;

  static {
    com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE);
  }

  private final Playwright playwright;
  private final com.microsoft.playwright.Browser chromium;
  private final List<String> complaints = new ArrayList<>();
  private final List<String> foreign = new ArrayList<>();

  private Browser(Playwright playwright) {
    this.playwright = playwright;
    this.chromium =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(CHROMIUM)
                    .setArgs(
                        List.of(
                            "--no-sandbox",
                            "--use-gl=angle",
                            "--use-angle=swiftshader",
                            "--enable-unsafe-swiftshader")));
  }

  /** Starts the browser, or skips the test with a plain message if there is none. */
  static Browser open() {
    Assumptions.assumeTrue(
        Files.isExecutable(CHROMIUM),
        "No browser at "
            + CHROMIUM
            + ": the pages are not looked at. Install the package chromium.");
    return new Browser(
        Playwright.create(
            new Playwright.CreateOptions()
                .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1"))));
  }

  Page page(int width, int height, ColorScheme scheme) {
    BrowserContext context =
        chromium.newContext(
            new com.microsoft.playwright.Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setColorScheme(scheme)
                .setReducedMotion(ReducedMotion.REDUCE));
    Page page = context.newPage();
    page.setDefaultTimeout(PATIENCE);
    page.onConsoleMessage(
        m -> {
          boolean wanted = page.url().endsWith("/nowhere");
          // The graphics driver and the accessibility library talk, too; that is not our page.
          boolean driver =
              List.of("GPU stall", "GL Driver Message", "Canvas2D: Multiple readback").stream()
                  .anyMatch(m.text()::contains);
          if (List.of("error", "warning").contains(m.type()) && !driver && !wanted) {
            complaints.add(page.url() + ": " + m.text());
          }
        });
    page.onPageError(e -> complaints.add(page.url() + ": " + e));
    page.onRequest(
        r -> {
          if (!r.url().startsWith("http://127.0.0.1:") && !r.url().startsWith("file:///")) {
            foreign.add(r.url());
          }
        });
    return page;
  }

  BrowserContext withoutScript() {
    return chromium.newContext(
        new com.microsoft.playwright.Browser.NewContextOptions()
            .setViewportSize(820, 1000)
            .setJavaScriptEnabled(false));
  }

  /** The console must be silent, and nothing may have been asked for elsewhere. */
  void silent() {
    assertThat(complaints).isEmpty();
    assertThat(foreign).isEmpty();
  }

  /** Returns the barriers of a page, how far it is too wide, and its targets below 48 px. */
  static List<String> faults(Page page) {
    List<String> faults = barriers(page);
    Object over = page.evaluate("document.documentElement.scrollWidth - innerWidth");
    if (((Number) over).intValue() > 0) {
      faults.add("is " + over + " px too wide");
    }
    Object small = page.evaluate(SMALL);
    if (!String.valueOf(small).isEmpty()) {
      faults.add("targets below 48 px: " + small);
    }
    return faults;
  }

  /** Returns what the accessibility library finds against WCAG 2.2, levels A and AA. */
  static List<String> barriers(Page page) {
    page.evaluate(AXE);
    Object found =
        page.evaluate(
            """
            async () => {
              const result = await axe.run(document, {
                preload: false, runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
                rules: { "target-size": { enabled: true } } });
              return result.violations.map(v =>
                v.id + ": " + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + " " + n.failureSummary).join(" | "));
            }
            """);
    List<String> barriers = new ArrayList<>();
    for (Object one : (List<?>) found) {
      barriers.add(String.valueOf(one));
    }
    return barriers;
  }

  private static String axe() {
    try (InputStream in =
        Browser.class.getResourceAsStream(
            "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")) {
      if (in == null) {
        throw new IllegalStateException("axe-core is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    chromium.close();
    playwright.close();
  }
}
