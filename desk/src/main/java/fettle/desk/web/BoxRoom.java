package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.planning.gearbox.BoxWish;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The gearbox page: searching for the box, looking at it, trying its levers, keeping it. */
final class BoxRoom {

  private static final long FIRST = 1_500_000;
  private static final long MOST = 24_000_000;
  private static final int MOST_TARGETS = 31;
  private static final double PATIENCE = 1200;

  private BoxRoom() {}

  static EnginePage page(Visit visit, BoxJobs jobs) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    BoxJobs.Wish wish = wish(visit);
    Map<String, String> kept = asked(wish);
    Optional<BoxJobs.Job> job = jobs.running(wish);
    Optional<BoxJobs.Found> found = jobs.kept(wish);
    Optional<ScrewCutting> cutting = cutting(visit, machine);
    List<EnginePage.Section> sections = new ArrayList<>();
    EnginePage.Section work = work(wish, job, found, address(chosen, kept, ""));
    if (!work.blocks().isEmpty()) {
      sections.add(work);
    }
    String lead =
        "No box has been looked for yet; the search below finds the one with the fewest wheels.";
    if (found.isPresent()) {
      lead = lead(found.get());
      if (cutting.isPresent()) {
        FoundBox.of(found.get(), wish, cutting.get())
            .ifPresentOrElse(
                box -> sections.addAll(box.sections(visit, chosen, kept)),
                () ->
                    sections.add(
                        Closer.section(
                            "",
                            "box",
                            Closer.words(
                                "This box would need a wheel of more than 200 teeth; ask for fewer"
                                    + " threads."))));
      }
    }
    if (cutting.isEmpty()) {
      sections.add(
          Closer.section(
              "",
              "why",
              Closer.words(
                  "To be drawn and written into the book, a box needs a train with 'use: screw"
                      + " cutting', its lead screw, and the module of the change gears in"
                      + " shop.yaml.")));
    }
    sections.add(wishes(wish));
    found.ifPresent(f -> sections.add(proof(f)));
    sections.add(
        Closer.section("Look closer", "more", new EnginePage.Links(Closer.links(machine, chosen))));
    return Closer.page(
        visit, chosen, "A gearbox for the threads", "/gearbox", kept, lead, sections);
  }

  /** In a state that has a box already, the lathe as it stands says what the box replaces. */
  static Optional<ScrewCutting> cutting(Visit visit, Machine machine) {
    return ThreadsRoom.cutting(visit, machine)
        .or(
            () ->
                Chosen.of(visit.opened(), Chosen.STANDING)
                    .state()
                    .machine()
                    .flatMap(m -> ThreadsRoom.cutting(visit, m)));
  }

  private static String lead(BoxJobs.Found found) {
    int wheels = found.design().wheels();
    return found.proven()
        ? "The fewest wheels that give all these threads exactly: " + wheels + ", proven."
        : "Best box so far: " + wheels + " wheels; none can have fewer than " + found.bound() + ".";
  }

  static BoxJobs.Wish wish(Visit visit) {
    BoxWish book = BoxWish.of(visit.book().shop());
    return new BoxJobs.Wish(
        numbers(visit, "leads", written(book.leads()), 0.05, 100),
        numbers(visit, "perinch", written(book.perInch()), 0.5, 200));
  }

  /** What the workshop wants to cut, as far as it can be written with four decimals. */
  private static String written(List<Ratio> numbers) {
    return numbers.stream()
        .filter(n -> n.times(10_000).isWhole())
        .map(n -> new BigDecimal(n.decimal(4)).stripTrailingZeros().toPlainString())
        .limit(MOST_TARGETS)
        .collect(Collectors.joining(" "));
  }

  private static List<String> numbers(
      Visit visit, String name, String otherwise, double least, double most) {
    String asked = visit.asked(name).strip();
    String text = asked.isEmpty() ? otherwise : asked;
    if (text.isEmpty()) {
      return List.of();
    }
    List<String> numbers = Arrays.stream(text.split("[\\s,;]+")).distinct().toList();
    if (numbers.size() > MOST_TARGETS) {
      throw Refused.wrong(
          "A box for " + numbers.size() + " threads of one kind is too much to ask.",
          "Ask for at most " + MOST_TARGETS + " of each kind.");
    }
    for (String number : numbers) {
      boolean sound = number.matches("\\d{1,3}(\\.\\d{1,4})?");
      if (!sound || !inside(new BigDecimal(number).doubleValue(), least, most)) {
        throw Refused.wrong(
            "'" + ValuesRoom.line(number) + "' is no thread a box can be made for.",
            "Write plain numbers from "
                + Numbers.significant(least, 3)
                + " to "
                + Numbers.significant(most, 4)
                + ", with spaces between them.");
      }
    }
    return numbers.stream()
        .map(n -> new BigDecimal(n).stripTrailingZeros().toPlainString())
        .toList();
  }

  private static boolean inside(double value, double least, double most) {
    return value >= least && value <= most;
  }

  private static Map<String, String> asked(BoxJobs.Wish wish) {
    Map<String, String> kept = new LinkedHashMap<>();
    kept.put("leads", String.join(" ", wish.leads()));
    kept.put("perinch", String.join(" ", wish.perInch()));
    return kept;
  }

  static String address(Chosen chosen, Map<String, String> kept, String more) {
    StringBuilder address = new StringBuilder("/gearbox?").append(Visit.query(chosen));
    kept.forEach((k, v) -> address.append('&').append(k).append('=').append(Visit.coded(v)));
    return address.append(more).toString();
  }

  /** The search: start it, watch it, stop it, take it up again. */
  private static EnginePage.Section work(
      BoxJobs.Wish wish, Optional<BoxJobs.Job> job, Optional<BoxJobs.Found> found, String here) {
    List<EnginePage.Block> blocks = new ArrayList<>();
    if (job.isPresent()) {
      blocks.add(progress(job.get(), here));
      blocks.add(
          button(wish, new EnginePage.Button("stop", "Stop, and keep the best found", false)));
    } else if (found.isEmpty()) {
      blocks.add(
          Closer.words(
              "Every linked set of multiplier ratios is tried; that takes from seconds to some"
                  + " minutes and can be stopped at any time."));
      blocks.add(button(wish, new EnginePage.Button("start", "Find the box", true)));
    } else if (!found.get().proven()) {
      blocks.add(
          Closer.words(
              "The search was ended before the proof was complete. It can be taken up again from"
                  + " this box, with four times the work."));
      blocks.add(button(wish, new EnginePage.Button("start", "Search on", true)));
    }
    return new EnginePage.Section(blocks.isEmpty() ? "" : "The search", "work", "", blocks);
  }

  private static EnginePage.Form button(BoxJobs.Wish wish, EnginePage.Button button) {
    return new EnginePage.Form("/gearbox", true, asked(wish), List.of(), List.of(button));
  }

  private static EnginePage.Work progress(BoxJobs.Job job, String here) {
    double share = Math.min(1, (double) job.progress().sets() / job.sets());
    double seconds = job.seconds();
    int best = job.progress().bestWheels();
    List<String> lines = new ArrayList<>();
    lines.add(
        job.stopping()
            ? "Stopping; the best box found is being kept."
            : "Trying multipliers of "
                + job.progress().multipliers()
                + (job.progress().multipliers() == 1 ? " ratio" : " ratios")
                + " against the cone: "
                + job.progress().sets()
                + " sets so far.");
    if (best > 0) {
      int bound = job.progress().bound();
      lines.add(
          "Best box so far "
              + best
              + " wheels; none can have fewer than "
              + bound
              + ", a gap of "
              + Math.round(100.0 * (best - bound) / best)
              + " percent.");
    }
    double more = share > 0 ? seconds * (1 - share) / share : Double.POSITIVE_INFINITY;
    String remaining =
        more < PATIENCE ? at(more) + " more at most" : "how long still cannot be told yet";
    lines.add("Running for " + at(seconds) + "; " + remaining + ".");
    return new EnginePage.Work(here, lines, Math.rint(share * 1000) / 10);
  }

  private static String at(double seconds) {
    return seconds < 90
        ? Math.round(seconds) + " seconds"
        : Numbers.significant(seconds / 60, 2) + " minutes";
  }

  private static EnginePage.Section wishes(BoxJobs.Wish wish) {
    return Closer.section(
        "Threads wanted",
        "wanted",
        new EnginePage.Form(
            "/gearbox",
            false,
            Map.of(),
            List.of(
                new EnginePage.Field(
                    "leads", "leads in millimetres", String.join(" ", wish.leads()), List.of()),
                new EnginePage.Field(
                    "perinch", "threads per inch", String.join(" ", wish.perInch()), List.of())),
            List.of(new EnginePage.Button("ask", "Ask for these", false))));
  }

  private static EnginePage.Section proof(BoxJobs.Found found) {
    return Closer.section(
        "How it is known",
        "proof",
        new EnginePage.Words("", found.proof()),
        Closer.note(
            "Stored with the book in the folder .reckoned; deleting it only means searching"
                + " again."));
  }

  /** Does what a button of the page asks; returns where to go next. */
  static String act(Visit visit, BoxJobs jobs, Shelf shelf) {
    BoxJobs.Wish wish = wish(visit);
    Chosen chosen = visit.chosen();
    String here = address(chosen, asked(wish), "");
    switch (visit.asked("do")) {
      case "start" -> {
        long sets = jobs.kept(wish).map(f -> Math.min(MOST, 4 * f.sets())).orElse(FIRST);
        jobs.start(wish, sets);
      }
      case "stop" -> jobs.stop();
      case "keep" -> {
        return keep(visit, jobs, shelf, wish);
      }
      default -> throw Refused.wrong("The page does not know this button.", "Load it again.");
    }
    return here;
  }

  private static String keep(Visit visit, BoxJobs jobs, Shelf shelf, BoxJobs.Wish wish) {
    Machine machine = LatheRoom.machine(visit, visit.chosen());
    BoxJobs.Found found =
        jobs.kept(wish)
            .orElseThrow(() -> Refused.missing("There is no such box.", "Search for it first."));
    FoundBox box =
        cutting(visit, machine)
            .flatMap(c -> FoundBox.of(found, wish, c))
            .orElseThrow(
                () -> Refused.missing("This box cannot be written.", "Ask for fewer threads."));
    if (!visit.opened().mark().equals(visit.asked("mark"))) {
      throw Refused.overtaken(
          "The book was changed by another program since this page was made. Nothing was written.",
          "Open the page again and keep the box once more.");
    }
    String key = NewChange.key(visit.book(), box.title());
    Map<String, String> files = box.files(visit);
    for (String file : files.keySet()) {
      if (visit.opened().text(file).isPresent()) {
        throw Refused.wrong(
            file + " is there already; nothing was written.", "Move it away, or rename it, first.");
      }
    }
    Opened tried = visit.opened().with(files);
    if (!tried.problems().isEmpty()) {
      throw Refused.unsound(tried.problems());
    }
    shelf.save(visit.opened(), files, "new change " + key, "");
    return "/change?key=" + Visit.coded(key);
  }

  /** The lathe the box is written for: as it stands, since a change differs from the machine. */
  static Machine machineOf(Visit visit) {
    Chosen standing = Chosen.of(visit.opened(), Chosen.STANDING);
    return LatheRoom.machine(visit, standing);
  }
}
