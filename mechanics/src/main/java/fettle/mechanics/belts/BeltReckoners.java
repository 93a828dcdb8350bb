package fettle.mechanics.belts;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on belts. */
public final class BeltReckoners {

  private static final String ROOM = "belts";

  private BeltReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return java.util.stream.Stream.of(
            length(),
            centreDistance(),
            stepPulley(),
            pulleySpeed(),
            tensionRatio(),
            powerLimit(),
            tensions(),
            gauge(),
            shaftLoad(),
            lengthError(),
            toothed(),
            toothedPulley(),
            section(),
            hinge())
        .map(Reckoner::finite)
        .toList();
  }

  private static Term positive(Given g, String name) {
    Need.positive(name, g.number(name));
    return g.term(name);
  }

  private static Reckoner.Draft way(Reckoner.Draft draft) {
    return draft.choice("way", "open or crossed belt", "open", "crossed");
  }

  private static BeltPath.Way way(Given g) {
    return g.choice("way").equals("open") ? BeltPath.Way.OPEN : BeltPath.Way.CROSSED;
  }

  private static Answer path(BeltPath p) {
    return Answer.start()
        .with("L", p.length())
        .with("C", p.centres())
        .with("wrap_small", p.wrapSmall())
        .with("wrap_large", p.wrapLarge())
        .with("span", p.span());
  }

  private static Reckoner.Draft pathResults(Reckoner.Draft draft) {
    return draft
        .result("L", Unit.MM, "belt length on the pitch line")
        .result("C", Unit.MM, "centre distance")
        .result("wrap_small", Unit.DEG, "wrap on the smaller pulley")
        .result("wrap_large", Unit.DEG, "wrap on the larger pulley")
        .result("span", Unit.MM, "free length of one side");
  }

  private static Reckoner length() {
    return pathResults(
            way(
                Reckoner.of(ROOM, "belt-length", "Length and wrap of a belt on two pulleys")
                    .number("d", Unit.MM, "pitch diameter of one pulley")
                    .number("D", Unit.MM, "pitch diameter of the other")
                    .number("C", Unit.MM, "centre distance")))
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              BeltPath p = new BeltPath(g.number("d"), g.number("D"), g.number("C"), way(g));
              Answer a = path(p);
              return p.wrapSmall() < Math.toRadians(120)
                  ? a.caution(
                      "Wrap below 120 degrees: a friction belt slips early; widen the centres or add"
                          + " an idler.")
                  : a;
            });
  }

  private static Reckoner centreDistance() {
    return pathResults(
            way(
                Reckoner.of(ROOM, "belt-centre-distance", "Centre distance for a belt length")
                    .number("d", Unit.MM, "pitch diameter of one pulley")
                    .number("D", Unit.MM, "pitch diameter of the other")
                    .number("L", Unit.MM, "belt length on the pitch line")))
        .source(Sources.GEOMETRY)
        .rule(g -> path(BeltPath.ofLength(g.number("d"), g.number("D"), g.number("L"), way(g))));
  }

  private static Reckoner stepPulley() {
    return way(Reckoner.of(ROOM, "belt-step-pulleys", "Step pulleys for one belt on fixed centres")
            .number("C", Unit.MM, "centre distance")
            .optional("L", Unit.MM, "belt length; from d and D of the first step if left out")
            .optional("d", Unit.MM, "driver of the first step")
            .optional("D", Unit.MM, "driven of the first step")
            .numbers("ratios", Unit.ONE, "driven over driver of each step"))
        .result("L", Unit.MM, "belt length")
        .result("drivers", Unit.MM, "driving diameter of each step")
        .result("driven", Unit.MM, "driven diameter of each step")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double c = g.number("C");
              double l =
                  g.has("L")
                      ? g.number("L")
                      : new BeltPath(g.number("d"), g.number("D"), c, way(g)).length();
              double[] ratios = g.numbers("ratios");
              double[] drivers = new double[ratios.length];
              double[] driven = new double[ratios.length];
              for (int i = 0; i < ratios.length; i++) {
                double r = Need.within("ratio", ratios[i], 0.05, 20);
                BeltPath p = BeltPath.ofRatio(Math.max(r, 1 / r), l, c, way(g));
                drivers[i] = r >= 1 ? p.small() : p.large();
                driven[i] = r >= 1 ? p.large() : p.small();
              }
              return Answer.start().with("L", l).with("drivers", drivers).with("driven", driven);
            });
  }

  private static Reckoner pulleySpeed() {
    return Reckoner.of(ROOM, "belt-speed", "Speed through belts, with slip")
        .number("n", Unit.RPM, "speed of the first driver")
        .numbers("d", Unit.MM, "driver, driven, next driver, next driven, ... diameters")
        .input("slip", Input.Kind.NUMBERS, Unit.PERCENT, "slip of each belt", "0", true)
        .number("thickness", Unit.MM, "thickness of a flat belt, added to each diameter", "0")
        .result("n_out", Unit.RPM, "speed of the last shaft")
        .result("ratio", Unit.ONE, "speed of the last over the first")
        .result("v", Unit.M_PER_S, "speed of the first belt")
        .source(Sources.SLIP)
        .rule(
            g -> {
              double[] d = g.numbers("d");
              double[] slip = g.numbers("slip");
              if (d.length < 2 || d.length % 2 != 0) {
                throw new IllegalArgumentException(
                    "d: found " + d.length + " diameters, expected pairs of driver, driven");
              }
              double t = g.number("thickness");
              double ratio = 1;
              for (int i = 0; i < d.length; i += 2) {
                double s = slip.length == 0 ? 0 : slip[Math.min(i / 2, slip.length - 1)];
                Need.within("slip", s, 0, 0.5);
                ratio *=
                    (Need.positive("d", d[i]) + t) / (Need.positive("d", d[i + 1]) + t) * (1 - s);
              }
              double n = g.number("n");
              return Answer.start()
                  .with("n_out", n * ratio)
                  .with("ratio", ratio)
                  .with("v", n * (d[0] + t) / 2);
            });
  }

  private static double groove(Given g) {
    double phi = g.number("groove");
    return phi == 0 ? Math.PI : phi;
  }

  private static Reckoner.Draft friction(Reckoner.Draft draft) {
    return draft
        .number("mu", Unit.ONE, "friction; 0.25 raw for V and ribbed, 0.25 to 0.35 flat", "0.25")
        .number("groove", Unit.DEG, "groove angle; ribbed 40, V 34 to 38, flat 0", "40")
        .number("wrap", Unit.DEG, "wrap on the smaller pulley", "180");
  }

  private static Reckoner tensionRatio() {
    return friction(Reckoner.of(ROOM, "belt-tension-ratio", "Greatest ratio of belt tensions"))
        .result("ratio", Unit.ONE, "(T1-Tc)/(T2-Tc)")
        .source(Sources.EULER)
        .rule(
            g ->
                Answer.start()
                    .with("ratio", BeltPull.ratio(g.number("mu"), g.number("wrap"), groove(g))));
  }

  private static Reckoner powerLimit() {
    return friction(
            Reckoner.of(ROOM, "belt-power", "Power a belt carries at its greatest tension")
                .optional("T_max", Unit.N, "greatest tension of one belt")
                .optional("A", Unit.MM2, "section of one belt, with sigma instead of T_max")
                .optional("sigma", Unit.MPA, "greatest stress")
                .optional("rho", Unit.KG_PER_M3, "density of the belt")
                .optional("m", Unit.KG_PER_M, "mass per length, instead of A and rho")
                .optional("v", Unit.M_PER_S, "belt speed")
                .optional("d", Unit.MM, "pulley diameter, with n instead of v")
                .optional("n", Unit.RPM, "speed of that pulley")
                .count("belts", "belts side by side", "1"))
        .result("P", Unit.KW, "power of all belts")
        .result("T1", Unit.N, "tight side, one belt")
        .result("T2", Unit.N, "slack side, one belt")
        .result("Tc", Unit.N, "centrifugal tension, one belt")
        .result("v", Unit.M_PER_S, "belt speed")
        .result("v_best", Unit.M_PER_S, "speed of greatest power")
        .source(Sources.EULER)
        .rule(BeltReckoners::powerAnswer);
  }

  private static double beltSpeed(Given g) {
    return Need.positive("v", g.has("v") ? g.number("v") : g.number("d") / 2 * g.number("n"));
  }

  private static double lineMass(Given g) {
    if (g.has("m")) {
      return g.number("m");
    }
    return g.has("rho") && g.has("A") ? g.number("rho") * g.number("A") : 0;
  }

  private static Answer powerAnswer(Given g) {
    double most =
        Need.positive(
            "T_max", g.has("T_max") ? g.number("T_max") : g.number("A") * g.number("sigma"));
    double v = beltSpeed(g);
    double m = lineMass(g);
    double tc = m * v * v;
    if (!(tc < most)) {
      return Answer.none(
          "at this speed the belt's own centrifugal tension uses up all it may carry; run slower");
    }
    double ratio = BeltPull.ratio(g.number("mu"), g.number("wrap"), groove(g));
    double t2 = tc + (most - tc) / ratio;
    int belts = g.count("belts");
    Need.within("belts", belts, 1, 50);
    Answer a =
        Answer.start()
            .with("P", belts * (most - t2) * v)
            .with("T1", most)
            .with("T2", t2)
            .with("Tc", tc)
            .with("v", v);
    return m > 0 ? a.with("v_best", Math.sqrt(most / (3 * m))) : a;
  }

  private static Reckoner tensions() {
    return friction(
            Reckoner.of(ROOM, "belt-tensions", "Tension a belt needs for a power")
                .number("P", Unit.W, "power")
                .optional("v", Unit.M_PER_S, "belt speed")
                .optional("d", Unit.MM, "pulley diameter, with n instead of v")
                .optional("n", Unit.RPM, "speed of that pulley")
                .number("m", Unit.KG_PER_M, "mass per length", "0"))
        .result("v", Unit.M_PER_S, "belt speed")
        .result("ratio", Unit.ONE, "greatest ratio of tensions")
        .result("T1", Unit.N, "tight side")
        .result("T2", Unit.N, "slack side")
        .result("T0", Unit.N, "tension to set at rest, at least")
        .result("shaft_load", Unit.N, "load on the shaft, running")
        .result("shaft_load_rest", Unit.N, "load on the shaft, at rest")
        .source(Sources.EULER)
        .rule(
            g -> {
              double v = beltSpeed(g);
              double wrap = g.number("wrap");
              double ratio = BeltPull.ratio(g.number("mu"), wrap, groove(g));
              BeltPull p = BeltPull.carrying(g.number("P"), v, ratio, g.number("m"));
              return Answer.start()
                  .with("v", v)
                  .with("ratio", ratio)
                  .with("T1", p.tight())
                  .with("T2", p.slack())
                  .with("T0", p.rest())
                  .with("shaft_load", BeltPull.shaftLoad(p.tight(), p.slack(), wrap))
                  .with("shaft_load_rest", BeltPull.shaftLoad(p.rest(), p.rest(), wrap));
            });
  }

  private static Reckoner gauge() {
    return Reckoner.of(ROOM, "belt-tension-gauge", "Belt tension from the pitch of its span")
        .number("m", Unit.KG_PER_M, "mass per length")
        .number("Ls", Unit.MM, "free length of the span")
        .optional("f", Unit.HZ, "frequency of the plucked span")
        .optional("T0", Unit.N, "tension, if the frequency is wanted")
        .result("T", Unit.N, "tension")
        .result("f", Unit.HZ, "frequency of the plucked span")
        .source(Sources.STRING)
        .rule(
            g -> {
              double m = Need.positive("m", g.number("m"));
              double l = Need.positive("Ls", g.number("Ls"));
              if (g.has("f")) {
                double f = Need.positive("f", g.number("f"));
                return Answer.start().with("T", 4 * m * l * l * f * f).with("f", f);
              }
              double t = Need.positive("T0", g.number("T0"));
              return Answer.start().with("T", t).with("f", Math.sqrt(t / m) / (2 * l));
            });
  }

  private static Reckoner shaftLoad() {
    return Reckoner.of(ROOM, "belt-shaft-load", "Load of a belt on its shaft")
        .number("T1", Unit.N, "tight side")
        .number("T2", Unit.N, "slack side")
        .number("wrap", Unit.DEG, "wrap")
        .result("F", Unit.N, "load on the shaft")
        .source(Sources.EULER)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "F",
                        Working.check(
                            "F",
                            BeltPull.shaftLoad(g.number("T1"), g.number("T2"), g.number("wrap")),
                            Unit.N,
                            "sqrt(T1^2+T2^2-2*T1*T2*cos(wrap))",
                            g.term("T1"),
                            g.term("T2"),
                            g.term("wrap"))));
  }

  private static Reckoner lengthError() {
    return Reckoner.of(ROOM, "belt-length-error", "Tension a length error makes on fixed centres")
        .number("dL", Unit.MM, "length wanted more than there is")
        .number("L", Unit.MM, "belt length")
        .number("EA", Unit.N, "stretch stiffness of the belt, force per unit strain")
        .result("dT", Unit.N, "change of tension")
        .source(Sources.STRING)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "dT",
                        Working.of(
                            "dT",
                            Unit.N,
                            "dL*EA/L",
                            g.term("dL"),
                            g.term("EA"),
                            positive(g, "L"))));
  }

  private static Reckoner toothed() {
    return Reckoner.of(ROOM, "toothed-belt", "Centre distance and mesh of a toothed belt")
        .optional("pitch", Unit.MM, "tooth pitch; XL 5.08, L 9.525, 5M 5")
        .optional("p", Unit.MM, "tooth pitch, another name")
        .count("z_belt", "teeth of the belt")
        .count("z1", "teeth of one pulley")
        .count("z2", "teeth of the other")
        .result("C", Unit.MM, "centre distance")
        .result("L", Unit.MM, "belt length")
        .result("d1", Unit.MM, "pitch diameter of the first")
        .result("d2", Unit.MM, "pitch diameter of the second")
        .result("teeth_in_mesh", Unit.ONE, "teeth in mesh on the smaller pulley")
        .result("wrap", Unit.DEG, "wrap on the smaller pulley")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double pitch =
                  Need.positive("pitch", g.has("pitch") ? g.number("pitch") : g.number("p"));
              int z1 = g.count("z1");
              int z2 = g.count("z2");
              double d1 = Need.positive("z1", z1) * pitch / Math.PI;
              double d2 = Need.positive("z2", z2) * pitch / Math.PI;
              BeltPath path =
                  BeltPath.ofLength(
                      d1,
                      d2,
                      Need.positive("z_belt", g.count("z_belt")) * pitch,
                      BeltPath.Way.OPEN);
              double mesh = Math.min(z1, z2) * path.wrapSmall() / (2 * Math.PI);
              Answer a =
                  Answer.start()
                      .with("C", path.centres())
                      .with("L", path.length())
                      .with("d1", d1)
                      .with("d2", d2)
                      .with("teeth_in_mesh", mesh)
                      .with("wrap", path.wrapSmall());
              if (path.centres() < (d1 + d2) / 2) {
                a = a.caution("The pulleys overlap at this centre distance.");
              }
              return mesh < 6
                  ? a.caution(
                      "Fewer than 6 teeth in mesh: take a fifth off its rating for each missing.")
                  : a;
            });
  }

  private static Reckoner toothedPulley() {
    return Reckoner.of(ROOM, "toothed-pulley", "Pitch and outside diameter of a toothed pulley")
        .choice("section", "belt", "XL", "MXL", "L", "H", "XH", "3M", "5M", "8M", "14M")
        .count("z", "teeth")
        .result("d", Unit.MM, "pitch diameter")
        .result("OD", Unit.MM, "outside diameter")
        .source(Sources.TOOTHED)
        .rule(
            g -> {
              BeltKind kind = BeltKind.of(g.choice("section"));
              int z = g.count("z");
              double d = Need.positive("z", z) * kind.pitch() / Math.PI;
              Answer a = Answer.start().with("d", d).with("OD", d - kind.pitchLine());
              return z < kind.least()
                  ? a.caution("Fewer teeth than the least for this belt: " + kind.least() + ".")
                  : a;
            });
  }

  private static Reckoner section() {
    return Reckoner.of(ROOM, "belt-section", "Standard sizes of a belt section")
        .choice(
            "section", "belt", "PJ", "Z", "A", "B", "SPZ", "SPA", "SPB", "PH", "PK", "PL", "PM",
            "MXL", "XL", "L", "H", "XH", "3M", "5M", "8M", "14M")
        .optional("L", Unit.MM, "length wanted")
        .result("pitch", Unit.MM, "tooth pitch, rib pitch or groove spacing")
        .result("least", Unit.ONE, "least pulley: diameter in mm, toothed belts: teeth")
        .result("lengths", Unit.MM, "standard lengths")
        .result("next", Unit.MM, "standard lengths below and above the one wanted")
        .source(Sources.V_BELTS)
        .rule(
            g -> {
              BeltKind kind = BeltKind.of(g.choice("section"));
              List<Double> lengths = kind.lengths();
              Answer a = Answer.start().with("pitch", kind.pitch()).with("least", kind.least());
              if (lengths.isEmpty()) {
                return a.caution("Lengths of this belt are not standardised here: ask the seller.");
              }
              a = a.with("lengths", lengths.stream().mapToDouble(v -> v).toArray());
              if (!g.has("L")) {
                return a;
              }
              double wanted = g.number("L");
              double below =
                  lengths.stream().filter(v -> v <= wanted).reduce((x, y) -> y).orElse(0.0);
              double above = lengths.stream().filter(v -> v >= wanted).findFirst().orElse(0.0);
              return a.with("next", new double[] {below, above});
            });
  }

  private static Reckoner hinge() {
    return Reckoner.of(ROOM, "belt-motor-hinge", "Belt pull of a motor on a hinged plate")
        .number("m", Unit.KG, "mass of motor and plate")
        .number("x_cg", Unit.MM, "hinge to centre of gravity, level")
        .number("x_pull", Unit.MM, "hinge to the line of the belt pull, square to it")
        .number("g", Unit.M_PER_S2, "gravity", "9.80665")
        .result("F", Unit.N, "belt pull on the shaft")
        .source(Sources.STRING)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "F",
                        Working.of(
                            "F",
                            Unit.N,
                            "m*g*x_cg/x_pull",
                            positive(g, "m"),
                            positive(g, "g"),
                            g.term("x_cg"),
                            positive(g, "x_pull"))));
  }
}
