package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.desk.picture.BanjoPicture;
import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Unit;
import fettle.mechanics.gears.ChangeGearSearch;
import fettle.mechanics.gears.ThreadPitches;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Change gears: the best set-ups for a thread on the banjo, and the table for the door. */
final class ThreadsRoom {

  private static final Set<ChangeGearSearch.Wheels> WHEELS =
      EnumSet.allOf(ChangeGearSearch.Wheels.class);
  private static final int BEST = 6;
  private static final double ENGAGED = 0.025;
  private static final double TURN = 360;
  private static final List<ThreadPitches> LISTS =
      List.of(ThreadPitches.ISO_261, ThreadPitches.UTS, ThreadPitches.WHITWORTH, ThreadPitches.BA);

  private ThreadsRoom() {}

  static EnginePage page(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    Optional<ScrewCutting> cutting = cutting(visit, machine);
    if (cutting.isEmpty()) {
      return none(visit, chosen, machine);
    }
    ThreadPitches list = list(visit);
    String asked = visit.asked("lead");
    String lead = asked.isEmpty() ? standard(list) : asked;
    Map<String, String> kept = new LinkedHashMap<>();
    kept.put("list", list.label());
    kept.put("lead", lead);
    kept.put("pick", String.valueOf(pick(visit)));
    List<EnginePage.Section> sections = new ArrayList<>();
    sections.add(
        Closer.orReason(
            "One thread on the banjo", "set-up", () -> setUp(visit, chosen, cutting.get(), lead)));
    sections.add(table(visit, chosen, cutting.get(), list));
    sections.add(purchase(visit, chosen, machine, cutting.get(), list));
    sections.add(
        Closer.section("Look closer", "more", new EnginePage.Links(Closer.links(machine, chosen))));
    return Closer.page(visit, chosen, "Threads and change gears", "/threads", kept, "", sections);
  }

  static Optional<ScrewCutting> cutting(Visit visit, Machine machine) {
    return machine.trains().values().stream()
        .flatMap(t -> ScrewCutting.of(machine, t, visit.book().shop()).stream())
        .findFirst();
  }

  private static EnginePage none(Visit visit, Chosen chosen, Machine machine) {
    return Closer.page(
        visit,
        chosen,
        "Threads and change gears",
        "/threads",
        Map.of(),
        "In this state no change gears cut threads.",
        List.of(
            Closer.section(
                "",
                "why",
                Closer.words(
                    "It takes a train with 'use: screw cutting' and change gears in it, a banjo in"
                        + " machine.yaml and the gears in the drawer in shop.yaml.",
                    "A state with a gearbox in place of the change gears has its threads on the"
                        + " gearbox page."),
                new EnginePage.Links(Closer.links(machine, chosen)))));
  }

  private static ThreadPitches list(Visit visit) {
    return LISTS.stream()
        .filter(l -> l.label().equals(visit.asked("list")))
        .findFirst()
        .orElse(ThreadPitches.ISO_261);
  }

  private static String standard(ThreadPitches list) {
    List<Ratio> printed = list.printed();
    return list.name(printed.get(printed.size() / 2));
  }

  private static int pick(Visit visit) {
    String asked = visit.asked("pick");
    return asked.matches("[1-9]") ? Integer.parseInt(asked) : 1;
  }

