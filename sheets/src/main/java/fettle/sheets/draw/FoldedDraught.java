package fettle.sheets.draw;

import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Pattern;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Body;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Looking;
import fettle.parts.solid.View;
import fettle.sheets.dimension.Scheme;
import fettle.sheets.dimension.Side;
import fettle.sheets.dimension.Values;
import fettle.sheets.dimension.Wanted;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.List;

/** Draws a bent sheet: the bent view for shape, the developed view with all sizes, a bend table. */
final class FoldedDraught {

  private final Folded part;
  private final View bent;

  FoldedDraught(Folded part) {
    this.part = part;
    Body body = Bodies.of(part);
    this.bent = View.of(body, Brep.of(body), Looking.FRONT);
  }

  Draft at(double k) {
    Scheme scheme = new Scheme();
    Wanted.of(part).forEach(scheme::required);
    Plan front = new Plan("front", k);
    front.view(bent, Plan.Hidden.LEFT_OUT);
    front.titled("Bent");
    Plan flat = new Plan("flat", k);
    flat.titled("Developed");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Leg", "Outside", "Bend after it", "Inside R", "Direction"));
    double w = part.width().nominal();
    double x = 0;
    scheme.place("the developed length", 0);
    scheme.printed("sheet thickness");
    scheme.printed("sheet radius");
    List<Double> bends = new ArrayList<>();
    double before = 0;
    for (Folded.Leg leg : part.legs()) {
      double angle = Math.abs(leg.bend());
      double after = (part.radius() + part.thickness()) * Math.tan(angle / 2);
      double allowance = angle * (part.radius() + part.neutral() * part.thickness());
      double straight = leg.outside().nominal() - before - after;
      for (Folded.LegHoles h : leg.holes()) {
        holes(flat, scheme, h, x - before, k);
      }
      x += straight;
      if (leg.bend() != 0) {
        bends.add(x + allowance / 2);
        x += allowance;
        scheme.printed(leg.name() + " bend");
      }
      rows.add(
          List.of(
              leg.name(),
              Values.size("", leg.outside()),
              leg.bend() == 0 ? "-" : Values.degrees(angle),
              leg.bend() == 0 ? "-" : "R" + Values.number(part.radius()),
              leg.bend() == 0 ? "-" : leg.bend() > 0 ? "up" : "down"));
      before = after;
    }
    double length = x;
    flat.rectangle(0, 0, length, w);
    for (double b : bends) {
      flat.add(Mark.Stroke.line("bend", Pen.NARROW, b * k, 0, b * k, w * k));
      scheme.place("the developed length", b);
      if (scheme.join("the developed length", 0, b)) {
        flat.dimension(Side.BELOW, 0, b, 0, 0, Values.number(round(b)));
      }
    }
    scheme.place("the developed length", length);
    if (scheme.join("the developed length", 0, length)) {
      flat.dimension(Side.BELOW, 0, length, 0, 0, Values.number(round(length)));
    }
    scheme.place("the width", 0);
    scheme.place("the width", w);
    if (scheme.join("the width", 0, w)) {
      flat.dimension(Side.LEFT, 0, w, 0, 0, Values.size("", part.width()));
    }
    flat.note(
        List.of(new Point(length * 0.9, w), new Point(length * 0.7, w)),
        0,
        List.of("t = " + Values.number(part.thickness())));
    List<String> faults = new ArrayList<>(front.compose(d -> null));
    faults.addAll(flat.compose(d -> null));
    return new Draft(
        List.of(
            new Draft.Placed(front, Draft.Where.MAIN), new Draft.Placed(flat, Draft.Where.RIGHT)),
        List.of(new Table("bends", rows)),
        scheme,
        faults);
  }

  private static double round(double v) {
    return Math.round(v * 100) / 100.0;
  }

  private static void holes(Plan flat, Scheme scheme, Folded.LegHoles h, double from, double k) {
    List<Point> anchors = new ArrayList<>();
    double r = h.diameter().half();
    scheme.place("the width", 0);
    for (Pattern.At p : h.pattern().places()) {
      double x = from + p.u();
      anchors.add(new Point(x, p.v()));
      flat.add(new Mark.Arc("view:flat", Pen.OUTLINE, x * k, p.v() * k, r * k, 0, 2 * Math.PI));
      flat.cross(x * k, p.v() * k, r * k);
      scheme.place("the developed length", x);
      if (scheme.join("the developed length", 0, x)) {
        flat.dimension(Side.BELOW, 0, x, 0, p.v(), Values.number(round(x)));
      }
      scheme.place("the width", p.v());
      if (scheme.join("the width", 0, p.v())) {
        flat.dimension(Side.LEFT, 0, p.v(), 0, x, Values.number(p.v()));
      }
    }
    scheme.printed(h.name() + " diameter");
    int n = anchors.size();
    anchors.sort(java.util.Comparator.comparingDouble(a -> -a.y()));
    flat.note(anchors, r, List.of((n > 1 ? n + "× " : "") + Values.size("⌀", h.diameter())));
  }
}
