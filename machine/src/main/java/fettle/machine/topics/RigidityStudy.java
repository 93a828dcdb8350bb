package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Seat;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.loop.LoopModel;
import fettle.mechanics.loop.SlideFlex;
import fettle.mechanics.loop.TwoWays;
import fettle.mechanics.solids.Rigidity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Rigidity of two states of a lathe, and in one sentence what a cut into a slide costs. */
public final class RigidityStudy {

  private static final Source CUT =
      Source.derived(
          "finite elements: 8-node boxes with incompatible modes, both states on the same two"
              + " meshes, the slide on the springs of its ways");
  private static final Source BRITTLE =
      Source.practice("grey iron is brittle; the nut of a T-slot pries its lip up");
  private static final String[] WAYS = {"across", "upright", "along"};
  private static final double LEAST_LOSS = 5e-4;

  /** What findings speak of that tell the difference of two states, not one of them. */
  public static final String DIFFERENCE = "rigidity/difference";

  /** How much is reckoned by finite elements. */
  public enum Depth {
    /** Members whose metal the change alters; the others count as rigid by themselves. */
    CHANGED,
    /** All members whose metal the book tells. */
    ALL
  }

  private RigidityStudy() {}

  /**
   * Returns the studies of both states; what the change costs stands with the second.
   *
   * @param before the lathe before
   * @param after the lathe after, perhaps the same
   * @param depth how much is reckoned by finite elements
   * @param progress told the members as they are reckoned
   */
  public static List<Study> of(
      Machine before, Machine after, Depth depth, Consumer<String> progress) {
    Flexes.Extent extent = depth == Depth.ALL ? Flexes.Extent.ALL : Flexes.Extent.CHANGED;
    Flexes flexes = new Flexes(List.of(before, after), extent, progress);
    RigidityTopic topic = new RigidityTopic(flexes);
    Study old = topic.study(before, Optional.empty());
    if (before.equals(after)) {
      return List.of(old, old);
    }
    Study now = topic.study(after, Optional.empty());
    return List.of(old, now.and(new Study(List.of(), difference(before, after, flexes))));
  }

  /**
   * What a change costs or brings, with members whose metal it alters reckoned by finite elements:
   * a few seconds of work.
   *
   * @param before the lathe before
   * @param after the lathe after
   */
  public static List<Finding> difference(Machine before, Machine after) {
    Flexes.Extent extent = Flexes.Extent.CHANGED;
    return difference(before, after, new Flexes(List.of(before, after), extent, member -> {}));
  }

  private static List<Finding> difference(Machine before, Machine after, Flexes flexes) {
    Study cost = Study.orReason("rigidity", "cost of the cut", () -> cost(before, after, flexes));
    return cost.and(compared(before, after, flexes)).findings();
  }

  /**
   * What a change does to the rigidity, as far as it can be told at once: joints, bearings and
   * bars. Members whose metal is altered are named, not reckoned.
   *
   * @param before the lathe before
   * @param after the lathe after
   */
  public static List<Finding> atOnce(Machine before, Machine after) {
    List<Finding> findings = new ArrayList<>();
    for (Member m : after.members().values()) {
      if (altered(before, m)) {
        String sentence =
            "The change alters the metal of the "
                + m.name()
                + ". How much rigidity that costs is not in these figures: 'fettle rigidity'"
                + " reckons it by finite elements, in seconds.";
        findings.add(note(sentence, CUT));
      }
    }
    findings.addAll(compared(before, after, Flexes.none()).findings());
    return findings;
  }

  /** Tells whether the metal of a member is altered, told feature by feature in both states. */
  public static boolean altered(Machine before, Machine after) {
    return after.members().values().stream().anyMatch(m -> altered(before, m));
  }

  private static boolean altered(Machine before, Member is) {
    Member was = before.members().get(is.name());
    return was != null && !MemberBody.of(was).equals(MemberBody.of(is));
  }

  /** In one sentence, how much stiffer the loop is and which shares moved. */
  private static Study compared(Machine before, Machine after, Flexes flexes) {
    return Study.orReason(
        "rigidity",
        "loop before and after",
        () -> {
          Optional<Stance> old = Stance.of(before);
          Optional<Stance> now = Stance.of(after);
          if (old.isEmpty() || now.isEmpty()) {
            return new Study(List.of(), List.of());
          }
          LoopModel a = CuttingLoop.of(old.get(), flexes).model();
          LoopModel b = CuttingLoop.of(now.get(), flexes).model();
          return new Study(List.of(), compared(a, b));
        });
  }

  private static List<Finding> compared(LoopModel before, LoopModel after) {
    if (!before.elements().equals(after.elements())) {
      return List.of();
    }
    double[] lost = before.lost(after, 100, 1, 0, 0);
    if (!(Math.abs(lost[0]) > LEAST_LOSS)) {
      return List.of();
    }
    boolean sure = lost[1] * lost[2] > 0;
    String sentence =
        "Between tool and work, across, the change makes the lathe "
            + Numbers.fixed(100 * Math.abs(lost[0]), 1)
            + " % "
            + (lost[0] < 0 ? "stiffer" : "softer")
            + (sure ? "" : ", which is within its doubt")
            + " (two in three samples lie from "
            + signed(-lost[2])
            + " to "
            + signed(-lost[1])
            + " %; what is not known of the joints it leaves alone cancels). Share of the flex: "
            + shares(before, after)
            + ".";
    return List.of(note(sentence, RigidityTopic.LOOP));
  }

