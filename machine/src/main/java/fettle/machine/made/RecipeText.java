package fettle.machine.made;

import fettle.machine.text.Node;
import fettle.machine.text.Place;
import fettle.machine.text.Problem;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;
import fettle.parts.recipe.RecipeKeys;
import fettle.parts.recipe.RecipeTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Turns the text of one recipe into its tree of keys and remembers where everything stands. */
final class RecipeText {

  private static final int DEEPEST = 12;

  private final FromLathe lathe;
  private final Map<String, Place> places = new LinkedHashMap<>();
  private final Map<String, Place> features = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  RecipeText(FromLathe lathe) {
    this.lathe = lathe;
  }

  List<Problem> problems() {
    return problems;
  }

  /** Returns where a path of the tree stands, or the nearest above it. */
  Place place(String path) {
    String here = path;
    while (!places.containsKey(here) && !here.isEmpty()) {
      here = here.substring(0, Math.max(0, here.lastIndexOf('/')));
    }
    return places.getOrDefault(here, Place.file(""));
  }

  /** Returns where a feature is described, or the whole part. */
  Place feature(String name) {
    return features.getOrDefault(name, place(""));
  }

  /** Returns the tree of a part, with what the book says elsewhere put in where it is left out. */
  RecipeTree.Group part(Node.Mapping node, Map<String, RecipeTree> otherwise) {
    Map<String, RecipeTree> entries = new LinkedHashMap<>(otherwise);
    entries.putAll(group("part", "", node).entries());
    return new RecipeTree.Group(entries);
  }

  private RecipeTree.Group group(String operation, String path, Node.Mapping node) {
    places.put(path, node.at());
    Map<String, RecipeTree> entries = new LinkedHashMap<>();
    for (Map.Entry<String, Node.Entry> entry : node.entries().entrySet()) {
      String here = path.isEmpty() ? entry.getKey() : path + "/" + entry.getKey();
      Node value = entry.getValue().value();
      places.put(here, value.at());
      Optional<RecipeKeys.Key> key = RecipeKeys.key(operation, entry.getKey());
      tree(key, here, value).ifPresent(t -> entries.put(entry.getKey(), t));
    }
    if (RecipeKeys.key(operation, "name").isPresent() && !path.isEmpty()) {
      String usual = operation.replace('-', ' ') + " " + (number(path) + 1);
      entries.putIfAbsent("name", new RecipeTree.Text(usual));
      if (entries.get("name") instanceof RecipeTree.Text name) {
        features.putIfAbsent(name.text(), node.at());
      }
    }
    label(operation, entries).ifPresent(label -> features.putIfAbsent(label, node.at()));
    return operation.equals("gear")
        ? new RecipeTree.Group(GearOfPair.filled(lathe, entries, this::wrongAt))
        : new RecipeTree.Group(entries);
  }

  /** Returns how findings call a datum or a geometrical tolerance. */
  private static Optional<String> label(String operation, Map<String, RecipeTree> entries) {
    return switch (operation) {
      case "datum" -> word(entries, "letter").map(letter -> "datum " + letter);
      case "tolerance" ->
          word(entries, "what").flatMap(w -> word(entries, "on").map(on -> w + " of " + on));
      default -> Optional.empty();
    };
  }

  private static Optional<String> word(Map<String, RecipeTree> entries, String key) {
    return entries.get(key) instanceof RecipeTree.Text t ? Optional.of(t.text()) : Optional.empty();
  }

  private void wrongAt(String key, String what) {
    problems.add(new Problem(place("gear/" + key), key, "no such pair", what, ""));
  }

  /** Returns the position of an item in its list. */
  private static int number(String path) {
    int number = 0;
    for (String step : path.split("/")) {
      if (step.matches("[0-9]+")) {
        number = Integer.parseInt(step);
      }
    }
    return number;
  }

  private Optional<RecipeTree> tree(Optional<RecipeKeys.Key> key, String path, Node node) {
    if (node instanceof Node.Nothing) {
      return Optional.empty();
    } else if (key.isEmpty() || path.split("/").length > DEEPEST) {
      return Optional.of(new RecipeTree.Text(node.words()));
    }
    RecipeKeys.Key k = key.get();
    if (node instanceof Node.Mapping mapping && k.kind() == RecipeKeys.Kind.GROUP) {
      return Optional.of(group(k.choices().get(0), path, mapping));
    } else if (node instanceof Node.Listing list) {
      return Optional.of(items(k, path, list));
    } else if (node instanceof Node.Scalar scalar) {
      return scalar(k, path, scalar);
    }
    return Optional.of(new RecipeTree.Text(node.words()));
  }

