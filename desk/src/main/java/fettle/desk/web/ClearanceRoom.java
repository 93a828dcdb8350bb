package fettle.desk.web;

import fettle.desk.picture.Stand;
import fettle.desk.picture.Scene;
import fettle.desk.picture.Elevations;
import fettle.desk.page.Amount;
import fettle.desk.page.ElevationPage;
import fettle.desk.page.EnginePage;
import fettle.desk.page.Measure;
import fettle.machine.forecast.Meetings;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.topics.Clearances;
import fettle.machine.topics.Use;
import fettle.machine.topics.WorkRoom;
import fettle.mechanics.base.Unit;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.SafeGap;
import fettle.mechanics.motion.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The page of clearances: the worst pairs, one of them where it is worst, and its map. */
final class ClearanceRoom {

  static final List<String> HANDLES = List.of("at any angle", "with their slides");
  private static final int SHOWN = 16;
  private static final double CLOSED = 4;

  private ClearanceRoom() {}

  /**
   * What the page is about.
   *
   * @param visit the request
   * @param chosen the state looked at
   * @param machine the lathe in that state
   * @param use what is held where
   * @param wrong what is wrong with the positions asked for; empty if nothing is
   * @param gaps the least gap of every two members
   * @param rows the pairs, worst first
   */
  record Asked(
      Visit visit,
      Chosen chosen,
      Machine machine,
      Use use,
      String wrong,
      Clearances gaps,
      List<Clearances.Row> rows) {

    /** Returns the pair looked at: the one asked for, else the worst. */
    Optional<Clearances.Row> picked() {
      Optional<Clearances.Row> wish = gaps.row(visit.asked("one"), visit.asked("other"));
      return wish.isPresent() ? wish : rows.stream().findFirst();
    }

    String handles() {
      return Closer.oneOf(visit, "handles", HANDLES);
    }

    String query(Clearances.Row row) {
      return Visit.query(chosen)
          + "&at="
          + Visit.coded(visit.asked("at"))
          + "&handles="
          + Visit.coded(handles())
          + "&one="
          + Visit.coded(row.first())
          + "&other="
          + Visit.coded(row.second());
    }

    String length(double value) {
      return ClearanceRoom.length(value, visit.measure());
    }
  }

  static String length(double value, Measure measure) {
    double step = measure == Measure.INCH ? 0.0254 : 0.01;
    return Amount.of(Math.rint(value / step) * step, 0, Unit.MM, measure).text();
  }

  static EnginePage page(Visit visit) {
    Asked asked = asked(visit);
    List<EnginePage.Section> sections = new ArrayList<>();
    asked.picked().ifPresent(row -> sections.add(ClearancePair.section(asked, row)));
    sections.add(list(asked));
    asked
        .picked()
        .ifPresent(
            row ->
                sections.add(
                    Closer.orReason(
                        "Forbidden positions", "map", () -> ClearanceMap.section(asked, row))));
    sections.add(meetings(asked));
    WorkRoom.of(asked.machine(), asked.use()).ifPresent(r -> sections.add(room(asked, r)));
    sections.add(use(asked));
    sections.add(unsearched(asked));
    sections.add(
        Closer.section(
            "Look closer", "more", new EnginePage.Links(Closer.links(asked.machine(), asked.chosen()))));
    return Closer.page(
        visit,
        asked.chosen(),
        "Clearance over the whole travel",
        "/clearance",
        kept(asked),
        lead(asked),
        sections);
  }

  private static Asked asked(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    Use.Handles handles =
        Closer.oneOf(visit, "handles", HANDLES).equals(HANDLES.get(1))
            ? Use.Handles.GEARED
            : Use.Handles.ANY_ANGLE;
    Use use = new Use(Map.of(), handles);
    String wrong = "";
    try {
      use = Use.parse(machine, visit.asked("at"), handles);
    } catch (IllegalArgumentException e) {
      wrong = String.valueOf(e.getMessage());
    }
    Use held = use;
    String key = "clearance|" + chosen.word() + "|" + use;
    try {
      Clearances gaps = visit.opened().once(key, () -> Clearances.of(machine, held));
      List<Clearances.Row> rows =
          gaps.rows().stream().sorted(Comparator.comparingInt(r -> rank(machine, r))).toList();
      return new Asked(visit, chosen, machine, use, wrong, gaps, rows);
    } catch (IllegalArgumentException e) {
      throw Refused.wrong(
          "The gaps cannot be searched: " + e.getMessage() + ".",
          "Mend the envelopes and travels of the members.");
    }
  }

  /** Two handles that collide come first, then one with something else, then any, then the nearest. */
  private static int rank(Machine machine, Clearances.Row row) {
    if (!row.gap().touches()) {
      return 3;
    }
    int hands = (held(machine, row.first()) ? 1 : 0) + (held(machine, row.second()) ? 1 : 0);
    return 2 - hands;
  }

