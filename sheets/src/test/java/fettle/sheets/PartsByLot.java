package fettle.sheets;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Outline;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.ScrewThread;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;

/** Valid parts drawn by lot: turned parts and blocks. */
final class PartsByLot {

  private static final int[] THREADS = {6, 8, 10, 12, 16, 20};

  private final Random lot;

  private PartsByLot(long seed) {
    this.lot = new Random(seed);
  }

  /** Returns the part of that number. */
  static Recipe part(long seed) {
    PartsByLot p = new PartsByLot(seed * 7919 + 17);
    Recipe bare = p.lot.nextInt(3) == 0 ? p.block() : p.turned();
    return GeometryByLot.of(bare, seed);
  }

  private int between(int low, int high) {
    return low + lot.nextInt(high - low + 1);
  }

  private boolean chance(double share) {
    return lot.nextDouble() < share;
  }

  private Turned turned() {
    int n = between(1, 5);
    List<Step> steps = new ArrayList<>();
    int largest = 0;
    int smallest = 200;
    int length = 0;
    int last = 0;
    for (int i = 0; i < n; i++) {
      int d = between(10, 60);
      d = d == last ? d + 3 : d;
      last = d;
      int l = between(6, 45);
      Size size = chance(0.4) ? Size.of(d, chance(0.5) ? "h6" : "k6") : Size.of(d);
      Step s = Step.cylinder("s" + i, size, chance(0.15) ? Size.of(l, "h9") : Size.of(l));
      if (i == n - 1 && chance(0.3)) {
        d = THREADS[lot.nextInt(THREADS.length)];
        int full = chance(0.5) ? 0 : Math.max(4, l - 3);
        s = Step.cylinder("s" + i, d, l).thread(ScrewThread.parse("M" + d), full, End.RIGHT);
      }
      Edge start = i == 0 && chance(0.5) ? Edge.chamfer(0.5) : Edge.SHARP;
      Edge end = i == n - 1 && chance(0.6) ? Edge.chamfer(1) : Edge.SHARP;
      steps.add(s.edges(start, end));
      largest = Math.max(largest, d);
      smallest = Math.min(smallest, d);
      length += l;
    }
    boolean bored = smallest >= 10 && chance(0.4);
    Bore bore = Bore.NONE;
    if (bored) {
      int b = Math.max(4, smallest / 2);
      bore =
          chance(0.6)
              ? Bore.of(Step.cylinder("b", Size.of(b, "H7"), Size.of(length)))
              : Bore.of(Step.cylinder("b", b, Math.max(3, length / 2)));
    }
    List<Turned.Operation> operations = new ArrayList<>();
    if (chance(0.3)) {
      HoleForm hole = HoleForm.through(Size.of(3.3));
      int at = between(2, Math.max(2, length - 3));
      operations.add(new Turned.CrossHole("pin", End.LEFT, at, 0, hole));
    }
    more(steps, bored, operations);
    return new Turned(
        Heading.of("lot", "Part drawn by lot", "C45", 7.85e-9), steps, bore, Bore.NONE, operations);
  }

  /** Grooves, keyways, flats and holes in an end, each on a step that has room for it. */
  private void more(List<Step> steps, boolean bored, List<Turned.Operation> operations) {
    double x = 0;
    boolean pinned = !operations.isEmpty();
    for (int i = 0; i < steps.size(); i++) {
      Step s = steps.get(i);
      double l = s.length().nominal();
      double d = s.diameter().nominal();
      boolean plain = s.thread() == null && !pinned && d >= 14;
      if (plain && l >= 14 && chance(0.2)) {
        operations.add(
            new Turned.Groove(
                "groove" + i, Turned.Side.OUTSIDE, End.LEFT, x + 4, Size.of(2), Size.of(d - 2), 0));
      } else if (plain && l >= 18 && !bored && chance(0.3)) {
        operations.add(
            new Turned.Keyway(
                "key" + i,
                End.LEFT,
                x + 3,
                Size.of(12),
                Size.of(4, "P9"),
                d / 2 - 2.5,
                0,
                Turned.KeywayEnds.ROUND));
      } else if (plain && l >= 16 && !bored && chance(0.2)) {
        operations.add(new Turned.Flats("flats" + i, End.LEFT, x + 3, Size.of(9), d / 2 - 1, 2, 0));
      }
      x += l;
    }
    double end = steps.get(0).diameter().nominal();
    double hole = bored ? end - 12 : end / 2;
    if (operations.isEmpty() && end >= 40 && chance(0.5)) {
      HoleForm form =
          chance(0.5)
              ? HoleForm.blind(Size.of(4), 4)
              : HoleForm.tapped(ScrewThread.parse("M4"), 4, 5);
      operations.add(
          new Turned.AxialHoles(
              "ring", End.LEFT, 0, bored ? hole + 2 : hole, between(3, 6), 0, form));
    }
  }

  private Prismatic block() {
    int a = between(40, 120);
    int b = between(30, 80);
    int c = between(10, 50);
    List<Prismatic.Operation> operations = new ArrayList<>();
    operations.add(
        new Prismatic.Holes(
            "grid",
            Face.TOP,
            chance(0.5)
                ? HoleForm.through(Size.of(5.5))
                : HoleForm.through(Size.of(5.5)).counterbore(10, 4),
            new Pattern.Grid(8, 8, 2, 2, a - 16, b - 16)));
    if (chance(0.6)) {
      operations.add(
          new Prismatic.Holes(
              "bore",
              Face.TOP,
              HoleForm.through(Size.of(between(6, 12), "H7")),
              new Pattern.At(a / 2, b / 2)));
    }
    if (chance(0.4) && c >= 20) {
      operations.add(
          new Prismatic.Holes(
              "side",
              Face.FRONT,
              HoleForm.tapped(ScrewThread.parse("M5"), 6, 7),
              new Pattern.At(a / 2 + between(-8, 8), c / 2)));
    }
    if (chance(0.5)) {
      operations.add(new Prismatic.EdgeBreak("edge", Face.TOP, Face.LEFT, Edge.chamfer(1)));
    }
    return new Prismatic(
        Heading.of("lot", "Block drawn by lot", "S235JR", 7.85e-9),
        Outline.rectangle(a, b),
        Size.of(a),
        Size.of(b),
        Size.of(c),
        operations,
        EnumSet.allOf(Face.class));
  }
}
