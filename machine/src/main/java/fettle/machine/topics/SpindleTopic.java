package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.bearings.EquivalentLoad;
import fettle.mechanics.bearings.StaticLoad;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import fettle.mechanics.shafts.NoseStiffness;
import fettle.mechanics.shafts.Section;
import fettle.mechanics.shafts.ShaftMaterial;
import fettle.mechanics.shafts.SpindleModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The spindle: how stiff its nose is and why, where it sings, how warm it runs, how long it lasts.
 */
final class SpindleTopic implements Topic {

  private static final Source BEAM =
      Source.memory(
          "Przemieniecki, Theory of Matrix Structural Analysis, 1968",
          "beam with shear deflection on springs; rear end left out");
  private static final Source MASS =
      Source.memory(
          "Nelson, A finite rotating shaft element using Timoshenko beam theory, 1980",
          "lowest frequency in bending, pulley left out");
  private static final Source SPAN =
      Source.derived("least nose give: derivative by the span is 0; uniform shaft without shear");
  private static final Source GROWTH = Source.derived("linear thermal expansion, uniformly warm");
  private static final Source PLAY = Source.derived("rigid line through two loose bearings");
  private static final Source BUSH =
      Source.practice("oiled bronze bushes of bench lathes: pressure times speed");
  private static final Source FILM =
      Source.memory("Ocvirk and DuBois, NACA Report 1157, 1953", "short bearing, nearly central");
  private static final double BUSH_LIMIT = 1750;
  private static final double LEAST_STATIC = 2;

  @Override
  public String name() {
    return "spindle";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    return Study.orReason(
        name(),
        "spindle",
        () ->
            Headstock.of(machine)
                .map(head -> new OneSpindle(machine, head).study())
                .orElseGet(() -> unknown(machine)));
  }

  private Study unknown(Machine machine) {
    Optional<Values> block = machine.values().block("spindle");
    if (block.isEmpty()) {
      return new Study(List.of(), List.of());
    }
    return new Study(
        List.of(),
        List.of(
            new Finding(
                Finding.Rank.NOTE,
                "",
                "The stiffness of the spindle is not reckoned; that takes "
                    + String.join(" and ", Headstock.lacking(block.get()))
                    + ".",
                "",
                BEAM)));
  }

  /** The questions asked of one spindle. */
  private final class OneSpindle {
    private final Machine machine;
    private final Headstock head;
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    OneSpindle(Machine machine, Headstock head) {
      this.machine = machine;
      this.head = head;
    }

    Study study() {
      stiffness();
      bestSpan();
      play();
      growth();
      bearing("front bearing", head.front(), true);
      bearing("rear bearing", head.rear(), false);
      return new Study(figures, findings);
    }

    private void stiffness() {
      List<Term> gives = head.gives(0);
      String sum = "(g_b + g_q + g_f + g_r)";
      Working k = Working.of("K", Unit.N_PER_MICRON, "1/" + sum, gives);
      add("spindle", "stiffness at the nose", k, Better.HIGHER, BEAM, guesses());
      share("the spindle's bending and shear", "(g_b + g_q)/" + sum, gives);
      share("the front bearing", "g_f/" + sum, gives);
      share("the rear bearing", "g_r/" + sum, gives);
      double[] f = SpindleModel.frequencies(head.shaft());
      if (f.length > 0) {
        double turns = 2 * Math.PI * f[0];
        double mass = k.value() / (turns * turns);
        Working first =
            Working.of(
                "f_1",
                Unit.HZ,
                "sqrt(K/m_e)/(2*pi)",
                Term.of(k),
                new Term("m_e", mass, Unit.KG, 0.1 * mass));
        String with = head.shaft().masses().isEmpty() ? "no chuck stated" : "with the chuck";
        add("spindle", "first frequency in bending", first, Better.HIGHER, MASS, with);
      }
    }

    private String guesses() {
      List<String> said = new ArrayList<>();
      if (!head.sizesStated()) {
        said.add("diameters taken from the bearings");
      }
      if (head.front().film().isPresent()) {
        said.add("oil films known by their order only, at a usual speed; slack at rest");
      }
      head.front().rolling().map(RollingSet::words).filter(w -> !w.isEmpty()).ifPresent(said::add);
      return String.join("; ", said);
    }

    private void share(String cause, String formula, List<Term> gives) {
      Working share = Working.of("s", Unit.PERCENT, formula, gives);
      add("spindle", "share of the give from " + cause, share, Better.NEITHER, BEAM, "");
    }

