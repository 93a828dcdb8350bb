package fettle.parts.solid;

import fettle.parts.recipe.Folded;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Turned;

/** Makes the body of a recipe: stock first, then cut after cut in the order of the recipe. */
public final class Bodies {

  private Bodies() {}

  /** Returns the body of a recipe. */
  public static Body of(Recipe recipe) {
    if (recipe instanceof Turned turned) {
      return TurnedBody.of(turned);
    } else if (recipe instanceof Prismatic prismatic) {
      return PrismaticBody.of(prismatic);
    }
    return FoldedBody.of((Folded) recipe);
  }

  /**
   * Returns what a hole removes, along its own axis from the surface inwards.
   *
   * @param hole the hole
   * @param through how deep it is cut if it goes through [mm]
   * @param above how far the cut starts above the surface [mm]
   * @param name its name
   */
  static Profile hole(HoleForm hole, double through, double above, String name) {
    double r = hole.cutDiameter() / 2;
    double depth = hole.isThrough() ? through : hole.depth();
    double wide = hole.mouth() == HoleForm.Mouth.PLAIN ? r : hole.mouthDiameter() / 2;
    Profile.Draft draft = Profile.start(-above, 0).line(-above, wide, name);
    if (hole.mouth() == HoleForm.Mouth.COUNTERBORE) {
      draft.line(hole.mouthDepth(), wide, name).line(hole.mouthDepth(), r, name);
    } else if (hole.mouth() == HoleForm.Mouth.COUNTERSINK) {
      draft.line(0, wide, name);
      draft.line((wide - r) / Math.tan(hole.mouthAngle() / 2), r, name);
    }
    draft.line(depth, r, name);
    if (!hole.isThrough() && hole.bottom() == HoleForm.Bottom.DRILL_POINT) {
      draft.line(depth + r / Math.sqrt(3), 0, name);
    } else {
      draft.line(depth, 0, name);
    }
    return draft.close(name);
  }

  /** Returns the slot with round ends round two points. */
  static Profile stadium(double x0, double y0, double x1, double y1, double width, String name) {
    double l = Math.hypot(x1 - x0, y1 - y0);
    if (l < 1e-9) {
      return Profile.circle(x0, y0, width / 2, name);
    }
    double nx = -(y1 - y0) / l * width / 2;
    double ny = (x1 - x0) / l * width / 2;
    return Profile.start(x0 - nx, y0 - ny)
        .line(x1 - nx, y1 - ny, name)
        .bulge(x1 + nx, y1 + ny, 1, name)
        .line(x0 + nx, y0 + ny, name)
        .bulge(x0 - nx, y0 - ny, 1, name)
        .close(name);
  }

  /** Returns a regular polygon with one flat up, by its size across flats. */
  static Profile polygon(int sides, double across, double turned, String name) {
    double r = across / 2 / Math.cos(Math.PI / sides);
    double first = turned + Math.PI / sides;
    Profile.Draft draft = Profile.start(r * Math.cos(first), r * Math.sin(first));
    for (int i = 1; i < sides; i++) {
      double a = first + 2 * Math.PI * i / sides;
      draft.line(r * Math.cos(a), r * Math.sin(a), name);
    }
    return draft.close(name);
  }
}
