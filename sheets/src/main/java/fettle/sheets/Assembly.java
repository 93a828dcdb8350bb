package fettle.sheets;

import fettle.machine.dictionary.Values;
import fettle.machine.made.MadePart;
import fettle.machine.state.Change;
import fettle.mechanics.bearings.BoundaryDimensions;
import fettle.mechanics.bearings.Designation;
import fettle.sheets.draw.AssemblyDraught;
import fettle.sheets.draw.Item;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The assembly of one change.
 *
 * @param change the change
 * @param items lines of its parts list
 * @param order items in the order drawn, counted from 0
 * @param content everything its sheet shows: equal texts, equal sheets
 * @param bare the same without what things cost
 */
public record Assembly(
    Change change, List<Item> items, List<Integer> order, String content, String bare) {

  private static final int LONGEST_NUMBER = 16;

  /** Keeps its own copies. */
  public Assembly {
    items = List.copyOf(items);
    order = List.copyOf(order);
  }

  /** Returns the assembly of a change; empty if the change says nothing of one. */
  public static Optional<Assembly> of(Change change, List<MadePart> parts) {
    List<String> names = change.values().texts("assembly");
    if (names.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Item> lines = lines(change, parts);
    List<String> keys = List.copyOf(lines.keySet());
    List<Integer> order = new ArrayList<>();
    for (String name : names) {
      if (lines.containsKey(name)) {
        order.add(keys.indexOf(name));
      }
    }
    return Optional.of(
        new Assembly(
            change,
            List.copyOf(lines.values()),
            order,
            content(change, names, parts, UnaryOperator.identity()),
            content(change, names, parts, Assembly::withoutPrice)));
  }

  private static String content(
      Change change,
      List<String> names,
      List<MadePart> parts,
      UnaryOperator<Map<String, Object>> said) {
    StringBuilder content = new StringBuilder(change.title()).append(names);
    change
        .values()
        .map("parts")
        .forEach(
            (name, values) -> {
              MadePart part = made(change, name, parts);
              content.append(name).append(said.apply(values.held()));
              content.append(part == null ? "" : part.content());
            });
    change
        .values()
        .map("purchases")
        .forEach((name, values) -> content.append(name).append(said.apply(values.held())));
    return content.toString();
  }

  private static Map<String, Object> withoutPrice(Map<String, Object> held) {
    Map<String, Object> bare = new LinkedHashMap<>(held);
    bare.remove("price");
    return bare;
  }

  /** Returns the parts list of a change, by what the change calls each thing; item 1 first. */
  public static Map<String, Item> lines(Change change, List<MadePart> parts) {
    Map<String, Item> lines = new LinkedHashMap<>();
    change
        .values()
        .map("parts")
        .forEach((name, values) -> lines.put(name, made(name, values, made(change, name, parts))));
    change
        .values()
        .map("purchases")
        .forEach((name, values) -> lines.put(name, bought(name, values)));
    return lines;
  }

  private static @Nullable MadePart made(Change change, String name, List<MadePart> parts) {
    return parts.stream()
        .filter(p -> p.change().equals(change.key()) && p.name().equals(name))
        .findFirst()
        .orElse(null);
  }

  private static double price(Values values) {
    return values.quantity("price").map(q -> q.value()).orElse(0.0);
  }

  private static Item made(String name, Values values, @Nullable MadePart part) {
    return new Item(
        Item.From.MAKE,
        values.needCount("quantity"),
        part == null ? name : part.recipe().heading().title(),
        part == null ? "" : part.recipe().heading().number(),
        values.text("material").orElse(""),
        values.text("stock").orElse(""),
        price(values),
        part == null ? null : part.recipe(),
        null);
  }

  private static Item bought(String name, Values values) {
    String designation = values.text("designation").orElse("");
    int quantity = values.has("quantity") ? values.needCount("quantity") : 1;
    return new Item(
        Item.From.BUY,
        quantity,
        name,
        designation,
        "",
        "",
        price(values),
        null,
        outside(designation));
  }

  private static @Nullable BoundaryDimensions outside(String designation) {
    try {
      return Designation.parse(designation).boundary();
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  /** Returns the same assembly with nothing said of costs. */
  public Assembly withoutCosts() {
    List<Item> without = items.stream().map(Item::withoutCost).toList();
    return new Assembly(change, without, order, bare, bare);
  }

  /** Returns the drawing number of the assembly. */
  public String number() {
    return number(change, "");
  }

  /** Returns the drawing number of a sheet that belongs to a whole change. */
  static String number(Change change, String ending) {
    String number = change.key().toUpperCase(java.util.Locale.ROOT);
    int room = LONGEST_NUMBER - ending.length();
    return (number.length() <= room ? number : number.substring(0, room)) + ending;
  }

  /** Draws the sheet. */
  public Sheet sheet(Heads heads) {
    return AssemblyDraught.sheet(change.title(), number(), items, order, heads);
  }

  /** Draws the sheet and looks it over. */
  public PlanFiles files(Heads heads) {
    Sheet sheet = sheet(heads);
    return PlanFiles.of(sheet, List.of());
  }
}
