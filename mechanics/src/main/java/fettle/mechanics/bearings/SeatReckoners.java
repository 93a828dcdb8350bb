package fettle.mechanics.bearings;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on sizes, fits, friction, speed and bushes. */
public final class SeatReckoners {

  private static final String ROOM = "bearings";

  private SeatReckoners() {}

  /** Returns the reckoners on sizes, fits and friction. */
  public static List<Reckoner> all() {
    return List.of(
        designation(),
        choose(),
        loadCentre(),
        clearance(),
        seat(),
        ringRunOut(),
        effective(),
        innerGrowth(),
        outerShrinkage(),
        mountedClearance(),
        squeezeWorth(),
        warmPreload(),
        quickFriction(),
        loadFreeFriction(),
        loadBorneFriction(),
        friction(),
        heatRise(),
        speedGuide(),
        loadZone(),
        screwAxial(),
        screwChain(),
        collarDrag(),
        wheelTorque(),
        bush());
  }

  private static Reckoner designation() {
    return Reckoner.of(ROOM, "bearing-designation", "What a bearing number says")
        .text("designation", "such as 6204-2RS, 7204 B, 51104, 30205 or 62/22")
        .result("dimensions", Unit.MM, "bore, outside diameter, width (thrust: height)")
        .result("d", Unit.MM, "bore")
        .result("D", Unit.MM, "outside diameter")
        .result("B", Unit.MM, "width, height or overall width")
        .result("type", Unit.ONE, "kind of bearing")
        .result("series", Unit.ONE, "series code")
        .result("suffixes", Unit.ONE, "meaning of the suffixes")
        .source(Sources.DESIGNATION)
        .rule(
            g -> {
              Designation d = Designation.parse(g.text("designation"));
              Answer a = Answer.start();
              BoundaryDimensions b = d.boundary();
              if (b != null) {
                a =
                    a.with("dimensions", new double[] {b.bore(), b.outside(), b.width()})
                        .with("d", b.bore())
                        .with("D", b.outside())
                        .with("B", b.width());
              } else {
                a =
                    a.with("d", d.bore())
                        .caution(
                            "Outside sizes of this series are not tabulated here; measure it.");
              }
              a = a.with("type", d.type().words()).with("series", d.series());
              if (!d.suffixes().isEmpty()) {
                a = a.with("suffixes", d.suffixes());
              }
              return d.type() == BearingType.ANGULAR_CONTACT
                  ? a.caution(
                      "The contact angle is not in the number: letters differ by maker, ask for the"
                          + " angle in degrees.")
                  : a;
            });
  }

  private static Reckoner choose() {
    return Reckoner.of(ROOM, "bearing-choose", "Bearings that go over a shaft and into a housing")
        .number("shaft", Unit.MM, "least bore")
        .number("housing", Unit.MM, "greatest outside diameter")
        .optional("housing_outside", Unit.MM, "outside of the housing wall")
        .result("bearings", Unit.ONE, "series, bore, outside diameter, width")
        .source(Sources.BOUNDARY)
        .rule(
            g -> {
              List<BoundaryDimensions> list =
                  BoundaryDimensions.fitting(g.number("shaft"), g.number("housing"));
              if (list.isEmpty()) {
                return Answer.none(
                    "no tabulated bearing has that bore and that outside diameter; allow a larger"
                        + " housing or a thinner shaft");
              }
              Answer a =
                  Answer.start()
                      .with("bearings", list.stream().map(BoundaryDimensions::text).toList());
              double wall = g.number("housing_outside", Double.NaN);
              boolean thin =
                  g.has("housing_outside")
                      && list.stream().anyMatch(b -> (wall - b.outside()) / 2 < 0.15 * b.outside());
              return thin
                  ? a.caution(
                      "Some leave less wall than 0.15 D, the custom for cast iron housings.")
                  : a;
            });
  }

