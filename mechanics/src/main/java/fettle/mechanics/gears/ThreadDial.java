package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.List;

/** When the half-nuts may be closed again on a thread that is being cut. */
public final class ThreadDial {

  private ThreadDial() {}

  /**
   * Returns the least number of lead-screw threads between engagements that are in register: the
   * denominator of P_L/P_h in lowest terms. 1 means anywhere.
   *
   * @param screwPitch distance at which the nut can close: axial pitch of the lead screw
   * @param lead lead of the thread being cut
   */
  public static long threadsBetween(Ratio screwPitch, Ratio lead) {
    Teeth.positive("lead screw pitch", screwPitch);
    Teeth.positive("lead cut", lead);
    Ratio q = screwPitch.over(lead).folded();
    if (!q.isRational()) {
      throw new IllegalArgumentException(
          "a lead with π in it is never in register with the lead screw again; keep the nut closed"
              + " and reverse");
    }
    if (q.denominator().bitLength() > 62) {
      throw new IllegalArgumentException("lead and pitch have no usable common multiple");
    }
    return q.denominator().longValueExact();
  }

  /**
   * Returns the lines at which the nut may be closed, counted from 0. Line j of N stands for j z/N
   * threads; it is usable if that is a whole multiple of the threads between engagements. Empty if
   * these do not divide the wheel: then the nut stays closed.
   *
   * @param threadsBetween least lead-screw threads between engagements
   * @param wheel teeth of the dial's wheel
   * @param lines lines on the dial
   */
  public static List<Integer> usableLines(long threadsBetween, int wheel, int lines) {
    if (threadsBetween < 1) {
      throw new IllegalArgumentException(
          "threads between engagements [-] must be 1 or more, found " + threadsBetween);
    }
    Teeth.check("thread dial wheel", wheel);
    if (lines < 1 || lines > 1000) {
      throw new IllegalArgumentException("lines [-] must be 1 to 1000, found " + lines);
    }
    List<Integer> usable = new ArrayList<>();
    if (wheel % threadsBetween == 0) {
      for (int j = 0; j < lines; j++) {
        long passed = (long) j * wheel;
        if (passed % ((long) lines * threadsBetween) == 0) {
          usable.add(j);
        }
      }
    }
    return List.copyOf(usable);
  }
}
