package fettle.machine.made;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Nearest;
import fettle.machine.text.Quantity;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Study;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.bearings.BoundaryDimensions;
import fettle.mechanics.bearings.Designation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reckons what a recipe takes from the lathe: a sum of terms joined by {@code + - * /} between
 * blanks, where a term is a quantity, the path of a value ({@code members.saddle.length}), a size
 * of a rolling bearing ({@code bore of bearing spindle.front}, {@code outside of bearing 7001B},
 * {@code width of bearing …}), or a figure of the forecast ({@code figure travel/saddle
 * drive/travel per turn}).
 */
final class FromLathe {

  private static final Pattern JOINT = Pattern.compile("\\s+([-+*/])\\s+");
  private static final Pattern BEARING = Pattern.compile("(bore|outside|width) of bearing (.+)");
  private static final String FIGURE = "figure ";

  private final Machine machine;
  private final Supplier<Study> study;

  FromLathe(Machine machine, Optional<Values> shop) {
    this.machine = machine;
    this.study = () -> Topics.study(machine, shop);
  }

  /**
   * Reckons an expression.
   *
   * @throws IllegalArgumentException if it refers to nothing, or joins what does not fit
   */
  Reckoned reckon(String expression, Unit unit) {
    List<String> signs = new ArrayList<>();
    List<Reckoned> terms = new ArrayList<>();
    Matcher joint = JOINT.matcher(expression);
    int from = 0;
    while (joint.find()) {
      add(term(expression.substring(from, joint.start()), unit), signs, terms);
      signs.add(joint.group(1));
      from = joint.end();
    }
    add(term(expression.substring(from), unit), signs, terms);
    Reckoned sum = terms.get(0);
    for (int i = 0; i < signs.size(); i++) {
      sum = sum.join(signs.get(i), terms.get(i + 1));
    }
    return sum;
  }

  /** Adds a term; products and quotients are drawn together at once. */
  private static void add(Reckoned term, List<String> signs, List<Reckoned> terms) {
    String last = signs.isEmpty() ? "+" : signs.get(signs.size() - 1);
    if (last.equals("*") || last.equals("/")) {
      signs.remove(signs.size() - 1);
      terms.add(terms.remove(terms.size() - 1).join(last, term));
    } else {
      terms.add(term);
    }
  }

  private Reckoned term(String text, Unit unit) {
    String term = text.strip();
    Optional<Reckoned> literal = literal(term, unit);
    if (literal.isPresent()) {
      return literal.get();
    }
    Matcher bearing = BEARING.matcher(term);
    if (bearing.matches()) {
      return bearing(bearing.group(1), bearing.group(2).strip());
    } else if (term.startsWith(FIGURE)) {
      return figure(term.substring(FIGURE.length()).strip());
    }
    Object found = value(term);
    if (found instanceof Quantity quantity) {
      return Reckoned.of(quantity);
    } else if (found instanceof Integer count) {
      return Reckoned.plain(count);
    }
    throw new IllegalArgumentException("'" + term + "' is not a number of the lathe");
  }

  private static Optional<Reckoned> literal(String term, Unit unit) {
    return literal(term, unit, unit.dimension()).or(() -> literal(term, unit, Dimension.NUMBER));
  }

  private static Optional<Reckoned> literal(String term, Unit unit, Dimension kind) {
    try {
      return Optional.of(Reckoned.of(Quantity.parse(term, kind, unit)));
    } catch (Quantity.NotOne e) {
      return Optional.empty();
    }
  }

  private Reckoned bearing(String size, String which) {
    Optional<Values> block = block(which);
    Designation designation = Designation.parse(block.map(b -> b.needText("type")).orElse(which));
    BoundaryDimensions outside = designation.boundary();
    if (outside == null) {
      throw new IllegalArgumentException("the sizes of bearing '" + which + "' are not known");
    }
    double value =
        switch (size) {
          case "bore" -> outside.bore();
          case "outside" -> outside.outside();
          default -> outside.width();
        };
    String fit = size.equals("bore") ? "shaft fit" : "housing fit";
    String zone = size.equals("width") ? "" : block.flatMap(b -> b.text(fit)).orElse("");
    return new Reckoned(value, Dimension.LENGTH, zone);
  }

  private Optional<Values> block(String path) {
    return path.contains(".") && value(path) instanceof Values block && block.has("type")
        ? Optional.of(block)
        : Optional.empty();
  }

  private Reckoned figure(String id) {
    List<Figure> figures = study.get().figures();
    for (Figure figure : figures) {
      if (figure.id().equals(id) && figure.working().isPresent()) {
        Working working = figure.working().get();
        return new Reckoned(working.value(), working.unit().dimension(), "");
      }
    }
    List<String> ids = figures.stream().map(Figure::id).toList();
    throw new IllegalArgumentException("no figure '" + id + "'. " + Nearest.hint(id, ids));
  }

  /** Returns the text, thread or designation at a path. */
  String text(String path) {
    Object found = value(path);
    if (found instanceof String text) {
      return text;
    }
    throw new IllegalArgumentException("'" + path + "' is not a word of the lathe");
  }

  /** Returns the block at a path. */
  Values blockAt(String path) {
    if (value(path) instanceof Values block) {
      return block;
    }
    throw new IllegalArgumentException("'" + path + "' is not a block of the lathe");
  }

  private Object value(String path) {
    Object here = machine.values();
    for (String key : path.strip().split("\\.")) {
      Map<?, ?> inner =
          here instanceof Values block
              ? block.held()
              : here instanceof Map<?, ?> map ? map : Map.of();
      Object next = inner.get(key);
      if (next == null) {
        List<String> known = inner.keySet().stream().map(String::valueOf).toList();
        String hint = Nearest.hint(key, known);
        throw new IllegalArgumentException(
            "the lathe has no '" + path + "'" + (hint.isEmpty() ? "" : ". " + hint));
      }
      here = next;
    }
    return here;
  }
}
