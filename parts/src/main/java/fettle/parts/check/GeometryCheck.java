package fettle.parts.check;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.fits.Deviations;
import fettle.mechanics.fits.ToleranceClass;
import fettle.parts.recipe.Characteristic;
import fettle.parts.recipe.Geometry;
import fettle.parts.recipe.Held;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Holds datums and geometrical tolerances to what they can mean. */
final class GeometryCheck {

  static final Source RULE =
      Source.memory("ISO 1101:2017 and ISO 5459:2011", "what a tolerance holds, and against what");
  static final Source HELD =
      Source.derived("a zone holds whatever lies in it: the wider one says nothing more");

  private final Geometry geometry;
  private final Map<String, Held> held;
  private final List<Doubt> doubts = new ArrayList<>();

  private GeometryCheck(Recipe recipe) {
    this.geometry = recipe.geometry();
    this.held = Held.of(recipe);
  }

  /** Returns all doubts about the geometry asked for. */
  static List<Doubt> of(Recipe recipe) {
    GeometryCheck check = new GeometryCheck(recipe);
    check.datums();
    for (Geometry.Zone zone : recipe.geometry().tolerances()) {
      check.zone(zone);
    }
    return check.doubts;
  }

  private void stop(String label, String what) {
    doubts.add(new Doubt(Doubt.Rank.STOP, label, what, Double.NaN, Double.NaN, RULE));
  }

  private void datums() {
    List<String> letters = new ArrayList<>();
    for (Geometry.Datum d : geometry.datums()) {
      String label = "datum " + d.letter();
      if (!held.containsKey(d.on())) {
        unknown(label, d.on());
      }
      if (letters.contains(d.letter())) {
        stop(label, "two datums have this letter; each needs its own");
      }
      letters.add(d.letter());
      boolean used = geometry.tolerances().stream().anyMatch(z -> z.letters().contains(d.letter()));
      if (!used) {
        String what = "no tolerance refers to it";
        doubts.add(new Doubt(Doubt.Rank.NOTE, label, what, Double.NaN, Double.NaN, RULE));
      }
    }
  }

  private void unknown(String label, String on) {
    stop(
        label,
        "there is no feature or face '" + on + "'; there are " + String.join(", ", held.keySet()));
  }

  private void zone(Geometry.Zone z) {
    String label = z.what().word() + " of " + z.on();
    Held on = held.get(z.on());
    if (on == null) {
      unknown(label, z.on());
      return;
    }
    references(label, z);
    meaning(label, z, on);
    datumsSuit(label, z, on);
    againstSize(label, z, on);
    againstOthers(label, z);
  }

  private void references(String label, Geometry.Zone z) {
    boolean form = z.what().kind() == Characteristic.Kind.FORM;
    if (form && !z.to().isEmpty()) {
      stop(label, "a tolerance of form is held against no datum; leave out 'to'");
    } else if (!form && z.to().isEmpty() && z.what() != Characteristic.POSITION) {
      stop(label, "it needs a datum to be held against; write to: A and name datum A");
    }
    for (String letter : z.letters()) {
      Optional<Geometry.Datum> datum = geometry.datum(letter);
      if (datum.isEmpty()) {
        stop(
            label,
            "there is no datum "
                + letter
                + "; name the feature or face it is taken from under geometry");
      } else if (datum.get().on().equals(z.on())) {
        stop(label, "datum " + letter + " is the feature itself");
      }
    }
  }

  private void meaning(String label, Geometry.Zone z, Held on) {
    boolean plane = on.nature() == Held.Nature.PLANE;
    boolean round = on.nature() == Held.Nature.ROUND;
    boolean suits =
        switch (z.what()) {
          case FLATNESS -> plane;
          case ROUNDNESS, CYLINDRICITY, COAXIALITY -> round;
          case SYMMETRY -> on.nature() == Held.Nature.WIDTH;
          case POSITION -> !plane;
          case RUN_OUT, TOTAL_RUN_OUT -> on.nature() != Held.Nature.WIDTH;
          default -> true;
        };
    if (!suits) {
      stop(label, "it cannot be held by " + natural(on));
    } else if (z.shape() == Geometry.Shape.ROUND && !(round && on.isMedian(z))) {
      stop(label, "a round zone holds an axis; " + natural(on) + " has none to be held");
    }
  }

