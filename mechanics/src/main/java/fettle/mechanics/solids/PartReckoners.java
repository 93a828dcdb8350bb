package fettle.mechanics.solids;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.List;

/** Finite elements for parts given as boxes and round holes. */
final class PartReckoners {

  private static final double MOST_CELLS = 2_500_000;

  private PartReckoners() {}

  static List<Reckoner> all() {
    return List.of(part(), pad(), patchTest());
  }

  private static Reckoner.Draft part(String topic, String title) {
    Reckoner.Draft d =
        Reckoner.of("structures", topic, title)
            .rows("boxes", Unit.MM, "solid boxes: x0,x1,y0,y1,z0,z1; next box");
    for (String[] input :
        new String[][] {
          {
            "bars",
            "round bars added: axis (0 x, 1 y, 2 z), middle on the next two axes, radius,"
                + " from, to"
          },
          {"cuts", "boxes cut away"},
          {"holes", "round holes cut away, as bars"},
          {"fixed", "faces bonded to something rigid: x0,x1,y0,y1,z0,z1, one pair equal"},
          {"fixed_discs", "round faces bonded: axis, place on it, middle on the next two, radius"},
          {"greased", "faces held along their normal only"},
          {"springs", "faces on springs: x0,x1,y0,y1,z0,z1, normal and tangential N/mm3"}
        }) {
      d = d.input(input[0], Input.Kind.ROWS, Unit.MM, input[1], null, false);
    }
    return d.number("E", Unit.MPA, "Young's modulus", "110000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.26")
        .number("step", Unit.MM, "largest step of the finer mesh");
  }

  private static double[][] rows(Given g, String name, int least, int most) {
    double[][] rows = g.has(name) ? g.rows(name) : new double[0][];
    for (double[] r : rows) {
      if (r.length < least || r.length > most) {
        throw new IllegalArgumentException(
            name
                + ": a row has "
                + r.length
                + " numbers, expected "
                + least
                + (most > least ? " to " + most : ""));
      }
    }
    return rows;
  }

  private static Shape box(double[] r) {
    return new Shape.Box(r[0], r[1], r[2], r[3], r[4], r[5]);
  }

  private static Shape cylinder(double[] r) {
    return new Shape.Cylinder(axis(r[0]), r[1], r[2], r[3], r[4], r[5]);
  }

  private static int axis(double number) {
    if (number != 0 && number != 1 && number != 2) {
      throw Limits.outside("axis", number, Unit.ONE, "0 (x), 1 (y) or 2 (z)");
    }
    return (int) number;
  }

  private static Body body(Given g) {
    List<Body.Step> steps = new ArrayList<>();
    for (double[] r : rows(g, "boxes", 6, 6)) {
      steps.add(new Body.Step(Body.Kind.ADD, box(r)));
    }
    for (double[] r : rows(g, "bars", 6, 6)) {
      steps.add(new Body.Step(Body.Kind.ADD, cylinder(r)));
    }
    for (double[] r : rows(g, "cuts", 6, 6)) {
      steps.add(new Body.Step(Body.Kind.CUT, box(r)));
    }
    for (double[] r : rows(g, "holes", 6, 6)) {
      steps.add(new Body.Step(Body.Kind.CUT, cylinder(r)));
    }
    return new Body(steps);
  }

  private static List<Support> supports(Given g) {
    List<Support> list = new ArrayList<>();
    for (double[] r : rows(g, "fixed", 6, 6)) {
      list.add(new Support.Fixed(Patch.Rectangle.of(r)));
    }
    for (double[] r : rows(g, "fixed_discs", 5, 6)) {
      list.add(
          new Support.Fixed(
              new Patch.Disc(axis(r[0]), r[1], r[2], r[3], r[4], r.length > 5 ? r[5] : 0)));
    }
    for (double[] r : rows(g, "greased", 6, 6)) {
      list.add(new Support.Greased(Patch.Rectangle.of(r)));
    }
    for (double[] r : rows(g, "springs", 8, 8)) {
      list.add(
          new Support.Springs(Patch.Rectangle.of(r[0], r[1], r[2], r[3], r[4], r[5]), r[6], r[7]));
    }
    if (list.isEmpty()) {
      throw new IllegalArgumentException(
          "support: the part is not held; give fixed, fixed_discs, greased or springs");
    }
    return list;
  }

