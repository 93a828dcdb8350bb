package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Single calculations on spindles and test bars. */
final class SpindleReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;
  private static final double NOSE = 300;
  private static final String BY_HAND =
      "Turn the spindle by hand, motor isolated; take indicator and chuck key out before power.";

  private SpindleReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        spindleBar(),
        runOutTurn(),
        twoPlanes(),
        reseatings(),
        unbiased(),
        reversal(),
        errorMotion(),
        axialFloat(),
        faceReversal(),
        preload(),
        sag());
  }

  private static Reckoner spindleBar() {
    return Reckoner.of(GROUP, "spindle-bar", "Test bar in the spindle: taper and bar told apart")
        .input(
            "readings",
            Input.Kind.ROWS,
            Unit.ONE,
            "rows: bar angle in deg, z from the nose in mm, spindle angle in deg, indicator in mm",
            null,
            true)
        .number("z", Unit.MM, "place at which the eccentricity is wanted", "300")
        .result("e", Unit.MICRON, "eccentricity of the taper at z (radius, not total reading)")
        .result("angle", Unit.DEG, "its angle")
        .result("TIR", Unit.MICRON, "total reading that a perfect bar would show at z")
        .result("e_corrected", Unit.MICRON, "eccentricity freed of the part that noise adds")
        .result("e_bound", Unit.MICRON, "95 % upper bound of the eccentricity")
        .result("e_nose", Unit.MICRON, "eccentricity of the taper at the nose")
        .result("tilt", Unit.MICRON_PER_M, "tilt of the taper to the axis of rotation")
        .result("tilt_300", Unit.MICRON, "tilt over 300 mm")
        .result("bar_e", Unit.MICRON, "eccentricity of the bar at z")
        .result("bar_angle", Unit.DEG, "its angle on the bar")
        .result("bar_nose", Unit.MICRON, "eccentricity of the bar at the nose")
        .result("bar_tilt", Unit.MICRON_PER_M, "bend or tilt of the bar in its taper")
        .result("u", Unit.MICRON, "standard uncertainty of each component at z")
        .result("nu", Unit.ONE, "degrees of freedom")
        .result("U", Unit.MICRON, "expanded uncertainty of the eccentricity, 95 %")
        .result("seating", Unit.MICRON, "largest disagreement of the seatings")
        .result("s", Unit.MICRON, "scatter of a reading about its first harmonic")
        .result("mean", Unit.MICRON, "mean readings in the order of the planes, free of the bar")
        .source(Sources.HARMONICS)
        .rule(SpindleReckoners::spindleBar);
  }

  private static Answer spindleBar(Given g) {
    double[][] rows = g.rows("readings");
    Require.columns("readings", rows, 4, "bar angle, z, spindle angle, reading");
    TreeMap<Double, TreeMap<Double, List<double[]>>> byPlane = new TreeMap<>();
    for (double[] row : rows) {
      byPlane
          .computeIfAbsent(row[1], k -> new TreeMap<>())
          .computeIfAbsent(row[0], k -> new ArrayList<>())
          .add(new double[] {Math.toRadians(row[2]), row[3]});
    }
    List<RunOutVector> spindle = new ArrayList<>();
    List<RunOutVector> bar = new ArrayList<>();
    double[] z = byPlane.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    double[] means = new double[z.length];
    double seating = 0;
    double squares = 0;
    double freedom = 0;
    double component = 0;
    int seats = 0;
    for (int i = 0; i < z.length; i++) {
      TreeMap<Double, List<double[]>> plane = byPlane.get(z[i]);
      if (plane == null || plane.size() < 2) {
        throw new IllegalArgumentException(
            "readings: the plane z = "
                + z[i]
                + " mm was read with one seating of the bar; re-seat the bar at 180 deg and repeat");
      }
      List<RunOutVector> vectors = new ArrayList<>();
      double[] at = plane.keySet().stream().mapToDouble(Math::toRadians).toArray();
      for (List<double[]> seat : plane.values()) {
        double[][] list = seat.toArray(new double[0][]);
        RunOut.Turn turn = RunOut.turn(Require.column(list, 0), Require.column(list, 1));
        vectors.add(turn.vector());
        means[i] += turn.mean() / plane.size();
        squares += turn.scatter() * turn.scatter() * turn.freedom();
        freedom += turn.freedom();
        component = Math.max(component, Math.sqrt(2.0 / list.length));
      }
      seats = Math.max(seats, at.length);
      RunOut.Seatings seatings = RunOut.seatings(at, vectors);
      spindle.add(seatings.spindle());
      bar.add(seatings.bar());
      seating = Math.max(seating, seatings.scatter());
    }
    double s = Math.sqrt(squares / freedom);
    double u = s * component / Math.sqrt(seats);
    double k = Quantiles.student(0.975, freedom);
    Answer answer =
        Answer.start()
            .with("s", s)
            .with("nu", freedom)
            .with("seating", seating)
            .with("mean", means);
    if (z.length < 2) {
      return sizes(answer, spindle.get(0), bar.get(0), u)
          .with("U", k * u)
          .caution("One plane only: the tilt is not known; read a second plane farther out.")
          .caution(BY_HAND);
    }
    RunOut.Axis axis = RunOut.axis(z, spindle);
    RunOut.Axis barAxis = RunOut.axis(z, bar);
    double place = g.number("z");
    double spread = Sample.of(z).sumOfSquares();
    double mean = Sample.of(z).mean();
    double there = u * Math.sqrt(1.0 / z.length + Math.pow(place - mean, 2) / spread);
    return sizes(answer, axis.at(place), barAxis.at(place), there)
        .with("U", k * there)
        .with("e_nose", axis.nose().size())
        .with("tilt", axis.tilt().size())
        .with("tilt_300", axis.tilt().size() * NOSE)
        .with("bar_nose", barAxis.nose().size())
        .with("bar_tilt", barAxis.tilt().size())
        .caution(BY_HAND);
  }

  private static Answer sizes(Answer start, RunOutVector s, RunOutVector b, double u) {
    return start
        .with("e", s.size())
        .with("angle", s.angle())
        .with("TIR", 2 * s.size())
        .with("e_corrected", RunOut.corrected(s.size(), u))
        .with("e_bound", Quantiles.sizeBound(s.size(), u, 0.95))
        .with("bar_e", b.size())
        .with("bar_angle", b.angle())
        .with("u", u);
  }

  private static Reckoner runOutTurn() {
    return Reckoner.of(GROUP, "run-out", "Eccentricity from readings over one turn")
        .numbers("angles", Unit.DEG, "spindle angles")
        .numbers("readings", Unit.MICRON, "indicator readings")
        .result("e", Unit.MICRON, "eccentricity (radius)")
        .result("angle", Unit.DEG, "angle: the reading is e cos(spindle + angle)")
        .result("TIR", Unit.MICRON, "total reading of the first harmonic, 2e")
        .result("range", Unit.MICRON, "largest reading less smallest, as read")
        .result("mean", Unit.MICRON, "mean reading")
        .result("s", Unit.MICRON, "scatter about the first harmonic: form error and noise")
        .result("u", Unit.MICRON, "standard uncertainty of each component")
        .result("e_corrected", Unit.MICRON, "eccentricity freed of the part that noise adds")
        .result("e_bound", Unit.MICRON, "95 % upper bound of the eccentricity")
        .source(Sources.HARMONICS)
        .rule(
            g -> {
              double[] readings = g.numbers("readings");
              RunOut.Turn turn = RunOut.turn(g.numbers("angles"), readings);
              double e = turn.vector().size();
              return Answer.start()
                  .with("e", e)
                  .with("angle", turn.vector().angle())
                  .with("TIR", 2 * e)
                  .with("range", RunOut.range(readings))
                  .with("mean", turn.mean())
                  .with("s", turn.scatter())
                  .with("u", turn.uncertainty())
                  .with("e_corrected", RunOut.corrected(e, turn.uncertainty()))
                  .with("e_bound", Quantiles.sizeBound(e, turn.uncertainty(), 0.95))
                  .caution(BY_HAND);
            });
  }

  private static Reckoner twoPlanes() {
    return Reckoner.of(GROUP, "two-plane-run-out", "Offset and tilt from run-out at two distances")
        .number("e1", Unit.MICRON, "eccentricity near the nose (half the total reading)")
        .number("e2", Unit.MICRON, "eccentricity farther out")
        .optional("angle1", Unit.DEG, "angle of the high point near the nose")
        .optional("angle2", Unit.DEG, "angle of the high point farther out")
        .number("z1", Unit.MM, "near plane, from the nose")
        .number("z2", Unit.MM, "far plane")
        .result("tilt", Unit.MICRON_PER_M, "tilt")
        .result("tilt_300", Unit.MICRON, "tilt over 300 mm")
        .result("tilt_angle", Unit.DEG, "direction of the tilt")
        .result("e0", Unit.MICRON, "offset at the nose")
        .result("tilt_low", Unit.MICRON_PER_M, "least tilt that the sizes alone allow")
        .result("tilt_high", Unit.MICRON_PER_M, "largest tilt that the sizes alone allow")
        .source(Sources.HARMONICS)
        .rule(
            g -> {
              double dz = g.number("z2") - g.number("z1");
              Require.positive("z2 - z1", dz);
              double e1 = Require.notNegative("e1", g.number("e1"));
              double e2 = Require.notNegative("e2", g.number("e2"));
              Answer answer =
                  Answer.start()
                      .with("tilt_low", Math.abs(e2 - e1) / dz)
                      .with("tilt_high", (e1 + e2) / dz);
              if (!g.has("angle1") || !g.has("angle2")) {
                return answer.caution(
                    "Without the angles of the high points the tilt lies anywhere between these"
                        + " limits; mark them and give angle1 and angle2.");
              }
              RunOut.Axis axis =
                  RunOut.axis(
                      new double[] {g.number("z1"), g.number("z2")},
                      List.of(
                          RunOutVector.polar(e1, g.number("angle1")),
                          RunOutVector.polar(e2, g.number("angle2"))));
              return answer
                  .with("tilt", axis.tilt().size())
                  .with("tilt_300", axis.tilt().size() * NOSE)
                  .with("tilt_angle", axis.tilt().angle())
                  .with("e0", axis.nose().size());
            });
  }

  private static Reckoner reseatings() {
    return Reckoner.of(
            GROUP, "bar-seatings", "Spindle and bar from run-out vectors of several seatings")
        .numbers(
            "seats", Unit.DEG, "angles at which the bar was seated, e.g. 0,180 or 0,90,180,270")
        .numbers("e", Unit.MICRON, "eccentricity found at each")
        .numbers("angles", Unit.DEG, "angle of each")
        .result("spindle", Unit.MICRON, "eccentricity of the spindle taper")
        .result("spindle_angle", Unit.DEG, "its angle")
        .result("bar", Unit.MICRON, "eccentricity of the bar")
        .result("bar_angle", Unit.DEG, "its angle on the bar")
        .result("seating", Unit.MICRON, "largest disagreement of the seatings: dirt, wear")
        .source(Sources.HARMONICS)
        .rule(
            g -> {
              double[] seats = g.numbers("seats");
              double[] e = g.numbers("e");
              double[] angles = g.numbers("angles");
              Require.sameLength("e", e.length, seats.length);
              Require.sameLength("angles", angles.length, seats.length);
              List<RunOutVector> vectors = new ArrayList<>();
              for (int i = 0; i < e.length; i++) {
                vectors.add(RunOutVector.polar(e[i], angles[i]));
              }
              RunOut.Seatings found = RunOut.seatings(seats, vectors);
              return Answer.start()
                  .with("spindle", found.spindle().size())
                  .with("spindle_angle", found.spindle().angle())
                  .with("bar", found.bar().size())
                  .with("bar_angle", found.bar().angle())
                  .with("seating", found.scatter());
            });
  }

  private static Reckoner unbiased() {
    return Reckoner.of(GROUP, "eccentricity-bias", "Eccentricity freed of the part that noise adds")
        .number("e", Unit.MICRON, "eccentricity observed")
        .number("u", Unit.MICRON, "standard uncertainty of each component")
        .number("confidence", Unit.ONE, "confidence of the upper bound", "0.95")
        .result("e_corrected", Unit.MICRON, "sqrt(max(0, e^2 - 2u^2))")
        .result("e_bound", Unit.MICRON, "upper bound")
        .source(Sources.HARMONICS)
        .rule(
            g -> {
              double e = Require.notNegative("e", g.number("e"));
              double u = Require.notNegative("u", g.number("u"));
              return Answer.start()
                  .with("e_corrected", RunOut.corrected(e, u))
                  .with("e_bound", Quantiles.sizeBound(e, u, g.number("confidence")));
            });
  }

  private static Reckoner reversal() {
    return Reckoner.of(
            GROUP, "reversal", "Two records split by reversal (spindle and artefact, way and bar)")
        .numbers("T1", Unit.MICRON, "readings of the first set-up")
        .numbers("T2", Unit.MICRON, "readings of the second, same places of the artefact")
        .choice(
            "kind",
            "donaldson: artefact and indicator both turned to the other side; bar: bar turned half"
                + " round, indicator left",
            "donaldson",
            "bar")
        .result("S", Unit.MICRON, "error of the spindle or slide")
        .result("P", Unit.MICRON, "error of the artefact or bar")
        .result("S_range", Unit.MICRON, "largest less smallest S")
        .result("P_range", Unit.MICRON, "largest less smallest P")
        .source(Sources.REVERSAL)
        .rule(
            g -> {
              RunOut.Split split = RunOut.reversal(g.numbers("T1"), g.numbers("T2"));
              double[] difference = array(split.spindle());
              double[] sum = array(split.artefact());
              Require.atLeast("T1", sum.length, 1);
              boolean bar = g.choice("kind").equals("bar");
              double[] s = bar ? sum : difference;
              double[] p = bar ? difference : sum;
              return Answer.start()
                  .with("S", s)
                  .with("P", p)
                  .with("S_range", RunOut.range(s))
                  .with("P_range", RunOut.range(p));
            });
  }

  private static double[] array(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Reckoner errorMotion() {
    return Reckoner.of(
            GROUP, "error-motion", "Error motion of a spindle over several turns (ISO 230-7)")
        .numbers("angles", Unit.DEG, "spindle angles")
        .rows("readings", Unit.MICRON, "a row for each turn, a reading for each angle")
        .choice("direction", "axial keeps the first harmonic", "radial", "axial")
        .result("synchronous", Unit.MICRON, "part that repeats every turn")
        .result("asynchronous", Unit.MICRON, "largest spread at any angle")
        .result("total", Unit.MICRON, "largest less smallest of all")
        .result("first", Unit.MICRON, "amplitude of the first harmonic")
        .source(Sources.RADIAL_ERROR)
        .rule(
            g -> {
              double[] angles = g.numbers("angles");
              double[][] turns = g.rows("readings");
              RunOut.Once once =
                  g.choice("direction").equals("axial") ? RunOut.Once.KEPT : RunOut.Once.REMOVED;
              RunOut.ErrorMotion motion = RunOut.errorMotion(angles, turns, once);
              double[] mean = new double[angles.length];
              for (int k = 0; k < mean.length; k++) {
                mean[k] = Sample.of(Require.column(turns, k)).mean();
              }
              Answer answer =
                  Answer.start()
                      .with("synchronous", motion.synchronous())
                      .with("asynchronous", motion.asynchronous())
                      .with("total", motion.total())
                      .with("first", RunOut.turn(angles, mean).vector().size());
              return turns.length < 8
                  ? answer.caution(
                      "Fewer than 8 turns: a static test by hand; spindle at lowest speed only, hands"
                          + " and sleeves clear.")
                  : answer.caution(BY_HAND);
            });
  }

  private static Reckoner axialFloat() {
    return Reckoner.of(GROUP, "axial-float", "Periodic axial slip and camming of the nose face")
        .numbers("angles", Unit.DEG, "spindle angles")
        .numbers("centre", Unit.MICRON, "readings on a ball in the centre")
        .input("face", Input.Kind.NUMBERS, Unit.MICRON, "readings on the face", null, false)
        .optional("r", Unit.MM, "radius of the readings on the face")
        .optional("push", Unit.MICRON, "reading pushed towards the headstock")
        .optional("pull", Unit.MICRON, "reading pulled away from it")
        .result("slip", Unit.MICRON, "periodic axial slip, total reading at the centre")
        .result("camming", Unit.MICRON, "total reading on the face, slip included")
        .result("square", Unit.MICRON_PER_M, "face out of square, slip taken off")
        .result("flat", Unit.MICRON, "what remains of the face: waviness")
        .result("float", Unit.MICRON, "axial float between push and pull")
        .source(Sources.GEOMETRY)
        .rule(SpindleReckoners::axialFloat);
  }

  private static Answer axialFloat(Given g) {
    double[] angles = g.numbers("angles");
    double[] centre = g.numbers("centre");
    Require.sameLength("centre", centre.length, angles.length);
    Require.atLeast("angles", angles.length, 4);
    Answer answer = Answer.start().with("slip", RunOut.range(centre));
    if (g.has("face")) {
      double[] face = g.numbers("face");
      Require.sameLength("face", face.length, angles.length);
      double[] rest = new double[face.length];
      for (int i = 0; i < rest.length; i++) {
        rest[i] = face[i] - centre[i];
      }
      RunOut.Turn turn = RunOut.turn(angles, rest);
      double[] flat = new double[rest.length];
      for (int i = 0; i < rest.length; i++) {
        flat[i] = rest[i] - turn.mean() - turn.vector().turned(angles[i]).x();
      }
      answer = answer.with("camming", RunOut.range(face)).with("flat", RunOut.range(flat));
      if (g.has("r")) {
        answer = answer.with("square", turn.vector().size() / Require.positive("r", g.number("r")));
      }
    }
    if (g.has("push") && g.has("pull")) {
      answer = answer.with("float", Math.abs(g.number("pull") - g.number("push")));
    }
    return answer.caution(BY_HAND);
  }

  private static Reckoner faceReversal() {
    return Reckoner.of(
            GROUP, "face-reversal", "Tilt motion from two face records on opposite sides")
        .numbers("T1", Unit.MICRON, "readings on one side")
        .numbers("T2", Unit.MICRON, "readings on the opposite side, artefact turned with it")
        .number("R", Unit.MM, "radius of the readings")
        .result("tilt", Unit.MICRON_PER_M, "tilt motion at each angle, (T1 - T2)/(2R)")
        .result("face", Unit.MICRON, "face form and axial motion together, (T1 + T2)/2")
        .result("tilt_range", Unit.MICRON_PER_M, "largest less smallest tilt")
        .source(Sources.REVERSAL)
        .rule(
            g -> {
              double r = Require.positive("R", g.number("R"));
              RunOut.Split split = RunOut.reversal(g.numbers("T1"), g.numbers("T2"));
              double[] tilt = split.spindle().stream().mapToDouble(v -> v / r).toArray();
              Require.atLeast("T1", tilt.length, 1);
              return Answer.start()
                  .with("tilt", tilt)
                  .with("face", array(split.artefact()))
                  .with("tilt_range", RunOut.range(tilt));
            });
  }

  private static Reckoner preload() {
    return Reckoner.of(
            GROUP, "preload-check", "Preload of a bearing pair from the knee of a push test")
        .choice("contact", "rolling bodies", "ball", "roller")
        .optional("F_knee", Unit.N, "force at which the curve bends, one row unloads")
        .optional("F_max", Unit.N, "largest force tried without a knee")
        .optional("G", Unit.MICRON, "lost motion at zero force")
        .number("u_G", Unit.MICRON, "its standard uncertainty", "0")
        .result("F0", Unit.N, "preload")
        .result("F0_least", Unit.N, "preload is at least this")
        .result("ratio", Unit.ONE, "knee force over preload")
        .result("clearance", Unit.ONE, "yes if the lost motion is proven: the pair has clearance")
        .source(Sources.CONTACT)
        .rule(
            g -> {
              double ratio = g.choice("contact").equals("ball") ? Math.pow(2, 1.5) : 2;
              Answer answer = Answer.start().with("ratio", ratio);
              if (g.has("F_knee")) {
                double knee = Require.positive("F_knee", g.number("F_knee"));
                answer = answer.with("F0", knee / ratio);
              } else if (g.has("F_max")) {
                answer =
                    answer.with("F0_least", Require.positive("F_max", g.number("F_max")) / ratio);
              } else if (!g.has("G")) {
                throw new IllegalArgumentException(
                    "give F_knee (knee found), F_max (no knee up to it) or G (lost motion)");
              }
              if (g.has("G")) {
                boolean proven =
                    Math.abs(g.number("G")) > 2 * Require.notNegative("u_G", g.number("u_G"));
                answer = answer.with("clearance", proven ? "yes" : "no");
              }
              return answer.caution(
                  "Test cold and warm: a warm spindle may gain or lose preload. No push test with"
                      + " power on.");
            });
  }

  private static Reckoner sag() {
    return Reckoner.of(GROUP, "test-bar-sag", "Droop of a test bar held at one end")
        .number("L", Unit.MM, "free length")
        .number("D", Unit.MM, "diameter")
        .number("bore", Unit.MM, "bore, 0 for a solid bar", "0")
        .number("E", Unit.GPA, "modulus of elasticity", "206")
        .number("rho", Unit.KG_PER_M3, "density", "7850")
        .number("g", Unit.M_PER_S2, "gravity", "9.80665")
        .number("F", Unit.N, "force of the indicator at the end, downwards", "0")
        .optional("z", Unit.MM, "place; the free end if left out")
        .result("sag", Unit.MICRON, "sag at z, own weight and force")
        .result("own", Unit.MICRON, "sag by own weight")
        .result("per_newton", Unit.MICRON_PER_N, "sag for each newton at the end")
        .result("w", Unit.N, "weight of the free length")
        .source(Sources.BEAM)
        .rule(
            g -> {
              double l = Require.upTo("L", g.number("L"), 1e5);
              double z = g.number("z", l);
              double d = Require.upTo("D", g.number("D"), 1e4);
              double i = TestBar.secondMoment(d, g.number("bore"));
              double ei = Require.upTo("E", g.number("E"), 1e7) * i;
              double w =
                  TestBar.weight(
                      d,
                      g.number("bore"),
                      Require.upTo("rho", g.number("rho"), 1e-6),
                      Require.upTo("g", g.number("g"), 1e6));
              double own = TestBar.sag(z, l, w, 0, ei);
              double one = TestBar.sag(z, l, 0, 1, ei);
              Answer answer =
                  Answer.start()
                      .with("sag", own + g.number("F") * one)
                      .with("own", own)
                      .with("per_newton", one)
                      .with("w", w * l);
              if (!g.has("z") && g.number("bore") == 0) {
                answer =
                    answer.showing(
                        Working.check(
                            "own",
                            own,
                            Unit.MICRON,
                            "rho*g*pi/4*D^2*L^4/(8*E*pi/64*D^4)",
                            g.term("rho"),
                            g.term("g"),
                            g.term("D"),
                            g.term("L"),
                            g.term("E")));
              }
              return answer;
            });
  }
}
