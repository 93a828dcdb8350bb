package fettle.sheets.draw;

import fettle.parts.recipe.Feature;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Turned;
import fettle.sheets.dimension.Scheme;
import fettle.sheets.dimension.Values;
import java.util.ArrayList;
import java.util.List;

/** Callouts of holes: one leader says everything but the place (ISO 129-1, ISO 15786). */
final class Holes {

  private Holes() {}

  /** Returns the names of holes whose thread goes right through. */
  static List<String> threadedThrough(Recipe recipe) {
    List<String> out = new ArrayList<>();
    for (Feature f : recipe.features()) {
      HoleForm h =
          f instanceof Turned.CrossHole c
              ? c.hole()
              : f instanceof Turned.AxialHoles a
                  ? a.hole()
                  : f instanceof Prismatic.Holes p ? p.hole() : null;
      if (h != null && Double.isInfinite(h.threadDepth())) {
        out.add(f.name());
      }
    }
    return out;
  }

  /** Returns the lines of a callout and books what they say. */
  static List<String> callout(Feature f, HoleForm h, int count, Scheme scheme) {
    List<String> lines = new ArrayList<>();
    StringBuilder first = new StringBuilder(count > 1 ? count + "× " : "");
    scheme.printed(f.name() + " hole");
    if (h.thread() != null) {
      first.append(thread(h.thread().designation()));
      if (!Double.isInfinite(h.threadDepth())) {
        first.append(" ↧").append(Values.number(h.threadDepth()));
        scheme.printed(f.name() + " thread depth");
      }
      if (!h.isThrough()) {
        lines.add(
            "⌀"
                + Values.number(Math.round(h.cutDiameter() * 10) / 10.0)
                + " ↧"
                + Values.number(h.depth()));
        scheme.printed(f.name() + " depth");
      }
    } else {
      first.append(Values.size("⌀", h.diameter()));
      if (!h.isThrough()) {
        first.append(" ↧").append(Values.number(h.depth()));
        scheme.printed(f.name() + " depth");
        if (h.bottom() == HoleForm.Bottom.FLAT) {
          first.append(" flat");
        }
      }
    }
    if (h.mouth() == HoleForm.Mouth.COUNTERBORE) {
      lines.add("⌴ ⌀" + Values.number(h.mouthDiameter()) + " ↧" + Values.number(h.mouthDepth()));
      scheme.printed(f.name() + " mouth");
    } else if (h.mouth() == HoleForm.Mouth.COUNTERSINK) {
      lines.add("⌵ ⌀" + Values.number(h.mouthDiameter()) + " × " + Values.degrees(h.mouthAngle()));
      scheme.printed(f.name() + " mouth");
    }
    lines.add(0, first.toString());
    return lines;
  }

  /** Returns where holes stand on their circle; in frames where a position tolerance holds it. */
  static String circle(double diameter, double start, boolean exact) {
    String d = "⌀" + Values.number(diameter);
    String a = Values.degrees(start);
    return exact
        ? "on " + Values.exact(d) + ", first at " + Values.exact(a)
        : "on " + d + ", first at " + a;
  }

  /** Returns a designation as it reads on paper: a cross for x, a comma for the point. */
  static String thread(String designation) {
    return designation.replace("x", "×").replace('.', ',');
  }
}