  private static Elastic material(Given g) {
    return new Elastic(g.number("E"), g.number("nu"));
  }

  private static double step(Given g, Body body) {
    double step = Limits.positive("step", g.number("step"), Unit.MM);
    double[][] b = body.bounds();
    double cells = 1;
    for (int a = 0; a < 3; a++) {
      cells *= Math.ceil((b[1][a] - b[0][a]) / step);
    }
    if (!(cells <= MOST_CELLS)) {
      throw Limits.outside(
          "step",
          step,
          Unit.MM,
          "so large that at most " + (long) MOST_CELLS + " cells are needed");
    }
    return step;
  }

  private static Reckoner part() {
    return part("part-stiffness", "Compliance of a part by finite elements, before and after a cut")
        .input(
            "loads",
            Input.Kind.ROWS,
            Unit.MM,
            "loaded faces: x0,x1,y0,y1,z0,z1, then Fx,Fy,Fz in N and, if wanted, Mx,My,Mz",
            null,
            false)
        .input(
            "bore_loads",
            Input.Kind.ROWS,
            Unit.MM,
            "loaded bores: axis, middle on the next two, radius, from, to, two angles in degrees"
                + " from the next axis, then Fx,Fy,Fz",
            null,
            false)
        .input("after_cuts", Input.Kind.ROWS, Unit.MM, "boxes cut away in the change", null, false)
        .input("after_holes", Input.Kind.ROWS, Unit.MM, "holes cut in the change", null, false)
        .result("C", Unit.MM_PER_N, "displacement along the loads, sum of force times displacement")
        .result("C_bar", Unit.MM_PER_N, "half-width of its mesh error")
        .result("C_after", Unit.MM_PER_N, "the same after the change")
        .result("C_after_bar", Unit.MM_PER_N, "half-width of its mesh error")
        .result("ratio", Unit.ONE, "stiffness after over stiffness before")
        .result("ratio_bar", Unit.ONE, "half-width of its mesh error")
        .result("unknowns", Unit.ONE, "unknowns of the finer mesh")
        .result("iterations", Unit.ONE, "most iterations of a solution")
        .source(Sources.TAYLOR)
        .rule(PartReckoners::settled);
  }

  /** Says so where the equations do not settle. */
  private static Answer settled(Given g) {
    try {
      return part(g);
    } catch (IllegalStateException e) {
      return Answer.none(String.valueOf(e.getMessage()));
    }
  }

  private static Answer part(Given g) {
    Body before = body(g);
    Body after = before;
    for (double[] r : rows(g, "after_cuts", 6, 6)) {
      after = after.cut(box(r));
    }
    for (double[] r : rows(g, "after_holes", 6, 6)) {
      after = after.cut(cylinder(r));
    }
    Rigidity rigidity = new Rigidity(material(g), supports(g), loads(g));
    Rigidity.Comparison c = rigidity.compare(before, after, step(g, before));
    Answer a =
        Answer.start()
            .with("C", c.before().value())
            .with("C_bar", c.before().bar())
            .with("unknowns", c.unknowns())
            .with("iterations", c.iterations());
    if (!before.equals(after)) {
      a =
          a.with("C_after", c.after().value())
              .with("C_after_bar", c.after().bar())
              .with("ratio", c.kept().value())
              .with("ratio_bar", c.kept().bar())
              .caution(
                  "The loss is that of the part alone; at the tool it is smaller, because joints"
                      + " and work give too. A cut in an old casting may also distort it.");
    }
    if (c.before().bar() > 0.05 * Math.abs(c.before().value())) {
      a = a.caution("Not converged: the mesh error exceeds 5 %; choose a smaller step.");
    }
    return a.caution("Stiffness only; strength, shock and fatigue are not assessed.");
  }

