package fettle.desk.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;

/** The main tour in a real browser: look, tick two changes, open a number, edit, see, undo. */
final class TourTest {

  @Test
  void tour() {
    try (Browser browser = Browser.open();
        OpenDesk desk = OpenDesk.demo()) {
      String before = desk.text("changes/saddle-dial.yaml");
      Page page = browser.page(820, 1100, ColorScheme.LIGHT);
      page.navigate(desk.address("/"));
      assertThat(page.locator("h1")).hasText("Dunlin 85, as it stands");
      assertThat(Browser.barriers(page)).isEmpty();

      page.locator("nav.rooms >> text=changes").click();
      page.locator("input[value=quiet-drive]").check();
      page.locator("input[value=ball-headstock]").check();
      Locator joint = page.locator("#joint");
      assertThat(joint.locator(".states .will")).containsText("ball-headstock");
      assertThat(joint.locator(".states .will")).containsText("quiet-drive");
      assertThat(joint.locator("svg.bar").first()).isVisible();
      assertThat(Browser.barriers(page)).isEmpty();

      page.navigate(desk.address("/lathe"));
      Locator cell = page.locator("details.cell:has-text('saddle drive: travel per turn')").first();
      cell.locator("summary").click();
      assertThat(cell.locator(".formula").first()).containsText("T = z1/z2*pi*m*z3");
      assertThat(cell).containsText("24.936");
      cell.locator("a.edit:has-text('driven')").click();

      assertThat(page.locator("h1")).containsText("handwheel pair · driven");
      page.locator("input[name=v]").fill("40");
      assertThat(page.locator("#follows")).containsText("travel per turn");
      assertThat(page.locator("#follows")).containsText("24.313");
      assertThat(desk.text("changes/saddle-dial.yaml")).isEqualTo(before);
      page.locator("input[name=v]").fill("forty");
      assertThat(page.locator("#follows .stop").first()).containsText("whole number");
      page.locator("input[name=v]").fill("40");
      page.locator("text=Write it into the book").click();
      assertThat(page.locator(".notice")).containsText("Written into the book");
      assertThat(desk.text("changes/saddle-dial.yaml"))
          .isEqualTo(before.replace("driven: 39", "driven: 40"));

      page.navigate(desk.address("/lathe"));
      assertThat(page.locator("details.cell:has-text('saddle drive: travel per turn')").first())
          .containsText("24.313");
      page.locator(".tools >> text=undo").click();
      assertThat(page.locator("details.cell:has-text('saddle drive: travel per turn')").first())
          .containsText("24.936");
      assertThat(desk.text("changes/saddle-dial.yaml")).isEqualTo(before);

      page.navigate(desk.address("/what-if?in=trains.saddle%20drive"));
      Locator teeth = page.locator(".field:has(.label:text-is('handwheel pair · driven'))");
      drag(page, teeth.locator("input[type=range]"), 0.9);
      assertThat(teeth.locator("input[type=text]")).not().hasValue("39");
      assertThat(page.locator("#follows")).containsText("travel per turn");
      assertThat(page.locator("#follows svg.bar").first()).isVisible();
      assertThat(desk.text("changes/saddle-dial.yaml")).isEqualTo(before);
      page.locator("text=Let it go").click();
      assertThat(page.locator("h1")).hasText("Dunlin 85, as it stands");
      browser.silent();
    }
  }

  /** Drags a slider by hand to a share of its length. */
  private static void drag(Page page, Locator slider, double share) {
    slider.scrollIntoViewIfNeeded();
    BoundingBox box = slider.boundingBox();
    double y = box.y + box.height / 2;
    page.mouse().move(box.x + box.width / 2, y);
    page.mouse().down();
    page.mouse().move(box.x + box.width * share, y, new Mouse.MoveOptions().setSteps(8));
    page.mouse().up();
  }
}
