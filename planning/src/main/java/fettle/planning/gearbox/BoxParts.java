package fettle.planning.gearbox;

import fettle.machine.text.TextEdit;
import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The parts of a box as lines of its change, and the recipes of those that have one.
 *
 * @param box the box
 * @param key key of the change; the recipes begin with it
 */
record BoxParts(SettledBox box, String key) {

  private static final String STEEL = "C45";
  private static final double JOURNAL = 2;
  private static final double SHORT = 16;
  private static final double LONG = 40;
  private static final double END = 2;
  private static final double SHORTEST = 30;
  private static final double RING = 3;
  private static final double ALLOWANCE = 3;

  /** Names of the shafts and rings. */
  List<String> shafts() {
    List<String> shafts = new ArrayList<>(List.of("cone shaft", "tumbler shaft"));
    if (crossed()) {
      shafts.add("driver shaft");
    }
    shafts.add("output shaft");
    shafts.add("rings");
    return shafts;
  }

  /** Tells whether the second shaft is parted for the cross gears. */
  private boolean crossed() {
    return !box.wish().perInch().isEmpty();
  }

  /** Names of the gears. */
  List<String> gears() {
    return box.wheels().stream().map(BoxWheel::name).toList();
  }

  /** Names of the parts without a recipe. */
  List<String> plain() {
    return crossed()
        ? List.of("box body", "arm", "claw", "draw key", "thread plate")
        : List.of("box body", "arm", "draw key", "thread plate");
  }

  /** Names of what is on the assembly sheet, in the order it goes together: the cone. */
  List<String> assembly() {
    List<String> all = new ArrayList<>(List.of("cone shaft"));
    all.addAll(gears().subList(0, box.cone().size()));
    all.add("rings");
    return all;
  }