  private static boolean held(Machine machine, String name) {
    Member member = machine.member(name);
    return member.values().has("handle diameter") && member.seat() instanceof Seat.Turning;
  }

  private static Map<String, String> kept(Asked asked) {
    Map<String, String> kept = new LinkedHashMap<>();
    for (String name : List.of("one", "other", "at", "handles")) {
      if (!asked.visit().asked(name).isEmpty()) {
        kept.put(name, asked.visit().asked(name));
      }
    }
    return kept;
  }

  private static String lead(Asked asked) {
    long collide = asked.rows().stream().filter(r -> r.gap().touches()).count();
    Optional<Clearances.Row> near =
        asked.rows().stream().filter(r -> !r.gap().touches()).findFirst();
    String clear =
        near.map(
                r ->
                    " The nearest pair that cannot keeps "
                        + asked.length(r.gap().lower())
                        + " at least.")
            .orElse("");
    return collide == 0
        ? "Nothing can collide, wherever slides, handles and levers stand." + clear
        : collide + (collide == 1 ? " pair" : " pairs") + " can collide somewhere." + clear;
  }

  private static EnginePage.Section list(Asked asked) {
    boolean all = asked.visit().asked("all").equals("1");
    int shown = all ? asked.rows().size() : Math.min(SHOWN, asked.rows().size());
    Optional<Clearances.Row> picked = asked.picked();
    List<EnginePage.Row> rows = new ArrayList<>();
    for (Clearances.Row row : asked.rows().subList(0, shown)) {
      rows.add(line(asked, row, picked.filter(row::equals).isPresent()));
    }
    List<EnginePage.Block> blocks = new ArrayList<>();
    blocks.add(
        new EnginePage.Table(
            "Touch a pair to see it where it is worst; nowhere does it come nearer than proven",
            List.of("pair", "gap", "proven", "means"),
            rows));
    if (shown < asked.rows().size()) {
      String more =
          "/clearance?" + picked.map(asked::query).orElse("") + "&all=1#pairs";
      blocks.add(
          new EnginePage.Links(
              List.of(
                  new fettle.desk.page.Shell.Link(
                      more, "all " + asked.rows().size() + " pairs"))));
    }
    return new EnginePage.Section("Worst pairs", "pairs", "", blocks);
  }

  private static EnginePage.Row line(Asked asked, Clearances.Row row, Boolean picked) {
    Gap gap = row.gap();
    String means = means(asked.machine(), row);
    String style =
        picked
            ? "picked"
            : means.equals("collide") ? "stop" : means.startsWith("clear") ? "" : "caution";
    return new EnginePage.Row(
        style,
        List.of(
            new EnginePage.Entry(
                row.first() + " × " + row.second(), "/clearance?" + asked.query(row) + "#pair"),
            EnginePage.Entry.of(gap.touches() ? "touch" : asked.length(gap.upper())),
            EnginePage.Entry.of(gap.touches() ? "" : asked.length(gap.lower())),
            EnginePage.Entry.of(means)));
  }

  /** Returns in two words what a gap means for the hand that works there. */
  static String means(Machine machine, Clearances.Row row) {
    Gap gap = row.gap();
    if (gap.touches()) {
      return "collide";
    }
    if (!gap.certified()) {
      return "not settled";
    }
    boolean hands = held(machine, row.first()) || held(machine, row.second());
    return hands && gap.upper() > CLOSED && gap.lower() < SafeGap.FINGER.gap()
        ? "catches a finger"
        : "clear";
  }

  private static EnginePage.Section meetings(Asked asked) {
    List<String> keys = asked.chosen().state().changes();
    Meetings found =
        asked
            .visit()
            .opened()
            .once("meetings|" + String.join("+", keys), () -> Meetings.of(asked.visit().book(), keys));
    if (found.pairs().isEmpty()) {
      return Closer.section(
          "Only when two changes meet",
          "meetings",
          Closer.words("No two changes of this state collide that keep clear alone."));
    }
    List<EnginePage.Row> rows =
        found.pairs().stream()
            .map(
                m ->
                    new EnginePage.Row(
                        "stop",
                        List.of(
                            new EnginePage.Entry(
                                m.one() + " with " + m.other(),
                                "/changes?tick="
                                    + Visit.coded(m.one())
                                    + "&tick="
                                    + Visit.coded(m.other())),
                            EnginePage.Entry.of(m.first() + " × " + m.second()))))
            .toList();
    return Closer.section(
        "Only when two changes meet",
        "meetings",
        new EnginePage.Table(
            "Each change alone keeps clear", List.of("changes", "what collides"), rows));
  }

