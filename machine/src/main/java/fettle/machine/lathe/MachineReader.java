package fettle.machine.lathe;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Reading;
import fettle.machine.dictionary.Values;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.Place;
import fettle.machine.text.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes a machine of its text, or says everything that is wrong with it. */
public final class MachineReader {

  private static final int MOST_ELEMENTS = 60;
  private static final long MOST_STEPS = 200;

  private final List<Problem> problems = new ArrayList<>();

  private MachineReader() {}

  /** Reads a machine. */
  public static Parsed<Machine> read(Node node) {
    Reading reading = new Reading(Dictionary.standard());
    Values root = reading.read("machine", node);
    if (!reading.problems().isEmpty()) {
      return Parsed.bad(reading.problems());
    }
    return new MachineReader().machine(root);
  }

  private Parsed<Machine> machine(Values root) {
    Map<String, Member> members = new LinkedHashMap<>();
    root.map("members").forEach((name, block) -> members.put(name, Member.of(name, block)));
    seats(root, members);
    Map<String, Train> trains = new LinkedHashMap<>();
    root.map("trains")
        .forEach((name, block) -> train(name, block).ifPresent(t -> trains.put(name, t)));
    Map<String, Dial> dials = new LinkedHashMap<>();
    root.map("dials").forEach((name, block) -> dials.put(name, Dial.of(name, block)));
    dials.values().forEach(dial -> dialFits(dial, trains));
    circles(trains);
    root.block("banjo").ifPresent(this::arm);
    Machine machine =
        new Machine(
            root.needText("name"),
            Collections.unmodifiableMap(members),
            Collections.unmodifiableMap(trains),
            Collections.unmodifiableMap(dials),
            root);
    return problems.isEmpty() ? Parsed.good(machine) : Parsed.bad(problems);
  }

  /** Every member must stand, through others, on one fixed member. */
  private void seats(Values root, Map<String, Member> members) {
    List<String> fixed =
        members.values().stream()
            .filter(m -> m.seat() instanceof Seat.Fixed)
            .map(Member::name)
            .toList();
    if (fixed.size() != 1) {
      add(
          root.place("members"),
          "members",
          fixed.isEmpty()
              ? "no fixed member"
              : fixed.size() + " fixed members: " + String.join(", ", fixed),
          "one member with seat kind fixed, which everything else stands on",
          "");
    }
    for (Member member : members.values()) {
      Set<String> seen = new LinkedHashSet<>(Set.of(member.name()));
      Optional<String> on = member.seat().on();
      while (on.isPresent() && seen.add(on.get())) {
        Member under = members.get(on.get());
        on = under == null ? Optional.empty() : under.seat().on();
      }
      if (on.isPresent()) {
        add(
            member.values().place("seat"),
            "members." + member.name() + ".seat.on",
            "a circle: " + String.join(" on ", seen) + " on " + on.get(),
            "members that stand on each other without a circle",
            "Let one of them sit on the bed.");
      }
    }
  }

