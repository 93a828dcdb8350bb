package fettle.parts.exchange;

import fettle.parts.solid.Brep;
import fettle.parts.solid.Curve;
import fettle.parts.solid.Frame;
import fettle.parts.solid.Surface;
import fettle.parts.solid.Vec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes solids in the clear text of ISO 10303-21: one product with one manifold solid (ISO
 * 10303-42), millimetres and radians, the same bytes for the same solid.
 */
public final class StepFile {

  /** Application protocols; the solids are written alike in both. */
  public enum Protocol {
    /** ISO 10303-214, read by nearly everything. */
    AP214("AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }", "automotive_design", "automotive design"),
    /** ISO 10303-242. */
    AP242(
        "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }",
        "ap242_managed_model_based_3d_engineering",
        "managed model based 3d engineering");

    private final String schema;
    private final String protocol;
    private final String context;

    Protocol(String schema, String protocol, String context) {
      this.schema = schema;
      this.protocol = protocol;
      this.context = context;
    }
  }

  /**
   * What names the product.
   *
   * @param number drawing number, the identification of the product
   * @param title title of the sheet, the name of the product
   * @param revision revision index
   * @param date date and time as ISO 8601, given and not read from a clock
   */
  public record Label(String number, String title, String revision, String date) {}

  private final Map<String, Integer> shared = new LinkedHashMap<>();
  private final StringBuilder data = new StringBuilder();
  private int last;

  private StepFile() {}

  /** Returns the text of the file. */
  public static String of(Brep solid, Label label, Protocol protocol) {
    return new StepFile().text(solid, label, protocol);
  }

  private int put(String entity) {
    data.append('#').append(++last).append('=').append(entity).append(";\n");
    return last;
  }

  private int once(String entity) {
    Integer known = shared.get(entity);
    if (known != null) {
      return known;
    }
    int id = put(entity);
    shared.put(entity, id);
    return id;
  }

  private static String ref(int id) {
    return "#" + id;
  }

  /** Writes a real number: always with a point. */
  static String real(double value) {
    double rounded = Math.abs(value) < 1e-13 ? 0 : value;
    String text = Double.toString(rounded);
    return text.endsWith(".0") ? text.substring(0, text.length() - 1) : text;
  }

