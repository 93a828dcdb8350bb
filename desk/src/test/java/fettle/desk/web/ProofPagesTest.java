package fettle.desk.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The pages of the proof room in a real browser. */
@Tag("slow")
@SuppressWarnings("NullAway.Init")
final class ProofPagesTest {

  private static final Path PICTURES = Path.of("target", "pictures");
  private static Browser browser;
  private static OpenDesk desk;

  @BeforeAll
  static void open() {
    browser = Browser.open();
    desk = OpenDesk.demo();
    // One reading is still to be taken.
    desk.write("trials/facing.csv", desk.text("trials/facing.csv").strip() + "\n4,near,\n4,far,\n");
  }

  @AfterAll
  static void close() {
    if (desk != null) {
      desk.close();
    }
    if (browser != null) {
      browser.close();
    }
  }

  private static Map<String, String> pages() {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("proof", "/proof");
    for (String trial :
        List.of(
            "cross-slide",
            "saddle-dial",
            "spindle-bar",
            "tailstock",
            "tool-post-push",
            "run-in",
            "nose-over-the-years",
            "facing")) {
      pages.put("trial-" + trial, "/trial?name=" + trial);
    }
    pages.put("readings", "/readings?name=facing");
    return pages;
  }

  @Test
  void noPageHasABarrierOrIsWiderThanTheScreen() {
    List<String> barriers = new ArrayList<>();
    Map<Integer, ColorScheme> screens = new LinkedHashMap<>();
    screens.put(390, ColorScheme.LIGHT);
    screens.put(820, ColorScheme.DARK);
    screens.put(1600, ColorScheme.LIGHT);
    screens.forEach(
        (width, scheme) -> {
          Page page = browser.page(width, 1000, scheme);
          pages()
              .forEach(
                  (name, path) -> {
                    page.navigate(desk.address(path));
                    String where = name + " at " + width + ": ";
                    Browser.faults(page).forEach(f -> barriers.add(where + f));
                    page.screenshot(
                        new Page.ScreenshotOptions()
                            .setFullPage(true)
                            .setPath(PICTURES.resolve("desk-" + name + "-" + width + ".png")));
                  });
          page.context().close();
        });
    assertThat(barriers).isEmpty();
    browser.silent();
  }

  @Test
  void readingsAreTakenOneAfterAnotherAndCanBeUndone() {
    try (OpenDesk own = OpenDesk.demo()) {
      String before = own.text("trials/facing.csv");
      Page page = browser.page(390, 844, ColorScheme.LIGHT);
      page.navigate(own.address("/readings?name=facing"));
      page.locator("text=Plan another run").click();
      assertThat(page.locator(".bench dd").first()).hasText("4");
      assertThat(page.locator(".bench dd").nth(1)).hasText("near");
      assertThat(page.locator("input[name=v]")).isFocused();
      page.keyboard().type("0.012");
      page.keyboard().press("Enter");
      assertThat(page.locator(".bench dd").nth(1)).hasText("far");
      assertThat(own.text("trials/facing.csv")).isEqualTo(before + "4,near,0.012\n4,far,\n");
      page.locator("input[name=v]").fill("0,021");
      page.locator("text=Take it").click();
      assertThat(page.locator("h1")).containsText("all readings taken");
      page.locator("text=See what they say").click();
      assertThat(page.locator("h1")).hasText("facing");
      assertThat(page.locator("main")).containsText("8 readings");
      page.locator("form[action='/undo'] button").click();
      assertThat(own.text("trials/facing.csv")).isEqualTo(before + "4,near,0.012\n4,far,\n");
      page.context().close();
      browser.silent();
    }
  }

  @Test
  void whatATrialTeachesIsTakenIntoUseAndTakenBack() {
    try (OpenDesk own = OpenDesk.demo()) {
      String figure = "/figure?id=play/cross%20feed/play%20at%20the%20slide";
      assertThat(own.get(figure).body()).contains("0.04 ± 0.015 mm");
      Page page = browser.page(820, 1000, ColorScheme.LIGHT);
      page.navigate(own.address("/trial?name=cross-slide"));
      page.locator("text=Use these values from now on").click();
      assertThat(page.locator(".notice")).containsText("learned-cross-slide");
      assertThat(page.locator("text=Use these values from now on")).hasCount(0);
      assertThat(own.text("changes/learned-cross-slide.yaml")).contains("stage: proved");
      assertThat(own.get(figure).body()).contains("0.0499 ± 0.0018 mm");
      page.locator("form[action='/undo'] button").click();
      assertThat(own.file("changes/learned-cross-slide.yaml")).doesNotExist();
      assertThat(own.get(figure).body()).contains("0.04 ± 0.015 mm");
      page.context().close();
      browser.silent();
    }
  }

  @Test
  void aWordIsNoReadingAndAFileChangedMeanwhileIsNotOverwritten() {
    try (OpenDesk own = OpenDesk.demo()) {
      String gap = own.text("trials/facing.csv") + "4,near,\n";
      own.write("trials/facing.csv", gap);
      String page = own.get("/readings?name=facing").body();
      Map<String, String> form = new LinkedHashMap<>();
      for (String key : List.of("token", "mark", "line")) {
        form.put(key, OpenDesk.hidden(page, key));
      }
      form.put("name", "facing");
      form.put("do", "take");
      form.put("v", "much");
      assertThat(own.post("/readings", form).statusCode()).isEqualTo(400);
      form.put("v", "0.02");
      own.write("trials/facing.csv", gap + "4,far,\n");
      assertThat(own.post("/readings", form).statusCode()).isEqualTo(409);
      form.put("name", "../machine");
      assertThat(own.post("/readings", form).statusCode()).isEqualTo(404);
      assertThat(own.text("trials/facing.csv")).isEqualTo(gap + "4,far,\n");
    }
  }
}
