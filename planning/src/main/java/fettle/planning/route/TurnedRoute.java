package fettle.planning.route;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.stock.Stock;
import fettle.parts.recipe.Bore;
import fettle.parts.recipe.ScrewThread;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Tolerance;
import fettle.parts.recipe.Turned;
import java.util.ArrayList;
import java.util.List;

/**
 * The route of a turned part: the right end up to the largest diameter in the first set-up, parted
 * off, turned round for the left end. What must run true to the bore is made in the setting of the
 * bore.
 */
public final class TurnedRoute {

  private static final double MINUTE = 60;
  private static final double FACING = 1;
  private static final double PARTING = 3;
  private static final double STUB = 25;
  private static final double ROUGH_FEED = 0.15;
  private static final double FINE_FEED = 0.06;
  private static final double DEPTH = 1;
  private static final int FINISHING_CUTS = 2;
  private static final double APPROACH = 2;
  private static final double LARGEST_DRILL = 13;
  private static final int MOST_PASSES = 2000;

  private final Turned part;
  private final Lathe lathe;
  private final double speed;
  private final double blank;
  private final double length;
  private final List<Route.Line> lines = new ArrayList<>();
  private final List<String> lacks = new ArrayList<>();

  private TurnedRoute(Turned part, Lathe lathe) {
    this.part = part;
    this.lathe = lathe;
    speed = cuttingSpeed(part.heading().material());
    double largest = part.outside().stream().mapToDouble(TurnedRoute::most).max().orElse(0);
    blank = largest + 2;
    length = part.outside().stream().mapToDouble(s -> s.length().nominal()).sum();
  }

  /** Returns the route of a part on a lathe. */
  public static Route of(Turned part, Lathe lathe) {
    return new TurnedRoute(part, lathe).route();
  }

  /**
   * Returns a starting value of cutting speed with high-speed steel; common practice.
   *
   * @param material designation of the material
   * @return speed [mm/s]
   */
  public static double cuttingSpeed(String material) {
    String m = material.toUpperCase(java.util.Locale.ROOT);
    double metres =
        m.startsWith("EN AW") || m.contains("ALCU") || m.contains("ALMG")
            ? 70
            : m.startsWith("CUZN") || m.startsWith("CW6")
                ? 50
                : m.startsWith("CUSN") || m.startsWith("CC4")
                    ? 35
                    : m.startsWith("EN-GJ") ? 18 : m.contains("CRMO") || m.contains("X5") ? 18 : 25;
    return metres * 1000 / MINUTE;
  }

  private static double most(Step step) {
    return Math.max(step.diameter().nominal(), step.endDiameter());
  }

  private Route route() {
    double stub = Math.max(STUB, 1.5 * blank);
    double cut = length + 2 * FACING + PARTING + stub;
    boolean slender = length > 4 * blank;
    limits(cut);
    int widest = 0;
    for (int i = 0; i < part.outside().size(); i++) {
      widest = most(part.outside().get(i)) > most(part.outside().get(widest)) ? i : widest;
    }
    String chuck = slender ? "three-jaw chuck and tailstock centre" : "three-jaw chuck";
    if (slender && lathe.tailstock() == Lathe.Tailstock.STRIPPED) {
      lacks.add(
          "The tailstock is stripped, and the part is longer than four diameters: fit the tailstock"
              + " first, or use a steady.");
    }
    setUp(1, chuck, widest, part.outside().size(), part.right());
    line(1, "part off", chuck, "parting tool", blank, speed / 2, 0.05, 1, blank / 2, 2);
    setUp(2, "three-jaw chuck with soft jaws, " + turnedRound(), 0, widest, part.left());
    for (Turned.Operation operation : part.operations()) {
      line(
          3,
          named(operation),
          operation instanceof Turned.Graduations ? "dividing head" : "bench, vice or mill",
          "as the sheet says",
          0,
          0,
          0,
          1,
          0,
          20);
    }
    line(3, "deburr, check all sizes against the sheet", "bench", "file", 0, 0, 0, 1, 0, 10);
    String stock = part.heading().stock();
    return new Route(
        part.heading().name(),
        stock.isEmpty() ? "round bar of at least " + whole(blank) + " mm" : stock,
        cut,
        lines,
        lacks);
  }

  private static String named(Turned.Operation operation) {
    String kind = operation.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ");
    return operation.name() + ": " + kind.toLowerCase(java.util.Locale.ROOT);
  }

  private static String turnedRound() {
    return "turned round, trued on the finished diameter";
  }

  private static String whole(double value) {
    return String.valueOf((int) Math.ceil(value - 1e-9));
  }

  private void limits(double cut) {
    if (blank > lathe.swing()) {
      lacks.add(
          "The stock of "
              + whole(blank)
              + " mm does not swing over the cross slide ("
              + whole(lathe.swing())
              + " mm): turn it on the faceplate with the slide drawn back, or have it made.");
    }
    boolean through = blank <= lathe.bore();
    if (!through && cut > lathe.centres()) {
      lacks.add(
          "The piece of "
              + whole(cut)
              + " mm is longer than the lathe takes ("
              + whole(lathe.centres())
              + " mm) and does not pass the spindle: saw it to length first, or have it made.");
    }
  }

