package fettle.sheets;

import fettle.machine.made.MadePart;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.parts.recipe.Turned;
import fettle.sheets.page.Heads;
import fettle.sheets.template.DialTemplate;
import fettle.sheets.template.DividingHead;
import fettle.sheets.template.PanelSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A sheet that shows no single part: the template of a dial, the layout of a control box.
 *
 * @param name name of its files, without ending
 * @param title what it shows
 * @param content everything it shows: equal texts, equal sheets
 * @param draw draws it
 */
public record BesideParts(
    String name, String title, String content, Function<Heads, PlanFiles> draw) {

  /**
   * Returns the sheets of a change beside those of its parts and its assembly.
   *
   * @param book the book
   * @param change the change
   * @param parts parts that have a recipe, at least those of the change
   */
  public static List<BesideParts> of(Book book, Change change, List<MadePart> parts) {
    List<BesideParts> sheets = new ArrayList<>();
    DividingHead head = DividingHead.of(book.shop());
    parts.stream()
        .filter(p -> p.change().equals(change.key()))
        .forEach(p -> templates(p, head, sheets));
    PanelLayout.of(book, change, parts)
        .ifPresent(
            l ->
                sheets.add(
                    new BesideParts("control-box", PanelSheet.TITLE, l.content(), l::files)));
    return sheets;
  }

  private static void templates(MadePart part, DividingHead head, List<BesideParts> sheets) {
    if (part.recipe() instanceof Turned turned) {
      for (Turned.Operation operation : turned.operations()) {
        if (operation instanceof Turned.Graduations lines) {
          sheets.add(template(part, turned, lines, head));
        }
      }
    }
  }

  private static BesideParts template(
      MadePart part, Turned turned, Turned.Graduations lines, DividingHead head) {
    Function<Heads, PlanFiles> draw =
        heads ->
            PlanFiles.of(
                DialTemplate.of(turned.heading(), heads, lines, turned.rim(lines), 0, head),
                List.of());
    return new BesideParts(
        part.key() + "-template",
        turned.heading().title() + ", template",
        part.content() + head,
        draw);
  }
}
