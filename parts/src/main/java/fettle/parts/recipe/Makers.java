package fettle.parts.recipe;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Recipes of everyday parts from their engineering data. */
public final class Makers {

  private static final double WIDE = 0.5;

  private Makers() {}

  /**
   * What a spur gear is made from.
   *
   * @param teeth number of teeth
   * @param module module [mm]
   * @param pressureAngle pressure angle [rad]
   * @param shift profile shift factor [-]
   * @param tip tip diameter; 0 for reference diameter plus 2 m (1 + x) [mm]
   * @param width face width [mm]
   * @param bore bore
   * @param hubDiameter diameter of a hub on the right; 0 for none [mm]
   * @param hubLength length of the hub [mm]
   * @param mate the gear it runs with
   * @param further further lines of the gear table, e.g. span over teeth with limits
   */
  public record GearData(
      int teeth,
      double module,
      double pressureAngle,
      double shift,
      double tip,
      double width,
      Size bore,
      double hubDiameter,
      double hubLength,
      String mate,
      List<String> further) {
    /** Keeps its own copy. */
    public GearData {
      further = List.copyOf(further);
    }
  }

  /**
   * Returns the recipe of a spur gear; its solid is the blank, whose outline is the tip cylinder.
   * Basic rack of ISO 53: addendum m, dedendum 1.25 m.
   *
   * @param heading title block
   * @param g gear data
   * @param key keyway in the bore, if any
   */
  public static Turned gear(Heading heading, GearData g, Turned.@Nullable BoreKeyway key) {
    double reference = g.teeth() * g.module();
    double tip = g.tip() > 0 ? g.tip() : reference + 2 * g.module() * (1 + g.shift());
    double root = reference - 2 * g.module() * (1.25 - g.shift());
    Toothing toothing =
        new Toothing(
            g.teeth(),
            g.module(),
            g.pressureAngle(),
            0,
            g.shift(),
            reference,
            root,
            g.mate(),
            g.further());
    Edge chamfer = Edge.chamfer(Math.min(WIDE, g.width() / 8));
    List<Step> outside = new ArrayList<>();
    outside.add(Step.cylinder("teeth", tip, g.width()).edges(chamfer, chamfer).teeth(toothing));
    if (g.hubDiameter() > 0) {
      outside.add(Step.cylinder("hub", g.hubDiameter(), g.hubLength()).edges(Edge.SHARP, chamfer));
    }
    double length = g.width() + (g.hubDiameter() > 0 ? g.hubLength() : 0);
    Bore bore = g.bore().nominal() > 0 ? Bore.of(fine("bore", g.bore(), length)) : Bore.NONE;
    return new Turned(heading, outside, bore, Bore.NONE, key == null ? List.of() : List.of(key));
  }

  private static Step fine(String name, Size bore, double length) {
    return Step.cylinder(name, bore, Size.of(length))
        .edges(Edge.chamfer(WIDE), Edge.SHARP)
        .finish(Finish.cut(0.0016));
  }

  /**
   * Returns the recipe of a screw spindle: a journal, the threaded length, a journal.
   *
   * @param heading title block
   * @param thread thread
   * @param length threaded length [mm]
   * @param left journal on the left: its diameter, and its length in the second entry
   * @param right journal on the right
   */
  public static Turned screw(
      Heading heading, ScrewThread thread, double length, Journal left, Journal right) {
    List<Step> steps = new ArrayList<>();
    Edge chamfer = Edge.chamfer(WIDE);
    if (left.length() > 0) {
      steps.add(
          Step.cylinder("left journal", left.diameter(), Size.of(left.length()))
              .edges(chamfer, Edge.SHARP)
              .finish(Finish.cut(0.0008)));
    }
    Edge lead = Edge.chamfer((thread.major() - thread.rootOutside()) / 2);
    steps.add(
        Step.cylinder("thread", thread.major(), length)
            .edges(lead, lead)
            .thread(thread, 0, End.LEFT));
    if (right.length() > 0) {
      steps.add(
          Step.cylinder("right journal", right.diameter(), Size.of(right.length()))
              .edges(Edge.SHARP, chamfer)
              .finish(Finish.cut(0.0008)));
    }
    return new Turned(heading, steps, Bore.NONE, Bore.NONE, List.of());
  }

  /**
   * A journal.
   *
   * @param diameter its diameter with its fit
   * @param length its length; 0 for none [mm]
   */
  public record Journal(Size diameter, double length) {}

