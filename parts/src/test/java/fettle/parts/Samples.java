package fettle.parts;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Makers;
import fettle.parts.recipe.Outline;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.ScrewThread;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Parts of all families, invented, used by several tests. */
public final class Samples {

  private static final Edge C = Edge.chamfer(1);

  private Samples() {}

  /** Returns a heading in steel. */
  public static Heading heading() {
    return Heading.of("sample", "Sample", "C45", 7.85e-9);
  }

  /** Returns the sample of that name. */
  public static Recipe of(String name) {
    Recipe recipe = all().get(name);
    if (recipe == null) {
      throw new IllegalArgumentException("no sample is called " + name);
    }
    return recipe;
  }

  /** Returns the parts by name. */
  public static Map<String, Recipe> all() {
    Map<String, Recipe> all = new LinkedHashMap<>();
    all.put(
        "shaft",
        new Turned(
            heading(),
            List.of(
                Step.cylinder("a", 20, 30).edges(C, Edge.SHARP),
                Step.cylinder("b", 30, 10),
                Step.cylinder("c", 16, 25).edges(Edge.round(2), C)),
            Bore.NONE,
            Bore.NONE,
            List.of()));
    all.put(
        "bush",
        new Turned(
            heading(),
            List.of(
                Step.cylinder("flange", 40, 6).edges(C, Edge.SHARP),
                Step.cylinder("body", 28, 24).edges(Edge.SHARP, C)),
            Bore.of(Step.cylinder("bore", 20, 30).edges(Edge.chamfer(0.5), Edge.SHARP)),
            Bore.NONE,
            List.of(
                new Turned.AxialHoles(
                    "bolts", End.LEFT, 0, 34, 3, 0, HoleForm.through(Size.of(3.4))))));
    all.put(
        "spindle",
        new Turned(
            heading(),
            List.of(
                Step.cylinder("nose", 36, 14).edges(C, Edge.SHARP),
                Step.cylinder("flange", 50, 8),
                Step.cylinder("front", 34, 44).edges(Edge.round(1.5), Edge.SHARP),
                Step.taper("taper", 34, 30, 20),
                Step.cylinder("rear", 28, 60).edges(Edge.SHARP, C)),
            Bore.of(Step.taper("socket", 25, 20, 60), Step.cylinder("through", 17, 86)),
            Bore.NONE,
            List.of(
                new Turned.Keyway(
                    "key",
                    End.RIGHT,
                    10,
                    Size.of(20),
                    Size.of(6, "N9"),
                    10.5,
                    0,
                    Turned.KeywayEnds.ROUND),
                new Turned.Groove(
                    "groove", Turned.Side.OUTSIDE, End.RIGHT, 4, Size.of(1.6), Size.of(26.6), 0),
                new Turned.CrossHole("oil", End.LEFT, 40, 1.0, HoleForm.blind(Size.of(4), 5)),
                new Turned.Flats("flats", End.LEFT, 14, Size.of(8), 22, 2, 0))));
    all.put(
        "grip",
        new Turned(
            heading(),
            List.of(
                Step.arc("nose", 0, 16, 4, 12),
                Step.arc("body", 16, 16, 40, 60),
                Step.cylinder("tang", 8, 12).edges(Edge.SHARP, C)),
            Bore.NONE,
            Bore.NONE,
            List.of()));
    all.put(
        "nut",
        new Turned(
            heading(),
            List.of(Step.cylinder("nut", 30, 20)),
            Bore.of(
                Step.cylinder("thread", 14, 20)
                    .thread(ScrewThread.parse("Tr 14x3 LH"), 0, End.LEFT)),
            Bore.NONE,
            List.of(new Turned.Flats("hex", End.LEFT, 0, Size.of(20), 12, 6, 0))));
    all.put(
        "dial",
        new Turned(
            heading(),
            List.of(Step.cylinder("hub", 30, 8), Step.cylinder("rim", 50, 14).edges(C, C)),
            new Bore(List.of(Step.cylinder("bore", 12, 22)), HoleForm.Bottom.FLAT),
            new Bore(List.of(Step.cylinder("recess", 36, 6)), HoleForm.Bottom.FLAT),
            List.of(
                new Turned.CrossHole(
                    "set",
                    End.LEFT,
                    4,
                    0,
                    HoleForm.blind(Size.of(4.2), 9.5).bottom(HoleForm.Bottom.FLAT)))));
    all.put(
        "cross hole",
        new Turned(
            heading(),
            List.of(Step.cylinder("pin", 20, 60)),
            Bore.of(Step.cylinder("b", 8, 60)),
            Bore.NONE,
            List.of(new Turned.CrossHole("x", End.LEFT, 30, 0, HoleForm.through(Size.of(5))))));
    all.put(
        "slotted screw",
        new Turned(
            heading(),
            List.of(
                Step.cylinder("head", 16, 6).edges(C, Edge.SHARP),
                Step.cylinder("shank", 8, 30).edges(Edge.SHARP, Edge.chamfer(0.8))),
            Bore.NONE,
            Bore.NONE,
            List.of(new Turned.EndSlot("slot", End.LEFT, Size.of(2), 2.5, 0.3))));
    all.put(
        "socket screw",
        new Turned(
            heading(),
            List.of(
                Step.cylinder("head", 13, 8).edges(Edge.round(0.8), Edge.SHARP),
                Step.cylinder("shank", 8, 30).edges(Edge.SHARP, C)),
            Bore.NONE,
            Bore.NONE,
            List.of(new Turned.Socket("hex", End.LEFT, Size.of(6), 6, 4))));
    all.put(
        "bearing block",
        Prismatic.block(
            heading(),
            70,
            40,
            60,
            new Prismatic.Holes(
                "bore",
                Face.FRONT,
                HoleForm.through(Size.of(26)).counterbore(47, 14),
                new Pattern.At(35, 32)),
            new Prismatic.Holes(
                "cover",
                Face.FRONT,
                HoleForm.tapped(ScrewThread.parse("M4"), 8, 11),
                new Pattern.Circle(35, 32, 56, 4, Math.PI / 4)),
            new Prismatic.Holes(
                "feet",
                Face.TOP,
                HoleForm.through(Size.of(6.6)).counterbore(11, 30),
                new Pattern.Places(List.of(new Pattern.At(6.8, 20), new Pattern.At(63.2, 20)))),
            new Prismatic.EdgeBreak("c1", Face.TOP, Face.LEFT, Edge.chamfer(3)),
            new Prismatic.EdgeBreak("r1", Face.TOP, Face.RIGHT, Edge.round(5)),
            new Prismatic.Channel(
                "key", Face.BOTTOM, Prismatic.Along.V, 35, Size.of(12, "H7"), Size.of(3))));
    all.put(
        "cross slide",
        Prismatic.block(
            heading(),
            160,
            74,
            28,
            new Prismatic.Dovetail(
                "ways",
                Face.BOTTOM,
                Prismatic.Along.U,
                37,
                Size.of(46),
                10,
                Math.toRadians(60),
                Prismatic.DovetailKind.SLOT),
            new Prismatic.TSlot("t1", Face.TOP, Prismatic.Along.U, 18, Size.of(8), 6, 14, 5),
            new Prismatic.TSlot("t2", Face.TOP, Prismatic.Along.U, 56, Size.of(8), 6, 14, 5),
            new Prismatic.Holes(
                "swivel", Face.TOP, HoleForm.through(Size.of(10)), new Pattern.At(40, 37)),
            new Prismatic.Holes(
                "gib",
                Face.FRONT,
                HoleForm.through(Size.of(4)),
                new Pattern.Grid(20, 5, 3, 1, 60, 0)),
            new Prismatic.Pocket("relief", Face.TOP, 100, 37, Size.of(40), Size.of(16), 5, 4),
            new Prismatic.Slot(
                "slot",
                Face.TOP,
                new Pattern.At(140, 30),
                new Pattern.At(140, 44),
                Size.of(6),
                HoleForm.THROUGH)));
    all.put(
        "crossed slots",
        Prismatic.block(
            heading(),
            60,
            60,
            30,
            new Prismatic.TSlot("t1", Face.TOP, Prismatic.Along.U, 30, Size.of(8), 6, 14, 5),
            new Prismatic.Dovetail(
                "t2",
                Face.TOP,
                Prismatic.Along.V,
                30,
                Size.of(20),
                8,
                Math.toRadians(60),
                Prismatic.DovetailKind.SLOT)));
    all.put(
        "tongue",
        Prismatic.block(
            heading(),
            100,
            60,
            25,
            new Prismatic.Dovetail(
                "tongue",
                Face.TOP,
                Prismatic.Along.U,
                30,
                Size.of(40),
                8,
                Math.toRadians(60),
                Prismatic.DovetailKind.TONGUE),
            new Prismatic.Holes(
                "h",
                Face.TOP,
                HoleForm.through(Size.of(5.5)).countersink(11, Math.PI / 2),
                new Pattern.Grid(20, 30, 4, 1, 20, 0))));
    all.put(
        "lever",
        new Prismatic(
            heading(),
            Outline.lever(80, 18, 9),
            Size.of(80),
            Size.of(36),
            Size.of(12),
            List.of(
                new Prismatic.Holes(
                    "big", Face.TOP, HoleForm.through(Size.of(16, "H7")), new Pattern.At(0, 0)),
                new Prismatic.Holes(
                    "small",
                    Face.TOP,
                    HoleForm.tapped(ScrewThread.parse("M8"), HoleForm.THROUGH, HoleForm.THROUGH),
                    new Pattern.At(80, 0))),
            Set.of(Face.TOP, Face.BOTTOM)));
    all.put(
        "bossed",
        Prismatic.block(
            heading(),
            60,
            40,
            10,
            new Prismatic.Boss("boss", Face.TOP, 30, 20, Size.of(24), 12),
            new Prismatic.Holes(
                "bore", Face.TOP, HoleForm.through(Size.of(12)), new Pattern.At(30, 20))));
    all.put(
        "panel",
        new Folded(
            heading(),
            1.5,
            2,
            0.42,
            Size.of(80),
            List.of(
                new Folded.Leg(
                    "a",
                    Size.of(40),
                    Math.PI / 2,
                    List.of(
                        new Folded.LegHoles(
                            "h", Size.of(5), new Pattern.Grid(15, 20, 1, 2, 0, 40)))),
                new Folded.Leg("b", Size.of(60), -Math.PI / 3, List.of()),
                new Folded.Leg("c", Size.of(25), 0, List.of()))));
    all.put(
        "centre",
        new Turned(
            heading(),
            List.of(Step.taper("point", 0, 20, 10 * Math.sqrt(3)), Step.cylinder("shank", 20, 30)),
            Bore.NONE,
            Bore.NONE,
            List.of()));
    all.put(
        "gear",
        Makers.gear(
            heading(),
            new Makers.GearData(
                40, 1, Math.toRadians(20), 0, 0, 10, Size.of(12, "H7"), 24, 8, "pinion", List.of()),
            new Turned.BoreKeyway("key", Size.of(4, "JS9"), 7.8, 0)));
    all.put(
        "screw",
        Makers.screw(
            heading(),
            ScrewThread.parse("Tr 14x3 LH"),
            120,
            new Makers.Journal(Size.of(10, "k6"), 20),
            new Makers.Journal(Size.of(8, "h6"), 15)));
    all.put(
        "handwheel",
        Makers.handwheel(
            heading(),
            110,
            14,
            new Makers.Journal(Size.of(30), 26),
            Size.of(12, "H7"),
            ScrewThread.parse("M8")));
    all.put(
        "ring dial",
        Makers.dial(heading(), 80, 16, Size.of(30, "H7"), 120, 0.05, Turned.Sense.LEFT));
    all.put(
        "flanged nut",
        Makers.nut(
            heading(),
            ScrewThread.parse("Tr 14x3 LH"),
            Size.of(24, "h7"),
            28,
            new Makers.Journal(Size.of(42), 7),
            new Turned.AxialHoles("bolts", End.LEFT, 0, 33, 3, 0, HoleForm.through(Size.of(4.5)))));
    return all;
  }
}