  private static EnginePage.Section room(Asked asked, WorkRoom room) {
    String to = room.to().isEmpty() ? "the end of the bed" : "the " + room.to();
    List<EnginePage.Row> rows = new ArrayList<>();
    for (WorkRoom.Swing swing : room.swings()) {
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of("over the " + swing.over()),
                  EnginePage.Entry.of(
                      swing.gap().touches()
                          ? "none: it can reach the axis"
                          : asked.length(swing.proven())))));
    }
    return Closer.section(
        "Room for work",
        "room",
        Closer.words(
            "Work of "
                + asked.length(room.length())
                + " fits between the "
                + room.from()
                + " and "
                + to
                + "."),
        new EnginePage.Table(
            "Greatest diameter that turns, wherever what is not held may stand",
            List.of("over what", "diameter"),
            rows));
  }

  private static EnginePage.Section use(Asked asked) {
    List<EnginePage.Block> blocks = new ArrayList<>();
    if (!asked.wrong().isEmpty()) {
      blocks.add(
          new EnginePage.Words(
              "notice", List.of(asked.wrong() + ". Nothing is held until this is mended.")));
    }
    Map<String, String> kept = kept(asked);
    kept.keySet().removeAll(Set.of("at", "handles"));
    blocks.add(
        new EnginePage.Form(
            "/clearance",
            false,
            kept,
            List.of(
                new EnginePage.Field(
                    "at",
                    "hold members, e.g. saddle=0 to 120 mm, cross slide=40 mm",
                    asked.visit().asked("at"),
                    List.of()),
                new EnginePage.Field("handles", "handles turn", asked.handles(), HANDLES)),
            List.of(new EnginePage.Button("", "Search so", true))));
    blocks.add(
        Closer.note(
            "At any angle is on the safe side. With their slides holds only while no handle is set"
                + " over on its shaft."));
    return new EnginePage.Section("How the lathe is used", "use", "", blocks);
  }

  private static EnginePage.Section unsearched(Asked asked) {
    List<EnginePage.Row> rows = new ArrayList<>();
    for (Mechanism.Skipped s : asked.gaps().skipped()) {
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of(s.first() + " × " + s.second()),
                  EnginePage.Entry.of(s.reason()))));
    }
    return Closer.section(
        "Not searched",
        "skipped",
        new EnginePage.Table("Look at these yourself", List.of("pair", "why"), rows),
        Closer.note(
            "Envelopes are simple solids; play, bending and chips are not in them. Keep hands clear"
                + " of moving handles, and isolate the lathe before trying a position."));
  }

  /** Returns where every member stands at a position of the mechanism, as pictures want it. */
  static Stand stand(Asked asked, double[] position) {
    Map<String, Double> given = new LinkedHashMap<>();
    for (Mechanism.Link link : asked.gaps().mechanism().links()) {
      for (fettle.mechanics.motion.Step step : link.steps()) {
        if (step instanceof fettle.mechanics.motion.Step.Slide slide) {
          given.put(link.name(), position[slide.axis()] * slide.factor());
        } else if (step instanceof fettle.mechanics.motion.Step.Turn turn) {
          double degrees = Math.toDegrees(position[turn.axis()] * turn.factor());
          given.put(link.name(), degrees > 360 || degrees < 0 ? degrees - 360 * Math.floor(degrees / 360) : degrees);
        }
      }
    }
    return Stand.of(asked.machine(), given);
  }

  /** The two nearest points of a pair, seen from the member that stands. */
  static List<Point> ends(Asked asked, Clearances.Row row) {
    Gap gap = row.gap();
    Mechanism mechanism = asked.gaps().mechanism();
    List<Point> ends = new ArrayList<>();
    for (Vector end : List.of(gap.onFirst(), gap.onSecond())) {
      Vector at = mechanism.common(row.first(), row.second(), end, gap.position());
      ends.add(new Point(at.x(), at.y(), at.z()));
    }
    return ends;
  }

  static String words(Asked asked, Clearances.Row row) {
    return row.gap().touches() ? "touch" : asked.length(row.gap().upper());
  }

  /** Points at the gap of a pair on the elevation. */
  static ElevationPage.Note drawn(Asked asked, Clearances.Row row) {
    List<Point> ends = ends(asked, row);
    Point a = ends.get(0);
    Point b = ends.get(1);
    return new ElevationPage.Note(
        (a.z() + b.z()) / 2, -(a.y() + b.y()) / 2, words(asked, row));
  }

  static String scene(Visit visit) {
    Asked asked = asked(visit);
    Clearances.Row row =
        asked
            .picked()
            .orElseThrow(
                () -> Refused.missing("No two members move against each other.", "Go on."));
    Set<String> planned =
        Chosen.of(visit.opened(), "")
            .state()
            .machine()
            .map(m -> Elevations.differing(m, asked.machine()))
            .orElse(Set.of());
    List<Point> ends = ends(asked, row);
    Scene.Mark mark =
        new Scene.Mark(
            ends.get(0), ends.get(1), words(asked, row), List.of(row.first(), row.second()));
    return Scene.json(
        asked.machine(),
        Stand.of(asked.machine(), Map.of()),
        stand(asked, row.gap().position()),
        planned,
        m -> LatheRoom.member(m, asked.chosen()),
        Optional.of(mark));
  }
}