  private static Reckoner loadCentre() {
    return Reckoner.of(ROOM, "bearing-load-centre", "Pressure centre from the wide outer face")
        .number("B", Unit.MM, "width (of a tapered bearing T)")
        .number("dm", Unit.MM, "pitch diameter")
        .number("alpha", Unit.DEG, "contact angle")
        .result("a", Unit.MM, "distance of the pressure centre")
        .source(Source.derived("contact line meets the axis"))
        .rule(
            g ->
                Answer.start()
                    .with(
                        "a",
                        Working.of(
                            "a",
                            Unit.MM,
                            "B/2+dm/2*tan(alpha)",
                            positive(g, "B"),
                            positive(g, "dm"),
                            within(g, "alpha", 0, 1.5))));
  }

  private static Term positive(Given g, String name) {
    Need.positive(name, g.number(name));
    return g.term(name);
  }

  private static Term notNegative(Given g, String name) {
    Need.notNegative(name, g.number(name));
    return g.term(name);
  }

  private static Term within(Given g, String name, double low, double high) {
    Need.within(name, g.number(name), low, high);
    return g.term(name);
  }

  private static Reckoner clearance() {
    return Reckoner.of(ROOM, "bearing-clearance", "Radial clearance of a new deep groove bearing")
        .number("bore", Unit.MM, "bearing bore")
        .choice("class", "clearance class", "CN", "C2", "C3")
        .result("clearance", Unit.MICRON, "least and greatest radial clearance")
        .source(Sources.CLEARANCE)
        .rule(
            g -> {
              Interval i = ClearanceClass.of(g.number("bore"), g.choice("class"));
              return Answer.start().with("clearance", new double[] {i.low(), i.high()});
            });
  }

  private static Reckoner seat() {
    return Reckoner.of(
            ROOM, "bearing-seat-limits", "Limit deviations of a bearing seat and its fit")
        .input(
            "zone",
            Input.Kind.TEXT,
            Unit.ONE,
            "h5 j5 js5 k5 (shaft), H6 J6 JS6 K6 (housing), 'bore normal', 'bore P5'",
            null,
            true)
        .number("size", Unit.MM, "nominal size")
        .result("deviations", Unit.MICRON, "lower and upper deviation")
        .result("interference", Unit.MICRON, "least and greatest interference on a normal bearing")
        .source(Sources.SEATS)
        .rule(
            g -> {
              String zone = g.text("zone");
              double size = g.number("size");
              Interval i = SeatZone.of(zone, size);
              Answer a = Answer.start().with("deviations", new double[] {i.low(), i.high()});
              if (!Character.isLowerCase(zone.charAt(0)) || zone.startsWith("bore")) {
                return a;
              }
              Interval bore = SeatZone.of("bore normal", size);
              return a.with(
                  "interference", new double[] {i.low() - bore.high(), i.high() - bore.low()});
            });
  }

  private static Reckoner ringRunOut() {
    return Reckoner.of(ROOM, "bearing-run-out", "Run-out of the assembled inner ring K_ia")
        .number("bore", Unit.MM, "bearing bore, 10 to 50")
        .choice("class", "accuracy class", "normal", "P6", "P5", "P4")
        .result("Kia", Unit.MICRON, "run-out")
        .source(Sources.RING_ACCURACY)
        .rule(
            g ->
                Answer.start()
                    .with("Kia", SeatZone.ringRunOut(g.number("bore"), g.choice("class"))));
  }

