package fettle.sheets.dimension;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.Feature;
import fettle.parts.recipe.Finish;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Geometry;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.ArrayList;
import java.util.List;

/**
 * The sizes of a recipe that must stand on its sheet, feature by feature. Places along axes are not
 * among them; they are kept by {@link Scheme#place}.
 */
public final class Wanted {

  private final List<String> sizes = new ArrayList<>();

  private Wanted() {}

  /** Returns the sizes, each as feature and what. */
  public static List<String> of(Recipe recipe) {
    Wanted w = new Wanted();
    if (recipe instanceof Turned t) {
      w.steps(t.outside(), "");
      w.bore(t.left(), "bore ");
      w.bore(t.right(), "bore ");
      t.operations().forEach(w::operation);
    } else if (recipe instanceof Prismatic p) {
      p.operations().forEach(w::operation);
    } else if (recipe instanceof Folded f) {
      w.folded(f);
    }
    recipe.geometry().all().forEach(asked -> w.sizes.add(of(asked)));
    return List.copyOf(w.sizes);
  }

  /** Returns how the books call a datum or a geometrical tolerance. */
  public static String of(Geometry.Asked asked) {
    return asked instanceof Geometry.Zone z
        ? z.what().word() + " of " + z.on()
        : "datum " + ((Geometry.Datum) asked).letter();
  }

  private void want(Feature f, String what) {
    sizes.add(f.name() + " " + what);
  }

  private void bore(Bore bore, String prefix) {
    steps(bore.steps(), prefix);
  }

  private void steps(List<Step> steps, String prefix) {
    for (int i = 0; i < steps.size(); i++) {
      Step s = steps.get(i);
      boolean startMeets =
          i > 0
              && s.form() != Step.Form.CYLINDER
              && near(end(steps.get(i - 1)), s.diameter().nominal());
      boolean endMeets =
          i + 1 < steps.size()
              && near(steps.get(i + 1).diameter().nominal(), s.endDiameter())
              && steps.get(i + 1).form() == Step.Form.CYLINDER;
      if (s.thread() != null) {
        want(s, prefix + "thread");
      } else if (!startMeets && s.diameter().nominal() > 0) {
        want(s, prefix + "diameter");
      }
      if (s.form() != Step.Form.CYLINDER && !endMeets && s.endDiameter() > 0) {
        want(s, prefix + "end diameter");
      }
      if (s.form() == Step.Form.ARC) {
        want(s, prefix + "radius");
      }
      if (!(s.start() instanceof Edge.Sharp)) {
        want(s, prefix + "start");
      }
      if (!(s.end() instanceof Edge.Sharp)) {
        want(s, prefix + "end");
      }
      finish(s, s.finish(), prefix);
      if (s.knurl() != null) {
        want(s, prefix + "knurl");
      }
      if (s.teeth() != null) {
        want(s, prefix + "teeth");
      }
    }
  }

  private static double end(Step s) {
    return s.form() == Step.Form.CYLINDER ? s.diameter().nominal() : s.endDiameter();
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < 1e-6;
  }

  private void finish(Feature f, Finish finish, String prefix) {
    if (finish.roughness() > 0) {
      want(f, prefix + "finish");
    }
  }

  private void hole(Feature f, HoleForm h) {
    want(f, "hole");
    if (!h.isThrough()) {
      want(f, "depth");
    }
    if (h.thread() != null && !Double.isInfinite(h.threadDepth())) {
      want(f, "thread depth");
    }
    if (h.mouth() != HoleForm.Mouth.PLAIN) {
      want(f, "mouth");
    }
  }

  private void operation(Feature f) {
    if (f instanceof Turned.Groove g) {
      want(g, "bottom");
      if (g.flank() > 0) {
        want(g, "flank");
      }
    } else if (f instanceof Turned.CrossHole h) {
      hole(h, h.hole());
      if (Math.abs(h.angle()) > 1e-9) {
        want(h, "angle");
      }
    } else if (f instanceof Turned.AxialHoles h) {
      hole(h, h.hole());
      if (h.circle() > 0) {
        want(h, "circle");
        want(h, "angle");
      }
    } else if (f instanceof Turned.Keyway k) {
      want(k, "width");
      want(k, "bottom");
    } else if (f instanceof Turned.BoreKeyway k) {
      want(k, "width");
      want(k, "bottom");
    } else if (f instanceof Turned.Flats) {
      want(f, "distance");
    } else if (f instanceof Turned.EndSlot) {
      want(f, "width");
      want(f, "depth");
    } else if (f instanceof Turned.Socket) {
      want(f, "across");
      want(f, "depth");
    } else if (f instanceof Turned.CentreHole) {
      want(f, "centre hole");
    } else if (f instanceof Turned.Graduations) {
      want(f, "graduations");
    } else {
      milled(f);
    }
  }

  private void milled(Feature f) {
    if (f instanceof Prismatic.Holes h) {
      hole(h, h.hole());
      if (h.pattern() instanceof Pattern.Circle) {
        want(h, "circle");
        want(h, "angle");
      }
    } else if (f instanceof Prismatic.Pocket p) {
      want(p, "corner");
      if (!Double.isInfinite(p.depth())) {
        want(p, "depth");
      }
    } else if (f instanceof Prismatic.Slot s) {
      want(s, "width");
      if (!Double.isInfinite(s.depth())) {
        want(s, "depth");
      }
    } else if (f instanceof Prismatic.Channel c) {
      want(c, "depth");
    } else if (f instanceof Prismatic.TSlot t) {
      want(t, "throat depth");
      want(t, "head");
      want(t, "head height");
    } else if (f instanceof Prismatic.Dovetail d) {
      want(d, "depth");
      want(d, "flank");
    } else if (f instanceof Prismatic.EdgeBreak e) {
      want(e, "edge");
    } else if (f instanceof Prismatic.Boss b) {
      want(b, "diameter");
      want(b, "height");
    }
  }

  private void folded(Folded f) {
    sizes.add("sheet thickness");
    sizes.add("sheet radius");
    for (Folded.Leg leg : f.legs()) {
      if (leg.bend() != 0) {
        want(leg, "bend");
      }
      leg.holes().forEach(h -> want(h, "diameter"));
    }
  }
}
