package fettle.machine.made;

import fettle.machine.dictionary.Values;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.gears.Gear;
import fettle.parts.recipe.RecipeTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/** Takes the teeth of a gear from a gear pair or a rack of the lathe. */
final class GearOfPair {

  private GearOfPair() {}

  /**
   * Fills in teeth, module, pressure angle, shift, mate and span of a gear that names its pair;
   * what the recipe itself says stands.
   */
  static Map<String, RecipeTree> filled(
      FromLathe lathe, Map<String, RecipeTree> gear, BiConsumer<String, String> wrong) {
    if (!(gear.get("pair") instanceof RecipeTree.Text path)) {
      return gear;
    }
    Map<String, RecipeTree> all = new LinkedHashMap<>(gear);
    try {
      boolean driver =
          gear.get("wheel") instanceof RecipeTree.Text wheel && wheel.text().equals("driver");
      of(lathe.blockAt(path.text()), driver).forEach(all::putIfAbsent);
    } catch (IllegalArgumentException e) {
      wrong.accept("pair", String.valueOf(e.getMessage()));
      Map.of("z", 20, "m", 1).forEach((k, v) -> all.putIfAbsent(k, new RecipeTree.Figure(v)));
    }
    return all;
  }

  private static Map<String, RecipeTree> of(Values pair, boolean driver) {
    boolean rack = pair.shape().equals("element/rack");
    if (!rack && !pair.shape().equals("element/gear pair")) {
      throw new IllegalArgumentException("a gear pair or a rack of a train is expected");
    }
    String own = rack ? "pinion" : driver ? "driver" : "driven";
    int teeth = pair.needCount(own);
    double module =
        pair.quantity("module")
            .orElseThrow(() -> new IllegalArgumentException("the pair states no module"))
            .value();
    double angle = pair.need("pressure angle").value();
    double shift = pair.quantity(own + " shift").map(q -> q.value()).orElse(0.0);
    Map<String, RecipeTree> all = new LinkedHashMap<>();
    all.put("z", new RecipeTree.Figure(teeth));
    all.put("m", new RecipeTree.Figure(module));
    all.put("alpha", new RecipeTree.Figure(angle));
    all.put("x", new RecipeTree.Figure(shift));
    String mate = rack ? "rack" : "z " + pair.needCount(driver ? "driven" : "driver");
    all.put("mate", new RecipeTree.Text(mate));
    all.put("table", new RecipeTree.Items(lines(Gear.of(module, teeth, shift, angle), pair)));
    return all;
  }

  private static List<RecipeTree> lines(Gear gear, Values pair) {
    List<RecipeTree> lines = new ArrayList<>();
    pair.quantity("centre distance").ifPresent(a -> lines.add(line("Centre distance", a.value())));
    int spanned = gear.spanTeeth();
    lines.add(line("Span over " + spanned + " teeth", gear.span(spanned, 0)));
    return lines;
  }

  private static RecipeTree line(String what, double value) {
    return new RecipeTree.Text(what + ": " + Numbers.fixed(value, 3).replace('.', ',') + " mm");
  }
}
