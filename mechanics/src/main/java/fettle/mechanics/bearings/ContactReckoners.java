package fettle.mechanics.bearings;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on contacts, deflection, preload and stiffness of bearings. */
public final class ContactReckoners {

  private static final String ROOM = "bearings";

  private ContactReckoners() {}

  /** Returns the reckoners on contact and deflection. */
  public static List<Reckoner> all() {
    return List.of(
        hertzParameters(),
        hertz(),
        lineContact(),
        raceContact(),
        endPlay(),
        radialLoad(),
        loadIntegral(),
        thrustAngle(),
        pair(),
        pairTilt(),
        combined(),
        axial(),
        tangents(),
        roller(),
        geometry(),
        geometryFromRatings());
  }

  private static Reckoner hertzParameters() {
    return Reckoner.of(ROOM, "hertz-parameters", "Dimensionless sizes of an elliptic contact")
        .number("F_rho", Unit.ONE, "curvature difference F(rho), 0 to below 1")
        .result("a_star", Unit.ONE, "dimensionless major semi-axis")
        .result("b_star", Unit.ONE, "dimensionless minor semi-axis")
        .result("delta_star", Unit.ONE, "dimensionless approach")
        .result("k", Unit.ONE, "axis ratio a/b")
        .source(Sources.HERTZ)
        .rule(
            g -> {
              HertzContact h = HertzContact.of(1, g.number("F_rho"));
              return Answer.start()
                  .with("a_star", h.aStar())
                  .with("b_star", h.bStar())
                  .with("delta_star", h.deltaStar())
                  .with("k", h.ratio());
            });
  }

  private static Reckoner.Draft steel(Reckoner.Draft draft) {
    return draft
        .number("E", Unit.MPA, "modulus of elasticity of both", "207000")
        .number("nu", Unit.ONE, "Poisson's ratio of both", "0.3");
  }

  private static Reckoner hertz() {
    return steel(
            Reckoner.of(ROOM, "hertz-contact", "Contact of two curved bodies")
                .number("P", Unit.N, "force between the bodies")
                .number(
                    "R1", Unit.MM, "radius of body 1 in its first plane; hollow negative, flat 0")
                .number("R1p", Unit.MM, "radius of body 1 across it; hollow negative, flat 0")
                .number(
                    "R2", Unit.MM, "radius of body 2 in its first plane; hollow negative, flat 0")
                .number("R2p", Unit.MM, "radius of body 2 across it; hollow negative, flat 0")
                .number("theta", Unit.DEG, "angle between the two first planes", "0"))
        .optional("E2", Unit.MPA, "modulus of body 2, if another")
        .optional("nu2", Unit.ONE, "Poisson's ratio of body 2, if another")
        .result("a", Unit.MM, "major semi-axis of the contact ellipse")
        .result("b", Unit.MM, "minor semi-axis")
        .result("delta", Unit.MICRON, "approach of the bodies")
        .result("p_max", Unit.MPA, "greatest pressure")
        .result("k", Unit.ONE, "axis ratio a/b")
        .result("Sigma_rho", Unit.PER_MM, "curvature sum")
        .result("F_rho", Unit.ONE, "curvature difference")
        .source(Sources.HERTZ)
        .rule(
            g -> {
              HertzContact h =
                  HertzContact.ofRadii(
                      g.number("R1"),
                      g.number("R1p"),
                      g.number("R2"),
                      g.number("R2p"),
                      g.number("theta"));
              double e = g.number("E");
              double nu = g.number("nu");
              double c = HertzContact.give(e, nu, g.number("E2", e), g.number("nu2", nu));
              double p = Need.notNegative("P", g.number("P"));
              Answer a =
                  Answer.start()
                      .with("a", h.major(p, c))
                      .with("b", h.minor(p, c))
                      .with("delta", h.approach(p, c))
                      .with("p_max", h.pressure(p, c))
                      .with("k", h.ratio())
                      .with("Sigma_rho", h.curvatureSum())
                      .with("F_rho", h.curvatureDifference());
              return h.pressure(p, c) > 4200
                  ? a.caution("Above 4200 MPa a hardened steel contact keeps a dent.")
                  : a;
            });
  }

