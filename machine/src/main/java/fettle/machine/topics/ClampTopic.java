package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Seat;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.clamps.DrawEccentric;
import fettle.mechanics.clamps.Guide;
import fettle.mechanics.screws.PowerScrew;
import fettle.mechanics.threads.ThreadDesignation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Whether a clamp holds what it must, stays shut, and asks no more than a hand gives. */
final class ClampTopic implements Topic {

  private static final Source DRAW =
      Source.derived("moments about an eccentric shaft in its bores");
  private static final Source NUT =
      Source.derived("work on the thread and under the nut, both with friction");
  private static final Source HOLD =
      Source.derived("dry friction on flat and V; the member's weight left out");
  private static final Source SAFE = Source.practice("safety of a clamp against slip, 1.5 to 2");
  private static final double SAFETY = 1.5;

  @Override
  public String name() {
    return "clamps";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Study all = new Study(List.of(), List.of());
    for (Map.Entry<String, Values> clamp : machine.values().map("clamps").entrySet()) {
      all =
          all.and(
              Study.orReason(
                  name(),
                  clamp.getKey(),
                  () -> new OneClamp(machine, clamp.getKey(), clamp.getValue()).study()));
    }
    return all;
  }

  /** The questions asked of one clamp. */
  private final class OneClamp {
    private final Machine machine;
    private final String subject;
    private final Values values;
    private final boolean eccentric;
    private final List<Term> armTerms = new ArrayList<>();
    private final String arm;
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    OneClamp(Machine machine, String subject, Values values) {
      this.machine = machine;
      this.subject = subject;
      this.values = values;
      eccentric = values.shape().equals("clamp/eccentric");
      arm = eccentric ? eccentricArm() : nutArm();
    }

    Study study() {
      Term hand = values.need("hand force").term("F_h");
      Term lever = values.need("lever length").term("l");
      List<Term> terms = new ArrayList<>(armTerms);
      terms.add(hand);
      terms.add(lever);
      Working pull =
          Working.check(
              "N",
              hand.value() * lever.value() / armPerNewton(),
              Unit.N,
              "F_h*l/(" + arm + ")",
              terms.toArray(new Term[0]));
      add("force that draws it down", pull, Better.HIGHER, eccentric ? DRAW : NUT, "");
      Guide guide =
          Guide.valueOf(values.needText("guide").toUpperCase(Locale.ROOT).replace('-', '_'));
      double vee = values.need("vee angle").value();
      Term friction = values.need("holding friction").term("mu_h");
      Term gain = Term.exact("g", guide.gain(vee));
      Working held =
          Working.check(
              "H",
              guide.held(pull.value(), 1, friction.value(), vee, 0),
              Unit.N,
              "mu_h*g*N",
              friction,
              gain,
              Term.of(pull));
      add("thrust at which it slips", held, Better.HIGHER, HOLD, "");
      if (eccentric) {
        locking();
      }
      if (isTailstock()) {
        CutTopic.thrust(machine).ifPresent(t -> drilling(t, held, friction, gain));
      }
      return new Study(figures, findings);
    }

    /** Moment for each newton of pull, as a formula. */
    private String eccentricArm() {
      armTerms.add(values.need("eccentricity").term("e"));
      armTerms.add(values.need("closes at").term("psi"));
      armTerms.add(values.need("friction").term("mu"));
      armTerms.add(values.need("eye diameter").term("d_e"));
      armTerms.add(values.need("shaft diameter").term("d_s"));
      return "e*cos(psi) + mu*(d_e + d_s)/2";
    }

    private String nutArm() {
      ThreadDesignation thread = ThreadDesignation.parse(values.needText("thread"));
      PowerScrew screw = screw(thread);
      armTerms.add(Term.exact("d2", screw.d2(), Unit.MM));
      armTerms.add(Term.exact("lambda", screw.leadAngle(), Unit.RAD));
      armTerms.add(Term.exact("alpha_n", screw.normalHalfAngle(), Unit.RAD));
      armTerms.add(values.need("friction").term("mu"));
      double face = 1.3 * thread.profile().d();
      armTerms.add(
          values
              .quantity("face diameter")
              .map(q -> q.term("d_f"))
              .orElse(new Term("d_f", face, Unit.MM, 0.1 * face)));
      return "d2/2*(cos(alpha_n)*tan(lambda) + mu)/(cos(alpha_n) - mu*tan(lambda)) + mu*d_f/2";
    }

