package fettle.parts.solid;

import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Pattern;
import java.util.ArrayList;
import java.util.List;

/** The body of a bent strip of sheet, and the strip before it is bent. */
public final class FoldedBody {

  /**
   * The strip before bending; the first coordinate runs along it.
   *
   * @param length developed length [mm]
   * @param width width [mm]
   * @param bends bent zones in order
   * @param holes holes
   */
  public record Flat(double length, double width, List<Zone> bends, List<Round> holes) {
    /** Keeps its own copies. */
    public Flat {
      bends = List.copyOf(bends);
      holes = List.copyOf(holes);
    }
  }

  /**
   * A bent zone.
   *
   * @param from where it starts [mm]
   * @param to where it ends [mm]
   * @param angle angle bent through, positive upwards [rad]
   */
  public record Zone(double from, double to, double angle) {}

  /**
   * A hole in the strip.
   *
   * @param name its name
   * @param x along the strip [mm]
   * @param y across the strip [mm]
   * @param diameter diameter [mm]
   */
  public record Round(String name, double x, double y, double diameter) {}

  private final Folded part;
  private final List<double[]> lower = new ArrayList<>();
  private final List<double[]> upper = new ArrayList<>();

  private FoldedBody(Folded part) {
    this.part = part;
  }

  static Body of(Folded part) {
    return new FoldedBody(part).body();
  }

  private double setback(int bend) {
    if (bend < 0 || bend >= part.legs().size() - 1) {
      return 0;
    }
    double angle = Math.abs(part.legs().get(bend).bend());
    return (part.radius() + part.thickness()) * Math.tan(angle / 2);
  }

  private double straight(int leg) {
    double s = part.legs().get(leg).outside().nominal() - setback(leg - 1) - setback(leg);
    if (!(s > 0)) {
      throw new SolidException(
          part.legs().get(leg).name() + ": the leg is too short for its bends");
    }
    return s;
  }

  /** Returns the strip before bending. */
  public static Flat flat(Folded part) {
    FoldedBody b = new FoldedBody(part);
    double x = 0;
    List<Zone> bends = new ArrayList<>();
    List<Round> holes = new ArrayList<>();
    for (int i = 0; i < part.legs().size(); i++) {
      Folded.Leg leg = part.legs().get(i);
      for (Folded.LegHoles h : leg.holes()) {
        for (Pattern.At at : h.pattern().places()) {
          double along = x + at.u() - b.setback(i - 1);
          holes.add(new Round(h.name(), along, at.v(), h.diameter().nominal()));
        }
      }
      x += b.straight(i);
      if (leg.bend() != 0) {
        double allowance =
            Math.abs(leg.bend()) * (part.radius() + part.neutral() * part.thickness());
        bends.add(new Zone(x, x + allowance, leg.bend()));
        x += allowance;
      }
    }
    return new Flat(x, part.width().nominal(), bends, holes);
  }

  private Body body() {
    double x = 0;
    double z = 0;
    double heading = 0;
    double t = part.thickness();
    List<Primitive> holes = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < part.legs().size(); i++) {
      Folded.Leg leg = part.legs().get(i);
      double c = Math.cos(heading);
      double s = Math.sin(heading);
      for (Folded.LegHoles h : leg.holes()) {
        for (Pattern.At at : h.pattern().places()) {
          double along = at.u() - setback(i - 1);
          Vec p = new Vec(x + along * c, at.v(), z + along * s);
          Frame frame = Frame.of(p, new Vec(-s, 0, c), Vec.Y);
          Profile hole = Profile.rectangle(-1, 0, t + 1, h.diameter().half(), h.name());
          holes.add(new Primitive.Turn(frame, hole));
          names.add(h.name());
        }
      }
      corner(x, z, heading, 0);
      x += straight(i) * c;
      z += straight(i) * s;
      double bulge = Math.tan(leg.bend() / 4);
      corner(x, z, heading, bulge);
      if (leg.bend() != 0) {
        double way = Math.signum(leg.bend());
        double r = way > 0 ? part.radius() + t : part.radius();
        double cx = x - way * r * s;
        double cz = z + way * r * c;
        heading += leg.bend();
        x = cx + way * r * Math.sin(heading);
        z = cz - way * r * Math.cos(heading);
      }
    }
    Body body =
        new Body(List.of())
            .with(
                Body.Act.ADD,
                new Primitive.Push(
                    new Frame(
                        new Vec(0, part.width().nominal(), 0), Vec.X, Vec.Z, new Vec(0, -1, 0)),
                    profile(),
                    part.width().nominal()),
                "sheet");
    for (int i = 0; i < holes.size(); i++) {
      body = body.with(Body.Act.CUT, holes.get(i), names.get(i));
    }
    return body;
  }

  private void corner(double x, double z, double heading, double bulge) {
    double t = part.thickness();
    lower.add(new double[] {x, z, bulge});
    upper.add(new double[] {x - t * Math.sin(heading), z + t * Math.cos(heading), bulge});
  }

  private Profile profile() {
    int n = lower.size();
    Profile.Draft draft = Profile.start(lower.get(0)[0], lower.get(0)[1]);
    for (int i = 1; i < n; i++) {
      draft.bulge(lower.get(i)[0], lower.get(i)[1], lower.get(i - 1)[2], "sheet");
    }
    draft.line(upper.get(n - 1)[0], upper.get(n - 1)[1], "sheet");
    for (int i = n - 2; i >= 0; i--) {
      draft.bulge(upper.get(i)[0], upper.get(i)[1], -upper.get(i)[2], "sheet");
    }
    return draft.close("sheet");
  }
}
