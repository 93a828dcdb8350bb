package fettle.planning.gearbox;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.Concern;
import fettle.mechanics.gears.Gear;
import fettle.mechanics.gears.GearConcerns;
import fettle.mechanics.gears.GearMaterial;
import fettle.mechanics.gears.GearPair;
import fettle.mechanics.gears.GearboxSearch;
import fettle.mechanics.gears.ToothStrength;
import fettle.mechanics.joints.ParallelKey;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A box with everything settled that its parts need: teeth, shifts, widths, bores, shaft centres
 * and where the levers stand.
 *
 * <p>Three parallel shafts of one diameter. The first carries the cone. Round the second swings an
 * arm with an idler that meets one cone wheel after the other; its gear, the tumbler, slides with
 * the arm. The second also carries the drivers of the multiplier. Their mates run loose on the
 * third; a key drawn along it holds one of them, so two can never be in mesh against each other.
 *
 * <p>For threads per inch the cone is driven: the second shaft is parted at the wall, and two equal
 * cross gears bring the motion from the cone's shaft back to the half that drives the multiplier.
 * Tumbler, idler and cross gears are the same in every box of this kind; they are not counted.
 */
public final class SettledBox {

  /** Gap between neighbours of the cone (common practice) [mm]. */
  public static final double GAP = 2;

  /** Room for the wall between cone and multiplier [mm]. */
  public static final double PILLAR = 22;

  private static final double[] SHAFTS = {10, 12, 14, 15, 16, 18, 20, 22, 25, 28, 30, 35, 40};
  private static final double SHEAR = 40;
  private static final double NUT_EFFICIENCY = 0.3;
  private static final double LEAST_RIM = 1.5;
  private static final int FEWEST = 20;
  private static final int MOST_FEWEST = 45;
  private static final double NARROWEST = 6;
  private static final double WIDEST = 10;
  private static final double AIR = 1;
  private static final double PIN = 8;
  private static final double LARGEST_RATIO = 2.8;

  private final GearboxSearch.Design design;
  private final BoxWish wish;
  private final BoxFrame frame;
  private final BoxTeeth teeth;
  private final double shaft;
  private final double width;

  private SettledBox(
      GearboxSearch.Design design,
      BoxWish wish,
      BoxFrame frame,
      BoxTeeth teeth,
      double shaft,
      double width) {
    this.design = design;
    this.wish = wish;
    this.frame = frame;
    this.teeth = teeth;
    this.shaft = shaft;
    this.width = width;
  }

  /**
   * Settles a box.
   *
   * @throws IllegalArgumentException if it cannot be built; the message says why
   */
  public static SettledBox of(GearboxSearch.Design design, BoxWish wish, BoxFrame frame) {
    SettledBox first = settled(design, wish, frame, FEWEST);
    for (int fewest = FEWEST; fewest <= MOST_FEWEST; fewest++) {
      try {
        SettledBox box = settled(design, wish, frame, fewest);
        if (box.rim() >= LEAST_RIM) {
          return box;
        }
      } catch (IllegalArgumentException tooLarge) {
        return first;
      }
    }
    return first;
  }