  private static String natural(Held h) {
    return switch (h.nature()) {
      case ROUND -> "a round surface";
      case WIDTH -> "a width between two planes";
      case PLANE -> "a plane face";
    };
  }

  private void datumsSuit(String label, Geometry.Zone z, Held on) {
    for (String letter : z.letters()) {
      Held to = geometry.datum(letter).map(d -> held.get(d.on())).orElse(null);
      if (to == null) {
        continue;
      }
      boolean turns = z.what().kind() == Characteristic.Kind.RUN_OUT;
      boolean axis = turns || z.what() == Characteristic.COAXIALITY;
      if (axis && letter.equals(z.letters().get(0)) && to.nature() != Held.Nature.ROUND) {
        stop(label, "datum " + letter + " is no axis; the part is turned about an axis");
      }
    }
    if (!z.letters().isEmpty()) {
      Held first = geometry.datum(z.letters().get(0)).map(d -> held.get(d.on())).orElse(null);
      if (first != null) {
        direction(label, z, on, first);
      }
    }
  }

  /** Parallelism between things that stand square to each other, and the other way round. */
  private void direction(String label, Geometry.Zone z, Held on, Held to) {
    boolean mixed = (on.nature() == Held.Nature.ROUND) != (to.nature() == Held.Nature.ROUND);
    boolean square = (on.axis() != to.axis()) != mixed;
    if (z.what() == Characteristic.PARALLELISM && square) {
      stop(label, "it stands square to " + to.name() + "; write perpendicularity");
    } else if (z.what() == Characteristic.PERPENDICULARITY && !square) {
      stop(label, "it lies parallel to " + to.name() + "; write parallelism");
    }
  }

  /** A zone of form as wide as the size may vary says nothing that the size does not say. */
  private void againstSize(String label, Geometry.Zone z, Held on) {
    double spread = spread(on.size());
    double most =
        switch (z.what()) {
          case ROUNDNESS, CYLINDRICITY -> spread / 2;
          case FLATNESS, PARALLELISM -> on.nature() == Held.Nature.PLANE ? spread : 0;
          default -> 0;
        };
    if (most > 0 && z.width() >= most) {
      doubts.add(
          new Doubt(
              Doubt.Rank.CAUTION,
              label,
              Numbers.significant(z.width(), 4)
                  + " mm is no closer than the size of "
                  + on.name()
                  + " already asks; "
                  + Numbers.significant(most, 4)
                  + " mm or less says something",
              z.width(),
              most,
              HELD));
    }
  }

  private static double spread(Size size) {
    Tolerance t = size.tolerance();
    if (t.kind() == Tolerance.Kind.ZONE) {
      Deviations d = ToleranceClass.parse(t.zone()).deviations(size.nominal());
      return d.upper() - d.lower();
    }
    return t.kind() == Tolerance.Kind.LIMITS ? t.upper() - t.lower() : 0;
  }

  private void againstOthers(String label, Geometry.Zone z) {
    for (Geometry.Zone other : geometry.on(z.on())) {
      if (other == z) {
        continue;
      }
      boolean same = other.what() == z.what() && other.to().equals(z.to());
      if (same && geometry.tolerances().indexOf(other) < geometry.tolerances().indexOf(z)) {
        stop(label, "it is asked for twice");
      } else if (holds(other, z) && z.width() >= other.width()) {
        doubts.add(
            new Doubt(
                Doubt.Rank.CAUTION,
                label,
                other.what().word()
                    + " of "
                    + Numbers.significant(other.width(), 4)
                    + " mm holds it already",
                z.width(),
                other.width(),
                HELD));
      }
    }
  }

  /** Tells whether keeping one tolerance keeps the other of the same width too. */
  private static boolean holds(Geometry.Zone a, Geometry.Zone b) {
    boolean sameDatums = a.to().equals(b.to());
    return switch (b.what()) {
      case ROUNDNESS ->
          a.what() == Characteristic.CYLINDRICITY || a.what().kind() == Characteristic.Kind.RUN_OUT;
      case CYLINDRICITY -> a.what() == Characteristic.TOTAL_RUN_OUT;
      case RUN_OUT -> a.what() == Characteristic.TOTAL_RUN_OUT && sameDatums;
      case FLATNESS ->
          a.what().kind() == Characteristic.Kind.ORIENTATION
              || a.what() == Characteristic.TOTAL_RUN_OUT;
      default -> false;
    };
  }
}
