package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.desk.picture.LoopPicture;
import fettle.machine.lathe.Machine;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.machine.topics.RigidityPortrait;
import fettle.machine.topics.RigidityStudy;
import fettle.machine.topics.TravelMap;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the lathe gives under the cut: shares, the bent lathe, what a change costs, the travel. */
final class RigidityRoom {

  private static final String PATH = "/rigidity";
  private static final double USUAL = 100;
  private static final double MOST = 20_000;
  private static final List<String> WAYS = List.of("across", "upright");

  private RigidityRoom() {}

  static EnginePage page(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    double force = Closer.force(visit, USUAL, MOST);
    String way = Closer.oneOf(visit, "way", WAYS);
    List<EnginePage.Section> sections = new ArrayList<>();
    String lead = "The book does not tell enough of slides and spindle to reckon with them.";
    if (RigidityPortrait.of(machine, 1, 0, 0).isPresent()) {
      lead = "Where the lathe gives between tool and work, and what would help.";
      sections.add(Closer.orReason("Bent by the cut", "picture", () -> bent(machine, force, way)));
      sections.add(shares(visit, chosen, "Where it gives across", "across", "flex across"));
      sections.add(change(visit, chosen));
      sections.add(shares(visit, chosen, "Where it gives upright", "upright", "flex upright"));
      sections.add(Closer.orReason("Over the travel", "travel", () -> travel(machine)));
    }
    sections.add(
        Closer.section(
            "Every figure of rigidity",
            "figures",
            Closer.cells(
                visit,
                chosen,
                f -> f.topic().equals("rigidity") && !f.subject().startsWith("flex")),
            Closer.findings(visit, chosen, RigidityRoom::ours)));
    sections.add(
        Closer.section("Look closer", "more", new EnginePage.Links(Closer.links(machine, chosen))));
    return Closer.page(
        visit,
        chosen,
        "Rigidity between tool and work",
        PATH,
        Map.of("force", Numbers.significant(force, 5), "way", way),
        lead,
        sections);
  }

  private static boolean ours(Finding f) {
    return f.figure().startsWith("rigidity/");
  }

  private static EnginePage.Section bent(Machine machine, double force, String way) {
    boolean across = way.equals("across");
    double[] pull = across ? new double[] {force, 0, 0} : new double[] {0, -force, 0};
    RigidityPortrait portrait = RigidityPortrait.of(machine, pull).orElseThrow();
    LoopPicture.Drawn above = LoopPicture.of(portrait, LoopPicture.View.ABOVE);
    LoopPicture.Drawn end = LoopPicture.of(portrait, LoopPicture.View.END);
    EnginePage.Form ask =
        new EnginePage.Form(
            PATH,
            false,
            Map.of(),
            List.of(
                new EnginePage.Field(
                    "force", "force at the tool, N", Numbers.significant(force, 5), List.of()),
                new EnginePage.Field("way", "it pushes the tool", way, WAYS)),
            List.of(new EnginePage.Button("bend", "Bend it so", false)));
    String says =
        Numbers.significant(force, 4)
            + " N "
            + (across ? "across part" : "downwards on the tool part")
            + " tool and work by "
            + Numbers.significant(portrait.give() * 1000, 3)
            + " µm.";
    return new EnginePage.Section(
        "Bent by the cut",
        "picture",
        "",
        List.of(
            new EnginePage.Words("large-words", List.of(says)),
            new EnginePage.Picture(
                above.drawing(),
                "From above; grey at rest, blue and red bent, drawn "
                    + Numbers.significant(above.factor(), 2)
                    + " times as large. Members move as stiff boxes on their joints; the bed under"
                    + " the head counts as still.",
                EnginePage.Turn.STILL),
            new EnginePage.Picture(
                end.drawing(),
                "The same from the tailstock, " + Numbers.significant(end.factor(), 2) + " times.",
                EnginePage.Turn.STILL),
            ask));
  }

