package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/** A simple solid: a profile turned about an axis, or pushed along one. */
public sealed interface Primitive {

  /** Tells whether a point lies inside. */
  boolean contains(Vec p);

  /** Returns the box around it. */
  Bounds bounds();

  /** Returns its faces. */
  List<Patch> patches();

  /** Returns its edges. */
  List<Curve> edges();

  /**
   * A face of a primitive.
   *
   * @param surface the surface it lies on
   * @param low lowest second parameter of a round face [mm or rad]
   * @param high highest second parameter of a round face [mm or rad]
   * @param name the feature it belongs to
   */
  record Patch(Surface surface, double low, double high, String name) {}

  /**
   * A profile turned about an axis.
   *
   * @param frame the axis is its third direction
   * @param profile first coordinate along the axis, second the distance from it, 0 or more
   */
  record Turn(Frame frame, Profile profile) implements Primitive {
    @Override
    public boolean contains(Vec p) {
      Vec q = frame.local(p);
      return profile.contains(q.z(), Math.hypot(q.x(), q.y()));
    }

    @Override
    public Bounds bounds() {
      double[] b = profile.box();
      Bounds all = Bounds.NOTHING;
      for (double x : new double[] {-b[3], b[3]}) {
        for (double y : new double[] {-b[3], b[3]}) {
          all = all.with(frame.at(x, y, b[0])).with(frame.at(x, y, b[2]));
        }
      }
      return all;
    }

    @Override
    public List<Patch> patches() {
      List<Patch> all = new ArrayList<>();
      for (Profile.Piece p : profile.pieces()) {
        if (p.y0() > 1e-12 || p.y1() > 1e-12) {
          all.add(patch(p));
        }
      }
      return all;
    }

    private Patch patch(Profile.Piece p) {
      if (p.isArc()) {
        double v0 = Math.atan2(p.x0() - p.cx(), p.y0() - p.cy());
        double v1 = v0 - p.sweep();
        Surface torus = new Surface.Torus(frame.shifted(p.cx()), p.cy(), p.radius(), (v0 + v1) / 2);
        return new Patch(torus, Math.min(v0, v1), Math.max(v0, v1), p.name());
      }
      if (Math.abs(p.x1() - p.x0()) < 1e-9) {
        return new Patch(new Surface.Plane(frame.shifted(p.x0())), 0, 0, p.name());
      }
      double low = Math.min(p.x0(), p.x1());
      double high = Math.max(p.x0(), p.x1());
      double slope = (p.y1() - p.y0()) / (p.x1() - p.x0());
      if (Math.abs(slope) < 1e-10) {
        return new Patch(new Surface.Cylinder(frame, p.y0()), low, high, p.name());
      }
      return new Patch(
          new Surface.Cone(frame.shifted(p.x0()), p.y0(), slope),
          low - p.x0(),
          high - p.x0(),
          p.name());
    }

    @Override
    public List<Curve> edges() {
      List<Curve> all = new ArrayList<>();
      for (Profile.Piece p : profile.pieces()) {
        if (p.y0() > 1e-9) {
          all.add(Curve.circle(frame.shifted(p.x0()), p.y0()));
        }
      }
      return all;
    }
  }

  /**
   * A profile pushed along an axis.
   *
   * @param frame the profile lies in its first two directions
   * @param profile the profile
   * @param height how far it is pushed along the third direction [mm]
   */
  record Push(Frame frame, Profile profile, double height) implements Primitive {
    @Override
    public boolean contains(Vec p) {
      Vec q = frame.local(p);
      return q.z() > 0 && q.z() < height && profile.contains(q.x(), q.y());
    }

    @Override
    public Bounds bounds() {
      double[] b = profile.box();
      Bounds all = Bounds.NOTHING;
      for (double x : new double[] {b[0], b[2]}) {
        for (double y : new double[] {b[1], b[3]}) {
          all = all.with(frame.at(x, y, 0)).with(frame.at(x, y, height));
        }
      }
      return all;
    }

    @Override
    public List<Patch> patches() {
      List<Patch> all = new ArrayList<>();
      String cap = profile.pieces().get(0).name();
      all.add(new Patch(new Surface.Plane(frame), 0, 0, cap));
      all.add(new Patch(new Surface.Plane(frame.shifted(height)), 0, 0, cap));
      for (Profile.Piece p : profile.pieces()) {
        if (p.isArc()) {
          Frame axis = new Frame(frame.at(p.cx(), p.cy(), 0), frame.x(), frame.y(), frame.z());
          all.add(new Patch(new Surface.Cylinder(axis, p.radius()), 0, height, p.name()));
        } else {
          Vec along = frame.direction(new Vec(p.x1() - p.x0(), p.y1() - p.y0(), 0)).unit();
          Vec out = along.cross(frame.z());
          Frame plane = new Frame(frame.at(p.x0(), p.y0(), 0), along, out.cross(along), out);
          all.add(new Patch(new Surface.Plane(plane), 0, 0, p.name()));
        }
      }
      return all;
    }

    @Override
    public List<Curve> edges() {
      List<Curve> all = new ArrayList<>();
      for (Profile.Piece p : profile.pieces()) {
        all.add(new Curve.Line(frame.at(p.x0(), p.y0(), 0), frame.z(), 0, height));
        for (double z : new double[] {0, height}) {
          if (p.isArc()) {
            Frame centre = new Frame(frame.at(p.cx(), p.cy(), z), frame.x(), frame.y(), frame.z());
            all.add(Curve.circle(centre, p.radius()));
          } else {
            Vec start = frame.at(p.x0(), p.y0(), z);
            Vec d = frame.at(p.x1(), p.y1(), z).minus(start);
            all.add(new Curve.Line(start, d.unit(), 0, d.length()));
          }
        }
      }
      return all;
    }
  }
}