    private void bestSpan() {
      double a = head.overhang();
      double inertia = Section.round(head.body(), head.bore(), 0.3).secondMoment();
      double bending = ShaftMaterial.STEEL.modulus() * inertia;
      Term front = head.front().give();
      Term rear = head.rear().give();
      double best =
          NoseStiffness.bestSpan(
              a, bending, new NoseStiffness.Bearings(1 / front.value(), 1 / rear.value()));
      Working span =
          Working.of(
              "L_best",
              Unit.MM,
              "sqrt(6*E*I*(g_f/a + (g_f + g_r)/L_0))",
              Term.exact("E", ShaftMaterial.STEEL.modulus(), Unit.MPA),
              Term.exact("I", inertia, Unit.MM4),
              front,
              rear,
              Term.exact("a", a, Unit.MM),
              Term.exact("L_0", best, Unit.MM));
      String words = "there are " + Numbers.significant(head.span(), 4) + " mm";
      add("spindle", "best distance of the bearings", span, Better.NEITHER, SPAN, words);
    }

    private void play() {
      Working play =
          Working.of(
              "j",
              Unit.MICRON,
              "j_f*(1 + a/L) + j_r*a/L",
              play("j_f", head.front()),
              play("j_r", head.rear()),
              head.block().need("overhang").term("a"),
              head.block().need("span").term("L"));
      add("spindle", "play at the nose at rest", play, Better.LOWER, PLAY, "");
    }

    private static Term play(String symbol, Headstock.Support support) {
      return support.block().has("clearance")
          ? support.block().need("clearance").term(symbol)
          : Term.exact(symbol, 0, Unit.MM);
    }

    private void growth() {
      Term rise = head.block().need("warming").term("dT");
      Optional<Member> body = head.member().seat().on().map(machine::member);
      body.flatMap(b -> b.values().text("material"))
          .map(Materials::of)
          .filter(m -> m.knows(Property.ALPHA))
          .ifPresent(
              m ->
                  add(
                      "spindle",
                      "rise of the axis when warm",
                      Working.of("y", Unit.MICRON, "alpha*h*dT", alpha(m), height(), rise),
                      Better.LOWER,
                      GROWTH,
                      ""));
      head.member()
          .values()
          .text("material")
          .map(Materials::of)
          .filter(m -> m.knows(Property.ALPHA))
          .ifPresent(
              m ->
                  add(
                      "spindle",
                      "growth of the nose when warm",
                      Working.of(
                          "z",
                          Unit.MICRON,
                          "alpha*a*dT",
                          alpha(m),
                          head.block().need("overhang").term("a"),
                          rise),
                      Better.LOWER,
                      GROWTH,
                      "from the front bearing on"));
    }

    private Term height() {
      return machine.values().block("lathe").orElseThrow().need("centre height").term("h");
    }

    private static Term alpha(Material m) {
      return new Term("alpha", m.expansion(), Unit.PPM_PER_K, m.quantity(Property.ALPHA).doubt());
    }

    private void bearing(String subject, Headstock.Support support, boolean front) {
      Optional<Term> feed =
          machine.values().block("limits").map(l -> l.need("feed force").term("F"));
      Optional<Working> speed = SpindleDrive.of(machine).map(SpindleDrive::highest);
      if (speed.isEmpty() || feed.isEmpty()) {
        return;
      }
      Working load = load(feed.get(), front);
      if (support.rolling().isPresent()) {
        rolling(subject, support.rolling().get(), load, feed.get(), speed.get(), front);
      } else {
        bush(subject, support, load, speed.get());
      }
    }

    /** The load of one bearing when the slide is pushed with the full feed force. */
    private Working load(Term feed, boolean front) {
      double beyond = head.overhang() + head.chuckLength() + CutTopic.overhang(machine);
      return Working.of(
          "R",
          Unit.N,
          "F/q*sqrt(1 + p^2)*" + (front ? "(1 + b/L)" : "b/L"),
          feed,
          CutTopic.FEED_SHARE,
          CutTopic.PASSIVE_SHARE,
          Term.exact("b", beyond, Unit.MM),
          head.block().need("span").term("L"));
    }

