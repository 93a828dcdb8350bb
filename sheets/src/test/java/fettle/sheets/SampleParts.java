package fettle.sheets;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Characteristic;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Finish;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Geometry;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Knurl;
import fettle.parts.recipe.Outline;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.ScrewThread;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Tolerance;
import fettle.parts.recipe.Toothing;
import fettle.parts.recipe.Turned;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Parts of all families for golden sheets. */
final class SampleParts {

  private SampleParts() {}

  /** Returns the parts by name. */
  static Map<String, Recipe> all() {
    Map<String, Recipe> all = new LinkedHashMap<>();
    all.put("bearing-journal", journal());
    all.put("flanged-bush", bush());
    all.put("dial", dial());
    all.put("feed-shaft", shaft());
    all.put("gear", gear());
    all.put("bearing-block", block());
    all.put("clamp-lever", lever());
    all.put("chip-guard", guard());
    all.put("drilled-plate", drilled());
    all.put("toleranced-journal", journal().with(asked()));
    all.put("toleranced-block", block().with(askedOfBlock()));
    return all;
  }

  private static Geometry.Zone zone(Characteristic what, String on, double width, String... to) {
    boolean round = what == Characteristic.COAXIALITY || what == Characteristic.POSITION;
    return new Geometry.Zone(
        what, on, width, round ? Geometry.Shape.ROUND : Geometry.Shape.BETWEEN, List.of(to));
  }

  /** Every characteristic that a turned part can be held to. */
  private static Geometry asked() {
    return new Geometry(
        List.of(
            new Geometry.Datum("A", "journal"),
            new Geometry.Datum("B", "body"),
            new Geometry.Datum("C", "right face of collar")),
        List.of(
            zone(Characteristic.CYLINDRICITY, "journal", 0.004),
            zone(Characteristic.ROUNDNESS, "body", 0.003),
            zone(Characteristic.STRAIGHTNESS, "body", 0.005),
            zone(Characteristic.COAXIALITY, "body", 0.01, "A"),
            zone(Characteristic.TOTAL_RUN_OUT, "collar", 0.02, "A-B"),
            zone(Characteristic.RUN_OUT, "left face of collar", 0.01, "A-B"),
            zone(Characteristic.FLATNESS, "right face of collar", 0.01),
            zone(Characteristic.PERPENDICULARITY, "right end", 0.02, "A"),
            zone(Characteristic.POSITION, "oil", 0.2, "C", "A")));
  }

  private static Geometry askedOfBlock() {
    return new Geometry(
        List.of(
            new Geometry.Datum("A", "bottom"),
            new Geometry.Datum("B", "bore"),
            new Geometry.Datum("C", "left")),
        List.of(
            zone(Characteristic.FLATNESS, "bottom", 0.02),
            zone(Characteristic.PARALLELISM, "bore", 0.02, "A"),
            zone(Characteristic.PARALLELISM, "top", 0.05, "A"),
            zone(Characteristic.PERPENDICULARITY, "front", 0.03, "B"),
            zone(Characteristic.POSITION, "feet", 0.2, "A", "C")));
  }

  private static Heading heading(String number, String title, String material, double density) {
    return new Heading(
        number,
        title,
        number,
        material,
        density,
        "ISO 2768-m",
        Finish.cut(0.0032),
        "",
        List.of("Deburr all over"));
  }

  private static Recipe journal() {
    return new Turned(
        heading("FT-101", "Bearing journal", "C45", 7.85e-9),
        List.of(
            Step.cylinder("journal", Size.of(20, "h6"), Size.of(25))
                .finish(Finish.cut(0.0008))
                .edges(Edge.chamfer(1), Edge.SHARP),
            Step.cylinder("collar", Size.of(40), new Size(12, Tolerance.limits(-0.1, 0)))
                .edges(Edge.chamfer(0.5), Edge.chamfer(0.5)),
            Step.cylinder("body", Size.of(30, "k6"), Size.of(40)),
            Step.cylinder("nose", 16, 30)
                .thread(ScrewThread.parse("M16x1.5"), 22, End.RIGHT)
                .edges(Edge.SHARP, Edge.chamfer(1))),
        Bore.NONE,
        Bore.NONE,
        List.of(
            new Turned.Groove(
                "clip", Turned.Side.OUTSIDE, End.LEFT, 5, Size.of(1.3), Size.of(19, "h11"), 0),
            new Turned.CrossHole("oil", End.LEFT, 57, 0, HoleForm.blind(Size.of(4), 10))));
  }

  private static Recipe bush() {
    return new Turned(
        heading("FT-102", "Flanged bush", "CuSn12", 8.8e-9),
        List.of(
            Step.cylinder("flange", Size.of(50), Size.of(8)).edges(Edge.chamfer(1), Edge.SHARP),
            Step.cylinder("shank", Size.of(30, "s6"), Size.of(32))
                .edges(Edge.SHARP, Edge.chamfer(1))),
        Bore.of(
            Step.cylinder("bore", Size.of(22, "H7"), Size.of(40))
                .finish(Finish.cut(0.0016))
                .edges(Edge.chamfer(0.5), Edge.chamfer(0.5))),
        Bore.NONE,
        List.of(
            new Turned.AxialHoles(
                "screws", End.LEFT, 0, 40, 3, 0, HoleForm.through(Size.of(5.5)))));
  }

