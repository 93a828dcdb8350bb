package fettle.mechanics.bearings;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.bearings.DynamicRating.Column;
import fettle.mechanics.bearings.DynamicRating.Inside;
import java.util.List;

/** Single calculations on ratings, equivalent loads and life. */
public final class RatingReckoners {

  private static final String ROOM = "bearings";

  private RatingReckoners() {}

  /** Returns the reckoners on ratings and life. */
  public static List<Reckoner> all() {
    return List.of(
        dynamicFactor(),
        dynamicRating(),
        staticFactor(),
        staticRating(),
        setRating(),
        equivalentLoad(),
        staticLoad(),
        inducedThrust(),
        basicLife(),
        requiredRating(),
        modifiedLife(),
        modification(),
        reliability(),
        referenceViscosity(),
        fatigueLimit(),
        meanLoad(),
        weibull());
  }

  private static Column column(String word) {
    return switch (word) {
      case "ball_double" -> Column.BALL_DOUBLE;
      case "thrust_ball_90" -> Column.THRUST_BALL_90;
      case "roller" -> Column.ROLLER;
      default -> Column.BALL_SINGLE;
    };
  }

  private static double first(Given g, String... names) {
    for (String name : names) {
      if (g.has(name)) {
        return g.number(name);
      }
    }
    throw new IllegalArgumentException("missing input '" + names[0] + "'");
  }

  private static double gamma(Given g) {
    if (g.has("gamma")) {
      return g.number("gamma");
    }
    double ratio = Need.positive("Dw", g.number("Dw")) / Need.positive("Dpw", g.number("Dpw"));
    return ratio * (g.has("alpha") ? Math.cos(g.number("alpha")) : 1);
  }

  private static Reckoner dynamicFactor() {
    return Reckoner.of(ROOM, "bearing-dynamic-factor", "Factor f_c of the basic dynamic rating")
        .choice("type", "kind", "ball_single", "ball_double", "thrust_ball_90", "roller")
        .optional("gamma", Unit.ONE, "Dw cos(alpha)/Dpw, for 90 deg thrust Dw/Dpw")
        .optional("Dw", Unit.MM, "ball or roller diameter, if gamma is not given")
        .optional("Dpw", Unit.MM, "pitch diameter, if gamma is not given")
        .optional("alpha", Unit.DEG, "contact angle, if gamma is not given; 0 if left out")
        .result("fc", Unit.ONE, "f_c as tabulated, between the rows by straight lines")
        .result("fc_expression", Unit.ONE, "f_c by the expression behind the table")
        .source(Sources.DYNAMIC_FACTORS)
        .rule(
            g -> {
              Column c = column(g.choice("type"));
              double gamma = gamma(g);
              return Answer.start()
                  .with("fc", DynamicRating.factor(c, gamma))
                  .with("fc_expression", DynamicRating.factorExpression(c, gamma));
            });
  }

  private static Reckoner.Draft inside(Reckoner.Draft draft) {
    return draft
        .choice(
            "type",
            "kind of bearing",
            "radial_ball",
            "radial_ball_double_groove",
            "thrust_ball",
            "radial_roller",
            "thrust_roller")
        .count("Z", "balls or rollers in a row")
        .optional("Dw", Unit.MM, "ball or roller diameter")
        .optional("Dwe", Unit.MM, "roller diameter, another name for Dw")
        .optional("Lwe", Unit.MM, "effective roller length; rollers only")
        .number("Dpw", Unit.MM, "pitch diameter")
        .optional("alpha", Unit.DEG, "contact angle; 0 for radial, 90 for thrust if left out")
        .count("rows", "rows of balls or rollers", "1")
        .optional("bm", Unit.ONE, "factor for steel and make; 1.3 balls, 1.1 rollers if left out");
  }