  private static Reckoner lineContact() {
    return Reckoner.of(ROOM, "bearing-roller-give", "Approach of a roller and its races")
        .number("Q", Unit.N, "load on the roller")
        .number("l", Unit.MM, "effective length")
        .count("races", "1 or 2 races counted", "2")
        .result("delta", Unit.MICRON, "approach")
        .source(Sources.PALMGREN_LINE)
        .rule(
            g -> {
              int races = g.count("races");
              Need.within("races", races, 1, 2);
              return Answer.start()
                  .with(
                      "delta",
                      races
                          / 2.0
                          * RollerBearing.give(g.number("Q"), Need.positive("l", g.number("l"))));
            });
  }

  private static Reckoner raceContact() {
    return steel(
            Reckoner.of(ROOM, "bearing-race-contact", "Contacts of a ball with its two races")
                .number("Dw", Unit.MM, "ball diameter")
                .number("dm", Unit.MM, "pitch diameter")
                .number("alpha", Unit.DEG, "contact angle", "0")
                .number("fi", Unit.ONE, "inner groove radius over ball diameter", "0.52")
                .number("fo", Unit.ONE, "outer groove radius over ball diameter", "0.52")
                .optional("Q", Unit.N, "ball load, for pressures"))
        .result("Sigma_rho_i", Unit.PER_MM, "curvature sum, inner race")
        .result("F_rho_i", Unit.ONE, "curvature difference, inner race")
        .result("Sigma_rho_o", Unit.PER_MM, "curvature sum, outer race")
        .result("F_rho_o", Unit.ONE, "curvature difference, outer race")
        .result("k_i", Unit.ONE, "axis ratio, inner race")
        .result("k_o", Unit.ONE, "axis ratio, outer race")
        .result("K_i", Unit.N_PER_MM15, "stiffness factor, inner race")
        .result("K_o", Unit.N_PER_MM15, "stiffness factor, outer race")
        .result("K_n", Unit.N_PER_MM15, "stiffness factor of both")
        .result("p_i", Unit.MPA, "greatest pressure, inner race")
        .result("p_o", Unit.MPA, "greatest pressure, outer race")
        .result("delta", Unit.MICRON, "approach of both")
        .source(Sources.HERTZ)
        .rule(
            g -> {
              BallBearing b =
                  new BallBearing(
                      3,
                      g.number("Dw"),
                      g.number("dm"),
                      g.number("alpha"),
                      g.number("fi"),
                      g.number("fo"),
                      g.number("E"),
                      g.number("nu"));
              HertzContact i = b.innerContact();
              HertzContact o = b.outerContact();
              double c = b.give();
              Answer a =
                  Answer.start()
                      .with("Sigma_rho_i", i.curvatureSum())
                      .with("F_rho_i", i.curvatureDifference())
                      .with("Sigma_rho_o", o.curvatureSum())
                      .with("F_rho_o", o.curvatureDifference())
                      .with("k_i", i.ratio())
                      .with("k_o", o.ratio())
                      .with("K_i", i.stiffness(c))
                      .with("K_o", o.stiffness(c))
                      .with("K_n", b.contactStiffness());
              if (!g.has("Q")) {
                return a;
              }
              double q = Need.notNegative("Q", g.number("Q"));
              return a.with("p_i", i.pressure(q, c))
                  .with("p_o", o.pressure(q, c))
                  .with("delta", i.approach(q, c) + o.approach(q, c));
            });
  }

  private static Reckoner endPlay() {
    return Reckoner.of(ROOM, "bearing-end-play", "End play and free contact angle from radial play")
        .number("Dw", Unit.MM, "ball diameter")
        .optional("dm", Unit.MM, "pitch diameter; not needed")
        .number("fi", Unit.ONE, "inner groove radius over ball diameter", "0.52")
        .number("fo", Unit.ONE, "outer groove radius over ball diameter", "0.52")
        .number("Pd", Unit.MM, "diametral clearance")
        .result("A", Unit.MM, "distance of the groove centres")
        .result("alpha0", Unit.DEG, "free contact angle")
        .result("Pe", Unit.MM, "end play, from stop to stop")
        .source(Sources.MODEL)
        .rule(
            g -> {
              double a =
                  Need.positive("fi+fo-1", g.number("fi") + g.number("fo") - 1)
                      * Need.positive("Dw", g.number("Dw"));
              double pd = g.number("Pd");
              double angle = BallBearing.freeAngle(pd, a);
              return Answer.start()
                  .with("A", a)
                  .with("alpha0", angle)
                  .with(
                      "Pe",
                      Working.check(
                          "Pe",
                          BallBearing.endPlay(pd, a),
                          Unit.MM,
                          "2*A*sin(acos(1-Pd/(2*A)))",
                          Term.exact("A", a, Unit.MM),
                          g.term("Pd")));
            });
  }

