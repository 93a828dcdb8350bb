package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Train;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.BasicRack;
import fettle.mechanics.gears.Gear;
import fettle.mechanics.gears.GearPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Draws the gears, racks and pulleys of a train to scale, in mesh, seen along their shafts. */
public final class TrainPicture {

  private static final double STEP = Math.toRadians(24);
  private static final double GUESS = 1;

  private final Train train;
  private final String step;
  private final Bounds bounds = new Bounds();
  private final List<Consumer<Pen>> late = new ArrayList<>();
  private final List<Consumer<Pen>> last = new ArrayList<>();
  private final List<double[]> labels = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private double x;
  private double y;
  private double turns = 1;
  private double phase;
  private int bend;

  private TrainPicture(Train train, String step) {
    this.train = train;
    this.step = step;
  }

  /**
   * A drawn train.
   *
   * @param drawing the picture; empty if nothing in the train can be seen so
   * @param notes what could not be drawn to scale, and why
   */
  public record Drawn(Optional<Drawing> drawing, List<String> notes) {
    /** Keeps its own copy. */
    public Drawn {
      notes = List.copyOf(notes);
    }
  }

  /**
   * Draws a train.
   *
   * @param train the train
   * @param step the step it is set to, as {@link Train#factors()} names it
   * @param turned how far the input is turned [-]
   */
  public static Drawn of(Train train, String step, double turned) {
    return new TrainPicture(train, step).drawn(turned);
  }

  private Drawn drawn(double turned) {
    train.elements().forEach(this::element);
    if (late.isEmpty()) {
      return new Drawn(Optional.empty(), notes);
    }
    double rim = 0.06 * Math.max(bounds.width(), bounds.height());
    double width = bounds.width() + 2 * rim;
    double height = bounds.height() + 2 * rim;
    Pen pen = Pen.of(Math.max(width, height), turned);
    late.forEach(m -> m.accept(pen));
    last.forEach(m -> m.accept(pen));
    String label = "The " + train.name() + " to scale, seen along its shafts";
    return new Drawn(
        Optional.of(pen.done(label, bounds.left() - rim, bounds.top() - rim, width, height)),
        notes);
  }

  private void element(Element element) {
    if (element instanceof Element.GearPair pair) {
      pair(pair);
    } else if (element instanceof Element.Tumbler tumbler) {
      int driver = tumbler.values().needCount("driver");
      int driven = tumbler.values().needCount("driven");
      chain(tumbler.name(), driver, driven, tumbler.values().needCount("idlers"), module(tumbler));
    } else if (element instanceof Element.ChangeGears gears) {
      double module = module(gears);
      for (int i = 0; i + 1 < gears.wheels().size(); i += 2) {
        chain("", gears.wheels().get(i), gears.wheels().get(i + 1), 0, module);
      }
    } else if (element instanceof Element.Rack rack) {
      rack(rack);
    } else if (element instanceof Element.Belt belt) {
      belt(belt);
    } else if (element instanceof Element.BackGear back) {
      back(back);
    } else if (element instanceof Element.Screw screw) {
      notes.add("The screw " + screw.thread().text() + " is drawn from the side on its own page.");
    } else {
      notes.add("The " + element.name() + " is not seen along the shafts; its ratio counts.");
      turns *= element.factors().values().iterator().next().toDouble();
    }
  }

  private double module(Element element) {
    Optional<Double> own = element.values().quantity("module").map(q -> q.value());
    if (own.isPresent()) {
      return own.get();
    }
    Optional<Double> near =
        train.elements().stream()
            .filter(e -> !(e instanceof Element.Rack))
            .flatMap(e -> e.values().quantity("module").stream())
            .map(q -> q.value())
            .findFirst();
    notes.add(
        "The book gives no module for the "
            + element.name()
            + ": drawn "
            + near.map(m -> "like the other gears of the train.").orElse("with module 1 mm."));
    return near.orElse(GUESS);
  }

  private void pair(Element.GearPair pair) {
    double module = module(pair);
    double angle =
        pair.values().quantity("pressure angle").map(q -> q.value()).orElse(Math.toRadians(20));
    Optional<Double> axes = pair.values().quantity("centre distance").map(q -> q.value());
    if (pair.values().flag("internal") || pair.values().needCount("idlers") > 0) {
      chain(pair.name(), pair.driver(), pair.driven(), pair.values().needCount("idlers"), module);
      return;
    }
    GearPair drawn = mesh(module, angle, pair.driver(), pair.driven(), axes);
    Wheel first = new Wheel(drawn.pinion(), drawn.pinionTip(), x, y, phase, turns, "steel");
    draw(first, String.valueOf(pair.driver()));
    double direction = direction();
    Wheel second = first.meshing(drawn.wheel(), drawn.wheelTip(), drawn.axes(), direction);
    draw(second, String.valueOf(pair.driven()));
    double fromX = x;
    double fromY = y;
    String words = Numbers.significant(drawn.axes(), 5) + " mm";
    late.add(pen -> axis(pen, fromX, fromY, second.x(), second.y(), words));
    leave(second);
  }

