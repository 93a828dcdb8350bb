package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.gears.FixedCentre;
import java.util.List;
import java.util.function.BiFunction;

/** Draws a cone-and-tumbler box from the side, unfolded, with its levers and its power path. */
public final class BoxPicture {

  private static final double GAP = 2;
  private static final double FACE = 10;
  private static final double PILLAR = 22;

  private final double module;
  private final double width;
  private final List<Integer> cone;
  private final int idler;
  private final int tumbler;
  private final List<FixedCentre.Pair> pairs;
  private final Set set;

  private BoxPicture(double module, Wheels wheels, Set set) {
    this.module = module;
    this.width = FACE * module;
    this.cone = wheels.cone;
    this.idler = wheels.idler;
    this.tumbler = wheels.tumbler;
    this.pairs = wheels.pairs;
    this.set = set;
  }

  /**
   * How the levers stand.
   *
   * @param wheel cone wheel in mesh, from 0
   * @param multiplier pair in mesh, from 0
   * @param inch true if the tumbler drives the cone
   * @param into what the link gears bring into the box
   */
  public record Set(int wheel, int multiplier, boolean inch, String into) {}

  /**
   * The wheels of the box.
   *
   * @param cone teeth of the cone
   * @param idler teeth of the idler on the arm
   * @param tumbler teeth of the tumbler's wheel
   * @param pairs pairs of the multiplier
   */
  public record Wheels(List<Integer> cone, int idler, int tumbler, List<FixedCentre.Pair> pairs) {
    /** Keeps its own copies. */
    public Wheels {
      cone = List.copyOf(cone);
      pairs = List.copyOf(pairs);
    }
  }

  /**
   * Draws a box.
   *
   * @param module module of all wheels [mm]
   * @param wheels its wheels
   * @param set how the levers stand
   * @param href where each setting of the levers leads
   */
  public static Drawing of(
      double module, Wheels wheels, Set set, BiFunction<Integer, Integer, String> href) {
    return new BoxPicture(module, wheels, set).drawn(href);
  }

  private double radius(int teeth) {
    return module * teeth / 2;
  }

  private double tip(int teeth) {
    return module * (teeth + 2);
  }

  private double at(int wheel) {
    return wheel * (width + GAP);
  }

  private double pairAt(int pair) {
    return at(cone.size()) + PILLAR + pair * (width + 3 * GAP);
  }

  private double end() {
    return pairAt(pairs.size()) + 6;
  }

  private double secondShaft() {
    int largest = cone.stream().mapToInt(Integer::intValue).max().orElse(20);
    return radius(largest) + 2 * radius(idler) + radius(tumbler);
  }

  private double thirdShaft() {
    FixedCentre.Pair pair = pairs.get(0);
    return secondShaft() + radius(pair.driver() + pair.driven());
  }

  private Drawing drawn(BiFunction<Integer, Integer, String> href) {
    int largest = cone.stream().mapToInt(Integer::intValue).max().orElse(20);
    double top = -tip(largest) / 2 - 26;
    double left = -54;
    double right = end() + 54;
    int widest = pairs.stream().mapToInt(FixedCentre.Pair::driven).max().orElse(20);
    double foot = thirdShaft() + tip(widest) / 2 + 30;
    Pen pen = Pen.of(right - left, 0);
    shafts(pen, left, right);
    for (int i = 0; i < cone.size(); i++) {
      int wheel = i;
      pen.touch(
          href.apply(i, set.multiplier()),
          "tumbler into notch " + (i + 1) + ", wheel of " + cone.get(i),
          i == set.wheel(),
          p -> cone(p, wheel, top));
    }
    tumbler(pen);
    for (int i = 0; i < pairs.size(); i++) {
      int pair = i;
      pen.touch(
          href.apply(set.wheel(), i),
          "multiplier lever to " + letter(i),
          i == set.multiplier(),
          p -> pair(p, pair, foot));
    }
    path(pen, left, right);
    return pen.done("The gearbox from the side, unfolded", left, top, right - left, foot - top);
  }

