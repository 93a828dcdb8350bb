package fettle.mechanics.screws;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Stiffness, play and lead error of feed screws. */
final class ScrewAccuracyReckoners {

  private static final String GROUP = ScrewReckoners.GROUP;

  private ScrewAccuracyReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        stiffness(),
        chain(),
        windUp(),
        play(),
        lostMotion(),
        antiBacklash(),
        splitNut(),
        pitchErrorFit(),
        leadError(),
        plasticNut());
  }

  private static Reckoner stiffness() {
    return GivenScrew.asked(
            Reckoner.of(GROUP, "screw-stiffness", "Stiffness of a feed screw along its axis"))
        .number("E", Unit.MPA, "modulus of elasticity of the screw", "210000")
        .number("E_nut", Unit.MPA, "modulus of elasticity of the nut", "105000")
        .optional("d_eff", Unit.MM, "effective diameter; (d2 + d3)/2 of the thread if left out")
        .number("x", Unit.MM, "distance from the thrust bearing to the nut")
        .optional("L", Unit.MM, "distance between the thrust bearings, if there are two")
        .choice("support", "where thrust is taken", "one_end_thrust", "both_ends_thrust")
        .optional("k_thrust", Unit.N_PER_MICRON, "stiffness of the thrust bearing")
        .optional("k_bracket", Unit.N_PER_MICRON, "stiffness of the bracket")
        .result("k_screw", Unit.N_PER_MICRON, "stiffness of the screw alone")
        .result("k_thread", Unit.N_PER_MICRON, "stiffness of the thread contact, an estimate")
        .result("k", Unit.N_PER_MICRON, "stiffness of all that was given, in series")
        .source(Sources.STIFFNESS)
        .rule(ScrewAccuracyReckoners::stiffnessOf);
  }

  private static Answer stiffnessOf(Given g) {
    GivenScrew given = GivenScrew.of(g);
    var thread = given.thread();
    if (thread == null && !g.has("d_eff")) {
      throw new IllegalArgumentException(
          "missing input 'thread': give a designation or the effective diameter d_eff");
    }
    double diameter =
        thread == null
            ? g.number("d_eff")
            : g.number("d_eff", (given.d2() + thread.profile().d3()) / 2);
    double area = Math.PI / 4 * diameter * diameter;
    double e = g.number("E");
    double x = g.number("x");
    Term d = Term.exact("d_eff", diameter, Unit.MM);
    Working screw;
    if (g.choice("support").equals("both_ends_thrust")) {
      double k = AxialStiffness.heldAtBothEnds(e, area, x, g.number("L"));
      screw =
          Working.check(
              "k_screw",
              k,
              Unit.N_PER_MICRON,
              "E*pi/4*d_eff^2*L/(x*(L - x))",
              g.term("E"),
              d,
              g.term("L"),
              g.term("x"));
    } else {
      double k = AxialStiffness.heldAtOneEnd(e, area, x);
      screw =
          Working.check(
              "k_screw", k, Unit.N_PER_MICRON, "E*pi/4*d_eff^2/x", g.term("E"), d, g.term("x"));
    }
    List<Double> springs = new ArrayList<>(List.of(screw.value()));
    Answer answer = Answer.start().with("k_screw", screw);
    if (thread != null) {
      double contact =
          AxialStiffness.thread(thread.profile().d(), thread.profile().d3(), e, g.number("E_nut"));
      springs.add(contact);
      answer = answer.with("k_thread", contact);
    }
    if (g.has("k_thrust")) {
      springs.add(g.number("k_thrust"));
    }
    if (g.has("k_bracket")) {
      springs.add(g.number("k_bracket"));
    }
    return answer
        .with("k", AxialStiffness.inSeries(springs))
        .caution(
            "stiffness is known to a quarter or so; bracket and thrust face are often the"
                + " soft links");
  }

  private static Reckoner chain() {
    return Reckoner.of(GROUP, "stiffness-chain", "Springs one behind the other")
        .numbers("k", Unit.N_PER_MICRON, "stiffness of each link")
        .input(
            "names",
            fettle.mechanics.base.Input.Kind.WORDS,
            Unit.ONE,
            "names of the links",
            null,
            false)
        .result("k_total", Unit.N_PER_MICRON, "stiffness of the chain")
        .result("shares", Unit.PERCENT, "share of each link in the compliance, in the order given")
        .result("sorted", Unit.ONE, "links from soft to stiff")
        .source(Sources.STIFFNESS)
        .rule(ScrewAccuracyReckoners::chainOf);
  }

  private static Answer chainOf(Given g) {
    double[] k = g.numbers("k");
    if (k.length > 100) {
      throw new IllegalArgumentException("k: expected at most 100 links");
    }
    double total = AxialStiffness.inSeries(java.util.Arrays.stream(k).boxed().toList());
    List<String> names =
        g.has("names")
            ? g.words("names")
            : IntStream.rangeClosed(1, k.length).mapToObj(i -> "link " + i).toList();
    if (names.size() != k.length) {
      throw new IllegalArgumentException(
          "names: expected as many as there are links, " + k.length + ", found " + names.size());
    }
    double[] shares = java.util.Arrays.stream(k).map(v -> total / v).toArray();
    List<String> sorted =
        IntStream.range(0, k.length)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> -shares[i]))
            .map(i -> String.format(Locale.ROOT, "%s: %.1f %%", names.get(i), 100 * shares[i]))
            .toList();
    return Answer.start().with("k_total", total).with("shares", shares).with("sorted", sorted);
  }

  private static Reckoner windUp() {
    return Reckoner.of(GROUP, "screw-windup", "Travel lost by the twist of a screw")
        .number("T", Unit.NM, "moment carried")
        .number("G", Unit.MPA, "shear modulus", "80769")
        .number("d3", Unit.MM, "core diameter")
        .number("L", Unit.MM, "length from handle to nut")
        .number("Ph", Unit.MM, "lead")
        .result("loss", Unit.MICRON, "travel lost")
        .result("twist", Unit.DEG, "twist of the screw")
        .source(Sources.STIFFNESS)
        .rule(
            g -> {
              SlenderScrew s = new SlenderScrew(g.number("d3"), g.number("L"));
              double loss = s.windUp(g.number("T"), g.number("G"), g.number("Ph"));
              return Answer.start()
                  .with(
                      "loss",
                      Working.check(
                          "loss",
                          loss,
                          Unit.MICRON,
                          "T*L*Ph/(2*pi*G*pi*d3^4/32)",
                          g.term("T"),
                          g.term("L"),
                          g.term("Ph"),
                          g.term("G"),
                          g.term("d3")))
                  .with("twist", loss * 2 * Math.PI / g.number("Ph"));
            });
  }

  private static Reckoner play() {
    return GivenScrew.asked(Reckoner.of(GROUP, "thread-play", "Axial play of a nut on its screw"))
        .optional("D2", Unit.MM, "pitch diameter of the nut; basic size if left out")
        .result("play", Unit.MM, "play along the axis, both flanks together")
        .result("lines_lost", Unit.DEG, "turn of the handle lost")
        .source(Sources.PLAY)
        .rule(ScrewAccuracyReckoners::playOf);
  }

  private static Answer playOf(Given g) {
    GivenScrew given = GivenScrew.of(g);
    var thread = given.thread();
    double nut = thread == null ? g.number("D2") : g.number("D2", thread.profile().d2());
    double play = Play.axial(nut, given.d2(), given.halfAngle());
    Answer answer =
        Answer.start()
            .with(
                "play",
                Working.check(
                    "play",
                    play,
                    Unit.MM,
                    "(D2 - d2)*tan(alpha)",
                    Term.exact("D2", nut, Unit.MM),
                    given.d2Term(),
                    given.alphaTerm()));
    if (thread != null || g.has("Ph") || g.has("P")) {
      answer = answer.with("lines_lost", play * 2 * Math.PI / given.lead());
    }
    if (play < 0) {
      return answer.caution("the nut is tighter than the screw: it will not go on");
    }
    return play > 0.05
        ? answer.caution(
            "more than 0.05 mm of play is useless on a measuring slide: fit the nut to the screw,"
                + " or take an adjustable nut")
        : answer;
  }

  private static Reckoner lostMotion() {
    return Reckoner.of(GROUP, "lost-motion", "Lost motion of a screw drive on reversal")
        .number("thread_play", Unit.MM, "play of nut on screw")
        .number("thrust_play", Unit.MM, "play of the thrust bearing", "0")
        .number("key", Unit.DEG, "turn of handle against screw", "0")
        .number("Ph", Unit.MM, "lead")
        .number("F", Unit.N, "force that changes sign: friction of the slide", "0")
        .number("k", Unit.N_PER_MICRON, "stiffness of the chain", "20")
        .optional("line", Unit.MM, "travel for one line of the dial")
        .result("lost", Unit.MM, "lost motion")
        .result("angle", Unit.DEG, "turn of the handle lost")
        .result("lines_lost", Unit.LINES, "lines of the dial lost")
        .source(Sources.PLAY)
        .rule(ScrewAccuracyReckoners::lostMotionOf);
  }

  private static Answer lostMotionOf(Given g) {
    double lead = g.number("Ph");
    double lost =
        Play.lostMotion(
            g.number("thread_play") + g.number("thrust_play"),
            g.number("key"),
            lead,
            g.number("F"),
            g.number("k"));
    Answer answer =
        Answer.start()
            .with(
                "lost",
                Working.check(
                    "lost",
                    lost,
                    Unit.MM,
                    "thread_play + thrust_play + key*Ph/(2*pi) + 2*F/k",
                    g.term("thread_play"),
                    g.term("thrust_play"),
                    g.term("key"),
                    g.term("Ph"),
                    g.term("F"),
                    g.term("k")))
            .with("angle", lost * 2 * Math.PI / lead);
    if (!g.has("line")) {
      return answer;
    }
    double line = g.number("line");
    if (!(line > 0)) {
      throw new IllegalArgumentException("line = " + line + " mm: expected more than 0");
    }
    return answer.with("lines_lost", lost / line);
  }

  private static Reckoner antiBacklash() {
    return GivenScrew.asked(Reckoner.of(GROUP, "anti-backlash", "Nut in two halves pressed apart"))
        .number("F0", Unit.N, "force between the halves")
        .number("mu", Unit.ONE, "coefficient of friction in the thread")
        .number("F_reverse", Unit.N, "greatest force that reverses", "0")
        .result("T_pre", Unit.NM, "moment that turns the unloaded screw")
        .result("opens", Unit.ONE, "whether the reversing force opens the nut")
        .result("offset_per_deg", Unit.MM, "offset for a degree of a turnable half")
        .source(Sources.MOMENTS)
        .rule(
            g -> {
              PowerScrew s = GivenScrew.of(g).screw();
              double preload = g.number("F0");
              if (!(preload >= 0)) {
                throw new IllegalArgumentException("F0 = " + preload + " N: expected 0 or more");
              }
              boolean opens = g.number("F_reverse") > preload;
              Answer answer =
                  Answer.start()
                      .with("T_pre", s.preloadMoment(preload, g.number("mu")))
                      .with("opens", opens ? "yes" : "no")
                      .with("offset_per_deg", s.lead() / 360);
              return opens
                  ? answer.caution(
                      "a spring nut must press harder than the greatest reversing"
                          + " force, or it opens under cut")
                  : answer;
            });
  }

  private static Reckoner splitNut() {
    return Reckoner.of(GROUP, "split-nut", "Play taken up by closing a split nut")
        .number("closing", Unit.MM, "closing of the bore, on the diameter")
        .number("alpha", Unit.DEG, "half the flank angle")
        .result("play", Unit.MM, "axial play taken up")
        .source(Sources.PLAY)
        .rule(
            g -> {
              double alpha = g.number("alpha");
              if (!(alpha >= 0) || !(alpha < 1)) {
                throw new IllegalArgumentException("alpha: expected 0 to 57 deg");
              }
              return Answer.start()
                  .with(
                      "play",
                      Working.of(
                          "play",
                          Unit.MM,
                          "closing*tan(alpha)",
                          g.term("closing"),
                          g.term("alpha")))
                  .caution("set it at the tightest place of the screw, or it binds there");
            });
  }

  private static Reckoner pitchErrorFit() {
    return Reckoner.of(
            GROUP, "pitch-error-fit", "Pitch-diameter difference that a pitch error uses up")
        .number("dP", Unit.MM, "pitch error over the length of the nut")
        .number("alpha", Unit.DEG, "half the flank angle")
        .result("dd2", Unit.MM, "diametral equivalent")
        .source(Sources.LEAD)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "dd2",
                        Working.check(
                            "dd2",
                            Play.diametralEquivalent(g.number("dP"), g.number("alpha")),
                            Unit.MM,
                            "abs(dP)/tan(alpha)",
                            g.term("dP"),
                            g.term("alpha"))));
  }

  private static Reckoner leadError() {
    return Reckoner.of(GROUP, "lead-error", "Lead error of a screw referred to the travel")
        .number("x", Unit.MM, "travel")
        .number("slope", Unit.MICRON_PER_M, "progressive error of the screw, signed", "0")
        .number("cyclic", Unit.MICRON, "amplitude of the error within a turn", "0")
        .number("dT", Unit.K, "temperature of the screw above 20 °C", "0")
        .number("expansion", Unit.PPM_PER_K, "expansion of the screw", "11.5")
        .result("progressive", Unit.MICRON, "what dial or scale can correct")
        .result("thermal", Unit.MICRON, "growth of the screw")
        .result("worst", Unit.MICRON, "greatest error over the travel")
        .source(Sources.LEAD)
        .rule(
            g -> {
              double x = g.number("x");
              double cyclic = g.number("cyclic");
              if (!(cyclic >= 0)) {
                throw new IllegalArgumentException("cyclic: expected 0 or more");
              }
              double progressive = g.number("slope") * x;
              double thermal = g.number("expansion") * g.number("dT") * x;
              return Answer.start()
                  .with("progressive", progressive)
                  .with("thermal", thermal)
                  .with("worst", Math.abs(progressive + thermal) + cyclic);
            });
  }

  private static Reckoner plasticNut() {
    return Reckoner.of(GROUP, "plastic-nut", "Growth of a plastic nut and the clearance it needs")
        .number("d2", Unit.MM, "pitch diameter of the screw")
        .number("dT", Unit.K, "warming of the nut", "15")
        .number("expansion", Unit.PPM_PER_K, "expansion of the plastic (POM 110 to 120)", "115")
        .number("expansion_screw", Unit.PPM_PER_K, "expansion of the screw", "11.5")
        .number("swelling", Unit.PERCENT, "growth by water (POM about 0.2)", "0.2")
        .result("growth", Unit.MM, "closing of the bore if the nut is held round its outside")
        .source(fettle.mechanics.base.Source.memory("data sheets of POM-C", "expansion, swelling"))
        .rule(
            g -> {
              double d2 = g.number("d2");
              if (!(d2 > 0) || !(Math.abs(g.number("swelling")) < 0.1)) {
                throw new IllegalArgumentException(
                    "d2: expected more than 0 mm; swelling: below 10 %");
              }
              Answer answer =
                  Answer.start()
                      .with(
                          "growth",
                          Working.of(
                              "growth",
                              Unit.MM,
                              "d2*((expansion - expansion_screw)*dT + swelling)",
                              g.term("d2"),
                              g.term("expansion"),
                              g.term("expansion_screw"),
                              g.term("dT"),
                              g.term("swelling")));
              return answer.caution(
                  "leave 0.05 to 0.1 mm more on the pitch diameter, or split the nut and press it"
                      + " with a spring; a rigid preload creeps away");
            });
  }
}
