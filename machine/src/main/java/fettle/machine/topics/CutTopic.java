package fettle.machine.topics;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Reading;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Node;
import fettle.machine.text.Place;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.cutting.Chatter;
import fettle.mechanics.cutting.CuttingForce;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import fettle.mechanics.shafts.HeldWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The largest cut the lathe carries in a stated work, speed by speed, and what limits it. */
final class CutTopic implements Topic {

  /** Feed force over cutting force. */
  static final Term FEED_SHARE = new Term("q", 0.4, Unit.ONE, 0.1);

  /** Passive force over cutting force. */
  static final Term PASSIVE_SHARE = new Term("p", 0.35, Unit.ONE, 0.1);

  private static final Term THRUST_SHARE = new Term("s", 0.6, Unit.ONE, 0.15);
  private static final Term ORIENTATION = new Term("u", 0.5, Unit.ONE, 0.2);
  private static final double POINT = Math.toRadians(118);
  private static final String SUBJECT = "usual work";
  private static final Source LIMITS = Source.derived("the smallest of all limits rules");
  private static final Source KIENZLE =
      Source.memory("Kienzle and Victor, 1957; VDI 3206", "kc = kc1.1 h^-mc, h not below 0.03 mm");
  private static final Source SPRINGS =
      Source.derived("springs in series: spindle, work and tool give together");
  private static final Source SINGING =
      Source.memory("Tlusty; Tobias", "regenerative chatter of one mode, orthogonal turning");
  private static final Source MARKS = Source.derived("feed marks of a round nose");
  private static final Source DRILL =
      Source.derived("Kienzle on two lips at half the point angle; thrust share by practice");

  @Override
  public String name() {
    return "cutting";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Material work = Materials.of(block(machine).needText("material"));
    return work.knows(Property.KC11) && work.knows(Property.MC)
        ? Study.orReason(name(), SUBJECT, () -> new OneWork(machine, work).study())
        : new Study(List.of(), List.of());
  }

  /** Returns the work and tool by which cuts are judged; the usual ones if the book has none. */
  static Values block(Machine machine) {
    return machine
        .values()
        .block("cutting")
        .orElseGet(
            () ->
                new Reading(Dictionary.standard())
                    .read("cutting", new Node.Mapping(Map.of(), Place.file(""))));
  }

  /**
   * Returns how far the usual work stands out of the chuck.
   *
   * @return overhang [mm]
   */
  static double overhang(Machine machine) {
    return block(machine).need("overhang").value();
  }

  private static Term property(Material material, Property property, String symbol) {
    return new Term(
        symbol,
        material.quantity(property).value(),
        property.unit(),
        material.quantity(property).doubt());
  }

  /** Returns the thrust of the largest drill in the usual work, if its cutting force is known. */
  static Optional<Working> thrust(Machine machine) {
    Values block = block(machine);
    Material work = Materials.of(block.needText("material"));
    if (!work.knows(Property.KC11) || !work.knows(Property.MC)) {
      return Optional.empty();
    }
    Term unit = property(work, Property.KC11, "kc11");
    Term exponent = property(work, Property.MC, "mc");
    Term drill = block.need("drill").term("d");
    Term feed = block.need("drill feed").term("f");
    CuttingForce lip =
        new CuttingForce(
            unit.value(), exponent.value(), feed.value() / 2, drill.value() / 2, POINT / 2, 1);
    return Optional.of(
        Working.check(
            "F_t",
            2 * lip.main() * THRUST_SHARE.value(),
            Unit.N,
            "s*d*f/2*kc11*max(h_0, f/2*sin(sigma/2))^-mc",
            THRUST_SHARE,
            drill,
            feed,
            unit,
            exponent,
            Term.exact("h_0", CuttingForce.THINNEST, Unit.MM),
            Term.exact("sigma", POINT, Unit.DEG)));
  }

  /** The questions asked of one work. */
  private final class OneWork {
    private final Machine machine;
    private final Values block;
    private final Material work;
    private final Working specific;
    private final Term feed;
    private final List<Figure> figures = new ArrayList<>();
    private @Nullable Working most;
    private String best = "";

    OneWork(Machine machine, Material work) {
      this.machine = machine;
      this.work = work;
      block = block(machine);
      feed = block.need("feed").term("f");
      Term unit = property(work, Property.KC11, "kc11");
      Term exponent = property(work, Property.MC, "mc");
      specific =
          Working.check(
              "kc",
              new CuttingForce(unit.value(), exponent.value(), feed.value(), 1, edge(), 1)
                  .specific(),
              Unit.MPA,
              "kc11*max(h_0, f*sin(kappa))^-mc",
              unit,
              exponent,
              feed,
              Term.exact("h_0", CuttingForce.THINNEST, Unit.MM),
              block.need("edge angle").term("kappa"));
    }

    private double edge() {
      return block.need("edge angle").value();
    }

