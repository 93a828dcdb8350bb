package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.clamps.DrawEccentric;

/** Draws an eccentric clamp with its lever, and the force it draws with over the angle. */
public final class ClampPicture {

  private static final int CURVE = 60;

  private ClampPicture() {}

  /**
   * Draws the eccentric shaft end on, with its eye, bolt and lever.
   *
   * @param shaft the eccentric
   * @param lever length of the lever [mm]
   * @param psi angle: 0 where it moves the bolt fastest, 90 degrees at dead centre [rad]
   */
  public static Drawing of(DrawEccentric shaft, double lever, double psi) {
    double reach = Math.min(lever, 6.5 * shaft.eyeRadius());
    double width = 1.9 * reach;
    Pen pen = Pen.of(width, 0);
    double e = shaft.eccentricity();
    double ex = e * Math.cos(psi);
    double ey = -e * Math.sin(psi);
    double wall = 0.45 * shaft.eyeRadius();
    pen.box("arm", ex - 0.32 * shaft.eyeRadius(), ey, 0.64 * shaft.eyeRadius(), 0.55 * reach);
    pen.circle("arm", ex, ey, shaft.eyeRadius() + wall);
    pen.circle("body", ex, ey, shaft.eyeRadius());
    pen.circle("body", 0, 0, shaft.boreRadius());
    pen.line("centre", -0.2 * reach, 0, 0.2 * reach, 0);
    pen.line("centre", 0, -0.2 * reach, 0, 0.2 * reach);
    pen.line("blue", 0, 0, ex, ey);
    pen.circle("solidblue", ex, ey, 0.9);
    double angle = psi;
    double lx = reach * Math.cos(angle);
    double ly = -reach * Math.sin(angle);
    pen.line("mark", 0, 0, lx, ly);
    pen.words("", lx + 0.02 * reach, ly, "start", "to the ball");
    pen.words("halo", 0.1 * reach, 0.5 * reach, "start", "bolt, drawn up");
    pen.words(
        "halo",
        lx / 2 - 0.06 * reach,
        ly / 2,
        "end",
        "lever " + Numbers.significant(lever, 4) + " mm");
    pen.words(
        "",
        -0.7 * reach,
        0.3 * reach,
        "start",
        "e " + Numbers.significant(e, 3) + " mm, at " + degrees(psi));
    return pen.done(
        "The eccentric end on: shaft in its bores, eye of the bolt about the eccentric, lever",
        -0.75 * reach,
        -1.02 * reach,
        width,
        1.62 * reach);
  }

  private static String degrees(double psi) {
    return Numbers.significant(Math.toDegrees(psi), 3) + "°";
  }

  /**
   * Draws the pull of one hand over the angle, and where it stays shut.
   *
   * @param shaft the eccentric
   * @param lever length of the lever [mm]
   * @param hand force of the hand [N]
   * @param closes angle at which it is tight [rad]
   */
  public static Drawing force(DrawEccentric shaft, double lever, double hand, double closes) {
    double[] xs = new double[CURVE];
    double[] ys = new double[CURVE];
    double most = 0;
    for (int i = 0; i < CURVE; i++) {
      double psi = Math.toRadians(110) * i / (CURVE - 1);
      xs[i] = Math.toDegrees(psi);
      ys[i] = pull(shaft, lever, hand, psi) / 1000;
      if (psi <= Math.PI / 2) {
        most = Math.max(most, ys[i]);
      }
    }
    Chart chart = new Chart(0, 110, 0, most * 1.25, "angle of the lever, °", "pull, kN");
    chart.axes(8, 4).curve("blue", xs, ys);
    chart.upright("brass", Math.toDegrees(shaft.leastShutAngle()), "stays shut from here");
    chart.upright("red", 90, "dead centre");
    chart.point(
        "solidblue", Math.toDegrees(closes), pull(shaft, lever, hand, closes) / 1000, "tight here");
    return chart.done("Pull of one hand over the angle of the lever");
  }

  private static double pull(DrawEccentric shaft, double lever, double hand, double psi) {
    double arm = shaft.moment(1, psi);
    return arm > 1e-6 ? hand * lever / arm : hand * lever / 1e-6;
  }
}
