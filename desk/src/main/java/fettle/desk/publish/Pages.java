package fettle.desk.publish;

import fettle.desk.pack.Held;
import fettle.desk.pack.PackFiles;
import fettle.desk.page.Amount;
import fettle.desk.page.Cell;
import fettle.desk.page.ChangePage;
import fettle.desk.page.ForecastPage;
import fettle.desk.page.LathePage;
import fettle.desk.page.Measure;
import fettle.desk.page.Shell;
import fettle.desk.page.SiteChangePage;
import fettle.desk.page.SiteChangesPage;
import fettle.desk.page.SiteFrame;
import fettle.desk.page.SiteLathePage;
import fettle.desk.page.SiteListPage;
import fettle.desk.page.Worked;
import fettle.desk.picture.Elevations;
import fettle.desk.picture.Stand;
import fettle.machine.dictionary.Values;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.state.Change;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.topics.Figure;
import fettle.mechanics.base.Working;
import fettle.sheets.page.Heads;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Makes the pages of a published book as records. */
final class Pages {

  private static final List<Stage> ORDER =
      List.of(Stage.PROVED, Stage.FITTED, Stage.MAKING, Stage.PLANNED, Stage.IDEA, Stage.DROPPED);
  private static final int MOST_KEYS = 8;

  private final PublicBook open;
  private final Heads heads;
  private final Machine machine;
  private final Measure measure;
  private final Map<String, PackFiles> packs;

  Pages(
      PublicBook open,
      Heads heads,
      Machine machine,
      Measure measure,
      Map<String, PackFiles> packs) {
    this.open = open;
    this.heads = heads;
    this.machine = machine;
    this.measure = measure;
    this.packs = packs;
  }

  static String change(String key) {
    return "change-" + key + ".html";
  }

  static String folder(String key) {
    return "files/" + key + "/";
  }

  static String member(int number) {
    return "member-" + (number + 1);
  }

  boolean shows(Held thing) {
    return !open.held().contains(thing);
  }

  boolean drawn() {
    return shows(Held.SHEETS) && packs.values().stream().anyMatch(p -> !drawings(p).isEmpty());
  }

  boolean packed() {
    return shows(Held.PACKS) && !packs.isEmpty();
  }

  boolean proved() {
    return !open.trials().isEmpty();
  }

  private SiteFrame frame(String title, String here) {
    Map<String, String> rooms = new LinkedHashMap<>();
    rooms.put("index.html", "the lathe");
    rooms.put("changes.html", "changes");
    if (drawn()) {
      rooms.put("drawings.html", "drawings");
    }
    if (packed()) {
      rooms.put("packs.html", "packs");
    }
    if (proved()) {
      rooms.put("proof.html", "proof");
    }
    rooms.put("figures.html", "figures");
    return new SiteFrame(
        title,
        machine.name(),
        open.book().shop().flatMap(s -> s.text("owner")).orElse(""),
        heads.licence(),
        rooms.entrySet().stream()
            .map(r -> new Shell.Room(r.getKey(), r.getValue(), r.getKey(), r.getKey().equals(here)))
            .toList());
  }

  SiteLathePage lathe(State now, Forecast forecast) {
    List<String> names = List.copyOf(machine.members().keySet());
    List<Worked> all = numbered(naming(forecast));
    List<Shell.Link> changes =
        now.changes().stream()
            .map(k -> Objects.requireNonNull(open.book().changes().get(k)))
            .map(c -> new Shell.Link(change(c.key()), c.title()))
            .toList();
    return new SiteLathePage(
        frame("The lathe", "index.html"),
        machine.values().text("about").orElse(""),
        changes.isEmpty() ? "The lathe as it was bought." : "The lathe as it stands now.",
        Elevations.of(
            machine,
            Stand.of(machine, Map.of()),
            Map.of(),
            m -> "#" + member(names.indexOf(m)),
            measure),
        all.subList(0, Math.min(MOST_KEYS, all.size())),
        forecast.staying().stream()
            .map(f -> new LathePage.Opening(ForecastPage.FindingLine.of(f, measure), ""))
            .toList(),
        names.stream().map(n -> member(names, n)).toList(),
        changes);
  }

  private SiteLathePage.Member member(List<String> names, String name) {
    Member member = machine.member(name);
    List<String> facts = new ArrayList<>();
    member.values().text("material").ifPresent(facts::add);
    member
        .values()
        .quantity("mass")
        .ifPresent(q -> facts.add(Amount.of(q.value(), q.doubt(), q.unit(), measure).text()));
    member.seat().on().ifPresent(on -> facts.add("on the " + on));
    return new SiteLathePage.Member(
        member(names.indexOf(name)), name, member.values().text("what").orElse(""), facts);
  }

  /** Returns the figures that name the lathe: reach, speeds, travel. */
  private static List<Figure> naming(Forecast forecast) {
    return forecast.rows().stream()
        .map(Row::figure)
        .filter(f -> Set.of("capacity", "speeds", "travel").contains(f.topic()))
        .filter(f -> f.working().isPresent())
        .toList();
  }

