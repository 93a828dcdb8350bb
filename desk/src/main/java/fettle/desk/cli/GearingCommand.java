package fettle.desk.cli;

import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.state.Book;
import fettle.machine.text.Nearest;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Unit;
import fettle.mechanics.gears.BasicRack;
import fettle.mechanics.gears.ChangeGearSearch;
import fettle.mechanics.gears.Concern;
import fettle.mechanics.gears.TeethOnCentres;
import fettle.mechanics.gears.ThreadPitches;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** {@code fettle gearing}: change gears for threads, and teeth for a travel on the old centres. */
final class GearingCommand implements Command {

  private static final double ALIKE = 1e6;

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "gearing",
            "threads: the change gears for every pitch of a list, best first, with what fits the banjo.",
            "box: the quick-change gearbox with the fewest wheels for the threads of shop.yaml, its wheels,",
            "shafts and levers settled; --write makes it a change of the book, with recipes for its parts.",
            "TRAIN --travel '25 mm': the teeth of its gear pair that bring a turn nearest to a travel,",
            "on the centres that are there. Every train and every pair is tried; none is missed.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(
        Options.one("threads|box|TRAIN", "'threads', 'box', or the name of a train, in quotes."));
    spec.addOption(Options.text("--state", "STATE", "The state of the lathe; else as it stands."));
    spec.addOption(Options.text("--list", "LIST", "Pitches: " + lists() + "; else iso-261."));
    spec.addOption(
        Options.text(
            "--lead", "LEAD", "One lead instead of a list, such as '1.25 mm' or '19 tpi'."));
    spec.addOption(Options.text("--best", "N", "How many trains for each lead; else 1."));
    spec.addOption(Options.text("--wheels", "N", "At most 2, 4 or 6 wheels; else 4."));
    spec.addOption(Options.flag("--buy", "Say which one more wheel would help the list most."));
    spec.addOption(Options.text("--travel", "LENGTH", "Travel per turn that is wanted."));
    spec.addOption(Options.text("--fewest", "TEETH", "Fewest teeth of the driving gear; else 12."));
    spec.addOption(Options.text("--most", "TEETH", "Most teeth of the driven gear; else 80."));
    spec.addOption(
        Options.text("--wanted", "LEADS", "For a box: its leads, such as '0.5 mm, 1 mm, 16 tpi'."));
    spec.addOption(
        Options.text("--centres", "LENGTH", "For a box: distance of the multiplier's shafts."));
    spec.addOption(
        Options.text("--thrust", "FORCE", "For a box: force along the lead screw; else 1000 N."));
    spec.addOption(Options.text("--write", "NAME", "Write the box as the change NAME."));
    spec.addOption(Options.flag("--replace", "Write over files that are there."));
    spec.addOption(Options.flag("--json", "Write JSON."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    Machine machine =
        Books.sound(Books.state(book, given.option("--state", "as-it-stands")))
            .machine()
            .orElseThrow();
    try {
      if (given.word(1).equals("threads")) {
        threads(book, machine, given, terminal);
      } else if (given.word(1).equals("box")) {
        new BoxGearing(given, terminal, book, machine, cutting(book, machine)).run();
      } else {
        travel(machine, given, terminal);
      }
    } catch (IllegalArgumentException e) {
      throw Failure.input(String.valueOf(e.getMessage()));
    }
    return ExitStatus.DONE;
  }

  private static void threads(Book book, Machine machine, ParseResult given, Terminal terminal) {
    ScrewCutting cutting = cutting(book, machine);
    List<String> names = new ArrayList<>();
    List<Ratio> leads = new ArrayList<>();
    wanted(given, names, leads);
    ChangeGearSearch.Query query =
        cutting.query(leads, number(given, "--best", 1), wheels(number(given, "--wheels", 4)));
    ChangeGearSearch.Result result = ChangeGearSearch.search(query);
    if (given.on("--json")) {
      terminal.out().println(json(names, result));
      return;
    }
    table(names, result, terminal);
    if (given.on("--buy")) {
      purchases(query, machine, terminal);
    }
    terminal
        .out()
        .println(
            "Isolate the lathe before gears are touched; close the cover before the spindle turns.");
  }

  private static ScrewCutting cutting(Book book, Machine machine) {
    return machine.trains().values().stream()
        .flatMap(t -> ScrewCutting.of(machine, t, book.shop()).stream())
        .findFirst()
        .orElseThrow(
            () ->
                Failure.notComputed(
                    "no train of this state cuts threads with change gears; it needs a train with"
                        + " 'use: screw cutting', a banjo in machine.yaml and change gears in"
                        + " shop.yaml"));
  }

  private static void table(List<String> names, ChangeGearSearch.Result result, Terminal terminal) {
    for (int i = 0; i < names.size(); i++) {
      List<ChangeGearSearch.Train> best = result.listings().get(i).best();
      if (best.isEmpty()) {
        terminal.out().printf(Locale.ROOT, "%-10s no train within 2 percent%n", names.get(i));
      }
      String name = names.get(i);
      for (ChangeGearSearch.Train train : best) {
        terminal
            .out()
            .printf(
                Locale.ROOT,
                "%-10s %-28s %s%n",
                name,
                train.text(),
                train.exact()
                    ? "exact"
                    : signed(train.ppm())
                        + " ppm, "
                        + signed(train.ppm() * 0.025)
                        + " µm over 25 mm");
        name = "";
      }
    }
    terminal
        .out()
        .printf(
            Locale.ROOT,
            "%d pairings of drivers and driven wheels; of %d near enough to be looked at, %d need a wheel"
                + " twice that is there once, %d do not fit the banjo.%n",
            result.pairings(),
            result.counts().examined(),
            result.counts().twice(),
            result.counts().unfit());
  }

  private static void purchases(ChangeGearSearch.Query query, Machine machine, Terminal terminal) {
    double limit =
        machine
            .values()
            .block("limits")
            .map(l -> l.need("lead error").value() * ALIKE)
            .orElse(1000.0);
    List<ChangeGearSearch.Purchase> purchases = ChangeGearSearch.purchases(query, 15, 130, limit);
    terminal.out().println("One more wheel that would help most:");
    for (ChangeGearSearch.Purchase p : purchases.subList(0, Math.min(5, purchases.size()))) {
      terminal
          .out()
          .printf(
              Locale.ROOT,
              "  %3d teeth: %d leads within %s ppm (now %d), %d exact%n",
              p.teeth(),
              p.within(),
              Numbers.significant(limit, 4),
              p.before(),
              p.exact());
    }
  }

  private static String json(List<String> names, ChangeGearSearch.Result result) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle gearing threads 1");
          g.writeNumberField("pairings", result.pairings());
          g.writeNumberField("examined", result.counts().examined());
          g.writeNumberField("wheelTwice", result.counts().twice());
          g.writeNumberField("unfit", result.counts().unfit());
          g.writeArrayFieldStart("leads");
          for (int i = 0; i < names.size(); i++) {
            g.writeStartObject();
            g.writeStringField("name", names.get(i));
            g.writeArrayFieldStart("trains");
            for (ChangeGearSearch.Train train : result.listings().get(i).best()) {
              g.writeStartObject();
              g.writeArrayFieldStart("wheels");
              for (int z : train.wheels()) {
                g.writeNumber(z);
              }
              g.writeEndArray();
              g.writeNumberField("idler", train.idler());
              g.writeStringField("leadExact", train.lead().text());
              Json.number(g, "leadMm", train.lead().toDouble());
              Json.number(g, "errorPpm", train.ppm());
              g.writeEndObject();
            }
            g.writeEndArray();
            g.writeEndObject();
          }
          g.writeEndArray();
        });
  }

  private static void wanted(ParseResult given, List<String> names, List<Ratio> leads) {
    String lead = given.option("--lead", "");
    if (!lead.isEmpty()) {
      names.add(lead);
      leads.add(length("--lead", lead).exact());
      return;
    }
    String name = given.option("--list", "iso-261");
    ThreadPitches list =
        Arrays.stream(ThreadPitches.values())
            .filter(l -> word(l).equals(name))
            .findFirst()
            .orElseThrow(
                () -> Failure.input("--list: found '" + name + "', expected one of " + lists()));
    list.printed().forEach(p -> names.add(list.name(p)));
    leads.addAll(list.leads());
  }

  private static void travel(Machine machine, ParseResult given, Terminal terminal) {
    String name = given.word(1);
    Train train = machine.trains().get(name);
    if (train == null) {
      throw Failure.input(
          "there is no train '" + name + "'. " + Nearest.hint(name, machine.trains().keySet()));
    }
    Element.GearPair pair =
        train.elements().stream()
            .filter(
                e ->
                    e instanceof Element.GearPair p
                        && p.values().has("module")
                        && p.values().has("centre distance"))
            .map(e -> (Element.GearPair) e)
            .findFirst()
            .orElseThrow(
                () ->
                    Failure.notComputed(
                        "the train '"
                            + name
                            + "' has no gear pair with module and centre distance"));
    if (!train.linear() || given.option("--travel", "").isEmpty()) {
      throw Failure.input(
          "--travel LENGTH is missing: the travel per turn that is wanted, such as --travel '25 mm'");
    }
    Ratio wanted = length("--travel", given.option("--travel", "")).exact();
    TeethOnCentres search =
        new TeethOnCentres(
            pair.values().need("module").value(),
            pair.values().need("centre distance").value(),
            BasicRack.of(pair.values().need("pressure angle").value()),
            train.factor().over(Ratio.of(pair.driver(), pair.driven())),
            number(given, "--fewest", 12),
            number(given, "--most", 80));
    TeethOnCentres.Found found = search.forTravel(wanted);
    int shown = Math.min(found.choices().size(), number(given, "--best", 5));
    if (given.on("--json")) {
      terminal.out().println(json(found, shown));
      return;
    }
    terminal
        .out()
        .println(name + ", " + pair.name() + ": now " + pair.driver() + "/" + pair.driven());
    for (TeethOnCentres.Choice c : found.choices().subList(0, shown)) {
      terminal
          .out()
          .printf(
              Locale.ROOT,
              "  %d/%d  %s mm a turn, %s ppm; shift of the driven gear %s%n",
              c.driver(),
              c.driven(),
              Numbers.significant(c.travel().toDouble(), 7),
              signed(c.ppm()),
              Numbers.fixed(c.pair().wheel().shift(), 3));
      for (Concern concern : c.concerns()) {
        terminal.out().println("        ! " + concern.text());
      }
    }
    terminal
        .out()
        .println(
            found.choices().size()
                + " pairs run on these centres; "
                + found.refused()
                + " others would be undercut, pointed, foul or lose contact.");
  }

  private static String json(TeethOnCentres.Found found, int shown) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle gearing travel 1");
          g.writeNumberField("run", found.choices().size());
          g.writeNumberField("refused", found.refused());
          g.writeArrayFieldStart("pairs");
          for (TeethOnCentres.Choice c : found.choices().subList(0, shown)) {
            g.writeStartObject();
            g.writeNumberField("driver", c.driver());
            g.writeNumberField("driven", c.driven());
            Json.number(g, "travelMm", c.travel().toDouble());
            g.writeStringField("travelExact", c.travel().folded().text());
            Json.number(g, "errorPpm", c.ppm());
            Json.number(g, "drivenShift", c.pair().wheel().shift());
            g.writeArrayFieldStart("concerns");
            for (Concern concern : c.concerns()) {
              g.writeString(concern.text());
            }
            g.writeEndArray();
            g.writeEndObject();
          }
          g.writeEndArray();
        });
  }

  private static Set<ChangeGearSearch.Wheels> wheels(int most) {
    Set<ChangeGearSearch.Wheels> wheels = EnumSet.of(ChangeGearSearch.Wheels.TWO);
    if (most >= 4) {
      wheels.add(ChangeGearSearch.Wheels.FOUR);
    }
    if (most >= 6) {
      wheels.add(ChangeGearSearch.Wheels.SIX);
    }
    return wheels;
  }

  private static Quantity length(String option, String text) {
    try {
      return Quantity.parse(text, Dimension.LENGTH, Unit.MM);
    } catch (Quantity.NotOne e) {
      throw Failure.input(option + ": found '" + text + "', expected " + e.expected());
    }
  }

  private static int number(ParseResult given, String option, int otherwise) {
    String text = given.option(option, String.valueOf(otherwise));
    if (!text.matches("[1-9]\\d{0,3}")) {
      throw Failure.input(
          option + ": found '" + text + "', expected a whole number from 1 to 9999");
    }
    return Integer.parseInt(text);
  }

  private static String signed(double value) {
    return (value > 0 ? "+" : "") + Numbers.significant(value, 4);
  }

  private static String word(ThreadPitches list) {
    return list.label().toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  private static String lists() {
    return String.join(
        ", ", Arrays.stream(ThreadPitches.values()).map(GearingCommand::word).toList());
  }
}