  private static String letter(int pair) {
    return String.valueOf((char) ('A' + pair));
  }

  private void shafts(Pen pen, double left, double right) {
    double half = 4;
    pen.box("arm", left + 24, -half, at(cone.size()) + PILLAR - 6 - left - 24, 2 * half);
    pen.box("arm", left + 24, secondShaft() - half, end() - left - 24, 2 * half);
    double from = at(cone.size()) + PILLAR - 10;
    pen.box("arm", from, thirdShaft() - half, right - 24 - from, 2 * half);
  }

  private void wheel(Pen pen, double x, double y, int teeth) {
    pen.box("steel", x, y - tip(teeth) / 2, width, tip(teeth));
    pen.line("thin", x, y - radius(teeth), x + width, y - radius(teeth));
    pen.line("thin", x, y + radius(teeth), x + width, y + radius(teeth));
  }

  private void cone(Pen pen, int i, double top) {
    pen.box("reach", at(i) - GAP / 2, top, width + GAP, tip(cone.get(i)) / 2 - top);
    wheel(pen, at(i), 0, cone.get(i));
    pen.words("halo", at(i) + width / 2, -16 * pen.unit(), "middle", String.valueOf(cone.get(i)));
    pen.circle("steel", at(i) + width / 2, top + 10, width * 0.5);
    pen.words("", at(i) + width / 2, top + 10 + 7 * pen.unit(), "middle", String.valueOf(i + 1));
  }

  private void tumbler(Pen pen) {
    double x = at(set.wheel());
    double y = radius(cone.get(set.wheel())) + radius(idler);
    wheel(pen, x, y, idler);
    pen.words("halo", x + width + GAP, y + 7 * pen.unit(), "start", "idler");
    wheel(pen, x, secondShaft(), tumbler);
    pen.words(
        "halo", x + width / 2, secondShaft() + 32 * pen.unit(), "middle", String.valueOf(tumbler));
    if (secondShaft() - radius(tumbler) - y > radius(idler) + 1) {
      pen.line(
          "dim", x + width / 2, y + radius(idler), x + width / 2, secondShaft() - radius(tumbler));
    }
  }

  private void pair(Pen pen, int i, double foot) {
    FixedCentre.Pair pair = pairs.get(i);
    double x = pairAt(i);
    double head = secondShaft() - tip(pair.driver()) / 2;
    pen.box("reach", x - GAP, head, width + 2 * GAP, foot - head);
    wheel(pen, x, secondShaft(), pair.driver());
    wheel(pen, x, thirdShaft(), pair.driven());
    double middle = x + width / 2;
    pen.words(
        "halo", middle, secondShaft() - 16 * pen.unit(), "middle", String.valueOf(pair.driver()));
    pen.words(
        "halo", middle, thirdShaft() + 32 * pen.unit(), "middle", String.valueOf(pair.driven()));
    pen.circle("steel", middle, foot - 12, width * 0.5);
    pen.words("", middle, foot - 12 + 7 * pen.unit(), "middle", letter(i));
  }

  /** The way of the motion in blue, from the link gears to the lead screw. */
  private void path(Pen pen, double left, double right) {
    double x = at(set.wheel()) + width / 2;
    double y2 = secondShaft();
    double y3 = thirdShaft();
    double out = pairAt(set.multiplier()) + width / 2;
    double turn = at(cone.size()) + PILLAR / 2;
    double[] way =
        set.inch()
            ? new double[] {
              left + 6, y2, x, y2, x, 0, turn, 0, turn, y2, out, y2, out, y3, right - 6, y3
            }
            : new double[] {left + 6, 0, x, 0, x, y2, out, y2, out, y3, right - 6, y3};
    pen.trace("blue", way, false);
    pen.trace("blue", new double[] {right - 14, y3 - 5, right - 6, y3, right - 14, y3 + 5}, false);
    double in = set.inch() ? y2 : 0;
    pen.words("blue", left + 6, in - 10, "start", set.into());
    pen.words("blue", right - 6, y3 - 12, "end", "lead screw");
  }
}