  private static List<Rigidity.Load> loads(Given g) {
    List<Rigidity.Load> loads = new ArrayList<>();
    for (double[] r : rows(g, "loads", 9, 12)) {
      Patch.Rectangle patch = Patch.Rectangle.of(r[0], r[1], r[2], r[3], r[4], r[5]);
      loads.add(new Rigidity.Load(patch, rest(r, 6)));
    }
    for (double[] r : rows(g, "bore_loads", 11, 11)) {
      double deg = Math.PI / 180;
      loads.add(
          new Rigidity.Load(
              new Patch.Bore(
                  axis(r[0]),
                  r[1],
                  r[2],
                  r[3],
                  new Interval(r[4], r[5]),
                  new Interval(r[6] * deg, r[7] * deg)),
              rest(r, 8)));
    }
    return loads;
  }

  private static List<Double> rest(double[] row, int from) {
    List<Double> list = new ArrayList<>();
    for (int i = from; i < row.length; i++) {
      list.add(row[i]);
    }
    return list;
  }

  private static Reckoner pad() {
    Reckoner.Draft d =
        part("rigid-pad", "Stiffness of a rigid plate bonded to a part, by finite elements")
            .numbers("pad", Unit.MM, "bonded face: x0,x1,y0,y1,z0,z1, one pair equal");
    for (String name : List.of("x", "y", "z")) {
      d = d.result("K_" + name, Unit.N_PER_MM, "stiffness along " + name);
    }
    for (String name : List.of("x", "y", "z")) {
      d = d.result("K_r" + name, Unit.NMM_PER_RAD, "stiffness about " + name);
    }
    for (String name : List.of("x", "y", "z", "rx", "ry", "rz")) {
      d = d.result("bar_" + name, Unit.PERCENT, "mesh error of that stiffness");
    }
    return d.source(Sources.TAYLOR).rule(PartReckoners::pad);
  }

  private static Answer pad(Given g) {
    double[] p = g.numbers("pad");
    if (p.length != 6) {
      throw new IllegalArgumentException("pad: needs x0,x1,y0,y1,z0,z1");
    }
    Patch.Rectangle pad = Patch.Rectangle.of(p);
    Body body = body(g);
    List<Support> supports = supports(g);
    Rigidity r =
        new Rigidity(material(g), supports, List.of(new Rigidity.Load(pad, List.of(0., 0., 1.))));
    Grid coarse = r.grid(List.of(body), 2 * step(g, body));
    double[][] one = ElasticModel.of(body, material(g), coarse, supports).rigidPlate(pad);
    double[][] two = ElasticModel.of(body, material(g), coarse.halved(), supports).rigidPlate(pad);
    Answer a = Answer.start();
    String[] name = {"x", "y", "z", "rx", "ry", "rz"};
    for (int i = 0; i < 6; i++) {
      Rigidity.Estimate e = Rigidity.Estimate.of(two[i][i], one[i][i]);
      a = a.with("K_" + name[i], e.value()).with("bar_" + name[i], e.bar() / e.value());
    }
    return a;
  }

  private static Reckoner patchTest() {
    return Reckoner.of("structures", "patch-test", "Even strain through an uneven mesh")
        .number("E", Unit.MPA, "Young's modulus", "1000000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.25")
        .number(
            "strain",
            Unit.ONE,
            "size of the strains, all six alike in tensor measure times 2",
            "0.001")
        .result("sigma", Unit.MPA, "normal stress, the same in x, y, z")
        .result("tau", Unit.MPA, "shear stress, the same in xy, yz, zx")
        .result("error", Unit.ONE, "greatest error of an inner node over the greatest displacement")
        .source(
            fettle.mechanics.base.Source.page(
                "MacNeal & Harder 1985, Finite Elem. Anal. Des. 1, 3-20", "Table 2, patch test"))
        .rule(
            g -> {
              PatchTest t = PatchTest.of(material(g), g.number("strain"));
              return Answer.start()
                  .with("sigma", t.normal())
                  .with("tau", t.shear())
                  .with("error", t.error());
            });
  }
}