    private void bush(String subject, Headstock.Support support, Working load, Working speed) {
      Term bore = support.block().need("bore").term("d");
      Working surface = Working.of("v", Unit.M_PER_S, "n*d/2", rename(speed, "n"), bore);
      add(subject, "surface speed at the highest speed", surface, Better.LOWER, BUSH, "");
      Working pv =
          Working.of(
              "pv",
              Unit.PV,
              "R/(d*L)*v",
              Term.of(load),
              bore,
              support.block().need("length").term("L"),
              Term.of(surface));
      add(
          subject,
          "pressure times speed at the full feed force",
          pv,
          Better.LOWER,
          BUSH,
          "at the highest speed");
      support
          .film()
          .ifPresent(
              film ->
                  add(subject, "give of the oil film", film, Better.LOWER, FILM, "usual speed"));
      if (pv.value() > BUSH_LIMIT) {
        find(
            Finding.Rank.CAUTION,
            subject + "/pressure times speed at the full feed force",
            "The bush of the "
                + subject
                + " runs hot at the highest speed under the full feed force; take a lower speed for"
                + " heavy cuts and oil it often.",
            "at most " + Numbers.significant(BUSH_LIMIT / 1000, 3) + " MPa m/s",
            BUSH);
      }
    }

    private static Term rename(Working w, String symbol) {
      return new Term(symbol, w.value(), w.unit(), w.doubt());
    }

    private void rolling(
        String subject, RollingSet set, Working load, Term feed, Working speed, boolean front) {
      double axial = (front ? feed.value() : 0) + set.preload().value();
      EquivalentLoad factors = set.factors();
      boolean above = factors.isAbove(load.value(), axial);
      List<Term> terms =
          new ArrayList<>(
              List.of(
                  Term.exact("i", set.count()),
                  set.rating(),
                  Term.exact("X", above ? factors.aboveX() : factors.belowX()),
                  Term.exact("Y", above ? factors.aboveY() : factors.belowY()),
                  Term.of(load),
                  set.preload(),
                  rename(speed, "n")));
      String thrust = front ? "(F + F0)" : "F0";
      if (front) {
        terms.add(feed);
      }
      Working life =
          Working.of("L_10", Unit.H, "1e6*2*pi*(i^0.7*C/(X*R + Y*" + thrust + "))^3/n", terms);
      add(
          subject,
          "life at the full feed force",
          life,
          Better.HIGHER,
          RollingSet.LIFE,
          "at the highest speed, nine in ten");
      StaticLoad still = set.staticFactors();
      List<Term> loads =
          new ArrayList<>(
              List.of(
                  Term.exact("i", set.count()),
                  set.staticRating(),
                  Term.exact("X0", still.x()),
                  Term.exact("Y0", still.y()),
                  Term.of(load),
                  set.preload()));
      if (front) {
        loads.add(feed);
      }
      Working safety = Working.of("s_0", Unit.ONE, "i*C0/max(R, X0*R + Y0*" + thrust + ")", loads);
      add(subject, "static safety", safety, Better.HIGHER, RollingSet.STATIC, set.words());
      if (safety.value() < LEAST_STATIC) {
        find(
            Finding.Rank.CAUTION,
            subject + "/static safety",
            "The full feed force can mark the balls of the " + subject + " and spoil its running.",
            "at least " + Numbers.significant(LEAST_STATIC, 2) + " for quiet running",
            RollingSet.STATIC);
      }
      limit(subject, set, speed);
    }

    private void limit(String subject, RollingSet set, Working speed) {
      double product = set.guide().product();
      Working limit =
          Working.check(
              "n_g",
              set.guide().speed(set.pitch(), set.speedFactor()),
              Unit.RPM,
              "k*N*pi/(30*dm)",
              Term.exact("k", set.speedFactor()),
              new Term("N", product, Unit.ONE, 0.2 * product),
              Term.exact("dm", set.pitch(), Unit.MM));
      add(subject, "speed it stands with grease", limit, Better.HIGHER, RollingSet.SPEED, "");
      if (speed.value() > limit.value()) {
        find(
            Finding.Rank.CAUTION,
            subject + "/speed it stands with grease",
            "The highest speed of the spindle is more than the " + subject + " stands.",
            "at most " + Numbers.significant(limit.shown(), 3) + " rpm",
            RollingSet.SPEED);
      }
    }

    private void add(
        String subject, String figure, Working w, Better better, Source source, String words) {
      figures.add(Figure.of(name(), subject, figure, w, better, source).exactly(words));
    }

    private void find(
        Finding.Rank rank, String figure, String sentence, String limit, Source source) {
      findings.add(new Finding(rank, name() + "/" + figure, sentence, limit, source));
    }
  }
}
