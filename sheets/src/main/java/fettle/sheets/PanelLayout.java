package fettle.sheets;

import fettle.machine.dictionary.Values;
import fettle.machine.made.MadePart;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.text.Node;
import fettle.machine.topics.Panel;
import fettle.machine.topics.Wiring;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Pattern;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import fettle.sheets.template.PanelSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The layout of the control box that a change builds, with the openings its front has by recipe.
 *
 * @param change the change
 * @param panel where the devices sit
 * @param front the front; of no width if the box names none
 * @param wiring the wires
 */
public record PanelLayout(Change change, Panel panel, PanelSheet.Front front, Wiring wiring) {

  /**
   * Returns the layout that a change describes; empty if it describes none.
   *
   * @param book the book
   * @param change the change
   * @param parts parts that have a recipe, at least those of the change
   */
  public static Optional<PanelLayout> of(Book book, Change change, List<MadePart> parts) {
    boolean own =
        change.differs() instanceof Node.Mapping m && m.entries().containsKey("control box");
    if (!own) {
      return Optional.empty();
    }
    List<String> with = new ArrayList<>(book.keys(Stage::done));
    book.withNeeds(change.key()).stream().filter(k -> !with.contains(k)).forEach(with::add);
    return State.of(book, "with it", with)
        .machine()
        .flatMap(m -> m.values().block("control box"))
        .flatMap(box -> of(change, box, parts));
  }

  private static Optional<PanelLayout> of(Change change, Values box, List<MadePart> parts) {
    PanelSheet.Front front = front(box, parts);
    return Panel.of(box, Optional.of(front.openings()))
        .map(panel -> new PanelLayout(change, panel, front, Wiring.of(box)));
  }

  /**
   * Returns the front of a control box from the recipe of its sheet; of no width if there is none.
   *
   * @param box the control box
   * @param parts parts that have a recipe
   */
  public static PanelSheet.Front front(Values box, List<MadePart> parts) {
    String name = box.text("front").orElse("");
    return parts.stream()
        .filter(p -> p.name().equals(name))
        .map(MadePart::recipe)
        .filter(Folded.class::isInstance)
        .map(r -> front((Folded) r))
        .findFirst()
        .orElse(new PanelSheet.Front(0, 0, Map.of()));
  }

  /** The front is the leg with the most holes; its length goes across. */
  private static PanelSheet.Front front(Folded sheet) {
    Folded.Leg face = sheet.legs().get(0);
    for (Folded.Leg leg : sheet.legs()) {
      face = leg.holes().size() > face.holes().size() ? leg : face;
    }
    Map<String, Panel.Opening> openings = new LinkedHashMap<>();
    for (Folded.LegHoles holes : face.holes()) {
      List<Pattern.At> places = holes.pattern().places();
      for (int i = 0; i < places.size(); i++) {
        openings.put(
            places.size() == 1 ? holes.name() : holes.name() + " " + (i + 1),
            new Panel.Opening(places.get(i).u(), places.get(i).v(), holes.diameter().nominal()));
      }
    }
    return new PanelSheet.Front(face.outside().nominal(), sheet.width().nominal(), openings);
  }

  /** Returns what is wrong with the layout. */
  public List<String> wrong() {
    return panel.wrong(wiring);
  }

  /** Returns everything the sheet shows: equal texts, equal sheets. */
  public String content() {
    return change.title() + panel + front;
  }

  /** Draws the sheet and looks it over. */
  public PlanFiles files(Heads heads) {
    Sheet sheet = PanelSheet.of(change.title(), number(), heads, panel, front);
    return PlanFiles.of(sheet, wrong());
  }

  private String number() {
    return Assembly.number(change, "-BOX");
  }
}
