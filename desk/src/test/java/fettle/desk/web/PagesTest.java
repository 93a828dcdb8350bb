package fettle.desk.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Reckoner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every page in a real browser: narrow, on a tablet, wide; light and dark; with and without script.
 */
@Tag("slow")
@SuppressWarnings("NullAway.Init")
final class PagesTest {

  private static final Path PICTURES = Path.of("..", "docs", "pictures");
  private static final Path ALL_PICTURES = Path.of("target", "pictures");
  private static final List<String> SHOWN =
      List.of(
          "lathe-390",
          "lathe-820",
          "lathe-1600",
          "member-820",
          "changes-820",
          "change-1600",
          "figure-820",
          "value-820",
          "what-if-390",
          "train-820",
          "threads-820",
          "gearbox-1600",
          "spindle-820",
          "clearance-820",
          "order-820",
          "reckoner-390");
  private static final List<String> LEADS =
      List.of("0.4", "0.5", "0.6", "0.7", "0.8", "1", "1.25", "1.5", "1.75", "2", "2.5");
  private static final List<String> PER_INCH =
      List.of("10 11 12 13 14 16 18 20 24 28 32 36 40 48".split(" ", -1));
  private static final Map<String, String> PAGES = pages();
  private static Browser browser;
  private static OpenDesk desk;

  @BeforeAll
  static void open() {
    browser = Browser.open();
    desk = OpenDesk.demo();
    desk.edit("machine.yaml", "members.saddle.mass", "4.3 kg ± 0.2 kg");
    desk.write(
        ".reckoned/gearbox-" + new BoxJobs.Wish(LEADS, PER_INCH).mark() + ".txt",
        """
        cone 8/5 2 5/2 11/4 3 13/4 7/2 9/2 6
        multipliers 1 1/2 1/5
        constant 4
        bound 15
        sets 1500000
        proof 3 ratios: at least 15 wheels
        """);
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
    pages.put("lathe", "/lathe?state=as-planned");
    pages.put("member", "/member?name=cross%20handwheel");
    pages.put("changes", "/changes?tick=quiet-drive&tick=ball-headstock");
    pages.put("change", "/change?key=ball-headstock");
    pages.put("figure", "/figure?id=travel/saddle%20drive/travel%20per%20turn");
    pages.put("value", "/value?file=machine.yaml&path=members.saddle.mass&v=5%20kg");
    pages.put("what-if", "/what-if?in=trains.saddle%20drive");
    pages.put("train", "/train?name=saddle%20drive");
    pages.put("train-drive", "/train?name=spindle%20drive&step=slow,%20back%20gear%20in");
    pages.put("threads", "/threads?lead=1.25%20mm");
    pages.put("gearbox", "/gearbox?wheel=4&ratio=1");
    pages.put("screw", "/screw?name=cross%20feed");
    pages.put("clamp", "/clamp?name=tailstock%20clamp&state=as-planned");
    pages.put("fits", "/fits?state=as-planned");
    pages.put("spindle", "/spindle?state=as-planned");
    pages.put("rigidity", "/rigidity?state=as-planned");
    pages.put("rigidity-cut", "/rigidity?state=rear-toolpost&do=cut");
    pages.put("cuts", "/cuts?state=as-planned");
    pages.put(
        "clearance", "/clearance?state=as-planned&one=saddle%20handwheel&other=cross%20handwheel");
    pages.put("history", "/history");
    pages.put("parts", "/parts");
    pages.put("order", "/order?which=ideas,%20too");
    pages.put("packs", "/packs");
    pages.put("proof", "/proof");
    pages.put("interview", "/interview");
    pages.put("question", "/interview?n=20");
    pages.put("new-trial", "/new-trial?kind=test%20bar");
    pages.put("reckoners", "/reckoners");
    pages.put("guide", "/guide");
    pages.put("glossary", "/guide/glossary");
    pages.put("first-hour", "/guide/tutorial");
    pages.put("handbook", "/guide/handbook-materials");
    pages.put("reckoner", "/reckon/rack-travel?in.z1=13&in.z2=40&in.z3=15&in.m=16%20DP");
    pages.put("missing", "/nowhere");
    return pages;
  }

  @Test
  void noPageHasABarrierOrIsWiderThanTheScreen() {
    List<String> barriers = new ArrayList<>();
    Map<Integer, ColorScheme> screens = new LinkedHashMap<>();
    screens.put(360, ColorScheme.LIGHT);
    screens.put(820, ColorScheme.DARK);
    screens.put(1600, ColorScheme.LIGHT);
    screens.forEach((width, scheme) -> look(width, scheme, barriers));
    assertThat(barriers).isEmpty();
  }

  private static void look(int width, ColorScheme scheme, List<String> barriers) {
    Page page = browser.page(width, 1000, scheme);
    PAGES.forEach(
        (name, path) -> {
          page.navigate(desk.address(path));
          String where = name + " at " + width + " " + scheme + ": ";
          Browser.faults(page).forEach(f -> barriers.add(where + f));
        });
    page.context().close();
  }