  /**
   * Returns the recipe of a round nut with a flange and bolt holes.
   *
   * @param heading title block
   * @param thread internal thread
   * @param body outside diameter of the body with its fit
   * @param length overall length [mm]
   * @param flange diameter and thickness of the flange on the left
   * @param bolts bolt holes in the flange, if any
   */
  public static Turned nut(
      Heading heading,
      ScrewThread thread,
      Size body,
      double length,
      Journal flange,
      Turned.@Nullable AxialHoles bolts) {
    Edge chamfer = Edge.chamfer(WIDE);
    double rest = length - flange.length();
    List<Step> steps = new ArrayList<>();
    if (flange.length() > 0) {
      steps.add(
          Step.cylinder("flange", flange.diameter(), Size.of(flange.length()))
              .edges(chamfer, chamfer));
    }
    steps.add(
        Step.cylinder("body", body, Size.of(rest))
            .edges(Edge.SHARP, Edge.chamfer(1))
            .finish(Finish.cut(0.0016)));
    Edge lead = Edge.chamfer((thread.major() - thread.rootInside()) / 2);
    Step bore =
        Step.cylinder("thread", thread.major(), length)
            .edges(lead, Edge.SHARP)
            .thread(thread, 0, End.LEFT);
    return new Turned(
        heading, steps, Bore.of(bore), Bore.NONE, bolts == null ? List.of() : List.of(bolts));
  }

  /**
   * Returns the recipe of a handwheel: rim, web, hub, bore, a tapped hole for the grip.
   *
   * @param heading title block
   * @param diameter outside diameter [mm]
   * @param rim width of the rim [mm]
   * @param hub diameter and length of the hub
   * @param bore bore with its fit
   * @param grip thread of the grip, e.g. M6
   */
  public static Turned handwheel(
      Heading heading, double diameter, double rim, Journal hub, Size bore, ScrewThread grip) {
    double depth = hub.length() - rim;
    if (!(depth > 0) || !(hub.diameter().nominal() + 6 * grip.major() < diameter)) {
      throw new IllegalArgumentException(
          heading.name()
              + ": the hub must be longer than the rim is wide, and leave room for the grip");
    }
    double circle = diameter - 3 * grip.major();
    HoleForm hole = HoleForm.tapped(grip, HoleForm.THROUGH, HoleForm.THROUGH);
    return new Turned(
        heading,
        List.of(
            Step.cylinder("rim", diameter, rim).edges(Edge.round(rim / 4), Edge.round(rim / 4)),
            Step.cylinder("hub", hub.diameter(), Size.of(depth))
                .edges(Edge.round(2), Edge.chamfer(1))),
        Bore.of(fine("bore", bore, hub.length())),
        Bore.NONE,
        List.of(new Turned.AxialHoles("grip", End.LEFT, 0, circle, 1, 0, hole)));
  }

  /**
   * Returns the recipe of a graduated dial: a ring with lines on its rim.
   *
   * @param heading title block
   * @param diameter engraved diameter [mm]
   * @param width width of the ring [mm]
   * @param bore bore with its fit
   * @param divisions number of divisions
   * @param perDivision what one division reads [mm]
   * @param sense side of the next higher number
   */
  public static Turned dial(
      Heading heading,
      double diameter,
      double width,
      Size bore,
      int divisions,
      double perDivision,
      Turned.Sense sense) {
    int major = divisions % 10 == 0 ? 10 : divisions % 5 == 0 ? 5 : 1;
    int middle = major == 10 ? 5 : 1;
    Turned.Graduations lines =
        new Turned.Graduations(
            "graduations",
            End.RIGHT,
            0,
            divisions,
            middle,
            major,
            Math.min(3, width / 5),
            major * perDivision,
            sense);
    Edge chamfer = Edge.chamfer(WIDE);
    Heading noted =
        new Heading(
            heading.name(),
            heading.title(),
            heading.number(),
            heading.material(),
            heading.density(),
            heading.generalTolerance(),
            heading.finish(),
            heading.stock(),
            with(
                heading.notes(),
                divisions + " divisions of " + Numbers.significant(perDivision, 6) + " mm"));
    return new Turned(
        noted,
        List.of(Step.cylinder("rim", diameter, width).edges(chamfer, chamfer)),
        Bore.of(fine("bore", bore, width)),
        Bore.NONE,
        List.of(lines));
  }

  private static List<String> with(List<String> notes, String one) {
    List<String> all = new ArrayList<>(notes);
    all.add(one);
    return all;
  }
}