  /** Writes a string: quotes doubled, what is not plain in the extended coding. */
  static String string(String text) {
    StringBuilder s = new StringBuilder("'");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\'') {
        s.append("''");
      } else if (c == '\\') {
        s.append("\\\\");
      } else if (c >= 32 && c < 127) {
        s.append(c);
      } else {
        s.append("\\X2\\").append(String.format("%04X", (int) c)).append("\\X0\\");
      }
    }
    return s.append('\'').toString();
  }

  private int point(Vec p) {
    return once("CARTESIAN_POINT('',(" + triple(p) + "))");
  }

  private int direction(Vec d) {
    return once("DIRECTION('',(" + triple(d) + "))");
  }

  private static String triple(Vec p) {
    return real(p.x()) + "," + real(p.y()) + "," + real(p.z());
  }

  private int placement(Vec origin, Vec z, Vec x) {
    return once(
        "AXIS2_PLACEMENT_3D('',"
            + ref(point(origin))
            + ","
            + ref(direction(z))
            + ","
            + ref(direction(x))
            + ")");
  }

  private int placement(Frame f) {
    return placement(f.origin(), f.z(), f.x());
  }

  private int surface(Surface s) {
    Frame f = s.frame();
    if (s instanceof Surface.Plane) {
      return put("PLANE(''," + ref(placement(f)) + ")");
    } else if (s instanceof Surface.Cylinder c) {
      return put("CYLINDRICAL_SURFACE(''," + ref(placement(f)) + "," + real(c.radius()) + ")");
    } else if (s instanceof Surface.Cone c) {
      Vec z = c.slope() > 0 ? f.z() : f.z().times(-1);
      return put(
          "CONICAL_SURFACE('',"
              + ref(placement(f.origin(), z, f.x()))
              + ","
              + real(c.radius())
              + ","
              + real(Math.atan(Math.abs(c.slope())))
              + ")");
    }
    return torus((Surface.Torus) s);
  }

  private int torus(Surface.Torus t) {
    Frame f = t.frame();
    if (Math.abs(t.major()) < 1e-9) {
      return put("SPHERICAL_SURFACE(''," + ref(placement(f)) + "," + real(t.minor()) + ")");
    }
    if (t.major() > t.minor()) {
      return put(
          "TOROIDAL_SURFACE('',"
              + ref(placement(f))
              + ","
              + real(t.major())
              + ","
              + real(t.minor())
              + ")");
    }
    int circle =
        put(
            "CIRCLE('',"
                + ref(placement(f.at(t.major(), 0, 0), f.y().times(-1), f.x()))
                + ","
                + real(t.minor())
                + ")");
    int axis =
        put("AXIS1_PLACEMENT(''," + ref(point(f.origin())) + "," + ref(direction(f.z())) + ")");
    return put("SURFACE_OF_REVOLUTION(''," + ref(circle) + "," + ref(axis) + ")");
  }

  private int curve(Brep solid, Brep.Edge e) {
    if (e.curve() instanceof Curve.Line l) {
      int vector = put("VECTOR(''," + ref(direction(l.direction())) + ",1.)");
      return put("LINE(''," + ref(point(l.at(e.from()))) + "," + ref(vector) + ")");
    } else if (e.curve() instanceof Curve.Oval o) {
      return o.isCircle()
          ? put("CIRCLE(''," + ref(placement(o.frame())) + "," + real(o.first()) + ")")
          : put(
              "ELLIPSE('',"
                  + ref(placement(o.frame()))
                  + ","
                  + real(o.first())
                  + ","
                  + real(o.second())
                  + ")");
    }
    return spline(solid, e);
  }

  /** Writes a traced curve as cubic pieces that share points and directions with it. */
  private int spline(Brep solid, Brep.Edge e) {
    double[] breaks = e.breaks();
    List<Vec> points = new ArrayList<>();
    List<Vec> headings = new ArrayList<>();
    for (int i = 0; i < breaks.length; i++) {
      boolean end = i == breaks.length - 1;
      Vec exact = i == 0 ? solid.vertices().get(e.start()) : solid.vertices().get(e.end());
      points.add(i == 0 || end ? exact : e.at(breaks[i]));
      headings.add(e.tangent(breaks[i]).unit());
    }
    List<String> controls = new ArrayList<>();
    StringBuilder knots = new StringBuilder("0.");
    StringBuilder times = new StringBuilder("4");
    controls.add(ref(point(points.get(0))));
    double t = 0;
    for (int i = 1; i < breaks.length; i++) {
      Vec p = points.get(i - 1);
      Vec q = points.get(i);
      double l = arc(p, q, headings.get(i - 1), headings.get(i));
      controls.add(ref(point(p.plus(headings.get(i - 1).times(l / 3)))));
      controls.add(ref(point(q.minus(headings.get(i).times(l / 3)))));
      t += l;
      boolean end = i == breaks.length - 1;
      if (end) {
        controls.add(ref(point(q)));
      }
      knots.append(',').append(real(t));
      times.append(end ? ",4" : ",2");
    }
    return put(
        "B_SPLINE_CURVE_WITH_KNOTS('',3,("
            + String.join(",", controls)
            + "),.UNSPECIFIED.,.F.,.F.,("
            + times
            + "),("
            + knots
            + "),.UNSPECIFIED.)");
  }

  /** Returns about the length of a short arc from its chord and the turn of its direction. */
  private static double arc(Vec p, Vec q, Vec a, Vec b) {
    double turn = Math.acos(Math.max(-1, Math.min(1, a.dot(b))));
    double chord = p.to(q);
    return turn < 1e-6 ? chord : chord * (turn / 2) / Math.sin(turn / 2);
  }

  private String text(Brep solid, Label label, Protocol protocol) {
    int application = put("APPLICATION_CONTEXT(" + string(protocol.context) + ")");
    put(
        "APPLICATION_PROTOCOL_DEFINITION('international standard',"
            + string(protocol.protocol)
            + ",2014,"
            + ref(application)
            + ")");
    int productContext = put("PRODUCT_CONTEXT(''," + ref(application) + ",'mechanical')");
    int product =
        put(
            "PRODUCT("
                + string(label.number())
                + ","
                + string(label.title())
                + ",'',("
                + ref(productContext)
                + "))");
    put("PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,(" + ref(product) + "))");
    int formation =
        put(
            "PRODUCT_DEFINITION_FORMATION("
                + string(label.revision())
                + ",'',"
                + ref(product)
                + ")");
    int definitionContext =
        put("PRODUCT_DEFINITION_CONTEXT('part definition'," + ref(application) + ",'design')");
    int definition =
        put(
            "PRODUCT_DEFINITION('design','',"
                + ref(formation)
                + ","
                + ref(definitionContext)
                + ")");
    int shape = put("PRODUCT_DEFINITION_SHAPE('',''," + ref(definition) + ")");
    int length = put("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
    int angle = put("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
    int solidAngle = put("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
    int uncertainty =
        put(
            "UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(1.E-06),"
                + ref(length)
                + ",'distance_accuracy_value','greatest distance of edges from faces')");
    int context =
        put(
            "(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT(("
                + ref(uncertainty)
                + "))GLOBAL_UNIT_ASSIGNED_CONTEXT(("
                + ref(length)
                + ","
                + ref(angle)
                + ","
                + ref(solidAngle)
                + "))REPRESENTATION_CONTEXT('','3D'))");
    int origin = placement(Frame.WORLD);
    int body = solid(solid, label.title());
    int representation =
        put(
            "ADVANCED_BREP_SHAPE_REPRESENTATION("
                + string(label.title())
                + ",("
                + ref(origin)
                + ","
                + ref(body)
                + "),"
                + ref(context)
                + ")");
    put("SHAPE_DEFINITION_REPRESENTATION(" + ref(shape) + "," + ref(representation) + ")");
    return "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME("
        + string(label.number() + ".step")
        + ","
        + string(label.date())
        + ",(''),(''),'','Fettle','');\nFILE_SCHEMA(("
        + string(protocol.schema)
        + "));\nENDSEC;\nDATA;\n"
        + data
        + "ENDSEC;\nEND-ISO-10303-21;\n";
  }

  private int solid(Brep solid, String name) {
    List<Integer> vertices = new ArrayList<>();
    for (Vec v : solid.vertices()) {
      vertices.add(put("VERTEX_POINT(''," + ref(point(v)) + ")"));
    }
    List<Integer> edges = new ArrayList<>();
    for (Brep.Edge e : solid.edges()) {
      edges.add(
          put(
              "EDGE_CURVE('',"
                  + ref(vertices.get(e.start()))
                  + ","
                  + ref(vertices.get(e.end()))
                  + ","
                  + ref(curve(solid, e))
                  + ",.T.)"));
    }
    List<String> faces = new ArrayList<>();
    for (Brep.Face face : solid.faces()) {
      faces.add(ref(face(face, edges)));
    }
    int shell = put("CLOSED_SHELL('',(" + String.join(",", faces) + "))");
    return put("MANIFOLD_SOLID_BREP(" + string(name) + "," + ref(shell) + ")");
  }

  private int face(Brep.Face face, List<Integer> edges) {
    int surface = surface(face.surface());
    List<String> bounds = new ArrayList<>();
    for (Brep.Loop loop : face.loops()) {
      List<String> uses = new ArrayList<>();
      for (Brep.Use use : loop.uses()) {
        uses.add(
            ref(
                put(
                    "ORIENTED_EDGE('',*,*,"
                        + ref(edges.get(use.edge()))
                        + (use.forward() ? ",.T.)" : ",.F.)"))));
      }
      int edgeLoop = put("EDGE_LOOP('',(" + String.join(",", uses) + "))");
      String kind = bounds.isEmpty() ? "FACE_OUTER_BOUND" : "FACE_BOUND";
      bounds.add(ref(put(kind + "(''," + ref(edgeLoop) + ",.T.)")));
    }
    return put(
        "ADVANCED_FACE("
            + string(face.feature())
            + ",("
            + String.join(",", bounds)
            + "),"
            + ref(surface)
            + (face.outward() ? ",.T.)" : ",.F.)"));
  }
}