  private void setUp(int number, String holding, int from, int to, Bore bore) {
    double first = part.outside().stream().mapToDouble(TurnedRoute::most).max().orElse(blank);
    line(number, "face the end", holding, "facing tool", first, speed, FINE_FEED, 2, blank / 2, 4);
    bore(number, holding, bore);
    for (int i = to - 1; i >= from; i--) {
      outside(number, holding, part.outside().get(i));
    }
  }

  private void outside(int number, String holding, Step step) {
    double d = step.diameter().nominal();
    double l = step.length().nominal() + APPROACH;
    int rough = Math.max(1, (int) Math.ceil((blank - d) / 2 / DEPTH - 1e-9));
    double wide = Math.max(d, step.endDiameter());
    String size = step.name() + ", diameter " + size(d) + " x " + size(step.length().nominal());
    line(number, "rough " + size, holding, "roughing tool", wide, speed, ROUGH_FEED, rough, l, 1);
    line(
        number,
        "finish " + size,
        holding,
        step.form() == Step.Form.TAPER ? "finishing tool, top slide swivelled" : "finishing tool",
        wide,
        speed,
        FINE_FEED,
        FINISHING_CUTS,
        l,
        measuring(step));
    ScrewThread thread = step.thread();
    if (thread != null) {
      thread(number, holding, step, thread);
    }
    if (step.knurl() != null) {
      line(number, "knurl " + step.name(), holding, "knurling tool", wide, speed / 3, 0.2, 2, l, 5);
    }
    if (step.teeth() != null) {
      line(
          number, "cut teeth on " + step.name(), "dividing head", "gear cutter", 0, 0, 0, 1, 0, 90);
    }
  }

  private static double measuring(Step step) {
    return step.diameter().tolerance().equals(Tolerance.GENERAL) ? 2 : 5;
  }

  /** Passes of equal chip area, two more without infeed, at a third of the speed. */
  private void thread(int number, String holding, Step step, ScrewThread thread) {
    double lead = thread.pitch() * thread.starts();
    if (!lathe.cuts(lead)) {
      lacks.add(
          "The change gears do not cut a lead of "
              + lead
              + " mm ("
              + thread.designation()
              + "): use a die, find other gears with 'fettle gearing', or have it made.");
    }
    double depth = (thread.major() - thread.rootOutside()) / 2;
    double share = depth / 0.2;
    int passes = thread.starts() * ((int) Math.min(MOST_PASSES, Math.ceil(share * share)) + 2);
    double l = (step.threadLength() > 0 ? step.threadLength() : step.length().nominal()) + 5;
    line(
        number,
        "cut thread " + thread.designation(),
        holding,
        "threading tool",
        thread.major(),
        speed / 3,
        lead,
        passes,
        l,
        10);
  }

  private void bore(int number, String holding, Bore bore) {
    double deep = bore.depth();
    if (!(deep > 0)) {
      return;
    }
    double least = bore.steps().stream().mapToDouble(s -> s.diameter().nominal()).min().orElse(0);
    double drill = Math.min(LARGEST_DRILL, Math.max(1, least - 1));
    line(
        number,
        "centre and drill " + whole(drill) + " deep " + whole(deep),
        holding,
        "drill in the tailstock",
        drill,
        speed * 0.8,
        0.1,
        1,
        deep,
        4);
    if (lathe.tailstock() == Lathe.Tailstock.STRIPPED) {
      lacks.add("The tailstock is stripped: drill from a holder on the slide, or fit it first.");
    }
    for (Step step : bore.steps()) {
      double d = step.diameter().nominal();
      int passes = 2 + (int) Math.ceil(Math.max(0, d - drill) / 2 / (DEPTH / 2) - 1e-9);
      String size = step.name() + ", diameter " + size(d);
      double l = step.length().nominal() + APPROACH;
      double preparing = measuring(step) + 2;
      line(
          number,
          "bore " + size,
          holding,
          "boring tool",
          d,
          speed,
          FINE_FEED,
          passes,
          l,
          preparing);
    }
  }

  private void line(
      int number,
      String what,
      String holding,
      String cutter,
      double diameter,
      double cutting,
      double feed,
      int passes,
      double path,
      double minutes) {
    boolean turns = diameter > 0 && cutting > 0 && feed > 0;
    double n = turns ? Stock.speedBelow(2 * cutting / diameter, lathe.ladder()) : 0;
    double time = turns ? path * passes / (feed * n / (2 * Math.PI)) : 0;
    boolean fresh = lines.stream().noneMatch(l -> l.setUp() == number);
    double preparing = (minutes + (fresh ? 5 : 0)) * MINUTE;
    lines.add(
        new Route.Line(
            number, what, holding, cutter, n, turns ? feed : 0, passes, preparing, time));
  }

  private static String size(double length) {
    return Numbers.significant(length, 5);
  }
}
