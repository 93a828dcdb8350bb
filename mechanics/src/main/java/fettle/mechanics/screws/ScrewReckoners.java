package fettle.mechanics.screws;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.base.WorkshopRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Single calculations on feed screws. */
public final class ScrewReckoners {

  static final String GROUP = "screws";
  static final double SAFE_LOCKING = 1.3;
  private static final double DOUBT_OF_FRICTION = 0.3;
  private static final double STEEP = Math.toRadians(5);

  private ScrewReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all =
        new ArrayList<>(
            List.of(
                torque(),
                cases(),
                selfLocking(),
                collar(),
                slidingRatio(),
                friction(),
                slideForce(),
                handwheel(),
                dial(),
                hand()));
    all.addAll(ScrewStrengthReckoners.all());
    all.addAll(ScrewAccuracyReckoners.all());
    all.add(ScrewChange.reckoner());
    return WorkshopRange.kept(all);
  }

  private static Reckoner torque() {
    return GivenScrew.asked(
            Reckoner.of(GROUP, "screw-torque", "Moment of a feed screw both ways, and efficiency"))
        .optional("F", Unit.N, "load along the axis")
        .optional("mu", Unit.ONE, "coefficient of friction in the thread")
        .number("mu_c", Unit.ONE, "coefficient of friction of the thrust face", "0")
        .number("Dc", Unit.MM, "mean diameter of the thrust face", "0")
        .optional("Do", Unit.MM, "outer diameter of the thrust face, instead of Dc")
        .optional("Di", Unit.MM, "inner diameter of the thrust face, instead of Dc")
        .choice("wear", "state of the thrust face if Do and Di are given", "worn", "new")
        .number("T_drag", Unit.NM, "moment of gibs and seals that is there without load", "0")
        .optional("R", Unit.MM, "radius of the handle, for the effort at the rim")
        .result("lambda", Unit.DEG, "lead angle")
        .result("alpha_n", Unit.DEG, "half the flank angle square to the helix")
        .result("mu_lock", Unit.ONE, "least friction with which the thread holds")
        .result("T_raise", Unit.NM, "moment against the load, thrust face and drag counted")
        .result("T_lower", Unit.NM, "moment with the load, thrust face and drag counted")
        .result("T_raise_thread", Unit.NM, "moment against the load, thread alone")
        .result("T_lower_thread", Unit.NM, "moment with the load, thread alone")
        .result("T_collar", Unit.NM, "moment of the thrust face")
        .result("eta", Unit.ONE, "efficiency against the load, all losses counted")
        .result("eta_thread", Unit.ONE, "efficiency of the thread alone")
        .result("eta_back", Unit.ONE, "efficiency when the load drives; 0 if it cannot")
        .result("margin", Unit.ONE, "friction over the least that holds; safe from 1.3")
        .result("self_locking", Unit.ONE, "whether the thread alone holds the load")
        .result("F_rim", Unit.N, "effort at the rim against the load")
        .source(Sources.MOMENTS)
        .rule(ScrewReckoners::torqueOf);
  }

  private static Answer torqueOf(Given g) {
    GivenScrew given = GivenScrew.of(g);
    PowerScrew s = given.screw();
    Answer answer =
        Answer.start()
            .with("lambda", leadAngle(given, s))
            .with(
                "alpha_n",
                Working.check(
                    "alpha_n",
                    s.normalHalfAngle(),
                    Unit.DEG,
                    "atan(tan(alpha)*cos(lambda))",
                    given.alphaTerm(),
                    Term.exact("lambda", s.leadAngle(), Unit.DEG)))
            .with("mu_lock", s.lockingFriction());
    if (!g.has("mu")) {
      return answer;
    }
    double mu = g.number("mu");
    double force = g.number("F", 1000);
    if (!(force >= 0)) {
      throw new IllegalArgumentException("F = " + force + " N: expected 0 or more");
    }
    double collar = PowerScrew.collarMoment(force, g.number("mu_c"), collarDiameter(g));
    double drag = drag(g);
    double raise = s.raisingMoment(force, mu);
    double lower = s.loweringMoment(force, mu);
    double unit = s.raisingMoment(1, mu);
    answer =
        answer
            .with("eta_thread", s.efficiency(1, unit))
            .with("margin", mu / s.lockingFriction())
            .with("self_locking", mu >= s.lockingFriction() ? "yes" : "no");
    answer = efficiencies(answer, s, force, raise + collar + drag, lower + collar + drag);
    if (g.has("F")) {
      answer =
          answer
              .with("T_raise", raise + collar + drag)
              .with("T_lower", lower + collar + drag)
              .with("T_raise_thread", raising(given, s, force, mu))
              .with("T_lower_thread", lowering(given, s, force, mu))
              .with("T_collar", collar);
      answer = rim(g, answer, raise + collar + drag);
    }
    return cautions(answer, s, mu, unit);
  }

  private static Answer efficiencies(
      Answer answer, PowerScrew s, double force, double up, double down) {
    double eta = force == 0 ? 0 : s.efficiency(force, up);
    double back = force == 0 ? 0 : Math.max(0, -down * 2 * Math.PI / (force * s.lead()));
    return answer.with("eta", eta).with("eta_back", back);
  }

  private static Answer rim(Given g, Answer answer, double moment) {
    if (!g.has("R")) {
      return answer;
    }
    double radius = g.number("R");
    if (!(radius > 0)) {
      throw new IllegalArgumentException("R = " + radius + " mm: expected more than 0");
    }
    return answer.with("F_rim", moment / radius);
  }

  static double drag(Given g) {
    double drag = g.number("T_drag");
    if (!(drag >= 0)) {
      throw new IllegalArgumentException("T_drag = " + drag + " N mm: expected 0 or more");
    }
    return drag;
  }

  private static double collarDiameter(Given g) {
    if (!g.has("Do") && !g.has("Di")) {
      return g.number("Dc");
    }
    double outer = g.number("Do");
    double inner = g.number("Di");
    return g.choice("wear").equals("worn")
        ? PowerScrew.wornCollar(outer, inner)
        : PowerScrew.newCollar(outer, inner);
  }

  private static Working leadAngle(GivenScrew given, PowerScrew s) {
    return Working.check(
        "lambda", s.leadAngle(), Unit.DEG, "atan(Ph/(pi*d2))", given.leadTerm(), given.d2Term());
  }

  private static Working raising(GivenScrew given, PowerScrew s, double force, double mu) {
    return moment(
        given,
        s,
        "T_raise_thread",
        s.raisingMoment(force, mu),
        "F*d2/2*(cos(alpha_n)*tan(lambda) + mu)/(cos(alpha_n) - mu*tan(lambda))",
        force,
        mu);
  }

  private static Working lowering(GivenScrew given, PowerScrew s, double force, double mu) {
    return moment(
        given,
        s,
        "T_lower_thread",
        s.loweringMoment(force, mu),
        "F*d2/2*(mu - cos(alpha_n)*tan(lambda))/(cos(alpha_n) + mu*tan(lambda))",
        force,
        mu);
  }

  private static Working moment(
      GivenScrew given,
      PowerScrew s,
      String symbol,
      double value,
      String formula,
      double force,
      double mu) {
    return Working.check(
        symbol,
        value,
        Unit.NM,
        formula,
        Term.exact("F", force, Unit.N),
        given.d2Term(),
        Term.exact("alpha_n", s.normalHalfAngle(), Unit.RAD),
        Term.exact("lambda", s.leadAngle(), Unit.RAD),
        new Term("mu", mu, Unit.ONE, DOUBT_OF_FRICTION * mu));
  }

  private static Answer cautions(Answer answer, PowerScrew s, double mu, double unit) {
    Answer said = answer;
    if (mu < 0.02 || mu > 0.6) {
      said = said.caution("mu lies outside 0.02 to 0.6, where sliding threads are found");
    }
    if (s.efficiency(1, unit) > 0.5) {
      said = said.caution("efficiency above 0.5: this screw cannot hold by itself");
    }
    if (mu < SAFE_LOCKING * s.lockingFriction()) {
      said =
          said.caution(
              "friction is below 1.3 times the least that holds: the load may creep back, most of"
                  + " all under vibration; fit a lock or a brake");
    }
    return s.leadAngle() > STEEP
        ? said.caution("lead angle above 5 deg: a vertical or heavy slide needs a lock or brake")
        : said;
  }

  private static Reckoner cases() {
    return GivenScrew.asked(
            Reckoner.of(
                GROUP, "screw-cases", "Moments with low, middle and high friction of a pair"))
        .number("F", Unit.N, "load along the axis")
        .choice("pair", "materials of screw and nut", Pair.names())
        .choice("state", "state of the flanks", "oiled", "dry")
        .result("mu", Unit.ONE, "coefficient of friction: low, middle, high")
        .result("T_raise", Unit.NM, "moment against the load: low, middle, high")
        .result("T_lower", Unit.NM, "moment with the load: low, middle, high")
        .result("eta", Unit.ONE, "efficiency: low, middle, high friction")
        .result("mu_lock", Unit.ONE, "least friction with which the thread holds")
        .result("margin", Unit.ONE, "low friction over the least that holds; safe from 1.3")
        .result("verdict", Unit.ONE, "whether the screw can be trusted to hold")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              PowerScrew s = GivenScrew.of(g).screw();
              Pair pair = Pair.of(g.choice("pair"));
              Interval range =
                  pair.friction(
                      Pair.Lubrication.valueOf(g.choice("state").toUpperCase(Locale.ROOT)));
              double[] mu = {range.low(), range.middle(), range.high()};
              double force = g.number("F");
              double[] up = new double[3];
              double[] down = new double[3];
              double[] eta = new double[3];
              for (int i = 0; i < 3; i++) {
                up[i] = s.raisingMoment(force, mu[i]);
                down[i] = s.loweringMoment(force, mu[i]);
                eta[i] = s.efficiency(1, s.raisingMoment(1, mu[i]));
              }
              double margin = range.low() / s.lockingFriction();
              return Answer.start()
                  .with("mu", mu)
                  .with("T_raise", up)
                  .with("T_lower", down)
                  .with("eta", eta)
                  .with("mu_lock", s.lockingFriction())
                  .with("margin", margin)
                  .with("verdict", verdict(margin));
            });
  }

  private static String verdict(double margin) {
    return margin >= SAFE_LOCKING
        ? "holds with a margin"
        : margin >= 1 ? "holds, but may creep under vibration" : "does not hold by itself";
  }

  private static Reckoner selfLocking() {
    return GivenScrew.asked(Reckoner.of(GROUP, "self-locking", "Whether a screw holds its load"))
        .number("mu", Unit.ONE, "lowest coefficient of friction in the thread")
        .result("mu_lock", Unit.ONE, "least friction with which the thread holds")
        .result("margin", Unit.ONE, "friction over the least that holds; safe from 1.3")
        .result("backdrives", Unit.ONE, "1 if the load turns the screw, 0 if not")
        .result("lambda", Unit.DEG, "lead angle")
        .result("rho", Unit.DEG, "friction angle of the thread, mu over cos alpha_n")
        .result("verdict", Unit.ONE, "in words")
        .source(Sources.MOMENTS)
        .rule(
            g -> {
              GivenScrew given = GivenScrew.of(g);
              PowerScrew s = given.screw();
              double mu = g.number("mu");
              double down = s.loweringMoment(1, mu);
              double margin = mu / s.lockingFriction();
              Answer answer =
                  Answer.start()
                      .with(
                          "mu_lock",
                          Working.check(
                              "mu_lock",
                              s.lockingFriction(),
                              Unit.ONE,
                              "cos(alpha_n)*Ph/(pi*d2)",
                              Term.exact("alpha_n", s.normalHalfAngle(), Unit.RAD),
                              given.leadTerm(),
                              given.d2Term()))
                      .with("margin", margin)
                      .with("backdrives", down < 0 ? 1 : 0)
                      .with("lambda", s.leadAngle())
                      .with("rho", Math.atan(mu / Math.cos(s.normalHalfAngle())))
                      .with("verdict", verdict(margin));
              return cautions(answer, s, mu, s.raisingMoment(1, mu));
            });
  }

  private static Reckoner collar() {
    return Reckoner.of(GROUP, "collar-torque", "Moment of a thrust face")
        .number("F", Unit.N, "load along the axis")
        .number("mu_c", Unit.ONE, "coefficient of friction; rolling thrust bearing about 0.0015")
        .number("Do", Unit.MM, "outer diameter")
        .number("Di", Unit.MM, "inner diameter")
        .choice("wear", "state of the face", "worn", "new")
        .result("Dc", Unit.MM, "mean diameter")
        .result("T_collar", Unit.NM, "moment")
        .source(Sources.MOMENTS)
        .rule(
            g -> {
              double mean = collarDiameter(g);
              return Answer.start()
                  .with("Dc", mean)
                  .with(
                      "T_collar",
                      Working.check(
                          "T_collar",
                          PowerScrew.collarMoment(g.number("F"), g.number("mu_c"), mean),
                          Unit.NM,
                          "mu_c*F*Dc/2",
                          g.term("mu_c"),
                          g.term("F"),
                          Term.exact("Dc", mean, Unit.MM)));
            });
  }

  private static Reckoner slidingRatio() {
    return GivenScrew.asked(
            Reckoner.of(GROUP, "sliding-ratio", "Way the flanks slide for each mm of travel"))
        .result("ratio", Unit.ONE, "flank way over travel")
        .source(Sources.MOMENTS)
        .rule(
            g -> {
              GivenScrew given = GivenScrew.of(g);
              PowerScrew s = new PowerScrew(given.d2(), given.lead(), g.number("alpha", 0));
              return Answer.start()
                  .with(
                      "ratio",
                      Working.check(
                          "ratio",
                          s.slidingRatio(),
                          Unit.ONE,
                          "pi*d2/(Ph*cos(atan(Ph/(pi*d2))))",
                          given.d2Term(),
                          given.leadTerm()));
            });
  }

  private static Reckoner friction() {
    return Reckoner.of(GROUP, "thread-friction", "Range of friction of screw and nut materials")
        .choice("pair", "materials of screw and nut", Pair.names())
        .choice("state", "state of the flanks", "oiled", "dry")
        .result("mu_low", Unit.ONE, "low: for holding")
        .result("mu_middle", Unit.ONE, "middle: for the feel")
        .result("mu_high", Unit.ONE, "high: for the hand or motor")
        .source(Sources.FRICTION)
        .rule(
            g -> {
              Interval range =
                  Pair.of(g.choice("pair"))
                      .friction(
                          Pair.Lubrication.valueOf(g.choice("state").toUpperCase(Locale.ROOT)));
              return Answer.start()
                  .with("mu_low", range.low())
                  .with("mu_middle", range.middle())
                  .with("mu_high", range.high());
            });
  }

  private static Reckoner slideForce() {
    return Reckoner.of(GROUP, "screw-slide-force", "Force that a screw must give a slide")
        .number("F_cut", Unit.N, "cutting force along the screw", "0")
        .number("mu_s", Unit.ONE, "coefficient of friction of the ways")
        .number("W", Unit.N, "weight of the slide and what it carries", "0")
        .number("N", Unit.N, "other normal forces: tilting and gib, as a sum", "0")
        .result("F", Unit.N, "force along the screw")
        .source(Sources.MOMENTS)
        .rule(
            g -> {
              if (!(g.number("mu_s") >= 0) || !(g.number("W") >= 0) || !(g.number("N") >= 0)) {
                throw new IllegalArgumentException("mu_s, W and N: expected 0 or more");
              }
              return Answer.start()
                  .with(
                      "F",
                      Working.of(
                          "F",
                          Unit.N,
                          "F_cut + mu_s*(W + N)",
                          g.term("F_cut"),
                          g.term("mu_s"),
                          g.term("W"),
                          g.term("N")));
            });
  }

  private static Reckoner handwheel() {
    return Reckoner.of(GROUP, "handwheel-effort", "Effort at the rim, and what a hand can do")
        .number("T", Unit.NM, "moment on the screw")
        .number("R", Unit.MM, "radius at which the hand pushes")
        .result("F_rim", Unit.N, "effort at the rim")
        .result("feel", Unit.ONE, "in words")
        .result("T_hand_low", Unit.NM, "moment a hand gives at leisure, 10 N at the rim")
        .result("T_hand_high", Unit.NM, "moment a hand gives for a short while, 60 N at the rim")
        .source(Sources.HAND)
        .rule(ScrewReckoners::handwheelOf);
  }

  private static Answer handwheelOf(Given g) {
    double radius = g.number("R");
    double moment = g.number("T");
    if (!(radius > 0) || !(moment >= 0)) {
      throw new IllegalArgumentException("R: expected more than 0 mm, T: 0 or more");
    }
    double force = moment / radius;
    return Answer.start()
        .with("F_rim", Working.check("F_rim", force, Unit.N, "T/R", g.term("T"), g.term("R")))
        .with("feel", feel(force))
        .with("T_hand_low", 10 * radius)
        .with("T_hand_high", 60 * radius);
  }

  static String feel(double force) {
    return force < 3
        ? "loose: the slide may walk under cut"
        : force < 10
            ? "light"
            : force <= 30
                ? "comfortable for long"
                : force <= 60 ? "heavy, for a short while" : "too heavy for a hand";
  }

  private static Reckoner dial() {
    return GivenScrew.asked(Reckoner.of(GROUP, "screw-dial", "Lines of the dial of a feed screw"))
        .exact("line", Unit.MM, "travel of the slide for one line")
        .number("D", Unit.MM, "diameter of the dial")
        .result("N", Unit.LINES, "number of lines")
        .result("spacing", Unit.MM, "distance of the lines on the rim")
        .result("diameter_change", Unit.MM, "change of the work's diameter for one line")
        .source(Sources.DIAL)
        .rule(ScrewReckoners::dialOf);
  }

  private static Answer dialOf(Given g) {
    GivenScrew given = GivenScrew.of(g);
    double lead = given.lead();
    double line = g.number("line");
    double diameter = g.number("D");
    if (!(line > 0) || !(diameter > 0) || !(lead > 0)) {
      throw new IllegalArgumentException("line, D and lead: expected more than 0 mm");
    }
    double lines = lead / line;
    double spacing = Math.PI * diameter / lines;
    Answer answer =
        Answer.start()
            .with("N", lines)
            .with("spacing", spacing)
            .with("diameter_change", 2 * line)
            .caution("say on the dial whether it shows radius or diameter");
    if (Math.abs(lines - Math.rint(lines)) > 1e-9 * lines) {
      answer = answer.caution("the lines do not close: the lead is no whole multiple of a line");
    }
    return spacing < 0.7 ? answer.caution("lines closer than 0.7 mm cannot be read") : answer;
  }

  private static Reckoner hand() {
    return Reckoner.of(GROUP, "screw-hand", "Hand of a feed screw")
        .choice("nut_on", "part that carries the nut", "slide", "base")
        .choice("clockwise", "where a clockwise turn sends the slide", "away", "towards")
        .result("hand", Unit.ONE, "hand of the thread")
        .source(Sources.HAND)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "hand",
                        HandOfScrew.needed(
                                HandOfScrew.NutOn.valueOf(
                                    g.choice("nut_on").toUpperCase(Locale.ROOT)),
                                HandOfScrew.Clockwise.valueOf(
                                    g.choice("clockwise").toUpperCase(Locale.ROOT)))
                            .name()
                            .toLowerCase(Locale.ROOT)));
  }
}
