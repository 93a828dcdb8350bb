package fettle.mechanics.shafts;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on beams, spindles and held work. */
public final class ShaftReckoners {

  private static final String ROOM = "shafts";

  private ShaftReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return java.util.stream.Stream.of(
            shearCoefficient(),
            beamFrequency(),
            beamEigenvalue(),
            overhang(),
            spindleStiffness(),
            spindleFrequency(),
            spindleWhirl(),
            noseParts(),
            bestSpan(),
            joint(),
            jawPoint(),
            boreLoss(),
            overhungDisc(),
            singleMass(),
            runOut(),
            chucked(),
            chuckAndTailstock(),
            betweenCentres(),
            longestOverhang(),
            alignmentTaper(),
            wholeGive(),
            growth(),
            reactions())
        .map(Reckoner::finite)
        .toList();
  }

  private static Term positive(Given g, String name) {
    Need.positive(name, g.number(name));
    return g.term(name);
  }

  private static Reckoner shearCoefficient() {
    return Reckoner.of(ROOM, "shear-coefficient", "Shear coefficient of a round section")
        .optional("m", Unit.ONE, "bore over outside diameter")
        .optional("do", Unit.MM, "outside diameter, if m is not given")
        .optional("di", Unit.MM, "bore, if m is not given; 0 if left out")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.3")
        .result("kappa", Unit.ONE, "shear coefficient")
        .source(Sources.COWPER)
        .rule(
            g -> {
              double m =
                  g.has("m")
                      ? g.number("m")
                      : g.number("di", 0) / Need.positive("do", g.number("do"));
              return Answer.start().with("kappa", Section.shearCoefficient(m, g.number("nu")));
            });
  }

  private static PlainBeam.Ends ends(String word) {
    return switch (word) {
      case "clamped-free" -> PlainBeam.Ends.CLAMPED_FREE;
      case "clamped-clamped" -> PlainBeam.Ends.CLAMPED;
      case "clamped-pinned" -> PlainBeam.Ends.CLAMPED_PINNED;
      case "free-free" -> PlainBeam.Ends.FREE;
      default -> PlainBeam.Ends.SIMPLE;
    };
  }

  private static Reckoner.Draft supports(Reckoner.Draft draft) {
    return draft.choice(
        "supports",
        "how the ends are held",
        "simple",
        "clamped-free",
        "clamped-clamped",
        "clamped-pinned",
        "free-free");
  }

  private static Reckoner beamFrequency() {
    return supports(
            Reckoner.of(ROOM, "beam-frequency", "Natural frequencies of a beam in bending")
                .number("L", Unit.MM, "length")
                .optional("h", Unit.MM, "height of a rectangle, at the first end")
                .optional("b", Unit.MM, "width of a rectangle, at the first end; as h if left out")
                .optional("h_tip", Unit.MM, "height at the other end, if it tapers")
                .optional("b_tip", Unit.MM, "width at the other end, if it tapers")
                .optional("d", Unit.MM, "outside diameter of a round beam")
                .number("di", Unit.MM, "bore of a round beam", "0")
                .number("E", Unit.MPA, "modulus of elasticity", "206000")
                .number("nu", Unit.ONE, "Poisson's ratio", "0.3")
                .number("rho", Unit.KG_PER_M3, "density", "7850")
                .number("shear_coeff", Unit.ONE, "shear coefficient of a rectangle", "5/6"))
        .choice("theory", "with shear and rotary inertia, or thin", "timoshenko", "euler")
        .count("elements", "elements", "20")
        .count("mode", "which frequency", "1")
        .result("f", Unit.HZ, "frequency of that mode")
        .result("frequencies", Unit.HZ, "the first frequencies")
        .result("f_exact", Unit.HZ, "exact value, uniform beam on simple supports")
        .source(Sources.MASS)
        .rule(ShaftReckoners::beamFrequencyAnswer);
  }

  private static Answer beamFrequencyAnswer(Given g) {
    int count = g.count("elements");
    Need.within("elements", count, 2, 200);
    boolean thin = g.choice("theory").equals("euler");
    ShaftMaterial material = new ShaftMaterial(g.number("E"), g.number("nu"), g.number("rho"));
    double length = Need.positive("L", g.number("L"));
    List<BeamElement> elements = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      elements.add(
          new BeamElement(length / count, sectionAt(g, (i + 0.5) / count, thin), material));
    }
    PlainBeam.Ends ends = ends(g.choice("supports"));
    double[] f = PlainBeam.frequencies(elements, ends, thin ? 0 : 1);
    int mode = g.count("mode");
    Need.within("mode", mode, 1, f.length);
    Answer a =
        Answer.start()
            .with("f", f[mode - 1])
            .with("frequencies", java.util.Arrays.copyOf(f, Math.min(f.length, 6)));
    boolean uniform = !g.has("h_tip") && !g.has("b_tip");
    if (uniform && ends == PlainBeam.Ends.SIMPLE && !thin) {
      a =
          a.with(
              "f_exact",
              PlainBeam.simpleExact(
                  new BeamElement(length, sectionAt(g, 0, false), material), mode));
    }
    return a;
  }

  private static Section sectionAt(Given g, double share, boolean thin) {
    Section s;
    if (g.has("d")) {
      s = Section.round(g.number("d"), g.number("di"), g.number("nu"));
    } else {
      double h = g.number("h");
      double b = g.number("b", h);
      double hTip = g.number("h_tip", h);
      s =
          Section.rectangle(
              h + share * (hTip - h),
              b + share * (g.number("b_tip", g.has("h_tip") ? hTip * b / h : b) - b),
              g.number("shear_coeff"));
    }
    return thin ? new Section(s.area(), s.secondMoment(), Double.POSITIVE_INFINITY) : s;
  }

  private static Reckoner beamEigenvalue() {
    return Reckoner.of(ROOM, "beam-eigenvalue", "Number beta L of a thin beam")
        .choice(
            "support",
            "how the ends are held",
            "clamped-free",
            "simple",
            "clamped-clamped",
            "clamped-pinned",
            "free-free")
        .count("mode", "which mode", "1")
        .result("beta_L", Unit.ONE, "eigenvalue")
        .source(Sources.MODES)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "beta_L",
                        PlainBeam.eigenvalue(ends(g.choice("support")), g.count("mode"))));
  }

  private static Reckoner overhang() {
    return Reckoner.of(ROOM, "overhang-deflection", "Overhanging beam on two supports, end load")
        .number("P", Unit.N, "load at the end")
        .number("a", Unit.MM, "overhang")
        .number("L", Unit.MM, "span")
        .number("E", Unit.MPA, "modulus of elasticity", "206000")
        .number("I", Unit.MM4, "second moment of area")
        .optional(
            "kA", Unit.N_PER_MICRON, "stiffness of the support near the load; rigid if left out")
        .optional("kB", Unit.N_PER_MICRON, "stiffness of the far support; rigid if left out")
        .result("delta", Unit.MM, "deflection at the load")
        .result("beam", Unit.MM, "part of the beam")
        .result("supports", Unit.MM, "part of the supports")
        .source(Sources.NOSE)
        .rule(
            g -> {
              Working beam =
                  Working.of(
                      "beam",
                      Unit.MM,
                      "P*a^2*(a+L)/(3*E*I)",
                      g.term("P"),
                      positive(g, "a"),
                      positive(g, "L"),
                      positive(g, "E"),
                      positive(g, "I"));
              double r = g.number("a") / g.number("L");
              double p = g.number("P");
              double springs = 0;
              if (g.has("kA")) {
                springs += p * (1 + r) * (1 + r) / Need.positive("kA", g.number("kA"));
              }
              if (g.has("kB")) {
                springs += p * r * r / Need.positive("kB", g.number("kB"));
              }
              return Answer.start()
                  .with("delta", beam.value() + springs)
                  .with("beam", beam)
                  .with("supports", springs);
            });
  }

  private static Reckoner.Draft spindle(Reckoner.Draft draft) {
    return draft
        .rows(
            "segments",
            Unit.MM,
            "rows of length, outside, bore from the rear, e.g. 35,30,20; 120,38,20")
        .number("rear", Unit.MM, "rear bearing, from the rear end")
        .number("front", Unit.MM, "front bearing, from the rear end")
        .number("kA", Unit.N_PER_MICRON, "radial stiffness of the front bearing")
        .number("kB", Unit.N_PER_MICRON, "radial stiffness of the rear bearing")
        .number("ktA", Unit.NM_PER_RAD, "tilting stiffness of the front bearing set", "0")
        .number("ktB", Unit.NM_PER_RAD, "tilting stiffness of the rear bearing set", "0")
        .optional(
            "khA", Unit.N_PER_MICRON, "stiffness of the housing at the front; rigid if left out")
        .optional(
            "khB", Unit.N_PER_MICRON, "stiffness of the housing at the rear; rigid if left out")
        .number("E", Unit.MPA, "modulus of elasticity", "206000")
        .number("nu", Unit.ONE, "Poisson's ratio", "0.3")
        .number("rho", Unit.KG_PER_M3, "density", "7850");
  }

  private static double series(Given g, String spring, String housing) {
    double k = Need.positive(spring, g.number(spring));
    return g.has(housing) ? 1 / (1 / k + 1 / Need.positive(housing, g.number(housing))) : k;
  }

  private static Spindle spindle(Given g, List<Spindle.RigidMass> masses) {
    List<Spindle.Step> steps = new ArrayList<>();
    for (double[] row : g.rows("segments")) {
      if (row.length < 2 || row.length > 3) {
        throw new IllegalArgumentException(
            "segments: found a row of "
                + row.length
                + " numbers, expected length, outside diameter, bore");
      }
      steps.add(new Spindle.Step(row[0], row[1], row.length == 3 ? row[2] : 0));
    }
    double rear = g.number("rear");
    double front = g.number("front");
    if (!(front > rear)) {
      throw new IllegalArgumentException(
          "front: found " + front + " mm, expected more than rear = " + rear + " mm");
    }
    return new Spindle(
        steps,
        new ShaftMaterial(g.number("E"), g.number("nu"), g.number("rho")),
        List.of(
            new Spindle.Support("front", front, series(g, "kA", "khA"), g.number("ktA")),
            new Spindle.Support("rear", rear, series(g, "kB", "khB"), g.number("ktB"))),
        masses);
  }

  private static Reckoner spindleStiffness() {
    return spindle(Reckoner.of(ROOM, "spindle-stiffness", "Stiffness at the nose and its causes"))
        .optional("x", Unit.MM, "place of the force from the rear end; the nose if left out")
        .number("F", Unit.N, "force", "100")
        .result("k", Unit.N_PER_MICRON, "static stiffness at the force")
        .result("deflection", Unit.MICRON, "deflection under F")
        .result("slope", Unit.MRAD, "slope under F")
        .result("beam", Unit.PERCENT, "share of the give from the spindle itself")
        .result("bending", Unit.PERCENT, "of it, bending")
        .result("shear", Unit.PERCENT, "of it, shear")
        .result("front", Unit.PERCENT, "share of the front bearing")
        .result("rear", Unit.PERCENT, "share of the rear bearing")
        .result("R_front", Unit.N, "force of the front bearing on the spindle")
        .result("R_rear", Unit.N, "force of the rear bearing on the spindle")
        .source(Sources.BEAM)
        .rule(
            g -> {
              Spindle s = spindle(g, List.of());
              double x = g.number("x", s.length());
              double force = g.number("F");
              SpindleModel.Deflected d = SpindleModel.under(s, x, force);
              Answer a =
                  Answer.start()
                      .with("k", force / d.deflection())
                      .with("deflection", d.deflection())
                      .with("slope", d.slope())
                      .with("beam", d.bending() + d.shear())
                      .with("bending", d.bending())
                      .with("shear", d.shear())
                      .with("front", d.bearings().get(0))
                      .with("rear", d.bearings().get(1))
                      .with("R_front", d.reactions().get(0))
                      .with("R_rear", d.reactions().get(1));
              return d.bearings().get(0) > 0.6
                  ? a.caution(
                      "The front bearing makes more than 60 percent of the give: stiffen it before"
                          + " anything else.")
                  : a;
            });
  }

  private static Reckoner.Draft chuck(Reckoner.Draft draft) {
    return draft
        .number("m", Unit.KG, "mass of chuck (and work)", "0")
        .number("Jd", Unit.KG_M2, "its inertia about a diameter", "0")
        .number("Jp", Unit.KG_M2, "its inertia about the axis", "0")
        .number("off", Unit.MM, "its centre of gravity beyond the nose", "0");
  }

  private static List<Spindle.RigidMass> chuck(Given g) {
    if (g.number("m") == 0 && g.number("Jd") == 0 && g.number("Jp") == 0) {
      return List.of();
    }
    double end = 0;
    for (double[] row : g.rows("segments")) {
      end += row[0];
    }
    return List.of(
        new Spindle.RigidMass(end, g.number("m"), g.number("Jd"), g.number("Jp"), g.number("off")));
  }

  private static Reckoner spindleFrequency() {
    return chuck(
            spindle(
                Reckoner.of(
                    ROOM, "spindle-frequency", "Natural frequencies of a spindle in bending")))
        .result("f1", Unit.HZ, "first frequency")
        .result("frequencies", Unit.HZ, "the first frequencies")
        .result("n_half", Unit.RPM, "speed at half the first frequency, the usual limit")
        .source(Sources.MASS)
        .rule(
            g -> {
              double[] f = SpindleModel.frequencies(spindle(g, chuck(g)));
              return Answer.start()
                  .with("f1", f[0])
                  .with("frequencies", java.util.Arrays.copyOf(f, Math.min(6, f.length)))
                  .with("n_half", Math.PI * f[0]);
            });
  }

  private static Reckoner spindleWhirl() {
    return chuck(spindle(Reckoner.of(ROOM, "spindle-whirl", "Whirl of a turning spindle")))
        .number("n", Unit.RPM, "speed")
        .result("forward", Unit.HZ, "forward whirl, lowest first")
        .result("backward", Unit.HZ, "backward whirl, lowest first")
        .source(Sources.MASS)
        .rule(g -> whirlAnswer(SpindleModel.whirl(spindle(g, chuck(g)), g.number("n")), 4));
  }

  private static Answer whirlAnswer(double[] w, int most) {
    double[] forward = java.util.Arrays.stream(w).filter(v -> v > 0).sorted().limit(most).toArray();
    double[] backward =
        java.util.Arrays.stream(w).filter(v -> v < 0).map(v -> -v).sorted().limit(most).toArray();
    return Answer.start().with("forward", forward).with("backward", backward);
  }

  private static Reckoner.Draft bearings(Reckoner.Draft draft) {
    return draft
        .number("E", Unit.MPA, "modulus of elasticity", "206000")
        .number("kA", Unit.N_PER_MICRON, "radial stiffness of the front bearing")
        .number("kB", Unit.N_PER_MICRON, "radial stiffness of the rear bearing");
  }

  private static Reckoner noseParts() {
    return bearings(
            Reckoner.of(ROOM, "spindle-nose", "Nose stiffness by closed form, with its parts")
                .number("a", Unit.MM, "from the front bearing to the force")
                .number("L", Unit.MM, "bearing span")
                .number("do", Unit.MM, "outside diameter between the bearings")
                .number("di", Unit.MM, "bore", "0")
                .optional("do_nose", Unit.MM, "outside diameter of the nose; as do if left out")
                .number("nu", Unit.ONE, "Poisson's ratio", "0.3"))
        .result("k", Unit.N_PER_MICRON, "stiffness")
        .result("beam", Unit.PERCENT, "share of bending and shear")
        .result("front", Unit.PERCENT, "share of the front bearing")
        .result("rear", Unit.PERCENT, "share of the rear bearing")
        .source(Sources.NOSE)
        .rule(
            g -> {
              double nu = g.number("nu");
              double outer = g.number("do");
              NoseStiffness n =
                  NoseStiffness.of(
                      g.number("a"),
                      g.number("L"),
                      Section.round(g.number("do_nose", outer), g.number("di"), nu),
                      Section.round(outer, g.number("di"), nu),
                      new ShaftMaterial(g.number("E"), nu, ShaftMaterial.STEEL.density()),
                      new NoseStiffness.Bearings(g.number("kA"), g.number("kB")));
              double give = n.give();
              return Answer.start()
                  .with("k", 1 / give)
                  .with("beam", (give - n.front() - n.rear()) / give)
                  .with("front", n.front() / give)
                  .with("rear", n.rear() / give);
            });
  }

  private static Reckoner bestSpan() {
    return bearings(
            Reckoner.of(ROOM, "spindle-best-span", "Bearing span of greatest nose stiffness")
                .number("a", Unit.MM, "from the front bearing to the force")
                .number("do", Unit.MM, "outside diameter")
                .number("di", Unit.MM, "bore", "0"))
        .input(
            "spans",
            Input.Kind.NUMBERS,
            Unit.MM,
            "spans for which the stiffness is wanted",
            null,
            false)
        .result("L0", Unit.MM, "best span")
        .result("k0", Unit.N_PER_MICRON, "stiffness there (bending and bearings)")
        .result("eta", Unit.ONE, "E I/(kA a^3)")
        .result("curve", Unit.N_PER_MICRON, "stiffness at each of the spans")
        .source(Sources.SPAN)
        .rule(
            g -> {
              double a = g.number("a");
              double ei = HeldWork.bending(g.number("E"), g.number("do"), g.number("di"));
              NoseStiffness.Bearings springs =
                  new NoseStiffness.Bearings(g.number("kA"), g.number("kB"));
              double l0 = NoseStiffness.bestSpan(a, ei, springs);
              Answer answer =
                  Answer.start()
                      .with("L0", l0)
                      .with("k0", 1 / give(a, l0, ei, springs))
                      .with("eta", ei / (springs.front() * a * a * a));
              if (!g.has("spans")) {
                return answer;
              }
              double[] spans = g.numbers("spans");
              double[] curve = new double[spans.length];
              for (int i = 0; i < spans.length; i++) {
                curve[i] = 1 / give(a, Need.positive("span", spans[i]), ei, springs);
              }
              return answer.with("curve", curve);
            });
  }

  private static double give(double a, double l, double ei, NoseStiffness.Bearings springs) {
    double r = a / l;
    return a * a * (a + l) / (3 * ei)
        + (1 + r) * (1 + r) / springs.front()
        + r * r / springs.rear();
  }

  private static Reckoner joint() {
    return Reckoner.of(ROOM, "spindle-joint", "Spring of the joints, from a push test")
        .number("k_model", Unit.N_PER_MICRON, "stiffness of beam and bearings")
        .number("k_measured", Unit.N_PER_MICRON, "stiffness measured")
        .result("k_joint", Unit.N_PER_MICRON, "spring in series that explains the rest")
        .result("share", Unit.PERCENT, "measured over model")
        .source(Sources.PRACTICE)
        .rule(
            g -> {
              double model = Need.positive("k_model", g.number("k_model"));
              double measured = Need.positive("k_measured", g.number("k_measured"));
              if (!(measured < model)) {
                return Answer.none(
                    "measured is not below the model: no joint spring explains it; measure again,"
                        + " or the bearings are stiffer than assumed");
              }
              Answer a =
                  Answer.start()
                      .with("k_joint", 1 / (1 / measured - 1 / model))
                      .with("share", measured / model);
              return measured < 0.6 * model
                  ? a.caution(
                      "Below 60 percent of the model: look for loose preload, seats, or the joint of"
                          + " headstock and bed.")
                  : a;
            });
  }

  private static Reckoner jawPoint() {
    return Reckoner.of(ROOM, "spindle-jaw-give", "Give at the jaws, beyond the nose")
        .number("v", Unit.MICRON, "deflection of the nose")
        .number("slope", Unit.MRAD, "slope of the nose")
        .number("c", Unit.MM, "distance beyond the nose")
        .number("F", Unit.N, "force", "0")
        .number("joint", Unit.RAD_PER_NMM, "give of the chuck seat; short taper 1e-8 to 3e-8", "0")
        .result("delta", Unit.MICRON, "give at the jaws")
        .source(Sources.PRACTICE)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "delta",
                        Working.of(
                            "delta",
                            Unit.MICRON,
                            "v+c*slope+F*c^2*joint",
                            g.term("v"),
                            g.term("c"),
                            g.term("slope"),
                            g.term("F"),
                            g.term("joint"))));
  }

  private static Reckoner boreLoss() {
    return Reckoner.of(ROOM, "spindle-bore-loss", "Bending stiffness lost to a bore")
        .number("do", Unit.MM, "outside diameter")
        .number("di", Unit.MM, "bore")
        .result("loss", Unit.PERCENT, "share of E I lost against a solid spindle")
        .source(Sources.WORK)
        .rule(
            g -> {
              Need.within("di", g.number("di"), 0, g.number("do"));
              return Answer.start()
                  .with(
                      "loss",
                      Working.of(
                          "loss", Unit.PERCENT, "(di/do)^4", g.term("di"), positive(g, "do")));
            });
  }

  private static Reckoner overhungDisc() {
    return Reckoner.of(ROOM, "overhung-disc-whirl", "Whirl of a disc on a light clamped shaft")
        .number("L", Unit.MM, "length of the shaft")
        .number("d", Unit.MM, "diameter of the shaft")
        .number("E", Unit.MPA, "modulus of elasticity", "206000")
        .number("m", Unit.KG, "mass of the disc")
        .number("Jd", Unit.KG_M2, "its inertia about a diameter")
        .number("Jp", Unit.KG_M2, "its inertia about the axis")
        .optional("Omega", Unit.RAD_PER_S, "speed")
        .optional("n", Unit.RPM, "speed, instead of Omega")
        .result("f1_forward", Unit.HZ, "first forward whirl")
        .result("f1_backward", Unit.HZ, "first backward whirl")
        .result("f2_forward", Unit.HZ, "second forward whirl")
        .result("f2_backward", Unit.HZ, "second backward whirl")
        .source(Sources.ROTOR)
        .rule(
            g -> {
              double speed = g.has("Omega") ? g.number("Omega") : g.number("n", 0);
              double[] w =
                  OverhungDisc.whirl(
                      g.number("L"),
                      HeldWork.bending(g.number("E"), g.number("d"), 0),
                      g.number("m"),
                      g.number("Jd"),
                      g.number("Jp"),
                      speed);
              return Answer.start()
                  .with("f1_forward", w[2])
                  .with("f1_backward", -w[1])
                  .with("f2_forward", w[3])
                  .with("f2_backward", -w[0]);
            });
  }

  private static Reckoner singleMass() {
    return Reckoner.of(ROOM, "single-mass-frequency", "Frequency of one mass on one spring")
        .optional("k", Unit.N_PER_MICRON, "stiffness")
        .optional("m", Unit.KG, "mass")
        .optional("delta", Unit.MM, "sag under its own weight, instead of k and m")
        .number("g", Unit.M_PER_S2, "gravity", "9.80665")
        .result("f", Unit.HZ, "frequency")
        .result("n", Unit.RPM, "the same per minute")
        .source(Sources.MODES)
        .rule(
            g -> {
              double square =
                  g.has("delta")
                      ? g.number("g") / Need.positive("delta", g.number("delta"))
                      : Need.positive("k", g.number("k")) / Need.positive("m", g.number("m"));
              double w = Math.sqrt(Need.positive("g", square));
              return Answer.start().with("f", w / (2 * Math.PI)).with("n", w);
            });
  }

  private static Reckoner runOut() {
    return Reckoner.of(ROOM, "spindle-run-out", "Run-out beyond the front bearing")
        .number("eA", Unit.MICRON, "eccentricity of the front bearing, half its run-out")
        .number("eB", Unit.MICRON, "eccentricity of the rear bearing")
        .number("L", Unit.MM, "span")
        .number("a", Unit.MM, "distance beyond the front bearing")
        .result("worst", Unit.MICRON, "eccentricity there, high spots opposite")
        .result("best", Unit.MICRON, "eccentricity there, high spots in line")
        .result("TIR_worst", Unit.MICRON, "indicator reading, worst")
        .result("TIR_best", Unit.MICRON, "indicator reading, best")
        .source(Sources.RIGID_LINE)
        .rule(
            g -> {
              Term[] terms = {g.term("eA"), g.term("eB"), positive(g, "L"), g.term("a")};
              Working worst =
                  Working.of("worst", Unit.MICRON, "abs(eA)*(1+a/L)+abs(eB)*a/L", terms);
              Working best =
                  Working.of("best", Unit.MICRON, "abs(abs(eA)*(1+a/L)-abs(eB)*a/L)", terms);
              return Answer.start()
                  .with("worst", worst)
                  .with("best", best)
                  .with("TIR_worst", 2 * worst.value())
                  .with("TIR_best", 2 * best.value());
            });
  }

  private static Reckoner.Draft bar(Reckoner.Draft draft) {
    return draft
        .number("F", Unit.N, "force across the bar (passive force)")
        .number("L", Unit.MM, "length out of the chuck, or between centres")
        .number("d", Unit.MM, "diameter")
        .number("bore", Unit.MM, "bore, 0 if solid", "0")
        .number("E", Unit.MPA, "modulus of elasticity", "206000");
  }

  private static double bending(Given g) {
    return HeldWork.bending(g.number("E"), g.number("d"), g.number("bore"));
  }

  private static Answer give(double delta) {
    return Answer.start().with("delta", delta).with("diameter_error", 2 * delta);
  }

  private static Reckoner.Draft giveResults(Reckoner.Draft draft) {
    return draft
        .result("delta", Unit.MICRON, "give of the work at the tool")
        .result("diameter_error", Unit.MICRON, "error it leaves on the diameter");
  }

  private static double spring(Given g, String name) {
    return g.has(name) ? Need.positive(name, g.number(name)) : Double.POSITIVE_INFINITY;
  }

  private static Reckoner chucked() {
    return giveResults(
            bar(Reckoner.of(ROOM, "work-chucked", "Give of a chucked bar at its end"))
                .optional("k_tilt", Unit.NM_PER_RAD, "stiffness of the grip against tilting"))
        .result("L_over_d", Unit.ONE, "stick-out over diameter")
        .source(Sources.WORK)
        .rule(
            g -> {
              double delta =
                  HeldWork.chucked(g.number("F"), g.number("L"), bending(g), spring(g, "k_tilt"));
              double slender = g.number("L") / g.number("d");
              Answer a = give(delta).with("L_over_d", slender);
              return slender > 3
                  ? a.caution(
                      "Sticks out more than three diameters: support it with the tailstock or a"
                          + " steady, or it may climb on the tool and be thrown.")
                  : a;
            });
  }

  private static Reckoner chuckAndTailstock() {
    return giveResults(
            bar(Reckoner.of(
                    ROOM,
                    "work-chuck-tailstock",
                    "Give of a bar in the chuck and on the tailstock"))
                .number("x", Unit.MM, "tool, from the chuck")
                .optional("kt", Unit.N_PER_MICRON, "stiffness of the tailstock; rigid if left out"))
        .source(Sources.WORK)
        .rule(
            g ->
                give(
                    HeldWork.chuckAndTailstock(
                        g.number("F"), g.number("L"), g.number("x"), bending(g), spring(g, "kt"))));
  }

  private static Reckoner betweenCentres() {
    return giveResults(
            bar(Reckoner.of(ROOM, "work-between-centres", "Give of a bar between centres"))
                .number("x", Unit.MM, "tool, from the headstock centre")
                .optional(
                    "kh", Unit.N_PER_MICRON, "stiffness of the headstock centre; rigid if left out")
                .optional(
                    "kt",
                    Unit.N_PER_MICRON,
                    "stiffness of the tailstock centre; rigid if left out"))
        .source(Sources.WORK)
        .rule(
            g ->
                give(
                    HeldWork.betweenCentres(
                        g.number("F"),
                        g.number("L"),
                        g.number("x"),
                        bending(g),
                        spring(g, "kh"),
                        spring(g, "kt"))));
  }

  private static Reckoner longestOverhang() {
    return Reckoner.of(ROOM, "work-longest-overhang", "Longest stick-out for an allowed give")
        .number("F", Unit.N, "force across the bar (passive force)")
        .number("delta", Unit.MICRON, "allowed give")
        .number("d", Unit.MM, "diameter")
        .number("bore", Unit.MM, "bore, 0 if solid", "0")
        .number("E", Unit.MPA, "modulus of elasticity", "206000")
        .result("L", Unit.MM, "keep the stick-out below")
        .source(Sources.WORK)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "L",
                        HeldWork.longestOverhang(g.number("F"), bending(g), g.number("delta"))));
  }

  private static Reckoner alignmentTaper() {
    return Reckoner.of(ROOM, "work-alignment-taper", "Taper from tailstock offset or headstock aim")
        .number("offset", Unit.MICRON, "tailstock centre off the axis", "0")
        .number("aim", Unit.MICRON_PER_M, "headstock axis off the bed", "0")
        .number("L", Unit.MM, "length between centres, or turned")
        .number("turned", Unit.MM, "length turned; as L if 0", "0")
        .result("taper_tailstock", Unit.MICRON, "change of diameter over the length, tailstock")
        .result("taper_headstock", Unit.MICRON, "change of diameter over the length, headstock")
        .source(Sources.WORK)
        .rule(
            g -> {
              double l = Need.positive("L", g.number("L"));
              double t = g.number("turned") == 0 ? l : g.number("turned");
              return Answer.start()
                  .with("taper_tailstock", 2 * g.number("offset") * t / l)
                  .with("taper_headstock", 2 * g.number("aim") * t);
            });
  }

  private static Reckoner wholeGive() {
    return Reckoner.of(
            ROOM, "tool-work-stiffness", "Stiffness from tool to work, springs in series")
        .input(
            "k",
            Input.Kind.NUMBERS,
            Unit.N_PER_MICRON,
            "stiffness of each part: spindle, work, tailstock, tool post, saddle",
            null,
            true)
        .number("F", Unit.N, "force", "100")
        .result("k_total", Unit.N_PER_MICRON, "stiffness of the whole")
        .result("delta", Unit.MICRON, "give under F")
        .result("shares", Unit.PERCENT, "share of each")
        .source(Sources.WORK)
        .rule(
            g -> {
              double[] k = g.numbers("k");
              double give = 0;
              for (double part : k) {
                give += 1 / Need.positive("k", part);
              }
              double[] shares = new double[k.length];
              for (int i = 0; i < k.length; i++) {
                shares[i] = 1 / (k[i] * give);
              }
              double total = 1 / Need.positive("number of parts", give);
              return Answer.start()
                  .with("k_total", total)
                  .with("delta", g.number("F") * give)
                  .with("shares", shares);
            });
  }

  private static Reckoner growth() {
    return Reckoner.of(ROOM, "thermal-growth", "Growth of a length by warming")
        .number("L", Unit.MM, "length")
        .number("dT", Unit.K, "rise")
        .number(
            "alpha",
            Unit.PER_K,
            "expansion; steel 11.5e-6, iron 10.5e-6, aluminium 23e-6",
            "0.0000115")
        .result("dL", Unit.MICRON, "growth")
        .source(Sources.GROWTH)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "dL",
                        Working.of(
                            "dL",
                            Unit.MICRON,
                            "alpha*L*dT",
                            g.term("alpha"),
                            positive(g, "L"),
                            g.term("dT"))));
  }

  private static Reckoner reactions() {
    return Reckoner.of(ROOM, "spindle-reactions", "Bearing forces of a spindle")
        .number("F", Unit.N, "force at the nose side")
        .number("a", Unit.MM, "its distance beyond the front bearing")
        .number("L", Unit.MM, "span")
        .number("B", Unit.N, "belt pull in the same plane, same way as F positive", "0")
        .number("b", Unit.MM, "its distance beyond the rear bearing", "0")
        .result("front", Unit.N, "load on the front bearing, way of F positive")
        .result("rear", Unit.N, "load on the rear bearing, way of F positive")
        .source(Sources.NOSE)
        .rule(
            g -> {
              Term[] t = {g.term("F"), g.term("a"), positive(g, "L"), g.term("B"), g.term("b")};
              return Answer.start()
                  .with("front", Working.of("front", Unit.N, "F*(1+a/L)-B*b/L", t))
                  .with("rear", Working.of("rear", Unit.N, "B*(1+b/L)-F*a/L", t));
            });
  }
}