  /** Lines of the block of parts. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "box body: {what: "
            + TextEdit.quoted(
                "Box for three shafts in line: the second "
                    + mm(box.coneCentres())
                    + " from the first, the third "
                    + mm(box.multiplierCentres())
                    + " from the second; cone "
                    + mm(box.coneLength())
                    + ", multiplier "
                    + mm(box.multiplierLength())
                    + " long inside.")
            + ", material: EN-GJL-250, stock: casting}");
    lines.add(shaftLine("cone shaft", "Shaft that carries the cone."));
    if (crossed()) {
      lines.add(shaftLine("tumbler shaft", "Shaft of the tumbler, up to the claw at the wall."));
      lines.add(shaftLine("driver shaft", "Shaft of the multiplier's drivers, from the claw on."));
    } else {
      lines.add(
          shaftLine("tumbler shaft", "Shaft of the tumbler and of the multiplier's drivers."));
    }
    lines.add(shaftLine("output shaft", "Shaft of the loose gears, slotted for the draw key."));
    int rings = box.cone().size() - 1 + 2 * (box.pairs().size() - 1);
    lines.add(
        "rings: {what: Rings between the gears., material: "
            + STEEL
            + ", stock: "
            + bar(box.shaft() + 2 * RING)
            + ", quantity: "
            + Math.max(1, rings)
            + ", recipe: "
            + key
            + "-ring}");
    for (BoxWheel wheel : box.wheels()) {
      lines.add(
          wheel.name()
              + ": {what: "
              + TextEdit.quoted(what(wheel))
              + ", material: "
              + STEEL
              + ", stock: "
              + bar(wheel.tip())
              + (wheel.count() == 1 ? "" : ", quantity: " + wheel.count())
              + ", recipe: "
              + file(wheel)
              + "}");
    }
    lines.add(
        "arm: {what: "
            + TextEdit.quoted(
                "Arm round the tumbler shaft with the idler's pin "
                    + mm(box.arm())
                    + " from it, and the plate with its notches: "
                    + BoxChange.notches(box)
                    + ".")
            + ", material: EN-GJL-250}");
    if (crossed()) {
      lines.add(
          "claw: {what: "
              + TextEdit.quoted(
                  "Claw at the wall: for millimetres it joins tumbler and driver shaft; for threads"
                      + " per inch it is drawn and slides the cross gears into mesh.")
              + ", material: "
              + STEEL
              + "}");
    }
    lines.add(
        "draw key: {what: "
            + TextEdit.quoted(
                "Key drawn along the output shaft in steps of "
                    + mm(box.drawn(1))
                    + "; its sprung nose is no longer than a gear is wide, and the ring between two"
                    + " gears presses it down, so that it never holds both.")
            + ", material: "
            + STEEL
            + "}");
    lines.add("thread plate: {what: Plate with what every notch and lever gives.}");
    return lines;
  }

  private String shaftLine(String name, String what) {
    return name
        + ": {what: "
        + TextEdit.quoted(what)
        + ", material: "
        + STEEL
        + ", stock: "
        + bar(box.shaft())
        + ", recipe: "
        + key
        + "-"
        + name.replace(' ', '-')
        + "}";
  }

  private static String what(BoxWheel wheel) {
    return switch (wheel.fixing()) {
      case KEYED -> "Gear keyed on its shaft.";
      case SLIDING -> "Gear that slides along its shaft with the arm.";
      case LOOSE -> "Gear that turns loose on its shaft or pin.";
    };
  }

  private static String bar(double diameter) {
    return "bar " + (int) (Math.ceil((diameter + ALLOWANCE) / 5) * 5) + " mm";
  }

  private static String mm(double value) {
    return text(value) + " mm";
  }

  private static String text(double value) {
    return Numbers.significant(Math.rint(value * 1e4) / 1e4, 8);
  }

  private String file(BoxWheel wheel) {
    return key + "-" + wheel.name().replace(' ', '-').toLowerCase(Locale.ROOT);
  }

  /** Recipes by the path of their file. */
  Map<String, String> recipes() {
    Map<String, String> recipes = new LinkedHashMap<>();
    double cone = box.coneLength();
    double multiplier = box.multiplierLength();
    double cross = crossed() ? SettledBox.GAP + box.width() : 0;
    String tumbler = keyway("tumbler keyway", LONG, cone);
    if (crossed()) {
      put(recipes, "tumbler-shaft", shaft("Tumbler shaft", LONG, cone, SHORT, tumbler));
      String driver = keyway("driver keyway", SHORT, multiplier + cross);
      put(recipes, "driver-shaft", shaft("Driver shaft", SHORT, multiplier + cross, SHORT, driver));
    } else {
      double along = cone + SettledBox.PILLAR;
      String driver = keyway("driver keyway", LONG + along, multiplier);
      put(
          recipes,
          "tumbler-shaft",
          shaft("Tumbler shaft", LONG, along + multiplier, SHORT, tumbler + driver));
    }
    String slot = keyway("draw key slot", SHORT, multiplier);
    put(recipes, "output-shaft", shaft("Output shaft", SHORT, multiplier, LONG, slot));
    String coneway = keyway("cone keyway", LONG, cone + cross);
    put(recipes, "cone-shaft", shaft("Cone shaft", LONG, cone + cross, SHORT, coneway));
    put(recipes, "ring", ring());
    for (BoxWheel wheel : box.wheels()) {
      recipes.put("parts/" + file(wheel) + ".yaml", gear(wheel));
    }
    int number = 1;
    for (Map.Entry<String, String> recipe : recipes.entrySet()) {
      recipe.setValue(
          String.format(Locale.ROOT, "number: GB-%02d\n", number++) + recipe.getValue());
    }
    return recipes;
  }

  private void put(Map<String, String> recipes, String name, String text) {
    recipes.put("parts/" + key + "-" + name + ".yaml", text);
  }

