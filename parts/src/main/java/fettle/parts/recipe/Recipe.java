package fettle.parts.recipe;

import java.util.List;

/** The text a part is made from. */
public sealed interface Recipe permits Turned, Prismatic, Folded {
  /** Returns what stands in the title block. */
  Heading heading();

  /** Returns everything that is made on the part, in the order made. */
  List<Feature> features();

  /** Returns the datums and geometrical tolerances. */
  Geometry geometry();

  /** Returns the same part with other datums and geometrical tolerances. */
  Recipe with(Geometry asked);
}
