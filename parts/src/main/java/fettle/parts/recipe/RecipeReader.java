package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes a recipe of a tree of keys; finds all problems in one pass. */
public final class RecipeReader {

  /**
   * A recipe, or the reasons why there is none.
   *
   * @param recipe the recipe; null if a problem prevents it
   * @param problems what is wrong
   */
  public record Reading(@Nullable Recipe recipe, List<RecipeProblem> problems) {
    /** Keeps its own copy. */
    public Reading {
      problems = List.copyOf(problems);
    }
  }

  private RecipeReader() {}

  /** Reads a part. */
  public static Reading read(RecipeTree.Group part) {
    List<RecipeProblem> problems = new ArrayList<>();
    Keys keys = new Keys("part", "", Map.of(), problems).in("part", "", part);
    Recipe recipe = null;
    try {
      recipe = part(keys);
    } catch (IllegalArgumentException e) {
      keys.problem("", e);
    }
    return new Reading(problems.isEmpty() ? recipe : null, problems);
  }

  private static Recipe part(Keys k) {
    String name = k.text("name");
    Heading heading =
        new Heading(
            name,
            k.text("title"),
            k.has("number") ? k.text("number") : name,
            k.text("material"),
            k.number("density"),
            k.text("tolerance"),
            Finish.cut(k.number("Ra")),
            k.text("stock"),
            k.texts("notes"));
    List<String> families =
        List.of("turned", "block", "plate", "sheet", "gear", "screw", "nut", "handwheel", "dial");
    List<String> given = families.stream().filter(k::has).toList();
    if (given.size() != 1) {
      throw new IllegalArgumentException(
          "a part has exactly one of " + String.join(", ", families) + "; found " + given);
    }
    String family = given.get(0);
    if (!(k.entries.get(family) instanceof RecipeTree.Group group)) {
      throw new IllegalArgumentException(family + ": expected keys below it");
    }
    Geometry asked = GeometryReader.geometry(k);
    return family(family, heading, k.in(family, family, group)).with(asked);
  }

  private static Recipe family(String family, Heading heading, Keys f) {
    return switch (family) {
      case "turned" -> TurnedReader.turned(heading, f);
      case "block" -> PrismaticReader.block(heading, f);
      case "plate" -> PrismaticReader.plate(heading, f);
      case "sheet" -> DataReader.sheet(heading, f);
      case "gear" -> DataReader.gear(heading, f);
      case "screw" -> DataReader.screw(heading, f);
      case "nut" -> DataReader.nut(heading, f);
      case "handwheel" -> DataReader.handwheel(heading, f);
      default -> DataReader.dial(heading, f);
    };
  }
}
