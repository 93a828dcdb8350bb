package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.gears.Banjo;
import fettle.mechanics.gears.BasicRack;
import fettle.mechanics.gears.Gear;
import java.util.ArrayList;
import java.util.List;

/** Draws change gears on the banjo, and says how far each keeps from what it might touch. */
public final class BanjoPicture {

  private final Banjo banjo;
  private final double module;
  private final List<Wheel> wheels = new ArrayList<>();
  private final List<double[]> studs = new ArrayList<>();
  private final List<Room> rooms = new ArrayList<>();

  private BanjoPicture(Banjo banjo, double module) {
    this.banjo = banjo;
    this.module = module;
  }

  /**
   * Room between a wheel and what it might touch.
   *
   * @param words the wheel and what it passes
   * @param room air between them [mm]
   */
  public record Room(String words, double room) {}

  /**
   * A set-up, drawn.
   *
   * @param drawing the picture
   * @param rooms the room left, in the order of the wheels
   * @param studs distance of each stud from the lead screw [mm]
   */
  public record Drawn(Drawing drawing, List<Room> rooms, List<Double> studs) {
    /** Keeps its own copies. */
    public Drawn {
      rooms = List.copyOf(rooms);
      studs = List.copyOf(studs);
    }
  }

  /**
   * Draws a set-up.
   *
   * @param banjo the arm
   * @param module module of the wheels [mm]
   * @param train drivers and driven wheels in turn, two, four or six
   * @param idler wheel between two; 0 if there is none
   * @param turned how far the first driver is turned [-]
   */
  public static Drawn of(
      Banjo banjo, double module, List<Integer> train, int idler, double turned) {
    return new BanjoPicture(banjo, module).drawn(train, idler, turned);
  }

  private Drawn drawn(List<Integer> train, int idler, double turned) {
    lay(train, idler);
    clearances(train, idler);
    Bounds bounds = new Bounds();
    wheels.forEach(w -> bounds.take(w.x(), w.y(), w.tip() / 2));
    bounds.take(banjo.axes(), 0, 16);
    bounds.take(banjo.axes() * 0.5, 26, 4);
    Pen pen = Pen.of(1.1 * Math.max(bounds.width(), bounds.height()), turned);
    arm(pen);
    for (int i = 0; i < wheels.size(); i++) {
      Wheel wheel = wheels.get(i);
      boolean ends = i == 0 || i == wheels.size() - 1;
      double shaft = i == 0 ? banjo.headShaft() : ends ? banjo.screwShaft() : banjo.stud();
      wheel.draw(pen, Math.min(shaft / 2, wheel.gear().root() / 2.6), "");
    }
    pen.trace("behind", slot(), true);
    labels(pen, train, idler);
    double rim = 0.05 * bounds.width();
    Drawing drawing =
        pen.done(
            "Change gears on the banjo, seen from the gear end",
            bounds.left() - rim,
            bounds.top() - rim,
            bounds.width() + 2 * rim,
            bounds.height() + 2 * rim);
    return new Drawn(drawing, rooms, studs.stream().map(s -> distance(s[0], s[1])).toList());
  }

  private double distance(double x, double y) {
    return Math.hypot(x - banjo.axes(), y);
  }

  private Wheel wheel(int teeth, double x, double y) {
    Gear gear = new Gear(module, teeth, 0, BasicRack.of(Math.toRadians(20)));
    return new Wheel(gear, gear.tip(0), x, y, -Math.PI / 2, 1, "steel");
  }

  private double pitch(int a, int b) {
    return module * (a + b) / 2;
  }

  private void lay(List<Integer> t, int idler) {
    if (t.size() == 2) {
      Wheel a = wheel(t.get(0), 0, 0);
      wheels.add(a);
      if (idler > 0) {
        Wheel i = mesh(a, idler, stud(pitch(t.get(0), idler), pitch(idler, t.get(1))));
        wheels.add(i);
        wheels.add(mesh(i, t.get(1), screw()));
      } else {
        wheels.add(mesh(a, t.get(1), screw()));
      }
      return;
    }
    double last = pitch(t.get(t.size() - 2), t.get(t.size() - 1));
    double middle = t.size() == 6 ? pitch(t.get(2), t.get(3)) : 0;
    double[] first = stud(pitch(t.get(0), t.get(1)), last + middle);
    Wheel a = wheel(t.get(0), 0, 0);
    wheels.add(a);
    Wheel b = mesh(a, t.get(1), first);
    wheels.add(b);
    Wheel c = b.beside(gear(t.get(2)), gear(t.get(2)).tip(0)).styled("steel near");
    wheels.add(c);
    if (t.size() == 6) {
      double share = last / (last + middle);
      double[] second = {banjo.axes() + (first[0] - banjo.axes()) * share, first[1] * share};
      studs.add(second);
      Wheel d = mesh(c, t.get(3), second);
      wheels.add(d);
      Wheel e = d.beside(gear(t.get(4)), gear(t.get(4)).tip(0)).styled("steel");
      wheels.add(e);
      wheels.add(mesh(e, t.get(5), screw()));
    } else {
      wheels.add(mesh(c, t.get(3), screw()));
    }
  }