    Study study() {
      Optional<Working> stiffness = Headstock.of(machine).map(this::stiffness);
      stiffness.ifPresent(this::finishing);
      Optional<Working> quiet = stiffness.map(this::chatter);
      SpindleDrive.of(machine)
          .ifPresent(drive -> drive.steps().forEach(s -> deepest(drive, s.getKey(), quiet)));
      mostRemoved();
      Working finish =
          Working.of("Rz", Unit.MICRON, "f^2/(8*r)", feed, block.need("nose radius").term("r"));
      add("height of the feed marks", finish, Better.LOWER, MARKS, "at best");
      thrust(machine)
          .ifPresent(t -> add("thrust of the largest drill", t, Better.NEITHER, DRILL, words()));
      return new Study(figures, List.of());
    }

    private String words() {
      return "into " + work.designation();
    }

    private Working stiffness(Headstock head) {
      List<Term> terms = new ArrayList<>(head.gives(head.chuckLength() + overhang(machine)));
      double e = work.elasticity();
      double diameter = block.need("diameter").value();
      double length = block.need("overhang").value();
      Working bar =
          Working.check(
              "g_w",
              HeldWork.chucked(
                  1, length, HeldWork.bending(e, diameter, 0), Double.POSITIVE_INFINITY),
              Unit.NM_PER_N,
              "64*l^3/(3*pi*E*d^4)",
              block.need("overhang").term("l"),
              property(work, Property.E, "E"),
              block.need("diameter").term("d"));
      terms.add(Term.of(bar));
      terms.add(block.need("tool stiffness").term("k_t"));
      Working k =
          Working.of("K", Unit.N_PER_MICRON, "1/(g_b + g_q + g_f + g_r + g_w + 1/k_t)", terms);
      add("stiffness between work and tool", k, Better.HIGHER, SPRINGS, "grip of the jaws rigid");
      return k;
    }

    private void finishing(Working stiffness) {
      Working depth =
          Working.of(
              "a_f",
              Unit.MM,
              "K*delta/(p*kc*f)",
              Term.of(stiffness),
              block.need("give").term("delta"),
              PASSIVE_SHARE,
              Term.of(specific),
              feed);
      add("deepest finishing cut within the give", depth, Better.HIGHER, SPRINGS, "");
    }

    private Working chatter(Working stiffness) {
      Term damping = block.need("damping").term("zeta");
      double kf = specific.value() * Math.sqrt(1.25) * ORIENTATION.value();
      Working depth =
          Working.check(
              "a_c",
              new Chatter(stiffness.value(), damping.value(), 100, kf).limitWidth()
                  * Math.sin(edge()),
              Unit.MM,
              "2*K*zeta*(1 + zeta)/(kc*sqrt(1.25)*u)*sin(kappa)",
              Term.of(stiffness),
              damping,
              Term.of(specific),
              ORIENTATION,
              block.need("edge angle").term("kappa"));
      add("deepest cut that cannot sing at any speed", depth, Better.HIGHER, SINGING, "");
      return depth;
    }

    private void deepest(SpindleDrive drive, String step, Optional<Working> quiet) {
      Working speed =
          Working.of(
              "v",
              Unit.M_PER_MIN,
              "n*d/2",
              Term.of(drive.speed(step, drive.rated())),
              block.need("diameter").term("d"));
      List<Term> terms =
          new ArrayList<>(
              List.of(
                  Term.of(DriveTopic.power(drive, step)), Term.of(specific), feed, Term.of(speed)));
      String power = "P/(kc*f*v)";
      String formula = power;
      String rules = "limited by power";
      double least = Working.of("a", Unit.MM, power, terms).value();
      Optional<Values> limits = machine.values().block("limits");
      if (limits.isPresent()) {
        terms.add(limits.get().need("feed force").term("F"));
        terms.add(FEED_SHARE);
        String push = "F/(q*kc*f)";
        formula = "min(" + formula + ", " + push + ")";
        double pushed = Working.of("a", Unit.MM, push, terms).value();
        rules = pushed < least ? "limited by the feed force" : rules;
        least = Math.min(least, pushed);
      }
      double limit = least;
      if (quiet.filter(q -> q.value() < limit).isPresent()) {
        rules += ", may sing from " + Numbers.significant(quiet.get().shown(), 2) + " mm on";
      }
      Term tool = block.need("speed limit").term("v_t");
      boolean fast = speed.value() > tool.value();
      Working depth = Working.of("a", Unit.MM, formula, terms);
      add(
          SpindleDrive.named("deepest cut", step),
          depth,
          Better.HIGHER,
          LIMITS,
          rules + (fast ? "; too fast for the tool" : ""));
      Working removed =
          Working.of("Q", Unit.CM3_PER_MIN, "a*f*v", Term.of(depth), feed, Term.of(speed));
      if (!fast && (most == null || removed.value() > most.value())) {
        most = removed;
        best = step;
      }
    }

    private void mostRemoved() {
      if (most != null) {
        add("most metal removed", most, Better.HIGHER, KIENZLE, best);
      }
    }

    private void add(String figure, Working w, Better better, Source source, String words) {
      figures.add(Figure.of(name(), SUBJECT, figure, w, better, source).exactly(words));
    }
  }
}
