package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Single calculations on play, once-per-turn errors, hand force, and the budget of a move. */
final class PlayReckoners {

  private PlayReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        rackPlay(), trainPlay(), runout(), onceAroundSum(), rackError(), slideForce(), budget());
  }

  private static Reckoner rackPlay() {
    Reckoner.Draft draft =
        Reckoner.of(
                TrainReckoners.GROUP,
                "carriage-play",
                "Play at the carriage from a gear pair and a rack, the handwheel held")
            .number("j_1", Unit.MM, "play of the pair at the pitch line")
            .number("d_2", Unit.MM, "pitch diameter of the driven gear")
            .number("d_3", Unit.MM, "pitch diameter of the rack pinion")
            .number("j_rack", Unit.MM, "play between rack and pinion");
    return ends(draft)
        .source(Sources.PLAY)
        .rule(
            g -> {
              Play.Mesh mesh = new Play.Mesh(g.number("j_1"), g.number("d_2"), g.number("d_2"));
              Working play =
                  Working.check(
                      "J",
                      Play.atRack(List.of(mesh), g.number("d_3"), g.number("j_rack")),
                      Unit.MM,
                      "j_1*d_3/d_2+j_rack",
                      g.term("j_1"),
                      g.term("d_3"),
                      g.term("d_2"),
                      g.term("j_rack"));
              return ends(g, Answer.start().with("J", play), play);
            });
  }

  private static Reckoner.Draft ends(Reckoner.Draft draft) {
    return draft
        .optional("T", Unit.MM, "travel per turn of the handwheel")
        .optional("v", Unit.MM, "value of one division of the dial")
        .result("J", Unit.MM, "play at the carriage")
        .result("angle", Unit.DEG, "lost motion of the handwheel")
        .result("divisions", Unit.ONE, "lost motion on the dial, in divisions");
  }

  private static Answer ends(Given g, Answer start, Working play) {
    Answer answer = start;
    if (g.has("T")) {
      Teeth.positive("T", "mm", g.number("T"));
      answer =
          answer.with(
              "angle", Working.of("angle", Unit.DEG, "2*pi*J/T", Term.of(play), g.term("T")));
    }
    if (g.has("v")) {
      Teeth.positive("v", "mm", g.number("v"));
      answer =
          answer.with(
              "divisions", Working.of("divisions", Unit.ONE, "J/v", Term.of(play), g.term("v")));
    }
    return answer;
  }

  private static Reckoner trainPlay() {
    Reckoner.Draft draft =
        Reckoner.of(
                TrainReckoners.GROUP,
                "train-play",
                "Play at the slide of a train of any number of stages")
            .rows(
                "meshes",
                Unit.MM,
                "one row a mesh from the handwheel on: play, driver diameter, driven diameter;"
                    + " rows separated by semicolons")
            .optional("d_rack", Unit.MM, "pitch diameter of the rack pinion")
            .number("j_rack", Unit.MM, "play between rack and pinion", "0")
            .optional("lead", Unit.MM, "lead of the screw, if the train ends in one")
            .number("j_nut", Unit.MM, "play of nut and thrust faces", "0");
    return ends(draft).source(Sources.PLAY).rule(PlayReckoners::trainPlay);
  }

  private static Answer trainPlay(Given g) {
    if (g.has("d_rack") == g.has("lead")) {
      throw new IllegalArgumentException(
          "give either the rack pinion's diameter d_rack or the lead of the screw");
    }
    List<Play.Mesh> meshes = new ArrayList<>();
    for (double[] row : g.rows("meshes")) {
      if (row.length != 3) {
        throw new IllegalArgumentException(
            "meshes: each row needs play, driver diameter, driven diameter; found "
                + row.length
                + " numbers");
      }
      meshes.add(new Play.Mesh(row[0], row[1], row[2]));
    }
    Term shaft = Term.exact("phi", Play.atLastShaft(meshes), Unit.RAD);
    Working play =
        g.has("d_rack")
            ? Working.check(
                "J",
                Play.atRack(meshes, g.number("d_rack"), g.number("j_rack")),
                Unit.MM,
                "phi*d_rack/2+j_rack",
                shaft,
                g.term("d_rack"),
                g.term("j_rack"))
            : Working.check(
                "J",
                Play.atScrew(meshes, g.number("lead"), g.number("j_nut")),
                Unit.MM,
                "phi*lead/(2*pi)+j_nut",
                shaft,
                g.term("lead"),
                g.term("j_nut"));
    return ends(g, Answer.start().with("J", play), play);
  }

  private static Reckoner runout() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "wheel-eccentricity",
            "Error of the carriage from an eccentric wheel, once a turn")
        .number("e", Unit.MM, "eccentricity: half the run-out F_r")
        .number("alpha_w", Unit.DEG, "working pressure angle", "20")
        .number("d", Unit.MM, "pitch diameter of the wheel on whose shaft the rack pinion is", "1")
        .number(
            "d_3",
            Unit.MM,
            "pitch diameter of the rack pinion; leave both for the pinion itself",
            "1")
        .optional("T", Unit.MM, "travel of the carriage in one turn of the wheel")
        .result("pp", Unit.MM, "peak-to-peak error at the carriage")
        .result("mesh", Unit.MM, "peak-to-peak error at the wheel's pitch line")
        .result("period", Unit.MM, "travel after which it comes back")
        .source(Sources.ECCENTRICITY)
        .rule(
            g -> {
              Working mesh =
                  Working.check(
                      "mesh",
                      Play.onceAround(g.number("e"), g.number("alpha_w")),
                      Unit.MM,
                      "2*e/cos(alpha_w)",
                      g.term("e"),
                      g.term("alpha_w"));
              Teeth.positive("d", "mm", g.number("d"));
              Teeth.positive("d_3", "mm", g.number("d_3"));
              Answer answer =
                  Answer.start()
                      .with("mesh", mesh)
                      .with(
                          "pp",
                          Working.of(
                              "pp",
                              Unit.MM,
                              "mesh*d_3/d",
                              Term.of(mesh),
                              g.term("d_3"),
                              g.term("d")));
              if (g.has("T")) {
                return answer.with("period", g.number("T"));
              }
              return g.number("d_3") == g.number("d")
                  ? answer
                  : answer.with("period", Working.of("period", Unit.MM, "pi*d_3", g.term("d_3")));
            });
  }

  private static Reckoner onceAroundSum() {
    return Reckoner.of(
            TrainReckoners.GROUP,
            "once-per-turn",
            "Sum of peak-to-peak errors of different periods")
        .numbers("parts", Unit.MM, "peak-to-peak errors at the carriage")
        .result("worst", Unit.MM, "worst case: their sum")
        .result("likely", Unit.MM, "likely: root of the sum of squares")
        .source(Sources.ECCENTRICITY)
        .rule(
            g -> {
              double[] parts = g.numbers("parts");
              Arrays.stream(parts).forEach(p -> Teeth.notNegative("parts", "mm", p));
              return Answer.start()
                  .with("worst", Arrays.stream(parts).sum())
                  .with("likely", Play.likely(parts));
            });
  }

  private static Reckoner rackError() {
    Reckoner.Draft draft =
        Reckoner.of(TrainReckoners.GROUP, "rack-error", "Error a rack accumulates over a travel")
            .number("f_p", Unit.MICRON, "mean deviation of one pitch")
            .number("s", Unit.MM, "travel");
    TrainReckoners.optionalExact(draft, "m", Unit.MM, "module of the rack");
    TrainReckoners.optionalExact(draft, "p", Unit.MM, "circular pitch, instead of the module");
    return draft
        .result("e", Unit.MM, "error over the travel")
        .result("error", Unit.PPM, "the same, relative")
        .result("teeth", Unit.ONE, "teeth passed")
        .source(Sources.RACK_ERROR)
        .rule(
            g -> {
              Ratio pitch = TrainReckoners.rackPitch(g);
              Teeth.positive("rack pitch", pitch);
              Term p = Term.exact("p", pitch.toDouble(), Unit.MM);
              return Answer.start()
                  .with(
                      "e",
                      Working.check(
                          "e",
                          Play.rackError(g.number("s"), p.value(), g.number("f_p")),
                          Unit.MM,
                          "s/p*f_p",
                          g.term("s"),
                          p,
                          g.term("f_p")))
                  .with("error", Working.of("error", Unit.PPM, "f_p/p", g.term("f_p"), p))
                  .with("teeth", Working.of("teeth", Unit.ONE, "s/p", g.term("s"), p));
            });
  }

  private static Reckoner slideForce() {
    return Reckoner.of(
            TrainReckoners.GROUP, "slide-force", "Force at the slide from a force at the handle")
        .number("F_hand", Unit.N, "force at the handle", "60")
        .number("R", Unit.MM, "radius of the handle")
        .number("T", Unit.MM, "travel per turn")
        .number("eta", Unit.ONE, "efficiency: about 0.9 a gear mesh, 0.25 to 0.4 a screw", "1")
        .result("F", Unit.N, "force at the slide")
        .source(Sources.CHAIN)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "F",
                        Working.check(
                            "F",
                            Play.slideForce(
                                g.number("F_hand"), g.number("R"), g.number("T"), g.number("eta")),
                            Unit.N,
                            "F_hand*2*pi*R/T*eta",
                            g.term("F_hand"),
                            g.term("R"),
                            g.term("T"),
                            g.term("eta"))));
  }

  private static Reckoner budget() {
    return Reckoner.of(
            TrainReckoners.GROUP, "move-budget", "What one move by the dial may be out by")
        .number("s", Unit.MM, "length of the move")
        .number("error", Unit.PPM, "dial rounding: true travel against the one engraved", "0")
        .number("rack", Unit.MM, "rack error over the move", "0")
        .input("once", Input.Kind.NUMBERS, Unit.MM, "peak-to-peak once-per-turn errors", "0", true)
        .number("J", Unit.MM, "play at the carriage", "0")
        .choice("reversed", "whether the direction was reversed", "no", "yes")
        .number("v", Unit.MM, "value of one division")
        .result("total", Unit.MM, "sum of the terms")
        .result("divisions", Unit.ONE, "the same in divisions")
        .result("largest", Unit.ONE, "largest term")
        .result("terms", Unit.MM, "rounding, rack, once per turn, play, reading")
        .source(Sources.DIAL_ERROR)
        .rule(PlayReckoners::budget);
  }

  private static Answer budget(Given g) {
    Teeth.positive("v", "mm", g.number("v"));
    Teeth.notNegative("s", "mm", g.number("s"));
    Teeth.notNegative("J", "mm", g.number("J"));
    String[] names = {"rounding of the dial", "rack", "once per turn", "play", "reading"};
    double[] terms = {
      Math.abs(g.number("s") * g.number("error")),
      Math.abs(g.number("rack")),
      Play.likely(g.numbers("once")),
      g.choice("reversed").equals("yes") ? g.number("J") : 0,
      g.number("v") / 2
    };
    int largest = 0;
    for (int i = 0; i < terms.length; i++) {
      largest = terms[i] > terms[largest] ? i : largest;
    }
    String[] symbols = {"rounding", "rack", "once", "play", "reading"};
    List<Term> put = new ArrayList<>();
    for (int i = 0; i < terms.length; i++) {
      put.add(Term.exact(symbols[i], terms[i], Unit.MM));
    }
    Working total = Working.of("total", Unit.MM, "rounding+rack+once+play+reading", put);
    return Answer.start()
        .with("total", total)
        .with(
            "divisions", Working.of("divisions", Unit.ONE, "total/v", Term.of(total), g.term("v")))
        .with("largest", names[largest])
        .with("terms", terms);
  }
}
