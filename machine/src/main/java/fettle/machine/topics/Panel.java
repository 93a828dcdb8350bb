package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where the devices of a control box sit: on rails, on the plate, in the openings of the front.
 * Places count from the plate's lower left corner, seen from the front; help for planning, no
 * design.
 *
 * @param plate the plate
 * @param rails middle of each rail above the plate's lower edge, by name [mm]
 * @param devices devices in the order listed
 * @param misplaced what could not be placed, in words
 */
public record Panel(
    Plate plate, Map<String, Double> rails, List<Device> devices, List<String> misplaced) {

  /** Width of the rail that devices snap on (IEC 60715, TH 35) [mm]. */
  public static final double RAIL_WIDTH = 35;

  private static final double TOUCH = 1e-6;

  /**
   * The plate that carries the devices.
   *
   * @param width width [mm]
   * @param height height [mm]
   * @param depth free depth between plate and front [mm]
   * @param across its lower left corner to the right of the front's [mm]
   * @param up its lower left corner above the front's [mm]
   */
  public record Plate(double width, double height, double depth, double across, double up) {}

  /** What carries a device. */
  public enum Seat {
    RAIL,
    PLATE,
    FRONT,
    ELSEWHERE,
    UNPLACED
  }

  /**
   * An opening in the front.
   *
   * @param across its middle to the right of the front's lower left corner [mm]
   * @param up its middle above the front's lower left corner [mm]
   * @param diameter diameter [mm]
   */
  public record Opening(double across, double up, double diameter) {}

  /**
   * One device.
   *
   * @param designation its reference designation, such as -Q2
   * @param what what it is
   * @param rated its ratings, empty if not said
   * @param seat what carries it
   * @param on name of the rail or of the opening, empty if there is none
   * @param left its left side, from the plate's left edge [mm]
   * @param low its lower side, from the plate's lower edge [mm]
   * @param width width [mm]
   * @param height height [mm]
   * @param depth depth, in front of the plate or behind the front [mm]
   * @param air free room it needs above and below for its heat [mm]
   */
  public record Device(
      String designation,
      String what,
      String rated,
      Seat seat,
      String on,
      double left,
      double low,
      double width,
      double height,
      double depth,
      double air) {

    /** Returns what it sits on, in words. */
    public String sits() {
      String where = seat.name().toLowerCase(Locale.ROOT);
      return on.isEmpty() ? where : where + ", " + on;
    }

    /** Tells whether it has a place in the box. */
    public boolean isInside() {
      return onPlate() || seat == Seat.FRONT;
    }

    /** Tells whether it sits on the plate, by a rail or by itself. */
    public boolean onPlate() {
      return seat == Seat.RAIL || seat == Seat.PLATE;
    }

    private boolean meets(Device other, double room) {
      return left < other.left + other.width - TOUCH
          && other.left < left + width - TOUCH
          && low - room < other.low + other.height - TOUCH
          && other.low < low + height + room - TOUCH;
    }
  }

  /** Keeps its own copies. */
  public Panel {
    rails = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(rails));
    devices = List.copyOf(devices);
    misplaced = List.copyOf(misplaced);
  }

  /**
   * Reads the layout of a block {@code control box}; empty if it says nothing of a plate.
   *
   * @param box the block
   * @param openings openings of the front by name; empty if the recipes are not at hand, and what
   *     sits in the front is then left out
   */
  public static Optional<Panel> of(Values box, Optional<Map<String, Opening>> openings) {
    return box.block("plate").map(p -> new Laying(box, plate(p), openings).panel());
  }

  private static Plate plate(Values p) {
    return new Plate(
        p.need("width").value(),
        p.need("height").value(),
        p.need("depth").value(),
        p.need("across").value(),
        p.need("up").value());
  }

  /** Returns what is wrong with the layout, and where it and the wiring do not agree. */
  public List<String> wrong(Wiring wiring) {
    List<String> wrong = new ArrayList<>(misplaced);
    List<Device> inside = devices.stream().filter(Device::isInside).toList();
    inside.stream().filter(Device::onPlate).forEach(d -> within(d, wrong));
    for (int i = 0; i < inside.size(); i++) {
      for (Device other : inside.subList(i + 1, inside.size())) {
        pair(inside.get(i), other, wrong);
      }
    }
    wired(wiring, wrong);
    return wrong;
  }

  private void within(Device d, List<String> wrong) {
    boolean sides = d.left < -TOUCH || d.left + d.width > plate.width + TOUCH;
    boolean ends = d.low - d.air < -TOUCH || d.low + d.height + d.air > plate.height + TOUCH;
    if (sides || ends) {
      wrong.add(
          d.designation
              + (sides ? " stands over the side of the plate" : " finds no room on the plate")
              + (d.air > 0 ? " with the air it needs." : "."));
    }
    if (d.depth > plate.depth + TOUCH) {
      wrong.add(
          d.designation
              + " is "
              + mm(d.depth)
              + " deep; between plate and front there are "
              + mm(plate.depth)
              + ".");
    }
  }

  private void pair(Device a, Device b, List<String> wrong) {
    if (a.onPlate() == b.onPlate()) {
      double air = a.onPlate() ? Math.max(a.air, b.air) : 0;
      if (a.meets(b, 0)) {
        wrong.add(a.designation + " and " + b.designation + " overlap.");
      } else if (a.meets(b, air)) {
        String warm = a.air >= b.air ? a.designation : b.designation;
        String other = warm.equals(a.designation) ? b.designation : a.designation;
        wrong.add(other + " stands in the air that " + warm + " needs, " + mm(air) + ".");
      }
    } else if (a.meets(b, 0) && a.depth + b.depth > plate.depth + TOUCH) {
      wrong.add(
          a.designation
              + " and "
              + b.designation
              + " stand before each other and together are "
              + mm(a.depth + b.depth)
              + " deep; there are "
              + mm(plate.depth)
              + ".");
    }
  }

  private void wired(Wiring wiring, List<String> wrong) {
    Set<String> listed = new LinkedHashSet<>();
    devices.forEach(d -> listed.add(d.designation));
    Set<String> named = new LinkedHashSet<>();
    wiring.terminals().keySet().forEach(t -> named.add(t.replaceFirst(":.*", "")));
    named.stream()
        .filter(n -> !listed.contains(n))
        .forEach(n -> wrong.add(n + " is wired and stands in no list of devices."));
    devices.stream()
        .map(Device::designation)
        .filter(d -> !wiring.wires().isEmpty() && !named.contains(d))
        .forEach(d -> wrong.add(d + " is a device that no wire leads to."));
  }

  private static String mm(double length) {
    return Numbers.significant(length, 4) + " mm";
  }

  /** Places the devices one after the other. */
  private static final class Laying {
    private final Values box;
    private final Plate plate;
    private final Optional<Map<String, Opening>> openings;
    private final Map<String, Values> said;
    private final Map<String, Device> placed = new LinkedHashMap<>();
    private final Set<String> onRails = new LinkedHashSet<>();
    private final List<String> misplaced = new ArrayList<>();

    Laying(Values box, Plate plate, Optional<Map<String, Opening>> openings) {
      this.box = box;
      this.plate = plate;
      this.openings = openings;
      this.said = box.map("devices");
    }

    Panel panel() {
      Map<String, Double> rails = new LinkedHashMap<>();
      box.map("rails")
          .forEach(
              (name, rail) -> {
                rails.put(name, rail.need("up").value());
                row(name, rail);
              });
      said.forEach(
          (designation, d) -> {
            if (!onRails.contains(designation)) {
              alone(designation, d);
            }
          });
      List<Device> inOrder = new ArrayList<>();
      said.forEach(
          (designation, d) ->
              inOrder.add(
                  placed.computeIfAbsent(designation, k -> placeless(k, d, Seat.UNPLACED))));
      return new Panel(plate, rails, inOrder, misplaced);
    }

    private void row(String name, Values rail) {
      double left = rail.need("from").value();
      for (String designation : rail.texts("devices")) {
        Values d = said.get(designation);
        if (d == null) {
          misplaced.add(designation + " on the rail '" + name + "' is in no list of devices.");
          continue;
        }
        if (!onRails.add(designation)) {
          misplaced.add(designation + " is on more than one rail, or twice.");
          continue;
        }
        if (!sized(designation, d)) {
          continue;
        }
        double low = rail.need("up").value() - d.need("height").value() / 2;
        placed.put(designation, device(designation, d, Seat.RAIL, name, left, low));
        left += d.need("width").value() + rail.need("gap").value();
      }
    }

    private void alone(String designation, Values d) {
      switch (d.needText("on")) {
        case "elsewhere" -> placed.put(designation, placeless(designation, d, Seat.ELSEWHERE));
        case "front" -> front(designation, d);
        default -> {
          if (!d.has("across") || !d.has("up")) {
            misplaced.add(
                designation + " has no place: put it on a rail, or say 'across' and 'up'.");
          } else if (sized(designation, d)) {
            double left = d.need("across").value();
            double low = d.need("up").value();
            placed.put(designation, device(designation, d, Seat.PLATE, "", left, low));
          }
        }
      }
    }

    private void front(String designation, Values d) {
      if (openings.isEmpty()) {
        placed.put(designation, placeless(designation, d, Seat.ELSEWHERE));
        return;
      }
      Map<String, Opening> there = openings.get();
      String name = d.text("opening").orElse("");
      Opening opening = there.get(name);
      if (opening == null) {
        misplaced.add(
            designation
                + ": the front has no opening '"
                + name
                + "'; it has "
                + (there.isEmpty()
                    ? "none: name the part with the openings by 'front'"
                    : String.join(", ", there.keySet()))
                + ".");
      } else if (sized(designation, d)) {
        double left = opening.across() - plate.across() - d.need("width").value() / 2;
        double low = opening.up() - plate.up() - d.need("height").value() / 2;
        placed.put(designation, device(designation, d, Seat.FRONT, name, left, low));
      }
    }

    private boolean sized(String designation, Values d) {
      boolean sized = d.has("width") && d.has("height") && d.has("depth");
      if (!sized) {
        misplaced.add(designation + " needs 'width', 'height' and 'depth' to be placed.");
      }
      return sized;
    }

    private static Device placeless(String designation, Values d, Seat seat) {
      return new Device(
          designation, d.needText("what"), d.text("rated").orElse(""), seat, "", 0, 0, 0, 0, 0, 0);
    }

    private static Device device(
        String designation, Values d, Seat seat, String on, double left, double low) {
      return new Device(
          designation,
          d.needText("what"),
          d.text("rated").orElse(""),
          seat,
          on,
          left,
          low,
          d.need("width").value(),
          d.need("height").value(),
          d.need("depth").value(),
          d.need("air").value());
    }
  }
}
