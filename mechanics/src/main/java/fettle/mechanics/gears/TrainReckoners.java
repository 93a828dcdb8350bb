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
import java.util.List;
import java.util.stream.Stream;

/** Single calculations on trains and racks; {@link #all()} lists those of the whole room. */
public final class TrainReckoners {

  static final String GROUP = "gears";

  private TrainReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return Stream.of(
            trains(),
            DialReckoners.all(),
            PlayReckoners.all(),
            ThreadReckoners.all(),
            GeometryReckoners.all(),
            MeasureReckoners.all(),
            AccuracyReckoners.all(),
            StrengthReckoners.all(),
            SearchReckoners.all(),
            BoxReckoners.all())
        .flatMap(List::stream)
        .toList();
  }

  private static List<Reckoner> trains() {
    return List.of(
        rackTravel(),
        screwTravel(),
        chainTravel(),
        ratioError(),
        teethForTravel(),
        teethOnCentres(),
        rackIdentity(),
        slideComponents());
  }

  static Reckoner.Draft optionalExact(
      Reckoner.Draft draft, String name, Unit unit, String meaning) {
    return draft.input(name, Input.Kind.EXACT, unit, meaning, null, false);
  }

  static Reckoner.Draft exact(
      Reckoner.Draft draft, String name, Unit unit, String meaning, String standard) {
    return draft.input(name, Input.Kind.EXACT, unit, meaning, standard, true);
  }

  /** Returns the pitch of a rack given by its module, DP, or circular pitch. */
  static Ratio rackPitch(Given g) {
    if (g.has("m") == g.has("p")) {
      throw new IllegalArgumentException(
          "give either the module m (16 DP may be given as '16 DP') or the circular pitch p of the"
              + " rack");
    }
    return g.has("m") ? g.exact("m").times(Ratio.PI) : g.exact("p");
  }

  private static Reckoner rackTravel() {
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "rack-travel", "Slide travel per handwheel turn, gear pair and rack")
            .count("z1", "teeth of the gear on the handwheel shaft", "20")
            .count("z2", "teeth of the gear it drives", "20")
            .count("z3", "teeth of the rack pinion");
    optionalExact(draft, "m", Unit.MM, "module of the rack (16 DP may be given as '16 DP')");
    optionalExact(draft, "p", Unit.MM, "circular pitch of the rack, instead of the module");
    optionalExact(draft, "T_0", Unit.MM, "travel wanted");
    return draft
        .result("T", Unit.MM, "travel per turn")
        .result("exact", Unit.MM, "travel per turn, exact")
        .result("e_pi", Unit.ONE, "exponent of pi in it: 0 means exactly metric or inch")
        .result("error", Unit.PPM, "deviation from the travel wanted")
        .source(Sources.CHAIN)
        .rule(TrainReckoners::rackTravel);
  }

  private static Answer rackTravel(Given g) {
    Element pair = new Element.SpurPair(g.count("z1"), g.count("z2"));
    Ratio pitch = rackPitch(g);
    Chain chain = Chain.of(pair, new Element.RackAndPinion(g.count("z3"), pitch));
    Term[] terms = {
      g.term("z1"), g.term("z2"), g.has("m") ? g.term("m") : g.term("p"), g.term("z3")
    };
    String formula = g.has("m") ? "z1/z2*pi*m*z3" : "z1/z2*p*z3";
    Answer answer =
        Answer.start()
            .with("T", Working.check("T", chain.factor().toDouble(), Unit.MM, formula, terms))
            .with("exact", chain.factor())
            .with("e_pi", chain.factor().pi());
    if (g.has("T_0")) {
      Ratio wanted = g.exact("T_0");
      Teeth.positive("T_0", wanted);
      answer = answer.with("error", Deviation.relative(chain.factor(), wanted));
      if (!chain.factor().over(wanted).isRational()) {
        answer =
            answer.caution(
                "With this rack the travel is pi times a rational number: no choice of teeth makes"
                    + " it exactly round.");
      }
    }
    return answer;
  }

  private static Reckoner screwTravel() {
    Reckoner.Draft draft =
        Reckoner.of(
                GROUP,
                "screw-travel",
                "Slide travel per handwheel turn through belt or gears and screw")
            .count("z1", "teeth of the driving pulley or gear", "20")
            .count("z2", "teeth of the driven pulley or gear", "20");
    draft.exact("P", Unit.MM, "pitch of the screw (10 threads per inch as '10 tpi')");
    return draft
        .count("n", "starts of the screw; lead = starts x pitch", "1")
        .result("T", Unit.MM, "travel per turn")
        .result("exact", Unit.MM, "travel per turn, exact")
        .source(Sources.CHAIN)
        .rule(
            g -> {
              Chain chain =
                  Chain.of(
                      new Element.ToothedBelt(g.count("z1"), g.count("z2")),
                      new Element.Screw(g.exact("P"), g.count("n"), Hand.RIGHT));
              return Answer.start()
                  .with(
                      "T",
                      Working.check(
                          "T",
                          chain.factor().toDouble(),
                          Unit.MM,
                          "z1/z2*n*P",
                          g.term("z1"),
                          g.term("z2"),
                          g.term("n"),
                          g.term("P")))
                  .with("exact", chain.factor().folded());
            });
  }

  private static Reckoner chainTravel() {
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "chain", "Exact ratio or travel of any chain, with the sense of motion")
            .input(
                "chain",
                Input.Kind.WORDS,
                Unit.ONE,
                "elements from the input on, e.g. 'pair 15 60, idler 30, rack 14 module 1.5'; also"
                    + " internal, belt, vee, worm, coupling, screw",
                null,
                true);
    optionalExact(draft, "T_0", Unit.MM, "travel or ratio wanted");
    return draft
        .result("T", Unit.MM, "travel per turn, if the chain ends in a screw or rack")
        .result("i", Unit.ONE, "turns out per turn in, if it does not")
        .result("exact", Unit.MM, "the same, exact")
        .result("e_pi", Unit.ONE, "exponent of pi")
        .result("is_exact", Unit.ONE, "1 if nothing slips and there is no pi in it")
        .result("sense", Unit.ONE, "+1 same sense as the input, -1 reversed")
        .result("error", Unit.PPM, "deviation from what is wanted")
        .source(Sources.CHAIN)
        .rule(TrainReckoners::chainTravel);
  }

  private static Answer chainTravel(Given g) {
    Chain chain = ChainText.parse(g.words("chain"));
    Ratio factor = chain.factor();
    String name = chain.linear() ? "T" : "i";
    Answer answer =
        Answer.start()
            .with(
                name,
                Working.check(
                    name, factor.toDouble(), chain.linear() ? Unit.MM : Unit.ONE, chain.formula()))
            .with("exact", factor)
            .with("e_pi", factor.pi())
            .with("is_exact", chain.exact() ? 1 : 0)
            .with("sense", chain.sense());
    if (g.has("T_0")) {
      Ratio wanted = g.exact("T_0");
      Teeth.positive("T_0", wanted);
      answer = answer.with("error", Deviation.relative(factor, wanted));
    }
    if (!chain.positive()) {
      answer =
          answer.caution(
              "A V-belt or flat belt slips 1 to 2 percent under load (common practice): never use it"
                  + " in a screw-cutting or dial chain.");
    }
    return answer;
  }

  private static Reckoner ratioError() {
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "ratio-error", "Error of an approximate ratio, e.g. 22/7 for pi")
            .exact("approx", Unit.ONE, "approximate number, e.g. 22/7 or 36/34")
            .choice(
                "error_of",
                "what the error is told of: the approximate number, or the exact one against it (true travel against nominal)",
                "approximate",
                "exact");
    return exact(draft, "exact", Unit.ONE, "exact number, e.g. pi or 127/120", "pi")
        .result("error", Unit.PPM, "signed error")
        .source(Sources.CHAIN)
        .rule(
            g -> {
              Ratio approx = g.exact("approx");
              Ratio exact = g.exact("exact");
              if (approx.signum() <= 0 || exact.signum() <= 0) {
                throw new IllegalArgumentException("approx and exact must be above 0");
              }
              boolean forward = g.choice("error_of").equals("approximate");
              double value =
                  forward ? Deviation.relative(approx, exact) : Deviation.relative(exact, approx);
              String formula =
                  forward
                      ? "(" + approx.formula() + ")/(" + exact.formula() + ")-1"
                      : "(" + exact.formula() + ")/(" + approx.formula() + ")-1";
              return Answer.start()
                  .with("error", value)
                  .showing(Working.of("error", Unit.PPM, formula));
            });
  }

  private static Reckoner teethForTravel() {
    Reckoner.Draft draft =
        Reckoner.of(
            GROUP,
            "teeth-for-travel",
            "Teeth that bring the travel per turn nearest to a wanted one, exhaustive");
    draft.exact("T_0", Unit.MM, "travel wanted");
    optionalExact(draft, "m", Unit.MM, "module of the rack (20 DP as '20 DP')");
    optionalExact(draft, "p", Unit.MM, "circular pitch of the rack, instead of the module");
    range(draft, "z1", "handwheel pinion, fewest,most teeth", "12,25");
    range(draft, "z2", "gear, fewest,most teeth", "30,90");
    range(draft, "z3", "rack pinion, fewest,most teeth", "10,20");
    draft.input(
        "sums", Input.Kind.EXACTS, Unit.ONE, "tooth sums z1+z2 the centres allow", null, false);
    draft.input("present", Input.Kind.EXACTS, Unit.ONE, "teeth there now: z1,z2,z3", null, false);
    return draft
        .result("error", Unit.PPM, "deviation of the best choice")
        .result("teeth", Unit.TEETH, "z1, z2, z3 of the best choice")
        .result("T", Unit.MM, "its travel per turn")
        .result("exact", Unit.MM, "its travel per turn, exact")
        .result("tried", Unit.ONE, "trains compared")
        .result("excluded", Unit.ONE, "trains left out because their centres do not fit")
        .result("pareto", Unit.ONE, "best choice for each effort")
        .source(Sources.TOOTH_CHOICE)
        .rule(TrainReckoners::teethForTravel);
  }

  private static void range(Reckoner.Draft draft, String name, String meaning, String standard) {
    draft.input(name, Input.Kind.EXACTS, Unit.ONE, meaning, standard, true);
  }

  static TravelSearch.Range range(Given g, String name) {
    int[] ends = g.counts(name);
    if (ends.length < 1 || ends.length > 2) {
      throw new IllegalArgumentException(
          name + " [teeth] needs one number or fewest,most; found " + ends.length + " numbers");
    }
    return new TravelSearch.Range(ends[0], ends[ends.length - 1]);
  }

  private static Answer teethForTravel(Given g) {
    List<Integer> sums = new ArrayList<>();
    if (g.has("sums")) {
      for (int sum : g.counts("sums")) {
        sums.add(sum);
      }
    }
    TravelSearch.Trio present = null;
    if (g.has("present")) {
      int[] now = g.counts("present");
      if (now.length != 3) {
        throw new IllegalArgumentException("present [teeth] needs three numbers: z1,z2,z3");
      }
      present = new TravelSearch.Trio(now[0], now[1], now[2]);
    }
    TravelSearch.Outcome outcome =
        TravelSearch.search(
            new TravelSearch.Query(
                g.exact("T_0"),
                rackPitch(g),
                range(g, "z1"),
                range(g, "z2"),
                range(g, "z3"),
                sums,
                present));
    if (outcome instanceof TravelSearch.Outcome.None none) {
      return Answer.none(none.reason());
    }
    TravelSearch.Outcome.Found found = (TravelSearch.Outcome.Found) outcome;
    TravelSearch.Trio teeth = found.best().teeth();
    Answer answer =
        Answer.start()
            .with("error", found.best().ppm() * 1e-6)
            .with("teeth", new double[] {teeth.z1(), teeth.z2(), teeth.z3()})
            .with("T", found.best().travel().toDouble())
            .with("exact", found.best().travel())
            .with("tried", found.tried())
            .with("excluded", found.excluded())
            .with("pareto", found.pareto().stream().map(TrainReckoners::line).toList());
    if (Math.abs(found.best().ppm()) < 50) {
      answer =
          answer.caution(
              "Below about 100 ppm the pitch of the rack itself counts for more than the teeth;"
                  + " measure it before going further (common practice).");
    }
    return found.best().travel().over(g.exact("T_0")).isRational()
        ? answer
        : answer.caution(
            "With a module or DP rack the travel is pi times a rational number; the error is never"
                + " zero.");
  }

  private static String line(TravelSearch.Choice c) {
    String[] efforts = {"handwheel pinion only", "the pair", "the pair and the rack pinion"};
    return String.format(
        java.util.Locale.ROOT,
        "%s: %d/%d, rack pinion %d: %s mm, %+.4f ppm",
        efforts[c.effort()],
        c.teeth().z1(),
        c.teeth().z2(),
        c.teeth().z3(),
        c.travel().decimal(6),
        c.ppm());
  }

  private static Reckoner teethOnCentres() {
    Reckoner.Draft draft =
        Reckoner.of(
                GROUP,
                "teeth-on-centres",
                "New pairs for shafts that stay where they are, for one or many round travels")
            .input(
                "T_0",
                Input.Kind.EXACTS,
                Unit.MM,
                "travels per turn wanted",
                "10, 12.5, 15, 16, 18, 20, 22, 24, 25, 25.4, 30",
                true)
            .number("m", Unit.MM, "module of the pair ('20 DP')")
            .number("a_w", Unit.MM, "centre distance, as measured")
            .number("alpha", Unit.DEG, "pressure angle", "20");
    exact(
        draft,
        "T_2",
        Unit.MM,
        "travel for one turn of the driven gear: '21 pi' for 14 teeth of module 1.5",
        "21 pi");
    return draft
        .count("z_min", "fewest teeth", "12")
        .count("z_max", "most teeth of the driven gear, as the space allows", "120")
        .number("D", Unit.MM, "diameter of the dial's lines", "70")
        .number("R", Unit.MM, "radius of the handle", "50")
        .result("z1", Unit.TEETH, "teeth of the driver, travel by travel")
        .result("z2", Unit.TEETH, "teeth of the driven gear")
        .result("errors", Unit.PPM, "deviation from the travel wanted")
        .result("x2", Unit.ONE, "profile shift of the driven gear")
        .result("table", Unit.ONE, "the same with dial, force and concerns")
        .result("refused", Unit.ONE, "pairs left out because their teeth cannot run")
        .source(Sources.TOOTH_CHOICE)
        .rule(TrainReckoners::teethOnCentresAnswer);
  }

  private static Answer teethOnCentresAnswer(Given g) {
    TeethOnCentres centres =
        new TeethOnCentres(
            g.number("m"),
            g.number("a_w"),
            BasicRack.of(g.number("alpha")),
            g.exact("T_2"),
            g.count("z_min"),
            g.count("z_max"));
    List<Ratio> travels = g.exacts("T_0");
    if (travels.isEmpty() || travels.size() > 50) {
      throw new IllegalArgumentException("T_0 [mm] takes 1 to 50 travels, found " + travels.size());
    }
    Teeth.positive("D", "mm", g.number("D"));
    List<TeethOnCentres.Choice> best = new ArrayList<>();
    List<String> table = new ArrayList<>();
    int refused = 0;
    for (Ratio travel : travels) {
      TeethOnCentres.Found found = centres.forTravel(travel);
      refused = found.refused();
      found.best().ifPresent(best::add);
      found.best().ifPresent(c -> table.add(row(g, travel, c)));
    }
    if (best.isEmpty()) {
      return Answer.none(
          "no pair of this module runs on these centres; check the module and the measurement");
    }
    return Answer.start()
        .with("z1", best.stream().mapToDouble(TeethOnCentres.Choice::driver).toArray())
        .with("z2", best.stream().mapToDouble(TeethOnCentres.Choice::driven).toArray())
        .with("errors", best.stream().mapToDouble(c -> c.ppm() * 1e-6).toArray())
        .with("x2", best.stream().mapToDouble(c -> c.pair().wheel().shift()).toArray())
        .with("table", table)
        .with("refused", refused);
  }

  private static String row(Given g, Ratio wanted, TeethOnCentres.Choice c) {
    List<Dial> dials = Dial.fitting(wanted, g.number("D"), 1, Dial.Scale.METRIC);
    String dial =
        dials.isEmpty()
            ? "no dial fits"
            : dials.get(0).divisions()
                + " divisions of "
                + dials.get(0).division().decimal(3)
                + " mm, "
                + fettle.mechanics.base.Numbers.fixed(dials.get(0).spacing(), 2)
                + " mm apart";
    double force = Play.slideForce(1, g.number("R"), c.travel().toDouble(), 1);
    return String.format(
        java.util.Locale.ROOT,
        "%s mm: %d/%d, x2 %+.3f, %s mm, %+.1f ppm; %s; %.1f N at the slide for 1 N at the handle;"
            + " %d concerns",
        wanted.decimal(3),
        c.driver(),
        c.driven(),
        c.pair().wheel().shift(),
        c.travel().decimal(4),
        c.ppm(),
        dial,
        force,
        c.concerns().size());
  }

  private static Reckoner rackIdentity() {
    return Reckoner.of(GROUP, "rack-identity", "Which rack it is, from a length over many teeth")
        .number("L", Unit.MM, "length measured over the pitches")
        .count("n", "number of pitches in that length")
        .number("u", Unit.MM, "uncertainty of the measured length", "0.05")
        .result("p", Unit.MM, "pitch measured")
        .result("rack", Unit.ONE, "nearest standard rack")
        .result("pitch", Unit.MM, "its pitch")
        .result("deviation", Unit.PPM, "measured pitch against it")
        .result("candidates", Unit.ONE, "standard racks within the uncertainty, nearest first")
        .source(Sources.ISO_54)
        .rule(TrainReckoners::rackIdentity);
  }

  private static Answer rackIdentity(Given g) {
    List<RackPitch.Candidate> near = RackPitch.near(g.number("L"), g.count("n"));
    Teeth.notNegative("u", "mm", g.number("u"));
    double doubt = g.number("u") / g.number("L");
    List<String> possible =
        near.stream()
            .filter(c -> Math.abs(c.deviation()) <= doubt + 0.001)
            .map(RackPitch.Candidate::name)
            .toList();
    RackPitch.Candidate best = near.get(0);
    Answer answer =
        Answer.start()
            .with("p", Working.of("p", Unit.MM, "L/n", g.term("L"), g.term("n")))
            .with("rack", best.name())
            .with("pitch", best.pitch().toDouble())
            .with("deviation", best.deviation())
            .with("candidates", possible);
    if (g.count("n") < 20) {
      answer =
          answer.caution(
              "Measure over 20 pitches or more: module 1.6 and 16 DP differ by 0.8 percent, module"
                  + " 1.25 and 20 DP by 1.6 percent.");
    }
    if (possible.size() != 1) {
      answer =
          answer.caution(
              possible.isEmpty()
                  ? "No standard rack lies within the uncertainty; measure again or use the"
                      + " measured pitch."
                  : "More than one standard rack lies within the uncertainty; measure longer.");
    }
    return answer;
  }

  private static Reckoner slideComponents() {
    return Reckoner.of(GROUP, "top-slide", "What a top slide set at an angle cuts")
        .number("t", Unit.MM, "travel of the top slide")
        .number("theta", Unit.DEG, "angle between the top slide and the lathe axis")
        .result("depth", Unit.MM, "change of depth (radius)")
        .result("diameter", Unit.MM, "change of the diameter")
        .result("length", Unit.MM, "change along the axis")
        .source(Sources.CHAIN)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "depth",
                        Working.of("depth", Unit.MM, "t*sin(theta)", g.term("t"), g.term("theta")))
                    .with(
                        "diameter",
                        Working.of(
                            "diameter", Unit.MM, "2*t*sin(theta)", g.term("t"), g.term("theta")))
                    .with(
                        "length",
                        Working.of(
                            "length", Unit.MM, "t*cos(theta)", g.term("t"), g.term("theta"))));
  }
}
