package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.mechanics.bearings.BearingSet;
import fettle.mechanics.shafts.Spindle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The spindle as the topics reckon with it, for those who draw it.
 *
 * @param span distance of the bearings [mm]
 * @param overhang front bearing to the face of the nose [mm]
 * @param bore bore through it [mm]
 * @param body diameter between the bearings [mm]
 * @param nose diameter in front of them [mm]
 * @param chuckLength how far the chuck stands out, 0 if there is none [mm]
 * @param chuckDiameter the largest diameter that turns with it [mm]
 * @param shaft the shaft on its springs, x from the rear bearing
 * @param front bearing at the chuck
 * @param rear bearing at the far end
 */
public record SpindlePortrait(
    double span,
    double overhang,
    double bore,
    double body,
    double nose,
    double chuckLength,
    double chuckDiameter,
    Spindle shaft,
    Bearing front,
    Bearing rear) {

  /**
   * One bearing.
   *
   * @param words what it is
   * @param bore its bore [mm]
   * @param outside its outside diameter, 0 for a bush [mm]
   * @param width width of one bearing, or the length of a bush [mm]
   * @param count how many stand side by side
   * @param preload preload of a pair, 0 for a bush [N]
   * @param set the balls, for bearings that roll
   */
  public record Bearing(
      String words,
      double bore,
      double outside,
      double width,
      int count,
      double preload,
      Optional<BearingSet> set) {}

  /** Returns the spindle of a lathe, if the book tells enough of it. */
  public static Optional<SpindlePortrait> of(Machine machine) {
    try {
      return Headstock.of(machine).map(SpindlePortrait::of);
    } catch (IllegalArgumentException impossible) {
      return Optional.empty();
    }
  }

  private static SpindlePortrait of(Headstock head) {
    return new SpindlePortrait(
        head.span(),
        head.overhang(),
        head.bore(),
        head.body(),
        head.nose(),
        head.chuckLength(),
        head.largest(),
        head.shaft(),
        bearing(head.front()),
        bearing(head.rear()));
  }

  private static Bearing bearing(Headstock.Support support) {
    if (support.rolling().isEmpty()) {
      double length = support.block().need("length").value();
      return new Bearing("bush", support.bore(), 0, length, 1, 0, Optional.empty());
    }
    RollingSet set = support.rolling().get();
    return new Bearing(
        set.count() + " x " + set.values().needText("type"),
        support.bore(),
        set.outside().outside(),
        set.outside().width(),
        set.count(),
        set.isPair() ? set.preload().value() : 0,
        Optional.of(set.set()));
  }

  /**
   * Returns the same spindle with its bearings at another distance, for a curve over the span.
   *
   * @param other distance of the bearings [mm]
   */
  public Spindle withSpan(double other) {
    List<Spindle.Step> steps = new ArrayList<>();
    steps.add(new Spindle.Step(other, body, bore));
    steps.add(new Spindle.Step(overhang, nose, bore));
    List<Spindle.Support> supports = new ArrayList<>();
    for (Spindle.Support s : shaft.supports()) {
      double place = s.place() > 0 ? other : 0;
      supports.add(new Spindle.Support(s.name(), place, s.radial(), s.tilt()));
    }
    return new Spindle(steps, shaft.material(), supports, List.of());
  }

  /**
   * Returns the shaft cut into short steps, so that its bent line shows as a curve.
   *
   * @param parts parts of each step
   */
  public Spindle finely(int parts) {
    List<Spindle.Step> steps = new ArrayList<>();
    for (Spindle.Step s : shaft.steps()) {
      for (int i = 0; i < parts; i++) {
        steps.add(new Spindle.Step(s.length() / parts, s.outer(), s.inner()));
      }
    }
    return new Spindle(steps, shaft.material(), shaft.supports(), List.of());
  }
}