  private static Inside inside(Given g) {
    String type = g.choice("type");
    boolean thrust = type.startsWith("thrust");
    boolean roller = type.endsWith("roller");
    if (roller && !g.has("Lwe")) {
      throw new IllegalArgumentException("missing input 'Lwe': effective length of the rollers");
    }
    double bm = roller ? (thrust ? 1.0 : 1.1) : 1.3;
    return new Inside(
        g.count("rows"),
        g.count("Z"),
        first(g, "Dw", "Dwe"),
        g.number("Lwe", 0),
        g.number("Dpw"),
        g.number("alpha", thrust ? Math.PI / 2 : 0),
        g.number("bm", bm));
  }

  private static Reckoner dynamicRating() {
    return inside(
            Reckoner.of(
                ROOM, "bearing-dynamic-rating", "Basic dynamic load rating from the inside"))
        .result("C", Unit.N, "basic dynamic load rating C_r or C_a")
        .source(Sources.DYNAMIC)
        .rule(
            g -> {
              Inside in = inside(g);
              double c =
                  switch (g.choice("type")) {
                    case "thrust_ball" -> DynamicRating.thrustBall(in);
                    case "radial_roller" -> DynamicRating.radialRoller(in);
                    case "thrust_roller" -> DynamicRating.thrustRoller(in);
                    case "radial_ball_double_groove" ->
                        DynamicRating.radialBall(in, Column.BALL_DOUBLE);
                    default -> DynamicRating.radialBall(in, Column.BALL_SINGLE);
                  };
              return Answer.start().with("C", c);
            });
  }