    private static PowerScrew screw(ThreadDesignation thread) {
      return new PowerScrew(
          thread.profile().d2(), thread.lead().toDouble(), thread.form().halfAngle());
    }

    /** The same moment by the rooms of mechanics. */
    private double armPerNewton() {
      double friction = values.need("friction").value();
      if (eccentric) {
        return shaft().moment(1, values.need("closes at").value());
      }
      PowerScrew screw = screw(ThreadDesignation.parse(values.needText("thread")));
      return screw.raisingMoment(1, friction)
          + PowerScrew.collarMoment(1, friction, armTerms.get(4).value());
    }

    private DrawEccentric shaft() {
      return new DrawEccentric(
          values.need("eccentricity").value(),
          values.need("eye diameter").value() / 2,
          values.need("shaft diameter").value() / 2,
          values.need("friction").value());
    }

    private void locking() {
      Working margin =
          Working.of("m", Unit.ONE, "mu*(d_e + d_s)/2/max(1e-9, e*cos(psi))", armTerms);
      boolean shut = shaft().staysShut(values.need("closes at").value());
      add(
          "friction over what keeps it shut",
          margin,
          Better.HIGHER,
          DRAW,
          shut ? "stays shut by itself" : "springs open by itself");
      if (!shut || margin.value() - margin.doubt() < 1) {
        find(
            shut ? Finding.Rank.NOTE : Finding.Rank.CAUTION,
            "friction over what keeps it shut",
            "The lever of the "
                + subject
                + (shut ? ", oiled, may spring" : " springs")
                + " open when the lathe shakes; let it close nearer to dead centre or make the"
                + " eccentric smaller.",
            "at least 1",
            DRAW);
      }
    }

    /** A member that slides along the bed and carries one that slides along with it: a quill. */
    private boolean isTailstock() {
      Member held = machine.member(values.needText("holds"));
      return slidesAlong(held)
          && machine.members().values().stream()
              .anyMatch(
                  m -> slidesAlong(m) && m.seat().on().filter(held.name()::equals).isPresent());
    }

    private static boolean slidesAlong(Member member) {
      return member.seat() instanceof Seat.Sliding s && s.axis() == Axis.Z;
    }

    private void drilling(Working thrust, Working held, Term friction, Term gain) {
      Working safety = Working.of("S", Unit.ONE, "H/F_t", Term.of(held), Term.of(thrust));
      add(
          "safety against the largest drill",
          safety,
          Better.HIGHER,
          SAFE,
          "one short pull of the hand");
      List<Term> terms = new ArrayList<>(armTerms);
      terms.addAll(
          List.of(
              Term.exact("S", SAFETY),
              Term.of(thrust),
              friction,
              gain,
              values.need("lever length").term("l")));
      Working effort = Working.of("F_n", Unit.N, "S*F_t/(mu_h*g)*(" + arm + ")/l", terms);
      add("hand force the largest drill asks for", effort, Better.LOWER, SAFE, "1.5 times safe");
      if (safety.value() < SAFETY) {
        find(
            Finding.Rank.CAUTION,
            "safety against the largest drill",
            "The "
                + values.needText("holds")
                + " may slide under the largest drill; drill a pilot hole first, which halves the"
                + " thrust, or clamp harder. Stand clear of a drill that grabs.",
            "at least 1.5",
            SAFE);
      }
    }

    private void add(String figure, Working w, Better better, Source source, String words) {
      figures.add(Figure.of(name(), subject, figure, w, better, source).exactly(words));
    }

    private void find(
        Finding.Rank rank, String figure, String sentence, String limit, Source source) {
      findings.add(
          new Finding(rank, name() + "/" + subject + "/" + figure, sentence, limit, source));
    }
  }
}
