package fettle.parts.recipe;

import org.jspecify.annotations.Nullable;

/**
 * One length of a turned outline or bore.
 *
 * @param name name of the step
 * @param form shape of its generating line
 * @param diameter diameter where it starts
 * @param endDiameter diameter where it ends; the same for a cylinder [mm]
 * @param length length along the axis
 * @param bulge radius of the generating arc: positive bulges out, negative hollows in; 0 for a
 *     straight line [mm]
 * @param start what becomes of the corner where it starts
 * @param end what becomes of the corner where it ends
 * @param finish texture of the surface
 * @param thread thread on it, if any
 * @param threadLength length of full thread from {@code threadFrom}; 0 for the whole step [mm]
 * @param threadFrom the end the thread starts from
 * @param knurl knurl on it, if any
 * @param teeth gear teeth on it, if any
 */
public record Step(
    String name,
    Form form,
    Size diameter,
    double endDiameter,
    Size length,
    double bulge,
    Edge start,
    Edge end,
    Finish finish,
    @Nullable ScrewThread thread,
    double threadLength,
    End threadFrom,
    @Nullable Knurl knurl,
    @Nullable Toothing teeth)
    implements Feature {

  /** Shape of the generating line. */
  public enum Form {
    CYLINDER,
    TAPER,
    ARC
  }

  /** Refuses what has no length or no diameter. */
  public Step {
    boolean arc = form == Form.ARC;
    double chord = Math.hypot(length.nominal(), (endDiameter - diameter.nominal()) / 2);
    if (!(length.nominal() > 0)
        || !(endDiameter >= 0)
        || !(diameter.nominal() + endDiameter > 0)
        || !(threadLength >= 0)
        || (arc && !(Math.abs(bulge) >= chord / 2))) {
      throw new IllegalArgumentException(
          name
              + ": a step needs a length and a diameter above 0, and an arc at least half the"
              + " distance of its ends as radius");
    }
  }

  /**
   * Returns a plain cylinder.
   *
   * @param name name of the step
   * @param diameter diameter [mm]
   * @param length length [mm]
   */
  public static Step cylinder(String name, double diameter, double length) {
    return cylinder(name, Size.of(diameter), Size.of(length));
  }

  /** Returns a plain cylinder with toleranced sizes. */
  public static Step cylinder(String name, Size diameter, Size length) {
    return new Step(
        name,
        Form.CYLINDER,
        diameter,
        diameter.nominal(),
        length,
        0,
        Edge.SHARP,
        Edge.SHARP,
        Finish.GENERAL,
        null,
        0,
        End.LEFT,
        null,
        null);
  }

  /**
   * Returns a taper.
   *
   * @param name name of the step
   * @param start diameter where it starts [mm]
   * @param end diameter where it ends [mm]
   * @param length length [mm]
   */
  public static Step taper(String name, double start, double end, double length) {
    return shaped(name, Form.TAPER, start, end, length, 0);
  }

  /**
   * Returns a step with an arc as generating line.
   *
   * @param name name of the step
   * @param start diameter where it starts [mm]
   * @param end diameter where it ends [mm]
   * @param length length [mm]
   * @param bulge radius, positive bulges out [mm]
   */
  public static Step arc(String name, double start, double end, double length, double bulge) {
    return shaped(name, Form.ARC, start, end, length, bulge);
  }

  private static Step shaped(
      String name, Form form, double start, double end, double length, double bulge) {
    return new Step(
        name,
        form,
        Size.of(start),
        end,
        Size.of(length),
        bulge,
        Edge.SHARP,
        Edge.SHARP,
        Finish.GENERAL,
        null,
        0,
        End.LEFT,
        null,
        null);
  }

  /** Returns this step with other corners. */
  public Step edges(Edge atStart, Edge atEnd) {
    return new Step(
        name,
        form,
        diameter,
        endDiameter,
        length,
        bulge,
        atStart,
        atEnd,
        finish,
        thread,
        threadLength,
        threadFrom,
        knurl,
        teeth);
  }

  /** Returns this step with another finish. */
  public Step finish(Finish other) {
    return new Step(
        name,
        form,
        diameter,
        endDiameter,
        length,
        bulge,
        start,
        end,
        other,
        thread,
        threadLength,
        threadFrom,
        knurl,
        teeth);
  }

  /**
   * Returns this step with a thread.
   *
   * @param cut the thread
   * @param full length of full thread; 0 for the whole step [mm]
   * @param from the end it starts from
   */
  public Step thread(ScrewThread cut, double full, End from) {
    return new Step(
        name,
        form,
        diameter,
        endDiameter,
        length,
        bulge,
        start,
        end,
        finish,
        cut,
        full,
        from,
        knurl,
        teeth);
  }

  /** Returns this step with a knurl. */
  public Step knurl(Knurl pattern) {
    return new Step(
        name,
        form,
        diameter,
        endDiameter,
        length,
        bulge,
        start,
        end,
        finish,
        thread,
        threadLength,
        threadFrom,
        pattern,
        teeth);
  }

  /** Returns this step with gear teeth; its diameter is the tip diameter. */
  public Step teeth(Toothing toothing) {
    return new Step(
        name,
        form,
        diameter,
        endDiameter,
        length,
        bulge,
        start,
        end,
        finish,
        thread,
        threadLength,
        threadFrom,
        knurl,
        toothing);
  }
}