  private Optional<Train> train(String name, Values block) {
    List<Element> elements = new ArrayList<>();
    String path = "trains." + name + ".elements";
    boolean good = true;
    for (Map.Entry<String, Values> entry : block.map("elements").entrySet()) {
      try {
        elements.add(Element.of(entry.getKey(), entry.getValue()));
      } catch (IllegalArgumentException e) {
        add(
            entry.getValue().at(),
            path + "." + entry.getKey(),
            entry.getValue().shape().substring(8),
            String.valueOf(e.getMessage()),
            "");
        good = false;
      }
    }
    long steps = 1;
    for (Element element : elements) {
      steps = Math.min(MOST_STEPS + 1, steps * Math.max(1, element.factors().size()));
    }
    if (elements.size() > MOST_ELEMENTS || steps > MOST_STEPS) {
      add(
          block.place("elements"),
          path,
          elements.size() > MOST_ELEMENTS
              ? elements.size() + " elements"
              : "steps that can be combined in more than " + MOST_STEPS + " ways",
          "at most " + MOST_ELEMENTS + " elements and " + MOST_STEPS + " combinations of steps",
          "Write one train for each part of the way.");
      return Optional.empty();
    }
    List<Element> ordered = ordered(elements, path);
    for (int i = 0; i + 1 < ordered.size(); i++) {
      if (ordered.get(i).linear()) {
        add(
            ordered.get(i).values().at(),
            path + "." + ordered.get(i).name(),
            "an element that gives travel, followed by " + ordered.get(i + 1).name(),
            "a rack or a screw as the last element",
            "Use 'after' to set the order.");
        good = false;
      }
    }
    if (ordered.isEmpty() && good) {
      add(block.place("elements"), path, "no elements", "at least one element", "");
      good = false;
    }
    return good
        ? Optional.of(
            new Train(
                name,
                block.needText("from"),
                block.needText("to"),
                block.needText("use"),
                ordered,
                block))
        : Optional.empty();
  }

  /** Puts each element behind the one its {@code after} names; else the order is as written. */
  private List<Element> ordered(List<Element> written, String path) {
    List<Element> order = new ArrayList<>();
    List<Element> waiting = new ArrayList<>();
    for (Element element : written) {
      if (element.after().isEmpty()) {
        order.add(element);
      } else {
        waiting.add(element);
      }
    }
    boolean moved = true;
    while (moved && !waiting.isEmpty()) {
      moved = false;
      for (Element element : List.copyOf(waiting)) {
        int at = index(order, element.after().orElseThrow());
        boolean start = element.after().orElseThrow().equals("start");
        if (at >= 0 || start) {
          order.add(at + 1, element);
          waiting.remove(element);
          moved = true;
        }
      }
    }
    for (Element element : waiting) {
      add(
          element.values().place("after"),
          path + "." + element.name() + ".after",
          "'" + element.after().orElseThrow() + "'",
          "'start', or an element of this train that does not itself wait for this one",
          "");
    }
    return order;
  }

  private static int index(List<Element> order, String name) {
    for (int i = 0; i < order.size(); i++) {
      if (order.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  private void dialFits(Dial dial, Map<String, Train> trains) {
    Train train = trains.get(dial.train());
    if (train != null && !train.linear()) {
      add(
          dial.values().place("train"),
          "dials." + dial.name() + ".train",
          "'" + dial.train() + "', which ends in turning",
          "a train that ends in a rack or a screw",
          "");
    }
  }

  /** A motion must not come back to where it started. */
  private void circles(Map<String, Train> trains) {
    Map<String, List<String>> driven = new LinkedHashMap<>();
    trains
        .values()
        .forEach(t -> driven.computeIfAbsent(t.from(), f -> new ArrayList<>()).add(t.to()));
    for (Train train : trains.values()) {
      Set<String> reached = new LinkedHashSet<>(Set.of(train.to()));
      List<String> fresh = List.copyOf(reached);
      while (!fresh.isEmpty()) {
        fresh =
            fresh.stream()
                .flatMap(member -> driven.getOrDefault(member, List.of()).stream())
                .filter(reached::add)
                .toList();
      }
      if (reached.contains(train.from())) {
        add(
            train.values().place("to"),
            "trains." + train.name(),
            "a circle: the motion of '" + train.from() + "' comes back to it",
            "trains that lead from one member to another without a circle",
            "");
      }
    }
  }

  /** The stud must be able to stand somewhere on the arm. */
  private void arm(Values banjo) {
    if (banjo.need("slot from").value() > banjo.need("slot to").value()) {
      add(
          banjo.place("slot to"),
          "banjo.slot to",
          "a slot that ends before it begins",
          "a distance above that of 'slot from'",
          "");
    }
  }

  private void add(Place at, String key, String found, String expected, String remedy) {
    problems.add(new Problem(at, key, found, expected, remedy));
  }
}
