package fettle.parts.recipe;

import java.util.List;

/**
 * What stands in the title block.
 *
 * @param name key of the part in the book
 * @param title title, at most 25 characters on a sheet
 * @param number drawing number
 * @param material designation of the material
 * @param density density of the material [t/mm3]
 * @param generalTolerance general tolerance, e.g. {@code ISO 2768-m}
 * @param finish texture of all surfaces without their own
 * @param stock what it is made from, e.g. {@code bar 40}
 * @param notes further notes for the sheet
 */
public record Heading(
    String name,
    String title,
    String number,
    String material,
    double density,
    String generalTolerance,
    Finish finish,
    String stock,
    List<String> notes) {

  /** Keeps its own copy of the notes and refuses a density that cannot be. */
  public Heading {
    notes = List.copyOf(notes);
    if (!(density > 0) || density > 3e-8) {
      throw new IllegalArgumentException(
          name + ": density must lie above 0 and below 30 g/cm3, found " + density * 1e9);
    }
  }

  /**
   * Returns a heading with the usual notes.
   *
   * @param name key of the part
   * @param title title
   * @param material designation of the material
   * @param density density [t/mm3]
   */
  public static Heading of(String name, String title, String material, double density) {
    return new Heading(
        name, title, name, material, density, "ISO 2768-m", Finish.cut(0.0032), "", List.of());
  }
}
