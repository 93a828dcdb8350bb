package fettle.machine.topics;

import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Train;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Working;
import fettle.mechanics.loop.BarMember;
import fettle.mechanics.loop.Compliance;
import fettle.mechanics.loop.Link;
import fettle.mechanics.loop.LoopModel;
import fettle.mechanics.loop.SlideFlex;
import fettle.mechanics.loop.TwoWays;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The lathe as springs from the tool round to the work. */
final class CuttingLoop {

  /** The bed under the head, against which all else moves. */
  static final String HEAD_END = "bed, head end";

  private static final double STEEL = 206_000;
  private static final double POISSON = 0.29;
  private static final double CONTACT = 1.6;
  private static final double GRIP = 1.8;
  private static final double GIB = 20_000;
  private static final double LEAST_BODY = 1.05;

  private final Stance stance;
  private final Machine machine;
  private final Flexes flexes;
  private final List<Link> links = new ArrayList<>();
  private final Set<String> rigid = new LinkedHashSet<>();
  private final Set<String> slides = new LinkedHashSet<>();

  private CuttingLoop(Stance stance, Flexes flexes) {
    this.stance = stance;
    this.machine = stance.machine();
    this.flexes = flexes;
  }

  /**
   * The loop and what was left out of it.
   *
   * @param model the springs
   * @param rigid members counted as rigid, for want of their features
   */
  record Closed(LoopModel model, List<String> rigid) {}

  /** Returns the loop as the lathe stands. */
  static Closed of(Stance stance, Flexes flexes) {
    return new CuttingLoop(stance, flexes).closed();
  }

  private Closed closed() {
    toolSide();
    workSide();
    Point p = stance.cut();
    LoopModel model = new LoopModel(links, "tool", "work", List.of(p.x(), p.y(), p.z()), Map.of());
    return new Closed(model, List.copyOf(rigid));
  }

  /**
   * Returns the springs with work between centres: tool, head and tailstock, each on its own part
   * of the bed.
   *
   * @param stance where the tool cuts
   * @param tail the tailstock in its own place
   * @param tip where its centre stands along the lathe [mm]
   */
  static LoopModel centred(Stance stance, Tailstock tail, double tip) {
    CuttingLoop loop = new CuttingLoop(stance, Flexes.none());
    loop.toolSide();
    loop.spindle();
    loop.tail(tail, tip);
    Point p = stance.cut();
    return new LoopModel(loop.links, "tool", HEAD_END, List.of(p.x(), p.y(), p.z()), Map.of());
  }

  private void tail(Tailstock tail, double tip) {
    Member saddle = stance.slides().get(stance.slides().size() - 1);
    Member bed = machine.member(saddle.seat().on().orElseThrow());
    Point zero = stance.zero(bed);
    double by = tip - tail.model().point().get(2);
    for (Link l : tail.model().links()) {
      List<Double> at =
          List.of(l.at().get(0) + zero.x(), l.at().get(1) + zero.y(), l.at().get(2) + by);
      String from = l.from().equals("bed") ? "bed, tail end" : l.from();
      links.add(new Link(l.name(), from, l.to(), at, l.stiffness(), l.doubt(), Map.of()));
    }
    double far = tail.model().links().get(0).at().get(2) + by;
    Optional<Compliance> bar = BedBar.of(bed, far - ways(bed, saddle));
    double[] at = array(zero);
    at[1] -= bed.values().quantity("height").map(q -> q.value() / 2).orElse(0.0);
    at[2] = far;
    links.add(
        bar.map(c -> Link.of("bed to the tail", top(bed), "bed, tail end", at, c, BedBar.DOUBT))
            .orElseGet(() -> rigid("bed to the tail", top(bed), "bed, tail end", at)));
  }

  /** Where the saddle stands along the lathe. */
  private double ways(Member bed, Member saddle) {
    return WayStrips.of(saddle, bed, stance.travel().getOrDefault(saddle.name(), 0.0))
        .map(w -> stance.zero(saddle).z() + w.middle().get(2))
        .orElse(0.0);
  }

