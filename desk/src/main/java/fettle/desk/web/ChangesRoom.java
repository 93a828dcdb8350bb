package fettle.desk.web;

import fettle.desk.page.Amount;
import fettle.desk.page.ChangePage;
import fettle.desk.page.ChangesPage;
import fettle.desk.page.JointPage;
import fettle.desk.page.MemberPage;
import fettle.desk.page.Shell;
import fettle.desk.picture.Elevations;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.state.Change;
import fettle.machine.state.Stage;
import fettle.machine.text.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The list of changes, the page of one, and the joint forecast of several. */
final class ChangesRoom {

  private static final List<Stage> ORDER =
      List.of(Stage.MAKING, Stage.PLANNED, Stage.IDEA, Stage.FITTED, Stage.PROVED, Stage.DROPPED);
  private static final List<String> FACTS =
      List.of("reason", "benefit", "stage", "hours", "down", "cost");

  private ChangesRoom() {}

  static ChangesPage list(Visit visit) {
    List<String> ticked = visit.several("tick");
    List<ChangesPage.Stage> stages = new ArrayList<>();
    for (Stage stage : ORDER) {
      List<ChangesPage.Entry> entries =
          visit.book().changes().values().stream()
              .filter(c -> c.stage() == stage)
              .map(c -> entry(visit, c, ticked.contains(c.key())))
              .toList();
      if (!entries.isEmpty()) {
        stages.add(new ChangesPage.Stage(stage.word(), meaning(stage), entries));
      }
    }
    return new ChangesPage(
        visit.shell("changes", "changes", Chosen.of(visit.opened(), "")),
        stages,
        begin(visit),
        ticked.isEmpty() ? null : joint(visit, ticked));
  }

  /** A change begins with a drive or a dial whose values are tried. */
  private static List<Shell.Link> begin(Visit visit) {
    Chosen standing = Chosen.of(visit.opened(), "");
    Machine machine = LatheRoom.machine(visit, standing);
    Set<String> about = new LinkedHashSet<>(machine.trains().keySet());
    about.addAll(machine.dials().keySet());
    return ValuesRoom.whatIf(machine, about, standing);
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

  /**
   * Returns what changes do to the lathe; those that are fitted are compared with them left out.
   */
  static JointPage joint(Visit visit, List<String> keys) {
    Chosen standing = Chosen.of(visit.opened(), "");
    Chosen after = standing.with(visit.opened(), known(visit, keys));
    List<String> without = new ArrayList<>(standing.state().changes());
    boolean fitted = without.removeAll(keys);
    Chosen before = fitted ? Chosen.of(visit.opened(), without) : standing;
    return Joints.of(
        visit.opened().forecast(before.state(), after.state()), after, visit.measure());
  }

  private static List<String> known(Visit visit, List<String> keys) {
    for (String key : keys) {
      if (!visit.book().changes().containsKey(key)) {
        throw Refused.missing(
            "There is no such change in this book.",
            Nearest.hint(key, visit.book().changes().keySet()) + " Choose one from the list.");
      }
    }
    return keys;
  }

  private static ChangesPage.Entry entry(Visit visit, Change change, boolean ticked) {
    return new ChangesPage.Entry(
        change.key(),
        change.title(),
        change.values().text("benefit").orElse(""),
        amount(visit, change.values(), "hours"),
        amount(visit, change.values(), "cost"),
        needs(change),
        change.values().texts("enables"),
        "/change?key=" + Visit.coded(change.key()),
        ticked);
  }

  private static List<Shell.Link> needs(Change change) {
    return change.needs().stream()
        .map(n -> new Shell.Link("/change?key=" + Visit.coded(n), n))
        .toList();
  }

  private static String amount(Visit visit, Values values, String key) {
    return values
        .quantity(key)
        .map(q -> Amount.of(q.value(), q.doubt(), q.unit(), visit.measure()).text())
        .orElse("");
  }

  static ChangePage change(Visit visit) {
    String key = visit.asked("key");
    known(visit, List.of(key));
    Change change = Optional.ofNullable(visit.book().changes().get(key)).orElseThrow();
    Chosen after = Chosen.of(visit.opened(), "").with(visit.opened(), List.of(key));
    String file = "changes/" + key + ".yaml";
    List<Spot> spots = visit.opened().spots().in(file);
    return new ChangePage(
        visit.shell(change.title(), "changes", after),
        key,
        change.title(),
        spots.stream()
            .filter(s -> FACTS.contains(s.path()))
            .map(s -> ValueLines.line(s, "", after))
            .toList(),
        needs(change),
        change.values().texts("enables"),
        joint(visit, List.of(key)),
        LatheRoom.picture(visit, after, changed(visit, key, after)),
        spots.stream()
            .filter(s -> s.path().startsWith("differs."))
            .map(s -> differing(s, after))
            .toList(),
        parts(visit, change),
        purchases(visit, change),
        steps(visit, change),
        change.values().texts("caution"));
  }

  private static MemberPage.ValueLine differing(Spot spot, Chosen after) {
    return ValueLines.line(spot, "", after);
  }

  /** Marks what one change alters, whether it is fitted already or not. */
  private static Map<String, String> changed(Visit visit, String key, Chosen after) {
    List<String> without = new ArrayList<>(after.state().changes());
    without.remove(key);
    Map<String, String> styles = new java.util.LinkedHashMap<>();
    Chosen before = Chosen.of(visit.opened(), without);
    if (before.state().machine().isPresent() && after.state().machine().isPresent()) {
      after.state().machine().get().members().keySet().forEach(m -> styles.put(m, "as-is"));
      Elevations.differing(before.state().machine().get(), after.state().machine().get())
          .forEach(m -> styles.put(m, "planned"));
    }
    return styles;
  }

  static List<ChangePage.Thing> parts(Visit visit, Change change) {
    return things(
        change.values().map("parts"),
        "what",
        v -> List.of(v.text("material").orElse(""), v.text("stock").orElse(""), count(v)));
  }

  static List<ChangePage.Thing> purchases(Visit visit, Change change) {
    return things(
        change.values().map("purchases"),
        "what",
        v ->
            List.of(
                v.text("designation").orElse(""),
                count(v),
                amount(visit, v, "price"),
                amount(visit, v, "lead time")));
  }

  static List<ChangePage.Thing> steps(Visit visit, Change change) {
    return things(
        change.values().map("steps"),
        "do",
        v ->
            List.of(
                amount(visit, v, "hours"),
                "lathe " + v.text("lathe").orElse("free"),
                v.texts("after").isEmpty() ? "" : "after " + String.join(", ", v.texts("after"))));
  }

  private static String count(Values v) {
    return v.count("quantity").filter(n -> n > 1).map(n -> n + " off").orElse("");
  }

  private static List<ChangePage.Thing> things(
      Map<String, Values> blocks,
      String what,
      java.util.function.Function<Values, List<String>> facts) {
    return blocks.entrySet().stream()
        .map(
            e ->
                new ChangePage.Thing(
                    e.getKey(),
                    e.getValue().text(what).orElse(""),
                    facts.apply(e.getValue()).stream().filter(f -> !f.isEmpty()).toList()))
        .toList();
  }
}
