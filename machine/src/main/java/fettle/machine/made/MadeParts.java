package fettle.machine.made;

import fettle.machine.dictionary.Values;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.text.Nearest;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import fettle.parts.check.Doubt;
import fettle.parts.check.Limits;
import fettle.parts.check.RecipeCheck;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.RecipeProblem;
import fettle.parts.recipe.RecipeReader;
import fettle.parts.recipe.RecipeTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads the parts of a book. The sizes of a part that refer to the lathe are taken from the lathe
 * as it stands once the part's change is made.
 */
public final class MadeParts {

  private final Book book;
  private final List<Problem> problems = new ArrayList<>();
  private final List<MadePart> parts = new ArrayList<>();

  private MadeParts(Book book) {
    this.book = book;
  }

  /** Reads all parts that have a recipe, in the book's order, and finds all that is wrong. */
  public static Parsed<List<MadePart>> of(Book book) {
    return of(book, List.copyOf(book.changes().keySet()));
  }

  /** Reads the parts of some changes. */
  public static Parsed<List<MadePart>> of(Book book, List<String> changes) {
    MadeParts reading = new MadeParts(book);
    book.changes().values().stream()
        .filter(c -> changes.contains(c.key()))
        .forEach(reading::change);
    return reading.problems.isEmpty()
        ? Parsed.good(List.copyOf(reading.parts))
        : Parsed.bad(reading.problems);
  }

  private void change(Change change) {
    assembly(change);
    Map<String, Values> drawn = new LinkedHashMap<>(change.values().map("parts"));
    drawn.values().removeIf(v -> !v.has("recipe"));
    if (drawn.isEmpty()) {
      return;
    }
    List<String> keys = new ArrayList<>(book.keys(Stage::done));
    keys.addAll(book.withNeeds(change.key()));
    State state = State.of(book, change.key(), keys);
    if (state.machine().isEmpty()) {
      problems.addAll(state.problems());
      return;
    }
    FromLathe lathe = new FromLathe(state.machine().get(), book.shop());
    drawn.forEach((name, values) -> part(change, name, values, lathe));
  }

  /** Refuses an assembly of things that the change neither makes nor buys. */
  private void assembly(Change change) {
    List<String> known = new ArrayList<>(change.values().map("parts").keySet());
    known.addAll(change.values().map("purchases").keySet());
    for (String name : change.values().texts("assembly")) {
      if (!known.contains(name)) {
        problems.add(
            new Problem(
                change.values().place("assembly"),
                "assembly",
                "'" + name + "'",
                "a part or a purchase of this change",
                Nearest.hint(name, known)));
      }
    }
  }

  private void part(Change change, String name, Values values, FromLathe lathe) {
    String key = values.needText("recipe");
    Node node = book.recipes().get(key);
    if (!(node instanceof Node.Mapping mapping)) {
      problems.add(
          new Problem(
              values.place("recipe"),
              "parts." + name + ".recipe",
              "'" + key + "'",
              "the name of a file in the folder parts, without .yaml",
              Nearest.hint(key, book.recipes().keySet())));
      return;
    }
    RecipeText text = new RecipeText(lathe);
    RecipeTree.Group tree = text.part(mapping, heading(key, values));
    if (!text.problems().isEmpty()) {
      problems.addAll(text.problems());
      return;
    }
    RecipeReader.Reading reading = RecipeReader.read(tree);
    for (RecipeProblem p : reading.problems()) {
      problems.add(
          new Problem(text.place(p.path()), p.path().replace('/', '.'), "this", p.what(), ""));
    }
    Recipe recipe = reading.recipe();
    if (recipe != null) {
      parts.add(
          new MadePart(
              change.key(), name, key, values, recipe, content(tree), remarks(text, recipe)));
    }
  }

  private List<Remark> remarks(RecipeText text, Recipe recipe) {
    List<Remark> remarks = new ArrayList<>();
    for (Doubt doubt : RecipeCheck.of(recipe, Limits.usual())) {
      remarks.add(new Remark(text.feature(doubt.feature()), doubt));
      if (doubt.rank() == Doubt.Rank.STOP) {
        problems.add(
            new Problem(
                text.feature(doubt.feature()),
                doubt.feature(),
                "a part that cannot be made",
                doubt.what(),
                ""));
      }
    }
    return remarks;
  }

  private static Map<String, RecipeTree> heading(String key, Values values) {
    Map<String, RecipeTree> all = new LinkedHashMap<>();
    all.put("name", new RecipeTree.Text(key));
    Optional<String> material = values.text("material");
    material.ifPresent(m -> all.put("material", new RecipeTree.Text(m)));
    material
        .flatMap(Materials::find)
        .map(Material::properties)
        .map(p -> p.get(Property.RHO))
        .ifPresent(rho -> all.put("density", new RecipeTree.Figure(rho.value())));
    values.text("stock").ifPresent(s -> all.put("stock", new RecipeTree.Text(s)));
    return all;
  }

  /** Returns a tree as text with its keys in order. */
  static String content(RecipeTree tree) {
    if (tree instanceof RecipeTree.Group group) {
      return new TreeMap<>(group.entries())
          .entrySet().stream()
              .map(e -> e.getKey() + "=" + content(e.getValue()))
              .collect(Collectors.joining(";", "{", "}"));
    } else if (tree instanceof RecipeTree.Items items) {
      return items.items().stream()
          .map(MadeParts::content)
          .collect(Collectors.joining(",", "[", "]"));
    }
    return tree.toString();
  }
}
