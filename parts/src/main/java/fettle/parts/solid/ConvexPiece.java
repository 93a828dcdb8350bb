package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * A convex solid by its corners. The pieces of a body together hold all of it; holes, bores and
 * hollows may be filled, so a gap to them is never overstated.
 *
 * @param corners points whose convex hull is the piece
 * @param feature the feature it comes from
 */
public record ConvexPiece(List<Vec> corners, String feature) {

  private static final int SIDES = 24;

  /** Keeps its own copy. */
  public ConvexPiece {
    corners = List.copyOf(corners);
  }

  /** Returns pieces that together hold a body: one for each step of a turned outline. */
  public static List<ConvexPiece> of(Body body) {
    List<ConvexPiece> all = new ArrayList<>();
    for (Body.Step step : body.steps()) {
      if (step.act() == Body.Act.ADD) {
        if (step.solid() instanceof Primitive.Turn turn) {
          turned(turn, all);
        } else if (step.solid() instanceof Primitive.Push push) {
          all.add(pushed(push, step.feature()));
        }
      }
    }
    return List.copyOf(all);
  }

  private static void turned(Primitive.Turn turn, List<ConvexPiece> into) {
    for (Profile.Piece p : turn.profile().pieces()) {
      if (Math.abs(p.x1() - p.x0()) > 1e-9 && Math.max(p.y0(), p.y1()) > 1e-9) {
        int n = p.isArc() ? 8 : 1;
        for (int i = 0; i < n; i++) {
          double[] a = p.at((double) i / n);
          double[] b = p.at((i + 1.0) / n);
          double bulge = p.isArc() ? p.radius() * (1 - Math.cos(p.sweep() / n / 2)) : 0;
          List<Vec> corners = new ArrayList<>();
          ring(turn.frame(), a[0], a[1] + bulge, corners);
          ring(turn.frame(), b[0], b[1] + bulge, corners);
          into.add(new ConvexPiece(corners, p.name()));
        }
      }
    }
  }

  /** Adds the corners of a polygon round a circle. */
  private static void ring(Frame frame, double at, double radius, List<Vec> into) {
    double r = radius / Math.cos(Math.PI / SIDES);
    for (int k = 0; k < SIDES; k++) {
      double a = 2 * Math.PI * k / SIDES;
      into.add(frame.at(r * Math.cos(a), r * Math.sin(a), at));
    }
  }

  private static ConvexPiece pushed(Primitive.Push push, String feature) {
    List<Vec> corners = new ArrayList<>();
    for (Profile.Piece p : push.profile().pieces()) {
      for (double z : new double[] {0, push.height()}) {
        corners.add(push.frame().at(p.x0(), p.y0(), z));
        if (p.isArc()) {
          int n = Math.max(1, (int) Math.ceil(Math.abs(p.sweep()) / (Math.PI / 12)));
          double r = p.radius() / Math.cos(p.sweep() / n / 2);
          for (int i = 0; i < n; i++) {
            double a = p.startAngle() + p.sweep() * (i + 0.5) / n;
            corners.add(push.frame().at(p.cx() + r * Math.cos(a), p.cy() + r * Math.sin(a), z));
          }
        }
      }
    }
    return new ConvexPiece(corners, feature);
  }
}