  /** The set-ups for one lead, the picked one drawn. */
  private static EnginePage.Section setUp(
      Visit visit, Chosen chosen, ScrewCutting cutting, String lead) {
    EnginePage.Form form =
        new EnginePage.Form(
            "/threads",
            false,
            Map.of("list", list(visit).label()),
            List.of(
                new EnginePage.Field(
                    "lead", "lead wanted, such as '1.25 mm' or '19 tpi'", lead, List.of())),
            List.of(new EnginePage.Button("find", "Find the set-ups", true)));
    List<EnginePage.Block> blocks = new ArrayList<>(List.of(form));
    Ratio wanted = length(lead);
    List<ChangeGearSearch.Train> best = best(visit, cutting, List.of(wanted), BEST).get(0);
    if (best.isEmpty()) {
      blocks.add(
          Closer.words(
              "No set-up of two, four or six wheels from the drawer comes within 2 percent of "
                  + lead
                  + " and fits the banjo. Another gear may help: see below."));
      return new EnginePage.Section("One thread on the banjo", "set-up", "", blocks);
    }
    int pick = Math.min(pick(visit), best.size());
    picture(visit, cutting, lead, best.get(pick - 1), blocks);
    List<EnginePage.Row> rows = new ArrayList<>();
    for (int i = 1; i <= best.size(); i++) {
      ChangeGearSearch.Train train = best.get(i - 1);
      rows.add(
          new EnginePage.Row(
              i == pick ? "picked" : "",
              List.of(
                  new EnginePage.Entry(train.text(), address(visit, chosen, lead, i)),
                  EnginePage.Entry.of(Numbers.significant(train.lead().toDouble(), 7) + " mm"),
                  EnginePage.Entry.of(ppm(train)),
                  EnginePage.Entry.of(over(train)))));
    }
    blocks.add(
        new EnginePage.Table(
            "The best set-ups for " + lead + "; touch one to see it drawn",
            List.of("gears", "lead it cuts", "error", "error over 25 mm"),
            rows));
    return new EnginePage.Section("One thread on the banjo", "set-up", "", blocks);
  }

