package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.loop.Calibration;
import fettle.mechanics.loop.LoopModel;
import fettle.mechanics.loop.TwinWallBed;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the lathe gives: stiffness between tool and work at the usual cut, and the share of each
 * joint and member, with what is not known of them carried through.
 */
final class RigidityTopic implements Topic {

  static final Source LOOP =
      Source.derived(
          "rigid bodies joined by 6 by 6 springs; share of an element: its part of the strain"
              + " energy; 100 lognormal samples with a fixed seed");
  private static final Source BED = Source.derived("twist and bending of two walls held by ribs");
  private static final Source LEVEL = Source.derived("small rotation about the axis of the bed");
  private static final Source PUSH =
      Source.derived("least squares with the assumed values as prior; read to 1 µm at 200 N");
  private static final double READING = 5e-6;
  private static final int SAMPLES = 100;
  private static final double LEAST_SHARE = 1e-4;
  private static final String[] WAYS = {"across", "upright", "along"};
  private static final String SUBJECT = "tool to work";
  private static final String[] SYMBOLS = {"g_x", "g_y", "g_z"};

  private final Flexes flexes;

  RigidityTopic(Flexes flexes) {
    this.flexes = flexes;
  }

  @Override
  public String name() {
    return "rigidity";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Study bed = Study.orReason(name(), "bed", () -> bed(machine));
    Study tail = Study.orReason(name(), "tailstock", () -> tailstock(machine));
    return Study.orReason(name(), SUBJECT, () -> loop(machine)).and(bed).and(tail);
  }

  private Study loop(Machine machine) {
    Optional<Stance> stance = Stance.of(machine);
    if (stance.isEmpty()) {
      return new Study(List.of(), List.of());
    }
    CuttingLoop.Closed closed = CuttingLoop.of(stance.get(), flexes);
    List<Figure> figures = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    List<LoopModel.Ranking> rankings =
        closed.model().rankings(SAMPLES, List.of(direction(0), direction(1), direction(2)));
    for (int axis = 0; axis < 3; axis++) {
      LoopModel.Ranking ranking = rankings.get(axis);
      List<Term> terms = terms(closed.model(), ranking, axis);
      figures.add(stiffness(ranking, terms, axis));
      if (axis < 2) {
        shares(ranking, terms, axis).forEach(figures::add);
      }
      if (axis == 0) {
        findings.add(softest(ranking));
        findings.add(lesson(closed.model()));
        figures.add(give(machine, terms));
      }
    }
    if (!closed.rigid().isEmpty()) {
      String who = String.join(", ", closed.rigid());
      findings.add(
          new Finding(
              Finding.Rank.NOTE, "", "Counted as rigid by themselves: " + who + ".", "", LOOP));
    }
    return new Study(figures, findings);
  }

  private static double[] direction(int axis) {
    double[] d = new double[3];
    d[axis] = 1;
    return d;
  }

  /** What each element gives, softest first, with one sigma of its doubt. */
  private static List<Term> terms(LoopModel model, LoopModel.Ranking ranking, int axis) {
    Map<String, Double> doubts = new LinkedHashMap<>();
    model.links().forEach(l -> doubts.put(l.name(), l.doubt() - 1));
    List<Term> terms = new ArrayList<>();
    for (LoopModel.Ranked r : counted(ranking)) {
      double give = r.share() * ranking.compliance();
      terms.add(
          new Term(
              SYMBOLS[axis] + (terms.size() + 1),
              give,
              Unit.MICRON_PER_N,
              give * doubts.getOrDefault(r.name(), 0.0)));
    }
    return terms;
  }

  /** What gives at all: members counted as rigid and idle screws are left out. */
  private static List<LoopModel.Ranked> counted(LoopModel.Ranking ranking) {
    return ranking.elements().stream().filter(r -> r.share() > LEAST_SHARE).toList();
  }

  private static String sum(List<Term> terms) {
    return "(" + String.join(" + ", terms.stream().map(Term::symbol).toList()) + ")";
  }

  private Figure stiffness(LoopModel.Ranking ranking, List<Term> terms, int axis) {
    Working k = Working.of("K", Unit.N_PER_MICRON, "1/" + sum(terms), terms);
    String range =
        "two in three samples lie from "
            + Numbers.significant(1e-3 / ranking.high(), 2)
            + " to "
            + Numbers.significant(1e-3 / ranking.low(), 2)
            + " N/µm";
    return Figure.of(name(), SUBJECT, "stiffness " + WAYS[axis], k, Better.HIGHER, LOOP)
        .exactly(range);
  }

  private Figure give(Machine machine, List<Term> terms) {
    List<Term> all = new ArrayList<>(terms);
    all.add(Stance.block(machine).need("force").term("F"));
    Working d = Working.of("d", Unit.MICRON, "2*F*" + sum(terms), all);
    return Figure.of(name(), SUBJECT, "diameter left too large", d, Better.LOWER, LOOP)
        .exactly("with the stated force across, at the end of the usual work");
  }

