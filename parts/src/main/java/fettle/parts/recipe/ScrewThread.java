package fettle.parts.recipe;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.threads.ThreadDesignation;
import fettle.mechanics.threads.ThreadProfile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A screw thread, as far as a sheet and a solid need it.
 *
 * @param designation as called out, e.g. {@code M10x1}, {@code Tr 14x3 LH}
 * @param form profile
 * @param major nominal (major) diameter [mm]
 * @param pitch pitch; the lead is pitch times starts [mm]
 * @param starts number of starts
 * @param hand right or left
 * @param rootOutside minor diameter of the external thread [mm]
 * @param rootInside minor diameter of the internal thread [mm]
 */
public record ScrewThread(
    String designation,
    Form form,
    double major,
    double pitch,
    int starts,
    Hand hand,
    double rootOutside,
    double rootInside) {

  /** Thread profiles. */
  public enum Form {
    /** ISO 68-1 metric, 60 degrees. */
    METRIC,
    /** ISO 2901 trapezoidal, 30 degrees. */
    TRAPEZOIDAL,
    /** Any other; diameters are given. */
    OTHER
  }

  /** Hand of a thread. */
  public enum Hand {
    RIGHT,
    LEFT
  }

  private static final double[][] COARSE = {
    {1.6, 0.35}, {2, 0.4}, {2.5, 0.45}, {3, 0.5}, {3.5, 0.6}, {4, 0.7}, {5, 0.8}, {6, 1}, {8, 1.25},
    {10, 1.5}, {12, 1.75}, {14, 2}, {16, 2}, {18, 2.5}, {20, 2.5}, {22, 2.5}, {24, 3}, {27, 3},
    {30, 3.5}, {33, 3.5}, {36, 4}, {39, 4}, {42, 4.5}, {48, 5}
  };
  private static final Pattern METRIC =
      Pattern.compile("M\\s*([0-9.]+)(?:\\s*x\\s*([0-9.]+))?(\\s+LH)?");
  private static final Pattern TRAPEZOIDAL =
      Pattern.compile("Tr\\s*([0-9.]+)\\s*x\\s*([0-9.]+)(?:\\s*P\\s*([0-9.]+))?(\\s+LH)?");

  /** Refuses a thread whose root is not inside its crest. */
  public ScrewThread {
    if (!(pitch > 0)
        || starts < 1
        || starts > 12
        || !(rootOutside > 0)
        || !(rootOutside < major)
        || !(rootInside > 0)
        || !(rootInside < major)) {
      throw new IllegalArgumentException(
          designation
              + ": a thread needs a pitch above 0, 1 to 12 starts and minor diameters between 0"
              + " and the major diameter "
              + major
              + " mm");
    }
  }

  /**
   * Returns a metric thread of the basic profile.
   *
   * @param major nominal diameter [mm]
   * @param pitch pitch [mm]
   * @param hand right or left
   */
  public static ScrewThread metric(double major, double pitch, Hand hand) {
    String text = "M" + Numbers.significant(major, 6);
    if (pitch != coarse(major)) {
      text += "x" + Numbers.significant(pitch, 6);
    }
    return new ScrewThread(
        text + (hand == Hand.LEFT ? " LH" : ""),
        Form.METRIC,
        major,
        pitch,
        1,
        hand,
        major - 17 * Math.sqrt(3) / 24 * pitch,
        major - 5 * Math.sqrt(3) / 8 * pitch);
  }

  /**
   * Reads a designation.
   *
   * @param designation e.g. {@code M8}, {@code M10x1}, {@code Tr 14x3 LH}, {@code Tr 16x6 P3}
   */
  public static ScrewThread parse(String designation) {
    Matcher m = METRIC.matcher(designation.trim());
    if (m.matches()) {
      double major = Double.parseDouble(m.group(1));
      double pitch = m.group(2) == null ? coarse(major) : Double.parseDouble(m.group(2));
      if (!(pitch > 0)) {
        throw new IllegalArgumentException(
            "'" + designation + "' has no coarse pitch in ISO 261; write the pitch, as in M10x1");
      }
      return metric(major, pitch, hand(m.group(3)));
    }
    Matcher t = TRAPEZOIDAL.matcher(designation.trim());
    if (t.matches()) {
      double lead = Double.parseDouble(t.group(2));
      double pitch = t.group(3) == null ? lead : Double.parseDouble(t.group(3));
      return trapezoidal(
          Double.parseDouble(t.group(1)), pitch, (int) Math.round(lead / pitch), hand(t.group(4)));
    }
    return inch(designation.trim());
  }

  /** Reads any other designation of the standards, such as {@code 3/4-8 Acme}. */
  private static ScrewThread inch(String designation) {
    ThreadDesignation read;
    try {
      read = ThreadDesignation.parse(designation);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "'"
              + designation
              + "' is no thread that can be read; write M8, M10x1, Tr 14x3, Tr 16x6 P3 or 3/4-8"
              + " Acme, with LH after it for left hand",
          e);
    }
    ThreadProfile p = read.profile();
    Hand hand = designation.endsWith("LH") ? Hand.LEFT : Hand.RIGHT;
    return new ScrewThread(designation, Form.OTHER, p.d(), p.p(), 1, hand, p.d3(), p.nutMinor());
  }

  /**
   * Returns a trapezoidal thread; crest clearance 0.15 mm at pitch 1.5, 0.25 to pitch 5, 0.5 to
   * pitch 12, 1 above (ISO 2904, from memory).
   *
   * @param major nominal diameter [mm]
   * @param pitch pitch [mm]
   * @param starts number of starts
   * @param hand right or left
   */
  public static ScrewThread trapezoidal(double major, double pitch, int starts, Hand hand) {
    double clearance = pitch <= 1.5 ? 0.15 : pitch <= 5 ? 0.25 : pitch <= 12 ? 0.5 : 1;
    String text =
        "Tr "
            + Numbers.significant(major, 6)
            + "x"
            + Numbers.significant(pitch * starts, 6)
            + (starts > 1 ? " P" + Numbers.significant(pitch, 6) : "");
    return new ScrewThread(
        text + (hand == Hand.LEFT ? " LH" : ""),
        Form.TRAPEZOIDAL,
        major,
        pitch,
        starts,
        hand,
        major - pitch - 2 * clearance,
        major - pitch);
  }

  /**
   * Returns a thread of another form by its diameters.
   *
   * @param designation as called out
   * @param major major diameter [mm]
   * @param pitch pitch [mm]
   * @param root minor diameter, external and internal [mm]
   */
  public static ScrewThread other(String designation, double major, double pitch, double root) {
    Hand hand = designation.endsWith("LH") ? Hand.LEFT : Hand.RIGHT;
    return new ScrewThread(designation, Form.OTHER, major, pitch, 1, hand, root, root);
  }

  /**
   * Returns the coarse pitch of a metric thread (ISO 261), or 0 if there is none.
   *
   * @param major nominal diameter [mm]
   * @return coarse pitch [mm]
   */
  public static double coarse(double major) {
    for (double[] row : COARSE) {
      if (row[0] == major) {
        return row[1];
      }
    }
    return 0;
  }

  private static Hand hand(@Nullable String mark) {
    return mark == null ? Hand.RIGHT : Hand.LEFT;
  }
}