  private static SettledBox settled(
      GearboxSearch.Design design, BoxWish wish, BoxFrame frame, int fewest) {
    BoxTeeth teeth = BoxTeeth.of(design, frame, fewest);
    double torque = torque(frame, teeth);
    double needed = Math.cbrt(16 * torque * teeth.largest() / BoxTeeth.TUMBLER / Math.PI / SHEAR);
    double shaft =
        DoubleStream.of(SHAFTS)
            .filter(d -> d >= needed)
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "this thrust needs shafts of "
                            + Numbers.significant(needed, 3)
                            + " mm; 40 mm is the largest a box is settled for"));
    double module = frame.module();
    double stress = stress(frame, teeth, NARROWEST * module);
    double wanted = NARROWEST * module * stress / GearMaterial.MILD_STEEL.allowable();
    double width =
        Math.ceil(Math.max(NARROWEST * module, Math.min(WIDEST * module, wanted)) - 1e-9);
    return new SettledBox(design, wish, frame, teeth, shaft, width);
  }

  /** Torque of the second shaft in N mm: that of the screw times the largest ratio. */
  private static double torque(BoxFrame frame, BoxTeeth teeth) {
    double screw = frame.thrust() * frame.lead() / (2 * Math.PI * NUT_EFFICIENCY);
    double most = 1;
    for (GearPair pair : teeth.pairs()) {
      most = Math.max(most, (double) pair.pinion().teeth() / pair.wheel().teeth());
    }
    return screw * most;
  }

  /** Largest Lewis stress of cone, tumbler and multiplier at the thrust [MPa]. */
  private static double stress(BoxFrame frame, BoxTeeth teeth, double width) {
    double module = frame.module();
    double torque = torque(frame, teeth);
    double most = lewis(2 * torque / (module * BoxTeeth.TUMBLER), module, width, teeth.smallest());
    double screw = frame.thrust() * frame.lead() / (2 * Math.PI * NUT_EFFICIENCY);
    for (GearPair pair : teeth.pairs()) {
      double force = 2 * screw / pair.wheel().reference();
      int weaker = Math.min(pair.pinion().teeth(), pair.wheel().teeth());
      most = Math.max(most, lewis(force, module, width, weaker));
    }
    return most;
  }

  private static double lewis(double force, double module, double width, int teeth) {
    return ToothStrength.lewisStress(
        force, 1, width, module, ToothStrength.lewisFactor(Math.max(12, teeth)));
  }

  /** Least thickness between keyway and root over all keyed wheels [mm]. */
  private double rim() {
    double least = Double.POSITIVE_INFINITY;
    for (BoxWheel wheel : wheels()) {
      if (wheel.fixing() != BoxWheel.Fixing.LOOSE || wheel.bore() == shaft) {
        double rim = (wheel.gear().root() - wheel.bore()) / 2 - key().hubDepth();
        least = Math.min(least, rim);
      }
    }
    return least;
  }

  /** Returns the proportions it was settled from. */
  public GearboxSearch.Design design() {
    return design;
  }

  /** Returns what it was asked for. */
  public BoxWish wish() {
    return wish;
  }

  /** Returns what it is built round. */
  public BoxFrame frame() {
    return frame;
  }

  /** Returns the teeth of the cone, in the order of the design. */
  public List<Integer> cone() {
    return teeth.cone();
  }

  /** Returns the pairs of the multiplier, in the order of the design. */
  public List<GearPair> pairs() {
    return teeth.pairs();
  }

  /** Returns the teeth of the tumbler. */
  public int tumbler() {
    return BoxTeeth.TUMBLER;
  }

  /** Returns the teeth of the idler on the arm. */
  public int idler() {
    return teeth.idler();
  }

  /**
   * Returns the diameter of the three shafts.
   *
   * @return diameter [mm]
   */
  public double shaft() {
    return shaft;
  }

  /** Returns the section of the keys. */
  public ParallelKey key() {
    return ParallelKey.of(shaft);
  }

  /**
   * Returns the face width of all wheels.
   *
   * @return width [mm]
   */
  public double width() {
    return width;
  }

  /**
   * Returns the length of the cone.
   *
   * @return length over the outer faces [mm]
   */
  public double coneLength() {
    return cone().size() * (width + GAP) - GAP;
  }

  /**
   * Returns the length of the multiplier.
   *
   * @return length over the outer faces [mm]
   */
  public double multiplierLength() {
    return pairs().size() * (width + GAP) - GAP;
  }

  /**
   * Returns the distance of cone and tumbler shafts: the tumbler clears the largest cone wheel, and
   * equal cross gears fit between without profile shift.
   *
   * @return distance [mm]
   */
  public double coneCentres() {
    double least = frame.module() * (teeth.largest() + BoxTeeth.TUMBLER + 4) / 2 + AIR;
    return frame.module() * cross(least);
  }

  private int cross(double least) {
    return (int) Math.ceil(least / frame.module() - 1e-9);
  }

  /**
   * Returns the distance of the multiplier's shafts.
   *
   * @return distance [mm]
   */
  public double multiplierCentres() {
    return pairs().get(0).axes();
  }

  /**
   * Returns the distance of the idler's pin from the tumbler shaft.
   *
   * @return radius of the arm [mm]
   */
  public double arm() {
    return frame.module() * (BoxTeeth.TUMBLER + idler()) / 2;
  }

  /**
   * Where the arm stands for one cone wheel.
   *
   * @param number number of the notch, from 1
   * @param wheel teeth of the cone wheel
   * @param along distance of the tumbler's middle from the outer face of the first wheel [mm]
   * @param swing angle of the arm from the line of the two shafts [rad]
   */
  public record Notch(int number, int wheel, double along, double swing) {}

  /** Returns the notches of the arm. */
  public List<Notch> notches() {
    List<Notch> notches = new ArrayList<>();
    for (int i = 0; i < cone().size(); i++) {
      double reach = frame.module() * (idler() + cone().get(i)) / 2;
      double cos =
          (coneCentres() * coneCentres() + arm() * arm() - reach * reach)
              / (2 * coneCentres() * arm());
      double swing = Math.acos(Math.max(-1, Math.min(1, cos)));
      notches.add(new Notch(i + 1, cone().get(i), i * (width + GAP) + width / 2, swing));
    }
    return notches;
  }

  /**
   * Returns how far the draw key stands in for a pair.
   *
   * @param pair number of the pair, from 0
   * @return distance from its first place [mm]
   */
  public double drawn(int pair) {
    return pair * (width + GAP);
  }

  /** Returns the letter on the lever for a pair. */
  public static String letter(int pair) {
    return String.valueOf((char) ('A' + pair));
  }

  /** Returns the lead cut with the cone driving, the first link in. */
  public Ratio lead(int notch, int pair) {
    return design.cone().get(notch).times(design.multipliers().get(pair));
  }

  /** Returns the threads per inch cut with the cone driven, the second link in. */
  public Ratio perInch(int notch, int pair) {
    return design.constant().times(design.cone().get(notch)).over(design.multipliers().get(pair));
  }

  /** Returns every wheel, as it is made. */
  public List<BoxWheel> wheels() {
    List<BoxWheel> wheels = new ArrayList<>();
    double module = frame.module();
    String idler = "idler z " + idler();
    for (int z : cone()) {
      double axes = module * (z + idler()) / 2;
      wheels.add(plain("cone gear " + z, z, shaft, BoxWheel.Fixing.KEYED, idler, axes));
    }
    double inner = arm();
    wheels.add(
        plain("idler " + idler(), idler(), PIN, BoxWheel.Fixing.LOOSE, "cone and tumbler", inner));
    int tumbler = BoxTeeth.TUMBLER;
    wheels.add(plain("tumbler " + tumbler, tumbler, shaft, BoxWheel.Fixing.SLIDING, idler, inner));
    for (int p = 0; p < pairs().size(); p++) {
      GearPair pair = pairs().get(p);
      int driver = pair.pinion().teeth();
      int driven = pair.wheel().teeth();
      wheels.add(
          new BoxWheel(
              "driver " + letter(p) + " " + driver,
              pair.pinion(),
              pair.pinionTip(),
              width,
              shaft,
              BoxWheel.Fixing.KEYED,
              "driven " + letter(p) + " z " + driven,
              pair.axes(),
              1));
      wheels.add(
          new BoxWheel(
              "driven " + letter(p) + " " + driven,
              pair.wheel(),
              pair.wheelTip(),
              width,
              shaft,
              BoxWheel.Fixing.LOOSE,
              "driver " + letter(p) + " z " + driver,
              pair.axes(),
              1));
    }
    if (!wish.perInch().isEmpty()) {
      int z = (int) Math.rint(coneCentres() / module);
      Gear cross = new Gear(module, z, 0, frame.rack());
      wheels.add(
          new BoxWheel(
              "cross gear " + z,
              cross,
              cross.tip(0),
              width,
              shaft,
              BoxWheel.Fixing.KEYED,
              "its like",
              coneCentres(),
              2));
    }
    return List.copyOf(wheels);
  }

  private BoxWheel plain(
      String name, int z, double bore, BoxWheel.Fixing fixing, String mate, double axes) {
    Gear gear = new Gear(frame.module(), z, 0, frame.rack());
    return new BoxWheel(name, gear, gear.tip(0), width, bore, fixing, mate, axes, 1);
  }

  /** Returns what is doubtful about the box, in words. */
  public List<String> findings() {
    List<String> findings = new ArrayList<>();
    for (int p = 0; p < pairs().size(); p++) {
      for (Concern concern : GearConcerns.of(pairs().get(p))) {
        findings.add("pair " + letter(p) + ": " + concern.text());
      }
      double ratio = (double) pairs().get(p).pinion().teeth() / pairs().get(p).wheel().teeth();
      if (ratio > LARGEST_RATIO) {
        findings.add(
            "pair "
                + letter(p)
                + " speeds up "
                + Numbers.significant(ratio, 3)
                + " times; up to 2.8 is usual in feed boxes (design texts, from memory)");
      }
    }
    if (rim() < LEAST_RIM) {
      findings.add(
          "the smallest wheel leaves "
              + Numbers.fixed(rim(), 2)
              + " mm between keyway and root; 1.5 mm least (common practice): cut it in one with its"
              + " shaft");
    }
    double stress = stress(frame, teeth, width);
    if (stress > GearMaterial.MILD_STEEL.allowable()) {
      findings.add(
          "at a thrust of "
              + Numbers.significant(frame.thrust(), 4)
              + " N the weakest tooth bears "
              + Numbers.significant(stress, 3)
              + " MPa; 138 MPa is allowed for mild steel (Lewis, design texts, from memory)");
    }
    return findings;
  }
}