  private static double[] array(Point p) {
    return new double[] {p.x(), p.y(), p.z()};
  }

  private static double[] array(List<Double> p) {
    return p.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void toolSide() {
    double out = Stance.block(machine).need("tool overhang").value();
    double shank = Stance.block(machine).need("shank").value();
    double[][] inwards = {{-1, 0, 0}, {0, 1, 0}, {0, 0, -1}};
    Compliance bar =
        Compliance.of(BarMember.rectangular(out, shank, shank, STEEL, POISSON)).turned(inwards);
    links.add(Link.of("tool", "post", "tool", array(stance.cut()), bar, 1.1));
    Member carrier = stance.slides().get(0);
    WayStrips.post(carrier)
        .ifPresent(
            w ->
                joint(
                    WayStrips.moved(w, stance.zero(carrier)),
                    "tool post clamp",
                    top(carrier),
                    "post"));
    for (Member slide : stance.slides()) {
      slide(slide);
    }
    bed();
  }

  static String top(Member m) {
    return m.name() + ", top";
  }

  private void joint(TwoWays w, String name, String from, String to) {
    links.add(Link.springs(name, from, to, array(w.middle()), w.springs(), CONTACT));
  }

  private void slide(Member slide) {
    Seat.Sliding seat = (Seat.Sliding) slide.seat();
    Member under = machine.member(seat.on().orElseThrow());
    double travel = stance.travel().getOrDefault(slide.name(), 0.0);
    TwoWays own =
        WayStrips.of(slide, under, travel)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "members." + slide.name() + ": needs an envelope that rests on its ways"));
    Point zero = stance.zero(slide);
    TwoWays w = WayStrips.moved(own, zero);
    String foot = slide.name() + ", foot";
    double[] springs = w.driven(0);
    links.add(
        Link.springs(
            slide.name() + " on its ways", top(under), foot, array(w.middle()), springs, CONTACT));
    drive(slide, top(under), foot, w);
    Optional<SlideFlex> flex = flexes.slide(stance, slide, own);
    if (flex.isPresent()) {
      SlideFlex f = flex.get();
      double[] at = array(f.point());
      at[0] += zero.x();
      at[1] += zero.y();
      at[2] += zero.z();
      links.add(Link.of(slide.name() + " itself", foot, top(slide), at, f.own(), doubt(slide, f)));
      slides.add(slide.name());
    } else {
      rigid.add(slide.name());
      links.add(rigid(slide.name() + " itself", foot, top(slide), array(w.middle())));
    }
  }

  /** A member counted as rigid: ten thousand times stiffer than anything on the lathe. */
  private static Link rigid(String name, String from, String to, double[] at) {
    double[] k = {1e9, 1e9, 1e9, 1e13, 1e13, 1e13};
    return Link.springs(name, from, to, at, k, 1);
  }

  private static double doubt(Member m, SlideFlex f) {
    Material material = Materials.of(m.values().needText("material"));
    double e = material.quantity(Property.E).doubt() / material.elasticity();
    return Math.max(LEAST_BODY, 1 + Math.hypot(e, f.flex().bar()));
  }

  private void drive(Member slide, String from, String to, TwoWays w) {
    double[] k = new double[6];
    double sigma = GRIP;
    String name = slide.name() + " lock";
    k[w.along()] = GIB;
    for (Train t : machine.trains().values()) {
      Element last = t.elements().get(t.elements().size() - 1);
      if (t.to().equals(slide.name()) && last instanceof Element.Screw) {
        Optional<Working> stiff = screw(t);
        if (stiff.isPresent()) {
          name = t.name() + " screw";
          k[w.along()] = stiff.get().value();
          sigma = 1 + Math.min(1, stiff.get().doubt() / stiff.get().value());
        }
      }
    }
    links.add(Link.springs(name, from, to, array(w.middle()), k, sigma));
  }

  private Optional<Working> screw(Train train) {
    return new ScrewTopic()
        .study(machine, Optional.empty()).figures().stream()
            .filter(f -> f.subject().equals(train.name()))
            .filter(f -> f.name().equals("stiffness along the axis"))
            .findFirst()
            .flatMap(Figure::working);
  }

  private void bed() {
    Member saddle = stance.slides().get(stance.slides().size() - 1);
    Member bed = machine.member(saddle.seat().on().orElseThrow());
    Optional<SlideFlex> flex = flexes.bed(stance, bed, saddle);
    if (flex.isPresent()) {
      double[] at = array(flex.get().point());
      links.add(Link.of("bed", HEAD_END, top(bed), at, flex.get().own(), doubt(bed, flex.get())));
      return;
    }
    double far = ways(bed, saddle);
    Member body = machine.member(stance.head().member().seat().on().orElse(""));
    double near =
        WayStrips.foot(body, bed).map(w -> stance.zero(body).z() + w.middle().get(2)).orElse(far);
    Optional<Compliance> bar = BedBar.of(bed, far - near);
    if (bar.isPresent()) {
      double[] at = array(stance.zero(bed));
      at[1] -= bed.values().need("height").value() / 2;
      at[2] = far;
      links.add(Link.of("bed", HEAD_END, top(bed), at, bar.get(), BedBar.DOUBT));
    } else {
      rigid.add(bed.name());
      links.add(rigid("bed", HEAD_END, top(bed), array(stance.zero(bed))));
    }
  }

  private double[] spindle() {
    Headstock head = stance.head();
    String holder = head.member().seat().on().orElse("");
    Member body = machine.member(holder);
    double[] nose = array(stance.face());
    nose[2] -= head.chucks().isEmpty() ? 0 : head.chuckLength();
    headstock(body);
    links.addAll(SpindleFlex.links(head, nose, "head", "nose"));
    return nose;
  }

  private void workSide() {
    spindle();
    jaws();
    double d = CutTopic.block(machine).need("diameter").value();
    double l = stance.cut().z() - stance.face().z();
    Material work = Materials.of(CutTopic.block(machine).needText("material"));
    double[][] alongZ = {{0, 1, 0}, {0, 0, 1}, {1, 0, 0}};
    Compliance bar =
        Compliance.of(BarMember.round(l, d, 0, work.elasticity(), POISSON)).turned(alongZ);
    Point end = stance.face().plus(new Point(0, 0, l));
    links.add(Link.of("work", "jaws", "work", array(end), bar, 1.05));
  }

  private void jaws() {
    Term k = Stance.block(machine).need("jaws").term("k");
    double b = Stance.block(machine).need("jaw length").value();
    double tilt = k.value() * b * b;
    double[] springs = {k.value(), k.value(), k.value(), tilt, tilt, tilt};
    double sigma = 1 + Math.min(1.5, k.doubt() / k.value());
    links.add(
        Link.springs("grip of the jaws", "nose", "jaws", array(stance.face()), springs, sigma));
  }

  private void headstock(Member body) {
    Optional<Member> bed = body.seat().on().map(machine::member);
    Optional<TwoWays> foot = bed.flatMap(b -> WayStrips.foot(body, b));
    if (foot.isEmpty()) {
      links.add(rigid("headstock on the bed", HEAD_END, "head", array(stance.face())));
      return;
    }
    TwoWays w = WayStrips.moved(foot.get(), stance.zero(body));
    joint(w, body.name() + " on the bed", HEAD_END, "head, foot");
    Optional<BarMember> upright =
        Boxes.foot(body)
            .flatMap(b -> Uprights.of(body, b, stance.face().y() - stance.zero(body).y()));
    double[] at = array(w.middle());
    if (upright.isPresent()) {
      at[1] += upright.get().length();
      links.add(
          Link.of(
              body.name() + " itself",
              "head, foot",
              "head",
              at,
              Compliance.of(upright.get()).turned(Uprights.AXES),
              1.3));
    } else {
      rigid.add(body.name());
      links.add(rigid(body.name() + " itself", "head, foot", "head", at));
    }
  }
}
