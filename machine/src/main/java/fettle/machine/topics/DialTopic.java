package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Dial;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Train;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a dial really reads: value and error of a division, spacing of the lines, smallest step. */
final class DialTopic implements Topic {

  private static final Source SHARE =
      Source.derived(
          "travel per turn shared by the lines: k T/N against the division v it is cut for");
  private static final Source SPACING =
      Source.practice("line spacing pi D/N, at least 0.8 mm, better 1 mm");
  private static final Source READING =
      Source.practice("a plain dial is read to a fifth of a division, a vernier to half its step");
  private static final Source OWNER = Source.practice("the owner's limit");

  @Override
  public String name() {
    return "dials";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Study all = new Study(List.of(), List.of());
    for (Dial dial : machine.dials().values()) {
      Train train = machine.trains().get(dial.train());
      if (train != null && train.factors().size() == 1) {
        all = all.and(new OneDial(machine, dial, train).study());
      }
    }
    return all;
  }

  /** The questions asked of one dial. */
  private final class OneDial {
    private final Machine machine;
    private final Dial dial;
    private final Ratio error;
    private final String ratio;
    private final List<Term> terms = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Train train;

    OneDial(Machine machine, Dial dial, Train train) {
      this.machine = machine;
      this.dial = dial;
      this.train = train;
      ChainFormula chain = ChainFormula.of(train, "");
      terms.addAll(chain.terms());
      terms.add(Term.exact("k", dial.perTravel()));
      terms.add(Term.exact("N", dial.lines()));
      ratio = "k*" + chain.text() + "/N";
      error =
          train.factor().times(dial.perTravel()).over(dial.lines()).over(dial.division().exact());
    }

    Study study() {
      value();
      error();
      spacing();
      smallest();
      return new Study(figures, findings);
    }

    private void value() {
      Working value = Working.of("v_true", dial.division().unit(), ratio, terms);
      String exact =
          error.sameAs(Ratio.ONE)
              ? "exact"
              : error.isRational()
                  ? "never exact: off by a fixed share"
                  : "never exact: pi stays in it";
      add("true value of a division", value, Better.NEITHER, SHARE, exact);
    }

    private void error() {
      List<Term> with = new ArrayList<>(terms);
      with.add(dial.division().term("v"));
      String share = ratio + "/v - 1";
      add(
          "error of the dial",
          Working.of("e", Unit.PPM, share, with),
          Better.NEITHER,
          SHARE,
          sign(error));
      limit("one move").ifPresent(move -> over("error over one move", move.term("s"), share, with));
      if (machine.member(train.to()).seat() instanceof Seat.Sliding sliding) {
        over("error over the whole travel", sliding.travel().term("s"), share, with);
      }
      Optional<fettle.machine.text.Quantity> limit = limit("dial error");
      if (limit.isPresent() && !error.sameAs(Ratio.ONE)) {
        with.add(limit.get().term("e"));
        Working longest = Working.of("s", Unit.MM, "e/abs(" + share + ")", with);
        add("longest move within the limit", longest, Better.HIGHER, SHARE, "");
        limit("one move")
            .filter(move -> move.value() > longest.value())
            .ifPresent(move -> tooFar(longest));
      }
    }

    private void over(String what, Term length, String share, List<Term> with) {
      List<Term> all = new ArrayList<>(with);
      all.add(length);
      Working working = Working.of("e", Unit.MM, "s*(" + share + ")", all);
      add(what, working, Better.NEITHER, SHARE, "");
    }

    private void tooFar(Working longest) {
      findings.add(
          new Finding(
              Finding.Rank.CAUTION,
              name() + "/" + dial.name() + "/error over one move",
              "The "
                  + dial.name()
                  + " can be trusted over "
                  + fettle.mechanics.base.Numbers.significant(longest.value(), 3)
                  + " mm only; over a longer move its error passes the limit. A label with the true"
                  + " value helps, or other teeth.",
              "at most "
                  + limit("dial error").orElseThrow().exact().decimal(3)
                  + " mm over one move",
              OWNER));
    }

    private void spacing() {
      Working spacing =
          Working.of(
              "c", Unit.MM, "pi*D/N", dial.diameter().term("D"), Term.exact("N", dial.lines()));
      add("line spacing", spacing, Better.HIGHER, SPACING, "");
      limit("line spacing")
          .filter(least -> spacing.value() < least.value())
          .ifPresent(
              least ->
                  findings.add(
                      new Finding(
                          Finding.Rank.CAUTION,
                          name() + "/" + dial.name() + "/line spacing",
                          "The lines of the "
                              + dial.name()
                              + " stand too close to be read; a larger dial or"
                              + " coarser divisions help.",
                          "at least " + least.exact().decimal(2) + " mm",
                          SPACING)));
      if (dial.values().need("mark width").value() > spacing.value() / 2) {
        findings.add(
            new Finding(
                Finding.Rank.STOP,
                name() + "/" + dial.name() + "/line spacing",
                "The lines of the " + dial.name() + " would run into each other.",
                "a line at most half the spacing",
                SPACING));
      }
    }

    private void smallest() {
      int vernier = dial.values().needCount("vernier");
      Term v = dial.division().term("v");
      Term k = Term.exact("k", dial.perTravel());
      Working reading =
          vernier > 0
              ? Working.of("r", Unit.MM, "v/(2*n*k)", v, k, Term.exact("n", vernier))
              : Working.of("r", Unit.MM, "v/(5*k)", v, k);
      add("smallest dependable movement, same way", reading, Better.LOWER, READING, "");
      PlayTopic.play(train)
          .ifPresent(
              play ->
                  add(
                      "smallest dependable movement, reversed",
                      Working.of(
                          "r",
                          Unit.MM,
                          "rd + J",
                          new Term("rd", reading.value(), Unit.MM, 0),
                          Term.of(play)),
                      Better.LOWER,
                      READING,
                      "if the play is not taken up"));
      once(vernier, reading);
    }

    private void once(int vernier, Working reading) {
      PlayTopic.oncePerTurnWorking(train)
          .filter(e -> vernier > 0 && e.value() > 6 * reading.value())
          .ifPresent(
              e ->
                  findings.add(
                      new Finding(
                          Finding.Rank.NOTE,
                          name() + "/" + dial.name() + "/smallest dependable movement, same way",
                          "The vernier of the "
                              + dial.name()
                              + " is finer than the error that comes back once a"
                              + " turn; it shows that error, not the slide.",
                          "an error of at most three steps",
                          Source.practice(
                              "a vernier finer than a third of the cyclic error shows noise"))));
    }

    private void add(String name, Working working, Better better, Source source, String words) {
      figures.add(Figure.of(name(), dial.name(), name, working, better, source).exactly(words));
    }

    private Optional<fettle.machine.text.Quantity> limit(String key) {
      return machine.values().block("limits").map(l -> l.need(key));
    }

    private static String sign(Ratio error) {
      double share = error.toDouble();
      return error.sameAs(Ratio.ONE)
          ? "exact"
          : share > 1 ? "slide goes further than shown" : "slide goes less far than shown";
    }
  }
}
