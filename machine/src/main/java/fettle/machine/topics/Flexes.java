package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.mechanics.loop.SlideFlex;
import fettle.mechanics.loop.TwoWays;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import fettle.mechanics.solids.Body;
import fettle.mechanics.solids.Elastic;
import fettle.mechanics.solids.Patch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Flex of members by finite elements. All states of a member that are asked for are reckoned on the
 * same meshes, so that their difference is that of the metal; nothing is reckoned twice.
 */
final class Flexes {

  /** Steps of the coarser mesh are twice this: two cells through a plate, four with the finer. */
  private static final double THROUGH = 0.3;

  private static final double MOST_CELLS = 60;
  private static final double COARSEST = 14;

  /** Which members are reckoned by finite elements; the others count as rigid. */
  enum Extent {
    /** Those whose metal differs between the states. */
    CHANGED,
    /** All whose metal the book tells. */
    ALL
  }

  private final List<Machine> states;
  private final Extent extent;
  private final Consumer<String> progress;
  private final Map<Question, List<SlideFlex>> known = new LinkedHashMap<>();

  private record Question(
      Elastic material, TwoWays ways, Patch load, List<Body> states, double step) {}

  /**
   * Prepares for states of one lathe.
   *
   * @param states the states that will be held side by side
   * @param extent which members are reckoned
   * @param progress told in words what is being reckoned
   */
  Flexes(List<Machine> states, Extent extent, Consumer<String> progress) {
    this.states = List.copyOf(states);
    this.extent = extent;
    this.progress = progress;
  }

  /** Returns flexes that reckon nothing by finite elements: a first answer at once. */
  static Flexes none() {
    return new Flexes(List.of(), Extent.CHANGED, member -> {});
  }

  /** Returns the flex of a slide under what stands on it, in its own directions. */
  Optional<SlideFlex> slide(Stance stance, Member slide, TwoWays ways) {
    return MemberBody.of(slide)
        .flatMap(body -> load(stance, slide).flatMap(p -> flex(slide, MemberBody::of, ways, p)));
  }

  /** Returns the flex of a slide under a member that is bolted on it. */
  Optional<SlideFlex> under(Member slide, Member bolted, TwoWays ways) {
    Optional<Patch> load =
        WayStrips.bolted(bolted)
            .map(
                w ->
                    new Patch.Several(List.copyOf(WayStrips.moved(w, bolted.seat().at()).faces())));
    return MemberBody.of(slide)
        .flatMap(body -> load.flatMap(p -> flex(slide, MemberBody::of, ways, p)));
  }

  private Optional<Patch> load(Stance stance, Member slide) {
    int at = stance.slides().indexOf(slide);
    if (at == 0) {
      return WayStrips.post(slide).map(w -> new Patch.Several(List.copyOf(w.faces())));
    }
    Member over = stance.slides().get(at - 1);
    double travel = stance.travel().getOrDefault(over.name(), 0.0);
    Point from = stance.zero(slide);
    Point to = stance.zero(over);
    Point by = new Point(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
    return WayStrips.of(over, slide, travel)
        .map(w -> new Patch.Several(List.copyOf(WayStrips.moved(w, by).faces())));
  }

  /** Returns the flex of the bed between head and saddle. */
  Optional<SlideFlex> bed(Stance stance, Member bed, Member saddle) {
    Member head = stance.machine().member(stance.head().member().seat().on().orElseThrow());
    Optional<TwoWays> foot =
        head.seat().on().isPresent() ? WayStrips.foot(head, bed) : Optional.empty();
    double travel = stance.travel().getOrDefault(saddle.name(), 0.0);
    Optional<TwoWays> ways = WayStrips.of(saddle, bed, travel);
    Optional<Body> body = MemberBody.bed(bed);
    if (foot.isEmpty() || ways.isEmpty() || body.isEmpty()) {
      return Optional.empty();
    }
    Patch load =
        new Patch.Several(List.copyOf(WayStrips.moved(ways.get(), stance.zero(saddle)).faces()));
    return flex(bed, MemberBody::bed, WayStrips.moved(foot.get(), stance.zero(head)), load);
  }

  private Optional<SlideFlex> flex(
      Member member, Function<Member, Optional<Body>> metal, TwoWays ways, Patch load) {
    Optional<Material> material =
        member.values().text("material").map(Materials::of).filter(m -> m.knows(Property.E));
    if (material.isEmpty()) {
      return Optional.empty();
    }
    Body body = metal.apply(member).orElseThrow();
    List<Body> bodies = new ArrayList<>();
    for (Machine m : states) {
      Optional.ofNullable(m.members().get(member.name()))
          .flatMap(metal)
          .filter(b -> !bodies.contains(b))
          .ifPresent(bodies::add);
    }
    if (!bodies.contains(body)) {
      bodies.add(body);
    }
    if (extent == Extent.CHANGED && bodies.size() < 2) {
      return Optional.empty();
    }
    Elastic elastic = new Elastic(material.get().elasticity(), 0.26);
    Question q = new Question(elastic, ways, load, bodies, step(bodies));
    List<SlideFlex> all = known.get(q);
    if (all == null) {
      progress.accept(member.name());
      all = SlideFlex.of(elastic, ways, load, bodies, q.step());
      known.put(q, all);
    }
    return Optional.of(all.get(bodies.indexOf(body)));
  }

  private static double step(List<Body> bodies) {
    double longest = 0;
    double thinnest = Double.POSITIVE_INFINITY;
    for (Body b : bodies) {
      double[][] box = b.bounds();
      for (int i = 0; i < 3; i++) {
        longest = Math.max(longest, box[1][i] - box[0][i]);
        thinnest = Math.min(thinnest, box[1][i] - box[0][i]);
      }
    }
    return Math.min(COARSEST, Math.max(THROUGH * thinnest, longest / MOST_CELLS));
  }
}
