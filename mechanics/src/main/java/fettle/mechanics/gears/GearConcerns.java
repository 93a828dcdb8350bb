package fettle.mechanics.gears;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;

/** The limits a gear and a pair are held to (common practice where no standard is named). */
public final class GearConcerns {

  private GearConcerns() {}

  /** Returns everything doubtful or wrong about a pair and its two gears. */
  public static List<Concern> of(GearPair pair) {
    List<Concern> found = new ArrayList<>();
    gear("the driver", pair.pinion(), pair.pinionTip(), found);
    gear("the driven gear", pair.wheel(), pair.wheelTip(), found);
    pair(pair, found);
    return List.copyOf(found);
  }

  static void gear(String name, Gear gear, double tip, List<Concern> found) {
    double least = gear.shiftWithoutUndercut();
    String shift = Numbers.fixed(gear.shift(), 3);
    if (gear.shift() < least - 0.3) {
      found.add(
          Concern.refuse(
              name
                  + " of "
                  + gear.teeth()
                  + " teeth is undercut too far: x "
                  + shift
                  + ", without undercut "
                  + Numbers.fixed(least, 3)));
    } else if (gear.shift() < least) {
      found.add(
          Concern.warn(
              name
                  + " of "
                  + gear.teeth()
                  + " teeth is undercut: x "
                  + shift
                  + ", without undercut "
                  + Numbers.fixed(least, 3)));
    }
    if (Math.abs(gear.shift()) > 0.5) {
      found.add(
          Concern.warn(
              name
                  + " has profile shift "
                  + shift
                  + ": a form cutter leaves a wrong profile above 0.5; generate the teeth"));
    }
    if (tip <= gear.base()) {
      found.add(Concern.refuse(name + " has its tips below the base circle: no involute is left"));
      return;
    }
    double width = gear.thicknessAt(tip) / gear.module();
    String text =
        name + " has tips " + Numbers.fixed(width, 3) + " module wide; 0.25 wanted, 0.2 least";
    if (width < 0.2) {
      found.add(Concern.refuse(text));
    } else if (width < 0.25) {
      found.add(Concern.warn(text));
    }
  }

  static void pair(GearPair pair, List<Concern> found) {
    double ratio = pair.contactRatio();
    String contact = "contact ratio is " + Numbers.fixed(ratio, 3) + "; 1.2 wanted, 1.05 least";
    if (ratio < 1.05) {
      found.add(Concern.refuse(contact));
    } else if (ratio < 1.2) {
      found.add(Concern.warn(contact));
    }
    double module = pair.pinion().module();
    interference("pinion", pair.pinionInterference(), module, found);
    interference("wheel", pair.wheelInterference(), module, found);
    double clearance = pair.tipClearance(pair.pinionTip(), pair.wheelTip());
    if (clearance < 0.15 * module) {
      found.add(
          Concern.refuse(
              "tip clearance is "
                  + Numbers.fixed(clearance, 3)
                  + " mm; "
                  + Numbers.fixed(0.15 * module, 3)
                  + " least"));
    }
    double sum = pair.pinion().shift() + pair.wheel().shift();
    if (Math.abs(sum) > 0.8) {
      found.add(
          Concern.refuse(
              "sum of profile shifts is " + Numbers.fixed(sum, 3) + "; 0.8 is the limit"));
    } else if (Math.abs(sum) > 0.6) {
      found.add(Concern.warn("sum of profile shifts is " + Numbers.fixed(sum, 3) + ", above 0.6"));
    }
    double working = Math.toDegrees(pair.workingAngle());
    if (working < 12 || working > 27) {
      found.add(
          Concern.warn(
              "working pressure angle is "
                  + Numbers.fixed(working, 2)
                  + " degrees; 12 to 27 are usual"));
    }
    double play = pair.backlash(0);
    if (play < -1e-9) {
      found.add(
          Concern.refuse(
              "the teeth overlap by "
                  + Numbers.fixed(-play, 3)
                  + " mm on the base tangent: the pair cannot be assembled"));
    }
  }

  private static void interference(String name, double amount, double module, List<Concern> found) {
    if (amount > 0.02 * module) {
      found.add(
          Concern.refuse(
              "the mate's tips dig "
                  + Numbers.fixed(amount, 4)
                  + " mm below the true involute of the "
                  + name));
    } else if (amount > -0.02 * module) {
      found.add(
          Concern.warn(
              "the mate's tips reach the end of the true involute of the "
                  + name
                  + " within "
                  + Numbers.fixed(Math.abs(amount), 4)
                  + " mm: touch up the tips"));
    }
  }
}