  private static void axis(Pen pen, double x1, double y1, double x2, double y2, String words) {
    pen.line("centre", x1, y1, x2, y2);
    pen.words("halo", (x1 + x2) / 2, (y1 + y2) / 2 - 14 * pen.unit(), "middle", words);
  }

  private GearPair mesh(
      double module, double angle, int driver, int driven, Optional<Double> axes) {
    BasicRack rack = BasicRack.of(angle);
    Gear pinion = new Gear(module, driver, 0, rack);
    if (axes.isPresent()) {
      try {
        return GearPair.onCentres(pinion, driven, axes.get());
      } catch (IllegalArgumentException e) {
        notes.add(
            driver
                + " and "
                + driven
                + " teeth do not run on the stated centres: drawn on theirs.");
      }
    }
    return GearPair.withoutPlay(pinion, new Gear(module, driven, 0, rack));
  }

  /** Wheels one after the other, idlers between them as large as the driver. */
  private void chain(String name, int driver, int driven, int idlers, double module) {
    Wheel wheel = plain(module, driver);
    draw(wheel, String.valueOf(driver));
    if (idlers > 0) {
      notes.add(
          "The idlers of the "
              + name
              + " are drawn as large as the driver; their teeth do not count.");
    }
    for (int i = 0; i < Math.min(idlers, 4); i++) {
      wheel = next(wheel, module, driver);
      draw(wheel, "idler");
    }
    wheel = next(wheel, module, driven);
    draw(wheel, String.valueOf(driven));
    leave(wheel);
  }

  private Wheel plain(double module, int teeth) {
    Gear gear = new Gear(module, teeth, 0, BasicRack.of(Math.toRadians(20)));
    return new Wheel(gear, gear.tip(0), x, y, phase, turns, "steel");
  }

  private Wheel next(Wheel wheel, double module, int teeth) {
    Gear gear = new Gear(module, teeth, 0, wheel.gear().rack());
    double axes = (wheel.gear().reference() + gear.reference()) / 2;
    return wheel.meshing(gear, gear.tip(0), axes, direction());
  }

  private double direction() {
    bend++;
    return bend % 2 == 1 ? STEP : -STEP;
  }

  private void draw(Wheel wheel, String words) {
    bounds.take(wheel.x(), wheel.y(), wheel.tip() / 2);
    double hub = Math.min(6, wheel.gear().root() / 5);
    long there =
        labels.stream().filter(p -> Math.hypot(p[0] - wheel.x(), p[1] - wheel.y()) < 1).count();
    labels.add(new double[] {wheel.x(), wheel.y()});
    late.add(pen -> wheel.draw(pen, hub, ""));
    last.add(
        pen ->
            pen.words(
                "halo", wheel.x(), wheel.y() + (7 + 26 * there) * pen.unit(), "middle", words));
  }

  private void leave(Wheel wheel) {
    x = wheel.x();
    y = wheel.y();
    turns = wheel.turns();
    phase = wheel.phase();
  }

  private void rack(Element.Rack rack) {
    double pitch = rack.pitch().toDouble();
    double module = pitch / Math.PI;
    double angle =
        rack.values().quantity("pressure angle").map(q -> q.value()).orElse(Math.toRadians(20));
    Gear gear = new Gear(module, rack.pinion(), 0, BasicRack.of(angle));
    Wheel pinion = new Wheel(gear, gear.tip(0), x, y, phase, turns, "steel");
    double line = y + gear.reference() / 2;
    double away = pinion.toothAway(Math.PI / 2) * pitch;
    double reach = Math.max(3.5 * gear.reference(), bounds.width());
    double way = -turns * Math.PI * gear.reference();
    bounds.take(x, y, gear.tip(0) / 2);
    bounds.take(x - reach / 2, line + 4 * module, 0);
    bounds.take(x + reach / 2, line + 6 * module, 0);
    double middle = x;
    late.add(pen -> pen.sliding(way, p -> teeth(p, middle + away, line, module, angle)));
    draw(pinion.styled("steel near"), String.valueOf(rack.pinion()));
    late.add(
        pen ->
            pen.words(
                "halo",
                middle + gear.tip(0) / 2 + 10,
                line + 4.6 * module,
                "start",
                Numbers.significant(Math.abs(way), 5) + " mm a turn"));
  }