  private double[] screw() {
    return new double[] {banjo.axes(), 0};
  }

  private Gear gear(int teeth) {
    return new Gear(module, teeth, 0, BasicRack.of(Math.toRadians(20)));
  }

  private Wheel mesh(Wheel from, int teeth, double[] place) {
    double dx = place[0] - from.x();
    double dy = place[1] - from.y();
    return from.meshing(gear(teeth), gear(teeth).tip(0), Math.hypot(dx, dy), Math.atan2(dy, dx));
  }

  /** Where the circles about both axes meet, above the line between them. */
  private double[] stud(double fromHead, double fromScrew) {
    double d = banjo.axes();
    double along = (d * d + fromHead * fromHead - fromScrew * fromScrew) / (2 * d);
    double up = Math.sqrt(Math.max(0, fromHead * fromHead - along * along));
    double[] place = {along, -up};
    studs.add(place);
    return place;
  }

  private double swing() {
    double[] toward = studs.isEmpty() ? new double[] {0, 0} : studs.get(0);
    return Math.atan2(toward[1], toward[0] - banjo.axes());
  }

  private double[] slot() {
    double angle = swing();
    double half = banjo.stud() / 2 + 1;
    return bar(Math.cos(angle), Math.sin(angle), banjo.slotLow(), banjo.slotHigh(), half);
  }

  private void arm(Pen pen) {
    double angle = swing();
    double wide = banjo.stud() / 2 + 8;
    double far = banjo.slotHigh() + 12;
    pen.trace("arm", bar(Math.cos(angle), Math.sin(angle), -16, far, wide), true);
    pen.trace("slot", slot(), true);
    pen.line("centre", 0, 0, banjo.axes(), 0);
  }

  private double[] bar(double c, double s, double from, double to, double half) {
    double x = banjo.axes();
    return new double[] {
      x + from * c - half * s,
      from * s + half * c,
      x + to * c - half * s,
      to * s + half * c,
      x + to * c + half * s,
      to * s - half * c,
      x + from * c + half * s,
      from * s - half * c
    };
  }

  private void labels(Pen pen, List<Integer> train, int idler) {
    String names = "ABCDEF";
    for (int i = 0; i < wheels.size(); i++) {
      Wheel w = wheels.get(i);
      boolean between = train.size() == 2 && idler > 0 && i == 1;
      int letter = train.size() == 2 && i == wheels.size() - 1 ? 1 : i;
      String word =
          between ? "idler " + w.gear().teeth() : names.charAt(letter) + " " + w.gear().teeth();
      boolean shared = i > 0 && wheels.get(i - 1).x() == w.x() && wheels.get(i - 1).y() == w.y();
      double drop = shared ? 30 * pen.unit() : -8 * pen.unit();
      pen.words("halo", w.x(), w.y() + drop, "middle", word);
    }
    pen.dimension(0, 26, banjo.axes(), 26, Numbers.significant(banjo.axes(), 5) + " mm");
  }

  private void clearances(List<Integer> t, int idler) {
    Wheel first = wheels.get(0);
    Wheel last = wheels.get(wheels.size() - 1);
    room("first driver to the lead screw's boss", first, banjo.axes(), banjo.screwShaft());
    room("last wheel to the driver's boss", last, banjo.axes(), banjo.headShaft());
    for (int i = 1; i + 1 < wheels.size(); i++) {
      Wheel w = wheels.get(i);
      String name = t.size() == 2 && idler > 0 ? "idler" : "wheel " + "ABCDEF".charAt(i);
      boolean meshesHead = i == 1;
      boolean meshesScrew = i == wheels.size() - 2;
      if (!meshesHead) {
        room(name + " to the driver's boss", w, Math.hypot(w.x(), w.y()), banjo.headShaft());
      }
      if (!meshesScrew) {
        room(name + " to the lead screw's boss", w, distance(w.x(), w.y()), banjo.screwShaft());
      }
    }
    if (t.size() == 2) {
      rooms.add(
          new Room(
              "driver to driven wheel",
              idler > 0 ? banjo.axes() - (first.tip() + last.tip()) / 2 : 0));
    }
  }

  private void room(String words, Wheel wheel, double distance, double shaft) {
    rooms.add(new Room(words, distance - wheel.tip() / 2 - shaft / 2));
  }
}
