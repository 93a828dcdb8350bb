package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.threads.ThreadProfile;

/** Draws a feed screw in its nut from the side, the nut cut open, so that its play can be seen. */
public final class ScrewPicture {

  private static final double EXAGGERATED = 0.22;

  private final ThreadProfile profile;
  private final double nut;
  private final double play;

  private ScrewPicture(ThreadProfile profile, double nut, double play) {
    this.profile = profile;
    this.nut = nut;
    this.play = play;
  }

  /**
   * Draws a screw in its nut.
   *
   * @param profile the thread
   * @param lead lead, negative if it is left-handed [mm]
   * @param length length of the nut [mm]
   * @param play axial play between the flanks [mm]
   * @param turned how far the screw is turned [-]
   */
  public static Drawing of(
      ThreadProfile profile, double lead, double length, double play, double turned) {
    return new ScrewPicture(profile, length, play).drawn(lead, turned);
  }

  /**
   * Returns by how much the play is drawn too large.
   *
   * @param profile the thread
   * @param play axial play [mm]
   * @return factor, 1 or more [-]
   */
  public static double factor(ThreadProfile profile, double play) {
    if (!(play > 0)) {
      return 1;
    }
    return Math.max(1, Math.floor(EXAGGERATED * profile.p() / play));
  }

  private Drawing drawn(double lead, double turned) {
    double room = Math.max(2.2 * Math.abs(lead), 6);
    double length = nut + 2 * room + 4 * profile.p();
    double dial = 2.2 * profile.d();
    Pen pen = Pen.of(length + dial * 1.3, turned);
    pen.line("centre", -6, 0, length + 4, 0);
    pen.trace("body", rod(length), true);
    helix(pen, length, lead < 0);
    double start = lead > 0 ? room * 0.6 : length - nut - room * 0.6;
    pen.sliding(lead, p -> nut(p, start));
    end(pen, length + dial * 0.75, dial / 2);
    double low = 1.45 * profile.d();
    pen.dimension(start, -low, start + nut, -low, "nut " + Numbers.significant(nut, 4) + " mm");
    double x = 1.5 * profile.p();
    pen.words(
        "",
        x,
        low,
        "start",
        "Ø "
            + Numbers.significant(profile.d(), 4)
            + ", pitch "
            + Numbers.significant(profile.p(), 4)
            + " mm"
            + (lead < 0 ? ", left hand" : ", right hand"));
    double high = 1.9 * profile.d();
    return pen.done(
        "The screw in its nut from the side, the nut cut open",
        -6,
        -high,
        length + dial * 1.3 + 6,
        2 * high);
  }

  /** The outline of the screw: crests above, the same half a pitch on below. */
  private double[] rod(double length) {
    int many = (int) Math.ceil(length / profile.p());
    double[] points = new double[2 * 8 * many];
    int at = 0;
    for (int i = 0; i < many; i++) {
      at = tooth(points, at, i * profile.p(), -1);
    }
    for (int i = many - 1; i >= 0; i--) {
      at = tooth(points, at, (i + 1) * profile.p(), 1);
    }
    return points;
  }

  private int tooth(double[] points, int from, double start, int side) {
    double outer = side * profile.d() / 2;
    double core = side * profile.d3() / 2;
    double crest = crest() / 2;
    double foot = foot() / 2;
    double way = -side;
    double middle = start + way * profile.p() / 2 + (side > 0 ? profile.p() / 2 : 0);
    double[] xy = {
      middle - way * foot,
      core,
      middle - way * crest,
      outer,
      middle + way * crest,
      outer,
      middle + way * foot,
      core
    };
    System.arraycopy(xy, 0, points, from, xy.length);
    return from + xy.length;
  }

  private double slope() {
    return Math.tan(profile.form().halfAngle());
  }

  private double crest() {
    return Math.max(0.02, profile.p() / 2 - (profile.d() - profile.d2()) * slope());
  }

  private double foot() {
    return Math.min(0.98 * profile.p(), profile.p() / 2 + (profile.d2() - profile.d3()) * slope());
  }

  private void helix(Pen pen, double length, boolean left) {
    double p = profile.p();
    for (int i = 0; (i + 2) * p < length; i++) {
      double top = (i + 0.5) * p;
      double low = top + (left ? -0.5 : 0.5) * p;
      if (low > 0) {
        double c = crest() / 2;
        pen.line("thin", top - c, -profile.d() / 2, low - c, profile.d() / 2);
        pen.line("thin", top + c, -profile.d() / 2, low + c, profile.d() / 2);
      }
    }
  }

  /** The nut above and below the screw; its flanks stand off by the play, drawn larger. */
  private void nut(Pen pen, double start) {
    double gap = play * factor(profile, play) / 2;
    double height = 1.15 * profile.d();
    for (int side : new int[] {-1, 1}) {
      int teeth = (int) Math.floor(nut / profile.p());
      double phase = phase(start, side);
      double[] points = new double[8 * teeth + 8];
      int at = 0;
      at = put(points, at, start, side * height);
      at = put(points, at, start, side * profile.nutMinor() / 2);
      for (int i = 0; i < teeth; i++) {
        double middle = start + phase + i * profile.p();
        double wide = foot() / 2 + gap + 0.12;
        double tight = crest() / 2 + gap + 0.05;
        at = put(points, at, middle - wide, side * profile.nutMinor() / 2);
        at = put(points, at, middle - tight, side * (profile.d() / 2 + 0.3));
        at = put(points, at, middle + tight, side * (profile.d() / 2 + 0.3));
        at = put(points, at, middle + wide, side * profile.nutMinor() / 2);
      }
      at = put(points, at, start + nut, side * profile.nutMinor() / 2);
      put(points, at, start + nut, side * height);
      pen.trace("body bronze", points, true);
    }
  }

  /** Returns how far behind the nut's face the first crest of the screw lies. */
  private double phase(double start, int side) {
    double p = profile.p();
    double first = side < 0 ? 0.5 * p : p;
    double away = (first - start) % p;
    return away > 0.3 * p ? away : away + p;
  }

  private static int put(double[] points, int at, double x, double y) {
    points[at] = x;
    points[at + 1] = y;
    return at + 2;
  }

  private static void end(Pen pen, double x, double radius) {
    pen.turning(
        x,
        0,
        1,
        p -> {
          p.circle("gear steel", x, 0, radius);
          p.line("mark", x, -0.3 * radius, x, -radius);
        });
    pen.words("small", x, radius + 26 * pen.unit(), "middle", "handle, end on");
  }
}