  /** Draws a rack with a space at a place; long enough for a turn or two. */
  private static void teeth(Pen pen, double space, double line, double module, double angle) {
    double pitch = Math.PI * module;
    int many = 60;
    double[] points = new double[8 * 2 * many + 4];
    int at = 0;
    double slope = Math.tan(angle) * module;
    for (int k = -many; k < many; k++) {
      double middle = space + (k + 0.5) * pitch;
      double[] tooth = {
        middle - pitch / 4 - slope * 1.25,
        line + 1.25 * module,
        middle - pitch / 4 + slope,
        line - module,
        middle + pitch / 4 - slope,
        line - module,
        middle + pitch / 4 + slope * 1.25,
        line + 1.25 * module
      };
      System.arraycopy(tooth, 0, points, at, 8);
      at += 8;
    }
    points[at] = space + many * pitch;
    points[at + 1] = line + 6 * module;
    points[at + 2] = space - many * pitch;
    points[at + 3] = line + 6 * module;
    pen.trace("gear steel", points, true);
  }

  private void belt(Element.Belt belt) {
    String named = belt.factors().keySet().stream().filter(step::contains).findFirst().orElse("");
    Ratio ratio = belt.factors().getOrDefault(named, Ratio.ONE);
    Optional<double[]> sizes = sizes(belt, named);
    if (sizes.isEmpty()) {
      notes.add("The pulleys of the " + belt.name() + " have no diameters in the book.");
      turns *= ratio.toDouble();
      return;
    }
    double r1 = sizes.get()[0] / 2;
    double r2 = sizes.get()[1] / 2;
    double axes =
        belt.values().quantity("centre distance").map(q -> q.value()).orElse(3 * (r1 + r2));
    disc(r1, "");
    double fromX = x;
    double fromY = y;
    x += axes;
    turns *= ratio.toDouble();
    disc(r2, "");
    double toX = x;
    late.add(pen -> strand(pen, fromX, fromY, r1, toX, r2));
    String words = Numbers.significant(axes, 5) + " mm";
    late.add(
        pen -> {
          axis(pen, fromX, fromY, toX, fromY, words);
          pen.words("halo", fromX, fromY + 20 * pen.unit(), "middle", diameter(r1));
          pen.words("halo", toX, fromY + 20 * pen.unit(), "middle", diameter(r2));
        });
  }

  private static String diameter(double radius) {
    return "Ø " + Numbers.significant(2 * radius, 4);
  }

  private static Optional<double[]> sizes(Element.Belt belt, String named) {
    var values = named.isEmpty() ? belt.values() : belt.values().map("steps").get(named);
    if (values == null || !values.has("driver") || !values.has("driven")) {
      return Optional.empty();
    }
    return Optional.of(new double[] {values.need("driver").value(), values.need("driven").value()});
  }

  private static void strand(Pen pen, double x1, double y, double r1, double x2, double r2) {
    double lean = Math.asin(Math.max(-1, Math.min(1, (r1 - r2) / (x2 - x1))));
    for (int side : new int[] {-1, 1}) {
      double cos = Math.cos(lean);
      double sin = Math.sin(lean);
      pen.line("belt", x1 + r1 * sin, y + side * r1 * cos, x2 + r2 * sin, y + side * r2 * cos);
    }
  }

  /** Draws a round body that turns. */
  private void disc(double radius, String words) {
    double atX = x;
    double atY = y;
    double rate = turns;
    double mark = phase;
    bounds.take(atX, atY, radius);
    late.add(
        pen -> {
          pen.turning(
              atX,
              atY,
              rate,
              p -> {
                p.circle("gear steel", atX, atY, radius);
                p.line(
                    "mark",
                    atX,
                    atY,
                    atX + 0.9 * radius * Math.cos(mark),
                    atY + 0.9 * radius * Math.sin(mark));
              });
          pen.words("halo", atX, atY + 7 * pen.unit(), "middle", words);
        });
  }

  private void back(Element.BackGear back) {
    if (!step.contains("back gear in")) {
      notes.add("The back gear is out: pulley and spindle turn as one.");
      return;
    }
    double module = module(back);
    double backX = x;
    double backY = y;
    chain(
        "",
        back.values().needCount("first driver"),
        back.values().needCount("first driven"),
        0,
        module);
    Wheel wheel = plain(module, back.values().needCount("second driver"));
    draw(wheel, String.valueOf(wheel.gear().teeth()));
    Gear output =
        new Gear(module, back.values().needCount("second driven"), 0, wheel.gear().rack());
    double axes = (wheel.gear().reference() + output.reference()) / 2;
    double home = Math.atan2(backY - y, backX - x);
    Wheel end = wheel.meshing(output, output.tip(0), axes, home);
    draw(end, String.valueOf(output.teeth()));
    leave(end);
  }
}