  private static void picture(
      Visit visit,
      ScrewCutting cutting,
      String lead,
      ChangeGearSearch.Train train,
      List<EnginePage.Block> blocks) {
    long degrees = Closer.turned(visit);
    BanjoPicture.Drawn drawn =
        BanjoPicture.of(
            cutting.banjo(), cutting.module(), train.wheels(), train.idler(), degrees / TURN);
    blocks.add(
        new EnginePage.Picture(
            drawn.drawing(),
            "Driver A at the left on the headstock's stud, the lead screw at the right; the slot"
                + " shows how far the studs can go.",
            new EnginePage.Turn("first driver", degrees, "")));
    List<EnginePage.Row> rows = new ArrayList<>();
    for (BanjoPicture.Room room : drawn.rooms()) {
      boolean close = room.room() < cutting.banjo().gap() + 1;
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of(room.words()),
                  EnginePage.Entry.of(
                      Numbers.fixed(room.room(), 1) + " mm" + (close ? ", close" : "")))));
    }
    for (Double stud : drawn.studs()) {
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of("stud from the lead screw"),
                  EnginePage.Entry.of(
                      Numbers.fixed(stud, 1)
                          + " mm; the slot goes from "
                          + Numbers.significant(cutting.banjo().slotLow(), 4)
                          + " to "
                          + Numbers.significant(cutting.banjo().slotHigh(), 4)))));
    }
    blocks.add(
        new EnginePage.Table(
            "Room left with " + train.text() + " for " + lead, List.of("between", "room"), rows));
    blocks.add(
        Closer.note(
            "Isolate the lathe before gears are touched; close the cover before the spindle"
                + " turns."));
  }

  private static String address(Visit visit, Chosen chosen, String lead, int pick) {
    return "/threads?"
        + Visit.query(chosen)
        + "&list="
        + Visit.coded(list(visit).label())
        + "&lead="
        + Visit.coded(lead)
        + "&pick="
        + pick
        + "#set-up";
  }

  private static List<List<ChangeGearSearch.Train>> best(
      Visit visit, ScrewCutting cutting, List<Ratio> leads, int best) {
    String key = "threads|" + cutting + "|" + leads.stream().map(Ratio::text).toList() + "|" + best;
    return visit
        .opened()
        .once(
            key,
            () ->
                ChangeGearSearch.search(cutting.query(leads, best, WHEELS)).listings().stream()
                    .map(ChangeGearSearch.Listing::best)
                    .toList());
  }

  static Ratio length(String text) {
    try {
      Quantity q = Quantity.parse(text, Dimension.LENGTH, Unit.MM);
      if (!(q.value() > 0 && q.value() <= 1000)) {
        throw Refused.wrong(
            "A lead of '" + ValuesRoom.line(text) + "' is none.", "Write '1.5 mm' or '20 tpi'.");
      }
      return q.exact();
    } catch (Quantity.NotOne e) {
      throw Refused.wrong(
          "'" + ValuesRoom.line(text) + "' is no lead; expected " + e.expected() + ".",
          "Write it with its unit, such as '1.5 mm' or '20 tpi'.");
    }
  }

  private static String ppm(ChangeGearSearch.Train train) {
    return train.exact() ? "exact" : signed(train.ppm()) + " ppm";
  }

  private static String over(ChangeGearSearch.Train train) {
    return train.exact() ? "none" : signed(train.ppm() * ENGAGED) + " µm";
  }

  private static String signed(double value) {
    String digits = Numbers.significant(Math.abs(value), 3);
    return (value < 0 ? "−" : "+") + digits;
  }

  /** The table for the headstock door: each thread of a list with its best set-up. */
  private static EnginePage.Section table(
      Visit visit, Chosen chosen, ScrewCutting cutting, ThreadPitches list) {
    List<EnginePage.Row> rows = new ArrayList<>();
    List<List<ChangeGearSearch.Train>> best = best(visit, cutting, list.leads(), 1);
    for (int i = 0; i < best.size(); i++) {
      String name = list.name(list.printed().get(i));
      List<EnginePage.Entry> entries = new ArrayList<>();
      entries.add(new EnginePage.Entry(name, address(visit, chosen, name, 1)));
      if (best.get(i).isEmpty()) {
        entries.add(EnginePage.Entry.of("none fits"));
        entries.add(EnginePage.Entry.of("–"));
      } else {
        ChangeGearSearch.Train train = best.get(i).get(0);
        entries.add(EnginePage.Entry.of(train.text()));
        entries.add(EnginePage.Entry.of(ppm(train)));
      }
      rows.add(new EnginePage.Row("", entries));
    }
    EnginePage.Form form =
        new EnginePage.Form(
            "/threads",
            false,
            Map.of(),
            List.of(
                new EnginePage.Field(
                    "list",
                    "list of threads",
                    list.label(),
                    Arrays.asList(
                        LISTS.stream().map(ThreadPitches::label).toArray(String[]::new)))),
            List.of(new EnginePage.Button("list", "Show this list", false)));
    return new EnginePage.Section(
        "Thread table",
        "table",
        "door",
        List.of(
            form,
            new EnginePage.Table(
                list.label() + " with the gears in the drawer, tumbler as for right-hand threads",
                List.of("thread", "gears", "error"),
                rows),
            Closer.note(
                "Printing this page prints the table alone, for the headstock door. Source of the"
                    + " pitches: "
                    + list.source().text()
                    + ".")));
  }

  /** Which one gear to buy adds most. */
  private static EnginePage.Section purchase(
      Visit visit, Chosen chosen, Machine machine, ScrewCutting cutting, ThreadPitches list) {
    if (!visit.asked("buy").equals("yes")) {
      String address =
          "/threads?" + Visit.query(chosen) + "&list=" + Visit.coded(list.label()) + "&buy=yes#buy";
      return Closer.section(
          "One more gear",
          "buy",
          Closer.words("Every gear from 15 to 130 teeth is tried; that takes some seconds."),
          new EnginePage.Links(
              List.of(
                  new fettle.desk.page.Shell.Link(
                      address, "which one gear to buy adds most threads?"))));
    }
    double limit =
        machine
            .values()
            .block("limits")
            .map(l -> l.need("lead error").value() * 1e6)
            .orElse(1000.0);
    String key = "buy|" + cutting + "|" + list + "|" + limit;
    List<ChangeGearSearch.Purchase> found =
        visit
            .opened()
            .once(
                key,
                () ->
                    ChangeGearSearch.purchases(
                        cutting.query(list.leads(), 1, WHEELS), 15, 130, limit));
    List<EnginePage.Row> rows =
        found.stream()
            .limit(BEST)
            .map(
                p ->
                    new EnginePage.Row(
                        "",
                        List.of(
                            EnginePage.Entry.of(p.teeth() + " teeth"),
                            EnginePage.Entry.of(
                                String.format(Locale.ROOT, "%d, now %d", p.within(), p.before())),
                            EnginePage.Entry.of(String.valueOf(p.exact())))))
            .toList();
    return Closer.section(
        "One more gear",
        "buy",
        new EnginePage.Table(
            "Gears that would help the list " + list.label() + " most",
            List.of(
                "gear",
                "threads within " + Numbers.significant(limit, 4) + " ppm",
                "of these exact"),
            rows));
  }
}