  private static EnginePage.Section shares(
      Visit visit, Chosen chosen, String title, String id, String subject) {
    List<EnginePage.Share> shares = new ArrayList<>();
    for (Figure f :
        Closer.figures(
            visit, chosen, f -> f.topic().equals("rigidity") && f.subject().equals(subject))) {
      Optional<Working> w = f.working();
      if (w.isPresent()) {
        double percent = w.get().shown();
        shares.add(
            new EnginePage.Share(
                f.name() + " (" + f.words() + ")",
                Math.rint(percent * 10) / 10,
                Numbers.significant(percent, 2) + " %"));
      }
    }
    return Closer.section(
        title,
        id,
        new EnginePage.Bars(shares),
        Closer.note(
            "In brackets where two in three samples lie, since joints are not known well. However"
                + " stiff an element is made, no more than its share can be gained."));
  }

  /** What the chosen state does against the lathe as it stands. */
  private static EnginePage.Section change(Visit visit, Chosen chosen) {
    Chosen standing = Chosen.of(visit.opened(), Chosen.STANDING);
    String title = "What the changes cost or bring";
    if (standing.state().changes().equals(chosen.state().changes())) {
      return Closer.section(
          title,
          "change",
          Closer.words("Choose another state above to see what its changes do to the rigidity."));
    }
    Machine before = LatheRoom.machine(visit, standing);
    Machine after = LatheRoom.machine(visit, chosen);
    List<Finding> findings =
        visit.asked("do").equals("cut")
            ? visit.opened().rigidity(standing.state(), chosen.state())
            : RigidityStudy.atOnce(before, after);
    List<EnginePage.Block> blocks = new ArrayList<>();
    if (findings.isEmpty()) {
      blocks.add(Closer.words("Nothing that can be told from the joints and bars of the loop."));
    } else {
      blocks.add(new EnginePage.Words("", findings.stream().map(Finding::sentence).toList()));
    }
    if (RigidityStudy.altered(before, after) && !visit.asked("do").equals("cut")) {
      blocks.add(
          new EnginePage.Form(
              PATH,
              false,
              Map.of(),
              List.of(),
              List.of(new EnginePage.Button("cut", "Reckon the cut; takes some seconds", true))));
    }
    return new EnginePage.Section(title, "change", "", blocks);
  }

  private static EnginePage.Section travel(Machine machine) {
    TravelMap map = TravelMap.of(machine).orElseThrow();
    List<EnginePage.Block> blocks = new ArrayList<>();
    blocks.add(
        new EnginePage.Picture(
            LoopPicture.overTravel(map.chucked(), "tool from the jaws, mm; work in the jaws alone"),
            "What the stated force across leaves on the diameter.",
            EnginePage.Turn.STILL));
    blocks.add(table("Work in the jaws alone", "from the jaws", map.chucked()));
    if (map.centred().size() > 1) {
      blocks.add(
          new EnginePage.Picture(
              LoopPicture.overTravel(map.centred(), "tool from the head, mm; between centres"),
              "The same between centres, the tailstock at the full distance.",
              EnginePage.Turn.STILL));
      blocks.add(table("Work between centres", "from the head", map.centred()));
    }
    return new EnginePage.Section("Over the travel", "travel", "", blocks);
  }

  private static EnginePage.Table table(
      String caption, String from, List<TravelMap.Station> stations) {
    List<EnginePage.Row> rows = new ArrayList<>();
    for (TravelMap.Station s : stations) {
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of(Numbers.significant(s.distance(), 3) + " mm"),
                  EnginePage.Entry.of(Numbers.significant(s.across() / 1000, 2) + " N/µm"),
                  EnginePage.Entry.of(Numbers.significant(1000 * s.diameter(), 2) + " µm"))));
    }
    return new EnginePage.Table(
        caption, List.of(from, "stiffness across", "left on the diameter"), rows);
  }
}