  /** The pictures of the handbook are few; the others are there to be looked at. */
  private static Path picture(String name) {
    return (SHOWN.contains(name) ? PICTURES : ALL_PICTURES).resolve("desk-" + name + ".png");
  }

  @Test
  void picturesAreTakenAndTheConsoleIsSilent() {
    for (int width : List.of(390, 820, 1600)) {
      Page page = browser.page(width, width < 500 ? 844 : 1000, ColorScheme.LIGHT);
      PAGES.forEach(
          (name, path) -> {
            if (!name.equals("missing")) {
              page.navigate(desk.address(path));
              if (page.locator("details.solid[open]").count() > 0) {
                page.locator("#solid[data-drawn]").waitFor();
              }
              page.screenshot(new Page.ScreenshotOptions().setPath(picture(name + "-" + width)));
            }
          });
      page.context().close();
    }
    Page dark = browser.page(1600, 1000, ColorScheme.DARK);
    dark.navigate(desk.address("/lathe?state=as-planned"));
    dark.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve("desk-lathe-dark.png")));
    dark.context().close();
    browser.silent();
  }

  @Test
  void theLatheIsDrawnInThreeDimensionsAndFollowsTheSliders() {
    Page page = browser.page(1200, 900, ColorScheme.LIGHT);
    page.navigate(desk.address("/lathe?state=as-planned"));
    page.locator("details.solid > summary").click();
    assertThat(page.locator("#solid[data-drawn]")).isVisible();
    assertThat(page.locator("#solid canvas")).isVisible();
    page.locator("#solid")
        .screenshot(new Locator.ScreenshotOptions().setPath(PICTURES.resolve("desk-solid.png")));
    page.locator("details.moves > summary").click();
    String before = page.locator("#elevation svg").innerHTML();
    page.locator("input[data-member=saddle]").fill("250");
    page.waitForCondition(() -> !page.locator("#elevation svg").innerHTML().equals(before));
    assertThat(page.locator("label:has(input[data-member=saddle]) output")).hasText("250");
    page.context().close();
    browser.silent();
  }

  @Test
  void aTouchedPairIsShownWhereItIsWorstWithItsGapMeasured() {
    Page page = browser.page(820, 1000, ColorScheme.LIGHT);
    page.navigate(desk.address("/clearance?state=as-bought&all=1"));
    page.locator("#pairs a:has-text('chuck × quill')").first().click();
    assertThat(page.locator("#pair h2")).hasText("The chuck and the quill");
    assertThat(page.locator("#solid[data-drawn]")).isVisible();
    assertThat(page.locator("#solid .gap")).hasText("2 mm");
    assertThat(page.locator(".pointed text")).hasText("2 mm");
    page.locator("select[name=handles]").selectOption("with their slides");
    page.locator("text=Search so").click();
    assertThat(page.locator("select[name=handles]")).hasValue("with their slides");
    page.context().close();
    browser.silent();
  }

  @Test
  void aTrainTurnsUntilItIsStoppedAndStandsStillOtherwise() {
    Page page = browser.page(820, 1000, ColorScheme.LIGHT);
    page.navigate(desk.address("/train?name=saddle%20drive"));
    Locator wheel = page.locator("g.moving").nth(1);
    String still = wheel.getAttribute("transform");
    page.waitForTimeout(300);
    org.assertj.core.api.Assertions.assertThat(wheel.getAttribute("transform")).isEqualTo(still);
    page.locator("input[name=turned]").fill("90");
    assertThat(page.locator("output[data-travel]")).hasText("6.23");
    page.locator("button[data-run]").click();
    page.waitForCondition(() -> !"90".equals(page.locator("output").first().textContent()));
    page.locator("button[data-run]").click();
    String stopped = wheel.getAttribute("transform");
    page.waitForTimeout(300);
    org.assertj.core.api.Assertions.assertThat(wheel.getAttribute("transform")).isEqualTo(stopped);
    page.context().close();
    browser.silent();
  }

  @Test
  void aSearchForABoxShowsItsProgressAndCanBeStopped() {
    try (OpenDesk own = OpenDesk.demo()) {
      Page page = browser.page(820, 1000, ColorScheme.LIGHT);
      page.navigate(own.address("/gearbox"));
      page.locator("text=Find the box").click();
      assertThat(page.locator(".work")).containsText("sets so far");
      assertThat(page.locator(".work")).containsText("Running for");
      org.assertj.core.api.Assertions.assertThat(Browser.barriers(page)).isEmpty();
      page.locator("text=Stop, and keep the best found").click();
      assertThat(page.locator("#box")).isVisible();
      page.navigate(own.address("/gearbox"));
      page.locator("#box a.touch[aria-label*='notch 2']").click();
      assertThat(page.locator("#box h2")).containsText("notch 2");
      page.context().close();
      browser.silent();
    }
  }

  @Test
  void touchingAMemberGoesToWhatIsKnownOfIt() {
    Page page = browser.page(1200, 900, ColorScheme.LIGHT);
    page.navigate(desk.address("/lathe"));
    page.locator("svg.elevation a[aria-label='headstock']").first().click();
    assertThat(page.locator("h1")).hasText("headstock");
    page.locator("a.edit:has-text('11.5 kg')").click();
    assertThat(page.locator("input[name=v]")).hasValue("11.5 kg ± 0.3 kg");
    page.context().close();
    browser.silent();
  }

  @Test
  void whatIfSlidersMoveTheFiguresAndCanBeKept() {
    try (OpenDesk own = OpenDesk.demo()) {
      Page page = browser.page(820, 1100, ColorScheme.LIGHT);
      page.navigate(own.address("/what-if?in=dials.cross%20dial"));
      page.locator("input.slide[data-for='w.dials.cross dial.diameter']").fill("120");
      assertThat(page.locator("#follows")).containsText("line spacing");
      page.locator("input[name=title]").fill("A larger cross dial");
      page.locator("text=Keep it as a new change").click();
      assertThat(page.locator("h1")).hasText("A larger cross dial");
      assertThat(own.text("changes/a-larger-cross-dial.yaml")).contains("diameter: 120 mm");
      page.context().close();
      browser.silent();
    }
  }

  @Test
  void inchAndMetricAtATouch() {
    Page page = browser.page(820, 1100, ColorScheme.LIGHT);
    page.navigate(desk.address("/figure?id=capacity/lathe/centre%20height"));
    assertThat(page.locator(".large")).containsText("85 mm");
    page.locator("text=show inch").click();
    assertThat(page.locator(".large")).containsText("3.3465 in");
    page.locator("text=show metric").click();
    assertThat(page.locator(".large")).containsText("85 mm");
    page.context().close();
    browser.silent();
  }

  @Test
  void theKeyboardReachesEverything() {
    Page page = browser.page(820, 1100, ColorScheme.LIGHT);
    page.navigate(desk.address("/changes"));
    page.keyboard().press("Tab");
    assertThat(page.locator(":focus")).hasText("To the page");
    page.keyboard().press("Enter");
    page.locator("input[value=quiet-drive]").focus();
    page.keyboard().press("Space");
    assertThat(page.locator("#joint .states")).containsText("quiet-drive");
    page.context().close();
    browser.silent();
  }

  @Test
  void everyReckonerIsAPageWithALiveResult() {
    Page page = browser.page(820, 1100, ColorScheme.LIGHT);
    for (Reckoner reckoner : Reckoners.all()) {
      page.navigate(desk.address("/reckon/" + Visit.coded(reckoner.topic())));
      assertThat(page.locator("h1")).hasText(reckoner.title());
      assertThat(page.locator("form.reckon [name^='in.']")).hasCount(reckoner.inputs().size());
    }
    page.navigate(desk.address("/reckon/rack-travel"));
    page.locator("input[name='in.z1']").fill("13");
    page.locator("input[name='in.z2']").fill("40");
    page.locator("input[name='in.z3']").fill("15");
    page.locator("input[name='in.m']").fill("16 DP");
    assertThat(page.locator("#answer")).containsText("24.31298");
    String link = page.locator(".copy a").getAttribute("href");
    page.navigate(desk.address(link));
    assertThat(page.locator("#answer")).containsText("24.31298");
    page.context().close();
    browser.silent();
  }

  @Test
  void everythingIsThereWithoutScript() {
    com.microsoft.playwright.BrowserContext context = browser.withoutScript();
    Page page = context.newPage();
    page.navigate(desk.address("/changes"));
    page.locator("input[value=quiet-drive]").check();
    page.locator("text=Foresee the ticked changes together").click();
    assertThat(page.locator("#joint .states")).containsText("quiet-drive");
    page.navigate(desk.address("/lathe"));
    page.locator("details.cell summary").first().click();
    page.locator("text=How it comes about").first().click();
    assertThat(page.locator(".source")).isVisible();
    page.navigate(desk.address("/clearance"));
    assertThat(page.locator("#pairs tbody tr").first()).containsText("collide");
    assertThat(page.locator("#map .hatch")).hasCount(1);
    page.navigate(desk.address("/value?file=machine.yaml&path=members.saddle.mass"));
    page.locator("input[name=v]").fill("5 kg");
    page.locator("text=See what follows").click();
    assertThat(page.locator("#follows")).containsText("mass with all it carries");
    page.navigate(desk.address("/lathe"));
    page.locator("details.moves > summary").click();
    page.locator("input[data-member=saddle]").fill("250");
    page.locator("text=Show it so").click();
    assertThat(page.locator("input[data-member=saddle]")).hasValue("250");
    context.close();
  }

  @Test
  void thePrintIsBlackOnWhite() {
    Page page = browser.page(1000, 1000, ColorScheme.DARK);
    page.navigate(desk.address("/change?key=ball-headstock"));
    page.emulateMedia(
        new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
    assertThat(page.evaluate("getComputedStyle(document.body).backgroundColor"))
        .isEqualTo("rgb(255, 255, 255)");
    assertThat(page.locator(".rooms")).isHidden();
    page.context().close();
  }
}
