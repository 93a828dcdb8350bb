package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The wires of a control box, checked as a list; no design.
 *
 * @param wires the wires in the order listed
 * @param exposed metal that must have a protective conductor
 */
public record Wiring(List<Wire> wires, List<String> exposed) {

  private static final int MOST_WIRES = 2;
  private static final String PROTECTIVE = "PE";

  /**
   * One wire.
   *
   * @param number its number, on both of its ends
   * @param from device and terminal
   * @param to device and terminal
   * @param potential what it carries
   * @param section section [mm2]
   * @param colour colour of its insulation
   * @param length length [mm]
   * @param ends what is on its ends
   */
  public record Wire(
      String number,
      String from,
      String to,
      String potential,
      double section,
      String colour,
      double length,
      String ends) {}

  /** Keeps its own copies. */
  public Wiring {
    wires = List.copyOf(wires);
    exposed = List.copyOf(exposed);
  }

  /** Reads the wires of a block {@code control box}. */
  public static Wiring of(Values box) {
    List<Wire> wires = new ArrayList<>();
    box.map("wires")
        .forEach(
            (number, w) ->
                wires.add(
                    new Wire(
                        number,
                        w.needText("from"),
                        w.needText("to"),
                        w.needText("potential"),
                        w.need("section").value(),
                        w.needText("colour"),
                        w.need("length").value(),
                        w.needText("ends"))));
    return new Wiring(wires, box.texts("exposed"));
  }

  /** Returns the potentials and the wires of each terminal, in the order they occur. */
  public Map<String, List<Wire>> terminals() {
    Map<String, List<Wire>> terminals = new LinkedHashMap<>();
    for (Wire wire : wires) {
      terminals.computeIfAbsent(wire.from(), t -> new ArrayList<>()).add(wire);
      terminals.computeIfAbsent(wire.to(), t -> new ArrayList<>()).add(wire);
    }
    return terminals;
  }

  /** Returns what is wrong with the list. */
  public List<String> wrong() {
    List<String> wrong = new ArrayList<>();
    terminals().forEach((terminal, ends) -> terminal(terminal, ends, wrong));
    Set<String> potentials = new LinkedHashSet<>();
    for (Wire wire : wires) {
      colour(wire, wrong);
      if (potentials.add(wire.potential()) && !wire.potential().equals(PROTECTIVE)) {
        connected(wire.potential(), wrong);
      }
    }
    if (!wires.isEmpty()) {
      exposed.forEach(metal -> bonded(metal, wrong));
    }
    return wrong;
  }

  private static void terminal(String terminal, List<Wire> ends, List<String> wrong) {
    long potentials = ends.stream().map(Wire::potential).distinct().count();
    if (potentials > 1) {
      wrong.add(terminal + " belongs to more than one potential.");
    }
    boolean protective = ends.get(0).potential().equals(PROTECTIVE);
    int most = protective ? 1 : MOST_WIRES;
    if (ends.size() > most) {
      wrong.add(
          terminal
              + " holds "
              + ends.size()
              + " wires; "
              + (protective ? "a protective terminal takes one." : "most terminals take two."));
    }
  }

  private static void colour(Wire wire, List<String> wrong) {
    boolean protective = wire.potential().equals(PROTECTIVE);
    if (protective != wire.colour().equals("green-yellow")) {
      wrong.add(
          "wire "
              + wire.number()
              + (protective
                  ? " is a protective conductor and must be green-yellow."
                  : " is green-yellow, which is for protective conductors alone."));
    }
    if (wire.potential().matches("N( .*)?") != wire.colour().equals("light blue")) {
      wrong.add(
          "wire " + wire.number() + ": light blue is the colour of the neutral, and only of it.");
    }
  }

  /** All terminals of one potential hang together through its wires. */
  private void connected(String potential, List<String> wrong) {
    List<Wire> own = wires.stream().filter(w -> w.potential().equals(potential)).toList();
    Set<String> reached = new LinkedHashSet<>(Set.of(own.get(0).from()));
    for (int round = 0; round < own.size(); round++) {
      for (Wire wire : own) {
        if (reached.contains(wire.from()) || reached.contains(wire.to())) {
          reached.add(wire.from());
          reached.add(wire.to());
        }
      }
    }
    Set<String> all = new LinkedHashSet<>();
    own.forEach(w -> all.addAll(List.of(w.from(), w.to())));
    if (reached.size() < all.size()) {
      all.removeAll(reached);
      wrong.add(potential + " does not hang together: " + String.join(", ", all) + " stand apart.");
    } else if (own.size() > all.size() - 1) {
      wrong.add(potential + " is wired in a ring.");
    }
  }

  private void bonded(String metal, List<String> wrong) {
    boolean bonded =
        wires.stream()
            .anyMatch(w -> w.potential().equals(PROTECTIVE) && ends(w).anyMatch(e -> is(e, metal)));
    if (!bonded) {
      wrong.add(metal + " has no protective conductor.");
    }
  }

  private static java.util.stream.Stream<String> ends(Wire wire) {
    return java.util.stream.Stream.of(wire.from(), wire.to());
  }

  private static boolean is(String end, String metal) {
    return end.substring(end.indexOf(':') + 1).equals(metal);
  }
}