  private List<Figure> shares(LoopModel.Ranking ranking, List<Term> terms, int axis) {
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < terms.size(); i++) {
      LoopModel.Ranked r = counted(ranking).get(i);
      String formula = terms.get(i).symbol() + "/" + sum(terms);
      Working share = Working.of("s", Unit.PERCENT, formula, terms);
      String words = percent(r.low()) + " to " + percent(r.high()) + " %";
      figures.add(
          Figure.of(name(), "flex " + WAYS[axis], r.name(), share, Better.NEITHER, LOOP)
              .exactly(words));
    }
    return figures;
  }

  private static String percent(double share) {
    return Numbers.significant(100 * share, 2);
  }

  private Finding softest(LoopModel.Ranking ranking) {
    LoopModel.Ranked first = ranking.elements().get(0);
    LoopModel.Ranked next = ranking.elements().get(1);
    boolean sure = first.first() > 0.8;
    String sentence =
        "Across, most of the flex lies in: "
            + first.name()
            + " ("
            + percent(first.share())
            + " %, "
            + percent(first.low())
            + " to "
            + percent(first.high())
            + " %), then "
            + next.name()
            + " ("
            + percent(next.share())
            + " %). It is the softest of all in "
            + percent(first.first())
            + " of 100 samples"
            + (sure
                ? "."
                : ": the order is not sure. A push test, read joint by joint, would settle it.")
            + " However stiff it is made, no more than its share can be gained.";
    return new Finding(Finding.Rank.NOTE, "", sentence, "", LOOP);
  }

  /** Which reading of a push across at the cut would teach most. */
  private static Finding lesson(LoopModel model) {
    List<Double> line = new ArrayList<>(List.of(1.0, 0.0, 0.0));
    line.addAll(model.point());
    List<Calibration.Push> pushes =
        model.links().stream()
            .map(
                l ->
                    new Calibration.Push(
                        l.name(), model.tool(), model.work(), line, l.to(), l.from(), line))
            .toList();
    Calibration.Lesson lesson = Calibration.of(model).best(pushes, READING, 1, 0, 0);
    String sentence =
        "Push the tool across against the work and read between the two sides of: "
            + lesson.push().name()
            + ". Of all joints this reading teaches most: it would take away "
            + percent(lesson.gain())
            + " % of the variance of the give across. Power off and plug out.";
    return new Finding(Finding.Rank.NOTE, "", sentence, "", PUSH);
  }

  private Study bed(Machine machine) {
    List<Figure> figures = new ArrayList<>();
    for (Member m : machine.members().values()) {
      Values v = m.values();
      boolean walls = v.has("wall") && v.has("width") && v.has("height") && v.has("length");
      Optional<Material> iron =
          v.text("material").map(Materials::of).filter(x -> x.knows(Property.E));
      if (m.seat().on().isEmpty() && walls && iron.isPresent()) {
        figures.addAll(bed(machine, m, iron.get()));
      }
    }
    return new Study(figures, List.of());
  }

  private List<Figure> bed(Machine machine, Member bed, Material iron) {
    Values v = bed.values();
    Term e = new Term("E", iron.elasticity(), Unit.MPA, iron.quantity(Property.E).doubt());
    double wall = v.need("wall").value();
    double centres = v.need("width").value() - wall;
    TwinWallBed walls =
        new TwinWallBed(
            v.need("length").value(),
            wall,
            v.need("height").value(),
            centres,
            iron.elasticity(),
            0.26);
    double pair = fettle.mechanics.solids.Torsion.rectangle(wall, v.need("height").value());
    List<Term> terms =
        new ArrayList<>(
            List.of(
                e,
                Term.exact("nu", 0.26),
                Term.exact("J", pair, Unit.MM4),
                v.need("length").term("L"),
                Term.exact("c", centres, Unit.MM),
                v.need("wall").term("t"),
                v.need("height").term("h"),
                new Term("n", 7.5, Unit.ONE, 2.6)));
    Working twist =
        Working.check(
            "K_t",
            walls.twistStiffness(7.5),
            Unit.NMM_PER_RAD,
            "E/(1 + nu)*J/L + c^2/2*n*E*t*h^3/12/L^3",
            terms.toArray(new Term[0]));
    Working bend =
        Working.of(
            "K_b",
            Unit.N_PER_MICRON,
            "48*E*2*t*h^3/12/L^3",
            e,
            v.need("length").term("L"),
            v.need("wall").term("t"),
            v.need("height").term("h"));
    Term centre = machine.values().block("lathe").orElseThrow().need("centre height").term("H");
    Working taper =
        Working.of("d", Unit.MICRON, "2*H*phi", centre, Term.exact("phi", 0.02e-3, Unit.RAD));
    return List.of(
        Figure.of(
                name(),
                bed.name(),
                "stiffness against twist, end to end",
                twist,
                Better.HIGHER,
                BED)
            .exactly("ribs between free and held"),
        Figure.of(
                name(),
                bed.name(),
                "stiffness in the middle, on its ends",
                bend,
                Better.HIGHER,
                BED)
            .exactly("bending alone"),
        Figure.of(
                name(),
                bed.name(),
                "taper from a twist of 0.02 mm in 1 m",
                taper,
                Better.LOWER,
                LEVEL)
            .exactly("in diameter, where the level differs so much"));
  }

  private Study tailstock(Machine machine) {
    Optional<Tailstock> tail = Tailstock.of(machine);
    if (tail.isEmpty()) {
      return new Study(List.of(), List.of());
    }
    List<Figure> figures = new ArrayList<>();
    LoopModel model = tail.get().model();
    List<LoopModel.Ranking> rankings = model.rankings(SAMPLES, List.of(direction(0), direction(1)));
    for (int axis = 0; axis < 2; axis++) {
      LoopModel.Ranking ranking = rankings.get(axis);
      List<Term> terms = terms(model, ranking, axis);
      Working k = Working.of("K", Unit.N_PER_MICRON, "1/" + sum(terms), terms);
      String first = ranking.elements().get(0).name();
      figures.add(
          Figure.of(
                  name(),
                  "tailstock",
                  "stiffness of the centre " + WAYS[axis],
                  k,
                  Better.HIGHER,
                  LOOP)
              .exactly("most from: " + first));
    }
    return new Study(figures, List.of());
  }
}
