package fettle.parts.recipe;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The keys of one operation; problems are noted, and something harmless is given instead. */
final class Keys {

  final String operation;
  final String path;
  final Map<String, RecipeTree> entries;
  private final List<RecipeProblem> problems;

  Keys(
      String operation,
      String path,
      Map<String, RecipeTree> entries,
      List<RecipeProblem> problems) {
    this.problems = problems;
    this.operation = operation;
    this.path = path;
    this.entries = entries;
  }

  String at(String key) {
    return path.isEmpty() ? key : path + "/" + key;
  }

  boolean has(String key) {
    return entries.containsKey(key);
  }

  private RecipeKeys.Key known(String key) {
    return RecipeKeys.key(operation, key)
        .orElseThrow(() -> new IllegalStateException(operation + " has no key " + key));
  }

  void wrong(String key, String expected) {
    problems.add(new RecipeProblem(at(key), "expected " + expected + ": " + known(key).meaning()));
  }

  double number(String key) {
    RecipeKeys.Key k = known(key);
    RecipeTree t = entries.get(key);
    if (t instanceof RecipeTree.Figure n) {
      return n.value();
    } else if (t instanceof RecipeTree.Sized s) {
      return s.size().nominal();
    }
    String standard = k.standard();
    if (t == null && standard != null && !standard.isEmpty()) {
      return k.unit().toCoherent(Double.parseDouble(standard));
    } else if (t == null && !k.required()) {
      return 0;
    }
    wrong(key, k.unit().symbol().isEmpty() ? "a number" : "a number in " + k.unit().symbol());
    return 1;
  }

  double orThrough(String key) {
    return has(key) ? number(key) : HoleForm.THROUGH;
  }

  int count(String key) {
    double value = number(key);
    if (value != Math.rint(value) || Math.abs(value) > 1e6) {
      wrong(key, "a whole number");
      return 1;
    }
    return (int) value;
  }

  Size size(String key) {
    RecipeTree t = entries.get(key);
    if (t instanceof RecipeTree.Sized s) {
      return s.size();
    } else if (t instanceof RecipeTree.Figure n && n.value() >= 0 && n.value() < 1e5) {
      return Size.of(n.value());
    } else if (t == null && !known(key).required()) {
      return Size.of(0);
    }
    wrong(key, "a size in mm, with a zone such as H7 if it is a fit");
    return Size.of(1);
  }

  String text(String key) {
    RecipeTree t = entries.get(key);
    if (t instanceof RecipeTree.Text s) {
      return s.text();
    } else if (t instanceof RecipeTree.Figure n) {
      return Numbers.significant(n.value(), 12);
    }
    String standard = known(key).standard();
    if (t == null && (standard != null || !known(key).required())) {
      return standard == null ? "" : standard;
    }
    wrong(key, "a text");
    return "";
  }

  String word(String key) {
    String word = text(key);
    List<String> choices = known(key).choices();
    if (!word.isEmpty() && !choices.contains(word)) {
      wrong(key, "one of " + String.join(", ", choices) + " instead of '" + word + "'");
      return choices.get(0);
    }
    return word;
  }

  <E extends Enum<E>> E one(Class<E> type, String key) {
    String word = word(key);
    if (word.isEmpty()) {
      wrong(key, "one of " + String.join(", ", known(key).choices()));
      word = known(key).choices().get(0);
    }
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
  }

  @Nullable ScrewThread thread(String key) {
    if (!has(key) && known(key).standard() == null) {
      if (known(key).required()) {
        wrong(key, "a thread such as M8 or Tr 14x3 LH");
      }
      return null;
    }
    try {
      return ScrewThread.parse(text(key));
    } catch (IllegalArgumentException e) {
      problem(at(key), e);
      return null;
    }
  }

  Finish finish() {
    double roughness = has("Ra") ? number("Ra") : 0;
    Finish.Making making =
        has("Ra") && !has("made") ? Finish.Making.CUT : one(Finish.Making.class, "made");
    return new Finish(making, roughness);
  }

  List<String> texts(String key) {
    List<String> all = new ArrayList<>();
    if (entries.get(key) instanceof RecipeTree.Items items) {
      for (RecipeTree t : items.items()) {
        if (t instanceof RecipeTree.Text s) {
          all.add(s.text());
        } else {
          wrong(key, "texts");
        }
      }
    } else if (entries.get(key) instanceof RecipeTree.Text s) {
      all.add(s.text());
    } else if (has(key)) {
      wrong(key, "texts");
    }
    return all;
  }

  /** Reads what stands under a key item by item; a bad item is noted and left out. */
  <T> List<T> groups(String key, Function<Keys, T> make) {
    List<T> all = new ArrayList<>();
    RecipeTree t = entries.get(key);
    if (t == null) {
      if (known(key).required()) {
        wrong(key, "a list");
      }
      return all;
    }
    if (!(t instanceof RecipeTree.Items items)) {
      wrong(key, "a list");
      return all;
    }
    for (int i = 0; i < items.items().size(); i++) {
      Keys inner = item(key, i, items.items().get(i));
      if (inner != null) {
        try {
          all.add(make.apply(inner));
        } catch (IllegalArgumentException e) {
          problem(inner.path, e);
        }
      }
    }
    return all;
  }

  private @Nullable Keys item(String key, int i, RecipeTree tree) {
    List<String> allowed = known(key).choices();
    String where = at(key) + "/" + i;
    if (!(tree instanceof RecipeTree.Group group)) {
      problems.add(new RecipeProblem(where, "expected " + String.join(", ", allowed)));
      return null;
    }
    if (allowed.size() == 1 && !group.entries().containsKey(allowed.get(0))) {
      return in(allowed.get(0), where, group);
    }
    if (group.entries().size() == 1) {
      Map.Entry<String, RecipeTree> only = group.entries().entrySet().iterator().next();
      if (allowed.contains(only.getKey()) && only.getValue() instanceof RecipeTree.Group inner) {
        return in(only.getKey(), where + "/" + only.getKey(), inner);
      }
    }
    problems.add(
        new RecipeProblem(
            where, "expected one of " + String.join(", ", allowed) + " with its keys below it"));
    return null;
  }

  /** Returns the keys of a group below; notes keys that the operation does not know. */
  Keys in(String operation, String path, RecipeTree.Group group) {
    Keys keys = new Keys(operation, path, group.entries(), problems);
    List<String> known = RecipeKeys.of(operation).stream().map(RecipeKeys.Key::key).toList();
    for (String key : group.entries().keySet().stream().sorted().toList()) {
      if (!known.contains(key)) {
        problems.add(
            new RecipeProblem(
                keys.at(key),
                operation + " knows no such key; it knows " + String.join(", ", known)));
      }
    }
    return keys;
  }

  /** Notes what is wrong at a place. */
  void problem(String path, IllegalArgumentException e) {
    String message = e.getMessage();
    problems.add(new RecipeProblem(path, message == null ? "cannot be read" : message));
  }
}