  private static Reckoner staticFactor() {
    return Reckoner.of(ROOM, "bearing-static-factor", "Factor f_0 of the basic static rating")
        .choice("type", "radial (and angular contact) or thrust", "radial", "thrust")
        .optional("gamma", Unit.ONE, "Dw cos(alpha)/Dpw, for 90 deg thrust Dw/Dpw")
        .optional("Dw", Unit.MM, "ball diameter, if gamma is not given")
        .optional("Dpw", Unit.MM, "pitch diameter, if gamma is not given")
        .optional("alpha", Unit.DEG, "contact angle, if gamma is not given; 0 if left out")
        .result("f0", Unit.ONE, "f_0 as tabulated, between the rows by straight lines")
        .source(Sources.STATIC_FACTORS)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "f0",
                        g.choice("type").equals("thrust")
                            ? StaticRating.thrustFactor(gamma(g))
                            : StaticRating.radialFactor(gamma(g))));
  }

  private static Reckoner staticRating() {
    return inside(
            Reckoner.of(ROOM, "bearing-static-rating", "Basic static load rating from the inside"))
        .result("C0", Unit.N, "basic static load rating C_0r or C_0a")
        .source(Sources.STATIC)
        .rule(
            g -> {
              Inside in = inside(g);
              double c =
                  switch (g.choice("type")) {
                    case "thrust_ball" -> StaticRating.thrustBall(in);
                    case "radial_roller" -> StaticRating.radialRoller(in);
                    case "thrust_roller" -> StaticRating.thrustRoller(in);
                    default -> StaticRating.radialBall(in);
                  };
              return Answer.start().with("C0", c);
            });
  }

  private static Reckoner setRating() {
    return Reckoner.of(ROOM, "bearing-set-rating", "Ratings of equal bearings sharing one load")
        .choice("type", "ball or roller", "ball", "roller")
        .number("C", Unit.N, "basic dynamic rating of one bearing")
        .optional("C0", Unit.N, "basic static rating of one bearing")
        .count("i", "bearings in the set", "2")
        .result("C_set", Unit.N, "dynamic rating of the set taken as one bearing")
        .result("C0_set", Unit.N, "static rating of the set")
        .source(Sources.DYNAMIC)
        .rule(
            g -> {
              double exponent = g.choice("type").equals("ball") ? 0.7 : 7.0 / 9;
              Answer a =
                  Answer.start()
                      .with("C_set", DynamicRating.set(g.number("C"), g.count("i"), exponent));
              return g.has("C0")
                  ? a.with(
                      "C0_set", Working.of("C0_set", Unit.N, "i*C0", g.term("i"), g.term("C0")))
                  : a;
            });
  }

  private static Reckoner equivalentLoad() {
    return Reckoner.of(ROOM, "bearing-equivalent-load", "Equivalent dynamic load P")
        .choice(
            "type",
            "kind of bearing",
            "deep_groove",
            "angular",
            "tapered",
            "self_aligning",
            "thrust_ball",
            "thrust_ball_90")
        .choice("arrangement", "one bearing, or a pair or double row", "single", "pair")
        .number("Fr", Unit.N, "radial load")
        .number("Fa", Unit.N, "axial load")
        .optional("alpha", Unit.DEG, "contact angle; asked for unless deep groove or 90 deg")
        .optional("f0", Unit.ONE, "static factor f_0; deep groove and below 20 deg")
        .optional("C0r", Unit.N, "basic static rating; deep groove and below 20 deg")
        .result("P", Unit.N, "equivalent dynamic load")
        .result("X", Unit.ONE, "radial factor used")
        .result("Y", Unit.ONE, "axial factor used")
        .result("e", Unit.ONE, "limit of Fa/Fr")
        .source(Sources.EQUIVALENT)
        .rule(
            g -> {
              double fr = g.number("Fr");
              double fa = g.number("Fa");
              Need.notNegative("Fr", fr);
              Need.notNegative("Fa", fa);
              if (g.choice("type").equals("thrust_ball_90")) {
                if (fr > 0) {
                  throw new IllegalArgumentException(
                      "Fr: found a radial load on a 90 deg thrust bearing, expected 0; it needs a"
                          + " radial bearing beside it");
                }
                return Answer.start().with("P", fa).with("X", 0).with("Y", 1);
              }
              EquivalentLoad factors = factors(g, fa);
              boolean above = factors.isAbove(fr, fa);
              double x = above ? factors.aboveX() : factors.belowX();
              double y = above ? factors.aboveY() : factors.belowY();
              Answer a =
                  Answer.start()
                      .with(
                          "P",
                          Working.check(
                              "P",
                              factors.load(fr, fa),
                              Unit.N,
                              "X*Fr+Y*Fa",
                              Term.exact("X", x),
                              g.term("Fr"),
                              Term.exact("Y", y),
                              g.term("Fa")))
                      .with("X", x)
                      .with("Y", y)
                      .with("e", factors.limit());
              boolean outside = g.choice("type").equals("thrust_ball") && !above;
              return outside
                  ? a.caution(
                      "Fa/Fr is not above e: this thrust bearing should carry relatively more"
                          + " thrust; the standard gives no factor for one direction here.")
                  : a;
            });
  }

  private static EquivalentLoad factors(Given g, double fa) {
    boolean pair = g.choice("arrangement").equals("pair");
    String type = g.choice("type");
    if (type.equals("deep_groove")) {
      return EquivalentLoad.deepGroove(relative(g, fa, true));
    }
    if (!g.has("alpha")) {
      throw new IllegalArgumentException(
          "missing input 'alpha': contact angle in deg; letters on the bearing differ by maker");
    }
    double alpha = g.number("alpha");
    return switch (type) {
      case "tapered" ->
          pair ? EquivalentLoad.rollerPair(alpha) : EquivalentLoad.rollerSingle(alpha);
      case "self_aligning" -> EquivalentLoad.rollerPair(alpha);
      case "thrust_ball" ->
          pair ? EquivalentLoad.thrustDouble(alpha) : EquivalentLoad.thrustSingle(alpha);
      default -> {
        double x = relative(g, fa, alpha < Math.toRadians(20) - 1e-9);
        yield pair ? EquivalentLoad.angularPair(alpha, x) : EquivalentLoad.angularSingle(alpha, x);
      }
    };
  }

  private static double relative(Given g, double fa, boolean needed) {
    if (g.has("f0") && g.has("C0r")) {
      return Need.positive("f0", g.number("f0")) * fa / Need.positive("C0r", g.number("C0r"));
    }
    if (needed && fa > 0) {
      throw new IllegalArgumentException(
          "missing inputs 'f0' and 'C0r': the factors depend on f0 Fa/C0r for this bearing");
    }
    return 0;
  }

  private static Reckoner staticLoad() {
    return Reckoner.of(ROOM, "bearing-static-load", "Equivalent static load and static safety")
        .choice(
            "type",
            "kind of bearing",
            "deep_groove",
            "angular",
            "tapered",
            "self_aligning",
            "thrust")
        .choice("arrangement", "one bearing, or a pair or double row", "single", "pair")
        .number("Fr", Unit.N, "radial load", "0")
        .number("Fa", Unit.N, "axial load", "0")
        .optional("alpha", Unit.DEG, "contact angle; asked for unless deep groove")
        .optional("C0", Unit.N, "basic static rating, for the safety")
        .result("P0", Unit.N, "equivalent static load")
        .result("S0", Unit.ONE, "static safety C0/P0")
        .source(Sources.STATIC_LOAD)
        .rule(
            g -> {
              double p0 = staticLoadOf(g);
              Answer a = Answer.start().with("P0", p0);
              if (!g.has("C0") || p0 == 0) {
                return a;
              }
              Working s0 =
                  Working.of("S0", Unit.ONE, "C0/P0", g.term("C0"), Term.exact("P0", p0, Unit.N));
              a = a.with("S0", s0);
              return s0.value() < 1.5
                  ? a.caution(
                      "Static safety below 1.5: too little for a spindle that runs smoothly; 2 is"
                          + " usual where a crash must be reckoned with.")
                  : a;
            });
  }

  private static double staticLoadOf(Given g) {
    double fr = g.number("Fr");
    double fa = g.number("Fa");
    boolean pair = g.choice("arrangement").equals("pair");
    String type = g.choice("type");
    if (type.equals("deep_groove")) {
      return StaticLoad.deepGroove().load(fr, fa);
    }
    double alpha = type.equals("thrust") ? g.number("alpha", Math.PI / 2) : g.number("alpha");
    return switch (type) {
      case "thrust" -> StaticLoad.thrust(fr, fa, alpha);
      case "tapered" ->
          (pair ? StaticLoad.rollerPair(alpha) : StaticLoad.rollerSingle(alpha)).load(fr, fa);
      case "self_aligning" -> StaticLoad.rollerPair(alpha).load(fr, fa);
      default ->
          (pair ? StaticLoad.angularPair(alpha) : StaticLoad.angularSingle(alpha)).load(fr, fa);
    };
  }

  private static Reckoner inducedThrust() {
    return Reckoner.of(
            ROOM, "bearing-induced-thrust", "Axial loads of two facing bearings without preload")
        .choice("type", "tapered: S = Fr/(2Y); angular: S = e Fr", "tapered", "angular")
        .number("FrA", Unit.N, "radial load of bearing A")
        .number("FrB", Unit.N, "radial load of bearing B")
        .number("factorA", Unit.ONE, "Y of A if tapered, e of A if angular")
        .number("factorB", Unit.ONE, "Y of B if tapered, e of B if angular")
        .number("Ka", Unit.N, "outer thrust towards B", "0")
        .result("FaA", Unit.N, "axial load of A")
        .result("FaB", Unit.N, "axial load of B")
        .source(Sources.INDUCED)
        .rule(
            g -> {
              boolean tapered = g.choice("type").equals("tapered");
              double a = Need.positive("factorA", g.number("factorA"));
              double b = Need.positive("factorB", g.number("factorB"));
              InducedThrust t =
                  InducedThrust.of(
                      g.number("FrA") * (tapered ? 1 / (2 * a) : a),
                      g.number("FrB") * (tapered ? 1 / (2 * b) : b),
                      g.number("Ka"));
              return Answer.start().with("FaA", t.first()).with("FaB", t.second());
            });
  }

  private static double exponent(Given g) {
    return g.has("p")
        ? g.number("p")
        : g.choice("type").equals("ball") ? RatingLife.BALL : RatingLife.ROLLER;
  }

  private static double equivalent(Given g) {
    if (g.has("P")) {
      return g.number("P");
    }
    if (!g.has("Fr")) {
      throw new IllegalArgumentException("missing input 'P': equivalent load (or Fr, Fa, X, Y)");
    }
    double fr = Need.notNegative("Fr", g.number("Fr"));
    double fa = Need.notNegative("Fa", g.number("Fa", 0));
    return g.number("X", 1) * g.number("V", 1) * fr + g.number("Y", 0) * fa;
  }

  private static Reckoner basicLife() {
    return Reckoner.of(ROOM, "bearing-life", "Basic rating life L10")
        .choice("type", "ball (p = 3) or roller (p = 10/3)", "ball", "roller")
        .number("C", Unit.N, "basic dynamic load rating")
        .optional("P", Unit.N, "equivalent dynamic load")
        .optional("Fr", Unit.N, "radial load, instead of P")
        .optional("Fa", Unit.N, "axial load, instead of P")
        .optional("X", Unit.ONE, "radial factor, instead of P")
        .optional("Y", Unit.ONE, "axial factor, instead of P")
        .optional("V", Unit.ONE, "rotation factor of old books, 1 in ISO 281")
        .optional("p", Unit.ONE, "exponent, if another is wanted")
        .optional("n", Unit.RPM, "speed, for the life in hours")
        .result("P", Unit.N, "equivalent load used")
        .result("L10", Unit.MILLION_REV, "basic rating life")
        .result("L10h", Unit.H, "basic rating life in running hours")
        .source(Sources.LIFE)
        .rule(
            g -> {
              double c = g.number("C");
              double p = equivalent(g);
              double revolutions = RatingLife.basic(c, p, exponent(g));
              Answer a =
                  Answer.start()
                      .with("P", p)
                      .with(
                          "L10",
                          Working.check(
                              "L10",
                              revolutions,
                              Unit.MILLION_REV,
                              "(C/P)^p*1000000",
                              g.term("C"),
                              Term.exact("P", p, Unit.N),
                              Term.exact("p", exponent(g))));
              if (g.has("n")) {
                a =
                    a.with(
                        "L10h",
                        Working.check(
                            "L10h",
                            RatingLife.time(revolutions, g.number("n")),
                            Unit.H,
                            "L10*2*pi/n",
                            Term.exact("L10", revolutions, Unit.MILLION_REV),
                            g.term("n")));
              }
              if (p > 0.5 * c) {
                a =
                    a.caution(
                        "P is above 0.5 C: the life formula does not hold; choose a larger bearing.");
              }
              return p < 0.01 * c
                  ? a.caution(
                      "P is below 0.01 C: balls or rollers may skid; the life is not the limit.")
                  : a;
            });
  }

  private static Reckoner requiredRating() {
    return Reckoner.of(ROOM, "bearing-required-rating", "Dynamic rating a wanted life asks for")
        .choice("type", "ball (p = 3) or roller (p = 10/3)", "ball", "roller")
        .number("P", Unit.N, "equivalent dynamic load")
        .optional("p", Unit.ONE, "exponent, if another is wanted")
        .optional("L10", Unit.MILLION_REV, "wanted life in million revolutions")
        .optional("L10h", Unit.H, "wanted life in hours, with n")
        .optional("n", Unit.RPM, "speed")
        .result("C", Unit.N, "basic dynamic load rating needed")
        .source(Sources.LIFE)
        .rule(
            g -> {
              double revolutions =
                  g.has("L10") ? g.number("L10") : g.number("L10h") * g.number("n") / (2 * Math.PI);
              return Answer.start()
                  .with("C", RatingLife.required(g.number("P"), revolutions, exponent(g)));
            });
  }

  private static RatingLife.Kind kind(Given g) {
    return switch (g.choice("type")) {
      case "radial_roller" -> RatingLife.Kind.RADIAL_ROLLER;
      case "thrust_ball" -> RatingLife.Kind.THRUST_BALL;
      case "thrust_roller" -> RatingLife.Kind.THRUST_ROLLER;
      default -> RatingLife.Kind.RADIAL_BALL;
    };
  }

  private static Reckoner modification() {
    return Reckoner.of(ROOM, "bearing-life-modification", "Life modification factor a_ISO")
        .choice(
            "type",
            "kind of bearing",
            "radial_ball",
            "radial_roller",
            "thrust_ball",
            "thrust_roller")
        .number("kappa", Unit.ONE, "viscosity ratio nu/nu1")
        .optional("u", Unit.ONE, "e_C C_u/P")
        .optional("eC", Unit.ONE, "contamination factor, 0 to 1")
        .optional("Cu", Unit.N, "fatigue load limit")
        .optional("P", Unit.N, "equivalent dynamic load")
        .result("a_ISO", Unit.ONE, "life modification factor, at most 50")
        .source(Sources.LIFE)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "a_ISO",
                        RatingLife.modification(kind(g), g.number("kappa"), contamination(g))));
  }

  private static double contamination(Given g) {
    if (g.has("u")) {
      return g.number("u");
    }
    return Need.within("eC", g.number("eC"), 0, 1)
        * Need.positive("Cu", g.number("Cu"))
        / Need.positive("P", g.number("P"));
  }

  private static Reckoner modifiedLife() {
    return Reckoner.of(ROOM, "bearing-modified-life", "Life with reliability, lubrication and dirt")
        .choice(
            "type",
            "kind of bearing",
            "radial_ball",
            "radial_roller",
            "thrust_ball",
            "thrust_roller")
        .number("C", Unit.N, "basic dynamic load rating")
        .number("P", Unit.N, "equivalent dynamic load")
        .number("n", Unit.RPM, "speed")
        .number("Dpw", Unit.MM, "pitch diameter")
        .number("nu", Unit.MM2_PER_S, "viscosity of the oil when warm")
        .number("eC", Unit.ONE, "contamination factor; an open headstock 0.3 to 0.5", "0.3")
        .number("reliability", Unit.PERCENT, "wanted reliability", "90")
        .optional("Cu", Unit.N, "fatigue load limit")
        .optional("C0", Unit.N, "basic static rating, if Cu is not given")
        .result("nu1", Unit.MM2_PER_S, "reference viscosity")
        .result("kappa", Unit.ONE, "viscosity ratio")
        .result("a1", Unit.ONE, "factor for reliability")
        .result("a_ISO", Unit.ONE, "life modification factor")
        .result("L10h", Unit.H, "basic rating life")
        .result("Lnmh", Unit.H, "modified rating life")
        .source(Sources.LIFE)
        .rule(RatingReckoners::modified);
  }

  private static Answer modified(Given g) {
    RatingLife.Kind kind = kind(g);
    boolean ball = kind == RatingLife.Kind.RADIAL_BALL || kind == RatingLife.Kind.THRUST_BALL;
    double pitch = g.number("Dpw");
    double limit;
    if (g.has("Cu")) {
      limit = Need.positive("Cu", g.number("Cu"));
    } else if (ball) {
      limit = RatingLife.fatigueLimitBall(g.number("C0"), pitch);
    } else {
      limit = RatingLife.fatigueLimitRoller(g.number("C0"), pitch);
    }
    double speed = g.number("n");
    double reference = RatingLife.referenceViscosity(speed, pitch);
    double kappa = Need.positive("nu", g.number("nu")) / reference;
    double a1 = RatingLife.reliability(100 * g.number("reliability"));
    double p = Need.positive("P", g.number("P"));
    double iso =
        RatingLife.modification(kind, kappa, Need.within("eC", g.number("eC"), 0, 1) * limit / p);
    double hours =
        RatingLife.time(
            RatingLife.basic(g.number("C"), p, ball ? RatingLife.BALL : RatingLife.ROLLER), speed);
    Answer a =
        Answer.start()
            .with("nu1", reference)
            .with("kappa", kappa)
            .with("a1", a1)
            .with("a_ISO", iso)
            .with("L10h", hours)
            .with("Lnmh", a1 * iso * hours);
    return a1 * iso * hours > 50_000 * 3600.0
        ? a.caution("Above 50 000 h: read it as not limited by life.")
        : a;
  }

  private static Reckoner reliability() {
    return Reckoner.of(ROOM, "bearing-reliability", "Life factor a_1 for reliability")
        .number("reliability", Unit.PERCENT, "wanted reliability, 90 to 99.9", "90")
        .result("a1", Unit.ONE, "factor on the life")
        .source(Sources.LIFE)
        .rule(
            g -> Answer.start().with("a1", RatingLife.reliability(100 * g.number("reliability"))));
  }

  private static Reckoner referenceViscosity() {
    return Reckoner.of(ROOM, "bearing-viscosity", "Reference viscosity nu_1 and ratio kappa")
        .number("n", Unit.RPM, "speed")
        .number("Dpw", Unit.MM, "pitch diameter")
        .optional("nu", Unit.MM2_PER_S, "viscosity of the oil when warm")
        .result("nu1", Unit.MM2_PER_S, "reference viscosity")
        .result("kappa", Unit.ONE, "viscosity ratio nu/nu1")
        .source(Sources.LIFE)
        .rule(
            g -> {
              double reference = RatingLife.referenceViscosity(g.number("n"), g.number("Dpw"));
              Answer a = Answer.start().with("nu1", reference);
              if (!g.has("nu")) {
                return a;
              }
              double kappa = g.number("nu") / reference;
              a = a.with("kappa", kappa);
              return kappa < 0.1
                  ? a.caution("kappa is below 0.1: outside the method; use a thicker oil.")
                  : a;
            });
  }

  private static Reckoner fatigueLimit() {
    return Reckoner.of(ROOM, "bearing-fatigue-limit", "Fatigue load limit C_u, simple rule")
        .choice("type", "ball or roller", "ball", "roller")
        .number("C0", Unit.N, "basic static rating")
        .number("Dpw", Unit.MM, "pitch diameter")
        .result("Cu", Unit.N, "fatigue load limit")
        .source(Sources.LIFE)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "Cu",
                        g.choice("type").equals("ball")
                            ? RatingLife.fatigueLimitBall(g.number("C0"), g.number("Dpw"))
                            : RatingLife.fatigueLimitRoller(g.number("C0"), g.number("Dpw"))));
  }

  private static Reckoner meanLoad() {
    return Reckoner.of(ROOM, "bearing-mean-load", "Mean load and speed of a varying duty")
        .choice("type", "ball (p = 3) or roller (p = 10/3)", "ball", "roller")
        .numbers("P", Unit.N, "load of each part")
        .numbers("n", Unit.RPM, "speed of each part")
        .numbers("t", Unit.H, "time, or share of time, of each part")
        .optional("p", Unit.ONE, "exponent, if another is wanted")
        .result("Pm", Unit.N, "mean load, weighed by revolutions")
        .result("nm", Unit.RPM, "mean speed")
        .source(Sources.MEAN_LOAD)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "Pm",
                        RatingLife.meanLoad(
                            g.numbers("P"), g.numbers("n"), g.numbers("t"), exponent(g)))
                    .with("nm", RatingLife.meanSpeed(g.numbers("n"), g.numbers("t"))));
  }

  private static Reckoner weibull() {
    return Reckoner.of(
            ROOM, "bearing-weibull-rating", "Textbook rating with a three-parameter life law")
        .number("F", Unit.N, "design load")
        .number("xD", Unit.ONE, "wanted life over rated life")
        .number("R", Unit.ONE, "reliability", "0.9")
        .number("x0", Unit.ONE, "least life over rated life", "0.02")
        .number("theta_x0", Unit.ONE, "theta - x0", "4.439")
        .number("b", Unit.ONE, "shape", "1.483")
        .result("C10", Unit.N, "rating needed")
        .source(Sources.WEIBULL)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "C10",
                        Working.check(
                            "C10",
                            RatingLife.weibullRating(
                                g.number("F"),
                                g.number("xD"),
                                g.number("R"),
                                g.number("x0"),
                                Need.positive("theta_x0", g.number("theta_x0")),
                                Need.positive("b", g.number("b"))),
                            Unit.N,
                            "F*(xD/(x0+theta_x0*(ln(1/R))^(1/b)))^(1/3)",
                            g.term("F"),
                            g.term("xD"),
                            g.term("x0"),
                            g.term("theta_x0"),
                            g.term("R"),
                            g.term("b")))
                    .caution("A textbook rule, not ISO 281; do not mix the two."));
  }
}
