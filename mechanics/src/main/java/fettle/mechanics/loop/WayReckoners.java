package fettle.mechanics.loop;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.solids.Limits;
import fettle.mechanics.solids.Torsion;
import java.util.List;

/** Saddle, tailstock, spindle and bed as springs. */
final class WayReckoners {

  private WayReckoners() {}

  static List<Reckoner> all() {
    return List.of(ways(), lengthened(), tailstock(), spindle(), bed(), level());
  }

  private static Reckoner ways() {
    return Reckoner.of("structures", "ways-stiffness", "Saddle on two ways, and at the tool")
        .number("k", Unit.N_PER_MM3, "spring per area of the pads")
        .number("w", Unit.MM, "width of one way")
        .number("L", Unit.MM, "length of the saddle on the ways")
        .number("c", Unit.MM, "distance between the middles of the ways")
        .optional("k_t", Unit.N_PER_MM3, "spring per area across the bed; 0.25 k if left out")
        .number("k_drive", Unit.N_PER_MM, "stiffness of the drive along the bed", "10000")
        .number("h", Unit.MM, "height of the tool above the ways", "0")
        .number("a", Unit.MM, "tool off the middle of the saddle, along the bed", "0")
        .number("x", Unit.MM, "tool off the middle of the saddle, across the bed", "0")
        .result("k_v", Unit.N_PER_MM, "stiffness straight down, both ways")
        .result("K_tilt", Unit.NMM_PER_RAD, "against tilting along the bed, both ways")
        .result("K_roll", Unit.NMM_PER_RAD, "against rolling about the bed axis")
        .result("C_XX", Unit.NM_PER_N, "compliance at the tool, across")
        .result("C_YY", Unit.NM_PER_N, "compliance at the tool, up and down")
        .result("C_ZZ", Unit.NM_PER_N, "compliance at the tool, along")
        .source(Sources.WAYS)
        .rule(WayReckoners::ways);
  }

  private static Answer ways(Given g) {
    Limits.positive(g, "k", "w", "L", "c", "k_t", "k_drive");
    Term k = g.term("k");
    Term w = g.term("w");
    Term l = g.term("L");
    Working v = Working.of("k_v", Unit.N_PER_MM, "2*k*w*L", k, w, l);
    Working tilt = Working.of("K_tilt", Unit.NMM_PER_RAD, "2*k*w*L^3/12", k, w, l);
    Working roll =
        Working.of(
            "K_roll", Unit.NMM_PER_RAD, "2*(k*L*w^3/12+k*L*w*(c/2)^2)", k, l, w, g.term("c"));
    Term kt = Term.exact("k_t", g.number("k_t", k.value() / 4), Unit.N_PER_MM3);
    Term h = g.term("h");
    return Answer.start()
        .with("k_v", v)
        .with("K_tilt", tilt)
        .with("K_roll", roll)
        .with(
            "C_XX",
            Working.of(
                "C_XX", Unit.NM_PER_N, "1/(2*k_t*w*L)+h^2/K_roll", kt, w, l, h, Term.of(roll)))
        .with(
            "C_YY",
            Working.of(
                "C_YY",
                Unit.NM_PER_N,
                "1/k_v+a^2/K_tilt+x^2/K_roll",
                Term.of(v),
                g.term("a"),
                Term.of(tilt),
                g.term("x"),
                Term.of(roll)))
        .with(
            "C_ZZ",
            Working.of(
                "C_ZZ",
                Unit.NM_PER_N,
                "1/k_drive+h^2/K_tilt",
                g.term("k_drive"),
                h,
                Term.of(tilt)));
  }

  private static Reckoner lengthened() {
    return Reckoner.of("structures", "saddle-lengthened", "Longer saddle, same total preload")
        .number("length_ratio", Unit.ONE, "new length over old length")
        .number("m", Unit.ONE, "exponent of the joint law", "0.5")
        .number("width_ratio", Unit.ONE, "new distance of the ways over old one", "1")
        .result("translation", Unit.ONE, "gain in stiffness straight down")
        .result("tilt", Unit.ONE, "gain in tilt stiffness along the bed")
        .result("roll", Unit.ONE, "gain in roll stiffness, narrow ways")
        .result("pressure", Unit.ONE, "pressure, new over old")
        .source(Sources.WAYS)
        .rule(
            g -> {
              Limits.positive(g, "length_ratio", "width_ratio");
              Limits.within("m", g.number("m"), 0, 1, Unit.ONE);
              Term s = g.term("length_ratio");
              Term m = g.term("m");
              return Answer.start()
                  .with("translation", Working.of("translation", Unit.ONE, "length_ratio^m", s, m))
                  .with("tilt", Working.of("tilt", Unit.ONE, "length_ratio^(2+m)", s, m))
                  .with(
                      "roll",
                      Working.of(
                          "roll",
                          Unit.ONE,
                          "length_ratio^m*width_ratio^2",
                          s,
                          m,
                          g.term("width_ratio")))
                  .with("pressure", Working.of("pressure", Unit.ONE, "1/length_ratio", s));
            });
  }