  private static Reckoner.Draft ballBearing(Reckoner.Draft draft, String outer) {
    return steel(
        draft
            .count("Z", "number of balls")
            .number("Dw", Unit.MM, "ball diameter")
            .number("dm", Unit.MM, "pitch diameter")
            .number("alpha0", Unit.DEG, "free contact angle", "25")
            .number("fi", Unit.ONE, "inner groove radius over ball diameter", "0.52")
            .number("fo", Unit.ONE, "outer groove radius over ball diameter", outer));
  }

  private static BallBearing ballBearing(Given g) {
    return new BallBearing(
        g.count("Z"),
        g.number("Dw"),
        g.number("dm"),
        g.number("alpha0"),
        g.number("fi"),
        g.number("fo"),
        g.number("E"),
        g.number("nu"));
  }

  private static Reckoner radialLoad() {
    return steel(
            Reckoner.of(ROOM, "bearing-radial-deflection", "Radial give and greatest ball load")
                .count("Z", "number of balls")
                .optional("K_n", Unit.N_PER_MM15, "stiffness factor of ball and races")
                .optional("Dw", Unit.MM, "ball diameter, if K_n is not given")
                .optional("dm", Unit.MM, "pitch diameter, if K_n is not given")
                .number("fi", Unit.ONE, "inner groove radius over ball diameter", "0.52")
                .number("fo", Unit.ONE, "outer groove radius over ball diameter", "0.52")
                .number("Pd", Unit.MM, "diametral clearance", "0")
                .number("Fr", Unit.N, "radial load"))
        .result("delta_r", Unit.MICRON, "shift of the rings from the middle of the play")
        .result("Q_max", Unit.N, "greatest ball load")
        .result("epsilon", Unit.ONE, "extent of the load zone")
        .result("J_r", Unit.ONE, "radial load integral")
        .source(Sources.SJOVALL)
        .rule(
            g -> {
              double kn =
                  g.has("K_n")
                      ? g.number("K_n")
                      : new BallBearing(
                              g.count("Z"),
                              g.number("Dw"),
                              g.number("dm"),
                              0,
                              g.number("fi"),
                              g.number("fo"),
                              g.number("E"),
                              g.number("nu"))
                          .contactStiffness();
              RadialLoadZone zone = new RadialLoadZone(g.count("Z"), kn, 1.5, g.number("Pd"));
              double shift = zone.shift(g.number("Fr"));
              return Answer.start()
                  .with("delta_r", shift)
                  .with("Q_max", zone.greatest(shift))
                  .with("epsilon", zone.extent(shift))
                  .with("J_r", RadialLoadZone.integral(zone.extent(shift), 1.5));
            });
  }

  private static Reckoner loadIntegral() {
    return Reckoner.of(ROOM, "bearing-load-integral", "Radial load distribution integral J_r")
        .number("epsilon", Unit.ONE, "extent of the load zone; 0.5 without play")
        .choice("contact", "point (balls) or line (rollers)", "point", "line")
        .result("J_r", Unit.ONE, "radial load integral")
        .result("factor", Unit.ONE, "Q_max Z/Fr")
        .source(Sources.SJOVALL)
        .rule(
            g -> {
              double n = g.choice("contact").equals("point") ? 1.5 : 10.0 / 9;
              double j = RadialLoadZone.integral(g.number("epsilon"), n);
              return Answer.start().with("J_r", j).with("factor", 1 / j);
            });
  }

