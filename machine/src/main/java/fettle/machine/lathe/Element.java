package fettle.machine.lathe;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.threads.ThreadDesignation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One element of a train. */
public sealed interface Element {

  /** Returns its name in the book. */
  String name();

  /** Returns everything the book says of it. */
  Values values();

  /** Returns the element it must follow, if the book says so. */
  default Optional<String> after() {
    return values().text("after");
  }

  /**
   * Returns what it makes of one turn: turns, or travel in millimetres. Several if it has steps, by
   * the name of each step.
   */
  Map<String, Ratio> factors();

  /** Returns how often it reverses the sense of turning. */
  int reversals();

  /** Tells whether it gives travel instead of turning. */
  default boolean linear() {
    return false;
  }

  /** Tells whether the ratio is exact, that is, nothing can slip. */
  default boolean exact() {
    return true;
  }

  /** Two gears in mesh. */
  record GearPair(String name, int driver, int driven, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      return Map.of("", Ratio.of(driver, driven));
    }

    @Override
    public int reversals() {
      return values.flag("internal") ? values.needCount("idlers") : 1 + values.needCount("idlers");
    }
  }

  /** A pinion on a rack. */
  record Rack(String name, int pinion, Ratio pitch, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      return Map.of("", pitch.times(pinion));
    }

    @Override
    public int reversals() {
      return 0;
    }

    @Override
    public boolean linear() {
      return true;
    }
  }

  /** A screw in a nut. */
  record Screw(String name, ThreadDesignation thread, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      return Map.of("", thread.lead());
    }

    @Override
    public int reversals() {
      return 0;
    }

    @Override
    public boolean linear() {
      return true;
    }
  }

  /** A belt on two pulleys, or on the steps of two step pulleys. */
  record Belt(String name, Map<String, Ratio> factors, boolean exact, Values values)
      implements Element {
    @Override
    public int reversals() {
      return 0;
    }
  }

  /** Two gear pairs that are thrown in and out. */
  record BackGear(String name, Ratio ratio, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      Map<String, Ratio> both = new LinkedHashMap<>();
      both.put("back gear in", ratio);
      both.put("direct", Ratio.ONE);
      return both;
    }

    @Override
    public int reversals() {
      return 0;
    }
  }

  /** A worm and its wheel. */
  record Worm(String name, Ratio ratio, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      return Map.of("", ratio);
    }

    @Override
    public int reversals() {
      return values.needText("hand").equals("left") ? 1 : 0;
    }
  }

  /** The gears on the banjo. */
  record ChangeGears(String name, List<Integer> wheels, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      Ratio ratio = Ratio.ONE;
      for (int i = 0; i + 1 < wheels.size(); i += 2) {
        ratio = ratio.times(Ratio.of(wheels.get(i), wheels.get(i + 1)));
      }
      return Map.of("", ratio);
    }

    @Override
    public int reversals() {
      return wheels.size() / 2 + values.needCount("idlers");
    }
  }

  /** Reversing gears between spindle and stud. */
  record Tumbler(String name, Ratio ratio, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      return Map.of("", ratio);
    }

    @Override
    public int reversals() {
      return 1 + values.needCount("idlers");
    }
  }

  /** A quick-change gearbox in one of its settings. */
  record Box(String name, List<Ratio> settings, Ratio set, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      return Map.of("", set);
    }

    @Override
    public int reversals() {
      return 0;
    }
  }

  /** Shafts joined end to end. */
  record Coupling(String name, Values values) implements Element {
    @Override
    public Map<String, Ratio> factors() {
      return Map.of("", Ratio.ONE);
    }

    @Override
    public int reversals() {
      return 0;
    }
  }

  /** Makes an element of its block; an {@link IllegalArgumentException} says what is missing. */
  static Element of(String name, Values v) {
    return switch (v.shape()) {
      case "element/gear pair" ->
          new GearPair(name, v.needCount("driver"), v.needCount("driven"), v);
      case "element/rack" -> new Rack(name, v.needCount("pinion"), rackPitch(v), v);
      case "element/screw" -> new Screw(name, ThreadDesignation.parse(v.needText("thread")), v);
      case "element/belt" -> belt(name, v);
      case "element/back gear" ->
          new BackGear(
              name,
              Ratio.of(v.needCount("first driver"), v.needCount("first driven"))
                  .times(Ratio.of(v.needCount("second driver"), v.needCount("second driven"))),
              v);
      case "element/worm" ->
          new Worm(name, Ratio.of(v.needCount("starts"), v.needCount("wheel")), v);
      case "element/change gears" -> changeGears(name, v);
      case "element/tumbler" ->
          new Tumbler(name, Ratio.of(v.needCount("driver"), v.needCount("driven")), v);
      case "element/box" -> box(name, v);
      default -> new Coupling(name, v);
    };
  }

  private static Ratio rackPitch(Values v) {
    Optional<Quantity> module = v.quantity("module");
    Optional<Quantity> pitch = v.quantity("pitch");
    if (module.isPresent() == pitch.isPresent()) {
      throw new IllegalArgumentException("a rack needs either its module or its pitch");
    }
    return module.map(m -> m.exact().times(Ratio.PI)).orElseGet(() -> pitch.orElseThrow().exact());
  }

  private static Belt belt(String name, Values v) {
    Map<String, Ratio> factors = new LinkedHashMap<>();
    if (v.has("driver teeth") != v.has("driven teeth")) {
      throw new IllegalArgumentException("a toothed belt needs the teeth of both pulleys");
    }
    if (v.has("driver teeth")) {
      if (v.has("driver") || v.has("driven") || v.has("steps")) {
        throw new IllegalArgumentException("a belt has either teeth or pulley diameters, not both");
      }
      factors.put("", Ratio.of(v.needCount("driver teeth"), v.needCount("driven teeth")));
      return new Belt(name, factors, true, v);
    }
    Ratio grip = Ratio.ONE;
    Ratio slip = v.need("slip").exact();
    grip = new Ratio(grip.fraction().subtract(slip.fraction()), 0, 0);
    if (v.has("driver") != v.has("driven") || (v.has("driver") && !v.map("steps").isEmpty())) {
      throw new IllegalArgumentException(
          "a belt has either one driver and one driven pulley, or steps");
    }
    if (v.has("driver")) {
      factors.put("", v.need("driver").exact().over(v.need("driven").exact()).times(grip));
    }
    for (Map.Entry<String, Values> step : v.map("steps").entrySet()) {
      Values s = step.getValue();
      factors.put(
          step.getKey(), s.need("driver").exact().over(s.need("driven").exact()).times(grip));
    }
    if (factors.isEmpty()) {
      throw new IllegalArgumentException(
          "a belt needs driver and driven, or steps, or the teeth of both pulleys");
    }
    return new Belt(name, factors, false, v);
  }

  private static ChangeGears changeGears(String name, Values v) {
    List<Integer> wheels = v.counts("wheels");
    if (wheels.size() < 2 || wheels.size() % 2 != 0 || wheels.size() > 8) {
      throw new IllegalArgumentException(
          "change gears go in pairs: driver, driven, driver, driven");
    }
    return new ChangeGears(name, wheels, v);
  }

  private static Box box(String name, Values v) {
    List<Ratio> settings = new ArrayList<>();
    for (String text : v.texts("settings")) {
      settings.add(ratio(text));
    }
    Ratio set = ratio(v.needText("set"));
    if (settings.stream().noneMatch(set::sameAs)) {
      throw new IllegalArgumentException(
          "the box is set to " + set.text() + ", which is none of its settings");
    }
    return new Box(name, List.copyOf(settings), set, v);
  }

  private static Ratio ratio(String text) {
    if (!text.matches("\\d{1,9}(/\\d{1,9})?")) {
      throw new IllegalArgumentException("a ratio is written like 127/120, found '" + text + "'");
    }
    String[] parts = text.split("/");
    Ratio ratio =
        Ratio.of(Long.parseLong(parts[0]), parts.length == 1 ? 1 : Long.parseLong(parts[1]));
    if (ratio.isZero()) {
      throw new IllegalArgumentException("a ratio is not 0");
    }
    return ratio;
  }
}