  private static Reckoner tailstock() {
    return Reckoner.of("structures", "tailstock-stiffness", "Tailstock on its base, quill out")
        .number("k", Unit.N_PER_MM3, "spring per area of the base")
        .number("w", Unit.MM, "width of one base strip")
        .number("B", Unit.MM, "length of the base along the bed")
        .number("c", Unit.MM, "distance between the middles of the strips", "60")
        .number("h", Unit.MM, "height of centres above the base")
        .number("q", Unit.MM, "quill out of its barrel", "0")
        .number("s", Unit.MM, "centre point off the middle of the base, along the bed", "0")
        .number("d", Unit.MM, "quill diameter", "25")
        .number("E", Unit.MPA, "Young's modulus of the quill", "210000")
        .result("K_tilt", Unit.NMM_PER_RAD, "base against pitch, both strips")
        .result("K_yaw", Unit.NMM_PER_RAD, "base against yaw, both strips, 0.25 k across")
        .result("C_quill", Unit.NM_PER_N, "compliance of the quill alone")
        .result("C_Y", Unit.NM_PER_N, "vertical compliance at the centre")
        .result("C_X", Unit.NM_PER_N, "radial (horizontal) compliance at the centre")
        .result("k_X", Unit.N_PER_MICRON, "radial stiffness at the centre")
        .source(Sources.WAYS)
        .rule(WayReckoners::tailstock);
  }

  private static Answer tailstock(Given g) {
    Limits.positive(g, "k", "w", "B", "c", "h", "d", "E");
    Limits.notNegative(g, "q");
    double k = g.number("k");
    double w = g.number("w");
    double b = g.number("B");
    double c = g.number("c");
    double h = g.number("h");
    double s = g.number("s");
    double tilt = 2 * k * w * b * b * b / 12;
    double roll = 2 * (k * b * w * w * w / 12 + k * b * w * c * c / 4);
    double yaw =
        0.25 * 2 * (k * w * b * b * b / 12 + k * b * w * w * w / 12 + k * b * w * c * c / 4);
    double d = g.number("d");
    double q = g.number("q");
    double e = g.number("E");
    double quill =
        q * q * q / (3 * e * Math.PI / 64 * Math.pow(d, 4))
            + q * 2.6 / (0.9 * e * Math.PI / 4 * d * d);
    double across = quill + 1 / (0.25 * 2 * k * w * b) + h * h / roll + s * s / yaw;
    return Answer.start()
        .with("K_tilt", tilt)
        .with("K_yaw", yaw)
        .with("C_quill", quill)
        .with("C_Y", quill + 1 / (2 * k * w * b) + s * s / tilt)
        .with("C_X", across)
        .with("k_X", 1 / across)
        .caution("Clearance of the quill comes on top; it is play, not a spring.");
  }

  private static Reckoner spindle() {
    return Reckoner.of("structures", "nose-compliance", "Compliance of a spindle at its nose")
        .number("k1", Unit.N_PER_MM, "radial stiffness of the front bearing")
        .number("k2", Unit.N_PER_MM, "radial stiffness of the rear bearing")
        .number("l", Unit.MM, "span of the bearings")
        .number("a", Unit.MM, "overhang from the front bearing to the force")
        .number("d", Unit.MM, "diameter of the spindle")
        .number("di", Unit.MM, "bore of the spindle", "0")
        .number("E", Unit.MPA, "Young's modulus", "210000")
        .result("C", Unit.NM_PER_N, "compliance at the force")
        .result("k", Unit.N_PER_MICRON, "stiffness there")
        .result("share_front", Unit.PERCENT, "share of the front bearing")
        .result("share_rear", Unit.PERCENT, "share of the rear bearing")
        .result("share_shaft", Unit.PERCENT, "share of the shaft")
        .result("best_span", Unit.MM, "span of the least compliance, all else equal")
        .source(Sources.SPINDLE)
        .rule(WayReckoners::spindle);
  }

