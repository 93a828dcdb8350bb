package fettle.parts.recipe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A feature or face of a part as a geometrical tolerance sees it.
 *
 * @param name its name
 * @param nature what it is
 * @param size its own size; a plane's is the extent of the part across it
 * @param axis direction of its axis, or across its planes: 0, 1, 2 for x, y, z
 * @param at place of a plane along that axis; 0 for anything else [mm]
 * @param outward +1 if a plane looks along its axis, -1 against it; 0 for anything else
 */
public record Held(String name, Nature nature, Size size, int axis, double at, int outward) {

  /** What a toleranced feature is. */
  public enum Nature {
    /** Round about an axis. */
    ROUND,
    /** Two planes with a middle plane between them. */
    WIDTH,
    /** One plane. */
    PLANE
  }

  /** Returns all that a tolerance or datum of a part may be put on, by name. */
  public static Map<String, Held> of(Recipe recipe) {
    Map<String, Held> all = new LinkedHashMap<>();
    if (recipe instanceof Turned t) {
      turned(t, all);
    } else if (recipe instanceof Prismatic p) {
      prismatic(p, all);
    }
    return all;
  }

  private static void add(Map<String, Held> all, Held held) {
    all.putIfAbsent(held.name(), held);
  }

  private static Held round(String name, Size size, int axis) {
    return new Held(name, Nature.ROUND, size, axis, 0, 0);
  }

  private static Held width(String name, Size size, int axis) {
    return new Held(name, Nature.WIDTH, size, axis, 0, 0);
  }

  private static Held plane(String name, double extent, double at, int outward) {
    return new Held(name, Nature.PLANE, Size.of(extent), 0, at, outward);
  }

  // Turned parts: the axis of the part is axis 0.

  private static void turned(Turned t, Map<String, Held> all) {
    outside(t, all);
    bore(t.left(), 0, 1, all);
    bore(t.right(), t.length(), -1, all);
    for (Turned.Operation o : t.operations()) {
      if (o instanceof Turned.CrossHole h) {
        add(all, round(h.name(), h.hole().diameter(), 2));
      } else if (o instanceof Turned.AxialHoles h) {
        add(all, round(h.name(), h.hole().diameter(), 0));
      } else if (o instanceof Turned.Keyway k) {
        add(all, width(k.name(), k.width(), 1));
      } else if (o instanceof Turned.BoreKeyway k) {
        add(all, width(k.name(), k.width(), 1));
      } else if (o instanceof Turned.EndSlot s) {
        add(all, width(s.name(), s.width(), 1));
      } else if (o instanceof Turned.Flats f && f.count() == 2) {
        add(all, width(f.name(), Size.of(2 * f.distance()), 2));
      }
    }
    add(all, plane("left end", t.length(), 0, -1));
    add(all, plane("right end", t.length(), t.length(), 1));
  }

  private static void outside(Turned t, Map<String, Held> all) {
    double x = 0;
    List<Step> steps = t.outside();
    for (int i = 0; i < steps.size(); i++) {
      Step s = steps.get(i);
      double to = x + s.length().nominal();
      add(all, round(s.name(), s.diameter(), 0));
      if (i == 0 || end(steps.get(i - 1)) < s.diameter().nominal() - 1e-6) {
        add(all, plane("left face of " + s.name(), t.length(), x, -1));
      }
      if (i == steps.size() - 1 || steps.get(i + 1).diameter().nominal() < end(s) - 1e-6) {
        add(all, plane("right face of " + s.name(), t.length(), to, 1));
      }
      x = to;
    }
  }

  private static void bore(Bore bore, double face, int way, Map<String, Held> all) {
    double x = face;
    for (Step s : bore.steps()) {
      x += way * s.length().nominal();
      add(all, round(s.name(), s.diameter(), 0));
      add(all, plane("floor of " + s.name(), s.length().nominal(), x, -way));
    }
  }

  private static double end(Step s) {
    return s.form() == Step.Form.CYLINDER ? s.diameter().nominal() : s.endDiameter();
  }

  // Blocks and plates.

  private static void prismatic(Prismatic p, Map<String, Held> all) {
    for (Prismatic.Operation o : p.operations()) {
      Face f = o.face();
      if (o instanceof Prismatic.Holes h) {
        add(all, round(h.name(), h.hole().diameter(), f.axis()));
      } else if (o instanceof Prismatic.Boss b) {
        add(all, round(b.name(), b.diameter(), f.axis()));
      } else if (o instanceof Prismatic.Channel c) {
        add(all, width(c.name(), c.width(), across(f, c.along())));
      } else if (o instanceof Prismatic.TSlot s) {
        add(all, width(s.name(), s.throat(), across(f, s.along())));
      } else if (o instanceof Prismatic.Dovetail d) {
        add(all, width(d.name(), d.wide(), across(f, d.along())));
      }
    }
    for (Face f : Face.values()) {
      double extent = p.extent(f.axis());
      boolean flat = p.isBlock() || f.axis() == 2;
      if (flat) {
        String name = f.name().toLowerCase(Locale.ROOT);
        add(
            all,
            new Held(
                name, Nature.PLANE, size(p, f), f.axis(), f.sign() > 0 ? extent : 0, f.sign()));
      }
    }
  }

  private static Size size(Prismatic p, Face f) {
    return f.axis() == 0 ? p.length() : f.axis() == 1 ? p.width() : p.height();
  }

  private static int across(Face f, Prismatic.Along along) {
    return along == Prismatic.Along.U ? f.v() : f.u();
  }

  /** Tells whether a tolerance holds its axis or middle plane rather than its surface. */
  public boolean isMedian(Geometry.Zone zone) {
    return nature != Nature.PLANE
        && switch (zone.what().kind()) {
          case ORIENTATION, LOCATION -> true;
          case RUN_OUT -> false;
          case FORM -> zone.shape() == Geometry.Shape.ROUND;
        };
  }
}