  static Recipe dial() {
    return new Turned(
        heading("FT-103", "Graduated dial", "EN AW-6082", 2.7e-9),
        List.of(
            Step.cylinder("rim", Size.of(50), Size.of(12)).edges(Edge.chamfer(0.5), Edge.SHARP),
            Step.cylinder("hub", Size.of(26), Size.of(14)).knurl(new Knurl(Knurl.Form.RGE, 0.8))),
        Bore.of(Step.cylinder("bore", Size.of(10, "H7"), Size.of(26))),
        Bore.NONE,
        List.of(
            new Turned.Graduations("scale", End.LEFT, 1, 100, 5, 10, 3, 0.1, Turned.Sense.LEFT),
            new Turned.CrossHole(
                "grub",
                End.RIGHT,
                7,
                0,
                HoleForm.tapped(ScrewThread.parse("M4"), HoleForm.THROUGH, 8))));
  }

  private static Recipe shaft() {
    return new Turned(
        heading("FT-104", "Feed shaft", "C45", 7.85e-9),
        List.of(
            Step.cylinder("left", Size.of(12, "h6"), Size.of(30))
                .edges(Edge.chamfer(0.5), new Edge.Undercut(2, 0.3)),
            Step.cylinder("middle", Size.of(18), Size.of(80)),
            Step.cylinder("right", Size.of(14, "g6"), Size.of(34))
                .edges(Edge.SHARP, Edge.chamfer(0.5))),
        Bore.NONE,
        Bore.NONE,
        List.of(
            new Turned.Keyway(
                "key", End.RIGHT, 4, Size.of(20), Size.of(5, "P9"), 4, 0, Turned.KeywayEnds.ROUND),
            new Turned.CentreHole("centre", End.LEFT, "A", 2, Turned.Stay.ALLOWED)));
  }

  private static Recipe gear() {
    Toothing teeth =
        new Toothing(
            24,
            1.5,
            Math.toRadians(20),
            0,
            0,
            36,
            32.25,
            "FT-106",
            List.of("Span over 3 teeth: 11.574"));
    return new Turned(
        heading("FT-105", "Gear 24 teeth", "C45", 7.85e-9),
        List.of(
            Step.cylinder("teeth", Size.of(39), Size.of(10)).teeth(teeth),
            Step.cylinder("hub", 24, 8)),
        Bore.of(Step.cylinder("bore", Size.of(12, "H7"), Size.of(18))),
        Bore.NONE,
        List.of());
  }

  private static Recipe block() {
    return new Prismatic(
        heading("FT-201", "Bearing block", "EN-GJL-250", 7.2e-9),
        Outline.rectangle(100, 60),
        Size.of(100),
        Size.of(60),
        Size.of(40),
        List.of(
            new Prismatic.Holes(
                "bore", Face.FRONT, HoleForm.through(Size.of(22, "H7")), new Pattern.At(50, 24)),
            new Prismatic.Holes(
                "feet",
                Face.TOP,
                HoleForm.through(Size.of(6.6)).counterbore(11, 6.6),
                new Pattern.Grid(12, 12, 2, 2, 76, 36)),
            new Prismatic.EdgeBreak("e1", Face.TOP, Face.LEFT, Edge.chamfer(2)),
            new Prismatic.EdgeBreak("e2", Face.TOP, Face.RIGHT, Edge.chamfer(2))),
        EnumSet.allOf(Face.class));
  }

  /** More than six holes on a face stand in a table. */
  private static Recipe drilled() {
    return Prismatic.block(
        heading("FT-203", "Drilled plate", "S235JR", 7.85e-9),
        140,
        90,
        12,
        new Prismatic.Holes(
            "corners",
            Face.TOP,
            HoleForm.through(Size.of(6.6)).counterbore(11, 6.6),
            new Pattern.Grid(10, 10, 2, 2, 120, 70)),
        new Prismatic.Holes(
            "row",
            Face.TOP,
            HoleForm.tapped(ScrewThread.parse("M5"), HoleForm.THROUGH, HoleForm.THROUGH),
            new Pattern.Grid(35, 45, 3, 1, 20, 0)),
        new Prismatic.Holes(
            "dowel",
            Face.TOP,
            HoleForm.through(Size.of(8, "H7")).finish(Finish.cut(0.0016)),
            new Pattern.At(110, 62)));
  }

  private static Recipe lever() {
    return new Prismatic(
        heading("FT-202", "Clamp lever", "S235JR", 7.85e-9),
        Outline.lever(60, 15, 9),
        Size.of(84),
        Size.of(30),
        Size.of(10),
        List.of(
            new Prismatic.Holes(
                "hub", Face.TOP, HoleForm.through(Size.of(12, "H7")), new Pattern.At(0, 0)),
            new Prismatic.Holes(
                "pin",
                Face.TOP,
                HoleForm.tapped(ScrewThread.parse("M6"), HoleForm.THROUGH, HoleForm.THROUGH),
                new Pattern.At(60, 0))),
        EnumSet.allOf(Face.class));
  }

  private static Recipe guard() {
    return new Folded(
        heading("FT-301", "Chip guard", "DC01", 7.85e-9),
        1.5,
        2,
        0.42,
        Size.of(80),
        List.of(
            new Folded.Leg(
                "base",
                Size.of(40),
                Math.PI / 2,
                List.of(
                    new Folded.LegHoles(
                        "fix", Size.of(5.5), new Pattern.Grid(15, 15, 1, 2, 10, 50)))),
            new Folded.Leg("wall", Size.of(60), Math.PI / 4, List.of()),
            new Folded.Leg("lip", Size.of(20), 0, List.of())));
  }
}
