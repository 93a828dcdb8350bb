package fettle.mechanics.solids;

import fettle.mechanics.base.Unit;

/** How a body is held at a flat patch. */
public sealed interface Support {

  /** Returns where it is held. */
  Patch.Flat patch();

  /**
   * Bonded to something rigid: no displacement. A face of a cell counts if so much of it is
   * covered.
   *
   * @param patch where
   * @param coverage least share of a face that counts; 0.5 on the average, small for the stiff and
   *     1 for the soft side of a round edge [-]
   */
  record Fixed(Patch.Flat patch, double coverage) implements Support {
    /** Holds the faces that are covered by half. */
    public Fixed(Patch.Flat patch) {
      this(patch, 0.5);
    }
  }

  /**
   * Held along the normal only: a plane of symmetry, a greased plate.
   *
   * @param patch where
   */
  record Greased(Patch.Flat patch) implements Support {}

  /**
   * On springs per area, as a joint is.
   *
   * @param patch where
   * @param normal stiffness per area along the normal, not negative [N/mm3]
   * @param tangential stiffness per area across, not negative [N/mm3]
   */
  record Springs(Patch.Flat patch, double normal, double tangential) implements Support {
    /** Refuses negative springs. */
    public Springs {
      if (!(normal >= 0) || !(tangential >= 0) || !(normal + tangential > 0)) {
        throw Limits.outside("k", Math.min(normal, tangential), Unit.N_PER_MM3, "0 or more");
      }
    }
  }
}