  private static String signed(double share) {
    return (share < 0 ? "−" : "+") + Numbers.fixed(100 * Math.abs(share), 1);
  }

  /** The three elements whose share moved most. */
  private static String shares(LoopModel before, LoopModel after) {
    Map<String, Double> was = new HashMap<>();
    before.shares(1, 0, 0).forEach(s -> was.put(s.name(), s.share()));
    return after.shares(1, 0, 0).stream()
        .sorted(
            Comparator.comparingDouble(s -> -Math.abs(s.share() - was.getOrDefault(s.name(), 0.0))))
        .limit(3)
        .map(
            s ->
                s.name()
                    + " "
                    + Numbers.significant(100 * was.getOrDefault(s.name(), 0.0), 2)
                    + " % before, "
                    + Numbers.significant(100 * s.share(), 2)
                    + " % after")
        .collect(Collectors.joining("; "));
  }

  private static Study cost(Machine before, Machine after, Flexes flexes) {
    Optional<Stance> old = Stance.of(before);
    Optional<Stance> now = Stance.of(after);
    List<Finding> findings = new ArrayList<>();
    if (old.isPresent() && now.isPresent()) {
      for (Member slide : now.get().slides()) {
        Member was = before.members().get(slide.name());
        if (was != null
            && MemberBody.of(was).isPresent()
            && MemberBody.of(slide).isPresent()
            && !MemberBody.of(was).equals(MemberBody.of(slide))) {
          findings.addAll(cost(old.get(), now.get(), was, slide, flexes));
        }
      }
    }
    return new Study(List.of(), findings);
  }

  private static List<Finding> cost(
      Stance old, Stance now, Member was, Member slide, Flexes flexes) {
    Member under = now.machine().member(((Seat.Sliding) slide.seat()).on().orElseThrow());
    Optional<TwoWays> ways =
        WayStrips.of(slide, under, now.travel().getOrDefault(slide.name(), 0.0));
    if (ways.isEmpty()) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    Optional<SlideFlex> a = flexes.slide(old, was, ways.get());
    Optional<SlideFlex> b = flexes.slide(now, slide, ways.get());
    if (a.isPresent() && b.isPresent()) {
      findings.add(
          note(
              sentence(slide.name(), "under the tool", a.get(), b.get()) + atTool(old, now, flexes),
              CUT));
    }
    for (Member m : now.machine().members().values()) {
      boolean on =
          m.seat() instanceof Seat.Bolted s && s.on().filter(slide.name()::equals).isPresent();
      if (on) {
        Optional<SlideFlex> c = flexes.under(was, m, ways.get());
        Optional<SlideFlex> d = flexes.under(slide, m, ways.get());
        if (c.isPresent() && d.isPresent()) {
          findings.add(
              note(sentence(slide.name(), "under the " + m.name(), c.get(), d.get()), CUT));
        }
      }
    }
    findings.add(
        new Finding(
            Finding.Rank.CAUTION,
            DIFFERENCE,
            "A thin lip or web in grey iron can crack under a clamp without warning, and milling an"
                + " old casting may warp it by more than it loses in rigidity: rough it, let it"
                + " rest, scrape it after. Strength and shock are not judged here.",
            "",
            BRITTLE));
    return findings;
  }

  private static Finding note(String sentence, Source source) {
    return new Finding(Finding.Rank.NOTE, DIFFERENCE, sentence, "", source);
  }

  private static String sentence(String slide, String where, SlideFlex a, SlideFlex b) {
    List<String> losses = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      double[] w = new double[6];
      w[axis] = 1;
      Rigidity.Estimate kept = a.flex().kept(b.flex(), w);
      losses.add(loss(kept) + " " + WAYS[axis]);
    }
    return "The cut takes from the "
        + slide
        + " on its ways, "
        + where
        + ": "
        + String.join(", ", losses)
        + " of its rigidity (error of the mesh; it is the same metal, so the doubt of the iron"
        + " cancels).";
  }

  /** A loss in percent with its error bar; a bar below a tenth of a percent says no more. */
  private static String loss(Rigidity.Estimate kept) {
    double lost = 100 * (1 - kept.value());
    double bar = Math.max(0.1, 100 * kept.bar());
    int digits = bar < 1 ? 1 : 0;
    return Numbers.fixed(lost, digits) + " % ± " + Numbers.fixed(bar, digits) + " %";
  }

  private static String atTool(Stance old, Stance now, Flexes flexes) {
    LoopModel before = CuttingLoop.of(old, flexes).model();
    double[] lost = before.lost(CuttingLoop.of(now, flexes).model(), 100, 1, 0, 0);
    return " Between tool and work, across, that is "
        + Numbers.fixed(100 * lost[0], 2)
        + " % (two in three samples lie from "
        + Numbers.fixed(100 * lost[1], 2)
        + " to "
        + Numbers.fixed(100 * lost[2], 2)
        + " %).";
  }
}
