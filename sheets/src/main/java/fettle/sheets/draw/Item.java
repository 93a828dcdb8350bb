package fettle.sheets.draw;

import fettle.mechanics.bearings.BoundaryDimensions;
import fettle.parts.recipe.Recipe;
import org.jspecify.annotations.Nullable;

/**
 * One line of a parts list (ISO 7573), and what is drawn for it.
 *
 * @param from whether it is made or bought
 * @param quantity how many
 * @param designation what it is
 * @param number drawing number of a made part, designation of a bought one
 * @param material material; empty for a bought part
 * @param stock stock size; empty for a bought part
 * @param cost cost of one [currency]
 * @param recipe how it is made; null for a bought part
 * @param bearing outside of a bought bearing; null for anything else
 */
public record Item(
    From from,
    int quantity,
    String designation,
    String number,
    String material,
    String stock,
    double cost,
    @Nullable Recipe recipe,
    @Nullable BoundaryDimensions bearing) {

  /** Returns the same line with nothing said of its cost. */
  public Item withoutCost() {
    return new Item(from, quantity, designation, number, material, stock, 0, recipe, bearing);
  }

  /** Made in the workshop, or bought. */
  public enum From {
    MAKE,
    BUY
  }
}