  private static Reckoner thrustAngle() {
    return Reckoner.of(ROOM, "bearing-thrust-angle", "Working contact angle under thrust")
        .count("Z", "number of balls")
        .number("Dw", Unit.MM, "ball diameter")
        .number("B", Unit.ONE, "fi + fo - 1")
        .number("alpha0", Unit.DEG, "free contact angle, above 0")
        .number("K", Unit.MPA, "axial deflection constant")
        .number("Fa", Unit.N, "thrust")
        .result("alpha", Unit.DEG, "working contact angle")
        .result("delta_a", Unit.MM, "axial give")
        .result("Q", Unit.N, "load of each ball")
        .source(Sources.MODEL)
        .rule(
            g -> {
              double free = Need.within("alpha0", g.number("alpha0"), 1e-4, 1.5);
              double ball = Need.positive("Dw", g.number("Dw"));
              double fa = Need.notNegative("Fa", g.number("Fa"));
              int z = g.count("Z");
              Need.within("Z", z, 1, 1000);
              double target = fa / (z * ball * ball * Need.positive("K", g.number("K")));
              double angle = thrustAngle(free, target);
              double b = Need.within("B", g.number("B"), 1e-6, 0.2);
              return Answer.start()
                  .with("alpha", angle)
                  .with("delta_a", b * ball * Math.sin(angle - free) / Math.cos(angle))
                  .with("Q", fa / (z * Math.sin(angle)));
            });
  }