  private List<Worked> numbered(List<Figure> figures) {
    List<Worked> worked = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      worked.add(worked(figures.get(i), "f" + (i + 1), ""));
    }
    return worked;
  }

  private Worked worked(Figure figure, String id, String state) {
    Cell cell = Cell.of(figure, measure, "");
    Cell named =
        new Cell(
            cell.label() + state,
            cell.subject(),
            cell.firm(),
            cell.loose(),
            cell.doubt(),
            cell.unit(),
            cell.words(),
            "");
    Optional<Working> working = figure.working().filter(w -> shows(Held.WORKINGS));
    return new Worked(
        id,
        named,
        working.map(w -> w.symbol() + " = " + w.formula()).orElse(""),
        working.map(ForecastPage::working).orElse(""),
        figure.source().text());
  }

  SiteListPage figures(Forecast forecast) {
    Map<String, List<Worked>> byTopic = new LinkedHashMap<>();
    int number = 0;
    for (Row row : forecast.rows()) {
      number++;
      byTopic
          .computeIfAbsent(row.figure().topic(), t -> new ArrayList<>())
          .add(worked(row.figure(), "f" + number, ""));
    }
    return list(
        "Figures",
        "figures.html",
        "Every figure of the lathe as it stands. Open one to see how it comes about and where its"
            + " formula comes from.",
        byTopic.entrySet().stream()
            .map(e -> new SiteListPage.Figures(e.getKey(), e.getValue()))
            .toList(),
        List.of(),
        List.of(),
        List.of());
  }

  private SiteListPage list(
      String title,
      String here,
      String intro,
      List<SiteListPage.Figures> figures,
      List<SiteListPage.Drawings> drawings,
      List<SiteListPage.Pack> packs,
      List<SiteListPage.Trial> trials) {
    return new SiteListPage(frame(title, here), intro, figures, drawings, packs, trials);
  }

  SiteChangesPage changes() {
    List<SiteChangesPage.Stage> stages = new ArrayList<>();
    for (Stage stage : ORDER) {
      List<SiteChangesPage.Entry> entries =
          open.book().changes().values().stream()
              .filter(c -> c.stage() == stage)
              .map(
                  c ->
                      new SiteChangesPage.Entry(
                          c.title(),
                          c.values().text("benefit").orElse(""),
                          String.join(" · ", facts(c)),
                          change(c.key())))
              .toList();
      if (!entries.isEmpty()) {
        stages.add(new SiteChangesPage.Stage(stage.word(), meaning(stage), entries));
      }
    }
    return new SiteChangesPage(frame("Changes", "changes.html"), stages);
  }

  private static String meaning(Stage stage) {
    return switch (stage) {
      case IDEA -> "thought of, nothing decided";
      case PLANNED -> "meant to be made";
      case MAKING -> "on the bench now";
      case FITTED -> "on the lathe";
      case PROVED -> "on the lathe, and measured";
      case DROPPED -> "not to be made";
    };
  }

  private List<String> facts(Change change) {
    List<String> facts = new ArrayList<>();
    facts.add(change.stage().word());
    if (shows(Held.HOURS)) {
      amount(change.values(), "hours").ifPresent(h -> facts.add(h + " of work"));
    }
    amount(change.values(), "down").ifPresent(h -> facts.add(h + " with the lathe stripped"));
    if (shows(Held.PRICES)) {
      amount(change.values(), "cost").ifPresent(facts::add);
    }
    return facts;
  }

  private Optional<String> amount(Values values, String key) {
    return values.quantity(key).map(q -> Amount.of(q.value(), q.doubt(), q.unit(), measure).text());
  }

  SiteChangePage change(PackFiles pack) {
    Change change = pack.pack().source().change();
    Forecast forecast = pack.pack().source().forecast();
    Machine before = forecast.before().machine().orElseThrow();
    Machine after = forecast.after().machine().orElseThrow();
    Map<String, String> styles = new LinkedHashMap<>();
    Elevations.differing(before, after).forEach(m -> styles.put(m, "planned"));
    Effects effects = new Effects(forecast, measure);
    List<Worked> workings = shows(Held.WORKINGS) ? workings(forecast) : List.of();
    return new SiteChangePage(
        frame(change.title(), ""),
        change.values().text("reason").orElse(""),
        change.values().text("benefit").orElse(""),
        facts(change),
        change.needs().stream()
            .map(n -> Objects.requireNonNull(open.book().changes().get(n)))
            .map(n -> new Shell.Link(change(n.key()), n.title()))
            .toList(),
        change.values().texts("caution"),
        Elevations.of(
            after,
            Stand.of(after, Map.of()),
            styles,
            m -> machine.members().containsKey(m) ? "index.html#" + anchor(m) : "#main",
            measure),
        effects.joint(shows(Held.WORKINGS) ? "w" : ""),
        workings,
        things(change, "parts", "what", List.of("material", "stock")),
        things(change, "purchases", "what", List.of("designation")),
        things(change, "steps", "do", List.of()),
        shows(Held.SHEETS) ? drawings(pack) : List.of(),
        shows(Held.PACKS) ? List.of(packLink(pack)) : List.of());
  }

  private String anchor(String name) {
    return member(List.copyOf(machine.members().keySet()).indexOf(name));
  }

  private List<Worked> workings(Forecast forecast) {
    List<Worked> workings = new ArrayList<>();
    int number = 0;
    for (Row row : forecast.moved()) {
      number++;
      String id = "w" + number;
      if (row.after().isPresent()) {
        workings.add(worked(row.after().get(), id, ", after"));
      }
      if (row.before().isPresent()) {
        String own = row.after().isPresent() ? id + "-before" : id;
        workings.add(worked(row.before().get(), own, ", before"));
      }
    }
    return workings;
  }

  private List<ChangePage.Thing> things(
      Change change, String map, String what, List<String> texts) {
    List<ChangePage.Thing> things = new ArrayList<>();
    change
        .values()
        .map(map)
        .forEach(
            (name, values) -> {
              List<String> facts = new ArrayList<>();
              texts.forEach(t -> values.text(t).ifPresent(facts::add));
              values.count("quantity").filter(n -> n > 1).ifPresent(n -> facts.add(n + " off"));
              if (shows(Held.PRICES)) {
                amount(values, "price").ifPresent(facts::add);
              }
              if (map.equals("steps")) {
                if (shows(Held.HOURS)) {
                  amount(values, "hours").ifPresent(facts::add);
                }
                facts.add("lathe " + values.text("lathe").orElse("free"));
              }
              things.add(new ChangePage.Thing(name, values.text(what).orElse(""), facts));
            });
    return things;
  }

  private static Shell.Link packLink(PackFiles pack) {
    String key = pack.pack().source().change().key();
    return new Shell.Link(
        folder(key) + "pack.pdf", "The plan pack, " + size(pack.files().get("pack.pdf")) + " PDF");
  }

  private static String size(byte @org.jspecify.annotations.Nullable [] bytes) {
    return bytes == null ? "" : Math.max(1, Math.round(bytes.length / 1000.0)) + " kB";
  }

  private List<SiteChangePage.Drawn> drawings(PackFiles pack) {
    List<SiteChangePage.Drawn> drawn = new ArrayList<>();
    String folder = folder(pack.pack().source().change().key());
    pack.paths()
        .forEach(
            (path, drawing) -> {
              List<Shell.Link> files = new ArrayList<>();
              for (String ending : List.of("svg", "pdf", "step", "3mf")) {
                if (pack.files().containsKey(path + "." + ending)) {
                  String href = folder + path + "." + ending;
                  files.add(new Shell.Link(coded(href), ending.toUpperCase(Locale.ROOT)));
                }
              }
              drawn.add(
                  new SiteChangePage.Drawn(
                      drawing.sheet().number(),
                      drawing.sheet().title(),
                      drawing.sheet().format()
                          + ", "
                          + drawing.sheet().scale()
                          + ", revision "
                          + drawing.revision(),
                      coded(folder + path + ".svg"),
                      files));
            });
    return drawn;
  }

  /** Returns a path as it stands in a link. */
  private static String coded(String path) {
    try {
      return new java.net.URI(null, null, "./" + path, null).getRawPath().substring(2);
    } catch (java.net.URISyntaxException e) {
      throw new IllegalArgumentException("'" + path + "' cannot stand in a link", e);
    }
  }

  SiteListPage drawings() {
    return list(
        "Drawings",
        "drawings.html",
        "One sheet a part, at full size when it is printed without fitting it to the page. PDF to"
            + " print, SVG to look at, STEP and 3MF for other programs.",
        List.of(),
        packs.values().stream()
            .filter(p -> !drawings(p).isEmpty())
            .map(
                p -> {
                  Change c = p.pack().source().change();
                  return new SiteListPage.Drawings(c.title(), change(c.key()), drawings(p));
                })
            .toList(),
        List.of(),
        List.of());
  }

  SiteListPage packs() {
    return list(
        "Packs",
        "packs.html",
        "All that is needed to make one change: figures before and after, lists, drawings, order of"
            + " work, settings, cautions and proof sheets.",
        List.of(),
        List.of(),
        packs.values().stream()
            .map(
                p -> {
                  Change c = p.pack().source().change();
                  return new SiteListPage.Pack(
                      c.title(),
                      "revision " + p.pack().issue().index() + " of " + p.pack().issue().date(),
                      packLink(p).href(),
                      packLink(p).words(),
                      change(c.key()));
                })
            .toList(),
        List.of());
  }

  SiteListPage proof() {
    return list(
        "Proof",
        "proof.html",
        "What was measured on the lathe, and what follows from it.",
        List.of(),
        List.of(),
        List.of(),
        open.trials().values().stream().map(t -> Proofs.of(t, open.book(), measure)).toList());
  }
}