  private static Answer spindle(Given g) {
    Limits.positive(g, "k1", "k2", "l", "a", "d", "E");
    Limits.notNegative(g, "di");
    if (!(g.number("di") < g.number("d"))) {
      throw Limits.outside("di", g.number("di"), Unit.MM, "smaller than d");
    }
    double k1 = g.number("k1");
    double k2 = g.number("k2");
    double l = g.number("l");
    double a = g.number("a");
    double ei =
        g.number("E") * Math.PI / 64 * (Math.pow(g.number("d"), 4) - Math.pow(g.number("di"), 4));
    double front = (1 + a / l) * (1 + a / l) / k1;
    double rear = a * a / (l * l * k2);
    double shaft = a * a * (l + a) / (3 * ei);
    double all = front + rear + shaft;
    return Answer.start()
        .with(
            "C",
            Working.check(
                "C",
                all,
                Unit.NM_PER_N,
                "(1+a/l)^2/k1+(a/l)^2/k2+a^2*(l+a)/(3*EI)",
                g.term("a"),
                g.term("l"),
                g.term("k1"),
                g.term("k2"),
                Term.exact("EI", ei, Unit.ONE)))
        .with("k", 1 / all)
        .with("share_front", front / all)
        .with("share_rear", rear / all)
        .with("share_shaft", shaft / all)
        .with("best_span", bestSpan(k1, k2, a, ei));
  }

  /** Root of {@code a^2/(3EI) l^3 = (2a/k1) l + 2 a^2 (1/k1 + 1/k2)}, one sign change. */
  private static double bestSpan(double k1, double k2, double a, double ei) {
    double low = 0;
    double high = a;
    for (int i = 0; i < 200 && slope(high, k1, k2, a, ei) < 0; i++) {
      high *= 2;
    }
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      if (slope(middle, k1, k2, a, ei) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static double slope(double l, double k1, double k2, double a, double ei) {
    return a * a / (3 * ei) * l * l * l - 2 * a / k1 * l - 2 * a * a * (1 / k1 + 1 / k2);
  }

  private static Reckoner bed() {
    return Reckoner.of("structures", "twin-wall-bed", "Bed of two walls with ribs: twist, bending")
        .number("L", Unit.MM, "length, clamped at one end")
        .number("t", Unit.MM, "thickness of a wall")
        .number("H", Unit.MM, "height of a wall")
        .number("c", Unit.MM, "distance between the middles of the walls")
        .number("E", Unit.MPA, "Young's modulus", "110000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.26")
        .result("K_free", Unit.NMM_PER_RAD, "twist stiffness, walls free to slope at the end")
        .result("K_held", Unit.NMM_PER_RAD, "twist stiffness, wall ends held by ribs")
        .result("C_free", Unit.RAD_PER_NMM, "twist per torque, walls free to slope")
        .result("C_held", Unit.RAD_PER_NMM, "twist per torque, wall ends held by ribs")
        .result("C_vertical", Unit.NM_PER_N, "vertical compliance at the end")
        .source(Sources.TWIN_WALL)
        .rule(WayReckoners::bed);
  }

  private static Answer bed(Given g) {
    Limits.positive(g, "L", "t", "H", "c", "E");
    double nu = Limits.poisson(g.number("nu"));
    TwinWallBed bed =
        new TwinWallBed(
            g.number("L"), g.number("t"), g.number("H"), g.number("c"), g.number("E"), nu);
    Term j = Term.exact("J", Torsion.rectangle(bed.wall(), bed.height()), Unit.MM4);
    return Answer.start()
        .with("K_free", bed.twistStiffness(3))
        .with(
            "K_held",
            Working.check(
                "K_held",
                bed.twistStiffness(12),
                Unit.NMM_PER_RAD,
                "E/(1+nu)*J/L+c^2/2*12*E*t*H^3/12/L^3",
                g.term("E"),
                g.term("nu"),
                j,
                g.term("L"),
                g.term("c"),
                g.term("t"),
                g.term("H")))
        .with("C_free", 1 / bed.twistStiffness(3))
        .with("C_held", 1 / bed.twistStiffness(12))
        .with("C_vertical", bed.verticalCompliance())
        .caution(
            "The two twist values are a bracket for straight cross ribs; diagonal ribs reach about"
                + " four times the end-rib value. Ask the finite elements for your ribs.");
  }

  private static Reckoner level() {
    return Reckoner.of("structures", "bed-twist-taper", "Taper from a bed out of level")
        .number("phi", Unit.MM_PER_M, "twist: difference of two cross levels over the length")
        .number("h", Unit.MM, "height of centres above the ways")
        .result("dX", Unit.MICRON, "sideways movement of the tool")
        .result("taper", Unit.MICRON, "difference in diameter over that length")
        .source(Sources.LEVEL)
        .rule(
            g -> {
              Limits.positive(g, "h");
              return Answer.start()
                  .with("dX", Working.of("dX", Unit.MICRON, "h*phi", g.term("h"), g.term("phi")))
                  .with(
                      "taper",
                      Working.of("taper", Unit.MICRON, "2*h*phi", g.term("h"), g.term("phi")))
                  .caution("Two turned collars show it better than the level does.");
            });
  }
}