  private static double thrustAngle(double free, double target) {
    double low = free;
    double high = Math.PI / 2 - 1e-12;
    for (int i = 0; i < 100; i++) {
      double middle = 0.5 * (low + high);
      double value =
          Math.sin(middle) * Math.pow(Math.max(0, Math.cos(free) / Math.cos(middle) - 1), 1.5);
      if (value < target) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private static Reckoner pair() {
    return ballBearing(
            Reckoner.of(ROOM, "bearing-pair", "Preloaded pair: approach, stiffness, lift-off"),
            "0.53")
        .number("F0", Unit.N, "preload")
        .number("K", Unit.N, "outer axial load", "0")
        .result("approach", Unit.MICRON, "approach of one bearing by the preload")
        .result("shim", Unit.MICRON, "offset of both faces, 2 x approach")
        .result("stiffness", Unit.N_PER_MICRON, "axial stiffness of the pair")
        .result("lift_off", Unit.N, "outer load that frees the relieved bearing")
        .result("movement", Unit.MICRON, "axial give under K")
        .result("loaded", Unit.N, "axial load of the loaded bearing under K")
        .result("relieved", Unit.N, "axial load of the relieved bearing under K")
        .result("alpha", Unit.DEG, "working contact angle under the preload")
        .result("Q", Unit.N, "ball load under the preload")
        .result("p_max", Unit.MPA, "greatest pressure under the preload")
        .source(Sources.MODEL)
        .rule(ContactReckoners::pairAnswer);
  }

  private static Answer pairAnswer(Given g) {
    BallBearing bearing = ballBearing(g);
    PreloadedPair pair = PreloadedPair.of(bearing, g.number("F0"));
    double load = g.number("K");
    double move = pair.movement(load);
    AxialCurve curve = pair.curve();
    double d0 = pair.approach();
    Answer a =
        Answer.start()
            .with("approach", d0)
            .with("shim", 2 * d0)
            .with("stiffness", pair.stiffness())
            .with("lift_off", pair.liftOff())
            .with("movement", move)
            .with("loaded", curve.force(d0 + move))
            .with("relieved", curve.force(d0 - move))
            .with("alpha", curve.angle(d0))
            .with("Q", curve.ballLoad(d0))
            .with("p_max", bearing.pressure(curve.ballLoad(d0)));
    if (load > pair.liftOff()) {
      a =
          a.caution(
              "The outer load lifts the relieved bearing off: beyond it one bearing carries alone"
                  + " and stiffness falls to half.");
    }
    return bearing.pressure(curve.ballLoad(d0)) > 2000
        ? a.caution("Preload pressure above 2000 MPa costs life and heat.")
        : a;
  }

  private static Reckoner.Draft facing(Reckoner.Draft draft) {
    return draft
        .choice("arrangement", "how the pair stands", "back-to-back", "face-to-face", "tandem")
        .number("spacing", Unit.MM, "distance of the ring centres")
        .number("F0", Unit.N, "preload");
  }

  private static BearingSet.Arrangement arrangement(Given g) {
    return switch (g.choice("arrangement")) {
      case "face-to-face" -> BearingSet.Arrangement.FACE_TO_FACE;
      case "tandem" -> BearingSet.Arrangement.TANDEM;
      default -> BearingSet.Arrangement.BACK_TO_BACK;
    };
  }

  private static Reckoner pairTilt() {
    return facing(
            ballBearing(
                Reckoner.of(
                    ROOM,
                    "bearing-pair-stiffness",
                    "Axial, radial and tilting stiffness of a pair"),
                "0.53"))
        .result("axial", Unit.N_PER_MICRON, "axial stiffness")
        .result("radial", Unit.N_PER_MICRON, "radial stiffness")
        .result("tilt", Unit.NM_PER_RAD, "tilting stiffness about the middle")
        .source(Sources.MODEL)
        .rule(
            g -> {
              TiltStiffness t =
                  TiltStiffness.of(
                      ballBearing(g), arrangement(g), g.number("spacing"), g.number("F0"));
              Answer a =
                  Answer.start()
                      .with("axial", t.axial())
                      .with("radial", t.radial())
                      .with("tilt", t.tilt());
              return g.choice("arrangement").equals("face-to-face")
                  ? a.caution(
                      "Face to face gives little hold against tilt unless spaced wide, and a warm"
                          + " shaft raises its preload.")
                  : a;
            });
  }

  private static Reckoner combined() {
    return ballBearing(
            Reckoner.of(
                ROOM,
                "bearing-deflection",
                "One ball bearing or a pair under any load, every ball"),
            "0.53")
        .choice(
            "arrangement",
            "one bearing, or how a pair stands",
            "single",
            "back-to-back",
            "face-to-face",
            "tandem")
        .choice("tilt", "shaft kept from tilting, or free to tilt", "held", "free")
        .number("Fa", Unit.N, "axial load, towards +x", "0")
        .number("Fr", Unit.N, "radial load along y, towards the first ball", "0")
        .number("Fz", Unit.N, "radial load along z", "0")
        .number("My", Unit.NMM, "moment about y, tilt free only", "0")
        .number("Mz", Unit.NMM, "moment about z, tilt free only", "0")
        .number("psi0", Unit.DEG, "angle of the first ball from y", "0")
        .number("spacing", Unit.MM, "distance of the ring centres of a pair", "0")
        .number("F0", Unit.N, "preload of a pair", "0")
        .result("delta_a", Unit.MICRON, "axial movement")
        .result("delta_r", Unit.MICRON, "radial movement along y")
        .result("delta_z", Unit.MICRON, "radial movement along z")
        .result("tilt_y", Unit.MRAD, "tilt about y")
        .result("tilt_z", Unit.MRAD, "tilt about z")
        .result("Q_max", Unit.N, "greatest ball load")
        .result("M", Unit.NMM, "moment the balls hold (about the y and z axes together)")
        .result("p_max", Unit.MPA, "greatest pressure")
        .result("loaded_balls", Unit.ONE, "balls that carry load")
        .result("Q", Unit.N, "load of each ball")
        .result("alpha", Unit.DEG, "working contact angle of each ball")
        .result("k_a", Unit.N_PER_MICRON, "axial tangent stiffness here")
        .result("k_r", Unit.N_PER_MICRON, "radial tangent stiffness along y here")
        .result("k_theta", Unit.NM_PER_RAD, "tilting tangent stiffness here")
        .source(Sources.MODEL)
        .rule(ContactReckoners::combinedAnswer);
  }

  private static Answer combinedAnswer(Given g) {
    BallBearing bearing = ballBearing(g);
    String word = g.choice("arrangement");
    BearingSet set =
        word.equals("single")
            ? new BearingSet(List.of(new BearingSet.Seat(bearing, 0, 1, 0, 0, g.number("psi0"))))
            : pairOf(g, bearing, word);
    BearingLoad load =
        new BearingLoad(
            g.number("Fa"), g.number("Fr"), g.number("Fz"), g.number("My"), g.number("Mz"));
    boolean held = g.choice("tilt").equals("held");
    BearingState s = held ? set.underTiltHeld(load) : set.under(load);
    Answer a =
        Answer.start()
            .with("delta_a", s.displacement(0))
            .with("delta_r", s.displacement(1))
            .with("delta_z", s.displacement(2))
            .with("tilt_y", s.displacement(3))
            .with("tilt_z", s.displacement(4))
            .with("Q_max", s.greatestLoad())
            .with("M", Math.hypot(s.force(3), s.force(4)))
            .with("p_max", bearing.pressure(s.greatestLoad()))
            .with("loaded_balls", s.loadedBalls())
            .with("Q", s.ballLoads())
            .with("alpha", s.angles())
            .with("k_a", s.stiffness(0, 0))
            .with("k_r", s.stiffness(1, 1))
            .with("k_theta", s.stiffness(4, 4));
    if (!s.seated() && bearing.angle() > 0) {
      a =
          a.caution(
              "Some balls lean the other way: an angular contact bearing would come off its"
                  + " shoulder here. It needs more thrust, or a partner.");
    }
    if (!held && word.equals("single")) {
      a =
          a.caution(
              "A single bearing left free to tilt leans far; in a machine its partner holds it.");
    }
    return a;
  }

  private static BearingSet pairOf(Given g, BallBearing bearing, String word) {
    BearingSet.Arrangement arrangement =
        switch (word) {
          case "face-to-face" -> BearingSet.Arrangement.FACE_TO_FACE;
          case "tandem" -> BearingSet.Arrangement.TANDEM;
          default -> BearingSet.Arrangement.BACK_TO_BACK;
        };
    return BearingSet.pair(bearing, arrangement, g.number("spacing"), g.number("F0"));
  }

  private static Reckoner axial() {
    return steel(
            Reckoner.of(ROOM, "bearing-axial-stiffness", "Axial give of one ball bearing")
                .count("Z", "number of balls")
                .number("Dw", Unit.MM, "ball diameter")
                .optional("dm", Unit.MM, "pitch diameter; not needed at 90 deg")
                .number("alpha0", Unit.DEG, "free contact angle; 90 for a thrust bearing", "90")
                .optional("f", Unit.ONE, "groove radius over ball diameter, both races")
                .optional("fi", Unit.ONE, "inner groove radius over ball diameter")
                .optional("fo", Unit.ONE, "outer groove radius over ball diameter")
                .number("Fa", Unit.N, "axial load"))
        .result("stiffness", Unit.N_PER_MICRON, "axial tangent stiffness")
        .result("delta_a", Unit.MICRON, "axial give")
        .result("alpha", Unit.DEG, "working contact angle")
        .result("Q", Unit.N, "load of each ball")
        .result("p_max", Unit.MPA, "greatest pressure")
        .source(Sources.MODEL)
        .rule(
            g -> {
              double angle = g.number("alpha0");
              boolean thrust = angle > Math.PI / 2 - 1e-6;
              double ball = g.number("Dw");
              double usual = thrust ? 0.54 : 0.52;
              double inner = g.number("fi", g.number("f", usual));
              double outer = g.number("fo", g.number("f", thrust ? 0.54 : 0.53));
              double least = 1.2 * ball / Math.sin(Math.PI / Math.max(3, g.count("Z")));
              double pitch = thrust ? g.number("dm", least) : g.number("dm");
              BallBearing b =
                  new BallBearing(
                      g.count("Z"),
                      ball,
                      pitch,
                      angle,
                      inner,
                      outer,
                      g.number("E"),
                      g.number("nu"));
              AxialCurve curve = AxialCurve.of(b);
              double d = curve.approach(g.number("Fa"));
              return Answer.start()
                  .with("stiffness", curve.tangent(d))
                  .with("delta_a", d)
                  .with("alpha", curve.angle(d))
                  .with("Q", curve.ballLoad(d))
                  .with("p_max", b.pressure(curve.ballLoad(d)));
            });
  }

  private static Reckoner tangents() {
    return ballBearing(
            Reckoner.of(
                ROOM, "bearing-tangent-stiffness", "Stiffness of one bearing, every ball alike"),
            "0.53")
        .number("F0", Unit.N, "axial load")
        .result("k_a", Unit.N_PER_MICRON, "axial, contact angle kept")
        .result("k_r", Unit.N_PER_MICRON, "radial, contact angle kept")
        .result("k_theta", Unit.NM_PER_RAD, "tilting, contact angle kept")
        .result("k_a_full", Unit.N_PER_MICRON, "axial, contact angle opening")
        .result("k_r_full", Unit.N_PER_MICRON, "radial, contact angle opening")
        .result("k_theta_full", Unit.NM_PER_RAD, "tilting, contact angle opening")
        .source(Sources.MODEL)
        .rule(
            g -> {
              BallBearing b = ballBearing(g);
              AxialCurve curve = AxialCurve.of(b);
              double d = curve.approach(Need.positive("F0", g.number("F0")));
              double kn = b.contactStiffness();
              double q = g.number("F0") / (b.balls() * Math.max(1e-12, Math.sin(b.angle())));
              double base = b.balls() * Math.cbrt(kn * kn * q);
              double s = Math.sin(b.angle());
              double c = Math.cos(b.angle());
              double r = b.grooveRadius();
              BearingState state = BearingSet.single(b).at(d, 0, 0, 0, 0);
              return Answer.start()
                  .with("k_a", 1.5 * base * s * s)
                  .with("k_r", 0.75 * base * c * c)
                  .with("k_theta", 0.75 * base * r * r * s * s)
                  .with("k_a_full", state.stiffness(0, 0))
                  .with("k_r_full", state.stiffness(1, 1))
                  .with("k_theta_full", state.stiffness(4, 4));
            });
  }

  private static Reckoner roller() {
    return Reckoner.of(ROOM, "bearing-tapered-stiffness", "Stiffness of a tapered roller bearing")
        .count("Z", "number of rollers")
        .number("Lwe", Unit.MM, "effective roller length")
        .number("alpha", Unit.DEG, "contact angle")
        .number("F0", Unit.N, "axial preload")
        .result("axial", Unit.N_PER_MICRON, "axial stiffness, ideal line contact")
        .result("radial", Unit.N_PER_MICRON, "radial stiffness, ideal line contact")
        .result("approach", Unit.MICRON, "axial approach by the preload")
        .result("lift_off", Unit.N, "outer load that frees one of a pair")
        .source(Sources.PALMGREN_LINE)
        .rule(
            g -> {
              RollerBearing r = new RollerBearing(g.count("Z"), g.number("Lwe"), g.number("alpha"));
              double f = g.number("F0");
              return Answer.start()
                  .with("axial", r.axialStiffness(f))
                  .with("radial", r.radialStiffness(f))
                  .with("approach", r.approach(f))
                  .with("lift_off", RollerBearing.liftOff(f))
                  .caution(
                      "Ideal line contact: real crowned rollers reach a third to a half of this.");
            });
  }

  private static Reckoner geometry() {
    return Reckoner.of(ROOM, "bearing-geometry", "Estimated balls and pitch circle")
        .choice("type", "kind of bearing", "deep_groove", "angular")
        .number("d", Unit.MM, "bore")
        .number("D", Unit.MM, "outside diameter")
        .result("Z", Unit.ONE, "balls")
        .result("Dw", Unit.MM, "ball diameter")
        .result("dm", Unit.MM, "pitch diameter")
        .source(Sources.ESTIMATE)
        .rule(
            g -> {
              InternalGeometry in =
                  g.choice("type").equals("deep_groove")
                      ? InternalGeometry.deepGroove(g.number("d"), g.number("D"))
                      : InternalGeometry.angularContact(g.number("d"), g.number("D"));
              return geometryAnswer(in);
            });
  }

  private static Answer geometryAnswer(InternalGeometry in) {
    return Answer.start()
        .with("Z", in.balls())
        .with("Dw", in.ball())
        .with("dm", in.pitch())
        .caution(
            "Estimated internal geometry: stiffness and ratings from it are good to a quarter.");
  }

  private static Reckoner geometryFromRatings() {
    return Reckoner.of(
            ROOM, "bearing-geometry-from-ratings", "Balls that give the catalogue's two ratings")
        .number("C", Unit.N, "basic dynamic rating")
        .number("C0", Unit.N, "basic static rating")
        .number("dm", Unit.MM, "pitch diameter, about (d+D)/2")
        .number("alpha", Unit.DEG, "contact angle", "0")
        .result("Z", Unit.ONE, "balls")
        .result("Dw", Unit.MM, "ball diameter")
        .result("dm", Unit.MM, "pitch diameter")
        .source(Sources.ESTIMATE)
        .rule(
            g ->
                geometryAnswer(
                    InternalGeometry.ofRatings(
                        g.number("C"),
                        g.number("C0"),
                        g.number("dm"),
                        Need.within("alpha", g.number("alpha"), 0, Math.PI / 4 + 1e-9))));
  }
}