  private String shaft(String title, double left, double seat, double right, String operations) {
    String end = "length: " + mm(left) + ", start-chamfer: 1 mm, Ra: 0.8 µm}\n";
    return "title: "
        + title
        + "\nturned:\n  outside:\n"
        + "    - cylinder: {name: left journal, diameter: "
        + mm(box.shaft() - JOURNAL)
        + " h6, "
        + end
        + "    - cylinder: {name: seat, diameter: "
        + mm(box.shaft())
        + " h6, length: "
        + mm(Math.max(seat, SHORTEST) + 2 * END)
        + ", end-chamfer: 0.5 mm, Ra: 0.8 µm}\n"
        + "    - cylinder: {name: right journal, diameter: "
        + mm(box.shaft() - JOURNAL)
        + " h6, length: "
        + mm(right)
        + ", end-chamfer: 1 mm, Ra: 0.8 µm}\n  operations:\n"
        + operations;
  }

  private String keyway(String name, double left, double length) {
    double bottom = box.shaft() / 2 - box.key().shaftDepth();
    return "    - keyway: {name: "
        + name
        + ", at: "
        + mm(left + END)
        + ", length: "
        + mm(length)
        + ", width: "
        + mm(box.key().width())
        + " P9, bottom: "
        + mm(bottom)
        + "}\n";
  }

  private String ring() {
    return "title: Ring between gears\nturned:\n  outside:\n    - cylinder: {name: ring, diameter: "
        + mm(box.shaft() + 2 * RING)
        + ", length: "
        + mm(SettledBox.GAP)
        + " h11}\n  bore-left:\n    - cylinder: {name: bore, diameter: "
        + mm(box.shaft())
        + " F8, length: "
        + mm(SettledBox.GAP)
        + "}\n";
  }

  private String gear(BoxWheel wheel) {
    double module = wheel.gear().module();
    double pitch = 25.4 / module;
    boolean inch = Math.abs(pitch - Math.rint(pitch)) < 1e-6;
    String m = inch ? "= 25.4 mm / " + Math.round(pitch) : text(module) + " mm";
    StringBuilder text = new StringBuilder();
    String title = wheel.name() + " teeth";
    text.append("title: ")
        .append(title.substring(0, 1).toUpperCase(Locale.ROOT))
        .append(title.substring(1))
        .append("\ngear:\n  z: ")
        .append(wheel.gear().teeth())
        .append("\n  m: ")
        .append(m)
        .append("\n  alpha: ")
        .append(text(Math.toDegrees(wheel.gear().rack().angle())))
        .append(" deg\n");
    if (wheel.gear().shift() != 0) {
      text.append("  x: ")
          .append(text(wheel.gear().shift()))
          .append("\n  tip: ")
          .append(mm(wheel.tip()))
          .append('\n');
    }
    String fit = wheel.fixing() == BoxWheel.Fixing.LOOSE ? " F8" : " H7";
    text.append("  width: ")
        .append(mm(wheel.width()))
        .append("\n  bore: ")
        .append(mm(wheel.bore()))
        .append(fit)
        .append("\n  mate: ")
        .append(wheel.mate())
        .append('\n');
    if (wheel.bore() == box.shaft()) {
      text.append("  key-width: ")
          .append(mm(box.key().width()))
          .append(wheel.fixing() == BoxWheel.Fixing.KEYED ? " JS9" : " D10")
          .append("\n  key-bottom: ")
          .append(mm(wheel.bore() / 2 + box.key().hubDepth()))
          .append('\n');
    }
    text.append("  table:\n    - \"Centre distance: ")
        .append(comma(wheel.axes()))
        .append(" mm\"\n    - \"Span over ")
        .append(wheel.gear().spanTeeth())
        .append(" teeth: ")
        .append(comma(wheel.spanLeast()))
        .append(" to ")
        .append(comma(wheel.spanMost()))
        .append(" mm\"\n");
    return text.toString();
  }

  private static String comma(double value) {
    return Numbers.fixed(value, 3).replace('.', ',');
  }
}