  private static Reckoner effective() {
    return Reckoner.of(ROOM, "bearing-effective-interference", "Interference after smoothing")
        .number("I", Unit.MICRON, "measured interference")
        .number("d", Unit.MM, "seat diameter")
        .choice("finish", "how the seat was made", "ground", "turned")
        .result("I_eff", Unit.MICRON, "effective interference")
        .source(Sources.FITS)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "I_eff",
                        RingFit.effective(
                            g.number("I"),
                            g.number("d"),
                            g.choice("finish").equals("ground") ? 3 : 2)));
  }

  private static Reckoner innerGrowth() {
    return Reckoner.of(ROOM, "bearing-inner-growth", "Growth of the inner raceway by the shaft fit")
        .number("I", Unit.MICRON, "effective interference")
        .number("d", Unit.MM, "bearing bore")
        .number("raceway_d", Unit.MM, "inner raceway diameter")
        .number("shaft_bore", Unit.MM, "bore of the shaft, 0 if solid", "0")
        .result("growth", Unit.MICRON, "growth of the raceway diameter")
        .source(Sources.FITS)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "growth",
                        Working.check(
                            "growth",
                            RingFit.innerGrowth(
                                g.number("I"),
                                g.number("d"),
                                g.number("raceway_d"),
                                g.number("shaft_bore")),
                            Unit.MICRON,
                            "I*(d/raceway_d)*(1-(shaft_bore/d)^2)/(1-(shaft_bore/raceway_d)^2)",
                            g.term("I"),
                            g.term("d"),
                            g.term("raceway_d"),
                            g.term("shaft_bore"))));
  }

  private static Reckoner outerShrinkage() {
    return Reckoner.of(
            ROOM, "bearing-outer-shrinkage", "Shrinkage of the outer raceway by the housing fit")
        .number("I", Unit.MICRON, "effective interference")
        .number("D", Unit.MM, "bearing outside diameter")
        .number("raceway_d", Unit.MM, "outer raceway diameter")
        .optional(
            "housing_D", Unit.MM, "outside diameter of the housing; a large block if left out")
        .result("shrinkage", Unit.MICRON, "shrinkage of the raceway diameter")
        .source(Sources.FITS)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "shrinkage",
                        RingFit.outerShrinkage(
                            g.number("I"),
                            g.number("D"),
                            g.number("raceway_d"),
                            g.number("housing_D", Double.POSITIVE_INFINITY))));
  }

  private static Reckoner mountedClearance() {
    return Reckoner.of(ROOM, "bearing-mounted-clearance", "Clearance when fitted and warm")
        .number("Pd", Unit.MICRON, "clearance of the free bearing")
        .number("I", Unit.MICRON, "effective interference on the shaft", "0")
        .number("d", Unit.MM, "bearing bore")
        .number("raceway_d", Unit.MM, "inner raceway diameter")
        .number("outer_raceway_d", Unit.MM, "outer raceway diameter")
        .number("shaft_bore", Unit.MM, "bore of the shaft, 0 if solid", "0")
        .number("I_housing", Unit.MICRON, "effective interference in the housing", "0")
        .optional("D", Unit.MM, "bearing outside diameter, with I_housing")
        .optional("housing_D", Unit.MM, "outside of the housing; a large block if left out")
        .number("dT", Unit.K, "inner ring above outer ring", "0")
        .number("alpha", Unit.PER_K, "expansion of the rings", "0.0000115")
        .result("clearance", Unit.MICRON, "mounted clearance; negative is preload")
        .result("fit_loss", Unit.MICRON, "taken by the fits")
        .result("warm_loss", Unit.MICRON, "taken by the temperature")
        .source(Sources.FITS)
        .rule(SeatReckoners::mounted);
  }

  private static Answer mounted(Given g) {
    double inner = g.number("raceway_d");
    double outer = g.number("outer_raceway_d");
    if (!(outer > inner)) {
      throw new IllegalArgumentException(
          "outer_raceway_d: found " + outer + " mm, expected more than raceway_d");
    }
    double fit = RingFit.innerGrowth(g.number("I"), g.number("d"), inner, g.number("shaft_bore"));
    if (g.number("I_housing") != 0) {
      fit +=
          RingFit.outerShrinkage(
              g.number("I_housing"),
              g.number("D"),
              outer,
              g.number("housing_D", Double.POSITIVE_INFINITY));
    }
    double warm = RingFit.warmLoss(g.number("alpha"), g.number("dT"), inner, outer);
    double left = g.number("Pd") - fit - warm;
    Answer a = Answer.start().with("clearance", left).with("fit_loss", fit).with("warm_loss", warm);
    return left < 0
        ? a.caution(
            "No clearance left: a deep groove bearing runs hot and may seize; take class C3 or a"
                + " looser seat.")
        : a;
  }

  private static Reckoner squeezeWorth() {
    return Reckoner.of(ROOM, "bearing-squeeze-worth", "Axial approach a radial squeeze is worth")
        .number("u", Unit.MICRON, "squeeze on diameter")
        .number("alpha", Unit.DEG, "contact angle")
        .result("approach", Unit.MICRON, "axial approach of the bearing")
        .source(Sources.GROWTH)
        .rule(
            g ->
                Answer.start()
                    .with("approach", RingFit.axialWorth(g.number("u"), g.number("alpha"))));
  }

  private static Reckoner warmPreload() {
    return Reckoner.of(ROOM, "bearing-warm-preload", "Change of a pair's preload by warming")
        .choice("arrangement", "how the pair stands", "back-to-back", "face-to-face")
        .number("Ls", Unit.MM, "length between the inner rings")
        .number("dTs", Unit.K, "rise of the shaft")
        .number("alpha_s", Unit.PER_K, "expansion of the shaft", "0.0000115")
        .optional("Lh", Unit.MM, "length between the outer rings; as Ls if left out")
        .number("dTh", Unit.K, "rise of the housing", "0")
        .number("alpha_h", Unit.PER_K, "expansion of the housing", "0.0000105")
        .optional("di", Unit.MM, "inner raceway diameter, for the raceway part")
        .optional("Do", Unit.MM, "outer raceway diameter, for the raceway part")
        .optional("alpha0", Unit.DEG, "contact angle, for the raceway part")
        .result("spacer", Unit.MICRON, "change of the approach by the spacers; minus loosens")
        .result("raceway", Unit.MICRON, "change of the approach by the raceways of both")
        .result("total", Unit.MICRON, "change of the approach of both bearings together")
        .result("neutral_spacing", Unit.MM, "spacing at which both cancel, back to back")
        .source(Sources.GROWTH)
        .rule(SeatReckoners::warm);
  }

  private static Answer warm(Given g) {
    double shaft = g.number("alpha_s") * g.number("dTs");
    double house = g.number("alpha_h") * g.number("dTh");
    boolean back = g.choice("arrangement").equals("back-to-back");
    double ls = Need.notNegative("Ls", g.number("Ls"));
    double spacer =
        WarmPreload.spacers(
            back ? BearingSet.Arrangement.BACK_TO_BACK : BearingSet.Arrangement.FACE_TO_FACE,
            ls,
            shaft,
            Need.notNegative("Lh", g.number("Lh", ls)),
            house);
    Answer a = Answer.start().with("spacer", spacer);
    double race = 0;
    if (g.has("di") && g.has("Do") && g.has("alpha0")) {
      double angle = g.number("alpha0");
      race = WarmPreload.raceways(g.number("di"), shaft, g.number("Do"), house, angle);
      double pitch = (g.number("di") + g.number("Do")) / 2;
      a = a.with("raceway", race).with("neutral_spacing", WarmPreload.neutralSpacing(pitch, angle));
    }
    a = a.with("total", spacer + race);
    return back
        ? a
        : a.caution("Face to face, a warm shaft raises the preload: not for a hot spindle.");
  }

  private static Reckoner quickFriction() {
    return Reckoner.of(ROOM, "bearing-friction-quick", "Friction by one coefficient")
        .number("P", Unit.N, "load")
        .number("mu", Unit.ONE, "0.0015 deep groove, 0.002 angular, 0.0018 tapered", "0.0015")
        .optional("bore_radius", Unit.MM, "half the bore")
        .optional("d", Unit.MM, "bore, instead of its half")
        .optional("n", Unit.RPM, "speed, for the power")
        .result("M", Unit.NMM, "friction torque")
        .result("H", Unit.W, "heat")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              double r =
                  Need.positive(
                      "bore_radius",
                      g.has("bore_radius") ? g.number("bore_radius") : g.number("d") / 2);
              Working m =
                  Working.of(
                      "M",
                      Unit.NMM,
                      "mu*P*r",
                      notNegative(g, "mu"),
                      notNegative(g, "P"),
                      Term.exact("r", r, Unit.MM));
              Answer a = Answer.start().with("M", m);
              return g.has("n")
                  ? a.with("H", Working.of("H", Unit.W, "M*n", Term.of(m), notNegative(g, "n")))
                  : a;
            });
  }

  private static Reckoner loadFreeFriction() {
    return Reckoner.of(ROOM, "bearing-friction-free", "Load-free friction torque M_0")
        .number("f0", Unit.ONE, "factor for lubrication; grease 2 angular, 0.75 to 2 deep groove")
        .number("nu", Unit.MM2_PER_S, "viscosity of the (base) oil when warm")
        .number("n", Unit.RPM, "speed")
        .number("dm", Unit.MM, "pitch diameter")
        .result("M0", Unit.NMM, "load-free friction torque")
        .source(Sources.FRICTION)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "M0",
                        BearingFriction.loadFree(
                            g.number("f0"), g.number("nu"), g.number("n"), g.number("dm"))));
  }

  private static double angle(Given g) {
    return Need.within("alpha", g.number("alpha"), 0, Math.PI / 2 + 1e-9);
  }

  private static Reckoner loadBorneFriction() {
    return Reckoner.of(ROOM, "bearing-friction-load", "Load-borne friction torque M_1")
        .choice("type", "ball or tapered roller", "ball", "tapered")
        .number("z", Unit.ONE, "factor; 0.001 angular, 0.0005 deep groove, 0.0008 thrust", "0.001")
        .number("y", Unit.ONE, "exponent; 0.33 angular and thrust, 0.55 deep groove", "0.33")
        .optional("f1", Unit.ONE, "f1 itself, instead of z, y, P0, C0; tapered 0.0004")
        .optional("P0", Unit.N, "equivalent static load")
        .optional("C0", Unit.N, "basic static rating")
        .number("Fr", Unit.N, "radial load", "0")
        .number("Fa", Unit.N, "axial load", "0")
        .number("alpha", Unit.DEG, "contact angle", "0")
        .number("dm", Unit.MM, "pitch diameter")
        .count("bearings", "equal bearings", "1")
        .result("f1", Unit.ONE, "factor used")
        .result("F_beta", Unit.N, "load that rubs")
        .result("M1", Unit.NMM, "load-borne friction torque of all")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              boolean ball = g.choice("type").equals("ball");
              double fr = Need.notNegative("Fr", g.number("Fr"));
              double fa = Need.notNegative("Fa", g.number("Fa"));
              double load =
                  ball
                      ? BearingFriction.ballLoad(fr, fa, angle(g))
                      : BearingFriction.taperedLoad(fr, fa, angle(g));
              double f1;
              if (g.has("f1")) {
                f1 = g.number("f1");
              } else if (ball) {
                f1 =
                    BearingFriction.factor(
                        g.number("z"), g.number("y"), g.number("P0"), g.number("C0"));
              } else {
                f1 = 0.0004;
              }
              int count = g.count("bearings");
              Need.within("bearings", count, 1, 100);
              return Answer.start()
                  .with("f1", f1)
                  .with("F_beta", load)
                  .with("M1", count * BearingFriction.loadBorne(f1, load, g.number("dm")));
            });
  }

  private static Reckoner friction() {
    return Reckoner.of(ROOM, "bearing-friction", "Friction torque, heat and warming")
        .choice("type", "kind of bearing", "angular", "deep_groove", "thrust_ball", "tapered")
        .optional("f0", Unit.ONE, "lubrication factor; for grease if left out")
        .number("nu", Unit.MM2_PER_S, "viscosity of the (base) oil when warm", "100")
        .number("n", Unit.RPM, "speed")
        .number("dm", Unit.MM, "pitch diameter")
        .number("Fr", Unit.N, "radial load", "0")
        .number("Fa", Unit.N, "axial load", "0")
        .number("alpha", Unit.DEG, "contact angle", "15")
        .number("P0", Unit.N, "equivalent static load", "0")
        .number("C0", Unit.N, "basic static rating", "1000000")
        .count("bearings", "equal bearings", "1")
        .number("seals", Unit.NMM, "drag of all seals; 10 to 40 N mm each when they touch", "0")
        .number("h", Unit.W_PER_M2K, "heat transfer of the housing", "20")
        .optional("A", Unit.M2, "surface that sheds the heat")
        .result("M0", Unit.NMM, "load-free part")
        .result("M1", Unit.NMM, "load-borne part")
        .result("M", Unit.NMM, "friction torque with seals")
        .result("H", Unit.W, "heat")
        .result("dT", Unit.K, "steady temperature rise")
        .source(Sources.FRICTION)
        .rule(SeatReckoners::frictionAnswer);
  }

  private static Answer frictionAnswer(Given g) {
    String type = g.choice("type");
    double fr = Need.notNegative("Fr", g.number("Fr"));
    double fa = Need.notNegative("Fa", g.number("Fa"));
    double p0 = g.number("P0");
    double c0 = g.number("C0");
    double f0;
    double f1;
    double load;
    switch (type) {
      case "deep_groove" -> {
        f0 = 1.5;
        f1 = BearingFriction.factor(0.0005, 0.55, p0, c0);
        load = BearingFriction.ballLoad(fr, fa, angle(g));
      }
      case "thrust_ball" -> {
        f0 = 1.75;
        f1 = BearingFriction.factor(0.0008, 0.33, p0, c0);
        load = fa;
      }
      case "tapered" -> {
        f0 = 5;
        f1 = 0.0004;
        load = BearingFriction.taperedLoad(fr, fa, angle(g));
      }
      default -> {
        f0 = 2;
        f1 = BearingFriction.factor(0.001, 0.33, p0, c0);
        load = BearingFriction.ballLoad(fr, fa, angle(g));
      }
    }
    int count = g.count("bearings");
    Need.within("bearings", count, 1, 100);
    double speed = g.number("n");
    double dm = g.number("dm");
    double free = count * BearingFriction.loadFree(g.number("f0", f0), g.number("nu"), speed, dm);
    double borne = count * BearingFriction.loadBorne(f1, load, dm);
    double sum = free + borne + Need.notNegative("seals", g.number("seals"));
    double heat = BearingFriction.heat(sum, speed);
    Answer a = Answer.start().with("M0", free).with("M1", borne).with("M", sum).with("H", heat);
    return g.has("A") ? a.with("dT", BearingFriction.rise(heat, g.number("h"), g.number("A"))) : a;
  }

  private static Reckoner heatRise() {
    return Reckoner.of(ROOM, "bearing-heat", "Heat of a friction torque and steady warming")
        .number("M", Unit.NMM, "friction torque")
        .number("n", Unit.RPM, "speed")
        .number("h", Unit.W_PER_M2K, "heat transfer, 15 to 25 free cast housing", "20")
        .optional("A", Unit.M2, "surface that sheds the heat")
        .result("H", Unit.W, "heat")
        .result("dT", Unit.K, "steady temperature rise")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              double heat =
                  BearingFriction.heat(Need.notNegative("M", g.number("M")), g.number("n"));
              Answer a = Answer.start().with("H", heat);
              return g.has("A")
                  ? a.with("dT", BearingFriction.rise(heat, g.number("h"), g.number("A")))
                  : a;
            });
  }

  private static Reckoner speedGuide() {
    return Reckoner.of(ROOM, "bearing-speed-limit", "Speed guide for grease, n dm")
        .choice(
            "type",
            "kind of bearing",
            "deep_groove",
            "deep_groove_sealed",
            "angular_15",
            "angular_25",
            "angular_40",
            "tapered",
            "thrust_ball")
        .choice("preload", "preload of a pair", "none", "light", "heavy")
        .number("dm", Unit.MM, "pitch diameter")
        .optional("n", Unit.RPM, "speed wanted")
        .result("n_max", Unit.RPM, "highest speed by the guide")
        .result("n_dm", Unit.MM_PER_MIN, "speed times pitch diameter wanted")
        .source(Sources.SPEED_GUIDE)
        .rule(
            g -> {
              double dm = g.number("dm");
              double most =
                  SpeedGuide.of(g.choice("type"))
                      .speed(dm, SpeedGuide.preloadFactor(g.choice("preload")));
              Answer a = Answer.start().with("n_max", most);
              if (!g.has("n")) {
                return a;
              }
              double n = g.number("n");
              a = a.with("n_dm", n * dm / (2 * Math.PI));
              return n > most
                  ? a.caution("Above the guide for grease: expect heat; watch the temperature.")
                  : a;
            });
  }

  private static Reckoner loadZone() {
    return Reckoner.of(ROOM, "bearing-load-zone", "Thrust that keeps the balls loaded")
        .number("Fr", Unit.N, "radial load")
        .number("alpha", Unit.DEG, "contact angle")
        .result("all", Unit.N, "thrust on one bearing that loads all balls")
        .result("half", Unit.N, "thrust on one bearing that loads half of them")
        .result("preload", Unit.N, "preload of a pair sharing Fr that keeps all balls loaded")
        .source(Sources.SJOVALL)
        .rule(
            g -> {
              double base =
                  Need.notNegative("Fr", g.number("Fr"))
                      * Math.tan(Need.within("alpha", g.number("alpha"), 0, 1.5));
              return Answer.start()
                  .with("all", 1.67 * base)
                  .with("half", 1.216 * base)
                  .with("preload", 0.83 * base);
            });
  }

  private static Reckoner screwAxial() {
    return Reckoner.of(ROOM, "screw-axial-stiffness", "Axial stiffness of a free length of screw")
        .number("d_root", Unit.MM, "root diameter")
        .number("L", Unit.MM, "free length")
        .number("E", Unit.MPA, "modulus of elasticity", "206000")
        .result("k", Unit.N_PER_MICRON, "axial stiffness")
        .source(Source.derived("rod in tension, k = E A/L"))
        .rule(
            g ->
                Answer.start()
                    .with(
                        "k",
                        Working.of(
                            "k",
                            Unit.N_PER_MICRON,
                            "E*pi/4*d_root^2/L",
                            positive(g, "E"),
                            positive(g, "d_root"),
                            positive(g, "L"))));
  }

  private static Reckoner screwChain() {
    return Reckoner.of(
            ROOM, "screw-support-chain", "Axial stiffness and lost motion of a feed screw")
        .optional("k_screw", Unit.N_PER_MICRON, "axial stiffness of the screw")
        .optional("d_root", Unit.MM, "root diameter, if k_screw is not given")
        .optional("L", Unit.MM, "free length, if k_screw is not given")
        .number("E", Unit.MPA, "modulus of elasticity", "206000")
        .optional("k_nut", Unit.N_PER_MICRON, "stiffness of the nut")
        .optional("k_bearing", Unit.N_PER_MICRON, "axial stiffness of the bearing")
        .optional("k_block", Unit.N_PER_MICRON, "stiffness of the block that holds it")
        .number("play", Unit.MICRON, "axial play of the bearing", "0")
        .number("F", Unit.N, "feed force", "0")
        .optional("lead", Unit.MM, "lead, for the lost angle")
        .result("k", Unit.N_PER_MICRON, "stiffness of the chain")
        .result("give", Unit.MICRON, "elastic give under F")
        .result("give_with_play", Unit.MICRON, "give and play")
        .result("lost_angle", Unit.DEG, "turn of the handwheel lost to play")
        .source(Sources.SERIES_SPRINGS)
        .rule(SeatReckoners::chain);
  }

  private static Answer chain(Given g) {
    double give = 0;
    if (g.has("k_screw")) {
      give += 1 / Need.positive("k_screw", g.number("k_screw"));
    } else if (g.has("d_root") && g.has("L")) {
      double d = Need.positive("d_root", g.number("d_root"));
      give +=
          4
              * Need.positive("L", g.number("L"))
              / (Need.positive("E", g.number("E")) * Math.PI * d * d);
    }
    for (String part : List.of("k_nut", "k_bearing", "k_block")) {
      if (g.has(part)) {
        give += 1 / Need.positive(part, g.number(part));
      }
    }
    if (give == 0) {
      throw new IllegalArgumentException(
          "give at least one of k_screw (or d_root and L), k_nut, k_bearing, k_block");
    }
    double force = Need.notNegative("F", g.number("F"));
    double play = Need.notNegative("play", g.number("play"));
    Answer a =
        Answer.start()
            .with("k", 1 / give)
            .with("give", force * give)
            .with("give_with_play", force * give + play);
    return g.has("lead")
        ? a.with("lost_angle", 2 * Math.PI * play / Need.positive("lead", g.number("lead")))
        : a;
  }

  private static Reckoner collarDrag() {
    return Reckoner.of(ROOM, "screw-collar-drag", "Drag of a plain thrust collar")
        .number("F", Unit.N, "axial load")
        .number("mu", Unit.ONE, "coefficient of friction", "0.15")
        .number("r", Unit.MM, "mean radius of the collar")
        .result("M", Unit.NMM, "friction torque")
        .source(Source.derived("dry friction on a ring, M = mu F r"))
        .rule(
            g ->
                Answer.start()
                    .with(
                        "M",
                        Working.of(
                            "M",
                            Unit.NMM,
                            "mu*F*r",
                            notNegative(g, "mu"),
                            notNegative(g, "F"),
                            positive(g, "r")))
                    .caution(
                        "Taking this drag away also takes self-braking away: check that the slide"
                            + " does not drive the screw back."));
  }

  private static Reckoner wheelTorque() {
    return Reckoner.of(ROOM, "screw-wheel-torque", "Torque at the handwheel of a feed screw")
        .number("F", Unit.N, "feed force")
        .number("lead", Unit.MM, "lead")
        .number("eta", Unit.ONE, "efficiency of the screw", "0.3")
        .number("bearing_drag", Unit.NMM, "drag of the bearings", "0")
        .number("nut_drag", Unit.NMM, "drag of a preloaded nut", "0")
        .result("T", Unit.NM, "torque at the wheel")
        .source(Source.derived("work of one turn"))
        .rule(
            g ->
                Answer.start()
                    .with(
                        "T",
                        Working.of(
                            "T",
                            Unit.NM,
                            "F*lead/(2*pi*eta)+bearing_drag+nut_drag",
                            notNegative(g, "F"),
                            positive(g, "lead"),
                            within(g, "eta", 1e-3, 1),
                            notNegative(g, "bearing_drag"),
                            notNegative(g, "nut_drag"))));
  }

  private static Reckoner bush() {
    return Reckoner.of(ROOM, "plain-bush", "Plain bush: pressure, speed, oil film, friction")
        .number("F", Unit.N, "radial load")
        .number("d", Unit.MM, "shaft diameter")
        .number("L", Unit.MM, "bearing length")
        .number("n", Unit.RPM, "speed")
        .number("clearance", Unit.MICRON, "diametral clearance")
        .number("eta", Unit.MILLIPASCAL_S, "viscosity of the oil when warm", "40")
        .number("mu", Unit.ONE, "friction when the film breaks", "0.1")
        .number("pv_limit", Unit.PV, "limit of the material; sintered bronze 1.75", "1.75")
        .result("p", Unit.MPA, "mean pressure")
        .result("v", Unit.M_PER_S, "rubbing speed")
        .result("pv", Unit.PV, "pressure times speed")
        .result("eccentricity", Unit.ONE, "shaft out of the middle, share of the clearance")
        .result("film", Unit.MICRON, "thinnest oil film")
        .result("M_film", Unit.NMM, "friction torque with a full film, shaft in the middle")
        .result("M_dry", Unit.NMM, "friction torque without a film")
        .result("H", Unit.W, "heat with a full film")
        .source(Sources.SHORT_BEARING)
        .rule(SeatReckoners::bushAnswer);
  }

  private static Answer bushAnswer(Given g) {
    PlainBush bush = new PlainBush(g.number("d"), g.number("L"), g.number("clearance"));
    double f = g.number("F");
    double n = g.number("n");
    double eta = Need.positive("eta", g.number("eta"));
    double e = bush.eccentricity(f, eta, n);
    double pv = bush.pressure(f) * bush.rubbingSpeed(n);
    double torque = bush.petroffTorque(eta, n);
    Answer a =
        Answer.start()
            .with("p", bush.pressure(f))
            .with("v", bush.rubbingSpeed(n))
            .with("pv", pv)
            .with("eccentricity", e)
            .with("film", bush.film(e))
            .with("M_film", torque)
            .with("M_dry", Need.notNegative("mu", g.number("mu")) * f * bush.diameter() / 2)
            .with("H", torque * n);
    if (pv > g.number("pv_limit")) {
      a = a.caution("Pressure times speed is above the limit of the material.");
    }
    if (bush.film(e) < 0.003) {
      a =
          a.caution(
              "The oil film is thinner than 3 µm, about the roughness of a good bush: shaft and"
                  + " bush touch.");
    }
    return bush.length() > bush.diameter()
        ? a.caution("The film formula is for bushes no longer than their diameter.")
        : a;
  }
}
