package fettle.desk.picture;

import fettle.desk.page.Amount;
import fettle.desk.page.ElevationPage;
import fettle.desk.page.Measure;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.lathe.Solid;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Draws the side elevation of a lathe from the envelopes of its members. */
public final class Elevations {

  private static final double MARGIN = 60;

  private record Placed(ElevationPage.Shape shape, double depth) {}

  private Elevations() {}

  /**
   * Draws a lathe.
   *
   * @param machine the lathe
   * @param stand where its members stand
   * @param styles style of each member that is not plain
   * @param href where a member leads
   * @param measure units of the dimensions
   */
  public static ElevationPage of(
      Machine machine,
      Stand stand,
      Map<String, String> styles,
      UnaryOperator<String> href,
      Measure measure) {
    List<Placed> placed = new ArrayList<>();
    for (Member member : machine.members().values()) {
      Point zero = Objects.requireNonNull(stand.zeros().get(member.name()));
      String style = styles.getOrDefault(member.name(), "as-is");
      for (Solid solid : member.envelope().values()) {
        placed.add(shape(member.name(), href.apply(member.name()), style, zero, solid));
      }
    }
    placed.sort(Comparator.comparingDouble(Placed::depth));
    Set<String> reached = new LinkedHashSet<>();
    List<ElevationPage.Shape> shapes =
        placed.stream().map(Placed::shape).map(s -> s.reached(reached.add(s.member()))).toList();
    return framed(machine, stand, shapes, measure);
  }

  private static ElevationPage framed(
      Machine machine, Stand stand, List<ElevationPage.Shape> shapes, Measure measure) {
    double left = shapes.stream().mapToDouble(ElevationPage.Shape::x).min().orElse(0);
    double right = shapes.stream().mapToDouble(s -> s.x() + s.width()).max().orElse(100);
    double top = shapes.stream().mapToDouble(ElevationPage.Shape::y).min().orElse(-100);
    double foot = shapes.stream().mapToDouble(s -> s.y() + s.height()).max().orElse(0);
    double height = machine.values().block("lathe").orElseThrow().need("centre height").value();
    List<ElevationPage.Dimension> lines = new ArrayList<>();
    lines.add(along(left, right, foot + MARGIN * 1.7, "over all ", right - left, measure));
    slide(machine, stand)
        .ifPresent(
            d ->
                lines.add(along(d[0], d[1], foot + MARGIN * 0.7, "travel ", d[1] - d[0], measure)));
    lines.add(upright(right + MARGIN * 0.8, height, measure));
    return new ElevationPage(
        left - MARGIN / 2,
        top - MARGIN / 2,
        right - left + MARGIN * 2,
        foot - top + MARGIN * 2.7,
        -height,
        shapes,
        lines,
        List.of());
  }

  /** Returns both ends of the first long slide's zero: the saddle on its bed. */
  private static Optional<double[]> slide(Machine machine, Stand stand) {
    for (Member member : machine.members().values()) {
      if (member.seat() instanceof Seat.Sliding s && s.axis() == Axis.Z) {
        double z = Objects.requireNonNull(stand.zeros().get(member.name())).z();
        double start = z - stand.positions().getOrDefault(member.name(), 0.0);
        return Optional.of(new double[] {start, start + s.travel().value()});
      }
    }
    return Optional.empty();
  }

  private static ElevationPage.Dimension along(
      double from, double to, double y, String words, double size, Measure measure) {
    return new ElevationPage.Dimension(
        from, y, to, y, (from + to) / 2, y - 8, "", words + amount(size, measure));
  }

  private static ElevationPage.Dimension upright(double x, double height, Measure measure) {
    String turn =
        "rotate(-90 "
            + fettle.mechanics.base.Numbers.significant(x - 8, 6)
            + " "
            + fettle.mechanics.base.Numbers.significant(-height / 2, 6)
            + ")";
    return new ElevationPage.Dimension(
        x, 0, x, -height, x - 8, -height / 2, turn, amount(height, measure));
  }

  private static String amount(double size, Measure measure) {
    return Amount.of(size, 0, Unit.MM, measure).text();
  }

  private static Placed shape(String name, String href, String style, Point zero, Solid solid) {
    if (solid instanceof Solid.Box box) {
      Point corner = zero.plus(box.corner());
      return new Placed(
          new ElevationPage.Shape(
              name,
              href,
              style,
              false,
              false,
              corner.z(),
              -corner.y() - box.size().y(),
              box.size().z(),
              box.size().y()),
          corner.x() + box.size().x());
    }
    Solid.Cylinder c = (Solid.Cylinder) solid;
    Point end = zero.plus(c.end());
    double r = c.diameter() / 2;
    return switch (c.axis()) {
      case X ->
          new Placed(
              new ElevationPage.Shape(
                  name, href, style, true, false, end.z() - r, -end.y() - r, 2 * r, 2 * r),
              end.x() + c.length());
      case Y ->
          new Placed(
              new ElevationPage.Shape(
                  name,
                  href,
                  style,
                  false,
                  false,
                  end.z() - r,
                  -end.y() - c.length(),
                  2 * r,
                  c.length()),
              end.x() + r);
      case Z ->
          new Placed(
              new ElevationPage.Shape(
                  name, href, style, false, false, end.z(), -end.y() - r, c.length(), 2 * r),
              end.x() + r);
    };
  }

  /** Returns the members that are not the same on two lathes. */
  public static Set<String> differing(Machine before, Machine after) {
    Set<String> differing = new LinkedHashSet<>();
    after
        .members()
        .forEach(
            (name, member) -> {
              Member old = before.members().get(name);
              if (old == null || !same(old.values(), member.values())) {
                differing.add(name);
              }
            });
    return differing;
  }

  /** Tells whether two blocks say the same, wherever they stand. */
  private static boolean same(Values a, Values b) {
    return a.shape().equals(b.shape()) && same(a.held(), b.held());
  }

  private static boolean same(Object a, Object b) {
    if (a instanceof Values x && b instanceof Values y) {
      return same(x, y);
    } else if (a instanceof Map<?, ?> x && b instanceof Map<?, ?> y) {
      return x.keySet().equals(y.keySet())
          && x.entrySet().stream()
              .allMatch(
                  e ->
                      same(
                          Objects.requireNonNull(e.getValue()),
                          Objects.requireNonNull(y.get(e.getKey()))));
    }
    return a.equals(b);
  }
}