  private RecipeTree items(RecipeKeys.Key key, String path, Node.Listing list) {
    List<RecipeTree> items = new ArrayList<>();
    for (int i = 0; i < list.items().size(); i++) {
      Node item = list.items().get(i);
      String here = path + "/" + i;
      places.put(here, item.at());
      if (item instanceof Node.Scalar scalar) {
        items.add(new RecipeTree.Text(scalar.text()));
      } else if (item instanceof Node.Mapping mapping) {
        items.add(item(key, here, mapping));
      } else {
        items.add(new RecipeTree.Text(item.words()));
      }
    }
    return new RecipeTree.Items(items);
  }

  private RecipeTree item(RecipeKeys.Key key, String path, Node.Mapping item) {
    List<String> choices = key.choices();
    if (choices.size() == 1 && !item.entries().containsKey(choices.get(0))) {
      return group(choices.get(0), path, item);
    }
    Map<String, RecipeTree> entries = new LinkedHashMap<>();
    for (Map.Entry<String, Node.Entry> entry : item.entries().entrySet()) {
      String here = path + "/" + entry.getKey();
      places.put(here, entry.getValue().keyAt());
      entries.put(
          entry.getKey(),
          entry.getValue().value() instanceof Node.Mapping inner
              ? group(entry.getKey(), here, inner)
              : new RecipeTree.Text(entry.getValue().value().words()));
    }
    return new RecipeTree.Group(entries);
  }

  private Optional<RecipeTree> scalar(RecipeKeys.Key key, String path, Node.Scalar scalar) {
    try {
      return Optional.of(value(key, scalar.text().strip()));
    } catch (Quantity.NotOne e) {
      wrong(path, scalar, e.expected() + ": " + key.meaning(), "");
    } catch (IllegalArgumentException e) {
      wrong(path, scalar, key.meaning(), sentence(e.getMessage()));
    }
    return Optional.of(fallback(key));
  }

  /** Returns something harmless, so that one problem does not bring another. */
  private static RecipeTree fallback(RecipeKeys.Key key) {
    return switch (key.kind()) {
      case NUMBER, COUNT, SIZE -> new RecipeTree.Figure(1);
      case THREAD -> new RecipeTree.Text("M6");
      default -> new RecipeTree.Text(key.choices().isEmpty() ? "?" : key.choices().get(0));
    };
  }

  private static String sentence(@Nullable String message) {
    String text = String.valueOf(message);
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private void wrong(String path, Node.Scalar scalar, String expected, String remedy) {
    problems.add(
        new Problem(scalar.at(), path.replace('/', '.'), scalar.words(), expected, remedy));
  }

  private RecipeTree value(RecipeKeys.Key key, String text) throws Quantity.NotOne {
    boolean reckoned = text.startsWith("=");
    String rest = reckoned ? text.substring(1).strip() : text;
    return switch (key.kind()) {
      case NUMBER, COUNT ->
          new RecipeTree.Figure(reckoned ? reckoned(rest, key.unit()) : number(rest, key.unit()));
      case SIZE -> {
        SizeText size = SizeText.of(rest);
        yield new RecipeTree.Sized(reckoned ? size.of(length(size.size())) : size.literal());
      }
      default -> new RecipeTree.Text(reckoned ? lathe.text(rest) : rest);
    };
  }

  private static double number(String text, Unit unit) throws Quantity.NotOne {
    return Quantity.parse(text, unit.dimension(), unit).value();
  }

  private double reckoned(String expression, Unit unit) {
    Reckoned value = lathe.reckon(expression, unit);
    if (value.dimension() != unit.dimension()) {
      throw new IllegalArgumentException(
          "what is reckoned is not a "
              + unit.dimension().name().toLowerCase(java.util.Locale.ROOT));
    }
    return value.value();
  }

  private Reckoned length(String expression) {
    Reckoned value = lathe.reckon(expression, Unit.MM);
    if (value.dimension() != Dimension.LENGTH) {
      throw new IllegalArgumentException("what is reckoned is not a length");
    }
    return value;
  }
}
