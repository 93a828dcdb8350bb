package fettle.mechanics.shafts;

import java.util.List;
import java.util.TreeSet;

/**
 * A stepped hollow shaft on springs, with rigid masses. x runs from the rear end.
 *
 * @param steps its steps from the rear
 * @param material its material
 * @param supports springs that hold it
 * @param masses chuck, pulley, work
 */
public record Spindle(
    List<Step> steps, ShaftMaterial material, List<Support> supports, List<RigidMass> masses) {

  private static final int MOST_ELEMENTS = 300;

  /**
   * A length of one diameter.
   *
   * @param length its length [mm]
   * @param outer outside diameter [mm]
   * @param inner bore [mm]
   */
  public record Step(double length, double outer, double inner) {

    /** Refuses steps without length or wall. */
    public Step {
      Need.positive("step length", length);
      Need.positive("outside diameter", outer);
      if (!(inner >= 0 && inner < outer)) {
        throw new IllegalArgumentException(
            "bore: found "
                + inner
                + " mm in a step of "
                + outer
                + " mm, expected 0 to less than it");
      }
    }
  }

  /**
   * A spring across the shaft.
   *
   * @param name what it is, e.g. front
   * @param place x [mm]
   * @param radial stiffness across [N/mm]
   * @param tilt stiffness against tilting, 0 if none [N mm/rad]
   */
  public record Support(String name, double place, double radial, double tilt) {

    /** Refuses negative springs. */
    public Support {
      if (!(radial >= 0 && tilt >= 0) || Double.isInfinite(radial + tilt)) {
        throw new IllegalArgumentException(
            "stiffness of " + name + ": found " + radial + " and " + tilt + ", expected 0 or more");
      }
    }
  }

  /**
   * A rigid body on the shaft.
   *
   * @param place x of the section it sits on [mm]
   * @param mass m [t]
   * @param diametral inertia about a diameter through its centre of gravity [t mm2]
   * @param polar inertia about the axis [t mm2]
   * @param offset centre of gravity beyond the section, towards the nose [mm]
   */
  public record RigidMass(
      double place, double mass, double diametral, double polar, double offset) {

    /** Refuses negative masses. */
    public RigidMass {
      if (!(mass >= 0 && diametral >= 0 && polar >= 0) || !Double.isFinite(offset)) {
        throw new IllegalArgumentException(
            "rigid mass: found "
                + mass
                + " t, inertia "
                + diametral
                + " and "
                + polar
                + ", expected 0 or more");
      }
    }
  }

  /** Keeps its own copies; refuses supports and masses off the shaft. */
  public Spindle {
    steps = List.copyOf(steps);
    supports = List.copyOf(supports);
    masses = List.copyOf(masses);
    if (steps.isEmpty() || steps.size() > 100) {
      throw new IllegalArgumentException(
          "steps: found " + steps.size() + ", expected 1 to 100 steps of length, outside, bore");
    }
    double end = steps.stream().mapToDouble(Step::length).sum();
    for (Support s : supports) {
      onShaft("place of " + s.name, s.place, end);
    }
    for (RigidMass m : masses) {
      onShaft("place of a mass", m.place, end);
    }
  }

  private static void onShaft(String name, double place, double end) {
    Need.within(name + " in mm from the rear end", place, -1e-9, end + 1e-9);
  }

  /**
   * Returns the length of the shaft.
   *
   * @return length [mm]
   */
  public double length() {
    return steps.stream().mapToDouble(Step::length).sum();
  }

  /** Returns the same shaft with no masses on it. */
  public Spindle bare() {
    return new Spindle(steps, material, supports, List.of());
  }

  /**
   * Returns the step at a place.
   *
   * @param x place from the rear end [mm]
   */
  Step stepAt(double x) {
    double end = 0;
    for (Step step : steps) {
      end += step.length;
      if (x < end) {
        return step;
      }
    }
    return steps.get(steps.size() - 1);
  }

  /**
   * Returns the nodes: ends, steps, supports, masses and what else is asked for, and so many
   * between that no element is longer than a share of its diameter.
   *
   * @param share longest element over outside diameter [-]
   * @param more further places that need a node [mm]
   * @return places, rising [mm]
   */
  double[] nodes(double share, double... more) {
    TreeSet<Double> set = new TreeSet<>();
    double x = 0;
    set.add(0.0);
    for (Step step : steps) {
      x += step.length;
      set.add(x);
    }
    supports.forEach(s -> set.add(Math.max(0, Math.min(length(), s.place))));
    masses.forEach(m -> set.add(Math.max(0, Math.min(length(), m.place))));
    for (double place : more) {
      set.add(place);
    }
    double least = length() / MOST_ELEMENTS;
    TreeSet<Double> all = new TreeSet<>();
    double before = -1;
    for (double here : set) {
      if (before < 0) {
        all.add(here);
        before = here;
      } else if (here - before > 1e-7 * length()) {
        double longest = Math.max(least, share * stepAt(0.5 * (before + here)).outer);
        int parts = (int) Math.max(1, Math.ceil((here - before) / longest - 1e-9));
        for (int i = 1; i < parts; i++) {
          all.add(before + (here - before) * i / parts);
        }
        all.add(here);
        before = here;
      }
    }
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
